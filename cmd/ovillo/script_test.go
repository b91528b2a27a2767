package main

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"ovillo/cmd/ovillo/whole"
)

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
		UpdateScripts:       *whole.Update,
		Condition:           condition,
		Setup: func(e *testscript.Env) error {
			e.Setenv("LANG", "en_US.UTF-8")
			return os.WriteFile(filepath.Join(e.WorkDir, "hat.ovillo"), hat, 0o644)
		},
	})
}

// condition answers [root] in a script: the administrator may write where others may not.
func condition(name string) (bool, error) {
	if name == "root" {
		return os.Geteuid() == 0, nil
	}
	return false, fmt.Errorf("there is no condition %s", name)
}
