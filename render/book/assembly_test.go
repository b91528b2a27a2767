package book

import (
	"testing"

	"ovillo/render/sample"
)

// Steps that belong before a part stand before it as a chapter of their own, and the chapters are numbered in order.
func TestStepsBeforeAPart(t *testing.T) {
	p := sample.Leggings()
	p.Finish[0].Before = 2
	doc, err := Compose(p, Options{Langs: languages(t, "en-US")})
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, o := range doc.Outline {
		if o.Level == 1 && o.Title[0] >= '0' && o.Title[0] <= '9' {
			got = append(got, o.Title)
		}
	}
	want := []string{"1  Waistband", "2  Assembly", "3  Body", "4  Right leg", "5  Left leg", "6  Finishing"}
	if len(got) != len(want) {
		t.Fatalf("%q", got)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("chapter %d is %q, not %q", i+1, got[i], want[i])
		}
	}
}
