package words

import (
	"regexp"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
	"ovillo/render/sample"
)

// spokenTexts are all texts of Spanish: those of the corpus, the fixed lines, and every stitch as it is explained.
func spokenTexts(l *Language, f func(s string)) {
	sentences(l, func(_, s string) { f(s) })
	for k := range spanishLines {
		f(flat(rich.T(l.voice.line(k))))
	}
	for k := range spanishFixed {
		f(flat(rich.T(l.voice.fixed(k))))
	}
	for _, s := range explainedTexts(l) {
		f(s)
	}
}

// explainedTexts are the explanations of every stitch that has one, and of how a pattern is read.
func explainedTexts(l *Language) []string {
	p := tablePattern()
	row := &plan.Row{First: plan.Nums{1, 1, 1}, Last: plan.Nums{1, 1, 1}, Times: plan.Nums{1, 1, 1}}
	for _, form := range spokenForms() {
		in := tableInstr(plan.Work, plan.Next, plan.Stitch, plan.Nums{1, 1, 1})
		if in.Form = form; form.Together > 1 {
			in.Op = plan.Decrease
		}
		row.Work = append(row.Work, in)
	}
	foundation := tableInstr(plan.Lengthen, plan.Next, plan.Stitch, plan.Nums{2, 2, 2})
	foundation.Form = plainForm(stitch.DC)
	row.Work = append(row.Work, foundation)
	p.Parts[1].Steps = []plan.Step{row}
	p.Parts[0].Start = plan.Start{Kind: plan.StartFoundation, N: plan.Nums{9, 9, 9}, Form: plainForm(stitch.HDC)}
	var out []string
	for _, x := range l.Specials(p) {
		out = append(out, flat(x.Head)+". "+flat(x.Text))
	}
	for _, h := range l.HowToRead(sample.Leggings()) {
		out = append(out, flat(h.Text))
	}
	return out
}

var (
	clauseStart = regexp.MustCompile(`(?:^|[.:;,(\[] ?|— )([\pL]+)`)
	infinitive  = regexp.MustCompile(`^([\pL]+)([aei]r)(lo|la|los|las|se)?$`)
	// A stitch takes and makes, a piece measures, a chain counts: these say what is, and tell nobody to do anything.
	says = map[string]bool{"toma": true, "cuenta": true, "cuentan": true, "queda": true, "quedan": true, "mide": true, "miden": true, "muestra": true, "muestran": true, "marca": true, "vale": true, "valen": true, "llevan": true, "lleva": true}
	// The forms of verbs whose stem changes.
	changed = strings.Fields("haz haga hagan cierra cierre comienza comience extiende extienda comprueba compruebe repite repita cuente sigue siga une una ve vea pon ponga di diga tejemos haces")
)

// forbiddenForms are the forms of the verbs of some texts that speak to somebody: of tú, vos, usted, ustedes, vosotros and nosotros.
func forbiddenForms(texts []string) map[string]string {
	out := map[string]string{}
	for _, w := range changed {
		out[w] = w
	}
	for _, s := range texts {
		for _, m := range clauseStart.FindAllStringSubmatch(s, -1) {
			v := infinitive.FindStringSubmatch(strings.ToLower(m[1]))
			if v == nil || len(v[1]) < 2 {
				continue
			}
			endings := "a e á as es amos emos ad an en ás"
			if v[2] != "ar" {
				endings = "e a é í es as emos imos amos ed id en an"
			}
			for _, e := range strings.Fields(endings) {
				if !says[v[1]+e] {
					out[v[1]+e] = v[0]
				}
			}
		}
	}
	return out
}

// toSomebody are the verbs of a text that speak to somebody.
func toSomebody(forms map[string]string, s string) []string {
	var out []string
	for _, m := range clauseStart.FindAllStringSubmatch(s, -1) {
		w := strings.ToLower(m[1])
		if v, ok := forms[w]; ok && !nounsLikeVerbs[w] {
			out = append(out, w+" for "+v)
		}
	}
	return out
}

// Nouns that look like a form of a verb of these texts.
var nounsLikeVerbs = map[string]bool{"una": true, "marca": true, "vista": true, "base": true, "corte": true, "coste": true, "cierre": true, "arriba": true, "luego": true, "largo": true, "forma": true, "uso": true}

// Whatever a page says, it says in infinitives.
func TestSpanishIsInInfinitives(t *testing.T) {
	for _, tag := range []string{"es"} {
		l := language(t, tag)
		var texts []string
		spokenTexts(l, func(s string) { texts = append(texts, s) })
		forms := forbiddenForms(texts)
		if len(texts) < 3000 || len(forms) < 300 {
			t.Errorf("%s: %d texts and %d forms of verbs", tag, len(texts), len(forms))
		}
		for _, s := range texts {
			for _, w := range toSomebody(forms, s) {
				t.Errorf("%s: %s in %q", tag, w, s)
			}
		}
		// Each infinitive that a clause begins with, spoken to somebody instead, is found.
		for _, s := range texts[:400] {
			for _, m := range clauseStart.FindAllStringSubmatchIndex(s, -1) {
				word := s[m[2]:m[3]]
				v := infinitive.FindStringSubmatch(strings.ToLower(word))
				if v == nil || len(v[1]) < 2 || v[3] != "" {
					continue
				}
				ending := map[string]string{"ar": "amos", "er": "emos", "ir": "imos"}[v[2]]
				if spoilt := s[:m[2]] + v[1] + ending + s[m[3]:]; len(toSomebody(forms, spoilt)) == 0 {
					t.Errorf("nothing is found in %q", spoilt)
				}
			}
		}
	}
}

// The article before an abbreviation is that of its first sound as it is read out, letter by letter or as a word.
func TestEnglishArticles(t *testing.T) {
	for _, tag := range []string{"en-US", "en-GB"} {
		l := language(t, tag)
		wrong := regexp.MustCompile(`\b(a|an) ([A-Za-z]+)`)
		seen := 0
		for _, s := range explainedTexts(l) {
			for _, m := range wrong.FindAllStringSubmatch(s, -1) {
				seen++
				// Letters whose name begins with a vowel: an f, an h, an m, an s, an x. Words are read as words.
				vowel := strings.ContainsAny(m[2][:1], "aeioAEIOU")
				if short := abbreviationOf(l, m[2]); short {
					vowel = strings.ContainsAny(strings.ToLower(m[2][:1]), "aefhilmnorsx")
				}
				if (m[1] == "an") != vowel {
					t.Errorf("%s: %q in %q", tag, m[0], s)
				}
			}
		}
		if seen < 8 {
			t.Errorf("%s: only %d articles were seen", tag, seen)
		}
	}
}

// abbreviationOf reports whether a word is an abbreviation that is spelt out, and no word such as rev or spike.
func abbreviationOf(l *Language, word string) bool {
	if word == "rev" || word == "sl" {
		return false
	}
	for _, f := range spokenForms() {
		if short := flat(l.voice.form(f).one); short == word && !strings.ContainsAny(short, " -") {
			return true
		}
	}
	return false
}
