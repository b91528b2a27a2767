package main

import (
	"fmt"
	"io"
	"strings"
)

var helpCommand = command{
	name: "help",
	args: text{"[COMMAND]", "[ORDEN]"},
	line: text{"say what the commands do", "explicar las órdenes"},
	long: text{
		"Without a command it lists them all.",
		"Sin una orden, las enumera todas."},
	examples: []exampleLine{
		{text{"ovillo help build", "ovillo help build"}, text{
			"what that command does, with its flags", "lo que hace esa orden, con sus opciones"}},
	},
}

// The table of commands holds help, and help prints the table: the knot is tied here.
func init() {
	helpCommand.run = runHelp
	helpCommand.fill = func(f *filling) (out []candidate) {
		for _, k := range commands() {
			out = append(out, candidate{k.name, k.line.in(f.lang)})
		}
		return out
	}
}

func runHelp(c *call) int {
	switch len(c.args) {
	case 0:
		return c.help(nil, c.out)
	case 1:
		topic := commandNamed(c.args[0])
		if topic == nil {
			return c.misuse(noCommand(c.args[0]))
		}
		return c.help(topic, c.out)
	}
	return c.misuse(msgTooMany.with("what", c.args[1]))
}

// help prints the help of a command, or of all of them.
func (c *call) help(topic *command, w io.Writer) int {
	var b strings.Builder
	if topic == nil {
		c.overview(&b)
	} else {
		fmt.Fprintf(&b, "%s\n    ovillo %s %s\n\n%s.\n", msgUse.in(c.lang), topic.name,
			strings.TrimSpace(topic.args.in(c.lang)+flagSummary(topic)), sentence(topic.line.in(c.lang)))
		if long := topic.long.in(c.lang); long != "" {
			b.WriteString(long + "\n")
		}
		b.WriteString("\n")
		c.flagTable(&b, append(topic.flags[:len(topic.flags):len(topic.flags)], everywhere...))
		if topic.tail != nil {
			b.WriteString("\n" + topic.tail(c.lang))
		}
		if len(topic.examples) > 0 {
			b.WriteString("\n" + msgExamples.in(c.lang) + "\n")
		}
		for _, e := range topic.examples {
			fmt.Fprintf(&b, "    %s\n        %s\n", e.line.in(c.lang), e.does.in(c.lang))
		}
	}
	if _, err := io.WriteString(w, b.String()); err != nil {
		return failed
	}
	return clean
}

func (c *call) overview(b *strings.Builder) {
	b.WriteString(msgAbout.in(c.lang) + "\n\n")
	for _, k := range commands() {
		left := strings.TrimSpace("ovillo " + k.name + " " + k.args.in(c.lang))
		fmt.Fprintf(b, "    %s%s\n", pad(left, 30), k.line.in(c.lang))
	}
	b.WriteString("\n" + msgExitCodes.in(c.lang) + "\n")
}

func (c *call) flagTable(b *strings.Builder, flags []flagDef) {
	for _, f := range flags {
		left := pad(f.spelled(), 24)
		if len([]rune(left)) > 24 {
			left = strings.TrimRight(left, " ") + "\n" + strings.Repeat(" ", 28) // a long one has a line to itself
		}
		fmt.Fprintf(b, "    %s%s\n", left, f.help.in(c.lang))
	}
}

func flagSummary(k *command) string {
	var b strings.Builder
	for _, f := range k.flags {
		b.WriteString(" [" + strings.TrimSpace(f.name+" "+f.value) + "]")
	}
	return b.String()
}

// pad fills a text with blanks to a number of letters, and one at least.
func pad(s string, n int) string {
	return s + strings.Repeat(" ", max(n-len([]rune(s)), 1))
}

// sentence begins a text with a capital.
func sentence(s string) string {
	r := []rune(s)
	return strings.ToUpper(string(r[:1])) + string(r[1:])
}
