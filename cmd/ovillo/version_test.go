package main

import (
	"runtime/debug"
	"testing"
)

// What the compiler leaves in a program, in the form that `go version -m` prints.
func TestBuildOf(t *testing.T) {
	info, err := debug.ParseBuildInfo("path\tovillo/cmd/ovillo\nmod\tovillo\tv1.2.3\n" +
		"build\tGOARCH=arm64\nbuild\tGOOS=darwin\nbuild\tvcs=git\nbuild\tvcs.revision=0123abcd\n" +
		"build\tvcs.time=2026-03-01T10:00:00Z\nbuild\tvcs.modified=true\n")
	if err != nil {
		t.Fatal(err)
	}
	info.GoVersion = "go1.26.8"
	got := buildOf(info)
	want := build{"v1.2.3", "go1.26.8", "darwin/arm64", "0123abcd", "2026-03-01T10:00:00Z", true}
	if got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	if s := got.in("en"); s != "ovillo v1.2.3 go1.26.8 darwin/arm64\nrevision 0123abcd of 2026-03-01T10:00:00Z, changed since\n" {
		t.Errorf("%q", s)
	}
	if s := (build{Version: "(devel)", Go: "go1", Platform: "a/b"}).in("es"); s != "ovillo (devel) go1 a/b\n" {
		t.Errorf("%q", s)
	}
}
