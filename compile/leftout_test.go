package compile_test

import "testing"

// TestChartsUnused: a chart from which no row is worked.
func TestChartsUnused(t *testing.T) {
	const band = "chart band\n  legend \".\" sand, \"x\" kelp\n  1 | x x . .\nend\n"
	for _, c := range []struct{ what, source, want string }{
		{"none is worked", strip("  row: sc in each"), "OV220"},
		{"one is", strip("  rows from chart dots: sc by chart across"), ""},
		{"one of two", band + strip("  rows from chart dots: sc by chart across"), "OV220"},
		{"none of two", band + strip("  row: sc in each"), "OV220, OV220"},
		{"a chart of a part is drawn", "chart drawn of strip\n  title en \"Drawn\" es \"Dibujo\"\nend\n" + strip("  rows from chart dots: sc by chart across"), ""},
		{"a row failed, which may be the one", strip("  row: sc in next 3"), ""},
	} {
		if got := saysOf(found(c.source), "OV220"); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
	}
}

// TestMadeApart: a part that is made more or less often than the one whose last row it takes up.
func TestMadeApart(t *testing.T) {
	for _, c := range []struct{ what, first, second, want string }{
		{"both once", "", "  from a.edge\n", ""},
		{"both twice", "  make 2\n", "  make 2\n  from a.edge\n", ""},
		{"the second once", "  make 2\n", "  from a.edge\n", "OV617"},
		{"the second more often", "  make 2\n", "  make 3\n  from a.edge\n", "OV617"},
		{"the first once", "", "  make 2\n  from a.edge\n", "OV617"},
		{"a cord joined to both", "  make 2\n", "  chain 12\n", ""},
		{"along its start, of which the halves may be two", "  make 2\n", "  from a.foundation\n", ""},
		{"with new chains beside it", "  make 2\n", "  from a.edge, chain 4\n", ""},
	} {
		text := "pattern p\n  terms us\nend\nsizes \"S\", \"M\"\nend\npart a\n" + c.first + "  in rows\n  chain 12\n  2 rows: sc in each = 12\nend\npart b\n" +
			"  in rows\n" + c.second + "  row: sc in each\nend\n"
		if got := saysOf(found(text), "OV617"); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
	}
}
