package diag

// Codes 48x: motifs that are joined to one another while they are worked.
func motifs() []Entry {
	return []Entry{
		{Code: "OV480", Severity: Error,
			En: Wording{Message: `joined motifs need two lines: how many there are, and where they are joined`, Mark: `one of them is missing`,
				Help:    map[string]string{"": `write {=3 across, 4 down} and {=joined in round 2: at each corner, sl st in place of 1 ch}`},
				Explain: `From how many motifs lie beside one another and from the places where one is joined, all else follows: how many meet no other, one or two, and how many joins there are.`},
			Es: Wording{Message: `los motivos unidos necesitan dos líneas: cuántos son y dónde se unen`, Mark: `falta una de ellas`,
				Help:    map[string]string{"": `escribir {=3 across, 4 down} y {=joined in round 2: at each corner, sl st in place of 1 ch}`},
				Explain: `De cuántos motivos van lado a lado y de los lugares en que se une uno se deduce todo lo demás: cuántos no tocan a otro, cuántos a uno o a dos, y cuántas uniones hay.`},
			Example: joined(square, "2 across, 3 down"),
			Fixed:   joined(square, "2 across, 3 down", joinedAt)},

		{Code: "OV481", Severity: Error,
			En: Wording{Message: `there is at least one motif across and one down, and {max} in all at most`, Mark: `this many cannot be laid out`,
				Help:    map[string]string{"": `say how many motifs lie beside one another, and how many rows of them there are`},
				Explain: `A strip is one motif across or one down. Larger pieces than the limit are no single piece of work.`},
			Es: Wording{Message: `hay al menos un motivo a lo ancho y uno a lo largo, y {max} en total como mucho`, Mark: `tantos no se pueden disponer`,
				Help:    map[string]string{"": `decir cuántos motivos van lado a lado y cuántas filas de ellos hay`},
				Explain: `Una tira tiene un motivo a lo ancho o uno a lo largo. Lo que pasa del límite no es una sola labor.`},
			Example: joined(square, "0 across, 3 down", joinedAt),
			Fixed:   joined(square, "1 across, 3 down", joinedAt)},

		{Code: "OV482", Severity: Error,
			En: Wording{Message: `motifs are joined in their last round, which is round {have} of {part}`, Mark: `is not the last round`,
				Help:    map[string]string{"": `join in the last round, or end the motif with the one that is joined`},
				Explain: `A round that is joined to other motifs lies against them; nothing more can be worked around it.`},
			Es: Wording{Message: `los motivos se unen en su última vuelta, que en {part} es la {have}`, Mark: `no es la última vuelta`,
				Help:    map[string]string{"": `unir en la última vuelta, o acabar el motivo con la que se une`},
				Explain: `La vuelta que se une a otros motivos queda pegada a ellos; a su alrededor ya no se puede tejer más.`},
			Example: joined(square, "2 across, 3 down", "joined in round 1: at each corner and each side, sl st in place of 1 ch"),
			Fixed:   joined(square, "2 across, 3 down", joinedAt)},

		{Code: "OV483", Severity: Error,
			En: Wording{Message: `{part} does not end with a round that shows the right side`, Mark: `is joined in that round`,
				Help:    map[string]string{"": `work the motif in joined rounds`},
				Explain: `A motif is joined all around, while its right side faces the maker. A row has two ends, and a round of the wrong side goes the other way.`},
			Es: Wording{Message: `{part} no termina con una vuelta por el derecho`, Mark: `se une en esa vuelta`,
				Help:    map[string]string{"": `tejer el motivo en vueltas cerradas`},
				Explain: `Un motivo se une por todo su contorno, con el derecho hacia quien teje. Una hilera tiene dos extremos, y una vuelta por el revés va en el otro sentido.`},
			Example: joined("  in rows\n  chain 9\n  row: sc in next, [ch 2 as corner, sc in next, ch 1 as side, sc in next] 4 times = 9 sc, 8 spaces", "2 across, 3 down",
				"joined in round 1: at each corner and each side, sl st in place of 1 ch"),
			Fixed: joined("  in joined rounds\n  ring\n  round: [sc in ring, ch 2 as corner, sc in ring, ch 1 as side] 4 times = 8 sc, 8 spaces", "2 across, 3 down",
				"joined in round 1: at each corner and each side, sl st in place of 1 ch")},

		{Code: "OV484", Severity: Error,
			En: Wording{Message: `the last round of {part} has {have} places called {name}, and four corners that are chain spaces are needed`, Mark: `is not at four corners`,
				Help:    map[string]string{"": `give the label to the chains of the four corners of that round, and name it first`},
				Explain: `The first label behind {=joined} names the corners. They part the round into the four sides, any of which may meet the side of another motif.`},
			Es: Wording{Message: `la última vuelta de {part} tiene {have} lugares llamados {name}, y hacen falta cuatro esquinas que sean espacios de cadena`, Mark: `no está en cuatro esquinas`,
				Help:    map[string]string{"": `dar el nombre a las cadenas de las cuatro esquinas de esa vuelta y ponerlo el primero`},
				Explain: `El primer nombre tras {=joined} designa las esquinas. Estas dividen la vuelta en los cuatro lados, y cualquiera de ellos puede dar al lado de otro motivo.`},
			Example: joined("  in joined rounds\n  ring\n  round: [sc in ring, ch 2 as corner] 3 times, sc in ring, ch 2 = 4 sc, 4 spaces", "2 across, 3 down",
				"joined in round 1: at each corner, sl st in place of 1 ch"),
			Fixed: joined("  in joined rounds\n  ring\n  round: [sc in ring, ch 2 as corner] 4 times = 4 sc, 4 spaces", "2 across, 3 down",
				"joined in round 1: at each corner, sl st in place of 1 ch")},

		{Code: "OV485", Severity: Error,
			En: Wording{Message: `the four sides of the last round of {part} are not alike`, Mark: `parts the round into sides that differ`,
				Help:    map[string]string{"": `work the same stitches and spaces between every two corners`},
				Explain: `In the whole each side of a motif meets a side of another, space against space, so all four must be the same.`},
			Es: Wording{Message: `los cuatro lados de la última vuelta de {part} no son iguales`, Mark: `divide la vuelta en lados distintos`,
				Help:    map[string]string{"": `tejer los mismos puntos y espacios entre cada dos esquinas`},
				Explain: `En el conjunto cada lado de un motivo da al lado de otro, espacio contra espacio, así que los cuatro han de ser iguales.`},
			Example: joined("  in joined rounds\n  ring\n  round: [sc in ring, ch 2 as corner, sc in ring, ch 2 as corner, 2 sc in ring] 2 times = 8 sc, 4 spaces", "2 across, 3 down",
				"joined in round 1: at each corner, sl st in place of 1 ch"),
			Fixed: joined("  in joined rounds\n  ring\n  round: [sc in ring, ch 2 as corner, sc in ring, ch 2 as corner] 2 times = 4 sc, 4 spaces", "2 across, 3 down",
				"joined in round 1: at each corner, sl st in place of 1 ch")},

		{Code: "OV486", Severity: Error,
			En: Wording{Message: `a join stands in place of {need} {need|chain|chains}, and {name} has {have}`, Mark: `joins a space that is too small`,
				Help:    map[string]string{"": `work longer spaces, or join in place of fewer chains`},
				Explain: `The slip stitch of a join takes the room of chains that are left out. A space cannot give more chains than it has.`},
			Es: Wording{Message: `una unión sustituye {need} {need|cadena|cadenas}, y {name} tiene {have}`, Mark: `une un espacio demasiado pequeño`,
				Help:    map[string]string{"": `hacer espacios más largos o sustituir menos cadenas`},
				Explain: `El punto deslizado de una unión ocupa el sitio de las cadenas que se omiten. Un espacio no puede ceder más cadenas de las que tiene.`},
			Example: joined(square, "2 across, 3 down", "joined in round 2: at each corner and each side, sl st in place of 2 ch"),
			Fixed:   joined(square, "2 across, 3 down", joinedAt)},

		{Code: "OV487", Severity: Error,
			En: Wording{Message: `the last round of {part} cannot be parted into joined sides and free ones as it is written`, Mark: `{need} to be joined, and {have} can be reached`,
				Help:    map[string]string{"": `write the labels at the chains themselves, one corner after the other: {=[(2 dc, ch 2 as corner, 2 dc) in next corner, ch 1 as side] 4 times}`},
				Explain: `The round is printed once more for motifs that are joined on one side and on two. For that its corners and side spaces must be worked one after the other, each made by chains with the label.`},
			Es: Wording{Message: `la última vuelta de {part}, tal como está escrita, no se puede dividir en lados unidos y lados libres`, Mark: `habría que unir {need} y se llega a {have}`,
				Help:    map[string]string{"": `poner los nombres en las propias cadenas, una esquina tras otra: {=[(2 dc, ch 2 as corner, 2 dc) in next corner, ch 1 as side] 4 times}`},
				Explain: `La vuelta se imprime de nuevo para los motivos que se unen por un lado y por dos. Para ello sus esquinas y espacios deben hacerse uno tras otro, cada uno con cadenas que lleven el nombre.`},
			Example: joined("  in joined rounds\n  ring\n  round: [2 dc in ring, ch 2 as corner] 4 times = 8 dc, 4 corners\n  round: (2 dc, ch 2 as corner, 2 dc) in each space = 16 dc, 4 corners",
				"2 across, 3 down", "joined in round 2: at each corner, sl st in place of 1 ch"),
			Fixed: joined("  in joined rounds\n  ring\n  round: [2 dc in ring, ch 2 as corner] 4 times = 8 dc, 4 corners\n  round: [(2 dc, ch 2 as corner, 2 dc) in next corner] 4 times = 16 dc, 4 corners",
				"2 across, 3 down", "joined in round 2: at each corner, sl st in place of 1 ch")},

		{Code: "OV489", Severity: Error,
			En: Wording{Message: `the side of a motif is a length`, Mark: `is no length`,
				Help:    map[string]string{"": `write it with its unit: {=each 12 cm}`},
				Explain: `Joined and blocked, all motifs are squares of one size. The width and height of the whole follow from it.`},
			Es: Wording{Message: `el lado de un motivo es una longitud`, Mark: `no es una longitud`,
				Help:    map[string]string{"": `escribirlo con su unidad: {=each 12 cm}`},
				Explain: `Unidos y bloqueados, todos los motivos son cuadrados de un mismo tamaño. De él salen el ancho y el largo del conjunto.`},
			Example: joined(square, "2 across, 3 down", "each 12", joinedAt),
			Fixed:   joined(square, "2 across, 3 down", "each 12 cm", joinedAt)},

		{Code: "OV494", Severity: Error,
			En: Wording{Message: `how large {part} is cannot be told, for the size of its motifs is not said`, Mark: `is so many motifs wide or high`,
				Help:    map[string]string{"": `say how long a side of one is, in the block of {part}: {=each 12 cm}`},
				Explain: `A gauge of single stitches says little of a motif. One that is joined and blocked is measured instead.`},
			Es: Wording{Message: `no se puede saber cuánto mide {part}, porque no se dice el tamaño de sus motivos`, Mark: `mide tantos motivos de ancho o de largo`,
				Help:    map[string]string{"": `decir cuánto mide el lado de uno, en el bloque de {part}: {=each 12 cm}`},
				Explain: `La muestra de un punto suelto dice poco de un motivo. En su lugar se mide uno ya unido y bloqueado.`},
			Example: joined(square, "2 across, 3 down", joinedAt) + "\nmeasure\n  width = width of throw\nend\n",
			Fixed:   joined(square, "2 across, 3 down", "each 12 cm", joinedAt) + "\nmeasure\n  width = width of throw\nend\n"},
	}
}

// square is a motif of two rounds.
const square = `  in joined rounds
  ring
  round: [3 dc in ring, ch 2 as corner] 4 times = 12 dc, 4 corners
  round: [(3 dc, ch 2 as corner, 3 dc) in next corner, ch 1 as side] 4 times = 24 dc, 4 corners, 4 sides`

// joinedAt joins it.
const joinedAt = "joined in round 2: at each corner and each side, sl st in place of 1 ch"

// joined is motifs joined to one another: the lines of the motif, and those of the whole.
func joined(motif string, lines ...string) string {
	text := "\nmotifs throw of strip\n  title en \"Throw\" es \"Manta\"\n"
	for _, l := range lines {
		text += "  " + l + "\n"
	}
	return trialOf(motif, text+"end\n")
}
