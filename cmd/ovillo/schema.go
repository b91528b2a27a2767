package main

import "ovillo/render/data"

var schemaCommand = command{
	name: "schema",
	line: text{"describe the JSON of a pattern", "describir el JSON de un patrón"},
	long: text{
		"It is for programs that read what ovillo build --format=json writes, and follows JSON Schema 2020-12. Its version\n" +
			"stands in the data.",
		"Es para los programas que leen los archivos hechos con --format=json, y sigue JSON Schema 2020-12. Su versión figura\n" +
			"en los datos."},
	examples: []exampleLine{
		{text{"ovillo schema > pattern.schema.json", "ovillo schema > patron.schema.json"}, text{
			"a file for a program that checks data",
			"un archivo para un programa que comprueba datos"}},
	},
	run: runSchema,
}

func runSchema(c *call) int {
	if len(c.args) > 0 {
		return c.misuse(msgTooMany.with("what", c.args[0]))
	}
	return c.print(data.Schema)
}
