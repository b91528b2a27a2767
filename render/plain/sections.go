package plain

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

func (t *text) title() string {
	lines := []string{plainly(t.l.Title(t.p))}
	for _, s := range []string{t.p.By, t.l.Edition(t.p), t.l.SetFor(t.p)} {
		if s != "" {
			lines = append(lines, plainly(s))
		}
	}
	if t.l.Manner().Left {
		lines = append(lines, say(t.l.LeftHandedNote(t.p)))
	}
	return strings.Join(lines, "\n")
}

// prose is a text of the author, a paragraph or an item a line.
func (t *text) prose(p plan.Prose) string {
	var b strings.Builder
	for _, block := range t.l.Prose(t.p, p) {
		line := say(block.Text)
		if block.Bullet != "" {
			line = plainly(block.Bullet) + " " + line
		}
		b.WriteString(line + "\n")
	}
	return b.String()
}

func (t *text) cautionCount() int {
	n := 0
	for _, g := range t.l.Cautions(t.p, ofSafety) {
		n += len(g.Items)
	}
	return n
}

// ofSafety tells cautions from the notes for those who sell what they make.
func ofSafety(c plan.Caution) bool { return !c.Seller }

func (t *text) cautions() string { return t.cautionLines(ofSafety, words.CautionsStanding) }

func (t *text) sellers() string {
	return t.cautionLines(func(c plan.Caution) bool { return c.Seller }, words.SellersStanding)
}

func (t *text) cautionLines(want func(plan.Caution) bool, standing words.Key) string {
	var b strings.Builder
	for _, g := range t.l.Cautions(t.p, want) {
		if len(g.Only) > 0 {
			b.WriteString(say(g.Only) + "\n")
		}
		for _, item := range g.Items {
			b.WriteString("• " + say(item.Text) + "\n")
			for _, reason := range item.Reasons {
				b.WriteString("  " + say(reason) + "\n")
			}
		}
	}
	if b.Len() > 0 {
		b.WriteString(plainly(t.l.Say(standing)) + "\n")
	}
	return b.String()
}

// materials are the facts of the title page, and what each yarn takes in each size.
func (t *text) materials() string {
	var b strings.Builder
	notes := t.l.MaterialNotes(t.p)
	for _, f := range t.l.Facts(t.p) {
		// The notes say more than the facts of the same thing, but of the yarn something else.
		again := slices.ContainsFunc(notes, func(n words.Fact) bool { return n.Head == f.Head })
		if !again || f.Head == t.l.Say(words.YarnHead) {
			b.WriteString(plainly(f.Head) + ": " + say(f.Text) + "\n")
		}
	}
	for i, y := range t.p.Yarns {
		if len(y.Amount) != len(t.p.Sizes) {
			continue
		}
		name := upperFirst(t.l.YarnName(y))
		if len(t.p.Yarns) > 1 {
			name = words.YarnLetter(i) + ", " + lower(name)
		}
		var each []string
		for z, a := range y.Amount {
			amount := t.l.Number(float64(a.Milligrams)/1000, 0) + " g"
			if a.Balls > 0 {
				amount = fmt.Sprintf("%d × %s g", a.Balls, t.l.Number(float64(y.BallWeight)/1000, 1))
			}
			if a.Length != plan.NoLength && a.Length > 0 {
				amount += fmt.Sprintf(", %.0f m (%d yd)", float64(a.Length)/float64(1000*plan.Millimetre), a.Yards)
			}
			each = append(each, t.behind(z, amount))
		}
		b.WriteString(plainly(name+": "+strings.Join(each, "; ")) + "\n")
	}
	for _, f := range notes {
		b.WriteString(plainly(f.Head) + ": " + say(f.Text) + "\n")
	}
	return b.String()
}

// behind puts a figure behind the name of its size; with one size it stands alone.
func (t *text) behind(z int, figure string) string {
	if len(t.p.Sizes) == 1 {
		return figure
	}
	return t.l.SizeName(t.p.Sizes[z]) + ": " + figure
}

// sizes are the measures, size by size.
func (t *text) sizes() string {
	var b strings.Builder
	line := func(head string, list []string) {
		if len(list) > 0 {
			b.WriteString(plainly("  "+head+": "+strings.Join(list, "; ")) + "\n")
		}
	}
	for z, s := range t.p.Sizes {
		b.WriteString(plainly(upperFirst(t.l.InSize(s))) + "\n")
		var made, body []string
		for _, m := range t.p.Measures {
			if m.Values[z] != plan.NoLength {
				made = append(made, lower(t.l.MeasureName(m))+" "+t.length(m.Values[z], false))
			}
		}
		for _, k := range t.p.Body {
			if k.Values[z] != plan.NoLength {
				body = append(body, lower(t.l.BodyName(k.Name))+" "+t.length(k.Values[z], k.Memory))
			}
		}
		for _, m := range t.p.Measures {
			if m.Over != nil && !m.Over.Percent.Is(0) && m.Over.Stretched[z] != plan.NoLength {
				body = append(body, lower(t.l.Stretched(t.p, m))+" "+t.length(m.Over.Stretched[z], false))
			}
		}
		for _, m := range t.p.Measures {
			if m.Fits != nil && m.Fits.Ease != nil && m.Fits.Ease[z] != plan.NoLength {
				body = append(body, lower(t.l.Ease(m.Fits.Body))+" "+t.length(m.Fits.Ease[z], t.p.Remembered(m.Fits.Body)))
			}
		}
		line(t.l.Say(words.FinishedPiece), made)
		line(t.l.Say(words.ToFitBody), body)
	}
	for _, note := range t.l.BodyNotes(t.p) {
		b.WriteString(plainly(note) + "\n")
	}
	if len(t.p.Measures) == 0 && len(t.p.Body) == 0 {
		return ""
	}
	return b.String()
}

func (t *text) length(v plan.Length, memory bool) string {
	in := t.l.Inches(v)
	s := t.l.Cm(v) + " cm (" + in + " " + t.l.InchesBehind(in) + ")"
	if memory {
		s += words.FromMemory
	}
	return s
}

func (t *text) resizing() string {
	var b strings.Builder
	m := t.l.Manner()
	m.Full = true
	for _, f := range t.l.With(m).Resizing(t.p) {
		if f.Head != "" {
			b.WriteString(plainly(f.Head) + ": ")
		}
		b.WriteString(say(f.Text) + "\n")
	}
	return b.String()
}

// rows are all parts with their rows, a line each, and what is done before them and at the end.
func (t *text) rows() string {
	var b strings.Builder
	number := 0
	head := func(title string) {
		number++
		if number > 1 {
			b.WriteString("\n")
		}
		b.WriteString(plainly(strconv.Itoa(number)+". "+title) + "\n")
	}
	finish := func(before int, title words.Key) {
		nth := 0
		for k, f := range t.p.Finish {
			if f.Before != before {
				continue
			}
			if nth++; nth == 1 {
				head(t.l.Say(title))
			}
			b.WriteString(strconv.Itoa(nth) + ") " + oneLine(say(t.l.Finishing(t.p, f))) + "\n")
			for _, g := range t.l.Cautions(t.p, func(c plan.Caution) bool { return ofSafety(c) && c.Step == k }) {
				for _, item := range g.Items {
					b.WriteString("   " + plainly(t.l.CautionsHead(1)) + ": " + oneLine(say(item.Text)) + "\n")
				}
			}
		}
	}
	for i, part := range t.p.Parts {
		finish(i+1, words.AssemblyHead)
		head(t.l.PartTitle(t.p, i))
		if note := t.l.PartNote(t.p, part); len(note) > 0 {
			b.WriteString(oneLine(say(note)) + "\n")
		}
		b.WriteString(t.step(t.l.Start(t.p, part)))
		for _, step := range part.Steps {
			b.WriteString(t.step(t.l.Step(t.p, part, step)))
		}
	}
	finish(0, words.FinishingHead)
	for _, note := range t.p.Notes {
		if s := t.prose(note); s != "" {
			b.WriteString("\n" + plainly(t.l.Say(words.NotesHead)) + "\n" + s)
		}
	}
	return b.String()
}

// step is a row in one line: for which sizes, its number, what is done, what it comes to.
func (t *text) step(st words.StepText) string {
	if len(st.Body) == 0 && st.Count == nil {
		return ""
	}
	var parts []string
	if len(st.Only) > 0 {
		parts = append(parts, say(st.Only)+".")
	}
	label := say(st.Label)
	switch {
	case st.Slots != nil && len(t.p.Sizes) == 1:
		label += " " + st.Slots[0]
	case st.Slots != nil:
		label += " " + say(t.l.BySize(t.p, st.Slots))
	}
	if label != "" {
		parts = append(parts, plainly(label)+":")
	}
	if len(st.Body) > 0 {
		parts = append(parts, oneLine(say(st.Body)))
	}
	if c := st.Count; c != nil {
		parts = append(parts, "= "+t.count(c))
	}
	return strings.Join(parts, " ") + "\n"
}

func (t *text) count(c *words.CountText) string {
	switch {
	case c.Slots == nil:
		return say(c.Line)
	case len(c.Slots) == 1:
		return plainly(c.Slots[0]) + " " + say(c.Unit)
	}
	return say(t.l.BySize(t.p, c.Slots)) + " " + say(c.Unit)
}

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

func (t *text) abbreviations() string {
	var b strings.Builder
	if list := t.l.Abbreviations(t.p); len(list) > 0 {
		b.WriteString(say(t.l.TermsNote(t.p)) + "\n")
		for _, a := range list {
			line := a.Short + " = " + a.Meaning
			if len(a.Others) > 0 {
				line += " (" + t.l.OthersHead() + ": " + strings.Join(a.Others, "; ") + ")"
			}
			b.WriteString(oneLine(plainly(line)) + "\n")
		}
	}
	return b.String()
}

func (t *text) specials() string {
	var b strings.Builder
	for _, s := range t.l.Specials(t.p) {
		b.WriteString(oneLine(say(s.Head)) + ": " + oneLine(say(s.Text)) + "\n")
	}
	return b.String()
}

func (t *text) care() string {
	s := t.prose(t.p.Care)
	if c := t.l.Contents(t.p); len(c) > 0 {
		s += oneLine(say(c)) + "\n"
	}
	return s
}

// shown is the pattern in the size that a film shows: the one it has, or else the one that is drawn.
func (t *text) shown() *plan.Pattern {
	if len(t.p.Sizes) == 1 {
		return t.p
	}
	return t.p.In(max(0, min(t.p.Shown, len(t.p.Sizes)-1)))
}

// shots are what a film has to show, part by part.
func (t *text) shots() string {
	var b strings.Builder
	p := t.shown()
	l := t.l.Keeping(p)
	part, nth := -2, 0
	for _, shot := range l.Shots(p) {
		if shot.Part != part {
			part = shot.Part
			title := l.Say(words.FinishingHead)
			if part >= 0 {
				title = l.PartTitle(p, part)
			}
			b.WriteString(plainly(title) + "\n")
		}
		nth++
		line := strconv.Itoa(nth) + ". "
		if len(shot.Label) > 0 {
			line += say(shot.Label) + ": "
		}
		line += say(shot.Why)
		if len(shot.Say) > 0 {
			line += " " + plainly(l.SayWith(words.SayAloud, shot.Say.String()))
		}
		b.WriteString(oneLine(line) + "\n")
	}
	return b.String()
}

func upperFirst(s string) string {
	r := []rune(s)
	if len(r) == 0 {
		return s
	}
	return strings.ToUpper(string(r[:1])) + string(r[1:])
}
