package standard

import (
	"slices"
	"sync"
)

// fibre is one row of the table of fibres.
type fibre struct{ name, en, es string }

var fibres = sync.OnceValue(func() []fibre {
	var out []fibre
	for _, r := range table("fibres.csv") {
		out = append(out, fibre{r["name"], r["en"], r["es"]})
	}
	return out
})

// FibreName returns how a fibre is called in a language ("en", "es"). ok is false for a word that is no known fibre.
func FibreName(word, lang string) (name string, ok bool) {
	i := slices.IndexFunc(fibres(), func(f fibre) bool { return f.name == word })
	switch {
	case i < 0:
		return "", false
	case lang == "es":
		return fibres()[i].es, true
	}
	return fibres()[i].en, true
}

// FibreWords lists the words for fibres that a source may use.
func FibreWords() []string {
	var out []string
	for _, f := range fibres() {
		out = append(out, f.name)
	}
	return out
}
