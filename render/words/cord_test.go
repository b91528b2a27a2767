package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
)

// Cords, as steps of the finishing: those of chains and those that are parts, with all that is said of their ends.
func TestCords(t *testing.T) {
	p := tablePattern()
	through := &plan.Ref{Kind: plan.RefRow, Part: 0, Row: plan.Nums{2, 2, 2}}
	length := plan.Lengths{460_000, 480_000, 500_000}
	of := func(change func(f *plan.Finishing)) plan.Finishing {
		f := plan.Finishing{Kind: plan.MakeCord, Yarn: 1, Length: length}
		change(&f)
		return f
	}
	list := []plan.Finishing{
		of(func(f *plan.Finishing) {}),
		of(func(f *plan.Finishing) {
			f.Through, f.Row, f.Ends, f.Fixed = through, through.Row, plan.EndsPlain, true
			f.Free = plan.Lengths{70_000, 70_000, 70_000}
		}),
		of(func(f *plan.Finishing) {
			f.Chains, f.Width, f.Ends, f.Inside = plan.Nums{92, 96, 100}, 30_000, plan.EndsKnotted, true
		}),
		of(func(f *plan.Finishing) { f.Width, f.Ends = 5_000, plan.EndsBeads }),
		of(func(f *plan.Finishing) { f.Through, f.Row, f.Ends = through, through.Row, plan.NoEnds }),
		of(func(f *plan.Finishing) { f.Ends = plan.NoEnds }),
		of(func(f *plan.Finishing) {
			f.Made, f.Yarn, f.Through, f.Row, f.Ends, f.Fixed = &plan.Ref{Kind: plan.RefRow, Part: 0}, -1, through, through.Row, plan.EndsToggles, true
		}),
		of(func(f *plan.Finishing) {
			f.Made, f.Yarn, f.Ends = &plan.Ref{Kind: plan.RefRow, Part: 0}, -1, plan.EndsPompoms
		}),
		of(func(f *plan.Finishing) {
			f.Made, f.Yarn, f.Ends = &plan.Ref{Kind: plan.RefRow, Part: 0}, -1, plan.EndsTassels
		}),
		of(func(f *plan.Finishing) {
			f.Made, f.Yarn, f.Ends = &plan.Ref{Kind: plan.RefRow, Part: 0}, -1, plan.NoEnds
		}),
		of(func(f *plan.Finishing) { f.Made, f.Yarn = &plan.Ref{Kind: plan.RefRow, Part: 0}, -1 }),
	}
	for tag, want := range map[string][]string{
		"en-US": {
			"Cord: with kelp, work a chain that measures 46 (48, 50) cm or 18 (19, 19¾) in; sl st in 2nd ch from hook and in each ch across. Fasten off.",
			"Cord: with kelp, work a chain that measures 46 (48, 50) cm or 18 (19, 19¾) in; sl st in 2nd ch from hook and in each ch across. Fasten off. Thread it through round 2 of the tube so that both ends are the same: with the piece laid open, each measures 7 cm (2¾ in). Finish the ends without knots. Sew it to the fabric midway between its ends, so that it cannot be pulled out.",
			"Cord: with kelp, ch 92 (96, 100); sl st in 2nd ch from hook and in each ch across. Fasten off. The cord measures 46 (48, 50) cm or 18 (19, 19¾) in and is 3 cm (1¼ in) wide. Knot each end. With the piece fastened, it does not show.",
			"Cord: with kelp, work a chain that measures 46 (48, 50) cm or 18 (19, 19¾) in and is 5 mm (¼ in) wide; sl st in 2nd ch from hook and in each ch across. Fasten off. Sew a bead firmly to each end.",
			"Cord: with kelp, work a chain that measures 46 (48, 50) cm or 18 (19, 19¾) in; sl st in 2nd ch from hook and in each ch across. Fasten off. Thread it through round 2 of the tube. Sew the two ends together.",
			"Cord: with kelp, work a chain that measures 46 (48, 50) cm or 18 (19, 19¾) in; sl st in 2nd ch from hook and in each ch across. Fasten off.",
			"Thread the tube through round 2 of the tube. Fix a toggle to each end. Sew it to the fabric midway between its ends, so that it cannot be pulled out.",
			"Sew a pompom firmly to each end of the tube.",
			"Sew a tassel firmly to each end of the tube.",
			"Leave no loose end on the tube.",
			"Pull the tube hard to try it.",
		},
		"es": {
			"Cordón: con el hilo alga, tejer una cadena que mida 46 (48; 50) cm; 1 pd en la 2.ª cad desde el ganchillo y en cada cad hasta el final. Cortar el hilo y rematar.",
			"Cordón: con el hilo alga, tejer una cadena que mida 46 (48; 50) cm; 1 pd en la 2.ª cad desde el ganchillo y en cada cad hasta el final. Cortar el hilo y rematar. Pasarlo por la vuelta 2 del tubo de modo que los dos extremos queden iguales: con la pieza abierta, cada uno mide 7 cm. Rematar los extremos del cordón sin nudos. Coser el cordón al tejido a igual distancia de cada extremo, para que no se pueda sacar.",
			"Cordón: con el hilo alga, 92 (96; 100) cad; 1 pd en la 2.ª cad desde el ganchillo y en cada cad hasta el final. Cortar el hilo y rematar. El cordón mide 46 (48; 50) cm y tiene 3 cm de ancho. Hacer un nudo en cada extremo del cordón. Con la pieza abrochada, el cordón no asoma.",
			"Cordón: con el hilo alga, tejer una cadena que mida 46 (48; 50) cm y tenga 5 mm de ancho; 1 pd en la 2.ª cad desde el ganchillo y en cada cad hasta el final. Cortar el hilo y rematar. Coser con firmeza una cuenta en cada extremo del cordón.",
			"Cordón: con el hilo alga, tejer una cadena que mida 46 (48; 50) cm; 1 pd en la 2.ª cad desde el ganchillo y en cada cad hasta el final. Cortar el hilo y rematar. Pasarlo por la vuelta 2 del tubo. Coser entre sí los dos extremos del cordón.",
			"Cordón: con el hilo alga, tejer una cadena que mida 46 (48; 50) cm; 1 pd en la 2.ª cad desde el ganchillo y en cada cad hasta el final. Cortar el hilo y rematar.",
			"Pasar el tubo por la vuelta 2 del tubo. Poner un tope en cada extremo del tubo. Coser el tubo al tejido a igual distancia de cada extremo, para que no se pueda sacar.",
			"Coser con firmeza un pompón en cada extremo del tubo.",
			"Coser con firmeza una borla en cada extremo del tubo.",
			"No dejar ningún extremo suelto en el tubo.",
			"Tirar con fuerza del tubo para probar si aguanta.",
		},
	} {
		l := language(t, tag)
		var got []string
		for _, f := range list {
			got = append(got, strings.ReplaceAll(l.Finishing(p, f).String(), tie, " "))
		}
		require.Equal(t, want, got, tag)
	}
}

// Fringe, as a step of the finishing.
func TestFringe(t *testing.T) {
	p := tablePattern()
	f := plan.Finishing{Kind: plan.MakeFringe, Yarn: 1, Length: plan.Lengths{80_000, 80_000, 80_000}, Cut: plan.Lengths{180_000, 180_000, 180_000},
		Strands: plan.Nums{80, 88, 96}, Bundle: 2, Sewn: []plan.Ref{{Kind: plan.RefEdge, Part: 0}}}
	one := f
	one.Yarn, one.Strands, one.Bundle = -1, nil, 1
	for tag, want := range map[string][]string{
		"en-US": {
			"Fringe along the last round of the tube: with kelp, cut 80 (88, 96) strands of 18 cm (7 in). At each place of that edge, fold 2 strands together in half, draw the fold through with the hook, pull the ends through the fold and tighten. Trim the fringe to 8 cm (3¼ in).",
			"Fringe along the last round of the tube: cut strands of 18 cm (7 in). At each place of that edge, fold one strand in half, draw the fold through with the hook, pull the ends through the fold and tighten. Trim the fringe to 8 cm (3¼ in).",
		},
		"es": {
			"Fleco en la última vuelta del tubo: con el hilo alga, cortar 80 (88; 96) hebras de 18 cm. En cada lugar de ese borde, doblar 2 hebras juntas por la mitad, sacar el doblez por el tejido con el ganchillo, pasar los cabos por él y apretar. Igualar el fleco a 8 cm.",
			"Fleco en la última vuelta del tubo: cortar hebras de 18 cm. En cada lugar de ese borde, doblar una hebra por la mitad, sacar el doblez por el tejido con el ganchillo, pasar los cabos por él y apretar. Igualar el fleco a 8 cm.",
		},
	} {
		l := language(t, tag)
		var got []string
		for _, f := range []plan.Finishing{f, one} {
			got = append(got, strings.ReplaceAll(l.Finishing(p, f).String(), tie, " "))
		}
		require.Equal(t, want, got, tag)
	}
}

// Buttons say what they are made of, if the source does.
func TestButtonsOf(t *testing.T) {
	p := tablePattern()
	for tag, want := range map[string][]string{
		"en-US": {"Sew on 3 buttons of 12 mm.", "Sew on 1 wooden button of 12 mm."},
		"es":    {"Coser 3 botones de 12 mm.", "Coser 1 botón de madera de 12 mm."},
	} {
		l := language(t, tag)
		var got []string
		for _, b := range []plan.Buttons{{Size: 12_000, N: plan.Nums{3, 3, 3}}, {Size: 12_000, N: plan.Nums{1, 1, 1}, Material: "wood"}} {
			got = append(got, strings.ReplaceAll(l.Finishing(p, plan.Finishing{Kind: plan.SewButtons, Buttons: b}).String(), tie, " "))
		}
		require.Equal(t, want, got, tag)
	}
}
