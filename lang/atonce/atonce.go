// Package atonce does things side by side that have nothing to do with each other.
package atonce

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// Do calls do with the numbers below n, begun in their order, as many at once as there are processors, and returns when all
// have returned. If some panic, what the first of them by its number panicked with is passed on here: on a goroutine of its own
// nobody could catch it.
func Do(n int, do func(i int)) {
	workers := min(runtime.GOMAXPROCS(0), n)
	if workers < 2 {
		for i := range n {
			do(i)
		}
		return
	}
	faults := make([]any, n)
	var next atomic.Int64
	var all sync.WaitGroup
	work := func() {
		for {
			i := int(next.Add(1)) - 1
			if i >= n {
				return
			}
			func() {
				defer func() { faults[i] = recover() }()
				do(i)
			}()
		}
	}
	for range workers - 1 {
		all.Go(work)
	}
	work()
	all.Wait()
	for _, f := range faults {
		if f != nil {
			panic(f)
		}
	}
}
