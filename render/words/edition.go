package words

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
)

// Edition names the edition and its month: "Edition 2, March 2026". It is empty if the pattern has neither.
func (l *Language) Edition(p *plan.Pattern) string {
	y, m, _ := strings.Cut(p.Date, "-")
	year, _ := strconv.Atoi(y)
	month := 0
	if m, _, _ = strings.Cut(m, "-"); m != "" {
		month, _ = strconv.Atoi(m)
	}
	if month < 1 || month > 12 {
		month = 0
	}
	return l.voice.edition(p.Edition, year, month)
}
