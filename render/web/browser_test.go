package web

import (
	"context"
	"flag"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/browser"
	"ovillo/compile/plan"
)

var pictures = flag.String("pictures", "", "folder to write pictures of pages to, to be looked at")

// saved writes a page into a folder and returns its address.
func saved(t *testing.T, name, page string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name+".html")
	require.NoError(t, os.WriteFile(path, []byte(page), 0o644))
	return (&url.URL{Scheme: "file", Path: path}).String()
}

// tab is a tab with what is asked of it most.
type tab struct {
	t   *testing.T
	ctx context.Context
}

func (b tab) do(actions ...chromedp.Action[chromedp.Void]) {
	b.t.Helper()
	for _, a := range actions {
		require.NoError(b.t, chromedp.Do(b.ctx, a))
	}
}

func ask[T any](b tab, script string) T {
	b.t.Helper()
	v, err := chromedp.Run(b.ctx, chromedp.Evaluate[T](script))
	require.NoError(b.t, err, script)
	return v
}

// visit opens a page anew, in a window so wide.
func (b tab) visit(address string, wide int64) {
	b.t.Helper()
	b.do(chromedp.EmulateViewport(wide, 900), chromedp.Navigate(address))
}

func (b tab) media(kind, scheme string) {
	b.t.Helper()
	_, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: kind,
		Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}}})
	require.NoError(b.t, err)
}

// language and size choose as a reader does.
func (b tab) language(n int) {
	b.t.Helper()
	ask[bool](b, fmt.Sprintf(`(document.querySelector('[data-lang="%d"]').click(), true)`, n))
}

func (b tab) size(view string) {
	b.t.Helper()
	ask[bool](b, fmt.Sprintf(`(() => { const s = [...document.querySelectorAll("select")].find(s => s.offsetParent); s.value = %q; s.dispatchEvent(new Event("change", {bubbles: true})); return true })()`, view))
}

// visible is the text of what is seen of a selector, one line each.
const visible = `[...document.querySelectorAll(%q)].filter(e => e.checkVisibility()).map(e => e.textContent.trim())`

func (b tab) texts(sel string) []string {
	b.t.Helper()
	return ask[[]string](b, fmt.Sprintf(visible, sel))
}

func TestInABrowser(t *testing.T) {
	ctx := browser.Open(t)
	p := example(t, "marisma-leggings")
	address := saved(t, "leggings", written(t, p, Options{}))

	t.Run("languages", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		b.visit(address, 1000)
		assert.Equal(t, []string{"Marisma leggings"}, b.texts("h1"))
		b.language(1)
		assert.Equal(t, []string{"Mallas Marisma"}, b.texts("h1"))
		b.do(chromedp.Reload())
		assert.Equal(t, []string{"Mallas Marisma"}, b.texts("h1"), "the language is not remembered")
		assert.Equal(t, "es", ask[string](b, `document.documentElement.lang`))
		b.language(0)
	})

	t.Run("sizes", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		b.visit(address, 1000)
		l := speakers(t, "en")[0]
		doc := read(t, written(t, p, Options{}))
		for z := range p.Sizes {
			view := fmt.Sprint("v", z)
			b.size(view)
			one := p.In(z)
			// What the browser shows is what the structure of the page holds for the view, which is held against the plan elsewhere.
			article := find(doc, "", tagged("article"))[0]
			var want []string
			for _, n := range find(article, view, classed("count")) {
				want = append(want, strings.TrimSpace(textOf(n)))
			}
			require.NotEmpty(t, want)
			assert.Equal(t, want, b.texts("p.count"))
			var counted []string
			for _, part := range one.Parts {
				for _, s := range append([]plan.Step{nil}, part.Steps...) {
					st := l.Start(one, part)
					if s != nil {
						st = l.Step(one, part, s)
					}
					switch {
					case st.Count == nil:
					case st.Count.Slots != nil:
						counted = append(counted, st.Count.Slots[0]+"\u00a0"+st.Count.Unit.String())
					default:
						counted = append(counted, st.Count.Line.String())
					}
				}
			}
			assert.Equal(t, counted, b.texts("p.count"))
		}
		b.do(chromedp.Reload())
		assert.Equal(t, "v3", ask[string](b, `document.documentElement.dataset.view`), "the size is not remembered")
		b.size("va")
	})

	t.Run("ticks", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		b.visit(address, 1000)
		ask[bool](b, `(localStorage.clear(), true)`)
		b.do(chromedp.Reload())
		b.size("v1")
		ticked := `[...document.querySelectorAll("article.in0 li.row input:checked")].filter(e => e.checkVisibility()).length`
		assert.Equal(t, 0, ask[int](b, ticked))
		now := func() string { return strings.Join(b.texts("li.now .label"), "|") }
		assert.Equal(t, "Start", now())
		b.do(chromedp.Click(chromedp.CSS("article.in0 .next")))
		b.do(chromedp.Click(chromedp.CSS("article.in0 .next")))
		assert.Equal(t, 2, ask[int](b, ticked))
		assert.Equal(t, "Rounds 2–5", plain(now()))
		b.do(chromedp.Click(chromedp.CSS("article.in0 .next")))
		assert.Equal(t, []string{"1 / 4"}, b.texts("li.now .counter span"))
		b.do(chromedp.Reload())
		assert.Equal(t, 2, ask[int](b, ticked), "ticks are not remembered")
		assert.Equal(t, []string{"1 / 4"}, b.texts("li.now .counter span"))
		b.language(1)
		assert.Equal(t, "Vueltas 2 a 5", plain(now()), "the other language is elsewhere")
		b.language(0)
		b.size("v2")
		assert.Equal(t, 0, ask[int](b, ticked), "another size has the ticks of this")
		b.size("v1")
		b.do(chromedp.Click(chromedp.CSS("article.in0 .back")))
		b.do(chromedp.Click(chromedp.CSS("article.in0 .back")))
		assert.Equal(t, 1, ask[int](b, ticked))
		// The box of a run of rounds ticks them all.
		b.do(chromedp.Click(chromedp.CSS(`article.in0 li.v1[data-n="4"] input, article.in0 li.row[data-n="4"]:not(.v) input`)))
		assert.Equal(t, 2, ask[int](b, ticked))
		b.do(chromedp.Click(chromedp.CSS(".in0 .clear")))
		assert.Equal(t, 0, ask[int](b, ticked))
		b.do(chromedp.Click(chromedp.CSS(".in0 .clear"))) // brings them back
		assert.Equal(t, 2, ask[int](b, ticked))
		b.do(chromedp.Click(chromedp.CSS(".in0 .clear")), chromedp.Reload())
		assert.Equal(t, 0, ask[int](b, ticked))
		b.size("va")
	})

	t.Run("two patterns in one store", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		other := saved(t, "vest", written(t, example(t, "ria-vest"), Options{}))
		b.visit(address, 1000)
		b.language(1)
		b.do(chromedp.Navigate(other))
		assert.NotEqual(t, "es", ask[string](b, `document.documentElement.lang`))
		b.visit(address, 1000)
		b.language(0)
	})

	t.Run("narrow", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		for _, name := range examples(t) {
			b.visit(saved(t, name, written(t, example(t, name), Options{})), 320)
			for lang := range 2 {
				b.language(lang)
				assert.LessOrEqual(t, ask[int](b, `document.documentElement.scrollWidth`), 320, name)
				wide := ask[[]string](b, `[...document.querySelectorAll("body *")].filter(e => e.checkVisibility() && !e.closest(".scroll *") && !e.closest("svg *") && !e.closest(".keeper p *") && e.getBoundingClientRect().right > 321 && !e.classList.contains("heard")).map(e => e.tagName + "." + e.className)`)
				assert.Empty(t, wide, name)
				small := ask[[]string](b, `[...document.querySelectorAll("button, select, .tick")].filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)`)
				assert.Empty(t, small, name+": too small for a finger")
			}
			b.language(0)
		}
	})

	t.Run("print", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		b.visit(address, 800)
		b.size("v1")
		controls := `header.bar, .keeper, .counter, nav`
		assert.NotEmpty(t, b.texts(controls))
		b.media("print", "dark")
		assert.Empty(t, b.texts(controls))
		assert.Equal(t, "rgb(255, 255, 255)", ask[string](b, `getComputedStyle(document.body).backgroundColor`))
		assert.NotEmpty(t, b.texts("h1"))
		b.media("", "light")
		b.size("va")
	})

	t.Run("nothing leaves, nothing fails", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		_, err := chromedp.Call(b.ctx, network.Enable, network.EnableParams{})
		require.NoError(t, err)
		watch, stop := context.WithCancel(b.ctx)
		requests := chromedp.Events(watch, network.RequestWillBeSent)
		console := chromedp.Console(watch)
		b.visit(address, 1000)
		b.language(1)
		b.size("v2")
		b.do(chromedp.Click(chromedp.CSS("article.in1 .next")))
		ask[bool](b, `(window.refused = [], addEventListener("securitypolicyviolation", e => refused.push(e.effectiveDirective)), true)`)
		// The policy of the page refuses what a source might smuggle in; and this watch sees what is refused.
		ask[bool](b, `(() => { const i = new Image(); i.src = "https://example.com/a.png"; document.body.append(i); const s = document.createElement("script"); s.textContent = "window.ran = true"; document.body.append(s); return true })()`)
		assert.False(t, ask[bool](b, `"ran" in window`), "a script ran that is not the page's")
		b.do(chromedp.Evaluate[chromedp.Void](`new Promise(r => setTimeout(r, 50))`, chromedp.EvalAwaitPromise))
		assert.ElementsMatch(t, []string{"img-src", "script-src-elem"}, ask[[]string](b, `refused`))
		stop()
		for e, err := range requests {
			if err != nil {
				break
			}
			if u := e.Request.URL; !strings.HasPrefix(u, "file://") && !strings.HasPrefix(u, "data:") {
				t.Errorf("the page asks for %s", u)
			}
		}
		for m, err := range console {
			if err != nil {
				break
			}
			if !strings.Contains(m.String(), "Content Security Policy") {
				t.Errorf("the console says: %s", m)
			}
		}
		b.language(0)
		b.size("va")
	})

	t.Run("access", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		hat := saved(t, "hat", written(t, example(t, "duna-hat"), Options{}))
		// Of window, language, scheme and view each two meet once; axe-core takes seconds for a page.
		for _, c := range []struct {
			wide         int64
			lang         int
			scheme, view string
		}{{1000, 0, "light", "va"}, {1000, 1, "dark", "v1"}, {320, 1, "light", "v1"}, {320, 0, "dark", "va"}} {
			b.visit(hat, c.wide)
			b.language(c.lang)
			b.size(c.view)
			b.media("", c.scheme)
			ask[bool](b, fmt.Sprintf(`(document.querySelector("article.in%d .next").click(), true)`, c.lang))
			found, kept := browser.Axe(t, b.ctx)
			assert.Greater(t, kept, 20)
			for _, v := range found {
				assert.False(t, v.Serious(), "%v: %s: %s: %v", c, v.ID, v.Help, v.Nodes[0])
			}
		}
	})

	t.Run("store refused", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		page := written(t, p, Options{})
		// A frame that is sandboxed has no store.
		frame := `<!DOCTYPE html><iframe sandbox="allow-scripts" width="900" height="800" srcdoc="` + strings.NewReplacer("&", "&amp;", `"`, "&quot;").Replace(page) + `"></iframe>`
		watch, stop := context.WithCancel(b.ctx)
		console := chromedp.Console(watch)
		b.visit(saved(t, "frame", frame), 1000)
		b.do(chromedp.Evaluate[chromedp.Void](`new Promise(r => setTimeout(r, 100))`, chromedp.EvalAwaitPromise))
		stop()
		for m, err := range console {
			if err != nil {
				break
			}
			t.Errorf("the console says: %s", m)
		}
	})

	t.Run("without script", func(t *testing.T) {
		b := tab{t, browser.Tab(t, ctx)}
		_, err := chromedp.Call(b.ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
		require.NoError(t, err)
		b.visit(address, 1000)
		assert.Equal(t, []string{"Marisma leggings", "Mallas Marisma"}, b.texts("h1"))
		assert.Empty(t, b.texts("header.bar"))
		doc := read(t, written(t, p, Options{}))
		assert.Len(t, b.texts("li.row"), len(find(doc, "va", classed("row"))))
	})
}

// TestLookAt writes pictures of pages, as they are wide, narrow, dark and on paper: go test -run LookAt -pictures FOLDER
func TestLookAt(t *testing.T) {
	if *pictures == "" {
		t.Skip("no folder for pictures")
	}
	b := tab{t, browser.Open(t)}
	for _, name := range []string{"marisma-leggings", "bajamar-blanket", "duna-hat"} {
		address := saved(t, name, written(t, example(t, name), Options{}))
		for _, c := range []struct {
			name, scheme, view string
			wide               int64
			lang               int
		}{{"wide-all-en", "light", "va", 1000, 0}, {"wide-one-es", "light", "v1", 1000, 1}, {"narrow-one-en", "light", "v1", 320, 0}, {"narrow-all-es", "dark", "va", 320, 1}, {"dark-one-en", "dark", "v1", 1000, 0}} {
			b.media("", c.scheme)
			b.visit(address, c.wide)
			b.language(c.lang)
			b.size(c.view)
			for range 4 {
				ask[bool](b, fmt.Sprintf(`(document.querySelector("article.in%d .next").click(), true)`, c.lang))
			}
			shot, err := chromedp.Run(b.ctx, chromedp.FullScreenshot(100))
			require.NoError(t, err)
			require.NoError(t, os.WriteFile(filepath.Join(*pictures, name+"-"+c.name+".png"), shot, 0o644))
			paper, err := chromedp.Run(b.ctx, chromedp.PrintToPDF(chromedp.PDFPreferCSSPageSize()))
			require.NoError(t, err)
			require.NoError(t, os.WriteFile(filepath.Join(*pictures, name+"-"+c.name+".pdf"), paper, 0o644))
		}
	}
}
