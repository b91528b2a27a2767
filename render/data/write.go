package data

import (
	_ "embed" // the schema
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Schema describes the data: JSON Schema, draft 2020-12.
//
//go:embed schema.json
var Schema []byte

// Options say what is written.
type Options struct {
	Langs   []*words.Language // of the texts, one at least
	Program string            // the version of the program that writes
}

// Write writes a pattern. The same pattern, from the same program, gives the same bytes.
func Write(w io.Writer, p *plan.Pattern, o Options) error {
	if len(o.Langs) == 0 || len(p.Sizes) == 0 {
		return fmt.Errorf("data have a language and a size at least")
	}
	x := &writer{p: p}
	for _, l := range o.Langs {
		x.langs = append(x.langs, l.Keeping(p))
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	d := x.document()
	d.Generator = generator{Name: "ovillo", Version: o.Program}
	return e.Encode(d)
}

// writer turns a pattern into the promised shape.
type writer struct {
	p     *plan.Pattern
	langs []*words.Language
}

// in is a text in each language.
func (x *writer) in(say func(l *words.Language) string) texts {
	out := texts{}
	for _, l := range x.langs {
		if s := spaced(say(l)); s != "" {
			out[l.Tag()] = s
		}
	}
	return out
}

func (x *writer) rich(say func(l *words.Language) rich.Text) texts {
	return x.in(func(l *words.Language) string { return say(l).String() })
}

// prose is a text of the author, blocks parted by a line feed, items with their sign.
func (x *writer) prose(t plan.Prose) texts {
	return x.in(func(l *words.Language) string {
		var lines []string
		for _, b := range l.Prose(x.p, t) {
			line := b.Text.String()
			if b.Bullet != "" {
				line = b.Bullet + " " + line
			}
			lines = append(lines, line)
		}
		return strings.Join(lines, "\n")
	})
}

// spaced turns the spaces of print into those that programs expect.
func spaced(s string) string {
	return strings.TrimSpace(strings.NewReplacer("\u00a0", " ", "\u202f", " ", "\u2009", " ").Replace(s))
}

func optional(s string) *string {
	if s == "" {
		return nil
	}
	return &s
}

func lengths(list plan.Lengths) []mm {
	out := make([]mm, len(list))
	for i, l := range list {
		out[i] = mm(l)
	}
	return out
}

// known is a length for which nought stands for one that is not given.
func known(l plan.Length) mm {
	if l == 0 {
		return mm(plan.NoLength)
	}
	return mm(l)
}

func numbers(n plan.Nums) []*int {
	out := make([]*int, len(n))
	for i, v := range n {
		if v != plan.Absent {
			out[i] = &v
		}
	}
	return out
}

func (x *writer) sizes(of plan.Sizes) []bool {
	out := make([]bool, len(x.p.Sizes))
	for i := range out {
		out[i] = of.Has(i)
	}
	return out
}

func months(n int) *int {
	if n < 0 {
		return nil
	}
	return &n
}

func given(n int64) *thousth {
	if n == 0 {
		return nil
	}
	v := thousth(n)
	return &v
}

func (x *writer) document() document {
	p := x.p
	d := document{Format: "ovillo-pattern", Version: Version, Name: p.Name, By: p.By, Kind: optional(p.Kind), Level: optional(p.Level),
		Left:  x.langs[0].Manner().Left,
		Title: x.in(func(l *words.Language) string { return l.Title(p) }), Intro: x.prose(p.Intro), Care: x.prose(p.Care),
		Licence: x.prose(p.Licence), Changes: x.prose(p.Changes), Edition: edition{Month: optional(p.Date)},
		Contents: x.rich(func(l *words.Language) rich.Text { return l.Contents(p) }),
		Standing: x.in(func(l *words.Language) string { return l.Say(words.CautionsStanding) }),
		Sizes:    []size{}, Body: []bodyMeasure{}, Measures: []measure{}, Gauges: []gauge{}, Hooks: []mm{}, Yarns: []yarn{}, Notions: []fact{},
		Short: []shortForms{}, Parts: []part{}, Finishing: []finish{}, Cautions: []caution{}}
	if p.Edition > 0 {
		d.Edition.Number = &p.Edition
	}
	for _, l := range x.langs {
		d.Languages = append(d.Languages, l.Tag())
		short := shortForms{Lang: l.Tag(), List: []shortForm{}}
		for _, a := range l.Abbreviations(p) {
			short.List = append(short.List, shortForm{spaced(a.Short), spaced(a.Meaning), append([]string{}, a.Others...)})
		}
		d.Short = append(d.Short, short)
	}
	for _, s := range p.Sizes {
		d.Sizes = append(d.Sizes, size{Name: s.Name, Names: x.in(func(l *words.Language) string { return l.SizeName(s) }),
			AgeFrom: months(s.Age), AgeTo: months(s.AgeTo)})
	}
	for _, b := range p.Body {
		d.Body = append(d.Body, bodyMeasure{Name: b.Name, Label: x.in(func(l *words.Language) string { return l.BodyName(b.Name) }),
			MM: lengths(b.Values), Memory: b.Memory, Designer: len(b.Sources) == 0})
	}
	for _, m := range p.Measures {
		out := measure{Name: m.Name, Label: x.in(func(l *words.Language) string { return l.MeasureName(m) }), Letter: optional(m.Letter), MM: lengths(m.Values)}
		if m.Fits != nil && m.Fits.Ease != nil {
			out.Fits = &fits{m.Fits.Body, lengths(m.Fits.Ease)}
		}
		d.Measures = append(d.Measures, out)
	}
	for _, h := range p.Hooks {
		d.Hooks = append(d.Hooks, mm(h))
	}
	for _, g := range p.Gauges {
		d.Gauges = append(d.Gauges, gauge{Stitch: string(g.Stitch), Pattern: optional(g.Pattern), Over: mm(g.Over), Sts: given(g.Sts), Repeats: given(g.Repeats),
			Rows: given(g.Rows), Rounds: g.Rounds, Hook: known(g.Hook), Blocked: [...]string{"unsaid", "after blocking", "before blocking"}[g.Blocked]})
	}
	x.materials(&d)
	for i, part := range p.Parts {
		d.Parts = append(d.Parts, x.part(i, part))
	}
	for _, f := range p.Finish {
		out := finish{Text: x.rich(func(l *words.Language) rich.Text { return l.Finishing(p, f) })}
		if f.Before > 0 && f.Before <= len(p.Parts) {
			out.Before = &p.Parts[f.Before-1].Name
		}
		d.Finishing = append(d.Finishing, out)
	}
	for _, c := range p.Cautions {
		out := caution{ID: c.ID, Severity: c.Severity, In: x.sizes(c.For), Text: x.in(func(l *words.Language) string { return c.Text[l.Code()] }),
			Source: optional(c.Source), Read: [...]string{"own rule", "itself", "summary", "memory"}[c.Read], Seller: c.Seller,
			Reason: x.rich(func(l *words.Language) rich.Text { return l.Reason(c) })}
		if c.Step >= 0 {
			out.Step = &c.Step
		}
		d.Cautions = append(d.Cautions, out)
	}
	return d
}

// materials are the yarns and what else is needed.
func (x *writer) materials(d *document) {
	for _, y := range x.p.Yarns {
		out := yarn{Name: y.Name, Label: x.in(func(l *words.Language) string { return l.YarnName(y) }), Weight: optional(y.Weight), Fibres: []fibre{},
			BallWeight: given(y.BallWeight), BallLength: known(y.BallLength)}
		for _, f := range y.Fibre {
			out.Fibres = append(out.Fibres, fibre{f.Fibre, f.Percent})
		}
		for _, a := range y.Amount {
			one := amount{Grams: thousth(a.Milligrams), Length: known(a.Length)}
			if a.Balls > 0 {
				one.Balls = &a.Balls
			}
			out.Amounts = append(out.Amounts, one)
		}
		d.Yarns = append(d.Yarns, out)
	}
	for k := range x.langs[0].MaterialNotes(x.p) {
		at := func(l *words.Language) words.Fact {
			if list := l.MaterialNotes(x.p); k < len(list) {
				return list[k]
			}
			return words.Fact{}
		}
		d.Notions = append(d.Notions, fact{x.in(func(l *words.Language) string { return at(l).Head }), x.rich(func(l *words.Language) rich.Text { return at(l).Text })})
	}
}
