package main

import (
	"os"

	"ovillo/cmd/ovillo/lsp"
)

var lspCommand = command{
	name: "lsp",
	line: text{"serve a text editor while a pattern is written", "atender a un editor de texto mientras se escribe un patrón"},
	long: text{
		"An editor starts it and speaks to it over the standard input and output, by the Language Server Protocol (3.17). It shows\n" +
			"messages at each keystroke, the count of each row, what a stitch is in both languages, where a name was set; it\n" +
			"completes words, renames, and sets the source in its usual shape. Nothing is written, and nothing is read but\n" +
			"the folder of the pattern. cmd/ovillo/editor/README.md tells how to set up two editors.",
		"Un editor lo pone en marcha y se comunica con él por la entrada y la salida estándar, según un protocolo\n" +
			"abierto para servidores de editores (3.17). Muestra mensajes con cada pulsación, la cuenta de cada hilera o vuelta, qué es un punto en los dos idiomas y\n" +
			"dónde se puso un nombre; completa palabras, cambia nombres y da al patrón su forma habitual. No escribe nada ni lee\n" +
			"más que la carpeta del patrón. cmd/ovillo/editor/README.md explica cómo preparar dos editores."},
	examples: []exampleLine{
		{text{"ovillo lsp", "ovillo lsp"}, text{
			"what an editor starts; by hand there is nothing to see",
			"lo que pone en marcha un editor; a mano no hay nada que ver"}},
		{text{"ovillo lsp --messages es", "ovillo lsp --messages en"}, text{
			"the messages in Spanish, whatever the editor asks for",
			"los mensajes en inglés, pida lo que pida el editor"}},
	},
	run: runLSP,
}

func runLSP(c *call) int {
	if len(c.args) > 0 {
		return c.misuse(msgTooMany.with("what", c.args[0]))
	}
	if os.Getenv("GOGC") == "" {
		collectSeldom(spaciousServer) // a check makes much that is soon forgotten, and an answer is waited for
	}
	return lsp.Serve(c.in, c.out, lsp.Options{Lang: c.lang, Asked: c.has("--messages")})
}

// spaciousServer is how many bytes the server takes before garbage is collected without rest: it runs all day beside an editor.
const spaciousServer = 192 << 20
