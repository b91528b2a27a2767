package compile

import "testing"

// LimitStitches lowers, for a test, how many stitches a pattern may have, so that a number of four figures is refused soon.
func LimitStitches(t testing.TB, n int) {
	before, least := maxStitches, leastStitches
	maxStitches, leastStitches = n, n
	t.Cleanup(func() { maxStitches, leastStitches = before, least })
}
