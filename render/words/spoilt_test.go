package words

import (
	"strings"
	"testing"
)

// spoils are the wrong forms of the words that agree with a noun.
var spoils = map[string][]string{
	"el": {"la", "los"}, "la": {"el", "las"}, "los": {"las", "el"}, "las": {"los", "la"}, "del": {"de la", "de el", "de los"}, "al": {"a la", "a el"},
	"uno": {"una"}, "una": {"uno"}, "un": {"una"}, "primer": {"primera", "primeros"}, "primera": {"primer", "primeras"}, "primero": {"primera"},
	"primeros": {"primeras"}, "primeras": {"primeros"},
	"último": {"última", "últimos"}, "última": {"último", "últimas"}, "últimos": {"últimas", "último"}, "últimas": {"últimos", "última"},
	"mismo": {"misma", "mismos"}, "misma": {"mismo"}, "siguiente": {"siguientes"}, "siguientes": {"siguiente"}, "otros": {"otras"}, "otras": {"otros"},
	"saltado": {"saltada", "saltados"}, "saltada": {"saltado"}, "saltados": {"saltadas", "saltado"}, "saltadas": {"saltados", "saltada"},
	"tejido": {"tejida"}, "tejida": {"tejido"}, "marcado": {"marcada"}, "marcada": {"marcado"}, "estos": {"estas", "este"}, "estas": {"estos", "esta"},
	"correspondiente": {"correspondientes"}, "alargado": {"alargada", "alargados"}, "alargados": {"alargadas"}, "alargada": {"alargado"},
	"quede": {"queden"}, "queden": {"quede"}, "queda": {"quedan"}, "quedan": {"queda"}, "cuenta": {"cuentan"}, "cuentan": {"cuenta"},
	"2.ª": {"2.º"}, "3.ª": {"3.er", "3.º"}, "4.ª": {"4.º"}, "5.ª": {"5.º"}, "3.er": {"3.º", "3.ª"}, "2.º": {"2.ª", "2.er"},
}

// Words that agree with something which is not said beside them: the number of a marker ("el 2 tras 4 más"), what a pronoun stands
// for; and "primero", which here says when.
var agreesWithElse = []string{"el 1 ", "el 2 ", "el 3 ", "a él", "primero por"}

// A right sentence in which one word is spoilt must be found wrong, whichever word it is: else the test of agreement asserts
// nothing. Every wrong form of every word that agrees is tried in a sample of the sentences of each reading.
func TestSpoiltSentencesAreFound(t *testing.T) {
	for _, tag := range []string{"es", "es-AR", "es-EC"} {
		t.Run(tag, func(t *testing.T) {
			l := language(t, tag)
			j := newJudge(l)
			tried, missed, n := map[string]int{}, 0, 0
			sentences(l, func(what, s string) {
				if n++; n%9 != 0 {
					return
				}
				for _, k := range spoilt(s) {
					tried[k.word]++
					if len(j.faults(k.text)) == 0 {
						if missed++; missed <= 25 {
							t.Errorf("nothing is found wrong with %q for %q in %q", k.wrong, k.word, k.text)
						}
					}
				}
			})
			total := 0
			for _, n := range tried {
				total += n
			}
			if total < 1500 || len(tried) < 25 {
				t.Errorf("only %d words of %d kinds were spoilt", total, len(tried))
			}
			t.Logf("%d spoilt, %d missed", total, missed)
		})
	}
}

type spoiltText struct{ text, word, wrong string }

// spoilt are the sentences that come of spoiling one word.
func spoilt(s string) []spoiltText {
	var out []spoiltText
	at := 0
	for _, w := range strings.Fields(s) {
		start := at + strings.Index(s[at:], w)
		at = start + len(w)
		bare := strings.TrimLeft(strings.TrimRight(w, ".,;:)]"), "([")
		if strings.HasSuffix(w, ".ª") || strings.HasSuffix(w, ".º") || strings.HasSuffix(w, ".er") {
			bare = w
		}
		low := strings.ToLower(bare)
		if notBeside(s[max(0, start-3):]) {
			continue
		}
		for _, wrong := range spoils[low] {
			out = append(out, spoiltText{s[:start] + strings.Replace(w, bare, wrong, 1) + s[at:], bare, wrong})
		}
	}
	return out
}

// notBeside reports whether the words at a place agree with something that is not beside them.
func notBeside(s string) bool {
	for _, e := range agreesWithElse {
		if i := strings.Index(s, e); i >= 0 && i <= 4 {
			return true
		}
	}
	return false
}
