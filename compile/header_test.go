package compile

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// Every day that can be written agrees with the calendar of the standard library.
func TestInMonth(t *testing.T) {
	for _, year := range []int{1900, 2000, 2024, 2026} {
		for month := 1; month <= 12; month++ {
			for day := 0; day <= 32; day++ {
				y, m, d := fmt.Sprintf("%04d", year), fmt.Sprintf("%02d", month), fmt.Sprintf("%02d", day)
				_, err := time.Parse(time.DateOnly, y+"-"+m+"-"+d)
				assert.Equal(t, err == nil, inMonth(y, m, d), "%s-%s-%s", y, m, d)
			}
		}
	}
}

func TestEditionDateForms(t *testing.T) {
	for _, form := range []string{"2026-03", "2026-03-31", "2026-12"} {
		assert.True(t, isoDate().MatchString(form), form)
	}
	for _, form := range []string{"", "2026", "21-26", "2026-3", "2026-13", "2026-00", "3/2026", "2026-03-1", "2026-03-31 "} {
		assert.False(t, isoDate().MatchString(form), form)
	}
}
