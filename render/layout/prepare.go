package layout

import (
	"ovillo/render/font"
	"ovillo/render/page"
)

// Prepare reads the faces before they are asked for, with the tables that letters are kerned by.
func Prepare() {
	for f := range page.SerifBold + 1 {
		font.Of(f).Width("To", 10)
	}
}
