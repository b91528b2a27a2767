package main

import (
	"os"
	"os/exec"
	"strings"
	"testing"
)

// mandoc, which reads such pages strictly, has no warning about the page of a build that has a date; a page with a slip has one.
func TestManual(t *testing.T) {
	if _, err := exec.LookPath("mandoc"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("mandoc is not installed")
		}
		t.Skip("mandoc is not installed")
	}
	lint := func(page string) string {
		run := exec.Command("mandoc", "-T", "lint", "-W", "warning")
		run.Stdin = strings.NewReader(page)
		said, _ := run.CombinedOutput()
		return string(said)
	}
	for _, lang := range []string{"en", "es"} {
		page := manual(lang, build{Version: "v1.0.0", Date: "2026-03-01T10:00:00Z"})
		if said := lint(page); said != "" {
			t.Errorf("%s: %s", lang, said)
		}
		if said := lint(strings.Replace(page, ".fi", ".fii", 1)); said == "" {
			t.Error("a slip is passed over")
		}
		for _, k := range commands() {
			if !strings.Contains(page, "\n.SS \"ovillo "+escaped(k.name)) {
				t.Errorf("%s: %s is missing", lang, k.name)
			}
		}
	}
}
