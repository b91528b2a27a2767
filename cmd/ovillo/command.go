package main

import (
	"io"
	"strings"

	"ovillo/compile"
)

// command is one thing that ovillo can do. Help, completion and the manual come from it.
type command struct {
	name     string
	args     text // what stands behind the name; FILE (or OLD and NEW) is a source, FILE… are several
	line     text // one line
	long     text // the rest of its help
	flags    []flagDef
	tail     func(lang string) string // what stands below the flags; nil: nothing
	examples []exampleLine
	fill     func(*filling) []candidate // offers words to a shell; nil, or if there are none: sources where args has FILE
	run      func(*call) int
}

// exampleLine is a command line and what it does. A test runs each, with hat.ovillo (gorro.ovillo) beside it.
type exampleLine struct{ line, does text }

// commands in the order of the help. A function, since help itself prints them.
func commands() []*command {
	return []*command{
		&newCommand,
		&checkCommand,
		&buildCommand,
		&previewCommand,
		&drawCommand,
		&countsCommand,
		&sizesCommand,
		&reportCommand,
		&changesCommand,
		&fmtCommand,
		&lspCommand,
		&explainCommand,
		&schemaCommand,
		&completionCommand,
		&manualCommand,
		&versionCommand,
		&helpCommand,
	}
}

func commandNamed(name string) *command {
	for _, c := range commands() {
		if c.name == name {
			return c
		}
	}
	return nil
}

// call is one run of a command.
type call struct {
	in       io.Reader
	out, err io.Writer
	lang     string // of the messages: en or es
	color    bool
	command  *command // nil if none was named
	flags    map[string]string
	args     []string
	gauges   []compile.OwnGauge // a maker's own, in place of those of the source
}

// has reports whether a flag was given.
func (c *call) has(flag string) bool {
	_, ok := c.flags[flag]
	return ok
}

// say writes a line for the user to the error stream.
func (c *call) say(s said) { io.WriteString(c.err, "ovillo: "+s.in(c.lang)+"\n") }

// misuse says what is wrong with the command line and where to read more.
func (c *call) misuse(s said) int {
	c.say(s)
	topic := ""
	if c.command != nil {
		topic = " " + c.command.name
	}
	c.say(msgSeeHelp.with("topic", topic))
	return failed
}

// text is something that the command says, in each language of the messages. {name} is a hole.
type text struct{ en, es string }

func (t text) in(lang string) string {
	if lang == "es" {
		return t.es
	}
	return t.en
}

// said is a text with what goes into its holes.
type said struct {
	text
	holes []string // name, value, name, value …
}

// with fills holes: name, value, name, value …
func (t text) with(pairs ...string) said { return said{t, pairs} }

func (s said) in(lang string) string {
	var pairs []string
	for i := 0; i+1 < len(s.holes); i += 2 {
		pairs = append(pairs, "{"+s.holes[i]+"}", visible(s.holes[i+1]))
	}
	return strings.NewReplacer(pairs...).Replace(s.text.in(lang))
}

// visible keeps a name from the command line from steering the terminal.
func visible(s string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f || r >= 0x80 && r < 0xa0 {
			return '\uFFFD'
		}
		return r
	}, s)
}

// messageLanguage chooses the language of the messages: the flag, else the locale, else English.
func messageLanguage(flag string, getenv func(string) string) string {
	if flag == "en" || flag == "es" {
		return flag
	}
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		if locale := getenv(name); locale != "" {
			if language, _, _ := strings.Cut(locale, "_"); strings.EqualFold(language[:min(2, len(language))], "es") {
				return "es"
			}
			return "en"
		}
	}
	return "en"
}
