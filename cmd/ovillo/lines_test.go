package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// staysOpen are the commands that run until they are stopped: their examples are only read.
var staysOpen = map[string]bool{"preview": true, "lsp": true}

// TestExampleLines runs the examples of every command in a shell, as they are printed, in a repository with a hat.
func TestExampleLines(t *testing.T) {
	hat, err := os.ReadFile(filepath.Join("testdata", "hat.ovillo"))
	if err != nil {
		t.Fatal(err)
	}
	for _, k := range commands() {
		if len(k.examples) == 0 {
			t.Errorf("%s has no example", k.name)
		}
		for _, e := range k.examples {
			for lang, line := range map[string]string{"en": e.line.en, "es": e.line.es} {
				if !strings.HasPrefix(line, "ovillo "+k.name) {
					t.Errorf("an example of %s is of something else: %s", k.name, line)
				}
				if staysOpen[k.name] {
					if c, wrong := parseArgs(strings.Fields(line)[1:]); wrong != nil || c.command != k {
						t.Errorf("%s: not understood", line)
					}
					continue
				}
				t.Run(line, func(t *testing.T) {
					t.Parallel()
					dir := t.TempDir()
					for _, name := range []string{"hat.ovillo", "gorro.ovillo"} {
						if err := os.WriteFile(filepath.Join(dir, name), hat, 0o644); err != nil {
							t.Fatal(err)
						}
					}
					commitAll(t, dir)
					run := exec.Command("sh", "-c", line)
					run.Dir = dir
					run.Env = append(os.Environ(), "LC_ALL="+lang+"_"+strings.ToUpper(lang)+".UTF-8")
					if said, err := run.CombinedOutput(); err != nil {
						t.Errorf("%s: %v\n%s", line, err, said)
					}
				})
			}
		}
	}
}

// commitAll makes a folder a repository with all its files in one commit, for what reads a revision.
func commitAll(t *testing.T, dir string) {
	t.Helper()
	for _, args := range [][]string{{"init", "-q"}, {"add", "."}, {"-c", "user.name=a", "-c", "user.email=a@b", "commit", "-qm", "one"}} {
		run := exec.Command("git", args...)
		run.Dir = dir
		if said, err := run.CombinedOutput(); err != nil {
			t.Fatalf("git %v: %v\n%s", args, err, said)
		}
	}
}
