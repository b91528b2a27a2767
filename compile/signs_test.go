package compile_test

import (
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// unprinted are the texts of the language that are not printed as they stand, by the statement they stand in, and why.
var unprinted = map[string]string{
	"Photo.File":       "the name of a file",
	"Use.File":         "the name of a file",
	"BookPattern.File": "the name of a file",
	"Photo.Alt":        "heard, not seen",
	"Photo.Size":       "a size by its name, which is looked at where the sizes are named",
	"Edition.Date":     "digits",
	"Legend.Mark":      "drawn as a yarn",
	"Shown.Size":       "a size by its name",
	"Sample.Size":      "a size by its name",
	"Only.Sizes":       "a size by its name",
	"Body.Rows":        "a row of a published table by its name",
}

// textsOf calls f with every text of a file: the statement and the field it stands in, and its place.
func textsOf(tree *lang.File, f func(what string, at source.Span)) {
	lang.WalkStatements(tree.Body, func(s *lang.Statement) bool {
		if s.Node == nil {
			return true
		}
		head := reflect.TypeOf(s.Node).Elem().Name()
		if p, ok := s.Node.(*lang.Prose); ok {
			head = p.Word
		}
		for _, l := range s.Lines {
			if _, chart := s.Node.(*lang.Chart); !chart && strings.TrimSpace(l.Text) != "" {
				f(head+" |", l.Span)
			}
		}
		in := ""
		lang.Inspect(s.Node, func(n lang.Node) bool {
			v := reflect.ValueOf(n).Elem()
			for i := range v.NumField() {
				name := v.Type().Field(i).Name
				each := func(x any) {
					switch x := x.(type) {
					case lang.Str:
						field := name
						if in != "" {
							field = in
						}
						f(head+"."+field, x.Span())
					case *lang.Str:
						if x != nil {
							f(head+"."+name, x.Span())
						}
					}
				}
				switch field := v.Field(i).Interface().(type) {
				case []*lang.Str:
					for _, x := range field {
						each(x)
					}
				case []*lang.Bi:
					if in = ""; len(field) > 0 {
						in = name
					}
				default:
					each(field)
				}
			}
			return true
		})
		return true
	})
}

// Every text of the language that is printed is looked at: a snowman in it is an error that names the sign, its code point and
// its place. It is put into the first text of each kind of every source there is.
func TestEveryTextIsLookedAt(t *testing.T) {
	met, put := map[string]bool{}, map[string]bool{}
	tried := 0
	sources := append(patterns(t), "../lang/testdata/forms.ovillo", "testdata/signs.ovillo")
	for _, path := range sources {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		tree, list := lang.Parse(source.NewFile(filepath.Base(path), string(data)))
		forms := strings.HasSuffix(path, "forms.ovillo")
		require.True(t, forms || !list.HasErrors(), path)
		done := map[string]int{}
		textsOf(tree, func(what string, at source.Span) {
			met[what] = true
			if unprinted[what] != "" || done[what] == 2 || forms { // one in each language
				return
			}
			done[what]++
			put[what] = true
			tried++
			end := at.End
			if strings.HasSuffix(string(data[at.Start:end]), `"`) {
				end--
			}
			with := string(data[:end]) + "☃" + string(data[end:])
			var signs diag.List
			file, list := lang.Parse(source.NewFile(filepath.Base(path), with))
			require.False(t, list.HasErrors(), "%s: %s", path, what)
			for _, d := range compile.CompileWith(file, compile.Options{Open: files.Open}).Found {
				if d.Code == "OV814" {
					signs = append(signs, d)
				}
			}
			if len(signs) != 1 || signs[0].Span != (source.Span{Start: end, End: end + 3}) || !slices.Equal(signs[0].Args["signs"].([]string), []string{"☃ (U+2603)"}) {
				t.Errorf("%s: a snowman in a text of %s at %d is not reported there: %v", path, what, end, signs)
			}
		})
	}
	// Every field of the tree that holds a text stands in one of the sources.
	require.Greater(t, tried, 150)
	for what := range met {
		require.True(t, unprinted[what] != "" || strings.Contains(what, " |") || slices.Contains(printedTexts, what), "a text of %s is new: is it printed?", what)
	}
	for _, what := range append(printedTexts, "intro |", "note |", "step |", "care |", "licence |", "changes |") {
		require.True(t, put[what], "no source has a text of %s that could be tried", what)
	}
	for what := range unprinted {
		require.True(t, met[what], "no source has a text of %s", what)
	}
}

// printedTexts are the texts between quotation marks that are printed, by the statement they stand in.
var printedTexts = []string{"Title.Text", "By.Name", "Sizes.Names", "SizeNames.Names", "Notion.Text", "YarnName.Text", "Abbr.Text",
	"Call.Text", "Meant.Text", "Measure.Text"}

// Letters of other alphabets, ligatures and small pictures, in texts and in names that would be printed.
func TestSignsThatThePagesLack(t *testing.T) {
	const around = "pattern trial\n  title en \"Trial\" es \"Prueba\"\n  terms us\nend\nsizes \"S\"\nend\npart %s\n%s  in rows\n  chain 6\n  row: sc in each = 6\nend\n"
	title := func(s string) string { return fmt.Sprintf("  title en \"%s\" es \"Tira\"\n", s) }
	for _, c := range []struct{ name, lines, want string }{
		{"strip", title("Άγ Жи ñ – × ½"), ""},
		{"strip", title("e\u0301 n\u0303"), ""}, // accents that make one letter with the one before
		{"strip", title("😀"), "[😀 (U+1F600)] "},
		{"strip", title("編み図"), "[編 (U+7DE8) み (U+307F) 図 (U+56F3)] "},
		{"strip", title("一二三四五六"), "[一 (U+4E00) 二 (U+4E8C) 三 (U+4E09) 四 (U+56DB) …] "},
		{"strip", title("\uff21"), "[Ａ (U+FF21)] instead: A"},
		{"strip", title("\u2011"), "[\u2011 (U+2011)] instead: \u2010"},
		{"strip", title("x\u20dd"), "[\u20dd (U+20DD)] "}, // an accent that makes no letter
		{"部分", "", "[部 (U+90E8) 分 (U+5206)] name"},
		{"部分", title("Strip"), ""},
		{"strip", title("Strip") + "  call 目 en \"it\" es \"lo\"\n", ""},
	} {
		var got []string
		for _, d := range found(fmt.Sprintf(around, c.name, c.lines)) {
			if d.Code == "OV814" {
				help := d.Help
				if x, ok := d.Args["instead"]; ok {
					help += fmt.Sprint(": ", x)
				}
				got = append(got, fmt.Sprint(d.Args["signs"], " ", help))
			}
		}
		want := []string{c.want}
		if c.want == "" {
			want = nil
		}
		require.Equal(t, want, got, c.name+c.lines)
	}
}
