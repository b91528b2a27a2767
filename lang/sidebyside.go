package lang

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// This file reads the statements of a source side by side. Which statements there are, and which blocks they stand in, is known before
// any of them is read.

// sidebyside is the statements of a source that are still to be read.
type sidebyside struct {
	all []unreadStatement
}

type unreadStatement struct {
	to   *Statement
	form *form
	feed *feed
}

func (s *sidebyside) add(to *Statement, f *form, from *feed) {
	s.all = append(s.all, unreadStatement{to, f, from})
}

// atOnce is how many statements a reader takes at a time, and mostReaders how many readers there are.
const (
	atOnce      = 8
	mostReaders = 8
)

// read reads them all. It says false if one of them cannot be read.
func (s *sidebyside) read() bool {
	var next atomic.Int64
	var failed atomic.Bool
	some := func() {
		defer func() {
			if recover() != nil {
				failed.Store(true) // whoever reads it in its turn will be told
			}
		}()
		for !failed.Load() {
			to := int(next.Add(atOnce))
			from := to - atOnce
			if from >= len(s.all) {
				return
			}
			for _, u := range s.all[from:min(to, len(s.all))] {
				node, err := u.form.read(u.feed.upgrade())
				if err != nil {
					failed.Store(true)
					return
				}
				u.to.Node = node
				u.to.list()
			}
		}
	}
	var others sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), mostReaders, len(s.all)/atOnce) - 1 {
		others.Go(some)
	}
	some()
	others.Wait()
	return !failed.Load()
}
