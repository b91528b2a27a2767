//go:build unix

package trial

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestNothingOutsideIsRead: whatever name a source gives, and whatever lies in its folder, no file from outside of it is read, nobody waits
// for a pipe, and a device is no picture. What lies outside would do if it were read.
func TestNothingOutsideIsRead(t *testing.T) {
	top := folder(t)
	dir, outside := filepath.Join(top, "set"), filepath.Join(top, "outside")
	photo := read(t, filepath.Join("..", "..", "..", "examples", "jarcia-headband.jpg"))
	for where, names := range map[string]string{outside: "", dir: "in", filepath.Join(dir, "sub"): "sub"} {
		put(t, filepath.Join(where, names+"shared.txt"), "note\n  en | Said by all.\n  es | Lo dicen todos.\nend\n")
		put(t, filepath.Join(where, names+"photo.jpg"), photo)
		put(t, filepath.Join(where, names+"hat.ovillo"), hat(t, "Taller Alba"))
	}
	link := func(to, name string) { require.NoError(t, os.Symlink(to, filepath.Join(dir, name))) }
	for _, name := range []string{"shared.txt", "photo.jpg", "hat.ovillo"} {
		link("../outside/"+name, "out-"+name)
		link(filepath.Join(outside, name), "abs-"+name)
		link("out-"+name, "twice-"+name)
		link("in"+name, "link-"+name)
	}
	link("..", "up")
	link(outside, "away")
	link("/", "root")
	link("sub", "down")
	link("ring", "ring")
	link("/dev/zero", "zero")
	link("/dev/tty", "tty")
	link("/dev/stdin", "stdin")
	require.NoError(t, syscall.Mkfifo(filepath.Join(dir, "pipe"), 0o666))
	link("pipe", "link-pipe")
	s, err := syscall.Socket(syscall.AF_UNIX, syscall.SOCK_STREAM, 0)
	require.NoError(t, err)
	defer syscall.Close(s)
	require.NoError(t, syscall.Bind(s, &syscall.SockaddrUnix{Name: filepath.Join(dir, "socket")}))

	text := hat(t, "Taller Alba")
	for _, kind := range []struct{ what, file string }{{"use", "shared.txt"}, {"photo", "photo.jpg"}, {"book", "hat.ovillo"}} {
		source := func(name string) string {
			switch kind.what {
			case "use":
				return "use \"" + name + "\"\n" + text
			case "photo":
				return strings.Replace(text, "  level ", "  photo \""+name+"\" en \"A hat.\" es \"Un gorro.\"\n  level ", 1)
			}
			return "book set\n  title en \"Set\" es \"Juego\"\n  by \"Taller Alba\"\n  languages en, es\n  pattern \"" + name + "\"\nend\n"
		}
		check := func(name string) ran {
			put(t, filepath.Join(dir, "source.ovillo"), source(name))
			return run(t, dir, "check", "source.ovillo")
		}
		for _, name := range []string{"in" + kind.file, "sub/sub" + kind.file, "./in" + kind.file, "link-" + kind.file, "down/sub" + kind.file} {
			r := check(name)
			assert.Equal(t, 0, r.code, "%s %s: %s", kind.what, name, r.err)
		}
		for _, name := range []string{
			"../outside/" + kind.file, "sub/../../outside/" + kind.file, filepath.Join(outside, kind.file), "/" + kind.file, "out-" + kind.file, "abs-" + kind.file,
			"twice-" + kind.file, "up/outside/" + kind.file, "away/" + kind.file, "root/" + outside + "/" + kind.file, "down/../../outside/" + kind.file,
			"down/../in" + kind.file, `..\\outside\\` + kind.file, "c:" + kind.file, "file://" + outside + "/" + kind.file, "//localhost/" + kind.file, "~/" + kind.file,
			"$HOME/" + kind.file, "in" + kind.file + ".", "in" + kind.file + " ", "in" + kind.file + "::$DATA", "", ".", "sub", "ring", "zero", "tty", "stdin", "pipe", "link-pipe",
			"socket", "/dev/zero", "/dev/stdin", "/proc/self/environ", "nul", "CON.jpg", "https://127.0.0.1:1/" + kind.file, "*.jpg", "-",
		} {
			r := check(name)
			assert.Equal(t, 1, r.code, "%s %q: %s", kind.what, name, r.err)
			assert.Regexp(t, `error\[OV(10[678]|23[0-9]|72[89]|73[01])\]`, r.err, "%s %q", kind.what, name)
		}
	}
}

// TestNamesOfOutputs: what a source calls things never leads a file out of the folder, nor hides one there: no title, no size, no part and no
// chart, however it is called.
func TestNamesOfOutputs(t *testing.T) {
	top := folder(t)
	dir := filepath.Join(top, "a", "b", "set")
	for _, bad := range []string{"../../x", "/tmp/x", `..\..\x`, "c:x", "a/../../x", ".hidden", "con", "x\x00y", "~/x", "$(touch x)", "%2e%2e%2fx"} {
		text := strings.NewReplacer(`"S", "M"`, `"`+strings.ReplaceAll(bad, `\`, `\\`)+`", "M"`, `"P", "M"`, `"`+strings.ReplaceAll(bad, `\`, `\\`)+`", "M"`,
			`"Alba hat"`, `"`+strings.ReplaceAll(bad, `\`, `\\`)+`"`, `"Hat"`, `"`+strings.ReplaceAll(bad, `\`, `\\`)+`"`).Replace(hat(t, "Taller Alba"))
		require.NoError(t, os.RemoveAll(filepath.Join(top, "a")))
		put(t, filepath.Join(dir, "hat.ovillo"), text)
		checked := run(t, dir, "check", "hat.ovillo").code
		for _, args := range [][]string{
			{"build", "hat.ovillo"}, {"build", "hat.ovillo", "--size", bad}, {"build", "hat.ovillo", "--size", bad, "--format", "html"}, {"build", "hat.ovillo", "--format", "text"},
			{"draw", "hat.ovillo", "-o", "."}, {"draw", "hat.ovillo", "--size", bad, "-o", "."}, {"draw", "hat.ovillo", bad}, {"report", "hat.ovillo", "--format", "pdf"},
		} {
			if strings.Contains(bad, "\x00") { // no system hands that over
				args = args[:2]
			}
			r := run(t, dir, args...)
			if checked == 0 && (len(args) < 3 || args[2] != bad) && !strings.Contains(strings.Join(args, " "), "--size") {
				assert.Equal(t, 0, r.code, "%q %v: %s", bad, args, r.err)
			}
		}
		assert.Equal(t, []string{"b"}, names(t, filepath.Join(top, "a")), bad)
		assert.Equal(t, []string{"set"}, names(t, filepath.Join(top, "a", "b")), bad)
		for _, name := range names(t, dir) {
			assert.Regexp(t, `^hat[-.][\pL\pN.-]+$`, name, bad)
		}
	}
}
