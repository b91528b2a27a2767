package main

import (
	"io"
	"os"
	"runtime/debug"
	"slices"
)

func main() {
	collectSeldom(spacious)
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// collectSeldom has garbage collected less often, which takes a fifth off the processor time of a run for six megabytes more. Many files at
// once collect more often. Where much is held, as of a large picture, less may lie about.
func collectSeldom(most int64) {
	debug.SetGCPercent(400)
	debug.SetMemoryLimit(most)
}

// spacious is how many bytes are taken before garbage is collected as often as it takes to stay below. No example comes near.
const spacious = 384 << 20

// The exit codes. With several files the worst one holds.
const (
	clean  = 0 // done; there may be warnings
	faulty = 1 // the source has errors
	failed = 2 // wrong use, or something could not be read or written
)

// run is the whole command, apart from leaving the process.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	c, err := parseArgs(args)
	c.in, c.out, c.err = stdin, stdout, stderr
	c.lang = messageLanguage(c.flags["--messages"], os.Getenv)
	c.color = paintable(stderr, os.Getenv)
	if len(args) > 0 && slices.Contains(askedByShell, args[0]) {
		return c.complete(args)
	}
	if err != nil {
		return c.misuse(*err)
	}
	if _, ok := c.flags["--help"]; ok || c.command == nil {
		if ok {
			return c.help(c.command, c.out)
		}
		c.help(nil, c.err)
		return failed
	}
	return c.command.run(c)
}
