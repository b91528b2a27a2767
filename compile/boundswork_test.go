package compile

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/compile/fabric"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// sizedHead begins a pattern of so many sizes.
func sizedHead(n int) string {
	names := make([]string, n)
	for i := range names {
		names[i] = fmt.Sprintf("\"S%d\"", i)
	}
	return "pattern p\n  title en \"P\" es \"P\"\n  terms us\n  kind scarf\nend\nsizes " + strings.Join(names, ", ") + "\n  age 20 years\nend\n"
}

// flatPart is a part worked in rows.
func flatPart(name string, lines ...string) string {
	return fmt.Sprintf("part %s\n  title en \"%[1]s\" es \"%[1]s\"\n  in rows\n  %s\nend\n", name, strings.Join(lines, "\n  "))
}

// longPieces are parts that have so many rows together, as few parts as there can be.
func longPieces(rows int) string {
	var b strings.Builder
	for i := 0; rows > 0; i++ {
		k := min(rows, maxRows)
		b.WriteString(flatPart(fmt.Sprint("p", i), "chain 2", fmt.Sprintf("%d rows: sc in each = 2", k)))
		rows -= k
	}
	return b.String()
}

// widePieces are parts with so many stitches together in each size, all of them in chains to start with.
func widePieces(stitches int) string {
	var b strings.Builder
	for i := 0; stitches > 0; i++ {
		k := min(stitches, fabric.MostInRow)
		b.WriteString(flatPart(fmt.Sprint("p", i), fmt.Sprintf("chain %d", k), fmt.Sprintf("have %d sts", k)))
		stitches -= k
	}
	return b.String()
}

// listOf is so many items.
func listOf(item string, n int) string {
	return strings.TrimSuffix(strings.Repeat(item+", ", n), ", ")
}

// What is as large as it may be is checked, and nothing is said of it; what is larger by one is refused, at its place, and nothing else is
// said, but that a part whose rows have no mirror image states no counts.
func TestAtTheBoundOfWork(t *testing.T) {
	one := sizedHead(1)
	gauge := one + "gauge 10 cm\n  sc 10 sts, 10 rows\nend\n"
	plain := "stitch pattern plain\n  name en \"plain\" es \"liso\"\n  multiple of 1\n  row 1: sc in each\nend\n"
	const pebble = "  name en \"pebble\" es \"guijarro\"\n  abbr en \"peb\" es \"guij\"\n  en | Work it.\n  es | Tejerlo.\nend\n"
	const square = "  title en \"Square\" es \"Cuadro\"\n  in joined rounds\n  ring\n  round: [3 sc in ring, ch 2 as corner] 4 times = 12 sts, 4 spaces\nend\n"
	motifs := func(grid string) string {
		return one + "part square\n" + square + "motifs throw of square\n  title en \"Throw\" es \"Manta\"\n  " + grid +
			"\n  joined in round 1: at each corner, sl st in place of 1 ch\nend\n"
	}
	several := maxStitches/leastStitches + 1 // sizes, each of which has the least that there may be
	for _, c := range []struct {
		what  string
		at    int
		text  func(n int) string
		code  diag.Code
		place string // how the marked text begins; N is the number
	}{
		{"sizes", maxSizes, func(n int) string { return sizedHead(n) + flatPart("p", "chain 6", "row: sc in each = 6") }, codeManySizes, `sizes "S0"`},

		{"rows of a header", maxRows, func(n int) string {
			return one + flatPart("p", "chain 6", fmt.Sprintf("%d rows: sc in each = 6", n))
		}, codeManyRows, "N"},
		{"rows of a part", maxRows, func(n int) string {
			return one + flatPart("p", "chain 6", fmt.Sprintf("%d rows: sc in each = 6", n-1), "row: sc in next, sc in each = 6")
		}, codeManyRows, "row"},
		{"rows for a length", maxRows, func(n int) string {
			return gauge + flatPart("p", "chain 6", fmt.Sprintf("rows for %d cm: sc in each = 6", n))
		}, codeManyRows, "N cm"},
		{"rows to a height", maxRows, func(n int) string {
			return gauge + flatPart("p", "chain 6", fmt.Sprintf("rows to %d cm: sc in each = 6", n))
		}, codeManyRows, "N cm"},
		{"passes of a repeat", maxRows, func(n int) string {
			return one + flatPart("p", "chain 6", fmt.Sprintf("repeat %d times", n), "row: sc in each = 6", "end")
		}, codeManyRows, "N"},
		{"passes of a repeat for a length", maxRows, func(n int) string {
			return gauge + flatPart("p", "chain 6", fmt.Sprintf("repeat rows for %d cm", n), "row: sc in each = 6", "end")
		}, codeManyRows, "N cm"},
		{"rows of a stitch pattern", maxRows, func(n int) string {
			return one + plain + flatPart("p", "chain 6", fmt.Sprintf("%d rows of plain = 6", n))
		}, codeManyRows, "N"},
		{"rows of a stitch pattern for a length", maxRows, func(n int) string {
			return gauge + plain + flatPart("p", "chain 6", fmt.Sprintf("rows of plain for %d cm = 6", n))
		}, codeManyRows, "N cm"},
		{"times that a chart is worked", maxRows, func(n int) string {
			return one + "chart net\n  mesh dc and 1\n  legend \".\" open, \"x\" filled\n  1 | x\nend\n" +
				flatPart("p", "chain 3", fmt.Sprintf("rows from chart net, %d times = 3 dc", n))
		}, codeManyRows, "N"},
		{"rows of all parts", maxRowsInAll, func(n int) string { return one + longPieces(n) }, codeManyRows, "([0-9]+ )?rows?"},
		{"rows of all parts in each of many sizes", max(maxRowsInAll/maxSizes, maxRows), func(n int) string {
			return sizedHead(maxSizes) + flatPart("q", "chain 2", "row: sc in each = 2") + longPieces(n-1)
		}, codeManyRows, "([0-9]+ )?rows?"},

		{"lines that are carried out", maxSteps, func(n int) string { return one + flatPart("p", lines(n, 0)...) }, codeManyRows, "base"},
		{"passes that are carried out", maxSteps, func(n int) string { return one + flatPart("p", lines(maxSteps, n-maxSteps)...) }, codeManyRows, "repeat"},

		{"instructions of a row", maxInstructions, func(n int) string {
			const of = 100
			groups := (n - of) / (of + 1)
			rest := n - groups*(of+1)
			return one + "group g = [" + listOf("sc in next", of) + "]\n" +
				flatPart("p", fmt.Sprintf("chain %d", of*groups+rest), fmt.Sprintf("row: %s, %s = %d", listOf("sc in next", rest), listOf("g", groups), of*groups+rest))
		}, codeLongRow, "g"},
		{"instructions of a row behind its groups", maxInstructions, func(n int) string {
			const of = 100
			groups := (n - of) / (of + 1)
			rest := n - groups*(of+1)
			return one + "group g = [" + listOf("sc in next", of) + "]\n" +
				flatPart("p", fmt.Sprintf("chain %d", of*groups+rest), fmt.Sprintf("row: %s, %s = %d", listOf("g", groups), listOf("sc in next", rest), of*groups+rest))
		}, codeLongRow, "g"},

		{"instructions of all rows with groups", maxGrouped, func(n int) string {
			const of = 1000 // the group itself is one, and so is a pair of brackets
			last := []string{"g", "[g] 1 times"}[n%of]
			return one + "group g = [" + listOf("sc in next", of-1) + "]\n" + flatPart("p", "chain 999", fmt.Sprintf("repeat %d times", n/of-1), "row: g = 999", "end", "row: "+last+" = 999")
		}, codeManyRows, "row"},
		{"rows worked from charts", maxChartRows, func(n int) string {
			var b strings.Builder
			b.WriteString(one + "chart net\n  mesh dc and 1\n  legend \".\" open, \"x\" filled\n  1 | x\nend\n")
			for i := 0; n > 0; i++ {
				k := min(n, maxRows)
				b.WriteString(flatPart(fmt.Sprint("p", i), "chain 3", fmt.Sprintf("rows from chart net, %d times = 3 dc", k)))
				n -= k
			}
			return b.String()
		}, codeManyRows, "rows from chart net, 1 times"},
		{"markers", maxMarks, func(n int) string {
			var b strings.Builder
			for i := range n {
				fmt.Fprintf(&b, "  count off: 3, mark m%d, 3\n", i)
			}
			return one + "part p\n  title en \"p\" es \"p\"\n  in rows\n  chain 6\n" + b.String() + "  row: sc in each = 6\nend\n"
		}, codeTooMany, "part p"},
		{"stitches of all charts in symbols", maxDrawnInAll, func(n int) string {
			var b strings.Builder
			const charts = maxDrawnInAll/maxDrawn + 1
			for i := range charts {
				k := (n + i) / charts // together n
				name := fmt.Sprint("p", i)
				fmt.Fprintf(&b, "chart d%d of %s\n  title en \"p\" es \"p\"\nend\n", i, name)
				b.WriteString(flatPart(name, "begin sc none", fmt.Sprintf("chain %d", k/2), fmt.Sprintf("row: %d sc in next, sc in each = %d", k%2+1, k/2+k%2)))
			}
			return one + b.String()
		}, codeTooMany, "chart d10 of p10"},

		{"lines of mirrored parts", maxMirrored, func(n int) string {
			const of, before = 5000, 3 // the title, in what it is worked, its start
			var b strings.Builder
			b.WriteString(one + flatPart("p", append([]string{"chain 6"}, slices.Repeat([]string{"row: sc in each = 6"}, of-before)...)...))
			for i := range n/of - 1 {
				fmt.Fprintf(&b, "part q%d mirror of p\n  title en \"q%[1]d\" es \"q%[1]d\"\nend\n", i)
			}
			last := append([]string{"chain 6"}, slices.Repeat([]string{"row: sc in each = 6"}, of-before+n%of)...)
			return b.String() + flatPart("r", last...) + "part z mirror of r\n  title en \"z\" es \"z\"\nend\n"
		}, codeManyRows, "r"},
		{"groups in a mirrored part", maxGroups, func(n int) string {
			var b strings.Builder
			b.WriteString(one + "group g1 = [sc in next 2]\n")
			for i := 2; i <= n; i++ {
				fmt.Fprintf(&b, "group g%d = [g%d]\n", i, i-1)
			}
			return b.String() + flatPart("p", "chain 6", fmt.Sprintf("row: g%d, sc in each = 6", n)) + "part q mirror of p\n  title en \"q\" es \"q\"\nend\n"
		}, codeMirror, "gN"},
		{"brackets in a mirrored part", maxGroups, func(n int) string {
			return one + flatPart("p", "chain 6", "row: "+strings.Repeat("[", n)+"sc in next 2"+strings.Repeat("] 1 times", n)+", sc in each = 6") +
				"part q mirror of p\n  title en \"q\" es \"q\"\nend\n"
		}, codeMirror, `\[`},

		{"stitches of one size", maxStitches, func(n int) string { return one + widePieces(n) }, "OV421", "chain"},
		{"stitches of each of several sizes", leastStitches, func(n int) string { return sizedHead(several) + widePieces(n) }, "OV421", "chain"},

		{"stitches that one makes", maxMade, func(n int) string {
			return one + fmt.Sprintf("stitch pebble\n  takes 1, makes %d, tall as dc\n", n) + pebble +
				flatPart("p", "chain 6", fmt.Sprintf("row: pebble in next, sc in each = %d sts", n%(maxMade+1)+5+n/(maxMade+1)))
		}, codeOwnStitch, "takes 1, makes N"},
		{"places behind the stitch of a square", maxBehind, func(n int) string {
			return one + fmt.Sprintf("chart net\n  mesh dc and %d\n  legend \".\" open, \"x\" filled\n  1 | x\nend\n", n) +
				flatPart("p", fmt.Sprintf("chain %d", n+2), fmt.Sprintf("rows from chart net = %d dc", n+2))
		}, codeChartMesh, "mesh dc and N"},
		{"motifs beside one another", maxMotifs, func(n int) string { return motifs(fmt.Sprintf("%d across, 1 down", n)) }, codeMotifNumber, "N across"},
		{"motifs above one another", maxMotifs, func(n int) string { return motifs(fmt.Sprintf("1 across, %d down", n)) }, codeMotifNumber, "1 across, N down"},
		{"stitches of a chart in symbols", maxDrawn, func(n int) string {
			return one + "chart drawn of p\n  title en \"p\" es \"p\"\nend\n" +
				flatPart("p", "begin sc none", fmt.Sprintf("chain %d", n/2), fmt.Sprintf("row: %d sc in next, sc in each = %d", n%2+1, n/2+n%2))
		}, codeDrawnMany, "chart drawn of p"},
	} {
		for over := range 2 {
			text := c.text(c.at + over)
			f, faults := lang.Parse(source.NewFile("bound.ovillo", text))
			if len(faults) > 0 {
				t.Fatalf("%s: it cannot be read: %s", c.what, diag.Message(faults[0], "en"))
			}
			found := CompileWith(f, Options{}).Found
			if over == 0 {
				if len(found) > 0 {
					t.Errorf("%d %s: %s %s", c.at, c.what, found[0].Code, diag.Message(found[0], "en"))
				}
				continue
			}
			found = slices.DeleteFunc(found, func(d diag.Diagnostic) bool {
				return d.Code == codeNoCounts && strings.Contains(c.what, "mirrored part")
			})
			if len(found) != 1 || found[0].Code != c.code {
				t.Errorf("%d %s: want %s alone, got %v", c.at+1, c.what, c.code, saidBy(found))
				continue
			}
			place := strings.ReplaceAll(c.place, "N", fmt.Sprint(c.at+1))
			if at := f.Source.Slice(found[0].Span); !regexp.MustCompile("^" + place).MatchString(at) {
				t.Errorf("%d %s: it is said of %.40q, not of %q", c.at+1, c.what, at, place)
			}
			if have, ok := found[0].Args["have"].(int); ok && found[0].Code == codeManyRows && have != c.at+1 {
				t.Errorf("%d %s: the message has %d", c.at+1, c.what, have)
			}
		}
	}
}

// lines are those of a part in which so many statements are carried out, the last ones by a block, and that many passes of the block more.
func lines(n, more int) []string {
	const before = 5 // the title, in what it is worked, its start, the row and the block
	inside := n/maxRows + 1
	passes := (n - before) / (inside + 1)
	out := []string{"chain 6", "row: sc in each = 6"}
	for range n - before - passes*(inside+1) {
		out = append(out, "base sc")
	}
	out = append(out, fmt.Sprintf("repeat %d times", passes+more))
	for range inside {
		out = append(out, "  base sc")
	}
	return append(out, "end")
}

func saidBy(l diag.List) (out []diag.Code) {
	for _, d := range l {
		out = append(out, d.Code)
	}
	return out
}

// Of yarns of a shared file that are each like the next, as many are followed as may be; the one behind them is not there for the pattern,
// which is said where the last of them names it.
func TestAtTheBoundOfAlike(t *testing.T) {
	for over := range 2 {
		n := mostAlike + over // yarns behind the one that is used
		var common strings.Builder
		common.WriteString("yarn y0\n  name en \"sand\" es \"arena\"\n  weight light\n  fibre cotton 100 %\n  ball 50 g, 120 m\nend\n")
		for i := 1; i <= n; i++ {
			fmt.Fprintf(&common, "yarn y%d like y%d\n  name en \"sand %[1]d\" es \"arena %[1]d\"\nend\n", i, i-1)
		}
		open := func(string) ([]byte, error) { return []byte(common.String()), nil }
		f, faults := lang.Load(source.NewFile("main.ovillo", "use \"common.ovillo\"\n"+sizedHead(1)+
			flatPart("p", fmt.Sprintf("yarn y%d", n), "chain 6", "row: sc in each = 6")), open)
		if len(faults) > 0 {
			t.Fatal(diag.Message(faults[0], "en"))
		}
		out := CompileWith(f, Options{})
		if over == 0 {
			if len(out.Found) > 0 || len(out.Pattern.Yarns) != 1 || out.Pattern.Yarns[0].Weight != "light" {
				t.Errorf("%d yarns: %v, and the pattern has %v", n, saidBy(out.Found), out.Pattern.Yarns)
			}
			continue
		}
		i := slices.IndexFunc(out.Found, func(d diag.Diagnostic) bool { return d.Code == codeNoYarn })
		if i < 0 || f.Source.Slice(out.Found[i].Span) != "y0" {
			t.Errorf("%d yarns: want %s of y0, got %v", n, codeNoYarn, saidBy(out.Found))
		}
	}
}
