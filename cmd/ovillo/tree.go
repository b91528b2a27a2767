package main

import (
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// This file gives the commands to the library, which then knows how to complete them in a shell and which names are alike.
// Everything that a person reads is printed elsewhere.

// tree is the commands as the library has them, in the language of the messages.
func (c *call) tree() *cobra.Command {
	root := &cobra.Command{
		Use:               "ovillo",
		SilenceErrors:     true,
		SilenceUsage:      true,
		CompletionOptions: cobra.CompletionOptions{DisableDefaultCmd: true, DisableDescriptions: false},
	}
	root.SetOut(c.out)
	root.SetErr(io.Discard) // the library would say there, in English, what it offers
	for _, def := range allFlags() {
		// Every flag may stand before its command, but is offered only where it is taken.
		addFlag(root.PersistentFlags(), &def, laxly(def)).Hidden = true
	}
	for _, k := range commands() {
		node := c.node(k)
		root.AddCommand(node)
		if k.name == helpCommand.name {
			root.SetHelpCommand(node) // else the library adds its own
		}
	}
	return root
}

// node is one command.
func (c *call) node(k *command) *cobra.Command {
	node := &cobra.Command{
		Use:   k.name,
		Short: k.line.in(c.lang),
		Run:   func(*cobra.Command, []string) {}, // what has nothing to run is not offered
		ValidArgsFunction: func(n *cobra.Command, args []string, typed string) ([]cobra.Completion, cobra.ShellCompDirective) {
			return c.offerWords(k, args, typed)
		},
	}
	for _, def := range append(slices.Clone(k.flags), everywhere...) {
		f := addFlag(node.Flags(), &def, laxly(def))
		f.Usage = def.help.in(c.lang)
		if def.value == "" {
			continue
		}
		// The name is declared above, which is the one thing that can be wrong here.
		_ = node.RegisterFlagCompletionFunc(f.Name, func(n *cobra.Command, args []string, typed string) ([]cobra.Completion, cobra.ShellCompDirective) {
			return c.offerValues(&def, args, typed)
		})
	}
	return node
}

// laxly is a flag that takes whatever stands there: a line that is being typed need not be right yet.
func laxly(def flagDef) pflag.Value {
	return &flagValue{def: def, given: &given{values: map[string]string{}}, leave: true}
}

// similar are the names that the library takes for what was meant. A short word has few letters to get wrong.
func similar(typed string, names []string) []string {
	root := &cobra.Command{Use: "ovillo", SuggestionsMinimumDistance: 2}
	if len(typed) < 5 {
		root.SuggestionsMinimumDistance = 1
	}
	for _, n := range names {
		root.AddCommand(&cobra.Command{Use: n, Run: func(*cobra.Command, []string) {}})
	}
	if strings.TrimSpace(typed) == "" {
		return nil
	}
	return root.SuggestionsFor(typed)
}
