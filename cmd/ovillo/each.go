package main

import (
	"io"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"time"
)

// ahead is how many files may be handled, for each processor, before what is said of an earlier one is out: enough that one slow file keeps
// nobody waiting, and few enough that what is kept of a run stays small however many files it has.
const ahead = 8

// job is what is done with one file. It speaks and writes through the call that it is handed, since others run beside it.
type job func(c *call, path string) int

// each does a job for every file, as many at once as there are processors, and returns the worst exit code. What they say comes out in the
// order of the files, and is what it would be one at a time. A fault of ours in one file is said as such and does not keep the others from
// being handled. A file that is named twice is handled once.
func (c *call) each(paths []string, do job) int {
	paths = distinct(paths)
	p := newProgress(c.err, onTerminal(c.err), len(paths), time.Now)
	out, err := c.out, c.err
	c.out, c.err = p.through(out), p.through(err)
	defer func() { p.erase(); c.out, c.err = out, err }()
	if len(paths) == 1 {
		return c.guarded(paths[0], do)
	}
	debug.SetGCPercent(200) // what is thrown away adds up over the processors
	worst, n := clean, 0
	for t := range c.sideBySide(paths, runtime.GOMAXPROCS(0), do) {
		n++
		p.step(n, len(paths), t.path)
		<-t.done
		worst = max(worst, t.code, t.said.replay(c))
	}
	return worst
}

// distinct leaves out what names a file once more.
func distinct(paths []string) []string {
	seen, out := map[string]bool{}, []string(nil)
	for _, path := range paths {
		if clean := filepath.Clean(path); !seen[clean] {
			seen[clean] = true
			out = append(out, path)
		}
	}
	return out
}

// task is a job for one file: when done is closed, the rest is there.
type task struct {
	path string
	done chan struct{}
	code int
	said recorded
}

// sideBySide begins the jobs in the order of the files and hands them on in that order, begun or not.
func (c *call) sideBySide(paths []string, workers int, do job) <-chan *task {
	inOrder, begun := make(chan *task, workers*ahead), make(chan *task)
	go func() {
		defer close(inOrder)
		defer close(begun)
		for _, path := range paths {
			t := &task{path: path, done: make(chan struct{})}
			inOrder <- t
			begun <- t
		}
	}()
	for range min(workers, len(paths)) {
		go func() {
			for t := range begun {
				own := *c
				own.out, own.err = t.said.stream(false), t.said.stream(true)
				t.code = own.guarded(t.path, do)
				close(t.done)
			}
		}()
	}
	return inOrder
}

// recorded is what a job said, on both streams, in the order in which it said it.
type recorded struct{ parts []recordedPart }

type recordedPart struct {
	err  bool
	text []byte
}

// stream is a writer to one of the streams.
func (r *recorded) stream(err bool) io.Writer { return recorder{r, err} }

type recorder struct {
	to  *recorded
	err bool
}

func (r recorder) Write(text []byte) (int, error) {
	if n := len(r.to.parts); n > 0 && r.to.parts[n-1].err == r.err {
		r.to.parts[n-1].text = append(r.to.parts[n-1].text, text...)
	} else {
		r.to.parts = append(r.to.parts, recordedPart{r.err, append([]byte(nil), text...)})
	}
	return len(text), nil
}

// replay says it, and forgets it.
func (r *recorded) replay(c *call) int {
	code := clean
	for _, part := range r.parts {
		if part.err {
			c.err.Write(part.text)
		} else {
			code = max(code, c.print(part.text))
		}
	}
	r.parts = nil
	return code
}
