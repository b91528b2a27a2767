package words

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/sample"
)

// everything is a pattern that needs every word that stands outside of the rows.
func everything() *plan.Pattern {
	p := tablePattern()
	both := func(en, es string) plan.Text { return plan.Text{"en": en, "es": es} }
	p.Title, p.Edition, p.Date, p.Level, p.Shown = both("Table", "Mesa"), 1, "2026-12-05", "complex", 1
	p.Gauges = []plan.Gauge{{Stitch: stitch.SC, Over: 10 * plan.Centimetre, Sts: 21500}, {Stitch: stitch.DC, Over: 5 * plan.Centimetre, Sts: 10000, Rows: 5250},
		{Stitch: stitch.DC, Over: 10 * plan.Centimetre, Sts: 18000, Rows: 9500, Rounds: true, Hook: 3250, Blocked: plan.AfterBlocking},
		{Stitch: "fans", Pattern: "fans", Called: both("fan stitch", "punto abanico"), Over: 10 * plan.Centimetre, Sts: 18000, Repeats: 3000, Rows: 11000, Blocked: plan.AfterBlocking},
		{Stitch: "fans", Pattern: "fans", Over: 12 * plan.Centimetre, Sts: 6000, Repeats: 1000, Rows: 1000, Rounds: true, Blocked: plan.BeforeBlocking}}
	p.Hooks = []plan.Length{4500}
	p.Yarns[0].Weight, p.Yarns[1].Weight = "super bulky", "tape"
	p.Yarns[0].Fibre, p.Yarns[1].Fibre = []plan.Share{{Fibre: "cotton", Percent: 100}}, []plan.Share{{Fibre: "wool", Percent: 75}, {Fibre: "nettle", Percent: 25}}
	p.Yarns[0].WhyNoAmount = "gauge"
	p.Contents = &plan.Contents{Weighted: []bool{true, true, false},
		Shares: [][]plan.Share{{{Fibre: "cotton", Percent: 60}, {Fibre: "nettle", Percent: 40}}, {{Fibre: "cotton", Percent: 60}, {Fibre: "nettle", Percent: 40}}, {{Fibre: "metallic", Percent: 100}}}}
	p.Yarns[0].BallWeight, p.Yarns[1].BallWeight = 50000, 100000
	p.Stitches = []stitch.Form{
		plainForm(stitch.SC), {ID: stitch.TR, Post: stitch.FrontPost, Together: 2}, {ID: stitch.SC, Together: 3}, {ID: stitch.HDC, Together: 2},
		{ID: stitch.DTR, Together: 2}, {ID: stitch.SC, Post: stitch.BackPost, Together: 1}, {ID: stitch.SC, Loop: stitch.BackLoop, Together: 1},
	}
	p.Own = []plan.OwnStitch{{
		ID: "pebble", Names: both("pebble stitch", "punto guijarro"), Abbr: both("peb", "guij"), Takes: 2, Makes: 1, Tall: stitch.DC,
		How: plan.Prose{Text: both("Work 3 dc in next st, then **sl st** in the next", "Tejer 3 pa en el siguiente p, luego **1 pd** en el que sigue")},
	}}
	tube, panel := p.Parts[0], p.Parts[1]
	tube.Start, tube.Yarn, tube.Make, tube.Hook = plan.Start{Kind: plan.StartRing}, 0, 2, 4500
	panel.Start, panel.FirstWrong = plan.Start{Kind: plan.StartFoundation, N: plan.Nums{20, 22, 24}, Form: plainForm(stitch.DC)}, true
	spiral := &plan.Part{Name: "spiral_toe", Style: plan.SpiralRounds, Yarn: -1, Start: plan.Start{Kind: plan.StartFrom, Runs: []plan.Ref{{Kind: plan.RefEdge, Part: 0}, {Kind: plan.RefFoundation, Part: 1}}}}
	turned := &plan.Part{Name: "turned", Style: plan.TurnedRounds, FirstWrong: true, Yarn: 1, Start: plan.Start{Kind: plan.StartJoined, N: plan.Nums{1, 1, 1}}}
	p.Parts = append(p.Parts, spiral, turned)
	edge := func(part int) *plan.Ref { return &plan.Ref{Kind: plan.RefEdge, Part: part} }
	run := tableRef(plan.RefStitches, plan.Whole, true)
	p.Finish = []plan.Finishing{
		{Kind: plan.SewRuns, Sewn: []plan.Ref{*edge(1)}, To: []plan.Ref{*run}, Yarn: -1},
		{Kind: plan.SewRuns, Sewn: []plan.Ref{{Kind: plan.RefFoundation, Part: 1}}, To: []plan.Ref{*edge(0)}, Yarn: -1},
		{Kind: plan.MakeCord, Yarn: -1, Length: plan.Lengths{300000, 310000, 320000}},
		{Kind: plan.MakePompom, Yarn: 1, Length: plan.Lengths{50000, 50000, 50000}, Wraps: 80},
		{Kind: plan.MakePompom, Yarn: -1, Length: plan.Lengths{50000, 60000, 60000}},
		{Kind: plan.SewButtons, Yarn: -1, Buttons: plan.Buttons{Size: 15000, N: plan.Nums{1, 1, 1}}},
		{Kind: plan.SewButtons, Yarn: -1, Buttons: plan.Buttons{Size: 12500, N: plan.Nums{3, 4, 5}}},
		{Kind: plan.WeaveEnds, Yarn: -1},
	}
	p.Notions = plan.Notions{Markers: 1, Pin: true, Buttons: []plan.Buttons{{Size: 15000, N: plan.Nums{1, 1, 1}}, {Size: 12500, N: plan.Nums{3, 4, 5}}},
		Others: []plan.Notion{{Text: both("black thread", "hilo negro")}, {Text: both("snap fasteners", "broches"), N: plan.Nums{3, 3, 4}},
			{Text: both("elastic", "elástico"), Length: plan.Lengths{400000, 420000, 440000}}, {Text: both("stuffing", "relleno"), Grams: plan.Nums{30, 30, 30}}}}
	p.Measures = []plan.Measure{
		{Name: "calf", Letter: "A", Half: true, Values: plan.Lengths{250000, 250000, 250000}, Of: []plan.MeasuredOn{{Kind: plan.Around}}},
		{Name: "flap_of_hat", Text: both("Flap", "Oreja"), Values: plan.Lengths{100000, plan.NoLength, 120000}},
		{Name: "tail_end", Values: plan.Lengths{1, 2, 3}},
	}
	p.Body = []plan.BodyMeasure{{Name: "height", Values: plan.Lengths{800000, 900000, 1000000}}, {Name: "odd_place", Values: plan.Lengths{1, 2, 3}}}
	p.Cautions = []plan.Caution{{Text: both("Keep it short", "Que sea corto"), Source: "EN 71-1", Read: plan.ReadMemory, Reason: both("it is for a shelf", "es para un estante")},
		{Text: both("No source.", "Sin fuente."), For: plan.Sizes{true, false, false}}, {Text: both("A mark.", "Una marca."), Source: "CPSIA", Read: plan.ReadSummary, Seller: true}}
	work := tableInstr(plan.ChangeTo, plan.Next, plan.Stitch, nil)
	gap := tableInstr(plan.Work, plan.ToEnd, plan.Gap, plan.Nums{8, 9, 10})
	ends := tableInstr(plan.Work, plan.ToEnd, plan.RowEnd, plan.Nums{8, 9, 10})
	group := tableInstr(plan.InOne, plan.Next, plan.Space, plan.Nums{1, 1, 1})
	one := plan.Nums{1, 1, 1}
	tube.Steps = []plan.Step{
		&plan.Row{First: one, Last: one, Times: one, Work: []plan.Instr{gap, work, ends, group}, Begin: plan.Begin{Chains: 1}, Counts: []plan.Count{{N: one}}},
		&plan.Row{First: plan.Nums{2, 2, 2}, Last: plan.Nums{2, 2, 2}, Times: one, Work: []plan.Instr{gap}, Begin: plan.Begin{Chains: 3, Counts: true, As: stitch.DC}},
		&plan.Row{First: plan.Nums{3, 3, 3}, Last: plan.Nums{3, 3, 3}, Times: one, Work: []plan.Instr{gap}, Begin: plan.Begin{Chains: 3}},
		&plan.NoteStep{Prose: plan.Prose{Text: both("Try it **on**.", "Probarlo **ahora**.")}},
	}
	p.Charts = []plan.Chart{{Name: "sea_wave", Rows: [][]int{{0, 1}}}, {Name: "leaf", Title: both("Leaf", "Hoja"), Rows: [][]int{{0, 1}}}}
	tube.Steps = append(tube.Steps, &plan.Row{First: plan.Nums{4, 4, 4}, Last: plan.Nums{4, 4, 4}, Times: one, Chart: &plan.ChartRow{First: 1, Last: 1}, Work: []plan.Instr{inCells()}})
	panel.Steps = []plan.Step{&plan.Row{First: one, Last: one, Times: one, Sided: true, Wrong: true, Chart: &plan.ChartRow{Chart: 1, First: 2, Last: 2, Read: plan.FromLeft}, Work: []plan.Instr{inCells()}}}
	return p
}

func TestEverythingElseInWords(t *testing.T) {
	for _, tag := range []string{"en-US", "en-GB", "es", "es-AR"} {
		golden(t, "everything."+tag+".golden", dump(language(t, tag), everything()))
	}
}

// A pattern of one size has plain numbers, no columns to explain, and no list of sizes.
func TestOneSizeHasNoBrackets(t *testing.T) {
	p := sample.Leggings()
	only(p, 1)
	for _, tag := range []string{"en-US", "es"} {
		said := dump(language(t, tag), p)
		golden(t, "onesize."+tag+".golden", said)
		for _, sign := range []string{" | 60", "**60**", "116; ", "116, ", "Columns", "Columnas"} {
			if strings.Contains(said, sign) {
				t.Errorf("%s: %q stands in a pattern of one size", tag, sign)
			}
		}
	}
}

// only cuts a pattern to one size.
func only(p *plan.Pattern, i int) {
	sizes := len(p.Sizes)
	p.Sizes, p.Shown = p.Sizes[i:i+1], 0
	for _, part := range p.Parts {
		part.Worked = part.Worked[i : i+1]
		part.Steps = slices.DeleteFunc(part.Steps, func(s plan.Step) bool {
			b, ok := s.(*plan.Block)
			return ok && !b.For.Has(i)
		})
	}
	for k := range p.Yarns {
		p.Yarns[k].Amount = p.Yarns[k].Amount[i : i+1]
	}
	for k := range p.Notes {
		for name, v := range p.Notes[k].Values {
			p.Notes[k].Values[name] = plan.Value{Lengths: v.Lengths[i : i+1]}
		}
	}
	cut(reflect.ValueOf(p), sizes, i)
}

// cut leaves size i in every list of sizes below a value.
func cut(v reflect.Value, sizes, i int) {
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			cut(v.Elem(), sizes, i)
		}
	case reflect.Struct:
		for k := range v.NumField() {
			cut(v.Field(k), sizes, i)
		}
	case reflect.Slice:
		switch v.Type() {
		case reflect.TypeFor[plan.Nums](), reflect.TypeFor[plan.Lengths]():
			if v.Len() == sizes {
				v.Set(v.Slice(i, i+1))
			}
			return
		case reflect.TypeFor[plan.Sizes]():
			v.SetZero()
			return
		}
		for k := range v.Len() {
			cut(v.Index(k), sizes, i)
		}
	}
}

func TestEdition(t *testing.T) {
	for _, k := range []struct {
		n            int
		date, en, es string
	}{
		{2, "2026-03", "Edition 2, March 2026", "Edición 2, marzo de 2026"},
		{2, "2026-03-09", "Edition 2, March 2026", "Edición 2, marzo de 2026"},
		{1, "2026", "Edition 1, 2026", "Edición 1, 2026"},
		{3, "", "Edition 3", "Edición 3"},
		{0, "2026-12", "December 2026", "Diciembre de 2026"},
		{1, "2026-13", "Edition 1, 2026", "Edición 1, 2026"},
		{0, "", "", ""},
	} {
		p := &plan.Pattern{Edition: k.n, Date: k.date}
		if got := language(t, "en").Edition(p); got != k.en {
			t.Errorf("%d %s: %q, want %q", k.n, k.date, got, k.en)
		}
		if got := language(t, "es").Edition(p); got != k.es {
			t.Errorf("%d %s: %q, want %q", k.n, k.date, got, k.es)
		}
	}
}

func TestNames(t *testing.T) {
	en, gb, es, ar := language(t, "en"), language(t, "en-GB"), language(t, "es"), language(t, "es-AR")
	for _, k := range []struct{ got, want string }{
		{en.WeightName("light"), "Light (DK)"}, {gb.WeightName("light"), "DK"}, {gb.WeightName("jumbo"), "Jumbo"}, {es.WeightName("medium"), "Medio (worsted)"}, {en.WeightName("raffia"), "Raffia"},
		{en.BodyName("inseam"), "Inside leg"}, {es.BodyName("inseam"), "Largo interior de la pierna"}, {es.BodyName("height"), "Estatura"}, {es.BodyName("left_ear"), "Left ear"},
		{en.Ease("hips"), "Ease at hips"}, {es.Ease("hips"), "Holgura en la cadera"}, {ar.Ease("hips"), "Soltura en la cadera"}, {es.Ease("rise"), "Holgura en el tiro"},
		{en.ReadingNote(), "US terms"}, {gb.ReadingNote(), "UK terms"}, {es.ReadingNote(), "español neutro"},
		{en.Tag(), "en-US"}, {es.Tag(), "es"}, {ar.Tag(), "es-AR"}, {ar.Code(), "es"},
		{en.YarnTableHead(sample.Leggings()), "Yarn, balls of 50" + tie + "g"}, {es.YarnTableHead(sample.Leggings()), "Hilo, ovillos de 50" + tie + "g"},
		{language(t, "es-MX").YarnTableHead(sample.Leggings()), "Estambre, madejas de 50" + tie + "g"}, {en.YarnTableHead(everything()), "Yarn"},
		{flatOf(en, plan.Sizes{true, true, false, false}), "Sizes 1 y and 2 y only"}, {flatOf(es, plan.Sizes{true, true, false, false}), "Solo tallas 1 y 2 años"},
		{flatOf(es, plan.Sizes{false, false, true, false}), "Solo talla 3 años"}, {flatOf(ar, plan.Sizes{false, true, true, true}), "Solo talles 2, 3 y 4 años"}, {flatOf(es, nil), ""},
	} {
		if k.got != k.want {
			t.Errorf("got %q, want %q", k.got, k.want)
		}
	}
	if _, err := For("fr"); err == nil || !strings.Contains(err.Error(), "en-GB") {
		t.Errorf("French: %v", err)
	}
}

func flatOf(l *Language, sizes plan.Sizes) string { return flat(l.OnlyFor(sample.Leggings(), sizes)) }

// Lists in Spanish end with y, or e before the sound of an i; figures are parted by o, or u before the sound of an o.
func TestSpanishConjunctions(t *testing.T) {
	for next, want := range map[string]string{"hilera": "e", "iglú": "e", "hielo": "y", "hiato": "y", "vuelta": "y", "Índice": "e", "hoja": "y"} {
		if got := andWord(next); got != want {
			t.Errorf("before %q: %q, want %q", next, got, want)
		}
	}
	for n, want := range map[int]string{8: "u", 11: "u", 80: "u", 800: "u", 110: "o", 7: "o", 18: "o", 11500: "u"} {
		if got := orWord(n); got != want {
			t.Errorf("before %d: %q, want %q", n, got, want)
		}
	}
	for n, want := range map[int]string{1: "1.er", 2: "2.º", 3: "3.er", 11: "11.º", 13: "13.º", 21: "21.er", 23: "23.er"} {
		if got := ordinalES(n, false); got != want {
			t.Errorf("%d: %q, want %q", n, got, want)
		}
	}
	if got := ordinalES(3, true); got != "3.ª" {
		t.Errorf("feminine: %q", got)
	}
}

func TestEnglishOrdinals(t *testing.T) {
	e := &english{}
	var got []string
	for _, n := range []int{1, 2, 3, 4, 11, 12, 13, 21, 22, 101, 111} {
		got = append(got, e.ordinal(n))
	}
	if want := "1st 2nd 3rd 4th 11th 12th 13th 21st 22nd 101st 111th"; strings.Join(got, " ") != want {
		t.Errorf("got %s", fmt.Sprint(got))
	}
}
