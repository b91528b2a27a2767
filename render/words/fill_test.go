package words

import "testing"

// TestVerbatim: what the author writes never becomes a place of a template, or a tie.
func TestVerbatim(t *testing.T) {
	for _, name := range []string{"sand", "{}", "{{}", "a {} b~c {} ~", "~", "{x}"} {
		if got, want := fill("Join "+verbatim(name)+" in~{}.", "st").String(), "Join "+name+" in"+tie+"st."; got != want {
			t.Errorf("%q: %q, want %q", name, got, want)
		}
	}
}
