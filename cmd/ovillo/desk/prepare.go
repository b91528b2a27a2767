package desk

import (
	"ovillo/compile"
	"ovillo/render/book"
)

// Prepare begins to read, beside whoever calls it, what checking and setting a pattern takes whatever is in it. The first pattern of a
// command waits for less then: reading a source leaves a processor to spare.
func Prepare() {
	go func() {
		compile.Prepare()
		book.Prepare("en", "es")
	}()
}
