package preview

import (
	"context"
	"path/filepath"
	"time"

	"sync"

	"github.com/fsnotify/fsnotify"
)

// How often files are looked at besides, for where the system does not tell of changes: folders of another machine, links that lead
// elsewhere, a folder that was taken away and put back.
const (
	every    = 500 * time.Millisecond
	unaided  = 100 * time.Millisecond // where the system tells nothing at all
	received = 64                     // changes that may wait
)

// watcher wakes the workers of files when what those are made of changes. It watches folders, not files, since most programs save by
// putting a new file in the place of the old one.
type watcher struct {
	*Server
	system *fsnotify.Watcher // nil: the system tells nothing

	mu      sync.Mutex
	files   map[*file][]string // what each is made of
	watched map[string]bool    // folders
}

func newWatcher(s *Server) *watcher {
	w := &watcher{Server: s, files: map[*file][]string{}, watched: map[string]bool{}}
	if system, err := fsnotify.NewBufferedWatcher(received); err == nil {
		w.system = system
	}
	return w
}

// follow notes anew what a file is made of.
func (w *watcher) follow(f *file) {
	paths := f.paths()
	w.mu.Lock()
	defer w.mu.Unlock()
	w.files[f] = paths
	for _, path := range paths {
		w.folder(filepath.Dir(path))
	}
}

// folder watches a folder.
func (w *watcher) folder(path string) {
	if w.system != nil && !w.watched[path] {
		w.watched[path] = w.system.Add(path) == nil
	}
}

// run wakes workers until the context ends.
func (w *watcher) run(ctx context.Context) {
	pace := every
	var events chan fsnotify.Event
	var faults chan error
	if w.system != nil {
		defer w.system.Close()
		events, faults = w.system.Events, w.system.Errors
	} else {
		pace = unaided
	}
	tick := time.NewTicker(pace)
	defer tick.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case e := <-events:
			w.changed(e.Name)
		case <-faults: // changes were lost
			w.lookAround()
		case <-tick.C:
			w.lookAround()
		}
	}
}

// changed wakes the workers of the files that are made of a path.
func (w *watcher) changed(path string) {
	w.mu.Lock()
	for f, paths := range w.files {
		for _, p := range paths {
			if p == path {
				f.wake()
			}
		}
	}
	w.mu.Unlock()
	if isSource(filepath.Base(path)) {
		w.scan(filepath.Dir(path))
	}
}

// lookAround looks at everything, whatever the system told.
func (w *watcher) lookAround() {
	w.mu.Lock()
	var moved []*file
	for f := range w.files {
		moved = append(moved, f)
	}
	if w.system != nil {
		for path := range w.watched {
			w.watched[path] = w.system.Add(path) == nil // one that is watched already stays so
		}
	}
	w.mu.Unlock()
	for _, f := range moved {
		if f.moved() {
			f.wake()
		}
	}
	for folder := range w.Server.folders {
		w.scan(folder)
	}
}
