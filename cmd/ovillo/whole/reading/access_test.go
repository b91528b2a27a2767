package reading

import (
	"bytes"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	readpdf "github.com/ledongthuc/pdf"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/whole"
	"ovillo/render/book"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/pdf"
)

// Rules about files that can be read aloud, each looked for in finished files. They follow the 31 checkpoints of the Matterhorn
// Protocol 1.02 for ISO 14289-1:2014 (PDF/UA-1); most are known here from summaries of it, some from memory, which is said.
// That a file keeps them is not PDF/UA: a part of its conditions needs a person, and no file claims it.
type accessRule struct {
	id, from string
	broken   func(d *tagged) []string // what breaks the rule
}

const (
	read   = "summaries of the Matterhorn Protocol"
	memory = "from memory"
)

var accessRules = []accessRule{
	{"PDFU-01 the file is tagged", read, func(d *tagged) []string {
		return unless(d.root.Key("MarkInfo").Key("Marked").Bool() && d.tree != nil, "not tagged")
	}},
	{"PDFU-02 all content is tagged or an artifact", read, looseContent},
	{"PDFU-03 nothing is both", read, func(d *tagged) (wrong []string) {
		for n, p := range d.pages {
			for _, tag := range p.nested {
				wrong = append(wrong, fmt.Sprintf("page %d: marks of %s inside of others", n+1, tag))
			}
		}
		return wrong
	}},
	{"PDFU-04 every tag has a standard meaning", read, func(d *tagged) (wrong []string) {
		d.each(func(e *element, _ []*element) {
			if e.tag != "" && e.tag != "StructTreeRoot" && !standardTags[e.tag] {
				wrong = append(wrong, e.tag)
			}
		})
		return wrong
	}},
	{"PDFU-05 the title shows", memory, func(d *tagged) []string {
		packet := string(streamOf(d.root.Key("Metadata")))
		title := regexp.MustCompile(`<dc:title><rdf:Alt><rdf:li xml:lang="x-default">[^<]+</rdf:li>`).MatchString(packet)
		return unless(title && d.root.Key("ViewerPreferences").Key("DisplayDocTitle").Bool(), "no title, or not shown")
	}},
	{"PDFU-06 PDF/UA is not claimed, since nothing here proves it", memory, func(d *tagged) []string {
		return unless(!strings.Contains(string(streamOf(d.root.Key("Metadata"))), "pdfuaid"), "claimed")
	}},
	{"PDFU-07 the document has a language", memory, func(d *tagged) []string {
		return unless(d.root.Key("Lang").Text() != "", "no language")
	}},
	{"PDFU-08 every text is in the language of its element", memory, foreignWords},
	{"PDFU-09 headings skip no level", read, func(d *tagged) (wrong []string) {
		level := 0
		d.each(func(e *element, _ []*element) {
			if !heading.MatchString(e.tag) {
				return
			}
			if l := int(e.tag[1] - '0'); l > level+1 {
				wrong = append(wrong, fmt.Sprintf("%s %q after level %d", e.tag, e.text(), level))
			} else {
				level = l
			}
		})
		return append(wrong, unless(level > 0, "no headings")...)
	}},
	{"PDFU-10 figures have a text in their place", memory, func(d *tagged) (wrong []string) {
		d.each(func(e *element, _ []*element) {
			if e.tag == "Figure" && e.alt == "" {
				wrong = append(wrong, fmt.Sprintf("page %d", e.page+1))
			}
		})
		return wrong
	}},
	{"PDFU-11 tables have heads with a scope, and rows of one length", memory, wrongTables},
	{"PDFU-12 lists are made of items with a body", memory, wrongLists},
	{"PDFU-13 the order of the tree is that of the pages", read, wrongOrder},
	{"PDFU-14 fonts are inside and map to Unicode", memory, func(d *tagged) (wrong []string) {
		for _, p := range d.pages {
			fonts := p.value.Key("Resources").Key("Font")
			for _, name := range fonts.Keys() {
				f := fonts.Key(name)
				program := f.Key("DescendantFonts").Index(0).Key("FontDescriptor").Key("FontFile2")
				if program.Kind() != readpdf.Stream || f.Key("ToUnicode").Kind() != readpdf.Stream {
					wrong = append(wrong, f.Key("BaseFont").Name())
				}
			}
			wrong = append(wrong, unless(len(fonts.Keys()) > 0, "a page without fonts")...)
		}
		return wrong
	}},
	{"PDFU-15 page numbers are not read", memory, func(d *tagged) (wrong []string) {
		for n, p := range d.pages {
			if len(p.numbers()) == 0 {
				wrong = append(wrong, fmt.Sprintf("page %d: no number is an artifact", n+1))
			}
			for _, m := range p.marks {
				if pageNumber.MatchString(m.text) {
					wrong = append(wrong, fmt.Sprintf("page %d: %q is read", n+1, m.text))
				}
			}
		}
		return wrong
	}},
	{"PDFU-16 links say where they lead, and the order of tabs is that of the tree", memory, wrongLinks},
	{"PDFU-17 nothing is locked", memory, func(d *tagged) []string {
		return unless(d.trail.Key("Encrypt").IsNull(), "encrypted")
	}},
	{"PDFU-18 more than four pages have bookmarks", memory, func(d *tagged) []string {
		return unless(len(d.pages) <= 4 || !d.root.Key("Outlines").Key("First").IsNull(), "no bookmarks")
	}},
}

// pageNumber is the number of a page as it is printed.
var pageNumber = regexp.MustCompile(`^(?:page |página )?(\d+) (?:/|of|de) \d+ ?$`)

// numbers are the numbers that are printed on a page, from left to right: two on a side of a booklet.
func (p taggedPage) numbers() (list []int) {
	for _, text := range p.idle {
		if m := pageNumber.FindStringSubmatch(strings.ReplaceAll(text, "\u00a0", " ")); m != nil {
			n, _ := strconv.Atoi(m[1])
			list = append(list, n)
		}
	}
	return list
}

// number is the number of the page on which something stands so far from the left.
func (p taggedPage) number(x float64) int {
	list := p.numbers()
	if len(list) == 2 && x > p.value.Key("MediaBox").Index(2).Float64()/2 {
		return list[1]
	}
	if len(list) == 0 {
		return 0
	}
	return list[0]
}

// each visits the elements of the tree.
func (d *tagged) each(visit func(e *element, up []*element)) {
	if d.tree != nil {
		d.tree.each(visit)
	}
}

func unless(holds bool, wrong string) []string {
	if holds {
		return nil
	}
	return []string{wrong}
}

func streamOf(v readpdf.Value) []byte {
	if v.Kind() != readpdf.Stream {
		return nil
	}
	var b bytes.Buffer
	if _, err := b.ReadFrom(v.Reader()); err != nil {
		return nil
	}
	return b.Bytes()
}

var heading = regexp.MustCompile(`^H[1-6]$`)

// standardTags are the standard structure types of ISO 32000-1, 14.8.4.
var standardTags = wordSet(`Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private
	P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot
	Span Quote Note Reference BibEntry Code Link Annot Ruby Warichu RB RT RP WT WP Figure Formula Form`)

func wordSet(list string) map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.Fields(list) {
		set[w] = true
	}
	return set
}

// looseContent finds what is neither tagged nor an artifact, and marks that the tree does not name once.
func looseContent(d *tagged) (wrong []string) {
	for n, p := range d.pages {
		if len(p.loose) > 0 {
			wrong = append(wrong, fmt.Sprintf("page %d: %s outside of all marks", n+1, strings.Join(p.loose, " ")))
		}
		if len(p.twice) > 0 {
			wrong = append(wrong, fmt.Sprintf("page %d: numbers of marks given twice: %v", n+1, p.twice))
		}
		for id, m := range p.marks {
			if m.used != 1 {
				wrong = append(wrong, fmt.Sprintf("page %d: mark %d, %q, stands %d times in the tree", n+1, id, m.text, m.used))
			}
		}
	}
	d.each(func(e *element, _ []*element) {
		if e.piece != nil && e.piece.used == 1 && d.pages[e.page].marks == nil {
			wrong = append(wrong, "the tree names a mark that is not there")
		}
	})
	return wrong
}

// functionWords are frequent words of one language that are no words of the other.
var functionWords = map[string]map[string]bool{
	"en": wordSet("the of with and each from into is are this your for at by times work around"),
	"es": wordSet("el los las de del con una cada hasta para por que se es en al veces tejer"),
}

var letters = regexp.MustCompile(`\pL+`)

// foreignWords finds blocks that hold more frequent words of the other language than of their own.
func foreignWords(d *tagged) (wrong []string) {
	look := func(e *element, text string) {
		lang, _, _ := strings.Cut(e.lang, "-")
		own, other := functionWords[lang], functionWords["es"]
		if lang == "es" {
			other = functionWords["en"]
		}
		count := 0
		for _, w := range letters.FindAllString(strings.ToLower(text), -1) {
			switch {
			case own[w]:
				count--
			case other[w]:
				count++
			}
		}
		if own == nil || count > 0 {
			wrong = append(wrong, fmt.Sprintf("page %d: %s says it is in %q: %.80q", e.page+1, e.tag, e.lang, text))
		}
	}
	d.each(func(e *element, _ []*element) {
		if e.alt != "" {
			look(e, e.alt)
		}
		own := strings.Builder{}
		for _, k := range e.kids {
			if k.piece != nil {
				own.WriteString(k.piece.text)
			} else if k.tag == "Span" && k.lang == e.lang {
				own.WriteString(k.text())
			}
		}
		if own.Len() > 0 {
			look(e, own.String())
		}
	})
	return wrong
}

func wrongTables(d *tagged) (wrong []string) {
	d.each(func(e *element, up []*element) {
		say := func(what string) {
			wrong = append(wrong, fmt.Sprintf("page %d: %s %.40q: %s", e.page+1, e.tag, e.text(), what))
		}
		parent := ""
		if len(up) > 0 {
			parent = up[len(up)-1].tag
		}
		switch e.tag {
		case "TH":
			if e.scope == "" {
				say("no scope")
			}
			fallthrough
		case "TD":
			if parent != "TR" {
				say("in a " + parent)
			}
		case "TR":
			if parent != "Table" && parent != "THead" && parent != "TBody" {
				say("in a " + parent)
			}
		case "Table":
			heads, width := false, int64(-1)
			e.each(func(row *element, _ []*element) {
				if row.tag != "TR" {
					return
				}
				cells := int64(0)
				for _, c := range row.elements() {
					cells += c.span[1]
					heads = heads || c.tag == "TH"
				}
				if width < 0 {
					width = cells
				}
				if cells != width {
					say(fmt.Sprintf("a row of %d columns, %.40q, in a table of %d", cells, row.text(), width))
				}
			})
			if !heads {
				say("no heads")
			}
		}
	})
	return wrong
}

func wrongLists(d *tagged) (wrong []string) {
	parts := map[string]string{"L": "LI Caption L", "LI": "Lbl LBody", "TOC": "TOCI TOC Caption", "TOCI": "Lbl Reference P TOC Link"}
	d.each(func(e *element, up []*element) {
		may, list := parts[e.tag]
		bodies := 0
		for _, k := range e.elements() {
			if list && !slices.Contains(strings.Fields(may), k.tag) {
				wrong = append(wrong, fmt.Sprintf("page %d: a %s in a %s: %.40q", k.page+1, k.tag, e.tag, k.text()))
			}
			if k.tag == "LBody" {
				bodies++
			}
		}
		if e.tag == "LI" && (bodies != 1 || up[len(up)-1].tag != "L") {
			wrong = append(wrong, fmt.Sprintf("page %d: an item with %d bodies in a %s", e.page+1, bodies, up[len(up)-1].tag))
		}
	})
	return wrong
}

// wrongOrder finds blocks that begin before the one that is read before them: on an earlier page, or higher up in the same
// column of the same page. Columns are told apart by where their lines begin.
func wrongOrder(d *tagged) (wrong []string) {
	type column struct {
		page int
		lang string
		x    float64
	}
	last := map[string]int{}
	low := map[column]float64{}
	d.each(func(e *element, _ []*element) {
		if e.tag != "P" && e.tag != "Lbl" && !heading.MatchString(e.tag) {
			return
		}
		page, at := -1, &piece{}
		e.each(func(k *element, _ []*element) {
			if page < 0 && k.piece != nil && k.piece.y != 0 {
				page, at = d.pages[k.page].number(k.piece.x), k.piece
			}
		})
		if page < 0 {
			return
		}
		if page < last[e.lang] {
			wrong = append(wrong, fmt.Sprintf("%q on page %d is read after something on page %d", e.text(), page, last[e.lang]))
		}
		last[e.lang] = page
		c := column{page, e.lang, at.x}
		if y, before := low[c]; before && at.y > y {
			wrong = append(wrong, fmt.Sprintf("page %d: %.60q is read after what stands below it", page, e.text()))
		}
		low[c] = at.y
	})
	return wrong
}

func wrongLinks(d *tagged) (wrong []string) {
	inTree := 0
	d.each(func(e *element, up []*element) {
		if e.link.IsNull() {
			return
		}
		inTree++
		if up[len(up)-1].tag != "Link" {
			wrong = append(wrong, "a link in a "+up[len(up)-1].tag)
		}
	})
	for n, p := range d.pages {
		if p.value.Key("Tabs").Name() != "S" {
			wrong = append(wrong, fmt.Sprintf("page %d: the order of tabs is %q", n+1, p.value.Key("Tabs").Name()))
		}
		links := p.value.Key("Annots")
		for i := range links.Len() {
			inTree--
			if links.Index(i).Key("Contents").Text() == "" {
				wrong = append(wrong, fmt.Sprintf("page %d: a link without a description", n+1))
			}
		}
	}
	return append(wrong, unless(inTree == 0, fmt.Sprintf("%d links more in the tree than on the pages", inTree))...)
}

// written is a document as a file, read back.
func writtenTagged(t *testing.T, d *page.Document) *tagged {
	t.Helper()
	var file bytes.Buffer
	if err := pdf.Write(&file, d, pdf.Options{}); err != nil {
		t.Fatal(err)
	}
	back, err := readTagged(file.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	return back
}

// accessEditions are the examples that are looked at in every edition: one of many rounds, one of motifs, one with a chart and
// a photograph.
var accessEditions = map[string]bool{"marisma-leggings.ovillo": true, "bajamar-blanket.ovillo": true, "jarcia-headband.ovillo": true}

func TestExamplesCanBeReadAloud(t *testing.T) {
	for _, s := range whole.Examples(t) {
		for _, l := range []desk.Look{
			{Langs: []string{"en", "es"}}, {Langs: []string{"en"}}, {Langs: []string{"es"}},
			{Edition: book.After}, {Edition: book.Large, Langs: []string{"es"}}, {Edition: book.Tester | book.LeftHanded}, {Edition: book.Booklet},
			{Paper: layout.Phone, Langs: []string{"en"}},
		} {
			if (l.Edition != 0 || l.Paper != book.A4) && !accessEditions[s.Name] {
				continue
			}
			l = s.Look(t, l)
			t.Run(fmt.Sprintf("%s %s %s %s", s.Name, strings.Join(l.Langs, ","), l.Edition, l.Paper), func(t *testing.T) {
				t.Parallel()
				d, err := readTagged(s.File(t, l))
				if err != nil {
					t.Fatal(err)
				}
				for _, rule := range accessRules {
					if wrong := rule.broken(d); len(wrong) > 0 {
						t.Errorf("%s (%s):\n\t%s", rule.id, rule.from, strings.Join(wrong[:min(len(wrong), 12)], "\n\t"))
					}
				}
			})
		}
	}
}

// Every rule has to find what breaks it: pages are tampered with, one way a rule or two. What the writer does not let through
// is tested on readings made by hand, below; that fonts are inside and nothing is locked is seen by other programs as well.
func TestRulesForReadingAloudFindWhatBreaksThem(t *testing.T) {
	s := whole.Examples(t)[0]
	find := func(d *page.Document, tag string) *page.Elem {
		var found *page.Elem
		var down func(e *page.Elem)
		down = func(e *page.Elem) {
			if e.Tag == tag && found == nil {
				found = e
			}
			for _, k := range e.Kids {
				down(k)
			}
		}
		down(d.Root)
		if found == nil {
			t.Fatalf("no %s", tag)
		}
		return found
	}
	for _, c := range []struct {
		rule   string
		tamper func(d *page.Document)
	}{
		{"PDFU-01", func(d *page.Document) { untag(d) }},
		{"PDFU-02", func(d *page.Document) { untag(d) }},
		{"PDFU-05", func(d *page.Document) { d.Title = "" }},
		{"PDFU-06", func(d *page.Document) { d.Title = "pdfuaid" }},
		{"PDFU-07", func(d *page.Document) { d.Lang = "" }},
		{"PDFU-08", func(d *page.Document) { find(d, "L").Lang = "es" }},
		{"PDFU-08", func(d *page.Document) { find(d, "Figure").Lang = "es" }},
		{"PDFU-09", func(d *page.Document) { find(d, "H2").Tag = "H4" }},
		{"PDFU-10", func(d *page.Document) { find(d, "Figure").Alt = "" }},
		{"PDFU-11", func(d *page.Document) { find(d, "TH").Scope = "" }},
		{"PDFU-11", func(d *page.Document) { find(d, "TR").New("TD") }},
		{"PDFU-12", func(d *page.Document) { find(d, "LI").Tag = "Div" }},
		{"PDFU-12", func(d *page.Document) { find(d, "LBody").Tag = "P" }},
		{"PDFU-13", func(d *page.Document) { slices.Reverse(d.Root.Kids) }},
		{"PDFU-13", func(d *page.Document) { slices.Reverse(find(d, "L").Kids) }},
		{"PDFU-15", func(d *page.Document) { readNumber(d, find(d, "H1")) }},
		{"PDFU-18", func(d *page.Document) { d.Outline = nil }},
	} {
		d := publish(t, s).composed(t, "en", "es")
		c.tamper(d)
		back := writtenTagged(t, d)
		for _, rule := range accessRules {
			if strings.HasPrefix(rule.id, c.rule) && len(rule.broken(back)) == 0 {
				t.Errorf("%s finds nothing wrong", rule.id)
			}
		}
	}
}

// untag takes the tree away.
func untag(d *page.Document) { d.Root = nil }

// readNumber has the number of the first page read as a part of an element.
func readNumber(d *page.Document, e *page.Elem) {
	for i, item := range d.Pages[0].Items {
		if g, ok := item.(page.Glyphs); ok && strings.HasPrefix(g.Text, "1 / ") {
			g.Elem = e
			d.Pages[0].Items[i] = g
		}
	}
}

func TestRulesForReadingAloudFindWhatTheWriterRefuses(t *testing.T) {
	marked := &piece{used: 2}
	for _, c := range []struct {
		rule string
		d    *tagged
	}{
		{"PDFU-02", &tagged{pages: []taggedPage{{loose: []string{"TJ"}}}}},
		{"PDFU-02", &tagged{pages: []taggedPage{{twice: []int64{3}}}}},
		{"PDFU-02", &tagged{pages: []taggedPage{{marks: map[int64]*piece{0: {}}}}}},
		{"PDFU-02", &tagged{pages: []taggedPage{{marks: map[int64]*piece{0: marked}}}}},
		{"PDFU-03", &tagged{pages: []taggedPage{{nested: []string{"Span"}}}}},
		{"PDFU-04", &tagged{tree: &element{tag: "Blob"}}},
		{"PDFU-16", &tagged{pages: []taggedPage{{}}}},
	} {
		for _, rule := range accessRules {
			if strings.HasPrefix(rule.id, c.rule) && len(rule.broken(c.d)) == 0 {
				t.Errorf("%s finds nothing wrong", rule.id)
			}
		}
	}
}
