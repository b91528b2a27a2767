package standard

import (
	"ovillo/compile/plan"
	"sync"
)

// Hook is one row of the table of hooks.
type Hook struct {
	Size plan.Length
	US   string // letter and number: E-4, 7, G; the number of a steel hook alone
	UK   string // old number
	Kind string // regular, steel or steel_uk
	Read bool   // the row was seen in a source, not only recalled
}

// Hooks is the table of hooks, regular ones first, each kind by its row in the file.
var Hooks = sync.OnceValue(func() []Hook {
	var out []Hook
	for _, r := range table("hooks.csv") {
		us := r["us_letter"]
		if n := r["us_number"]; us != "" && n != "" {
			us += "-" + n
		} else if n != "" {
			us = n
		}
		out = append(out, Hook{Size: r.length("mm", plan.Millimetre), US: us, UK: r["uk"], Kind: r["kind"], Read: r.read()})
	}
	return out
})

// HookName returns the United States and United Kingdom names of a hook, "" where it has none. ok is false if no source
// was seen that names a hook of this size: then nothing must be printed beside the millimetres.
func HookName(size plan.Length) (us, uk string, ok bool) {
	for _, h := range Hooks() {
		if h.Size == size && h.Read && (h.US != "" || h.UK != "") {
			return h.US, h.UK, true
		}
	}
	return "", "", false
}

// NearestHook returns the size of the table nearest to a size, the smaller of two equally near, and whether it is that
// size itself.
func NearestHook(size plan.Length) (near plan.Length, standard bool) {
	away := plan.Length(-1)
	for _, h := range Hooks() {
		d := max(h.Size-size, size-h.Size)
		if away < 0 || d < away || d == away && h.Size < near {
			near, away = h.Size, d
		}
	}
	return near, away == 0
}
