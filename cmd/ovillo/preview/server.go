package preview

import (
	"context"
	"crypto/rand"
	"errors"
	"io"
	"io/fs"
	"log"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"time"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
)

// Options say what is shown and how.
type Options struct {
	Files   []string // sources
	Folders []string // whose sources are shown, those too that come later
	Lang    string   // of the messages and of the page: en or es
	// Port is the port on the loopback interface; 0 is any that is free. The address of a port that was asked for is the same each
	// time, so that a tab finds the preview again; that of another holds a word that nobody can guess.
	Port int

	// Choose says of a checked pattern what is set and how, or why it cannot be.
	Choose func(name string, of *plan.Pattern) (p *plan.Pattern, l desk.Look, why string)
	// Unread, Unset and Fault say in words why a source cannot be read, why it cannot be set, and that ovillo failed.
	Unread func(name, path string, err error) string
	Unset  func(name string, err error) string
	Fault  func(name string, fault any) string
}

// Server shows sources. Make one with [Listen] and let it [Server.Run].
type Server struct {
	Options  Options
	board    *board
	watcher  *watcher
	listener net.Listener
	base     string            // the path of the page: "/" or "/WORD/"
	hosts    []string          // the names under which it may be asked
	folders  map[string]string // that are shown as a whole: as they were named, by their absolute path
	ending   context.Context
	end      context.CancelFunc
	workers  sync.WaitGroup

	mu    sync.Mutex
	files []*file
}

// Listen takes a port. The error is the system's; a port that is taken is a [syscall.EADDRINUSE].
func Listen(o Options) (*Server, error) {
	l, err := net.Listen("tcp4", net.JoinHostPort("127.0.0.1", strconv.Itoa(o.Port)))
	if err != nil {
		return nil, err
	}
	s := &Server{Options: o, board: newBoard(), listener: l, base: "/", folders: map[string]string{}}
	if o.Port == 0 {
		s.base = "/" + strings.ToLower(rand.Text()) + "/"
	}
	_, port, err := net.SplitHostPort(l.Addr().String())
	if err != nil {
		l.Close()
		return nil, err
	}
	for _, name := range []string{"127.0.0.1", "localhost", "[::1]"} {
		s.hosts = append(s.hosts, name+":"+port)
	}
	s.ending, s.end = context.WithCancel(context.Background())
	s.watcher = newWatcher(s)
	return s, nil
}

// Address is that of the page.
func (s *Server) Address() string { return "http://" + s.listener.Addr().String() + s.base }

// Run shows the sources until the context ends. It returns when all is put away: no worker is left, and no connection.
func (s *Server) Run(ctx context.Context) error {
	defer s.workers.Wait()
	defer s.end()
	for _, path := range s.Options.Files {
		s.add(path, "")
	}
	for _, folder := range s.Options.Folders {
		if full, err := filepath.Abs(folder); err == nil {
			s.folders[full] = folder
			s.watcher.folder(full)
			s.scan(full)
		}
	}
	s.workers.Go(func() { s.watcher.run(s.ending) })
	web := &http.Server{
		Handler:           s,
		ReadHeaderTimeout: 10 * time.Second,
		IdleTimeout:       time.Minute,
		MaxHeaderBytes:    1 << 16,
		ErrorLog:          log.New(io.Discard, "", 0), // a browser that goes away is no news
	}
	served := make(chan error, 1)
	go func() { served <- web.Serve(s.listener) }()
	select {
	case err := <-served:
		return err
	case <-ctx.Done():
	}
	s.end() // those who are told of news are let go
	patience, done := context.WithTimeout(context.Background(), time.Second)
	defer done()
	if err := web.Shutdown(patience); err != nil {
		web.Close()
	}
	if err := <-served; !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// isSource reports whether a file of a folder is taken for a source.
func isSource(name string) bool {
	return filepath.Ext(name) == ".ovillo" && !strings.HasPrefix(name, ".")
}

// Sources are the names of the sources in a folder.
func Sources(folder string) []string {
	entries, _ := os.ReadDir(folder) // there are none in one that cannot be read
	var out []string
	for _, e := range entries {
		if isSource(e.Name()) && (e.Type().IsRegular() || e.Type()&fs.ModeSymlink != 0) {
			out = append(out, e.Name())
		}
	}
	return out
}

// add shows one more source, within the folder where it was found; "" if it was named.
func (s *Server) add(path, within string) {
	full, err := filepath.Abs(path)
	if err != nil {
		full = path
	}
	s.mu.Lock()
	if slices.ContainsFunc(s.files, func(f *file) bool { return f.at() == full }) {
		s.mu.Unlock()
		return
	}
	f := &file{Server: s, id: len(s.files) + 1, kick: make(chan struct{}, 1), path: full, within: within}
	s.files = append(s.files, f)
	s.mu.Unlock()
	s.board.put(view{id: f.id, name: path, state: reading})
	s.watcher.follow(f)
	f.wake()
	s.workers.Go(func() { f.work(s.ending) })
}

// has reports whether a path is shown.
func (s *Server) has(path string) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	return slices.ContainsFunc(s.files, func(f *file) bool { return f.at() == path })
}

// scan shows the sources of a folder that is shown as a whole. One that is another under a new name is not new: its worker finds it.
func (s *Server) scan(folder string) {
	named, shown := s.folders[folder]
	if !shown {
		return
	}
	for _, name := range Sources(folder) {
		path := filepath.Join(folder, name)
		info, err := os.Lstat(path)
		if err != nil || s.has(path) || s.moving(info) {
			continue
		}
		s.add(filepath.Join(named, name), folder)
	}
}

// moving reports whether a file is a source that is shown under a name that is no longer there.
func (s *Server) moving(info os.FileInfo) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	return slices.ContainsFunc(s.files, func(f *file) bool {
		return f.is(info) && stampOf(f.at()).size < 0
	})
}

// address is the path below which all that belongs to a file is found.
func (f *file) address() string { return f.base + "file/" + strconv.Itoa(f.id) + "/" }

// at is where the file lies.
func (f *file) at() string {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.path
}
