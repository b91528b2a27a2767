package caution

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// sized makes facts of several sizes from those of one, with these ages.
func sized(f Facts, ages ...int) Facts {
	many := func(l plan.Lengths) plan.Lengths {
		if len(l) == 0 {
			return l
		}
		return slices.Repeat(l[:1], len(ages))
	}
	f.AgeMonths, f.AgeTo, f.SizeNames = ages, nil, nil
	for i := range ages {
		f.SizeNames = append(f.SizeNames, string(rune('a'+i)))
	}
	f.Height, f.Gap, f.Length, f.Diameter, f.NeckOpening = many(f.Height), many(f.Gap), many(f.Length), many(f.Diameter), many(f.NeckOpening)
	for i := range f.Cords {
		c := &f.Cords[i]
		for _, l := range []*plan.Lengths{&c.Length, &c.Opening, &c.Drawn, &c.Loop, &c.LoopDrawn, &c.Width} {
			*l = many(*l)
		}
	}
	return f
}

// TestStraddling checks that a size counts by its youngest wearer, and that up to 134 cm a child is a young one whatever its age
// (EN 14682 by the pages of tukes.fi and din.de).
func TestStraddling(t *testing.T) {
	f := sized(with(one("dress", 72), drawn(Neck, 0)), 48, 72, 84, 96) // 4-6, 6-8, 7-9 and 8-10 years
	f.AgeTo = []int{72, 96, 108, 120}
	f.Height = plan.Lengths{104 * cmm, 116 * cmm, 134 * cmm, 134*cmm + mmm}
	_, found := Evaluate(f)
	if !strings.Contains(codes(found), "OV911") || !slices.Equal(found[0].Sizes, []string{"a", "b", "c"}) {
		t.Errorf("found %v in %v", codes(found), found[0].Sizes)
	}
	f.Height[2] = plan.NoLength
	_, found = Evaluate(f)
	if !slices.Equal(found[0].Sizes, []string{"a", "b"}) {
		t.Errorf("found %v in %v", codes(found), found[0].Sizes)
	}
	asked := slices.IndexFunc(found, func(d diag.Diagnostic) bool { return d.Code == "OV908" })
	if asked < 0 || !slices.Equal(found[asked].Sizes, []string{"c"}) {
		t.Errorf("the height of one size is not asked for: %v", codes(found))
	}
}

// TestMarkets checks that the rules of other markets are left out, and that none given is all.
func TestMarkets(t *testing.T) {
	f := with(one("jacket", 48), drawn(Waist, 10*cmm))
	for _, c := range []struct{ markets, codes string }{
		{"", "OV910"}, {"us", "OV910"}, {"eu", ""}, {"uk", ""}, {"eu us", "OV910"}, {"eu uk", ""},
	} {
		f.Markets = strings.Fields(c.markets)
		prints, found := Evaluate(f)
		if got := codes(found); got != c.codes {
			t.Errorf("%q: %q, want %q", c.markets, got, c.codes)
		}
		us, eu := slices.Contains(ids(prints), "USCD-02"), slices.Contains(ids(prints), "CORD-10")
		if len(f.Markets) > 0 && (us != slices.Contains(f.Markets, "us") || eu != (c.markets != "us")) {
			t.Errorf("%q: %v", c.markets, ids(prints))
		}
	}
	// A soft toy is for the youngest where the rules of Europe hold; in the United States alone its label counts.
	toy := one("toy", 60)
	toy.SoftFilled = True
	toy.Parts = []Part{{Kind: "safety_eye", Size: 9 * mmm, Step: -1}}
	for markets, want := range map[string]bool{"": true, "uk": true, "us": false} {
		toy.Markets = strings.Fields(markets)
		if _, found := Evaluate(toy); slices.Contains(behind(found), "PART-03") != want {
			t.Errorf("%q: %v", markets, behind(found))
		}
	}
}

// TestStrictest checks that where two markets limit one cord there is one finding with the stricter figure in each size, and that
// its remedy passes while a millimetre more does not.
func TestStrictest(t *testing.T) {
	f := sized(with(one("jacket", 12), drawn(Waist, 20*cmm)), 12, 48)
	f.Cords[0].Opening, f.Cords[0].Length = plan.Lengths{50 * cmm, 54 * cmm}, plan.Lengths{90 * cmm, 94 * cmm}
	f.Cords[0].Drawn = plan.Lengths{49 * cmm, 50 * cmm}
	_, found := Evaluate(f)
	if codes(found) != "OV910 OV925" {
		t.Fatalf("found %v", codes(found))
	}
	want := func(d diag.Diagnostic, key string, values ...string) {
		if p, ok := d.Args[key].(diag.PerSize); !ok || !slices.Equal(p.Values, values) || !p.All {
			t.Errorf("%s: %s is %v, want %v", d.Code, key, d.Args[key], values)
		}
	}
	want(found[0], "found", "20 cm", "20 cm")
	want(found[0], "limit", "14 cm", "7.62 cm")
	want(found[0], "largest", "77 cm", "69.2 cm") // 28 cm more than the wearer is less than 28 cm more than the opening
	want(found[1], "found", "41 cm", "44 cm")
	want(found[1], "limit", "28 cm", "28 cm")
	want(found[1], "largest", "77 cm", "69.2 cm")
	if s := found[0].Args["source"].([]string); !slices.Equal(s, []string{"EN 14682:2014", "16 CFR 1120"}) {
		t.Errorf("sources: %v", s)
	}
}

// TestBelt: a belt is measured from where it is tied (36 cm at most: garmtech.com and zy689.cn on EN 14682, CORD-12), so that what goes
// round the wearer is not its free end. Round whom it goes is asked for where it matters.
func TestBelt(t *testing.T) {
	belt := func(length, waist plan.Length) Facts {
		c := string1(Waist, "tie_belt", length)
		c.Width, c.Drawn, c.BelowHem = plan.Lengths{3 * cmm}, plan.Lengths{waist}, False
		return with(one("dress", 24), c)
	}
	for _, c := range []struct {
		length, waist plan.Length
		code          diag.Code
		arg           string
	}{
		{124 * cmm, 52 * cmm, "", ""},
		{124*cmm + 2, 52 * cmm, "OV910", "124 cm"},
		{200 * cmm, 52 * cmm, "OV910", "124 cm"},
		{36 * cmm, plan.NoLength, "", ""},
		{37 * cmm, plan.NoLength, "OV904", "fit waist 50 cm"},
	} {
		_, found := Evaluate(belt(c.length, c.waist))
		found = slices.DeleteFunc(found, func(d diag.Diagnostic) bool { return d.Code != "OV910" && d.Code != "OV904" })
		switch {
		case c.code == "" && len(found) == 0:
		case len(found) != 1 || found[0].Code != c.code:
			t.Errorf("%v round %v: %v", c.length, c.waist, found)
		case c.code == "OV910" && found[0].Args["largest"].(diag.PerSize).Values[0] != c.arg:
			t.Errorf("%v round %v: the longest is %v", c.length, c.waist, found[0].Args["largest"])
		case c.code == "OV904" && !slices.Equal(found[0].Args["says"].([]string), []string{c.arg}):
			t.Errorf("%v round %v: %v", c.length, c.waist, found[0].Args["says"])
		}
	}
}

// TestAnkle: a tie at the ankle of trousers goes round the ankle as one at a bootee does (TRAP-05); one at the hem of a jacket does not.
func TestAnkle(t *testing.T) {
	for kind, want := range map[string]Truth{"trousers": True, "bootees": True, "jacket": False} {
		c := string1(Hem, "drawstring", 40*cmm)
		if got := c.onLimb(kind); got != want {
			t.Errorf("a drawstring at the hem of %s: %v", kind, got)
		}
	}
}

// TestAskedOfWrists: where a cord is said to be at the wrist, that is not asked again.
func TestAskedOfWrists(t *testing.T) {
	c := string1(Cuff, "", 30*cmm)
	c.End = ""
	_, found := Evaluate(with(one("mittens", 3), c))
	i := slices.IndexFunc(found, func(d diag.Diagnostic) bool { return d.Code == "OV904" })
	if i < 0 || !slices.Contains(found[i].Args["says"].([]string), "as tie") || slices.Contains(found[i].Args["says"].([]string), "at cuff") {
		t.Errorf("asks %v", found)
	}
}

// TestSleepsuit: a piece of pyjamas for a baby is up to 40 cm long and a sleepsuit in one up to 64.8 cm where they are exempt as infant
// garments (CPSC on 16 CFR 1615.1(c), FIRE-02); the kind says which it is, and nothing is asked.
func TestSleepsuit(t *testing.T) {
	for _, c := range []struct {
		kind string
		cm   plan.Length
		want string
	}{{"sleepsuit", 64, ""}, {"sleepsuit", 65, "OV932"}, {"sleepwear", 40, ""}, {"sleepwear", 41, "OV932"}} {
		f := one(c.kind, 3)
		f.AgeTo, f.Length, f.OnePiece, f.Markets = []int{9}, plan.Lengths{c.cm * cmm}, Unknown, []string{"us"}
		if _, found := Evaluate(f); codes(found) != c.want {
			t.Errorf("%s of %d cm: %s", c.kind, c.cm, codes(found))
		}
	}
}

// TestRound: a ring that is wider than the cylinder of 31.7 mm cannot lie in it (16 CFR 1501.4), though a rod of its length can.
func TestRound(t *testing.T) {
	for _, c := range []struct {
		kind string
		mm   int
		want Truth
	}{{"ring", 31, True}, {"ring", 32, False}, {"ring", 60, False}, {"bell", 40, False}, {"button", 60, Unknown}, {"button", 66, False}, {"safety_eye", 9, True}} {
		f := one("rattle", 6)
		f.Parts = []Part{{Kind: c.kind, Material: "wood", Size: plan.Length(c.mm) * plan.Millimetre}}
		e := view{facts: &f, thing: thing{element: part}}
		if got := truthsOfPart["fits_cylinder"](&e); got != c.want {
			t.Errorf("a %s of %d mm: %v", c.kind, c.mm, got)
		}
	}
}

// TestHangingFromToys: a cord of a toy whose ends are said hangs down, whatever it is for; and where only its ends are not said, these are
// asked for, and not a length that is given.
func TestHangingFromToys(t *testing.T) {
	c := string1(OnToy, "", 40*cmm)
	if _, found := Evaluate(with(one("mobile", 0), c)); !slices.ContainsFunc(found, func(d diag.Diagnostic) bool { return d.Code == "OV910" }) {
		t.Errorf("40 cm from a mobile: %v", found)
	}
	c.End = ""
	_, found := Evaluate(with(one("mobile", 0), c))
	i := slices.IndexFunc(found, func(d diag.Diagnostic) bool { return d.Code == "OV904" })
	if i < 0 || !slices.Equal(found[i].Args["says"].([]string), []string{"ends plain", "no ends"}) {
		t.Errorf("ends that are not said: %v", found)
	}
}

// TestRemedy goes over cords of any measure: the longest that is named passes, and a millimetre more does not.
func TestRemedy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom([]string{"jacket", "trousers", "dress", "rattle", "mobile", "cot_garland", "sleepwear"}).Draw(t, "kind")
		zone := rapid.SampledFrom([]Zone{Neck, Chest, Waist, Back, Hem, Sleeve, ShortSleeve, Other, OnToy}).Draw(t, "zone")
		role := rapid.SampledFrom([]Role{"drawstring", "functional", "decorative", "tie_belt", "tab", "zip_pull"}).Draw(t, "role")
		c := string1(zone, role, 400*cmm)
		if role == "drawstring" {
			c.Opening = plan.Lengths{plan.Length(rapid.IntRange(20_0000, 60_0000).Draw(t, "opening"))}
			c.Drawn = plan.Lengths{plan.Length(rapid.IntRange(15_0000, 60_0000).Draw(t, "drawn"))}
		}
		f := with(one(kind, rapid.SampledFrom([]int{0, 11, 17, 24, 35, 60, 83}).Draw(t, "age")), c)
		limits := func(length plan.Length) (out []diag.Diagnostic) {
			f.Cords[0].Length = plan.Lengths{length}
			_, found := Evaluate(f)
			for _, d := range found {
				if d.Code == "OV910" || d.Code == "OV925" || d.Code == "OV930" {
					out = append(out, d)
				}
			}
			return out
		}
		found := limits(400 * cmm)
		if len(found) == 0 {
			return
		}
		text := found[0].Args["largest"].(diag.PerSize).Values[0]
		x, err := parseCm(text)
		if err != nil {
			t.Fatal(err)
		}
		if again := limits(x); len(again) > 0 {
			t.Fatalf("%s is refused: %s %v", text, again[0].Code, again[0].Args)
		}
		if again := limits(x + mmm); len(again) == 0 {
			t.Fatalf("a millimetre more than %s passes", text)
		}
	})
}

// TestLonger checks on cords of any sort that a longer one never has fewer errors or warnings, in any size.
func TestLonger(t *testing.T) {
	zones := []Zone{UnknownZone, Neck, Nape, Hood, Head, Chest, Waist, Back, Hem, Sleeve, ShortSleeve, Cuff, Other, OnToy}
	roles := []Role{"", "drawstring", "functional", "decorative", "fringe", "bow", "tie_belt", "shoulder_strap", "halter", "tab", "zip_pull", "chin_tie", "joining", "loop"}
	rapid.Check(t, func(t *rapid.T) {
		f := Facts{Kind: rapid.SampledFrom(append(Kinds(), "", "gizmo")).Draw(t, "kind"), Fibres: -1}
		any3 := func(name string) Truth { return rapid.SampledFrom([]Truth{Unknown, True, False}).Draw(t, name) }
		c := Cord{Zone: rapid.SampledFrom(zones).Draw(t, "zone"), Role: rapid.SampledFrom(roles).Draw(t, "role"),
			End:   rapid.SampledFrom([]End{"", "plain", "knot", "none"}).Draw(t, "end"),
			Noose: any3("noose"), Outside: any3("outside"), Anchored: any3("anchored"), BelowHem: any3("below the hem"), Thick: plan.NoLength}
		longer := c
		for i := range rapid.IntRange(1, 3).Draw(t, "sizes") {
			f.SizeNames = append(f.SizeNames, string(rune('a'+i)))
			f.AgeMonths = append(f.AgeMonths, rapid.SampledFrom([]int{-1, 0, 11, 12, 17, 23, 24, 35, 83, 84, 155, 168, 203, 204}).Draw(t, "age"))
			f.Height = append(f.Height, rapid.SampledFrom([]plan.Length{plan.NoLength, 134 * cmm, 135 * cmm}).Draw(t, "height"))
			l := plan.Length(rapid.IntRange(0, 1000).Draw(t, "length")) * mmm
			c.Length = append(c.Length, l)
			longer.Length = append(longer.Length, l+plan.Length(rapid.IntRange(0, 300).Draw(t, "more"))*mmm)
			around := func(name string) plan.Length {
				if !rapid.Bool().Draw(t, name+" known") {
					return plan.NoLength
				}
				return plan.Length(rapid.IntRange(100, 800).Draw(t, name)) * mmm
			}
			c.Opening, c.Drawn = append(c.Opening, around("opening")), append(c.Drawn, around("drawn"))
			c.Loop = append(c.Loop, 0)
		}
		longer.Opening, longer.Drawn, longer.Loop = c.Opening, c.Drawn, c.Loop
		_, before := Evaluate(with(f, c))
		_, after := Evaluate(with(f, longer))
		for _, d := range before {
			for _, size := range named(f, d) {
				kept := slices.ContainsFunc(after, func(e diag.Diagnostic) bool {
					if !slices.Contains(named(f, e), size) {
						return false
					}
					// What was asked is settled by being too long, and what is forbidden need not be measured.
					return e.Code == d.Code || asks(d.Code) && !asks(e.Code) || e.Code == banned
				})
				if !kept {
					t.Fatalf("%s goes away in %s: %v, then %v", d.Code, size, codes(before), codes(after))
				}
			}
		}
	})
}

// named are the sizes that a finding is of.
func named(f Facts, d diag.Diagnostic) []string {
	if d.Sizes == nil {
		return f.SizeNames
	}
	return d.Sizes
}

// TestAskedFirst checks what must be said of things for children, what is asked of other things, and in what order.
func TestAskedFirst(t *testing.T) {
	bare := func(kind string, age int) Facts {
		return Facts{Kind: kind, SizeNames: []string{"one"}, AgeMonths: []int{age}, Fibres: -1, CareText: True}
	}
	child := func(f Facts) Facts { f.Child = True; return f }
	cord := drawn(Waist, 5*cmm)
	for _, c := range []struct {
		name   string
		facts  Facts
		codes  string
		prints string
	}{
		{"a cord and nothing else", with(bare("", -1), cord), "OV901", ""},
		{"a child's something", bare("", 6), "OV906", ""},
		{"something in children's sizes", child(bare("", -1)), "OV906", ""},
		{"sizes such as 16 y, with their ages", child(bare("", 204)), "", ""},
		{"a cord on a grown-up's something", with(bare("", 216), cord), "", ""},
		{"a word nobody knows", bare("gizmo", 24), "OV905", ""},
		{"nothing at all", bare("", -1), "", "NONE"},
		{"trousers of no age", with(bare("trousers", -1), cord), "OV902", "CORD-10"},
		{"trousers in children's sizes", child(bare("trousers", -1)), "OV907", ""},
		{"a bib of no age", bare("bib", -1), "OV907", ""},
		{"a thing for the house", bare("coaster", -1), "", ""},
		{"a cord of no place", with(bare("cardigan", 12), string1(UnknownZone, "drawstring", 20*cmm)), "OV903", ""},
	} {
		prints, found := Evaluate(c.facts)
		if got := codes(found); got != c.codes {
			t.Errorf("%s: asks %q, want %q: %v", c.name, got, c.codes, found)
		}
		for _, id := range strings.Fields(c.prints) {
			if !slices.Contains(ids(prints), id) {
				t.Errorf("%s: %s does not print, only %v", c.name, id, ids(prints))
			}
		}
		for _, d := range found {
			if gaps := diag.Incomplete(d); len(gaps) > 0 {
				t.Errorf("%s: %s %v", c.name, d.Code, gaps)
			}
		}
	}
	f := bare("trousers", 24)
	f.SizeNames = []string{"a", "b"}
	if _, found := Evaluate(f); !strings.Contains(codes(found), "OV907") || !slices.Equal(found[0].Sizes, []string{"b"}) {
		t.Errorf("one age of two: %v", found)
	}
}

// TestBounds checks that what is partly unknown may still be decided: a cord of 28 cm has no end of over 14 cm, whatever its
// opening is, and draws up to no more than 28 cm.
func TestBounds(t *testing.T) {
	c := string1(Waist, "drawstring", 28*cmm)
	if _, found := Evaluate(with(one("trousers", 24), c)); len(found) > 0 {
		t.Errorf("a cord of 28 cm: %v", found)
	}
	c.Length[0] += mmm
	if _, found := Evaluate(with(one("trousers", 24), c)); codes(found) != "OV904" {
		t.Errorf("a millimetre more: %v", codes(found))
	}
}

// TestSizes checks cautions and findings that hold in some sizes only, and where they stand.
func TestSizes(t *testing.T) {
	f := sized(one("hat", 3), 3, 12, 36)
	f.Parts = []Part{{Kind: "pompom", Size: plan.NoLength, Step: 1, For: plan.Sizes{false, true, true}, At: drawn(Neck, 0).At}}
	prints, found := Evaluate(f)
	if codes(found) != "OV922" || !slices.Equal(found[0].Sizes, []string{"b"}) || !slices.Equal(found[0].Args["rules"].([]string), []string{"PART-10"}) {
		t.Errorf("found %v", found)
	}
	for _, p := range prints {
		switch p.ID {
		case "SLEP-02":
			if !slices.Equal(p.For, plan.Sizes{true, false, false}) || p.Step != -1 || p.At != f.KindAt || p.Seller || p.Read != plan.ReadSummary {
				t.Errorf("SLEP-02: %+v", p)
			}
		case "PART-10":
			if !slices.Equal(p.For, plan.Sizes{false, true, false}) || p.Step != 1 || p.At != found[0].Span || p.Read != plan.ReadMemory {
				t.Errorf("PART-10: %+v", p)
			}
		case "LABL-07":
			if !p.Seller || p.For != nil {
				t.Errorf("LABL-07: %+v", p)
			}
		}
	}
}

// TestSuspects checks the order of what one thing is told: a cord that may not be there is not measured as well, and what is
// refused need not be asked for care.
func TestSuspects(t *testing.T) {
	hood := drawn(Hood, 30*cmm)
	hood.End, hood.Anchored = "", False
	if _, found := Evaluate(with(one("hoodie", 48), hood)); codes(found) != "OV911" {
		t.Errorf("a cord at a hood: %v", codes(found))
	}
	toy := one("rattle", 6)
	toy.Parts = []Part{{Kind: "button", Material: "wood", Size: 12 * mmm, Step: 0}}
	if _, found := Evaluate(toy); codes(found) != "OV913" || !slices.Equal(behind(found), []string{"PART-01", "PART-04"}) {
		t.Errorf("a button on a rattle: %v %v", codes(found), behind(found))
	}
}

func parseCm(text string) (plan.Length, error) {
	var whole, tenths plan.Length
	for i, s := range strings.Split(strings.TrimSuffix(text, " cm"), ".") {
		var n plan.Length
		for _, d := range s {
			n = 10*n + plan.Length(d-'0')
		}
		if i == 0 {
			whole = n
		} else {
			tenths = n
			for range 2 - len(s) {
				tenths *= 10
			}
		}
	}
	return whole*cmm + tenths*mmm/10, nil
}

// BenchmarkEvaluate goes through all rules for trousers in six sizes with two cords: it runs with every change of a source.
func BenchmarkEvaluate(b *testing.B) {
	f := sized(with(one("trousers", 12), drawn(Waist, 10*cmm), drawn(Waist, 20*cmm)), 0, 12, 24, 36, 60, 90)
	f.Parts = []Part{{Kind: "button", Material: "wood", Size: 12 * mmm, Step: -1}}
	for b.Loop() {
		Evaluate(f)
	}
}

// TestPublishedLimit: a ball is banned at 44.4 mm (16 CFR 1500.19), so that figure is named, and a tenth of a millimetre more passes.
func TestPublishedLimit(t *testing.T) {
	f := one("ball", 12)
	f.Length, f.Diameter = plan.Lengths{80 * plan.Millimetre}, plan.Lengths{44*plan.Millimetre + 400}
	_, found := Evaluate(f)
	i := slices.IndexFunc(found, func(d diag.Diagnostic) bool { return d.Code == "OV932" })
	if i < 0 {
		t.Fatalf("found %v", found)
	}
	for key, want := range map[string]string{"limit": "44.4 mm", "largest": "44.5 mm"} {
		if got := found[i].Args[key].(diag.PerSize).Values; len(got) != 1 || got[0] != want {
			t.Errorf("%s is %v, want %s", key, got, want)
		}
	}
}
