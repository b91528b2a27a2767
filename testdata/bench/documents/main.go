// Command documents writes a pattern for general tools that set documents: the texts of both languages side by side, line by line as they stand
// in the two files that ovillo makes with --format text, with their headings, tables of sizes and drawings. What it writes is what a person
// would write for that tool, with no package that it could do without.
//
//	documents EN.txt ES.txt DRAWINGS FOLDER
package main

import (
	"bytes"
	"fmt"
	"html"
	"log"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"unicode"
)

// line is a line in both languages, and what it is.
type line struct {
	en, es string
	kind   kind
}

type kind int

const (
	plain kind = iota
	section
	part
	item
)

func main() {
	log.SetFlags(0)
	if len(os.Args) != 5 {
		log.Fatal("documents EN.txt ES.txt DRAWINGS FOLDER")
	}
	en, es := linesOf(os.Args[1]), linesOf(os.Args[2])
	if len(en) != len(es) {
		log.Fatalf("%d lines in one language and %d in the other", len(en), len(es))
	}
	var all []line
	for i := range en {
		if en[i] != "" {
			all = append(all, line{en[i], es[i], kindOf(en[i])})
		}
	}
	drawings, err := filepath.Glob(filepath.Join(os.Args[3], "*.svg"))
	if err != nil || len(drawings) == 0 {
		log.Fatal("no drawings in ", os.Args[3])
	}
	for i := range drawings {
		drawings[i] = strings.TrimSuffix(filepath.Base(drawings[i]), ".svg")
	}
	for name, text := range map[string]string{"pattern.typ": typst(all, drawings), "pattern.tex": latex(all, drawings), "pattern.html": web(all, drawings)} {
		if err := os.WriteFile(filepath.Join(os.Args[4], name), []byte(text), 0o644); err != nil {
			log.Fatal(err)
		}
	}
}

func linesOf(path string) []string {
	data, err := os.ReadFile(path)
	if err != nil {
		log.Fatal(err)
	}
	return strings.Split(strings.TrimSpace(string(bytes.ReplaceAll(data, []byte("\u202f"), []byte("\u00a0")))), "\n")
}

var numbered = regexp.MustCompile(`^[0-9]+\. `)

func kindOf(s string) kind {
	switch {
	case numbered.MatchString(s):
		return part
	case strings.ToUpper(s) == s && strings.ContainsFunc(s, unicode.IsLetter):
		return section
	case strings.HasPrefix(s, "• "):
		return item
	}
	return plain
}

// headed cuts a line into its head, which is set in bold, and the rest.
func headed(s string) (head, rest string) {
	s = strings.TrimPrefix(strings.TrimSpace(s), "• ")
	if head, rest, ok := strings.Cut(s, ": "); ok && len(head) < 40 {
		return head + ":", " " + rest
	}
	return "", s
}

func typst(all []line, drawings []string) string {
	escape := strings.NewReplacer(`\`, `\\`, "*", `\*`, "_", `\_`, "#", `\#`, "[", `\[`, "]", `\]`, "$", `\$`, "<", `\<`, "@", `\@`, "`", "\\`", "~", `\~`, "\u00a0", "~", "/", `\/`).Replace
	cell := func(s, lang string) string {
		head, rest := headed(s)
		if head != "" {
			return fmt.Sprintf("[#set text(lang: %q)\n*%s*%s]", lang, escape(head), escape(rest))
		}
		return fmt.Sprintf("[#set text(lang: %q)\n%s]", lang, escape(rest))
	}
	var b strings.Builder
	fmt.Fprintf(&b, "#set document(title: %q, author: %q)\n", all[0].en, all[1].en)
	b.WriteString("#set page(paper: \"a4\", margin: 18mm, numbering: \"1 / 1\")\n#set text(size: 11.5pt, lang: \"en\")\n#set par(justify: false)\n#set table(stroke: 0.4pt, inset: 7pt)\n")
	fmt.Fprintf(&b, "= %s\n%s\n\n", escape(all[0].en), escape(all[1].en))
	fmt.Fprintf(&b, "#align(center, image(\"%s.svg\", width: 110mm))\n", drawings[len(drawings)-1])
	for i, rows := range tables(all[2:]) {
		h := rows[0]
		if h.kind == section || h.kind == part {
			fmt.Fprintf(&b, "%s %s / %s\n", map[kind]string{section: "==", part: "==="}[h.kind], escape(h.en), escape(h.es))
			rows = rows[1:]
		}
		if len(rows) > 0 {
			b.WriteString("#table(columns: (1fr, 1fr),\n")
			for _, r := range rows {
				fmt.Fprintf(&b, "%s, %s,\n", cell(r.en, "en"), cell(r.es, "es"))
			}
			b.WriteString(")\n")
		}
		if i > 0 && i <= len(drawings)-1 {
			fmt.Fprintf(&b, "#align(center, image(\"%s.svg\", width: 120mm))\n", drawings[i-1])
		}
	}
	return b.String()
}

func latex(all []line, drawings []string) string {
	escape := strings.NewReplacer(`\`, `\textbackslash{}`, "&", `\&`, "%", `\%`, "$", `\$`, "#", `\#`, "_", `\_`, "{", `\{`, "}", `\}`, "~", `\textasciitilde{}`, "\u00a0", "~",
		"½", `\textonehalf{}`, "¼", `\textonequarter{}`, "¾", `\textthreequarters{}`, "−", `\textminus{}`, "×", `\texttimes{}`, "[", "{[}", "]", "{]}", "•", `\textbullet{}`, "≈", `$\approx$`).Replace
	cell := func(s, lang string) string {
		head, rest := headed(s)
		if head != "" {
			return fmt.Sprintf(`\foreignlanguage{%s}{\textbf{%s}%s}`, lang, escape(head), escape(rest))
		}
		return fmt.Sprintf(`\foreignlanguage{%s}{%s}`, lang, escape(rest))
	}
	var b strings.Builder
	b.WriteString("\\documentclass[11pt,a4paper]{article}\n\\usepackage[T1]{fontenc}\n\\usepackage{lmodern}\n\\usepackage{textcomp}\n\\usepackage[spanish,main=english]{babel}\n\\usepackage[margin=18mm]{geometry}\n" +
		"\\usepackage{longtable}\n\\usepackage{graphicx}\n\\usepackage[pdfusetitle]{hyperref}\n\\setlength{\\parindent}{0pt}\n\\raggedright\n\\renewcommand{\\arraystretch}{1.4}\n")
	fmt.Fprintf(&b, "\\title{%s}\n\\author{%s}\n\\date{}\n\\begin{document}\n\\maketitle\n", escape(all[0].en), escape(all[1].en))
	picture := func(name, width string) {
		fmt.Fprintf(&b, "\\begin{center}\\includegraphics[width=%s]{%s.pdf}\\end{center}\n", width, name)
	}
	picture(drawings[len(drawings)-1], "110mm")
	for i, rows := range tables(all[2:]) {
		h := rows[0]
		if h.kind == section || h.kind == part {
			fmt.Fprintf(&b, "\\%s*{%s / %s}\n", map[kind]string{section: "section", part: "subsection"}[h.kind], escape(h.en), escape(h.es))
			rows = rows[1:]
		}
		if len(rows) > 0 {
			b.WriteString("\\begin{longtable}{|p{0.46\\textwidth}|p{0.46\\textwidth}|}\n\\hline\n")
			for _, r := range rows {
				fmt.Fprintf(&b, "%s & %s \\\\ \\hline\n", cell(r.en, "english"), cell(r.es, "spanish"))
			}
			b.WriteString("\\end{longtable}\n")
		}
		if i > 0 && i <= len(drawings)-1 {
			picture(drawings[i-1], "120mm")
		}
	}
	b.WriteString("\\end{document}\n")
	return b.String()
}

func web(all []line, drawings []string) string {
	cell := func(s, lang string) string {
		head, rest := headed(s)
		if head != "" {
			head = "<b>" + html.EscapeString(head) + "</b>"
		}
		return fmt.Sprintf("<td lang=%q>%s%s</td>", lang, head, html.EscapeString(rest))
	}
	var b strings.Builder
	fmt.Fprintf(&b, "<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>%s</title>\n<style>@page{size:A4;margin:18mm}body{font:10.5pt serif}"+
		"table{border-collapse:collapse;width:100%%}td{border:1px solid;padding:2mm;width:50%%;vertical-align:top}tr{break-inside:avoid}img{display:block;margin:auto}</style></head><body>\n", html.EscapeString(all[0].en))
	fmt.Fprintf(&b, "<h1>%s</h1>\n<p>%s</p>\n<img src=\"%s.svg\" style=\"width:110mm\" alt=\"\">\n", html.EscapeString(all[0].en), html.EscapeString(all[1].en), drawings[len(drawings)-1])
	for i, rows := range tables(all[2:]) {
		h := rows[0]
		if h.kind == section || h.kind == part {
			tag := map[kind]string{section: "h2", part: "h3"}[h.kind]
			fmt.Fprintf(&b, "<%s>%s / %s</%s>\n", tag, html.EscapeString(h.en), html.EscapeString(h.es), tag)
			rows = rows[1:]
		}
		if len(rows) > 0 {
			b.WriteString("<table>\n")
			for _, r := range rows {
				fmt.Fprintf(&b, "<tr>%s%s</tr>\n", cell(r.en, "en"), cell(r.es, "es"))
			}
			b.WriteString("</table>\n")
		}
		if i > 0 && i <= len(drawings)-1 {
			fmt.Fprintf(&b, "<img src=\"%s.svg\" style=\"width:120mm\" alt=\"\">\n", drawings[i-1])
		}
	}
	b.WriteString("</body></html>\n")
	return b.String()
}

// tables divides the lines at their headings.
func tables(all []line) (out [][]line) {
	from := 0
	for i, l := range all {
		if i > from && (l.kind == section || l.kind == part) {
			out = append(out, all[from:i])
			from = i
		}
	}
	return append(out, all[from:])
}
