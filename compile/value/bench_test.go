package value_test

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// bench is an env for tests: some sizes, names with values and gauges to 10 cm.
type bench struct {
	sizes    []string
	names    map[string]value.Vector
	gauges   map[string][2]string // stitches and rows to 10 cm; rows "" if not given
	measures bool                 // measures may be taken
	rounded  []*value.Fitted
	found    diag.List
}

func newBench(sizes ...string) *bench {
	return &bench{sizes: sizes, names: map[string]value.Vector{}, gauges: map[string][2]string{
		"sc": {"16", "18"}, "dc": {"19", "10"}, "hdc": {"19", "13.5"}, "cord": {"20", ""}}}
}

func (b *bench) Sizes() []string { return b.sizes }

func (b *bench) Lookup(path []string) (value.Vector, bool) {
	v, ok := b.names[strings.Join(path, ".")]
	return v, ok
}

func (b *bench) Names() []string {
	var out []string
	for n := range b.names {
		out = append(out, n)
	}
	return out
}

func (b *bench) Multiple(string) (of, plus plan.Nums, ok bool) { return nil, nil, false }

func (b *bench) Gauge(stitch string, by value.WorkedIn) (sts, rows *big.Rat, found value.Found) {
	g, ok := b.gauges[stitch+[]string{"", " rows", " rounds"}[by]]
	if _, two := b.gauges[stitch+" rounds"]; two && by == value.AnyWay {
		return nil, nil, value.TwoGauges
	}
	if !ok {
		g, ok = b.gauges[stitch]
	}
	if !ok {
		return nil, nil, value.NoGauge
	}
	sts = new(big.Rat).Quo(rat(g[0]), rat("100"))
	if g[1] != "" {
		rows = new(big.Rat).Quo(rat(g[1]), rat("100"))
	}
	return sts, rows, value.OneGauge
}

func (b *bench) Measure(e *lang.Expr) (value.Vector, bool) {
	if !b.measures {
		return value.Unknown, false
	}
	return value.Same(rat("500"), value.Length, len(b.sizes)), true
}

func (b *bench) Rounded(e *lang.Expr, v value.Vector) { b.rounded = append(b.rounded, v.Fitted) }

func (b *bench) Report(d diag.Diagnostic) { b.found.Add(d) }

// rat reads a number or a fraction: 1/3.
func rat(s string) *big.Rat {
	x, ok := new(big.Rat).SetString(s)
	if !ok {
		panic("test: no number: " + s)
	}
	return x
}

// parse reads one expression as a source holds it behind let.
func parse(t testing.TB, text string) *lang.Expr {
	t.Helper()
	tree, faults := lang.Parse(source.NewFile("test.ovillo", "let v = "+text+"\n"))
	if len(faults) > 0 {
		t.Fatalf("%s: cannot be read: %v", text, faults)
	}
	return tree.Body[0].Node.(*lang.Let).Value.E
}

func (b *bench) eval(t testing.TB, text string) value.Vector {
	t.Helper()
	return value.Eval(parse(t, text), b)
}

// show writes a vector as its numbers in the canonical unit.
func show(v value.Vector) string {
	if v.Unknown {
		return "unknown"
	}
	parts := make([]string, len(v.N))
	for i, x := range v.N {
		if parts[i] = "none"; x != nil {
			parts[i] = x.RatString()
		}
	}
	return fmt.Sprint(strings.Join(parts, " "), [...]string{"", " mm", " g", " %", " months"}[v.Dim])
}

// parseRapid is parse inside a property.
func parseRapid(t *rapid.T, text string) *lang.Expr {
	tree, faults := lang.Parse(source.NewFile("test.ovillo", "let v = "+text+"\n"))
	if len(faults) > 0 {
		t.Fatalf("%s: cannot be read: %v", text, faults)
	}
	return tree.Body[0].Node.(*lang.Let).Value.E
}
