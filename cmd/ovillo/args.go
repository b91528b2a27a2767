package main

import (
	"slices"
	"strings"
)

// flagDef is a flag of a command. Flags may stand anywhere on the line; `--` ends them.
type flagDef struct {
	name    string   // with its hyphens
	value   string   // what its value is called in the help; "" for a switch
	allowed []string // the values it may have; nil: any
	many    bool     // it may be given several times; its values are then one, parted by manySeparator
	help    text
}

// manySeparator parts the values of a flag that may be given several times.
const manySeparator = ";"

// everywhere are the flags of all commands.
var everywhere = []flagDef{
	{name: "--messages", value: "en|es", allowed: []string{"en", "es"}, help: text{
		"language of the messages; without it, the one of the system",
		"idioma de los mensajes; si no se indica, el del sistema"}},
	{name: "--help", help: text{"print this help", "mostrar esta ayuda"}},
}

// parseArgs reads the command line. On an error the call holds what was understood, so that the error can be said in
// the language asked for.
func parseArgs(args []string) (*call, *said) {
	r := argReader{flags: map[string]string{}, rest: args}
	var words []string
	for len(r.rest) > 0 {
		switch arg := r.next(); {
		case arg == "--":
			words, r.rest = append(words, r.rest...), nil
		case arg == "-" || !strings.HasPrefix(arg, "-"):
			words = append(words, arg)
		default:
			r.flag(arg)
		}
	}
	c := &call{flags: r.flags}
	if len(words) > 0 {
		c.command, c.args = commandNamed(words[0]), words[1:]
		if c.command == nil {
			r.fail(msgNoCommand.with("name", words[0]))
		}
	}
	for _, name := range r.given {
		if c.command != nil && !c.command.takes(name) {
			r.fail(msgNotHere.with("flag", name, "command", c.command.name))
		}
	}
	return c, r.wrong
}

// argReader reads flags off a command line.
type argReader struct {
	rest  []string
	flags map[string]string
	given []string // the flags in the order they were given
	wrong *said
}

func (r *argReader) next() string {
	arg := r.rest[0]
	r.rest = r.rest[1:]
	return arg
}

// fail keeps the first error.
func (r *argReader) fail(s said) {
	if r.wrong == nil {
		r.wrong = &s
	}
}

// flag reads one flag and its value: --lang en or --lang=en.
func (r *argReader) flag(arg string) {
	name, value, hasValue := strings.Cut(arg, "=")
	if name == "-h" {
		name = "--help"
	}
	def := flagNamed(name)
	switch {
	case def == nil:
		r.fail(msgNoFlag.with("flag", name))
		return
	case def.value == "" && hasValue:
		r.fail(msgFlagNoValue.with("flag", name))
	case def.value != "" && !hasValue && len(r.rest) == 0:
		r.fail(msgFlagValue.with("flag", name, "value", def.value))
		return
	case def.value != "" && !hasValue:
		value = r.next()
	}
	if before, twice := r.flags[name]; twice && def.many {
		value = before + manySeparator + value
	} else if twice {
		r.fail(msgFlagTwice.with("flag", name))
	}
	if def.allowed != nil && !slices.Contains(def.allowed, value) {
		r.fail(msgFlagChoice.with("flag", name, "value", value, "allowed", strings.Join(def.allowed, ", ")))
	}
	r.flags[name] = value
	r.given = append(r.given, name)
}

// flagNamed finds a flag among those of all commands. A name means the same, with or without a value, wherever it is
// used (a test checks that), so that flags may stand before the command.
func flagNamed(name string) *flagDef {
	for i := range everywhere {
		if everywhere[i].name == name {
			return &everywhere[i]
		}
	}
	for _, c := range commands() {
		for i := range c.flags {
			if c.flags[i].name == name {
				return &c.flags[i]
			}
		}
	}
	return nil
}

// takes reports whether a command has a flag.
func (c *command) takes(name string) bool {
	is := func(f flagDef) bool { return f.name == name }
	return slices.ContainsFunc(c.flags, is) || slices.ContainsFunc(everywhere, is)
}
