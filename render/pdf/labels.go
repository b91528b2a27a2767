package pdf

import (
	"fmt"
	"strconv"

	"ovillo/render/page"
)

// pageLabels says which numbers the pages print, so that "go to page 3" in a viewer means the 3 on paper. Numbers that
// go on from page to page are one range.
func pageLabels(d *page.Document) string {
	ranges, labelled, next := "", false, -1
	for i := range d.Pages {
		label := d.Pages[i].Label
		labelled = labelled || label != ""
		n, err := strconv.Atoi(label)
		if err != nil || n < 1 || strconv.Itoa(n) != label {
			ranges += fmt.Sprintf(" %d <</P %s>>", i, textString(label))
			next = -1
			continue
		}
		if n != next {
			ranges += fmt.Sprintf(" %d <</S /D /St %d>>", i, n)
		}
		next = n + 1
	}
	if !labelled {
		return ""
	}
	return " /PageLabels <</Nums [" + ranges[1:] + "]>>"
}
