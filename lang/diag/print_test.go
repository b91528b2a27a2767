package diag

import (
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/rogpeppe/go-internal/txtar"

	"ovillo/lang/source"
)

var update = flag.Bool("update", false, "write the golden files anew")

// The fixtures are rows that stand in no catalogue, so that the printers are tested apart from what the compiler says.
func init() {
	for _, e := range fixtures {
		catalogue().byCode[e.Code] = e
	}
}

var fixtures = []*Entry{
	{
		Code: "T01", Severity: Error,
		En: Wording{
			Message: "round {row} needs a multiple of {of} {unit}, but has {have}",
			Mark:    "this repeat uses {of} {unit} each time",
			Related: map[string]string{"from": "{n} {n|stitch|stitches} made here", "why": "a round is closed by a slip stitch"},
			Help: map[string]string{
				"":     "end the round before with {near|or} stitches",
				"form": "write it as one of these:\nround: [sc in next 5, inc] around\nround: inc {of} evenly",
			},
			Explain: "A repeat that goes on to the end of a round must come out even, since a maker who is left with two stitches\n" +
				"cannot know what to do with them.\n\nTwo forms are right:\n\n    [sc in next 5, inc] around\n    inc 6 evenly\n",
		},
		Es: Wording{
			Message: "la vuelta {row} necesita un múltiplo de {of} {unit}, pero tiene {have}",
			Mark:    "esta repetición usa {of} {unit} cada vez",
			Related: map[string]string{"from": "{n} {n|punto hecho|puntos hechos} aquí", "why": "una vuelta se cierra con un punto deslizado"},
			Help: map[string]string{
				"":     "terminar la vuelta anterior con {near|or} puntos",
				"form": "escribir una de estas formas:\nround: [sc in next 5, inc] around\nround: inc {of} evenly",
			},
			Explain: "Una repetición que llega hasta el final de la vuelta debe cuadrar.",
		},
		Example: "round: [sc in next 5, inc] around\n", Fixed: "round: inc 6 evenly\n",
	},
	{Code: "T04", Severity: Error,
		En: Wording{Message: "sc cannot stand here: {found}", Mark: "{={near|or}} could", Related: map[string]string{"from": "a {=round} begins"},
			Help:    map[string]string{"": "one of these:\n{=round: {right}}\n{=row: {right}}"},
			Explain: "Why {=sc} is\nrefused in sc.\n\n    {=round: dc in each}\n"},
		Example: "round: sc in each\n", Fixed: "round: dc in each\n"},
	{Code: "T02", Severity: Warning,
		En: Wording{Message: "yarn {name} is named and never used"}, Es: Wording{Message: "el hilo {name} no se usa"}},
	{Code: "T03", Severity: Note,
		En: Wording{Message: "no count is stated in this part"}, Es: Wording{Message: "esta pieza no declara cuentas"}},
}

// at finds the n-th place of a text in the source.
func at(t testing.TB, src, text string, n int) source.Span {
	t.Helper()
	from := 0
	for ; n > 1; n-- {
		from += strings.Index(src[from:], text) + len(text)
	}
	i := strings.Index(src[from:], text)
	if i < 0 {
		t.Fatalf("%q does not stand in the source", text)
	}
	return source.Span{Start: int32(from + i), End: int32(from + i + len(text))}
}

var repeatArgs = Args{
	"row": 7, "of": 6, "unit": Term{"stitch", 6}, "near": []string{"84", "90"},
	"have": PerSize{Names: []string{"1 y", "2 y"}, Values: []string{"88", "100"}},
}

// printCases make the diagnostics for testdata/print/NAME.txtar from its source.
var printCases = []struct {
	name string
	list func(t testing.TB, src string) List
}{
	{"related", func(t testing.TB, src string) List {
		return List{{Code: "T01", Args: repeatArgs, Span: at(t, src, "[sc in next 5, inc] around", 1),
			Sizes: []string{"1 y", "2 y"},
			Related: []Related{
				{Span: at(t, src, "sc in each", 2), Key: "from", Args: Args{"n": 88}},
				{Span: at(t, src, "chain 88", 1), Key: "from", Args: Args{"n": 1}},
				{Key: "why"},
			}}}
	}},
	{"wide", func(t testing.TB, src string) List {
		return List{
			{Code: "T02", Args: Args{"name": "lana"}, Span: at(t, src, "lana", 1)},
			{Code: "T02", Args: Args{"name": "毛糸"}, Span: at(t, src, "毛糸", 1)},
			{Code: "T02", Args: Args{"name": "cafe\u0301"}, Span: at(t, src, "cafe\u0301", 1)},
			{Code: "T02", Args: Args{"name": "x\x1b[31m"}, Span: at(t, src, "kelp", 1)},
		}
	}},
	{"lines", func(t testing.TB, src string) List {
		return List{
			{Code: "T03", Span: at(t, src, "round: [sc in next 5,\n     inc] around   \n", 1)},
			{Code: "T01", Help: "form", Args: repeatArgs, Span: at(t, src, "inc] around", 1),
				Related: []Related{{Span: at(t, src, "inc", 1), Key: "from", Args: Args{"n": 2}}}},
			{Code: "T03", Span: source.Span{Start: int32(len(src)), End: int32(len(src))}},
			{Code: "T02", Args: Args{"name": "kelp"}},
		}
	}},
	{"long", func(t testing.TB, src string) List {
		return List{
			{Code: "T02", Args: Args{"name": "far"}, Span: at(t, src, "far", 1),
				Related: []Related{{Span: at(t, src, "near", 1), Key: "why"}}},
			{Code: "T03", Span: at(t, src, "note x", 1).To(at(t, src, "far", 1))},
		}
	}},
}

func TestPrinters(t *testing.T) {
	for _, c := range printCases {
		t.Run(c.name, func(t *testing.T) {
			path := filepath.Join("testdata", "print", c.name+".txtar")
			ar, err := txtar.ParseFile(path)
			if err != nil {
				t.Fatal(err)
			}
			f := source.NewFile(c.name+".ovillo", string(ar.Files[0].Data))
			list := c.list(t, f.Text)
			got := &txtar.Archive{Comment: ar.Comment, Files: ar.Files[:1]}
			for _, p := range []struct {
				name  string
				print func(*bytes.Buffer) error
			}{
				{"en", func(b *bytes.Buffer) error { return Text(b, f, list, "en", false) }},
				{"es", func(b *bytes.Buffer) error { return Text(b, f, list, "es", false) }},
				{"json", func(b *bytes.Buffer) error { return Printer{Lang: "en"}.JSON(b, f, list) }},
			} {
				var b bytes.Buffer
				if err := p.print(&b); err != nil {
					t.Fatal(err)
				}
				got.Files = append(got.Files, txtar.File{Name: p.name, Data: b.Bytes()})
			}
			sameGolden(t, path, txtar.Format(got))
		})
	}
}

func TestExplain(t *testing.T) {
	var b bytes.Buffer
	for _, lang := range []string{"en", "es"} {
		if err := (Printer{Lang: lang}).Explain(&b, "T01"); err != nil {
			t.Fatal(err)
		}
		fmt.Fprintln(&b, strings.Repeat("=", 20))
	}
	sameGolden(t, filepath.Join("testdata", "explain.txt"), b.Bytes())
	for lang, want := range map[string]string{
		"en": "there is no message with the code X99",
		"es": "no hay ningún mensaje con el código X99",
	} {
		if err := (Printer{Lang: lang}).Explain(&b, "X99"); err == nil || err.Error() != want {
			t.Errorf("%s: unknown code: got %v, want %q", lang, err, want)
		}
	}
}

func sameGolden(t *testing.T, path string, got []byte) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, got, 0o666); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Errorf("%s differs; run with -update and read the change\ngot:\n%s", path, got)
	}
}

// TestOrder checks what all printers share: order, doubles, and the cut that never hides an error behind a warning.
func TestOrder(t *testing.T) {
	f := source.NewFile("a.ovillo", strings.Repeat("yarn x\n", 200))
	var l List
	span := func(line int) source.Span {
		at := f.LineStart(line)
		return source.Span{Start: at, End: at + 4}
	}
	for line := 100; line > 0; line-- {
		l.Add(Diagnostic{Code: "T02", Args: Args{"name": "x"}, Span: span(line)})
	}
	l.Add(Diagnostic{Code: "T03", Span: span(7)})
	for range 3 {
		l.Add(Diagnostic{Code: "T01", Args: repeatArgs, Span: span(150)})
	}
	var b bytes.Buffer
	if err := Text(&b, f, l, "en", false); err != nil {
		t.Fatal(err)
	}
	out := b.String()
	if n := strings.Count(out, "error[T01]"); n != 1 {
		t.Errorf("the error behind 101 other messages is printed %d times, want once", n)
	}
	if n := strings.Count(out, "-->"); n != Most {
		t.Errorf("%d messages printed, want %d", n, Most)
	}
	for _, want := range []string{"… and 52 more messages not shown\n", "a.ovillo: 1 error, 100 warnings, 1 note\n"} {
		if !strings.Contains(out, want) {
			t.Errorf("the output does not say %q", want)
		}
	}
	if first := strings.Index(out, "a.ovillo:1:1"); first < 0 || first > strings.Index(out, "a.ovillo:2:1") {
		t.Error("the messages do not stand in the order of the source")
	}
	b.Reset()
	if err := (Printer{Lang: "es"}).JSON(&b, f, l); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSpace(b.String()), "\n")
	if len(lines) != 102 {
		t.Errorf("%d lines of JSON, want 102: other tools get everything", len(lines))
	}
	for _, line := range lines {
		if !json.Valid([]byte(line)) {
			t.Errorf("not JSON: %s", line)
		}
	}
}

// TestRemedy checks which help is printed.
func TestRemedy(t *testing.T) {
	several := Wording{Help: map[string]string{"": "{near|or}", "none": "nothing is near", "other": "x"}}
	single := Wording{Help: map[string]string{"near": "{near|or}"}}
	some, none := Args{"near": []string{"leg"}}, Args{"near": []string(nil)}
	for _, c := range []struct {
		w    Wording
		key  string
		args Args
		want string
	}{
		{several, "", some, "{near|or}"},
		{several, "", none, "nothing is near"},
		{several, "other", none, "x"},
		{several, "gone", some, ""},
		{several, "-", some, ""},
		{single, "", some, "{near|or}"},
		{single, "", none, ""},
		{Wording{}, "", some, ""},
	} {
		if got, _ := c.w.remedy(c.key, c.args); got != c.want {
			t.Errorf("key %q, %v: %q, want %q", c.key, c.args, got, c.want)
		}
	}
}

// TestWithin checks that a remedy does not name the sizes again that a line above it names.
func TestWithin(t *testing.T) {
	per := func(values ...string) PerSize {
		return PerSize{Names: []string{"S", "M"}[:len(values)], Values: values}
	}
	for _, c := range []struct {
		sizes []string
		have  PerSize
		want  string
	}{
		{[]string{"S"}, per("9"), "has 9 in S / 9"},
		{[]string{"S", "M"}, per("9", "9"), "has 9 in S, 9 in M / 9"},
		{[]string{"S", "M"}, per("9", "8"), "has 9 in S, 8 in M / 9 in S, 8 in M"},
		{[]string{"S", "M"}, per("9"), "has 9 in S / 9 in S"},
		{nil, per("9"), "has 9 in S / 9 in S"},
	} {
		d := Diagnostic{Args: Args{"have": c.have}, Sizes: c.sizes}
		if got := Fill("has {have}", d.Args, "en") + " / " + Fill("{have}", d.within(), "en"); got != c.want {
			t.Errorf("sizes %v: %q, want %q", c.sizes, got, c.want)
		}
	}
}

// TestPrinterCode checks that code is put into the words of the source wherever a printer shows some: in the texts, in an edit
// and on the page behind a code, but never in the author's own lines or in what she says.
func TestPrinterCode(t *testing.T) {
	src := "round: [sc in next] around\n"
	f := source.NewFile("a.ovillo", src)
	l := List{{Code: "T04", Args: Args{"found": "sc", "right": "dc in each", "near": []string{"dc", "hdc"}}, Span: at(t, src, "sc", 1),
		Related: []Related{{Key: "from", Span: at(t, src, "round", 1)}}, Edit: &Edit{Span: at(t, src, "sc", 1), Text: "dc"}}}
	p := Printer{Lang: "en", Code: strings.ToUpper}
	var b bytes.Buffer
	for _, print := range []func() error{
		func() error { return p.Text(&b, f, l) },
		func() error { return p.JSON(&b, f, l) },
		func() error { return p.Explain(&b, "T04") },
	} {
		if err := print(); err != nil {
			t.Fatal(err)
		}
		fmt.Fprintln(&b, strings.Repeat("=", 20))
	}
	sameGolden(t, filepath.Join("testdata", "code.txt"), b.Bytes())
}

func TestColor(t *testing.T) {
	f := source.NewFile("a.ovillo", "yarn kelp\n")
	l := List{{Code: "T02", Args: Args{"name": "kelp"}, Span: source.Span{Start: 5, End: 9}}}
	var with, without bytes.Buffer
	if err := Text(&with, f, l, "en", true); err != nil {
		t.Fatal(err)
	}
	if err := Text(&without, f, l, "en", false); err != nil {
		t.Fatal(err)
	}
	bare := with.String()
	for _, i := range []ink{bold, red, yellow, cyan, quiet} {
		bare = strings.ReplaceAll(bare, "\x1b["+string(i)+"m", "")
	}
	bare = strings.ReplaceAll(bare, "\x1b[0m", "")
	if !strings.Contains(with.String(), "\x1b[1;33mwarning[T02]") || bare != without.String() {
		t.Errorf("colour must add colour and nothing else:\n%q\n%q", with.String(), without.String())
	}
	var none bytes.Buffer
	if err := Text(&none, f, nil, "en", true); err != nil || none.Len() > 0 {
		t.Errorf("an empty list prints %q", none.String())
	}
}

// FuzzText throws odd spans and odd texts at the printers: nothing panics, every line is clean text, and every
// diagnostic with a place is marked.
func FuzzText(f *testing.F) {
	f.Add("round: dc in each\n", int32(7), int32(17), int32(0), int32(5))
	f.Add("a\tb\xff\xfe\r\n\u0301x\u202e毛\x1b[2J", int32(-5), int32(1<<30), int32(3), int32(2))
	f.Add(strings.Repeat("毛\u0301\t", 3000), int32(8999), int32(9001), int32(17999), int32(18000))
	f.Add("", int32(0), int32(1), int32(-1), int32(-1))
	f.Add("\n\n\n", int32(2), int32(9), int32(1), int32(1))
	f.Fuzz(func(t *testing.T, text string, a, b, c, d int32) {
		file := source.NewFile("f\x07\n.ovillo", text)
		l := List{
			{Code: "T02", Span: source.Span{Start: a, End: b}, Args: Args{"name": text}, Sizes: []string{text},
				Related: []Related{{Span: source.Span{Start: c, End: d}, Key: "from"}}},
			{Code: "T01", Span: source.Span{Start: c, End: d}},
		}
		var out bytes.Buffer
		for _, lang := range []string{"en", "es"} {
			if err := Text(&out, file, l, lang, false); err != nil {
				t.Fatal(err)
			}
		}
		if err := (Printer{Lang: "en"}).JSON(&bytes.Buffer{}, file, l); err != nil {
			t.Fatal(err)
		}
		if !utf8.Valid(out.Bytes()) {
			t.Error("the output is not UTF-8")
		}
		for _, r := range out.String() {
			if r != '\n' && unicode.IsControl(r) || r >= 0x202A && r <= 0x202E {
				t.Fatalf("the output holds %U", r)
			}
		}
		if (a != 0 || b != 0) && !strings.Contains(out.String(), "^") {
			t.Error("the place is not marked")
		}
	})
}
