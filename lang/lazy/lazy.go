// Package lazy holds regular expressions that are made when they are first asked for: a program has a hundred, a command needs a
// few of them, and making all takes a millisecond of each start.
package lazy

import (
	"regexp"
	"sync"
)

// Regexp returns where an expression, in the syntax of [regexp], is to be had. A wrong one panics at its first
// use, in the test of what it is for.
func Regexp(expr string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expr) })
}
