package caution

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// one makes facts of one size; the age is in months.
func one(kind string, age int) Facts {
	return Facts{Kind: kind, KindAt: source.Span{Start: 1, End: 2}, SizeNames: []string{"one"}, AgeMonths: []int{age},
		Gap: plan.Lengths{plan.NoLength}}
}

// drawn is a drawstring whose free ends measure so much, through an opening of 50 cm.
func drawn(z Zone, free plan.Length) Cord {
	const around = 50 * plan.Centimetre
	return Cord{Zone: z, Role: "drawstring", Length: plan.Lengths{around + 2*free}, Opening: plan.Lengths{around},
		At: source.Span{Start: 5, End: 9}}
}

// loose is a cord that draws nothing in.
func loose(z Zone, length plan.Length) Cord {
	return Cord{Zone: z, Length: plan.Lengths{length}, At: source.Span{Start: 5, End: 9}}
}

func with(f Facts, cords ...Cord) Facts {
	f.Cords = cords
	return f
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

const (
	cmm = plan.Centimetre
	mmm = plan.Millimetre
)

// TestFigures goes to each published figure and just beyond. The figures are those of the summaries the table names:
// EN 14682:2014 from tukes.fi, prinfab.com and abelinspection.com; 16 CFR 1120 as summarised by cpsc.gov; 16 CFR 1501;
// AAP 2022.
func TestFigures(t *testing.T) {
	gap := func(f Facts, g plan.Length) Facts { f.Gap = plan.Lengths{g}; return f }
	sewn := func(f Facts, what string) Facts {
		if what == "button" {
			f.Parts = []Part{{Kind: "button", Step: 2}}
		} else {
			f.Parts = []Part{{Kind: "pompom", Step: 2}}
		}
		return f
	}
	for _, c := range []struct {
		name   string
		facts  Facts
		codes  string
		prints string // cautions that must be among those that print
		not    string // and one that must not
	}{
		{"waist, 14 cm", with(one("trousers", 24), drawn(Waist, 14*cmm)), "", "CORD-10 CORD-23 CORD-25", "SLEP-12"},
		{"waist, above 14 cm", with(one("trousers", 24), drawn(Waist, 14*cmm+mmm)), "OV910", "CORD-10", ""},
		{"waist, a month before 14 years", with(one("trousers", 167), drawn(Waist, 15*cmm)), "OV910", "CORD-10", ""},
		{"waist, 14 years", with(one("trousers", 168), drawn(Waist, 15*cmm)), "", "", "CORD-10"},
		{"waist of a baby", with(one("trousers", 6), drawn(Waist, 10*cmm)), "", "CORD-10 SLEP-12", ""},
		{"a loose cord at the waist, 14 cm", with(one("trousers", 24), loose(Waist, 14*cmm)), "", "CORD-10", "CORD-25"},
		{"a loose cord at the waist, above", with(one("trousers", 24), loose(Waist, 14*cmm+mmm)), "OV910", "CORD-10", ""},
		{"jacket waist, 7.62 cm", with(one("jacket", 24), drawn(Waist, 76*mmm)), "", "USCD-02 CORD-10", ""},
		{"jacket waist, above 7.62 cm", with(one("jacket", 24), drawn(Waist, 77*mmm)), "OV910", "USCD-02", ""},
		{"jacket waist below US size 2T", with(one("jacket", 23), drawn(Waist, 77*mmm)), "", "CORD-10", "USCD-02"},
		{"jacket waist above US size 16", with(one("jacket", 204), drawn(Waist, 77*mmm)), "", "", "USCD-02"},
		{"no jacket", with(one("dress", 24), drawn(Waist, 77*mmm)), "", "CORD-10", "USCD-02"},
		{"hood drawstring of a baby", with(one("cardigan", 12), drawn(Hood, 0)), "OV911", "CORD-01", "USCD-01"},
		{"hood drawstring at 6 years 11 months", with(one("dress", 83), drawn(Hood, 0)), "OV911", "CORD-01", "CORD-06"},
		{"hood drawstring at 7 years without ends", with(one("dress", 84), drawn(Hood, 0)), "", "CORD-06", "CORD-01"},
		{"hood drawstring at 7 years with ends", with(one("dress", 84), drawn(Hood, mmm)), "OV912", "CORD-06", ""},
		{"hoodie drawstring at 7 years, US", with(one("hoodie", 84), drawn(Hood, 0)), "OV911", "USCD-01 CORD-06", ""},
		{"hoodie drawstring at 13 years, US size above 12", with(one("hoodie", 156), drawn(Hood, 0)), "", "CORD-06", "USCD-01"},
		{"neck decoration of 7.5 cm", with(one("dress", 24), loose(Neck, 75*mmm)), "", "CORD-03", ""},
		{"neck decoration above 7.5 cm", with(one("dress", 24), loose(Neck, 76*mmm)), "OV910", "CORD-03", ""},
		{"neck decoration at 8 years, 7.5 cm", with(one("dress", 96), loose(Neck, 75*mmm)), "", "CORD-08", ""},
		{"neck decoration at 8 years, above", with(one("dress", 96), loose(Neck, 76*mmm)), "OV910", "CORD-08", ""},
		{"hood decoration", with(one("dress", 24), loose(Hood, mmm)), "OV911", "CORD-02", ""},
		{"hood decoration at 7 years", with(one("dress", 84), loose(Hood, mmm)), "", "CORD-08", "CORD-02"},
		{"back", with(one("dress", 100), loose(Back, mmm)), "OV911", "CORD-14", ""},
		{"hem, 14 cm", with(one("dress", 100), loose(Hem, 14*cmm)), "", "CORD-21", ""},
		{"hem, above 14 cm", with(one("dress", 100), loose(Hem, 14*cmm+mmm)), "OV910", "CORD-21", ""},
		{"hat with a cord", with(one("hat", 30), loose(Other, 10*cmm)), "OV920", "CORD-28 CORD-29", "SLEP-02"},
		{"hat with a cord at 3 years", with(one("hat", 36), loose(Other, 10*cmm)), "OV920", "CORD-28", "CORD-29"},
		{"hat with a cord at 14 years", with(one("hat", 168), loose(Other, 10*cmm)), "", "", "CORD-28"},
		{"mittens with a cord", with(one("mittens", 100), loose(Other, 60*cmm)), "OV920", "CORD-30", "CORD-28"},
		{"mittens with a cord at 14 years", with(one("mittens", 168), loose(Other, 60*cmm)), "", "", "CORD-30"},
		{"bib with a cord", with(one("bib", 11), loose(Other, 20*cmm)), "OV920", "CORD-31 SLEP-12", ""},
		{"bib with a cord at a year", with(one("bib", 12), loose(Other, 20*cmm)), "OV920", "CORD-28", "CORD-31"},
		{"toy with a cord of 22 cm", with(one("rattle", 6), loose(Other, 22*cmm)), "", "TOYC-01", ""},
		{"toy with a cord above 22 cm", with(one("rattle", 6), loose(Other, 22*cmm+mmm)), "OV910", "TOYC-01", ""},
		{"toy for 18 months with 30 cm", with(one("rattle", 18), loose(Other, 30*cmm)), "", "TOYC-02", "TOYC-01"},
		{"toy for 18 months above 30 cm", with(one("rattle", 18), loose(Other, 30*cmm+mmm)), "OV910", "TOYC-02", ""},
		{"toy for 3 years", with(one("rattle", 36), loose(Other, 90*cmm)), "", "", "TOYC-02"},
		{"toy with a button, whatever its label", sewn(one("toy", 60), "button"), "OV913", "PART-04 PART-05 PART-11", ""},
		{"ball with a button for 3 years", sewn(one("ball", 36), "button"), "", "", "PART-04"},
		{"button under 3", sewn(one("cardigan", 35), "button"), "OV921", "PART-09", ""},
		{"button at 3", sewn(one("cardigan", 36), "button"), "", "", "PART-09"},
		{"pompom under 3", sewn(one("hat", 35), "pompom"), "OV922", "PART-10", ""},
		{"pompom at 3", sewn(one("hat", 36), "pompom"), "", "", "PART-10"},
		{"baby socks, closed", gap(one("socks", 11), 5*mmm), "", "TRAP-03", "TRAP-01"},
		{"baby socks, open", gap(one("socks", 11), 5*mmm+1), "OV914", "TRAP-01", ""},
		{"socks at a year, open", gap(one("socks", 12), 9*mmm), "", "", "TRAP-01"},
		{"baby blanket, open", gap(one("blanket", 0), 6*mmm), "OV923", "TRAP-02 SLEP-01", ""},
		{"baby blanket, not measured", one("blanket", 11), "", "TRAP-02 SLEP-01", ""},
		{"blanket at a year", one("blanket", 12), "", "", "SLEP-01"},
		{"baby hat", one("hat", 11), "", "SLEP-02 TRAP-03", ""},
		{"hat at a year", one("hat", 12), "", "", "SLEP-02"},
		{"cot bumper at any age", one("cot_bumper", -1), "OV915", "SLEP-04", ""},
		{"cocoon", one("cocoon", 23), "OV924", "SLEP-05", ""},
		{"cocoon at two", one("cocoon", 24), "", "", "SLEP-05"},
		{"a grown-up's pullover", with(one("pullover", 216), drawn(Neck, 40*cmm)), "", "", "CORD-01"},
		{"a bag", with(one("bag", 6), loose(Other, 90*cmm)), "", "", "SLEP-12"},
	} {
		prints, found := Evaluate(c.facts)
		if got := codes(found); got != c.codes {
			t.Errorf("%s: found %q, want %q", c.name, got, c.codes)
		}
		for _, id := range strings.Fields(c.prints) {
			if !slices.Contains(ids(prints), id) {
				t.Errorf("%s: %s does not print, only %v", c.name, id, ids(prints))
			}
		}
		if c.not != "" && slices.Contains(ids(prints), c.not) {
			t.Errorf("%s: %s prints", c.name, c.not)
		}
		for _, d := range found {
			if gaps := diag.Incomplete(d); len(gaps) > 0 {
				t.Errorf("%s: %v", c.name, gaps)
			}
		}
	}
}

// TestEachRule checks that every rule of the table is reached by some facts and left by others that differ in one thing.
func TestEachRule(t *testing.T) {
	for i := range Rules {
		r := &Rules[i]
		kind := "cot_bumper"
		for _, word := range words {
			if class := classes[word]; class != "toy" && (r.kinds == nil || class == r.kinds[0]) {
				kind = word
				break
			}
		}
		if r.kinds != nil && r.kinds[0] == "toy" {
			kind = "rattle" // a toy is for the youngest at any age
		}
		if len(r.kinds) == 1 && r.kinds[0] == "toy" {
			kind = "toy"
		}
		build := func(age int, free plan.Length) Facts {
			f := one(kind, age)
			z := Other
			if r.zones != nil {
				z = r.zones[0]
			}
			switch r.element {
			case cord:
				if r.drawn == False {
					f.Cords = []Cord{loose(z, free)}
				} else {
					f.Cords = []Cord{drawn(z, free)}
				}
			case button:
				f.Parts = []Part{{Kind: "button"}}
			case pompom:
				f.Parts = []Part{{Kind: "pompom"}}
			case elastic:
				f.Elastics = []Elastic{{Zone: z}}
			}
			if r.measure == opening {
				f.Gap = plan.Lengths{free}
			}
			return f
		}
		printsAt := func(age int, free plan.Length) bool {
			prints, _ := Evaluate(build(age, free))
			return slices.Contains(ids(prints), r.ID)
		}
		errorAt := func(free plan.Length) bool {
			_, found := Evaluate(build(r.AgeFrom, free))
			return slices.ContainsFunc(found, func(d diag.Diagnostic) bool { return d.Code == r.code })
		}
		over := r.Limit + mmm
		if !printsAt(r.AgeFrom, over) || r.AgeBelow > 0 && !printsAt(r.AgeBelow-1, over) {
			t.Errorf("%s does not print at its ages", r.ID)
		}
		if r.AgeBelow > 0 && kind != "toy" && printsAt(r.AgeBelow, over) || r.AgeFrom > 0 && printsAt(r.AgeFrom-1, over) {
			t.Errorf("%s prints beyond its ages", r.ID)
		}
		if r.code != "" && !errorAt(over) {
			t.Errorf("%s finds nothing", r.ID)
		}
		if f := build(r.AgeFrom, over); r.kinds != nil {
			f.Kind = "coaster"
			if prints, found := Evaluate(f); slices.Contains(ids(prints), r.ID) || len(found) > 0 && r.element != pompom {
				t.Errorf("%s holds for a coaster: %v", r.ID, codes(found))
			}
		}
	}
}

// TestStraddling checks that a size counts by its youngest wearer: one for 6 to 8 years is one for children under 7.
func TestStraddling(t *testing.T) {
	f := Facts{Kind: "dress", SizeNames: []string{"4-6 y", "6-8 y", "8-10 y"}, AgeMonths: []int{48, 72, 96}}
	c := drawn(Neck, 0)
	c.Length = plan.Lengths{50 * cmm, 50 * cmm, 50 * cmm}
	c.Opening = c.Length
	prints, found := Evaluate(with(f, c))
	if codes(found) != "OV911" || !slices.Equal(found[0].Sizes, []string{"4-6 y", "6-8 y"}) {
		t.Errorf("found %v", found)
	}
	for _, p := range prints {
		if p.ID == "CORD-06" && !slices.Equal(p.For, plan.Sizes{false, false, true}) {
			t.Errorf("CORD-06 is for %v", p.For)
		}
	}
}

// TestStrictest checks that where two markets limit one cord there is one finding with the stricter figure in each size,
// and that its remedy passes while a millimetre more does not.
func TestStrictest(t *testing.T) {
	f := Facts{Kind: "jacket", SizeNames: []string{"1 y", "4 y"}, AgeMonths: []int{12, 48}}
	c := Cord{Zone: Waist, Role: "drawstring", Length: plan.Lengths{90 * cmm, 94 * cmm}, Opening: plan.Lengths{50 * cmm, 54 * cmm}}
	_, found := Evaluate(with(f, c))
	if codes(found) != "OV910" {
		t.Fatalf("found %v", found)
	}
	a := found[0].Args
	want := func(key string, values ...string) {
		if p, ok := a[key].(diag.PerSize); !ok || !slices.Equal(p.Values, values) || !p.All {
			t.Errorf("%s is %v, want %v", key, a[key], values)
		}
	}
	want("found", "20 cm", "20 cm")
	want("limit", "14 cm", "7.62 cm")
	want("largest", "78 cm", "69.2 cm")
	if s := a["source"].([]string); len(s) != 2 {
		t.Errorf("sources: %v", s)
	}
	c.Length = plan.Lengths{78 * cmm, 692 * mmm}
	if _, found := Evaluate(with(f, c)); len(found) > 0 {
		t.Errorf("the remedy is refused: %v", found)
	}
	c.Length = plan.Lengths{78*cmm + mmm, 692*mmm + mmm}
	if _, found := Evaluate(with(f, c)); codes(found) != "OV910" {
		t.Errorf("a millimetre more than the remedy: %v", found)
	}
}

// TestUnknown checks that what is not known is asked for, one thing at a time, and that the cautions print meanwhile.
func TestUnknown(t *testing.T) {
	nothing := drawn(Waist, 20*cmm)
	noOpening := nothing
	noOpening.Opening = nil
	noLength := nothing
	noLength.Length = nil
	for _, c := range []struct {
		name   string
		facts  Facts
		codes  string
		prints string
	}{
		{"a cord and nothing else", with(one("", -1), nothing), "OV901", ""},
		{"a cord on a child's something", with(one("", 24), nothing), "OV901", ""},
		{"a child's something", one("", 6), "OV901", ""},
		{"a grown-up's something", one("", 216), "", ""},
		{"a cord on a grown-up's something", with(one("", 216), nothing), "", ""},
		{"a word nobody knows", with(one("gizmo", 24), nothing), "OV905", ""},
		{"nothing at all", one("", -1), "", "NONE"},
		{"no age", with(one("trousers", -1), nothing), "OV902", "CORD-10"},
		{"no age and nothing to be careful of", one("trousers", -1), "OV902", "TRAP-03"},
		{"a thing for the house", one("coaster", -1), "", ""},
		{"no zone", with(one("cardigan", 12), drawn(UnknownZone, 20*cmm)), "OV903", "CORD-01 CORD-10"},
		{"no opening", with(one("trousers", 24), noOpening), "OV904", "CORD-10"},
		{"no length", with(one("trousers", 24), noLength), "OV904", "CORD-10"},
		{"a pompom on a thing nobody names", func() Facts { f := one("", -1); f.Parts = []Part{{Kind: "pompom"}}; return f }(), "OV902", "PART-10"},
		{"a button on a thing nobody names", func() Facts { f := one("", -1); f.Parts = []Part{{Kind: "button"}}; return f }(), "OV901", ""},
	} {
		prints, found := Evaluate(c.facts)
		if got := codes(found); got != c.codes {
			t.Errorf("%s: asks %q, want %q", c.name, got, c.codes)
		}
		for _, id := range strings.Fields(c.prints) {
			if !slices.Contains(ids(prints), id) {
				t.Errorf("%s: %s does not print, only %v", c.name, id, ids(prints))
			}
		}
		for _, d := range found {
			if gaps := diag.Incomplete(d); len(gaps) > 0 || diag.Lookup(d.Code).Severity != diag.Warning {
				t.Errorf("%s: %s %v", c.name, d.Code, gaps)
			}
		}
	}
	// A cord so short that its ends keep to the limit whatever the opening is asks nothing.
	short := noOpening
	short.Length = plan.Lengths{28 * cmm}
	if _, found := Evaluate(with(one("trousers", 24), short)); len(found) > 0 {
		t.Errorf("a cord of 28 cm asks %v", found)
	}
	f := Facts{Kind: "trousers", SizeNames: []string{"a", "b"}, AgeMonths: []int{24}}
	if _, found := Evaluate(f); codes(found) != "OV902" || !slices.Equal(found[0].Sizes, []string{"b"}) {
		t.Errorf("one age of two: %v", found)
	}
}

// TestLonger checks on cords of any sort that a longer one never has fewer findings.
func TestLonger(t *testing.T) {
	kinds := Kinds()
	zones := []Zone{UnknownZone, Neck, Hood, Chest, Waist, Back, Hem, Sleeve, Other}
	rapid.Check(t, func(t *rapid.T) {
		sizes := rapid.IntRange(1, 4).Draw(t, "sizes")
		f := Facts{Kind: rapid.SampledFrom(append(kinds, "", "gizmo")).Draw(t, "kind")}
		c := Cord{Zone: rapid.SampledFrom(zones).Draw(t, "zone"),
			Role: rapid.SampledFrom([]Role{"drawstring", ""}).Draw(t, "role")}
		longer := c
		for i := range sizes {
			f.SizeNames = append(f.SizeNames, string(rune('a'+i)))
			f.AgeMonths = append(f.AgeMonths, rapid.SampledFrom([]int{-1, 0, 11, 12, 23, 24, 83, 84, 155, 168, 203, 204}).Draw(t, "age"))
			l := plan.Length(rapid.IntRange(0, 1000).Draw(t, "length")) * mmm
			c.Length = append(c.Length, l)
			longer.Length = append(longer.Length, l+plan.Length(rapid.IntRange(0, 300).Draw(t, "more"))*mmm)
			o := plan.NoLength
			if rapid.Bool().Draw(t, "opening known") {
				o = plan.Length(rapid.IntRange(100, 800).Draw(t, "opening")) * mmm
			}
			c.Opening = append(c.Opening, o)
		}
		longer.Opening = c.Opening
		_, before := Evaluate(with(f, c))
		_, after := Evaluate(with(f, longer))
		for _, d := range before {
			kept := slices.ContainsFunc(after, func(e diag.Diagnostic) bool {
				// what was asked may be settled by being too long
				return e.Code == d.Code || d.Code == "OV904" && diag.Lookup(e.Code).Severity == diag.Error
			})
			if !kept {
				t.Fatalf("%s goes away: %v, then %v", d.Code, codes(before), codes(after))
			}
			if diag.Lookup(d.Code).Severity != diag.Error {
				continue
			}
			for _, e := range after {
				if e.Code == d.Code && !covers(e.Sizes, d.Sizes) {
					t.Fatalf("%s goes away in some sizes: %v, then %v", d.Code, d.Sizes, e.Sizes)
				}
			}
		}
	})
}

// covers reports whether some sizes (nil: all) hold some others.
func covers(a, b []string) bool {
	if a == nil {
		return true
	}
	return b != nil && !slices.ContainsFunc(b, func(s string) bool { return !slices.Contains(a, s) })
}

// TestSizes checks cautions and findings that hold in some sizes only.
func TestSizes(t *testing.T) {
	f := Facts{Kind: "hat", SizeNames: []string{"3 m", "12 m", "3 y"}, AgeMonths: []int{3, 12, 36},
		Parts: []Part{{Kind: "pompom", Step: 1, For: plan.Sizes{false, true, true}}}}
	prints, found := Evaluate(f)
	if codes(found) != "OV922" || !slices.Equal(found[0].Sizes, []string{"12 m"}) {
		t.Errorf("found %v", found)
	}
	for _, p := range prints {
		switch p.ID {
		case "SLEP-02":
			if !slices.Equal(p.For, plan.Sizes{true, false, false}) || p.Step != -1 {
				t.Errorf("SLEP-02: %+v", p)
			}
		case "PART-10":
			if !slices.Equal(p.For, plan.Sizes{false, true, false}) || p.Step != 1 {
				t.Errorf("PART-10: %+v", p)
			}
		}
	}
}
