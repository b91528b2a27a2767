package main

import (
	"fmt"
	"io"
	"time"
)

// patience is how long several files may take before a person is told how far it has come.
const patience = time.Second

// widestName is how many letters of a name a line of progress shows, so that it stays one line on a narrow terminal.
const widestName = 48

// progress tells on a terminal how far a run over several files has come, in one line that goes again. Whatever else is
// written passes through it, so that the line never stands among messages.
type progress struct {
	to    io.Writer // nil: nobody looks
	now   func() time.Time
	since time.Time
	shown bool
}

// newProgress begins a run. It stays silent unless it writes to a terminal and there are several files.
func newProgress(to io.Writer, terminal bool, files int, now func() time.Time) *progress {
	if !terminal || files < 2 {
		to = nil
	}
	return &progress{to: to, now: now, since: now()}
}

// step says which file is next.
func (p *progress) step(n, of int, path string) {
	if p.to == nil || p.now().Sub(p.since) < patience {
		return
	}
	name := []rune(visible(path))
	if len(name) > widestName {
		name = append([]rune("…"), name[len(name)-widestName+1:]...)
	}
	fmt.Fprintf(p.to, "\r\x1b[K%d/%d %s", n, of, string(name))
	p.shown = true
}

// erase takes the line away.
func (p *progress) erase() {
	if p.shown {
		io.WriteString(p.to, "\r\x1b[K")
		p.shown = false
	}
}

// through writes to w, behind no line of progress.
func (p *progress) through(w io.Writer) io.Writer {
	if p.to == nil {
		return w
	}
	return &behindProgress{p, w}
}

type behindProgress struct {
	p *progress
	w io.Writer
}

func (b *behindProgress) Write(data []byte) (int, error) {
	b.p.erase()
	return b.w.Write(data)
}
