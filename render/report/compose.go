package report

import (
	"fmt"
	"strings"

	"ovillo/render/font"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Options say how a report is set.
type Options struct {
	Paper layout.Paper
	Words *words.Language // of the report: names the language of the file
}

// Where things stand on a sheet, in millimetres from the corner of the text block.
const (
	blockW  = layout.BlockW
	bodyTop = 10.0
	bodyH   = 230.0
	frontH  = 240.0 // the first sheet has no running head
	footTop = 245.0
)

// setter makes the flow of a report.
type setter struct {
	r    *Report
	root *page.Elem
	sect *page.Elem
	flow []layout.Strip
	mark map[string]string // titles of bookmarks
}

// Compose sets a report as a document.
func Compose(r *Report, o Options) *page.Document {
	s := &setter{r: r, root: &page.Elem{Tag: "Document", Lang: o.Words.Tag()}, mark: map[string]string{}}
	s.front()
	s.summary()
	s.findings()
	s.person()
	s.checks()
	s.tables(hTables, r.Tables)
	s.tables(hCounts, r.Counts)
	sheets := layout.Paginate(s.flow, frontH, bodyH)
	doc := &page.Document{Root: s.root, Title: s.title(), Author: r.By, Lang: o.Words.Tag()}
	_, _, _, top := o.Paper.Sheet()
	for i, sheet := range sheets {
		doc.Pages = append(doc.Pages, s.sheet(sheet, o.Paper, i, len(sheets)))
		for _, m := range sheet.Marks {
			y := top + m.Y
			if i > 0 {
				y += bodyTop
			}
			doc.Outline = append(doc.Outline, page.Outline{Title: s.mark[m.Name], Level: 1, Page: i, Y: y})
		}
	}
	return doc
}

// title is what the document is called.
func (s *setter) title() string {
	if s.r.Title == "" {
		return hHead.in(s.r.Lang) + ": " + clean(s.r.File)
	}
	return hHead.in(s.r.Lang) + ": " + clean(s.r.Title)
}

// sheet puts the running lines round the body of a sheet.
func (s *setter) sheet(sheet layout.Sheet, paper layout.Paper, n, of int) page.Page {
	_, _, left, top := paper.Sheet()
	var b layout.Box
	at := top
	if n > 0 {
		b.Put(left, top, layout.Text(s.line(s.title(), blockW), running, false, 0, nil))
		at += bodyTop
	}
	b.Put(left, at, sheet.Box)
	foot := clean(s.r.File) + " · " + s.r.Source
	if s.r.Numbers != "" {
		foot += " · " + hNumbers.in(s.r.Lang) + " " + s.r.Numbers
	}
	b.Put(left, top+footTop, layout.Text(s.line(foot, blockW-20), running, false, 0, nil))
	b.Put(left, top+footTop, layout.TextRight(fmt.Sprintf("%d / %d", n+1, of), running, true, blockW, nil))
	p := paper.Blank()
	p.Items, p.Label = b.Items, fmt.Sprint(n+1)
	return p
}

// line cuts a running line to its room.
func (s *setter) line(text string, room float64) string {
	for r := []rune(text); running.Width(text, false) > room && len(r) > 1; {
		r = r[:len(r)-1]
		text = string(r) + "…"
	}
	return text
}

// clean makes a text fit to be set: what comes from a source may hold signs that the faces have not.
func clean(text string) string { return font.Named(text) }

func plain(text string) rich.Text { return rich.T(clean(text)) }

func (s *setter) add(strips ...layout.Strip) { s.flow = append(s.flow, strips...) }

// section opens a section with its head; a bookmark leads to it.
func (s *setter) section(head string) {
	s.sect = s.root.New("Sect")
	b := layout.Set(layout.Break(plain(head), headType, blockW, 0), headType, 0, s.sect.New("H2"))
	b.H = layout.Snap(b.H + layout.Module)
	name := fmt.Sprint(len(s.flow))
	s.mark[name] = clean(head)
	s.add(layout.Strip{Box: b, Space: 8 * layout.Module, Keep: true, Heading: true, Mark: name})
}

// front sets the title and the facts under it.
func (s *setter) front() {
	s.sect = s.root.New("Sect")
	kind := layout.Text(hHead.in(s.r.Lang), kindType, false, 0, s.sect.New("P"))
	title := s.r.Title
	if title == "" {
		title = s.r.File
	}
	name := layout.Set(layout.Break(plain(title), titleType, blockW, 0), titleType, 0, s.sect.New("H1"))
	s.add(layout.Strip{Box: kind, Keep: true, Heading: true}, layout.Strip{Box: name, Keep: true, Heading: true})
	const label = 26.0
	list := s.sect.New("L")
	for i, f := range s.r.Facts() {
		li := list.New("LI")
		b := layout.Set(layout.Break(plain(f[0]), textType, label-2, 0), textType, 0, li.New("Lbl"))
		b.Put(0, 0, layout.Set(layout.Break(plain(f[1]), textType, blockW-label, 0), textType, label, li.New("LBody")))
		strip := layout.Strip{Box: b}
		if i == 0 {
			strip.Space = 3 * layout.Module
		}
		s.add(strip)
	}
}

// summary sets how many checks of each group came to what, and what is not known.
func (s *setter) summary() {
	s.section(hSummary.in(s.r.Lang))
	s.table(s.r.Summary(), 62)
	if len(s.r.Unknown) == 0 {
		return
	}
	s.small(hUnknown.in(s.r.Lang))
	for _, line := range s.r.Unknown {
		s.add(layout.Strip{Box: layout.Set(layout.Break(plain(line), textType, blockW, 0), textType, 0, s.sect.New("P"))})
	}
}

// small sets a head within a section.
func (s *setter) small(head string) {
	b := layout.Set(layout.Break(plain(head), groupType, blockW, 0), groupType, 0, s.sect.New("H3"))
	s.add(layout.Strip{Box: b, Space: 4 * layout.Module, Keep: true, Heading: true})
}

// Columns of what was found and of what is asked: a box to tick, the number of the check, the text.
const (
	tickW  = 3.4
	idAt   = 6.0
	textAt = 17.0
)

// tick is a box to tick beside a line of a style.
func tick(style layout.Style) layout.Box {
	var b layout.Box
	b.Add(layout.Frame(0, (style.Leading-tickW)/2, tickW, tickW, 0.22))
	return b
}

// findings sets what was found, each with a box to tick when it is settled.
func (s *setter) findings() {
	s.section(hFindings.in(s.r.Lang))
	any := false
	for _, r := range s.r.Results {
		for i, f := range r.Findings {
			any = true
			s.finding(r, f, i == 0)
		}
	}
	if !any {
		s.add(layout.Strip{Box: layout.Set(layout.Break(plain(tNothingFound.in(s.r.Lang)), textType, blockW, 0), textType, 0, s.sect.New("P"))})
	}
}

func (s *setter) finding(r *Result, f Finding, first bool) {
	if first {
		var b layout.Box
		h := s.sect.New("H3")
		b.Put(0, 0, layout.Text(r.ID, nameType, false, idAt, h))
		b.Put(0, 0, layout.Set(layout.Break(plain(r.Name(s.r.Lang)), nameType, blockW-textAt, 0), nameType, textAt, h))
		s.add(layout.Strip{Box: b, Space: 2 * layout.Module, Keep: true, Heading: true})
	}
	p := s.sect.New("P")
	head := severityNames[f.Severity].in(s.r.Lang) + place(f, s.r.Lang) + ": " + f.Message + code(f)
	b := layout.Set(layout.Break(plain(head), textType, blockW-textAt, 0), textType, textAt, p)
	b.Put(0, 0, tick(textType))
	for _, more := range append(append([]string{}, f.Notes...), strings.Split(f.Help, "\n")...) {
		if more != "" {
			b.Below(0, layout.Set(layout.Break(plain(more), smallType, blockW-textAt-4, 0), smallType, textAt+4, p))
		}
	}
	b.H = layout.Snap(b.H)
	s.add(layout.Strip{Box: b, Space: layout.Module})
}

// person sets the questions, each with a box to tick and room to write.
func (s *setter) person() {
	s.section(hPerson.in(s.r.Lang))
	const lines, pitch = 1, 7.5
	for _, r := range s.r.Results {
		if r.Ask == "" {
			continue
		}
		p := s.sect.New("P")
		b := layout.Text(r.ID, nameType, false, idAt, p)
		b.Put(0, 0, tick(textType))
		b.Put(0, 0, layout.Set(layout.Break(plain(r.Ask), textType, blockW-textAt, 0), textType, textAt, p))
		for range lines {
			b.H += pitch
			b.Add(layout.Rule(textAt, b.H-1, blockW, b.H-1, 0.1))
		}
		b.H = layout.Snap(b.H)
		s.add(layout.Strip{Box: b, Space: layout.Module})
	}
}

// checks sets every check with its status and what was looked at.
func (s *setter) checks() {
	s.section(hChecks.in(s.r.Lang))
	const statusAt, nameAt = 11.0, 33.0
	for _, g := range Groups {
		s.small(groupNames[g].in(s.r.Lang))
		table := s.sect.New("Table")
		for _, r := range s.r.Results {
			if r.Group != g {
				continue
			}
			tr := table.New("TR")
			th := tr.New("TH")
			th.Scope = "Row"
			b := layout.Text(r.ID, cellType, false, 0, th)
			status := statusNames[r.Status].in(s.r.Lang)
			b.Put(0, 0, layout.Text(status, cellType, r.Status == Found || r.Status == NotChecked || r.Status == InPart, statusAt, tr.New("TD")))
			td := tr.New("TD")
			name := layout.Set(layout.Break(plain(r.Name(s.r.Lang)), cellType, blockW-nameAt, 0), cellType, nameAt, td)
			for _, line := range r.said() {
				name.Below(0, layout.Set(layout.Break(plain(line), smallType, blockW-nameAt, 0), smallType, nameAt, td))
			}
			b.Put(0, 0, name)
			b.H = layout.Snap(b.H)
			s.add(layout.Strip{Box: b, Space: layout.Module})
		}
	}
}

// said is what stands under the name of a check: why it was not made or not wholly, what was looked at, facts.
func (r *Result) said() []string {
	var out []string
	if r.Why != "" {
		out = append(out, r.Why)
	}
	if len(r.Looked) > 0 {
		out = append(out, strings.Join(r.Looked, ", "))
	}
	return append(out, r.Notes...)
}
