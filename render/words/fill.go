package words

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/render/rich"
)

const (
	tie  = "\u00a0" // never breaks
	dash = "–"
)

// fill writes a template: each {} takes the next argument, each ~ ties what stands on its two sides. An argument is a
// string, an int, a text or a number. Behind a list of sizes a tie is an ordinary space, for such a list is long.
func fill(template string, args ...any) rich.Text {
	var out rich.Text
	list := false
	for {
		before, after, found := strings.Cut(template, "{}")
		if before != "" {
			if list && strings.HasPrefix(before, "~") {
				before = " " + before[1:]
			}
			out = append(out, rich.Run{Text: asMeant.Replace(before)})
		}
		if !found {
			break
		}
		if len(args) == 0 {
			panic("words: too few arguments for a template")
		}
		list = false
		switch a := args[0].(type) {
		case string:
			out = append(out, rich.Run{Text: a})
		case int:
			out = append(out, rich.Run{Text: strconv.Itoa(a)})
		case rich.Text:
			out = append(out, a...)
		case num:
			out = append(out, a.text...)
			list = a.list
		default:
			panic(fmt.Sprintf("words: %T in a template", a))
		}
		args, template = args[1:], after
	}
	return out
}

// verbatim is a text of the author that becomes a part of a template: its signs stand for themselves there, and never for places. They are
// changed for characters that no text has.
func verbatim(s string) string { return asWrittenThere.Replace(s) }

var (
	asWrittenThere = strings.NewReplacer("{", "\ufdd0", "~", "\ufdd1")
	asMeant        = strings.NewReplacer("~", tie, "\ufdd0", "{", "\ufdd1", "~")
)

// join puts texts one behind the other with a separator; empty ones are left out.
func join(sep string, texts ...rich.Text) rich.Text {
	var out rich.Text
	for _, t := range texts {
		if len(t) == 0 {
			continue
		}
		if len(out) > 0 && sep != "" {
			out = append(out, rich.Run{Text: sep})
		}
		out = append(out, t...)
	}
	return out
}

// words makes a text of a string; of an empty one it is none.
func words(s string) rich.Text {
	if s == "" {
		return nil
	}
	return rich.T(s)
}

// sentence makes a text start with a capital and end with a full stop.
func sentence(t rich.Text) rich.Text {
	if len(t) == 0 {
		return nil
	}
	return stopped(capital(t))
}

// stopped ends a text with a full stop if nothing ends it yet.
func stopped(t rich.Text) rich.Text {
	last, _ := utf8.DecodeLastRuneInString(strings.TrimRight(t.String(), " \u00a0"))
	if strings.ContainsRune(".!?:…", last) {
		return t
	}
	return append(t[:len(t):len(t)], rich.Run{Text: "."})
}

// capital makes the first letter of a text a capital. Abbreviations with a capital of their own and texts that start
// with a bracket or a figure stay as they are.
func capital(t rich.Text) rich.Text { return changeFirst(t, unicode.ToUpper) }

// lower makes the first letter small, unless the word has other capitals (an abbreviation, a name in capitals).
func lower(s string) string {
	word, _, _ := strings.Cut(s, " ")
	if strings.ToLower(word[min(1, len(word)):]) != word[min(1, len(word)):] {
		return s
	}
	return changeFirst(rich.T(s), unicode.ToLower).String()
}

// upper makes the first letter of a string a capital.
func upper(s string) string { return changeFirst(rich.T(s), unicode.ToUpper).String() }

func changeFirst(t rich.Text, change func(rune) rune) rich.Text {
	for i, r := range t {
		if r.Text == "" {
			continue
		}
		first, n := utf8.DecodeRuneInString(r.Text)
		out := append(rich.Text{}, t...)
		out[i].Text = string(change(first)) + r.Text[n:]
		return out
	}
	return t
}

// figures writes numbers one by one.
func figures(numbers []int) []rich.Text {
	var out []rich.Text
	for _, n := range numbers {
		out = append(out, fill("{}", n))
	}
	return out
}
