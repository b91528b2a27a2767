package diag

// Codes 49x: stitches.
var stitches = []Entry{
	{Code: "OV490", Severity: Error,
		En: Wording{Message: `{word} stands alone: a picot goes on the stitch before it`, Mark: `has no place of its own`,
			Help:    map[string]string{"": `write it between commas: sc in next 3, picot. Another size is ch4picot`},
			Explain: `A picot is a little ring of chains on the stitch just made. It takes no place and makes none, so nothing can be said of where it goes or how many go into one place. Several are repeated with what stands between: [sc in next 3, picot] around.`},
		Es: Wording{Message: `{word} va solo: un piquito se hace sobre el punto anterior`, Mark: `no tiene lugar propio`,
			Help:    map[string]string{"": `escribirlo entre comas: sc in next 3, picot. Otro tamaño es ch4picot`},
			Explain: `Un piquito es un aro pequeño de cadenetas sobre el punto recién tejido. No ocupa ningún lugar ni da ninguno, así que no se dice dónde va ni cuántos van en un lugar. Varios se repiten con lo que va entre ellos: [sc in next 3, picot] around.`},
		Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: [sc in next 2, picot in next] 2 times"),
		Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: [sc in next 2, picot] around = 6 sc, 3 picots")},

	{Code: "OV491", Severity: Error,
		En: Wording{Message: `{word} is no group: {group} is made of {least} to {most} {of|or}`,
			Mark:    `cannot be made`,
			Help:    map[string]string{"": `the number stands between the stitch and the group: dc3cl, dc5bob, dc5pop, hdc3puff, dc5shell, ch4picot`},
			Explain: `A group is several stitches in one place. A puff is made of the loops of half double crochets, a picot of chains, the others of any stitch; far more than a hook holds is taken for a slip of the pen.`},
		Es: Wording{Message: `{word} no es un grupo: {group} se hace con {least} a {most} {of|or}`,
			Mark:    `no se puede hacer`,
			Help:    map[string]string{"": `el número va entre el punto y el grupo: dc3cl, dc5bob, dc5pop, hdc3puff, dc5shell, ch4picot`},
			Explain: `Un grupo son varios puntos en un solo lugar. Un punto puf se hace con las hebras de medios puntos altos, un piquito con cadenetas y los demás con cualquier punto; un número muy superior al que cabe en el ganchillo se toma por un error al escribir.`},
		Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: dc3puff in each"),
		Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: hdc3puff in each = 6 hdc3puff")},

	{Code: "OV492", Severity: Error,
		En: Wording{Message: `{word} is made of another stitch, and here a plain one is meant`, Mark: `not a plain stitch`,
			Help:    map[string]string{"": `name the stitch alone: sc, hdc, dc`},
			Explain: `Gauges, swatches, the base of a part, the height of your own stitches and beginning chains are those of plain stitches: not of a decrease, a group, or a stitch round a post. Groups and chains cannot be drawn together either.`},
		Es: Wording{Message: `{word} se hace con otro punto, y aquí va un punto sencillo`, Mark: `no es un punto sencillo`,
			Help:    map[string]string{"": `nombrar solo el punto: sc, hdc, dc`},
			Explain: `La muestra, el punto base de una pieza, la altura de los puntos propios y las cadenetas del comienzo son de puntos sencillos: no de una disminución, un grupo ni un punto en relieve. Tampoco se cierran juntos grupos ni cadenetas.`},
		Example: flat("  base dc3cl\n  chain 8\n  row: sc in each = 8"),
		Fixed:   flat("  base dc\n  chain 8\n  row: sc in each = 8")},
}
