//go:build linux

package trial

import (
	"bufio"
	"io"
	"net"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// sockets are the calls by which a process has to do with others over a network.
const sockets = "trace=%network"

// talking finds the calls of a trace that reach out, or let somebody in, other than over the loopback interface.
func talking(trace string) (out []string) {
	for line := range strings.SplitSeq(trace, "\n") {
		_, call, _ := strings.Cut(line, " ")
		call = strings.TrimSpace(call)
		switch {
		case call == "" || strings.HasPrefix(call, "+++") || strings.Contains(call, "resumed>"):
		case regexp.MustCompile(`^(socket|setsockopt|getsockopt|getsockname|getpeername|listen|accept4?|shutdown)\(`).MatchString(call) && !strings.Contains(call, "AF_PACKET"):
		case strings.HasPrefix(call, "bind(") && (strings.Contains(call, `"127.0.0.1"`) || strings.Contains(call, `"::1"`) || strings.Contains(call, `"::ffff:127.0.0.1"`)):
		default:
			out = append(out, call)
		}
	}
	return out
}

// TestTalkingIsSeen: what is looked for in traces would be found.
func TestTalkingIsSeen(t *testing.T) {
	for _, call := range []string{
		`connect(3, {sa_family=AF_INET, sin_port=htons(53), sin_addr=inet_addr("127.0.0.53")}, 16) = 0`, `connect(3, {sa_family=AF_UNIX, sun_path="/run/nscd/socket"}, 110) = 0`,
		`bind(5, {sa_family=AF_INET, sin_port=htons(0), sin_addr=inet_addr("0.0.0.0")}, 16) = 0`, `sendto(3, "x", 1, 0, NULL, 0) = 1`, `bind(5, {sa_family=AF_INET6, inet_pton(AF_INET6, "::", &sin6_addr)}, 28) = 0`,
	} {
		assert.Equal(t, []string{call}, talking("123 "+call+"\n123 +++ exited with 0 +++\n"))
	}
}

// TestNoNetwork runs every command over the examples, and asks the system what it has to do with a network: nothing at all.
func TestNoNetwork(t *testing.T) {
	root, err := filepath.Abs(filepath.Join("..", "..", ".."))
	require.NoError(t, err)
	dir := folder(t)
	require.NoError(t, os.CopyFS(filepath.Join(dir, "examples"), os.DirFS(filepath.Join(root, "examples"))))
	desk(t, dir)
	lines := [][]string{
		{"help"}, {"version"}, {"manual"}, {"schema"}, {"explain", "OV302"}, {"completion", "bash"}, {"__complete", "draw", "hat.ovillo", ""}, {"lsp"},
		{"check", "examples/**/*.ovillo", "--json"}, {"counts", "hat.ovillo"}, {"sizes", "hat.ovillo", "--csv"}, {"fmt", "-d", "examples/*.ovillo"},
		{"build", "examples/bahia/bahia-set.ovillo"}, {"build", "examples/jarcia-headband.ovillo"}, {"build", "hat.ovillo", "--archive", "--edition", "left"},
		{"draw", "examples/jarcia-headband.ovillo", "-o", "."}, {"report", "examples/jarcia-headband.ovillo"}, {"changes", "git:HEAD:hat.ovillo", "hat.ovillo"},
	}
	for _, w := range writers {
		lines = append(lines, w.args)
	}
	var run []string
	for _, args := range lines {
		log := filepath.Join(folder(t), "calls")
		r := finish(t, traced(t, dir, []string{"-o", log, "-e", sockets}, args...))
		assert.NotContains(t, r.err, "cannot read examples")
		assert.Empty(t, strings.TrimSpace(read(t, log)), "%v", args)
		run = append(run, args[0])
	}
	r := finish(t, made(dir, "help"))
	commands := regexp.MustCompile(`(?m)^ +ovillo ([a-z]+) .*  `).FindAllStringSubmatch(r.out, -1)
	require.Greater(t, len(commands), 12, r.out)
	for _, c := range commands {
		if c[1] != "preview" { // see TestPreviewIsAlone
			assert.Contains(t, run, c[1], "a command that nobody tried")
		}
	}
}

// TestPreviewIsAlone: the preview listens on the loopback interface, under one address of it and no other, asks nobody for anything, and opens
// no file outside of the folder that it shows but those that every program reads of the system.
func TestPreviewIsAlone(t *testing.T) {
	needs(t, "strace")
	top := folder(t)
	dir := filepath.Join(top, "set")
	put(t, filepath.Join(top, "secret.ovillo"), hat(t, "Secret"))
	put(t, filepath.Join(dir, "hat.ovillo"), hat(t, "Taller Alba"))
	put(t, filepath.Join(dir, "uses.ovillo"), "use \"../secret.ovillo\"\nuse \"link.txt\"\n"+hat(t, "Taller Alba"))
	require.NoError(t, os.Symlink("../secret.ovillo", filepath.Join(dir, "link.txt")))
	require.NoError(t, os.Symlink("../secret.ovillo", filepath.Join(dir, "link.ovillo")))
	log := filepath.Join(folder(t), "calls")
	cmd := traced(t, dir, []string{"-o", log, "-e", sockets + ",open,openat,openat2,execve,readlinkat"}, "preview", ".")
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	defer syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL)
	address, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err)
	address = strings.TrimSpace(address)
	require.Regexp(t, `^http://127\.0\.0\.1:[0-9]+/[a-z2-7]{26}/$`, address)

	client := &http.Client{Timeout: patience}
	asked := func(path string) string {
		r, err := client.Get(address + path)
		if err != nil {
			return ""
		}
		defer r.Body.Close()
		text, _ := io.ReadAll(io.LimitReader(r.Body, 1<<20))
		return string(text)
	}
	assert.Contains(t, asked(""), "<html")
	deadline := time.Now().Add(patience)
	for !strings.Contains(asked("file/1/counts"), "<table") || !strings.Contains(read(t, log), `"uses.ovillo"`) || !strings.Contains(read(t, log), `"link.txt"`) {
		require.True(t, time.Now().Before(deadline), "not all is read and shown")
		time.Sleep(20 * time.Millisecond)
	}
	assert.Contains(t, asked("file/1/pdf/hat.pdf"), "%PDF-")
	of, err := url.Parse(address)
	require.NoError(t, err)
	others := []string{"127.0.0.2", "::1"}
	addresses, err := net.InterfaceAddrs()
	require.NoError(t, err)
	for _, a := range addresses {
		if ip, ok := a.(*net.IPNet); ok && !ip.IP.IsLoopback() {
			others = append(others, ip.IP.String())
		}
	}
	for _, other := range others {
		if c, err := net.DialTimeout("tcp", net.JoinHostPort(other, of.Port()), 2*time.Second); err == nil {
			c.Close()
			t.Errorf("it answers at %s", other)
		}
	}
	syscall.Kill(-cmd.Process.Pid, syscall.SIGTERM)
	cmd.Wait()

	var network, files []string
	for line := range strings.SplitSeq(read(t, log), "\n") {
		switch {
		case strings.Contains(line, " open"):
			if m := regexp.MustCompile(`open\w*\(([^,]*), "([^"]*)".* = [0-9]+$`).FindStringSubmatch(line); m != nil {
				files = append(files, m[2])
			}
		case strings.Contains(line, " execve("), strings.Contains(line, " readlinkat("):
		default:
			network = append(network, line)
		}
	}
	assert.Empty(t, talking(strings.Join(network, "\n")))
	listens := slices.DeleteFunc(slices.Clone(network), func(line string) bool { return !strings.Contains(line, " listen(") })
	assert.Len(t, listens, 1)
	require.Contains(t, files, filepath.Join(dir))
	for _, name := range files {
		switch {
		case name == dir || strings.HasPrefix(name, dir+"/"):
			assert.NotContains(t, name, "link", "a link that leads out was opened")
		case strings.HasPrefix(name, "/proc/"), strings.HasPrefix(name, "/sys/"), name == "/dev/null", name == "/dev/urandom", name == "/etc/localtime", strings.HasPrefix(name, "/etc/ld.so"),
			strings.HasPrefix(name, "/lib"), strings.HasPrefix(name, "/usr/lib/"):
		case name == ".", name == "hat.ovillo", name == "uses.ovillo": // in the folder that was opened
		default:
			t.Errorf("it opens %s", name)
		}
	}
}
