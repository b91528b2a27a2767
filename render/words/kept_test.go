package words

import (
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/render/rich"
	"ovillo/render/sample"
)

// What is kept is what would be written anew, whoever asks first, and of this pattern only.
func TestKeepingChangesNothing(t *testing.T) {
	p, other := sample.Leggings(), sample.Leggings()
	other.Parts = other.Parts[:1]
	for _, tag := range []string{"en", "es-MX"} {
		plain := language(t, tag)
		keeping := plain.Keeping(p)
		require.Same(t, keeping, keeping.Keeping(p))
		var wait sync.WaitGroup
		for range 4 {
			wait.Go(func() {
				for _, q := range []*plan.Pattern{p, other} {
					if got, want := keeping.Abbreviations(q), plain.Abbreviations(q); len(want) == 0 || len(got) != len(want) {
						t.Errorf("%d abbreviations, want %d", len(got), len(want))
					}
				}
				for _, part := range p.Parts {
					for _, s := range part.Steps {
						keeping.Step(p, part, s)
					}
				}
			})
		}
		wait.Wait()
		require.Equal(t, plain.Abbreviations(p), keeping.Abbreviations(p))
		require.Equal(t, plain.HowToRead(p), keeping.HowToRead(p))
		for _, part := range p.Parts {
			for _, s := range part.Steps {
				st := keeping.Step(p, part, s)
				require.Equal(t, plain.Step(p, part, s), st)
				_ = append(st.Body, rich.Run{Text: "added"})
				require.Equal(t, st, keeping.Step(p, part, s))
			}
		}
		full := Manner{Full: true}
		require.Empty(t, keeping.With(full).Abbreviations(p))
	}
}
