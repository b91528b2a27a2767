// Package browser lets tests look at pages in headless Chromium, and judge them with axe-core. Nothing but tests imports it.
//
// On a machine without Chromium, or without the packages of .ci/npm, tests that need them are skipped; in CI (the variable CI is
// set) they fail.
package browser

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// Open starts a browser with an empty profile and returns a tab of it, to be used with [chromedp.Do] and [chromedp.Run]. It is closed when the
// test ends, and gives up after two minutes. More options may follow, such as the size of the window.
func Open(tb testing.TB, more ...chromedp.ExecAllocatorOption) context.Context {
	tb.Helper()
	path, err := exec.LookPath("chromium")
	if err != nil {
		without(tb, "chromium")
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:len(chromedp.DefaultExecAllocatorOptions):len(chromedp.DefaultExecAllocatorOptions)],
		chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.UserDataDir(tb.TempDir()), chromedp.WSURLReadTimeout(time.Minute),
		chromedp.Flag("disable-background-networking", true), chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-sync", true))
	ctx, stop := chromedp.NewExecAllocator(context.Background(), append(options, more...)...)
	tb.Cleanup(stop)
	ctx, closeTab := chromedp.NewContext(ctx)
	tb.Cleanup(closeTab)
	ctx, cancel := context.WithTimeout(ctx, 2*time.Minute)
	tb.Cleanup(cancel)
	if err := chromedp.Do(ctx); err != nil {
		tb.Fatal("chromium does not start: ", err)
	}
	return ctx
}

// Tab opens one more tab of the browser that a context belongs to, with a profile that it shares.
func Tab(tb testing.TB, ctx context.Context) context.Context {
	tb.Helper()
	tab, cancel := chromedp.NewContext(ctx)
	tb.Cleanup(cancel)
	if err := chromedp.Do(tab); err != nil {
		tb.Fatal(err)
	}
	return tab
}

// Package returns the folder of a package of .ci/npm, seen from the folder of the test.
func Package(tb testing.TB, name string) string {
	tb.Helper()
	dir, err := filepath.Abs(".")
	if err != nil {
		tb.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			break
		}
		up := filepath.Dir(dir)
		if up == dir {
			tb.Fatal("no go.mod above the test")
		}
		dir = up
	}
	folder := filepath.Join(dir, ".ci", "npm", "node_modules", name)
	if _, err := os.Stat(folder); err != nil {
		without(tb, name+" (npm ci --prefix .ci/npm)")
	}
	return folder
}

func without(tb testing.TB, what string) {
	tb.Helper()
	if os.Getenv("CI") != "" {
		tb.Fatal("needs " + what)
	}
	tb.Skip("needs " + what)
}
