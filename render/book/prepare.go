package book

import (
	"ovillo/render/hyphen"
	"ovillo/render/layout"
)

// Prepare reads what the pages of a pattern are set with, whatever is in it: the faces, and how the words of tongues are divided, which are
// named by their tags. Setting reads it when it comes to it; whoever has a processor to spare while a pattern is checked can have it done
// meanwhile.
func Prepare(tags ...string) {
	layout.Prepare()
	for _, tag := range tags {
		hyphen.Prepare(tag)
	}
}
