package atonce_test

import (
	"runtime"
	"slices"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang/atonce"
)

func TestEachIsDoneOnce(t *testing.T) {
	for _, processors := range []int{1, 2, 7} {
		defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(processors))
		for _, n := range []int{0, 1, 2, 5, 100} {
			done := make([]atomic.Int32, n)
			atonce.Do(n, func(i int) { done[i].Add(1) })
			for i := range done {
				require.EqualValues(t, 1, done[i].Load(), "%d of %d on %d processors", i, n, processors)
			}
		}
	}
}

// Two that wait for each other would never end one after the other.
func TestTheyAreDoneAtOnce(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(2))
	var both sync.WaitGroup
	both.Add(2)
	atonce.Do(2, func(int) {
		both.Done()
		both.Wait()
	})
}

// A panic comes to the caller, that of the lowest number, when the others are done.
func TestAPanicIsPassedOn(t *testing.T) {
	for _, processors := range []int{2, 3} {
		defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(processors))
		var mu sync.Mutex
		var done []int
		require.PanicsWithValue(t, "two", func() {
			atonce.Do(6, func(i int) {
				switch i {
				case 2:
					panic("two")
				case 4:
					panic("four")
				}
				mu.Lock()
				defer mu.Unlock()
				done = append(done, i)
			})
		})
		slices.Sort(done)
		require.Equal(t, []int{0, 1, 3, 5}, done)
	}
}
