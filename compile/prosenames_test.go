package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/source"
)

// TestStitchNamesInASourceOfACountry: what a source in the Spanish of a country calls its stitches, its texts may call them too.
func TestStitchNamesInASourceOfACountry(t *testing.T) {
	for _, k := range []struct{ tag, text, want string }{
		{"es-MX", "Un medio punto y un macizo.", ""},
		{"es-MX", "Un punto bajo.", "OV822 punto bajo"},
		{"es-MX", "Un mp.", "OV823 mp"},
		{"es", "Un medio punto.", "OV822 medio punto"},
		{"es-AR", "Una vareta.", ""},
	} {
		text := "idioma " + k.tag + "\npatrón t\n  título es \"T\"\n  términos us\n  idiomas es\nfin\ntallas \"S\"\nfin\npieza tira\n  título es \"T\"\n" +
			"  en hileras\n  cadena 6\n  hilera: pd en cada\n  nota\n    es | " + k.text + "\n  fin\nfin\n"
		f, list := lang.Parse(source.NewFile("idioma.ovillo", text))
		_, more := compile.Compile(f)
		var got []string
		for _, d := range append(list, more...) {
			if d.Code == "OV822" || d.Code == "OV823" {
				got = append(got, string(d.Code)+" "+f.Source.Text[d.Span.Start:d.Span.End])
			}
		}
		require.Equal(t, k.want, strings.Join(got, "; "), "%s: %s (%v)", k.tag, k.text, append(list, more...))
	}
}

// TestStitchNamesInProse reads sentences of a designer for stitch names. The names of other countries are those of the table of
// terms; what they mean there is its sources' to say.
func TestStitchNamesInProse(t *testing.T) {
	for _, k := range []struct{ lang, text, want string }{
		{"es", "Tensar el último medio punto.", "OV822 medio punto=sc"},
		{"es", "Tensar los medios puntos.", "OV822 medios puntos=sc"},
		{"es", "Tejer una vareta y media vareta.", "OV822 vareta=dc; OV822 media vareta=hdc"},
		{"es", "Una Vareta doble.", "OV822 Vareta doble=tr"},
		{"es", "Un macizo.", "OV822 macizo=dc"},
		{"es", "Cerrar con un punto raso.", "OV822 punto raso=slst"},
		{"es", "Cerrar con un punto enano.", "OV822 punto enano=slst"},
		{"es", "Una barreta doble.", "OV822 barreta doble=tr"},
		{"es", "Los 2 mp y 1 v, luego mac.", "OV822 mp=sc; OV822 v=dc; OV822 mac=dc"},
		{"es", "Cerrar 2vjun.", "OV822 2vjun=dc"},
		{"es", "Un medio punto alto.", "OV822 medio punto alto=hdc"},
		{"es", "Tensar el último pb y la cad.", "OV823 pb=sc"},
		{"es", "Cerrar 2pajun.", "OV823 2pajun=dc"},
		{"es", "Un punto bajo, un punto medio alto, dos puntos altos dobles.", ""},
		{"es", "Un escote en v, en forma de V, y la letra v.", ""},
		{"es", "Medio metro de hilo y un punto.", ""},
		{"es", "En el punto medio de la hilera.", ""},
		{"es", "El último {sc} y {dc}.", ""},
		{"es", "Un punto deslizado y una cadeneta.", ""},
		{"es", "Punto alto en cada punto.", ""},
		{"en", "Pull the last single crochet tight.", ""},
		{"en", "A half treble crochet.", "OV807 half treble crochet=hdc"},
		{"en", "A treble crochet.", ""}, // both readings have one, and nothing in the sentence tells which is meant
		{"en", "Pull the last htr tight.", "OV807 htr=hdc"},
		{"en", "Pull the last dc tight.", "OV808 dc="},
		{"uk", "Pull the last single crochet tight.", "OV807 single crochet=dc"},
		{"uk", "A half treble crochet.", ""},
	} {
		names, language := "us", k.lang
		if k.lang == "uk" {
			names, language = "uk", "en"
		}
		text := "pattern trial\n  title " + language + " \"T\"\n  terms " + names + "\n  languages " + language + "\nend\nsizes \"S\"\nend\npart strip\n  title " + language + " \"T\"\n" +
			"  in rows\n  chain 6\n  row: sc in each = 6\n  note\n    " + language + " | " + k.text + "\n  end\nend\n"
		if names == "uk" {
			text = strings.Replace(text, "sc in", "dc in", 1)
		}
		f, list := lang.Parse(source.NewFile("names.ovillo", text))
		_, more := compile.Compile(f)
		var got []string
		for _, d := range append(list, more...) {
			switch d.Code {
			case "OV807":
				got = append(got, fmt.Sprintf("%s %s=%v", d.Code, text[d.Span.Start:d.Span.End], d.Args["own"]))
			case "OV808":
				got = append(got, fmt.Sprintf("%s %s=", d.Code, text[d.Span.Start:d.Span.End]))
			case "OV822", "OV823":
				got = append(got, fmt.Sprintf("%s %s=%v", d.Code, text[d.Span.Start:d.Span.End], d.Args["stitch"]))
			default:
				require.False(t, append(list, more...).HasErrors(), "%s: %v", k.text, d)
			}
		}
		require.Equal(t, k.want, strings.Join(got, "; "), k.text)
	}
}
