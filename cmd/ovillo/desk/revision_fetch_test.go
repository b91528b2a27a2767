package desk_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
)

// TestNothingIsFetched: a repository that lacks a file says where it is to be fetched from and by what program. It may be anybody's, so
// nothing is fetched and no such program is run; without our care both would be.
func TestNothingIsFetched(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("the program of this test is a script")
	}
	full := repository(t)
	run := func(env []string, args ...string) ([]byte, error) {
		cmd := exec.Command("git", args...)
		cmd.Env = append(os.Environ(), env...)
		return cmd.Output()
	}
	for _, args := range [][]string{{"config", "uploadpack.allowFilter", "true"}, {"config", "uploadpack.allowAnySHA1InWant", "true"}} {
		_, err := run(nil, append([]string{"-C", full}, args...)...)
		require.NoError(t, err)
	}
	for _, c := range []struct{ name, url string }{
		{"from a folder", "file://" + full}, {"by a program of its own", "ssh://pattern.example/hat"}, {"from the network", "https://127.0.0.1:1/hat"},
	} {
		t.Run(c.name, func(t *testing.T) {
			dir := t.TempDir()
			less, mark, program := filepath.Join(dir, "less"), filepath.Join(dir, "mark"), filepath.Join(dir, "program")
			_, err := run(nil, "clone", "-q", "--filter=blob:none", "file://"+full, less)
			require.NoError(t, err)
			require.NoError(t, os.WriteFile(program, []byte("#!/bin/sh\necho run >>'"+mark+"'\nexit 1\n"), 0o755))
			for _, set := range [][2]string{{"remote.origin.url", c.url}, {"core.sshCommand", program}, {"core.fsmonitor", program}, {"core.pager", program},
				{"credential.helper", program}, {"core.askPass", program}, {"diff.external", program}, {"remote.origin.uploadpack", program}} {
				_, err := run(nil, "-C", less, "config", set[0], set[1])
				require.NoError(t, err)
			}
			r, ok := desk.ReadRevision("git:v1:in/hat.ovillo")
			require.True(t, ok)
			r.Dir = less
			data, err := r.Read(1 << 10)
			assert.Error(t, err)
			assert.Empty(t, data)
			_, err = r.Beside("pictures/hat.jpg")
			assert.Error(t, err)
			assert.NoFileExists(t, mark, "a program of the repository was run")

			// What is there is read all the same.
			r, _ = desk.ReadRevision("git:HEAD:in/hat.ovillo")
			r.Dir = less
			data, err = r.Read(1 << 10)
			assert.NoError(t, err)
			assert.Equal(t, "two", string(data))
			assert.NoFileExists(t, mark)

			if c.name == "by a program of its own" { // the trap works
				_, err := run(nil, "-C", less, "cat-file", "blob", "v1:in/hat.ovillo")
				assert.Error(t, err)
				assert.FileExists(t, mark, "git itself would have run it")
			}
		})
	}
}
