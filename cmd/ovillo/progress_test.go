package main

import (
	"bytes"
	"strings"
	"testing"
	"time"
)

// A run over several files tells how far it is once it has taken a second, and nothing of it stays among what is written.
func TestProgress(t *testing.T) {
	var screen bytes.Buffer
	clock := time.Unix(0, 0)
	p := newProgress(&screen, true, 300, func() time.Time { return clock })
	out := p.through(&screen)
	p.step(1, 300, "a.ovillo")
	out.Write([]byte("a\n"))
	if screen.String() != "a\n" {
		t.Errorf("it speaks too early: %q", screen.String())
	}
	clock = clock.Add(patience)
	p.step(12, 300, "l\x1bm.ovillo")
	p.step(13, 300, strings.Repeat("x", 200)+".ovillo")
	out.Write([]byte("m\n"))
	p.erase()
	got := screen.String()
	want := "a\n\r\x1b[K12/300 l\uFFFDm.ovillo\r\x1b[K13/300 …" + strings.Repeat("x", widestName-8) + ".ovillo\r\x1b[Km\n"
	if got != want {
		t.Errorf("%q, want %q", got, want)
	}
	for _, quiet := range []*progress{newProgress(&screen, false, 300, time.Now), newProgress(&screen, true, 1, time.Now)} {
		screen.Reset()
		quiet.since = time.Time{}
		quiet.step(1, 300, "a.ovillo")
		if quiet.erase(); screen.Len() > 0 {
			t.Errorf("said where nobody looks: %q", screen.String())
		}
	}
}
