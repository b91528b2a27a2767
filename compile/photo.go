package compile

import (
	"errors"
	"io/fs"
	"math"
	"path"

	"ovillo/compile/picture"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file reads the photograph of the header.

// A page shows the photograph printedWide wide. Print takes goodPixels an inch (the trade's figure); below leastPixels the
// single pixels are seen at arm's length (common practice, no source).
const (
	printedWide = 80 * plan.Millimetre
	goodPixels  = 300
	leastPixels = 150
)

// readPhoto reads the photograph, once the sizes are known.
func (c *checker) readPhoto() {
	n := c.photo
	if n == nil {
		return
	}
	out := &plan.Photo{File: n.File.Text, Alt: c.text(n.Alt, n), Size: -1}
	c.pat.Photo = out
	if n.Size != nil && c.z > 0 {
		if out.Size = c.sizeIndex(n.Size.Text); out.Size < 0 {
			c.say(codeNoSize, n.Size.Span(), c.sizeArgs(n.Size.Text))
		} else {
			out.Made = c.pat.Sizes[out.Size]
		}
	}
	if _, inside := lang.InFolder(".", n.File.Text); !inside {
		c.say(codePhotoName, n.File.Span(), diag.Args{"file": n.File.Text})
		return
	}
	if c.open != nil {
		c.openPhoto(n, out)
	}
}

// openPhoto reads the file and says what is the matter with it.
func (c *checker) openPhoto(n *lang.Photo, out *plan.Photo) {
	at, args := n.File.Span(), diag.Args{"file": n.File.Text}
	data, err := c.open(path.Clean(n.File.Text))
	if errors.Is(err, fs.ErrNotExist) {
		c.say(codeNoPhoto, at, args)
		return
	}
	why := "closed"
	var p picture.Picture
	if err == nil {
		p, err = c.readPicture(data)
		why = "broken"
	}
	switch {
	case err == nil:
	case errors.Is(err, picture.ErrLarge), errors.Is(err, picture.ErrHeavy):
		help := "bytes"
		if errors.Is(err, picture.ErrHeavy) {
			help = "heavy"
		} else if p.W > 0 {
			help = "pixels"
		}
		c.report(diag.Diagnostic{Code: codePhotoLarge, Span: at, Args: diag.Args{"file": n.File.Text, "mb": picture.MostBytes >> 20,
			"mp": picture.MostPixels >> 20, "side": picture.MostSide, "need": pixelsFor(goodPixels)}, Help: help})
		return
	case errors.Is(err, picture.ErrFormat):
		why = "format"
		fallthrough
	default:
		c.report(diag.Diagnostic{Code: codePhotoRead, Span: at, Args: args, Help: why})
		return
	}
	out.Data, out.Format, out.W, out.H = p.Data, p.Format, p.W, p.H
	if p.W < pixelsFor(leastPixels) {
		c.say(codePhotoCoarse, at, diag.Args{"file": n.File.Text, "have": p.W, "inch": int(float64(p.W) / inches(printedWide)),
			"need": pixelsFor(goodPixels), "mm": int(printedWide / plan.Millimetre), "good": goodPixels})
	}
}

func inches(l plan.Length) float64 { return float64(l) / float64(plan.Inch) }

// pixelsFor is how many pixels the printed width takes at so many an inch.
func pixelsFor(perInch float64) int { return int(math.Ceil(perInch * inches(printedWide))) }
