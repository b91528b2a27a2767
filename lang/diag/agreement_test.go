package diag

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// This file reads every Spanish message as it prints for its examples, and every explanation, for agreement: article, number and
// adjective beside a noun, contractions, y and e, o and u, and the voice, which speaks in infinitives and to nobody.

// termGenders are the genders of the words a message can ask for; f: feminine. Words that are no nouns are left out.
var termGenders = map[string]string{
	"ball": "m", "bound pattern": "m", "button": "m", "cell": "f", "centimetre": "m", "chain": "f", "chart": "m", "corner": "f", "count": "f", "decrease": "f", "edge": "m", "elastic": "f",
	"needle": "f", "safety pin": "m", "gap": "m", "gauge": "f", "group": "m", "gram": "m", "hook": "m", "grouped instruction": "f", "mirrored line": "f", "drawn stitch": "m", "charted row": "f", "inch": "f", "increase": "m", "label": "f",
	"language": "m", "length": "f", "line to work": "f", "loop": "f", "marker": "m", "measure": "f", "month": "m", "narrower": "", "notion": "m", "number": "m", "one or more": "", "own stitch": "m", "part": "f",
	"percentage": "m", "place": "m", "repeat": "f", "ring": "m", "round": "f", "row": "f", "row end": "m", "section": "f", "size": "f",
	"slip stitch": "m", "space": "m", "step": "m", "stitch": "m", "text": "m", "time": "f", "value": "m", "weight": "m", "wider": "", "yarn": "m",
	"language en": "m", "language es": "m", "markdown table": "f", "markdown line": "f", "markdown box": "f", "markdown code": "m", "markdown footnote": "f",
	"country es": "", "country es-AR": "", "country es-CL": "", "country es-EC": "", "country es-ES": "", "country es-MX": "",
	"markdown html": "f", "markdown nested": "f", "markdown quotation": "f", "markdown strikethrough": "f", "markdown image": "f", "markdown address": "m",
}

// moreNouns are nouns of the messages that are no terms.
var moreNouns = map[string]string{
	"m": "texto|textos nombre|nombres patrón|patrones código|códigos archivo|archivos año|años mensaje|mensajes signo|signos paréntesis carácter|caracteres " +
		"orden diagrama|diagramas motivo|motivos color|colores lado|lados cordón|cordones ojal|ojales cuadro|cuadros error|errores título|títulos " +
		"diseño|diseños tejido|tejidos ancho aviso|avisos ejemplo|ejemplos resultado|resultados grado|grados",
	"f": "línea|líneas palabra|palabras cifra|cifras lista|listas tabla|tablas pieza|piezas columna|columnas letra|letras fecha|fechas cantidad|cantidades " +
		"regla|reglas fuente|fuentes abreviatura|abreviaturas instrucción|instrucciones casilla|casillas pulgada|pulgadas página|páginas muestra|muestras " +
		"edición|ediciones coma|comas comilla|comillas parte|partes frase|frases unidad|unidades costura|costuras nota|notas orilla",
}

type beside struct{ g, n string }

var articlesEs = map[string]beside{
	"el": {"m", "s"}, "la": {"f", "s"}, "los": {"m", "p"}, "las": {"f", "p"}, "del": {"m", "s"}, "al": {"m", "s"}, "un": {"m", "s"}, "una": {"f", "s"},
	"este": {"m", "s"}, "esta": {"f", "s"}, "estos": {"m", "p"}, "estas": {"f", "p"}, "ese": {"m", "s"}, "esa": {"f", "s"}, "esos": {"m", "p"}, "esas": {"f", "p"},
	"otro": {"m", "s"}, "otra": {"f", "s"}, "otros": {"m", "p"}, "otras": {"f", "p"}, "ningún": {"m", "s"}, "ninguna": {"f", "s"}, "algún": {"m", "s"}, "alguna": {"f", "s"},
	"unos": {"m", "p"}, "unas": {"f", "p"}, "todos": {"m", "p"}, "todas": {"f", "p"},
	"primer": {"m", "s"}, "primera": {"f", "s"}, "último": {"m", "s"}, "última": {"f", "s"}, "últimos": {"m", "p"}, "últimas": {"f", "p"},
	"mismo": {"m", "s"}, "misma": {"f", "s"}, "mismos": {"m", "p"}, "mismas": {"f", "p"}, "siguiente": {"", "s"}, "siguientes": {"", "p"},
}

// nounsEs are the nouns with their gender and number.
func nounsEs(t *testing.T) map[string]beside {
	out := map[string]beside{}
	add := func(word, g, n string) {
		if was, ok := out[word]; ok && was.n != n {
			n = ""
		}
		out[word] = beside{g, n}
	}
	for key, pair := range terms {
		g, ok := termGenders[key]
		if !ok {
			t.Errorf("the gender of %q (%s) is not listed", key, pair.es.one)
		}
		if g == "" {
			continue
		}
		add(strings.Fields(pair.es.one)[0], g, "s")
		add(strings.Fields(pair.es.other)[0], g, "p")
	}
	for g, list := range moreNouns {
		for _, f := range strings.Fields(list) {
			one, more, several := strings.Cut(f, "|")
			if add(one, g, "s"); several {
				add(more, g, "p")
			}
		}
	}
	add("paréntesis", "m", "p")
	add("mes", "m", "s")
	return out
}

var (
	quotedEs = regexp.MustCompile("`[^`]*`|«[^»]*»|\"[^\"]*\"")
	wordEs   = regexp.MustCompile(`[\pL]+|[0-9]+(?:[.,][0-9]+)?|[^\s]`)
	slipsEs  = map[string]*regexp.Regexp{
		"contraction":     regexp.MustCompile(`(?i)(^|[^\pL])(de|a) el [\pL]`),
		"y before i":      regexp.MustCompile(`(^|[^\pL])y [«"“]?h?[ií][^ea]`),
		"e before others": regexp.MustCompile(`[\pL] e [«"“]?([^hií«"“` + "`" + `]|hi[ea])`),
		"o before o":      regexp.MustCompile(`[\pL0-9] o [«"“]?(h?[oó][\pL]|8|11([^0-9]|$))`),
		"u before others": regexp.MustCompile(`[\pL0-9] u [«"“]?([^hoó8«"“1` + "`" + `]|1[^1])`),
		"to somebody": regexp.MustCompile(`(?i)(^|[.:;(] ?)(escribe|escriba|pon|ponga|quita|quite|añade|añada|cambia|cambie|usa|use|utiliza|utilice|revisa|revise|comprueba|compruebe|mira|mire|` +
			`busca|busque|cuenta el|cuente|teje|tejemos|repite|repita|elige|elija|borra|borre|corrige|corrija|di|diga)([^\pL]|$)|(^|[^\pL])(usted|ustedes|vosotros|nosotros|nuestr[oa]s?|tu|tus|tú)([^\pL]|$)`),
	}
)

// elliptical are words whose noun is not said beside them, or that only look like an article; and the marks, which say what the words
// above them do.
var elliptical = regexp.MustCompile(`la otra vueltas|no es la número|la referencia las|por sí misma|la del patrón|^(busca|teje) `)

// agreementFaults are what does not agree in a Spanish text. What is quoted, a name or a piece of a source, is taken for a word that
// agrees with anything.
func agreementFaults(nouns map[string]beside, text string) []string {
	var out []string
	text = elliptical.ReplaceAllString(text, "§ ")
	for why, re := range slipsEs {
		if hit := re.FindString(text); hit != "" {
			out = append(out, why+": "+hit)
		}
	}
	text = quotedEs.ReplaceAllString(text, "§")
	words := wordEs.FindAllString(text, -1)
	for i, w := range words {
		noun, ok := nouns[strings.ToLower(w)]
		if !ok {
			continue
		}
		n := noun.n
		for k := i - 1; k >= 0; k-- {
			b, isWord := articlesEs[strings.ToLower(words[k])]
			digit := words[k][0] >= '0' && words[k][0] <= '9'
			if !isWord && !digit {
				break
			}
			if digit {
				// A list of sizes ends in a bracket, so that a figure beside a noun is one number.
				if want := map[bool]string{true: "s", false: "p"}[words[k] == "1"]; n != "" && n != want && (k == 0 || !strings.Contains(".,:", words[k-1])) {
					out = append(out, "number: "+strings.Join(words[k:i+1], " "))
				}
				continue
			}
			if b.g != "" && noun.g != b.g || n != "" && b.n != n {
				out = append(out, "beside: "+strings.Join(words[k:i+1], " "))
			}
		}
	}
	return out
}

// printedEs are the Spanish texts of the messages: as they print for their examples, and the explanations.
func printedEs(t *testing.T) []string {
	var out []string
	for _, dir := range []string{"../../compile/testdata/messages"} {
		paths, err := filepath.Glob(dir + "/*.es")
		if err != nil || len(paths) == 0 {
			t.Fatalf("no printed messages in %s: %v", dir, err)
		}
		for _, path := range paths {
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			for _, l := range strings.Split(string(text), "\n") {
				if _, after, ok := strings.Cut(l, "^ "); ok && strings.Contains(l, "|") {
					out = append(out, after) // what a mark says
					continue
				}
				if head := regexp.MustCompile(`^(error|aviso|nota)\[OV[0-9]+\]: `); head.MatchString(l) {
					out = append(out, head.ReplaceAllString(l, ""))
				} else if help := regexp.MustCompile(`^ *= (ayuda|nota|[\pL]+): `); help.MatchString(l) {
					out = append(out, help.ReplaceAllString(l, ""))
				}
			}
		}
	}
	for _, e := range All() {
		out = append(out, e.Es.Explain)
	}
	for i := range out { // code of a source in English, which is no Spanish
		out[i] = useCode.ReplaceAllString(out[i], "")
	}
	return out
}

var useCode = regexp.MustCompile(`use "[^"]*"`)

func TestSpanishMessagesAgree(t *testing.T) {
	nouns := nounsEs(t)
	texts := printedEs(t)
	if len(texts) < 600 {
		t.Errorf("only %d texts were read", len(texts))
	}
	for _, text := range texts {
		for _, f := range agreementFaults(nouns, text) {
			t.Errorf("%s in %q", f, text)
		}
	}
}

// An article, a number or a contraction that is spoilt beside a noun must be found in each message in which it can be spoilt.
func TestSpoiltMessagesAreFound(t *testing.T) {
	nouns := nounsEs(t)
	spoil := map[string]string{"el": "la", "la": "el", "los": "las", "las": "los", "del": "de el", "al": "a el", "una": "un", "un": "una", "esta": "este", "este": "esta", "2": "1", "3": "1", "1": "4"}
	made := 0
	for _, text := range printedEs(t) {
		clean := quotedEs.ReplaceAllString(text, "§")
		words := strings.Fields(clean)
		for i := 0; i+1 < len(words); i++ {
			wrong, can := spoil[words[i]]
			noun, ok := nouns[strings.Trim(words[i+1], ".,;:()")]
			if !can || !ok || noun.n == "" || elliptical.MatchString(strings.Join(words[max(0, i-2):i+2], " ")) {
				continue
			}
			if i > 0 && words[i] >= "1" && words[i] <= "9" && strings.HasSuffix(words[i-1], ":") {
				continue // the number of a line
			}
			right := words[i]
			words[i] = wrong
			if made++; len(agreementFaults(nouns, strings.Join(words, " "))) == 0 {
				t.Errorf("nothing is found wrong with %q for %q in %q", wrong, right, strings.Join(words, " "))
			}
			words[i] = right
		}
	}
	if made < 300 {
		t.Errorf("only %d words could be spoilt", made)
	}
}
