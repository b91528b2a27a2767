package errata

import (
	"slices"
	"strings"

	"ovillo/render/rich"
)

// Notes are the edition notes in the language of a list: one line of Markdown for each entry, in short. They name no stitch, whose
// name is another in each reading of the language.
func (s *Sheet) Notes() []string {
	var out []string
	for _, g := range s.Groups {
		for _, e := range g.Entries {
			if g.Plain {
				continue
			}
			sizes := ""
			if list := e.sizes(); len(list) > 0 {
				sizes = " (" + strings.Join(list, ", ") + ")"
			}
			line := "- **" + unmarked(e.Where) + "**" + unmarked(sizes) + ": " + unmarked(e.short) + "."
			if line = plain(rich.T(line)); !slices.Contains(out, line) { // of two cautions it says the same
				out = append(out, line)
			}
		}
	}
	return out
}

// sizes are the names of the sizes of an entry, none for all.
func (e Entry) sizes() []string {
	var out []string
	for _, it := range e.Items {
		if e.every || it.Sizes == "" {
			return nil
		}
		out = append(out, it.names...)
	}
	return out
}

// unmarked leaves out the signs that Markdown or the source would read in a title.
func unmarked(text string) string {
	return strings.Map(func(r rune) rune {
		if strings.ContainsRune("\\`*_[]{}<>|", r) {
			return -1
		}
		return r
	}, text)
}
