package book

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// list writes a list of numbers as a language does: runs by turns, each spoken with its size.
func list(sep string, figures ...string) rich.Text {
	t := rich.Text{{Text: figures[0] + "\u00A0(", Spoken: "1 y " + figures[0]}}
	for i, f := range figures[1:] {
		text := f
		if i > 0 {
			text = sep + "\u00A0" + f
		}
		t = append(t, rich.Run{Text: text, Strong: i%2 == 0, Spoken: fmt.Sprintf(", %d y %s", i+2, f)})
	}
	return append(t, rich.Run{Text: ")", Spoken: " "})
}

func text(parts ...any) rich.Text {
	var t rich.Text
	for _, p := range parts {
		switch p := p.(type) {
		case string:
			t = append(t, rich.Run{Text: p})
		case rich.Text:
			t = append(t, p...)
		}
	}
	return t
}

func TestListsBecomeLetters(t *testing.T) {
	steps := []words.StepText{
		{Body: text("Ch ", list(",", "52", "54", "56"), ", skip ", list(",", "8", "9", "10"), " sts; again ", list(",", "52", "54", "56"), ".")},
		{Body: text("Saltar ", list(";", "8", "9", "10"), " p; ", list(";", "52", "54", "56"), " cad.")},
	}
	before := steps[0].Body
	named := letterLists(steps)
	if got := fmt.Sprint(named.figures); got != "[[52 54 56] [8 9 10]]" {
		t.Errorf("figures %s", got)
	}
	plain := func(t rich.Text) string { return strings.NewReplacer("\u00A0", "", "\u2009", "").Replace(t.String()) }
	if got := plain(steps[0].Body); got != "Ch a, skip b sts; again a." {
		t.Errorf("English: %q", got)
	}
	if got := plain(steps[1].Body); got != "Saltar b p; a cad." {
		t.Errorf("Spanish: %q", got)
	}
	for _, r := range steps[0].Body {
		if isLetter(r.Text) && !strings.Contains(r.Spoken, "2 y ") {
			t.Errorf("the letter is spoken %q", r.Spoken)
		}
	}
	if !strings.Contains(before.String(), "56") {
		t.Error("the text that was given is changed")
	}
}

func TestListFigures(t *testing.T) {
	got := strings.Join(listFigures(list(";", "16,8", "17,8", "–", "2½")), "|")
	if got != "16.8|17.8|–|2½" {
		t.Errorf("figures %s", got)
	}
	if got := listFigures(rich.T("100 (104, 108, 112, 116) (120, 124)")); len(got) != 7 || got[6] != "124" {
		t.Errorf("figures of a grouped list %q", got)
	}
}

// TestCirclesClearTheirNeighbours: the circle round a letter stands in the room that its run takes.
func TestCirclesClearTheirNeighbours(t *testing.T) {
	steps := []words.StepText{{Body: text("ch ", list(",", "1", "2", "3"), ", dc")}}
	letterLists(steps)
	lines := layout.Break(steps[0].Body, usual.textType, 80, 0)
	b := layout.Set(lines, usual.textType, 0, nil)
	var room [2]float64
	for _, r := range lines[0].Runs {
		if isLetter(r.Text) {
			room = [2]float64{r.X, r.X + r.Width}
		}
	}
	usual.circleLetters(&b)
	var circle *page.Path
	for _, it := range b.Items {
		switch it := it.(type) {
		case page.Path:
			circle = &it
		case page.Glyphs:
			if strings.Trim(it.Text, roundRoom) == "a" && (it.Face != page.SerifBold || it.Size != 8.8) {
				t.Errorf("the letter is set in face %v, %v pt", it.Face, it.Size)
			}
		}
	}
	if circle == nil {
		t.Fatal("no circle")
	}
	right := circle.Cmds[0].P[0].X
	if left := right - circleD + circleLine; left < room[0] || right > room[1] {
		t.Errorf("circle from %.2f to %.2f in a run from %.2f to %.2f", left, right, room[0], room[1])
	}
}

// TestManySizesShareOneStrip: with ten sizes no row has slots in its columns, and every figure stands in a column of the
// strip, under the name of its size.
func TestManySizesShareOneStrip(t *testing.T) {
	e := edition{sizes: 10, langs: []string{"en", "es"}}
	s := newSetter(e.pattern(), Options{}, languages(t, e.langs...), &page.Elem{Tag: "Document"})
	left, w := s.stripColumns()
	if left != endW || w*10 != usual.blockW-2*endW {
		t.Fatalf("columns from %v, %v wide", left, w)
	}
	b := s.centred([]string{"1", "22", "333", "4", "5", "6", "7", "8", "9", "10"}, usual.figureType, nil)
	for i, it := range b.Items {
		k := inkOf(it.(page.Glyphs))
		if middle := (k.left + k.right) / 2; middle < left+w*float64(i) || middle > left+w*float64(i+1) {
			t.Errorf("figure %d has its middle at %.2f", i, middle)
		}
	}
}
