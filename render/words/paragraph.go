package words

import (
	"strings"
	"unicode/utf8"

	"ovillo/render/rich"
)

// shortWord is the longest last word that is tied to the one before it, so that it never stands alone on a line.
const shortWord = 7

// paragraph makes a text ready for the page: an abbreviation is expanded at its first use only, the last two words are
// tied if the last is short, and runs that look the same become one.
func paragraph(t rich.Text) rich.Text {
	if len(t) == 0 {
		return nil
	}
	return merge(tieLast(expandOnce(t)))
}

func expandOnce(t rich.Text) rich.Text {
	seen := map[string]bool{}
	out := append(rich.Text{}, t...)
	for i, r := range out {
		if r.Expand == "" {
			continue
		}
		if seen[r.Expand] {
			out[i].Expand = ""
		}
		seen[r.Expand] = true
	}
	return out
}

// tieLast ties the last two words of a paragraph when the last one is short.
func tieLast(t rich.Text) rich.Text {
	length := 0
	for i := len(t) - 1; i >= 0; i-- {
		at := strings.LastIndexByte(t[i].Text, ' ')
		length += utf8.RuneCountInString(t[i].Text[at+1:])
		if length > shortWord+1 { // the full stop is not a letter
			return t
		}
		if at < 0 {
			continue
		}
		if length == 0 {
			return t
		}
		out := append(rich.Text{}, t...)
		out[i].Text = t[i].Text[:at] + tie + t[i].Text[at+1:]
		return out
	}
	return t
}

// merge joins neighbouring runs that differ in nothing but their text. Runs that are spoken otherwise stay apart.
func merge(t rich.Text) rich.Text {
	var out rich.Text
	for _, r := range t {
		if r.Text == "" {
			continue
		}
		if n := len(out); n > 0 && alike(out[n-1], r) {
			out[n-1].Text += r.Text
			continue
		}
		out = append(out, r)
	}
	return out
}

func alike(a, b rich.Run) bool {
	return a.Strong == b.Strong && a.Link == b.Link && a.Expand == "" && b.Expand == "" && a.Spoken == "" && b.Spoken == ""
}
