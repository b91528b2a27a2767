package reading

import (
	"fmt"
	"reflect"
	"testing"

	"ovillo/cmd/ovillo/whole"
	"ovillo/render/parallel"
)

// pairs are the readings that are compared: the default ones for every example, and regional ones for two of them.
func pairs(name string) [][2]string {
	out := [][2]string{{"en", "es"}}
	switch name {
	case "orilla-pullover.ovillo", "bajamar-blanket.ovillo":
		out = append(out, [2]string{"en-GB", "es-MX"})
	}
	return out
}

// compare compares two readings of pages.
func (b *published) compare(t *testing.T, one, other []parallel.Passage, langs [2]string) []parallel.Difference {
	t.Helper()
	l, m := whole.Language(t, langs[0]), whole.Language(t, langs[1])
	return parallel.Compare(parallel.In(one, l.Tag()), parallel.In(other, m.Tag()), parallel.ReadingOf(l, b.plan), parallel.ReadingOf(m, b.plan))
}

// TestLanguagesAgree: the English and the Spanish pages of every example have the same parts, steps, labels, numbers, measures
// and stitches, read back from the files: of one document in both languages, and of two in one each.
func TestLanguagesAgree(t *testing.T) {
	for _, s := range whole.Examples(t) {
		t.Run(s.Name, func(t *testing.T) {
			t.Parallel()
			b := publish(t, s)
			for _, langs := range pairs(s.Name) {
				facing := b.read(t, langs[0], langs[1])
				report := func(how string, list []parallel.Difference) {
					for _, d := range list {
						t.Errorf("%v, %s: %s", langs, how, told(d))
					}
				}
				report("facing", b.compare(t, facing, facing, langs))
				report("apart", b.compare(t, b.read(t, langs[0]), b.read(t, langs[1]), langs))
			}
		})
	}
}

func told(d parallel.Difference) string {
	return fmt.Sprintf("%v in %q:\n  %s\n  %s\n  %v\n  %v", d.Kind, d.Head, d.One, d.Other, d.Has, d.OtherHas)
}

// TestReadBackIsWhatWasSet: what is read from the file is what was composed, passage by passage, so that checks on composed
// pages hold for the file as well.
func TestReadBackIsWhatWasSet(t *testing.T) {
	for _, s := range whole.Examples(t) {
		t.Run(s.Name, func(t *testing.T) {
			t.Parallel()
			b := publish(t, s)
			set, read := flat(parallel.Of(b.composed(t, "en", "es"))), flat(b.read(t, "en", "es"))
			if len(set) < 100 {
				t.Fatalf("only %d passages were set", len(set))
			}
			for i := range max(len(set), len(read)) {
				if i == len(set) || i == len(read) || !reflect.DeepEqual(set[i], read[i]) {
					t.Fatalf("passage %d of %d and %d: set\n%+v, read\n%+v", i, len(set), len(read), set[min(i, len(set)-1)], read[min(i, len(read)-1)])
				}
			}
		})
	}
}

// flat is passages with their text in one piece.
func flat(all []parallel.Passage) []parallel.Passage {
	out := make([]parallel.Passage, len(all))
	for i, p := range all {
		p.Runs = []parallel.Run{{Text: p.Text()}}
		out[i] = p
	}
	return out
}
