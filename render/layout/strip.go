package layout

// Strip is a piece of the flow from top to bottom, as wide as the text block. It is never split; what may be split is
// made of several strips.
type Strip struct {
	Box
	Space   float64 // white above it; dropped at the top of a sheet
	Give    float64 // how much of Space may go where the sheet would be that little too short
	Keep    bool    // stands on the same sheet as the next strip
	Yields  bool    // Keep gives way where it would leave more than a few lines of a sheet empty
	Fresh   bool    // starts a sheet
	Resume  []Strip // set at the top of a sheet that starts with this strip: repeated heads
	Heading bool    // names what follows: must not stand last
	Mark    string  // a name by which the place is found after the breaks are made; "" if nobody asks
}

// Bind ties strips together: all must stand on one sheet.
func Bind(strips []Strip) []Strip {
	for i := range strips {
		if i < len(strips)-1 {
			strips[i].Keep = true
		}
	}
	return strips
}

// Loosely ties only the first lines and the last lines of strips together, n each, so that a break never leaves fewer.
func Loosely(strips []Strip, n int) []Strip {
	for i := range strips {
		if i < len(strips)-1 && (i < n-1 || i >= len(strips)-n) {
			strips[i].Keep = true
		}
	}
	return strips
}
