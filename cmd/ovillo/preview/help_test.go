package preview

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/browser"
	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
)

// desktop is a folder with sources in it, and a preview of some of them.
type desktop struct {
	tb     testing.TB
	folder string
	*Server
	stop func()
}

// example is one of the examples.
func example(tb testing.TB, name string) string {
	tb.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "..", "examples", name))
	require.NoError(tb, err)
	return string(data)
}

// newDesktop lays sources into a new folder and previews those named, or the folder if none is.
func newDesktop(tb testing.TB, sources map[string]string, shown ...string) *desktop {
	tb.Helper()
	d := &desktop{tb: tb, folder: tb.TempDir()}
	for name, text := range sources {
		d.save(name, text)
	}
	o := options("en")
	if len(shown) == 0 {
		o.Folders = []string{d.folder}
	}
	for _, name := range shown {
		o.Files = append(o.Files, d.path(name))
	}
	d.start(o)
	tb.Cleanup(func() { d.stop() })
	return d
}

func options(lang string) Options {
	return Options{
		Lang: lang,
		Choose: func(_ string, p *plan.Pattern) (*plan.Pattern, desk.Look, string) {
			return p, desk.Look{Langs: p.Languages[:min(2, len(p.Languages))]}, ""
		},
		Unread: func(name, _ string, err error) string { return "cannot read " + name + ": " + err.Error() },
		Unset:  func(name string, err error) string { return "cannot set " + name + ": " + err.Error() },
		Fault:  func(name string, fault any) string { return fmt.Sprint("fault in ", name, ": ", fault) },
	}
}

// start runs a server; stop ends it and fails the test if it does not end well.
func (d *desktop) start(o Options) {
	d.tb.Helper()
	s, err := Listen(o)
	require.NoError(d.tb, err)
	d.Server = s
	ctx, cancel := context.WithCancel(context.Background())
	done := make(chan error, 1)
	go func() { done <- s.Run(ctx) }()
	d.stop = func() {
		cancel()
		if err := <-done; err != nil {
			d.tb.Error("the preview did not end well: ", err)
		}
		d.stop = func() {}
	}
}

func (d *desktop) path(name string) string { return filepath.Join(d.folder, name) }

func (d *desktop) save(name, text string) {
	d.tb.Helper()
	require.NoError(d.tb, os.WriteFile(d.path(name), []byte(text), 0o644))
}

// sees waits until the view of a source is as it should be, and returns it.
func (d *desktop) sees(id int, what string, is func(*view) bool) *view {
	d.tb.Helper()
	end := time.After(10 * time.Second)
	for {
		_, news := d.board.look()
		if v := d.board.of(id); v != nil && is(v) {
			return v
		}
		select {
		case <-news:
		case <-end:
			d.tb.Fatalf("not seen: %s; but %+v", what, d.board.of(id))
		}
	}
}

func isFresh(v *view) bool { return v.fresh() }

// text is what a page says.
func (s sheet) text() string {
	var b strings.Builder
	for _, part := range strings.Split(string(s.svg), "<text ")[1:] {
		_, part, _ = strings.Cut(part, ">")
		if after, ok := strings.CutPrefix(part, "<title>"); ok {
			_, part, _ = strings.Cut(after, "</title>")
		}
		part, _, _ = strings.Cut(part, "</text>")
		b.WriteString(part + " ")
	}
	return b.String()
}

// says reports whether the pages say something.
func (v *view) says(text string) bool {
	for _, s := range v.set.sheets {
		if strings.Contains(s.text(), text) {
			return true
		}
	}
	return false
}

// open shows the preview in a browser.
func (d *desktop) open(more ...chromedp.ExecAllocatorOption) context.Context {
	d.tb.Helper()
	tab := browser.Open(d.tb, more...)
	require.NoError(d.tb, chromedp.Do(tab, chromedp.Navigate(d.Address())))
	return tab
}

// until waits until an expression holds on the page.
func until(tb testing.TB, tab context.Context, expression string) {
	tb.Helper()
	end := time.Now().Add(15 * time.Second)
	for {
		ok, err := chromedp.Run(tab, chromedp.Evaluate[bool]("Boolean("+expression+")"))
		if err == nil && ok {
			return
		}
		if time.Now().After(end) {
			text, _ := chromedp.Run(tab, chromedp.Evaluate[string]("document.body.innerText.slice(0, 1500)"))
			tb.Fatalf("the page never came to %s (%v); it says:\n%s", expression, err, text)
		}
		time.Sleep(5 * time.Millisecond)
	}
}

// read evaluates an expression on the page.
func read[T any](tb testing.TB, tab context.Context, expression string) T {
	tb.Helper()
	v, err := chromedp.Run(tab, chromedp.Evaluate[T](expression))
	require.NoError(tb, err, expression)
	return v
}

// filled is that all pages have come.
const filled = `document.querySelectorAll(".sheet").length > 0 && [...document.querySelectorAll(".sheet")].every(li => li.dataset.name === li.dataset.want)`

// ours are the stacks of this package that run now, but for the tests'.
func ours() []string {
	buf := make([]byte, 1<<20)
	var out []string
	for _, s := range strings.Split(string(buf[:runtime.Stack(buf, true)]), "\n\n") {
		if strings.Contains(s, "ovillo/cmd/ovillo/preview.") && !strings.Contains(s, "_test.go") || strings.Contains(s, "fsnotify") {
			out = append(out, s)
		}
	}
	return out
}

func number(tb testing.TB, s string) int {
	tb.Helper()
	n, err := strconv.Atoi(s)
	require.NoError(tb, err)
	return n
}
