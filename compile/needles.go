package compile

import (
	"regexp/syntax"
	"slices"
	"strings"
	"unicode"
)

// Most texts say none of the things that are looked for, and a regular expression finds that out letter by letter. Each of its
// branches has letters that must stand in any text it finds: where none of these stands, it need not be asked.

// needles are folded texts of which one must stand in any folded text that an expression finds; nil if nothing so simple holds.
func needles(expr string) []string {
	re, err := syntax.Parse(expr, syntax.Perl)
	if err != nil {
		return nil
	}
	return needlesOf(re)
}

func needlesOf(re *syntax.Regexp) []string {
	switch re.Op {
	case syntax.OpLiteral:
		return []string{folded(string(re.Rune))}
	case syntax.OpCapture, syntax.OpPlus:
		return needlesOf(re.Sub[0])
	case syntax.OpRepeat:
		if re.Min > 0 {
			return needlesOf(re.Sub[0])
		}
	case syntax.OpAlternate:
		var all []string
		for _, s := range re.Sub {
			some := needlesOf(s)
			if some == nil {
				return nil
			}
			all = append(all, some...)
		}
		return all
	case syntax.OpConcat:
		var best []string
		for _, s := range re.Sub {
			if some := needlesOf(s); some != nil && (best == nil || shortest(some) > shortest(best)) {
				best = some
			}
		}
		return best
	}
	return nil
}

func shortest(texts []string) int {
	n := len(texts[0])
	for _, t := range texts {
		n = min(n, len(t))
	}
	return n
}

// mentions reports whether a folded text may hold what needles stand for.
func mentions(text string, needles []string) bool {
	return needles == nil || slices.ContainsFunc(needles, func(n string) bool { return strings.Contains(text, n) })
}

// folded is a text in which letters that an expression takes for the same are the same.
func folded(s string) string {
	return strings.Map(func(r rune) rune {
		if r < 0x80 && r != 'k' && r != 'K' && r != 's' && r != 'S' {
			if 'A' <= r && r <= 'Z' {
				r += 'a' - 'A'
			}
			return r
		}
		least := r
		for f := unicode.SimpleFold(r); f != r; f = unicode.SimpleFold(f) {
			least = min(least, f)
		}
		return least
	}, s)
}
