package book

import (
	"os"
	"testing"

	"ovillo/render/pdf"
)

// TestLook writes the sample as PDF for people to look at, if LOOK names a directory.
func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK names no directory")
	}
	for _, e := range editions {
		for paper, name := range map[Paper]string{A4: "a4", Letter: "letter"} {
			f, err := os.Create(dir + "/" + e.name + " " + name + ".pdf")
			if err != nil {
				t.Fatal(err)
			}
			if err := pdf.Write(f, e.compose(t, paper), pdf.Options{}); err != nil {
				t.Errorf("%s: %v", e.name, err)
			}
			if err := f.Close(); err != nil {
				t.Fatal(err)
			}
		}
	}
}
