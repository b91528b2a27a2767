package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestAxe sees the judge find a fault that is there, and none on a page that has none.
func TestAxe(t *testing.T) {
	tab := Open(t)
	page := func(body string) string {
		return `data:text/html,<!doctype html><html lang="en"><title>T</title><main><h1>T</h1>` + body + `</main></html>`
	}
	require.NoError(t, chromedp.Do(tab, chromedp.Navigate(page(`<p>Fine.</p>`))))
	found, kept := Axe(t, tab)
	assert.Empty(t, found)
	assert.Positive(t, kept)

	require.NoError(t, chromedp.Do(tab, chromedp.Navigate(page(`<img src="x.png"><input>`))))
	found, _ = Axe(t, tab)
	var ids []string
	for _, v := range found {
		if v.Serious() {
			ids = append(ids, v.ID)
		}
	}
	assert.Subset(t, ids, []string{"image-alt", "label"}, strings.Join(ids, " "))
}
