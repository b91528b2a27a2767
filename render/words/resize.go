package words

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// Resizing says how a maker makes a piece larger or smaller, part by part, at the gauge of the pattern: which numbers a part may start
// with, what so many stitches more do to it and one row more to its length, and what changes with it. It is nil where the pattern has no
// gauge, since nothing can be worked out then.
func (l *Language) Resizing(p *plan.Pattern) []Fact {
	var facts []Fact
	for i, part := range p.Parts {
		c := l.context(p, part, nil)
		texts := []rich.Text{c.resizedStart(i), c.resizedRows(i)}
		if from := grownFrom(p, i); len(from) > 0 && len(join(" ", texts...)) > 0 {
			texts = append(texts, fill(l.voice.line(growFrom), c.partNames(from)))
		}
		if text := join(" ", texts...); len(text) > 0 {
			facts = append(facts, Fact{Head: l.PartTitle(p, i), Text: paragraph(text)})
		}
	}
	if len(facts) > 0 {
		facts = append(facts, Fact{Head: "", Text: paragraph(fill(l.voice.line(growAfter)))})
	}
	return facts
}

// resizedStart says which numbers a part may start with, and what so many more are around or across.
func (c *context) resizedStart(i int) rich.Text {
	part := c.p.Parts[i]
	if part.Grid != nil {
		if side, ok := sameLength(part.Grid.Each); ok && side != plan.NoLength {
			return fill(c.l.voice.line(growMotif), c.small(side))
		}
		return nil
	}
	if part.Motifs != nil {
		return nil // a motif of another size fits no other motif
	}
	if n, wide := ringsOf(part); n > 0 {
		return fill(c.l.voice.line(growRings), amount(exactly(n), c.l.voice.places(plan.Stitch)), c.small(wide))
	}
	switch part.Start.Kind {
	case plan.StartRing, plan.StartChainRing, plan.StartBothSides:
		return c.resizedMost(i)
	}
	if part.Start.N == nil {
		return nil
	}
	line, across := growAcross, part.Style == plan.Rows
	if !across {
		line = growAround
	}
	r := startedFrom(c.p, i)
	if r == nil {
		wide := stitchWidth(part)
		if wide == plan.NoLength {
			return nil
		}
		return join(" ", rich.T(c.l.voice.line(growOwn)), fill(c.l.voice.line(line), amount(exactly(1), c.l.voice.places(plan.Stitch)), c.small(wide)))
	}
	multiple, ok := r.Multiple.Same()
	plus, same := r.Plus.Same()
	if !ok || !same || multiple < 1 {
		return nil
	}
	var out rich.Text
	switch {
	case multiple > 1 && plus > 0:
		out = fill(c.l.voice.line(growPlus), c.l.integer(multiple), c.l.integer(plus))
	case multiple > 1:
		out = fill(c.l.voice.line(growMultiple), c.l.integer(multiple))
	}
	wide := grownBy(r, multiple)
	if wide == plan.NoLength {
		return out
	}
	return join(" ", out, fill(c.l.voice.line(line), amount(exactly(multiple), c.l.voice.places(plan.Stitch)), c.small(wide)))
}

// resizedMost says of a part that grows from a middle what so many stitches more are around where it is widest: of as many as the gauge was
// asked for, if that is the number it grows to; else of one.
func (c *context) resizedMost(i int) rich.Text {
	part := c.p.Parts[i]
	if part.Style == plan.Rows {
		return nil
	}
	most, wide := widest(part)
	if wide == plan.NoLength {
		return nil
	}
	if r := madeFrom(c.p, i, most); r != nil {
		if multiple, ok := r.Multiple.Same(); ok && multiple > 0 {
			if step := grownBy(r, multiple); step != plan.NoLength {
				st := c.l.voice.places(plan.Stitch)
				return join(" ", fill(c.l.voice.line(growReached), amount(c.num(most), st)),
					fill(c.l.voice.line(growAround), amount(exactly(multiple), st), c.small(step)))
			}
		}
	}
	return fill(c.l.voice.line(growWidest), amount(exactly(1), c.l.voice.places(plan.Stitch)), c.small(wide))
}

// widest finds the most stitches that a row of a part has, in each size, and how wide one of them is; NoLength if no gauge tells.
func widest(part *plan.Part) (plan.Nums, plan.Length) {
	most, wide := make(plan.Nums, len(part.Worked)), plan.NoLength
	for z, rows := range part.Worked {
		most[z] = plan.Absent
		for _, r := range rows {
			if r.Stitches > 0 && (most[z] == plan.Absent || r.Stitches > most[z]) {
				most[z] = r.Stitches
				if r.Width != plan.NoLength {
					wide = r.Width / plan.Length(r.Stitches)
				}
			}
		}
	}
	return most, wide
}

// resizedRows says what one row more does to the length, where rows were worked to a length.
func (c *context) resizedRows(i int) rich.Text {
	part := c.p.Parts[i]
	var out rich.Text
	for k := range c.p.Rounded {
		r := &c.p.Rounded[k]
		if r.Unit != plan.UnitRows || r.Part != i && !(r.Part < 0 && endsWith(part, r.Counts)) {
			continue
		}
		step := 1
		if m, ok := r.Multiple.Same(); ok && m > 1 {
			step = m
		}
		if high := higherBy(part, r, step); high != plan.NoLength {
			noun := c.l.voice.places(plan.RowEnd)
			noun.one, noun.many = rich.T(c.l.rowWord(c.round(), false)), rich.T(c.l.rowWord(c.round(), true))
			out = join(" ", out, fill(c.l.voice.line(growRows), amount(exactly(step), noun), c.small(high)))
			break // a part has one height of row worth saying
		}
	}
	return out
}

// higherBy is what so many rows more of a part measure. What was worked until the part measured a length says what all of it measures, so
// that a row of the stitch is asked first; rows of several stitches count from where the part had come to.
func higherBy(part *plan.Part, r *plan.Rounded, step int) plan.Length {
	for z, rows := range part.Worked {
		sum, count := plan.Length(0), 0
		if z < len(r.Counts) && r.Counts[z] != plan.Absent {
			count = r.Counts[z]
		}
		for k, row := range rows {
			if row.Height == plan.NoLength {
				break
			}
			if row.Tall == r.Stitch {
				return row.Height * plan.Length(step)
			}
			if sum += row.Height; count > 0 && k+1 > count && z < len(r.Got) && sum == r.Got[z] {
				var own plan.Length
				for _, last := range rows[k+1-count : k+1] {
					own += last.Height
				}
				return (own*plan.Length(step) + plan.Length(count)/2) / plan.Length(count)
			}
		}
	}
	return grownBy(r, step)
}

// rowWord is the word for a row or a round, one or several.
func (l *Language) rowWord(round, several bool) string {
	concept := "row"
	if round {
		concept = "round"
	}
	t := l.read.Term(concept)
	if several {
		return t.Many
	}
	return t.One
}

// endsWith reports whether a part has as many rows as a value says, in every size.
func endsWith(part *plan.Part, counts plan.Nums) bool {
	for z, n := range counts {
		if z >= len(part.Worked) || len(part.Worked[z]) == 0 || n == plan.Absent || part.Worked[z][len(part.Worked[z])-1].Number != n {
			return false
		}
	}
	return len(counts) > 0
}

// startedFrom finds the length from which the number was made that a part starts with; nil if it is the designer's.
func startedFrom(p *plan.Pattern, i int) *plan.Rounded { return madeFrom(p, i, p.Parts[i].Start.N) }

// madeFrom finds the length from which a count of a part was made; nil if none gives it in every size.
func madeFrom(p *plan.Pattern, i int, counts plan.Nums) *plan.Rounded {
	for k := range p.Rounded {
		r := &p.Rounded[k]
		if (r.Unit == plan.UnitStitches || r.Unit == plan.UnitChains) && slices.Equal(r.Counts, counts) && (r.Part == i || r.Part < 0) {
			return r
		}
	}
	return nil
}

// grownBy is what so many more of a count measure, by what the counts measure; NoLength if that is not known.
func grownBy(r *plan.Rounded, n int) plan.Length {
	for z, count := range r.Counts {
		if count != plan.Absent && count > 0 && z < len(r.Got) && r.Got[z] != plan.NoLength {
			return plan.Length((int64(r.Got[z])*int64(n) + int64(count)/2) / int64(count))
		}
	}
	return plan.NoLength
}

// stitchWidth is how wide a stitch of the first row of a part is.
func stitchWidth(part *plan.Part) plan.Length {
	for _, rows := range part.Worked {
		if len(rows) > 0 && rows[0].Stitches > 0 && rows[0].Width != plan.NoLength {
			return rows[0].Width / plan.Length(rows[0].Stitches)
		}
	}
	return plan.NoLength
}

// grownFrom lists the parts that start from a part.
func grownFrom(p *plan.Pattern, i int) []int {
	var out []int
	for k, part := range p.Parts {
		if slices.ContainsFunc(part.From, func(o plan.Origin) bool { return o.Part == i }) {
			out = append(out, k)
		}
	}
	return out
}

// small writes a length in centimetres and, where the reading measures in inches as well, in inches: of less than one to the tenth, since a
// quarter would be a large part of it.
func (c *context) small(v plan.Length) rich.Text {
	if v >= plan.Inch || !c.l.voice.inches() {
		return c.both(plan.Lengths{v})
	}
	in := c.l.Number(float64(v)/float64(plan.Inch), 1)
	return fill("{}~cm ({}~{})", c.l.Cm(v), in, c.l.InchSign())
}

// ringsOf finds how many stitches each round of increases adds to a part that begins in a ring, and how much that is around; 0 if they do not
// all add as many.
func ringsOf(part *plan.Part) (n int, wide plan.Length) {
	if part.Start.Kind != plan.StartRing && part.Start.Kind != plan.StartChainRing {
		return 0, 0
	}
	for _, rows := range part.Worked {
		for k := 1; k < len(rows) && rows[k].Stitches > rows[k-1].Stitches; k++ {
			more := rows[k].Stitches - rows[k-1].Stitches
			if rows[k].Width == plan.NoLength || n != 0 && n != more {
				return 0, 0
			}
			n, wide = more, rows[k].Width*plan.Length(more)/plan.Length(rows[k].Stitches)
		}
	}
	return n, wide
}
