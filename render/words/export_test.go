package words

import (
	"reflect"

	"ovillo/compile/plan"
	"ovillo/lang/terms"
)

// Toy is the toy language, for the tests of those who write pages; InToy gives a pattern texts in it.
func Toy() (*Language, error) {
	table, err := terms.Read(toyTerms)
	if err != nil {
		return nil, err
	}
	column, _ := table.Reading("xx")
	r := &reading{Reading: column}
	return newLanguage(r, newToy), nil
}

// InToy gives every text of the author a version in the toy language.
func InToy(p *plan.Pattern) { inToy(reflect.ValueOf(p)) }
