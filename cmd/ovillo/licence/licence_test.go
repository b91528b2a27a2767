package licence

import (
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// linked are the modules that the command is linked with, on the systems that it is built for, with the folders of their sources.
func linked(t *testing.T) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, system := range []string{"linux", "darwin", "windows"} {
		cmd := exec.Command("go", "list", "-deps", "-f", "{{with .Module}}{{.Path}}\t{{.Dir}}{{end}}", "ovillo/cmd/ovillo")
		cmd.Env = append(cmd.Environ(), "GOOS="+system, "CGO_ENABLED=0")
		list, err := cmd.Output()
		require.NoError(t, err)
		for line := range strings.Lines(string(list)) {
			if path, dir, ok := strings.Cut(strings.TrimSpace(line), "\t"); ok && path != "ovillo" {
				out[path] = dir
			}
		}
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	require.NoError(t, err)
	out["go"] = strings.TrimSpace(string(root))
	return out
}

// TestEveryModuleIsListed: the list is that of the modules that are linked in, and each text is the one that came with the module.
func TestEveryModuleIsListed(t *testing.T) {
	var listed []string
	dirs := linked(t)
	require.Greater(t, len(dirs), 5)
	for _, m := range modules {
		listed = append(listed, m.Name)
		require.Contains(t, dirs, m.Name, "it is no longer linked in: take it off the list")
		files, err := filepath.Glob(filepath.Join(dirs[m.Name], "*"))
		require.NoError(t, err)
		i := slices.IndexFunc(files, func(f string) bool {
			name := strings.ToLower(filepath.Base(f))
			return strings.HasPrefix(name, "licen") || strings.HasPrefix(name, "copying")
		})
		require.GreaterOrEqual(t, i, 0, m.Name)
		want, err := os.ReadFile(files[i])
		require.NoError(t, err)
		if string(want) != textOf(m.Name) {
			t.Errorf("the licence of %s is no longer the one in texts", m.Name)
		}
		for _, f := range files {
			if strings.HasPrefix(strings.ToLower(filepath.Base(f)), "notice") {
				t.Errorf("%s has a notice, which goes with the licence: %s", m.Name, f)
			}
		}
	}
	for module := range dirs {
		require.Contains(t, listed, module)
	}
}

// TestLicencesSayWhatTheyAre: each text holds the words by which its licence is known.
func TestLicencesSayWhatTheyAre(t *testing.T) {
	words := map[string]string{"MIT": "Permission is hereby granted, free of charge", "BSD-3-Clause": "Redistribution and use in source and binary forms",
		"Apache-2.0": "Apache License", "MIT, and the notices of the patterns": "permitted in any medium without royalty", "OFL-1.1": "SIL OPEN FONT LICENSE Version 1.1"}
	parts := Parts()
	require.Len(t, parts, len(modules)+3)
	for _, p := range parts {
		require.NotEmpty(t, words[p.Licence], p.Name)
		require.Contains(t, strings.Join(strings.Fields(p.Text), " "), words[p.Licence], p.Name)
	}
}
