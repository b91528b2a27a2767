package main

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "write the expected texts of the scripts and golden files anew")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"ovillo": main})
}

// TestScripts runs the command as a user does: testdata/script/*.txtar, each with hat.ovillo in its folder.
func TestScripts(t *testing.T) {
	hat, err := os.ReadFile(filepath.Join("testdata", "hat.ovillo"))
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 filepath.Join("testdata", "script"),
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		UpdateScripts:       *update,
		Setup: func(e *testscript.Env) error {
			e.Setenv("LANG", "en_US.UTF-8")
			return os.WriteFile(filepath.Join(e.WorkDir, "hat.ovillo"), hat, 0o644)
		},
	})
}
