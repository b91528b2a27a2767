package compile

import (
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file reads the words for stitches under the terms of the source.

// form reads a stitch word under the terms of the source: sc, fpdc, dc2tog, dc3cl, or an own stitch.
func (c *checker) form(word string) (stitch.Form, bool) {
	if o, ok := c.own[stitch.ID(word)]; ok {
		return stitch.Form{ID: o.ID, Together: o.Takes}, true
	}
	if base, n, ok := cutNumber(word, "tog"); ok && n >= 2 {
		g, ok := c.form(base)
		k, standard := stitch.Of(g.ID)
		g.Together = n
		return g, ok && g.Group == stitch.Single && (k.Body || !standard)
	}
	f := stitch.Plain("")
	w := word
	if rest, ok := strings.CutPrefix(word, "fp"); ok {
		f.Post, w = stitch.FrontPost, rest
	} else if rest, ok := strings.CutPrefix(word, "bp"); ok {
		f.Post, w = stitch.BackPost, rest
	}
	if g, base, n, ok := cutGroup(w, inRange); ok {
		f.Group, f.Of, w = g.Group, n, base
	}
	k, ok := stitch.Named(w, c.pat.UKTerms)
	if g, grouped := f.Group.Kind(); !ok || f.Post != stitch.NoPost && !k.Body || grouped && k.ID != g.Only && (g.Only != "" || !k.Body) {
		return stitch.Form{}, false
	}
	f.ID = k.ID
	return f, true
}

// cutNumber splits dc2tog into dc and 2.
func cutNumber(w, suffix string) (string, int, bool) {
	b, ok := strings.CutSuffix(w, suffix)
	i := len(b)
	for i > 0 && b[i-1] >= '0' && b[i-1] <= '9' {
		i--
	}
	if !ok || i == len(b) || i == 0 || len(b)-i > 2 {
		return "", 0, false
	}
	n, _ := strconv.Atoi(b[i:])
	return b[:i], n, true
}

// cutGroup splits dc3cl into a cluster, dc and 3. A V stitch has no number; a picot of three chains needs neither number nor
// chain.
func cutGroup(w string, fits func(g stitch.GroupKind, n int) bool) (g stitch.GroupKind, base string, n int, ok bool) {
	for _, g := range stitch.Groups {
		if b, n, ok := cutNumber(w, g.Word); ok && fits(g, n) {
			return g, b, n, true
		}
		if b, ok := strings.CutSuffix(w, g.Word); ok && g.Usual > 0 {
			switch {
			case b == "" && g.Only == stitch.Chain:
				return g, string(g.Only), g.Usual, true
			case b != "" && g.Only == "":
				return g, b, g.Usual, true
			}
		}
	}
	return g, "", 0, false
}

// inRange reports whether a group can have so many stitches.
func inRange(g stitch.GroupKind, n int) bool {
	return n >= g.Least && n <= g.Most && (!g.Over || n%2 == 0)
}

func anyNumber(stitch.GroupKind, int) bool { return true }

// stitchID reads the name of a plain stitch; another word is reported.
func (c *checker) stitchID(n *lang.Name) stitch.ID {
	if n == nil {
		return ""
	}
	f, ok := c.form(n.Text)
	_, own := c.own[f.ID]
	switch {
	case !ok:
		c.unknownStitch(n)
		return ""
	case f.Derived() && !own:
		c.say(codePlainStitch, n.Span(), diag.Args{"word": n.Text})
		return ""
	}
	return f.ID
}

// unknownStitch reports a word that is no stitch. A group of another number, or of another stitch, is told apart.
func (c *checker) unknownStitch(n *lang.Name) {
	if g, base, made, ok := cutGroup(n.Text, anyNumber); ok && g.Most > 0 {
		k, known := stitch.Named(strings.TrimPrefix(strings.TrimPrefix(base, "fp"), "bp"), c.pat.UKTerms)
		wrong := g.Only != "" && k.ID != g.Only || g.Only == "" && !k.Body
		if known && (wrong || !inRange(g, made)) {
			var of []string
			for _, k := range stitch.Table {
				if k.ID == g.Only || g.Only == "" && k.Body {
					of = append(of, k.Word(c.pat.UKTerms))
				}
			}
			c.say(codeGroupOf, n.Span(), diag.Args{"word": n.Text, "group": g.Word, "least": g.Least, "most": g.Most, "of": of})
			return
		}
	}
	known := c.stitchWords()
	c.say(codeNoStitch, n.Span(), diag.Args{"word": n.Text, "near": c.file.At(n.Span()).Near(n.Text, known), "terms": c.terms()})
}

func (c *checker) terms() string {
	if c.pat.UKTerms {
		return "uk"
	}
	return "us"
}

// stitchWords lists the words for stitches, for hints.
func (c *checker) stitchWords() []string {
	var out []string
	for _, k := range stitch.Table {
		w := k.Word(c.pat.UKTerms)
		out = append(out, w)
		if k.Body {
			out = append(out, w+"2tog", "fp"+w, "bp"+w)
			for _, g := range stitch.Groups {
				switch {
				case g.Only != "" && g.Only != k.ID:
				case g.Usual > 0:
					out = append(out, w+g.Word)
				default:
					out = append(out, w+strconv.Itoa(g.Least)+g.Word)
				}
			}
		}
	}
	for id := range c.own {
		out = append(out, string(id))
	}
	for g := range c.groups {
		out = append(out, g)
	}
	out = append(out, "inc", "dec", "picot")
	slices.Sort(out)
	return out
}
