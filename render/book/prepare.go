package book

import (
	"ovillo/render/font"
	"ovillo/render/hyphen"
	"ovillo/render/page"
)

// Prepare reads what the pages of a pattern are set with, whatever is in it: the faces, and how the words of tongues are divided. Setting reads
// it when it comes to it; whoever has a processor to spare while a pattern is checked can have it done meanwhile.
func Prepare(tags []string) {
	for f := range page.SerifBold + 1 {
		font.Of(f).Width("To", 10) // two letters that are kerned: the tables for that are read as well
	}
	for _, tag := range tags {
		hyphen.Prepare(tag)
	}
}
