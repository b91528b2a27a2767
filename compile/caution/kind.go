package caution

import (
	"slices"
	"strings"
)

// classes maps the words for what is made to the classes the rules go by; overHead holds those that are pulled over the
// head; words keeps their order.
var classes, overHead, words = func() (map[string]string, map[string]bool, []string) {
	m, over := map[string]string{}, map[string]bool{}
	var order []string
	for _, r := range table("kinds.csv") {
		m[r["word"]] = r["class"]
		over[r["word"]] = r["over_head"] == "yes"
		order = append(order, r["word"])
	}
	return m, over, order
}()

// PulledOver reports whether a garment of this kind is pulled over the head, as a rule.
func PulledOver(kind string) bool { return overHead[kind] }

// Kinds lists the words a source may use for what is made.
func Kinds() []string { return slices.Clone(words) }

// Worn reports whether a word for what is made names something that has to fit a wearer.
func Worn(kind string) bool {
	return slices.Contains([]string{"garment", "upper", "lower", "hat", "bonnet", "headband", "mittens", "bootees", "socks"}, classes[kind])
}

// OnLimb reports whether a word for what is made names something that is worn on hands or feet.
func OnLimb(kind string) bool {
	return slices.Contains([]string{"mittens", "bootees", "socks"}, classes[kind])
}

// isOf reports whether a class belongs to one of the classes of a rule. A garment of the upper body and one that hangs
// from the waist are garments.
func isOf(class string, kinds []string) bool {
	if kinds == nil || slices.Contains(kinds, class) {
		return true
	}
	return (class == "upper" || class == "lower") && slices.Contains(kinds, "garment")
}

// Zone is where on a garment a cord is; "" is not known.
type Zone string

// The zones.
const (
	UnknownZone Zone = ""
	Neck        Zone = "neck" // front of the neck and upper chest
	Nape        Zone = "nape" // back of the neck
	Hood        Zone = "hood"
	Head        Zone = "head"
	Chest       Zone = "chest"
	Waist       Zone = "waist"
	Back        Zone = "back"
	Hem         Zone = "hem"
	Sleeve      Zone = "sleeve" // anywhere on a long sleeve but its cuff
	ShortSleeve Zone = "short_sleeve"
	Cuff        Zone = "cuff" // of a long sleeve
	Other       Zone = "other"
	OnToy       Zone = "toy"
)

var zoneWords = func() map[string]Zone {
	m := map[string]Zone{}
	for _, r := range table("zones.csv") {
		m[r["word"]] = Zone(r["zone"])
	}
	return m
}()

// ZoneOf tells where a cord is, by the name of the part it runs through ("" for none): a word in it such as waistband or
// hood. On a thing that hangs from the waist a cord is at the waist unless the name says otherwise; on a thing that is no
// garment the zone does not matter and is Other.
func ZoneOf(kind, part string) Zone {
	for _, w := range strings.FieldsFunc(strings.ToLower(part), func(r rune) bool { return r == '_' || r == ' ' }) {
		if z, ok := zoneWords[w]; ok {
			return z
		}
	}
	class, known := classes[kind]
	switch {
	case !known, class == "garment", class == "upper":
		return UnknownZone
	case class == "lower":
		return Waist
	}
	return Other
}
