package main

import (
	"errors"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/spf13/pflag"
)

// This file reads the command line. The library takes it apart; what it finds wrong is said in our words, in the language
// asked for.

// parseArgs reads the command line. On an error the call holds what was understood, so that the error can be said in
// the language asked for.
func parseArgs(args []string) (*call, *said) {
	g, err := readLine(args, false)
	if err != nil {
		g, _ = readLine(args, true) // what else stands on the line
	}
	c := &call{flags: g.values}
	wrong := whatIsWrong(err)
	refuse := func(s said) {
		if wrong == nil {
			wrong = &s
		}
	}
	if len(g.words) > 0 {
		if c.command, c.args = commandNamed(g.words[0]), g.words[1:]; c.command == nil {
			refuse(noCommand(g.words[0]))
		}
	}
	for _, name := range g.order {
		def, value := c.command.takes(name), g.values[name]
		switch {
		case def == nil:
			refuse(msgNotHere.with("flag", name, "command", c.command.name))
		case def.allowed != nil && c.command == nil:
			// what it may be is for a command to say
		case def.allowed != nil && !slices.Contains(def.allowed, value):
			refuse(msgFlagChoice.with("flag", name, "value", value, "allowed", strings.Join(def.allowed, ", ")))
		}
	}
	return c, wrong
}

// given is what stands on a command line.
type given struct {
	words  []string
	values map[string]string // of flags, by their names
	order  []string          // the flags as they were given
}

// noValue is what the library sets a switch to. No argument can be it.
const noValue = "\x00"

// readLine reads all flags and words of a line. With leave it passes over what it does not understand.
func readLine(args []string, leave bool) (*given, error) {
	g := &given{values: map[string]string{}}
	set := newFlagSet()
	set.ParseErrorsAllowlist.UnknownFlags = leave
	for _, def := range allFlags() {
		addFlag(set, &def, &flagValue{def: def, given: g, leave: leave})
	}
	var err error
	if i := slices.IndexFunc(args, emptyLetter); i >= 0 && !leave && !slices.Contains(args[:i], "--") {
		return g, &valueError{msgFlagValue, args[i][:2], ""}
	}
	err = set.Parse(args)
	g.words = set.Args()
	return g, err
}

// emptyLetter reports what the library would read as the value "=": -o= without anything behind.
func emptyLetter(arg string) bool { return regexp.MustCompile(`^-[a-z]=$`).MatchString(arg) }

// newFlagSet is an empty set of flags that says nothing by itself.
func newFlagSet() *pflag.FlagSet {
	set := pflag.NewFlagSet("ovillo", pflag.ContinueOnError)
	set.Usage = func() {}
	return set
}

// addFlag declares a flag to the library.
func addFlag(set *pflag.FlagSet, def *flagDef, v pflag.Value) *pflag.Flag {
	word, letter := def.names()
	f := set.VarPF(v, word, letter, "")
	if def.value == "" {
		f.NoOptDefVal = noValue
	}
	return f
}

// flagValue takes the values of a flag into what is given.
type flagValue struct {
	def   flagDef
	given *given
	leave bool // whatever it is
}

// valueError is why a flag does not take a value.
type valueError struct {
	text
	flag, value string
}

func (e *valueError) Error() string { return e.flag }

func (v *flagValue) Set(value string) error {
	name := v.def.name
	before, twice := v.given.values[name]
	switch {
	case v.leave:
	case v.def.value == "" && value != noValue:
		return &valueError{msgFlagNoValue, name, value}
	case twice && !v.def.many:
		return &valueError{msgFlagTwice, name, value}
	}
	switch {
	case v.def.value == "":
		value = ""
	case twice && v.def.many:
		value = before + manySeparator + value
	}
	v.given.values[name] = value
	if !twice {
		v.given.order = append(v.given.order, name)
	}
	return nil
}

// String is the value that the library takes a flag to have; it asks for that of switches alone.
func (v *flagValue) String() string {
	if v.def.value == "" {
		return "false"
	}
	return ""
}

// Type says to the library which flags are switches and which are worth offering again.
func (v *flagValue) Type() string {
	switch {
	case v.def.value == "":
		return "bool"
	case v.def.many:
		return "stringArray"
	}
	return "string"
}

// whatIsWrong puts what the library found wrong into words.
func whatIsWrong(err error) *said {
	var (
		unknown *pflag.NotExistError
		bare    *pflag.ValueRequiredError
		refused *valueError
		form    *pflag.InvalidSyntaxError
		s       said
	)
	switch {
	case err == nil:
		return nil
	case errors.As(err, &refused):
		s = refused.with("flag", refused.flag, "value", "PATH")
		if def := (*command)(nil).takes(refused.flag); def != nil && def.value != "" {
			s = refused.with("flag", refused.flag, "value", def.value)
		}
	case errors.As(err, &bare):
		def := bare.GetFlag().Value.(*flagValue).def
		s = msgFlagValue.with("flag", def.name, "value", def.value)
	case errors.As(err, &form):
		s = msgNoFlag.with("flag", form.GetSpecifiedFlag())
	case errors.As(err, &unknown):
		s = noFlag(unknown)
	default:
		s = whySystem.with("error", err.Error())
	}
	return &s
}

// noFlag says that there is no such flag, and names those that are written much like it.
func noFlag(e *pflag.NotExistError) said {
	if letters := e.GetSpecifiedShortnames(); letters != "" {
		_, n := utf8.DecodeRuneInString(letters)
		return msgNoFlag.with("flag", "-"+letters[:n])
	}
	var names []string
	for _, f := range allFlags() {
		word, _ := f.names()
		names = append(names, word)
	}
	typed := e.GetSpecifiedName()
	if near := similar(typed, names); len(near) > 0 {
		return msgNoFlagNear.with("flag", "--"+typed, "near", "--"+strings.Join(near, ", --"))
	}
	return msgNoFlag.with("flag", "--"+typed)
}

// noCommand says that there is no such command, and names those that are written much like it.
func noCommand(typed string) said {
	var names []string
	for _, c := range commands() {
		names = append(names, c.name)
	}
	if near := similar(typed, names); len(near) > 0 {
		return msgNoCommandNear.with("name", typed, "near", strings.Join(near, ", "))
	}
	return msgNoCommand.with("name", typed)
}
