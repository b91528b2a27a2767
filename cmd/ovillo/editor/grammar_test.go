package editor

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/source"
)

var update = flag.Bool("update", false, "write the grammar anew")

const grammarFile = "vscode/ovillo.tmLanguage.json"

// TestGrammar keeps the grammar to the words of the language.
func TestGrammar(t *testing.T) {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	require.NoError(t, enc.Encode(grammar()))
	if *update {
		require.NoError(t, os.WriteFile(grammarFile, b.Bytes(), 0o644))
	}
	have, err := os.ReadFile(grammarFile)
	require.NoError(t, err)
	require.Equal(t, b.String(), string(have), "the grammar is not that of the words: go test ./cmd/ovillo/editor -update")
}

type rule struct {
	Name          string           `json:"name,omitempty"`
	Match         string           `json:"match,omitempty"`
	Begin         string           `json:"begin,omitempty"`
	End           string           `json:"end,omitempty"`
	ContentName   string           `json:"contentName,omitempty"`
	Captures      map[string]scope `json:"captures,omitempty"`
	BeginCaptures map[string]scope `json:"beginCaptures,omitempty"`
	Patterns      []rule           `json:"patterns,omitempty"`
	Include       string           `json:"include,omitempty"`
}

type scope struct {
	Name string `json:"name"`
}

// Parts of expressions, in the dialect that such grammars are read in.
const (
	name   = `[\p{L}_][\p{L}\p{N}\p{M}_]*`
	before = `(?<![\p{L}\p{N}\p{M}_.])`
	behind = `(?![\p{L}\p{N}\p{M}_])`
)

// grammar is the grammar as it goes to the file. Scopes have the usual names of such grammars, which all themes colour.
func grammar() map[string]any {
	line := func(words ...string) string { return `^\s*` + oneOf(words) + behind }
	sets := func(keyword string, words []string, thing string) rule {
		return rule{Match: `^\s*(` + oneOf(words) + `)\s+(` + name + `)`,
			Captures: map[string]scope{"1": {"storage.type." + keyword + ".ovillo"}, "2": {"entity.name." + thing + ".ovillo"}}}
	}
	spanish := func(english string) []string { return []string{english, inSpanish(english)} }
	code := []rule{
		{Name: "comment.line.number-sign.ovillo", Match: `#.*$`},
		{Name: "string.quoted.double.ovillo", Match: `"(?:\\.|[^"\\])*"`},
		{Name: "invalid.illegal.unclosed-string.ovillo", Match: `"(?:\\.|[^"\\])*$`},
		sets("part", append(spanish("part"), spanish("motifs")...), "type"),
		sets("let", spanish("let"), "variable"),
		sets("stitch", append([]string{"stitch pattern", "stitch", "group"}, inSpanish("stitch pattern"), "punto propio", inSpanish("group")), "function"),
		sets("yarn", spanish("yarn"), "type"),
		sets("pattern", append(spanish("pattern"), spanish("chart")...), "type"),
		{Match: before + `(` + oneOf([]string{"as", "como", "mark", "marcar"}) + `)\s+(?!` + oneOf(append(reserved(), "established")) + behind + `)(` + name + `)`,
			Captures: map[string]scope{"1": {"keyword.other.ovillo"}, "2": {"entity.name.label.ovillo"}}},
		{Name: "variable.other.member.ovillo", Match: before + name + `(?:\s*\.\s*[\p{L}\p{N}_]+)+`},
		{Match: before + `(` + oneOf(append(lang.Vocabulary("function"), spanishNames("function")...)) + `)\s*(?=\()`,
			Captures: map[string]scope{"1": {"support.function.value.ovillo"}}},
		{Match: before + `([0-9]+(?:\.[0-9]+)?)(?:\s*(` + units() + `)` + behind + `)?`,
			Captures: map[string]scope{"1": {"constant.numeric.ovillo"}, "2": {"keyword.other.unit.ovillo"}}},
		{Name: "keyword.control.statement.ovillo", Match: line(beginnings()...)},
		{Name: "support.function.stitch.ovillo", Match: before + stitches() + behind},
		{Name: "keyword.other.ovillo", Match: before + oneOf(append(lang.Words(), lang.WordsIn("es")...)) + behind},
		{Name: "variable.other.ovillo", Match: before + name},
		{Name: "keyword.operator.ovillo", Match: `[-+*/=%]`},
		{Name: "punctuation.separator.ovillo", Match: `[,:]`},
		{Name: "punctuation.section.ovillo", Match: `[()\[\]]`},
		{Name: "invalid.illegal.ovillo", Match: `[;{}“”„«»‘’']`},
	}
	prose := rule{
		Begin: `^[ \t\x{a0}]*(?:(` + name + `|[0-9]+)[ \t\x{a0}]*)?(\|)`, End: `$`, ContentName: "markup.other.prose.ovillo",
		BeginCaptures: map[string]scope{"1": {"entity.name.tag.language.ovillo"}, "2": {"punctuation.definition.prose.ovillo"}},
		Patterns: []rule{
			{Match: `(\{)\s*([^{}|]*?)\s*(?:\|[^{}]*)?(\})`, Captures: map[string]scope{
				"1": {"punctuation.section.embedded.begin.ovillo"}, "2": {"variable.other.embedded.ovillo"}, "3": {"punctuation.section.embedded.end.ovillo"}}},
			{Name: "markup.bold.ovillo", Match: `\*\*[^*]+\*\*`},
			{Name: "markup.italic.ovillo", Match: `(?<!\*)\*[^*\s][^*]*\*(?!\*)`},
			{Name: "markup.underline.link.ovillo", Match: `\[[^\]]*\]\([^)]*\)`},
		},
	}
	return map[string]any{
		"name": "ovillo", "scopeName": "source.ovillo", "fileTypes": []string{"ovillo"},
		"patterns":   []rule{{Include: "#prose"}, {Include: "#code"}},
		"repository": map[string]any{"prose": prose, "code": rule{Patterns: code}},
	}
}

// oneOf matches one of some words or turns of phrase, the longest first, with or without the accents that are forgotten in haste.
func oneOf(words []string) string {
	words = slices.Clone(words)
	slices.SortFunc(words, func(a, b string) int {
		if d := len(b) - len(a); d != 0 {
			return d
		}
		return strings.Compare(a, b)
	})
	words = slices.Compact(words)
	for i, w := range words {
		words[i] = strings.NewReplacer("á", "[aá]", "é", "[eé]", "í", "[ií]", "ó", "[oó]", "ú", "[uú]", " ", `\s+`).Replace(regexp.QuoteMeta(w))
	}
	return `(?:` + strings.Join(words, "|") + `)`
}

// reserved are the words that can name nothing.
func reserved() []string {
	return slices.DeleteFunc(slices.Clone(lang.Words()), func(w string) bool { return !lang.Reserved(w) })
}

// spanishTree is a source in Spanish, which knows its words.
func spanishTree(tag string) *lang.File {
	tree, _ := lang.Parse(source.NewFile("", "idioma "+tag+"\n"))
	return tree
}

func inSpanish(english string) string { return spanishTree("es").Coder()(english) }

func spanishNames(vocabulary string) []string {
	return spanishTree("es").Names(vocabulary, lang.Vocabulary(vocabulary))
}

// beginnings are the words that statements begin with, in both languages.
func beginnings() []string {
	seen := map[string]bool{"end": true, inSpanish("end"): true, "idioma": true}
	for _, block := range []lang.Block{lang.InFile, lang.InPattern, lang.InSizes, lang.InGauge, lang.InYarn, lang.InSample, lang.InStitch, lang.InChart,
		lang.InPart, lang.InFinish, lang.InMeasure, lang.InShape, lang.InMotifs, lang.InPatternOf} {
		for _, b := range lang.Beginnings(block) {
			word, _, _ := strings.Cut(b.Words, " ")
			seen[word] = true
			spanish := strings.Fields(inSpanish(b.Right))[0]
			seen[strings.TrimRight(spanish, ":")] = true
		}
	}
	var out []string
	for w := range seen {
		out = append(out, w)
	}
	return out
}

func units() string {
	all := []string{"cm", "mm", "in", "g", "kg", "oz", "m", "yd", "months", "month", "years", "year"}
	return oneOf(append(all, spanishNames("unit")...)) + `|%`
}

var digits = regexp.MustCompile(`[0-9]+`)

// stitches matches the words for stitches in every reading; a number in one may be any.
func stitches() string {
	seen := map[string]bool{}
	for _, uk := range []bool{false, true} {
		for _, w := range compile.StitchWords(uk) {
			seen[w] = true
		}
	}
	for _, tag := range lang.Tongues() {
		for _, w := range spanishTree(tag).Names("stitch", compile.StitchWords(false)) {
			seen[w] = true
		}
	}
	delete(seen, "ch")
	var words []string
	for w := range seen {
		words = append(words, w)
	}
	return digits.ReplaceAllString(oneOf(words), `[0-9]+`)
}
