package caution

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// softened are the rules that print a caution where the table they were made from has a warning, since no source says that its
// makers sell; their notes say so.
var softened = map[string]bool{"PART-08": true, "LABL-02": true, "LABL-03": true, "LABL-05": true}

var (
	numerals = regexp.MustCompile(`[0-9]+(?:[.,][0-9]+)?`)
	inches   = regexp.MustCompile(`\([^()]* in\)|\([^()]*/[^()]* in\)`)
	closing  = regexp.MustCompile(`; [^;]*(?:local law|ley local)[^;]*$`)
)

// ofTable are the rules that were made from the table, in its order, and those that were not.
func ofTable() (of, ours []*Rule) {
	for _, r := range Rules() {
		if strings.HasPrefix(r.ID, "OURS-") {
			ours = append(ours, r)
		} else {
			of = append(of, r)
		}
	}
	return of, ours
}

// TestRulesTable compares every rule with the row of the table it was made from (testdata/table.csv, which names the sources of
// each): nothing is left out, and the figures, the grade, the sources, the severity and the markets are the table's. The words are
// ours; each figure of the table stands in them, in both languages.
func TestRulesTable(t *testing.T) {
	table := rows(t, "table.csv")
	of, ours := ofTable()
	if len(table) != 100 || len(of) != 100 {
		t.Fatalf("%d rows, %d rules of them", len(table), len(of))
	}
	for _, r := range ours {
		if r.Read != plan.OwnRule || r.Evidence != "H" || r.Note == "" {
			t.Errorf("%s is not in the table, and does not say that it is ours", r.ID)
		}
	}
	for i, r := range of {
		row := table[i]
		if r.ID != row["id"] {
			t.Fatalf("%s stands where the table has %s", r.ID, row["id"])
		}
		if r.Group != row["group"] || r.Figure != row["figure"] || r.Inches != row["inches"] || r.Evidence != row["evidence"] ||
			r.Basis != row["provenance"] || strings.Join(r.sources, " ") != row["sources"] {
			t.Errorf("%s: group, figure, grade or sources differ from the table", r.ID)
		}
		if want := row["severity"]; softened[r.ID] != (r.Severity != want) || softened[r.ID] && (r.Severity != "caution" || r.Note == "") {
			t.Errorf("%s: %s, the table has %s", r.ID, r.Severity, want)
		}
		markets := strings.Fields(strings.ToLower(row["jurisdiction"]))
		markets = slices.DeleteFunc(markets, func(m string) bool { return m == "es" || m == "all" }) // Spain is in the Union
		if !slices.Equal(r.Markets, markets) && len(r.Markets)+len(markets) > 0 {
			t.Errorf("%s: markets %v, the table has %s", r.ID, r.Markets, row["jurisdiction"])
		}
		for lang, text := range r.Text {
			have := numerals.FindAllString(inches.ReplaceAllString(text, ""), -1)
			for _, n := range numerals.FindAllString(inches.ReplaceAllString(closing.ReplaceAllString(row[lang], ""), ""), -1) {
				if !slices.Contains(have, n) {
					t.Errorf("%s: the figure %s of the table is not in %q", r.ID, n, text)
				}
			}
		}
	}
}

// TestFiguresInBoth compares the figures in centimetres with those in inches: an inch is 2.54 cm. Those of Europe are metric and
// were rounded to inches, by up to half of the last decimal; those of the United States are in inches and were rounded the other
// way; the source says 14 in is 36 cm, 12 in 30 cm, 7 in 18 cm and 25.75 in 64.8 cm.
func TestFiguresInBoth(t *testing.T) {
	rounded := map[string]float64{"TOYC-04": 0.5, "TOYC-05": 0.5, "FIRE-02": 0.61} // centimetres
	n := 0
	for _, r := range Rules() {
		if r.Inches == "" || r.ID == "FIRE-03" || len(r.upper) == 0 && r.ID != "FIRE-02" && r.ID != "CORD-13" {
			continue
		}
		metric, imperial := numbersIn(r.Figure), numbersIn(r.Inches)
		for _, in := range imperial {
			slack := max(0.13, rounded[r.ID])
			if in == 0 && slices.Contains(metric, 0) || slices.ContainsFunc(metric, func(cm float64) bool { return math.Abs(cm-2.54*in) <= slack }) {
				n++
				continue
			}
			t.Errorf("%s: %v in is none of %v cm", r.ID, in, metric)
		}
	}
	if n < 20 {
		t.Errorf("only %d figures were compared", n)
	}
}

// inText finds a length in centimetres with its inches behind it: 7.5 cm (2 15/16 in).
var inText = regexp.MustCompile(`([0-9.]+) cm \((?:([0-9.]+) )?(?:([0-9]+)/([0-9]+) )?in\)`)

// TestFiguresOfTexts compares what the texts say in inches with their centimetres: a limit is never rounded up, but for the smallest
// width of a belt, which is never rounded down, and the lengths of sleepwear, which are quoted as the authority gives both. And
// both languages have the same figures.
func TestFiguresOfTexts(t *testing.T) {
	imperial := regexp.MustCompile(`[0-9.]+(?: [0-9]+/[0-9]+)?(?: to [0-9.]+)? in\b`)
	n := 0
	for _, r := range Rules() {
		for _, m := range inText.FindAllStringSubmatch(r.Text["en"], -1) {
			n++
			cm, _ := strconv.ParseFloat(m[1], 64)
			in, _ := strconv.ParseFloat(m[2], 64)
			if m[4] != "" {
				top, _ := strconv.ParseFloat(m[3], 64)
				bottom, _ := strconv.ParseFloat(m[4], 64)
				in += top / bottom
			}
			over := 2.54*in - cm
			if r.ID == "CORD-13" {
				over = -over
			}
			if over > 0.01 && r.ID != "FIRE-02" || math.Abs(over) > 0.7 {
				t.Errorf("%s: %s is %.2f cm", r.ID, m[0], 2.54*in)
			}
		}
		var figures [2][]string
		for i, lang := range []string{"en", "es"} {
			text := strings.ReplaceAll(imperial.ReplaceAllString(inches.ReplaceAllString(r.Text[lang], ""), ""), ",", ".")
			figures[i] = numerals.FindAllString(text, -1)
			slices.Sort(figures[i])
		}
		if !slices.Equal(figures[0], figures[1]) {
			t.Errorf("%s: figures %v in English, %v in Spanish", r.ID, figures[0], figures[1])
		}
	}
	if n < 20 {
		t.Errorf("only %d lengths were compared", n)
	}
}

func numbersIn(text string) (out []float64) {
	for _, s := range regexp.MustCompile(`\d+(?:\.\d+)?`).FindAllString(text, -1) {
		x, _ := strconv.ParseFloat(s, 64)
		out = append(out, x)
	}
	return out
}

// TestLimitsArePublished checks that each number a trigger compares a length with stands in the published figure of its rule.
func TestLimitsArePublished(t *testing.T) {
	// The house limits and those that the figure words otherwise: a millimetre figure in centimetres, or a remembered one in mm.
	other := map[string]string{"FIRE-03": "0.6 cm is the 6 mm of the figure", "SLEP-12": "0 cm: no cord at all", "CORD-06": "none"}
	for _, r := range Rules() {
		if other[r.ID] != "" {
			continue
		}
		r.when.walk(func(p *predicate) {
			if p.op < below || !p.attr.measured {
				return
			}
			want := float64(p.number) / float64(p.attr.unit)
			if !slices.Contains(numbersIn(r.Figure), want) {
				t.Errorf("%s: %s is compared with %v, the figure is %q", r.ID, p.attr.name, want, r.Figure)
			}
		})
	}
}

// TestUnitedStatesInches checks the limits that are law in inches: 3 in of drawstring (16 CFR 1120), the cylinder 1.25 in across
// and 2.25 in deep (16 CFR 1501.4), the ball of 1.75 in (16 CFR 1500.19).
func TestUnitedStatesInches(t *testing.T) {
	limit := func(id, name string) plan.Length {
		for _, r := range Rules() {
			if r.ID == id {
				return plan.Length(r.when.numbers(lookUp(r.limits.list()[0].of, name))[0])
			}
		}
		return 0
	}
	if got := limit("USCD-02", "free_cm"); got != 3*plan.Inch {
		t.Errorf("a drawstring of %v, 3 in is %v", got, 3*plan.Inch)
	}
	near := func(got, want plan.Length) bool { return abs(int64(got-want)) <= 100 } // the pages of the authority give tenths
	if !near(cylinderWidth, plan.Inch*5/4) || !near(limit("PART-07", "diameter_mm")-100, plan.Inch*7/4) {
		t.Error("the cylinder or the ball is not that of the law")
	}
	if deep, across := 2.25*25.4, 1.25*25.4; math.Abs(math.Hypot(deep, across)-cylinderDiagonal/1000.) > 0.1 {
		t.Errorf("the diagonal of the cylinder is %v mm", math.Hypot(deep, across))
	}
}

// TestRulesSound checks what the evaluation rests on: known words, a message of the right weight for every code, a reading that
// agrees with the grade, short texts without the closing clause, which the page prints once.
func TestRulesSound(t *testing.T) {
	classes := map[string]bool{}
	for _, c := range kinds().class {
		classes[c] = true
	}
	words := map[string]map[string]bool{"kind": classes,
		"zone": set("head hood neck_front neck_back upper_chest chest waist hem back sleeve_long sleeve_short cuff_long other toy"),
		"role": set("drawstring functional decorative fringe bow tie_belt shoulder_strap halter tab zip_pull chin_tie joining loop"),
		"end":  set("plain knot bead pompom tassel toggle none"), "prints_mark": set("CE UKCA none"),
		"part.kind":     set("button bead bell safety_eye googly_eye snap zip pompom wire magnet battery pin squeaker rattle_insert ring foam weight other"),
		"part.material": set("plastic wood metal glass yarn fabric other")}
	weight := map[string]diag.Severity{"error": diag.Error, "warn": diag.Warning}
	for _, r := range Rules() {
		r.when.walk(func(p *predicate) {
			if p.op != isOneOf {
				return
			}
			known := words[p.attr.name]
			if p.attr.of == part {
				known = words["part."+p.attr.name]
			}
			for _, w := range p.words {
				if !known[w] {
					t.Errorf("%s: %s is never %s", r.ID, p.attr.name, w)
				}
			}
		})
		if (len(r.causes) == 0) != (r.Severity == "caution") {
			t.Errorf("%s: %s with %d codes", r.ID, r.Severity, len(r.causes))
		}
		for _, c := range r.causes {
			if diag.Lookup(c.code).Severity != weight[r.Severity] {
				t.Errorf("%s: %s is no %s", r.ID, c.code, r.Severity)
			}
		}
		own, memory := r.Evidence == "H" || slices.Equal(r.sources, []string{"HOUSE"}), r.Evidence == "M"
		if own && r.Read != plan.OwnRule && r.ID != "PART-14" || memory && r.Read != plan.ReadMemory || (r.Read == plan.OwnRule) != own && r.ID != "PART-14" {
			t.Errorf("%s: grade %s, read %v", r.ID, r.Evidence, r.Read)
		}
		if r.Read == plan.ReadItself && !slices.ContainsFunc(r.Sources(), itself) {
			t.Errorf("%s: none of its sources is the text itself: %v", r.ID, r.Sources())
		}
		if r.Severity == "error" && r.Read != plan.OwnRule && r.Standard == "" || r.Read == plan.OwnRule && r.Standard != "" {
			t.Errorf("%s: standard %q, read %v", r.ID, r.Standard, r.Read)
		}
		if len(r.Sources()) == 0 || len(r.Sources()) != len(r.sources) {
			t.Errorf("%s: sources %v, found %d", r.ID, r.sources, len(r.Sources()))
		}
		for lang, text := range r.Text {
			if closing.MatchString(text) || len([]rune(text)) > 230 || !strings.HasSuffix(text, ".") {
				t.Errorf("%s: the text in %s is long or has the clause of the page: %q", r.ID, lang, text)
			}
			if lang == "es" && spoken.MatchString(text) {
				t.Errorf("%s: not in the infinitive: %q", r.ID, text)
			}
		}
	}
}

// spoken finds forms that speak to the reader where a maker would use the infinitive.
var spoken = regexp.MustCompile(`(?i)\b(?:ponga|use|haga|cosa|deje|quite|elija|vigile|remate|teja|mantenga|indique|escriba|dé|su hijo)\b`)

// itself reports whether a source is the law, or a page of the authority or the owner whose own words the rule is, and was read.
func itself(s Source) bool {
	return slices.ContainsFunc([]string{"law", "law (copy)", "authority", "trade mark owner"}, func(k string) bool { return k == s.Kind }) &&
		!strings.Contains(s.Read, "start") && !strings.Contains(s.Read, "summary")
}

func set(words string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(words) {
		m[w] = true
	}
	return m
}

// TestTriggersAreSingle holds what lets a trigger be evaluated of each cord and part by itself: no two any(…) are joined by `and`, and
// none stands under a `not`.
func TestTriggersAreSingle(t *testing.T) {
	has := func(p *predicate) (n int) {
		p.walk(func(q *predicate) {
			if q.op == anyOf {
				n++
			}
		})
		return n
	}
	for _, r := range Rules() {
		r.when.walk(func(p *predicate) {
			joined := 0
			for _, k := range p.of {
				joined += min(1, has(k))
			}
			if p.op == and && joined > 1 || p.op == not && joined > 0 {
				t.Errorf("%s: %s", r.ID, r.Trigger)
			}
		})
	}
}

// neverAsked is what no question puts into words of its own: the kind has a message, for the youngest age it is asked whether a toy is
// stuffed, and what the pages print is known.
var neverAsked = map[string]bool{"kind": true, "age_min_months": true, "prints_care_symbols": true, "prints_mark": true}

// TestVocabulary holds that every attribute of the table of words is known to the program in one way, and that each has its words in
// the messages that ask for it.
func TestVocabulary(t *testing.T) {
	if n := len(vocabulary()); n > 64 {
		t.Fatalf("%d attributes do not fit a set", n)
	}
	for _, row := range table("vocabulary.csv") {
		of, name := split(row["name"])
		a := lookUp(of, name)
		ways := 0
		for _, b := range []bool{a.truth != nil, a.word != nil, a.number != nil} {
			if b {
				ways++
			}
		}
		kind := map[string]bool{"bool": a.truth != nil, "word": a.word != nil, "number": a.number != nil}
		if ways != 1 || !kind[row["type"]] {
			t.Errorf("%s is a %s", row["name"], row["type"])
		}
		if a.measured && a.number == nil || a.assumed != Unknown && a.truth == nil {
			t.Errorf("%s is measured or assumed, and cannot be", row["name"])
		}
		if neverAsked[row["name"]] {
			continue
		}
		question := diag.Diagnostic{Code: "OV908", Args: diag.Args{"what": []diag.Term{{Key: "fact " + a.key(), N: 1}}, "says": []string{"x"}}}
		if gaps := diag.Incomplete(question); len(gaps) > 0 {
			t.Errorf("%s cannot be asked for: %v", row["name"], gaps)
		}
	}
}

// TestBadTriggers breaks a trigger in each way that reading it must notice.
func TestBadTriggers(t *testing.T) {
	for _, text := range []string{"", "kind", "kind in {hat", "kind = hat", "free_cm > 3", "any(cord: gap_mm > 3)", "any(cord: zone == hood", "has_floats == 3",
		"gap_mm in {hat}", "gap_mm > 0.00001", "any(cord: any(cord: fray))", "for_sale for_sale", "for_sale and", "any(hat: fray)"} {
		if p, err := (conditions{}).read(text, piece); err == nil {
			t.Errorf("%q is read as %v", text, p)
		}
	}
}

func TestZoneOf(t *testing.T) {
	for _, c := range []struct {
		kind, part string
		want       Zone
	}{
		{"trousers", "waistband", Waist}, {"trousers", "", Waist}, {"trousers", "left_hem", Hem}, {"cardigan", "body", UnknownZone},
		{"leggings", "left_leg", Hem}, {"trousers", "pierna_derecha", Hem}, {"cardigan", "cuff", Cuff}, {"cardigan", "left_sleeve", Sleeve},
		{"dress", "escote", Neck}, {"cardigan", "hood_edge", Hood}, {"dress", "Cuello", Neck}, {"hat", "crown", Head}, {"blanket", "", Other}, {"bib", "", Nape},
		{"scarf", "", UnknownZone}, {"toy", "body", OnToy}, {"", "waistband", Waist}, {"", "", UnknownZone}, {"gizmo", "x", UnknownZone},
	} {
		if got := ZoneOf(c.kind, c.part); got != c.want {
			t.Errorf("%s through %s: %q, want %q", c.kind, c.part, got, c.want)
		}
	}
}
