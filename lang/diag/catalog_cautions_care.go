package diag

// cautionsOfCare are findings that ask for care, and which the designer may mean.
func cautionsOfCare() []Entry {
	return []Entry{
		{Code: "OV920", Severity: Warning,
			En: Wording{
				Message: `a cord on what a child wears on the head, on the hands or round the neck needs care`,
				Mark:    `a caution prints with this step`,
				Help:    map[string]string{"": `shape the piece so that it stays on without a cord`},
				Explain: `Hats, bibs, scarves and mittens are outside the standard for cords on clothes, but the next edition says to use its limits for
them, and cords there have the same dangers. The caution prints; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `un cordón en lo que un niño lleva en la cabeza, en las manos o al cuello exige cuidado`,
				Mark:    `con este paso se imprime una precaución`,
				Help:    map[string]string{"": `dar a la pieza una forma que se sujete sin cordón`},
				Explain: `Los gorros, baberos, bufandas y manoplas quedan fuera de la norma de cordones en ropa, pero la próxima edición dice que se usen sus
límites también en ellos, y sus cordones tienen los mismos peligros. La precaución se imprime; deciden la ley local y un laboratorio
de ensayo acreditado.`},
			Example: childTrial("hat", "24 (36) months", "brim", "cord with kelp, length 60 (65) cm, through brim round 2, ends plain, fixed"),
			Fixed:   childTrial("hat", "24 (36) months", "brim", "block")},

		{Code: "OV921", Severity: Warning,
			En: Wording{
				Message: `{part} on clothes for a child under 3 need care`,
				Mark:    `a caution prints with this step`,
				Help:    map[string]string{"": `fix them through backing fabric and try each with a firm pull`},
				Explain: `A button or another hard part that comes off can be swallowed. On clothes they are not banned, but must stand a firm pull. The caution
prints; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `hay que tener cuidado con {part} en ropa para un menor de 3 años`,
				Mark:    `con este paso se imprime una precaución`,
				Help:    map[string]string{"": `fijarlos sobre un refuerzo y probar cada pieza con un tirón fuerte`},
				Explain: `Un botón u otra pieza dura que se suelta se puede tragar. En la ropa no están prohibidos, pero deben aguantar un tirón fuerte. La
precaución se imprime; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: childTrial("romper", "12 (18) months", "band", "button 12 mm, 3"),
			Fixed:   childTrial("romper", "12 (18) months", "band", "block")},

		{Code: "OV922", Severity: Warning,
			En: Wording{
				Message: `a pompom for a child under 3 needs care`,
				Mark:    `a caution prints with this step`,
				Help:    map[string]string{"": `leave it out for the youngest, or sew it through and through`},
				Explain: `A pompom can be pulled apart and mouthed. The figure behind this rule is recalled and was not read, so the page prints the
caution without it. Local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `un pompón para un menor de 3 años exige cuidado`,
				Mark:    `con este paso se imprime una precaución`,
				Help:    map[string]string{"": `no ponerlo para los más pequeños, o coserlo de lado a lado`},
				Explain: `Un pompón se puede deshacer a tirones y acabar en la boca. La cifra de esta regla es de memoria y no se leyó, así que la página
imprime la precaución sin ella. Deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: childTrial("leggings", "12 (18) months", "band", "pompom with kelp, 5 cm, 80 wraps"),
			Fixed:   childTrial("leggings", "12 (18) months", "band", "block")},

		{Code: "OV923", Severity: Warning,
			En: Wording{
				Message: `openings of {found} in a baby's things are larger than {limit}`,
				Mark:    `by the gauge, as the fabric lies`,
				Help:    map[string]string{"": `choose a denser stitch, or line the piece`},
				Explain: `Openings of about 5 to 10 mm can trap a baby's finger or toe. No standard for clothes gives a figure; 5 mm is a limit of this
tool, taken from rules for cots and playpens. The opening is an estimate. The caution prints; the advice of a licensed health
professional and local law come first.`},
			Es: Wording{
				Message: `unas aberturas de {found} en cosas de bebé son mayores que {limit}`,
				Mark:    `según la muestra, con el tejido en reposo`,
				Help:    map[string]string{"": `elegir un punto más denso o forrar la pieza`},
				Explain: `Las aberturas de unos 5 a 10 mm pueden atrapar un dedo del bebé. Ninguna norma de ropa da una cifra; 5 mm es un límite de esta
herramienta, tomado de reglas para cunas y parques. La abertura es una estimación. La precaución se imprime; prevalecen el consejo de un
profesional sanitario titulado y la ley local.`},
			Example: lacyTrial("leggings", "3 (6) months", "2 (3)"), Fixed: lacyTrial("leggings", "24 (36) months", "2 (3)")},

		{Code: "OV924", Severity: Warning,
			En: Wording{
				Message: `this is for a child, and its kind needs care: {=kind {name}}`,
				Mark:    `a caution prints`,
				Help:    map[string]string{"": `read the caution that prints, and make sure that the pattern keeps to it`},
				Explain: `Babies have suffocated asleep in soft things with sides, and in sleep bags whose neck was too wide; nightdresses, robes and
dressing-up clothes have caught fire. A cocoon is a thing for a few minutes awake and within reach. The caution prints; the advice of a licensed health professional and local law come first.`},
			Es: Wording{
				Message: `esta pieza es para un niño y su clase exige cuidado: {=kind {name}}`,
				Mark:    `se imprime una precaución`,
				Help:    map[string]string{"": `leer la precaución que se imprime y comprobar que el patrón la respeta`},
				Explain: `Hay bebés que se han asfixiado dormidos en cosas blandas con bordes y en sacos de dormir de cuello demasiado ancho; hay
camisones, batas y disfraces que han ardido. Un saco capullo es para unos minutos, con el bebé despierto y al alcance de la mano. La precaución se imprime; prevalecen el consejo de un profesional sanitario titulado y
la ley local.`},
			Example: childTrial("cocoon", "3 (6) months", "body", "block"),
			Fixed:   childTrial("blanket", "3 (6) months", "body", "block")},
	}
}
