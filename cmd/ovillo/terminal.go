package main

import (
	"io"
	"os"
)

// paintable reports whether messages may be coloured: only on a terminal that can, and if nobody objects.
func paintable(w io.Writer, getenv func(string) string) bool {
	return onTerminal(w) && getenv("NO_COLOR") == "" && getenv("TERM") != "" && getenv("TERM") != "dumb"
}

// onTerminal reports whether what is written appears before a person.
func onTerminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// tell reports what was written, on the standard output unless that is for another program.
func (c *call) tell(line string) {
	w := c.out
	if c.has(jsonFlag.name) {
		w = c.err
	}
	io.WriteString(w, line+"\n")
}

// print writes the result of a command to the standard output.
func (c *call) print(data []byte) int {
	if _, err := c.out.Write(data); err != nil {
		c.say(msgCannotWrite.with("path", "<stdout>", "why", reason(err, "").in(c.lang)))
		return failed
	}
	return clean
}
