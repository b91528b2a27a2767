package preview

import (
	"slices"
	"sync"
	"time"

	"ovillo/lang/diag"
)

// state is how a source stands, in the order of how much it wants to be looked at.
type state string

const (
	reading  state = "reading" // it was not checked yet
	fine     state = "fine"
	warnings state = "warnings" // and it may be printed
	faulty   state = "errors"   // there are no pages of it as it is now
	gone     state = "gone"     // it cannot be read
)

// view is what is shown of a source. It never changes; a newer one takes its place.
type view struct {
	id    int    // stays through renames
	name  string // as it is shown
	state state
	text  *found // what was found; nil: it was not checked yet
	why   string // why there are no pages though it was checked, or why it cannot be read; "" as a rule
	set   *set   // the last good pages; nil: there were none yet
	old   bool   // they are not of the source as it is now
	since time.Time
}

// found is what was found in a source, in words.
type found struct {
	list    []message
	more    int // that are not in the list
	summary string
	errors  int
	warns   int
}

// fresh says whether the pages are those of the source as it is now.
func (v *view) fresh() bool { return v.set != nil && !v.old }

// spoilt is the view with the pages marked as old, since when is kept.
func (v view) spoilt(now time.Time) view {
	if !v.old {
		v.old, v.since = true, now
	}
	return v
}

// board holds the view of each source and wakes those who wait for news.
type board struct {
	mu    sync.Mutex
	views []*view // in the order of the list
	news  chan struct{}
}

func newBoard() *board { return &board{news: make(chan struct{})} }

// put puts a view in the place of the one with its id, or at the end.
func (b *board) put(v view) {
	b.mu.Lock()
	defer b.mu.Unlock()
	views := slices.Clone(b.views) // those who look have the old list
	if i := slices.IndexFunc(views, func(o *view) bool { return o.id == v.id }); i >= 0 {
		views[i] = &v
	} else {
		views = append(views, &v)
	}
	b.change(views)
}

func (b *board) change(views []*view) {
	b.views = views
	close(b.news)
	b.news = make(chan struct{})
}

// look returns all views, and a channel that is closed when they are no longer the newest.
func (b *board) look() ([]*view, <-chan struct{}) {
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.views, b.news
}

// of returns the view with an id, nil if there is none.
func (b *board) of(id int) *view {
	views, _ := b.look()
	if i := slices.IndexFunc(views, func(o *view) bool { return o.id == id }); i >= 0 {
		return views[i]
	}
	return nil
}

// standing is the state that findings give.
func standing(l diag.List) state {
	s := fine
	for _, d := range l {
		switch d.Severity() {
		case diag.Error:
			return faulty
		case diag.Warning:
			s = warnings
		}
	}
	return s
}
