package caution

import (
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// one makes facts of one size in which all is known and nothing does harm; the age is in months.
func one(kind string, age int) Facts {
	f := Facts{Kind: kind, KindAt: source.Span{Start: 1, End: 2}, SizeNames: []string{"one"}, AgeMonths: []int{age}, AgeTo: []int{age},
		Height: plan.Lengths{120 * cmm}, SoftFilled: False, CareText: True, FibreText: True, Fibres: 1, Fluffy: False, Raised: False,
		Outerwear: Outerwear(kind), BelowCrotch: BelowCrotch(kind), AtAnkle: AtAnkle(kind), OnePiece: OnePiece(kind), Tight: True,
		Gap: plan.Lengths{0}, Length: plan.Lengths{10 * cmm}, Diameter: plan.Lengths{10 * cmm}, NeckOpening: plan.Lengths{30 * cmm}}
	for _, s := range []*Said{&f.Floats, &f.SleepUse, &f.Weighted, &f.AnimalPart, &f.SaysPure, &f.SafetyClaim, &f.AdultOnly} {
		*s = Said{Is: False}
	}
	for _, t := range []*Truth{&f.Outerwear, &f.BelowCrotch, &f.AtAnkle, &f.OnePiece} {
		if *t == Unknown {
			*t = False
		}
	}
	return f
}

// string makes a cord of one size of which all is known: plain ends, fixed, inside.
func string1(z Zone, role Role, length plan.Length) Cord {
	return Cord{Zone: z, Role: role, Length: plan.Lengths{length}, Loop: plan.Lengths{0}, LoopDrawn: plan.Lengths{0}, Width: plan.Lengths{4 * cmm},
		Thick: 3 * mmm, End: "plain", Fray: False, Elastic: False, Anchored: True, BelowHem: False, Outside: False, Noose: True, At: source.Span{Start: 5, End: 9}}
}

// drawn is a drawstring whose free ends measure so much, through an opening of 50 cm, on a wearer of 48 cm.
func drawn(z Zone, free plan.Length) Cord {
	c := string1(z, "drawstring", 50*cmm+2*free)
	c.Opening, c.Drawn = plan.Lengths{50 * cmm}, plan.Lengths{48 * cmm}
	return c
}

func with(f Facts, cords ...Cord) Facts {
	f.Cords = cords
	return f
}

const (
	cmm = plan.Centimetre
	mmm = plan.Millimetre
)

// factsOf reads facts in the words of testdata/cases.csv.
func factsOf(t *testing.T, text string) Facts {
	t.Helper()
	items := strings.Split(text, "; ")
	kind, age := strings.Fields(items[0]), strings.Fields(items[1])
	if kind[0] != "kind" || age[0] != "age" {
		t.Fatalf("%q begins with neither kind nor age", text)
	}
	f := one(kind[1], whole(t, age[1]))
	if len(age) > 2 {
		f.AgeTo[0] = whole(t, age[3])
	}
	truths := map[string]*Truth{"stuffed": &f.SoftFilled, "fluffy": &f.Fluffy, "raised": &f.Raised, "tight": &f.Tight, "onepiece": &f.OnePiece,
		"floats": &f.Floats.Is, "sleep": &f.SleepUse.Is, "weighted": &f.Weighted.Is, "pure": &f.SaysPure.Is, "claim": &f.SafetyClaim.Is,
		"adult": &f.AdultOnly.Is, "animal": &f.AnimalPart.Is}
	lies := map[string]*Truth{"hard": &f.SoftFilled, "nocare": &f.CareText, "nofibre": &f.FibreText, "nosale": &f.ForSale, "loosefit": &f.Tight}
	lengths := map[string]plan.Lengths{"height": f.Height, "length": f.Length, "gap": f.Gap, "neck": f.NeckOpening, "diameter": f.Diameter}
	for _, item := range items[2:] {
		w := strings.Fields(item)
		switch {
		case truths[w[0]] != nil:
			*truths[w[0]] = True
		case lies[w[0]] != nil:
			*lies[w[0]] = False
		case w[0] == "height", w[0] == "length":
			lengths[w[0]][0] = size(t, w[1], cmm)
		case lengths[w[0]] != nil:
			lengths[w[0]][0] = size(t, w[1], mmm)
		case w[0] == "fibres":
			f.Fibres = whole(t, w[1])
		case w[0] == "part":
			f.Parts = append(f.Parts, Part{Kind: w[1], Material: w[2], Size: size(t, w[3], mmm), Step: -1})
		case w[0] == "elastic":
			f.Elastics = append(f.Elastics, Elastic{Zone: Zone(w[1])})
		case w[0] == "cord":
			f.Cords = append(f.Cords, cordOf(t, w[1:]))
		default:
			t.Fatalf("%q says nothing", item)
		}
	}
	return f
}

func cordOf(t *testing.T, w []string) Cord {
	t.Helper()
	c := string1(Zone(w[0]), Role(w[1]), plan.NoLength)
	for i := 2; i < len(w); i++ {
		switch w[i] {
		case "elastic":
			c.Elastic = True
		case "fray":
			c.Fray = True
		case "loose":
			c.Anchored = False
		case "outside":
			c.Outside = True
		case "end":
			i++
			c.End = End(w[i])
		case "thick":
			i++
			c.Thick = size(t, w[i], mmm)
		default:
			i++
			l := plan.Lengths{size(t, w[i], cmm)}
			switch w[i-1] {
			case "length":
				c.Length = l
			case "opening":
				c.Opening = l
			case "drawn":
				c.Drawn, c.LoopDrawn = l, nil
			case "loop":
				c.Loop, c.LoopDrawn = l, l
			case "width":
				c.Width = l
			default:
				t.Fatalf("%q says nothing of a cord", w[i-1])
			}
		}
	}
	return c
}

func whole(t *testing.T, text string) int {
	t.Helper()
	n, err := strconv.Atoi(text)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

func size(t *testing.T, text string, unit plan.Length) plan.Length {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return plan.Length(math.Round(x * float64(unit)))
}

// rows reads a table of testdata by the names of its columns.
func rows(t *testing.T, name string) []map[string]string {
	t.Helper()
	out, err := tableIn(os.DirFS("testdata"), name)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func codes(l diag.List) string {
	var out []string
	for _, d := range l {
		out = append(out, string(d.Code))
	}
	return strings.Join(out, " ")
}

func ids(cs []plan.Caution) []string {
	var out []string
	for _, c := range cs {
		out = append(out, c.ID)
	}
	return out
}

// behind are the rules that stand behind findings.
func behind(l diag.List) []string {
	var out []string
	for _, d := range l {
		if r, ok := d.Args["rules"].([]string); ok {
			out = append(out, r...)
		}
	}
	return out
}
