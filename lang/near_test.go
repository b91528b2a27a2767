package lang

import (
	"reflect"
	"strings"
	"testing"
)

func TestNear(t *testing.T) {
	lines := []string{"round", "rounds", "row", "rows", "repeat", "part", "pattern", "end"}
	for _, c := range []struct {
		word  string
		known []string
		want  []string
	}{
		{"rownd", lines, []string{"round"}},
		{"roudns", lines, []string{"rounds", "round"}},
		{"prat", lines, []string{"part"}},
		{"Round", lines, []string{"round", "rounds"}},
		{"round", lines, []string{"rounds"}},
		{"xyz", lines, nil},
		{"", lines, nil},
		{"cd", []string{"dc", "sc", "tr"}, []string{"dc"}},
		{"DC", []string{"dc", "sc"}, []string{"dc"}},
		{"ano", []string{"año", "mano"}, []string{"año", "mano"}},
		{"leg", []string{"leg"}, nil},
		{"left_slev", []string{"left_sleeve", "left_sleeves", "right_sleeve"}, []string{"left_sleeve", "left_sleeves"}},
		{"a1", []string{"a2", "a3", "a4"}, nil},
		{"aaa", []string{"aab", "aac", "aad", "aae", "aaf"}, []string{"aab", "aac", "aad", "aae"}},
		{"near", []string{"neat", "neat"}, []string{"neat"}},
		{strings.Repeat("a", 100), []string{strings.Repeat("a", 99)}, nil},
	} {
		if got := Near(c.word, c.known); !reflect.DeepEqual(got, c.want) {
			t.Errorf("Near(%q) = %q, want %q", c.word, got, c.want)
		}
	}
}

func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{{"", "", 0}, {"abc", "abc", 0}, {"abc", "acb", 1}, {"abc", "ab", 1}, {"abc", "abxc", 1}, {"abc", "xbc", 1},
		{"ca", "abc", 3}, {"abcdef", "badcfe", 3}, {"round", "rownd", 1}} {
		if got := distance([]rune(c.a), []rune(c.b), 9); got != c.want {
			t.Errorf("%q to %q: %d, want %d", c.a, c.b, got, c.want)
		}
	}
}
