package web

import (
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/draw"
	"ovillo/render/words"
)

// A page holds a pattern several times: in all sizes, and in each alone. The text of one language is made for each of these views as a
// list of sections, each a list of blocks under keys, and the lists are then laid over one another: a block that reads the same in
// several views stands once, and says in which it is seen.

// view is the pattern as one choice of the reader shows it, in one language.
type view struct {
	*page
	name   string // as a class: va for all sizes, v0, v1 … for one
	p      *plan.Pattern
	l      *words.Language
	langID string // what ids begin with that only this language has
	one    bool   // one size alone

	small    **draw.SmallPiece // laid out when the first part needs it
	step     [][]int           // which of all steps of a part each of the view is
	drawing  map[string]bool   // charts that are shown already
	known    map[string]bool   // abbreviations that the part at hand has explained
	number   int               // of the part or the steps at hand
	sections []*section
}

// section is a part of the page under a heading.
type section struct {
	key    string
	class  string
	groups []*group
}

// group is blocks that stand in one element, such as the rows of a part in their list.
type group struct {
	key   string
	wrap  func(kids []*node) *node // nil: they stand in the section itself
	items []item
}

// item is a block and the key by which it is known in other views.
type item struct {
	key string
	n   *node
}

// section opens a section.
func (v *view) section(key, class string) *section {
	s := &section{key: key, class: class}
	v.sections = append(v.sections, s)
	return s
}

// add puts blocks into the section itself, numbered by the key.
func (s *section) add(key string, nodes ...*node) {
	g := s.group("", nil)
	for i, n := range nodes {
		g.put(key+strconv.Itoa(i), n)
	}
}

// group returns the group that is open, or opens another.
func (s *section) group(key string, wrap func([]*node) *node) *group {
	if n := len(s.groups); n > 0 && s.groups[n-1].wrapKey() == key {
		return s.groups[n-1]
	}
	g := &group{key: key + "#" + strconv.Itoa(len(s.groups)), wrap: wrap}
	s.groups = append(s.groups, g)
	return g
}

func (g *group) wrapKey() string {
	key, _, _ := strings.Cut(g.key, "#")
	return key
}

func (g *group) put(key string, n *node) {
	if !n.empty() || n != nil && void[n.tag] {
		g.items = append(g.items, item{key, n})
	}
}

// laid lays the sections of views over one another.
func laid(views []*view) []*node {
	lists := make([][]string, len(views))
	for i, v := range views {
		for _, s := range v.sections {
			lists[i] = append(lists[i], s.key)
		}
	}
	var out []*node
	for _, key := range merged(lists) {
		of := make([]*section, len(views))
		var first *section
		var has []bool
		for i, v := range views {
			for _, s := range v.sections {
				if s.key == key {
					of[i] = s
					if first == nil {
						first = s
					}
				}
			}
			has = append(has, of[i] != nil)
		}
		n := el("section").with("id", views[0].langID+"-"+key)
		n.class(strings.TrimSpace(first.class + " " + seenIn(views, has)))
		n.add(laidGroups(views, of, has)...)
		out = append(out, n)
	}
	return out
}

// laidGroups lays the groups of one section over one another.
func laidGroups(views []*view, of []*section, within []bool) []*node {
	lists := make([][]string, len(views))
	for i, s := range of {
		if s != nil {
			for _, g := range s.groups {
				lists[i] = append(lists[i], g.key)
			}
		}
	}
	var out []*node
	for _, key := range merged(lists) {
		groups := make([]*group, len(views))
		var first *group
		has := make([]bool, len(views))
		for i, s := range of {
			if s == nil {
				continue
			}
			for _, g := range s.groups {
				if g.key == key {
					groups[i], has[i] = g, true
					if first == nil {
						first = g
					}
				}
			}
		}
		if first.wrap == nil {
			out = append(out, laidItems(views, groups, within)...)
			continue
		}
		n := first.wrap(laidItems(views, groups, has))
		if c := seenAmong(views, has, within); c != "" {
			n.addClass(c)
		}
		out = append(out, n)
	}
	return out
}

// laidItems lays the blocks of one group over one another.
func laidItems(views []*view, groups []*group, within []bool) []*node {
	lists := make([][]string, len(views))
	for i, g := range groups {
		if g != nil {
			for _, it := range g.items {
				lists[i] = append(lists[i], it.key)
			}
		}
	}
	var out []*node
	for _, key := range merged(lists) {
		var kinds []*node
		var htmls []string
		var has [][]bool
		for i, g := range groups {
			if g == nil {
				continue
			}
			for _, it := range g.items {
				if it.key != key {
					continue
				}
				html := it.n.html()
				k := slices.Index(htmls, html)
				if k < 0 {
					k = len(htmls)
					kinds, htmls, has = append(kinds, it.n), append(htmls, html), append(has, make([]bool, len(views)))
				}
				has[k][i] = true
			}
		}
		for k, n := range kinds {
			if c := seenAmong(views, has[k], within); c != "" {
				n.addClass(c)
			}
			out = append(out, n)
		}
	}
	return out
}

// seenIn is the class of what only some views show; "" where all do.
func seenIn(views []*view, has []bool) string { return seenAmong(views, has, nil) }

// seenAmong is the same where what it stands in is shown by those within alone; nil: by all.
func seenAmong(views []*view, has, within []bool) string {
	var names []string
	some := false
	for i, v := range views {
		switch {
		case has[i]:
			names = append(names, v.name)
		case within == nil || within[i]:
			some = true
		}
	}
	if !some {
		return ""
	}
	return "v " + strings.Join(names, " ")
}

// addClass gives an element one more class.
func (n *node) addClass(c string) {
	for i := 0; i < len(n.attrs); i += 2 {
		if n.attrs[i] == "class" {
			n.attrs[i+1] += " " + c
			return
		}
	}
	n.class(c)
}

// merged is one list of the keys of several, each of them in its own order as far as they agree: what only later lists have stands
// behind what it follows there.
func merged(lists [][]string) []string {
	var out []string
	for _, list := range lists {
		at := -1
		for _, key := range list {
			if k := slices.Index(out, key); k >= 0 {
				at = k
				continue
			}
			at++
			out = slices.Insert(out, at, key)
		}
	}
	return out
}
