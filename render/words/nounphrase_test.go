package words

import (
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"ovillo/lang/terms"
)

// This file is a reader of Spanish sentences that knows nothing of the voice that wrote them. It finds the nouns, knows their
// gender and number from the table of terms and from a short list of plain words, and looks at every article, number, ordinal,
// adjective, pronoun and verb beside them.

// gender of a noun or of a word beside it.
type gender uint8

const (
	anyGender gender = iota
	masc
	fem
)

// many says whether a word is a singular or a plural.
type many uint8

const (
	anyNumber many = iota
	single
	plural
)

// about is what is known of a word.
type about struct {
	g gender
	n many
}

// agrees reports whether two words can stand beside one another.
func (a about) agrees(b about) bool {
	return (a.g == anyGender || b.g == anyGender || a.g == b.g) && (a.n == anyNumber || b.n == anyNumber || a.n == b.n)
}

// plainNouns are nouns that are no terms, with their gender as any dictionary has it; the plural is behind the bar.
var plainNouns = map[gender]string{
	masc: "final comienzo anillo|anillos lado|lados borde|bordes costado marcador|marcadores final cierre extremo|extremos motivo|motivos cordón|cordones " +
		"delantero escote cuello gorro hombro|hombros tubo pulgar diagrama cartón cabo|cabos bucle|bucles orden aro escalón borde ancho largo " +
		"guijarro|guijarros guij|guij nudo|nudos botón|botones pompón|pompones derecho revés cuerpo lugar|lugares punto|puntos número|números medio espacio|espacios relieve centro",
	fem: "labor pieza|piezas hebra|hebras capa|capas base|bases esquina|esquinas manga|mangas espalda axila|axilas parte|partes " +
		"pierna|piernas casilla|casillas goma fila|filas cuña sección|secciones lazada|lazadas vez|veces unión|uniones raya|rayas hilera|hileras vuelta|vueltas " +
		"repetición|repeticiones talla|tallas banda copa orilla mitad espiga|espigas espg|espg ola|olas",
}

// besides are the words that agree with a noun.
var besides = map[string]about{
	"el": {masc, single}, "la": {fem, single}, "los": {masc, plural}, "las": {fem, plural}, "del": {masc, single}, "al": {masc, single},
	"un": {masc, single}, "una": {fem, single}, "unos": {masc, plural}, "unas": {fem, plural},
	"este": {masc, single}, "esta": {fem, single}, "estos": {masc, plural}, "estas": {fem, plural},
	"otro": {masc, single}, "otra": {fem, single}, "otros": {masc, plural}, "otras": {fem, plural}, "todos": {masc, plural}, "todas": {fem, plural},
	"primer": {masc, single}, "primera": {fem, single}, "primeros": {masc, plural}, "primeras": {fem, plural},
	"último": {masc, single}, "última": {fem, single}, "últimos": {masc, plural}, "últimas": {fem, plural},
	"mismo": {masc, single}, "misma": {fem, single}, "mismos": {masc, plural}, "mismas": {fem, plural}, "siguiente": {anyGender, single}, "siguientes": {anyGender, plural}, "tercera": {fem, single},
	"demás": {anyGender, plural}, "dos": {anyGender, plural},
	"cada": {anyGender, single},
}

// behindNoun are the adjectives that stand behind a noun.
var behindNoun = map[string]about{
	"siguiente": {anyGender, single}, "siguientes": {anyGender, plural}, "restante": {anyGender, single}, "restantes": {anyGender, plural},
	"correspondiente": {anyGender, single}, "correspondientes": {anyGender, plural}, "contiguo": {masc, single}, "contigua": {fem, single},
	"saltado": {masc, single}, "saltada": {fem, single}, "saltados": {masc, plural}, "saltadas": {fem, plural},
	"tejido": {masc, single}, "tejida": {fem, single}, "marcado": {masc, single}, "marcada": {fem, single},
	"alargado": {masc, single}, "alargada": {fem, single}, "alargados": {masc, plural}, "alargadas": {fem, plural},
	"delantera": {fem, single}, "trasera": {fem, single}, "derecha": {fem, single}, "izquierda": {fem, single}, "izquierdo": {masc, single},
	"inicial": {anyGender, single}, "ajustable": {anyGender, single},
}

// pronouns stand for a noun that is said before or behind them.
var pronouns = map[string]about{
	"uno": {masc, single}, "una": {fem, single}, "primero": {masc, single}, "primera": {fem, single}, "último": {masc, single}, "última": {fem, single},
}

// reader finds the nouns of one reading.
type reader struct{ nouns map[string]about }

// newReader reads the nouns of a reading from the table of terms.
func newReader(l *Language) *reader {
	r := &reader{map[string]about{}}
	for g, list := range plainNouns {
		for _, f := range strings.Fields(list) {
			one, more, _ := strings.Cut(f, "|")
			r.add(one, about{g, single})
			if more != "" {
				r.add(more, about{g, plural})
			}
		}
	}
	for _, concept := range l.read.Table().Concepts() {
		switch concept {
		case "skip", "weave", "fasten", "finishing", "decimal", "counted_verb":
			continue
		}
		if l.read.Has(concept) {
			r.term(l.read.Term(concept))
		}
	}
	return r
}

func (r *reader) term(t terms.Term) {
	g := masc
	if t.Feminine {
		g = fem
	}
	for _, w := range []struct {
		text string
		n    many
	}{{t.Short, single}, {t.Shorts, plural}, {t.One, single}, {t.Many, plural}} {
		r.add(w.text, about{g, w.n})
	}
}

// add notes a noun; one that is the same in both numbers, as abbreviations are, has any; one of two genders is not looked at.
func (r *reader) add(text string, a about) {
	if was, ok := r.nouns[text]; ok {
		if was.n != a.n {
			a.n = anyNumber
		}
		if was.g != a.g {
			a.g = anyGender
		}
	}
	r.nouns[text] = a
}

var token = regexp.MustCompile(`[0-9]+\.(?:ª|º|er)|[0-9]+(?:,[0-9]+)?|[\p{L}]+|[^\s]`)

// piece is a word, or a list of sizes as one.
type piece struct {
	text string
	n    many // of a number
	bad  bool // a list that holds 1 or a dash: no article agrees with it in every size
}

// units parts a sentence; "12 (14; 16)" and "– (1; 2)" are one unit.
func units(s string) []piece {
	var out []piece
	words := token.FindAllString(s, -1)
	figure := func(w string) bool { return w == dash || w[0] >= '0' && w[0] <= '9' && !strings.Contains(w, ".") }
	for i := 0; i < len(words); i++ {
		w := words[i]
		if !figure(w) {
			out = append(out, piece{text: w})
			continue
		}
		u := piece{text: w, n: plural, bad: w == "1" || w == dash}
		if w == "1" || w == dash && i+1 < len(words) && words[i+1] == "(" {
			u.n = single // unless another figure of a list is none
		}
		if i+2 < len(words) && words[i+1] == "(" && figure(words[i+2]) {
			k := i + 2
			for k < len(words) && (figure(words[k]) || words[k] == ";") {
				u.bad = u.bad || words[k] == "1" || words[k] == dash
				k++
			}
			if k < len(words) && words[k] == ")" {
				for _, f := range words[i : k+1] {
					if figure(f) && f != "1" && f != dash {
						u.n = plural
					}
				}
				i = k
			}
		} else if w != "1" && w != dash {
			u.bad = false
		}
		out = append(out, u)
	}
	return out
}

var closed = regexp.MustCompile(`^[0-9]+(\p{L}+)jun$`)

// noun finds the longest noun that starts at a place, and where it ends.
func (r *reader) noun(us []piece, at int) (about, int, bool) {
	if us[at].n != anyNumber && at+1 < len(us) { // 2pbjun is parted into its figure and its letters; 2 pb rel del jun are words
		if m := closed.FindStringSubmatch(us[at].text + us[at+1].text); m != nil {
			if a, ok := r.nouns[m[1]]; ok {
				return about{a.g, anyNumber}, at + 2, true
			}
		}
		if a, end, ok := r.noun(us, at+1); ok && end < len(us) && us[end].text == "jun" {
			return about{a.g, anyNumber}, end + 1, true
		}
	}
	best, end, found := about{}, at, false
	text := ""
	for k := at; k < len(us) && k < at+5; k++ {
		if us[k].n != anyNumber || !unicode.IsLetter([]rune(us[k].text)[0]) {
			break
		}
		text += us[k].text
		if a, ok := r.nouns[text]; ok {
			best, end, found = a, k+1, true
		} else if a, ok := r.nouns[strings.ToLower(text)]; ok {
			best, end, found = a, k+1, true
		}
		text += " "
	}
	if !found {
		return best, at, false
	}
	if end+1 < len(us) && us[end].text == "rel" && (us[end+1].text == "del" || us[end+1].text == "det") { // in relief
		end += 2
	}
	if end+1 < len(us) && us[end].text == "sin" && (us[end+1].text == "cerrar" || us[end+1].text == "tejer") {
		end += 2
	}
	return best, end, true
}

// faults are what does not agree in a sentence.
func (r *reader) faults(s string) []string {
	us := units(s)
	var out []string
	say := func(why string, from, to int) {
		var w []string
		for _, u := range us[max(from, 0):min(to, len(us))] {
			w = append(w, u.text)
		}
		out = append(out, why+": "+strings.Join(w, " "))
	}
	last, lastPlace := about{}, about{}
	for i := 0; i < len(us); {
		a, end, ok := r.noun(us, i)
		if !ok {
			if k := strings.ToLower(us[i].text); i+1 < len(us) && (k == "uno" || k == "una") && i > 0 && us[i-1].text == "cada" && us[i+1].text != "de" {
				if !pronouns[k].agrees(about{g: lastPlace.g}) {
					say("pronoun", i-2, i+1)
				}
			}
			i++
			continue
		}
		np := a
		start := i
		for start > 0 {
			w := strings.ToLower(us[start-1].text)
			switch b, isWord := besides[w]; {
			case us[start-1].n != anyNumber:
				if us[start-1].n == single && np.n == plural || us[start-1].n == plural && np.n == single {
					say("number", start-1, end)
				}
				if np.n == anyNumber {
					np.n = us[start-1].n
				}
				if us[start-1].bad && start > 1 && articles[strings.ToLower(us[start-2].text)] {
					say("article before a list with 1", start-2, end)
				}
			case ordinal(w):
				if !ordinalAgrees(w, np) {
					say("ordinal", start-1, end)
				}
				if np.n == anyNumber {
					np.n = single
				}
			case isWord:
				if w == "cada" && us[start].n != anyNumber { // every 2 rows
					goto done
				}
				if !b.agrees(np) {
					say("beside", start-1, end)
				}
				if np.n == anyNumber && b.n != anyNumber {
					np.n = b.n
				}
				if articles[w] {
					start--
					if bare := a.n == anyNumber && start == i-1; bare && (w == "los" || w == "las") && !(end < len(us) && behindNoun[us[end].text].n == plural) {
						say("several without a number", start, end)
					}
					goto done
				}
			default:
				goto done
			}
			start--
		}
	done:
		r.pronoun(us, start, np, say)
		k := end
		for k < len(us) {
			b, isWord := behindNoun[us[k].text]
			if !isWord {
				break
			}
			far := complements(us, start) && (us[k].text == "correspondiente" || us[k].text == "siguientes" || us[k].text == "contiguo") && b.agrees(last)
			if !b.agrees(np) && !far {
				say("behind", start, k+1)
			}
			k++
		}
		r.verb(us, start, k, np, say)
		if start == 0 || us[start-1].text != "de" {
			last = np
		}
		if start > 0 && us[start-1].text == "en" || start > 1 && us[start-1].text == "de" && pronouns[us[start-2].text].g != anyGender {
			lastPlace = np
		}
		i = end
	}
	return out
}

// complements reports whether a noun is said of the one before it, so that an adjective behind it may belong to that one: el esp de
// 2 cad correspondiente, los 2 p y esp siguientes.
func complements(us []piece, start int) bool {
	if start < 2 {
		return false
	}
	before := us[start-1].text
	return (before == "de" || before == "y" || before == "o") && pronouns[us[start-2].text].g == anyGender
}

var articles = map[string]bool{"el": true, "la": true, "los": true, "las": true, "del": true, "al": true, "estos": true, "estas": true, "un": true, "una": true, "este": true, "esta": true}

func ordinal(w string) bool {
	return strings.HasSuffix(w, ".ª") || strings.HasSuffix(w, ".º") || strings.HasSuffix(w, ".er")
}

// ordinalAgrees reports whether an ordinal has the form that stands before a noun: 2.ª cad, 2.º p, 3.er p.
func ordinalAgrees(w string, a about) bool {
	n, _ := strconv.Atoi(w[:strings.Index(w, ".")])
	short := (n%10 == 1 || n%10 == 3) && n%100 != 11 && n%100 != 13
	switch {
	case a.g == fem:
		return strings.HasSuffix(w, ".ª")
	case a.g == masc && short:
		return strings.HasSuffix(w, ".er")
	case a.g == masc:
		return strings.HasSuffix(w, ".º")
	}
	return true
}

// pronoun looks at what stands for a noun that follows: cada una de las 3 cad, el primero de estos p, el del medio de estos p.
func (r *reader) pronoun(us []piece, start int, np about, say func(string, int, int)) {
	if start < 2 || us[start-1].text != "de" {
		return
	}
	if us[start].text != "los" && us[start].text != "las" && us[start].text != "estos" && us[start].text != "estas" {
		return
	}
	w := us[start-2].text
	if p, ok := pronouns[w]; ok {
		if !p.agrees(about{g: np.g}) {
			say("pronoun", start-2, start+3)
		}
		if start > 2 && (us[start-3].text == "el" || us[start-3].text == "la" || us[start-3].text == "al") && besides[us[start-3].text].g != p.g {
			say("article of a pronoun", start-3, start+1)
		}
		return
	}
	if w == "medio" && start > 3 {
		if b, ok := besides[us[start-4].text]; ok && !b.agrees(about{g: np.g}) {
			say("pronoun", start-4, start+3)
		}
	}
}

// verb looks at the verb before or behind what is counted: hasta que quede 1 p, 3 cad (cuentan como …).
func (r *reader) verb(us []piece, start, end int, np about, say func(string, int, int)) {
	verbs := map[string]many{"cuenta": single, "cuentan": plural, "queda": single, "quedan": plural, "quede": single, "queden": plural}
	if start > 0 {
		if n, ok := verbs[us[start-1].text]; ok && np.n != anyNumber && n != np.n {
			say("verb", start-1, end)
		}
	}
	k := end
	for k < len(us) && (us[k].text == "(" || us[k].text == "no") {
		k++
	}
	if k < len(us) {
		if n, ok := verbs[us[k].text]; ok && strings.HasPrefix(us[k].text, "cuenta") && k+1 < len(us) && us[k+1].text == "como" && np.n != anyNumber && n != np.n {
			say("verb", start, k+1)
		}
	}
}
