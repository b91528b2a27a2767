package mutant

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang"
	"ovillo/lang/source"
)

// example is a source that is changed.
type example struct {
	name   string // from the folder of the examples
	text   string
	open   func(name string) ([]byte, error)
	tokens []lang.Token // those that say something
	rows   []source.Span
	base   desk.Checked
}

const folder = "../../../examples"

// readExamples reads every example, those of the book and what they share among them.
func readExamples(t testing.TB) []*example {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(folder, "*.ovillo"))
	more, _ := filepath.Glob(filepath.Join(folder, "*", "*.ovillo"))
	if paths = append(paths, more...); err != nil || len(paths) < 10 {
		t.Fatal("no examples", err)
	}
	var out []*example
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		name, _ := filepath.Rel(folder, path)
		e := &example{name: filepath.ToSlash(name), text: string(data), open: remembered(desk.Folder(filepath.Dir(path)))}
		for _, k := range lang.Tokens(e.text) {
			if k.Kind != lang.Blank && k.Kind != lang.LineEnd && k.Kind != lang.Comment {
				e.tokens = append(e.tokens, k)
			}
		}
		e.base = e.check(e.text)
		lang.WalkStatements(e.base.Tree.Body, func(s *lang.Statement) bool {
			switch s.Node.(type) {
			case *lang.Row, *lang.ShapeRow, *lang.ShapeAt, *lang.Repeat, *lang.Group:
				e.rows = append(e.rows, s.Head)
			}
			return true
		})
		out = append(out, e)
	}
	return out
}

// remembered reads each file once.
func remembered(open func(string) ([]byte, error)) func(string) ([]byte, error) {
	kept := map[string][]byte{}
	return func(name string) ([]byte, error) {
		if data, ok := kept[name]; ok {
			return data, nil
		}
		data, err := open(name)
		if err == nil {
			kept[name] = data
		}
		return data, err
	}
}

func (e *example) check(text string) desk.Checked {
	return desk.Check(desk.Source{File: source.NewFile(filepath.Base(e.name), text), Open: e.open})
}

// inRow reports whether a place lies in what is worked: a row, a repeat of rows, or a group of stitches.
func (e *example) inRow(at int32) bool {
	return slices.ContainsFunc(e.rows, func(s source.Span) bool { return s.Start <= at && at < s.End })
}

// mutant is an example with one edit.
type mutant struct {
	of   *example
	text string
	kind string // of the edit
	what string // it was, and what it became, for people
	at   int32  // where it begins, behind blanks
}

// A slip takes an example and says what became of it; ok is false where the edit would change nothing.
type slip struct {
	kind string
	make func(e *example, r *rand.Rand) (from, to int32, text string, ok bool)
}

// words of the language that stand in examples, and stitches, which one may take for one another.
var (
	stitches = strings.Fields("sc hdc dc tr sl inc dec sc2tog hdc2tog dc2tog fpdc bpdc fphdc bphdc pb mp pa pma aum dism")
	numbers  = []int{-10, -1, -1, 1, 1, 10}
)

func anyToken(e *example, r *rand.Rand, fits func(string, lang.Token) bool) (lang.Token, bool) {
	for range 60 {
		k := e.tokens[r.IntN(len(e.tokens))]
		if fits(k.Text(e.text), k) {
			return k, true
		}
	}
	return lang.Token{}, false
}

func whatever(string, lang.Token) bool { return true }

// line is where the line of a place begins and ends, its line end included.
func (e *example) line(at int32) (from, to int32) {
	from = int32(strings.LastIndexByte(e.text[:at], '\n') + 1)
	if n := strings.IndexByte(e.text[at:], '\n'); n >= 0 {
		return from, at + int32(n) + 1
	}
	return from, int32(len(e.text))
}

// slips are the edits that are made, each as often as the others.
var slips = []slip{
	{"a word or sign left out", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, whatever)
		return k.Span.Start, k.Span.End, "", ok
	}},
	{"a word or sign twice", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, whatever)
		return k.Span.End, k.Span.End, " " + k.Text(e.text), ok
	}},
	{"two neighbours swapped", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		i := r.IntN(len(e.tokens) - 1)
		a, b := e.tokens[i], e.tokens[i+1]
		return a.Span.Start, b.Span.End, b.Text(e.text) + e.text[a.Span.End:b.Span.Start] + a.Text(e.text), a.Text(e.text) != b.Text(e.text)
	}},
	{"a line left out", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, whatever)
		from, to := e.line(k.Span.Start)
		return from, to, "", ok
	}},
	{"a line twice", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, whatever)
		from, to := e.line(k.Span.Start)
		return to, to, e.text[from:to], ok
	}},
	{"two lines swapped", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, whatever)
		from, mid := e.line(k.Span.Start)
		if !ok || int(mid) >= len(e.text) {
			return 0, 0, "", false
		}
		_, to := e.line(mid)
		return from, to, e.text[mid:to] + e.text[from:mid], e.text[mid:to] != e.text[from:mid]
	}},
	{"another number", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, func(_ string, k lang.Token) bool { return k.Kind == lang.Number })
		n, err := strconv.Atoi(k.Text(e.text))
		if n += numbers[r.IntN(len(numbers))]; n < 0 || err != nil {
			return 0, 0, "", false
		}
		return k.Span.Start, k.Span.End, strconv.Itoa(n), ok
	}},
	{"another number in a row", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, func(_ string, k lang.Token) bool { return k.Kind == lang.Number && e.inRow(k.Span.Start) })
		n, err := strconv.Atoi(k.Text(e.text))
		if n += numbers[r.IntN(len(numbers))]; n < 0 || err != nil {
			return 0, 0, "", false
		}
		return k.Span.Start, k.Span.End, strconv.Itoa(n), ok
	}},
	{"another word", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, func(_ string, k lang.Token) bool { return k.Kind == lang.Word })
		o, also := anyToken(e, r, func(s string, o lang.Token) bool { return o.Kind == lang.Word && s != k.Text(e.text) })
		return k.Span.Start, k.Span.End, o.Text(e.text), ok && also
	}},
	{"another stitch", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, func(s string, _ lang.Token) bool { return slices.Contains(stitches, s) })
		s := stitches[r.IntN(len(stitches))]
		return k.Span.Start, k.Span.End, s, ok && s != k.Text(e.text)
	}},
	{"a bracket left out", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, func(s string, _ lang.Token) bool { return len(s) == 1 && strings.Contains("()[]", s) })
		return k.Span.Start, k.Span.End, "", ok
	}},
	{"a letter left out", func(e *example, r *rand.Rand) (int32, int32, string, bool) {
		k, ok := anyToken(e, r, func(_ string, k lang.Token) bool { return k.Kind == lang.Word && k.Span.End-k.Span.Start > 2 })
		i := k.Span.Start + 1 + int32(r.IntN(int(max(1, k.Span.End-k.Span.Start-1))))
		return i, i + 1, "", ok && e.text[i] < 0x80
	}},
}

// mutants are n examples with one edit each, the same ones every time.
func mutants(examples []*example, n int) []*mutant {
	random := rand.New(rand.NewPCG(2026, 11))
	var out []*mutant
	for len(out) < n {
		e, s := examples[random.IntN(len(examples))], slips[len(out)%len(slips)]
		from, to, text, ok := s.make(e, random)
		if !ok || e.text[from:to] == text {
			continue
		}
		m := &mutant{of: e, text: e.text[:from] + text + e.text[to:], kind: s.kind, at: from}
		if twice := from == to; twice {
			m.at, _ = e.line(max(from-1, 0))
		}
		for int(m.at) < len(e.text)-1 && e.text[m.at] == ' ' {
			m.at++
		}
		line, _ := e.line(from)
		end := strings.IndexByte(e.text[line:]+"\n", '\n')
		m.what = fmt.Sprintf("%s:%d: %s: %q became %q in: %s", e.name, 1+strings.Count(e.text[:from], "\n"), s.kind, e.text[from:to], text,
			strings.TrimSpace(e.text[line:][:end]))
		out = append(out, m)
	}
	return out
}
