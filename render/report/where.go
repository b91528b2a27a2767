package report

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
)

// texts are a source and the files it uses, which stand behind it in their order, each one byte behind the end of the one before.
type texts struct {
	main string
	used []plan.UsedFile
}

func (in *Input) texts() texts { return texts{in.Text, in.Used} }

// all is everything that the source says, for its mark.
func (t texts) all() string {
	var b strings.Builder
	b.WriteString(t.main)
	for _, u := range t.used {
		b.WriteString("\x00" + u.Name + "\x00")
		b.Write(u.Text)
	}
	return b.String()
}

// line is the number of the line that holds a byte, and the used file that it is in; "": the source itself. 0: none does.
func (t texts) line(at int32) (file string, n int) {
	text, base := t.main, 0
	for _, u := range t.used {
		if int(at) <= base+len(text) {
			break
		}
		base += len(text) + 1
		file, text = u.Name, string(u.Text)
	}
	if int(at) < base || int(at) > base+len(text) {
		return "", 0
	}
	return file, 1 + strings.Count(text[:int(at)-base], "\n")
}

// said is a line in words: "line 31", "common.ovillo, line 4".
func said(file string, n int, lang string) string {
	if file != "" {
		return tLineIn.with(lang, "file", file, "line", strconv.Itoa(n))
	}
	return tLine.with(lang, "line", strconv.Itoa(n))
}
