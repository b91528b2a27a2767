package web

import (
	"encoding/base64"
	"fmt"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/draw"
	"ovillo/render/rich"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// write makes all sections of a view, in the order of the printed pages.
func (v *view) write() {
	v.front()
	v.cautions()
	v.contents()
	v.start()
	v.construction()
	v.howToRead()
	v.abbreviations()
	v.specials()
	v.parts()
	v.finishing()
	v.colophon()
}

// front is what and by whom: title, picture, introduction, facts.
func (v *view) front() {
	s := v.section("title", "front")
	by := el("p", t(v.p.By)).class("by")
	edition := v.l.Edition(v.p)
	if v.left {
		edition = strings.TrimPrefix(edition+", "+v.l.EditionName("left"), ", ")
	}
	s.add("by", el("div", by, para(rich.T(edition))).class("masthead"))
	s.add("h", el("h1", t(v.l.Title(v.p))))
	s.add("picture", v.titlePicture())
	s.add("intro", el("div", v.prose(v.p.Intro, 3)...).class("intro"))
	facts := el("dl").class("facts")
	for _, f := range v.l.Facts(v.p) {
		facts.add(el("div", el("dt", t(f.Head)), el("dd", runs(f.Text)...)))
	}
	s.add("facts", facts)
	if v.left {
		s.add("left", para(v.l.LeftHandedNote(v.p)))
	}
}

// titlePicture is the photograph, or else the drawing of the size that the pattern shows, which is the same in every view.
func (v *view) titlePicture() *node {
	p := v.all
	if photo := v.p.Photo; photo != nil && photo.Data != nil {
		img := el("img").with("src", "data:image/"+photo.Format+";base64,"+base64.StdEncoding.EncodeToString(photo.Data)).
			with("alt", v.l.PhotoAlt(v.p)).with("width", fmt.Sprint(photo.W)).with("height", fmt.Sprint(photo.H))
		fig := el("figure", img).class("title")
		if text := v.l.PhotoCaption(v.p); text != nil {
			fig.add(el("figcaption", runs(text)...))
		}
		return fig
	}
	d, err := draw.Title(p, titleW, titleH, v.langs...)
	if err != nil || d == nil {
		return nil
	}
	fig := v.figure(d, false, t(v.l.SayWith(words.DrawingCaption, v.drawnSize(p))))
	if fig == nil {
		return nil
	}
	return fig.class("title")
}

// drawnSize names the size that drawings of a pattern show.
func (v *view) drawnSize(p *plan.Pattern) string {
	if p.Shown < 0 || p.Shown >= len(p.Sizes) {
		return ""
	}
	return upperFirst(v.l.InSize(p.Sizes[p.Shown]))
}

// The room of drawings, in millimetres: that of the printed pages with two languages.
const (
	titleW, titleH         = 100.0, 120.0
	schematicW, schematicH = 100.0, 110.0
	mapW, mapH             = 160.0, 60.0
	chartW                 = 160.0
	gridH, stitchesH       = 170.0, 150.0
	motifW, motifH         = 110.0, 90.0
	hereW, hereH           = 14.0, 14.0
)

// cautions are all cautions, with what holds for all of them.
func (v *view) cautions() {
	groups := v.l.Cautions(v.p, ofSafety)
	if len(groups) == 0 {
		return
	}
	s := v.section("cautions", "cautions")
	s.add("h", el("h2", t(v.l.CautionsHead(countOf(groups)))))
	s.add("list", v.cautionLists(groups)...)
	s.add("standing", el("p", t(v.l.Say(words.CautionsStanding))))
}

// ofSafety tells cautions from the notes for those who sell what they make.
func ofSafety(c plan.Caution) bool { return !c.Seller }

func countOf(groups []words.CautionGroup) int {
	n := 0
	for _, g := range groups {
		n += len(g.Items)
	}
	return n
}

// cautionLists are cautions as lists, for all sizes and for some.
func (v *view) cautionLists(groups []words.CautionGroup) []*node {
	var out []*node
	for _, g := range groups {
		if len(g.Only) > 0 {
			out = append(out, el("p", runs(g.Only)...).class("only"))
		}
		list := el("ul")
		for _, item := range g.Items {
			li := el("li", para(item.Text))
			for _, reason := range item.Reasons {
				li.add(para(reason))
			}
			list.add(li)
		}
		out = append(out, list)
	}
	return out
}

// contents leads to the sections below.
func (v *view) contents() {
	s := v.section("contents", "contents")
	list := el("ul")
	add := func(key, text string) {
		list.add(el("li", el("a", t(text)).with("href", "#"+v.langID+"-"+key)))
	}
	add("start", v.l.Say(words.BeforeYouStart))
	if v.mapped() {
		add("map", v.l.Say(words.MapHead))
	}
	if len(v.l.HowToRead(v.p)) > 0 {
		add("read", v.l.Say(words.HowToReadHead))
	}
	if len(v.l.Abbreviations(v.p)) > 0 {
		add("abbreviations", v.l.Say(words.AbbreviationsHead))
	}
	if len(v.l.Specials(v.p)) > 0 {
		add("specials", v.l.Say(words.SpecialsHead))
	}
	number := 0
	for i := range v.p.Parts {
		if len(v.doneBefore(i+1)) > 0 {
			number++
			add(fmt.Sprint("assembly-", i), fmt.Sprintf("%d %s", number, v.l.Say(words.AssemblyHead)))
		}
		number++
		add(fmt.Sprint("part-", i), fmt.Sprintf("%d %s", number, v.l.PartTitle(v.p, i)))
	}
	if len(v.doneBefore(0)) > 0 {
		add("finishing", fmt.Sprintf("%d %s", number+1, v.l.Say(words.FinishingHead)))
	}
	s.add("nav", el("nav", el("h2", t(v.l.Say(words.ContentsHead))), list).with("aria-label", v.l.Say(words.ContentsHead)))
}

// drawn returns a scene if there is anything to see in it.
func drawn(s *scene.Scene, err error) *scene.Scene {
	if err != nil || s == nil || len(s.Items) == 0 {
		return nil
	}
	return s
}

// mapLeast is the number of steps from which a piece is worth a map.
const mapLeast = 3

func (v *view) mapped() bool { return len(v.l.MapSteps(v.p)) >= mapLeast }

// construction is how the piece comes about.
func (v *view) construction() {
	if !v.mapped() {
		return
	}
	s := v.section("map", "")
	s.add("h", el("h2", t(v.l.Say(words.MapHead))))
	if d := drawn(draw.Map(v.p, mapW, mapH, v.langs...), nil); d != nil {
		s.add("drawing", v.figure(d, true))
	}
	list := el("ol")
	for _, step := range v.l.MapSteps(v.p) {
		text := append(rich.Text{{Text: step.Title + ". ", Strong: true}}, step.Text...)
		list.add(el("li", runs(text)...))
	}
	s.add("list", list)
}

// howToRead is what the signs of the page mean.
func (v *view) howToRead() {
	facts := v.l.HowToRead(v.p)
	if len(facts) == 0 {
		return
	}
	s := v.section("read", "")
	s.add("h", el("h2", t(v.l.Say(words.HowToReadHead))))
	for _, f := range facts {
		s.add(f.Head, para(append(rich.Text{{Text: f.Head + ". ", Strong: true}}, f.Text...)))
	}
}

// abbreviations is the table of abbreviations.
func (v *view) abbreviations() {
	list := v.l.Abbreviations(v.p)
	if len(list) == 0 {
		return
	}
	s := v.section("abbreviations", "")
	s.add("h", el("h2", t(v.l.Say(words.AbbreviationsHead))))
	s.add("note", para(v.l.TermsNote(v.p)))
	heads := el("tr")
	for _, head := range []string{v.l.Say(words.HereHead), v.l.Say(words.MeansHead), v.l.OthersHead()} {
		heads.add(el("th", t(head)).with("scope", "col"))
	}
	body := el("tbody")
	for _, a := range list {
		others := el("td")
		for i, o := range a.Others {
			if i > 0 {
				others.add(el("br"))
			}
			others.add(t(o))
		}
		body.add(el("tr", el("th", t(a.Short)).with("scope", "row"), el("td", t(a.Meaning)), others))
	}
	s.add("table", v.scroll(el("table", el("thead", heads), body).class("abbreviations"), words.AbbreviationsHead))
}

// scroll lets what is wider than the window be moved, by the keyboard too.
func (v *view) scroll(n *node, name words.Key) *node {
	return el("div", n).class("scroll").with("tabindex", "0").with("role", "group").with("aria-label", v.l.Say(name))
}

// specials explains the stitches that need it.
func (v *view) specials() {
	list := v.l.Specials(v.p)
	if len(list) == 0 {
		return
	}
	s := v.section("specials", "")
	s.add("h", el("h2", t(v.l.Say(words.SpecialsHead))))
	for _, sp := range list {
		d := el("div").class("special")
		if sign, ok := draw.Symbol(sp.Form); ok {
			d.add(v.picture(sign))
		}
		d.add(el("div", el("h3", runs(sp.Head)...), para(sp.Text)))
		s.add(sp.Head.String(), d)
	}
}

// colophon is what stands last: care and label, what changed, what may be done with the pattern, what those who sell must know.
func (v *view) colophon() {
	s := v.section("end", "")
	under := func(key, head string, kids ...*node) {
		kids = slices.DeleteFunc(kids, func(n *node) bool { return n == nil })
		if len(kids) == 0 {
			return
		}
		if head != "" {
			s.add(key, el("h2", t(head)))
		}
		s.add(key+"-text", kids...)
	}
	under("care", v.l.CareHead(v.p), append(v.prose(v.p.Care, 3), para(v.l.Contents(v.p)))...)
	under("changes", v.l.Edition(v.p), v.prose(v.p.Changes, 3)...)
	under("licence", v.l.Say(words.LicenceHead), v.prose(v.p.Licence, 3)...)
	if groups := v.l.Cautions(v.p, func(c plan.Caution) bool { return c.Seller }); len(groups) > 0 {
		under("sellers", v.l.Say(words.SellersHead), append(v.cautionLists(groups), el("p", t(v.l.Say(words.SellersStanding))))...)
	}
	if own := v.l.SetFor(v.p); own != "" {
		s.add("own", el("p", t(own)))
	}
}
