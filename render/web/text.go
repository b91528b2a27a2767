package web

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// runs are the stretches of a text as nodes: an abbreviation is explained the first time it stands in the text; a list of numbers is
// heard with the names of the sizes, and seen without.
func runs(text rich.Text) []*node {
	return runsKnowing(text, map[string]bool{})
}

// runsKnowing is runs where some abbreviations were explained before.
func runsKnowing(text rich.Text, known map[string]bool) []*node {
	var out []*node
	for i := 0; i < len(text); {
		if text[i].Spoken == "" {
			out = append(out, run(text[i], known))
			i++
			continue
		}
		seen, heard := el("span").with("aria-hidden", "true"), ""
		for ; i < len(text) && text[i].Spoken != ""; i++ {
			seen.add(styled(text[i]))
			heard += text[i].Spoken
		}
		out = append(out, seen, el("span", t(heard)).class("heard"))
	}
	return out
}

// run is one stretch.
func run(r rich.Run, known map[string]bool) *node {
	n := styled(r)
	switch {
	case n == nil:
		return nil
	case r.Link != "" && safe(r.Link):
		return el("a", n).with("href", r.Link).with("rel", "noopener noreferrer")
	case r.Expand != "" && !known[r.Text]:
		known[r.Text] = true
		return el("abbr", n).with("title", r.Expand)
	}
	return n
}

func styled(r rich.Run) *node {
	parts := strings.Split(r.Text, "\n")
	if len(parts) > 1 {
		n := el("span")
		for i, p := range parts {
			if i > 0 {
				n.add(el("br"))
			}
			n.add(styled(rich.Run{Text: p, Strong: r.Strong}))
		}
		return n
	}
	if r.Strong && r.Text != "" {
		return el("strong", t(r.Text))
	}
	return t(r.Text)
}

// safe reports whether an address may be a link: those that the pages of a PDF may have.
func safe(link string) bool {
	low := strings.ToLower(link)
	return strings.HasPrefix(low, "http://") || strings.HasPrefix(low, "https://") || strings.HasPrefix(low, "mailto:") || strings.HasPrefix(low, "tel:")
}

// para is a paragraph; nil without text.
func para(text rich.Text) *node {
	if len(text) == 0 {
		return nil
	}
	return el("p", runs(text)...)
}

// prose is a text of the author: its paragraphs and headings, the latter of a level and the one below, and its lists.
func (v *view) prose(p plan.Prose, head int) []*node {
	var out []*node
	var lists []*node // those that are open, one in the other
	put := func(n *node) {
		if k := len(lists); k > 0 {
			items := lists[k-1].kids
			items[len(items)-1].add(n)
			return
		}
		out = append(out, n)
	}
	for _, b := range v.l.Prose(v.p, p) {
		if len(lists) > b.Deep {
			lists = lists[:b.Deep]
		}
		switch {
		case b.Head > 0:
			put(el(levels[min(head+b.Head-1, len(levels)-1)], runs(b.Text)...))
			continue
		case b.Bullet == "" || b.Deep == 0:
			put(el("p", runs(b.Text)...))
			continue
		}
		if k := len(lists); k == b.Deep && lists[k-1].tag != listTag(b.Bullet) {
			lists = lists[:k-1] // a list of the other kind follows at once
		}
		for len(lists) < b.Deep {
			list := el(listTag(b.Bullet))
			if first := strings.TrimRight(b.Bullet, ".)"); list.tag == "ol" && first != "1" {
				list.with("start", first)
			}
			if k := len(lists); k > 0 && len(lists[k-1].kids) == 0 {
				lists[k-1].add(el("li"))
			}
			put(list)
			lists = append(lists, list)
		}
		lists[len(lists)-1].add(el("li", el("p", runs(b.Text)...)))
	}
	return out
}

// levels are the heads by their level.
var levels = [...]string{"h1", "h1", "h2", "h3", "h4"}

// listTag tells a list in order from one without.
func listTag(bullet string) string {
	if strings.ContainsAny(bullet, "0123456789") {
		return "ol"
	}
	return "ul"
}
