package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"ovillo/lang/format"
	"ovillo/lang/source"
	"ovillo/render/book"
	"ovillo/render/layout"
)

// TestReadme keeps the README true: its pattern is clean and in the usual shape, its mistake is answered as it says, and
// it names every command, every example folder and every document that stands beside it.
func TestReadme(t *testing.T) {
	root := filepath.Join("..", "..")
	data, err := os.ReadFile(filepath.Join(root, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	readme := string(data)
	fences := regexp.MustCompile("(?s)```(\\w*)\n(.*?)```").FindAllStringSubmatch(readme, -1)
	var pattern, answer string
	for _, f := range fences {
		switch {
		case f[1] == "ovillo":
			pattern = f[2]
		case strings.HasPrefix(f[2], "error["):
			answer = f[2]
		}
	}
	asLoaded := func(text string) *loaded { return &loaded{file: source.NewFile("hat.ovillo", text)} }
	good := asLoaded(pattern)
	if _, found := good.compile(); len(found) > 0 {
		t.Errorf("the pattern is not clean:\n%s", printed(t, good, found))
	}
	if set, _ := format.Source([]byte(pattern)); string(set) != pattern {
		t.Error("the pattern is not in its usual shape")
	}
	wrong := asLoaded(strings.Replace(pattern, "multiple of 9", "multiple of 8", 1))
	if _, found := wrong.compile(); printed(t, wrong, found) != answer {
		t.Errorf("the mistake is answered with\n%s", printed(t, wrong, found))
	}
	for _, c := range commands() {
		if !strings.Contains(readme, "`ovillo "+c.name) {
			t.Errorf("the command %s is not named", c.name)
		}
	}
	for _, name := range append(book.EditionNames(), layout.Papers()...) {
		if !regexp.MustCompile("`[^`]*" + name + "[^`]*`").MatchString(readme) {
			t.Errorf("the edition or paper %s is not named", name)
		}
	}
	for _, link := range regexp.MustCompile(`\]\(([^)]+)\)`).FindAllStringSubmatch(readme, -1) {
		if _, err := os.Stat(filepath.Join(root, link[1])); err != nil {
			t.Errorf("a link leads nowhere: %v", err)
		}
	}
	run := regexp.MustCompile(`go run \./cmd/ovillo build (\S+)`).FindStringSubmatch(readme)
	if run == nil {
		t.Fatal("the README does not say how to build a pattern")
	}
	if _, err := os.Stat(filepath.Join(root, run[1])); err != nil {
		t.Errorf("the first command fails: %v", err)
	}
}

// TestGuide keeps the guide for developers complete: every package of the table of layers and every library has its line.
func TestGuide(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "..", "DEVELOPERS.md"))
	if err != nil {
		t.Fatal(err)
	}
	guide := string(data)
	_, may := allowed(t)
	for pkg := range may {
		if !strings.Contains(guide, "`"+pkg+"`") {
			t.Errorf("the package %s has no line", pkg)
		}
	}
	libs := testLibraries
	for _, l := range libraries {
		libs = append(libs, l.path)
	}
	for _, l := range libs {
		if !strings.Contains(guide, "`"+strings.TrimSuffix(l, "/diff")+"`") {
			t.Errorf("the library %s has no line", l)
		}
	}
}
