package compile

import (
	"maps"
	"slices"
	"strconv"
	"strings"
	"sync"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
)

// This file tells what the notions of a pattern are, for the cautions: something that can come off, or something that cannot.

var (
	notionWords   = sync.OnceValue(func() []wordRow { return wordList("notions.csv") })
	materialWords = sync.OnceValue(func() []wordRow { return wordList("materials.csv") })
)

// notionFact is what is known of a notion.
type notionFact struct {
	node     *lang.Notion
	kinds    []string // of the table of rules; stuffing; harmless; nil: not known
	material string
	animal   bool
	size     plan.Length
	sizes    plan.Sizes
}

// What the words for notions and what they are made of stand for.
var (
	notionKinds = wordsFor[string]{{"button", "button"}, {"bead", "bead"}, {"bell", "bell"}, {"eye", "safety_eye"}, {"glued_eye", "googly_eye"},
		{"snap", "snap"}, {"zip", "zip"}, {"pompom", "pompom"}, {"rings", "ring"}, {"wire", "wire"}, {"magnet", "magnet"}, {"battery", "battery"},
		{"pin", "pin"}, {"squeaker", "squeaker"}, {"rattle", "rattle_insert"}, {"foam", "foam"}, {"pellets", "weight"}, {"stuffing", "stuffing"},
		{"thread", harmless}, {"cloth", harmless}, {"elastic", harmless}, {"tool", harmless}, {"other", "other"}}
	notionMaterials = wordsFor[string]{{"plastic", "plastic"}, {"wood", "wood"}, {"metal", "metal"}, {"glass", "glass"}, {"cloth", "fabric"},
		{"leather", animal}, {"horn", animal}, {"bone", animal}, {"shell", animal}, {"feather", animal}, {"fur", animal}}
)

const (
	harmless = "harmless"
	stuffing = "stuffing"
	weights  = "weight"
	animal   = "animal" // part of an animal that is no textile fibre
)

// notionFact tells what a notion is: as the source says, or by the words of its text.
func (c *checker) notionFact(n *lang.Notion, out plan.Notion) notionFact {
	f := notionFact{node: n, size: plan.NoLength, sizes: someOf(out.N)}
	for _, l := range slices.Sorted(maps.Keys(out.Text)) {
		f.fromText(out.Text[l])
	}
	if n.Kind != nil {
		f.kinds = []string{"other"} // a word that is none was reported, and something is there
		if k, ok := read(c, n.Kind, "thing", notionKinds); ok {
			f.kinds = []string{k}
		}
	}
	if n.Size != nil {
		if ls := c.value(n.Size, nil).Lengths(); len(ls) > 0 {
			f.size = slices.Min(ls) // the smallest of a part that differs from size to size is the one to choke on
		}
	}
	if m, ok := read(c, n.Material, "material", notionMaterials); ok {
		f.material, f.animal = materialOf(n.Material.Text), m == animal
	}
	return f
}

// materialOf is what a thing is made of in the words of the table of rules, by the word of the source; "" if it is none.
func materialOf(word string) string {
	for _, m := range notionMaterials {
		switch {
		case m.word != word:
		case m.is == animal:
			return "other"
		default:
			return m.is
		}
	}
	return ""
}

var millimetresSaid = lazy.Regexp(`(\d+(?:[.,]\d+)?)\s*mm\b`)

// fromText adds what a text of the notion tells.
func (f *notionFact) fromText(text string) {
	rest := text
	for _, r := range notionWords() {
		for {
			from, to, ok := r.find(rest)
			if !ok {
				break
			}
			rest = rest[:from] + "." + rest[to:]
			if k := r.is["kind"]; !slices.Contains(f.kinds, k) {
				f.kinds = append(f.kinds, k)
			}
		}
	}
	for _, r := range materialWords() {
		if _, _, ok := r.find(text); ok {
			f.material = r.is["material"]
			f.animal = f.animal || r.is["animal"] == "yes"
		}
	}
	if m := millimetresSaid().FindStringSubmatch(text); m != nil {
		if mm, err := strconv.ParseFloat(strings.ReplaceAll(m[1], ",", "."), 64); err == nil && mm < 10_000 {
			f.size = max(f.size, plan.Length(mm*float64(plan.Millimetre)))
		}
	}
}

// endParts are the things that are put on the ends of a cord.
var endParts = map[plan.Ends]caution.Part{plan.EndsBeads: {Kind: "bead"}, plan.EndsPompoms: {Kind: "pompom", Material: "yarn"},
	plan.EndsToggles: {Kind: "other"}}

// partFacts is what is known of the things that are no yarn: those that are sewn on, and the notions.
func (c *checker) partFacts() []caution.Part {
	var out []caution.Part
	for i, step := range c.pat.Finish {
		switch step.Kind {
		case plan.SewButtons:
			size := step.Buttons.Size
			if size <= 0 {
				size = plan.NoLength
			}
			out = append(out, caution.Part{Kind: "button", Material: materialOf(step.Buttons.Material), Size: size, Step: i, At: step.Span, For: someOf(step.Buttons.N)})
		case plan.MakePompom:
			size := plan.NoLength
			if len(step.Length) > 0 {
				size = slices.Min(step.Length)
			}
			out = append(out, caution.Part{Kind: "pompom", Material: "yarn", Size: size, Step: i, At: step.Span})
		case plan.MakeCord:
			if k, ok := endParts[step.Ends]; ok {
				k.Size, k.Step, k.At = plan.NoLength, i, step.Span
				out = append(out, k)
			}
		}
	}
	for _, t := range c.things {
		for _, k := range t.kinds {
			if k == harmless || k == stuffing || k == "button" && c.pat.Notions.Buttons != nil {
				continue // buttons that are sewn on are listed by their step
			}
			out = append(out, caution.Part{Kind: k, Material: t.material, Size: t.size, Step: -1, At: t.node.Span(), For: t.sizes})
		}
	}
	return out
}

// animalPart tells whether a notion, or a button that is sewn on, is part of an animal that is no textile fibre.
func (c *checker) animalPart() caution.Said {
	for _, f := range c.pat.Finish {
		for _, m := range notionMaterials {
			if m.is == animal && m.word == f.Buttons.Material {
				return caution.Said{Is: caution.True, At: f.Span}
			}
		}
	}
	return c.saidOf(func(n notionFact) bool { return n.animal })
}

// saidOf is the first notion of which something holds.
func (c *checker) saidOf(holds func(notionFact) bool) caution.Said {
	for _, t := range c.things {
		if holds(t) {
			return caution.Said{Is: caution.True, At: t.node.Span()}
		}
	}
	return caution.Said{Is: caution.False}
}

// notionsAsked asks of a thing for a child under 3 what each notion is whose words do not tell.
func (c *checker) notionsAsked() {
	if !c.forUnder(36) {
		return
	}
	for _, t := range c.things {
		if t.kinds == nil {
			c.say(codeNotionWord, t.node.Span(), nil)
		}
	}
}

// forUnder reports whether some size is for a child below an age in months, as far as the source says.
func (c *checker) forUnder(months int) bool {
	return slices.ContainsFunc(c.pat.Sizes, func(s plan.Size) bool { return s.Age >= 0 && s.Age < months })
}

var cordNames = sync.OnceValue(func() []wordRow { return wordList("cordnames.csv") })

// cordByName is the row of the list that a part is called by, if it is called like a cord: in its name, or in a title of a word or two.
func cordByName(p *plan.Part) (wordRow, bool) {
	texts := []string{strings.ReplaceAll(p.Name, "_", " ")}
	for _, l := range slices.Sorted(maps.Keys(p.Title)) {
		if t := p.Title[l]; len(strings.Fields(t)) <= 2 {
			texts = append(texts, t)
		}
	}
	for _, r := range cordNames() {
		for _, t := range texts {
			if _, _, ok := r.find(t); ok {
				return r, true
			}
		}
	}
	return wordRow{}, false
}

// suchAs is an example of what may be said of a part that is called like a cord: by its name, and with a place only where that counts.
func (c *checker) suchAs(role, part string) string {
	place, is := "at waist, ", "as tie"
	switch role {
	case "shoulder_strap":
		place, is = "at other, ", "as strap, no ends"
	case "tie_belt":
		is = "as belt"
	case "bow":
		place, is = "at chest, ", "as bow"
	case "drawstring":
		is = "as drawstring"
	case "chin_tie":
		place, is = "at head, ", "as chin_tie"
	case "fringe":
		place, is = "at hem, ", "as fringe"
	}
	if caution.ZoneOf(c.pat.Kind, part) != caution.UnknownZone {
		place = ""
	}
	return place + is
}

// cordsAsked asks of a thing for a child what each part is that is called like a cord, if the finishing does not say it.
func (c *checker) cordsAsked() {
	if !c.forUnder(168) {
		return
	}
	said := c.cordParts()
	for _, p := range c.pat.Parts {
		if r, like := cordByName(p); like && said[p.Name] == nil {
			c.say(codeCordPart, p.Span, diag.Args{"part": p.Name, "as": c.suchAs(r.is["role"], p.Name)})
		}
	}
}
