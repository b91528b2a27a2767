package draw

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// The room that a drawing has as a file, in millimetres.
const (
	// fileWide is how wide a drawing is made. It goes on paper, and on a telephone of 320 pixels its figures of 3.2 mm are still
	// eight of them high.
	fileWide   = 120.0
	fileHigh   = 1.5 // of its width
	fileMargin = 3.0 // white all round
	// stripHigh is how high a sheet of a chart is that is cut to a width: a sheet of paper has room for it and its key.
	stripHigh = 190.0
	// phoneLetter is the type that a telephone of 320 pixels shows eight high in a drawing as wide as its screen.
	phoneLetter = 8 * 25.4 / 96
	// mostRowsSaid is how many rows of a chart its description tells; nobody listens to more.
	mostRowsSaid = 100
)

// FileOptions says how drawings are made that become files.
type FileOptions struct {
	Wide   float64 // the most that a drawing is wide, in millimetres; charts are cut into sheets. 0: 120, and charts are whole
	Left   bool    // for a maker who holds the hook in the left hand
	LowInk bool    // black lines only
	Langs  []*words.Language
}

// Drawing is one of the drawings of a pattern, by a name that is the same in every language and that a file can have.
type Drawing struct {
	Name string
	draw func(FileOptions) []*scene.Scene
}

// Sheets draws it in the size that the pattern shows, on one sheet or, a chart that is cut, several. There are none where that
// size has nothing to draw.
func (d Drawing) Sheets(o FileOptions) []*scene.Scene {
	if o.Left {
		langs := make([]*words.Language, len(o.Langs))
		for i, l := range o.Langs {
			m := l.Manner()
			m.Left = true
			langs[i] = l.With(m)
		}
		o.Langs = langs
	}
	var out []*scene.Scene
	for _, s := range d.draw(o) {
		if s == nil || len(s.Items) == 0 {
			continue
		}
		if o.LowInk {
			s = s.LowInk()
		}
		out = append(out, withMargin(s, fileMargin))
	}
	return out
}

// Drawings lists the drawings that a pattern may have, in the order in which the pages have them: title, map, schematic, the plans of
// joined motifs by the names of their parts, and the charts by theirs. Whether a size has something to draw shows when it is drawn.
func Drawings(p *plan.Pattern) []Drawing {
	all := []Drawing{
		{"title", one(noKey, func(w, h float64, l []*words.Language) *scene.Scene { s, _ := Title(p, w, h, l...); return s })},
	}
	if len(p.Parts) > 1 { // one piece is no construction
		key := func(_ *scene.Scene, l []*words.Language) []KeyItem { return mapKey(p, l) }
		all = append(all, Drawing{"map", one(key, func(w, h float64, l []*words.Language) *scene.Scene { return Map(p, w, h, l...) })})
	}
	letters := func(s *scene.Scene, l []*words.Language) []KeyItem { return lettersKey(p, s, l) }
	all = append(all, Drawing{"schematic", one(letters, func(w, h float64, l []*words.Language) *scene.Scene { s, _ := Schematic(p, w, h, l...); return s })})
	add := func(name string, draw func(FileOptions) []*scene.Scene) {
		for taken := true; taken; {
			taken = false
			for _, d := range all {
				if d.Name == name { // a part and a chart may have one name
					name, taken = name+"-chart", true
				}
			}
		}
		all = append(all, Drawing{name, draw})
	}
	for i, part := range p.Parts {
		if part.Grid != nil {
			add(part.Name, one(noKey, func(w, h float64, l []*words.Language) *scene.Scene { return Motifs(p, i, w, h, l...) }))
		}
	}
	for i, c := range p.Charts {
		add(c.Name, func(o FileOptions) []*scene.Scene {
			w, h := o.room()
			sheets := o.withKey(Grid(p, i, w, h, o.Langs...), GridKey(p, i, o.Langs...))
			for _, l := range o.Langs { // the pages have the rows in words beside the chart, and a file has not
				if rows := GridRows(p, i, l); len(sheets) > 0 && len(rows) <= mostRowsSaid {
					sheets[0].Desc[l.Tag()] += " " + strings.Join(rows, " ")
				}
			}
			return sheets
		})
	}
	for i, c := range p.Drawn {
		add(c.Name, func(o FileOptions) []*scene.Scene {
			w, h := o.room()
			key := StitchKey(p, i, o.Langs...)
			if len(key) > 0 { // what is so of the whole key stands once, without a symbol
				note := KeyItem{&scene.Scene{}, map[string]string{}}
				for tag, l := range speak(o.Langs) {
					note.Says[tag] = l.KeyNote
				}
				key = append(key, note)
			}
			return o.withKey(legible(w, h, func(w, h float64) []*scene.Scene { return StitchChart(p, i, w, h, o.Langs...) }), key)
		})
	}
	return all
}

// keyOf is the key that a drawing needs where it stands without the text of the pages.
type keyOf func(*scene.Scene, []*words.Language) []KeyItem

func noKey(*scene.Scene, []*words.Language) []KeyItem { return nil }

// one is a drawing on one sheet, made for a room w by h, with its key below.
func one(key keyOf, draw func(w, h float64, langs []*words.Language) *scene.Scene) func(FileOptions) []*scene.Scene {
	return func(o FileOptions) []*scene.Scene {
		w := fileWide
		if o.Wide > 0 {
			w = o.Wide
		}
		s := draw(w-2*fileMargin, w*fileHigh, o.Langs)
		if s == nil || len(s.Items) == 0 {
			return nil
		}
		return []*scene.Scene{Keyed(hand(s, o), keyHand(key(s, o.Langs), o), o.Langs...)}
	}
}

// withMargin is a drawing with white all round.
func withMargin(s *scene.Scene, m float64) *scene.Scene {
	out := *s
	out.W, out.H = s.W+2*m, s.H+2*m
	out.Items = make([]scene.Item, len(s.Items))
	for i, it := range s.Items {
		out.Items[i] = shifted(it, vec{m, m})
	}
	return &out
}

// mapKey says what the numbers of the map are.
func mapKey(p *plan.Pattern, langs []*words.Language) []KeyItem {
	if len(langs) == 0 {
		return nil
	}
	var out []KeyItem
	for k, st := range langs[0].MapSteps(p) {
		if st.Part < 0 {
			continue // what is done between parts is not drawn
		}
		item := KeyItem{sign(strconv.Itoa(k+1), page.SansBold), map[string]string{}}
		for _, l := range langs {
			item.Says[l.Tag()] = l.PartTitle(p, st.Part)
		}
		out = append(out, item)
	}
	return out
}

// lettersKey says what the letters of the dimension lines are, and how much in the size that is drawn.
func lettersKey(p *plan.Pattern, s *scene.Scene, langs []*words.Language) []KeyItem {
	drawn := map[string]bool{}
	for _, it := range s.Items {
		if l, ok := it.(scene.Label); ok {
			drawn[l.Text] = true
		}
	}
	var out []KeyItem
	for _, m := range p.Measures {
		if !drawn[m.Letter] || p.Shown >= len(m.Values) {
			continue
		}
		item := KeyItem{sign(m.Letter, page.SerifBold), map[string]string{}}
		for tag, w := range speak(langs) {
			form := w.Measure
			if m.Half {
				form = w.Half
			}
			text := fmt.Sprintf(form, m.Letter, w.MeasureName(m), w.cm(m.Values[p.Shown].Cm()))
			item.Says[tag] = strings.TrimSuffix(strings.TrimPrefix(text, m.Letter+": "), ".")
		}
		out = append(out, item)
	}
	return out
}

// sign is a letter or a number as the symbol of a key.
func sign(text string, face page.Face) *scene.Scene {
	const wide, high, em = 5.0, 4.4, 3.8
	return &scene.Scene{W: wide, H: high, Items: []scene.Item{scene.Label{X: wide / 2, Y: high / 2, Text: text, Height: em, Face: face}}}
}

// hand is a drawing for the hand that holds the hook.
func hand(s *scene.Scene, o FileOptions) *scene.Scene {
	if s == nil || !o.Left {
		return s
	}
	return s.Mirrored()
}

// keyHand is a key for that hand: each symbol by itself is mirrored, and the key as a whole reads as before.
func keyHand(key []KeyItem, o FileOptions) []KeyItem {
	out := slices.Clone(key)
	for i := range out {
		out[i].Symbol = hand(out[i].Symbol, o)
	}
	return out
}

// legible draws a chart for a width in such a way that its smallest letters can be read on a telephone: for less room, on more sheets,
// and then enlarged, where it would be drawn too small.
func legible(w, h float64, draw func(w, h float64) []*scene.Scene) []*scene.Scene {
	const most = 2.5
	for k := 1.0; ; k *= 1.1 {
		sheets := draw(w/k, h/k)
		if math.IsInf(w, 1) {
			return sheets
		}
		fine := true
		for i, s := range sheets {
			sheets[i] = s.Enlarged(k)
			fine = fine && s.SmallestLetter()*k >= phoneLetter
		}
		if fine || k > most {
			return sheets
		}
	}
}

// withKey puts the key of a chart below each of its sheets, so that each can be used by itself.
func (o FileOptions) withKey(sheets []*scene.Scene, key []KeyItem) []*scene.Scene {
	if len(sheets) > 1 {
		key = append(slices.Clone(key), SharedKey(o.Langs...))
	}
	key = keyHand(key, o)
	for k, s := range sheets {
		sheets[k] = Keyed(hand(s, o), key, o.Langs...)
	}
	return sheets
}

// room is the room that a chart has.
func (o FileOptions) room() (w, h float64) {
	if o.Wide > 0 {
		return o.Wide - 2*fileMargin, stripHigh
	}
	return math.Inf(1), math.Inf(1)
}
