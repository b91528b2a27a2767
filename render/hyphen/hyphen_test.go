package hyphen

import (
	"strings"
	"testing"

	"ovillo/render/rich"
)

// divided writes a word with hyphens at its places.
func divided(word, tag string) string {
	var b strings.Builder
	places := Places(word, tag)
	for i, r := range []rune(word) {
		if len(places) > 0 && places[0] == i {
			b.WriteByte('-')
			places = places[1:]
		}
		b.WriteRune(r)
	}
	return b.String()
}

// TestSpanishSyllables compares with the rules of the Ortografía de la lengua española (2010) of the Academy, chapter II, 5.2,
// and with examples of them (from memory: trans-at-lántico may be divided so or with tl together; the patterns keep away from
// both): consonant groups with l and r stay together, ll, rr and ch are never divided, nor is a diphthong.
func TestSpanishSyllables(t *testing.T) {
	for word, want := range map[string]string{
		"siguiente":    "si-guien-te",
		"deslizado":    "des-li-za-do",
		"comienzo":     "co-mien-zo",
		"ganchillo":    "gan-chi-llo",
		"marcador":     "mar-ca-dor",
		"izquierda":    "iz-quier-da",
		"continuación": "con-ti-nua-ción",
		"abreviaturas": "abre-via-tu-ras",
		"desarrollo":   "de-sa-rro-llo",
		"medidas":      "me-di-das",
		"vueltas":      "vuel-tas",
	} {
		var bounded []string // no less than three letters stand at an end
		parts := strings.Split(want, "-")
		for len(parts) > 1 && len([]rune(parts[0])) < around {
			parts[1] = parts[0] + parts[1]
			parts = parts[1:]
		}
		for len(parts) > 1 && len([]rune(parts[len(parts)-1])) < around {
			n := len(parts)
			parts = append(parts[:n-2], parts[n-2]+parts[n-1])
		}
		bounded = append(bounded, parts...)
		if got := divided(word, "es"); got != strings.Join(bounded, "-") {
			t.Errorf("%s: %s, not %s", word, got, strings.Join(bounded, "-"))
		}
	}
}

// TestEnglishWords: the first two are the examples of F. M. Liang, Word Hy-phen-a-tion by Com-put-er (1983), whose method the
// patterns are for; the rest are as a dictionary of American English divides them (from memory), where the patterns find the
// place: they may miss one, and never make one up.
func TestEnglishWords(t *testing.T) {
	for word, want := range map[string]string{
		"hyphenation":  "hyphen-ation",
		"computer":     "com-puter",
		"stitches":     "stitches",
		"waistband":    "waist-band",
		"instructions": "instruc-tions",
		"project":      "project", // one of the exceptions
		"projects":     "projects",
	} {
		if got := divided(word, "en-US"); got != want {
			t.Errorf("%s: %s, not %s", word, got, want)
		}
	}
	if got := divided("declination", "en-US"); got != "dec-li-na-tion" {
		t.Errorf("declination, which the list of exceptions divides as dec-li-na-tion: %s", got)
	}
}

func TestWhatStaysWhole(t *testing.T) {
	for _, text := range []string{
		"112\u00A0(116) vueltas\u00A0siguientes", "5\u00A0vueltas", "MARISMA", "Marisma", "dc2together", "media-vareta",
		"https://studio.example/siguientes", "vuelta", "1.ª-siguiente",
	} {
		if got := Soften(rich.T(text), "es"); got.String() != text {
			t.Errorf("%q became %q", text, got)
		}
	}
	runs := rich.Text{{Text: "deslizado", Expand: "punto deslizado"}, {Text: " "}, {Text: "siguientes", Spoken: "talla"},
		{Text: " "}, {Text: "siguientes", Link: "https://studio.example"}, {Text: "siguientes"}}
	if got := Soften(runs, "es"); got.String() != runs.String() {
		t.Errorf("runs that stay whole became %q", got)
	}
}

func TestSoften(t *testing.T) {
	text := rich.Text{{Text: "Tejer los puntos siguientes, "}, {Text: "(deslizado)", Strong: true}, {Text: " hasta."}}
	want := "Tejer los puntos si" + "guien" + soft + "tes, (des" + soft + "li" + soft + "zado) hasta."
	if got := Soften(text, "es-MX").String(); got != want {
		t.Errorf("%q, not %q", got, want)
	}
	if strings.ReplaceAll(Soften(text, "es").String(), soft, "") != text.String() {
		t.Error("more than soft hyphens was added")
	}
	if got := Soften(text, "fi"); got.String() != text.String() {
		t.Errorf("a language that is not known: %q", got)
	}
	if text.String() != "Tejer los puntos siguientes, (deslizado) hasta." {
		t.Error("the text itself was changed")
	}
}

// FuzzSoften: no text breaks it, and nothing but soft hyphens is added.
func FuzzSoften(f *testing.F) {
	f.Add("Tejer los puntos siguientes", "es")
	f.Add("\u00ADa\xffñññññññññññ", "en-GB")
	f.Fuzz(func(t *testing.T, text, tag string) {
		text = strings.ToValidUTF8(strings.ReplaceAll(text, soft, ""), "")
		if got := strings.ReplaceAll(Soften(rich.T(text), tag).String(), soft, ""); got != text {
			t.Errorf("%q became %q", text, got)
		}
	})
}

func BenchmarkSoften(b *testing.B) {
	text := rich.T(strings.Repeat("Tejer los puntos siguientes hasta el final de la vuelta. ", 20))
	b.ReportAllocs()
	for b.Loop() {
		Soften(text, "es")
	}
}

func BenchmarkRead(b *testing.B) {
	data, err := files.ReadFile("patterns/hyph-es.pat.txt")
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		readRules(string(data))
	}
}
