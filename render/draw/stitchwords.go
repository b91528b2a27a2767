package draw

import (
	"fmt"
	"strings"

	"ovillo/render/scene"
	"ovillo/render/words"
)

// say says in each language what a sheet of a chart shows: what the chart is of, how it lies, and each of its rows in short.
func (d *symbolChart) say(s *scene.Scene, i int, t tile, langs []*words.Language) {
	for lang, w := range speak(langs) {
		s.Title[lang] = fmt.Sprintf(w.StitchChart, w.StitchChartTitle(d.p, i))
		lies := w.StitchRows
		switch {
		case d.s.Outward:
			lies = w.StitchRounds
		case d.s.Lines[len(d.s.Lines)-1].Closed:
			lies = w.StitchLevels
		}
		var said []string
		if t.split() {
			said = append(said, fmt.Sprintf(w.ChartSheet, t.number(), t.of[0]*t.of[1]))
		}
		said = append(said, fmt.Sprintf(lies, w.sizeOf(d.p)))
		if t.number() == 1 { // the others are the same rows
			for k := range d.s.Lines {
				if line := &d.s.Lines[k]; line.Number > 0 && !line.Base && len(line.Stitches) > 0 {
					said = append(said, w.StitchChartRow(d.p, line))
				}
			}
			if r := d.c.Repeat; r != nil {
				said = append(said, fmt.Sprintf(w.ChartRepeat, r.N))
			}
		}
		s.Desc[lang] = strings.Join(said, " ")
	}
}
