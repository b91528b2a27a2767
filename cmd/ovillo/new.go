package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"strings"
	"time"

	"ovillo/cmd/ovillo/save"
	"ovillo/cmd/ovillo/starter"
)

var newCommand = command{
	name: "new",
	args: text{"NAME", "NOMBRE"},
	line: text{"begin a pattern", "empezar un patrón"},
	long: text{
		"It writes NAME.ovillo: a small pattern that is whole and builds, with remarks that say what to change first. It asks\n" +
			"nothing and writes over nothing. NAME may have a folder before it; - writes to the standard output.",
		"Escribe NOMBRE.ovillo: un patrón pequeño y completo, con comentarios que dicen qué conviene cambiar primero. No\n" +
			"pregunta nada y no sustituye ningún archivo. NOMBRE puede llevar delante una carpeta; con - sale por la salida\n" +
			"estándar."},
	flags: []flagDef{
		{name: "--kind", value: "KIND", allowed: kindNames(), help: text{
			"what is made, as listed below; without it, a hat", "qué se teje, de la lista de abajo; si no se indica, un gorro"}},
		{name: "--in", value: "en|es", allowed: []string{"en", "es"}, help: text{
			"language of the source; without it, that of the messages", "idioma del patrón; si no se indica, el de los mensajes"}},
	},
	tail: kindsHelp,
	examples: []exampleLine{
		{text{"ovillo new sea-hat", "ovillo new gorro-mar"}, text{
			"a hat, in sea-hat.ovillo", "un gorro, en gorro-mar.ovillo"}},
		{text{"ovillo new marina --kind leggings --in es", "ovillo new marina --kind mallas --in es"}, text{
			"leggings, written in Spanish", "unas mallas, con el patrón escrito en español"}},
	},
	fill: func(*filling) []candidate { return nil },
	run:  runNew,
}

// kindNames are what --kind takes: the names in both languages.
func kindNames() (names []string) {
	for _, k := range starter.Kinds() {
		names = append(names, k.Name, k.Nombre)
	}
	return names
}

// kindsHelp lists the kinds.
func kindsHelp(lang string) string {
	var b strings.Builder
	b.WriteString(msgKinds.in(lang) + "\n")
	for _, k := range starter.Kinds() {
		fmt.Fprintf(&b, "    %s\n", text{k.Name, k.Nombre}.in(lang))
	}
	return b.String()
}

func runNew(c *call) int {
	switch {
	case len(c.args) == 0:
		return c.misuse(msgNeedsName.with())
	case len(c.args) > 1:
		return c.misuse(msgTooMany.with("what", c.args[1]))
	}
	path := c.args[0]
	kind := starter.Kinds()[0]
	if name, ok := c.flags["--kind"]; ok {
		kind, _ = starter.Named(name) // it is one of those allowed
	}
	p := starter.Pattern{Kind: kind, Lang: c.lang, Month: time.Now().Format("2006-01")}
	if lang, ok := c.flags["--in"]; ok {
		p.Lang = lang
	}
	if path != "-" && !strings.HasSuffix(path, ".ovillo") {
		path += ".ovillo"
	}
	p.File = visible(shellWord(path))
	if p.Name = stem(path); strings.Trim(p.Name, ".-_ ") == "" || isFolder(c.args[0]) && strings.HasSuffix(c.args[0], "/") {
		if path != "-" {
			return c.misuse(msgNeedsName.with())
		}
		p.Name = text{kind.Name, kind.Nombre}.in(p.Lang)
	}
	data, err := p.Source()
	if err != nil {
		c.say(msgInternal.with("path", path, "fault", err.Error()))
		return failed
	}
	if path == "-" {
		return c.print(data)
	}
	if err := save.New(path, data); err != nil {
		why := reason(err, path)
		if errors.Is(err, fs.ErrExist) {
			why = whyExists.with()
		}
		c.say(msgCannotWrite.with("path", path, "why", why.in(c.lang)))
		return failed
	}
	c.tell(msgBegun.with("path", path, "kind", text{kind.Name, kind.Nombre}.in(c.lang), "n", fmt.Sprint(bytes.Count(data, []byte("\n")))).in(c.lang))
	c.tell(msgNext.with("line", "ovillo build "+shellWord(path)).in(c.lang))
	return clean
}

// shellWord is a path as it can be typed.
func shellWord(path string) string {
	if strings.HasPrefix(path, "-") {
		path = "./" + path
	}
	if strings.ContainsAny(path, " ()'&;") {
		return `"` + path + `"`
	}
	return path
}
