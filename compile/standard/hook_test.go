package standard_test

import (
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
)

func mm(x float64) plan.Length { return plan.Length(x * float64(plan.Millimetre)) }

// TestHookName compares with the chart of needles and hooks of cdn.shopify.com/s/files/1/0218/9234 (S37) and with
// "Crochet hooks size chart", matifs.com (S38), as read.
func TestHookName(t *testing.T) {
	for _, c := range []struct {
		mm     float64
		us, uk string
		ok     bool
	}{
		{2.25, "B-1", "13", true}, {3.5, "E-4", "9", true}, {3.75, "F-5", "", true}, {4, "G-6", "8", true},
		{4.5, "7", "7", true}, {5.5, "I-9", "5", true}, {6.5, "K-10 1/2", "3", true}, {8, "L-11", "0", true},
		{9, "M/N-13", "00", true}, {16, "Q", "", true},
		{1.65, "7", "", true},                                           // steel, read at S43
		{25, "", "", false}, {1.5, "", "", false}, {3.6, "", "", false}, // recalled only, or no size at all
	} {
		us, uk, ok := standard.HookName(mm(c.mm))
		if us != c.us || uk != c.uk || ok != c.ok {
			t.Errorf("%g mm: %q, %q, %v; want %q, %q, %v", c.mm, us, uk, ok, c.us, c.uk, c.ok)
		}
	}
}

func TestNearestHook(t *testing.T) {
	for _, c := range []struct {
		mm, near float64
		standard bool
	}{
		{4, 4, true}, {3.57, 3.5, false}, {4.1, 4, false}, {0.1, 0.6, false}, {100, 30, false}, {25, 25, true},
		{6.75, 6.5, false}, // just between 6.5 and 7
	} {
		near, std := standard.NearestHook(mm(c.mm))
		if near != mm(c.near) || std != c.standard {
			t.Errorf("%g mm: %d, %v", c.mm, near, std)
		}
	}
}

// TestHooksTable checks what the lookups rest on: no size stands twice in a kind, and every row has a size and a name or
// is plainly without one.
func TestHooksTable(t *testing.T) {
	type key struct {
		kind string
		size plan.Length
	}
	seen := map[key]bool{}
	for _, h := range standard.Hooks() {
		k := key{h.Kind, h.Size}
		if h.Size <= 0 || seen[k] || (h.Kind != "regular" && h.Kind != "steel" && h.Kind != "steel_uk") {
			t.Errorf("row %+v", h)
		}
		seen[k] = true
	}
	if len(standard.Hooks()) != 50 {
		t.Errorf("%d rows; the table it was made from has 50", len(standard.Hooks()))
	}
}
