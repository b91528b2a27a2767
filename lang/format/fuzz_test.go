package format

import "testing"

// FuzzSource sets any text: no panic, nothing but blanks changes, not a second time, and the tree stays.
func FuzzSource(f *testing.F) {
	for _, pattern := range []string{"testdata/*.in", "../testdata/*.ovillo", "../../examples/*.ovillo"} {
		for _, name := range files(f, pattern) {
			f.Add(string(read(f, name)))
		}
	}
	f.Add("a\r\r\n\ufeffb\n\n\ufeff\u00a0 c")
	f.Add("round: -\n-1 . 5 \"x\n= -3")
	f.Fuzz(func(t *testing.T, text string) { checkSame(t, []byte(text)) })
}
