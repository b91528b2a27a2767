package words

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// num is a whole number of a sentence: one for each size of the step at hand. It knows how it is written.
type num struct {
	at    plan.Nums // Absent where the step has no such number
	sizes plan.Sizes
	text  rich.Text
	list  bool // it is written as a list of sizes
}

// exactly is a number that does not come from a pattern.
func exactly(n int) num { return num{at: plan.Nums{n}, text: rich.T(strconv.Itoa(n))} }

// some reports whether any size has the number.
func (n num) some() bool {
	for _, v := range n.at {
		if v != plan.Absent {
			return true
		}
	}
	return false
}

// unknown reports whether the number differs from pass to pass, so that only how far can be said.
func (n num) unknown() bool { return n.at == nil }

// one reports whether the number is 1 wherever there is one.
func (n num) one() bool { return n.at.Is(1) }

// same returns the number that holds in every size of the step.
func (n num) same() (int, bool) {
	if n.gaps() {
		return 0, false
	}
	return n.at.Same()
}

// gaps reports whether a size of the step has no such number.
func (n num) gaps() bool {
	for i, v := range n.at {
		if v == plan.Absent && n.sizes.Has(i) {
			return true
		}
	}
	return false
}

// plain reports whether every size has the number and none has just one: the noun behind it is then a plural in every
// size. A list that is not plain reads badly behind "each of the" in languages whose article has a number.
func (n num) plain() bool {
	for i, v := range n.at {
		if n.sizes.Has(i) && (v == plan.Absent || v == 1) {
			return false
		}
	}
	return true
}

// per is the number of stitches in one place, which is one unless it is said.
func (c *context) per(n plan.Nums) num {
	if n == nil {
		n = c.same(1)
	}
	return c.num(n)
}

// minus lessens a number by d in every size that has it.
func (c *context) minus(n plan.Nums, d int) plan.Nums {
	if n == nil {
		return nil
	}
	out := make(plan.Nums, len(n))
	for i, v := range n {
		out[i] = v
		if v != plan.Absent {
			out[i] = v - d
		}
	}
	return out
}

// plus adds numbers size by size; nil adds nothing.
func (c *context) plus(n, more plan.Nums) plan.Nums {
	if n == nil || more == nil {
		return n
	}
	out := slices.Clone(n)
	for i, v := range n {
		if v != plan.Absent && more[i] != plan.Absent {
			out[i] = v + more[i]
		}
	}
	return out
}

// num makes a number of an instruction. There, zero means that nothing is done, and is written as a dash. Without
// numbers it is one that nobody can say: it differs from pass to pass.
func (c *context) num(n plan.Nums) num {
	if n == nil {
		return num{sizes: c.sizes}
	}
	at := make(plan.Nums, len(n))
	for i, v := range n {
		at[i] = v
		if v == 0 || !c.sizes.Has(i) {
			at[i] = plan.Absent
		}
	}
	return c.write(at)
}

// tally makes a number that may be zero: a count.
func (c *context) tally(n plan.Nums) num {
	at := make(plan.Nums, len(n))
	for i, v := range n {
		at[i] = v
		if !c.sizes.Has(i) {
			at[i] = plan.Absent
		}
	}
	return c.write(at)
}

func (c *context) write(at plan.Nums) num {
	n := num{at: at, sizes: c.sizes}
	if v, ok := n.same(); ok {
		n.text = rich.T(c.l.integer(v))
		return n
	}
	n.list = len(at) > 1
	n.text = c.l.list(c.l.figures(at), c.names())
	return n
}

// same is one number for all sizes.
func (c *context) same(v int) plan.Nums {
	n := make(plan.Nums, max(len(c.p.Sizes), 1))
	for i := range n {
		n[i] = v
	}
	return n
}

// names are the names of the sizes, for those who hear a list of numbers. Where the names are written, those of sizes that the
// step is not for are empty.
func (c *context) names() []string {
	names := make([]string, len(c.p.Sizes))
	for i, s := range c.p.Sizes {
		if !c.l.read.manner.Named || c.sizes.Has(i) {
			names[i] = c.l.SizeName(s)
		}
	}
	return names
}

// Nums writes a number for every size: 112 (116, 120, 124). Every second size is in the heavier weight; one number
// stands alone if all sizes agree; a dash stands where a size has none. More than six sizes are written in groups.
func (l *Language) Nums(n plan.Nums) rich.Text {
	if v, ok := n.Same(); ok && n.Everywhere() {
		return rich.T(l.integer(v))
	}
	return l.list(l.figures(n), nil)
}

func (l *Language) figures(n plan.Nums) []string {
	out := make([]string, len(n))
	for i, v := range n {
		out[i] = l.figure(v)
	}
	return out
}

func (l *Language) figure(v int) string {
	if v == plan.Absent {
		return dash
	}
	return l.integer(v)
}

// signed writes changes, each with its sign: −2, +4, 0.
func (l *Language) signed(n plan.Nums) []string {
	out := make([]string, len(n))
	for i, v := range n {
		out[i] = l.signedFigure(v)
	}
	return out
}

func (l *Language) signedFigure(v int) string {
	if v > 0 {
		return "+" + l.integer(v)
	}
	return l.figure(v)
}

// list writes one figure for each size. Its spaces never break, but between the groups of a long list. Given the names
// of the sizes, each figure is spoken with its size, or is written with it.
func (l *Language) list(figures, names []string) rich.Text {
	if len(figures) == 1 {
		return rich.T(figures[0])
	}
	if l.read.manner.Named && names != nil {
		return l.namedList(figures, names)
	}
	sep := l.separator()
	var out rich.Text
	add := func(text string, strong bool, spoken string) {
		if n := len(out); n > 0 && out[n-1].Strong == strong {
			out[n-1].Text += text
			out[n-1].Spoken += spoken
			return
		}
		out = append(out, rich.Run{Text: text, Strong: strong, Spoken: spoken})
	}
	for i, f := range figures {
		opens, closes := groupEdge(i, len(figures))
		switch {
		case opens && i == 1:
			add(tie+"(", false, "")
		case opens:
			add(" (", false, "")
		case i > 0:
			add(nbsp(sep), false, "")
		}
		spoken := ""
		if names != nil {
			spoken = names[i] + tie + f
		}
		if names != nil && i > 0 {
			spoken = sep + spoken
		}
		add(f, i%2 == 1, spoken)
		if closes {
			add(")", false, "")
		}
	}
	return hushed(out, names != nil)
}

// namedList writes each figure behind the name of its size: (1 y: 112, 2 y: 116). It may break between the sizes. A size without
// a name is left out.
func (l *Language) namedList(figures, names []string) rich.Text {
	out := rich.T("(")
	sep := ""
	for i, f := range figures {
		if names[i] == "" {
			continue
		}
		out[len(out)-1].Text += sep
		out = append(out, rich.Run{Text: names[i], Strong: true}, rich.Run{Text: ":" + tie + f})
		sep = l.separator()
	}
	out[len(out)-1].Text += ")"
	return out
}

// BySize writes figures, one for each size of a pattern, as a list in a sentence: 112 (116, 120, 124). Where all are the same it is
// that one.
func (l *Language) BySize(p *plan.Pattern, figures []string) rich.Text {
	if len(figures) > 0 && !slices.ContainsFunc(figures, func(f string) bool { return f != figures[0] }) {
		return rich.T(figures[0])
	}
	return l.list(figures, l.context(p, nil, nil).names())
}

// separator parts the sizes of a list. A comma does not, where it is the decimal sign.
func (l *Language) separator() string {
	if l.read.word("decimal") == "," {
		return "; "
	}
	return ", "
}

// hushed gives runs that hold only signs a space to say, in a list that is spoken with the names of its sizes: a run
// without words of its own is read as it stands.
func hushed(t rich.Text, spoken bool) rich.Text {
	for i := range t {
		if spoken && t[i].Spoken == "" {
			t[i].Spoken = " "
		}
	}
	return t
}

// groupEdge says whether size i opens or closes a bracket: sizes from the second on stand in one, in groups of four if
// there are more than six sizes.
func groupEdge(i, n int) (opens, closes bool) {
	if i == 0 {
		return false, false
	}
	group := n - 1
	if n > 6 {
		group = 4
	}
	return (i-1)%group == 0, i == n-1 || (i-1)%group == group-1
}

// integer writes a whole number. Four figures stand solid; from five on they are grouped by a narrow space, never by a
// sign that another country reads as the decimal one.
func (l *Language) integer(v int) string {
	s := strconv.Itoa(v)
	sign := ""
	if s[0] == '-' {
		sign, s = "−", s[1:]
	}
	return sign + grouped(s)
}

func grouped(digits string) string {
	if len(digits) < 5 {
		return digits
	}
	var b strings.Builder
	for i, d := range digits {
		if i > 0 && (len(digits)-i)%3 == 0 {
			b.WriteRune('\u202f')
		}
		b.WriteRune(d)
	}
	return b.String()
}

// Number writes a number with at most so many digits behind the decimal sign of the country; zeros at the end are left
// out.
func (l *Language) Number(v float64, digits int) string {
	tens := math.Pow10(digits)
	s := strconv.FormatFloat(math.Round(math.Abs(v)*tens)/tens, 'f', digits, 64) // halves away from zero
	whole, rest, _ := strings.Cut(s, ".")
	rest = strings.TrimRight(rest, "0")
	out := grouped(whole)
	if rest != "" {
		out += l.read.word("decimal") + rest
	}
	if v < 0 && out != "0" {
		out = "−" + out
	}
	return out
}
