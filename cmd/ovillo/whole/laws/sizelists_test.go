package laws

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/whole"
	"ovillo/render/page"
)

// linesOf gathers the lines that each element of a document sets, in their order. A line that begins further down, or in the next
// column or page, is the next one.
func linesOf(d *page.Document) map[*page.Elem][]string {
	type line struct {
		page int
		base float64
	}
	at := map[*page.Elem]map[line][]page.Glyphs{}
	for n, p := range d.Pages {
		for _, it := range p.Items {
			g, ok := it.(page.Glyphs)
			if !ok || g.Elem == nil {
				continue
			}
			if at[g.Elem] == nil {
				at[g.Elem] = map[line][]page.Glyphs{}
			}
			k := line{n, g.Base}
			at[g.Elem][k] = append(at[g.Elem][k], g)
		}
	}
	out := map[*page.Elem][]string{}
	for e, lines := range at {
		keys := make([]line, 0, len(lines))
		for k := range lines {
			keys = append(keys, k)
		}
		slices.SortFunc(keys, func(a, b line) int { return cmp.Or(cmp.Compare(a.page, b.page), cmp.Compare(a.base, b.base)) })
		for _, k := range keys {
			slices.SortFunc(lines[k], func(a, b page.Glyphs) int { return cmp.Compare(a.X, b.X) })
			text := ""
			for _, g := range lines[k] {
				text += g.Text
			}
			out[e] = append(out[e], text)
		}
	}
	return out
}

// brokenList finds a line end ¶ inside a list of sizes: between the first size and the bracket behind it, or within a bracket.
// Between the groups of a long list, behind a closed bracket, a line may end.
var brokenList = regexp.MustCompile(`[0-9–½¼¾]¶\([0-9–−+½¼¾]|\([0-9–−+½¼¾.,;¶ \x{a0}\x{202f}]*¶[0-9–−+½¼¾.,;¶ \x{a0}\x{202f}]*\)`)

// numberBreak finds a number that is torn, from its sign, its space of thousands, its fraction or its unit.
var numberBreak = regexp.MustCompile(`[−+]¶[0-9]|[0-9]¶[½¼¾]|[0-9]{1,3}\x{202f}¶|¶\x{202f}[0-9]|[0-9½¼¾]¶(?:(?:cm|mm|m|g|yd|pulg\.|%|°C)(?:[^\pL]|$)|in(?:[,.;)]|$))`)

// TestSizeListsNeverBreak sets every example, and one of ten sizes with numbers as long as they come, and looks at where its lines
// end.
func TestSizeListsNeverBreak(t *testing.T) {
	sources := append(whole.Examples(t), whole.Cases(t)...)
	sources = append(sources, whole.NewSource("ten.ovillo", tenSizes))
	lists := 0
	for _, s := range sources {
		for _, langs := range [][]string{{"en", "es"}, {"en"}, {"es"}, {"es-MX", "en-GB"}} {
			d := s.Pages(t, desk.Look{Langs: langs})
			for elem, lines := range linesOf(d) {
				if elem.Tag == "Figure" {
					continue // the numbers in a drawing stand apart
				}
				text := strings.Join(lines, "¶")
				lists += strings.Count(text, "\u00a0(")
				for _, rx := range []*regexp.Regexp{brokenList, numberBreak} {
					if hit := rx.FindString(text); hit != "" {
						t.Errorf("%s %v: a line ends in %q: %s", s.Name, langs, hit, text)
					}
				}
			}
		}
	}
	if lists < 500 {
		t.Errorf("only %d lists of sizes were looked at", lists)
	}
}

// TestBrokenListIsSeen proves that the test above can fail.
func TestBrokenListIsSeen(t *testing.T) {
	for _, bad := range []string{"work 12¶(14, 16) sts", "12\u00a0(14,¶16) sts", "12\u00a0(14;\u00a016;¶18) p", "1 (2, 3, 4, 5) (6, 7,¶8, 9)"} {
		if !brokenList.MatchString(bad) {
			t.Errorf("%q was not seen", bad)
		}
	}
	for _, good := range []string{"1\u00a0(2,\u00a03,\u00a04,\u00a05)¶(6,\u00a07)", "in row 3,¶work 4", "(see page 12)¶(and 13)", "round 4¶(plain)", "3¶times (2)"} {
		if hit := brokenList.FindString(good); hit != "" {
			t.Errorf("%q: %q", good, hit)
		}
	}
	for _, bad := range []string{"12¶cm", "−¶2", "2¶½", "12\u202f¶345"} {
		if !numberBreak.MatchString(bad) {
			t.Errorf("%q was not seen", bad)
		}
	}
}

// tenSizes is a piece in ten sizes whose numbers have three figures. Invented.
var tenSizes = func() string {
	list := func(from, step int) string {
		var rest [9]string
		for i := range rest {
			rest[i] = fmt.Sprint(from + step*(i+1))
		}
		return fmt.Sprintf("%d (%s)", from, strings.Join(rest[:], ", "))
	}
	return `pattern ten
  title en "Ten" es "Diez"
  terms us
  base sc
  in rows
  note
    en | Cast {wide|stitch|stitches}, then {long} of it, and leave {side} for later; the edge has {wide|stitch|stitches} and is {long} long, {side} of them free.
    es | Montar {wide|punto|puntos}, luego {long} y dejar {side} para después; la orilla tiene {wide|punto|puntos} y mide {long}, {side} de ellos libres.
  end
end
sizes "XS", "S", "M", "L", "XL", "2XL", "3XL", "4XL", "5XL", "6XL"
end
gauge 10 cm
  sc 20 sts, 20 rows
end
let wide = ` + list(100, 12) + `
let side = ` + list(31, 3) + `
let long = ` + list(40, 3) + ` cm
part front
  title en "Front" es "Delantero"
  chain wide
  row: sc in next side, inc, sc in each = wide + 1
  ` + list(3, 2) + ` rows: inc, sc in each to last 1, inc
  rows to long: sc in each
  row: sc in next side, dec, sc in next side, [sc in next 2] ` + list(4, 1) + ` times, sc in each
  fasten off
end
measure
  width = width of front
  length = height of front
end
`
}()
