package starter

import (
	"embed"
	"fmt"
	"path"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"ovillo/lang"
	"ovillo/lang/format"
	"ovillo/lang/source"
)

//go:embed *.ovillo
var files embed.FS

// Kind is a sort of piece that a pattern can be begun as.
type Kind struct {
	Name   string     // in English; that of its sources
	Nombre string     // in Spanish
	words  [][]string // what people call it, in English and in Spanish: such a word in a name is not said twice
}

// Kinds in the order in which they are offered; the first is the usual one.
func Kinds() []Kind {
	return []Kind{
		{"hat", "gorro", [][]string{{"hat", "cap", "beanie"}, {"gorro", "gorrito"}}},
		{"headband", "diadema", [][]string{{"headband", "band"}, {"diadema", "banda"}}},
		{"blanket", "manta", [][]string{{"blanket"}, {"manta", "mantita"}}},
		{"vest", "chaleco", [][]string{{"vest"}, {"chaleco"}}},
		{"leggings", "mallas", [][]string{{"leggings", "trousers", "pants"}, {"mallas", "pantalón", "pantalon"}}},
		{"bootees", "patucos", [][]string{{"bootees", "booties"}, {"patucos"}}},
		{"toy", "juguete", [][]string{{"toy"}, {"juguete"}}},
	}
}

// Named finds a kind by its name in either language.
func Named(name string) (Kind, bool) {
	all := Kinds()
	i := slices.IndexFunc(all, func(k Kind) bool { return name == k.Name || name == k.Nombre })
	if i < 0 {
		return Kind{}, false
	}
	return all[i], true
}

// Pattern is what a source is begun with.
type Pattern struct {
	Kind  Kind
	Lang  string // of the source: en or es
	Name  string // as it was typed, without folder and ending: "sea-hat"
	File  string // how its commands name the file
	Month string // of the edition: "2026-03"
}

// Source is a whole source in its usual shape.
func (p Pattern) Source() ([]byte, error) {
	text, err := files.ReadFile(path.Join(p.Kind.Name + "." + p.Lang + ".ovillo"))
	if err != nil {
		return nil, fmt.Errorf("no source for %s in %s: %w", p.Kind.Name, p.Lang, err)
	}
	en, es := p.titles()
	for _, name := range p.names() {
		set, found := format.Source([]byte(strings.NewReplacer("@name", name, "@title_en", en, "@title_es", es,
			"@month", p.Month, "@file", p.File).Replace(string(text))))
		if !found.HasErrors() {
			if _, found := lang.Parse(source.NewFile(p.File, string(set))); !found.HasErrors() {
				return set, nil
			}
		}
	}
	return nil, fmt.Errorf("no name for %q", p.Name)
}

// words of the name as it was typed.
func (p Pattern) words() []string {
	return strings.FieldsFunc(norm.NFC.String(p.Name), func(r rune) bool { return strings.ContainsRune(`-_."\`, r) || unicode.IsSpace(r) })
}

// titles are the name with the word for what it is, in each language: Alba hat, Gorro Alba.
func (p Pattern) titles() (en, es string) {
	var own []string
	for _, w := range p.words() {
		is := func(list []string) bool { return slices.Contains(list, strings.ToLower(w)) }
		if !slices.ContainsFunc(p.Kind.words, is) {
			own = append(own, w)
		}
	}
	// What else may stand in the name of a file, the type of the pages may lack, or a text takes for something to put in.
	name := strings.Join(strings.Fields(strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Latin, r) && r < 0x180 || r >= '0' && r <= '9' || strings.ContainsRune(" ',!?&+()", r) {
			return r
		}
		return -1
	}, strings.Join(own, " "))), " ")
	if name == "" {
		return capital(p.Kind.Name), capital(p.Kind.Nombre)
	}
	return capital(name) + " " + p.Kind.Name, capital(p.Kind.Nombre) + " " + capital(name)
}

func capital(s string) string {
	r := []rune(s)
	return strings.ToUpper(string(r[:1])) + string(r[1:])
}

// names are what the pattern could be called in the source, the best first: a word of the language is no name.
func (p Pattern) names() []string {
	var b strings.Builder
	for _, r := range strings.Join(p.words(), "_") {
		if r == '_' || unicode.IsLetter(r) || unicode.IsDigit(r) && b.Len() > 0 {
			b.WriteRune(r)
		}
	}
	kind := p.Kind.Name
	if p.Lang == "es" {
		kind = p.Kind.Nombre
	}
	name := strings.Trim(strings.ToLower(b.String()), "_")
	return []string{name, strings.Trim(name+"_"+kind, "_"), kind + "_1"}
}
