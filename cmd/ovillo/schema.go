package main

import "ovillo/render/data"

var schemaCommand = command{
	name: "schema",
	line: text{"describe the JSON of a pattern", "describir el JSON de un patrón"},
	long: text{
		"The description is JSON Schema, draft 2020-12, of what build --format json writes. Its version stands in the data.",
		"La descripción es JSON Schema, draft 2020-12, de lo que escribe build --format json. Su versión figura en los datos."},
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
