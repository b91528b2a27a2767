package lsp

import (
	"encoding/json"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestFilesThatAreUsed: names that a source has from another file are found there, and what is wrong there is told here.
func TestFilesThatAreUsed(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "colección ñ")
	require.NoError(t, os.Mkdir(dir, 0o755))
	write := func(name, text string) string {
		path := filepath.Join(dir, name)
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
		return (&url.URL{Scheme: "file", Path: path}).String()
	}
	i := strings.Index(hat, "gauge 10 cm")
	j := strings.Index(hat, "part hat")
	common := hat[i:j]
	text := hat[:i] + "use \"common.ovillo\"\n\n" + hat[j:]
	shared, uri := write("common.ovillo", common), write("hat.ovillo", text)

	c := startClient(t, Options{})
	c.call("initialize", json.RawMessage(`{"capabilities":{"textDocument":{"publishDiagnostics":{"relatedInformation":true}}}}`))
	c.notify("textDocument/didOpen", map[string]any{"textDocument": map[string]any{"uri": uri, "version": 1, "text": text}})
	require.Empty(t, errorsIn(c.published(1)))
	here := map[string]any{"textDocument": map[string]any{"uri": uri}, "position": at(text, "round_head, join", 1), "newName": "cabeza"}
	var places []Location
	require.NoError(t, json.Unmarshal(c.call("textDocument/definition", here), &places))
	from := at(common, "round_head", 1)
	require.Equal(t, []Location{{shared, Range{from, Position{from.Line, from.Character + len("round_head")}}}}, places)
	var h Hover
	require.NoError(t, json.Unmarshal(c.call("textDocument/hover", here), &h))
	require.Contains(t, h.Contents.Value, "Set in common.ovillo, line")
	require.Contains(t, h.Contents.Value, "| adult | 81 |")
	refused := c.answer(c.send("textDocument/rename", here))
	require.Contains(t, refused.Error.Message, "common.ovillo")
	var symbols []DocumentSymbol
	require.NoError(t, json.Unmarshal(c.call("textDocument/documentSymbol", here), &symbols))
	for _, s := range symbols {
		require.NotEqual(t, "round_head", s.Name)
	}
	here["position"] = at(text, "common", 1)
	require.NoError(t, json.Unmarshal(c.call("textDocument/definition", here), &places))
	require.Equal(t, shared, places[0].URI)

	// The other file is saved with a slip.
	write("common.ovillo", strings.Replace(common, "hook 5 mm", "hook 5,5 mm", 1))
	c.notify("textDocument/didSave", map[string]any{"textDocument": map[string]any{"uri": shared}})
	found := errorsIn(c.published(1))
	require.Len(t, found, 1)
	require.Contains(t, found[0].Message, "common.ovillo:")
	require.Equal(t, shared, found[0].Related[0].Location.URI)
	require.Equal(t, at(common, "hook 5", 1).Line, found[0].Related[0].Location.Range.Start.Line)
}
