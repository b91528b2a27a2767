package diag

// using is a source that uses a file.
func using(name string) string {
	return bandIn("use \""+name+"\"\n", `round: sc in each`)
}

// Codes 106 to 110, 161 and 162: the files that patterns share.
func writingShared() []Entry {
	return []Entry{
		{Code: "OV106", Severity: Error,
			En: Wording{
				Message: `the name {={file}} leads out of the folder of the source`,
				Mark:    `not a name inside it`,
				Help:    map[string]string{"": `put the shared file beside the source and name it: {=use "common.ovillo"}, or {=use "shared/common.ovillo"} for one in a folder there`},
				Explain: `Only files in the folder of the source, and in the folders in it, are read: a pattern that comes from somebody else can
reach nothing else on the computer, and a set that is copied is whole. A name begins in the folder of the file that says it, has
/ between folders, and no .., \ or disk in it,
nor a name that some computers keep for a device; then it holds on every computer. Patterns that share a file lie together.`},
			Es: Wording{
				Message: `el nombre {={file}} sale de la carpeta del patrón`,
				Mark:    `no es un nombre dentro de ella`,
				Help:    map[string]string{"": `poner el archivo común junto al patrón y nombrarlo: {=use "common.ovillo"}, o {=use "shared/common.ovillo"} si está en una carpeta de ahí`},
				Explain: `Solo se leen archivos de la carpeta del patrón y de las que hay en ella: así un patrón ajeno no alcanza nada más del
ordenador, y un conjunto que se copia va completo. El nombre empieza en la carpeta del archivo que lo dice, lleva / entre carpetas y
no tiene .., \ ni unidad de disco,
ni un nombre que algunos ordenadores reservan para un dispositivo; así vale en cualquier ordenador. Los patrones que comparten un archivo están juntos.`},
			Example: using("../common.ovillo"),
			Fixed:   using("common.ovillo")},

		{Code: "OV107", Severity: Error,
			En: Wording{
				Message: `there is no file {={file}} to use`,
				Mark:    `this file was not found`,
				Help:    map[string]string{"": `put the file there, or write its name as it is, with capitals and ending`},
				Explain: `The name of a shared file is looked for in the folder of the file that says {=use}. On some computers {=Common.ovillo} and
{=common.ovillo} are two files.`},
			Es: Wording{
				Message: `no existe el archivo {={file}} que se quiere usar`,
				Mark:    `este archivo no se encontró`,
				Help:    map[string]string{"": `poner ahí el archivo, o escribir su nombre tal como es, con mayúsculas y terminación`},
				Explain: `El nombre de un archivo común se busca en la carpeta del archivo que dice {=use}. En algunos ordenadores
{=Common.ovillo} y {=common.ovillo} son dos archivos.`},
			Example: using("Common.ovillo"),
			Fixed:   using("common.ovillo")},

		{Code: "OV108", Severity: Error,
			En: Wording{
				Message: `the file {={file}} cannot be read`,
				Mark:    `this is to be used`,
				Help: map[string]string{
					"":       `see to it that the name is that of a file and that it may be opened`,
					"closed": `see to it that the name is that of a file and that it may be opened`,
					"folder": `save the source in the folder of the shared file and name it: what comes by the standard input lies in no folder`},
				Explain: `A name may be that of a folder, of something that is no file, or of a file that is closed to others. Links are followed
only inside the folder of the source. A source that comes by the standard input lies in no folder, so that nothing can be read for
it.`},
			Es: Wording{
				Message: `el archivo {={file}} no se puede leer`,
				Mark:    `es el que se quiere usar`,
				Help: map[string]string{
					"":       `comprobar que el nombre es el de un archivo y que se puede abrir`,
					"closed": `comprobar que el nombre es el de un archivo y que se puede abrir`,
					"folder": `guardar el patrón en la carpeta del archivo común e indicar su nombre: lo que llega por la entrada estándar no está en ninguna carpeta`},
				Explain: `El nombre puede ser el de una carpeta, el de algo que no es un archivo, o el de un archivo sin permiso de lectura. Los
enlaces se siguen solo dentro de la carpeta del patrón. Un patrón que llega por la entrada estándar no está en ninguna carpeta, y
para él no se puede leer nada.`},
			Example: using("locked.ovillo"),
			Fixed:   using("common.ovillo")},

		{Code: "OV109", Severity: Error,
			En: Wording{
				Message: `with {={file}} the source is larger than {limit} {limit|megabyte|megabytes}, or longer than {lines} lines`,
				Mark:    `this file is too much`,
				Help:    map[string]string{"": `use a smaller file; most often one of such a size is no shared file at all`},
				Explain: `A source and the files it uses are read as a whole, and together they may have one megabyte and ten thousand lines.
Most often a file of such a size is a picture or a document saved under the wrong name.`},
			Es: Wording{
				Message: `con {={file}} el patrón ocupa más de {limit} MB o tiene más de {lines} líneas`,
				Mark:    `este archivo es demasiado`,
				Help:    map[string]string{"": `usar un archivo más pequeño; casi siempre uno así no es un archivo común`},
				Explain: `El patrón y los archivos que usa se leen enteros, y juntos pueden ocupar 1 MB y tener diez mil líneas.
Casi siempre un archivo tan grande es una imagen o un documento guardado con otro nombre.`},
			Example: using("large.ovillo"),
			Fixed:   using("common.ovillo")},

		{Code: "OV110", Severity: Error,
			En: Wording{
				Message: `files use one another in a circle: {={chain}}`,
				Mark:    `this leads back`,
				Help:    map[string]string{"": `put what both need into a third file, and let each of them use that`},
				Explain: `A file that is used may use others, but not one that is on the way to it: there would be no first one.`},
			Es: Wording{
				Message: `los archivos se usan unos a otros en círculo: {={chain}}`,
				Mark:    `esto vuelve atrás`,
				Help:    map[string]string{"": `poner en un tercer archivo lo que hace falta en los dos, y que cada uno lo tome de ahí`},
				Explain: `Un archivo que se usa puede usar otros, pero no uno que lleva hasta él: no habría ninguno que fuera el primero.`},
			Example: using("circle.ovillo"),
			Fixed:   using("common.ovillo")},

		{Code: "OV161", Severity: Error,
			En: Wording{
				Message: `too many files are used: more than {most}, or one through more than {deep} others`,
				Mark:    `this is one too many`,
				Help:    map[string]string{"": `put what patterns share into fewer files`},
				Explain: `A pattern may use 32 files in all, and a file may be reached through eight others. Nobody can keep in mind where a yarn or
a gauge comes from when there are more.`},
			Es: Wording{
				Message: `se usan demasiados archivos: más de {most}, o uno a través de más de {deep}`,
				Mark:    `aquí sobra uno`,
				Help:    map[string]string{"": `poner lo común de los patrones en menos archivos`},
				Explain: `Un patrón puede usar 32 archivos en total, y a un archivo se puede llegar a través de otros ocho. Con más, nadie recuerda de
dónde viene un hilo o una muestra.`},
			Example: using("deep/1.ovillo"),
			Fixed:   using("common.ovillo")},

		{Code: "OV162", Severity: Error,
			En: Wording{
				Message: `what begins with “{word}” cannot stand in a file that patterns share`,
				Mark:    `this belongs in a pattern`,
				Help:    map[string]string{"": `move it into the pattern that it is about`},
				Explain: `A shared file holds what several patterns have in common: {=sizes}, {=gauge}, {=hook}, {=yarn}, {=notion}, {=let}, {=group}, {=stitch},
{=stitch pattern}, a {=chart} that is worked from, and the texts {=note}, {=care} and {=licence}. It may {=use} others. What is made,
its name and its parts, its finishing and its measures are the pattern's own.`},
			Es: Wording{
				Message: `lo que empieza por «{word}» no puede estar en un archivo común de varios patrones`,
				Mark:    `esto es propio de un patrón`,
				Help:    map[string]string{"": `pasarlo al patrón del que trata`},
				Explain: `Un archivo común contiene lo que comparten varios patrones: {=sizes}, {=gauge}, {=hook}, {=yarn}, {=notion}, {=let}, {=group},
{=stitch}, {=stitch pattern}, un {=chart} por el que se teje, y los textos {=note}, {=care} y {=licence}. Puede usar otros con {=use}. Lo
que se teje, su nombre y sus piezas, su acabado y sus medidas son propios de cada patrón.`},
			Example: using("whole.ovillo"),
			Fixed:   using("common.ovillo")},
	}
}
