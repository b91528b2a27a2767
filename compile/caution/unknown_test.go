package caution

import (
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// forget takes out of facts what an attribute asks.
var forget = map[string]func(*Facts){
	"kind":                  func(f *Facts) { f.Kind = "" },
	"age_min_months":        func(f *Facts) { f.AgeMonths, f.AgeTo = nil, nil },
	"age_declared_months":   func(f *Facts) { f.AgeMonths, f.AgeTo = nil, nil },
	"us_size":               func(f *Facts) { f.AgeMonths, f.AgeTo = nil, nil },
	"age_max_months":        func(f *Facts) { f.AgeTo = nil },
	"height_min_cm":         func(f *Facts) { f.Height = nil },
	"for_sale":              func(f *Facts) { f.ForSale = Unknown },
	"sleep_use":             func(f *Facts) { f.SleepUse = Said{} },
	"upper_outerwear":       func(f *Facts) { f.Outerwear = Unknown },
	"ends_below_crotch":     func(f *Facts) { f.BelowCrotch = Unknown },
	"ends_at_ankle":         func(f *Facts) { f.AtAnkle = Unknown },
	"tight_fitting":         func(f *Facts) { f.Tight = Unknown },
	"one_piece":             func(f *Facts) { f.OnePiece = Unknown },
	"length_cm":             func(f *Facts) { f.Length = nil },
	"soft_filled":           func(f *Facts) { f.SoftFilled = Unknown },
	"weighted":              func(f *Facts) { f.Weighted = Said{} },
	"whole_fits_cylinder":   func(f *Facts) { f.Length, f.Diameter = nil, nil },
	"diameter_mm":           func(f *Facts) { f.Diameter = nil },
	"gap_mm":                func(f *Facts) { f.Gap = nil },
	"has_floats":            func(f *Facts) { f.Floats = Said{} },
	"raised_surface":        func(f *Facts) { f.Raised = Unknown },
	"fluffy_yarn":           func(f *Facts) { f.Fluffy = Unknown },
	"neck_opening_mm":       func(f *Facts) { f.NeckOpening = nil },
	"has_care_text":         func(f *Facts) { f.CareText = Unknown },
	"has_fibre_text":        func(f *Facts) { f.FibreText = Unknown },
	"fibre_count":           func(f *Facts) { f.Fibres = -1 },
	"says_pure":             func(f *Facts) { f.SaysPure = Said{} },
	"animal_part":           func(f *Facts) { f.AnimalPart = Said{} },
	"safety_claim":          func(f *Facts) { f.SafetyClaim = Said{} },
	"adult_only_claim":      func(f *Facts) { f.AdultOnly = Said{} },
	"cord.zone":             cords(func(c *Cord) { c.Zone = UnknownZone }),
	"cord.role":             cords(func(c *Cord) { c.Role = "" }),
	"cord.free_cm":          cords(func(c *Cord) { c.Length = nil }),
	"cord.tight_cm":         cords(func(c *Cord) { c.Drawn = nil }),
	"cord.loop_cm":          cords(func(c *Cord) { c.Loop = nil }),
	"cord.loop_tight_cm":    cords(func(c *Cord) { c.LoopDrawn, c.Drawn = nil, nil }),
	"cord.width_cm":         cords(func(c *Cord) { c.Width = nil }),
	"cord.thick_mm":         cords(func(c *Cord) { c.Thick = plan.NoLength }),
	"cord.end":              cords(func(c *Cord) { c.End = "" }),
	"cord.fray":             cords(func(c *Cord) { c.Fray = Unknown }),
	"cord.elastic":          cords(func(c *Cord) { c.Elastic = Unknown }),
	"cord.anchored":         cords(func(c *Cord) { c.Anchored = Unknown }),
	"cord.hangs_below_hem":  cords(func(c *Cord) { c.BelowHem = Unknown }),
	"cord.outside":          cords(func(c *Cord) { c.Outside = Unknown }),
	"cord.noose":            cords(func(c *Cord) { c.Noose = Unknown }),
	"cord.tied_behind_neck": cords(func(c *Cord) { c.BehindNeck = Unknown }),
	"cord.limb":             cords(func(c *Cord) { c.Role = "" }),
	"part.kind":             parts(func(p *Part) { p.Kind = "" }),
	"part.material":         parts(func(p *Part) { p.Material = "" }),
	"part.fits_cylinder":    parts(func(p *Part) { p.Size = plan.NoLength }),
	"elastic.limb":          func(f *Facts) { f.Elastics[0].Zone = UnknownZone },
}

func cords(do func(*Cord)) func(*Facts) { return func(f *Facts) { do(&f.Cords[0]) } }
func parts(do func(*Part)) func(*Facts) { return func(f *Facts) { do(&f.Parts[0]) } }

// TestUnknown takes out of what crosses each rule one attribute after the other, and checks that it is never taken as safe: the rule
// still finds it, its caution prints, or what is missing is asked for. The exceptions are those of the vocabulary, where what is not
// said counts as not so.
func TestUnknown(t *testing.T) {
	byID := map[string]string{}
	for _, row := range rows(t, "cases.csv") {
		byID[row["rule"]] = row["crosses"]
	}
	tried := attributes(0)
	for _, r := range Rules() {
		if byID[r.ID] == "program" {
			continue
		}
		for _, a := range r.asks {
			f := factsOf(t, byID[r.ID])
			if a.of == cord && f.Cords == nil || a.of == part && f.Parts == nil || a.of == elastic && f.Elastics == nil || a.name == "prints_mark" {
				continue
			}
			if a.assumed == False && crossedWith(r, f, a) {
				continue // what is not said is not so
			}
			if a.name == "kind" && f.AgeMonths[0] >= childBelow {
				continue // of a thing for a grown-up nobody is asked what it is
			}
			tried |= a.bit()
			forget[a.key()](&f)
			prints, found := Evaluate(f)
			asked := slices.ContainsFunc(found, func(d diag.Diagnostic) bool {
				return asks(d.Code) || d.Code == banned || diag.Lookup(d.Code).Severity == diag.Error
			})
			if !asked && !slices.Contains(behind(found), r.ID) && !(r.Severity == "caution" && slices.Contains(ids(prints), r.ID)) {
				t.Errorf("%s: without %s nothing is said of %q: %v, prints %v", r.ID, a.key(), byID[r.ID], codes(found), ids(prints))
			}
			for _, d := range found {
				if gaps := diag.Incomplete(d); len(gaps) > 0 {
					t.Errorf("%s without %s: %s %v", r.ID, a.key(), d.Code, gaps)
				}
			}
		}
	}
	for _, a := range vocabulary() {
		if !tried.has(a) && a.assumed == Unknown && a.name != "prints_mark" && a.name != "prints_care_symbols" && a.key() != "cord.limb" {
			t.Errorf("%s was never taken away", a.key())
		}
	}
}

// crossedWith reports whether a rule is crossed because an attribute is true.
func crossedWith(r *Rule, f Facts, a *attribute) bool {
	for _, th := range []thing{{element: piece}, {element: cord}, {element: part}} {
		if th.element == cord && f.Cords == nil || th.element == part && f.Parts == nil {
			continue
		}
		e := view{facts: &f, class: kinds().class[f.Kind], rule: r, thing: th}
		if a.of != piece && a.of != th.element || r.when.evaluate(&e).holds != True {
			continue
		}
		return a.truth(&e) == True
	}
	return false
}

// TestQuestionNamesAll checks that one question is asked of a thing, that it names all that is missing for it, and the words of a
// source that say it.
func TestQuestionNamesAll(t *testing.T) {
	c := string1(Waist, "drawstring", 60*cmm)
	c.End, c.Length = "", nil
	_, found := Evaluate(with(one("trousers", 24), c))
	if codes(found) != "OV904" {
		t.Fatalf("asks %v", codes(found))
	}
	var what []string
	for _, w := range found[0].Args["what"].([]diag.Term) {
		what = append(what, w.Key)
	}
	if got := strings.Join(what, ", "); got != "fact cord.free_cm, fact cord.tight_cm, fact cord.end" {
		t.Errorf("asks for %s", got)
	}
	if got := strings.Join(found[0].Args["says"].([]string), ", "); got != "length 60 cm, fit waist 50 cm, ends plain" || found[0].Help != "all" {
		t.Errorf("says %s", got)
	}
	// Of one thing that is missing, every way to say it is shown.
	c.Length = plan.Lengths{60 * cmm}
	c.Drawn = plan.Lengths{50 * cmm}
	_, found = Evaluate(with(one("trousers", 24), c))
	if got := strings.Join(found[0].Args["says"].([]string), ", "); got != "ends plain, no ends" || found[0].Help != "" {
		t.Errorf("says %s", got)
	}
}
