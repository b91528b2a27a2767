package lsp

import (
	"net/url"
	"path/filepath"
	"strings"
	"sync"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// document is a source that is open in the editor. Its worker checks the newest text; a text that was replaced before its turn came
// is never checked.
type document struct {
	server *server
	uri    string
	path   string       // "" if it is no file
	memory *desk.Memory // of the worker
	stop   chan struct{}
	poke   chan struct{} // there is a newer text

	mu     sync.Mutex
	newest *snapshot
	good   *snapshot // the newest whose pattern is known
}

// snapshot is a document as it stood at one moment. It never changes, but for what is known of it.
type snapshot struct {
	doc     *document
	version int
	text    *text
	file    *source.File

	parse func() parsed
	index func() *index // the names in it
	done  chan struct{} // closed when it was checked, or will not be

	taken bool // its check has begun; under the lock of the document

	// Known once done is closed.
	checked *desk.Checked // nil: it was not checked
	worded  []diag.Worded
	before  *snapshot // one whose pattern is known, if that of this one is not; nil if there is none

	rowsByPlace func() map[int32][]*worked // of the pattern, once it is known
}

// parsed is the tree of a source and what was wrong with the writing.
type parsed struct {
	tree  *lang.File
	found diag.List
}

func (d *document) snapshot(version int, t *text) *snapshot {
	name := d.uri
	if d.path != "" {
		name = filepath.Base(d.path)
	}
	s := &snapshot{doc: d, version: version, text: t, file: source.NewFile(name, t.read()), done: make(chan struct{})}
	s.parse = sync.OnceValue(func() parsed {
		tree, found := lang.Load(source.NewFile(name, t.read()), d.opener()) // a file of its own: checking takes others into that of the snapshot
		return parsed{tree, found}
	})
	s.rowsByPlace = sync.OnceValue(func() map[int32][]*worked { return gatherRows(s.checked.Pattern) })
	s.index = sync.OnceValue(func() *index { return newIndex(s.parse().tree) })
	return s
}

// open begins a document.
func (s *server) open(t textDocument) {
	s.closeDocument(t.URI)
	d := &document{server: s, uri: t.URI, path: pathOf(t.URI), memory: &desk.Memory{}, stop: make(chan struct{}), poke: make(chan struct{}, 1)}
	d.newest = d.snapshot(t.Version, newText(t.Text, s.encoding))
	s.docs[t.URI] = d
	s.workers.Go(d.work)
	d.poke <- struct{}{}
}

// change brings a document to its next text.
func (s *server) change(p changeParams) {
	d := s.docs[p.TextDocument.URI]
	if d == nil {
		return
	}
	t := d.current().text
	for _, c := range p.ContentChanges {
		if c.Range == nil {
			t = newText(c.Text, s.encoding)
		} else {
			t = t.with(*c.Range, c.Text)
		}
	}
	d.replace(d.snapshot(p.TextDocument.Version, t))
}

// recheck checks all documents again, since files that they take in may have changed.
func (s *server) recheck() {
	for _, d := range s.docs {
		now := d.current()
		d.replace(d.snapshot(now.version, now.text))
	}
}

// closeDocument ends a document. What was found in it is taken back.
func (s *server) closeDocument(uri string) {
	if d := s.docs[uri]; d != nil {
		d.close()
		delete(s.docs, uri)
		s.notify("textDocument/publishDiagnostics", map[string]any{"uri": uri, "diagnostics": []Diagnostic{}})
	}
}

func (d *document) close() { close(d.stop) }

func (d *document) current() *snapshot {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.newest
}

func (d *document) replace(s *snapshot) {
	d.mu.Lock()
	old := d.newest
	d.newest = s
	d.mu.Unlock()
	d.abandon(old)
	select {
	case d.poke <- struct{}{}:
	default: // the worker looks again anyway
	}
}

// work checks the newest text, again and again, until the document is closed.
func (d *document) work() {
	for {
		select {
		case <-d.stop:
			d.abandon(d.current())
			return
		case <-d.poke:
		}
		s := d.takeNewest()
		if s == nil {
			continue
		}
		if fault := d.server.guard("check", s.check); fault != nil {
			s.checked, s.worded = nil, nil
		}
		d.finish(s)
	}
}

// takeNewest is the newest text, if it is still to be checked.
func (d *document) takeNewest() *snapshot {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.newest.isDone() {
		return nil
	}
	d.newest.taken = true
	return d.newest
}

// finish makes known what was found in a text, unless a newer one waits.
func (d *document) finish(s *snapshot) {
	d.mu.Lock()
	stale := d.newest != s
	if s.known() {
		d.good = s
	} else {
		s.before = d.good
	}
	close(s.done)
	d.mu.Unlock()
	select {
	case <-d.stop:
	default:
		if !stale && s.checked != nil {
			d.publish(s)
		}
	}
}

// abandon gives up a text that was not checked: those who wait for it make do with what was known before.
func (d *document) abandon(s *snapshot) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if s.taken || s.isDone() {
		return
	}
	s.before = d.good
	close(s.done)
}

// quoted is a place of the source, or of a file that it takes in, as it stands there.
func (s *snapshot) quoted(at source.Span) string { return s.parse().tree.Source.Slice(at) }

// mine reports whether a place lies in the source itself, not in a file that it takes in.
func (s *snapshot) mine(at source.Span) bool { return int(at.Start) <= len(s.text.body) }

func (s *snapshot) isDone() bool {
	select {
	case <-s.done:
		return true
	default:
		return false
	}
}

// check works the source in every size.
func (s *snapshot) check() {
	file := source.NewFile(s.file.Name, s.text.read()) // its own: files that the source uses are taken into it
	c := desk.Check(desk.Source{File: file, Open: s.doc.opener(), Memory: s.doc.memory})
	s.worded = c.Printer(s.doc.server.options.Lang, false).Worded(file, c.Found)
	s.checked = &c
}

// opener reads the files that lie in the folder of a document; nil if it is no file.
func (d *document) opener() func(name string) ([]byte, error) {
	if d.path == "" {
		return nil
	}
	return desk.Folder(filepath.Dir(d.path))
}

// known reports whether the pattern of a text is known.
func (s *snapshot) known() bool { return s.checked != nil && s.checked.Pattern != nil }

// pathOf is the file that an address names, "" if it is none of this machine: two slashes before a path lead to another one.
func pathOf(uri string) string {
	u, err := url.Parse(uri)
	if err != nil || u.Scheme != "file" || u.Host != "" && u.Host != "localhost" || strings.HasPrefix(u.Path, "//") ||
		strings.HasPrefix(u.Path, `/\`) || strings.ContainsRune(u.Path, 0) {
		return ""
	}
	path := u.Path
	if len(path) > 2 && path[0] == '/' && path[2] == ':' { // a drive
		path = path[1:]
	}
	return filepath.FromSlash(path)
}

// uriBeside is the address of a file in the folder of a document.
func (d *document) uriBeside(name string) string {
	if i := strings.LastIndexByte(d.uri, '/'); i >= 0 {
		return d.uri[:i+1] + (&url.URL{Path: filepath.ToSlash(name)}).EscapedPath()
	}
	return d.uri
}
