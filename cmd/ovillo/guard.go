package main

import (
	"fmt"
	"runtime"
	"strings"
)

// guarded runs a job and turns a panic into a message. Jobs write only whole files, at their very end, so that nothing
// half done is left behind.
func (c *call) guarded(path string, do job) (code int) {
	defer func() {
		if fault := recover(); fault != nil {
			c.say(msgInternal.with("path", path, "fault", fmt.Sprint(fault)+whereFault()))
			code = failed
		}
	}()
	return do(c, path)
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
