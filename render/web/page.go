package web

import (
	"bytes"
	"crypto/sha256"
	_ "embed" // the style and the script
	"encoding/base64"
	"fmt"
	"io"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/draw"
	"ovillo/render/scene"
	"ovillo/render/svg"
	"ovillo/render/words"
)

// Options say how the page is made.
type Options struct {
	Langs []*words.Language // those of the page, the first one shown first; one at least
	Left  bool              // for makers who hold the hook in the left hand
}

//go:embed style.css
var style string

//go:embed script.js
var script string

// Write writes a checked pattern as a page. The same pattern gives the same bytes.
func Write(w io.Writer, p *plan.Pattern, o Options) error {
	if len(o.Langs) == 0 {
		return fmt.Errorf("a page has one language at least")
	}
	if len(p.Sizes) == 0 {
		return fmt.Errorf("the pattern has no sizes")
	}
	pg := &page{all: p, left: o.Left, known: map[string]int{}}
	for _, l := range o.Langs {
		pg.langs = append(pg.langs, l.With(words.Manner{Left: o.Left, Screen: true}))
	}
	articles := pg.articles()
	sprites, err := pg.sprites()
	if err != nil {
		return err
	}
	var b strings.Builder
	b.WriteString("<!DOCTYPE html>\n")
	pg.html(articles, sprites).write(&b)
	_, err = io.WriteString(w, b.String())
	return err
}

// page is what is being written.
type page struct {
	all   *plan.Pattern
	langs []*words.Language
	left  bool

	drawn []*scene.Scene // each drawing once
	known map[string]int // by what it looks like
}

// articles makes the text of each language.
func (pg *page) articles() []*node {
	patterns, names := pg.patterns()
	var out []*node
	small := make([]*draw.SmallPiece, len(patterns))
	for _, l := range pg.langs {
		var views []*view
		for i, p := range patterns {
			v := &view{page: pg, name: names[i], p: p, l: l.Keeping(p), langID: strings.ToLower(l.Tag()), one: len(p.Sizes) == 1, small: &small[i]}
			v.step = pg.stepNumbers(i - 1)
			v.write()
			views = append(views, v)
		}
		out = append(out, pg.article(l, views))
	}
	return out
}

// patterns are the pattern as each view has it, and the names of the views. A pattern in one size has one.
func (pg *page) patterns() ([]*plan.Pattern, []string) {
	patterns, names := []*plan.Pattern{pg.all}, []string{"va"}
	if len(pg.all.Sizes) > 1 {
		for z := range pg.all.Sizes {
			patterns, names = append(patterns, pg.all.In(z)), append(names, "v"+strconv.Itoa(z))
		}
	}
	return patterns, names
}

// stepNumbers says of each step of each part in size z which of all steps it is; a negative size is all of them.
func (pg *page) stepNumbers(z int) [][]int {
	out := make([][]int, len(pg.all.Parts))
	for n, part := range pg.all.Parts {
		for k, step := range part.Steps {
			if z < 0 || plan.Does(step, z) {
				out[n] = append(out[n], k)
			}
		}
	}
	return out
}

// html is the whole page.
func (pg *page) html(articles []*node, sprites string) *node {
	css := style + pg.rules()
	policy := "default-src 'none'; style-src " + sum(css) + "; script-src " + sum(script) + "; img-src data:; base-uri 'none'; form-action 'none'"
	var titles []string
	for _, l := range pg.langs {
		if title := l.Title(pg.all); len(titles) == 0 || titles[0] != title {
			titles = append(titles, title)
		}
	}
	head := el("head",
		el("meta").with("charset", "utf-8"),
		el("meta").with("http-equiv", "Content-Security-Policy").with("content", policy),
		el("meta").with("name", "viewport").with("content", "width=device-width, initial-scale=1"),
		el("meta").with("name", "color-scheme").with("content", "light dark"),
		el("meta").with("name", "referrer").with("content", "no-referrer"),
		el("meta").with("name", "generator").with("content", "ovillo"),
		el("meta").with("name", "description").with("content", pg.langs[0].Subject(pg.all)),
		el("title", t(strings.Join(titles, " · "))),
		el("style", &node{raw: css}),
		el("script", &node{raw: script}),
	)
	if pg.all.By != "" {
		head.add(el("meta").with("name", "author").with("content", pg.all.By))
	}
	main := el("main", articles...)
	body := el("body", pg.bar(), main, &node{raw: sprites})
	var tags []string
	for _, l := range pg.langs {
		tags = append(tags, l.Tag())
	}
	return el("html", head, body).with("lang", tags[0]).with("data-key", pg.storeKey()).with("data-langs", strings.Join(tags, " ")).
		with("data-edition", strconv.Itoa(pg.all.Edition))
}

// storeKey is the name under which a browser keeps what it remembers. Pages that are opened from a disk may all share one store, so it
// tells patterns apart, and a pattern from itself at another gauge.
func (pg *page) storeKey() string {
	h := sha256.New()
	fmt.Fprintf(h, "%q %q %q %v", pg.all.Name, pg.all.By, pg.langs[0].Title(pg.all), pg.langs[0].SetFor(pg.all))
	return fmt.Sprintf("ovillo %s %.6x", pg.all.Name, h.Sum(nil))
}

// sum is how a policy names a style or a script.
func sum(text string) string {
	h := sha256.Sum256([]byte(text))
	return "'sha256-" + base64.StdEncoding.EncodeToString(h[:]) + "'"
}

// rules are those of the style that depend on the languages and the views of the page.
func (pg *page) rules() string {
	var b strings.Builder
	_, names := pg.patterns()
	b.WriteString("html:not(.js) .v:not(.va){display:none}\n")
	for _, v := range names {
		fmt.Fprintf(&b, "html.js[data-view=%s] .v:not(.%s){display:none}\n", v, v)
	}
	for i := range pg.langs {
		fmt.Fprintf(&b, "html.js[data-at=\"%d\"] .in:not(.in%d){display:none}\n", i, i)
	}
	return b.String()
}

// draw keeps a drawing, and returns its number. One that looks like another is that one.
func (pg *page) draw(s *scene.Scene) int {
	if pg.left {
		s = s.Mirrored()
	}
	bare := *s
	bare.Title, bare.Desc, bare.Groups = nil, nil, nil
	var b bytes.Buffer
	_ = svg.Write(&b, &bare) // a buffer does not fail
	look := b.String()
	n, ok := pg.known[look]
	if !ok {
		n = len(pg.drawn)
		pg.known[look] = n
		pg.drawn = append(pg.drawn, &bare)
	}
	return n
}

// spritesID is what the names of drawings begin with.
const spritesID = "drawing"

func (pg *page) sprites() (string, error) {
	if len(pg.drawn) == 0 {
		return "", nil
	}
	var b bytes.Buffer
	err := svg.Symbols(&b, spritesID, pg.drawn)
	return b.String(), err
}

// millimetre is how many pixels of a page make one, in its own measure.
const millimetre = 96 / 25.4

// picture shows a drawing. What it shows is said in the language of the view; without that it is an ornament.
func (v *view) picture(s *scene.Scene) *node {
	if s == nil || len(s.Items) == 0 {
		return nil
	}
	n := el("svg", el("use").with("href", "#"+spritesID+strconv.Itoa(v.draw(s))))
	n.with("viewBox", fmt.Sprintf("0 0 %.4g %.4g", s.W, s.H)).with("width", fmt.Sprintf("%.0f", s.W*millimetre)).with("height", fmt.Sprintf("%.0f", s.H*millimetre))
	said := s.Title[v.l.Tag()]
	if desc := s.Desc[v.l.Tag()]; desc != "" {
		said += ". " + desc
	}
	if said == "" {
		return n.with("aria-hidden", "true")
	}
	return n.with("role", "img").with("aria-label", said)
}

// figure is a picture with its caption. One that is wide keeps its size, and is moved where the window is narrow.
func (v *view) figure(s *scene.Scene, wide bool, caption ...*node) *node {
	pic := v.picture(s)
	if pic == nil {
		return nil
	}
	if wide {
		pic = el("div", pic).class("scroll wide").with("tabindex", "0").with("role", "group").with("aria-label", s.Title[v.l.Tag()])
	}
	fig := el("figure", pic)
	if len(caption) > 0 {
		fig.add(el("figcaption", caption...))
	}
	return fig
}
