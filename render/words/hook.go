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

// usHooks names hooks as they are marked in the United States, by their size in micrometres.
var usHooks = sync.OnceValue(func() map[plan.Length]string {
	rows, err := csv.NewReader(strings.NewReader(hooksCSV)).ReadAll()
	if err != nil {
		panic("hooks.csv: " + err.Error())
	}
	names := map[plan.Length]string{}
	for _, row := range rows[1:] {
		mm, err := strconv.ParseFloat(row[0], 64)
		if err != nil {
			panic("hooks.csv: " + err.Error())
		}
		names[plan.Length(mm*1000+0.5)] = row[1]
	}
	return names
})

// hook writes a hook's size: 3.75 mm, with the mark of the country where hooks are known by one.
func (l *Language) hook(size plan.Length) string {
	mm := l.millimetres(size)
	if name := usHooks()[size]; name != "" && l.voice.inches() {
		return mm + tie + "(" + name + ")"
	}
	return mm
}

func (l *Language) millimetres(v plan.Length) string {
	return l.Number(float64(v)/float64(plan.Millimetre), 2) + tie + "mm"
}
