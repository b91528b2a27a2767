package reading

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
)

// TestUnlikeLanguagesAreSeen: what differs between the languages is found in the file that is written from tampered pages.
func TestUnlikeLanguagesAreSeen(t *testing.T) {
	b := publish(t, whole.Example(t, "marisma-leggings.ovillo"))
	langs := [2]string{"en", "es"}
	for _, u := range whole.Unlike {
		t.Run(u.Name, func(t *testing.T) {
			d := b.composed(t, langs[:]...)
			require.True(t, u.Change(d), "there was nothing to tamper with")
			all := reread(t, d)
			found := b.compare(t, all, all, langs)
			require.NotEmpty(t, found)
			require.Equal(t, u.Kind, found[0].Kind, told(found[0]))
		})
	}
}
