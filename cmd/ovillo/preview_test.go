package main

import (
	"bufio"
	"bytes"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// previewing runs the preview of a hat as a program of its own and returns its address.
func previewing(t *testing.T, args ...string) (run *exec.Cmd, address string, said *bytes.Buffer) {
	t.Helper()
	hat, err := os.ReadFile(filepath.Join("testdata", "hat.ovillo"))
	require.NoError(t, err)
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "hat.ovillo"), hat, 0o644))
	run = exec.Command("ovillo", append([]string{"preview", "hat.ovillo"}, args...)...)
	run.Dir, said = dir, &bytes.Buffer{}
	run.Stderr = said
	out, err := run.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, run.Start())
	t.Cleanup(func() { run.Process.Kill() })
	line, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err, said)
	return run, strings.TrimSpace(line), said
}

// TestPreviewStops: a signal ends the preview at once and without a word, with a browser listening, and the exit code is that of success.
func TestPreviewStops(t *testing.T) {
	for _, signal := range []os.Signal{os.Interrupt, syscall.SIGTERM} {
		t.Run(signal.String(), func(t *testing.T) {
			t.Parallel()
			run, address, said := previewing(t)
			answer, err := http.Get(address + "events")
			require.NoError(t, err)
			defer answer.Body.Close()
			require.NoError(t, run.Process.Signal(signal))
			require.NoError(t, run.Wait())
			assert.Empty(t, said.String())
			_, err = io.Copy(io.Discard, answer.Body)
			assert.NoError(t, err, "the stream was cut off")
			_, err = net.Dial("tcp", strings.Split(strings.TrimPrefix(address, "http://"), "/")[0])
			assert.ErrorIs(t, err, syscall.ECONNREFUSED)
			left, err := os.ReadDir(run.Dir)
			require.NoError(t, err)
			assert.Len(t, left, 1, "something was written")
		})
	}
}

// TestPreviewListensHereOnly: another address of this machine than the loopback interface's gets no connection.
func TestPreviewListensHereOnly(t *testing.T) {
	_, address, _ := previewing(t)
	_, port, err := net.SplitHostPort(strings.Split(strings.TrimPrefix(address, "http://"), "/")[0])
	require.NoError(t, err)
	others, tried := []string{"127.0.0.2"}, 0
	all, err := net.InterfaceAddrs()
	require.NoError(t, err)
	for _, a := range all {
		if ip, ok := a.(*net.IPNet); ok && ip.IP.To4() != nil && !ip.IP.IsLoopback() {
			others = append(others, ip.IP.String())
		}
	}
	for _, host := range others {
		c, err := net.DialTimeout("tcp", net.JoinHostPort(host, port), 2*time.Second)
		if assert.Error(t, err, host) {
			tried++
			continue
		}
		c.Close()
	}
	assert.Positive(t, tried)
}

// TestPreviewRefuses: what cannot be previewed is said before anything is served.
func TestPreviewRefuses(t *testing.T) {
	taken, err := net.Listen("tcp4", "127.0.0.1:0")
	require.NoError(t, err)
	defer taken.Close()
	_, port, err := net.SplitHostPort(taken.Addr().String())
	require.NoError(t, err)
	if n, err := strconv.Atoi(port); err != nil || n < leastPort {
		t.Fatal("an odd port ", port)
	}
	hat, empty := filepath.Join("testdata", "hat.ovillo"), t.TempDir()
	for _, c := range []struct{ args, want string }{
		{hat + " --port " + port, "port " + port + " is taken"},
		{hat + " --port 80", "from 1024 to 65535"},
		{hat + " --port 8080.5", "from 1024 to 65535"},
		{hat + " --edition large --paper phone", "do not go together"},
		{"none.ovillo", "it does not exist"},
		{"-", "standard input"},
		{empty, "no pattern"},
		{"", "a source is needed"},
	} {
		var out, said bytes.Buffer
		code := run(append([]string{"preview", "--messages", "en"}, strings.Fields(c.args)...), strings.NewReader(""), &out, &said)
		assert.Equal(t, failed, code, c.args)
		assert.Contains(t, said.String(), c.want)
		assert.Empty(t, out.String(), c.args)
	}
}
