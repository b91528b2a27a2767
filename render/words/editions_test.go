package words

import (
	"strings"
	"testing"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/render/sample"
)

func TestEditionsHaveNames(t *testing.T) {
	for _, c := range []struct{ tag, kind, want string }{
		{"en-US", "large", "large print"}, {"en-US", "low-ink", "low ink"}, {"en-US", "left", "for the left hand"},
		{"en-US", "tester", "test edition"}, {"en-US", "one-size", "for one size"}, {"en-US", "booklet", "booklet"}, {"en-US", "unknown", ""},
		{"es", "large", "letra grande"}, {"es", "low-ink", "poca tinta"}, {"es", "left", "para tejer con la izquierda"},
		{"es", "tester", "edición de prueba"}, {"es", "one-size", "para una talla"}, {"es-AR", "one-size", "para un talle"}, {"es", "booklet", "cuadernillo"},
	} {
		if got := language(t, c.tag).EditionName(c.kind); got != c.want {
			t.Errorf("%s: the edition %s is called %q, not %q", c.tag, c.kind, got, c.want)
		}
	}
}

func TestPagesAreNumbered(t *testing.T) {
	for tag, want := range map[string]string{"en-GB": "page 3 | 8 of 24", "es-MX": "página 3 | 8 de 24"} {
		l := language(t, tag)
		if got := strings.ReplaceAll(l.OnPage(3)+" | "+l.PageOf(8, 24), tie, " "); got != want {
			t.Errorf("%s: %q, not %q", tag, got, want)
		}
	}
}

func TestEveryKindIsNamed(t *testing.T) {
	for _, kind := range caution.Kinds() {
		if englishKinds[kind] == "" {
			t.Errorf("a source can say %s, and no page can", kind)
		}
	}
	for id, en := range englishKinds {
		if spanishKinds[id] == "" || en == "" {
			t.Errorf("%s (%s) has no name in one language", id, en)
		}
	}
	if len(englishKinds) != len(spanishKinds) {
		t.Error("one language names more kinds")
	}
}

func TestTheMadeSizeIsTheOneInThePhoto(t *testing.T) {
	p := sample.Leggings()
	p.Photo = nil
	l := language(t, "en-US")
	if got := l.PhotoCaption(p); got != nil {
		t.Errorf("a photo of no known size is said to show %q", got)
	}
	p.Photo = &plan.Photo{Made: p.Sizes[2]}
	if got := strings.ReplaceAll(l.PhotoCaption(p).String(), tie, " "); got != "In the photo: size 3 y." {
		t.Errorf("the photo is said to be of %q", got)
	}
}
