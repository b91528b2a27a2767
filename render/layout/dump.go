package layout

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"ovillo/render/font"
	"ovillo/render/page"
)

// Dump writes a document as text, for people and for comparison: each page from top to bottom, all that has one baseline
// in one line, each piece with its left edge, and with face and size where they change. «…» is the strong weight, ~ a
// no-break space. Rules and boxes that look alike are summed up, and a drawing is one piece.
func Dump(doc *page.Document) string {
	var b strings.Builder
	for i := range doc.Pages {
		p := &doc.Pages[i]
		fmt.Fprintf(&b, "page %s, %s × %s\n", p.Label, number(p.W), number(p.H))
		y, style := math.Inf(-1), ""
		for _, e := range dumpLines(p) {
			if e.y-y > 0.005 {
				if !math.IsInf(y, -1) {
					b.WriteByte('\n')
				}
				fmt.Fprintf(&b, "%.2f", e.y)
				y = e.y
			} else {
				b.WriteString(" |")
			}
			fmt.Fprintf(&b, " %s", number(e.x))
			if e.style != style && e.style != "" {
				b.WriteString(" [" + e.style + "]")
				style = e.style
			}
			b.WriteString(" " + e.text)
		}
		b.WriteString("\n\n")
	}
	if len(doc.Outline) > 0 {
		b.WriteString("outline\n")
		for _, o := range doc.Outline {
			fmt.Fprintf(&b, "%s%s, page %d at %s\n", strings.Repeat("  ", o.Level), o.Title, o.Page+1, number(o.Y))
		}
	}
	return b.String()
}

func number(v float64) string {
	s := fmt.Sprintf("%.2f", v)
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// entry is a piece of the dump.
type entry struct {
	y, x  float64
	style string // face and size, "" for what is no text
	text  string
}

// dumper gathers the lines of one page.
type dumper struct {
	list  []entry
	drawn map[string]*drawing // by what they are called here
	order []*drawing
	ids   map[string]string // by the place of the figure
}

func dumpLines(p *page.Page) []entry {
	d := &dumper{drawn: map[string]*drawing{}, ids: map[string]string{}}
	for i := 0; i < len(p.Items); i++ {
		switch it := p.Items[i].(type) {
		case page.Glyphs:
			if it.Elem != nil && it.Elem.Tag == "Figure" {
				w := d.of(it.Elem, "", 0)
				w.labels = append(w.labels, it.Text)
				continue
			}
			j := i + 1
			for j < len(p.Items) && follows(p.Items[j-1], p.Items[j]) {
				j++
			}
			d.list = append(d.list, textEntry(p.Items[i:j]))
			i = j - 1
		case page.Path:
			d.of(it.Elem, shape(it), bounds(it)[1]).add(bounds(it))
		case page.Picture:
			d.list = append(d.list, entry{y: it.Y, x: it.X, text: fmt.Sprintf("picture %s × %s, %s", number(it.W), number(it.H), it.Format)})
		case page.Anchor:
			to := it.URI
			if to == "" {
				to = fmt.Sprintf("page %d", it.Page+1)
			}
			d.list = append(d.list, entry{y: it.Y, x: it.X, text: "link to " + to})
		}
	}
	for _, w := range d.order {
		d.list = append(d.list, w.entry())
	}
	sort.SliceStable(d.list, func(i, j int) bool {
		a, b := d.list[i], d.list[j]
		if math.Abs(a.y-b.y) > 0.005 {
			return a.y < b.y
		}
		return a.x < b.x
	})
	return d.list
}

// of returns the drawing that a path or label belongs to: the figure, or all ornaments of a kind at one height.
func (d *dumper) of(elem *page.Elem, kind string, y float64) *drawing {
	key := fmt.Sprintf("%s at %.2f", kind, y)
	switch {
	case elem != nil:
		kind = "drawing"
		at := fmt.Sprintf("%p", elem)
		if elem.Box != nil {
			at = fmt.Sprint(*elem.Box) // what is described in two languages stands at one place
		}
		if _, ok := d.ids[at]; !ok {
			d.ids[at] = fmt.Sprint("figure ", len(d.ids))
		}
		key = d.ids[at]
	case kind == "shape":
		key = kind
	}
	w := d.drawn[key]
	if w == nil {
		w = &drawing{kind: kind}
		d.drawn[key] = w
		d.order = append(d.order, w)
	}
	return w
}

// follows reports whether item b goes on where item a ends, so that both are one line of the dump.
func follows(a, b page.Item) bool {
	g, ok := a.(page.Glyphs)
	h, ok2 := b.(page.Glyphs)
	if !ok || !ok2 || g.Elem != h.Elem || g.Size != h.Size || math.Abs(g.Base-h.Base) > 0.005 || family(g.Face) != family(h.Face) {
		return false
	}
	end := g.X + font.Of(g.Face).Tracked(g.Text, g.Size, g.Track)
	return math.Abs(end-h.X) < 0.5
}

func family(f page.Face) string {
	if f == page.Serif || f == page.SerifBold {
		return "serif"
	}
	return "sans"
}

func textEntry(items []page.Item) entry {
	first := items[0].(page.Glyphs)
	var b strings.Builder
	for _, it := range items {
		g := it.(page.Glyphs)
		text := strings.ReplaceAll(g.Text, "\u00A0", "~")
		if g.Face == page.SansBold || g.Face == page.SerifBold {
			text = "«" + text + "»"
		}
		b.WriteString(text)
	}
	return entry{first.Base, first.X, family(first.Face) + " " + number(first.Size), b.String()}
}

// drawing gathers paths that the dump tells in one line.
type drawing struct {
	kind   string
	n      int
	box    [4]float64 // left, top, right, bottom
	labels []string
}

func (d *drawing) add(b [4]float64) {
	if d.n == 0 {
		d.box = b
	}
	d.n++
	d.box = [4]float64{min(d.box[0], b[0]), min(d.box[1], b[1]), max(d.box[2], b[2]), max(d.box[3], b[3])}
}

func (d *drawing) entry() entry {
	text := fmt.Sprintf("%s %s × %s", d.kind, number(d.box[2]-d.box[0]), number(d.box[3]-d.box[1]))
	if d.n > 1 {
		text += fmt.Sprintf(", %d paths", d.n)
	}
	if len(d.labels) > 0 {
		text += ": " + strings.Join(d.labels, " ")
	}
	return entry{y: d.box[1], x: d.box[0], text: text}
}

// shape names a path that belongs to no drawing.
func shape(p page.Path) string {
	switch n := len(p.Cmds); {
	case n > 2 && p.Cmds[1].Op == 'C': // curves all round
		return "shape"
	case n == 2:
		return "rule " + number(p.Width)
	case n == 5 && p.Fill != nil:
		return "bar"
	case n == 5:
		return "frame " + number(p.Width)
	default:
		return "shape"
	}
}

// bounds is the box round the points of a path: left, top, right, bottom.
func bounds(p page.Path) [4]float64 {
	b := [4]float64{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, c := range p.Cmds {
		n := 1
		switch c.Op {
		case 'C':
			n = 3
		case 'Z':
			n = 0
		}
		for _, q := range c.P[:n] {
			b = [4]float64{min(b[0], q.X), min(b[1], q.Y), max(b[2], q.X), max(b[3], q.Y)}
		}
	}
	return b
}
