package reading

import (
	"fmt"
	"strings"

	"ovillo/cmd/ovillo/whole"

	readpdf "github.com/ledongthuc/pdf"
)

// tagged is a finished file as programs that read aloud see it.
type tagged struct {
	root  readpdf.Value // the catalog
	trail readpdf.Value
	pages []taggedPage
	tree  *element
}

// taggedPage is what the content stream of a page says of itself.
type taggedPage struct {
	value  readpdf.Value
	marks  map[int64]*piece // by their number
	loose  []string         // what is painted outside of all marks
	nested []string         // marks inside of marks
	twice  []int64          // numbers given twice
	idle   []string         // the texts of artifacts
}

// piece is a marked piece of a page.
type piece struct {
	text string
	x, y float64 // where its first glyph stands, in points from the bottom left; 0 if it has none
	used int     // times the tree names it
}

// element is an element of the structure tree. Text and links are elements without a tag.
type element struct {
	tag, lang, alt, scope string
	span                  [2]int64
	page                  int
	piece                 *piece        // of text and drawings
	link                  readpdf.Value // of a link
	kids                  []*element
}

// readTagged reads a file. It is what a screen reader does with it, with a library that shares nothing with the writer.
func readTagged(file []byte) (d *tagged, err error) {
	defer func() { // the library panics at files that are broken
		if r := recover(); r != nil {
			err = fmt.Errorf("the file cannot be read: %v", r)
		}
	}()
	r, err := whole.OpenFile(file)
	if err != nil {
		return nil, err
	}
	d = &tagged{root: r.Trailer().Key("Root"), trail: r.Trailer()}
	number := map[int64]int{} // the pages by their keys in the parent tree
	for n := 1; n <= r.NumPage(); n++ {
		p := r.Page(n)
		number[pageKey(p.V)] = n - 1
		d.pages = append(d.pages, readMarks(p))
	}
	top := d.root.Key("StructTreeRoot")
	if top.IsNull() {
		return d, nil
	}
	d.tree = &element{tag: "StructTreeRoot", lang: d.root.Key("Lang").Text()}
	d.grow(d.tree, top.Key("K"), 0, number)
	return d, nil
}

// grow reads what an element holds.
func (d *tagged) grow(e *element, v readpdf.Value, page int, number map[int64]int) {
	add := func(k *element) { e.kids = append(e.kids, k) }
	switch {
	case v.Kind() == readpdf.Array:
		for i := range v.Len() {
			d.grow(e, v.Index(i), page, number)
		}
	case v.Kind() == readpdf.Integer:
		p := d.pages[page].marks[v.Int64()]
		if p == nil {
			p = &piece{} // the tree names a mark that is not there
		}
		p.used++
		add(&element{lang: e.lang, page: page, piece: p})
	case v.Kind() != readpdf.Dict:
	case v.Key("Type").Name() == "MCR":
		d.grow(e, v.Key("MCID"), number[pageKey(readpdf.Page{V: v.Key("Pg")}.V)], number)
	case v.Key("Type").Name() == "OBJR":
		add(&element{lang: e.lang, page: page, link: v.Key("Obj")})
	default:
		if pg := v.Key("Pg"); !pg.IsNull() {
			page = number[pageKey(pg)]
		}
		k := &element{tag: v.Key("S").Name(), lang: e.lang, alt: v.Key("Alt").Text(), page: page}
		if lang := v.Key("Lang").Text(); lang != "" {
			k.lang = lang
		}
		a := v.Key("A")
		k.scope = a.Key("Scope").Name()
		k.span = [2]int64{max(a.Key("RowSpan").Int64(), 1), max(a.Key("ColSpan").Int64(), 1)}
		add(k)
		d.grow(k, v.Key("K"), page, number)
	}
}

// paints are the operators that put something on the page: ISO 32000-1, tables 60, 87, 109.
var paints = map[string]bool{
	"S": true, "s": true, "f": true, "F": true, "f*": true, "B": true, "B*": true, "b": true, "b*": true,
	"sh": true, "Do": true, "Tj": true, "TJ": true, "'": true, `"`: true, "EI": true,
}

// readMarks reads the content stream of a page.
func readMarks(p readpdf.Page) taggedPage {
	out := taggedPage{value: p.V, marks: map[int64]*piece{}}
	fonts := map[string]readpdf.TextEncoding{}
	var font readpdf.TextEncoding
	var x, y float64
	var open []*piece // nil: an artifact
	readpdf.Interpret(p.V.Key("Contents"), func(stack *readpdf.Stack, op string) {
		args := make([]readpdf.Value, stack.Len())
		for i := len(args) - 1; i >= 0; i-- {
			args[i] = stack.Pop()
		}
		if paints[op] && len(open) == 0 {
			out.loose = append(out.loose, op)
		}
		switch op {
		case "BMC", "BDC":
			if len(open) > 0 {
				out.nested = append(out.nested, args[0].Name())
			}
			var m *piece
			if op == "BDC" && args[0].Name() != "Artifact" {
				m = &piece{}
				id := args[1].Key("MCID").Int64()
				if out.marks[id] != nil {
					out.twice = append(out.twice, id)
				}
				out.marks[id] = m
			}
			open = append(open, m)
		case "EMC":
			open = open[:len(open)-1]
		case "Tf":
			name := args[0].Name()
			if fonts[name] == nil {
				f := p.Font(name)
				fonts[name] = f.Encoder()
			}
			font = fonts[name]
		case "Tm":
			x, y = args[4].Float64(), args[5].Float64()
		case "Tj", "TJ":
			text := shown(font, args[0])
			if len(open) == 0 {
				return
			}
			if m := open[len(open)-1]; m != nil {
				if m.text == "" {
					m.x, m.y = x, y
				}
				m.text += text
			} else {
				out.idle = append(out.idle, text)
			}
		}
	})
	return out
}

// shown is the text of a string or of an array of strings with corrections between them.
func shown(font readpdf.TextEncoding, v readpdf.Value) string {
	if v.Kind() == readpdf.String {
		return font.Decode(v.RawString())
	}
	var b strings.Builder
	for i := range v.Len() {
		if s := v.Index(i); s.Kind() == readpdf.String {
			b.WriteString(font.Decode(s.RawString()))
		}
	}
	return b.String()
}

// each visits an element and all below it, in reading order.
func (e *element) each(visit func(e *element, up []*element)) { e.walk(nil, visit) }

func (e *element) walk(up []*element, visit func(e *element, up []*element)) {
	visit(e, up)
	for _, k := range e.kids {
		k.walk(append(up[:len(up):len(up)], e), visit)
	}
}

// text is all text in an element.
func (e *element) text() string {
	var b strings.Builder
	e.each(func(k *element, _ []*element) {
		if k.piece != nil {
			b.WriteString(k.piece.text)
		}
	})
	return b.String()
}

// elements are the elements below, without text and links.
func (e *element) elements() (list []*element) {
	for _, k := range e.kids {
		if k.tag != "" {
			list = append(list, k)
		}
	}
	return list
}
