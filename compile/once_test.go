package compile_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang/diag"
)

// TestOneSlipOneMessage: a slip that all sizes share is told once, whatever the sizes have in between; and a measure that compares with the
// wearer is seen though an error above keeps it from being worked out.
func TestOneSlipOneMessage(t *testing.T) {
	list := found(`pattern p
  title en "P" es "P"
  terms us
  kind vest
end
sizes "S", "L"
  age 12 (24) months
  fit chest 50 (54) cm
end
gauge 10 cm
  sc 20 sts, 24 rows
end
hook 4 mm
part panel
  title en "Panel" es "Panel"
  base sc
  in rows
  chain 10 (14)
  shape slope: 12 (14) rows, 10 (14) to 7 (10), on right-side rows
    plain: sc in each
    shaping: dec, sc in each
  end = 7 (10)
  fasten off
end
part back
  title en "Back" es "Espalda"
  in rows
  chain 10 (14)
  24 (30) rows: sc in each
  fasten off
end
measure
  length = height of back
  chest = width of panel fits fit.chest ease 0 to 4 cm
end
`)
	var codes []diag.Code
	for _, d := range list {
		switch d.Code {
		case "OV456", "OV790":
			codes = append(codes, d.Code)
		}
	}
	require.Equal(t, []diag.Code{"OV456"}, codes, "%v", list)
}

// TestAgeMisread: an age that cannot be worked out is reported where it stands, and not said to be missing as well.
func TestAgeMisread(t *testing.T) {
	source := func(sizes string) string {
		return "pattern p\n  terms us\n  kind bib\nend\nsizes \"S\", \"M\", \"L\"\n" + sizes + "end\n" +
			"part strip\n  in rows\n  chain 12\n  2 rows: sc in each = 12\nend\n"
	}
	for sizes, want := range map[string]string{
		"":                                     "OV907",
		"  age 6 (12, 18) months\n":            "",
		"  age 6 (12) months\n":                "OV301",
		"  age 6 (12) to 12 (18, 24) months\n": "OV301",
		"  age 6 (12, 18, 24) months\n":        "OV301",
	} {
		require.Equal(t, want, saysOf(found(source(sizes)), "OV301", "OV902", "OV907"), sizes)
	}
}
