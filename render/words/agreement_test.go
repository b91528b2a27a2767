package words

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// flat is a text as a reader says it: ties are spaces.
func flat(t rich.Text) string {
	return strings.NewReplacer(tie, " ", "\u202f", "").Replace(t.String())
}

// rule is something that a right sentence never holds.
type rule struct {
	why   string
	wrong *regexp.Regexp
}

func never(why, pattern string) rule { return rule{why, regexp.MustCompile(pattern)} }

// signs are slips of the pen in any language.
var signs = []rule{
	never("a blank was not filled", `\{\}|~|%!|\[\]|\(\)`),
	never("two spaces", `  `),
	never("a space before a sign", ` [,.;:]`),
	never("two signs", `[,;:][,;:.]|\.\.`),
	never("an absent number", `-?2147483648`),
	never("the start of a list is lost", `^[,;]|\( ?[,;]`),
	never("zero is not worked", `(^|[ (])0 `),
}

var englishRules = []rule{
	never("1 with a plural", `(^|[ (])1 (sts|sps|times|rounds|rows|spaces|hooks|balls)\b`),
	never("several with a singular", `(^|[ (])([2-9]|[1-9][0-9]) (st|sp|time|round|space|row)($|[,.;)]| [^e])`),
	never("several with the verb of one", `[2-9] chains \((does|counts)`),
	never("one with the verb of several", `(^|[ (])(1 chain|[Cc]hain [0-9]) \((do not|count )`),
	never("a before a vowel", `\ba (hdc|htr|sc|sl st|FP)`),
	never("an before a consonant", `\ban (dc|tr|BP|st)\b`),
	never("one in each is always said with each", `\b(sc|hdc|dc|tr) in (next|last) [0-9]`),
}

// spanishRules hold for every reading; those of gender are made from its terms.
func spanishRules(l *Language) []rule {
	rules := []rule{
		never("1 con plural", `(^|[ (])1 (puntos|cadenas|cadenetas|vueltas|hileras|veces|espacios|extremos|puntos|tallas|talles|ovillos|marcadores|huecos|arcos)\b`),
		never("varios con singular", `(^|[ (])([2-9]|[1-9][0-9]) (punto|cadena|cadeneta|vuelta|hilera|vez|espacio|extremo|hueco|arco)\b`),
		never("los 1", `\b(los|las|estos|estas|otros|otras|unos|unas) 1 `),
		never("de el", `\b(de|a) el\b`),
		never("siguiente sin concordar", `\b(el|la) siguientes\b|\b(los|las) ([^ ]+ )?siguiente\b`),
		never("cada uno de las", `uno de (las|estas)|una de (los|estos)`),
		never("cada inflected", `\bcadas\b`),
		never("una vez", `\b1 veces\b`),
		never("relieve", `\brel ([^d]|de( |[^lt]))`),
		never("cuentan de 1", `(^|[:.,] )1 cad \((no )?cuentan`),
		never("cuenta de varias", `(^|[:.,] )[2-9] cad \((no )?cuenta\b`),
		never("quedan 1", `quedan 1 [a-z]|queda ([2-9]|1[0-9])`),
		never("y antes de i", `\by (h?[ií][^ea])`),
		never("e antes de otro sonido", `\be (h?i[ea]|[^hií ])`),
		never("o antes de o", `\bo (h?[oó]|8|11\b)`),
		never("u antes de otro sonido", `\bu ([^hoó81 ]|1[^1])`),
		never("tú, usted, nosotros", `(?i)(^|[.:;,(\[] ?)(teje|tejemos|tejed|saltas?|repite|cierra|gira|une|cambia|coloca|corta|tejé|tejes|teja)\b|\b(tu|tus|usted|nuestro|nuestra)\b`),
		never("palabra vulgar en América", `(?i)\bcog(er|e|iendo|ido)\b`),
		never("calco", `(?i)lado equivocado|anzuelo|\bcalibre\b`),
		never("vuelta por girar", `dar la vuelta`),
	}
	masculine, feminine := nounsByGender(l)
	m, f := `(`+strings.Join(masculine, "|")+`)($|[ ,.;)\]])`, `(`+strings.Join(feminine, "|")+`)($|[ ,.;)\]])`
	number := `([0-9–]+ (\([^)]*\) )?)?`
	rules = append(rules,
		never("masculino con femenino", `\b(la|una|una de las|las|de la) (siguiente |primera |última |misma |siguientes |otras )?`+number+`(últimas )?`+m),
		never("femenino con masculino", `\b(el|un|uno de los|los|del|al) (siguiente |primer |último |mismo |siguientes |otros )?`+number+`(últimos )?`+f),
		never("adjetivo", `\b`+f[:len(f)-len(`($|[ ,.;)\]])`)]+` (saltado|saltados|tejido|marcado|juntos)\b`),
		never("adjetivo", `\b`+m[:len(m)-len(`($|[ ,.;)\]])`)]+` (saltada|saltadas|tejida|marcada|juntas)\b`),
	)
	return rules
}

// nounsByGender lists the nouns of a reading as they are printed. Words that are in both lists, an abbreviation of two
// things, are left out.
func nounsByGender(l *Language) (masculine, feminine []string) {
	gender := map[string]bool{}
	both := map[string]bool{}
	add := func(n noun) {
		for _, s := range []string{flat(n.one), flat(n.many)} {
			if g, ok := gender[s]; ok && g != n.feminine {
				both[s] = true
			}
			gender[s] = n.feminine
		}
	}
	for _, c := range []string{"ch", "st", "sp", "row", "round", "marker", "size"} {
		add(l.read.short(c))
		add(l.read.full(c))
	}
	for _, k := range stitch.Table {
		add(l.read.short(string(k.ID)))
		for _, f := range spokenForms() {
			if f.ID == k.ID && f.Together == 1 {
				add(l.voice.form(f))
			}
		}
	}
	for s, f := range gender {
		switch {
		case both[s]:
		case f:
			feminine = append(feminine, regexp.QuoteMeta(s))
		default:
			masculine = append(masculine, regexp.QuoteMeta(s))
		}
	}
	return masculine, feminine
}

// anyOf is one expression for all rules: most texts break none.
func anyOf(rules []rule) *regexp.Regexp {
	parts := make([]string, len(rules))
	for i, r := range rules {
		parts[i] = "(?:" + r.wrong.String() + ")"
	}
	return regexp.MustCompile(strings.Join(parts, "|"))
}

// doubled returns a word that stands twice in a row.
func doubled(s string) string {
	words := strings.Fields(s)
	for i := 1; i < len(words); i++ {
		if w := words[i]; w == words[i-1] && strings.ToLower(w) != strings.ToUpper(w) {
			return w
		}
	}
	return ""
}

func balanced(s string) bool {
	depth := []rune{}
	for _, r := range s {
		switch r {
		case '(', '[':
			depth = append(depth, r)
		case ')', ']':
			want := map[rune]rune{')': '(', ']': '['}[r]
			if len(depth) == 0 || depth[len(depth)-1] != want {
				return false
			}
			depth = depth[:len(depth)-1]
		}
	}
	return len(depth) == 0
}

// The readings that are looked at, and how many different sentences each has at least.
var spokenReadings = map[string]int{"en-US": 5000, "en-GB": 2000, "es": 5000, "es-ES": 2000, "es-MX": 2000, "es-AR": 5000, "es-CL": 2000, "es-EC": 2000}

// sentences are the different sentences of the corpus, with how they came about.
func sentences(l *Language, f func(what, s string)) {
	seen := map[string]bool{}
	corpus(l, func(what string, text rich.Text) {
		if s := flat(text); !seen[s] {
			seen[s] = true
			f(what, s)
		}
	})
}

// judge finds what is wrong in a sentence of a language.
type judge struct {
	rules  []rule
	any    *regexp.Regexp
	reader *reader // of Spanish
}

func newJudge(l *Language) *judge {
	j := &judge{rules: append([]rule{}, signs...)}
	if l.Code() == "es" {
		j.rules, j.reader = append(j.rules, spanishRules(l)...), newReader(l)
	} else {
		j.rules = append(j.rules, englishRules...)
	}
	j.any = anyOf(j.rules)
	return j
}

func (j *judge) faults(s string) []string {
	var out []string
	if j.any.MatchString(s) {
		for _, r := range j.rules {
			if hit := r.wrong.FindString(s); hit != "" {
				out = append(out, r.why+": "+hit)
			}
		}
	}
	if j.reader != nil {
		out = append(append(out, j.reader.faults(s)...), slipsCount(s)...)
	}
	if w := doubled(s); w != "" {
		out = append(out, "twice: "+w)
	}
	if !balanced(s) {
		out = append(out, "brackets")
	}
	return out
}

var sizesInBrackets = regexp.MustCompile(` \((?:[0-9–; ]+|[^()]*: [0-9–][^()]*)\)`)

// slipsCount looks at the verb of slip stitches that only carry the yarn on: one does not count, several do not.
func slipsCount(s string) []string {
	var out []string
	s = sizesInBrackets.ReplaceAllString(s, "s")
	for _, verb := range []string{"(no cuenta)", "(no cuentan)"} {
		for rest := s; ; {
			at := strings.Index(rest, verb)
			if at < 0 {
				break
			}
			clause := rest[strings.LastIndexAny(rest[:at], ";.:]")+1 : at]
			several := strings.Contains(clause, " cada ") || strings.Contains(clause, " por ") || strings.Contains(clause, " y ")
			if several != (verb == "(no cuentan)") {
				out = append(out, "verb: "+clause+verb)
			}
			rest = rest[at+len(verb):]
		}
	}
	return out
}

func TestAgreement(t *testing.T) {
	for tag, least := range spokenReadings {
		for _, m := range []Manner{{}, {Full: true, Named: tag == "es"}} { // the names of sizes change no gender
			t.Run(fmt.Sprint(tag, m), func(t *testing.T) {
				l := language(t, tag).With(m)
				j := newJudge(l)
				texts, bad := 0, 0
				sentences(l, func(what, s string) {
					texts++
					for _, f := range j.faults(s) {
						if bad++; bad <= 12 {
							t.Errorf("%s in %q (%s)", f, s, what)
						}
					}
				})
				if texts < least {
					t.Errorf("only %d texts were looked at", texts)
				}
				if bad > 12 {
					t.Errorf("%d faults in all", bad)
				}
			})
		}
	}
}

// The rules must find what they are there for.
func TestRulesFindSlips(t *testing.T) {
	l := language(t, "es")
	ar := language(t, "es-AR")
	for _, k := range []struct {
		l    *Language
		slip string
	}{
		{l, "1 pb en cada uno de los 1 p siguientes"}, {l, "en el cad"}, {l, "cada uno de las 3 cad siguientes"}, {l, "cada una de las 3 p"},
		{l, "en el siguientes p"}, {l, "hasta el final de el cuerpo"}, {l, "en la primera pa"}, {l, "1 veces"}, {l, "2 vez"}, {l, "hilera y hilera y hilo"},
		{l, "1 cad (cuentan como el primer pa)"}, {l, "coger la hebra"}, {l, "los 3 p saltadas"}, {ar, "en el primer v"}, {ar, "cada uno de los 12 (14; 16) v siguientes"},
	} {
		found := false
		for _, r := range spanishRules(k.l) {
			found = found || r.wrong.MatchString(k.slip)
		}
		if !found {
			t.Errorf("%s: no rule finds %q", k.l.Tag(), k.slip)
		}
	}
	for _, slip := range []string{"1 sts", "2 st", "a hdc", "dc in next 2 sts", "an dc"} {
		found := false
		for _, r := range englishRules {
			found = found || r.wrong.MatchString(slip)
		}
		if !found {
			t.Errorf("en: no rule finds %q", slip)
		}
	}
}
