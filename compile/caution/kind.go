package caution

import (
	"slices"
	"strings"
	"sync"
)

// kindTable is data/kinds.csv: the words for what is made, in their order, and what is usual of each.
type kindTable struct {
	words                                     []string
	class                                     map[string]string // the kinds of the table of rules
	overHead, waist, children                 map[string]bool
	outerwear, belowCrotch, atAnkle, onePiece map[string]Truth
}

var kinds = sync.OnceValue(func() kindTable {
	t := kindTable{class: map[string]string{}, overHead: map[string]bool{}, waist: map[string]bool{}, children: map[string]bool{},
		outerwear: map[string]Truth{}, belowCrotch: map[string]Truth{}, atAnkle: map[string]Truth{}, onePiece: map[string]Truth{}}
	usual := map[string]Truth{"yes": True, "no": False}
	for _, r := range table("kinds.csv") {
		w := r["word"]
		t.words = append(t.words, w)
		t.class[w] = r["class"]
		t.overHead[w], t.waist[w], t.children[w] = r["over_head"] == "yes", r["from_waist"] == "yes", r["children"] == "yes"
		t.outerwear[w], t.belowCrotch[w] = usual[r["outerwear"]], usual[r["below_crotch"]]
		t.atAnkle[w], t.onePiece[w] = usual[r["at_ankle"]], usual[r["one_piece"]]
	}
	return t
})

// PulledOver reports whether a garment of this kind is pulled over the head, as a rule.
func PulledOver(kind string) bool { return kinds().overHead[kind] }

// Outerwear tells whether what is made is worn as an outer layer on the upper body, as a rule.
func Outerwear(kind string) Truth { return kinds().outerwear[kind] }

// BelowCrotch tells whether its hem hangs below the crotch, as a rule.
func BelowCrotch(kind string) Truth { return kinds().belowCrotch[kind] }

// AtAnkle tells whether its hem is at the ankle, as a rule.
func AtAnkle(kind string) Truth { return kinds().atAnkle[kind] }

// OnePiece tells whether it is a garment in one piece, as a rule.
func OnePiece(kind string) Truth { return kinds().onePiece[kind] }

// ForChildren reports whether only children wear or use what is made.
func ForChildren(kind string) bool { return kinds().children[kind] }

// Kinds lists the words a source may use for what is made.
func Kinds() []string { return slices.Clone(kinds().words) }

// Worn reports whether a word for what is made names something that has to fit a wearer.
func Worn(kind string) bool {
	return slices.Contains([]string{"garment", "sleepwear", "nightdress", "dressing_gown", "costume", "hat", "bonnet", "headband", "mittens", "bootees", "socks"}, kinds().class[kind])
}

// OnLimb reports whether a word for what is made names something that is worn on hands or feet.
func OnLimb(kind string) bool {
	return slices.Contains([]string{"mittens", "bootees", "socks"}, kinds().class[kind])
}

// isClothes reports whether a cord may be anywhere on things of a class.
func isClothes(class string) bool {
	return slices.Contains([]string{"garment", "sleepwear", "nightdress", "dressing_gown", "costume"}, class)
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

var zoneWords = sync.OnceValue(func() map[string]Zone {
	m := map[string]Zone{}
	for _, r := range table("zones.csv") {
		m[r["word"]] = Zone(r["zone"])
	}
	return m
})

// ZoneOf tells where a cord is, by the name of the part it runs through ("" for none): a word in it such as waistband or
// hood. On a thing that hangs from the waist a cord is at the waist unless the name says otherwise, on a hat at the head, on a
// bib or a necklace behind the neck; on a scarf it is not known; on a thing that is no garment the zone does not matter.
func ZoneOf(kind, part string) Zone {
	for _, w := range strings.FieldsFunc(strings.ToLower(part), func(r rune) bool { return r == '_' || r == ' ' }) {
		if z, ok := zoneWords()[w]; ok {
			return z
		}
	}
	switch class := kinds().class[kind]; class {
	case "", "scarf", "snood":
		return UnknownZone
	case "hat", "bonnet", "headband":
		return Head
	case "bib", "necklace":
		return Nape
	case "toy", "ball", "rattle", "teether", "mobile", "crib_gym", "cot_garland":
		return OnToy
	default:
		switch {
		case kinds().waist[kind]:
			return Waist
		case isClothes(class):
			return UnknownZone
		}
	}
	return Other
}
