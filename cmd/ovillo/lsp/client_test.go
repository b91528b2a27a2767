package lsp

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// client is the other end of a server's streams.
type client struct {
	tb     testing.TB
	to     io.WriteCloser
	from   *bufio.Reader
	id     int
	code   chan int
	told   []message // notifications that nobody waited for
	closed bool
}

func startClient(tb testing.TB, o Options) *client {
	in, to := io.Pipe()
	from, out := io.Pipe()
	c := &client{tb: tb, to: to, from: bufio.NewReader(from), code: make(chan int, 1)}
	go func() {
		c.code <- Serve(in, out, o)
		out.Close()
	}()
	tb.Cleanup(func() {
		if !c.closed {
			to.Close()
			io.Copy(io.Discard, from)
			<-c.code
		}
	})
	return c
}

// opened is a client with one document, and what the server says of itself.
func opened(tb testing.TB, text string, o Options, params ...string) *client {
	c := startClient(tb, o)
	p := `{"capabilities":{"textDocument":{"publishDiagnostics":{"relatedInformation":true}}}}`
	if len(params) > 0 {
		p = params[0]
	}
	c.call("initialize", json.RawMessage(p))
	c.notify("initialized", map[string]any{})
	c.notify("textDocument/didOpen", map[string]any{"textDocument": map[string]any{"uri": testURI, "languageId": "ovillo", "version": 1, "text": text}})
	return c
}

const testURI = "file:///nowhere/test.ovillo"

func (c *client) write(v any) {
	body, err := json.Marshal(v)
	require.NoError(c.tb, err)
	c.raw(fmt.Sprintf("Content-Length: %d\r\n\r\n%s", len(body), body))
}

func (c *client) raw(s string) {
	_, err := io.WriteString(c.to, s)
	require.NoError(c.tb, err)
}

func (c *client) read() (message, bool) {
	body, err := readBody(c.from)
	if err != nil {
		return message{}, false
	}
	var m message
	require.NoError(c.tb, json.Unmarshal(body, &m))
	return m, true
}

func (c *client) notify(method string, params any) {
	c.write(map[string]any{"jsonrpc": "2.0", "method": method, "params": params})
}

// send sends a request and returns its id.
func (c *client) send(method string, params any) string {
	c.id++
	c.write(map[string]any{"jsonrpc": "2.0", "id": c.id, "method": method, "params": params})
	return fmt.Sprint(c.id)
}

// answer waits for the response to a request.
func (c *client) answer(id string) message {
	for {
		m, ok := c.read()
		require.True(c.tb, ok, "the server ended")
		if m.Method == "" && string(m.ID) == id {
			return m
		}
		c.told = append(c.told, m)
	}
}

// call is a request that must succeed.
func (c *client) call(method string, params any) json.RawMessage {
	c.tb.Helper()
	m := c.answer(c.send(method, params))
	require.Nil(c.tb, m.Error, "%s: %v", method, m.Error)
	return m.Result
}

// ask is a request about the document that must succeed, its result read into out.
func (c *client) ask(method string, more map[string]any, out any) {
	c.tb.Helper()
	p := map[string]any{"textDocument": map[string]any{"uri": testURI}}
	for k, v := range more {
		p[k] = v
	}
	require.NoError(c.tb, json.Unmarshal(c.call(method, p), out))
}

// published waits for the diagnostics of a version.
func (c *client) published(version int) publishParams {
	c.tb.Helper()
	for {
		var m message
		if len(c.told) > 0 {
			m, c.told = c.told[0], c.told[1:]
		} else {
			var ok bool
			m, ok = c.read()
			require.True(c.tb, ok, "the server ended")
		}
		if m.Method != "textDocument/publishDiagnostics" {
			continue
		}
		var p publishParams
		require.NoError(c.tb, json.Unmarshal(m.Params, &p))
		if p.Version >= version {
			return p
		}
	}
}

// change replaces the whole text.
func (c *client) change(version int, text string) {
	c.notify("textDocument/didChange", map[string]any{"textDocument": map[string]any{"uri": testURI, "version": version},
		"contentChanges": []any{map[string]any{"text": text}}})
}

// end closes the streams and returns the exit code.
func (c *client) end() int {
	c.tb.Helper()
	c.closed = true
	go io.Copy(io.Discard, c.from)
	c.to.Close()
	select {
	case code := <-c.code:
		return code
	case <-time.After(20 * time.Second):
		c.tb.Fatal("the server does not end")
		return 0
	}
}

// at is the position of the n-th occurrence of a word in a text, from 1, in UTF-16.
func at(text, word string, n int) Position {
	i := -1
	for range n {
		i += 1 + strings.Index(text[i+1:], word)
	}
	return newText(text, utf16Encoding).position(i)
}

func where(p Position) map[string]any { return map[string]any{"position": p} }

// example is the text of an example.
func example(tb testing.TB, name string) string {
	b, err := os.ReadFile(filepath.Join("..", "..", "..", "examples", name+".ovillo"))
	require.NoError(tb, err)
	return string(b)
}
