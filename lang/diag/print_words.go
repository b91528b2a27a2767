package diag

import (
	"strconv"
	"strings"
)

// labels are the printer's own words.
type labels struct {
	severity   [Note + 1]string
	counted    [Note + 1]string // "error|errors"
	help, note string
	meant      string
	sizes      string
	more       string // template
	refused    string // heads of the page behind a code
	right      string
	noCode     string // template
}

var labelsIn = map[string]*labels{
	"en": {
		severity: [...]string{Error: "error", Warning: "warning", Note: "note"},
		counted:  [...]string{Error: "error|errors", Warning: "warning|warnings", Note: "note|notes"},
		help:     "help", note: "note", meant: "meant", sizes: "sizes",
		more:    "… and {n} more {n|message|messages} not shown",
		refused: "Example", right: "Put right",
		noCode: "there is no message with the code {code}",
	},
	"es": {
		severity: [...]string{Error: "error", Warning: "aviso", Note: "nota"},
		counted:  [...]string{Error: "error|errores", Warning: "aviso|avisos", Note: "nota|notas"},
		help:     "ayuda", note: "nota", meant: "a propósito", sizes: "tallas",
		more:    "… y {n} {n|mensaje|mensajes} más sin mostrar",
		refused: "Ejemplo", right: "Corregido",
		noCode: "no hay ningún mensaje con el código {code}",
	},
}

func labelsFor(lang string) *labels {
	if l, ok := labelsIn[lang]; ok {
		return l
	}
	return labelsIn["en"]
}

// Summary counts a list in a line: "2 errors, 1 warning". It is empty for an empty list.
func Summary(l List, lang string) string { return summary(Printer{Lang: lang}.findings(l), lang) }

func summary(all []finding, lang string) string {
	var n [Note + 1]int
	for _, f := range all {
		n[f.severity]++
	}
	var parts []string
	for s := Error; s <= Note; s++ {
		if n[s] == 0 {
			continue
		}
		one, other, _ := strings.Cut(labelsFor(lang).counted[s], "|")
		word := other
		if n[s] == 1 {
			word = one
		}
		parts = append(parts, strconv.Itoa(n[s])+" "+word)
	}
	return strings.Join(parts, ", ")
}
