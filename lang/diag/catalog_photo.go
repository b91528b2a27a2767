package diag

import "strings"

// Codes 728 to 735: the photograph.

// photographed is a pattern whose header names a picture.
func photographed(line string) string {
	return strings.Replace(swatchOf("", plainPart, ""), "terms us", "terms us\n  "+line, 1)
}

const hatInWords = ` en "A blue hat." es "Un gorro azul."`

func photos() []Entry {
	return []Entry{
		{Code: "OV728", Severity: Error,
			En: Wording{
				Message: `the name {={file}} leads out of the folder of the source`,
				Mark:    `not a name inside it`,
				Help:    map[string]string{"": `put the picture beside the source and name it: {=photo "hat.jpg"}, or {=photo "pictures/hat.jpg"} for one in a folder there`},
				Explain: `A pattern and its picture are passed on together, so the picture lies beside the source or in a folder there. A name
begins in that folder, has / between folders, and no .., \ or disk in it,
nor a name that some computers keep for a device; then it holds on every computer.`},
			Es: Wording{
				Message: `el nombre {={file}} sale de la carpeta del patrón`,
				Mark:    `no es un nombre dentro de ella`,
				Help:    map[string]string{"": `poner la foto junto al patrón y nombrarla: {=photo "hat.jpg"}, o {=photo "pictures/hat.jpg"} si está en una carpeta de ahí`},
				Explain: `El patrón y su foto se entregan juntos; por eso la foto está junto al patrón o en una carpeta de ahí. El nombre empieza
en esa carpeta, lleva / entre carpetas y no tiene .., \ ni unidad de disco,
ni un nombre que algunos ordenadores reservan para un dispositivo; así vale en cualquier ordenador.`},
			Example: photographed(`photo "../hat.jpg"` + hatInWords),
			Fixed:   photographed(`photo "hat.jpg"` + hatInWords)},

		{Code: "OV729", Severity: Error,
			En: Wording{
				Message: `there is no picture {={file}} beside the source`,
				Mark:    `this file was not found`,
				Help:    map[string]string{"": `put the file there, or write its name as it is, with capitals and ending`},
				Explain: `The name of a picture is looked for in the folder of the source. On some computers {=Hat.JPG} and {=hat.jpg} are two files.`},
			Es: Wording{
				Message: `no hay ninguna foto {={file}} junto al patrón`,
				Mark:    `este archivo no se encontró`,
				Help:    map[string]string{"": `poner ahí el archivo, o escribir su nombre tal como es, con mayúsculas y terminación`},
				Explain: `El nombre de una foto se busca en la carpeta del patrón. En algunos ordenadores {=Hat.JPG} y {=hat.jpg} son dos archivos.`},
			Example: photographed(`photo "Hat.JPG"` + hatInWords),
			Fixed:   photographed(`photo "hat.jpg"` + hatInWords)},

		{Code: "OV730", Severity: Error,
			En: Wording{
				Message: `{={file}} is not a picture that can be read`,
				Mark:    `JPEG and PNG are read`,
				Help: map[string]string{
					"":       `save it as JPEG or PNG`,
					"format": `save it as JPEG or PNG; a new ending alone does not change what is in a file`,
					"broken": `copy the file again, or save it again as an ordinary JPEG or PNG: it ends early, or is of a rare kind`,
					"closed": `see to it that the name is that of a file and that it may be opened`},
				Explain: `A page takes a picture as JPEG or PNG. Telephones often write HEIC, and cameras raw files; both can save a JPEG. A file
that was cut short while it was copied looks whole from outside.`},
			Es: Wording{
				Message: `{={file}} no es una foto que se pueda leer`,
				Mark:    `se leen JPEG y PNG`,
				Help: map[string]string{
					"":       `guardarla como JPEG o PNG`,
					"format": `guardarla como JPEG o PNG; cambiar solo la terminación no cambia lo que hay en el archivo`,
					"broken": `copiar otra vez el archivo, o guardarlo otra vez como JPEG o PNG corriente: está cortado o es de una clase poco usual`,
					"closed": `comprobar que el nombre es el de un archivo y que se puede abrir`},
				Explain: `Una página admite fotos en JPEG o PNG. Los teléfonos escriben a menudo HEIC y las cámaras archivos en bruto; de
los dos se puede guardar un JPEG. Un archivo que se cortó al copiarlo parece entero por fuera.`},
			Example: photographed(`photo "broken.jpg"` + hatInWords),
			Fixed:   photographed(`photo "hat.jpg"` + hatInWords)},

		{Code: "OV731", Severity: Error,
			En: Wording{
				Message: `the picture {={file}} is too large`,
				Mark:    `more than {mb} MB or {mp} million pixels, or as much once unpacked`,
				Help: map[string]string{
					"":       `save it smaller: {need} pixels across are enough for the page`,
					"bytes":  `save it smaller than {mb} MB: {need} pixels across are enough for the page`,
					"pixels": `save it with less than {mp} million pixels: {need} across are enough for the page`,
					"heavy":  `save it as a plain JPEG, not a progressive one and no longer than {side} pixels: {need} across are enough for the page`},
				Explain: `A larger picture does not print better, and each one is read whole. What the page does not show is left out of the
PDF in any case.`},
			Es: Wording{
				Message: `la foto {={file}} es demasiado grande`,
				Mark:    `más de {mb} MB o de {mp} millones de píxeles, u otro tanto al abrirla`,
				Help: map[string]string{
					"":       `guardarla más pequeña: {need} píxeles de ancho bastan para la página`,
					"bytes":  `guardarla con menos de {mb} MB: {need} píxeles de ancho bastan para la página`,
					"pixels": `guardarla con menos de {mp} millones de píxeles: {need} de ancho bastan para la página`,
					"heavy":  `guardarla como JPEG sencillo, que no sea progresivo ni pase de {side} píxeles de lado: {need} de ancho bastan para la página`},
				Explain: `Una foto mayor no se imprime mejor, y cada una se lee entera. Lo que la página no muestra no pasa al PDF en ningún
caso.`},
			Example: photographed(`photo "huge.png"` + hatInWords),
			Fixed:   photographed(`photo "hat.jpg"` + hatInWords)},

		{Code: "OV732", Severity: Warning,
			En: Wording{
				Message: `the picture {={file}} looks coarse in print: {inch} pixels an inch`,
				Mark:    `{have} pixels across`,
				Help:    map[string]string{"": `take one of {need} pixels across: at {mm} mm these are {good} an inch, as printers ask for`},
				Explain: `A page shows the picture 80 mm wide. Printers ask for 300 pixels an inch at that size; below 150 the single pixels are
seen. A picture that was sent by a messenger has often been made smaller on the way: the one in the camera is larger.`},
			Es: Wording{
				Message: `la foto {={file}} se ve basta impresa: {inch} píxeles por pulgada`,
				Mark:    `{have} píxeles de ancho`,
				Help:    map[string]string{"": `usar una de {need} píxeles de ancho: a {mm} mm son {good} por pulgada, como piden las imprentas`},
				Explain: `La página muestra la foto con 80 mm de ancho. Las imprentas piden 300 píxeles por pulgada a ese tamaño; por debajo de 150
se distinguen los píxeles. Una foto enviada por mensajería llega a menudo reducida: la de la cámara es mayor.`},
			Example: photographed(`photo "small.jpg"` + hatInWords),
			Fixed:   photographed(`photo "hat.jpg"` + hatInWords)},
	}
}
