package main

import (
	"fmt"
	"runtime"
	"strings"
	"time"
)

// each runs a job for every file and returns the worst exit code. A fault of ours in one file is said as such and does
// not keep the others from being handled.
func (c *call) each(paths []string, job func(path string) int) int {
	p := newProgress(c.err, onTerminal(c.err), len(paths), time.Now)
	out, err := c.out, c.err
	c.out, c.err = p.through(out), p.through(err)
	defer func() { p.erase(); c.out, c.err = out, err }()
	worst := clean
	for i, path := range paths {
		p.step(i+1, len(paths), path)
		worst = max(worst, c.guarded(path, func() int { return job(path) }))
	}
	return worst
}

// guarded runs a job and turns a panic into a message. Jobs write only whole files, at their very end, so that nothing
// half done is left behind.
func (c *call) guarded(path string, job func() int) (code int) {
	defer func() {
		if fault := recover(); fault != nil {
			c.say(msgInternal.with("path", path, "fault", fmt.Sprint(fault)+whereFault()))
			code = failed
		}
	}()
	return job()
}

// whereFault names the place in our code that gave up, which is what a report needs.
func whereFault() string {
	pcs := make([]uintptr, 64)
	frames := runtime.CallersFrames(pcs[:runtime.Callers(0, pcs)])
	thrown := false
	for {
		f, more := frames.Next()
		if f.Function == "runtime.gopanic" {
			thrown = true
		} else if thrown && !strings.HasPrefix(f.Function, "runtime.") {
			return fmt.Sprintf(", %s:%d", f.Function, f.Line)
		}
		if !more {
			return ""
		}
	}
}
