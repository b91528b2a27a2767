package diag

// Codes 715 to 749: what is needed, from yarn to buttons.

var materials = []Entry{
	{Code: "OV715", Severity: Error,
		En: Wording{
			Message: `what a sample weighs is a weight above zero`,
			Mark:    `this is none`,
			Help:    map[string]string{"": `write it in grams: weight 214 g, or weight sand 180 g, kelp 34 g`},
			Explain: `The sample is put on the scales when it is done, all of it or what was used of each yarn. From its weight, and the
fabric each size has, the yarn of all sizes is worked out.`},
		Es: Wording{
			Message: `lo que pesa una pieza de prueba es un peso mayor que cero`,
			Mark:    `esto no lo es`,
			Help:    map[string]string{"": `escríbalo en gramos: weight 214 g, o weight sand 180 g, kelp 34 g`},
			Explain: `La pieza de prueba se pesa al terminarla, entera o lo gastado de cada hilo. Con su peso, y el tejido que tiene cada
talla, se calcula el hilo de todas.`},
		Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall)+"\nsample \"S\"\n  weight 40 cm\nend", kelpPart, ""),
		Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall)+"\nsample \"S\"\n  weight 40 g\nend", kelpPart, "")},
}
