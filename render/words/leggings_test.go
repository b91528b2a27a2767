package words

import (
	"testing"

	"ovillo/render/sample"
)

func TestLeggingsInFull(t *testing.T) {
	for _, tag := range []string{"en-US", "en-GB", "es", "es-AR"} {
		l, err := For(tag)
		if err != nil {
			t.Fatal(err)
		}
		golden(t, "leggings."+tag+".golden", dump(l, sample.Leggings()))
	}
}
