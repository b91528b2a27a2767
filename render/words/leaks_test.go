package words

import (
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/lang/terms"
	"ovillo/render/rich"
)

// shared are words that one reading has for a thing of the craft and that all of the language use for something else.
var shared = map[string]string{
	"en up":        "draw up a loop; UK patterns say making up for finishing",
	"en sew":       "sew a seam; UK patterns sew in the ends",
	"en wool":      "a fibre; a UK wool needle sews with any yarn",
	"es de":        "a preposition",
	"es la":        "an article",
	"es lana":      "a fibre; the yarn of Chile",
	"es hebra":     "a strand of a stitch; the River Plate cuts the hebra",
	"es delantera": "the front strand of a stitch; the front of a piece in the River Plate",
	"es delantero": "the front relief; the front of a piece elsewhere",
	"es borde":     "an edge; the lower edge is the ruedo of the River Plate",
	"es espacio":   "the gap between two stitches; the arch of chains is called otherwise in Spain and the River Plate",
	"es espacios":  "the same, of several",
	"es alto":      "high",
	"es bajo":      "under",
	"es bajos":     "the same, of several",
	"es v":         "the letter of a neckline",
}

// oursAlone are words of other readings that stand in no row of the table, since the pages need no word for them or say it in another
// way. They must not slip in.
var oursAlone = map[string]string{
	"en-GB": `colou?rless|gray|color|center|meter|gauge|skip|skipped|toward|diaper|pacifier|bulky|worsted|fingering`,
	"en-US": `grey|colour|centre|metre|tension|miss|missed|towards|nappy|dummy|yoh|yrh`,
	"es":    `coger|coge|anzuelo|calibre|malla|palito|equivocado|basta|ganchos?|estambres?|hilados?|talles?|varetas?|macizos?|barretas?|cadenetas?|madejas?|pulóver|jersey`,
	"es-ES": `anzuelo|calibre|ganchos?|estambres?|hilados?|talles?|varetas?|macizos?|barretas?|madejas?|cadenas?`,
	"es-MX": `coger|anzuelo|calibre|ganchillos?|hilos?|hilados?|talles?|varetas?|barretas?|cadenetas?|ovillos?`,
	"es-AR": `coger|anzuelo|calibre|ganchillos?|hilos?|estambres?|tallas?|macizos?|barretas?|cadenetas?|madejas?`,
	"es-CL": `coger|anzuelo|calibre|ganchillos?|hilos?|estambres?|talles?|macizos?|barretas?|madejas?`,
	"es-EC": `coger|anzuelo|calibre|ganchos?|estambres?|hilados?|talles?|macizos?|varetas?|madejas?`,
}

// A page of one reading has no word of another: whatever a country has a word of its own for is called by that word everywhere,
// over all examples, the pattern that has everything, and every kind of sentence.
func TestNoReadingLeaksIntoAnother(t *testing.T) {
	patterns := []*plan.Pattern{everything()}
	for _, p := range examples(t) {
		withoutTexts(reflect.ValueOf(p))
		patterns = append(patterns, p)
	}
	withoutTexts(reflect.ValueOf(patterns[0]))
	for _, l := range Readings() {
		says, foreign := l.saysItself(patterns), l.foreignWords()
		never := regexp.MustCompile(`(?i)^(` + oursAlone[l.Tag()] + `)$`)
		if len(foreign) < 3 || len(says) < 500 || oursAlone[l.Tag()] == "" {
			t.Errorf("%s: %d words of other readings are looked for in %d texts", l.Tag(), len(foreign), len(says))
		}
		found := map[string]bool{}
		for _, text := range says {
			for _, word := range tokens.FindAllString(text, -1) {
				small := strings.ToLower(word)
				if found[small] {
					continue
				}
				if of := foreign[small]; of != "" {
					t.Errorf("%s: %q is said in %s: %s", l.Tag(), word, of, text)
					found[small] = true
				} else if never.MatchString(word) {
					t.Errorf("%s: %q is not said there: %s", l.Tag(), word, text)
					found[small] = true
				}
			}
		}
	}
}

// tokens are the words of a text, an abbreviation among them.
var tokens = regexp.MustCompile(`[\pL-]+`)

// foreignWords are the words that other readings of the language have for things for which this one has others.
func (l *Language) foreignWords() map[string]string {
	own := map[string]bool{}
	for w := range l.read.vocabulary() {
		own[w] = true
	}
	out := map[string]string{}
	for _, o := range l.read.others() {
		for w := range o.vocabulary() {
			if !own[w] && shared[l.Code()+" "+w] == "" {
				out[w] = o.Tag()
			}
		}
	}
	return out
}

// notWords are rows of the table that hold no words of sentences.
var notWords = map[string]bool{"decimal": true, "chain count": true, "inches": true, "hook marks": true, "reading": true, "country": true}

// inTerm are the words of a term, and the words of others that it holds.
var inTerm = regexp.MustCompile(`\{[^}]*\}|[\pL-]+`)

// vocabulary is every word of the reading's terms; an abbreviation is one.
func (r *reading) vocabulary() map[string]bool {
	out := map[string]bool{}
	for _, concept := range terms.Standard().Concepts() {
		if !r.Has(concept) || notWords[concept] {
			continue
		}
		w := r.Term(concept)
		for _, s := range []string{w.Short, w.One, w.Many} {
			for _, token := range inTerm.FindAllString(s, -1) {
				if !strings.HasPrefix(token, "{") {
					out[strings.ToLower(token)] = true
				}
			}
		}
	}
	return out
}

// saysItself is what the language says of its own, each text once: without what it tells of other readings.
func (l *Language) saysItself(patterns []*plan.Pattern) []string {
	seen := map[string]bool{}
	var out []string
	add := func(s string) {
		s = strings.ReplaceAll(s, tie, " ")
		if !seen[s] {
			seen[s] = true
			out = append(out, s)
		}
	}
	for _, p := range patterns {
		elsewhere := map[string]bool{}
		c := l.context(p, nil, nil)
		for _, f := range c.printedForms() {
			if f.Group != 0 {
				elsewhere[strings.ReplaceAll(c.elsewhere(f).String(), tie, " ")] = true
			}
		}
		l.eachText(p, func(t rich.Text) {
			s := strings.ReplaceAll(t.String(), tie, " ")
			for e := range elsewhere {
				if e != "" {
					s = strings.ReplaceAll(s, e, "")
				}
			}
			add(strings.ReplaceAll(s, l.otherReadings(), ""))
		})
		for _, a := range l.Abbreviations(p) {
			add(a.Short)
			add(a.Meaning)
		}
	}
	for _, k := range Keys() {
		add(l.Say(k))
	}
	for _, k := range lines() {
		if k != otherReadings {
			add(l.voice.line(k))
		}
	}
	d := reflect.ValueOf(l.Drawing())
	for i := range d.NumField() {
		add(d.Field(i).String())
	}
	for id := range englishBody {
		add(l.BodyName(id))
		add(l.Ease(id))
	}
	formCorpus(l, func(_ string, text rich.Text) { add(text.String()) })
	rowCorpus(l, func(_ string, text rich.Text) { add(text.String()) })
	stepCorpus(l, func(_ string, text rich.Text) { add(text.String()) })
	return out
}

// examples are the checked patterns of the examples.
func examples(t *testing.T) []*plan.Pattern {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join("..", "..", "examples", "*.ovillo"))
	if err != nil || len(paths) == 0 {
		t.Fatal("no examples", err)
	}
	var out []*plan.Pattern
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		tree, found := lang.Parse(source.NewFile(path, string(data)))
		if found.HasErrors() {
			t.Fatalf("%s cannot be read", path)
		}
		checked := compile.CompileWith(tree, compile.Options{})
		if checked.Found.HasErrors() {
			t.Fatalf("%s does not come out", path)
		}
		out = append(out, checked.Pattern)
	}
	return out
}

// withoutTexts puts a sign that is no letter of ours in the place of every text of the author.
func withoutTexts(v reflect.Value) {
	if v.Type() == reflect.TypeFor[plan.Text]() {
		blank := plan.Text{} // the map itself may be shared
		for _, k := range v.MapKeys() {
			blank[k.String()] = "Ω"
		}
		v.Set(reflect.ValueOf(blank))
		return
	}
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			withoutTexts(v.Elem())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			withoutTexts(v.Field(i))
		}
	case reflect.Slice:
		for i := range v.Len() {
			withoutTexts(v.Index(i))
		}
	}
}
