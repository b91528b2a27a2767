// Package shared makes the files that examples of messages use, for tests.
package shared

import (
	"bytes"
	"fmt"
	"io/fs"
	"strings"
)

// Open returns a file by its name: common.ovillo is as it should be, circle.ovillo uses itself by way of another one, whole.ovillo is a pattern,
// hat.ovillo and mittens.ovillo are patterns, faulty.ovillo is one with an error, british.ovillo one in British terms, english.ovillo
// one in English alone, book.ovillo a book,
// large.ovillo has nearly a megabyte, each of deep/1.ovillo and so on uses the next, and locked.ovillo cannot be opened.
func Open(name string) ([]byte, error) {
	var n int
	if _, err := fmt.Sscanf(name, "deep/%d.ovillo", &n); err == nil {
		return fmt.Appendf(nil, "use \"%d.ovillo\"\n", n+1), nil
	}
	if data, ok := patterns[name]; ok {
		return []byte(data), nil
	}
	switch name {
	case "common.ovillo", "shared/common.ovillo":
		return []byte(common), nil
	case "circle.ovillo":
		return []byte("use \"back.ovillo\"\n"), nil
	case "back.ovillo":
		return []byte("use \"circle.ovillo\"\n"), nil
	case "whole.ovillo":
		return []byte("part edge\n  chain 40\nend\n"), nil
	case "large.ovillo":
		return bytes.Repeat([]byte("# A remark of no use to anybody, which is here for its length alone.\n"), 2<<20/69), nil
	case "locked.ovillo":
		return nil, fs.ErrPermission
	}
	return nil, fs.ErrNotExist
}

// pattern is a small pattern.
func pattern(name, title, titulo, more, row string) string {
	return "pattern " + name + "\n  title en \"" + title + "\" es \"" + titulo + "\"\n" + more + "end\n\nsizes \"S\", \"M\"\nend\n\ngauge 10 cm\n  sc 16 sts, 18 rows\nend\n\n" +
		"part band\n  title en \"Band\" es \"Banda\"\n  in joined rounds\n  chain 40, join\n  " + row + "\n  fasten off\nend\n"
}

var patterns = map[string]string{
	"hat.ovillo":     pattern("hat", "Hat", "Gorro", "  terms us\n", "round: sc in each = 40"),
	"mittens.ovillo": pattern("mittens", "Mittens", "Manoplas", "  terms us\n", "round: sc in each = 40"),
	"faulty.ovillo":  pattern("faulty", "Band", "Banda", "  terms us\n", "round: sc in each = 41"),
	"british.ovillo": strings.Replace(pattern("british", "Scarf", "Bufanda", "  terms uk\n", "round: dc in each = 40"), "  sc 16", "  dc 16", 1),
	"english.ovillo": englishAlone,
	"book.ovillo":    "book other\n  title en \"Other\" es \"Otro\"\n  pattern \"hat.ovillo\"\nend\n",
}

// common is a file with what patterns share: a yarn, a list of stitches and a number.
const common = `yarn sand
  name en "sand" es "arena"
end

group wave = [sc in next, skip 2, 5 dc in next, skip 2]

let turn_of_band = 40
`

const englishAlone = `pattern scarf
  title en "Scarf"
  terms us
  languages en
end

sizes "S", "M"
end

gauge 10 cm
  sc 16 sts, 18 rows
end

part band
  title en "Band"
  in joined rounds
  chain 40, join
  round: sc in each = 40
  fasten off
end
`
