package lsp

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"sync"
)

// This file carries messages of JSON-RPC 2.0, framed as the protocol says: headers, an empty line, and so many bytes of JSON.

// The most that is read of a message: a source is refused above two megabytes, and an editor sends it whole.
const (
	mostHeader = 8 << 10
	mostBody   = 64 << 20
)

// message is a request, a notification (no id) or a response (no method).
type message struct {
	ID     json.RawMessage `json:"id,omitempty"`
	Method string          `json:"method,omitempty"`
	Params json.RawMessage `json:"params,omitempty"`
	Result json.RawMessage `json:"result,omitempty"`
	Error  *failure        `json:"error,omitempty"`
}

// failure is why a request has no result.
type failure struct {
	Code    int    `json:"code"`
	Message string `json:"message"`
}

func (f *failure) Error() string { return f.Message }

// Codes of failures, as the two standards number them.
const (
	parseError      = -32700
	invalidRequest  = -32600
	methodNotFound  = -32601
	invalidParams   = -32602
	internalError   = -32603
	notInitialized  = -32002
	requestFailed   = -32803
	requestCanceled = -32800
)

// errBroken says that the stream cannot be followed any more: where the next message begins is not known.
var errBroken = errors.New("the stream is broken")

// readBody reads the next message. Its bytes need not be JSON; an error means that nothing more can be read.
func readBody(r *bufio.Reader) ([]byte, error) {
	length, seen := -1, 0
	for {
		line, err := r.ReadSlice('\n')
		seen += len(line)
		switch {
		case errors.Is(err, bufio.ErrBufferFull), seen > mostHeader:
			return nil, errBroken
		case err != nil && len(line) == 0 && seen == 0:
			return nil, err // the end, between two messages
		case err != nil:
			return nil, errBroken
		}
		text := strings.TrimRight(string(line), "\r\n")
		if text == "" {
			break
		}
		name, value, _ := strings.Cut(text, ":")
		if strings.EqualFold(strings.TrimSpace(name), "Content-Length") {
			if length, err = strconv.Atoi(strings.TrimSpace(value)); err != nil || length < 0 || length > mostBody {
				return nil, errBroken
			}
		}
	}
	if length < 0 {
		return nil, errBroken
	}
	body, err := io.ReadAll(io.LimitReader(r, int64(length))) // grows as bytes come, so that a length alone takes no memory
	if err != nil || len(body) < length {
		return nil, errBroken
	}
	return body, nil
}

// writer sends messages, each whole and in the order in which they were given to it. To give it one never waits: a client that writes
// before it reads would otherwise wait for a server that waits for it.
type writer struct {
	mu    sync.Mutex
	queue [][]byte
	more  chan struct{} // there is something in the queue
	ended chan struct{} // all is sent, or nothing can be
}

// newWriter is a writer that sends to a stream until it is closed.
func newWriter(out io.Writer) *writer {
	w := &writer{more: make(chan struct{}, 1), ended: make(chan struct{})}
	go func() {
		defer close(w.ended)
		for range w.more {
			w.mu.Lock()
			all := w.queue
			w.queue = nil
			w.mu.Unlock()
			for _, m := range all {
				if _, err := out.Write(m); err != nil {
					return
				}
			}
		}
	}()
	return w
}

func (w *writer) send(m any) {
	body, err := json.Marshal(m)
	if err != nil {
		return // all that is sent is our own
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	w.queue = append(w.queue, append(fmt.Appendf(nil, "Content-Length: %d\r\n\r\n", len(body)), body...))
	select {
	case w.more <- struct{}{}:
	default: // it is told already
	}
}

// close sends what is left. Nothing may be given to the writer behind it.
func (w *writer) close() {
	close(w.more)
	<-w.ended
}

// notify sends a notification.
func (w *writer) notify(method string, params any) {
	w.send(struct {
		Version string `json:"jsonrpc"`
		Method  string `json:"method"`
		Params  any    `json:"params"`
	}{"2.0", method, params})
}

// reply answers a request: with a failure, or else with a result, which may be nil.
func (w *writer) reply(id json.RawMessage, result any, fault *failure) {
	if id == nil {
		id = json.RawMessage("null")
	}
	if fault != nil {
		w.send(struct {
			Version string          `json:"jsonrpc"`
			ID      json.RawMessage `json:"id"`
			Error   *failure        `json:"error"`
		}{"2.0", id, fault})
		return
	}
	w.send(struct {
		Version string          `json:"jsonrpc"`
		ID      json.RawMessage `json:"id"`
		Result  any             `json:"result"`
	}{"2.0", id, result})
}
