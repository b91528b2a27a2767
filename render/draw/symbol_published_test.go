package draw

import (
	"math"
	"testing"

	"ovillo/compile/stitch"
)

// built is what a symbol is made of.
type built struct {
	stems, slashes, bars int // bars are at right angles to a stem: the arms of a cross, the bar of an extended stitch
	cap                  bool
	ovals, dots          int
	hook, loop, wave     int // a hook to the right 1, to the left -1; an arc that opens upwards 1, downwards -1
	bowed                int
}

func builtOf(f stitch.Form) (built, bool) {
	s, ok := Symbol(f)
	if !ok {
		return built{}, false
	}
	var b built
	var lines, curves []trace
	for _, m := range marksOf(s.Items) {
		switch {
		case m.filled:
			b.dots++
		case m.closed:
			b.ovals++
		case m.curved:
			curves = append(curves, m)
		default:
			lines = append(lines, m)
		}
	}
	near := func(a, c vec) bool { return a.sub(c).length() < 0.05 }
	r := chartReader{k: 1, up: func(vec) vec { return vec{0, -1} }}
	isCap := make([]bool, len(lines))
	for i, c := range lines {
		for j, l := range lines {
			isCap[i] = isCap[i] || i != j && (near(c.mid(), l.first()) || near(c.mid(), l.last()))
		}
		for _, l := range curves {
			isCap[i] = isCap[i] || near(c.mid(), l.first()) || near(c.mid(), l.last())
		}
		b.cap = b.cap || isCap[i]
	}
	across := make([]bool, len(lines))
	for i, l := range lines {
		for j, stem := range lines {
			if i == j || isCap[i] || isCap[j] || l.long() > stem.long()+1e-6 || across[j] {
				continue
			}
			// Of the two equal lines of a cross the upright one is the stem.
			if math.Abs(l.long()-stem.long()) < 1e-6 && math.Abs(l.dir().y) > math.Abs(stem.dir().y) {
				continue
			}
			if _, on := r.on(l.mid(), stem); on {
				across[i] = true
				if math.Abs(l.dir().dot(stem.dir())) < 0.1 {
					b.bars++
				} else {
					b.slashes++
				}
				break
			}
		}
		for _, c := range curves {
			if !across[i] && !isCap[i] && r.onCurve(l.mid(), c) {
				across[i] = true
				b.slashes++
			}
		}
	}
	for i := range lines {
		if !isCap[i] && !across[i] {
			b.stems++
		}
	}
	for _, c := range curves {
		end := c.last().sub(c.first())
		bend := c.pts[len(c.pts)/2].sub(c.mid())
		switch {
		case math.Abs(end.y) > 2*math.Abs(end.x):
			b.bowed++
		case math.Abs(bend.y) < 0.05:
			b.wave++
		case end.length() > 2.5:
			b.hook = int(math.Copysign(1, end.x))
		default:
			b.loop = int(math.Copysign(1, bend.y))
		}
	}
	return b, true
}

// TestPublishedSymbols compares each symbol with how it is described in print. Sources: S70 dailyhandmade.com ?p=2036 (symbols), S71
// mrscrochetworld.com (reading symbol charts), S72 claireoliviagolden.com 2017/04/29, S73 dailygamebonus.com ?p=1144, S74
// dancingbarefoot.wordpress.com (charts from Japan). Where no source stands the description is from memory.
func TestPublishedSymbols(t *testing.T) {
	plain := stitch.Plain
	for _, is := range []struct {
		form     stitch.Form
		describe string
		source   string // "" remembered
		want     built
	}{
		{plain(stitch.Chain), "open oval", "S70 S71 S72", built{ovals: 1}},
		{plain(stitch.Slip), "small filled dot", "S70 S71 S73", built{dots: 1}},
		{plain(stitch.SC), "plus sign", "S70 S71 S72", built{stems: 1, bars: 1}},
		{plain(stitch.HDC), "plain T, no slash", "S70 S71", built{stems: 1, cap: true}},
		{plain(stitch.DC), "T with one slash across the stem", "S70 S71", built{stems: 1, cap: true, slashes: 1}},
		{plain(stitch.TR), "T with two slashes", "S70 S71", built{stems: 1, cap: true, slashes: 2}},
		{plain(stitch.DTR), "as many slashes as yarn overs: three", "S70 (the rule)", built{stems: 1, cap: true, slashes: 3}},
		{plain(stitch.TRTR), "as many slashes as yarn overs: four", "S70 (the rule)", built{stems: 1, cap: true, slashes: 4}},
		{stitch.Form{ID: stitch.DC, Together: 2}, "decrease: symbols sharing one head, feet apart; two slashed stems under one cap", "S71 (the idea)", built{stems: 2, cap: true, slashes: 2}},
		{stitch.Form{ID: stitch.SC, Together: 2}, "two strokes that meet at the head, each with its bar", "", built{stems: 2, bars: 2}},
		{plain(stitch.ESC), "the stitch with a short bar low on the stem", "", built{stems: 1, bars: 2}},
		{plain(stitch.EDC), "the stitch with a short bar low on the stem", "", built{stems: 1, cap: true, slashes: 1, bars: 1}},
		{plain(stitch.RSC), "sc with a wave above it", "", built{stems: 1, bars: 1, wave: 1}},
		{stitch.Form{ID: stitch.DC, Together: 1, Post: stitch.FrontPost}, "stem ends in a hook to the right", "", built{stems: 1, cap: true, slashes: 1, hook: 1}},
		{stitch.Form{ID: stitch.DC, Together: 1, Post: stitch.BackPost}, "stem ends in a hook to the left", "", built{stems: 1, cap: true, slashes: 1, hook: -1}},
		{stitch.Form{ID: stitch.SC, Together: 1, Loop: stitch.BackLoop}, "short arc open upward under the foot", "", built{stems: 1, bars: 1, loop: 1}},
		{stitch.Form{ID: stitch.SC, Together: 1, Loop: stitch.FrontLoop}, "short arc open downward under the foot", "", built{stems: 1, bars: 1, loop: -1}},
		{stitch.Form{ID: stitch.DC, Together: 1, Group: stitch.Cluster, Of: 3}, "three slashed stems joined at head and foot", "", built{bowed: 3, cap: true, slashes: 3}},
		{stitch.Form{ID: stitch.DC, Together: 1, Group: stitch.Bobble, Of: 5}, "the same lens of five stems", "", built{bowed: 5, cap: true, slashes: 5}},
		{stitch.Form{ID: stitch.HDC, Together: 1, Group: stitch.Puff, Of: 3}, "lens of plain stems, no slash", "", built{bowed: 3, cap: true}},
		{stitch.Form{ID: stitch.DC, Together: 1, Group: stitch.Popcorn, Of: 5}, "stems joined at the head with a small oval on top", "", built{bowed: 5, slashes: 5, ovals: 1}},
		{stitch.Form{ID: stitch.DC, Together: 1, Group: stitch.Shell, Of: 5}, "five stems from one foot, separate heads", "", built{stems: 5, cap: true, slashes: 5}},
		{stitch.Form{ID: stitch.DC, Together: 1, Group: stitch.Vee, Of: 2}, "two stems from one foot with a chain between the heads", "", built{stems: 2, cap: true, slashes: 2, ovals: 1}},
		{stitch.Form{ID: stitch.Chain, Together: 1, Group: stitch.Picot, Of: 3}, "three ovals in a ring closed with a dot", "", built{ovals: 3, dots: 1}},
	} {
		got, ok := builtOf(is.form)
		if !ok || got != is.want {
			t.Errorf("%+v (%s, source %q): drawn as %+v, described as %+v", is.form, is.describe, is.source, got, is.want)
		}
	}
}
