package lsp

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang/format"
)

// TestMain lets the test's own program be the server that an editor starts.
func TestMain(m *testing.M) {
	if os.Getenv("SERVE_LSP") != "" {
		os.Exit(Serve(os.Stdin, os.Stdout, Options{Lang: "en"}))
	}
	os.Exit(m.Run())
}

// hat is a small source with letters that are not ASCII before places that are asked about.
const hat = `pattern alba_hat
  title en "Alba hat" es "Gorro Alba"
  kind  hat
  terms us
end
sizes "child", "adult"
  names es "niñez", "adulto"
  age   6 (18) years
  fit   head 50 (56) cm
end
gauge 10 cm
  hdc 15 sts, 12 rounds
end
hook 5 mm

let round_head = 72 (81)

part hat
  title en "Hat" es "Gorro"
  base hdc
  in joined rounds
  chain round_head, join
  round: hdc in each = round_head # contorno de la cabeza, niña 🧶
  rounds for 14 (16) cm: hdc in each
  round: [hdc in next 7, dec] around
  fasten off
end
`

// TestNeovim lets Neovim's own client work with the server. Source: the editor itself, from Debian.
func TestNeovim(t *testing.T) {
	nvim, err := exec.LookPath("nvim")
	if err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("needs nvim")
		}
		t.Skip("needs nvim")
	}
	dir := t.TempDir()
	source, result := filepath.Join(dir, "gorro ñ.ovillo"), filepath.Join(dir, "result.json")
	require.NoError(t, os.WriteFile(source, []byte(hat), 0o644))
	server, err := os.Executable()
	require.NoError(t, err)
	script, err := filepath.Abs("testdata/session.lua")
	require.NoError(t, err)
	cmd := exec.Command(nvim, "--headless", "--clean", "-n", "-u", script)
	cmd.Env = append(os.Environ(), "SESSION_SOURCE="+source, "SESSION_RESULT="+result, "SESSION_SERVER="+server,
		"XDG_CACHE_HOME="+dir, "XDG_DATA_HOME="+dir, "XDG_STATE_HOME="+dir, "XDG_CONFIG_HOME="+dir, "LC_ALL=C.UTF-8")
	said, err := cmd.CombinedOutput()
	body, readErr := os.ReadFile(result)
	require.NoError(t, readErr, string(said))
	var s session
	require.NoError(t, json.Unmarshal(body, &s), string(body))
	require.NoError(t, err, "%s\n%s", said, s.Error)

	require.Equal(t, "utf-16", s.Encoding)
	require.Empty(t, s.First)
	require.Len(t, s.Wrong, 1)
	line := strings.Count(hat[:strings.Index(hat, "hdc in each = round_head")], "\n") + 2 // a line was put before it
	require.Equal(t, line, s.Wrong[0].Line)
	require.Regexp(t, `^OV6\d\d$`, s.Wrong[0].Code)
	require.Contains(t, s.Wrong[0].Message, "75")
	require.Empty(t, s.Right)
	require.Len(t, s.Quote, 1)
	require.Equal(t, "5dc", s.QuoteLine[s.Quote[0].From:s.Quote[0].To], "Neovim's columns are bytes")

	require.Contains(t, s.HoverStitch.Contents.Value, "dec")
	require.Contains(t, s.HoverRow.Contents.Value, "81")
	require.Contains(t, s.HoverRow.Contents.Value, "adult")
	require.Contains(t, s.HoverValue.Contents.Value, "72")

	renamed := strings.Join(s.Renamed, "\n")
	require.NotContains(t, renamed, "round_head")
	require.Equal(t, 3, strings.Count(renamed, "cabeza")-strings.Count(renamed, "la cabeza"))
	require.Contains(t, s.Refused, "round")

	var words []string
	for _, c := range s.Completed {
		words = append(words, c.Word)
	}
	require.Contains(t, words, "hdc")
	require.NotContains(t, words, "dc")

	var names []string
	for _, y := range s.Symbols {
		names = append(names, y.Name)
	}
	require.Contains(t, names, "alba_hat")
	require.Contains(t, names, "hat")
	var hints []string
	for _, h := range s.Hints {
		hints = append(hints, h.Label)
	}
	require.Contains(t, hints, "= 72 (81)")
	require.Contains(t, hints, "= 64 (72)")

	set, _ := format.Source([]byte(strings.Join(s.Formatted, "\n")))
	require.Equal(t, string(set), strings.Join(s.Formatted, "\n")+"\n")
	require.Contains(t, s.Formatted, "  fasten off")
}

// session is what came of the steps of testdata/session.lua.
type session struct {
	Error                             string
	Encoding                          string
	First, Wrong, Right, Quote        []shown
	QuoteLine                         string
	HoverStitch, HoverRow, HoverValue Hover
	Definition                        []int
	Renamed, Formatted                []string
	Refused                           string
	Completed                         []struct{ Word string }
	Symbols                           []DocumentSymbol
	Hints                             []InlayHint
}

// shown is a message as the editor keeps it.
type shown struct {
	Line, From, To int
	Code, Message  string
}

// TestNeovimSettings: with the settings of the editor's folder alone, a file that is opened is served.
func TestNeovimSettings(t *testing.T) {
	nvim, err := exec.LookPath("nvim")
	if err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("needs nvim")
		}
		t.Skip("needs nvim")
	}
	dir := t.TempDir()
	server, err := os.Executable()
	require.NoError(t, err)
	require.NoError(t, os.Symlink(server, filepath.Join(dir, "ovillo")))
	settings, err := filepath.Abs("../editor/neovim/ovillo.lua")
	require.NoError(t, err)
	file := filepath.Join(dir, "hat.ovillo")
	require.NoError(t, os.WriteFile(file, []byte(strings.Replace(hat, "hdc in each = round_head", "hdc in each = 7", 1)), 0o644))
	cmd := exec.Command(nvim, "--headless", "--clean", "-n", "-u", settings, file, "-c",
		`lua assert(vim.wait(20000, function() return #vim.diagnostic.get(0) > 0 end, 5)); io.stdout:write(vim.bo.filetype, ' ', vim.diagnostic.get(0)[1].code, ' ', vim.fn.maparg('gd', 'n') ~= '' and 'keys' or '')`,
		"-c", "qall!")
	cmd.Env = append(os.Environ(), "SERVE_LSP=1", "PATH="+dir+string(os.PathListSeparator)+os.Getenv("PATH"),
		"XDG_CACHE_HOME="+dir, "XDG_DATA_HOME="+dir, "XDG_STATE_HOME="+dir, "XDG_CONFIG_HOME="+dir)
	said, err := cmd.CombinedOutput()
	require.NoError(t, err, string(said))
	require.Regexp(t, `ovillo OV\d\d\d keys`, string(said))
}
