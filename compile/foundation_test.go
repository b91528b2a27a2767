package compile_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
)

// TestFoundationChains compares the chains added for the first row with those in print: the first stitch goes into the 2nd
// chain from the hook in single crochet, the 3rd in half double, the 4th in double, the 5th in treble crochet (the 4th for
// double crochet was read in a publisher's patterns, S11; the others are common practice without a source). Where the
// chains that are skipped count as the first stitch, one more stitch comes of the same chain (arithmetic).
func TestFoundationChains(t *testing.T) {
	const sts = 20
	for _, want := range []struct {
		stitch string
		into   int // which chain from the hook the first stitch goes into
		counts bool
	}{{"sc", 2, false}, {"hdc", 3, false}, {"dc", 4, true}, {"tr", 5, true}} {
		p := clean(t, fmt.Sprintf("sizes \"one\"\nend\npart strip\n  title en \"S\" es \"T\"\n  in rows\n  chain %d\n  row: %s in each = %d\nend\n",
			sts, want.stitch, sts))
		s := p.Parts[0].Start
		chains := s.N[0]
		if s.Extra != nil {
			chains += s.Extra[0]
		}
		made := chains - (want.into - 1)
		if want.counts {
			made++
		}
		require.Equal(t, sts, made, "%s: %d chains", want.stitch, chains)
		require.Equal(t, plan.StartChain, s.Kind)
	}
}
