package compile_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// twoYarns is a source of two yarns, whose parts are to be tried.
const twoYarns = `pattern p
  title en "P" es "P"
  terms us
end
sizes "S", "M"
end
yarn sand
  name en "sand" es "arena"
end
yarn kelp
  name en "kelp" es "alga"
end
chart dots
  legend "." sand, "x" kelp
  1 | x .
end
`

// strip is a flat part begun over twelve chains.
func strip(lines string) string {
	return twoYarns + "part strip\n  title en \"Strip\" es \"Tira\"\n  yarn sand\n  base sc\n  in rows\n  chain 12\n  row: sc in each\n" + lines + "\nend\n"
}

// saysOf are the codes of some, in order, each with the sizes it holds for if they are not all; what cannot be read says nothing of them.
func saysOf(list diag.List, codes ...string) string {
	var out []string
	for _, d := range list {
		if strings.HasPrefix(string(d.Code), "OV1") || d.Code == "OV202" {
			return "unreadable: " + diag.Message(d, "en")
		}
		for _, c := range codes {
			if string(d.Code) == c {
				out = append(out, strings.TrimSpace(c+" "+strings.Join(d.Sizes, " ")))
			}
		}
	}
	return strings.Join(out, ", ")
}

// TestWorkedBehindTheEnd: what is worked where the yarn was cut, and what gives it yarn again.
func TestWorkedBehindTheEnd(t *testing.T) {
	const note = "  note\n    en | Join sand again.\n    es | Unir de nuevo arena.\n  end\n"
	for _, c := range []struct{ what, lines, want string }{
		{"the end stands last", "  row: sc in each\n  fasten off", ""},
		{"a row behind it", "  fasten off\n  row: sc in each", "OV733"},
		{"one slip, one message", "  fasten off\n  row: sc in each\n  row: sc in each\n  fasten off", "OV733"},
		{"cut and worked on twice", "  fasten off\n  row: sc in each\n  fasten off\n  row: sc in each", "OV733, OV733"},
		{"rows of a repeat", "  repeat 2 times\n    row: sc in each\n    fasten off\n  end", "OV733"},
		{"rows that are shaped", "  fasten off\n  shape s: 4 rows\n    plain: sc in each\n    shaping: dec, sc in each\n    every 2 rows 2 times\n  end", "OV733"},
		{"behind the start", "  fasten off\n  level with 2 sl st", "OV733"},
		{"in one size", "  only \"M\"\n    fasten off\n  end\n  row: sc in each", "OV733 M"},
		{"no row in one size", "  fasten off\n  1 (0) rows: sc in each", "OV733 S"},
		{"no row at all", "  fasten off\n  0 rows: sc in each", ""},
		{"closed is cut", "  close through front loops\n  row: sc in each", "OV733"},
		{"another yarn in the header", "  fasten off\n  row, with kelp: sc in each", ""},
		{"another yarn before it", "  fasten off\n  yarn kelp\n  row: sc in each", ""},
		{"another yarn in the row", "  fasten off\n  row: with kelp, sc in each", ""},
		{"another yarn in the first stitch", "  fasten off\n  row: [sc in next with kelp, sc in next] across", ""},
		{"another yarn in the second stitch", "  fasten off\n  row: sc in next, sc in each with kelp", "OV733"},
		{"the same yarn named in the row", "  fasten off\n  row: with sand, sc in each", "OV733"},
		{"the same yarn named in the header", "  fasten off\n  row, with sand: sc in each", ""},
		{"the same yarn named before it", "  fasten off\n  yarn sand\n  row: sc in each", ""},
		{"named once, cut twice", "  fasten off\n  yarn sand\n  row: sc in each\n  fasten off\n  row: sc in each", "OV733"},
		{"stripes", "  fasten off\n  stripes sand 2, kelp 2\n  4 rows: sc in each", ""},
		{"stripes of the same yarn", "  fasten off\n  stripes sand 2\n  4 rows: sc in each", "OV733"},
		{"a chart", "  fasten off\n  rows from chart dots: sc by chart across", ""},
		{"a note that may say it", "  fasten off\n" + note + "  row: sc in each", ""},
		{"a note before the end", note + "  fasten off\n  row: sc in each", "OV733"},
	} {
		if got := saysOf(found(strip(c.lines)), "OV733"); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
	}
}

// TestFastenedTwice: the yarn is cut where it is cut already.
func TestFastenedTwice(t *testing.T) {
	for _, c := range []struct{ what, lines, want string }{
		{"once", "  fasten off", ""},
		{"twice", "  fasten off\n  fasten off, long tail", "OV734"},
		{"three times", "  fasten off\n  fasten off\n  fasten off", "OV734, OV734"},
		{"with rows between", "  fasten off\n  row, with kelp: sc in each\n  fasten off", ""},
		{"each size once", "  only \"S\"\n    fasten off\n  end\n  only \"M\"\n    fasten off, long tail\n  end", ""},
		{"one size twice", "  only \"S\"\n    fasten off\n  end\n  fasten off", "OV734 S"},
		{"closed, and fastened", "  close through front loops\n  fasten off", ""},
		{"fastened, and closed with the tail", "  fasten off, long tail\n  close through front loops", ""},
		{"closed, and fastened twice", "  close through front loops\n  fasten off\n  fasten off", "OV734"},
	} {
		if got := saysOf(found(strip(c.lines)), "OV734"); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
	}
}

// TestLooseEnds: a part whose yarn stays on the hook beside one that is fastened off.
func TestLooseEnds(t *testing.T) {
	part := func(name, lines string) string {
		return "part " + name + "\n  title en \"" + name + "\" es \"" + name + "\"\n  yarn sand\n  base sc\n" + lines + "\nend\n"
	}
	const rows, off = "  in rows\n  chain 12\n  2 rows: sc in each", "\n  fasten off"
	for _, c := range []struct{ what, parts, want string }{
		{"nothing is fastened off", part("a", rows) + part("b", rows), ""},
		{"all are", part("a", rows+off) + part("b", rows+off), ""},
		{"one is not", part("a", rows+off) + part("b", rows), "OV735"},
		{"two are not", part("a", rows) + part("b", rows) + part("c", rows+off), "OV735, OV735"},
		{"in one size", part("a", rows+off) + part("b", rows+"\n  only \"S\"\n    fasten off\n  end"), "OV735 M"},
		{"the other one is closed", part("a", rows+"\n  close through both loops") + part("b", rows), "OV735"},
		{"another goes on", part("a", rows) + part("b", "  in rows\n  from a.edge\n  row: sc in each"+off), ""},
		{"another goes on in another yarn", part("a", rows) + part("b", "  in rows\n  yarn kelp\n  from a.edge\n  row: sc in each"+off), ""},
		{"another goes all round", part("a", rows) + part("b", "  in joined rounds\n  from around a\n  round: sc in each"+off), ""},
		{"another goes on from a section", part("a", rows+"\n  count off: 6 as one, 6 as two") + part("b", "  in rows\n  from a.two\n  row: sc in each"+off), ""},
		{"another begins at the other end", part("a", rows) + part("b", "  in rows\n  from a.foundation\n  row: sc in each"+off), "OV735"},
		{"joined anew, and not fastened off", part("a", rows+off) + part("b", rows+off+"\n  row, with kelp: sc in each"), "OV735"},
		{"worked behind its end, which is said", part("a", rows+off) + part("b", rows+off+"\n  row: sc in each"), ""},
		{"another failed", part("a", rows+off) + part("b", rows) + part("c", rows+off+"\n  row, with kelp: sc in next 3"), ""},
	} {
		if got := saysOf(found(twoYarns+c.parts), "OV735"); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
	}
}

// TestNamedAgainIsJoined: a yarn that was cut and is named again is joined, and the pages say so; where it hangs it is not.
func TestNamedAgainIsJoined(t *testing.T) {
	for lines, want := range map[string]bool{
		"  fasten off\n  row, with sand: sc in each":                                                     true,
		"  fasten off\n  yarn sand\n  row: sc in each":                                                   true,
		"  row, with sand: sc in each":                                                                   false,
		"  yarn sand\n  fasten off\n  note\n    en | Go on.\n    es | Seguir.\n  end\n  row: sc in each": false,
	} {
		p := compiled(t, strip(lines))
		steps := p.Parts[0].Steps
		row, ok := steps[len(steps)-1].(*plan.Row)
		require.True(t, ok)
		require.Equal(t, want, row.NewYarn, lines)
	}
}

// TestCountedOffTwice: a counting off right behind one that sets the same.
func TestCountedOffTwice(t *testing.T) {
	for _, c := range []struct{ what, lines, want string }{
		{"once", "  count off: 4, mark m, 8", ""},
		{"the same again", "  count off: 4, mark m, 8\n  count off: 4, mark m, 8", "OV517"},
		{"other numbers", "  count off: 4, mark m, 8\n  count off: 5, mark m, 7", "OV517"},
		{"a section more", "  count off: 4 as a, 8\n  count off: 4 as a, 8 as b", "OV517"},
		{"a section less", "  count off: 4 as a, 8 as b\n  count off: 4 as a, 8", ""},
		{"a marker, and sections", "  count off: 4, mark m, 8\n  count off: 4 as a, 8 as b", ""},
		{"with a row between", "  count off: 4, mark m, 8\n  row: sc to m, sc in each\n  count off: 4, mark m, 8", ""},
		{"counts between", "  count off: 4 as a, 8\n  have 4 in a\n  count off: 5 as a, 7", ""},
		{"by what the first one set", "  count off: 4 as a, 8\n  count off: count of a + 1 as a, 7", ""},
		{"without a name", "  count off: 12\n  count off: 12", ""},
		{"each in its size", "  only \"S\"\n    count off: 4, mark m, 8\n  end\n  only \"M\"\n    count off: 5, mark m, 7\n  end", ""},
		{"in one size", "  only \"S\"\n    count off: 4, mark m, 8\n    count off: 5, mark m, 7\n  end", "OV517 S"},
		{"as a repeat ends and begins", "  repeat 2 times\n    count off: 4, mark m, 8\n    row: sc to m, sc in each\n    count off: 4, mark m, 8\n  end", ""},
		{"behind a repeat that ends with one", "  repeat 2 times\n    row: sc in each\n    count off: 4, mark m, 8\n  end\n  count off: 4, mark m, 8", ""},
	} {
		if got := saysOf(found(strip(c.lines)), "OV517"); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
	}
}

// TestPostsOfNothing: post stitches need posts.
func TestPostsOfNothing(t *testing.T) {
	part := func(lines string) string {
		return twoYarns + "part p\n  title en \"P\" es \"P\"\n  base dc\n" + lines + "\nend\n"
	}
	for _, c := range []struct{ what, lines, want string }{
		{"on chains", "  in rows\n  chain 12\n  row, begin none: fpdc in each", "OV545"},
		{"one among others", "  in rows\n  chain 12\n  row: dc in next 6, bpdc in next, dc in each", "OV545"},
		{"two instructions, one message", "  in joined rounds\n  chain 12, join\n  round: [dc in next, fpdc in next, bpdc in next] around", "OV545"},
		{"drawn together", "  in rows\n  chain 12\n  row: dc in next 6, fpdc2tog, dc in each", "OV545"},
		{"in a ring", "  in joined rounds\n  ring\n  round, begin none: 8 fpdc in ring", "OV545"},
		{"in a ring, in a group", "  in joined rounds\n  ring\n  round: 6 dc in ring, (dc, fpdc) in ring", "OV545"},
		{"in one size", "  in rows\n  chain 12\n  only \"S\"\n    row: dc in each\n  end\n  row: dc in next, [fpdc in next, dc in next] to last, dc in last", "OV545 M"},
		{"on stitches", "  in rows\n  chain 12\n  row: dc in each\n  row: dc in next, fpdc in each", ""},
		{"on stitches that stand on no chain", "  in rows\n  foundation dc 12\n  row: dc in next, fpdc in each", ""},
		{"in a space", "  in rows\n  chain 12\n  row: dc in next 4, ch 2, dc in each\n  row: dc in next 4, fpdc in next space, dc in each", ""},
		{"plain stitches", "  in joined rounds\n  ring\n  round: 8 dc in ring", ""},
	} {
		if got := saysOf(found(part(c.lines)), "OV545"); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
	}
}
