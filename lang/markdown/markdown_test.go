package markdown_test

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/lang/markdown"
)

// shown writes blocks so that a test can be read: emphasis in stars, links behind their text, values in braces.
func shown(blocks []markdown.Block) string {
	var out []string
	for _, b := range blocks {
		line := strings.Repeat("  ", b.Deep) + strings.Repeat("#", b.Head) + b.Bullet + "|"
		for _, r := range b.Runs {
			text := strings.ReplaceAll(r.Text, "\n", "⏎")
			if r.Hole != nil {
				text = "{" + r.Hole.Name + ":" + r.Hole.One + ":" + r.Hole.Many + "}"
			}
			if r.Strong {
				text = "*" + text + "*"
			}
			if r.Link != "" {
				text += "<" + r.Link + ">"
			}
			line += text
		}
		out = append(out, line)
	}
	return strings.Join(out, "\n")
}

func TestRead(t *testing.T) {
	for _, k := range []struct{ text, want string }{
		{"", ""},
		{" \n ", ""},
		{"One\nline.\n\nAnother.", "|One line.\n|Another."},
		{"*one* and **two** and ***three***", "|*one*| and |*two*| and |*three*|"},
		{"Do:\n\n- one\n- two\n\n  more of two\n  1. inner\n  2. inner", "|Do:\n  •|one\n  •|two\n  |more of two\n    1.|inner\n    2.|inner"},
		{"7. seven\n8. eight", "  7.|seven\n  8.|eight"},
		{"# A\n## B\ntext\n\nC\n===", "#|A\n##|B\n|text\n#|C"},
		{"[my *page*](https://a.example) and [other][o]\n\n[o]: https://b.example", "|my <https://a.example>|*page*<https://a.example>| and |other<https://b.example>"},
		{"<https://a.example> <me@a.example>", "|https://a.example<https://a.example>| |me@a.example<mailto:me@a.example>"},
		{`5 \* 3 &amp; 2`, "|5 * 3 & 2"},
		{"one\\\ntwo  \nthree", "|one⏎|two⏎|three"},
		{"{waist} and **{legs|leg|legs}**", "|{waist::}| and |*{legs:leg:legs}*"},
		{"{my_name} and {my_name}", "|{my_name::}| and |{my_name::}"},
		{"[a](https://a.example/{b})", "|a<https://a.example/{b}>"},
		{"A { brace, 5 < 6, 10~12 cm or 5~6 cm, a | b", "|A { brace, 5 < 6, 10~12 cm or 5~6 cm, a | b"},
	} {
		blocks, faults := markdown.Read(k.text)
		got := shown(blocks)
		// Where runs meet does not matter.
		if strings.ReplaceAll(got, "|", "") != strings.ReplaceAll(k.want, "|", "") {
			t.Errorf("%q:\n got %s\nwant %s", k.text, got, k.want)
		}
		if len(faults) > 0 {
			t.Errorf("%q: %v", k.text, faults)
		}
	}
}

// Each sign that the pages have nothing for is found, and its place is in the text of the author, behind values too.
func TestFaults(t *testing.T) {
	for _, k := range []struct{ text, want string }{
		{"| a | b |\n|---|---|\n| 1 | 2 |", "table “| a | b |”"},
		{"- | a | b |\n  |---|---|", "table “| a | b |”"},
		{"a {waist} ![photo](p.png) b", "image “![photo”"},
		{"a {waist} <b>bold</b>", "html “<b>”, html “</b>”"},
		{"<div>\nx\n</div>", "html “<div>”"},
		{"text <!-- later --> more", "html “<!-- later -->”"},
		{"use `code`", "code “`code”"},
		{"a\n\n    indented", "code “indented”"},
		{"```\nfence\n```", "code “```”"},
		{"> quoted", "quotation “> quoted”"},
		{"a\n\n---\n\nb", "line “---”"},
		{"~~gone~~ and more", "strikethrough “~~gone~~”"},
		{"- [ ] to do\n- [x] done", "box “[ ]”, box “[x]”"},
		{"see[^1]\n\n[^1]: there, in the notes", "footnote “[^1]”, footnote “[^1]”"},
		{"a {waist} [run](javascript:alert(1)) b", "address “[run”"},
		{"[a](JavaScript:x) [b](&#106;avascript:x) [c](data:text/html,x) [d](file:///x)", "address “[a”, address “[b”, address “[c”, address “[d”"},
		{"[a](//a.example) [b](/b) [c](c.html) [d](#d) [e]()", "address “[a”, address “[b”, address “[c”, address “[d”, address “[e”"},
		{"[a](http:) [b](https:///b) [c](mailto:) [d](https://[::1) [e](https://%zz)", "address “[a”, address “[b”, address “[c”, address “[d”, address “[e”"},
		{"[a](https://a.example) [b](HTTP://b.example) [c](mailto:c@c.example) [d](tel:+34600000000) <https://e.example>", ""},
		{`\~~kept~~ \[^1] \<b>`, ""},
	} {
		_, faults := markdown.Read(k.text)
		var got []string
		for _, f := range faults {
			word, _, _ := strings.Cut(strings.TrimSpace(k.text[f.From:f.To]), "\n")
			got = append(got, fmt.Sprintf("%s “%s”", f.What, word))
		}
		if s := strings.Join(got, ", "); s != k.want {
			t.Errorf("%q: %s, want %s", k.text, s, k.want)
		}
	}
}

func TestHoles(t *testing.T) {
	for _, k := range []struct{ text, want string }{
		{"{a} { b } {c.d}", "a::0-3 b::4-9 c.d::10-15"},
		{"{n|st|sts}", "n:st:sts0-10"},
		{"{n | st | sts}", "n:st:sts0-14"},
		{"{n|st}", "n|st::0-6"}, // no value has such a name
		{"{}", "::0-2"},
		{"{ and\n}", ""},
	} {
		var got []string
		for _, h := range markdown.Holes(k.text) {
			got = append(got, fmt.Sprintf("%s:%s:%s%d-%d", h.Name, h.One, h.Many, h.From, h.To))
		}
		if s := strings.Join(got, " "); s != k.want {
			t.Errorf("%q: %s, want %s", k.text, s, k.want)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add("**a** {b} [c](d)\n\n- e\n")
	f.Add("| a |\n|---|\n{x}\n![y](z) <b>\n> q\n\n---\n")
	f.Fuzz(func(t *testing.T, s string) {
		blocks, faults := markdown.Read(s)
		for _, b := range blocks {
			if len(b.Runs) == 0 {
				t.Errorf("an empty block of %q", s)
			}
			for _, r := range b.Runs {
				if (r.Text == "") == (r.Hole == nil) {
					t.Errorf("a run with neither or both, of %q", s)
				}
			}
		}
		for _, fault := range faults {
			if fault.From < 0 || fault.To < fault.From || fault.To > len(s) {
				t.Errorf("%v is outside of %q", fault, s)
			}
		}
	})
}

// Lists may stand one in the other as deep as MostDeep; one deeper is a fault where it begins, whether each has a line of its own or all
// stand in one.
func TestMostDeep(t *testing.T) {
	for over := range 2 {
		deep := markdown.MostDeep + over
		lines := ""
		for i := range deep {
			lines += fmt.Sprintf("%s- %c\n", strings.Repeat("  ", i), 'a'+i)
		}
		for what, text := range map[string]string{"in lines": lines, "in one line": strings.Repeat("- ", deep) + "a\n", "in lines, with numbers": strings.ReplaceAll(strings.ReplaceAll(lines, "  ", "   "), "-", "1.")} {
			blocks, faults := markdown.Read(text)
			if over == 0 {
				if len(faults) > 0 || len(blocks) == 0 || blocks[len(blocks)-1].Deep != deep {
					t.Errorf("%s, %d deep: %v, %v", what, deep, faults, blocks)
				}
				continue
			}
			if len(faults) != 1 || faults[0].What != markdown.Nested || what != "in one line" && !strings.Contains(text[faults[0].From:faults[0].To], string(rune('a'+deep-1))) {
				t.Errorf("%s, %d deep: %v", what, deep, faults)
			}
		}
	}
}
