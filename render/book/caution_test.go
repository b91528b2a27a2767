package book

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/proof"
	"ovillo/render/words"
)

// manyCautions gives a pattern eighteen cautions, as many as a garment for babies comes to, and four notes for those who sell: some for
// all sizes, some for the first, some for the first two; four at the cord, with reasons.
func manyCautions(p *plan.Pattern) {
	en := []string{
		"Free ends of drawstrings, working cords and belts carry no knot, bead, pompom, tassel or toggle.",
		"Openings between about 5 and 10 mm (3/16 and 3/8 in) can trap a baby's finger or toe: choose a denser stitch or a lining, and check hands and feet often.",
		"Weave in and trim every end, turn the piece inside out before each wear, and look for threads or hair that could wind round a finger or toe.",
		"Finish every free end so that it cannot fray.",
	}
	es := []string{
		"Los extremos libres de cordones y cinturones no llevan nudos, cuentas, pompones, borlas ni topes.",
		"Las aberturas de unos 5 a 10 mm pueden atrapar un dedo del bebé: elegir un punto más denso o un forro, y revisar manos y pies a menudo.",
		"Rematar y recortar todos los cabos, volver la pieza del revés antes de cada uso y buscar hebras o pelos que puedan enrollarse en un dedo.",
		"Rematar cada extremo libre para que no se deshilache.",
	}
	first := func(n int) plan.Sizes {
		out := make(plan.Sizes, len(p.Sizes))
		for z := range min(n, len(out)) {
			out[z] = true
		}
		return out
	}
	p.Cautions = nil
	for i := range 22 {
		k := plan.Caution{
			ID: fmt.Sprint("TEST-", i), Severity: []string{"warn", "caution"}[i%2], Source: "EN 14682:2014", Read: plan.Read(i % 4), Step: -1,
			Text: plan.Text{"en": fmt.Sprintf("(%d) %s", i+1, en[i%4]), "es": fmt.Sprintf("(%d) %s", i+1, es[i%4])},
		}
		if k.Read == plan.OwnRule {
			k.Source = ""
		}
		switch {
		case i >= 18:
			k.Seller = true
		case i >= 13:
			k.For = first(1)
		case i >= 8:
			k.For = first(2)
		case i < 4:
			k.Step = 1
			k.Reason = plan.Text{"en": "the ends are sewn into the hem of the waistband", "es": "los extremos quedan cosidos en la pretina"}
		}
		p.Cautions = append(p.Cautions, k)
	}
}

// cautionLists are the lists of cautions of a document, those of sellers left out.
func cautionLists(doc *page.Document) []*page.Elem {
	var out []*page.Elem
	walk(doc.Root, func(e *page.Elem) {
		if e.Tag != "Div" || slices.ContainsFunc(e.Kids, func(k *page.Elem) bool { return k.Tag[0] == 'H' }) {
			return
		}
		for _, k := range e.Kids {
			if k.Tag == "L" {
				out = append(out, k)
			}
		}
	})
	return out
}

// TestCautionsKeepTheLaws in every edition, on every paper.
func TestCautionsKeepTheLaws(t *testing.T) {
	for _, paper := range []Paper{A4, A5, Phone} {
		for _, kind := range []Edition{0, Large, LowInk, LeftHanded, Tester, Booklet, After} {
			if paper != A4 && kind&(Large|Booklet) != 0 {
				continue
			}
			t.Run(fmt.Sprint(paper, " ", kind), func(t *testing.T) {
				doc := edition{sizes: 4, langs: []string{"en", "es"}, alter: manyCautions, kind: kind}.compose(t, paper)
				require.Len(t, cautionLists(doc), 2*(3+1), "three groups in front and one at the step, in each language")
				if kind == Booklet {
					return // its sheets hold two pages; the pages themselves are those of A5
				}
				for _, f := range proof.Look(doc, promised(paper, kind)) {
					t.Error(f)
				}
			})
		}
	}
}

// promised is what the pages of an edition must keep: large print has margins of an inch, and the numbers of a test edition stand in
// the margin.
func promised(paper Paper, kind Edition) proof.Promise {
	const inch, numbers = 25.4, 7.0
	sheetW, sheetH, left, top := paper.Sheet()
	w, h := paper.Block()
	p := proof.Promise{Block: proof.Rect{X: left, Y: top, W: w, H: h}, Large: kind.Has(Large), LowInk: kind.Has(LowInk)}
	switch kind {
	case Large:
		p.Block = proof.Rect{X: inch, Y: inch, W: sheetW - 2*inch, H: sheetH - 2*inch}
	case Tester:
		p.Block.X, p.Block.W = left-numbers, w+numbers
	}
	return p
}

// TestCautionsAreAList: each is an item, its sign a label, its reason a paragraph of its own; what holds for all stands once, at the
// end, and wherever they go on the page says so, and for which sizes.
func TestCautionsAreAList(t *testing.T) {
	for _, c := range []struct {
		paper Paper
		langs []string
	}{{A4, []string{"en", "es"}}, {A4, []string{"en"}}, {A5, []string{"es"}}, {Phone, []string{"es"}}} {
		t.Run(fmt.Sprint(c.paper, c.langs), func(t *testing.T) {
			e := edition{sizes: 4, langs: c.langs, alter: manyCautions}
			doc, p := e.compose(t, c.paper), e.pattern()
			items, reasons := 0, 0
			for _, list := range cautionLists(doc) {
				for _, li := range list.Kids {
					require.Equal(t, []string{"LI", "Lbl", "LBody"}, []string{li.Tag, li.Kids[0].Tag, li.Kids[1].Tag})
					items, reasons = items+1, reasons+len(li.Kids[1].Kids)-1
				}
			}
			require.Equal(t, len(c.langs)*(18+4), items)
			require.Equal(t, len(c.langs)*(4+4), reasons)
			for _, l := range languages(t, e.langs...) {
				only := squeezed(l.OnlyFor(p, plan.Sizes{true, true, false, false}).String())
				standing := 0
				for i, pg := range doc.Pages {
					text := squeezed(pageText(pg))
					standing += strings.Count(text, squeezed(l.Say(words.CautionsStanding)))
					for n := 9; n <= 13; n++ {
						if strings.Contains(text, fmt.Sprintf("(%d)", n)) {
							require.Contains(t, text, only, "page %d", i+1)
						}
					}
				}
				require.Equal(t, 1, standing)
			}
		})
	}
}

// TestStandingLineIsNotAlone: what holds for all cautions stands on a page with one of them, however many there are.
func TestStandingLineIsNotAlone(t *testing.T) {
	numbered := regexp.MustCompile(`\(\d+\)`)
	for _, paper := range []Paper{A4, Phone} {
		for _, langs := range [][]string{{"es"}, {"en", "es"}} {
			for most := 2; most <= 9; most++ {
				e := edition{sizes: 4, langs: langs, alter: func(p *plan.Pattern) {
					manyCautions(p)
					p.Cautions = p.Cautions[:most]
				}}
				doc := e.compose(t, paper)
				for _, l := range languages(t, langs...) {
					line, found := squeezed(l.Say(words.CautionsStanding)), 0
					for i, pg := range doc.Pages {
						if text := squeezed(pageText(pg)); strings.Contains(text, line) {
							found++
							require.Regexp(t, numbered, text, "%v, %d cautions, page %d", langs, most, i+1)
						}
					}
					require.Equal(t, 1, found)
				}
			}
		}
	}
}

// TestSellersNotesStandApart: behind all else, under a head of their own, and not among the cautions; without any there is no head.
func TestSellersNotesStandApart(t *testing.T) {
	for paper, all := range map[Paper][][]string{A4: {{"en", "es"}, {"es"}}, Phone: {{"en"}, {"es"}}} {
		for _, langs := range all {
			e := edition{sizes: 4, langs: langs, alter: manyCautions}
			doc := e.compose(t, paper)
			none := e
			none.alter = func(p *plan.Pattern) {
				manyCautions(p)
				p.Cautions = slices.DeleteFunc(p.Cautions, func(c plan.Caution) bool { return c.Seller })
			}
			without := none.compose(t, paper)
			for _, l := range languages(t, langs...) {
				head, last := squeezed(l.Say(words.SellersHead)), squeezed(l.Say(words.SellersStanding))
				at, end := -1, -1
				for i, pg := range doc.Pages {
					text := squeezed(pageText(pg))
					if strings.Contains(text, head) {
						require.Equal(t, -1, at, "the head stands twice")
						at = i
					}
					if strings.Contains(text, last) {
						end = i
					}
					for n := 19; n <= 22; n++ {
						require.False(t, at < 0 && strings.Contains(text, fmt.Sprintf("(%d)", n)), "note %d stands on page %d", n, i+1)
					}
				}
				require.GreaterOrEqual(t, at, 0)
				require.GreaterOrEqual(t, end, at)
				for _, pg := range without.Pages {
					require.NotContains(t, squeezed(pageText(pg)), head)
					require.NotContains(t, squeezed(pageText(pg)), last)
				}
			}
		}
	}
}
