package main

import (
	"fmt"
	"math/rand"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// slips is how many spoiled sources TestSlips tries; the random numbers are the same every time.
const slips = 400

// TestSlips spoils good sources the way a hand does: numbers changed, lines swapped, lost or doubled, words out of order.
// Whatever comes of it, nothing panics, every message is whole, and what has no error can be set.
func TestSlips(t *testing.T) {
	var texts []string
	for _, s := range append(sourcesIn(t, "examples"), sourcesIn(t, "testdata", "cases")...) {
		texts = append(texts, s.file.Text)
	}
	for _, e := range diag.All() {
		texts = append(texts, e.Fixed)
	}
	rnd := rand.New(rand.NewSource(7))
	set := 0
	for range slips {
		text := texts[rnd.Intn(len(texts))]
		for range 1 + rnd.Intn(3) {
			text = spoil(text, rnd)
		}
		done, wrong := survive(text)
		if wrong != "" {
			t.Errorf("%s, in\n%s", wrong, text)
		}
		if done {
			set++
		}
	}
	if set < slips/10 {
		t.Errorf("only %d of %d spoiled sources were still patterns: the slips are too rough to test the pages", set, slips)
	}
}

// survive takes a text through the whole pipeline. It reports whether pages came of it, and what must not happen.
func survive(text string) (set bool, wrong string) {
	defer func() {
		if fault := recover(); fault != nil {
			wrong = "panic: " + fmt.Sprint(fault) + whereFault()
		}
	}()
	s := &loaded{file: source.NewFile("slip.ovillo", text)}
	p, found := s.compile()
	for _, d := range found {
		if open := diag.Incomplete(d); len(open) > 0 {
			return false, fmt.Sprintf("%s: %s", d.Code, strings.Join(open, "; "))
		}
	}
	if p == nil || found.HasErrors() {
		return false, ""
	}
	if _, _, err := setPages(p, edition{}.of(p), "slip.ovillo"); err != nil {
		return false, "no error was found, but the pages cannot be set: " + err.Error()
	}
	return true, ""
}

var anyNumber = regexp.MustCompile(`\b\d+\b`)

// spoil makes one slip.
func spoil(text string, rnd *rand.Rand) string {
	lines := strings.Split(text, "\n")
	a, b := rnd.Intn(len(lines)), rnd.Intn(len(lines))
	switch rnd.Intn(5) {
	case 0:
		lines[a] = anyNumber.ReplaceAllStringFunc(lines[a], func(string) string { return fmt.Sprint(rnd.Intn(30)) })
	case 1:
		lines[a], lines[b] = lines[b], lines[a]
	case 2:
		lines = slices.Delete(lines, a, a+1)
	case 3:
		lines = slices.Insert(lines, a, lines[b])
	case 4:
		words := strings.Fields(lines[a])
		rnd.Shuffle(min(3, len(words)), func(i, k int) { words[i], words[k] = words[k], words[i] })
		lines[a] = strings.Join(words, " ")
	}
	return strings.Join(lines, "\n")
}
