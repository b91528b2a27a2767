package preview

import (
	"context"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"sync"
	"time"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// How long is waited for those who save. A file is seldom saved in one go: it is emptied and then written, or a new one takes its
// place, or it is moved away first.
const (
	settling = 2 * time.Millisecond   // after a change, for the rest of it
	emptied  = 60 * time.Millisecond  // for the text of a file that was just emptied
	absence  = 300 * time.Millisecond // for a file that was just taken away
	between  = 5 * time.Millisecond   // two looks at one that is not whole yet
)

// mostBytes is the largest source that is read.
const mostBytes = 16 << 20

var errTooLarge = errors.New("too large")

// file is a source with its worker.
type file struct {
	*Server
	id   int
	kick chan struct{} // holds a token when there is something to look at

	within string // the folder, absolute, that is shown as a whole and has the file; "" if the file itself was named

	last map[string]string // what was in the files that it was made of, by path: the name of the content
	sets int               // how often it was set

	memory desk.Memory

	mu   sync.Mutex       // guards what follows, which the watcher reads
	path string           // absolute
	uses map[string]stamp // the files that it was made of, by path, as they were then
	self os.FileInfo      // the source as it was read last
}

// stamp is how a file on the disk stands, so far as can be told without reading it.
type stamp struct {
	size int64
	time time.Time
}

func stampOf(path string) stamp {
	info, err := os.Stat(path)
	if err != nil {
		return stamp{size: -1}
	}
	return stamp{info.Size(), info.ModTime()}
}

// wake has the worker look at the file; once more if it is just looking.
func (f *file) wake() {
	select {
	case f.kick <- struct{}{}:
	default:
	}
}

// moved reports whether the files that the source was made of differ from how they were.
func (f *file) moved() bool {
	f.mu.Lock()
	defer f.mu.Unlock()
	for path, was := range f.uses {
		if stampOf(path) != was {
			return true
		}
	}
	return false
}

// made notes the files that a source was made of.
func (f *file) made(uses map[string]stamp) {
	f.mu.Lock()
	f.uses = uses
	f.mu.Unlock()
	f.watcher.follow(f)
}

// paths are the files to be watched for a source.
func (f *file) paths() []string {
	f.mu.Lock()
	defer f.mu.Unlock()
	out := []string{f.path}
	for path := range f.uses {
		if path != f.path {
			out = append(out, path)
		}
	}
	return out
}

// work looks at the file each time it is woken, until the context ends.
func (f *file) work(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-f.kick:
			wait(ctx, settling)
			f.guarded(func() { f.refresh(ctx) })
		}
	}
}

// guarded turns a fault of ours into words; the worker goes on.
func (f *file) guarded(job func()) {
	defer func() {
		if fault := recover(); fault != nil {
			v := f.view().spoilt(time.Now())
			v.state, v.why = faulty, f.Options.Fault(v.name, fault)
			f.board.put(v)
		}
	}()
	job()
}

// view is what the board has of the file.
func (f *file) view() *view { return f.board.of(f.id) }

// refresh reads, checks and sets the source, and shows what comes of it: what was found first. It does nothing if all that the
// source was made of is as it was, and stops halfway if a newer text is there.
func (f *file) refresh(ctx context.Context) {
	r, err := f.read(ctx)
	switch {
	case ctx.Err() != nil:
		return
	case err != nil:
		f.lost(err)
		return
	}
	if f.same(r.text) {
		return
	}
	c := desk.Check(desk.Source{File: source.NewFile(f.view().name, r.text), Open: r.open, Memory: &f.memory})
	f.made(r.uses)
	v := *f.view()
	v.text, v.why, v.state = wordsOf(&c, f.Options.Lang), "", standing(c.Found)
	if !c.Printable() && !c.Bindable() {
		if c.Shared && !c.Found.HasErrors() {
			v.why = wordNothing.in(f.Options.Lang)
		}
		f.board.put(v.spoilt(time.Now()))
		f.keep(r)
		return
	}
	f.board.put(v)
	if len(f.kick) > 0 && f.moved() {
		return // the pages of this text would be old before they are shown
	}
	s, why := f.setOf(v.name, &c)
	if why == "" {
		f.sets++
		s.number = f.sets
		v.set, v.old = s, false
		f.board.put(v)
		f.keep(r)
		return
	}
	v = v.spoilt(time.Now())
	v.state, v.why = faulty, why
	f.board.put(v)
	f.keep(r)
}

// setOf sets a checked source, or says why it cannot be.
func (f *file) setOf(name string, c *desk.Checked) (s *set, why string) {
	var err error
	if c.Book == nil {
		pattern, look, why := f.Options.Choose(name, c.Pattern)
		if why != "" {
			return nil, why
		}
		s, err = makeSet(pattern, look, filepath.Base(f.path), f.address())
	} else {
		book, look, why := f.bookOf(c.Book)
		if why != "" {
			return nil, why
		}
		s, err = makeBookSet(book, look, filepath.Base(f.path), f.address())
	}
	if err != nil {
		return nil, f.Options.Unset(name, err)
	}
	return s, ""
}

// bookOf is a book with what is chosen of each of its patterns, in the languages of the book.
func (f *file) bookOf(b *plan.Book) (one *plan.Book, look desk.Look, why string) {
	book := *b
	book.Patterns = nil
	for i, p := range b.Patterns {
		as := *p // the languages that are shown are those of the book
		as.Languages = b.Head.Languages
		chosen, l, why := f.Options.Choose(b.Files[i], &as)
		if why != "" {
			return nil, desk.Look{}, why
		}
		whole := *chosen
		whole.Languages = p.Languages
		book.Patterns, look = append(book.Patterns, &whole), l
	}
	return &book, look, ""
}

// taken is a source as it was read, and what it read besides.
type taken struct {
	text string
	info os.FileInfo
	open func(string) ([]byte, error)
	uses map[string]stamp
	held map[string]string // the names of the contents, by path
}

// read reads the source when it is whole.
func (f *file) read(ctx context.Context) (*taken, error) {
	began := time.Now()
	for {
		before := stampOf(f.path)
		data, info, err := f.readFile()
		patience := emptied
		if errors.Is(err, fs.ErrNotExist) {
			patience = absence
		}
		whole := err == nil && len(data) > 0 && stampOf(f.path) == before && int64(len(data)) == before.size
		if whole || time.Since(began) > patience || ctx.Err() != nil {
			if err != nil {
				return nil, err
			}
			return f.taken(string(data), info, before), nil
		}
		if errors.Is(err, fs.ErrNotExist) && time.Since(began) > absence/2 && f.renamed() {
			began = time.Now()
		}
		wait(ctx, between)
	}
}

// readFile reads a source. One that was found in a folder is read as what that folder holds: a link that leads out of it leads nowhere.
func (f *file) readFile() ([]byte, os.FileInfo, error) {
	if f.within != "" {
		folder, err := os.OpenRoot(f.within)
		if err != nil {
			return nil, nil, err
		}
		defer folder.Close()
		return readAll(desk.OpenIn(folder, filepath.Base(f.path)))
	}
	return readAll(desk.OpenSource(f.path))
}

func readAll(f *os.File, err error) ([]byte, os.FileInfo, error) {
	if err != nil {
		return nil, nil, err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, nil, err
	}
	data, err := io.ReadAll(io.LimitReader(f, mostBytes+1))
	if err == nil && len(data) > mostBytes {
		err = errTooLarge
	}
	return data, info, err
}

// taken is a source that was read; the files that it opens are noted.
func (f *file) taken(text string, info os.FileInfo, at stamp) *taken {
	r := &taken{text: text, info: info, uses: map[string]stamp{f.path: at}, held: map[string]string{f.path: nameOf([]byte(text))}}
	folder := filepath.Dir(f.path)
	open := desk.Folder(folder)
	r.open = func(name string) ([]byte, error) {
		path := filepath.Join(folder, filepath.FromSlash(name))
		if filepath.IsLocal(filepath.FromSlash(name)) {
			r.uses[path] = stampOf(path)
		}
		data, err := open(name)
		if err == nil {
			r.held[path] = nameOf(data)
		}
		return data, err
	}
	return r
}

// same reports whether a text, and all that the source read besides, is what was shown last.
func (f *file) same(text string) bool {
	if f.last == nil || f.view().state == gone || f.last[f.path] != nameOf([]byte(text)) {
		return false
	}
	uses := map[string]stamp{}
	for _, path := range f.paths() {
		uses[path] = stampOf(path)
		if path == f.path {
			continue
		}
		held := ""
		if name, err := filepath.Rel(filepath.Dir(f.path), path); err == nil {
			if data, err := desk.Folder(filepath.Dir(f.path))(filepath.ToSlash(name)); err == nil {
				held = nameOf(data)
			}
		}
		if f.last[path] != held {
			return false
		}
	}
	f.made(uses)
	return true
}

// keep remembers what is shown.
func (f *file) keep(r *taken) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.last, f.self = r.held, r.info
}

// is reports whether a file on the disk is the source as it was read last, under whatever name.
func (f *file) is(info os.FileInfo) bool {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.self != nil && os.SameFile(info, f.self)
}

// lost shows that the source cannot be read. Its last pages stay.
func (f *file) lost(err error) {
	v := f.view().spoilt(time.Now())
	if v.state == gone {
		return
	}
	v.state, v.text, v.why = gone, nil, f.Options.Unread(v.name, f.path, err)
	f.board.put(v)
	f.made(map[string]stamp{f.path: stampOf(f.path)})
}

// renamed looks in the folder for the source under another name, and goes on with that.
func (f *file) renamed() bool {
	folder := filepath.Dir(f.path)
	entries, err := os.ReadDir(folder)
	if err != nil {
		return false
	}
	for _, e := range entries {
		path := filepath.Join(folder, e.Name())
		info, err := os.Lstat(path)
		if err != nil || !isSource(e.Name()) || !f.is(info) || f.has(path) {
			continue
		}
		f.mu.Lock()
		f.path, f.uses = path, nil
		f.mu.Unlock()
		f.last = nil
		v := *f.view()
		v.name = filepath.Join(filepath.Dir(v.name), e.Name())
		f.board.put(v)
		f.watcher.follow(f)
		return true
	}
	return false
}

// wait waits, but not beyond the context.
func wait(ctx context.Context, d time.Duration) {
	t := time.NewTimer(d)
	defer t.Stop()
	select {
	case <-ctx.Done():
	case <-t.C:
	}
}
