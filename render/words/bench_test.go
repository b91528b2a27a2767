package words

import (
	"testing"

	"ovillo/render/sample"
)

func BenchmarkWholePattern(b *testing.B) {
	for _, tag := range []string{"en", "es"} {
		b.Run(tag, func(b *testing.B) {
			l, p := language(b, tag), sample.Leggings()
			b.ReportAllocs()
			for b.Loop() {
				dump(l, p)
			}
		})
	}
}

func BenchmarkStep(b *testing.B) {
	l, p := language(b, "es"), sample.Leggings()
	body := p.Parts[1]
	b.ReportAllocs()
	for b.Loop() {
		l.Step(p, body, body.Steps[3])
	}
}

func BenchmarkFor(b *testing.B) {
	for b.Loop() {
		if _, err := For("es-AR"); err != nil {
			b.Fatal(err)
		}
	}
}
