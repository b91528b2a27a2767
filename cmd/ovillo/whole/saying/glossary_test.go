package saying

import (
	"slices"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/terms"
	"ovillo/render/page"
	"ovillo/render/words"
)

// eachExample calls f with the checked pattern of every example, several at once.
func eachExample(t *testing.T, f func(t *testing.T, p *plan.Pattern)) {
	t.Helper()
	for _, s := range whole.Examples(t) {
		t.Run(s.Name, func(t *testing.T) {
			t.Parallel()
			f(t, s.Plan(t))
		})
	}
}

// What the pages abbreviate stands in the table of abbreviations or among the stitches that are explained, and nothing else
// does: in every reading of every example.
func TestGlossaryIsWhatThePagesUse(t *testing.T) {
	eachExample(t, func(t *testing.T, p *plan.Pattern) {
		for _, l := range words.Readings() {
			text := textOf(whole.Compose(t, p, l))
			known := map[string]bool{}
			for _, a := range l.Abbreviations(p) {
				forms := strings.Split(a.Short, ", ")
				for _, f := range forms {
					known[plainBlanks(f)] = true
				}
				if !slices.ContainsFunc(forms, func(f string) bool { return hasWord(text.rest, plainBlanks(f)) }) {
					t.Errorf("%s: %q is listed and not used", l.Tag(), a.Short)
				}
				if !hasWord(strings.ReplaceAll(text.table, "\n", " "), plainBlanks(forms[0])) {
					t.Errorf("%s: %q is not on the page", l.Tag(), a.Short)
				}
			}
			explained := ""
			for _, s := range l.Specials(p) {
				explained += " " + plainBlanks(s.Head.String())
			}
			for short, full := range text.expanded {
				if !known[short] && !known[lowerFirstWord(short)] && !known[one(short)] && !strings.Contains(explained, strings.TrimSuffix(short, "s")) {
					t.Errorf("%s: %q (%s) is used and neither listed nor explained", l.Tag(), short, full)
				}
			}
			for _, short := range abbreviationsOf(l.Tag()) {
				if !known[short] && standsAs(text.rest, short) {
					t.Errorf("%s: %q stands in the text and is not listed", l.Tag(), short)
				}
			}
			if len(text.expanded) < 3 {
				t.Errorf("%s: only %d abbreviations were seen", l.Tag(), len(text.expanded))
			}
		}
	})
}

// pageText is the text of a document: what stands in tables, the rest, and what is said to be an abbreviation.
type pageText struct {
	table, rest string
	expanded    map[string]string
}

func textOf(doc *page.Document) pageText {
	cell := map[*page.Elem]bool{}
	var mark func(e *page.Elem, in bool)
	mark = func(e *page.Elem, in bool) {
		in = in || e.Tag == "TD" || e.Tag == "TH"
		cell[e] = in
		for _, k := range e.Kids {
			mark(k, in)
		}
	}
	mark(doc.Root, false)
	out := pageText{expanded: map[string]string{}}
	for _, pg := range doc.Pages {
		for _, it := range pg.Items {
			g, ok := it.(page.Glyphs)
			switch {
			case !ok:
			case cell[g.Elem]:
				out.table += plainBlanks(g.Text) + "\n"
			default:
				out.rest += plainBlanks(g.Text) + "\n"
				if g.Expand != "" {
					out.expanded[plainBlanks(strings.TrimRight(g.Text, ".,;:"))] = g.Expand
				}
			}
		}
	}
	return out
}

func plainBlanks(s string) string { return strings.ReplaceAll(s, "\u00a0", " ") }

// one is an abbreviation of words without the s of several: barretas rel del.
func one(short string) string {
	words := strings.Fields(short)
	for i, w := range words {
		words[i] = strings.TrimSuffix(w, "s")
	}
	return strings.Join(words, " ")
}

func lowerFirstWord(s string) string { return strings.ToLower(s[:1]) + s[1:] }

// hasWord reports whether a text holds a word, at the head of a sentence or within.
func hasWord(text, word string) bool {
	return standsAs(text, word) || standsAs(text, strings.ToUpper(word[:1])+word[1:])
}

// standsAs reports whether a text holds a word as it is written.
func standsAs(text, word string) bool {
	for from := 0; ; {
		i := strings.Index(text[from:], word)
		if i < 0 {
			return false
		}
		i += from
		before, _ := utf8.DecodeLastRuneInString(text[:i])
		after, _ := utf8.DecodeRuneInString(text[i+len(word):])
		if !unicode.IsLetter(before) && !unicode.IsLetter(after) && after != '’' {
			return true
		}
		from = i + len(word)
	}
}

// abbreviationsOf lists what the table of terms abbreviates in a reading: stitches and the places they go into.
func abbreviationsOf(tag string) []string {
	var out []string
	r, _ := terms.Standard().Reading(tag)
	concepts := []string{"st", "sp"}
	for _, k := range stitch.Table {
		concepts = append(concepts, string(k.ID))
	}
	for _, concept := range concepts {
		if t := r.Term(concept); t.Short != t.One {
			out = append(out, t.Short)
		}
	}
	return out
}

// The reading stands on the first page and at the foot of every page, in each of them and for both languages of a page.
func TestEveryPageSaysItsReading(t *testing.T) {
	all := words.Readings()
	eachExample(t, func(t *testing.T, p *plan.Pattern) {
		for i, l := range all {
			langs := []*words.Language{l}
			if other := all[(i+3)%len(all)]; other.Code() != l.Code() {
				langs = append(langs, other)
			}
			doc := whole.Compose(t, p, langs...)
			for n, pg := range doc.Pages {
				foot, body := "", ""
				for _, it := range pg.Items {
					if g, ok := it.(page.Glyphs); ok && g.Elem == nil {
						foot += plainBlanks(g.Text) + "\n"
					} else if ok {
						body += plainBlanks(g.Text) + " "
					}
				}
				for _, l := range langs {
					if !strings.Contains(foot, l.ReadingNote()) {
						t.Errorf("%s, page %d: the foot does not say %q", l.Tag(), n+1, l.ReadingNote())
					}
					if n == 0 && !strings.Contains(strings.ToLower(body), strings.ToLower(l.ReadingNote())) {
						t.Errorf("%s: the first page does not say %q", l.Tag(), l.ReadingNote())
					}
				}
			}
		}
	})
}
