package desk_test

import (
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
)

// repository makes a real repository in a new folder: two revisions of a pattern with a photograph beside it, the first tagged.
func repository(t *testing.T) string {
	t.Helper()
	if _, err := exec.LookPath("git"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("git is not installed")
		}
		t.Skip("git is not installed")
	}
	dir := t.TempDir()
	git := func(args ...string) {
		cmd := exec.Command("git", append([]string{"-c", "user.name=a", "-c", "user.email=a@b", "-c", "commit.gpgsign=false", "-c", "tag.gpgsign=false"}, args...)...)
		cmd.Dir = dir
		out, err := cmd.CombinedOutput()
		require.NoError(t, err, "git %v: %s", args, out)
	}
	write := func(name, text string) {
		p := filepath.Join(dir, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(p), 0o777))
		require.NoError(t, os.WriteFile(p, []byte(text), 0o666))
	}
	git("init", "-q")
	write("in/hat.ovillo", "one")
	write("in/pictures/hat.jpg", "a picture")
	write("secret", "not of the pattern")
	git("add", ".")
	git("commit", "-qm", "one")
	git("tag", "v1")
	write("in/hat.ovillo", "two")
	write("in/pictures/hat.jpg", "another picture")
	git("commit", "-qam", "two")
	write("in/hat.ovillo", "on the desk")
	return dir
}

func TestRevision(t *testing.T) {
	dir := repository(t)
	read := func(in, word string) (string, error) {
		r, ok := desk.ReadRevision(word)
		require.True(t, ok, word)
		r.Dir = in
		data, err := r.Read(1 << 10)
		return string(data), err
	}
	in := filepath.Join(dir, "in")
	for _, c := range []struct {
		dir, word, want string
		err             error
	}{
		{dir, "git:v1:in/hat.ovillo", "one", nil},
		{dir, "git:HEAD:in/hat.ovillo", "two", nil},
		{dir, "git:HEAD~1:./in/hat.ovillo", "one", nil},
		{in, "git:v1:hat.ovillo", "one", nil},
		{in, "git:v1:../in/hat.ovillo", "one", nil},
		{dir, "git:v9:in/hat.ovillo", "", desk.ErrNoRevision},
		{dir, "git:v1:in/other.ovillo", "", fs.ErrNotExist},
		{in, "git:v1:in/hat.ovillo", "", fs.ErrNotExist},
		{dir, "git:v1:in", "", desk.ErrFolder},
		{t.TempDir(), "git:v1:hat.ovillo", "", desk.ErrNoRepository},
	} {
		got, err := read(c.dir, c.word)
		require.ErrorIs(t, err, c.err, c.word)
		require.Equal(t, c.want, got, c.word)
	}
	r, _ := desk.ReadRevision("git:v1:in/hat.ovillo")
	r.Dir = dir
	data, err := r.Read(2)
	require.NoError(t, err)
	require.Len(t, data, 3, "one byte more than may be read tells that it is too large")
}

// What a source names is read at the same revision, in its folder and nowhere else.
func TestRevisionBeside(t *testing.T) {
	r, _ := desk.ReadRevision("git:v1:in/hat.ovillo")
	r.Dir = repository(t)
	data, err := r.Beside("pictures/hat.jpg")
	require.NoError(t, err)
	require.Equal(t, "a picture", string(data))
	for _, name := range []string{"../secret", "/secret", "pictures/../../secret", "", ".."} {
		_, err := r.Beside(name)
		require.Error(t, err, name)
	}
}

func TestReadRevision(t *testing.T) {
	for _, word := range []string{"hat.ovillo", "git:", "git:v1", "git::hat", "git:v1:", "git:--output=x:hat", "git:-x:hat", "git:v1:/etc/passwd",
		"git:v1:in/", "git:v\n1:hat", "git:v1:h\x00at", `C:\hat.ovillo`} {
		_, ok := desk.ReadRevision(word)
		require.False(t, ok, word)
	}
	r, ok := desk.ReadRevision("git:HEAD@{yesterday}:a:b.ovillo")
	require.True(t, ok)
	require.Equal(t, desk.Revision{Rev: "HEAD@{yesterday}", Path: "a:b.ovillo"}, r)
	require.Equal(t, "git:HEAD@{yesterday}:a:b.ovillo", r.String())
}

// Whatever is read, git can take it for nothing but a revision and a path, and it says itself again.
func FuzzReadRevision(f *testing.F) {
	for _, word := range []string{"git:v1:hat.ovillo", "git:HEAD~1:a/../b", "git:-x:y", "git:a:b:c", "git:a: "} {
		f.Add(word)
	}
	f.Fuzz(func(t *testing.T, word string) {
		r, ok := desk.ReadRevision(word)
		if !ok {
			return
		}
		if strings.HasPrefix(r.Rev, "-") || strings.ContainsAny(r.Rev, ":\x00\n") || r.Rev == "" {
			t.Fatalf("the revision %q of %q", r.Rev, word)
		}
		if path.IsAbs(r.Path) || r.Path == "" || strings.ContainsAny(r.Path, "\x00\n") {
			t.Fatalf("the path %q of %q", r.Path, word)
		}
		again, ok := desk.ReadRevision(r.String())
		if !ok || again != r {
			t.Fatalf("%q is read as %+v and that as %+v", word, r, again)
		}
	})
}
