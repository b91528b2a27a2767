package caution

import (
	"slices"

	"ovillo/compile/plan"
)

var wordsOfCord = map[string]func(*view) string{
	"zone": func(e *view) string { return zoneNames[e.cord().Zone] },
	"role": func(e *view) string { return string(e.cord().Role) },
	"end":  func(e *view) string { return string(e.cord().ending(e.size)) },
}

// zoneNames are the zones as the table of rules calls them.
var zoneNames = map[Zone]string{Neck: "neck_front", Nape: "neck_back", Hood: "hood", Head: "head", Chest: "chest", Waist: "waist",
	Back: "back", Hem: "hem", Sleeve: "sleeve_long", ShortSleeve: "sleeve_short", Cuff: "cuff_long", Other: "other", OnToy: "toy"}

var truthsOfCord = map[string]func(*view) Truth{
	"fray":             func(e *view) Truth { return e.cord().Fray },
	"elastic":          func(e *view) Truth { return e.cord().Elastic },
	"anchored":         func(e *view) Truth { return e.cord().Anchored },
	"hangs_below_hem":  func(e *view) Truth { return e.cord().belowHem(e.size) },
	"outside":          func(e *view) Truth { return e.cord().Outside },
	"noose":            func(e *view) Truth { return e.cord().Noose },
	"tied_behind_neck": func(e *view) Truth { return e.cord().behindNeck() },
	"limb":             func(e *view) Truth { return e.cord().onLimb(e.facts.Kind) },
}

var numbersOfCord = map[string]func(*view) reach{
	"free_cm":       func(e *view) reach { return e.cord().free(e.size) },
	"tight_cm":      func(e *view) reach { return e.cord().tight(e.size) },
	"loop_cm":       func(e *view) reach { return e.cord().loop(e.size) },
	"loop_tight_cm": func(e *view) reach { return e.cord().loopTight(e.size) },
	"width_cm":      func(e *view) reach { return e.length(e.cord().Width) },
	"thick_mm":      func(e *view) reach { return measure(e.cord().Thick) },
}

// ending is how the free ends are finished. A drawstring that is no longer than its opening has none.
func (c *Cord) ending(i int) End {
	if length, opening := at(c.Length, i), at(c.Opening, i); c.End == "" && length != plan.NoLength && opening != plan.NoLength && length <= opening {
		return "none"
	}
	return c.End
}

// free is the length of a free end with the garment laid open, as far as it is known. What runs through an opening hangs
// out by half of what it is longer, and a belt that is tied round the wearer by half of what it is longer than that; any other cord may
// hang from one end. A cord of which little is known may still be too short for a limit.
func (c *Cord) free(i int) reach {
	length, opening := at(c.Length, i), at(c.Opening, i)
	switch {
	case c.End == "none":
		return exactly(0)
	case length == plan.NoLength:
		return anyNumber
	case c.girdles() && at(c.Drawn, i) != plan.NoLength:
		return exactly(int64(half(length - at(c.Drawn, i))))
	case c.girdles():
		return reach{0, int64(length)}
	case opening != plan.NoLength && c.Role != "":
		return exactly(int64(half(length - opening)))
	case opening != plan.NoLength:
		return reach{int64(half(length - opening)), int64(length)}
	case c.Role == "drawstring":
		return reach{0, int64(length / 2)}
	case c.Role == "" && (c.Zone != OnToy || c.End == ""): // on a toy a cord that has ends hangs down
		return reach{0, int64(length)}
	}
	return exactly(int64(length))
}

// girdles reports whether the cord is a belt that goes round the wearer in one piece, over the fabric.
func (c *Cord) girdles() bool { return c.Role == "tie_belt" && c.Drawn != nil && c.Opening == nil }

// long reports whether it is known how long the cord is.
func (c *Cord) long() bool {
	return len(c.Length) > 0 && !slices.Contains(c.Length, plan.NoLength)
}

// half rounds up, so that what is a trifle too long is so for one end as well.
func half(l plan.Length) plan.Length { return (max(0, l) + 1) / 2 }

// tight is how much of the cord sticks out when it is drawn up to the wearer.
func (c *Cord) tight(i int) reach {
	length, opening, drawn := at(c.Length, i), at(c.Opening, i), at(c.Drawn, i)
	switch {
	case c.End == "none":
		return exactly(0)
	case length == plan.NoLength:
		return anyNumber
	case drawn != plan.NoLength:
		return exactly(int64(max(0, length-drawn)))
	case opening != plan.NoLength:
		return reach{int64(max(0, length-opening)), int64(length)}
	}
	return reach{0, int64(length)}
}

// loop is around a loop that sticks out, with the garment laid open. A drawstring without free ends is one.
func (c *Cord) loop(i int) reach {
	length, opening := at(c.Length, i), at(c.Opening, i)
	if c.ring() && length != plan.NoLength && opening != plan.NoLength {
		return exactly(int64(max(0, length-opening, at(c.Loop, i))))
	}
	if c.Role == "" && c.End == "none" && opening != plan.NoLength { // it may be such a ring
		return reach{int64(max(0, at(c.Loop, i))), anyNumber.most}
	}
	return measure(at(c.Loop, i))
}

// loopTight is around that loop when the cord is drawn up.
func (c *Cord) loopTight(i int) reach {
	if l := at(c.LoopDrawn, i); l != plan.NoLength {
		return exactly(int64(l))
	}
	length, drawn, open := at(c.Length, i), at(c.Drawn, i), c.loop(i)
	switch {
	case c.ring() && length != plan.NoLength && drawn != plan.NoLength:
		return exactly(int64(max(0, length-drawn)))
	case c.ring() && length != plan.NoLength:
		return reach{open.least, int64(length)}
	case c.End != "" && c.End != "none" && open == exactly(0): // its ends are free, and no loop is said of it
		return exactly(0)
	}
	return reach{open.least, anyNumber.most}
}

// ring reports whether the cord is a drawstring that is closed to a ring.
func (c *Cord) ring() bool { return c.Role == "drawstring" && c.End == "none" }

// belowHem tells whether the cord hangs below the edge. What has free ends at a hem or a cuff does, unless it is said to be inside.
func (c *Cord) belowHem(i int) Truth {
	if c.BelowHem != Unknown || c.Zone != Hem && c.Zone != Cuff {
		return c.BelowHem
	}
	switch r := c.free(i); {
	case c.Outside == False, r.most == 0:
		return False
	case r.least > 0:
		return True
	}
	return Unknown
}

// closes are the roles of cords that are tied or drawn up.
var closes = []Role{"drawstring", "functional", "tie_belt"}

// behindNeck tells whether the cord is tied behind the neck. One that sits elsewhere is not.
func (c *Cord) behindNeck() Truth {
	switch {
	case c.BehindNeck != Unknown:
		return c.BehindNeck
	case c.Zone == UnknownZone || c.Zone == Nape && c.Role == "":
		return Unknown
	}
	return truth(c.Zone == Nape && (c.Role == "halter" || slices.Contains(closes, c.Role)) && c.End != "none")
}

// onLimb tells whether the cord is drawn up or tied round a wrist or an ankle.
func (c *Cord) onLimb(kind string) Truth {
	switch {
	case !OnLimb(kind) && c.Zone != UnknownZone && c.Zone != Cuff && !(c.Zone == Hem && AtAnkle(kind) == True):
		return False
	case c.Role == "" || !OnLimb(kind) && c.Zone == UnknownZone:
		return Unknown
	}
	return truth(slices.Contains(closes, c.Role))
}

var wordsOfPart = map[string]func(*view) string{
	"kind": func(e *view) string { return e.part().Kind },
	"material": func(e *view) string {
		if m := e.part().Material; m != "" {
			return m
		}
		return usualMaterial[e.part().Kind]
	},
}

// usualMaterial is what some things are made of unless a source says otherwise. Common practice, no source.
var usualMaterial = map[string]string{"safety_eye": "plastic", "googly_eye": "plastic", "bell": "metal", "wire": "metal",
	"magnet": "metal", "battery": "metal", "pin": "metal", "pompom": "yarn"}

var truthsOfPart = map[string]func(*view) Truth{
	"fits_cylinder": func(e *view) Truth {
		size := measure(e.part().Size)
		if size != anyNumber && size.least > cylinderWidth && slices.Contains(roundParts, e.part().Kind) {
			return False
		}
		return fits(size)
	},
}

// roundParts are the things that are as wide as they are long, so that none that is wider than the cylinder goes into it.
var roundParts = []string{"ring", "safety_eye", "googly_eye", "bell"}

var truthsOfElastic = map[string]func(*view) Truth{
	"limb": func(e *view) Truth {
		switch e.facts.Elastics[e.thing.index].Zone {
		case UnknownZone:
			return Unknown
		case Sleeve, ShortSleeve, Cuff:
			return True
		}
		return truth(OnLimb(e.facts.Kind))
	},
}
