package diag

// Codes 7xx, continued: the yarn of a part to its end.

// loosePart is a second part, which is fastened off.
const loosePart = `
part band
  title en "Band" es "Banda"
  in rows
  chain 12
  4 rows: sc in each = 12
  fasten off
end
`

func yarnEnds() []Entry {
	return []Entry{
		{Code: "OV733", Severity: Error,
			En: Wording{
				Message: `{part} is worked on here, and its yarn was fastened off already`,
				Mark:    `with which yarn?`,
				Related: map[string]string{"cut": `the yarn is cut here`},
				Help:    map[string]string{"": `put {=fasten off} behind the last row, name the yarn that is joined here, or begin a part of its own with {=from}`},
				Explain: `To fasten off is to cut the yarn, and so is {=close through}. What is worked behind it needs yarn that is joined: another
one, or the same one named again, in the row or by {=yarn} before it; the pages then say to join it. Where the work goes on at another place, it is
a part of its own, begun with {=from}, which joins the yarn by itself. A note between the two is taken to say how the work goes on.`},
			Es: Wording{
				Message: `aquí se sigue tejiendo {part}, pero su hilo ya se remató`,
				Mark:    `¿con qué hilo?`,
				Related: map[string]string{"cut": `aquí se corta el hilo`},
				Help:    map[string]string{"": `poner {=fasten off} tras la última hilera, nombrar el hilo que se une aquí, o comenzar otra pieza con {=from}`},
				Explain: `Al rematar se corta el hilo, y también con {=close through}. Lo que se teja después necesita un hilo que se una: otro, o
el mismo si se nombra de nuevo, en la hilera o antes con {=yarn}; las páginas dicen entonces que se una. Si la labor sigue en otro lugar, es una
pieza aparte que comienza con {=from}, y el hilo se une solo. Si hay una nota entre ambos, se supone que dice cómo se sigue.`},
			Example: flat("  chain 20\n  fasten off\n  2 rows: sc in each = 20"),
			Fixed:   flat("  chain 20\n  2 rows: sc in each = 20\n  fasten off")},

		{Code: "OV734", Severity: Warning,
			En: Wording{
				Message: `the yarn of {part} was fastened off already`,
				Mark:    `a second time`,
				Related: map[string]string{"first": `the first time`},
				Help:    map[string]string{"": `leave one of the two out`},
				Explain: `Once the yarn is cut there is nothing left to fasten off, and the pages would say it twice. As a rule a line was copied, or
what was to be worked between the two was left out.`},
			Es: Wording{
				Message: `el hilo de {part} ya se remató`,
				Mark:    `por segunda vez`,
				Related: map[string]string{"first": `la primera vez`},
				Help:    map[string]string{"": `quitar uno de los dos`},
				Explain: `Una vez cortado el hilo no queda nada que rematar, y las páginas lo dirían dos veces. Por lo común se copió una línea o falta
lo que había que tejer entre los dos.`},
			Example: flat("  chain 20\n  2 rows: sc in each = 20\n  fasten off\n  fasten off"),
			Fixed:   flat("  chain 20\n  2 rows: sc in each = 20\n  fasten off")},

		{Code: "OV735", Severity: Warning,
			En: Wording{
				Message: `{part} ends with its yarn on the hook: it is not fastened off, and no part goes on from there`,
				Mark:    `ends with an open loop`,
				Help:    map[string]string{"": `end it with {=fasten off}`},
				Explain: `Other parts of this pattern are fastened off, so a maker of this one is left to wonder whether the yarn stays for what
follows. Nothing is said where another part begins {=from} its last row, or goes all round it. Where the loop is meant to stay open, {=meant} says why.`},
			Es: Wording{
				Message: `{part} termina con el hilo en el ganchillo: no se remata y ninguna pieza sigue desde ahí`,
				Mark:    `queda sin rematar`,
				Help:    map[string]string{"": `terminarla con {=fasten off}`},
				Explain: `Otras piezas de este patrón se rematan, y quien teje esta se queda sin saber si el hilo se conserva para lo que viene. No
se avisa si otra pieza comienza con {=from} en su última hilera o la rodea entera. Si ha de quedar sin rematar, {=meant} dice por qué.`},
			Example: trialOf("  in rows\n  chain 20\n  4 rows: sc in each = 20", loosePart),
			Fixed:   trialOf("  in rows\n  chain 20\n  4 rows: sc in each = 20\n  fasten off", loosePart)},
	}
}
