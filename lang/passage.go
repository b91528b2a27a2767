package lang

import (
	"strings"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// A passage of code in a message is a line, an instruction, a value or a piece of these. What its words mean depends on where
// they stand: `for` is one thing behind a button and another behind rows. So a passage is tried in each of the settings below,
// and turned in the first one in which it can be read.

// setting is the source around a passage.
type setting struct{ before, after string }

// settings are tried in this order. The names in them are words of no language.
var settings = func() []setting {
	var all []setting
	in := func(block string, lines ...string) {
		for _, l := range lines {
			before, after, _ := strings.Cut(l, "…")
			all = append(all, setting{block + "\n  " + before, after + "\nend\n"})
		}
	}
	in("part q1", "round: …", "round: sc …", "round: sc in …", "round: move q2 …", "round: sc in each …", "…", "… sc in each",
		"row, …: sc in each", "rows …: sc in each", "from right edge of q2 …", "chain …")
	in("part q1\n  shape q2: 6 rounds", "…\n  end", "… dec, sc in each\n  end", "… dec on row 1, then every 2 rows, 3 times\n  end")
	in("part q1", "shape q2: 6 rounds, …\n  end")
	all = append(all, setting{"", "\n"}, setting{"", "\nend\n"})
	for _, block := range []string{"pattern q1", "sizes \"S\"", "gauge 10 cm", "yarn q1", "sample \"S\"", "stitch q1", "chart q1", "motifs q1 of q2",
		"stitch pattern q1", "finish", "measure"} {
		in(block, "…")
	}
	in("finish", "cord with q1, length 1 cm, …", "sew q1.edge to q2.edge …")
	in("measure", "q1 = …")
	return all
}()

// read is [Parse]. The hints of Parse need code, so that code cannot name Parse itself.
var read func(*source.File) (*File, diag.List)

func init() { read = Parse }

// ellipsis stands for what a passage leaves out; a name can be read in most places.
const ellipsis = "left_out"

// code turns a passage of code in a message. It is read in the setting in which the fewest of its words are names that
// the language does not know. Where it can be read in none, or its first word would then be such a name although it is a word of the
// language, the usual one of several translations is taken for each word.
func (t *tongue) code(english string) string {
	w := &turner{tongue: t, text: english, tokens: Tokens(english), loose: true}
	w.run()
	usual := w.b.String()
	if !strings.ContainsAny(english, " .") || strings.Contains(english, "\n") {
		return usual
	}
	var best turned
	for _, text := range []string{strings.TrimSuffix(english, " …"), english} {
		left := english[len(text):]
		for _, s := range settings {
			if other, ok := t.codeIn(strings.ReplaceAll(text, "…", ellipsis), s); ok && (best.text == "" || other.own < best.own) {
				best = other
				best.text += left
			}
		}
	}
	first, rest := firstWordOf(english)
	if best.text == "" || best.begins && !strings.HasPrefix(rest, ".") && !strings.HasPrefix(usual, first) {
		return usual
	}
	return strings.ReplaceAll(best.text, ellipsis, "…")
}

// firstWordOf parts a passage behind its first word.
func firstWordOf(text string) (word, rest string) {
	end := wordEnd(text, 0)
	return text[:end], text[end:]
}

// turned is a passage in another language, as it is read in one setting.
type turned struct {
	text   string
	own    int  // how many of its words are names that the language does not know
	begins bool // the first one is
}

// codeIn turns a passage in a setting, if it can be read there and means the same in the other language.
func (t *tongue) codeIn(english string, s setting) (turned, bool) {
	start, end := int32(len(s.before)), int32(len(s.before)+len(english))
	f, faults := read(source.NewFile("", s.before+english+s.after))
	if len(faults) > 0 {
		return turned{}, false
	}
	var out turned
	uses := f.nameUses()
	own := ownNamesOf(uses)
	for _, u := range uses {
		for i, at := range f.wordSpans(u) {
			if at.Start >= start && at.Start < end && t.word(*u.words[i], u.from[i], own) == *u.words[i] {
				out.own++
				out.begins = out.begins || at.Start == start
			}
		}
	}
	w := t.turnerOf(f, uses)
	from, to := -1, -1
	w.first = true
	for w.i < len(w.tokens) {
		switch w.tokens[w.i].Span.Start {
		case start:
			from = w.b.Len()
		case end:
			to = w.b.Len()
		}
		w.next()
	}
	if from < 0 || to < 0 {
		return turned{}, false
	}
	text := w.b.String()
	again, faults := read(source.NewFile("", t.head+" "+t.reading.Tag()+"\n\n"+text))
	if _, same := sameMeaning(f, again); !same || len(faults) > 0 {
		return turned{}, false
	}
	out.text = text[from:to]
	return out, true
}
