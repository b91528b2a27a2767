package trial

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/browser"
	desks "ovillo/cmd/ovillo/desk"
)

// provoked is what a browser is asked to do with a page: it goes over everything that something could hang on, and tells what came of it.
const provoked = `(() => {
  for (const e of document.querySelectorAll('*')) {
    for (const kind of ['mouseover', 'focus', 'error', 'load', 'animationstart', 'toggle'])
      e.dispatchEvent(new Event(kind));
    if (e.focus) e.focus();
  }
  return JSON.stringify({
    caught: window.caught === undefined ? '' : String(window.caught),
    links: [...document.querySelectorAll('a[href], area[href], form[action], [src], link[href], base, iframe, object, embed')].map(e =>
      e.tagName + ' ' + (e.href || e.src || e.action || '') + ' ' + (e.getAttribute('href') || '') + ' ' + (e.rel || '')),
    scripts: document.scripts.length,
  });
})()`

// TestTextsInBrowser: whatever the texts of a pattern are, the page made of it runs nothing but its own script in Chromium, asks for nothing,
// and leads nowhere but to places in itself and to addresses that the author gave to links of the kinds that pages may have.
func TestTextsInBrowser(t *testing.T) {
	ctx := browser.Open(t)
	var mu sync.Mutex
	var asked []string
	_, err := chromedp.Call(ctx, network.Enable, network.EnableParams{})
	require.NoError(t, err)
	watch, stop := context.WithCancel(ctx)
	defer stop()
	requests := chromedp.Events(watch, network.RequestWillBeSent)
	go func() {
		for e, err := range requests {
			if err != nil {
				return // it is over
			}
			mu.Lock()
			asked = append(asked, e.Request.URL)
			mu.Unlock()
		}
	}()
	dir := t.TempDir()
	path := filepath.Join(dir, "page.html")
	outside := 0
	look := func(name, page string) (found struct {
		Caught  string
		Links   []string
		Scripts int
	}) {
		mu.Lock()
		asked = nil
		mu.Unlock()
		require.NoError(t, os.WriteFile(path, []byte(page), 0o644))
		require.NoError(t, chromedp.Do(ctx, chromedp.Navigate("file://"+path)), name)
		text, err := chromedp.Run(ctx, chromedp.Evaluate[string](provoked))
		require.NoError(t, err, name)
		require.NoError(t, json.Unmarshal([]byte(text), &found))
		return found
	}
	foreign := func() []string {
		mu.Lock()
		defer mu.Unlock()
		var out []string
		for _, url := range asked {
			if url != "file://"+path && (len(url) < 11 || url[:11] != "data:image/") {
				out = append(out, url)
			}
		}
		return out
	}
	for name, text := range hostile {
		t.Run(name, func(t *testing.T) {
			made := 0
			sound(t, text, func(piece string, c *desks.Checked) {
				if made++; made > 2 {
					return
				}
				found := look(name, webPage(t, c.Pattern))
				assert.Empty(t, found.Caught, "%s: something was run", piece)
				assert.Empty(t, foreign(), piece)
				assert.Equal(t, 1, found.Scripts, piece)
				for _, l := range found.Links {
					if ourLink.MatchString(l) {
						continue
					}
					outside++
					assert.Regexp(t, `^A (https?://|mailto:|tel:)\S* \S* noopener noreferrer$`, l, piece)
				}
			})
		})
	}
	assert.Positive(t, outside, "no text made a link")

	// A page that does all this is seen to do it.
	found := look("bad", `<!DOCTYPE html><body><img src="https://pattern.example/a.png" onerror="window.caught=1"><script></script><a href="javascript:x">x</a>`)
	assert.Equal(t, "1", found.Caught)
	assert.NotEmpty(t, foreign())
	assert.Contains(t, found.Links, "A javascript:x javascript:x ")
}
