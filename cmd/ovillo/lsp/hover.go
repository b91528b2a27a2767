package lsp

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/words"
)

// hover says what stands under the pointer: a stitch in both languages, what a name stands for, the counts of a row in every size.
func (q *query) hover() (any, *failure) {
	at := q.text.offset(q.params.Position)
	x := q.index()
	var parts []string
	span := source.Span{}
	add := func(text string, at source.Span) {
		if text == "" {
			return
		}
		if parts = append(parts, text); span.IsZero() {
			span = at
		}
	}
	if u := x.at(at); u != nil {
		add(q.aboutName(x, u), u.span)
	} else if n := stitchAt(x.tree, at); n != nil {
		add(q.aboutStitch(x.tree, n.Text, q.file.Slice(n.Span())), n.Span())
	} else if w := fitAt(x.tree, at); w != nil {
		add(q.aboutValue(w.name), w.span)
	}
	for _, r := range sourceRows(x.tree.Body) {
		if int(r.Head.Start) <= at && at <= int(r.Head.End) {
			add(q.aboutRow(r), r.Head)
		}
	}
	if len(parts) == 0 {
		return nil, nil
	}
	return Hover{q.markup(strings.Join(parts, "\n\n---\n\n")), q.text.rangeOf(span)}, nil
}

// markup is a text for a client, without its signs for one that shows them as they are.
func (q *query) markup(text string) Markup {
	text = strings.ReplaceAll(text, "\u00a0", " ") // an editor breaks lines where it likes
	if q.plain {
		return Markup{"plaintext", strings.NewReplacer("**", "", "`", "", "\n---\n\n", "").Replace(text)}
	}
	return Markup{"markdown", text}
}

// stitchAt is the word for a stitch at a place; nil if there is none.
func stitchAt(tree *lang.File, at int) *lang.Name {
	var found *lang.Name
	lang.Walk(tree, func(n lang.Node) bool {
		s := n.Span()
		if _, statement := n.(lang.StatementNode); !statement && (at < int(s.Start) || at > int(s.End)) {
			return false
		}
		for _, name := range stitchNames(n) {
			if name != nil && int(name.Span().Start) <= at && at <= int(name.Span().End) {
				found = name
			}
		}
		return found == nil
	})
	return found
}

// stitchNames are the words for stitches in a node.
func stitchNames(n lang.Node) []*lang.Name {
	switch n := n.(type) {
	case *lang.Work:
		return []*lang.Name{n.Stitch}
	case *lang.Claim:
		return []*lang.Name{n.Name}
	case *lang.Base, *lang.Begin, *lang.Foundation, *lang.Lengthen, *lang.Join, *lang.Mesh, *lang.Takes, *lang.GaugeLine, *lang.Swatch:
		return sourceNames(n)
	case *lang.RowOpt:
		return []*lang.Name{n.As}
	}
	return nil
}

// aboutStitch says what a stitch is: its names in each reading of both languages, and how it is worked, where that needs words.
func (q *query) aboutStitch(tree *lang.File, word, written string) string {
	uk := ukTerms(tree)
	if w, ok := shapings[word]; ok {
		return "**" + written + "**\n\n" + w.en + "\n\n" + w.es
	}
	f, ok := compile.StitchNamed(word, uk)
	if !ok {
		return ""
	}
	var b strings.Builder
	fmt.Fprintf(&b, "**%s**\n", written)
	p := &plan.Pattern{UKTerms: uk, Languages: []string{"en", "es"}, Stitches: []stitch.Form{f}}
	seen := map[string]bool{}
	for _, l := range words.Readings() {
		if name := l.StitchName(p, f); !seen[l.Code()+name] {
			seen[l.Code()+name] = true
			fmt.Fprintf(&b, "\n- %s: %s", l.Tag(), name)
		}
	}
	for _, tag := range []string{"en-US", "es"} {
		if uk && tag == "en-US" {
			tag = "en-GB"
		}
		l, err := words.For(tag)
		if err != nil {
			continue
		}
		for _, s := range l.Specials(p) {
			if s.Form == f {
				fmt.Fprintf(&b, "\n\n%s", s.Text.String())
			}
		}
	}
	return b.String()
}

// kinds are the words for what a name stands for.
var kinds = map[nameKind]said{
	aVariable:      {"value", "valor"},
	aYarn:          {"yarn", "hilo"},
	aGroup:         {"group of instructions", "grupo de instrucciones"},
	aStitch:        {"stitch of this pattern", "punto de este patrón"},
	aStitchPattern: {"stitch pattern", "puntada"},
	aChart:         {"chart", "gráfico"},
	aPart:          {"part", "pieza"},
	aLabel:         {"label", "etiqueta"},
	aMarker:        {"marker", "marcador"},
	aRow:           {"row", "hilera o vuelta"},
	anEdge:         {"side edge", "borde lateral"},
	aFit:           {"measure of the wearer", "medida de quien lo lleva"},
	aMeasure:       {"measure of the piece", "medida de la pieza"},
}

// aboutName says what a name stands for: what it is called in print, where it is set, its values in every size.
func (q *query) aboutName(x *index, u *use) string {
	var b strings.Builder
	kind := q.say(kinds[x.kindOf(u.key)])
	if part := u.key.scope; part != ofSource && part != ofWearer && part != ofMeasure {
		kind += q.say(msgOfPart, "part", part)
	}
	fmt.Fprintf(&b, "**%s** — %s", q.quoted(u.span), kind)
	if set := x.sets[u.key]; len(set) > 0 && !u.sets {
		s := &x.uses[set[0]]
		where := q.say(msgSetAt, "line", itoa(q.file.Line(s.span.Start)))
		if !q.mine(s.span) {
			in, at := x.tree.Source.Within(s.span)
			where = q.say(msgSetIn, "file", in.Name, "line", itoa(in.Line(at.Start)))
		}
		fmt.Fprintf(&b, "\n\n%s\n\n```ovillo\n%s\n```", where, clip(q.quoted(s.within)))
	}
	if called := q.calledIn(x, u.key); called != "" {
		fmt.Fprintf(&b, "\n\n%s %s", q.say(msgPrintedAs), called)
	}
	var table string
	switch u.key.scope {
	case ofSource:
		if x.kindOf(u.key) == aVariable {
			table = q.aboutValue(u.key.name)
		}
	case ofWearer, ofMeasure:
		table = q.aboutValue(u.key.scope + u.key.name)
	default:
		table = q.aboutPlaces(u.key)
	}
	if table != "" {
		b.WriteString("\n\n" + table)
	}
	return b.String()
}

// calledIn is what the source says that a thing is called in print, in each language.
func (q *query) calledIn(x *index, k key) string {
	var all []string
	lang.WalkStatements(x.tree.Body, func(s *lang.Statement) bool {
		c, ok := s.Node.(*lang.Call)
		if !ok || c.Name == nil || all != nil {
			return true
		}
		if u := x.at(int(c.Name.Span().Start)); u != nil && u.key == k {
			for _, t := range c.Text {
				all = append(all, t.Lang+" “"+t.Text.Text+"”")
			}
		}
		return true
	})
	return strings.Join(all, ", ")
}

// clip is a statement as it is quoted: not all of a long one.
func clip(text string) string {
	const most = 6
	lines := strings.Split(text, "\n")
	if len(lines) > most {
		lines = append(lines[:most], "…")
	}
	return strings.Join(lines, "\n")
}

// fitAt is a measure of the wearer that the source does not set itself, as in fit.head with a table of body measures.
func fitAt(tree *lang.File, at int) *found {
	var out *found
	lang.Walk(tree, func(n lang.Node) bool {
		var path []string
		switch n := n.(type) {
		case *lang.Ref:
			path = n.Path
		case *lang.Expr:
			path = n.Path
		}
		s := n.Span()
		if len(path) == 2 && (path[0]+"." == ofWearer || path[0]+"." == ofMeasure) && int(s.Start) <= at && at <= int(s.End) {
			out = &found{name: strings.Join(path, "."), span: s}
		}
		return out == nil
	})
	return out
}

// aboutValue is a value in every size.
func (q *query) aboutValue(name string) string {
	k := q.pattern()
	if k == nil || k.checked.Value == nil {
		return ""
	}
	v, ok := k.checked.Value(name)
	if !ok {
		return ""
	}
	cells := make([]string, len(k.Sizes))
	for z := range cells {
		switch {
		case z < len(v.Counts) && v.Counts[z] != plan.Absent:
			cells[z] = itoa(v.Counts[z])
		case z < len(v.Lengths) && v.Lengths[z] != plan.NoLength:
			cells[z] = q.language().Cm(v.Lengths[z]) + " cm"
		case z < len(v.Amounts) && v.Amounts[z] != plan.NoAmount:
			cells[z] = strings.TrimSpace(q.language().Number(float64(v.Amounts[z])/1000, 3) + " " + q.say(units[v.Unit]))
		default:
			cells[z] = "–"
		}
	}
	if !slices.ContainsFunc(cells, func(c string) bool { return c != "–" }) {
		return ""
	}
	return q.table(k, []string{""}, func(z int) []string { return []string{cells[z]} })
}

var units = map[plan.AmountUnit]said{plan.InGrams: {"g", "g"}, plan.InPercent: {"%", "%"}, plan.InMonths: {"months", "meses"}}

// language writes numbers in the language of the messages.
func (q *query) language() *words.Language {
	l, err := words.For(q.options.Lang)
	if err != nil {
		panic(err)
	}
	return l
}

// table is a table with a line for each size.
func (q *query) table(k *known, heads []string, cells func(z int) []string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "| %s |", q.say(msgSize))
	for _, h := range heads {
		fmt.Fprintf(&b, " %s |", cmp.Or(h, q.say(msgWorth)))
	}
	b.WriteString("\n| --- |" + strings.Repeat(" ---: |", len(heads)))
	for z := range k.Sizes {
		fmt.Fprintf(&b, "\n| %s |", cell(q.language().SizeName(k.Sizes[z])))
		for _, c := range cells(z) {
			fmt.Fprintf(&b, " %s |", cell(c))
		}
	}
	return b.String()
}

// cell keeps a text from ending the cell that it stands in.
func cell(s string) string { return strings.ReplaceAll(oneLine(s), "|", "\\|") }

// aboutPlaces is how many places a label names in every size.
func (q *query) aboutPlaces(k key) string {
	known := q.pattern()
	if known == nil {
		return ""
	}
	for _, part := range known.Parts {
		if part.Name != k.scope {
			continue
		}
		if n := placesOf(part, k.name); n != nil {
			return q.table(known, []string{q.say(msgPlaces)}, func(z int) []string {
				if z >= len(n) || n[z] == plan.Absent {
					return []string{"–"}
				}
				return []string{itoa(n[z])}
			})
		}
	}
	return ""
}

// placesOf finds how many places an instruction or a counting off gives a name to; nil if none does.
func placesOf(part *plan.Part, name string) plan.Nums {
	var in func(list []plan.Instr) plan.Nums
	in = func(list []plan.Instr) plan.Nums {
		for i := range list {
			if list[i].Label == name && list[i].N != nil {
				return list[i].N
			}
			if n := in(list[i].Body); n != nil {
				return n
			}
		}
		return nil
	}
	for _, s := range part.Steps {
		if c, ok := s.(*plan.CountOff); ok {
			for _, i := range c.Items {
				if i.Label == name && i.N != nil {
					return i.N
				}
			}
		}
		for _, r := range plan.RowsOf(s) {
			if n := in(r.Work); n != nil {
				return n
			}
		}
	}
	return nil
}

// aboutRow is the counts of a row in every size, and how it prints in both languages; for each part that has it.
func (q *query) aboutRow(r sourceRow) string {
	k := q.pattern()
	if k == nil {
		return ""
	}
	all := k.rowsAt(r.Head.Start)
	var out []string
	for _, w := range all {
		if slices.ContainsFunc(w.last(stitches), func(n int) bool { return n != plan.Absent }) {
			out = append(out, q.aboutWorked(k, w, len(all) > 1))
		}
	}
	return strings.Join(out, "\n\n")
}

func (q *query) aboutWorked(k *known, w *worked, named bool) string {
	var b strings.Builder
	if named {
		fmt.Fprintf(&b, "**%s**\n\n", w.part.Name)
	}
	heads := []string{q.say(msgRows), q.say(msgStitches)}
	holes := slices.ContainsFunc(w.last(spaces), func(n int) bool { return n > 0 })
	if holes {
		heads = append(heads, q.say(msgSpaces))
	}
	b.WriteString(q.table(k, heads, func(z int) []string {
		rows := w.rows[z]
		if len(rows) == 0 {
			return slices.Repeat([]string{"–"}, len(heads))
		}
		first, last := rows[0], rows[len(rows)-1]
		cells := []string{fromTo(first.Number, last.Number, "–"), fromTo(first.Stitches, last.Stitches, " → ")}
		if holes {
			cells = append(cells, fromTo(first.Spaces, last.Spaces, " → "))
		}
		return cells
	}))
	if !k.fresh {
		b.WriteString("\n\n" + q.say(msgAsBefore))
	}
	if c := k.checked; c.Printable() && w.step != nil {
		for _, code := range k.Languages {
			if l, err := words.For(code); err == nil {
				if s := l.Step(k.Pattern, w.part, w.step); s.Body != nil {
					fmt.Fprintf(&b, "\n\n**%s** %s", s.Label.String(), s.Body.String())
				}
			}
		}
	}
	return b.String()
}

// fromTo is a number, or the first and the last of several.
func fromTo(a, b int, between string) string {
	if a == b {
		return itoa(a)
	}
	return itoa(a) + between + itoa(b)
}
