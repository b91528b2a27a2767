package preview

import (
	"context"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/browser"
)

const shownPages = `document.getElementById("sheets").textContent`

// TestInABrowser writes patterns while Chromium shows them.
func TestInABrowser(t *testing.T) {
	hat, band := example(t, "duna-hat.ovillo"), example(t, "jarcia-headband.ovillo")
	d := newDesktop(t, map[string]string{"hat.ovillo": hat, "band.ovillo": band})
	photo, err := os.ReadFile("../../../examples/jarcia-headband.jpg")
	require.NoError(t, err)
	d.save("jarcia-headband.jpg", string(photo))
	d.sees(1, "the band with its photograph", isFresh)
	d.sees(2, "the hat", isFresh)
	tab := d.open(chromedp.WindowSize(1300, 900))
	until(t, tab, filled)

	// The band is the first by name; its photograph is a picture of the page.
	assert.Equal(t, "band.ovillo", read[string](t, tab, `document.getElementById("name").textContent`))
	until(t, tab, `document.querySelector("#sheets image") && document.querySelector("#sheets image").getBBox().width > 20`)
	assert.True(t, read[bool](t, tab, `performance.getEntriesByType("resource").some(e => e.name.includes("/picture/") && e.decodedBodySize > 1000)`))

	// The other one is a click away, and the list says how each stands.
	assert.Equal(t, 2.0, read[float64](t, tab, `document.querySelectorAll("#sources li").length`))
	require.NoError(t, chromedp.Do(tab, chromedp.Click(chromedp.CSS(`#sources li:nth-child(2) button`))))
	until(t, tab, filled+` && document.title.endsWith("hat.ovillo")`)
	until(t, tab, shownPages+`.includes("Gorro")`)

	t.Run("a change", func(t *testing.T) {
		read[float64](t, tab, `(scrollTo(0, 900), scrollY)`)
		first := read[string](t, tab, `(document.querySelector("#page-1 svg").mine = "kept", document.getElementById("page-1").dataset.name)`)
		at := read[float64](t, tab, `scrollY`)
		d.save("hat.ovillo", strings.Replace(hat, "Lavar", "Fregar", 1))
		until(t, tab, filled+" && "+shownPages+`.includes("Fregar")`)
		assert.Equal(t, at, read[float64](t, tab, `scrollY`), "the reader's place")
		assert.Equal(t, first, read[string](t, tab, `document.getElementById("page-1").dataset.name`))
		assert.Equal(t, "kept", read[string](t, tab, `document.querySelector("#page-1 svg").mine || ""`), "a page that did not change was put in anew")
		d.save("hat.ovillo", hat)
		until(t, tab, filled+" && !"+shownPages+`.includes("Fregar")`)
	})

	t.Run("a slip", func(t *testing.T) {
		broken := strings.Replace(hat, "= ", "= = ", 1)
		d.save("hat.ovillo", broken)
		until(t, tab, `document.querySelector("#messages .error")`)
		line := strings.Count(broken[:strings.Index(broken, "= = ")], "\n") + 1
		assert.Contains(t, read[string](t, tab, `document.querySelector("#messages .error .quote").textContent`), strings.Split(broken, "\n")[line-1][2:])
		assert.NotEmpty(t, read[string](t, tab, `document.querySelector("#messages .error mark").textContent`))
		until(t, tab, `!document.getElementById("old").hidden`)
		assert.Regexp(t, `^Old pages: the source has had errors since \d\d:\d\d\.$`, read[string](t, tab, `document.getElementById("old").textContent`))
		assert.Contains(t, read[string](t, tab, shownPages), "Gorro", "the last good pages are gone")
		assert.Contains(t, read[string](t, tab, `document.title`), "1 error · ")
		assert.True(t, read[bool](t, tab, `document.getElementById("pdf").hidden`))
		judge(t, tab)
		d.save("hat.ovillo", hat)
		until(t, tab, `!document.querySelector("#messages .error") && document.getElementById("old").hidden`)
	})

	t.Run("counts and drawings", func(t *testing.T) {
		require.NoError(t, chromedp.Do(tab, chromedp.Click(chromedp.CSS("#tab-counts"))))
		until(t, tab, `document.querySelectorAll("#counts tbody tr").length > 5`)
		assert.Equal(t, "Crown and side", read[string](t, tab, `document.querySelector("#counts caption").textContent`))
		judge(t, tab)
		// Arrow keys lead on, as in every row of tabs.
		require.NoError(t, chromedp.Do(tab, chromedp.KeyEvent(kb.ArrowRight)))
		until(t, tab, `document.querySelectorAll("#drawings img").length > 1 && [...document.querySelectorAll("#drawings img")].every(i => i.naturalWidth > 50)`)
		assert.Equal(t, "tab-drawings", read[string](t, tab, `document.activeElement.id`))
		judge(t, tab)
		require.NoError(t, chromedp.Do(tab, chromedp.Click(chromedp.CSS("#tab-pages"))))
	})

	t.Run("a new name", func(t *testing.T) {
		require.NoError(t, os.Rename(d.path("hat.ovillo"), d.path("beanie.ovillo")))
		until(t, tab, `document.getElementById("name").textContent.endsWith("beanie.ovillo")`)
		d.save("beanie.ovillo", strings.Replace(hat, `es "Gorro`, `es "Casquete`, 1))
		until(t, tab, shownPages+`.includes("Casquete")`)
		assert.Equal(t, 2.0, read[float64](t, tab, `document.querySelectorAll("#sources li").length`), "the old name is still listed")
	})

	t.Run("a file that goes and comes back", func(t *testing.T) {
		text, err := os.ReadFile(d.path("beanie.ovillo"))
		require.NoError(t, err)
		require.NoError(t, os.Remove(d.path("beanie.ovillo")))
		until(t, tab, `document.querySelector("#messages .why") && !document.getElementById("old").hidden`)
		assert.Contains(t, read[string](t, tab, shownPages), "Casquete")
		d.save("beanie.ovillo", string(text))
		until(t, tab, `!document.querySelector("#messages .why") && document.getElementById("old").hidden`)
	})

	t.Run("closed and reopened", func(t *testing.T) {
		address := read[string](t, tab, `location.href`)
		require.NoError(t, chromedp.Do(tab, chromedp.Navigate("about:blank")))
		d.save("beanie.ovillo", strings.Replace(hat, `es "Gorro`, `es "Bonete`, 1))
		again := browser.Tab(t, tab)
		require.NoError(t, chromedp.Do(again, chromedp.Navigate(address)))
		until(t, again, filled+" && "+shownPages+`.includes("Bonete")`)
		require.NoError(t, chromedp.Do(tab, chromedp.Navigate(address)))
		until(t, tab, filled+" && "+shownPages+`.includes("Bonete")`)
	})

	t.Run("the looks", func(t *testing.T) {
		until(t, tab, filled)
		judge(t, tab)
		_, err := chromedp.Run(tab, func(ctx context.Context, target *chromedp.Target) (chromedp.Void, error) {
			_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
				Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: "dark"}}})
			return chromedp.Void{}, err
		})
		require.NoError(t, err)
		judge(t, tab)
		require.NoError(t, chromedp.Do(tab, chromedp.EmulateViewport(360, 740)))
		judge(t, tab)
		assert.LessOrEqual(t, read[float64](t, tab, `document.documentElement.scrollWidth`), 360.0, "it can be moved sideways")
		assert.Greater(t, read[float64](t, tab, `document.querySelector(".sheet").offsetWidth`), 300.0)
	})

	t.Run("the end", func(t *testing.T) {
		d.stop()
		until(t, tab, `!document.getElementById("lost").hidden`)
		assert.Contains(t, read[string](t, tab, shownPages), "Bonete")
	})
}

// TestComesBack: a tab finds a preview that was stopped and started again, and shows nothing that this one does not know.
func TestComesBack(t *testing.T) {
	hat := example(t, "duna-hat.ovillo")
	d := newDesktop(t, map[string]string{"hat.ovillo": hat}, "hat.ovillo")
	_, port, _ := strings.Cut(d.hosts[0], ":")
	d.stop()
	o := options("en")
	o.Files, o.Port = []string{d.path("hat.ovillo")}, number(t, port)
	d.start(o)
	tab := d.open()
	until(t, tab, filled)
	d.stop()
	d.save("hat.ovillo", hat+"\nx\n")
	d.start(o)
	until(t, tab, `document.querySelector("#messages .error") && document.getElementById("lost").hidden`)
	assert.Zero(t, read[float64](t, tab, `document.querySelectorAll(".sheet").length`), "pages that this preview never set")
	assert.False(t, read[bool](t, tab, `document.getElementById("none").hidden`))
	d.save("hat.ovillo", hat)
	until(t, tab, filled)
}

// judge has axe-core look at the page as it stands.
func judge(t *testing.T, tab context.Context) {
	t.Helper()
	found, kept := browser.Axe(t, tab)
	assert.Greater(t, kept, 10)
	for _, v := range found {
		if v.Serious() {
			t.Errorf("%s: %s: %+v", v.ID, v.Help, v.Nodes)
		} else {
			t.Logf("%s: %s", v.ID, v.Help)
		}
	}
}

// TestNothingRuns: what a source says is shown, and does nothing, on the pages and in a message.
func TestNothingRuns(t *testing.T) {
	const evil = `<script>document.title="run"</script><img src=x onerror='document.title=1'>`
	hat := example(t, "duna-hat.ovillo")
	named := strings.Replace(hat, `es "Gorro Duna"`, "es \"Gorro "+strings.ReplaceAll(evil, `"`, `'`)+"\"", 1)
	require.NotEqual(t, hat, named)
	d := newDesktop(t, map[string]string{"hat.ovillo": hat})
	tab := d.open()
	until(t, tab, filled)
	d.save("hat.ovillo", named)
	until(t, tab, `document.body.textContent.includes("onerror")`)
	d.save("hat.ovillo", hat+"\n"+strings.ReplaceAll(evil, `"`, `'`)+"\n")
	until(t, tab, `document.querySelector("#messages .quote") && document.querySelector("#messages").textContent.includes("onerror")`)
	assert.Zero(t, read[float64](t, tab, `document.querySelectorAll("body script, #messages img, #sheets img, #messages script").length`))
	assert.Contains(t, read[string](t, tab, `document.title`), "hat.ovillo")
}
