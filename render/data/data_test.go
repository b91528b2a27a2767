package data

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/plain"
	"ovillo/render/report"
	"ovillo/render/words"
)

// patterns are the checked examples by their file.
func patterns(t *testing.T) map[string]*plan.Pattern {
	t.Helper()
	folder := filepath.Join("..", "..", "examples")
	paths, err := filepath.Glob(filepath.Join(folder, "*.ovillo"))
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	out := map[string]*plan.Pattern{}
	for _, path := range paths {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		tree, _ := lang.Parse(source.NewFile(path, string(data)))
		c := compile.CompileWith(tree, compile.Options{Open: func(name string) ([]byte, error) { return os.ReadFile(filepath.Join(folder, name)) }})
		require.False(t, c.Found.HasErrors(), path)
		out[filepath.Base(path)] = c.Pattern
	}
	return out
}

func both(t *testing.T) []*words.Language {
	t.Helper()
	var out []*words.Language
	for _, tag := range []string{"en", "es"} {
		l, err := words.For(tag)
		require.NoError(t, err)
		out = append(out, l)
	}
	return out
}

func written(t *testing.T, p *plan.Pattern) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, Write(&b, p, Options{Langs: both(t), Program: "1"}))
	return b.Bytes()
}

// validator is a program that is not ours: github.com/santhosh-tekuri/jsonschema, which holds the official test suite of JSON Schema.
func validator(t *testing.T) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("urn:ovillo:schema:pattern:1", doc))
	s, err := c.Compile("urn:ovillo:schema:pattern:1")
	require.NoError(t, err)
	return s
}

// TestSchemaHolds: what is written of every example, in all sizes and in each alone, is as the schema says.
func TestSchemaHolds(t *testing.T) {
	s := validator(t)
	for name, p := range patterns(t) {
		all := []*plan.Pattern{p}
		for z := range p.Sizes {
			all = append(all, p.In(z))
		}
		for _, q := range all {
			data := written(t, q)
			value, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
			require.NoError(t, err)
			require.NoError(t, s.Validate(value), name)
			assert.Equal(t, data, written(t, q), "%s: the bytes differ", name)
		}
	}
}

// TestSchemaRefuses: the schema does not let everything pass. Each field of each object that is written is taken away, given another name
// and given a value of another kind, and every time the schema must see it.
func TestSchemaRefuses(t *testing.T) {
	s := validator(t)
	p := patterns(t)["marisma-leggings.ovillo"]
	fresh := func() any {
		v, err := jsonschema.UnmarshalJSON(bytes.NewReader(written(t, p)))
		require.NoError(t, err)
		return v
	}
	root := fresh()
	require.NoError(t, s.Validate(root))
	spoilt := 0
	seen := map[string]bool{} // by the names that lead there: one of a list is enough
	var walk func(at string, v any)
	walk = func(at string, v any) {
		switch v := v.(type) {
		case map[string]any:
			if seen[at] {
				return
			}
			seen[at] = true
			for key, was := range v {
				free := strings.HasPrefix(key, "en") || key == "es" // texts by language: any of them may be missing
				v[key] = []any{map[string]any{}}
				if s.Validate(root) == nil {
					t.Errorf("%s/%s may be of another kind", at, key)
				}
				delete(v, key)
				if !free && s.Validate(root) == nil {
					t.Errorf("%s/%s may be missing", at, key)
				}
				v["x_"+key] = was
				if s.Validate(root) == nil {
					t.Errorf("%s may have a field x_%s", at, key)
				}
				delete(v, "x_"+key)
				v[key] = was
				spoilt += 3
				walk(at+"/"+key, was)
			}
		case []any:
			for _, x := range v {
				walk(at+"/*", x)
			}
		}
	}
	walk("", root)
	assert.Greater(t, spoilt, 300)
	require.NoError(t, s.Validate(root))
}

// TestOneTruth: the counts of every row in JSON, in the table of counts and in the plan are the same, and so are those that the text gives
// of each step; measures and balls likewise.
func TestOneTruth(t *testing.T) {
	for name, p := range patterns(t) {
		var d document
		require.NoError(t, json.Unmarshal(written(t, p), &d), name)
		compared := 0
		for i, part := range p.Parts {
			tables := report.CountTables(p, "en")[i]
			for z := range p.Sizes {
				require.Len(t, d.Parts[i].Rows[z], len(part.Worked[z]), name)
				for k, f := range part.Worked[z] {
					row := d.Parts[i].Rows[z][k]
					assert.Equal(t, []int{f.Number, f.Stitches, f.Spaces, f.Taken}, []int{row.Number, row.Stitches, row.Spaces, row.Taken}, name)
					for _, line := range tables.Rows {
						if line[0] == strconv.Itoa(f.Number) {
							want := strconv.Itoa(f.Stitches)
							if f.Spaces > 0 {
								want += "+" + strconv.Itoa(f.Spaces)
							}
							assert.Equal(t, want, strings.ReplaceAll(line[2+z], " ", ""), name)
							compared++
						}
					}
				}
			}
		}
		// The text of a size alone has one number in each place: the counts behind the sign are those of the data.
		for z := range p.Sizes {
			one := p.In(z)
			var b bytes.Buffer
			require.NoError(t, plain.Write(&b, one, plain.Options{Lang: both(t)[0]}))
			var alone document
			require.NoError(t, json.Unmarshal(written(t, one), &alone))
			var want []string
			for _, part := range alone.Parts {
				for _, s := range part.Steps {
					var counts []string
					for _, k := range s.Counts {
						if k.Numbers[0] != nil && !(*k.Numbers[0] == 0 && len(s.Counts) > 1) {
							counts = append(counts, strconv.Itoa(*k.Numbers[0]))
						}
					}
					if len(counts) > 0 && s.Kind != "counts" {
						want = append(want, strings.Join(counts, " "))
					}
				}
			}
			var got []string
			_, rows, _ := strings.Cut(b.String(), "\nINSTRUCTIONS\n")
			rows, _, _ = strings.Cut(rows, "\nABBREVIATIONS\n")
			for line := range strings.SplitSeq(rows, "\n") {
				if _, count, ok := strings.Cut(line, " = "); ok {
					var numbers []string
					for item := range strings.SplitSeq(count, ", ") {
						n, _, _ := strings.Cut(item, " ")
						numbers = append(numbers, n)
					}
					got = append(got, strings.Join(numbers, " "))
				}
			}
			assert.Equal(t, want, got, "%s, %s", name, p.Sizes[z].Name)
			compared += len(got)
			for _, m := range one.Measures {
				if m.Values[0] != plan.NoLength {
					assert.Contains(t, b.String(), " "+both(t)[0].Cm(m.Values[0])+" cm (", name)
				}
			}
		}
		for k, m := range p.Measures {
			for z, v := range m.Values {
				if v != plan.NoLength {
					assert.Equal(t, v, plan.Length(d.Measures[k].MM[z]), name)
					compared++
				}
			}
		}
		for k, y := range p.Yarns {
			for z, a := range y.Amount {
				assert.Equal(t, a.Milligrams, int64(d.Yarns[k].Amounts[z].Grams), name)
				if a.Balls > 0 {
					assert.Equal(t, a.Balls, *d.Yarns[k].Amounts[z].Balls, name)
				}
			}
		}
		assert.Greater(t, compared, 10, name)
		assert.Len(t, d.Cautions, len(p.Cautions), name)
	}
}

// UnmarshalJSON reads a length back, for tests.
func (l *mm) UnmarshalJSON(b []byte) error {
	if string(b) == "null" {
		*l = mm(plan.NoLength)
		return nil
	}
	var n thousth
	err := n.UnmarshalJSON(b)
	*l = mm(n)
	return err
}

// UnmarshalJSON reads thousandths back, for tests.
func (n *thousth) UnmarshalJSON(b []byte) error {
	var f float64
	if err := json.Unmarshal(b, &f); err != nil {
		return err
	}
	*n = thousth(f*1000 + 0.5)
	if f < 0 {
		*n = thousth(f*1000 - 0.5)
	}
	return nil
}

func TestThousandths(t *testing.T) {
	for n, want := range map[int64]string{0: "0", 1: "0.001", 10: "0.01", 1500: "1.5", -250: "-0.25", 560000: "560"} {
		assert.Equal(t, want, thousandths(n))
	}
}
