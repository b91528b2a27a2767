package words

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// spanish is the voice of Spanish. The verb is an infinitive throughout, which no country reads as the form of another:
// "tejer", never "teje" nor "tejé". A row is always an hilera and a round always a vuelta.
//
// Every noun brings its gender; articles, ordinals and adjectives follow it. Abbreviations have no plural of their own,
// but the words around them agree with what they stand for.
type spanish struct{ *reading }

// and writes a list: a, b y c; e before the sound of an i.
func (s *spanish) and(items []rich.Text) rich.Text {
	n := len(items)
	if n < 2 {
		return join("", items...)
	}
	return fill("{} "+andWord(items[n-1].String())+" {}", join(", ", items[:n-1]...), items[n-1])
}

// andWord is y, or e before a word that starts with the sound of an i. Marks of quotation are not said.
func andWord(next string) string {
	w := strings.ToLower(strings.TrimLeft(next, `«“"'([`))
	w = strings.TrimPrefix(w, "h")
	if strings.HasPrefix(w, "ie") || strings.HasPrefix(w, "ia") {
		return "y"
	}
	if strings.HasPrefix(w, "i") || strings.HasPrefix(w, "í") {
		return "e"
	}
	return "y"
}

// orWord is o, or u before a figure that is read with the sound of an o: 8, 11, 80.
func orWord(n int) string {
	digits := strconv.Itoa(n)
	if digits[0] == '8' || n == 11 || n >= 11000 && n < 12000 {
		return "u"
	}
	return "o"
}

// of is de with what follows; de and el become del.
func of(t rich.Text) rich.Text { return contracted("de", t) }

// to is a with what follows; a and el become al.
func to(t rich.Text) rich.Text { return contracted("a", t) }

func contracted(prep string, t rich.Text) rich.Text {
	if len(t) == 0 {
		return nil
	}
	rest, article := strings.CutPrefix(t[0].Text, "el ")
	if !article {
		return join("", rich.T(prep+" "), t)
	}
	out := append(rich.Text{}, t...)
	joined := map[string]string{"de": "del ", "a": "al "}[prep]
	if t[0].Text == "el " {
		out[0].Text = joined
		return out
	}
	out[0].Text = joined + rest
	return out
}

// agree picks the form of a word for a noun.
func (n noun) agree(masculine, feminine string) string {
	if n.feminine {
		return feminine
	}
	return masculine
}

// the is the definite article: el p, las cad.
func (n noun) the(plural bool) string {
	if plural {
		return n.agree("los", "las")
	}
	return n.agree("el", "la")
}

// compound reports whether a noun is more than one word: an adjective then stands before it, where it cannot be taken to
// belong to its last word.
func (n noun) compound() bool { return strings.ContainsAny(n.one.String(), " "+tie) }

// head is a noun without what is said behind it: "esp" of "esp de 2 cad".
func (n noun) head() rich.Text {
	one := merge(n.one)
	for i, r := range one {
		for _, behind := range []string{" de ", tie + "de" + tie, " de" + tie, " entre ", " sin" + tie, " sin "} {
			if at := strings.Index(r.Text, behind); at >= 0 {
				return append(one[:i:i], rich.Run{Text: r.Text[:at], Expand: r.Expand})
			}
		}
	}
	return n.one
}

// next is "el siguiente p".
func (n noun) next() rich.Text { return fill(n.the(false)+" siguiente {}", n.one) }

// first and last are "el primer p" and "el último p".
func (n noun) first() rich.Text { return fill(n.agree("el primer", "la primera")+" {}", n.one) }
func (n noun) last() rich.Text  { return fill(n.agree("el último", "la última")+" {}", n.one) }

// eachOf is "cada uno de los 5 p".
func (n noun) eachOf(c num, before, after string) rich.Text {
	text := fill("cada "+n.agree("uno de los", "una de las")+" "+before+"{}~{}", c, n.many)
	if after != "" {
		text = fill("{} "+after, text)
	}
	return text
}

// eachNext is "cada uno de los 5 p siguientes"; of a compound noun "cada uno de los 5 siguientes extremos de hilera".
func (n noun) eachNext(c num) rich.Text {
	if n.compound() {
		return fill("cada "+n.agree("uno de los", "una de las")+" {}~siguientes {}", c, n.many)
	}
	return n.eachOf(c, "", "siguientes")
}

// eachFirst is "cada uno de los 2 primeros p".
func (n noun) eachFirst(c num) rich.Text {
	return fill("cada "+n.agree("uno de los", "una de las")+" {}~"+n.agree("primeros", "primeras")+" {}", c, n.many)
}

// eachLast is "cada uno de los 2 últimos p".
func (n noun) eachLast(c num) rich.Text {
	return fill("cada "+n.agree("uno de los", "una de las")+" {}~"+n.agree("últimos", "últimas")+" {}", c, n.many)
}

// ordinal is 2.ª, 3.er before a masculine noun, 4.º.
func ordinalES(n int, feminine bool) string {
	if feminine {
		return strconv.Itoa(n) + ".ª"
	}
	if (n%10 == 1 || n%10 == 3) && n%100 != 11 && n%100 != 13 {
		return strconv.Itoa(n) + ".er"
	}
	return strconv.Itoa(n) + ".º"
}

// form is a stitch by its abbreviation: pa rel del, 2pajun, racimo de 3 pa.
func (s *spanish) form(f stitch.Form) noun {
	c, ok := concept(f.ID)
	if !ok {
		return noun{one: rich.T(string(f.ID)), many: rich.T(string(f.ID))}
	}
	t := s.term(c)
	if !f.Derived() {
		return abbreviated(t)
	}
	name := s.formName(f)
	if s.manner.Full {
		return s.formInFull(f, t)
	}
	short, shorts := t.Short+postSuffix(f.Post), t.Shorts+postSuffix(f.Post)
	if f.Group != stitch.Single {
		g := s.term(groupConcept(f.Group))
		what := tie + "de" + tie + strconv.Itoa(f.Of) + tie + shorts
		if f.Group == stitch.Vee {
			what = tie + "de" + tie + short
		}
		return noun{one: abbr(g.Short+what, name), many: abbr(g.Shorts+what, name), feminine: g.Feminine}
	}
	if f.Together > 1 {
		short = strconv.Itoa(f.Together) + short + "jun"
		if strings.Contains(short, tie) || t.Short == t.One || len(t.Short) > 4 {
			short = strconv.Itoa(f.Together) + tie + shorts + tie + "jun"
		}
		shorts = short
	}
	return noun{one: abbr(short, name), many: abbr(shorts, name), feminine: t.Feminine}
}

// formInFull is a stitch that is made of another, by its name.
func (s *spanish) formInFull(f stitch.Form, t term) noun {
	name := s.formName(f)
	switch {
	case f.Group != stitch.Single:
		g := s.term(groupConcept(f.Group))
		what := strings.TrimPrefix(name, g.One)
		return noun{one: rich.T(name), many: rich.T(g.Many + what), feminine: g.Feminine}
	case f.Together > 1:
		return noun{one: rich.T(name), many: rich.T(name), feminine: t.Feminine}
	}
	return noun{one: rich.T(name), many: rich.T(t.Many + postNameES(f.Post)), feminine: t.Feminine}
}

func postNameES(p stitch.Post) string {
	return [...]string{stitch.NoPost: "", stitch.FrontPost: " en relieve por delante", stitch.BackPost: " en relieve por detrás"}[p]
}

func postSuffix(p stitch.Post) string {
	return [...]string{stitch.NoPost: "", stitch.FrontPost: tie + "rel" + tie + "del", stitch.BackPost: tie + "rel" + tie + "det"}[p]
}

// formName is a stitch in full: punto alto en relieve por delante, 2 puntos altos cerrados juntos, racimo de 3 puntos altos.
func (s *spanish) formName(f stitch.Form) string {
	c, ok := concept(f.ID)
	if !ok {
		return string(f.ID)
	}
	t := s.term(c)
	post := postNameES(f.Post)
	switch {
	case f.Group == stitch.Vee:
		return s.word(groupConcept(f.Group)) + " de " + t.Many + post
	case f.Group != stitch.Single:
		return s.word(groupConcept(f.Group)) + " de " + strconv.Itoa(f.Of) + tie + t.Many + post
	case f.Together <= 1:
		return t.One + post
	}
	closed := " cerrados juntos"
	if t.Feminine {
		closed = " cerradas juntas"
	}
	return strconv.Itoa(f.Together) + tie + t.Many + post + closed
}

// ownStitch takes its gender and its plural from the first word of its name: la espiga doble, las espigas doble.
func (s *spanish) ownStitch(name, short string) noun {
	head, rest, _ := strings.Cut(name, " ")
	if rest != "" {
		rest = " " + rest
	}
	n := noun{feminine: s.feminine(head)}
	if short != "" {
		n.one = abbr(nbsp(short), name)
		n.many = n.one
		return n
	}
	n.one, n.many = rich.T(nbsp(name)), rich.T(nbsp(pluralES(head)+rest))
	return n
}

// feminine reports whether a noun is feminine: as its term says, if it is one, else by its ending.
func (s *spanish) feminine(word string) bool {
	for _, concept := range s.Table().Concepts() {
		if s.Has(concept) {
			if t := s.Term(concept); t.One == word {
				return t.Feminine
			}
		}
	}
	for _, ending := range []string{"ma", "ía"} { // el rombo, el enigma; la estría
		if strings.HasSuffix(word, ending) {
			return ending == "ía"
		}
	}
	for _, ending := range []string{"a", "ión", "dad", "tud"} {
		if strings.HasSuffix(word, ending) {
			return true
		}
	}
	return false
}

// pluralES is the plural of a noun: espiga, espigas; cordón, cordones; cruz, cruces.
func pluralES(word string) string {
	last := []rune(word)[len([]rune(word))-1]
	switch {
	case strings.ContainsRune("aeioué", last):
		return word + "s"
	case last == 'z':
		return word[:len(word)-1] + "ces"
	case strings.HasSuffix(word, "ón"):
		return strings.TrimSuffix(word, "ón") + "ones"
	case last == 's':
		return word
	}
	return word + "es"
}

// places names what is worked into.
func (s *spanish) places(k plan.PlaceKind) noun {
	st, sp, ch := s.short("st"), s.short("sp"), s.short("ch")
	switch k {
	case plan.FoundationCh, plan.ChainFromBack:
		return ch
	case plan.Space:
		return noun{one: fill("{} de~{}", sp.one, ch.one), many: fill("{} de~{}", sp.many, ch.one), feminine: sp.feminine}
	case plan.StitchSpace:
		return noun{one: fill("{} o {}", st.one, sp.one), many: fill("{} y {}", st.many, sp.many), feminine: st.feminine}
	case plan.StitchChain:
		return noun{one: fill("{} o {}", st.one, ch.one), many: fill("{} y {}", st.many, ch.many), feminine: st.feminine}
	case plan.Gap:
		return noun{one: rich.T("espacio entre puntos"), many: rich.T("espacios entre puntos")}
	case plan.Unworked:
		return noun{one: fill("{} sin~tejer", st.one), many: fill("{} sin~tejer", st.many), feminine: st.feminine}
	case plan.RowEnd:
		return s.rowEnd(false)
	case plan.RingPlace:
		return noun{one: rich.T("anillo"), many: rich.T("anillos")}
	}
	return st
}

// rowEnd is named in full once in a row; behind that the end alone is enough.
func (s *spanish) rowEnd(again bool) noun {
	if again {
		return noun{one: rich.T("extremo"), many: rich.T("extremos")}
	}
	row := s.rowWord(false).One
	return noun{one: rich.T("extremo de " + row), many: rich.T("extremos de " + row)}
}

// rowsBelow is a place so many rows below.
func (s *spanish) rowsBelow(n noun, deep int, round bool) noun {
	w := s.rowWord(round).Many
	if deep == 1 {
		w = s.rowWord(round).One
	}
	n.one, n.many = fill("{} de {}~{} más~abajo", n.one, deep, w), fill("{} de {}~{} más~abajo", n.many, deep, w)
	return n
}

// spaces names chain spaces: esp de 2 cad.
func (s *spanish) spaces(chains num, any bool) noun {
	sp, ch := s.short("sp"), s.short("ch")
	if any {
		return sp
	}
	behind := fill("de~{}~{}", chains, ch.by(chains))
	return noun{one: fill("{}~{}", sp.one, behind), many: fill("{}~{}", sp.many, behind), feminine: sp.feminine}
}

// stitchesIn names stitches in a yarn: p en arena.
func (s *spanish) stitchesIn(n noun, yarn string) noun {
	return noun{one: fill("{} en {}", n.one, yarn), many: fill("{} en {}", n.many, yarn), feminine: n.feminine}
}

// amount is how many of a noun: 1 pb, 2 (3; 3) pb.
func (s *spanish) amount(n num, of noun) rich.Text { return amount(n, of) }

func (s *spanish) rowWord(round bool) term {
	if round {
		return s.term("round")
	}
	return s.term("row")
}

// counted writes a whole number with a concept in full: 1 ovillo, 3 ovillos.
func (s *spanish) counted(n int, concept string) string {
	t := s.term(concept)
	if n == 1 {
		return "1" + tie + t.One
	}
	return strconv.Itoa(n) + tie + t.Many
}

// bare takes the article from a name.
func (s *spanish) bare(name string) string {
	for _, a := range []string{"el ", "la ", "los ", "las ", "un ", "una "} {
		if rest, ok := strings.CutPrefix(name, a); ok {
			return rest
		}
	}
	return name
}

// withArticle reads the gender and the number of a name from its article.
func withArticle(name string) (feminine, plural bool) {
	switch {
	case strings.HasPrefix(name, "la "):
		return true, false
	case strings.HasPrefix(name, "los "):
		return false, true
	case strings.HasPrefix(name, "las "):
		return true, true
	}
	return false, false
}

func (s *spanish) line(l line) string {
	if handed[l] {
		return s.expand(spanishLines[l])
	}
	return s.expand(s.sided(spanishLines[l]))
}

func (s *spanish) fixed(k Key) string { return s.expand(spanishFixed[k]) }

// otherForm tells a reader what a derived form is called in this reading, unless the row of its stitch does: the rest of the name
// is the same everywhere.
func (s *spanish) otherForm(f stitch.Form, plain bool) string {
	if plain {
		return ""
	}
	return s.formName(f)
}

func (s *spanish) otherTerm(t term) string { return t.One }

// mistaken warns of a name that stands for another stitch elsewhere.
func (s *spanish) mistaken(name string, meant noun) rich.Text {
	return fill("algunos patrones llaman «{}» {}", name, to(fill(meant.the(false)+" {}", meant.one)))
}

// expand puts the words of the reading into a text: {hook}, {hook*} for the plural, {el hook}, {del hook}, {un hook},
// {ese hook}; with a capital, {Size}.
func (s *spanish) expand(text string) string {
	before, rest, ok := strings.Cut(text, "{")
	if !ok {
		return text
	}
	word, after, _ := strings.Cut(rest, "}")
	value := s.expandWord(word)
	if word != "" {
		value = s.expand(value) // a term may hold another: cortar {el yarn} y rematar
	}
	return before + value + s.expand(after)
}

func (s *spanish) expandWord(word string) string {
	if word == "" { // a blank that is filled in later
		return "{}"
	}
	article, concept, ok := strings.Cut(word, " ")
	if !ok {
		article, concept = "", word
	}
	concept, plural := strings.CutSuffix(concept, "*")
	t := s.term(strings.ToLower(concept))
	name := t.One
	if plural {
		name = t.Many
	}
	if concept != strings.ToLower(concept) {
		name = upper(name)
	}
	n := noun{feminine: t.Feminine}
	switch article {
	case "el":
		return n.the(plural) + " " + name
	case "del":
		return of(rich.T(n.the(plural) + " " + name)).String()
	case "un":
		return n.agree("un", "una") + " " + name
	case "Todos":
		return n.agree("Todos los", "Todas las") + " " + name
	case "ese":
		return n.agree("ese", "esa") + " " + name
	}
	return name
}

func (s *spanish) name(k nameKind, id string) string {
	if k == bodyName {
		return s.bare(s.expand(spanishBody[id]))
	}
	return spanishNames[k][id]
}

// theYarn is a yarn by its name, inside a sentence: el hilo arena.
func (s *spanish) theYarn(name string) string {
	t := s.term("yarn")
	the := noun{feminine: t.Feminine}.the(false) + " " + t.One
	if name == "" {
		return the
	}
	return the + " " + name
}

func (s *spanish) spoken(n int, feminine bool) string { return spanishNumber(n, feminine) }
