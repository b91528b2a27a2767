package standard

import (
	"embed"
	"encoding/csv"
	"fmt"
	"math/big"
	"strings"

	"ovillo/compile/plan"
)

//go:embed data
var data embed.FS

// row is one row of a table, by the name of the column.
type row map[string]string

// table reads a table. The tables are part of the program, so a broken one is a fault of the program.
func table(name string) []row {
	f, err := data.Open("data/" + name)
	if err != nil {
		panic("standard: " + err.Error())
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	records, err := r.ReadAll()
	if err != nil || len(records) == 0 {
		panic(fmt.Sprintf("standard: %s: %v", name, err))
	}
	var out []row
	for _, rec := range records[1:] {
		m := row{}
		for i, column := range records[0] {
			m[column] = rec[i]
		}
		out = append(out, m)
	}
	return out
}

// length reads a figure of a column in a unit; 0 for an empty one.
func (r row) length(column string, unit plan.Length) plan.Length {
	x := r.number(column)
	x.Mul(x, big.NewRat(int64(unit), 1))
	if !x.IsInt() {
		panic(fmt.Sprintf("standard: %s: %q is finer than a micrometre", column, r[column]))
	}
	return plan.Length(x.Num().Int64())
}

// number reads a figure of a column; 0 for an empty one.
func (r row) number(column string) *big.Rat {
	text := strings.TrimSpace(r[column])
	if text == "" {
		return new(big.Rat)
	}
	x, ok := new(big.Rat).SetString(text)
	if !ok {
		panic(fmt.Sprintf("standard: %s: %q is no number", column, text))
	}
	return x
}

func (r row) whole(column string) int { return int(r.number(column).Num().Int64()) }

// read reports whether the row was seen in a source, and not only recalled.
func (r row) read() bool { return r["basis"] == "read" }
