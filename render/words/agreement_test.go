package words

import (
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
		never("cuentan de 1", `(^|[:.,] )1 cad \((no )?cuentan`),
		never("cuenta de varias", `(^|[:.,] )[2-9] cad \((no )?cuenta\b`),
		never("quedan 1", `quedan 1 [a-z]|queda ([2-9]|1[0-9])`),
		never("y antes de i", `\by (h?i[^ea])`),
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

func TestAgreement(t *testing.T) {
	for _, tag := range []string{"en-US", "en-GB", "es", "es-ES", "es-MX", "es-AR", "es-CL", "es-EC"} {
		t.Run(tag, func(t *testing.T) {
			l := language(t, tag)
			rules := append([]rule{}, signs...)
			if l.Code() == "es" {
				rules = append(rules, spanishRules(l)...)
			} else {
				rules = append(rules, englishRules...)
			}
			any := anyOf(rules)
			texts, bad, seen := 0, map[string]int{}, map[string]bool{}
			corpus(l, func(what string, text rich.Text) {
				s := flat(text)
				if seen[s] {
					return
				}
				seen[s] = true
				texts++
				hits := rules
				if !any.MatchString(s) {
					hits = nil
				}
				for _, r := range hits {
					if hit := r.wrong.FindString(s); hit != "" {
						if bad[r.why]++; bad[r.why] <= 3 {
							t.Errorf("%s: %q in %q (%s)", r.why, hit, s, what)
						}
					}
				}
				if w := doubled(s); w != "" {
					t.Errorf("%q twice in %q (%s)", w, s, what)
				}
				if !balanced(s) {
					t.Errorf("brackets in %q (%s)", s, what)
				}
			})
			if texts < 1500 {
				t.Errorf("only %d texts were looked at", texts)
			}
			for why, n := range bad {
				t.Logf("%s: %d times", why, n)
			}
		})
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
