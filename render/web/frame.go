package web

import (
	"strconv"
	"unicode"

	"ovillo/render/words"
)

// bar is what a reader chooses by: the language and the size. It is there only with the script.
func (pg *page) bar() *node {
	bar := el("header").class("bar").with("hidden", "")
	if len(pg.langs) > 1 {
		langs := el("div").class("langs").with("role", "group")
		for i, l := range pg.langs {
			name := l.Say(words.LanguageName)
			for k, o := range pg.langs {
				if k != i && o.Code() == l.Code() {
					name = upperFirst(l.ReadingNote())
				}
			}
			langs.add(el("button", t(name)).with("type", "button").with("lang", l.Tag()).with("data-lang", strconv.Itoa(i)).with("aria-pressed", "false"))
		}
		bar.add(langs.with("aria-label", pg.langs[0].Say(words.LanguageChoice)))
	}
	for i, l := range pg.langs {
		tools := el("div").class("tools in in"+strconv.Itoa(i)).with("lang", l.Tag())
		if len(pg.all.Sizes) > 1 {
			id := "size-" + strconv.Itoa(i)
			pick := el("select", el("option", t(l.Say(words.AllSizes))).with("value", "va")).with("id", id)
			for z, s := range pg.all.Sizes {
				pick.add(el("option", t(l.SizeName(s))).with("value", "v"+strconv.Itoa(z)).with("data-size", s.Name))
			}
			tools.add(el("label", t(l.Say(words.SizeHead))).with("for", id), pick)
		}
		tools.add(el("button", t(l.Say(words.ClearTicks))).with("type", "button").class("clear").with("data-other", l.Say(words.RestoreTicks)))
		bar.add(tools)
	}
	return bar
}

// keeper is what keeps count: the row at hand, and a button for when it is done.
func (pg *page) keeper(l *words.Language) *node {
	return el("section",
		el("p", el("span", t(l.Say(words.RowHere))).class("heard"), el("a").class("here").with("href", "#")).class("now").with("aria-live", "polite"),
		el("p").class("done"),
		el("button", t(l.Say(words.RowUndone))).with("type", "button").class("back"),
		el("button", t(l.Say(words.RowDone))).with("type", "button").class("next"),
	).class("keeper").with("hidden", "").with("aria-label", l.Say(words.TicksHead))
}

// article is the text of a language.
func (pg *page) article(l *words.Language, views []*view) *node {
	at := 0
	for i, o := range pg.langs {
		if o == l {
			at = i
		}
	}
	n := el("article").class("in in"+strconv.Itoa(at)).with("lang", l.Tag()).
		with("data-done", l.Say(words.RowsDone)).with("data-all", l.Say(words.AllDone)).
		with("data-up", l.Say(words.CountUp)).with("data-down", l.Say(words.CountDown))
	sections := laid(views)
	n.add(sections...)
	return n.add(pg.keeper(l))
}

// upperFirst gives a text its capital.
func upperFirst(s string) string {
	r := []rune(s)
	if len(r) > 0 {
		r[0] = unicode.ToUpper(r[0])
	}
	return string(r)
}
