package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/stitch"
	"ovillo/lang"
)

// chainShare is how much of a stitch's yarn a chain of a space takes (common practice, no source).
const chainShare = 0.35

// swatch is a weighed piece: its area by the gauge, and its weight.
type swatch struct {
	sts, rows int
	stitch    stitch.ID
	mg        int64
	mm2       float64
}

func (s *swatch) read(c *checker, n *lang.Swatch) {
	sts, ok1 := plainNumber(n.Sts)
	rows, ok2 := plainNumber(n.Rows)
	id := c.stitchID(n.Stitch)
	mg := c.value(n.Weight, nil).Milligrams()
	if !ok1 || !ok2 || id == "" || len(mg) == 0 {
		return
	}
	w, h, _ := c.stitchSize(id)
	*s = swatch{sts: sts, rows: rows, stitch: id, mg: mg[0], mm2: float64(sts) * w / 1000 * float64(rows) * h / 1000}
}

// yarnArea is the fabric made of one yarn in one size, in square millimetres.
type yarnArea [][]float64 // [yarn][size]

// areas adds the fabric of a row to its yarns.
func (w *working) areas(z int, res *fabric.Result, chainWidth float64) {
	c := w.p.c
	if c.area == nil {
		c.area = make(yarnArea, len(c.pat.Yarns))
		for i := range c.area {
			c.area[i] = make([]float64, c.z)
		}
	}
	elems := c.fabrics[z].Elems
	var last stitch.ID
	var sw, sh float64
	for _, id := range res.Made {
		el := &elems[id]
		y := int(el.Yarn)
		if y < 0 || y >= len(c.area) {
			continue
		}
		c.used[y] = true
		if el.Kind == fabric.Space {
			c.area[y][z] += float64(el.N) * chainWidth / 1000 * sh / 1000 * chainShare * float64(w.p.plan.Make)
			continue
		}
		if el.Form.ID != last {
			last = el.Form.ID
			sw, sh, _ = c.stitchSize(last)
		}
		c.area[y][z] += sw / 1000 * sh / 1000 * float64(w.p.plan.Make)
	}
}

