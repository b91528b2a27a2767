package diag

// Codes 47x and 48x: what is set at even distances, and stitch patterns.
var textures = []Entry{
	{Code: "OV470", Severity: Error,
		En: Wording{Message: `what is set evenly needs plain stitches to stand among, one in each place`, Mark: `stands among no plain stitches`,
			Help:    map[string]string{"": `begin with the stitch between: sc in each with [ … ] 5 times evenly`},
			Explain: `A bracket that is set evenly stands among single stitches up to the end of the row, or to a bound: sc in each, sc to last 3. The distances are worked out from how many places there are.`},
		Es: Wording{Message: `lo que se reparte necesita puntos sencillos alrededor, uno en cada lugar`, Mark: `no tiene puntos sencillos alrededor`,
			Help:    map[string]string{"": `empezar con el punto que va entre medias: sc in each with [ … ] 5 times evenly`},
			Explain: `Unos corchetes que se reparten van entre puntos sencillos hasta el final de la hilera o hasta un límite: sc in each, sc to last 3. Las distancias se calculan a partir de los lugares que hay.`},
		Example: flat("  chain 20\n  row: sc in each = 20\n  row: sc in next 20 with [ch 2, skip 2] 3 times evenly"),
		Fixed:   flat("  chain 20\n  row: sc in each = 20\n  row: sc in each with [ch 2, skip 2] 3 times evenly = 14 sts, 3 spaces")},

	{Code: "OV471", Severity: Error,
		En: Wording{Message: `how many places {text} takes cannot be told, so it cannot be set evenly`, Mark: `takes no certain number of places`,
			Help:    map[string]string{"": `let it take a number of stitches: [ch 2, skip 2], [dc5tog]`},
			Explain: `To share out the stitches between, it must be known how many places the brackets take: one or more, and no instruction in them that goes as far as it can, or to a place by its name.`},
		Es: Wording{Message: `no se puede saber cuántos lugares ocupa {text}, así que no se puede repartir`, Mark: `no ocupa un número fijo de lugares`,
			Help:    map[string]string{"": `hacer que ocupe un número de puntos: [ch 2, skip 2], [dc5tog]`},
			Explain: `Para repartir los puntos que van entre medias hay que saber cuántos lugares ocupan los corchetes: uno o más, y sin instrucciones que lleguen hasta donde puedan o a un lugar por su nombre.`},
		Example: flat("  chain 20\n  row: sc in each = 20\n  row: sc in each with [ch 2] 3 times evenly"),
		Fixed:   flat("  chain 20\n  row: sc in each = 20\n  row: sc in each with [ch 2, skip 2] 3 times evenly = 14 sts, 3 spaces")},
}
