//go:build unix

package bounds

import (
	"bufio"
	"bytes"
	"encoding/binary"
	"encoding/json"
	"fmt"
	"hash/crc32"
	"math/rand/v2"
	"net/http"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"ovillo/lang"
)

var command string

func TestMain(m *testing.M) { os.Exit(withCommand(m)) }

func withCommand(m *testing.M) int {
	if os.Getenv(measuring) != "" {
		return measure(os.Args[1:])
	}
	folder, err := os.MkdirTemp("", "bounds")
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	defer os.RemoveAll(folder)
	command = filepath.Join(folder, "ovillo")
	if out, err := exec.Command("go", "build", "-buildvcs=false", "-o", command, "..").CombinedOutput(); err != nil {
		fmt.Fprintf(os.Stderr, "%s%v\n", out, err)
		return 1
	}
	return m.Run()
}

// The most that the command may take for a source that is no pattern. The aim is two seconds and 300 MB, and what was measured is
// logged. A busy machine is slow, even by the time of its processor, so that the test asks only that nothing grows with the square of a
// length, which would be minutes. One that hangs is killed after patience.
const (
	mostTime   = 15 * time.Second // of the processor
	mostMemory = 300 << 20
	patience   = 2 * time.Minute
)

// spent is what a command took.
type spent struct {
	Code   int // -1: it was killed
	CPU    time.Duration
	Memory int64 // bytes at its peak
	said   string
}

// measuring is the name in the environment under which this program runs a command and says what it took. The peak of a process begins
// with that of the one that starts it, and the tests hold large files; a program that holds nothing stands between.
const measuring = "OVILLO_MEASURING"

// measure runs a command and writes what it took to a file that is open already.
func measure(args []string) int {
	cmd := exec.Command(args[0], args[1:]...)
	cmd.Stdin, cmd.Stdout, cmd.Stderr = os.Stdin, os.Stdout, os.Stderr
	told := make(chan os.Signal, 1)
	signal.Notify(told, os.Interrupt)
	if err := cmd.Start(); err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	go func() {
		<-told
		_ = cmd.Process.Signal(os.Interrupt)
	}()
	stop := time.AfterFunc(patience, func() { cmd.Process.Kill() })
	defer stop.Stop()
	_ = cmd.Wait()
	s := spent{Code: cmd.ProcessState.ExitCode(), CPU: cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime(), Memory: peak(cmd.ProcessState.SysUsage().(*syscall.Rusage))}
	if err := json.NewEncoder(os.NewFile(3, "measured")).Encode(s); err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	return 0
}

// measured is the command, run by a program that measures it; finished says what it took once that has ended.
func measured(t *testing.T, args ...string) (cmd *exec.Cmd, finished func() spent) {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	in, out, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	cmd = exec.Command(self, append([]string{command}, args...)...)
	cmd.Env = append(os.Environ(), "LC_ALL=en_US.UTF-8", measuring+"=1")
	cmd.ExtraFiles = []*os.File{out}
	return cmd, func() spent {
		out.Close()
		defer in.Close()
		s := spent{Code: -1}
		if err := json.NewDecoder(in).Decode(&s); err != nil {
			t.Errorf("ovillo %s was not measured: %v", args[0], err)
		}
		return s
	}
}

// run runs the command to its end.
func run(t *testing.T, stdin []byte, args ...string) spent {
	t.Helper()
	cmd, finished := measured(t, args...)
	cmd.Stdin = bytes.NewReader(stdin)
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &out
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	_ = cmd.Wait()
	s := finished()
	s.said = out.String()
	return s
}

// peak is the largest memory of a process in bytes. macOS counts in bytes, others in kilobytes.
func peak(use *syscall.Rusage) int64 {
	if runtime.GOOS == "darwin" {
		return int64(use.Maxrss)
	}
	return int64(use.Maxrss) << 10
}

// worst is the most that any command took.
var worst = struct {
	sync.Mutex
	cpu    time.Duration
	memory int64
	what   [2]string
}{}

// noted keeps the most that any command took, and prints it.
func (s spent) noted(t *testing.T, what string) {
	t.Helper()
	worst.Lock()
	defer worst.Unlock()
	if s.CPU > worst.cpu {
		worst.cpu, worst.what[0] = s.CPU, what
		t.Logf("so far the most time, %v: %s", s.CPU, what)
	}
	if s.Memory > worst.memory {
		worst.memory, worst.what[1] = s.Memory, what
		t.Logf("so far the most memory, %d MB: %s", s.Memory>>20, what)
	}
}

// within fails where a command took too much, panicked or was killed.
func (s spent) within(t *testing.T, what string) {
	t.Helper()
	s.noted(t, what)
	if s.Code < 0 || s.Code > 2 || s.CPU > mostTime || s.Memory > mostMemory {
		t.Errorf("%s: exit code %d after %v, %d MB", what, s.Code, s.CPU, s.Memory>>20)
	}
	if strings.Contains(s.said, "goroutine ") || strings.Contains(s.said, "internal fault") {
		t.Errorf("%s: it panics: %.400s", what, s.said)
	}
}

// hostile are files that are no pattern, by what they hold.
var hostile = map[string]func(size int) []byte{
	"noise":   func(size int) []byte { return drawn(size, "") },
	"letters": func(size int) []byte { return drawn(size, " \n\tabcdeno()[],:=\"|#12345.%{}") },
	"nothing": func(int) []byte { return nil },

	"brackets": repeated("("), "square brackets": repeated("["), "line ends": repeated("\n"), "blanks": repeated(" "), "one word": repeated("a"),
	"one number": repeated("9"), "one row": repeated("dc in next, "), "quotation marks": repeated(`"`), "bars": repeated("| a\n"), "zeros": repeated("\x00"),
	"ends": repeated("end\n"), "parts": repeated("part a\n"), "repeats": repeated("repeat 2 times\n"), "marks": repeated("a\u0303"), "rounds": repeated("round: dc in each\n"),
}

func repeated(unit string) func(int) []byte {
	return func(size int) []byte { return bytes.Repeat([]byte(unit), size/len(unit)) }
}

// drawn is a text of letters at random; any bytes where none are given.
func drawn(size int, letters string) []byte {
	random := rand.New(rand.NewPCG(5, 6))
	data := make([]byte, size)
	for i := range data {
		if data[i] = byte(random.Uint32()); letters != "" {
			data[i] = letters[random.IntN(len(letters))]
		}
	}
	return data
}

// TestTenMegabytes: files that are no pattern, of ten megabytes and as large as a source may be, are refused in a moment by every command
// that reads a source, from a file and from the standard input.
func TestTenMegabytes(t *testing.T) {
	dir := t.TempDir()
	for name, file := range hostile {
		for _, large := range []int{10 << 20, lang.MostBytes} {
			text, size := file(large), fmt.Sprint(large>>20, " MB")
			path := filepath.Join(dir, "hostile.ovillo")
			put(t, path, text)
			commands := [][]string{{"check", path}, {"check", "-"}, {"build", "-o", filepath.Join(dir, "x.pdf"), path}, {"fmt", "-"}}
			if large == lang.MostBytes {
				commands = append(commands, []string{"check", "--json", "-"}, []string{"fmt", "-d", path})
			}
			for _, args := range commands {
				s := run(t, text, args...)
				s.within(t, fmt.Sprintf("%s %s: ovillo %s", size, name, strings.Join(args, " ")))
				if args[0] != "fmt" && s.Code != 1 {
					t.Errorf("%s %s: ovillo %s ends with %d: %.200s", size, name, strings.Join(args, " "), s.Code, s.said)
				}
			}
			if left, _ := os.ReadDir(dir); len(left) != 1 {
				t.Fatalf("%s %s leaves %v", size, name, left)
			}
			if now, _ := os.ReadFile(path); !bytes.Equal(now, text) {
				t.Fatalf("%s %s was changed", size, name)
			}
		}
	}
}

func put(t *testing.T, path string, data []byte) {
	t.Helper()
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
}

// TestTenMegabytesInAnEditor: the language server is given such a file, says what it found and answers on.
func TestTenMegabytesInAnEditor(t *testing.T) {
	for name, file := range hostile {
		if name == "noise" {
			continue // no editor sends what is no text
		}
		data := file(10 << 20)
		var in bytes.Buffer
		send := func(m map[string]any) {
			m["jsonrpc"] = "2.0"
			body, err := json.Marshal(m)
			if err != nil {
				t.Fatal(err)
			}
			fmt.Fprintf(&in, "Content-Length: %d\r\n\r\n%s", len(body), body)
		}
		document := map[string]any{"uri": "file:///hostile.ovillo", "languageId": "ovillo", "version": 1, "text": string(data)}
		send(map[string]any{"id": 1, "method": "initialize", "params": map[string]any{"capabilities": map[string]any{}}})
		send(map[string]any{"method": "initialized", "params": map[string]any{}})
		send(map[string]any{"method": "textDocument/didOpen", "params": map[string]any{"textDocument": document}})
		at := map[string]any{"textDocument": map[string]any{"uri": "file:///hostile.ovillo"}, "position": map[string]any{"line": 0, "character": 3}}
		send(map[string]any{"id": 2, "method": "textDocument/hover", "params": at})
		send(map[string]any{"id": 3, "method": "textDocument/completion", "params": at})
		send(map[string]any{"id": 4, "method": "shutdown"})
		send(map[string]any{"method": "exit"})
		s := run(t, in.Bytes(), "lsp")
		s.within(t, name+": ovillo lsp")
		if s.Code != 0 || !strings.Contains(s.said, `"id":4`) {
			t.Errorf("%s: the server ends with %d and has said %.200q", name, s.Code, s.said)
		}
	}
}

// TestTenMegabytesInThePreview: the preview is given such a file, shows what was found and ends when it is told to.
func TestTenMegabytesInThePreview(t *testing.T) {
	for name, file := range hostile {
		data := file(10 << 20)
		path := filepath.Join(t.TempDir(), "hostile.ovillo")
		put(t, path, data)
		cmd, finished := measured(t, "preview", path)
		var said bytes.Buffer
		cmd.Stderr = &said
		out, err := cmd.StdoutPipe()
		if err == nil {
			err = cmd.Start()
		}
		if err != nil {
			t.Fatal(err)
		}
		address, err := bufio.NewReader(out).ReadString('\n')
		if err != nil {
			t.Errorf("%s: the preview says no address: %s", name, said.String())
		} else if shown := events(strings.TrimSpace(address)+"events", "OV"); !strings.Contains(shown, "OV") {
			t.Errorf("%s: the preview shows %.400q", name, shown)
		}
		_ = cmd.Process.Signal(os.Interrupt)
		_ = cmd.Wait()
		s := finished()
		s.said = said.String()
		if s.within(t, name+": ovillo preview"); s.Code != 0 {
			t.Errorf("%s: the preview ends with %d: %.300s", name, s.Code, s.said)
		}
	}
}

// events is what a page is told, up to a word.
func events(address, until string) string {
	answer, err := http.Get(address)
	if err != nil {
		return err.Error()
	}
	defer answer.Body.Close()
	var told strings.Builder
	for buffer := make([]byte, 4096); !strings.Contains(told.String(), until); {
		n, err := answer.Body.Read(buffer)
		if told.Write(buffer[:n]); err != nil {
			break
		}
	}
	return told.String()
}

// A source that asks for more than anybody could work is refused at once.
func TestEndless(t *testing.T) {
	const head = "pattern p\n  title en \"T\" es \"T\"\n  terms us\nend\nsizes \"S\"\nend\nyarn main\n  name en \"a\" es \"b\"\nend\n"
	part := func(body string) string {
		return head + "part p\n  title en \"P\" es \"P\"\n  in rows\n  chain 21\n  row: sc in each = 21\n" + body + "end\n"
	}
	nested := func(open, inner, shut string, deep int) string {
		return strings.Repeat(open, deep) + inner + strings.Repeat(shut, deep)
	}
	for name, text := range map[string]string{
		"a repeat":               part("  repeat 1000000000 times\n    row: sc in each\n  end\n"),
		"a repeat of twenty":     part("  repeat 99999999999999999999 times\n    row: sc in each\n  end\n"),
		"a repeat in a repeat":   part(nested("repeat 1000 times\n", "row: sc in each\n", "end\n", 20)),
		"rows":                   part("  1000000000 rows: sc in each\n"),
		"brackets":               part("  row: [sc in next] 1000000000 times\n"),
		"brackets in brackets":   part("  row: " + nested("[", "sc in next", "] 1000 times", 60) + "\n"),
		"brackets of nothing":    part("  row: " + nested("[", "skip 0", "] 1000 times", 60) + ", sc in each\n"),
		"turns":                  part("  row: " + nested("[", "turn", "] 1000 times", 12) + "\n"),
		"chains":                 part("  row: ch 1000000000, sc in each\n"),
		"a start":                head + "part p\n  title en \"P\" es \"P\"\n  in rows\n  chain 1000000000\n  row: sc in each\nend\n",
		"stitches in one place":  part("  row: 1000000000 sc in next, sc in each\n"),
		"a hundred in each":      part(strings.Repeat("  row: 100 sc in each\n", 30)),
		"groups of groups":       groups() + part("  row: g40\n")[len(head):],
		"values of values":       values2() + part("  row: x900 sc in next, sc in each\n")[len(head):],
		"motifs":                 head + "part m\n  title en \"M\" es \"M\"\n  in joined rounds\n  ring\n  round: 12 sc in ring = 12\nend\nmotifs b of m\n  1000000000 across, 1000000000 down\nend\n",
		"sizes":                  strings.Replace(head, `"S"`, `"S"`+strings.Repeat(`, "S"`, 4000), 1),
		"figures in a text":      part("") + "note\n  en | " + strings.Repeat("1 ", 9_900) + "\n  es | " + strings.Repeat("2 ", 9_900) + "\nend\n",
		"quotations in a text":   part("") + "note\n  en | " + strings.Repeat(">", 19_900) + "\n  es | " + strings.Repeat("> - ", 4_900) + "\nend\n",
		"brackets in a text":     part("") + "note\n  en | " + strings.Repeat("[a](", 4_900) + "\n  es | " + strings.Repeat("![", 9_900) + "\nend\n",
		"stars in a text":        part("") + "note\n  en | " + strings.Repeat("*a_b", 4_900) + "\n  es | " + strings.Repeat("**a *", 3_900) + "\nend\n",
		"lists in a text":        part("") + "note\n" + lists("en") + lists("es") + "end\n",
		"a title":                strings.Replace(part(""), `"T"`, `"`+strings.Repeat("W", 900)+`"`, 1),
		"as many parts as go":    head + strings.Repeat("part p\n  in rows\n  chain 21\n  row: sc in each\nend\n", 500),
		"as many texts as go":    part("") + strings.Repeat("note\n  en | "+strings.Repeat("lorem ", 150)+"\n  es | "+strings.Repeat("lorem ", 150)+"\nend\n", 500),
		"as many measures as go": part("") + "measure\n" + strings.Repeat("  w = width of p\n", 1_000) + "end\n",
	} {
		dir := t.TempDir()
		path := filepath.Join(dir, "endless.ovillo")
		put(t, path, []byte(text))
		for _, args := range [][]string{{"check", path}, {"build", path, "-o", filepath.Join(dir, "x.pdf")}} {
			s := run(t, nil, args...)
			s.within(t, name+": ovillo "+args[0])
			if s.Code > 1 {
				t.Errorf("%s: ovillo %s ends with %d: %.300s", name, args[0], s.Code, s.said)
			}
		}
	}
}

func groups() string {
	const head = "pattern p\n  title en \"T\" es \"T\"\n  terms us\nend\nsizes \"S\"\nend\nyarn main\n  name en \"a\" es \"b\"\nend\n"
	var b strings.Builder
	b.WriteString(head + "group g0 = [sc in next, sc in next]\n")
	for i := 1; i <= 40; i++ {
		fmt.Fprintf(&b, "group g%d = [g%d, g%d]\n", i, i-1, i-1)
	}
	return b.String()
}

func values2() string {
	const head = "pattern p\n  title en \"T\" es \"T\"\n  terms us\nend\nsizes \"S\"\nend\nyarn main\n  name en \"a\" es \"b\"\nend\n"
	var b strings.Builder
	b.WriteString(head + "let x0 = 3 / 7\n")
	for i := 1; i <= 900; i++ {
		fmt.Fprintf(&b, "let x%d = x%d * x%d + 1 / %d\n", i, i-1, i-1, i)
	}
	return b.String()
}

func lists(language string) string {
	var b strings.Builder
	for i := range 130 {
		fmt.Fprintf(&b, "  %s | %s- a\n", language, strings.Repeat(" ", 2*i))
	}
	return b.String()
}

// TestPictureThatUnpacks: pictures of some kilobytes that would take gigabytes, and files that are no pictures, are refused.
func TestPictureThatUnpacks(t *testing.T) {
	for name, data := range map[string][]byte{
		"60000 by 60000":     png(60_000, 60_000, 8, 2),
		"a line":             png(1<<26, 1, 1, 0),
		"a column":           png(1, 1<<26, 1, 0),
		"sixteen bits":       png(8192, 8192, 16, 6),
		"41 MB of nothing":   make([]byte, 41<<20),
		"41 MB behind a PNG": append(png(2, 2, 8, 2), make([]byte, 41<<20)...),
	} {
		dir := t.TempDir()
		put(t, filepath.Join(dir, "a.png"), data)
		path := filepath.Join(dir, "photo.ovillo")
		put(t, path, []byte("pattern p\n  title en \"T\" es \"T\"\n  terms us\n  photo \"a.png\" en \"a\" es \"b\"\nend\nsizes \"S\"\nend\npart p\n  title en \"P\" es \"P\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"))
		s := run(t, nil, "build", path, "-o", filepath.Join(dir, "x.pdf"))
		if s.within(t, name); s.Code != 1 || !strings.Contains(s.said, "OV73") {
			t.Errorf("%s: it ends with %d: %.300s", name, s.Code, s.said)
		}
	}
}

// png is the beginning of a PNG, which says how large it is, and nothing behind it.
func png(w, h, depth, kind int) []byte {
	b := []byte("\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR")
	b = binary.BigEndian.AppendUint32(b, uint32(w))
	b = binary.BigEndian.AppendUint32(b, uint32(h))
	b = append(b, byte(depth), byte(kind), 0, 0, 0)
	return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(b[12:]))
}

// TestLargeFilesBeside: what a source uses may be as large as a disk, and is not read for it.
func TestLargeFilesBeside(t *testing.T) {
	dir := t.TempDir()
	var use, book strings.Builder
	book.WriteString("book b\n  title en \"B\" es \"B\"\n")
	for i := range 20 {
		name := fmt.Sprintf("large%d.ovillo", i)
		f, err := os.Create(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		err = f.Truncate(1 << 32) // of holes: it takes no room on the disk
		f.Close()
		if err != nil {
			if os.Getenv("CI") != "" {
				t.Fatal(err)
			}
			t.Skip("no file of four gigabytes can be made here: ", err)
		}
		fmt.Fprintf(&use, "use %q\n", name)
		fmt.Fprintf(&book, "  pattern %q\n", name)
	}
	for name, text := range map[string]string{"use": use.String(), "book": book.String() + "end\n"} {
		path := filepath.Join(dir, name+".ovillo")
		put(t, path, []byte(text))
		s := run(t, nil, "check", path)
		if s.within(t, name); s.Code != 1 {
			t.Errorf("%s: it ends with %d: %.300s", name, s.Code, s.said)
		}
	}
}
