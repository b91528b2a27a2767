package preview

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang/source"
)

// BenchmarkRefresh measures what the preview does between a save and its news, for the leggings: checking, and the pages as SVG.
func BenchmarkRefresh(b *testing.B) {
	good := example(b, "marisma-leggings.ovillo")
	var c desk.Checked
	b.Run("check", func(b *testing.B) {
		for b.Loop() {
			c = desk.Check(desk.Source{File: source.NewFile("leggings.ovillo", good)})
		}
	})
	b.Run("set", func(b *testing.B) {
		for b.Loop() {
			if _, err := makeSet(c.Pattern, desk.Look{Langs: c.Pattern.Languages}, "leggings.ovillo", "/"); err != nil {
				b.Fatal(err)
			}
		}
	})
}

// BenchmarkSaveToSeen measures from before a source is written to when Chromium has the changed page in its document, for the leggings:
// a changed sentence on the page in view, and a slip, whose message is waited for. Milliseconds, the middle and the twentieth worst
// of a hundred. A headless browser and the benchmark share the machine with the preview.
func BenchmarkSaveToSeen(b *testing.B) {
	good := example(b, "marisma-leggings.ovillo")
	const sentence = "Leggings for toddlers"
	require.Contains(b, good, sentence)
	d := newDesktop(b, map[string]string{"leggings.ovillo": good}, "leggings.ovillo")
	tab := d.open(chromedp.WindowSize(1400, 900))
	until(b, tab, filled)
	read[bool](b, tab, `(() => {
		const now = () => performance.timeOrigin + performance.now();
		window.seen = 0;
		new MutationObserver(() => { window.seen = now(); }).observe(document.getElementById("sheets"), {childList: true, subtree: true});
		window.told = 0;
		new MutationObserver(() => { window.told = now(); }).observe(document.getElementById("messages"), {childList: true, subtree: true});
		return true;
	})()`)
	other := strings.Replace(good, sentence, "Leggings for small children", 1)
	faulty := strings.Replace(good, "= around_hips", "= around_hips + 1", 1)
	var ready []float64 // when the server had it
	measure := func(text, mark string) float64 {
		read[bool](b, tab, `window.`+mark+` = 0, true`)
		began := time.Now()
		was := d.board.of(1)
		d.save("leggings.ovillo", text)
		d.sees(1, "news", func(v *view) bool { return v.fresh() && v.set != was.set || mark == "told" && v.text != was.text })
		ready = append(ready, float64(time.Since(began).Microseconds())/1e3)
		until(b, tab, `window.`+mark)
		return read[float64](b, tab, `window.`+mark) - float64(began.UnixNano())/1e6
	}
	report := func(b *testing.B, all []float64) {
		slices.Sort(all)
		b.ReportMetric(all[0], "min-ms")
		b.ReportMetric(all[len(all)/2], "p50-ms")
		b.ReportMetric(all[len(all)*19/20], "p95-ms")
		b.ReportMetric(0, "ns/op")
		slices.Sort(ready)
		b.ReportMetric(ready[len(ready)/2], "p50-server-ms")
		b.ReportMetric(ready[0], "min-server-ms")
		ready = nil
	}
	const rounds = 60
	b.Run("page", func(b *testing.B) {
		var all []float64
		for i := range rounds {
			all = append(all, measure([]string{other, good}[i%2], "seen"))
			time.Sleep(60 * time.Millisecond) // a person does not save faster, and the rest of the pages are fetched
		}
		report(b, all)
	})
	b.Run("message", func(b *testing.B) {
		var all []float64
		for i := range rounds {
			all = append(all, measure([]string{faulty, good}[i%2], "told"))
			time.Sleep(120 * time.Millisecond)
		}
		report(b, all)
	})
}
