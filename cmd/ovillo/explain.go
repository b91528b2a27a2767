package main

import (
	"bytes"
	"strings"

	"ovillo/lang/diag"
)

var explainCommand = command{
	name: "explain",
	args: text{"[CODE]", "[CÓDIGO]"},
	line: text{"say more about a message, by its code", "explicar un mensaje, por su código"},
	long: text{
		"The code stands in brackets at the head of each message. Without a code it lists them all.",
		"El código figura entre corchetes al principio de cada mensaje. Sin un código, los enumera todos."},
	examples: []exampleLine{
		{text{"ovillo explain OV612", "ovillo explain OV612"}, text{
			"the page behind the message OV612",
			"la página del mensaje OV612"}},
	},
	fill: codesOf,
	run:  runExplain,
}

// codesOf offers the codes, each with its message.
func codesOf(f *filling) (out []candidate) {
	var b bytes.Buffer
	if len(f.words) > 0 || (diag.Printer{Lang: f.lang}).Index(&b) != nil {
		return nil
	}
	for line := range strings.Lines(b.String()) {
		code, says, _ := strings.Cut(strings.TrimSpace(line), "  ")
		out = append(out, candidate{code, says})
	}
	return out
}

func runExplain(c *call) int {
	var b bytes.Buffer
	printer := diag.Printer{Lang: c.lang} // the page behind a code is of no source: its code stands as the language has it
	switch len(c.args) {
	case 0:
		if err := printer.Index(&b); err != nil {
			return failed
		}
	case 1:
		if err := printer.Explain(&b, codeOf(c.args[0])); err != nil {
			c.say(text{err.Error(), err.Error()}.with())
			return failed
		}
	default:
		return c.misuse(msgTooMany.with("what", c.args[1]))
	}
	return c.print(b.Bytes())
}

// codeOf reads a code as people type it: [OV612], ov612 or 612.
func codeOf(typed string) diag.Code {
	code := strings.Trim(strings.ToUpper(typed), "[] ")
	if code != "" && strings.Trim(code, "0123456789") == "" {
		code = "OV" + code
	}
	return diag.Code(code)
}
