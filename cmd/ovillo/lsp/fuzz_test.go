package lsp

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strings"
	"testing"
	"time"
)

// framed is a message as it goes over the stream.
func framed(body string) string { return fmt.Sprintf("Content-Length: %d\r\n\r\n%s", len(body), body) }

// FuzzStream sends anything to a server: it ends, and all that it says is framed as the standard has it.
func FuzzStream(f *testing.F) {
	hello := framed(`{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"capabilities":{}}}`)
	open := framed(`{"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":{"uri":"untitled:a","version":1,"text":"part a\n  round: dc in"}}}`)
	for _, s := range []string{"", hello, hello + open, hello + open + framed(`{"jsonrpc":"2.0","id":2,"method":"textDocument/completion","params":{"textDocument":{"uri":"untitled:a"},"position":{"line":1,"character":9}}}`),
		hello + framed(`{"id":{},"method":"shutdown"}`) + framed(`{"method":"exit"}`), "Content-Length: -1\r\n\r\n", "Content-Length: 99999999\r\n\r\n{}",
		"a: b\r\n\r\n", "Content-Length: 2\n\n{}", framed(`[{"id":1}]`), framed(`null`), framed(`{"jsonrpc":"2.0","id":1,"result":null}`)} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		var out bytes.Buffer
		Serve(strings.NewReader(s), &out, Options{})
		r := bufio.NewReader(&out)
		for {
			body, err := readBody(r)
			if err == io.EOF {
				break
			}
			if err != nil || !json.Valid(body) {
				t.Fatalf("%v: %q", err, body)
			}
			if bytes.Contains(body, []byte(fmt.Sprint(internalError))) {
				t.Fatalf("a fault of ours: %s", body)
			}
		}
	})
}

// FuzzRequests asks everything about any text, at any place, after any change.
func FuzzRequests(f *testing.F) {
	f.Add(hat, 23, 9, "x")
	f.Add("idioma es\npieza a\n  vuelta: pa en ñ🧶", 2, 17, "\r\n")
	f.Add("part a like a\n  round: g\nend\ngroup g = [g, ch 1 as x]\nlet x = {", 0, 0, "end")
	f.Add("pattern x\n  intro\n    en | {a.b} {fit.waist} {", 2, 25, "")
	f.Add("use \"x\"\nmotifs a of a\n  joined in round 1: at each b, sl st in place of 1 ch\nend", 1, 3, "\u2028")
	f.Fuzz(func(t *testing.T, text string, line, character int, more string) {
		if len(text) > 4000 {
			return
		}
		c := opened(t, text, Options{})
		c.notify("textDocument/didChange", map[string]any{"textDocument": map[string]any{"uri": testURI, "version": 2},
			"contentChanges": []any{map[string]any{"range": Range{Position{line, character}, Position{line, character}}, "text": more}}})
		params := map[string]any{"textDocument": map[string]any{"uri": testURI}, "position": Position{line, character}, "newName": "neu",
			"range": Range{End: Position{1000, 0}}, "context": map[string]any{"includeDeclaration": true}}
		for method := range answers {
			m := c.answer(c.send(method, params))
			if m.Error != nil && m.Error.Code == internalError {
				t.Fatalf("%s: %s", method, m.Error.Message)
			}
		}
		done := make(chan struct{})
		go func() {
			select {
			case <-done:
			case <-time.After(30 * time.Second):
				panic("no end of checking")
			}
		}()
		c.published(2)
		close(done)
	})
}
