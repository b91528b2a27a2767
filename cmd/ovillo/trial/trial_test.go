package trial

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// command is the command as people have it.
var command string

func TestMain(m *testing.M) { os.Exit(withCommand(m)) }

func withCommand(m *testing.M) int {
	folder, err := os.MkdirTemp("", "trial")
	if err == nil {
		defer os.RemoveAll(folder)
		err = os.Chmod(folder, 0o755) // others run it too
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	command = filepath.Join(folder, "ovillo")
	if out, err := exec.Command("go", "build", "-buildvcs=false", "-o", command, "..").CombinedOutput(); err != nil {
		fmt.Fprintf(os.Stderr, "%s%v\n", out, err)
		return 1
	}
	return m.Run()
}

// patience is how long a command may take that does what it should. One that waits for something takes for ever.
const patience = time.Minute

// ran is what came of a command.
type ran struct {
	out, err string
	code     int // -1: it was killed
}

// run runs the command in a folder until it ends by itself.
func run(t testing.TB, folder string, args ...string) ran {
	t.Helper()
	return finish(t, made(folder, args...))
}

// made is the command, ready to be started in a folder; its messages are English unless it is told otherwise.
func made(folder string, args ...string) *exec.Cmd {
	cmd := exec.Command(command, args...)
	cmd.Dir, cmd.Env = folder, append(os.Environ(), "LC_ALL=en_US.UTF-8")
	return cmd
}

// finish runs a command to its end.
func finish(t testing.TB, cmd *exec.Cmd) ran {
	t.Helper()
	var out, err bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &err
	require.NoError(t, cmd.Start())
	stop := time.AfterFunc(patience, func() { cmd.Process.Kill() })
	defer stop.Stop()
	failure := cmd.Wait()
	var exit *exec.ExitError
	if failure != nil && !errors.As(failure, &exit) {
		t.Fatal(failure)
	}
	r := ran{out.String(), err.String(), cmd.ProcessState.ExitCode()}
	assert.NotContains(t, r.err, "goroutine ", "it crashed")
	assert.NotContains(t, r.err, "internal fault")
	return r
}

// said asserts that a command failed as one does that could not read or write, and what it said.
func (r ran) said(t testing.TB, want string) {
	t.Helper()
	assert.Equal(t, 2, r.code, r.err)
	assert.Contains(t, r.err, want)
}

// folder is a new one that everybody may go into.
func folder(t testing.TB) string {
	t.Helper()
	dir, err := os.MkdirTemp("", "trial")
	require.NoError(t, err)
	t.Cleanup(func() { os.RemoveAll(dir) })
	require.NoError(t, os.Chmod(dir, 0o755))
	return dir
}

func read(t testing.TB, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(data)
}

func put(t testing.TB, path, text string) {
	t.Helper()
	require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
	require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
}

// names are those of what is in a folder.
func names(t testing.TB, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return out
}

// hat is a small pattern in its usual shape, by somebody.
func hat(t testing.TB, by string) string {
	t.Helper()
	text := read(t, filepath.Join("..", "testdata", "hat.ovillo"))
	require.Contains(t, text, "Taller Alba")
	return strings.ReplaceAll(text, "Taller Alba", by)
}

// untidy is a source out of shape, which means the same.
func untidy(source string) string { return strings.ReplaceAll(source, "\n  ", "\n      ") }

// needs skips a test without a tool, and fails it in CI.
func needs(t testing.TB, tool string) {
	t.Helper()
	if _, err := exec.LookPath(tool); err != nil {
		without(t, "needs "+tool)
	}
}

func without(t testing.TB, why string) {
	t.Helper()
	if os.Getenv("CI") != "" {
		t.Fatal(why)
	}
	t.Skip(why)
}
