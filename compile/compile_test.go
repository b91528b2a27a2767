package compile

import (
	"fmt"
	"os"
	"testing"

	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

func TestTry(t *testing.T) {
	name := os.Getenv("TRY")
	if name == "" {
		name = "../examples/marisma-leggings.ovillo"
	}
	b, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	sf := source.NewFile(name, string(b))
	f, l := lang.Parse(sf)
	p, l2 := Compile(f)
	diag.Text(os.Stdout, sf, append(l, l2...), "en", false)
	if p == nil {
		return
	}
	for _, part := range p.Parts {
		fmt.Println(part.Name, "sts:")
		for z := range part.Worked {
			for _, f := range part.Worked[z] {
				fmt.Print(f.Number, ":", f.Stitches, "/", f.Spaces, " ")
			}
			fmt.Println()
		}
	}
}
