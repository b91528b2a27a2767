package data

import (
	"strconv"

	"ovillo/compile/plan"
)

// Version is that of the shape.
const Version = 1

// The fields, in the order in which they are written. What each means stands in the schema.
type (
	document struct {
		Format    string    `json:"format"`
		Version   int       `json:"version"`
		Generator generator `json:"generator"`
		Languages []string  `json:"languages"`

		Name    string  `json:"name"`
		Title   texts   `json:"title"`
		By      string  `json:"by"`
		Edition edition `json:"edition"`
		Kind    *string `json:"kind"`
		Level   *string `json:"level"`
		Left    bool    `json:"left_handed"`
		Intro   texts   `json:"intro"`

		Sizes    []size        `json:"sizes"`
		Body     []bodyMeasure `json:"body_measures"`
		Measures []measure     `json:"measures"`
		Gauges   []gauge       `json:"gauges"`
		Hooks    []mm          `json:"hooks_mm"`
		Yarns    []yarn        `json:"yarns"`
		Notions  []fact        `json:"notes"`
		Short    []shortForms  `json:"abbreviations"`

		Parts     []part    `json:"parts"`
		Finishing []finish  `json:"finishing"`
		Cautions  []caution `json:"cautions"`
		Standing  texts     `json:"cautions_standing"`
		Care      texts     `json:"care"`
		Contents  texts     `json:"contents"`
		Licence   texts     `json:"licence"`
		Changes   texts     `json:"edition_notes"`
	}

	generator struct {
		Name    string `json:"name"`
		Version string `json:"version"`
	}
	// texts is a text in each language of the data, by its tag.
	texts   map[string]string
	edition struct {
		Number *int    `json:"number"`
		Month  *string `json:"month"`
	}
	size struct {
		Name    string `json:"name"`
		Names   texts  `json:"names"`
		AgeFrom *int   `json:"age_from_months"`
		AgeTo   *int   `json:"age_to_months"`
	}
	bodyMeasure struct {
		Name     string `json:"name"`
		Label    texts  `json:"label"`
		MM       []mm   `json:"mm"`
		Memory   bool   `json:"from_memory"`
		Designer bool   `json:"by_designer"`
	}
	measure struct {
		Name   string  `json:"name"`
		Label  texts   `json:"label"`
		Letter *string `json:"letter"`
		MM     []mm    `json:"mm"`
		Fits   *fits   `json:"fits"`
	}
	fits struct {
		Body string `json:"body_measure"`
		Ease []mm   `json:"ease_mm"`
	}
	gauge struct {
		Stitch  string   `json:"stitch"`
		Pattern *string  `json:"stitch_pattern"`
		Over    mm       `json:"over_mm"`
		Sts     *thousth `json:"stitches"`
		Repeats *thousth `json:"repeats"`
		Rows    *thousth `json:"rows"`
		Rounds  bool     `json:"in_rounds"`
		Hook    mm       `json:"hook_mm"`
		Blocked string   `json:"counted"`
	}
	yarn struct {
		Name       string   `json:"name"`
		Label      texts    `json:"label"`
		Weight     *string  `json:"weight"`
		Fibres     []fibre  `json:"fibres"`
		BallWeight *thousth `json:"ball_g"`
		BallLength mm       `json:"ball_mm"`
		Amounts    []amount `json:"amounts"`
	}
	fibre struct {
		Name    string `json:"fibre"`
		Percent int    `json:"percent"`
	}
	amount struct {
		Grams  thousth `json:"g"`
		Length mm      `json:"mm"`
		Balls  *int    `json:"balls"`
	}
	fact struct {
		Head texts `json:"head"`
		Text texts `json:"text"`
	}
	shortForms struct {
		Lang string      `json:"language"`
		List []shortForm `json:"list"`
	}
	shortForm struct {
		Short   string   `json:"short"`
		Meaning string   `json:"meaning"`
		Others  []string `json:"elsewhere"`
	}
	part struct {
		Name   string     `json:"name"`
		Title  texts      `json:"title"`
		Make   int        `json:"make"`
		Worked string     `json:"worked"`
		Note   texts      `json:"note"`
		Hook   mm         `json:"hook_mm"`
		From   []string   `json:"starts_from"`
		Steps  []step     `json:"steps"`
		Rows   [][]rowOut `json:"rows_by_size"`
	}
	step struct {
		Kind   string  `json:"kind"`
		First  []*int  `json:"first_row"`
		Last   []*int  `json:"last_row"`
		Side   *string `json:"side"`
		For    []bool  `json:"in_sizes"`
		Only   texts   `json:"only"`
		Label  texts   `json:"label"`
		Text   texts   `json:"text"`
		Counts []count `json:"counts"`
	}
	count struct {
		Of      texts  `json:"of"`
		Numbers []*int `json:"numbers"`
	}
	rowOut struct {
		Number   int     `json:"row"`
		Label    *string `json:"label"`
		Stitches int     `json:"stitches"`
		Spaces   int     `json:"spaces"`
		Taken    int     `json:"taken"`
	}
	finish struct {
		Before *string `json:"before_part"`
		Text   texts   `json:"text"`
	}
	caution struct {
		ID       string  `json:"rule"`
		Severity string  `json:"severity"`
		In       []bool  `json:"in_sizes"`
		Text     texts   `json:"text"`
		Source   *string `json:"source"`
		Read     string  `json:"source_read"`
		Seller   bool    `json:"for_sellers"`
		Reason   texts   `json:"reason"`
		Step     *int    `json:"finishing_step"`
	}
)

// mm is a length in millimetres; null if it is not known.
type mm plan.Length

// MarshalJSON writes the exact value, to the micrometre.
func (l mm) MarshalJSON() ([]byte, error) {
	if plan.Length(l) == plan.NoLength {
		return []byte("null"), nil
	}
	return []byte(thousandths(int64(l))), nil
}

// thousth is a number in thousandths, such as grams in milligrams.
type thousth int64

// MarshalJSON writes the exact value.
func (n thousth) MarshalJSON() ([]byte, error) { return []byte(thousandths(int64(n))), nil }

// thousandths writes a number of thousandths as a decimal, without noughts at its end.
func thousandths(n int64) string {
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	s := strconv.FormatInt(n/1000, 10)
	if rest := n % 1000; rest != 0 {
		frac := strconv.FormatInt(1000+rest, 10)[1:]
		for frac[len(frac)-1] == '0' {
			frac = frac[:len(frac)-1]
		}
		s += "." + frac
	}
	return sign + s
}
