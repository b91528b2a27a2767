package words

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/sample"
)

func TestSidesAreChangedOver(t *testing.T) {
	for _, c := range []struct {
		tag       string
		kind      sideKind
		text, now string
	}{
		{"en-US", sideName, "Left half of the front", "Right half of the front"},
		{"en-US", sideName, "the right front edge", "the left front edge"},
		{"en-US", sideName, "the right side of the body", "the left side of the body"},
		{"en-US", sideName, "Right side rows", "Right side rows"},
		{"en-US", sideName, "the right-hand edge", "the left-hand edge"},
		{"en-US", sideLine, "from left to right, with the right side facing", "from right to left, with the right side facing"},
		{"en-US", sideLine, "the right sides of all of them", "the right sides of all of them"},
		{"en-US", sideProse, "Work the left front band first.", "Work the right front band first."},
		{"en-US", sideProse, "Sew the left and right sleeves in.", "Sew the right and left sleeves in."},
		{"en-US", sideProse, "Two rows are left at the front.", "Two rows are left at the front."},
		{"en-US", sideProse, "The stitches that are left front and back are skipped.", "The stitches that are left front and back are skipped."},
		{"en-US", sideProse, "Hold it with the right side facing, and dry it right through.", "Hold it with the right side facing, and dry it right through."},
		{"en-US", sideProse, "Left-handed makers hold it in the left hand.", "Left-handed makers hold it in the right hand."},
		{"en-US", sideProse, "Start at the right.", "Start at the right."},
		{"es", sideName, "la pierna derecha", "la pierna izquierda"},
		{"es", sideName, "Mitad Izquierda", "Mitad Derecha"},
		{"es", sideName, "el borde del delantero derecho", "el borde del delantero izquierdo"},
		{"es", sideName, "las mangas derecha e izquierda", "las mangas izquierda y derecha"},
		{"es", sideLine, "con el derecho de frente, de derecha a izquierda", "con el derecho de frente, de izquierda a derecha"},
		{"es", sideLine, "las hileras del derecho", "las hileras del derecho"},
		{"es", sideProse, "Coser la manga izquierda y la derecha.", "Coser la manga derecha y la izquierda."},
		{"es", sideProse, "Coser el delantero izquierdo y el derecho.", "Coser el delantero derecho y el izquierdo."},
		{"es", sideProse, "Planchar por el derecho y seguir derecho.", "Planchar por el derecho y seguir derecho."},
		{"es", sideProse, "Todos los derechos reservados.", "Todos los derechos reservados."},
		{"es", sideProse, "Empezar por la izquierda.", "Empezar por la izquierda."},
	} {
		l := language(t, c.tag)
		if got := swapped(c.text, l.voice.sides(c.text, c.kind, nil)); got != c.now {
			t.Errorf("%q becomes %q, not %q", c.text, got, c.now)
		}
		if got := swapped(c.now, l.voice.sides(c.now, c.kind, nil)); got != c.text {
			t.Errorf("back again %q becomes %q, not %q", c.now, got, c.text)
		}
	}
}

// TestUnsureSidesAreTold: what is not changed because it may mean something else is found, and what means no side is not.
func TestUnsureSidesAreTold(t *testing.T) {
	for _, c := range []struct {
		tag, text string
		told      bool
	}{
		{"en-US", "Start at the right.", true}, {"en-US", "Read it from left to right.", true}, {"en-US", "Three stitches are left.", false},
		{"en-US", "Left and right are those of the child.", false}, {"en-US", "Dry it right through.", false}, {"en-US", "The left sleeve is longer.", false},
		{"es", "Empezar por la izquierda.", true}, {"es", "Leer de derecha a izquierda.", true}, {"es", "Por el derecho.", false}, {"es", "La manga derecha.", false},
	} {
		words := language(t, c.tag).voice.sides(c.text, sideProse, nil)
		if got := slices.ContainsFunc(words, func(w sideWord) bool { return !w.sure }); got != c.told {
			t.Errorf("%q: told %v", c.text, got)
		}
	}
}

// TestSidesTwiceAreAsBefore: changed over twice, every text of the sources and of the voices is as it was.
func TestSidesTwiceAreAsBefore(t *testing.T) {
	texts := map[string][]string{}
	quoted := regexp.MustCompile(`\b(en|es) +"([^"]*)"`)
	for _, dir := range []string{"../../examples", "../../testdata/cases"} {
		paths, err := filepath.Glob(filepath.Join(dir, "*.ovillo"))
		if err != nil || len(paths) == 0 {
			t.Fatal(dir, err)
		}
		for _, path := range paths {
			source, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			for _, m := range quoted.FindAllStringSubmatch(string(source), -1) {
				texts[m[1]] = append(texts[m[1]], m[2])
			}
			for _, line := range strings.Split(string(source), "\n") {
				if code, text, ok := strings.Cut(strings.TrimSpace(line), " | "); ok && len(code) == 2 {
					texts[code] = append(texts[code], text)
				}
			}
		}
	}
	for code, lines := range map[string]map[line]string{"en": englishLines, "es": spanishLines} {
		for k, text := range lines {
			if !handed[k] {
				texts[code] = append(texts[code], text)
			}
		}
	}
	for code, list := range texts {
		l := language(t, code)
		differ := 0
		for _, text := range list {
			for kind := sideLine; kind <= sideProse; kind++ {
				once := swapped(text, l.voice.sides(text, kind, nil))
				if once != text {
					differ++
				}
				if twice := swapped(once, l.voice.sides(once, kind, nil)); twice != text {
					t.Errorf("%s: %q becomes %q and then %q", code, text, once, twice)
				}
			}
		}
		if len(list) < 400 || differ < 50 {
			t.Errorf("%s: of %d texts %d changed, too few to say much", code, len(list), differ)
		}
	}
}

// TestLinesThatNameSides: which texts of the voices change, and no other.
func TestLinesThatNameSides(t *testing.T) {
	want := []line{otherWay, howChartRounds, howChartRows}
	for _, tag := range []string{"en-US", "en-GB", "es", "es-MX"} {
		usual := language(t, tag)
		left := usual.With(Manner{Left: true})
		var got []line
		for _, k := range lines() {
			if usual.voice.line(k) != left.voice.line(k) {
				got = append(got, k)
			}
		}
		slices.Sort(got)
		if !slices.Equal(got, want) {
			t.Errorf("%s: the lines %v change, and should %v", tag, got, want)
		}
		for _, k := range Keys() {
			if usual.Say(k) != left.Say(k) {
				t.Errorf("%s: %q changes", tag, usual.Say(k))
			}
		}
	}
}

func TestLeggingsForTheLeftHand(t *testing.T) {
	for _, tag := range []string{"en-US", "es"} {
		l := language(t, tag).With(Manner{Left: true})
		golden(t, "leggings."+tag+".left.golden", shown(l.LeftHandedNote(sample.Leggings()))+"\n\n"+dump(l, sample.Leggings()))
	}
}

func TestLeftHandedNote(t *testing.T) {
	p := sample.Leggings()
	l := language(t, "en-US")
	if l.LeftHandedNote(p) != nil {
		t.Error("the usual manner has a note for the left hand")
	}
	left := l.With(Manner{Left: true})
	p.Notes = append(p.Notes, plan.Prose{Text: plan.Text{"en": "Start at the right. Sew the left leg last.", "es": "Empezar por la derecha."}})
	if got := flat(left.LeftHandedNote(p)); !strings.Contains(got, "“Start at the right”") || strings.Contains(got, "leg last") {
		t.Errorf("what was kept is told so: %s", got)
	}
	es := language(t, "es").With(Manner{Left: true})
	if got := flat(es.LeftHandedNote(p)); !strings.Contains(got, "«Empezar por la derecha»") {
		t.Errorf("what was kept is told so: %s", got)
	}
}

// TestReverseStitchesForTheLeftHand: the way is the other one, and nothing is said in brackets for the other hand.
func TestReverseStitchesForTheLeftHand(t *testing.T) {
	p := &plan.Pattern{Sizes: []plan.Size{{Name: "M"}}, Stitches: []stitch.Form{plainForm(stitch.RSC)}}
	for tag, want := range map[string][2]string{
		"en-US": {"Work from right to left, without turning: insert hook in the st on the left,", "left-handed"},
		"es":    {"Tejer de derecha a izquierda, sin girar: insertar el ganchillo en el punto de la izquierda,", "con la izquierda"},
	} {
		usual := language(t, tag)
		if s := flat(usual.Specials(p)[0].Text); !strings.Contains(s, want[1]) {
			t.Errorf("%s: the usual pages say nothing of the other hand: %s", tag, s)
		}
		if s := flat(usual.With(Manner{Left: true}).Specials(p)[0].Text); !strings.HasPrefix(s, want[0]) || strings.Contains(s, want[1]) {
			t.Errorf("%s: %s", tag, s)
		}
	}
}
