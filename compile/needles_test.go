package compile

import (
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// TestNeedlesHideNothing: whatever an expression of the lists finds, the quick look lets pass. The texts are made from the words of
// the lists themselves, in any case, with the letters of other alphabets that count as the same.
func TestNeedlesHideNothing(t *testing.T) {
	var rows []wordRow
	for _, name := range []string{"claims.csv", "notions.csv", "materials.csv", "cordnames.csv"} {
		rows = append(rows, wordList(name)...)
	}
	var words []string
	without, looked := 0, 0
	for _, r := range rows {
		f := r.words()
		if looked++; f.needles == nil {
			without++
		}
		words = append(words, strings.FieldsFunc(f.String(), func(r rune) bool { return !unicode.IsLetter(r) && r != ' ' })...)
	}
	assert.Less(t, without*5, looked, "the quick look is of use")
	found := 0
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(rapid.SampledFrom(words), 1, 12).Draw(t, "words"), rapid.SampledFrom([]string{" ", "-", ", "}).Draw(t, "between"))
		switch rapid.IntRange(0, 3).Draw(t, "case") {
		case 1:
			text = strings.ToUpper(text)
		case 2:
			text = strings.NewReplacer("s", "ſ", "k", "\u212a").Replace(text)
		}
		for _, r := range rows {
			f := r.words()
			if f.MatchString(text) {
				found++
				if !mentions(folded(text), f.needles) {
					t.Fatalf("%q is found by %s and hidden by %q", text, f, f.needles)
				}
			}
		}
	})
	assert.Positive(t, found)
}
