package compile

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file takes measures of the wearer from tables of body measures, and compares the designer's own with them.

// bodyTable is what the tables of a source give: which measures, where they are from, and which of them are used.
type bodyTable struct {
	names    []string // the tables
	measures map[string]*plan.BodyMeasure
	order    []string
	lacks    map[string][]string // sizes in which a measure has no figure
	used     map[string]bool
	bad      bool // the tables could not be taken, which was reported: what they would have given is not known
}

// use notes that a name such as fit.waist was looked up.
func (b *bodyTable) use(name string) {
	if m, ok := strings.CutPrefix(name, "fit."); ok && b != nil {
		b.used[m] = true
	}
}

// unknown reports whether a name is a measure that is not known because the tables could not be taken.
func (b *bodyTable) unknown(name string) bool {
	return b != nil && b.bad && strings.HasPrefix(name, "fit.")
}

// remembers reports whether a name is a measure that rests on figures from memory.
func (b *bodyTable) remembers(name string) bool {
	m, ok := strings.CutPrefix(name, "fit.")
	return ok && b != nil && b.measures[m] != nil && b.measures[m].Memory
}

// lacking turns the report of a name without a value into one of a measure that the tables do not give in every size.
func (b *bodyTable) lacking(d diag.Diagnostic) diag.Diagnostic {
	name, _ := d.Args["name"].(string)
	m, ok := strings.CutPrefix(name, "fit.")
	if b == nil || !ok || b.lacks[m] == nil || b.measures[m] != nil {
		return d
	}
	return diag.Diagnostic{Code: codeBodyLacks, Span: d.Span, Sizes: b.lacks[m], Args: diag.Args{
		"name": m, "tables": b.names, "sizes": b.lacks[m]}}
}

// bodies reads the line that takes the wearer's measures from tables.
func (c *checker) bodies(lines []*lang.Statement) {
	found := blocks[*lang.Body](lines)
	if len(found) == 0 || c.z == 0 {
		return
	}
	if len(found) > 1 {
		c.report(diag.Diagnostic{Code: codeTwice, Span: found[1].Head, Args: diag.Args{"name": "body"},
			Related: []diag.Related{{Span: found[0].Head, Key: "first"}}})
	}
	c.body = &bodyTable{used: map[string]bool{}, bad: true}
	n := found[0].Node.(*lang.Body)
	var tables []*standard.BodyTable
	for _, name := range n.Tables {
		t, ok := standard.BodyTableOf(name.Text)
		if !ok {
			known := standard.BodyTableNames()
			c.say(codeNoBody, name.Span(), diag.Args{"word": name.Text, "near": c.file.At(name.Span()).Near(name.Text, known), "known": known})
			return
		}
		tables = append(tables, t)
	}
	var rows []*standard.BodyRow
	if n.ByAge {
		rows = c.bodyByAge(n, tables)
	} else {
		rows = c.bodyByName(n, tables)
	}
	if rows != nil {
		c.takeBody(tables, rows)
	}
}

// bodyByAge finds the size of the tables for each size's age.
func (c *checker) bodyByAge(n *lang.Body, tables []*standard.BodyTable) []*standard.BodyRow {
	rows := make([]*standard.BodyRow, c.z)
	none, beyond := newSpread(c), newSpread(c)
	for z, s := range c.pat.Sizes {
		if s.Age < 0 {
			none.add(z, 0, 0)
			continue
		}
		for _, t := range tables {
			if r, ok := t.ForAge(s.Age); ok {
				rows[z] = r
				break
			}
		}
		if rows[z] == nil {
			beyond.add(z, 0, 0)
		}
	}
	switch {
	case none.any():
		c.report(diag.Diagnostic{Code: codeNoAge, Span: n.Span(), Sizes: none.sizes()})
		return nil
	case beyond.any():
		c.bodyBeyond(n, tables, beyond)
		return nil
	}
	return rows
}

// bodyBeyond reports ages that no table has.
func (c *checker) bodyBeyond(n *lang.Body, tables []*standard.BodyTable, beyond *spread) {
	args, help := diag.Args{"sizes": beyond.names(), "tables": tableNames(tables)}, "names"
	from, to := -1, -1
	for _, t := range tables {
		if lo, hi, ok := t.Ages(); ok {
			if from < 0 || lo < from {
				from = lo
			}
			to, help = max(to, hi), "ages"
		}
	}
	args["from"], args["to"] = from, to
	c.report(diag.Diagnostic{Code: codeBodyAge, Span: n.Span(), Sizes: beyond.sizes(), Args: args, Help: help})
}

// bodyByName finds the sizes of the tables that are named, one for each size of the pattern.
func (c *checker) bodyByName(n *lang.Body, tables []*standard.BodyTable) []*standard.BodyRow {
	if len(n.Rows) != c.z {
		c.say(codeBodyRows, n.Span(), diag.Args{"need": c.z, "have": len(n.Rows)})
		return nil
	}
	var rows []*standard.BodyRow
	for _, name := range n.Rows {
		var known []string
		var row *standard.BodyRow
		for _, t := range tables {
			known = append(known, t.RowNames()...)
			if r, ok := t.Row(name.Text); ok && row == nil {
				row = r
			}
		}
		if row == nil {
			c.say(codeNoBodyRow, name.Span(), diag.Args{"word": name.Text, "tables": tableNames(tables), "near": c.file.At(name.Span()).Near(name.Text, known), "known": known})
			return nil
		}
		rows = append(rows, row)
	}
	return rows
}

func tableNames(tables []*standard.BodyTable) []string {
	var out []string
	for _, t := range tables {
		out = append(out, t.Name)
	}
	return out
}

// takeBody enters the measures that every size has. The designer's own stand before them.
func (c *checker) takeBody(tables []*standard.BodyTable, rows []*standard.BodyRow) {
	b := &bodyTable{names: tableNames(tables), measures: map[string]*plan.BodyMeasure{}, lacks: map[string][]string{}, used: map[string]bool{}}
	c.body = b
	for _, t := range tables {
		for _, m := range t.Measures {
			if slices.Contains(b.order, m) {
				continue
			}
			b.order = append(b.order, m)
			measure := &plan.BodyMeasure{Name: m}
			for z, r := range rows {
				f, ok := r.Figures[m]
				if !ok {
					b.lacks[m] = append(b.lacks[m], c.pat.Sizes[z].Name)
					continue
				}
				measure.Values = append(measure.Values, f.Value)
				measure.Memory = measure.Memory || f.Memory
				source := plan.BodySource{ID: f.Source, Name: standard.SourceName(f.Source)}
				if !slices.ContainsFunc(measure.Sources, func(s plan.BodySource) bool { return s.ID == f.Source }) {
					measure.Sources = append(measure.Sources, source)
				}
			}
			if _, own := c.lets["fit."+m]; own || b.lacks[m] != nil {
				continue
			}
			b.measures[m] = measure
			c.lets["fit."+m] = value.OfLengths(measure.Values)
		}
	}
}

// bodyMeasures enters in the plan the measures from tables that the source uses, and looks at the designer's own.
func (c *checker) bodyMeasures() {
	c.compareBody()
	if c.body == nil {
		return
	}
	for _, m := range c.body.order {
		if b := c.body.measures[m]; b != nil && c.body.used[m] {
			c.pat.Body = append(c.pat.Body, *b)
		}
	}
}

// bodyMeasure is how the tables call a measure for which sources have another name.
var bodyMeasure = map[string]string{"hip": "hips", "foot_length": "foot", "head_circumference": "head", "back_waist": "back_waist_length", "arm": "arm_length", "hand_circumference": "hand"}

func bodyName(name string) string {
	if m, ok := bodyMeasure[name]; ok {
		return m
	}
	return name
}

// farOffPercent is how far an own figure may lie from a table before it is taken for a slip of the pen. Published tables differ
// by a tenth among themselves (inside leg of a year: 27 and 30 cm). Common practice, no source.
const farOffPercent = 20

// compareBody notes own figures of the wearer that lie far from what the tables give for the age.
func (c *checker) compareBody() {
	for _, b := range c.pat.Body {
		name := bodyName(b.Name)
		bad := newSpread(c)
		var have, need []string
		var table, help string
		var source diag.Said
		for z, v := range b.Values {
			f, t := nearestFigure(name, c.pat.Sizes[z].Age, v)
			if t == "" || v == plan.NoLength {
				continue
			}
			bad.add(z, 0, 0)
			have, need = append(have, cmText(v)), append(need, cmText(f.Value))
			if table, source = t, diag.Said(standard.SourceName(f.Source)); f.Memory {
				help = "memory"
			}
		}
		if !bad.any() {
			continue
		}
		h, w := bad.per(bad.need), bad.per(bad.need)
		h.Values, w.Values = have, need
		c.report(diag.Diagnostic{Code: codeBodyFarOff, Span: c.fitAt[b.Name], Sizes: bad.sizes(), Args: diag.Args{
			"name": b.Name, "have": h, "need": w, "table": table, "source": source}, Help: help})
	}
}

// nearestFigure finds the figure for an age that a length lies nearest to, and its table, where no table has one that agrees;
// "" where one agrees or none has any.
func nearestFigure(measure string, age int, v plan.Length) (standard.Figure, string) {
	var best standard.Figure
	var table string
	for _, t := range standard.BodyTables() {
		f, lo, hi, ok := t.Around(age, measure)
		if !ok {
			continue
		}
		off := max(v-f.Value, f.Value-v)
		if 100*off <= farOffPercent*f.Value || v >= lo && v <= hi {
			return standard.Figure{}, ""
		}
		if table == "" || off < max(v-best.Value, best.Value-v) {
			best, table = f, t.Name
		}
	}
	return best, table
}
