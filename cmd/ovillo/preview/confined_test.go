//go:build unix

package preview

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
)

// TestOddSources: in a folder that is shown, a pipe and a socket are no sources, a link that leads out of it is not followed, and one that
// stays within is. A pipe that is named is said to be none, and nobody waits for it.
func TestOddSources(t *testing.T) {
	outside := filepath.Join(t.TempDir(), "secret.ovillo")
	require.NoError(t, os.WriteFile(outside, []byte("let secret = 1\nsecret secret\n"), 0o644))
	d := newDesktop(t, map[string]string{"a.ovillo": example(t, "duna-hat.ovillo")}, "a.ovillo")
	d.stop()
	require.NoError(t, syscall.Mkfifo(d.path("pipe.ovillo"), 0o644))
	o := options("en")
	o.Files = []string{d.path("pipe.ovillo")}
	d.start(o)
	v := d.sees(1, "what is wrong", func(v *view) bool { return v.state == gone })
	assert.True(t, strings.HasSuffix(v.why, desk.ErrNotPlain.Error()), v.why)
	d.stop()

	require.NoError(t, os.Symlink(outside, d.path("b.ovillo")))
	require.NoError(t, os.Symlink("a.ovillo", d.path("c.ovillo")))
	require.NoError(t, os.Symlink("/dev/zero", d.path("d.ovillo")))
	assert.Equal(t, []string{"a.ovillo", "b.ovillo", "c.ovillo", "d.ovillo"}, Sources(d.folder))
	o = options("en")
	o.Folders = []string{d.folder}
	d.start(o)
	for id, shown := range map[int]bool{1: true, 2: false, 3: true, 4: false} {
		if shown {
			d.sees(id, "the hat", isFresh)
			continue
		}
		v := d.sees(id, "what is wrong", func(v *view) bool { return v.state == gone })
		assert.Nil(t, v.set)
		assert.Nil(t, v.text)
		assert.True(t, strings.HasSuffix(v.why, desk.ErrLeadsOut.Error()), v.why)
	}
	d.save("e.ovillo", "let e = 1\n")
	d.sees(5, "one more", func(v *view) bool { return v.state != reading })
	require.NoError(t, os.Remove(d.path("e.ovillo")))
	require.NoError(t, os.Symlink(outside, d.path("e.ovillo"))) // it becomes a link while it is shown
	d.sees(5, "what is wrong", func(v *view) bool { return v.state == gone && strings.HasSuffix(v.why, desk.ErrLeadsOut.Error()) })
}
