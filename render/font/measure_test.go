package font

import (
	"math"
	"os"
	"sync"
	"testing"

	"ovillo/render/page"
)

func read(t *testing.T, file string) string {
	t.Helper()
	b, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func near(a, b float64) bool { return math.Abs(a-b) < 0.005 }

func TestWidthIsSumOfAdvancesAndKerns(t *testing.T) {
	f := Of(page.Sans)
	for _, s := range []string{"", "A", "AVATAR", "12 puntos", "¿Qué aguja?", "Tejer 1.ª vuelta"} {
		sum, prev := 0, rune(-1)
		for _, r := range s {
			sum += f.Advance(r)
			if prev >= 0 {
				sum += f.Kern(prev, r)
			}
			prev = r
		}
		if got, want := f.Width(s, 10), float64(sum)/1000*10*25.4/72; !near(got, want) {
			t.Errorf("%q is %.3f mm wide, want %.3f", s, got, want)
		}
	}
}

// The same pairs shaped by HarfBuzz.
func TestKernsLikeTheShaper(t *testing.T) {
	f := Of(page.Sans)
	if k := f.Kern('A', 'V'); k >= 0 {
		t.Errorf("A and V are not drawn together: %d", k)
	}
	if k := f.Kern('T', 'o'); k >= 0 {
		t.Errorf("T and o are not drawn together: %d", k)
	}
	if k := f.Kern('n', 'n'); k != 0 {
		t.Errorf("n and n are moved by %d", k)
	}
}

func TestFiguresAreTabular(t *testing.T) {
	for _, face := range all {
		f := Of(face)
		for r := '0'; r <= '9'; r++ {
			if f.Advance(r) != f.Advance('0') {
				t.Errorf("%s: %c is %d wide, 0 is %d", f.Name(), r, f.Advance(r), f.Advance('0'))
			}
			for q := '0'; q <= '9'; q++ {
				if k := f.Kern(r, q); k != 0 {
					t.Errorf("%s: %c%c is kerned by %d, so columns of figures do not stand", f.Name(), r, q, k)
				}
			}
		}
	}
}

func TestNoBreakSpaceIsAsWideAsASpace(t *testing.T) {
	for _, face := range all {
		f := Of(face)
		if f.Advance('\u00a0') != f.Advance(' ') {
			t.Errorf("%s: no-break space %d, space %d", f.Name(), f.Advance('\u00a0'), f.Advance(' '))
		}
	}
}

func TestBaseline(t *testing.T) {
	if got := Of(page.Sans).Baseline(11, 5); !near(got, 3.71) {
		t.Errorf("Sans 11 pt in 5 mm: %.3f, want 3.71", got)
	}
	if got := Of(page.Serif).Baseline(17, 7.5); !near(got, 5.85) {
		t.Errorf("Serif 17 pt in 7.5 mm: %.3f, want 5.85", got)
	}
}

func TestTrackedSpacesOnlyBetweenLetters(t *testing.T) {
	f := Of(page.Serif)
	if got, want := f.Tracked("abc", 10, 0.5), f.Width("abc", 10)+2*0.5*10*25.4/72; !near(got, want) {
		t.Errorf("three letters: %.3f, want %.3f", got, want)
	}
	if got := f.Tracked("", 10, 0.5); got != 0 {
		t.Errorf("no letters: %.3f, want 0", got)
	}
}

func TestDecomposedTextMeasuresAsComposed(t *testing.T) {
	f := Of(page.Sans)
	if a, b := f.Width("pun\u0303o\u0301", 11), f.Width("puñó", 11); a != b {
		t.Errorf("decomposed %.3f mm, composed %.3f mm", a, b)
	}
}

// Many goroutines measure texts that fight for the same places of the caches.
func TestConcurrentUse(t *testing.T) {
	f := Of(page.SerifBold)
	text := make([]rune, 0, 1200)
	for r := rune(0x20); r < 0x500; r++ {
		text = append(text, r)
	}
	want := f.Width(string(text), 10)
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 20 {
				if got := f.Width(string(text), 10); got != want {
					t.Errorf("%.3f mm, want %.3f", got, want)
					return
				}
			}
		})
	}
	wg.Wait()
}

func BenchmarkWidth(b *testing.B) {
	f := Of(page.Sans)
	const s = "Teje 3 puntos altos en el espacio de 4 cadenas"
	b.SetBytes(int64(len(s)))
	for b.Loop() {
		f.Width(s, 11)
	}
}

func BenchmarkParse(b *testing.B) {
	for b.Loop() {
		f := &Face{name: "test", program: sansRegular}
		f.parse()
	}
}
