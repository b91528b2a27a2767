package words

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
)

// The names that are printed are those of the published table (compile/standard/data/hooks.csv, with its sources), as far as its
// rows were seen and not only recalled: no name is missing that a source gives, and none is printed that no source gives.
func TestHookNamesAreThoseOfTheTable(t *testing.T) {
	f, err := os.Open("../../compile/standard/data/hooks.csv")
	require.NoError(t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	at := map[string]int{}
	for i, column := range rows[0] {
		at[column] = i
	}
	want := map[plan.Length]hookNames{}
	for _, row := range rows[1:] {
		mm, err := strconv.ParseFloat(row[at["mm"]], 64)
		require.NoError(t, err)
		us := strings.Trim(row[at["us_letter"]]+"-"+strings.Replace(row[at["us_number"]], " 1/2", "½", 1), "-")
		n := hookNames{us, row[at["uk"]]}
		// Above 10 mm the sources differ in the letters, so the page gives millimetres alone.
		if row[at["kind"]] == "regular" && row[at["basis"]] == "read" && mm <= 10 && n != (hookNames{}) {
			want[plan.Length(mm*1000+0.5)] = n
		}
	}
	require.Greater(t, len(want), 15)
	require.Equal(t, want, knownHooks())
}

// A hook goes by the names of the country of the reading.
func TestHookInEachReading(t *testing.T) {
	for size, want := range map[plan.Length][3]string{
		4000: {"4 mm (G-6)", "4 mm (UK 8, US G-6)", "4 mm"},
		3750: {"3.75 mm (F-5)", "3.75 mm (US F-5)", "3,75 mm"},
		3000: {"3 mm", "3 mm (UK 11)", "3 mm"},
		3600: {"3.6 mm", "3.6 mm", "3,6 mm"},
	} {
		for i, tag := range []string{"en-US", "en-GB", "es"} {
			require.Equal(t, want[i], strings.ReplaceAll(language(t, tag).hook(size), tie, " "), tag)
		}
	}
}
