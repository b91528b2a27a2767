package compile_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// bilingual is a pattern with every text that a designer may write. @…@ is a text in Spanish.
const bilingual = `pattern trial
  title en "Trial" @es "Prueba"@
  terms us
  base sc
  intro
    en | One.
    @es | Uno.@
  end
  note
    en | A note.
    @es | Una nota.@
  end
  care
    en | Wash.
    @es | Lavar.@
  end
  licence
    en | Free.
    @es | Libre.@
  end
  changes
    en | New.
    @es | Nuevo.@
  end
end
sizes "S", "M"
end
gauge 10 cm
  sc 20 sts, 20 rows
end
yarn sand
  name en "sand" @es "arena"@
  weight light
end
stitch knot
  takes 1, makes 1
  name en "knot stitch" @es "punto nudo"@
  abbr en "kn" @es "nu"@
  en | Make a knot.
  @es | Hacer un nudo.@
end
chart wave
  title en "Wave" @es "Ola"@
  legend "." sand
  1 | . .
end
stitch pattern ribs
  name en "ribs" @es "canalé"@
  multiple of 2
  row 1: sc in each
end
meant OV606 en "it is short" @es "es corta"@
part strip
  title en "Strip" @es "Tira"@
  call strip en "the strip" @es "la tira"@
  yarn sand
  in rows
  chain 6 (8)
  row: knot in each = 6 (8)
  row: sc in next 2 as rim, sc in each = 6 (8)
  call rim en "the rim" @es "el borde"@
  note
    en | Turn.
    @es | Girar.@
  end
  row: sc in each = 6 (8)
  fasten off
end
finish
  step
    en | Sew.
    @es | Coser.@
  end
end
notion en "a needle" @es "una aguja"@
measure
  width en "Width" @es "Ancho"@ = width of strip
end
`

// TestEveryTextInEveryLanguage takes each text in Spanish away, one after the other. Each time it is missed, once, and the place
// is on the block it belongs to.
func TestEveryTextInEveryLanguage(t *testing.T) {
	pieces := strings.Split(bilingual, "@")
	found := func(text string) diag.List {
		f, list := lang.Parse(source.NewFile("texts.ovillo", text))
		_, more := compile.Compile(f)
		return slices.DeleteFunc(append(list, more...), func(d diag.Diagnostic) bool { return diag.Lookup(d.Code).Severity != diag.Error })
	}
	require.Empty(t, found(strings.Join(pieces, "")))
	for i := 1; i < len(pieces); i += 2 {
		text := strings.Join(pieces[:i], "") + strings.Join(pieces[i+1:], "")
		list := found(text)
		require.Len(t, list, 1, "without %s: %v", pieces[i], list)
		require.Equal(t, diag.Code("OV801"), list[0].Code, pieces[i])
		require.Equal(t, []string{"es"}, list[0].Args["languages"], pieces[i])
		at := list[0].Span
		require.Greater(t, at.End, at.Start, pieces[i])
		here := strings.Count(strings.Join(pieces[:i], ""), "\n")
		line := strings.Count(text[:at.Start], "\n")
		require.True(t, line <= here && line >= here-5, "without %s it is said of line %d, not near %d", pieces[i], line, here)
	}
}

// valued is a pattern with values of each kind, and a text of the header and one of a part that put one in.
const valued = `pattern trial
  title en "Trial" es "Prueba"
  terms us
  base sc
  intro
    en | HERE
    es | HERE
  end
end
sizes "S", "M"
  fit hips 20 (30) cm
end
gauge 10 cm
  sc 20 sts, 20 rows
end
let n = 6 (8)
let tail = 30 cm
let share = 20 %
let heavy = 50 g
let part_of = 5/2
let age = 6 months
part strip
  title en "Strip" es "Tira"
  call strip en "the strip" es "la tira"
  in rows
  chain n
  row: sc in next 2 as rim, sc in each = n
  call rim en "the rim" es "el borde"
  note
    en | THERE
    es | THERE
  end
  row: sc in each = n
end
finish
  step
    en | DONE
    es | DONE
  end
end
measure
  width = width of strip fits fit.hips ease -30 to 0 cm
end
`

func TestProseValues(t *testing.T) {
	centimetres := func(n ...int64) plan.Lengths {
		var out plan.Lengths
		for _, v := range n {
			out = append(out, plan.Length(v)*plan.Centimetre)
		}
		return out
	}
	sc := stitch.Plain(stitch.SC)
	for _, k := range []struct {
		name   string
		want   plan.Value
		inPart bool // it has a meaning in a part alone
	}{
		{"n", plan.Value{Counts: plan.Nums{6, 8}}, false},
		{"tail", plan.Value{Lengths: centimetres(30, 30)}, false},
		{"fit.hips", plan.Value{Lengths: centimetres(20, 30)}, false},
		{"measure.width", plan.Value{Lengths: centimetres(3, 4)}, false},
		{"share", plan.Value{Amounts: []int64{20000, 20000}, Unit: plan.InPercent}, false},
		{"heavy", plan.Value{Amounts: []int64{50000, 50000}, Unit: plan.InGrams}, false},
		{"part_of", plan.Value{Amounts: []int64{2500, 2500}}, false},
		{"age", plan.Value{Amounts: []int64{6000, 6000}, Unit: plan.InMonths}, false},
		{"sc", plan.Value{Form: &sc}, false},
		{"strip", plan.Value{Called: plan.Text{"en": "the strip", "es": "la tira"}}, false},
		{"rim", plan.Value{Called: plan.Text{"en": "the rim", "es": "el borde"}}, true},
	} {
		for _, hole := range []string{"{" + k.name + "}", "{ " + k.name + " }", "{" + k.name + "|a|b}"} {
			intro := hole
			if k.inPart {
				intro = "-"
			}
			p := compiled(t, strings.NewReplacer("THERE", hole, "HERE", intro, "DONE", intro).Replace(valued))
			if !k.inPart {
				require.Equal(t, map[string]plan.Value{k.name: k.want}, p.Intro.Values, hole)
				require.Equal(t, map[string]plan.Value{k.name: k.want}, p.Finish[0].Prose.Values, hole)
			}
			for _, s := range p.Parts[0].Steps {
				if n, ok := s.(*plan.NoteStep); ok {
					require.Equal(t, map[string]plan.Value{k.name: k.want}, n.Prose.Values, hole)
				}
			}
		}
	}
}

// compiled compiles a source that has no errors.
func compiled(t *testing.T, text string) *plan.Pattern {
	t.Helper()
	f, list := lang.Parse(source.NewFile("valued.ovillo", text))
	p, more := compile.Compile(f)
	require.False(t, append(list, more...).HasErrors(), "%v", append(list, more...))
	return p
}

// TestProseFindings says what is found in a text of the header and of a part, and that the place is that of the sign.
func TestProseFindings(t *testing.T) {
	for _, k := range []struct{ en, es, want string }{
		{"A {n} b.", "A {n} b.", ""},
		{"A {m} b.", "A {m} b.", "OV805 {m}; OV805 {m}"},
		{"A {n|a} b.", "A {n} b.", "OV805 {n|a}"},
		{"A <b>c</b> {n}.", "A **c** {n}.", "OV819 <b>"},
		{"A {n}, ![c](d.png).", "A {n}.", "OV819 ![c"},
		{"A {n} {tail}.", "A {n}.", "OV821 {tail}"},
		{"A 30 and {n}.", "A {n} y 20.", "OV804 20 other 30"},
		{"A {n}.", "A {n} y 20.", "OV821 20 other A {n}."},
		{"A {sc} b.", "A b.", ""},
		{"A {one} sts.", "A {one} p.", "OV820 {one} sts"},
		{"A {one} st.", "A {one} puntos.", "OV820 {one} puntos"},
		{"A {one|st|sts}.", "A {one|punto|puntos}.", ""},
		{"A {one} is.", "A {one} más.", ""},
		{"A {one} {sc}.", "A {one} {sc}.", ""},
		{"For S and M: 2 y.", "Para S y M: 2 y.", ""},
	} {
		for _, place := range []string{"HERE", "THERE", "DONE"} {
			text := strings.Replace(valued, "en | "+place, "en | "+k.en, 1)
			text = strings.Replace(text, "es | "+place, "es | "+k.es, 1)
			text = strings.NewReplacer("THERE", "-", "HERE", "-", "DONE", "-", "let n =", "let one = 1 (2)\nlet n =").Replace(text)
			f, list := lang.Parse(source.NewFile("found.ovillo", text))
			_, more := compile.Compile(f)
			var got []string
			for _, d := range append(list, more...) {
				if diag.Lookup(d.Code).Severity == diag.Note {
					continue
				}
				s := string(d.Code) + " " + text[d.Span.Start:d.Span.End]
				for _, r := range d.Related {
					if d.Code != "OV821" || k.want == "OV821 20 other A {n}." {
						s += " " + r.Key + " " + text[r.Span.Start:r.Span.End]
					}
				}
				got = append(got, s)
			}
			require.Equal(t, k.want, strings.Join(got, "; "), "%s in %s", k.en, place)
		}
	}
}
