// Package licence holds the licences of what the program is made of beside its own sources. Whoever hands the program on hands them on with it:
// that is what they ask of those who pass on a copy in binary form.
package licence

import (
	"embed"
	"strings"

	"ovillo/render/font"
	"ovillo/render/hyphen"
)

//go:embed texts/*.txt
var texts embed.FS

// Part is a thing that the program has inside.
type Part struct {
	Name    string // of a module its path
	Licence string // by its short name in the SPDX list
	Text    string // the notice and the licence, as they came
}

// modules are the modules that are linked in, with the standard library. On some systems there are fewer.
var modules = []Part{
	{Name: "go", Licence: "BSD-3-Clause"},
	{Name: "github.com/alecthomas/participle/v2", Licence: "MIT"},
	{Name: "github.com/bmatcuk/doublestar/v4", Licence: "MIT"},
	{Name: "github.com/fsnotify/fsnotify", Licence: "BSD-3-Clause"},
	{Name: "github.com/go-pdf/fpdf", Licence: "MIT"},
	{Name: "github.com/inconshreveable/mousetrap", Licence: "Apache-2.0"},
	{Name: "github.com/klauspost/compress", Licence: "BSD-3-Clause"},
	{Name: "github.com/rogpeppe/go-internal", Licence: "BSD-3-Clause"},
	{Name: "github.com/spf13/cobra", Licence: "Apache-2.0"},
	{Name: "github.com/spf13/pflag", Licence: "BSD-3-Clause"},
	{Name: "github.com/yuin/goldmark", Licence: "MIT"},
	{Name: "golang.org/x/image", Licence: "BSD-3-Clause"},
	{Name: "golang.org/x/sys", Licence: "BSD-3-Clause"},
	{Name: "golang.org/x/text", Licence: "BSD-3-Clause"},
}

// Parts are all of them: the modules, the faces, the patterns of hyphenation.
func Parts() []Part {
	var all []Part
	for _, m := range modules {
		m.Text = textOf(m.Name)
		all = append(all, m)
	}
	for _, l := range font.Licences() {
		all = append(all, Part{Name: l.Family, Licence: "OFL-1.1", Text: l.Text})
	}
	return append(all, Part{Name: "hyph-utf8", Licence: "MIT, and the notices of the patterns", Text: hyphen.Licences()})
}

// textOf is the licence of a module.
func textOf(module string) string {
	data, err := texts.ReadFile("texts/" + strings.ReplaceAll(module, "/", "_") + ".txt")
	if err != nil {
		panic(err) // a test asks for each
	}
	return string(data)
}
