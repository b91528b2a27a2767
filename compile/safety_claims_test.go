package compile

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ovillo/lang"
	"ovillo/lang/source"
)

// Sentences both ways: those that claim, and those that only sound like it. The sentences are ours.
func TestClaims(t *testing.T) {
	for _, c := range []struct {
		claim string
		yes   []string
		no    []string
	}{
		{"sleep", []string{
			"A soft blanket for the cot.", "Made for sleep and cuddles.", "A cot blanket in waves.", "Warm while the baby sleeps.",
			"Lay it in the crib.", "A sleeping bag for summer.", "Not for the garden, but for naps.", "In the cot, and nowhere else.",
			"Una manta para la cuna.", "Ideal para dormir.", "Un saco de dormir ligero.", "Abriga mientras el bebé duerme.",
			"Manta de cuna con ondas.", "No es para la playa, pero sí para la siesta.",
		}, []string{
			"Never leave it in the cot.", "Not for sleep, naps or in the cot.", "Do not use it for sleeping.", "Take off before the baby sleeps in the cot.",
			"A sleepy bear.", "Keep it out of the crib.", "Remove it for naps.", "A blanket for the sofa.",
			"Nunca dejar en la cuna.", "No usar para dormir.", "Retirar antes de dormir.", "No es para dormir ni para la cuna.", "Un oso dormilón.",
			"Quitar el gorro en la cuna.", "In the cot of a baby there must be no loose blankets.", "En la cuna de un bebé no debe haber mantas sueltas.",
		}},
		{"safety", []string{
			"It is safe for babies.", "A safe toy.", "Certified for children.", "Non-toxic eyes.", "The yarn is flame-proof.", "It complies with the standard.",
			"No small parts, safe for babies.", "Not heavy; safe to chew.",
			"Es seguro para bebés.", "Un muñeco seguro.", "Material certificado.", "Ojos homologados.", "Hilo ignífugo.", "Pintura atóxica.", "Pintura no tóxica.",
			"Cumple con la norma europea.", "Sin piezas pequeñas, seguro para bebés.",
		}, []string{
			"This is not safe for children under 3.", "Sew the eyes on securely.", "Mark it with a safety pin.", "Put in the safety eyes.",
			"Keep it in a safe place.", "It is never safe in the cot.", "Ask whether it is certified.", "Local law and licensed or certified practice come first.",
			"It is machine safe.", "The toy is not certified or compliant.", "Read the safe sleep advice.",
			"No es seguro para menores de 3 años.", "Coser los ojos con seguridad.", "Cerrar con un imperdible de seguridad.", "Poner los ojos de seguridad.",
			"Guardar en un lugar seguro.", "No está homologado ni certificado.", "Comprobar si está certificado.",
			"Prevalece el criterio de profesionales titulados o certificados.",
		}},
		{"adult", []string{
			"This is not a toy.", "For adult collectors.", "For decoration only.", "Not suitable for small children.",
			"No es un juguete.", "Solo para adultos.", "Pieza de colección.", "Solo de adorno.", "No apto para niños pequeños.",
		}, []string{
			"A toy for children.", "A decoration for the wall.", "Un juguete para niños.", "Un adorno para la pared.",
		}},
		{"pure", []string{
			"Worked in 100 % cotton.", "Pure wool is warm.", "All cotton, all day.", "Tejido en 100 % algodón.", "Lana pura.", "Es todo algodón.",
		}, []string{
			"Worked in a cotton blend.", "It is not pure wool.", "Dry it 100 times.", "Mezcla de algodón.", "No es lana pura.",
		}},
		{"stuffed", []string{
			"Stuff the body firmly.", "Fill it with wool.", "Rellenar la cabeza.", "Poner el relleno.",
		}, []string{
			"Do not stuff the arms.", "No rellenar los brazos.", "Sew the body.",
		}},
	} {
		for _, s := range c.yes {
			from, to, found := claimsIn(c.claim, s)
			assert.True(t, found && to > from, "%s: %s", c.claim, s)
		}
		for _, s := range c.no {
			_, _, found := claimsIn(c.claim, s)
			assert.False(t, found, "%s: %s", c.claim, s)
		}
	}
}

// A claim is found in every text of a source, at its place, and is false where no text makes it.
func TestClaimedInTexts(t *testing.T) {
	text := func(title, intro, notion string) string {
		return `pattern p
  title en "` + title + `" es "Manta"
  terms us
  intro
    en | It is soft.
       | ` + intro + `
    es | Es suave.
  end
end
sizes "S"
end
notion en "` + notion + `" es "relleno"
part a
  in rows
  chain 4
  row: sc in each = 4
end
`
	}
	for _, c := range []struct{ title, intro, notion, found string }{
		{"Cot blanket", "Warm.", "stuffing", "Cot blanket"},
		{"Blanket", "A present for the cot.", "stuffing", "for the cot"},
		{"Blanket", "Warm.", "filling for the crib", "for the crib"},
		{"Blanket", "Never for the cot.", "stuffing", ""},
	} {
		src := text(c.title, c.intro, c.notion)
		f := factsOf(t, src)
		if c.found == "" {
			assert.Equal(t, "False", truthWord(f.SleepUse.Is))
			continue
		}
		assert.Equal(t, "True", truthWord(f.SleepUse.Is), c.found)
		assert.Equal(t, c.found, src[f.SleepUse.At.Start:f.SleepUse.At.End])
	}
}

// parsed parses a source for tests of facts.
func parsed(t testing.TB, text string) *lang.File {
	t.Helper()
	f, list := lang.Parse(source.NewFile("example", text))
	if list.HasErrors() {
		t.Fatalf("%v\n%s", list, text)
	}
	return f
}
