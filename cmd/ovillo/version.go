package main

import (
	"encoding/json"
	"runtime"
	"runtime/debug"
	"strings"

	"ovillo/cmd/ovillo/licence"
)

var versionCommand = command{
	name: "version",
	line: text{"print the version", "mostrar la versión"},
	long: text{
		"Version, compiler and platform; and which state of the sources it was built from, if that is known.\n" +
			"Who hands the program on hands on the licences of the libraries, faces and patterns of hyphenation that are in it:\n" +
			"--licences prints them.",
		"La versión, el compilador y la plataforma; y de qué estado del código fuente procede, si se sabe.\n" +
			"Quien entrega el programa a otra persona entrega con él las licencias de las bibliotecas, las letras y los patrones\n" +
			"de división de palabras que lleva dentro: --licences las muestra."},
	flags: []flagDef{
		{name: "--json", help: text{"the same for other tools", "lo mismo para otras herramientas"}},
		{name: "--licences", help: text{"the licences of what is in it", "las licencias de lo que lleva dentro"}},
	},
	examples: []exampleLine{
		{text{"ovillo version", "ovillo version"}, text{
			"what to say when reporting a fault",
			"lo que conviene decir al comunicar un fallo"}},
		{text{"ovillo version --licences", "ovillo version --licences"}, text{
			"what goes with the program when it is handed on",
			"lo que acompaña al programa cuando se entrega"}},
	},
	run: runVersion,
}

// build is what this program was built from. The names of its fields in JSON are promised.
type build struct {
	Version  string `json:"version"`            // of the module; (devel) if it was not built as a release
	Go       string `json:"go"`                 // the compiler
	Platform string `json:"platform"`           // system/processor
	Revision string `json:"revision,omitempty"` // of the repository
	Date     string `json:"date,omitempty"`     // of that revision, RFC 3339
	Modified bool   `json:"modified,omitempty"` // the sources were changed since
}

// buildOf reads what the compiler left in the program.
func buildOf(info *debug.BuildInfo) build {
	b := build{Version: "(devel)", Go: info.GoVersion}
	if v := info.Main.Version; v != "" {
		b.Version = v
	}
	set := map[string]string{}
	for _, s := range info.Settings {
		set[s.Key] = s.Value
	}
	b.Platform = set["GOOS"] + "/" + set["GOARCH"]
	b.Revision, b.Date, b.Modified = set["vcs.revision"], set["vcs.time"], set["vcs.modified"] == "true"
	return b
}

// thisBuild is that of the running program.
func thisBuild() build {
	if info, ok := debug.ReadBuildInfo(); ok {
		return buildOf(info)
	}
	return build{Version: "(devel)", Go: runtime.Version(), Platform: runtime.GOOS + "/" + runtime.GOARCH}
}

func runVersion(c *call) int {
	if len(c.args) > 0 {
		return c.misuse(msgTooMany.with("what", c.args[0]))
	}
	if c.has("--licences") && c.has("--json") {
		return c.misuse(msgFlagsClash.with("one", "--licences", "other", "--json"))
	}
	if c.has("--licences") {
		return c.print([]byte(licences()))
	}
	b := thisBuild()
	if c.has("--json") {
		data, err := json.Marshal(b)
		if err != nil {
			return failed
		}
		return c.print(append(data, '\n'))
	}
	return c.print([]byte(b.in(c.lang)))
}

// in words what a person wants to know.
func (b build) in(lang string) string {
	lines := strings.Join([]string{"ovillo", b.Version, b.Go, b.Platform}, " ") + "\n"
	if b.Revision == "" {
		return lines
	}
	m := msgRevision
	if b.Modified {
		m = msgRevisionChanged
	}
	return lines + m.with("revision", b.Revision, "date", b.Date).in(lang) + "\n"
}

// licences are those of all that is in the program, as they came.
func licences() string {
	var b strings.Builder
	for _, p := range licence.Parts() {
		b.WriteString("== " + p.Name + " (" + p.Licence + ")\n\n" + strings.TrimSpace(p.Text) + "\n\n")
	}
	return b.String()
}
