package font

import (
	"slices"
	"testing"

	"ovillo/render/page"
)

// Every sign that patterns in the two languages need.
func TestFacesCoverThePatterns(t *testing.T) {
	const signs = "ABCDEFGHIJKLMNÑOPQRSTUVWXYZabcdefghijklmnñopqrstuvwxyz0123456789 ÁÉÍÓÚÜáéíóúü¿¡ªº«»“”‘’„…–—-" +
		"×÷±=≤≥≈°′″½¼¾⅓⅔→←↑↓·•*+/\\()[]{}<>&%@#€$£©®™.,;:!?'\"|_~^§¶\u00a0"
	for _, face := range all {
		if m := Of(face).Missing(signs); m != nil {
			t.Errorf("%s lacks %q", Of(face).Name(), m)
		}
	}
}

func TestMissing(t *testing.T) {
	f := Of(page.Sans)
	for _, c := range []struct {
		name, text string
		want       []rune
	}{
		{"nothing", "", nil},
		{"drawn", "muñeca", nil},
		{"drawn once composed", "mun\u0303eca", nil},
		{"another script, each rune once", "編む編む", []rune{'編', 'む'}},
		{"beyond the basic plane", "🧶 lana 🧶", []rune{'🧶'}},
		{"bytes that are not UTF-8", "a\xffb\xc3", []rune{'\uFFFD'}},
		{"an accent with no composed letter", "q\u0301", []rune{'\u0301'}},
		{"signs that have no shape", "a\nb\tc\x00", []rune{'\n', '\t', 0}},
	} {
		if got := f.Missing(c.text); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

func TestCompose(t *testing.T) {
	if got := Compose("man\u0303ana"); got != "mañana" {
		t.Errorf("%q", got)
	}
	if got := Compose("a\xffb"); got != "a\xffb" {
		t.Errorf("bytes that are not UTF-8 became %q", got)
	}
}

func TestCacheForgetsButNeverLies(t *testing.T) {
	var c cache
	for key := range uint32(100_000) {
		c.put(key, key*7&0x7FFFFFFF)
	}
	kept := 0
	for key := range uint32(100_000) {
		v, ok := c.get(key)
		if !ok {
			continue
		}
		kept++
		if v != key*7&0x7FFFFFFF {
			t.Fatalf("key %d gives %d", key, v)
		}
	}
	if kept == 0 || kept > 1<<cacheBits {
		t.Errorf("%d entries kept", kept)
	}
}

func TestNamed(t *testing.T) {
	for text, want := range map[string]string{
		"muñeca":            "muñeca",
		"two\nlines":        "two\nlines",
		"nieve ☃.ovillo":    "nieve [U+2603].ovillo",
		"编\nmun\u0303eca 编": "[U+7F16]\nmuñeca [U+7F16]",
	} {
		if got := Named(text); got != want {
			t.Errorf("%q is named %q, want %q", text, got, want)
		}
	}
}
