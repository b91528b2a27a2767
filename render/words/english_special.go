package words

import (
	"strconv"
	"strings"

	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// This file explains stitches in English.

// takesMakes says what a stitch takes of the row below and gives the next one.
func (e *english) takesMakes(takes, makes, spaces int) rich.Text {
	st := e.short("st")
	noun := func(n int) rich.Text {
		if n == 1 {
			return st.one
		}
		return st.many
	}
	if spaces > 0 {
		sp := e.spaces(exactly(1), false)
		return fill("Takes {}~{}, makes {}~{} and {}~{}.", takes, noun(takes), makes, noun(makes), spaces, sp.by(exactly(spaces)))
	}
	return fill("Takes {}~{}, makes {}.", takes, noun(takes), makes)
}

// specialName heads an explained stitch: Front post double crochet (FPdc).
func (e *english) specialName(f stitch.Form) rich.Text {
	if e.manner.Full {
		return e.form(f).one
	}
	return rich.T(e.formName(f) + " (" + e.form(f).one.String() + ")")
}

// overs is the yarn overs before the hook goes in: "yarn over 2 times, ".
func (e *english) overs(n int) string {
	switch n {
	case 0:
		return ""
	case 1:
		return e.word("over") + ", "
	}
	return e.word("over") + " " + strconv.Itoa(n) + tie + "times, "
}

// special explains a stitch: a group in one place, a decrease, a stitch round a post, or an extended one.
func (e *english) special(s explained) rich.Text {
	st := e.term("st").Short
	switch {
	case s.form.Group != stitch.Single:
		return e.group(s)
	case s.form.Together > 1:
		return e.together(s)
	case s.back:
		way, next := " (left-handed: from right to left)", " (left-handed: on the left)"
		if e.manner.Left {
			way, next = "", ""
		}
		return fill(e.expand(e.sided("Work from left to right, without turning")+way+e.sided(": insert hook in the {} on the right")+next+", {over}, draw up a loop; {over}, draw through 2~loops. {}"),
			e.short("st").one, e.takesMakes(1, 1, 0))
	case s.form.Post == stitch.NoPost:
		return fill(e.expand("{}, {over}, draw up a loop; {over}, draw through 1~loop; finish as {} {}. {}"),
			upper(e.overs(s.overs)+"insert hook in "+st), e.article(s.extends.one), s.extends.one, e.takesMakes(1, 1, 0))
	}
	from := "insert hook from front to back to front around the post of the " + st + ": the post comes forward"
	if s.form.Post == stitch.BackPost {
		from = "insert hook from back to front to back around the post of the " + st + ": the post stands away from you"
	}
	return fill("{}. Finish as {} {}. {}", upper(e.overs(s.overs)+from), e.article(s.base.one), s.base.one, e.takesMakes(1, 1, 0))
}

// article is a or an, by how an abbreviation is read out: an sc, an hdc, a dc, an FPdc, a rev dc. A name is read as it stands.
func (e *english) article(t rich.Text) string {
	s := t.String()
	if e.manner.Full {
		if s != "" && strings.ContainsAny(s[:1], "aeiou") {
			return "an"
		}
		return "a"
	}
	if s != "" && strings.ContainsAny(s[:1], "efhrsFR") && !strings.HasPrefix(s, "rev") {
		return "an"
	}
	return "a"
}

// leg is a stitch but for its last step. A half double crochet keeps two loops, any other stitch one. Where it holds
// brackets of its own, nested says so.
func (e *english) leg(s explained, insert string) (steps string, nested bool) {
	over := e.word("over")
	steps = e.overs(s.overs) + insert + ", " + over + ", draw up a loop"
	if s.form.Group == stitch.Puff {
		return e.overs(s.overs) + insert + ", " + over + ", draw up a long loop", false
	}
	if s.extended {
		steps += ", " + over + ", draw through 1" + tie + "loop"
	}
	switch {
	case s.half || s.overs == 0:
	case s.overs == 1:
		steps += ", " + over + ", draw through 2" + tie + "loops"
	default:
		return steps + ", [" + over + ", draw through 2" + tie + "loops] " + strconv.Itoa(s.overs) + tie + "times", true
	}
	return steps, false
}

// together explains a decrease: each stitch but for its last step, then all of them at once.
func (e *english) together(s explained) rich.Text {
	n, st := s.form.Together, e.term("st").Short
	insert := map[stitch.Post]string{
		stitch.NoPost:    "insert hook in next " + st,
		stitch.FrontPost: "insert hook from front to back to front around next " + st,
		stitch.BackPost:  "insert hook from back to front to back around next " + st,
	}[s.form.Post]
	steps, nested := e.leg(s, insert)
	if nested {
		return fill(e.expand("Do this {}~times: {}. Then {over}, draw through all {}~loops. {}"), n, steps, s.kept(n), e.takesMakes(n, 1, 0))
	}
	return fill(e.expand("[{}] {}~times; {over}, draw through all {}~loops. {}"), upper(steps), n, s.kept(n), e.takesMakes(n, 1, 0))
}

// group explains several stitches in one place.
func (e *english) group(s explained) rich.Text {
	n, one := s.form.Of, s.single
	in := map[stitch.Post]string{stitch.NoPost: "in one place", stitch.FrontPost: "around one post", stitch.BackPost: "around one post"}[s.form.Post]
	makes, spaces := s.form.Makes()
	made := e.takesMakes(s.form.Takes(), makes, spaces)
	switch s.form.Group {
	case stitch.CrossFront, stitch.CrossBack:
		past := map[stitch.Group]string{stitch.CrossFront: "in front of", stitch.CrossBack: "behind"}[s.form.Group]
		st, in := e.short("st"), into(s.form.Post)
		next, those, skipped := fill(in+" next {}", st.one), fill("this {}", st.one), fill(in+" the "+e.word("skipped")+" {}", st.one)
		if n > 2 {
			next, those, skipped = fill(in+" each of next {}~{}", n/2, st.many), fill("these {}", st.many), fill(in+" each of the {}~"+e.word("skipped")+" {}", n/2, st.many)
		}
		return fill(upper(e.word("skip"))+" {}, {} {}; working "+past+" {}, {} {}. {}", e.passed(exactly(n/2), spot{place: st}), one.one, next, those, one.one, skipped, made)
	case stitch.Shell:
		return fill("{}~{} "+in+". {}", n, one.many, made)
	case stitch.Vee:
		return fill("({}, {}, {}) "+in+". {}", one.one, e.chainsBy(1), one.one, made)
	case stitch.Picot:
		return fill("{}, {} in {}~{} from hook. It sits on the {} before it: it takes no {} and is not counted.",
			capital(e.chainsBy(n)), e.short("slst").one, e.ordinal(n), e.short("ch").one, e.short("st").one, e.short("st").one)
	case stitch.Popcorn:
		return fill("{}~{} "+in+"; take hook out of loop, insert it from front to back in first of these {}~{}, pick up the loop and draw it through (on a wrong side row, insert hook from back to front). {}",
			n, one.many, n, one.many, made)
	}
	insert := map[stitch.Post]string{
		stitch.NoPost:    "insert hook",
		stitch.FrontPost: "insert hook from front to back to front",
		stitch.BackPost:  "insert hook from back to front to back",
	}[s.form.Post]
	steps, nested := e.leg(s, insert)
	text := fill(e.expand("All "+in+": [{}] {}~times; {over}, draw through all {}~loops. "), steps, n, s.kept(n))
	if nested {
		text = fill(e.expand("All "+in+", do this {}~times: {}. Then {over}, draw through all {}~loops. "), n, steps, s.kept(n))
	}
	if s.form.Group == stitch.Bobble {
		text = fill("{}It stands out on the side away from you: push it to the right side. ", text)
	}
	return fill("{}{}", text, made)
}

// spikeSpecial explains a stitch that goes down into an older row.
func (e *english) spikeSpecial(spike, f noun) (head, text rich.Text) {
	st := e.short("st").one
	return spike.one, fill("Insert hook so many rows or rounds below as the row says, and draw up a loop to the height of the row you are working, so that the fabric does not pull in; finish as {} {}. The {} above that place is covered by it. {}",
		e.article(f.one), f.one, st, e.takesMakes(1, 1, 0))
}

// foundationSpecial explains stitches that make their own chain, from a new start or on from a row.
func (e *english) foundationSpecial(s explained, goesOn bool) (head, text rich.Text) {
	head = fill("Foundation {}", s.base.many)
	lead := e.overs(s.overs)
	if goesOn {
		head = fill("Foundation {} that go on from a row", s.base.many)
		return head, fill(e.expand("First stitch: "+lead+"insert hook in base of the {} just made, {over}, draw up a loop; {over}, draw through 1~loop (this is the chain of the stitch); finish as {} {}. "+
			"Next stitches: "+lead+"insert hook in the chain of the stitch before, and go on in the same way. Each makes its own chain and 1~{}."),
			e.short("st").one, e.article(s.base.one), s.base.one, e.short("st").one)
	}
	text = fill(e.expand("First stitch: {}, "+lead+"insert hook in {}~{} from hook, {over}, draw up a loop; {over}, draw through 1~loop (this is the chain of the stitch); finish as {} {}. "+
		"Next stitches: "+lead+"insert hook in the chain of the stitch before, and go on in the same way. Each makes its own chain and 1~{}."),
		e.chainsBy(s.start), e.ordinal(s.start), e.short("ch").one, e.article(s.base.one), s.base.one, e.short("st").one)
	return head, text
}
