package diag

// noun is a word of the trade in the singular and the plural.
type noun struct{ one, other string }

// wordPair is a word in both languages.
type wordPair struct{ en, es noun }

// terms holds the words a [Term] can ask for. To add one: add a row; a test checks that every key the compiler uses
// stands here.
var terms = map[string]wordPair{
	"ball":                   {noun{"ball", "balls"}, noun{"ovillo", "ovillos"}},
	"bound pattern":          {noun{"bound pattern", "patterns of a book"}, noun{"patrón de un libro", "patrones de un libro"}},
	"button":                 {noun{"button", "buttons"}, noun{"botón", "botones"}},
	"cell":                   {noun{"cell of a chart", "cells of charts"}, noun{"casilla de gráfico", "casillas de gráficos"}},
	"centimetre":             {noun{"centimetre", "centimetres"}, noun{"centímetro", "centímetros"}},
	"chain":                  {noun{"chain", "chains"}, noun{"cadena", "cadenas"}},
	"chart":                  {noun{"chart", "charts"}, noun{"gráfico", "gráficos"}},
	"corner":                 {noun{"corner", "corners"}, noun{"esquina", "esquinas"}},
	"count":                  {noun{"count", "counts"}, noun{"cuenta", "cuentas"}},
	"country es":             {noun{"neutral Spanish", "neutral Spanish"}, noun{"español neutro", "español neutro"}},
	"country es-AR":          {noun{"the River Plate", "the River Plate"}, noun{"el Río de la Plata", "el Río de la Plata"}},
	"country es-CL":          {noun{"Chile", "Chile"}, noun{"Chile", "Chile"}},
	"country es-EC":          {noun{"Ecuador", "Ecuador"}, noun{"Ecuador", "Ecuador"}},
	"country es-ES":          {noun{"Spain", "Spain"}, noun{"España", "España"}},
	"country es-MX":          {noun{"Mexico", "Mexico"}, noun{"México", "México"}},
	"decrease":               {noun{"decrease", "decreases"}, noun{"disminución", "disminuciones"}},
	"edge":                   {noun{"edge", "edges"}, noun{"borde", "bordes"}},
	"elastic":                {noun{"elastic", "elastics"}, noun{"goma elástica", "gomas elásticas"}},
	"needle":                 {noun{"yarn needle", "yarn needles"}, noun{"aguja lanera", "agujas laneras"}},
	"safety pin":             {noun{"safety pin", "safety pins"}, noun{"imperdible", "imperdibles"}},
	"gap":                    {noun{"gap", "gaps"}, noun{"espacio entre puntos", "espacios entre puntos"}},
	"gauge":                  {noun{"gauge", "gauges"}, noun{"muestra", "muestras"}},
	"group":                  {noun{"group", "groups"}, noun{"grupo", "grupos"}},
	"gram":                   {noun{"gram", "grams"}, noun{"gramo", "gramos"}},
	"hook":                   {noun{"hook", "hooks"}, noun{"ganchillo", "ganchillos"}},
	"inch":                   {noun{"inch", "inches"}, noun{"pulgada", "pulgadas"}},
	"increase":               {noun{"increase", "increases"}, noun{"aumento", "aumentos"}},
	"mirrored line":          {noun{"line of mirrored parts", "lines of mirrored parts"}, noun{"línea de piezas en espejo", "líneas de piezas en espejo"}},
	"grouped instruction":    {noun{"instruction in rows with named groups", "instructions in rows with named groups"}, noun{"instrucción en hileras con grupos con nombre", "instrucciones en hileras con grupos con nombre"}},
	"label":                  {noun{"label", "labels"}, noun{"etiqueta", "etiquetas"}},
	"language":               {noun{"language", "languages"}, noun{"idioma", "idiomas"}},
	"language en":            {noun{"English", "English"}, noun{"inglés", "inglés"}},
	"language es":            {noun{"Spanish", "Spanish"}, noun{"español", "español"}},
	"drawn stitch":           {noun{"stitch drawn in charts", "stitches drawn in charts"}, noun{"punto dibujado en diagramas", "puntos dibujados en diagramas"}},
	"charted row":            {noun{"row worked from charts", "rows worked from charts"}, noun{"hilera tejida de gráficos", "hileras tejidas de gráficos"}},
	"length":                 {noun{"length", "lengths"}, noun{"longitud", "longitudes"}},
	"line to work":           {noun{"line to work", "lines to work, repeats counted,"}, noun{"línea por tejer", "líneas por tejer, contando las repeticiones,"}},
	"loop":                   {noun{"loop", "loops"}, noun{"hebra", "hebras"}},
	"marker":                 {noun{"marker", "markers"}, noun{"marcador", "marcadores"}},
	"markdown address":       {noun{"link of this kind", "links of this kind"}, noun{"enlace de este tipo", "enlaces de este tipo"}},
	"markdown box":           {noun{"box to tick", "boxes to tick"}, noun{"casilla", "casillas"}},
	"markdown code":          {noun{"code", "code"}, noun{"trozo de código", "trozos de código"}},
	"markdown footnote":      {noun{"footnote", "footnotes"}, noun{"nota al pie", "notas al pie"}},
	"markdown html":          {noun{"HTML tag", "HTML tags"}, noun{"etiqueta de HTML", "etiquetas de HTML"}},
	"markdown image":         {noun{"picture", "pictures in a text"}, noun{"imagen", "imágenes en un texto"}},
	"markdown line":          {noun{"line across a text", "lines across a text"}, noun{"raya en medio de un texto", "rayas en medio de un texto"}},
	"markdown nested":        {noun{"list deeper than six", "lists inside one another more than six deep"}, noun{"lista de más de seis niveles", "listas de más de seis niveles"}},
	"markdown quotation":     {noun{"quotation set apart", "quotations set apart"}, noun{"cita aparte", "citas aparte"}},
	"markdown strikethrough": {noun{"struck-out word", "struck-out words"}, noun{"palabra tachada", "palabras tachadas"}},
	"markdown table":         {noun{"table in a text", "tables in a text"}, noun{"tabla en un texto", "tablas en un texto"}},
	"measure":                {noun{"measure", "measures"}, noun{"medida", "medidas"}},
	"month":                  {noun{"month", "months"}, noun{"mes", "meses"}},
	"narrower":               {noun{"narrower", "narrower"}, noun{"estrecha", "estrechas"}},
	"notion":                 {noun{"notion", "notions"}, noun{"material", "materiales"}},
	"number":                 {noun{"number", "numbers"}, noun{"número", "números"}},
	"one or more":            {noun{"1 or more", "1 or more"}, noun{"1 o más", "1 o más"}},
	"own stitch":             {noun{"stitch of one's own", "stitches of one's own"}, noun{"punto propio", "puntos propios"}},
	"part":                   {noun{"part", "parts"}, noun{"pieza", "piezas"}},
	"percentage":             {noun{"percentage", "percentages"}, noun{"porcentaje", "porcentajes"}},
	"place":                  {noun{"place", "places"}, noun{"lugar", "lugares"}},
	"repeat":                 {noun{"repeat", "repeats"}, noun{"repetición", "repeticiones"}},
	"ring":                   {noun{"ring", "rings"}, noun{"anillo", "anillos"}},
	"round":                  {noun{"round", "rounds"}, noun{"vuelta", "vueltas"}},
	"row":                    {noun{"row", "rows"}, noun{"hilera", "hileras"}},
	"row end":                {noun{"row end", "row ends"}, noun{"extremo de hilera", "extremos de hilera"}},
	"section":                {noun{"section", "sections"}, noun{"sección", "secciones"}},
	"size":                   {noun{"size", "sizes"}, noun{"talla", "tallas"}},
	"slip stitch":            {noun{"slip stitch", "slip stitches"}, noun{"punto deslizado", "puntos deslizados"}},
	"space":                  {noun{"chain space", "chain spaces"}, noun{"espacio de cadena", "espacios de cadena"}},
	"step":                   {noun{"step of the finishing", "steps of the finishing"}, noun{"paso del acabado", "pasos del acabado"}},
	"stitch":                 {noun{"stitch", "stitches"}, noun{"punto", "puntos"}},
	"text":                   {noun{"text", "texts"}, noun{"texto", "textos"}},
	"time":                   {noun{"time", "times"}, noun{"vez", "veces"}},
	"value":                  {noun{"value", "values"}, noun{"valor", "valores"}},
	"weight":                 {noun{"weight", "weights"}, noun{"peso", "pesos"}},
	"wider":                  {noun{"wider", "wider"}, noun{"ancha", "anchas"}},
	"yarn":                   {noun{"yarn", "yarns"}, noun{"hilo", "hilos"}},
}

// say gives the word in a language. A key without a row is a stitch of the designer's own, or a fault that a test finds:
// it is said as it stands.
func (t Term) say(lang string) string {
	row, ok := wordOf(t.Key)
	if !ok {
		return quotable(t.Key)
	}
	n := row.en
	if lang == "es" {
		n = row.es
	}
	if t.N == 1 || t.N == -1 {
		return n.one
	}
	return n.other
}

// wordOf finds the row of a key.
func wordOf(key string) (wordPair, bool) {
	if row, ok := terms[key]; ok {
		return row, true
	}
	row, ok := termsOfCautions[key]
	return row, ok
}
