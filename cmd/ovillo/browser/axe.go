package browser

import (
	"context"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// Violation is a fault that axe-core finds on a page.
type Violation struct {
	ID     string `json:"id"`
	Impact string `json:"impact"` // minor, moderate, serious, critical
	Help   string `json:"help"`
	Nodes  []struct {
		HTML   string   `json:"html"`
		Target []string `json:"target"`
	} `json:"nodes"`
}

// Serious reports whether a fault keeps people out.
func (v Violation) Serious() bool { return v.Impact == "serious" || v.Impact == "critical" }

// Axe has axe-core judge the page that a tab shows, as it stands. It also returns how many rules the page was found to keep, so
// that a test can tell a sound page from one on which nothing was looked at.
func Axe(tb testing.TB, tab context.Context) (found []Violation, kept int) {
	tb.Helper()
	script, err := os.ReadFile(filepath.Join(Package(tb, "axe-core"), "axe.min.js"))
	if err != nil {
		tb.Fatal(err)
	}
	type verdict struct {
		Violations []Violation `json:"violations"`
		Passes     int         `json:"passes"`
	}
	if _, err := chromedp.Run(tab, chromedp.Evaluate[int](string(script)+"\n;0")); err != nil {
		tb.Fatal(err)
	}
	out, err := chromedp.Run(tab, chromedp.Evaluate[verdict](
		`axe.run().then(r => ({violations: r.violations, passes: r.passes.length}))`, chromedp.EvalAwaitPromise))
	if err != nil {
		tb.Fatal(err)
	}
	return out.Violations, out.Passes
}
