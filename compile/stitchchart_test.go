package compile_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/source"
)

// The charts of testdata/drawn are as recorded: every line with what was made, in the order of making, and into which places.
func TestDrawn(t *testing.T) {
	files, err := filepath.Glob("testdata/drawn/*.ovillo")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, path := range files {
		name := strings.TrimSuffix(filepath.Base(path), ".ovillo")
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			p := compiled(t, string(text))
			var b strings.Builder
			for _, c := range p.Drawn {
				fmt.Fprintf(&b, "chart %s of %s, same %v\n", c.Name, p.Parts[c.Part].Name, c.Same)
				for z, s := range c.Sizes {
					if s != nil && (z == 0 || !c.Same) {
						dumpStitches(&b, s, p.Sizes[z].Name)
					}
				}
			}
			golden(t, filepath.Join("drawn", name+".txt"), []byte(b.String()))
		})
	}
}

func dumpStitches(b *strings.Builder, s *plan.Stitches, size string) {
	fmt.Fprintf(b, "  %s: outward %v, repeat %v, left out %d, cut %v %v\n", size, s.Outward, s.Repeat, s.Left, s.CutRight, s.CutLeft)
	for _, l := range s.Lines {
		fmt.Fprintf(b, "    %d", l.Number)
		for _, say := range []struct {
			on   bool
			word string
		}{{l.Base, "base"}, {l.Wrong, "wrong"}, {l.Closed, "closed"}, {l.Joined, "joined"}, {l.FromLeft, "from left"}} {
			if say.on {
				fmt.Fprintf(b, ", %s", say.word)
			}
		}
		b.WriteString(":")
		for _, w := range l.Stitches {
			b.WriteString(" " + workedAs(w))
		}
		b.WriteString("\n")
	}
}

// workedAs says what a stitch is: dc@1.4 stands in the fourth place (from 0) of line 1.
func workedAs(w plan.Worked) string {
	out := []string{"", "space", "slip", "ring", "end", "begin"}[w.Kind]
	if w.Kind == plan.WorkedStitch {
		out = string(w.Form.ID)
		switch w.Form.Post {
		case stitch.FrontPost:
			out = "fp" + out
		case stitch.BackPost:
			out = "bp" + out
		}
		if w.Form.Together > 1 {
			out += fmt.Sprint(w.Form.Together, "tog")
		}
		if w.Form.Of > 0 {
			out += fmt.Sprint(":", w.Form.Group, ":", w.Form.Of)
		}
	}
	if w.Begin {
		out += "*"
	}
	if w.Chains > 0 {
		out += fmt.Sprint(w.Chains)
	}
	for i, f := range w.Feet {
		out += map[bool]string{true: "@", false: "+"}[i == 0] + fmt.Sprintf("%d.%d", f.Line, f.At)
		switch f.Into {
		case plan.FootChain:
			out += fmt.Sprintf("/%d", f.Chain)
		case plan.FootGap:
			out += "g"
		case plan.FootBelow:
			out += "b"
		case plan.FootSide:
			out += "s"
		}
	}
	if w.Behind {
		out += "<"
	}
	for range w.Rides {
		out += "^"
	}
	return out
}

// Whatever part of whatever example or case is drawn: its lines hold just what the rows made, as they are counted for the text, and
// every foot is a place of a line below, or of the line itself.
func TestDrawnIsWhatWasWorked(t *testing.T) {
	rows, stitches := 0, 0
	for name, text := range cleanSources(t) {
		before := compiled(t, text)
		for i, part := range before.Parts {
			if part.Grid != nil {
				continue
			}
			word := map[bool]string{true: "gráfico todo_dibujado de ", false: "chart all_drawn of "}[strings.HasPrefix(text, "idioma es")]
			end := map[bool]string{true: "fin", false: "end"}[strings.HasPrefix(text, "idioma es")]
			whole, found := compile.Compile(parsed(text + "\n" + word + part.Name + "\n" + end + "\n"))
			p := whole
			if found.HasErrors() {
				require.Contains(t, fmt.Sprint(found), "OV449", name) // too large to be drawn
				continue
			}
			last := len(p.Drawn) - 1
			if last < 0 || p.Drawn[last].Name != map[bool]string{true: "todo_dibujado", false: "all_drawn"}[strings.HasPrefix(text, "idioma es")] {
				require.Empty(t, before.Parts[i].Worked[0], "%s: %s is not drawn", name, part.Name)
				continue
			}
			for z, s := range p.Drawn[last].Sizes {
				if s == nil {
					continue
				}
				facts := map[int]plan.RowFact{}
				for _, f := range p.Parts[i].Worked[z] {
					facts[f.Number] = f
				}
				require.Equal(t, len(facts), len(s.Lines)-1, "%s, %s", name, part.Name)
				for k, l := range s.Lines {
					for _, w := range l.Stitches {
						for _, f := range w.Feet {
							require.True(t, f.Line <= k && f.Line >= 0 && f.At >= 0 && f.At < len(s.Lines[f.Line].Stitches), "%s: a foot is nowhere", name)
						}
					}
					if k == 0 {
						require.True(t, l.Base)
						continue
					}
					rows++
					stitches += compareLine(t, fmt.Sprintf("%s, %s, row %d", name, part.Name, l.Number), l, facts[l.Number])
				}
			}
		}
	}
	require.Greater(t, rows, 1000)
	require.Greater(t, stitches, 50_000)
}

func parsed(text string) *lang.File {
	f, _ := lang.Parse(source.NewFile("drawn", text))
	return f
}

// compareLine compares a line with what is counted of its row.
func compareLine(t *testing.T, at string, l plan.Line, f plan.RowFact) int {
	t.Helper()
	forms, spaces, begins := map[stitch.Form]int{}, map[int]int{}, 0
	for _, w := range l.Stitches {
		switch w.Kind {
		case plan.WorkedStitch:
			forms[w.Form]++
		case plan.WorkedSpace:
			spaces[w.Chains]++
		case plan.WorkedBegin:
			begins++
		}
		if w.Begin {
			begins++
		}
	}
	require.Equal(t, f.ByForm.Map(), forms, at)
	if len(f.BySpace) > 0 || len(spaces) > 0 {
		require.Equal(t, f.BySpace.Map(), spaces, at)
	}
	require.LessOrEqual(t, begins, 1, at)
	require.Equal(t, f.Closed, l.Closed, at)
	require.Equal(t, f.Wrong, l.Wrong, at)
	order := l.RightToLeft()
	seen := map[int]bool{}
	for _, i := range order {
		seen[i] = true
	}
	require.Len(t, seen, len(l.Stitches), at)
	return len(l.Stitches)
}
