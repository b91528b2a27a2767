package main

import (
	"fmt"
	"runtime/debug"
)

var versionCommand = command{
	name: "version",
	line: text{"print the version", "mostrar la versión"},
	examples: []exampleLine{
		{text{"ovillo version", "ovillo version"}, text{
			"what to say when reporting a fault",
			"lo que conviene decir al comunicar un fallo"}},
	},
	run: runVersion,
}

func runVersion(c *call) int {
	if len(c.args) > 0 {
		return c.misuse(msgTooMany.with("what", c.args[0]))
	}
	version, compiler := "(devel)", ""
	if info, ok := debug.ReadBuildInfo(); ok {
		if v := info.Main.Version; v != "" {
			version = v
		}
		compiler = " " + info.GoVersion
	}
	return c.print(fmt.Appendf(nil, "ovillo %s%s\n", version, compiler))
}
