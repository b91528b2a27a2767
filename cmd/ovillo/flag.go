package main

import (
	"slices"
	"strings"
)

// flagDef is a flag of a command. Flags may stand anywhere on the line; `--` ends them.
type flagDef struct {
	name    string   // with its hyphens: what the program, the help and the messages call it
	value   string   // what its value is called in the help; "" for a switch
	allowed []string // the values it may have; nil: any
	many    bool     // it may be given several times; its values are then one, parted by manySeparator
	help    text
	fill    func(*filling) []candidate // offers values to a shell; nil: those allowed, else files
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

// otherNames are the second names of flags: a letter for a word, a word for a letter.
var otherNames = map[string]string{
	"--help": "-h",
	"-o":     "--output",
	"-w":     "--write",
	"-l":     "--list",
	"-d":     "--diff",
}

// names are the names of a flag without hyphens, as the library wants them: a word, and a letter or nothing.
func (f *flagDef) names() (word, letter string) {
	for _, n := range []string{f.name, otherNames[f.name]} {
		if bare := strings.TrimLeft(n, "-"); len(bare) == 1 {
			letter = bare
		} else if bare != "" {
			word = bare
		}
	}
	return word, letter
}

// spelled is a flag as the help shows it: with both names, the letter first, and its value.
func (f *flagDef) spelled() string {
	word, letter := f.names()
	s := "--" + word
	if letter != "" {
		s = "-" + letter + ", " + s
	}
	return strings.TrimSpace(s + " " + f.value)
}

// allFlags are those of all commands, each name once. A name means the same, with or without a value, wherever it is used
// (a test checks that), so that flags may stand before the command.
func allFlags() []flagDef {
	all := slices.Clone(everywhere)
	for _, c := range commands() {
		for _, f := range c.flags {
			if !slices.ContainsFunc(all, func(o flagDef) bool { return o.name == f.name }) {
				all = append(all, f)
			}
		}
	}
	return all
}

// takes finds a flag of a command, or of all of them; nil if it has none of that name. Without a command it looks everywhere.
func (c *command) takes(name string) *flagDef {
	of := allFlags()
	if c != nil {
		of = append(slices.Clone(c.flags), everywhere...)
	}
	if i := slices.IndexFunc(of, func(f flagDef) bool { return f.name == name }); i >= 0 {
		return &of[i]
	}
	return nil
}
