package lang

import (
	"reflect"
	"testing"
)

func TestFirstTerms(t *testing.T) {
	for _, c := range []struct {
		notation string
		want     []string
	}{
		{`"times"`, []string{`"times"`}},
		{`Name Cnt ("," "join")?`, []string{"Name"}},
		{`("," "join")? Cnt`, []string{`","`, "Cnt"}},
		{`(("rows" | "rounds") "for" Val) | (Cnt "times")`, []string{`"rows"`, `"rounds"`, "Cnt"}},
		{`Bi+`, []string{"Bi"}},
		{`("rest" | Bound | (Cnt ("st")?)) As?`, []string{`"rest"`, "Bound", "Cnt"}},
		{`"`, []string{`"`}},
		{``, nil},
	} {
		if got := firstTerms(c.notation); !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s begins with %q, want %q", c.notation, got, c.want)
		}
	}
}
