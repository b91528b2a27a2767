package main

import (
	"bytes"
	"encoding/json"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// bracketed is a way to print code that shows where it was: between signs that stand in no message.
func bracketed(code string) string { return "⟦" + code + "⟧" }

var (
	theBrackets = strings.NewReplacer("⟦", "", "⟧", "")
	inBrackets  = regexp.MustCompile(`⟦[^⟦⟧]*⟧`)
	sourceLine  = regexp.MustCompile(`^ +[0-9]+ \|`)
)

// otherInSpanish are messages whose code differs between the languages, and why.
var otherInSpanish = map[diag.Code]string{
	"OV117": "a line of a text, in the language of the reader",
	"OV118": "a line of a text, in the language of the reader",
	"OV210": "the name of a size", "OV217": "a name to be chosen", "OV450": "a name to be chosen", "OV512": "a name to be chosen",
	"OV809": "a name to be chosen",
	"OV503": "Spanish has no word of its own for counting off",
}

// TestCodeAlone prints the example of every message twice, once with the code in it between brackets: nothing else changes, in
// text and in JSON, the author's own lines stay as they are, and the same is code in both languages.
func TestCodeAlone(t *testing.T) {
	coded := 0
	for _, e := range diag.All() {
		s := &loaded{open: files.Open, file: source.NewFile("example.ovillo", e.Whole())}
		if own, ok := compile.ReadOwnGauge(e.OwnGauge()); ok {
			s.gauges = append(s.gauges, own)
		}
		_, found := s.compile()
		stretches := map[string][]string{}
		for _, lang := range []string{"en", "es"} {
			plain, marked := diag.Printer{Lang: lang}, diag.Printer{Lang: lang, Code: bracketed}
			text := saidOf(t, marked, s.file, found)
			if theBrackets.Replace(text) != saidOf(t, plain, s.file, found) {
				t.Errorf("%s: more changes than code, or less:\n%s", e.Code, text)
			}
			for line := range strings.Lines(text) {
				if sourceLine.MatchString(line) && strings.Contains(line, "⟦") {
					t.Errorf("%s: a line of the source is changed: %s", e.Code, line)
				}
			}
			stretches[lang] = inBrackets.FindAllString(text, -1)
			slices.Sort(stretches[lang])
			sameRecords(t, e.Code, plain.Records(s.file, found), marked.Records(s.file, found))
		}
		if len(stretches["en"]) > 0 {
			coded++
		}
		if _, differs := otherInSpanish[e.Code]; differs == slices.Equal(stretches["en"], stretches["es"]) {
			t.Errorf("%s: code in English %q, in Spanish %q", e.Code, stretches["en"], stretches["es"])
		}
	}
	if coded < 150 {
		t.Errorf("only %d messages print code at all", coded)
	}
}

func saidOf(t *testing.T, p diag.Printer, f *source.File, found diag.List) string {
	t.Helper()
	var b bytes.Buffer
	if err := p.Text(&b, f, found); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// sameRecords compares what other tools get: codes and places are the same, and so are texts but for the brackets.
func sameRecords(t *testing.T, code diag.Code, plain, marked []diag.Record) {
	t.Helper()
	data, err := json.Marshal(marked)
	if err != nil {
		t.Fatal(err)
	}
	var bare []diag.Record
	if err := json.Unmarshal([]byte(theBrackets.Replace(string(data))), &bare); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(bare, plain) {
		t.Errorf("%s: the records differ in more than code:\n%s", code, data)
	}
	for i, r := range marked {
		if e := r.Edit; e != nil && e.Text != bracketed(plain[i].Edit.Text) {
			t.Errorf("%s: the edit is not code: %q", code, e.Text)
		}
	}
}

// TestCodeOnPages does the same for the page behind every code, and for the list of all codes.
func TestCodeOnPages(t *testing.T) {
	blanks := regexp.MustCompile(`\s+`)
	flat := func(s string) string { return blanks.ReplaceAllString(s, " ") }
	for _, lang := range []string{"en", "es"} {
		plain, marked := diag.Printer{Lang: lang}, diag.Printer{Lang: lang, Code: bracketed}
		print := func(p diag.Printer) (string, string) {
			var pages, index bytes.Buffer
			for _, e := range diag.All() {
				if err := p.Explain(&pages, e.Code); err != nil {
					t.Fatal(err)
				}
			}
			if err := p.Index(&index); err != nil {
				t.Fatal(err)
			}
			return pages.String(), index.String()
		}
		pages, index := print(plain)
		markedPages, markedIndex := print(marked)
		if flat(theBrackets.Replace(markedPages)) != flat(pages) || theBrackets.Replace(markedIndex) != index {
			t.Errorf("%s: more changes than code, or less", lang)
		}
		if n := len(inBrackets.FindAllString(markedPages, -1)); n < 800 {
			t.Errorf("%s: only %d stretches of code on all pages", lang, n)
		}
	}
}
