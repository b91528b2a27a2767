package lsp

import (
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang"
	"ovillo/lang/source"
)

// offered is what is offered at the sign ‸ of a text, which is not part of it.
func offered(tb testing.TB, text string) (labels []string, items []CompletionItem) {
	i := strings.Index(text, "‸")
	text = strings.Replace(text, "‸", "", 1)
	c := opened(tb, text, Options{})
	var l CompletionList
	c.ask("textDocument/completion", where(newText(text, utf16Encoding).position(i)), &l)
	for _, x := range l.Items {
		labels = append(labels, x.Label)
	}
	return labels, l.Items
}

func TestCompletion(t *testing.T) {
	base := example(t, "marisma-leggings")
	in := func(old, now string) string {
		require.Contains(t, base, old)
		return strings.Replace(base, old, now, 1)
	}
	for _, x := range []struct {
		text     string
		has, not string // words, parted by blanks
	}{
		{in("  fasten off\nend\n\npart body", "  ‸\n  fasten off\nend\n\npart body"), "round rounds fasten repeat end cuff", "pattern dc each"},
		{in("round: dc between each", "round: ‸"), "dc fphdc hdc2tog inc ch skip leg", "around each"},
		{in("round: dc between each", "round: dc ‸"), "between in to below through together", "m1 cuff"},
		{in("round: dc between each", "round: dc in ‸"), "next each first last ring waistband", "crossing cm"},
		{in("dc to m1 as back_a", "dc to ‸"), "m1 m2 end marker", "cm sand"},
		{in("4 dc in body.right_gap", "4 dc in body.‸"), "right_gap left_gap front m1 foundation", "dc sand cuff"},
		{in("round first:", "‸ first:"), "round", "dc"},
		{in("level   easy", "level ‸"), "basic easy intermediate complex", "cm trousers"},
		{in("kind    trousers", "kind tro‸"), "trousers hat", "easy"},
		{in("  yarn kelp\n  hook 3.25 mm\n  in joined", "  yarn ‸\n  hook 3.25 mm\n  in joined"), "sand kelp", "dc body"},
		{in("in joined rounds\n  chain", "in ‸\n  chain"), "rows joined spiral", "dc"},
		{in("stitches(fit.hips + 3 cm", "stitches(fit.‸"), "waist hips inseam", "sand"},
		{in("stitches(fit.hips + 3 cm, dc", "stitches(fit.hips + 3 ‸"), "cm mm", ""},
		{in("(around_hips - 2 * bridge) / 2", "‸"), "around_hips bridge stitches rows fit", "dc"},
		{in("like right_leg", "like ‸"), "right_leg body waistband", "sand dc"},
		{in("base dc", "base ‸"), "dc sc hdc", "sand"},
		{in("cord with kelp", "cord with ‸"), "kelp sand", "dc"},
		{in(`shown "2 y"`, `shown "‸"`), "1", ""},
		{in("en | Wash by hand", "en | Use {‸ by hand"), "around_hips leg waistband", "dc"},
		{in("en | Wash by hand", "en | Wash ‸ by hand"), "", "around_hips leg"},
		{in("# 1 cm of", "# 1 ‸cm of"), "", "leg cm"},
		{"pattern x\n  terms us\nend\n‸", "sizes part yarn gauge", "title"},
		{"idioma es\npatrón x\n  tipo ‸", "pantalón gorro", "hat"},
		{"idioma es\npieza a\n  en ‸", "hileras", "joined rows"},
		{"idioma es\npieza a\n  ‸", "vuelta hilera fin", "round row end"},
		{"idioma es\npieza a\n  vuelta: ‸", "pa pb cad", "dc sc ch"},
	} {
		got, _ := offered(t, x.text)
		shown := x.text[max(0, strings.Index(x.text, "‸")-30):]
		shown = shown[:min(40, len(shown))]
		for _, w := range strings.Fields(x.has) {
			if w == "1" {
				w = "1 y"
			}
			require.Contains(t, got, w, shown)
		}
		for _, w := range strings.Fields(x.not) {
			require.NotContains(t, got, w, shown)
		}
	}
	_, items := offered(t, in("round: dc between each", "round: fph‸"))
	i := slices.IndexFunc(items, func(c CompletionItem) bool { return c.Label == "fphdc" })
	require.Contains(t, items[i].Detail, "front post half double crochet")
	require.Contains(t, items[i].Detail, "punto medio alto en relieve por delante")
	require.Equal(t, 3, items[i].TextEdit.Range.End.Character-items[i].TextEdit.Range.Start.Character)
}

// TestWrittenAgain takes words out of the sources, one at a time: what stood there is among what is offered. Names that are new where they
// stand, and what a source says in words of its own, are left out.
func TestWrittenAgain(t *testing.T) {
	asked, missed := 0, map[string]int{}
	for name, text := range sources(t) {
		tree, _ := lang.Parse(source.NewFile("", text))
		x := newIndex(tree)
		n := 0
		lang.WalkStatements(tree.Body, func(s *lang.Statement) bool {
			for _, tok := range lang.Tokens(text[s.Head.Start:s.Head.End]) {
				at := int(s.Head.Start + tok.Span.Start)
				word := tok.Text(text[s.Head.Start:s.Head.End])
				if n++; tok.Kind != lang.Word || n%17 != 0 {
					continue
				}
				if u := x.at(at); u != nil && u.sets || word == "the" || tree.Coder() != nil {
					continue
				}
				asked++
				labels := labelsAt(t, text[:at]+text[at+len(word):], at)
				if !slices.ContainsFunc(labels, func(l string) bool { return l == word || strings.HasPrefix(l, word+" ") }) {
					missed[word+" in "+name+": "+oneLine(text[s.Head.Start:s.Head.End])]++
				}
			}
			return true
		})
	}
	for m := range missed {
		t.Log(m)
	}
	t.Log(asked, "asked,", len(missed), "missed")
	require.Greater(t, asked, 250)
	require.Less(t, len(missed)*20, asked, "one in twenty may be missed: stitches of other numbers, codes of languages")
}

// labelsAt is what is offered at a byte of a text, without a session and without checking it.
func labelsAt(tb testing.TB, text string, at int) []string {
	d := &document{server: newServer(io.Discard, Options{}), uri: testURI}
	q := &query{server: d.server, snapshot: d.snapshot(1, newText(text, utf16Encoding))}
	q.params.Position = q.text.position(at)
	list, wrong := q.complete()
	require.Nil(tb, wrong)
	var labels []string
	for _, x := range list.(CompletionList).Items {
		labels = append(labels, x.Label)
	}
	return labels
}

func TestQuickFix(t *testing.T) {
	text := strings.Replace(example(t, "marisma-leggings"), "hook 3.75 mm", "hook 3,75 mm", 1)
	c := opened(t, text, Options{})
	var actions []CodeAction
	line := at(text, "hook 3,75", 1).Line
	c.ask("textDocument/codeAction", map[string]any{"range": Range{Position{line, 0}, Position{line, 20}}, "context": map[string]any{"diagnostics": []any{}}}, &actions)
	require.Len(t, actions, 1)
	require.Equal(t, "write 3.75 in place of 3,75", actions[0].Title)
	require.Equal(t, example(t, "marisma-leggings"), applied(t, text, actions[0].Edit.Changes[testURI]))
	c.ask("textDocument/codeAction", map[string]any{"range": Range{}, "context": map[string]any{"diagnostics": []any{}}}, &actions)
	require.Empty(t, actions)
	c.ask("textDocument/codeAction", map[string]any{"range": Range{Position{line, 0}, Position{line, 20}}, "context": map[string]any{"only": []string{"source.organizeImports"}}}, &actions)
	require.Empty(t, actions)
}

func TestSymbols(t *testing.T) {
	c := opened(t, example(t, "marisma-leggings"), Options{})
	var all []DocumentSymbol
	c.ask("textDocument/documentSymbol", nil, &all)
	var names []string
	var check func(list []DocumentSymbol, in *Range)
	check = func(list []DocumentSymbol, in *Range) {
		for _, s := range list {
			names = append(names, s.Name)
			// As the standard asks: what is selected lies within the range, and children lie within their parent.
			require.True(t, inside(s.SelectionRange, s.Range), s.Name)
			if in != nil {
				require.True(t, inside(s.Range, *in), s.Name)
			}
			check(s.Children, &s.Range)
		}
	}
	check(all, nil)
	for _, n := range []string{"marisma_leggings", "sand", "around_hips", "waistband", "divide", "first", "taper", "left_leg", "hips", `sizes "1 y", "2 y", "3 y", "4 y"`} {
		require.Contains(t, names, n)
	}
}

func inside(a, b Range) bool {
	before := func(p, q Position) bool { return p.Line < q.Line || p.Line == q.Line && p.Character <= q.Character }
	return before(b.Start, a.Start) && before(a.End, b.End)
}
