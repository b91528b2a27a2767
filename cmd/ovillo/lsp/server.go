package lsp

import (
	"bufio"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strings"
	"sync"
)

// Options are what a server needs to know of the command that started it.
type Options struct {
	Lang  string // of the messages, en or es: what the user asked for, or what the system is set to
	Asked bool   // the user asked for it; else the client's own language goes before
}

// Exit codes, as the protocol has them.
const (
	exitClean   = 0 // the client shut the server down before it ended it
	exitUnasked = 1
)

// Serve answers a client until it says exit, or until the stream ends. It returns the exit code.
func Serve(in io.Reader, out io.Writer, o Options) int {
	s := newServer(out, o)
	r := bufio.NewReaderSize(in, mostHeader)
	code := exitUnasked
	for {
		body, err := readBody(r)
		if err != nil {
			break
		}
		if exit, asked := s.take(body); exit {
			if asked {
				code = exitClean
			}
			break
		}
	}
	s.end()
	return code
}

// server is the state of one client's session. Only what follows mu is used by several goroutines.
type server struct {
	*writer
	options  Options
	stage    stage
	encoding string
	plain    bool // the client shows no Markdown
	related  bool // it shows related places
	docs     map[string]*document
	workers  sync.WaitGroup // requests and documents that are being worked on

	mu      sync.Mutex
	pending map[string]context.CancelFunc // requests by their ids
}

// stage is how far a session has come.
type stage uint8

const (
	beforeInit stage = iota
	running
	shutDown
)

func newServer(out io.Writer, o Options) *server {
	if o.Lang != "es" {
		o.Lang = "en"
	}
	return &server{writer: newWriter(out), options: o, encoding: utf16Encoding, docs: map[string]*document{},
		pending: map[string]context.CancelFunc{}}
}

// end stops what is being worked on and waits for it.
func (s *server) end() {
	for _, d := range s.docs {
		d.close()
	}
	s.mu.Lock()
	for _, cancel := range s.pending {
		cancel()
	}
	s.mu.Unlock()
	s.workers.Wait()
	s.writer.close()
}

// take handles a message. exit says that the client ends the session, asked that it had shut it down before.
func (s *server) take(body []byte) (exit, asked bool) {
	var m message
	if err := json.Unmarshal(body, &m); err != nil {
		s.reply(nil, nil, &failure{parseError, "the message is no JSON object of the protocol"})
		return false, false
	}
	request := len(m.ID) > 0 && string(m.ID) != "null"
	switch {
	case m.Method == "" && (m.Result != nil || m.Error != nil):
		return false, false // an answer; nothing is asked of clients
	case m.Method == "":
		s.reply(m.ID, nil, &failure{invalidRequest, "there is no method"})
	case m.Method == "exit":
		return true, s.stage == shutDown
	case request:
		s.request(m)
	default:
		s.guard(m.Method, func() { s.notified(m) })
	}
	return false, false
}

// guard keeps a fault of ours in one answer from ending the session.
func (s *server) guard(what string, do func()) (fault *failure) {
	defer func() {
		if r := recover(); r != nil {
			fault = &failure{internalError, fmt.Sprintf("%s: %v", what, r)}
			s.notify("window/logMessage", map[string]any{"type": 1, "message": "ovillo: " + fault.Message})
		}
	}()
	do()
	return nil
}

// notified handles a notification. One that is not known is passed over, as the protocol asks.
func (s *server) notified(m message) {
	if m.Method == "$/cancelRequest" {
		var p struct {
			ID json.RawMessage `json:"id"`
		}
		if json.Unmarshal(m.Params, &p) == nil {
			s.mu.Lock()
			if cancel := s.pending[string(p.ID)]; cancel != nil {
				cancel()
			}
			s.mu.Unlock()
		}
		return
	}
	if s.stage != running {
		return
	}
	switch m.Method {
	case "textDocument/didOpen":
		var p documentParams
		if json.Unmarshal(m.Params, &p) == nil && p.TextDocument.URI != "" {
			s.open(p.TextDocument)
		}
	case "textDocument/didChange":
		var p changeParams
		if json.Unmarshal(m.Params, &p) == nil {
			s.change(p)
		}
	case "textDocument/didSave":
		s.recheck() // another document may take in what was saved
	case "textDocument/didClose":
		var p documentParams
		if json.Unmarshal(m.Params, &p) == nil {
			s.closeDocument(p.TextDocument.URI)
		}
	}
}

// request answers a request: those that change the session at once, the others beside one another.
func (s *server) request(m message) {
	switch {
	case m.Method == "initialize" && s.stage != beforeInit:
		s.reply(m.ID, nil, &failure{invalidRequest, "the session has begun already"})
	case m.Method == "initialize":
		s.initialize(m)
	case s.stage == beforeInit:
		s.reply(m.ID, nil, &failure{notInitialized, "the session has not begun"})
	case s.stage == shutDown:
		s.reply(m.ID, nil, &failure{invalidRequest, "the session is shut down"})
	case m.Method == "shutdown":
		s.stage = shutDown
		s.reply(m.ID, nil, nil)
	default:
		s.ask(m)
	}
}

func (s *server) initialize(m message) {
	var p initializeParams
	if m.Params != nil && json.Unmarshal(m.Params, &p) != nil {
		s.reply(m.ID, nil, &failure{invalidParams, "the parameters cannot be read"})
		return
	}
	if p.Locale != "" && !s.options.Asked {
		s.options.Lang = "en"
		if language := strings.ToLower(p.Locale); language == "es" || strings.HasPrefix(language, "es-") || strings.HasPrefix(language, "es_") {
			s.options.Lang = "es"
		}
	}
	if slices.Contains(p.Capabilities.General.PositionEncodings, utf8Encoding) {
		s.encoding = utf8Encoding
	}
	formats := p.Capabilities.TextDocument.Hover.ContentFormat
	s.plain = formats != nil && !slices.Contains(formats, "markdown")
	s.related = p.Capabilities.TextDocument.PublishDiagnostics.RelatedInformation
	s.stage = running
	s.reply(m.ID, map[string]any{
		"capabilities": capabilities(s.encoding),
		"serverInfo":   map[string]string{"name": "ovillo"},
	}, nil)
}

// query is a request about a place in a document.
type query struct {
	*server
	*snapshot
	ctx    context.Context
	params documentParams
}

// answers are the requests that the server knows, each with what answers it. A result of nil is the protocol's null.
var answers = map[string]func(*query) (any, *failure){
	"textDocument/hover":             (*query).hover,
	"textDocument/completion":        (*query).complete,
	"textDocument/codeAction":        (*query).actions,
	"textDocument/definition":        (*query).definition,
	"textDocument/references":        (*query).references,
	"textDocument/documentHighlight": (*query).highlight,
	"textDocument/prepareRename":     (*query).prepareRename,
	"textDocument/rename":            (*query).rename,
	"textDocument/documentSymbol":    (*query).symbols,
	"textDocument/formatting":        (*query).format,
	"textDocument/inlayHint":         (*query).hints,
}

// ask answers a request from the document as it stands, in a goroutine of its own, until the client cancels it.
func (s *server) ask(m message) {
	answer := answers[m.Method]
	if answer == nil {
		s.reply(m.ID, nil, &failure{methodNotFound, "the method " + m.Method + " is not known"})
		return
	}
	q := &query{server: s}
	if json.Unmarshal(m.Params, &q.params) != nil || q.params.TextDocument.URI == "" {
		s.reply(m.ID, nil, &failure{invalidParams, "the parameters cannot be read"})
		return
	}
	d := s.docs[q.params.TextDocument.URI]
	if d == nil {
		s.reply(m.ID, nil, &failure{invalidParams, "the document is not open"})
		return
	}
	q.snapshot = d.current()
	var cancel context.CancelFunc
	q.ctx, cancel = context.WithCancel(context.Background())
	id := string(m.ID)
	s.mu.Lock()
	s.pending[id] = cancel
	s.mu.Unlock()
	s.workers.Go(func() {
		var result any
		var wrong *failure
		if fault := s.guard(m.Method, func() { result, wrong = answer(q) }); fault != nil {
			result, wrong = nil, fault
		}
		if q.ctx.Err() != nil {
			result, wrong = nil, &failure{requestCanceled, "the request was cancelled"}
		}
		s.mu.Lock()
		delete(s.pending, id)
		s.mu.Unlock()
		cancel()
		s.reply(m.ID, result, wrong)
	})
}
