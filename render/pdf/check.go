package pdf

import (
	"errors"
	"fmt"
	"maps"
	"math"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"time"

	"ovillo/render/font"
	"ovillo/render/page"
)

// MissingError says that a face has no glyph for a rune of a text.
type MissingError struct {
	Rune rune
	Face string // PostScript name
	Text string
	Page int // from 0
}

func (e *MissingError) Error() string {
	return fmt.Sprintf("page %d: %s has no glyph for U+%04X %q in %q", e.Page+1, e.Face, e.Rune, e.Rune, shorten(e.Text))
}

func shorten(s string) string {
	if r := []rune(s); len(r) > 60 {
		return string(r[:60]) + "…"
	}
	return s
}

// Limits of the format in millimetres and points.
const (
	smallestSheet = 10.0
	largestSheet  = 5080.0 // 14,400 points
	farthest      = 2 * largestSheet
	largestType   = 5000.0
)

// languageTag is the shape of a BCP 47 tag.
var languageTag = regexp.MustCompile(`^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$`)

// Check finds what would make a broken file of a document, without writing one: a [*MissingError] for a letter that a face
// does not have, numbers that the format cannot hold, links to pages that are not there.
func Check(d *page.Document) error { return check(d, Options{}) }

// check finds what would make a broken file, before anything is drawn.
func check(d *page.Document, o Options) error {
	if d == nil || len(d.Pages) == 0 {
		return errors.New("a document needs a page")
	}
	if o.Profile > Archive {
		return fmt.Errorf("there is no profile %d", o.Profile)
	}
	if err := checkLanguages(d); err != nil {
		return err
	}
	if d.Created != "" {
		if _, err := time.Parse(time.DateOnly, d.Created); err != nil {
			return fmt.Errorf("the date of the edition, %q, does not read YYYY-MM-DD", d.Created)
		}
	}
	if o.Profile == Normal && d.Source != nil && baseName(d.SourceName) == "" {
		return errors.New("the source has no name")
	}
	for i, entry := range d.Outline {
		if err := checkPlace(d, entry.Page, entry.Y); err != nil {
			return fmt.Errorf("bookmark %d, %q: %w", i+1, shorten(entry.Title), err)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(d.Places)) {
		if err := checkPlace(d, d.Places[name].Page, d.Places[name].Y); err != nil {
			return fmt.Errorf("the place %q: %w", shorten(name), err)
		}
	}
	for i := range d.Pages {
		if err := checkPage(d, i); err != nil {
			return err
		}
	}
	return nil
}

func checkLanguages(d *page.Document) error {
	tags := slices.Clone(d.Langs)
	if d.Lang != "" {
		tags = append(tags, d.Lang)
	}
	for _, t := range slices.Concat(d.Titles, d.Subjects) {
		tags = append(tags, t.Lang)
	}
	for _, tag := range tags {
		if !languageTag.MatchString(tag) {
			return fmt.Errorf("%q is not a language tag", tag)
		}
	}
	return nil
}

func checkPage(d *page.Document, number int) error {
	p := &d.Pages[number]
	for _, side := range []float64{p.W, p.H} {
		if !(side >= smallestSheet && side <= largestSheet) {
			return fmt.Errorf("page %d: a sheet of %g × %g mm is not possible", number+1, p.W, p.H)
		}
	}
	for i, item := range p.Items {
		if err := checkItem(d, item); err != nil {
			var missing *MissingError
			if errors.As(err, &missing) {
				missing.Page = number
				return err
			}
			return fmt.Errorf("page %d, item %d: %w", number+1, i+1, err)
		}
	}
	return nil
}

func checkItem(d *page.Document, item page.Item) error {
	switch it := item.(type) {
	case page.Glyphs:
		return checkGlyphs(it)
	case page.Path:
		return checkPath(it)
	case page.Picture:
		if it.W <= 0 || it.H <= 0 {
			return errors.New("a picture without a size")
		}
		return finite("picture", it.X, it.Y, it.W, it.H)
	case page.Anchor:
		return checkAnchor(d, it)
	case page.Folio:
		return nil
	}
	return fmt.Errorf("a %T is not something to draw", item)
}

func checkGlyphs(g page.Glyphs) error {
	if g.Face > page.SerifBold {
		return fmt.Errorf("there is no face %d", g.Face)
	}
	if !(g.Size > 0 && g.Size <= largestType) {
		return fmt.Errorf("%q in a type size of %g pt", shorten(g.Text), g.Size)
	}
	f := font.Of(g.Face)
	if missing := f.Missing(g.Text); missing != nil {
		return &MissingError{Rune: missing[0], Face: f.Name(), Text: g.Text}
	}
	if err := checkColor(g.Color); err != nil {
		return err
	}
	return finite("text", g.X, g.Base, g.Track, g.Angle)
}

func checkPath(p page.Path) error {
	for i, c := range p.Cmds {
		if !strings.ContainsRune("MLCZ", rune(c.Op)) {
			return fmt.Errorf("a path has the step %q", c.Op)
		}
		if i == 0 && c.Op != 'M' {
			return fmt.Errorf("a path begins with the step %q, not with M", c.Op)
		}
		for _, at := range c.P {
			if err := finite("path", at.X, at.Y); err != nil {
				return err
			}
		}
	}
	for _, c := range []*page.Color{p.Fill, p.Stroke} {
		if c == nil {
			continue
		}
		if err := checkColor(*c); err != nil {
			return err
		}
	}
	return checkLine(p)
}

func checkLine(p page.Path) error {
	if !(p.Width >= 0) {
		return fmt.Errorf("a line %g mm wide", p.Width)
	}
	sum := 0.0
	for _, dash := range p.Dash {
		if !(dash >= 0) {
			return fmt.Errorf("a dash %g mm long", dash)
		}
		sum += dash
	}
	if len(p.Dash) > 0 && sum < 0.001 {
		return errors.New("dashes without length")
	}
	return finite("line", append([]float64{p.Width}, p.Dash...)...)
}

func checkColor(c page.Color) error {
	for _, part := range c {
		if !(part >= 0 && part <= 1) {
			return fmt.Errorf("the colour %v is not within 0 and 1", c)
		}
	}
	return nil
}

func checkAnchor(d *page.Document, a page.Anchor) error {
	if a.W <= 0 || a.H <= 0 {
		return errors.New("a link without a size")
	}
	if err := finite("link", a.X, a.Y, a.W, a.H); err != nil {
		return err
	}
	if inside, err := target(d, a); err != nil || inside != nil {
		return err
	}
	_, err := address(a.URI)
	return err
}

// target returns where in the document a link leads, nil if it leads out of it.
func target(d *page.Document, a page.Anchor) (*page.Place, error) {
	name, named := strings.CutPrefix(a.URI, "#")
	switch {
	case named:
		to, known := d.Places[name]
		if !known {
			return nil, fmt.Errorf("a link leads to %q, which is no place of the document", shorten(name))
		}
		return &to, nil
	case a.URI == "":
		to := page.Place{Page: a.Page, Y: a.DestY}
		return &to, checkPlace(d, to.Page, to.Y)
	}
	return nil, nil
}

func checkPlace(d *page.Document, number int, y float64) error {
	if number < 0 || number >= len(d.Pages) {
		return fmt.Errorf("there is no page %d", number+1)
	}
	return finite("place", y)
}

// finite refuses numbers that the format cannot hold.
func finite(what string, numbers ...float64) error {
	for _, v := range numbers {
		if !(math.Abs(v) <= farthest) {
			return fmt.Errorf("%s at %g mm", what, v)
		}
	}
	return nil
}

// schemes are the addresses that a printed pattern can mean. Others, such as javascript:, run code in some viewers.
var schemes = map[string]bool{"http": true, "https": true, "mailto": true, "tel": true}

// address returns a URI in the ASCII that a PDF wants.
func address(uri string) (string, error) {
	u, err := url.Parse(uri)
	if err != nil {
		return "", fmt.Errorf("%q is not an address", shorten(uri))
	}
	if !schemes[u.Scheme] {
		return "", fmt.Errorf("the address %q is of none of the kinds http, https, mailto, tel", shorten(uri))
	}
	var b strings.Builder
	for i := range len(uri) {
		if c := uri[i]; c <= ' ' || c >= 0x7F || strings.IndexByte("<>\"\\^`{|}", c) >= 0 {
			fmt.Fprintf(&b, "%%%02X", c)
		} else {
			b.WriteByte(c)
		}
	}
	return b.String(), nil
}
