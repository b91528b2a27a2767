package save

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func put(t *testing.T, path, text string) {
	t.Helper()
	require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
}

func holds(t *testing.T, path, want string) {
	t.Helper()
	got, err := os.ReadFile(path)
	if assert.NoError(t, err) {
		assert.Equal(t, want, string(got), path)
	}
}

// only asserts what is in a folder, and nothing else.
func only(t *testing.T, dir string, want ...string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	got := []string{}
	for _, e := range entries {
		got = append(got, e.Name())
	}
	assert.ElementsMatch(t, append([]string{}, want...), got)
}

func TestOutput(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "hat.pdf")
	for _, text := range []string{"first", "second, longer", ""} {
		require.NoError(t, Output(path, []byte(text)))
		holds(t, path, text)
	}
	require.NoError(t, os.Chmod(path, 0o604))
	require.NoError(t, Output(path, []byte("third")))
	info, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, fs.FileMode(0o604), info.Mode().Perm())
	only(t, dir, "hat.pdf")
}

// TestKept: what is not to be replaced is kept as it is, the error says why, and nothing is left behind.
func TestKept(t *testing.T) {
	dir := t.TempDir()
	at := func(name string) string { return filepath.Join(dir, name) }
	put(t, at("plain"), "kept")
	put(t, at("shut"), "kept")
	require.NoError(t, os.Chmod(at("shut"), 0o444))
	require.NoError(t, os.Symlink("plain", at("link")))
	require.NoError(t, os.Symlink("nowhere", at("loose")))
	require.NoError(t, os.Mkdir(at("folder"), 0o755))
	for name, want := range map[string]error{"link": ErrLink, "loose": ErrLink, "folder": ErrFolder, "shut": ErrReadOnly, "gone/a": fs.ErrNotExist} {
		assert.ErrorIs(t, Output(at(name), []byte("new")), want, name)
		assert.ErrorIs(t, Source(at(name), []byte("kept"), []byte("new")), want, name)
	}
	for _, name := range []string{"plain", "shut", "link", "loose", "folder"} {
		assert.ErrorIs(t, New(at(name), []byte("new")), fs.ErrExist, name)
	}
	assert.ErrorIs(t, Output(os.DevNull, []byte("new")), ErrNotPlain)
	assert.Error(t, Output(at("plain/a"), []byte("new")))
	holds(t, at("plain"), "kept")
	holds(t, at("shut"), "kept")
	only(t, dir, "plain", "shut", "link", "loose", "folder")
}

// TestSource: a source is written anew if it still is what was read, or is already what it is to become.
func TestSource(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "hat.ovillo")
	put(t, path, "old")
	require.NoError(t, Source(path, []byte("old"), []byte("new")))
	holds(t, path, "new")
	require.NoError(t, Source(path, []byte("old"), []byte("new")), "somebody did the same")
	assert.ErrorIs(t, Source(path, []byte("old"), []byte("newest")), ErrChanged)
	holds(t, path, "new")

	twin := filepath.Join(dir, "twin.ovillo")
	require.NoError(t, os.Link(path, twin))
	assert.ErrorIs(t, Source(path, []byte("new"), []byte("newest")), ErrTwoNames)
	holds(t, twin, "new")
	require.NoError(t, Output(path, []byte("made anew")), "what is made anew may leave a copy of it as it was")
	holds(t, path, "made anew")
	holds(t, twin, "new")

	require.NoError(t, os.Remove(path))
	assert.ErrorIs(t, Source(path, []byte("new"), []byte("newest")), fs.ErrNotExist)
	only(t, dir, "twin.ovillo")
}

func TestNew(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "hat.ovillo")
	require.NoError(t, New(path, []byte("text")))
	holds(t, path, "text")
	assert.ErrorIs(t, New(path, []byte("other")), fs.ErrExist)
	holds(t, path, "text")

	// As on a disk without links.
	from, to := filepath.Join(dir, "from"), filepath.Join(dir, "to")
	put(t, from, "text")
	require.NoError(t, claim(from, to))
	holds(t, to, "text")
	put(t, from, "other")
	assert.ErrorIs(t, claim(from, to), fs.ErrExist)
	holds(t, to, "text")
	assert.Error(t, claim(filepath.Join(dir, "gone"), filepath.Join(dir, "new")))
	only(t, dir, "hat.ovillo", "from", "to")
}

// TestLongNames: a name as long as the disk takes can be written, and one that is longer leaves nothing behind.
func TestLongNames(t *testing.T) {
	dir := t.TempDir()
	long := strings.Repeat("ñ", 125) + ".pdf"
	for range 2 {
		require.NoError(t, Output(filepath.Join(dir, long), []byte("text")))
	}
	assert.Error(t, Output(filepath.Join(dir, long+long), []byte("text")))
	only(t, dir, long)
}

// TestLeftovers: what a killed process left is taken away by the next who writes the same file, once it is old, and nothing else is.
func TestLeftovers(t *testing.T) {
	dir := t.TempDir()
	at := func(name string) string { return filepath.Join(dir, name) }
	long := strings.Repeat("x", 200)
	old := time.Now().Add(-2 * time.Hour)
	kept := []string{".hat.pdf.abcdefgh.part", ".hat.ovillo.abcdefgz.part", ".hat.pdf.abc.part", ".hat.pdf.ABCDEFGH.part", ".hat.pdf.abcdefgh", "hat.pdf.abcdefgh.part",
		".hat.pdf.abcd.efg.part"}
	gone := []string{".hat.pdf.abcdefg2.part", ".hat.pdf.22222222.part", partsOf(long) + "abcdefgh.part"}
	for _, name := range append(kept, gone...) {
		put(t, at(name), "half a fi")
		if name != kept[0] { // that one is being written just now
			require.NoError(t, os.Chtimes(at(name), old, old))
		}
	}
	require.NoError(t, os.Mkdir(at(".hat.pdf.abcdefg3.part"), 0o755))
	require.NoError(t, os.Chtimes(at(".hat.pdf.abcdefg3.part"), old, old))
	require.NoError(t, Output(at("hat.pdf"), []byte("whole")))
	require.NoError(t, Output(at(long), []byte("whole")))
	only(t, dir, append(kept, "hat.pdf", long, ".hat.pdf.abcdefg3.part")...)
}

// TestPartNames: the names of new files are known again, whatever the name they are for.
func TestPartNames(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"hat.pdf", "a", ".hidden", strings.Repeat("é", 120), "a b.ovillo", "-o", "*.pdf"} {
		path := filepath.Join(dir, name)
		f, err := fresh(path, 0o666)
		require.NoError(t, err)
		f.Close()
		base := filepath.Base(f.Name())
		assert.True(t, isPart(base, path), base)
		assert.False(t, isPart(base, filepath.Join(dir, "other")), base)
		assert.True(t, strings.HasPrefix(base, ".") && filepath.Ext(base) == ".part", base)
	}
}

// TestSwapped: what comes to stand in the way while the new file is written is kept.
func TestSwapped(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "hat.ovillo")
	put(t, path, "old")
	err := replace(path, []byte("new"), func(fs.FileInfo) error { return errors.New("no") })
	assert.EqualError(t, err, "no")
	holds(t, path, "old")
	only(t, dir, "hat.ovillo")
}
