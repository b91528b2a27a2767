package lsp

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestDiagnosticsFollowTheText(t *testing.T) {
	text := example(t, "marisma-leggings")
	c := opened(t, text, Options{Lang: "en"})
	require.Empty(t, errorsIn(c.published(1)))
	// One count is wrong: the message stands where it is stated.
	wrong := strings.Replace(text, "5 rounds: [fphdc, bphdc] around = cuff", "5 rounds: [fphdc, bphdc] around = cuff + 2", 1)
	c.change(2, wrong)
	found := errorsIn(c.published(2))
	require.NotEmpty(t, found)
	require.Equal(t, at(wrong, "cuff + 2", 1).Line, found[0].Range.Start.Line)
	require.Equal(t, "ovillo", found[0].Source)
	require.Regexp(t, `^OV\d\d\d$`, found[0].Code)
	// A line that cannot be read.
	c.change(3, strings.Replace(text, "hook 3.75 mm", "hook 3,75 mm", 1))
	found = errorsIn(c.published(3))
	require.Len(t, found, 1)
	require.Contains(t, found[0].Message, "3.75")
	c.change(4, text)
	require.Empty(t, errorsIn(c.published(4)))
}

func errorsIn(p publishParams) []Diagnostic {
	var out []Diagnostic
	for _, d := range p.Diagnostics {
		if d.Severity == 1 {
			out = append(out, d)
		}
	}
	return out
}

func TestMessagesInTheLanguageOfTheClient(t *testing.T) {
	text := "hook 3,75 mm\n"
	for _, x := range []struct {
		o      Options
		locale string
		want   string
	}{
		{Options{Lang: "en"}, "es-MX", "ayuda"},
		{Options{Lang: "es"}, "fr", "help"},
		{Options{Lang: "es"}, "", "ayuda"},
		{Options{Lang: "en", Asked: true}, "es", "help"},
	} {
		c := opened(t, text, x.o, `{"locale":"`+x.locale+`","capabilities":{}}`)
		require.Contains(t, c.published(1).Diagnostics[0].Message, x.want, x)
	}
}

// The rules of the session are those of the standard: LSP 3.17, "Server lifecycle" and "Base protocol".
func TestSession(t *testing.T) {
	c := startClient(t, Options{})
	early := c.answer(c.send("textDocument/hover", map[string]any{}))
	require.Equal(t, notInitialized, early.Error.Code)
	var init struct {
		Capabilities map[string]any `json:"capabilities"`
	}
	require.NoError(t, json.Unmarshal(c.call("initialize", map[string]any{"capabilities": map[string]any{
		"general": map[string]any{"positionEncodings": []string{"utf-32", "utf-8"}}}}), &init))
	require.Equal(t, "utf-8", init.Capabilities["positionEncoding"])
	require.Equal(t, invalidRequest, c.answer(c.send("initialize", map[string]any{})).Error.Code)
	require.Equal(t, methodNotFound, c.answer(c.send("textDocument/moniker", map[string]any{})).Error.Code)
	require.Equal(t, invalidParams, c.answer(c.send("textDocument/definition", []int{1})).Error.Code)
	c.notify("$/setTrace", map[string]any{"value": "off"}) // what is not known and asks for no answer is passed over
	c.raw("Content-Length: 3\r\n\r\n{{{")
	broken := c.answer("null")
	require.Equal(t, parseError, broken.Error.Code)
	require.Equal(t, "null", string(c.call("shutdown", nil)))
	require.Equal(t, invalidRequest, c.answer(c.send("textDocument/definition", map[string]any{})).Error.Code)
	c.notify("exit", nil)
	require.Equal(t, exitClean, c.end())

	c = startClient(t, Options{})
	c.call("initialize", map[string]any{"capabilities": map[string]any{}})
	c.notify("exit", nil)
	require.Equal(t, exitUnasked, c.end())

	c = startClient(t, Options{})
	require.Equal(t, exitUnasked, c.end(), "the stream ends")
	c = startClient(t, Options{})
	c.raw("Content-Length: many\r\n\r\n")
	require.Equal(t, exitUnasked, c.end(), "the stream is broken")
}

func TestCancelled(t *testing.T) {
	c := opened(t, example(t, "marisma-leggings"), Options{})
	id := c.send("textDocument/rename", map[string]any{"textDocument": map[string]any{"uri": testURI},
		"position": at(example(t, "marisma-leggings"), "bridge", 1), "newName": "gusset"})
	c.notify("$/cancelRequest", map[string]any{"id": json.RawMessage(id)})
	require.Equal(t, requestCanceled, c.answer(id).Error.Code)
}
