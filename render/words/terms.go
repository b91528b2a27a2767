package words

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/terms"
	"ovillo/render/rich"
)

// term is the name of one concept in one reading, its abbreviations tied.
type term = terms.Term

// reading is the words of one reading, as they go into sentences.
type reading struct {
	*terms.Reading
	manner Manner
}

// nbsp ties the words of a text.
func nbsp(s string) string { return strings.ReplaceAll(s, " ", "\u00a0") }

// term returns the term of a concept. Where nothing is abbreviated its name stands for the abbreviation, and may break.
func (r *reading) term(concept string) term {
	t := r.Term(concept)
	if r.manner.Full {
		t.Short, t.Shorts = t.One, t.Many
		return t
	}
	t.Short, t.Shorts = nbsp(t.Short), nbsp(t.Shorts)
	return t
}

// word is the full name of a concept in the singular.
func (r *reading) word(concept string) string { return r.Term(concept).One }

// noun is something that is counted in a sentence.
type noun struct {
	one, many rich.Text
	feminine  bool
	figured   rich.Text // for one, behind its figure, where it is not called so elsewhere
}

// by picks the form for a number.
func (n noun) by(c num) rich.Text {
	if c.one() && n.figured != nil {
		return n.figured
	}
	if c.one() {
		return n.one
	}
	return n.many
}

// amount is how many of a noun: 1 pb, 2 (3; 3) pb. A noun that begins with a figure must not be read together with the number:
// 6 × 2pbjun.
func amount(n num, of noun) rich.Text {
	text := of.by(n)
	if first := text.String(); first != "" && first[0] >= '0' && first[0] <= '9' {
		return fill("{}~×~{}", n, text)
	}
	return fill("{}~{}", n, text)
}

// nounFor is the form of a noun that goes with a number.
func nounFor(count int, n noun) rich.Text {
	if count == 1 {
		return n.one
	}
	return n.many
}

// short is a concept by its abbreviation.
func (r *reading) short(concept string) noun { return abbreviated(r.term(concept)) }

func abbreviated(t term) noun {
	return noun{one: abbr(t.Short, t.One), many: abbr(t.Shorts, t.Many), feminine: t.Feminine}
}

// full is a concept by its full name.
func (r *reading) full(concept string) noun {
	t := r.term(concept)
	return noun{one: rich.T(t.One), many: rich.T(t.Many), feminine: t.Feminine}
}

// abbr is an abbreviation that screen readers expand.
func abbr(short, full string) rich.Text {
	if short == full || short == nbsp(full) {
		return rich.T(short)
	}
	return rich.Text{{Text: short, Expand: full}}
}

// concept is the row of the table for a stitch.
func concept(id stitch.ID) (string, bool) {
	_, ok := stitch.Of(id)
	return string(id), ok
}

// stitchConcepts are the rows of the table for the standard stitches.
func stitchConcepts() []string {
	var out []string
	for _, k := range stitch.Table {
		out = append(out, string(k.ID))
	}
	return out
}

// groupConcept is the row of the table for a group of stitches.
func groupConcept(g stitch.Group) string {
	k, _ := g.Kind()
	return k.Word
}

// others lists the other readings of the same language, writing in the same manner.
func (r *reading) others() []*reading {
	var list []*reading
	for _, o := range r.Others() {
		list = append(list, &reading{Reading: o, manner: r.manner})
	}
	return list
}

// of picks the text of the language, "" if there is none.
func (r *reading) of(t plan.Text) string { return t[r.Code()] }

// inches reports whether lengths are given in inches too.
func (r *reading) inches() bool { return r.Has("inches") && r.word("inches") == "yes" }

// hookName is what stands behind the millimetres of a hook: the marks of the countries whose hooks are in use, each with its
// country where there are several: "G-6", "UK 8, US G-6". It is "" if nothing does.
func (r *reading) hookName(us, uk string) string {
	if !r.Has("hook marks") {
		return ""
	}
	countries := strings.Fields(r.word("hook marks"))
	var out []string
	for _, country := range countries {
		switch mark := map[string]string{"US": us, "UK": uk}[country]; {
		case mark == "":
		case len(countries) == 1:
			out = append(out, mark)
		default:
			out = append(out, country+tie+mark)
		}
	}
	return strings.Join(out, ", ")
}
