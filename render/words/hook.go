package words

import (
	_ "embed"
	"encoding/csv"
	"strconv"
	"strings"
	"sync"

	"ovillo/compile/plan"
)

//go:embed hooks.csv
var hooksCSV string

// hookNames are what a hook is called beside its millimetres; "" where it has no such name.
type hookNames struct{ us, uk string }

// knownHooks names hooks by their size in micrometres: as they are marked in the United States, and by the old numbers of the
// United Kingdom.
var knownHooks = sync.OnceValue(func() map[plan.Length]hookNames {
	rows, err := csv.NewReader(strings.NewReader(hooksCSV)).ReadAll()
	if err != nil {
		panic("hooks.csv: " + err.Error())
	}
	names := map[plan.Length]hookNames{}
	for _, row := range rows[1:] {
		mm, err := strconv.ParseFloat(row[0], 64)
		if err != nil {
			panic("hooks.csv: " + err.Error())
		}
		names[plan.Length(mm*1000+0.5)] = hookNames{row[1], row[2]}
	}
	return names
})

// hook writes a hook's size, with the name it goes by in the country of the reading: 3.75 mm (F-5) in the United States, 4 mm (UK 8,
// US G-6) in the United Kingdom, where hooks of both are in use.
func (l *Language) hook(size plan.Length) string {
	mm, name := l.millimetres(size), knownHooks()[size]
	if text := l.voice.hookName(name.us, name.uk); text != "" {
		return mm + tie + "(" + text + ")"
	}
	return mm
}

func (l *Language) millimetres(v plan.Length) string {
	return l.Number(float64(v)/float64(plan.Millimetre), 2) + tie + "mm"
}
