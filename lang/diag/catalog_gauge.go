package diag

import "ovillo/lang/lazy"

// Codes 326 to 333: the gauge, by stitch and way of working.

// tab is a small part that is worked with the main hook.
const tab = `
part tab
  title en "Tab" es "Lengüeta"
  in rows
  chain 8
  row: sc in each = 8
  fasten off
end
`

// hoop is a small source with a part worked in rounds, whose depth is measured.
func hoop(gauge, settings string) string {
	return `pattern trial
  title en "Trial hoop" es "Aro de prueba"
  terms us
end

sizes "S", "M"
  age 18 years
end

` + gauge + `

part hoop
  title en "Hoop" es "Aro"
` + settings + `
  in joined rounds
  chain 20, join
  10 rounds: hdc in each = 20
  fasten off
end

measure
  depth en "Depth" es "Alto" = height of hoop
end
`
}

// fansStrip is a small source in a stitch pattern over a multiple of 4 stitches.
func fansStrip(gauge string) string {
	return gauge + "\n\n" + patterned("  multiple of 4\n  row 1: sc in each", "  chain 20\n  10 rows of fans = 20")
}

func gauges() []Entry {
	return []Entry{
		{Code: "OV326", Severity: Error,
			En: Wording{
				Message: `{={stitch}} was counted in rows and in rounds, and nothing says which is meant here`,
				Mark:    `in rows or in rounds?`,
				Help:    map[string]string{"": `say it behind the stitch: {=stitches(52 cm, {stitch}, rounds)}`},
				Explain: `A stitch with two gauges is measured by the one that was counted as it is worked. In a part that is known. A value that
stands outside the parts does not say how it will be worked, and the two counts differ.`},
			Es: Wording{
				Message: `{={stitch}} tiene una muestra en hileras y otra en vueltas, y aquí nada dice cuál vale`,
				Mark:    `¿en hileras o en vueltas?`,
				Help:    map[string]string{"": `decirlo detrás del punto: {=stitches(52 cm, {stitch}, rounds)}`},
				Explain: `Un punto con dos muestras se mide por la que se contó tal como se teje. En una pieza eso se sabe. Un valor que está fuera de
las piezas no dice cómo se tejerá, y las dos cuentas no son iguales.`},
			Example: swatchOf("gauge 10 cm\n  sc 16 sts, 18 rows\n  sc 15 sts, 17 rounds\nend\n\nlet wide = stitches(20 cm, sc)", "  in rows\n  chain wide\n  row: sc in each = wide", ""),
			Fixed:   swatchOf("gauge 10 cm\n  sc 16 sts, 18 rows\n  sc 15 sts, 17 rounds\nend\n\nlet wide = stitches(20 cm, sc, rows)", "  in rows\n  chain wide\n  row: sc in each = wide", "")},

		{Code: "OV327", Severity: Error,
			En: Wording{
				Message: `the gauge of {={stitch}} is given twice`,
				Mark:    `the second one`,
				Related: map[string]string{"first": `the first one`},
				Help:    map[string]string{"": `keep one of them; two stand beside each other only if one counts rows and the other rounds, or if they name two hooks`},
				Explain: `A length becomes stitches by one gauge. A stitch may have one for rows and one for rounds, since the same hand works
them differently, and one for each hook. A line that gives no rows serves every way of working, so that no other may stand
beside it.`},
			Es: Wording{
				Message: `la muestra de {={stitch}} aparece dos veces`,
				Mark:    `la segunda`,
				Related: map[string]string{"first": `la primera`},
				Help:    map[string]string{"": `dejar una; solo pueden estar las dos si una cuenta hileras y la otra vueltas, o si nombran ganchillos distintos`},
				Explain: `Una longitud se convierte en puntos según una sola muestra. Un punto puede tener una en hileras y otra en vueltas, porque
la misma mano las teje de otra manera, y una con cada ganchillo. Una línea que no da hileras vale para toda forma de tejer, así
que ninguna otra puede acompañarla.`},
			Example: swatchOf("gauge 10 cm\n  sc 16 sts, 18 rows\n  sc 15 sts, 17 rows\nend", plainPart, ""),
			Fixed:   swatchOf("gauge 10 cm\n  sc 16 sts, 18 rows\n  sc 15 sts, 17 rounds\nend", plainPart, "")},

		{Code: "OV328", Severity: Note,
			En: Wording{
				Message: `{parts} {parts|is|are} worked in {way}, and {parts|its|their} lengths rest on a gauge of {={stitch}} counted in {other}`,
				Help:    map[string]string{"": `count a swatch worked in {way}, and give it a line of its own: {={stitch} 16 sts, 12 {word}}`},
				Explain: `In rows each row is seen from the other side than the one before; in rounds the right side always faces, and the
stitches lean. So the same hand and hook give another count, in height above all. A gauge counted in the other way serves as
long as there is none of its own. (Common practice.)`},
			Es: Wording{
				Message: `{parts} se {parts|teje|tejen} en {way}, y sus longitudes se calculan con una muestra de {={stitch}} contada en {other}`,
				Help:    map[string]string{"": `contar una muestra tejida en {way} y darle su propia línea: {={stitch} 16 sts, 12 {word}}`},
				Explain: `En hileras, cada hilera se ve por el lado contrario de la anterior; en vueltas se ve siempre el derecho, y los puntos se
inclinan. Por eso la misma mano con el mismo ganchillo da otra cuenta, sobre todo en altura. Mientras no haya una muestra propia,
vale la contada de la otra manera. (Práctica común.)`},
			Example: hoop("gauge 10 cm\n  hdc 16 sts, 12 rows\nend", "  base hdc"),
			Fixed:   hoop("gauge 10 cm\n  hdc 16 sts, 12 rounds\nend", "  base hdc")},

		{Code: "OV329", Severity: Note,
			En: Wording{
				Message: `{parts} {parts|works|work} {={stitch}} with a hook of {hook}, and {parts|its|their} lengths rest on a gauge counted with {other}`,
				Help:    map[string]string{"": `if it was counted with {hook}, say so behind the line: {=hook {size}}; else count a swatch with it, and give it a line of its own`},
				Explain: `A smaller hook makes smaller stitches, which is what it is taken for. A gauge counted with another hook tells nothing
sure about the piece. A line of the gauge without a hook was counted with the main one.`},
			Es: Wording{
				Message: `en {parts} se teje {={stitch}} con un ganchillo de {hook}, y sus longitudes se calculan con una muestra contada con el de {other}`,
				Help:    map[string]string{"": `si se contó con el de {hook}, decirlo detrás de la línea: {=hook {size}}; si no, contar una muestra con él y darle su propia línea`},
				Explain: `Un ganchillo más fino hace puntos más pequeños; para eso se usa. Una muestra contada con otro ganchillo no dice nada seguro
de la pieza. Una línea de la muestra sin ganchillo se contó con el principal.`},
			Example: hoop("gauge 10 cm\n  hdc 16 sts, 12 rounds\nend\n\nhook 4 mm", "  hook 3.5 mm") + tab,
			Fixed:   hoop("gauge 10 cm\n  hdc 16 sts, 12 rounds, hook 3.5 mm\nend\n\nhook 4 mm", "  hook 3.5 mm") + tab},

		{Code: "OV330", Severity: Warning,
			En: Wording{
				Message: `the gauge is counted over {have}`,
				Mark:    `at least {=10 cm} or {=4 in}`,
				Help:    map[string]string{"": `count over 10 cm or more, in the middle of a larger piece`},
				Explain: `Half a stitch misread over 5 cm is one stitch over 10 cm, and ten over the width of a garment; in dense fabric it is more.
A count over a short length that is then doubled is the usual cause of a piece that comes out wrong. Gauges are printed over 10 cm
or 4 in.`},
			Es: Wording{
				Message: `la muestra se cuenta en {have}`,
				Mark:    `al menos {=10 cm} o {=4 in}`,
				Help:    map[string]string{"": `contar en 10 cm o más, en el centro de una pieza mayor`},
				Explain: `Medio punto mal leído en 5 cm es un punto en 10 cm, y diez en el ancho de una prenda; en un tejido denso, más. Contar en
una longitud corta y multiplicar es la causa habitual de que una pieza no salga a medida. Las muestras se publican para 10 cm o 4 pulgadas.`},
			Example: swatchOf("gauge 5 cm\n  sc 8 sts, 9 rows\nend", plainPart, ""),
			Fixed:   swatchOf("gauge 10 cm\n  sc 16 sts, 18 rows\nend", plainPart, "")},

		{Code: "OV331", Severity: Error,
			En: Wording{
				Message: `{={name}} has no repeat that a gauge could count`,
				Mark:    `repeats of what?`,
				Help:    map[string]string{"": `count stitches: {={name} 16 sts, 18 rows}; or count repeats of a stitch pattern that says its multiple, the same in every size`},
				Explain: `A gauge counts repeats where single stitches cannot be told apart. How many stitches a repeat takes is what the line
{=multiple of} a stitch pattern says.`},
			Es: Wording{
				Message: `{={name}} no tiene repetición que una muestra pueda contar`,
				Mark:    `¿repeticiones de qué?`,
				Help:    map[string]string{"": `contar puntos: {={name} 16 sts, 18 rows}; o repeticiones de una puntada que diga su múltiplo, igual en todas las tallas`},
				Explain: `Una muestra cuenta repeticiones donde no se distinguen los puntos. Cuántos puntos ocupa una repetición lo dice la línea
{=multiple of} de la puntada.`},
			Example: fansStrip("gauge 10 cm\n  sc 4 repeats, 18 rows\nend"),
			Fixed:   fansStrip("gauge 10 cm\n  fans 4 repeats, 18 rows\nend")},

		{Code: "OV332", Severity: Note,
			En: Wording{
				Message: `by this gauge {={stitch}} is {found} times as tall as it is wide; usual is {usual}`,
				Help: map[string]string{
					"printed": `check that stitches and rows are not exchanged, and that both are counted over the same length (usual by gauges in print)`,
					"memory":  `check that stitches and rows are not exchanged, and that both are counted over the same length (usual by common practice, from memory)`},
				Explain: `Each stitch has a height for its width that hardly depends on the yarn: single crochet is nearly square, double crochet
nearly twice as tall as it is wide. A gauge that lies beyond half or twice of that is as a rule a slip of the pen.`},
			Es: Wording{
				Message: `según esta muestra, {={stitch}} es {found} veces tan alto como ancho; lo habitual es {usual}`,
				Help: map[string]string{
					"printed": `comprobar que puntos e hileras no estén cambiados y que se cuenten en la misma longitud (habitual según muestras publicadas)`,
					"memory":  `comprobar que puntos e hileras no estén cambiados y que se cuenten en la misma longitud (habitual por práctica común, de memoria)`},
				Explain: `Cada punto tiene una altura para su ancho que apenas depende del hilo: el punto bajo es casi cuadrado, el punto alto casi el
doble de alto que de ancho. Una muestra que da menos de la mitad o más del doble suele ser un error al escribir.`},
			Example: swatchOf("gauge 10 cm\n  dc 9 sts, 18 rows\nend", plainPart, ""),
			Fixed:   swatchOf("gauge 10 cm\n  dc 18 sts, 9 rows\nend", plainPart, "")},

		{Code: "OV333", Severity: Note,
			En: Wording{
				Message: `by the gauge the starting chain of {part} is {share} % {than} than the row on it`,
				Help: map[string]string{
					"narrower": `say that the chain is made with a larger hook, or start with foundation stitches; or count the chains again`,
					"wider":    `count the chains again, or say that the chain is made with a smaller hook`},
				Explain: `A chain is by nature a little narrower than the stitches worked into it, about 5 to 15 % with the same hook. One that is
much narrower draws the edge in, and one that is wider lets it flare. (Common practice, no source.)`},
			Es: Wording{
				Message: `según la muestra, la cadena inicial de {part} es un {share} % más {than} que la hilera que lleva encima`,
				Help: map[string]string{
					"narrower": `decir que la cadena se hace con un ganchillo mayor, o empezar con puntos sin cadena base; o contar de nuevo las cadenas`,
					"wider":    `contar de nuevo las cadenas, o decir que la cadena se hace con un ganchillo menor`},
				Explain: `Una cadena es por naturaleza algo más estrecha que los puntos que se tejen en ella, entre un 5 y un 15 % con el mismo
ganchillo. Si es mucho más estrecha, frunce el borde; si es más ancha, lo ensancha. (Práctica común, sin fuente.)`},
			Example: swatchOf("gauge 10 cm\n  sc 16 sts, 18 rows\n  ch 24 sts\nend", plainPart, ""),
			Fixed:   swatchOf("gauge 10 cm\n  sc 16 sts, 18 rows\n  ch 17 sts\nend", plainPart, "")},

		{Code: "OV334", Severity: Note,
			En: Wording{
				Message: `the two edges of this seam are not compared, since {={stitch}} has no gauge`,
				Help:    map[string]string{"": `add the gauge of {={stitch}} to the {=gauge} block: {={stitch} 16 sts, 18 rows}`},
				Explain: `The edges of a seam must be of one length, or one is eased in. Which length they have is known only by the gauge of their
stitches. Where a seam says {=within}, the gauge is needed.`},
			Es: Wording{
				Message: `los dos bordes de esta costura no se comparan, porque {={stitch}} no tiene muestra`,
				Help:    map[string]string{"": `añadir la muestra de {={stitch}} al bloque {=gauge}: {={stitch} 16 sts, 18 rows}`},
				Explain: `Los bordes de una costura deben medir lo mismo, o uno se embebe. Cuánto miden solo se sabe por la muestra de sus puntos. Donde
una costura dice {=within}, la muestra hace falta.`},
			Example: swatchOf("", plainPart, "\nfinish\n  sew strip.edge to strip.foundation\nend\n"),
			Fixed:   swatchOf(scGauge, plainPart, "\nfinish\n  sew strip.edge to strip.foundation\nend\n")},

		{Code: "OV760", Severity: Warning,
			En: Wording{
				Message: `{={measure}} does not follow your gauge: it comes out at {have} and not at {need}`,
				Help:    map[string]string{"": `{parts} {parts|keeps its|keep their} counts: write those that decide this measure with {=stitches( )} or {=rows( )}, so that they follow a gauge`},
				Explain: `Another gauge changes only counts that are made from lengths. A count that is typed stays as it is, and the piece comes out
in another size. Where this says so, the pattern cannot be worked at that gauge as it is written.`},
			Es: Wording{
				Message: `{={measure}} no sigue a la muestra indicada: queda en {have} y no en {need}`,
				Help:    map[string]string{"": `las cuentas de {parts} no cambian: escribir con {=stitches( )} o {=rows( )} las que deciden esta medida, para que sigan a la muestra`},
				Explain: `Otra muestra solo cambia las cuentas que salen de longitudes. Una cuenta escrita a mano queda como está, y la
pieza sale de otro tamaño. Donde se dice esto, el patrón no se puede tejer con esa muestra tal como está escrito.`},
			Example: atGauge("sc 20 sts, 22 rows", "40 cm", typedPart),
			Fixed:   atGauge("sc 20 sts, 22 rows", "40 cm", madePart)},

		{Code: "OV761", Severity: Warning,
			En: Wording{
				Message: `{={measure}} follows your gauge only in part: it comes out at {have} and not at {need}`,
				Help:    map[string]string{"": `some of its counts are typed, or rounded to a wide multiple: write them with {=stitches( )} or {=rows( )}, or work with another gauge`},
				Explain: `Some of the counts behind this measure are made from lengths and changed with the gauge, others are typed and did not, or the
multiple of a stitch pattern leaves no count that comes nearer. The measure is more than 1 cm away from that of the pattern.`},
			Es: Wording{
				Message: `{={measure}} sigue a la muestra indicada solo en parte: queda en {have} y no en {need}`,
				Help:    map[string]string{"": `algunas de sus cuentas están escritas a mano, o se redondean a un múltiplo amplio: escribirlas con {=stitches( )} o {=rows( )}, o tejer con otra muestra`},
				Explain: `Algunas cuentas de esta medida salen de longitudes y cambiaron con la muestra; otras están escritas a mano y no, o
el múltiplo de la puntada no deja una más cercana. La medida se aleja más de 1 cm de la del patrón.`},
			Example: atGauge("sc 20 sts, 22 rows", "20 cm", partlyMade),
			Fixed:   atGauge("sc 20 sts, 22 rows", "40 cm", madePart)},

		{Code: "OV762", Severity: Warning,
			En: Wording{
				Message: `a motif of {part} is {have} a side at the pattern's gauge, and that does not follow yours`,
				Mark:    `all measures of it rest on that`,
				Help:    map[string]string{"": `join and block some motifs of your own, measure one, and work as many as come nearest to the size you want`},
				Explain: `How large a joined motif is was measured by the designer, since a gauge of single stitches says little of it. At another gauge
it is another size, and the measures of the whole, which are so many motifs wide, are not those that are printed.`},
			Es: Wording{
				Message: `un motivo de {part} mide {have} de lado con la muestra del patrón, y ese tamaño no sigue a la muestra indicada`,
				Mark:    `todas sus medidas salen de ahí`,
				Help:    map[string]string{"": `unir y bloquear algunos motivos, medir uno y tejer los que más se acerquen al tamaño deseado`},
				Explain: `Cuánto mide un motivo unido lo midió quien escribió el patrón, porque la muestra de un punto suelto dice poco de él. Con otra
muestra mide otra cosa, y las medidas del conjunto, que es de tantos motivos, no son las impresas.`},
			Example: "# --gauge \"dc 20 sts, 9 rounds\"\n" + dcRounds + joined(square, "2 across, 3 down", "each 12 cm", joinedAt),
			Fixed:   "# --gauge \"dc 20 sts, 9 rounds\"\n" + dcRounds + joined(square, "2 across, 3 down", joinedAt)},
	}
}

// atGauge is a small source that is checked at a maker's own gauge, as a remark of it says.
func atGauge(gauge, wide, lines string) string {
	return swatchOf("# --gauge \""+gauge+"\"\ngauge 10 cm\n  sc 16 sts, 18 rows\nend\n\nlet wide = stitches("+wide+", sc)", lines, "\nmeasure\n  width = width of strip\nend\n")
}

// dcRounds is the gauge of a stitch in rounds.
const dcRounds = "gauge 10 cm\n  dc 18 sts, 9 rounds\nend\n\n"

const (
	typedPart  = "  in rows\n  chain 64\n  10 rows: sc in each = 64"
	madePart   = "  in rows\n  chain wide\n  10 rows: sc in each = wide"
	partlyMade = "  in rows\n  chain wide + 32\n  10 rows: sc in each = wide + 32"
)

// ownGauge is the remark of an example that is checked at a maker's own gauge.
var ownGauge = lazy.Regexp(`(?m)^# --gauge "(.*)"$`)

// OwnGauge is a maker's gauge at which the sources of the entry are checked, "" for the one of the source.
func (e *Entry) OwnGauge() string {
	if m := ownGauge().FindStringSubmatch(e.Example); m != nil {
		return m[1]
	}
	return ""
}
