package compare

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// book gives the yarns, parts, charts and stitches of a pattern the numbers and names that they have in both: those of the old one.
// A nil list leaves them as they are.
type book struct {
	p      *plan.Pattern // in one size
	yarns  []int
	parts  []int
	charts []int
	own    map[stitch.ID]stitch.ID
	sites  []map[string]site // where the labels of each part are
}

func renumber(of []int, i int) int {
	if of == nil || i < 0 || i >= len(of) {
		return i
	}
	if of[i] < 0 {
		return 1000 + i // only this pattern has it
	}
	return of[i]
}

func (b *book) id(id stitch.ID) stitch.ID {
	if was, ok := b.own[id]; ok {
		return was
	}
	return id
}

func (b *book) form(f stitch.Form) string {
	f.ID = b.id(f.ID)
	return fmt.Sprintf("%s/%d/%d/%d/%d/%d", f.ID, f.Post, f.Loop, f.Together, f.Group, f.Of)
}

// wording are the fields that say how something is called, written or found, and nothing of what is made. Whatever else stands in
// a plan counts, also what is added to it one day.
var wording = []string{
	"Label", "Called", "Span", "Title", "Text", "Names", "Abbr", "Letter", "Half", "For",
	"Row.First", "Row.Last", "Row.Chart", "Row.Counts", "Row.Change", "Row.Striped", "Row.Tall", "Row.Sided", "Row.Wrong", "Row.Work", "Row.MarksUp",
	"Block.First", "Block.Last", "Block.Counts", "Block.Change", "Block.Tall", "Begin.Throughout",
	"RowFact.Number", "RowFact.Width", "RowFact.Height", "RowFact.Yarn", "RowFact.Texture", "RowFact.Tall",
	"Start.N", "Start.Extra", "Start.Spelt", "Ref.Row", "Ref.ToRow",
	"Finishing.Row", "Finishing.Before", "Grid.Round",
}

// numbered are the fields that point at something of the pattern by its number, which both patterns must have for it.
var numbered = []string{"Yarn", "Part", "Motif", "Chart", "Marker"}

func isWording(of reflect.Type, field string) bool {
	return slices.Contains(wording, field) || slices.Contains(wording, of.Name()+"."+field)
}

// keyer writes what a thing of the plan means in one size as a text, so that two can be compared.
type keyer struct {
	*book
	part *plan.Part
	b    strings.Builder
	refs []ref // rows that it refers to, in order
}

// key is the meaning of a thing of the plan, without the rows it refers to.
func (b *book) key(v any) string {
	k := keyer{book: b}
	k.put(reflect.ValueOf(v), "")
	return k.b.String()
}

var (
	lengthsType = reflect.TypeFor[plan.Lengths]()
	idType      = reflect.TypeFor[stitch.ID]()
	formType    = reflect.TypeFor[stitch.Form]()
	refType     = reflect.TypeFor[plan.Ref]()
	workType    = reflect.TypeFor[[]plan.Instr]()
	proseType   = reflect.TypeFor[plan.Prose]()
)

// tallied writes a map in an order of its own.
func (k *keyer) tallied(v reflect.Value, field string) {
	var list []string
	for _, key := range v.MapKeys() {
		one := keyer{book: k.book, part: k.part}
		if field == "ByYarn" {
			fmt.Fprintf(&one.b, "%d", k.yarn(int(key.Int())))
		} else {
			one.put(key, "")
		}
		one.b.WriteString("=")
		one.put(v.MapIndex(key), "")
		list = append(list, one.b.String())
	}
	slices.Sort(list)
	k.b.WriteString(strings.Join(list, " "))
}

func (k *keyer) put(v reflect.Value, field string) {
	switch v.Type() {
	case lengthsType:
		for _, l := range v.Interface().(plan.Lengths) {
			fmt.Fprintf(&k.b, "%d ", printed(l))
		}
		return
	case idType:
		k.b.WriteString(string(k.id(stitch.ID(v.String()))))
		return
	case formType:
		k.b.WriteString(k.form(v.Interface().(stitch.Form)))
		return
	case workType:
		w := worker{keyer: k}
		w.all(v.Interface().([]plan.Instr))
		k.b.WriteString(w.String())
		return
	case proseType:
		return // its figures are compared by themselves
	case refType:
		r := v.Interface().(plan.Ref)
		k.refs = append(k.refs, k.refers(&r))
	}
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if v.IsNil() {
			k.b.WriteString("-")
			return
		}
		k.put(v.Elem(), field)
	case reflect.Struct:
		k.b.WriteString(v.Type().Name() + "{")
		for i := range v.NumField() {
			f := v.Type().Field(i)
			if !f.IsExported() || isWording(v.Type(), f.Name) {
				continue
			}
			if v.Field(i).IsZero() && !slices.Contains(numbered, f.Name) {
				continue
			}
			k.b.WriteString(f.Name + ":")
			k.put(v.Field(i), f.Name)
			k.b.WriteString(" ")
		}
		k.b.WriteString("}")
	case reflect.Slice, reflect.Array:
		if m := v.MethodByName("Map"); m.IsValid() { // a tally: the order in which things were met says nothing
			k.tallied(m.Call(nil)[0], field)
			return
		}
		k.b.WriteString("[")
		for i := range v.Len() {
			if field == "Drop" {
				fmt.Fprintf(&k.b, "m%d", k.marker(int(v.Index(i).Int())))
			} else {
				k.put(v.Index(i), "")
			}
			k.b.WriteString(" ")
		}
		k.b.WriteString("]")
	case reflect.Map:
		k.tallied(v, field)
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		n := int(v.Int())
		switch field {
		case "Yarn":
			n = k.yarn(n)
		case "Part", "Motif":
			n = renumber(k.parts, n)
		case "Chart":
			n = renumber(k.charts, n)
		case "Marker":
			n = k.marker(n)
		}
		fmt.Fprintf(&k.b, "%d", n)
	default:
		fmt.Fprintf(&k.b, "%v", v.Interface())
	}
}

// partYarn stands for the yarn of the part: where a part is worked in another, that is said of the part and not of each row.
const partYarn = -2

func (k *keyer) yarn(i int) int {
	if k.part != nil && i == k.part.Yarn {
		return partYarn
	}
	return renumber(k.yarns, i)
}

// marker is the printed number of a marker.
func (k *keyer) marker(i int) int {
	if k.part == nil || i < 0 || i >= len(k.part.Markers) {
		return -1
	}
	return k.part.Markers[i].Number
}

// printed is a length of the piece as pages print it: in millimetres. Hooks and widths are what they are.
func printed(l plan.Length) plan.Length {
	if l == plan.NoLength {
		return l
	}
	if l < 0 {
		return -printed(-l)
	}
	return (l + plan.Millimetre/2) / plan.Millimetre
}

// ref is a row that something refers to.
type ref struct {
	part       int // by the number that both patterns have for it
	row, toRow int // 0: none
	at         site
}

// site is where a label stands: so many things are made in its row before it. A label that is not found stands nowhere.
type site struct{ made int }

var nowhere = site{-1}

func (k *keyer) refers(r *plan.Ref) ref {
	out := ref{part: renumber(k.parts, r.Part), at: nowhere}
	if len(r.Row) > 0 {
		out.row = r.Row[0]
	}
	if len(r.ToRow) > 0 {
		out.toRow = r.ToRow[0]
	}
	if r.Part >= 0 && r.Part < len(k.sites) && r.Label != "" {
		if at, ok := k.sites[r.Part][r.Label]; ok {
			out.at = at
		}
	}
	return out
}
