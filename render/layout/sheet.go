package layout

// Sheet is the body of one page.
type Sheet struct {
	Box   // H is how far down it is filled
	Marks []Mark
}

// Mark is where a strip with a name came to stand, from the top of its sheet.
type Mark struct {
	Name  string
	Sheet int
	Y     float64
}

// Paginate puts strips on sheets, the first of them first millimetres high, the others rest. It takes as few sheets as it can;
// of the ways to do so it takes the best over all of them, see breaks. Strips that belong together stand on one sheet, and its
// foot stays open; only where they are taller than a sheet are they broken.
func Paginate(strips []Strip, first, rest float64) []Sheet {
	var sheets []Sheet
	starts := breaks(strips, first, rest)
	for k, i := range starts {
		height := rest
		if k == 0 {
			height = first
		}
		sheets = append(sheets, set(strips[i:endOf(starts, k, len(strips))], height, k))
	}
	return sheets
}

// Fill reports how many sheets Paginate would fill, and how far down the last of them. It sets nothing.
func Fill(strips []Strip, first, rest float64) (sheets int, last float64) {
	starts := breaks(strips, first, rest)
	n := len(starts)
	if n == 0 {
		return 0, 0
	}
	height := rest
	if n == 1 {
		height = first
	}
	at := places(strips[starts[n-1]:], height)
	return n, at[len(at)-1].end()
}

func endOf(starts []int, k, n int) int {
	if k+1 < len(starts) {
		return starts[k+1]
	}
	return n
}

// placed is a strip with its place on a sheet.
type placed struct {
	strip  *Strip
	y      float64
	repeat bool // a repeated head
}

func (p placed) end() float64 { return p.y + p.strip.H }

const slop = 1e-6

// places puts strips below each other on a sheet, under the heads that the first of them repeats. What is too tall is taken
// from what the spaces give, the lowest first.
func places(strips []Strip, height float64) []placed {
	list := make([]placed, 0, len(strips)+2)
	y := 0.0
	add := func(s *Strip, repeat bool) {
		if y > 0 {
			y += s.Space
		}
		list = append(list, placed{s, y, repeat})
		y += s.H
	}
	for i := range strips[0].Resume {
		add(&strips[0].Resume[i], true)
	}
	for i := range strips {
		add(&strips[i], false)
	}
	need := 0.0
	if y > height+slop {
		need = Snap(y - height)
	}
	for i := len(list) - 1; i > 0 && need > slop; i-- {
		d := min(need, list[i].strip.Give)
		for k := i; d > 0 && k < len(list); k++ {
			list[k].y -= d
		}
		need -= d
	}
	return list
}

// set makes a sheet.
func set(strips []Strip, height float64, number int) Sheet {
	var sheet Sheet
	list := places(strips, height)
	for _, p := range list {
		if p.strip.Mark != "" && !p.repeat {
			sheet.Marks = append(sheet.Marks, Mark{p.strip.Mark, number, p.y})
		}
		sheet.Put(0, p.y, p.strip.Box)
	}
	sheet.H = list[len(list)-1].end()
	return sheet
}
