package main

import (
	"bytes"
	"io"
	"math"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/words"
)

// The library is asked for what could stand next on a line by these words; the scripts of the shells do so.
var askedByShell = []string{cobra.ShellCompRequestCmd, cobra.ShellCompNoDescRequestCmd}

var completionCommand = command{
	name: "completion",
	args: text{"SHELL", "PROGRAMA"},
	line: text{"let the shell complete commands", "completar órdenes con el tabulador"},
	long: text{
		"It prints a script for bash, zsh, fish or powershell. Once the shell has read it, the tab key completes commands,\n" +
			"flags, their values, sources, and the sizes and drawings of a source.",
		"El programa es el que lee las órdenes en la terminal: bash, zsh, fish o powershell. Sale un texto para él; cuando lo\n" +
			"ha leído, la tecla del tabulador completa órdenes, opciones, sus valores, patrones, y las tallas y los dibujos de\n" +
			"un patrón."},
	examples: []exampleLine{
		{text{"ovillo completion bash > ovillo.bash", "ovillo completion bash > ovillo.bash"}, text{
			"then, in this shell, or in ~/.bashrc for every one: . ./ovillo.bash",
			"después, en esta terminal, o en ~/.bashrc para todas: . ./ovillo.bash"}},
		{text{"ovillo completion zsh > _ovillo", "ovillo completion zsh > _ovillo"}, text{
			"into a folder where zsh looks for functions", "en una carpeta donde zsh busca funciones"}},
		{text{"ovillo completion fish > ovillo.fish", "ovillo completion fish > ovillo.fish"}, text{
			"into ~/.config/fish/completions", "en ~/.config/fish/completions"}},
		{text{"ovillo completion powershell > ovillo.ps1", "ovillo completion powershell > ovillo.ps1"}, text{
			"then, here or in its profile: . ./ovillo.ps1", "después, aquí o en su perfil: . ./ovillo.ps1"}},
	},
	fill: func(*filling) []candidate {
		var out []candidate
		for _, s := range shells {
			out = append(out, candidate{s, ""})
		}
		return out
	},
}

// It prints the tree of all commands, itself among them: the knot is tied here.
func init() { completionCommand.run = runCompletion }

var shells = []string{"bash", "zsh", "fish", "powershell"}

func runCompletion(c *call) int {
	switch {
	case len(c.args) == 0:
		return c.misuse(msgWhichShell.with("allowed", strings.Join(shells, ", ")))
	case len(c.args) > 1:
		return c.misuse(msgTooMany.with("what", c.args[1]))
	}
	var b bytes.Buffer
	var err error
	switch root := c.tree(); c.args[0] {
	case "bash":
		err = root.GenBashCompletionV2(&b, true)
	case "zsh":
		err = root.GenZshCompletion(&b)
	case "fish":
		err = root.GenFishCompletion(&b, true)
	case "powershell":
		err = root.GenPowerShellCompletionWithDesc(&b)
	default:
		return c.misuse(msgWhichShell.with("allowed", strings.Join(shells, ", ")))
	}
	if err != nil {
		return failed
	}
	return c.print(b.Bytes())
}

// complete answers a shell that asks what could stand next.
func (c *call) complete(args []string) int {
	root := c.tree()
	root.SetArgs(args)
	if root.Execute() != nil {
		return failed
	}
	return clean
}

// candidate is something that could stand on the line, and what it is.
type candidate struct{ word, says string }

// filling is a line that is being typed.
type filling struct {
	*call
	words []string // behind the command
	typed string   // of the word in question
}

// offerWords says what could stand behind a command: what it offers, else sources if it takes any.
func (c *call) offerWords(k *command, args []string, typed string) ([]cobra.Completion, cobra.ShellCompDirective) {
	if k.fill != nil {
		if of := k.fill(&filling{c, args, typed}); of != nil {
			return begun(of, typed), cobra.ShellCompDirectiveNoFileComp
		}
	}
	if len(args) >= k.mostSources() {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return []cobra.Completion{"ovillo"}, cobra.ShellCompDirectiveFilterFileExt
}

// mostSources is how many sources a command takes, as its help says it.
func (k *command) mostSources() int {
	n := 0
	for _, word := range strings.Fields(k.args.en) {
		switch strings.Trim(word, "[]") {
		case "FILE", "OLD", "NEW":
			n++
		case "FILE…":
			return math.MaxInt
		}
	}
	return n
}

// offerValues says what a flag could be.
func (c *call) offerValues(def *flagDef, args []string, typed string) ([]cobra.Completion, cobra.ShellCompDirective) {
	var of []candidate
	switch {
	case def.fill != nil:
		of = def.fill(&filling{c, args, typed})
	case def.allowed != nil:
		for _, v := range def.allowed {
			of = append(of, candidate{v, ""})
		}
	case def.value == "PATH":
		return nil, cobra.ShellCompDirectiveDefault // files
	}
	if !strings.Contains(def.value, "[,") {
		return begun(of, typed), cobra.ShellCompDirectiveNoFileComp
	}
	// Of a list its last word is in question; another may follow.
	before, last := "", typed
	if i := strings.LastIndexByte(typed, ','); i >= 0 {
		before, last = typed[:i+1], typed[i+1:]
	}
	said := strings.Split(before, ",")
	of = slices.DeleteFunc(of, func(o candidate) bool { return slices.Contains(said, o.word) })
	out := begun(of, last)
	for i := range out {
		out[i] = before + out[i]
	}
	return out, cobra.ShellCompDirectiveNoFileComp | cobra.ShellCompDirectiveNoSpace
}

// begun are the candidates that begin as was typed.
func begun(of []candidate, typed string) []cobra.Completion {
	var out []cobra.Completion
	for _, o := range of {
		if strings.HasPrefix(strings.ToLower(o.word), strings.ToLower(typed)) {
			out = append(out, cobra.CompletionWithDesc(o.word, o.says))
		}
	}
	return out
}

// pattern is that of the source on the line, if it can be read and checked: what a source has is offered from it.
func (f *filling) pattern() *plan.Pattern {
	i := slices.IndexFunc(f.words, func(w string) bool { return w != "-" })
	if i < 0 {
		return nil
	}
	quiet := *f.call
	quiet.err = io.Discard
	s, ok := quiet.load(f.words[i])
	if !ok {
		return nil
	}
	checked := desk.Check(desk.Source{File: s.file, Open: s.open})
	if !checked.Printable() {
		return nil
	}
	return checked.Pattern
}

// sizesOf offers the sizes of the source on the line.
func sizesOf(f *filling) []candidate {
	p := f.pattern()
	if p == nil {
		return nil
	}
	var out []candidate
	for _, name := range sizeNames(p) {
		out = append(out, candidate{name, ""})
	}
	return out
}

// offerEditions offers the editions of pages or of drawings.
func offerEditions(which book.Edition) func(*filling) []candidate {
	return func(f *filling) (out []candidate) {
		for _, name := range editionNames(which) {
			out = append(out, candidate{name, editionsSay[name].in(f.lang)})
		}
		return out
	}
}

// readingTags offers what --lang takes.
func readingTags(*filling) (out []candidate) {
	for _, l := range words.Readings() {
		out = append(out, candidate{l.Tag(), l.ReadingNote()})
	}
	return out
}
