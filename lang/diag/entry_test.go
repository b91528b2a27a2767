package diag

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// Words of compilers, and words that blame: a maker's reader has no use for either.
var (
	bannedEn = regexp.MustCompile(`(?i)\b(tokens?|pars(e|es|ed|er|ing)|ast|nodes?|identifiers?|syntax|illegal|invalid)\b`)
	bannedEs = regexp.MustCompile(`(?i)(^|[^\pL])(tokens?|parse\pL*|ast|nodos?|identificador(es)?|sintaxis|sintáctic[oa]s?|ilegal(es)?|inválid[oa]s?)($|[^\pL])`)
)

// codeForm is how a code looks: OV, the digit of its family and two more.
var codeForm = regexp.MustCompile(`^OV[1-9][0-9]{2}$`)

// faultsOf lists what is wrong with a row of the catalogue.
func faultsOf(e *Entry) []string {
	var out []string
	fault := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	if !codeForm.MatchString(string(e.Code)) {
		fault("the code is not OV, the digit of its family and two more")
	}
	if e.Severity < Error || e.Severity > Note {
		fault("no severity")
	}
	if strings.TrimSpace(e.Example) == "" || strings.TrimSpace(e.Fixed) == "" {
		fault("no example, or it is not put right")
	} else if e.Example == e.Fixed {
		fault("the example put right is the example")
	}
	en, es := textsOf(e.En), textsOf(e.Es)
	if a, b := slices.Sorted(maps.Keys(en)), slices.Sorted(maps.Keys(es)); !slices.Equal(a, b) {
		fault("English has %v, Spanish has %v", a, b)
	}
	for _, key := range []string{"message", "explain"} {
		if en[key] == "" || es[key] == "" {
			fault("%s: empty in one language", key)
		}
	}
	for _, key := range slices.Sorted(maps.Keys(en)) {
		if w := bannedEn.FindString(en[key]); w != "" {
			fault("%s: says %q in English", key, w)
		}
		if w := bannedEs.FindString(es[key]); w != "" {
			fault("%s: says %q in Spanish", key, strings.TrimSpace(w))
		}
		for lang, text := range map[string]string{"English": en[key], "Spanish": es[key]} {
			if _, err := readTemplate(text); err != nil {
				fault("%s: %v in %s", key, err, lang)
			}
		}
		if a, b := Holes(en[key]), Holes(es[key]); !slices.Equal(a, b) {
			fault("%s: English has the holes %v, Spanish has %v", key, a, b)
		}
	}
	// A fact that is code by itself, such as the word that was expected, is code wherever the row names it.
	code, prose := map[string]bool{}, map[string]string{}
	for lang, texts := range map[string]map[string]string{"English": en, "Spanish": es} {
		for key, text := range texts {
			pieces, _ := readTemplate(text)
			aloneIn(pieces, code, func(hole string) { prose[hole] = key + " in " + lang })
		}
	}
	for hole := range code {
		if where, ok := prose[hole]; ok {
			fault("%s: {%s} is code elsewhere in the row", where, hole)
		}
	}
	if h := Holes(e.En.Explain); len(h) > 0 {
		fault("explain: no facts fill the holes %v", h)
	}
	return out
}

// aloneIn finds the holes that are a passage of code by themselves, and tells of those that stand in prose. A hole that only
// chooses a form says nothing itself.
func aloneIn(pieces []piece, code map[string]bool, prose func(string)) {
	for i, p := range pieces {
		if i > 0 && strings.HasSuffix(pieces[i-1].text, "{") {
			continue // between braces in a text, where a word that was found is put right
		}
		if len(p.code) == 1 && p.code[0].hole != "" && len(p.code[0].forms) < 2 {
			code[p.code[0].hole] = true
		}
		if p.hole != "" && len(p.forms) < 2 {
			prose(p.hole)
		}
		if len(p.forms) == 2 {
			aloneIn(p.forms[0], code, prose)
			aloneIn(p.forms[1], code, prose)
		}
	}
}

// textsOf gives every text of a wording a name. A mark that is empty is no text.
func textsOf(w Wording) map[string]string {
	m := map[string]string{"message": w.Message, "explain": w.Explain}
	if w.Mark != "" {
		m["mark"] = w.Mark
	}
	for k, v := range w.Related {
		m["related "+k] = v
	}
	for k, v := range w.Help {
		m["help "+k] = v
	}
	return m
}

func TestCatalogue(t *testing.T) {
	seen := map[Code]bool{}
	for _, e := range All() {
		if seen[e.Code] {
			t.Errorf("%s stands twice", e.Code)
		}
		seen[e.Code] = true
		for _, f := range faultsOf(e) {
			t.Errorf("%s: %s", e.Code, f)
		}
	}
}

// TestFaultsOf breaks a good row in each way that the test over the catalogue must notice.
func TestFaultsOf(t *testing.T) {
	good := func() *Entry {
		w := Wording{Message: "needs {n}", Mark: "here", Explain: "Why.",
			Related: map[string]string{"from": "from {m}"}, Help: map[string]string{"": "write {n}"}}
		v := w
		v.Related, v.Help = maps.Clone(w.Related), maps.Clone(w.Help)
		return &Entry{Code: "OV601", Severity: Error, En: w, Es: v, Example: "a", Fixed: "b"}
	}
	if f := faultsOf(good()); len(f) > 0 {
		t.Fatalf("a good row has faults: %v", f)
	}
	for want, spoil := range map[string]func(*Entry){
		"the code is not":           func(e *Entry) { e.Code = "601" },
		"no severity":               func(e *Entry) { e.Severity = 0 },
		"no example":                func(e *Entry) { e.Fixed = " " },
		"is the example":            func(e *Entry) { e.Fixed = e.Example },
		"English has [explain help": func(e *Entry) { delete(e.Es.Help, "") },
		"Spanish has [explain help": func(e *Entry) { e.Es.Mark = "" },
		"message: empty":            func(e *Entry) { e.Es.Message = "" },
		"explain: empty":            func(e *Entry) { e.En.Explain = "" },
		`says "syntax"`:             func(e *Entry) { e.En.Message = "bad syntax {n}" },
		`says "Sintaxis"`:           func(e *Entry) { e.Es.Mark = "Sintaxis mala" },
		`says "inválido"`:           func(e *Entry) { e.Es.Help[""] = "{n} es inválido" },
		"a { is not closed":         func(e *Entry) { e.En.Message = "needs {n|a" },
		"{n} is code elsewhere":     func(e *Entry) { e.Es.Mark = "{={n}}" },
		"no facts fill the holes":   func(e *Entry) { e.En.Explain = "Why {n}."; e.Es.Explain = "{n}" },
		"the holes [n], Spanish":    func(e *Entry) { e.Es.Message = "necesita {m}" },
		"the holes [m], Spanish":    func(e *Entry) { e.Es.Related["from"] = "de allí" },
	} {
		e := good()
		spoil(e)
		if f := faultsOf(e); !strings.Contains(strings.Join(f, "\n"), want) {
			t.Errorf("a row that %q is spoiled by: found %v", want, f)
		}
	}
}

// TestTerms checks that every word has all its forms, and TestTermsUsed (in cmd/ovillo) that every word asked for stands.
func TestTerms(t *testing.T) {
	for key, w := range terms {
		for _, form := range []string{w.en.one, w.en.other, w.es.one, w.es.other} {
			if form == "" {
				t.Errorf("%s: a form is missing", key)
			}
		}
	}
}

func TestIncomplete(t *testing.T) {
	d := Diagnostic{Code: "T01", Args: repeatArgs, Related: []Related{{Key: "from", Args: Args{"n": 1}}}}
	if f := Incomplete(d); len(f) > 0 {
		t.Errorf("a whole diagnostic leaves open: %v", f)
	}
	d = Diagnostic{Code: "T01", Args: Args{"row": 1, "unit": Term{"knot", 1}}, Help: "none",
		Related: []Related{{Key: "from"}, {Key: "gone"}}}
	got := strings.Join(Incomplete(d), "\n")
	for _, want := range []string{"message asks for {have}", "no word for term knot", "no help under none",
		"no related place under gone", "related place from asks for {n}"} {
		if !strings.Contains(got, want) {
			t.Errorf("missing %q in:\n%s", want, got)
		}
	}
	if f := Incomplete(Diagnostic{Code: "nothing"}); len(f) != 1 {
		t.Errorf("a code without a row: %v", f)
	}
}
