package main

import (
	"bytes"
	"encoding/csv"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/cmd/ovillo/starter"
	"ovillo/lang/format"
	"ovillo/lang/source"
)

// beginningOf is a pattern as `ovillo new` begins it.
func beginningOf(t *testing.T, kind starter.Kind, lang, name string) string {
	t.Helper()
	data, err := starter.Pattern{Kind: kind, Lang: lang, Name: name, File: name + ".ovillo", Month: "2026-03"}.Source()
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// foundIn is what is found in a source, as it is printed.
func foundIn(t *testing.T, text string) string {
	t.Helper()
	s := &loaded{file: source.NewFile("new.ovillo", text)}
	_, found := s.compile()
	return printed(t, s, found)
}

// eachBeginning calls a test for every kind in both languages.
func eachBeginning(t *testing.T, test func(t *testing.T, kind starter.Kind, lang, text string)) {
	for _, kind := range starter.Kinds() {
		for _, lang := range []string{"en", "es"} {
			t.Run(kind.Name+"/"+lang, func(t *testing.T) {
				t.Parallel()
				test(t, kind, lang, beginningOf(t, kind, lang, "alba"))
			})
		}
	}
}

// Every beginning is whole: nothing at all is found in it, it has its usual shape, its pages can be set, and it can be read in a
// few minutes.
func TestBeginnings(t *testing.T) {
	eachBeginning(t, func(t *testing.T, kind starter.Kind, lang, text string) {
		s := &loaded{path: "alba.ovillo", file: source.NewFile("alba.ovillo", text)}
		p, found := s.compile()
		if len(found) > 0 {
			t.Fatalf("found:\n%s", printed(t, s, found))
		}
		if set, _ := format.Source([]byte(text)); string(set) != text {
			t.Error("it is not in its usual shape")
		}
		if n := strings.Count(text, "\n"); n < 60 || n > 120 {
			t.Errorf("%d lines", n)
		}
		if strings.HasPrefix(text, "idioma es\n") != (lang == "es") || strings.Contains(text, "@") {
			t.Errorf("it begins so:\n%.200s", text)
		}
		if data, pages, err := setPages(p, edition{langs: p.Languages}, s.attachedName(p)); err != nil || pages == 0 || !bytes.HasPrefix(data, []byte("%PDF")) {
			t.Errorf("its pages: %d, %v", pages, err)
		}
	})
}

// The Spanish and the English beginning are one pattern: the same counts in every row and size.
func TestBeginningsAlike(t *testing.T) {
	counts := func(kind starter.Kind, lang string) [][]string {
		s := &loaded{file: source.NewFile("alba.ovillo", beginningOf(t, kind, lang, "alba"))}
		p, _ := s.compile()
		rows, err := csv.NewReader(bytes.NewReader(countsCSV(p))).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		for i, r := range rows {
			rows[i] = append([]string{r[1]}, r[4:]...) // names differ
		}
		return rows
	}
	for _, kind := range starter.Kinds() {
		en, es := counts(kind, "en"), counts(kind, "es")
		if len(en) < 20 || !slices.EqualFunc(en, es, slices.Equal[[]string]) {
			t.Errorf("%s: %d and %d rows differ", kind.Name, len(en), len(es))
		}
	}
}

// What the remarks claim is so: the other levels can be written, the measure of one's own does as well as the table, and what is
// said to raise a message raises it.
func TestBeginningsTrue(t *testing.T) {
	raises := map[string]struct{ behind, en, es string }{
		"OV922": {`(?m)^(finish|acabado)\n`, "  pompom with main, 6 cm, 90 wraps\n", "  pompón con principal, 6 cm, 90 pasadas\n"},
		"OV727": {`(?m)^(finish|acabado)\n`, "  cord with main, length 60 cm, through foot round 10, ends plain\n",
			"  cordón con principal, largo 60 cm, pasado por patuco vuelta 10, cabos lisos\n"},
		"OV938": {`(?m)^(?:notion|material) .*\n`, "notion en \"safety eyes\" es \"ojos de seguridad\", 2\n",
			"material en \"safety eyes\" es \"ojos de seguridad\", 2\n"},
	}
	level := regexp.MustCompile(`(?m)^  (?:level|nivel) +(\S+) +# (?:or|o) (.*)$`)
	own := regexp.MustCompile(`(?m)^  (?:body|tabla) .*(?:or write|o bien): (.*)$`)
	code := regexp.MustCompile(`OV\d+`)
	eachBeginning(t, func(t *testing.T, kind starter.Kind, lang, text string) {
		m := level.FindStringSubmatch(text)
		if m == nil {
			t.Fatal("no other level is named")
		}
		for other := range strings.SplitSeq(m[2], ", ") {
			if found := foundIn(t, strings.Replace(text, m[1]+" ", other+" ", 1)); found != "" {
				t.Errorf("level %s: %s", other, found)
			}
		}
		if m := own.FindStringSubmatch(text); m != nil {
			if found := foundIn(t, strings.Replace(text, m[0], "  "+m[1], 1)); found != "" {
				t.Errorf("%s: %s", m[1], found)
			}
		}
		named := code.FindString(text)
		if named == "" {
			t.Error("no remark says what would be asked about")
		}
		changed := strings.Replace(text, "+ 26 cm", "+ 60 cm", 1)
		if r, ok := raises[named]; ok {
			line := r.en
			if lang == "es" {
				line = r.es
			}
			at := regexp.MustCompile(r.behind).FindStringIndex(text)
			changed = text[:at[1]] + line + text[at[1]:]
		}
		if found := foundIn(t, changed); !strings.Contains(found, "["+named+"]") {
			t.Errorf("%s is not raised:\n%s", named, found)
		}
	})
}

// A name makes a title in both languages, and a name for the source whatever it is.
func TestBeginningsNamed(t *testing.T) {
	hat, _ := starter.Named("gorro")
	for name, want := range map[string]string{
		"sea-hat":         "pattern sea_hat\n  title   en \"Sea hat\" es \"Gorro Sea\"",
		"gorro_mar":       "pattern gorro_mar\n  title   en \"Mar hat\" es \"Gorro Mar\"",
		"hat":             "pattern hat\n  title   en \"Hat\" es \"Gorro\"",
		"Alba":            "pattern alba\n  title   en \"Alba hat\" es \"Gorro Alba\"",
		"pattern":         "pattern pattern_hat\n  title   en \"Pattern hat\" es \"Gorro Pattern\"",
		"3":               "pattern hat\n  title   en \"3 hat\" es \"Gorro 3\"",
		"a\u0301rbol":     "pattern árbol\n  title   en \"Árbol hat\" es \"Gorro Árbol\"",
		"帽":               "pattern 帽\n  title   en \"Hat\" es \"Gorro\"",
		`say "hi" \ it`:   "pattern say_hi_it\n  title   en \"Say hi it hat\" es \"Gorro Say hi it\"",
		"ola\x1b[31mroja": "",
	} {
		text := beginningOf(t, hat, "en", name)
		if !strings.Contains(text, want) {
			t.Errorf("%q: not %q:\n%.900s", name, want, text)
		}
		if found := foundIn(t, text); found != "" {
			t.Errorf("%q: %s", name, found)
		}
	}
}
