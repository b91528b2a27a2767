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
	help    text
}

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
	c := &call{flags: map[string]string{}}
	var given []string
	var wrong *said
	fail := func(s said) {
		if wrong == nil {
			wrong = &s
		}
	}
	var words []string
	for len(args) > 0 {
		arg := args[0]
		args = args[1:]
		if arg == "--" {
			words = append(words, args...)
			break
		}
		if !strings.HasPrefix(arg, "-") || arg == "-" {
			words = append(words, arg)
			continue
		}
		name, value, hasValue := strings.Cut(arg, "=")
		if name == "-h" {
			name = "--help"
		}
		def := flagNamed(name)
		switch {
		case def == nil:
			fail(msgNoFlag.with("flag", name))
			continue
		case def.value == "" && hasValue:
			fail(msgFlagNoValue.with("flag", name))
		case def.value != "" && !hasValue:
			if len(args) == 0 {
				fail(msgFlagValue.with("flag", name, "value", def.value))
				continue
			}
			value, args = args[0], args[1:]
		}
		if _, twice := c.flags[name]; twice {
			fail(msgFlagTwice.with("flag", name))
		}
		if def.allowed != nil && !slices.Contains(def.allowed, value) {
			fail(msgFlagChoice.with("flag", name, "value", value, "allowed", strings.Join(def.allowed, ", ")))
		}
		c.flags[name] = value
		given = append(given, name)
	}
	if len(words) > 0 {
		c.command, c.args = commandNamed(words[0]), words[1:]
		if c.command == nil {
			fail(msgNoCommand.with("name", words[0]))
		}
	}
	for _, name := range given {
		if c.command != nil && !c.command.takes(name) {
			fail(msgNotHere.with("flag", name, "command", c.command.name))
		}
	}
	return c, wrong
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
