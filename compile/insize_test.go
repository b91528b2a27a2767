package compile_test

import (
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// patterns are the examples and the worked constructions.
func patterns(t *testing.T) []string {
	return append(sources(t, "../examples/*.ovillo"), sources(t, casesAt+"/*.ovillo")...)
}

// cleanSources are the texts of all sources that come out: the examples, the worked constructions, and what is right beside
// the mistake of every message, which between them have each form of the language in some odd place.
func cleanSources(t *testing.T) map[string]string {
	all := map[string]string{}
	for _, path := range patterns(t) {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		all[filepath.Base(path)] = string(text)
	}
	for _, e := range diag.All() {
		if f, list := lang.Parse(source.NewFile("fixed", e.Fixed)); !list.HasErrors() {
			if p, list := compile.Compile(f); p != nil && !list.HasErrors() {
				all[string(e.Code)] = e.Fixed
			}
		}
	}
	require.Greater(t, len(all), 250)
	return all
}

func comesOut(t *testing.T, text string) *plan.Pattern {
	f, _ := lang.Parse(source.NewFile("clean", text))
	p, _ := compile.Compile(f)
	require.NotNil(t, p)
	return p
}

// A pattern in one size alone has one of everything that is one for each size, and says of rows, counts and measures what
// the pattern in all sizes says of that one.
func TestInOneSize(t *testing.T) {
	for name, text := range cleanSources(t) {
		t.Run(name, func(t *testing.T) {
			p, untouched := comesOut(t, text), comesOut(t, text)
			require.Equal(t, len(p.Sizes) > 1, len(severalIn(reflect.ValueOf(p), "")) > 0, "lists with one for each size are not found")
			for z, size := range p.Sizes {
				one := p.In(z)
				require.Equal(t, []plan.Size{size}, one.Sizes)
				require.Zero(t, one.Shown)
				for _, f := range severalIn(reflect.ValueOf(one), "pattern") {
					t.Errorf("size %s: %s", size.Name, f)
				}
				require.Equal(t, saidOf(p, z), saidOf(one, 0), "size %s", size.Name)
			}
			require.Equal(t, untouched, p, "the pattern itself was changed")
		})
	}
}

// severalIn are the lists with one element for each size that do not have just one. Those whose type does not tell are known
// by their names.
func severalIn(v reflect.Value, at string) []string {
	bySize := map[string]bool{"Sizes": true, "Amount": true, "Worked": true, "Amounts": true, "ByHand": true}
	var out []string
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			return severalIn(v.Elem(), at)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			f, name := v.Field(i), v.Type().Field(i).Name
			if bySize[name] && f.Kind() == reflect.Slice && f.Len() > 1 {
				out = append(out, fmt.Sprintf("%s.%s has %d", at, name, f.Len()))
			}
			out = append(out, severalIn(f, at+"."+name)...)
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			out = append(out, severalIn(v.MapIndex(k), fmt.Sprintf("%s[%v]", at, k))...)
		}
	case reflect.Slice, reflect.Array:
		perSize := []reflect.Type{reflect.TypeFor[plan.Nums](), reflect.TypeFor[plan.Lengths](), reflect.TypeFor[plan.Sizes]()}
		if slices.Contains(perSize, v.Type()) {
			if v.Len() > 1 {
				out = append(out, fmt.Sprintf("%s has %d", at, v.Len()))
			}
			return out
		}
		for i := range v.Len() {
			out = append(out, severalIn(v.Index(i), fmt.Sprintf("%s[%d]", at, i))...)
		}
	}
	return out
}

// saidOf is what a pattern says of one size: by parts the fabric, the rows that are printed and their counts; the measures;
// the yarn that is needed.
func saidOf(p *plan.Pattern, z int) []string {
	var out []string
	say := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	num := func(n plan.Nums) int {
		if len(n) == 0 {
			return 0
		}
		return n[z]
	}
	counts := func(list []plan.Count) {
		for _, c := range list {
			if c.N[z] != plan.Absent {
				say("  count %v %v %v %q: %d", c.Kind, c.Form, c.Chains, c.Label, c.N[z])
			}
		}
	}
	for _, part := range p.Parts {
		say("%s: starts with %d", part.Name, num(part.Start.N))
		for _, f := range part.Worked[z] {
			say("  worked %d: %d sts, %d sps, %d of the row below, %v wide, %v high, wrong %v", f.Number, f.Stitches, f.Spaces, f.Taken, f.Width, f.Height, f.Wrong)
		}
		for _, step := range part.Steps {
			switch s := step.(type) {
			case *plan.Row:
				if s.For.Has(z) && s.First[z] != plan.Absent {
					say(" row %d-%d, %d times, wrong %v", s.First[z], s.Last[z], num(s.Times), s.Wrong)
					counts(s.Counts)
				}
			case *plan.Block:
				if s.For.Has(z) && s.First[z] != plan.Absent && s.Times[z] > 0 {
					say(" block %d-%d, %d times", s.First[z], s.Last[z], s.Times[z])
					counts(s.Counts)
				}
			case *plan.Counted:
				if s.For.Has(z) {
					counts(s.Counts)
				}
			}
		}
	}
	for _, m := range p.Measures {
		if m.Values[z] != plan.NoLength {
			say("%s %s: %v", m.Letter, m.Name, m.Values[z])
		}
	}
	for _, y := range p.Yarns {
		if y.Amount != nil && y.Amount[z].Milligrams > 0 {
			say("%s: %+v", y.Name, y.Amount[z])
		}
	}
	return out
}
