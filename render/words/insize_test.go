package words

import (
	"regexp"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// ofSeveralSizes finds a list of sizes, a dash that stands for a size without a number, or words for some of the sizes.
var ofSeveralSizes = regexp.MustCompile(`[0-9–½¼¾] \([0-9–−+½¼¾]+[,;] |\([0-9–−+½¼¾.,; ]+\) cm|– cm|` +
	`\bsizes? [^.]* only\b|^Sizes\b|\bin sizes?\b [^.]*:|[Ss]olo (en )?(la |las )?tallas?\b|\ben las tallas\b`)

// What is printed of a pattern in one size alone has no list of sizes, and says of nothing that it is for some of them.
func TestOneSizeHasPlainNumbers(t *testing.T) {
	lists := 0
	for _, p := range examples(t) {
		for _, l := range []*Language{language(t, "en-US"), language(t, "es")} {
			l.eachText(p, func(text rich.Text) {
				if ofSeveralSizes.MatchString(strings.ReplaceAll(text.String(), tie, " ")) {
					lists++
				}
			})
			for z, size := range p.Sizes {
				one := p.In(z)
				l.eachText(one, func(text rich.Text) {
					for _, r := range text {
						if r.Spoken != "" && strings.Contains(r.Spoken, tie) && len(p.Sizes) > 1 && strings.HasPrefix(r.Spoken, l.SizeName(size)+tie) {
							t.Errorf("%s in %s: a number is spoken with its size: %s", p.Name, size.Name, text)
						}
					}
					if s := strings.ReplaceAll(text.String(), tie, " "); ofSeveralSizes.MatchString(s) {
						t.Errorf("%s in %s: %s", p.Name, size.Name, s)
					}
				})
				for _, part := range one.Parts {
					for _, s := range append([]StepText{l.Start(one, part)}, stepsOf(l, one, part)...) {
						if s.Only != nil || s.Slots != nil || s.Count != nil && s.Count.Slots != nil {
							t.Errorf("%s in %s: a step has sizes: %v", p.Name, size.Name, s)
						}
					}
				}
			}
		}
	}
	if lists < 100 {
		t.Errorf("only %d texts of the patterns in all sizes have a list of them", lists)
	}
}

func stepsOf(l *Language, p *plan.Pattern, part *plan.Part) []StepText {
	var out []StepText
	for _, s := range part.Steps {
		out = append(out, l.Step(p, part, s))
	}
	return out
}
