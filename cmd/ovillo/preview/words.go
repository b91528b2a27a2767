package preview

import (
	"strconv"
	"strings"
)

// text is something that the page says, in each language. {name} is a hole.
type text struct{ en, es string }

func (t text) in(lang string) string {
	if lang == "es" {
		return t.es
	}
	return t.en
}

// with fills holes: name, value, name, value …
func (t text) with(lang string, pairs ...string) string {
	var holes []string
	for i := 0; i+1 < len(pairs); i += 2 {
		holes = append(holes, "{"+pairs[i]+"}", pairs[i+1])
	}
	return strings.NewReplacer(holes...).Replace(t.in(lang))
}

var (
	wordFine     = text{"nothing to mend", "nada que corregir"}
	wordReading  = text{"being read", "leyendo"}
	wordGone     = text{"cannot be read", "no se puede leer"}
	wordUnset    = text{"cannot be set", "no se puede componer"}
	wordNothing  = text{"There is no pattern in it, so that it has no pages.", "No contiene ningún patrón, así que no tiene páginas."}
	wordBare     = text{"no pattern in it", "sin patrón"}
	wordOldFault = text{"Old pages: the source has had errors since {time}.", "Páginas antiguas: el patrón tiene errores desde las {time}."}
	wordOldGone  = text{"Old pages: the source has not been readable since {time}.", "Páginas antiguas: el patrón no se puede leer desde las {time}."}
	wordOldUnset = text{"Old pages: the source has not come out as pages since {time}.", "Páginas antiguas: el patrón no se puede componer desde las {time}."}
)

// words are those of the page itself, by the key under which its templates ask for them.
var pageWords = map[string]text{
	"preview":  text{"Preview", "Vista previa"},
	"sources":  text{"Patterns", "Patrones"},
	"messages": text{"Messages", "Mensajes"},
	"pages":    text{"Pages", "Páginas"},
	"counts":   text{"Counts", "Recuento"},
	"drawings": text{"Drawings", "Dibujos"},
	"views":    text{"What is shown", "Qué se muestra"},
	"pdf":      text{"Open the PDF", "Abrir el PDF"},
	"page":     text{"Page", "Página"},
	"changed":  text{"Changed just now:", "Acaba de cambiar:"},
	"line":     text{"line", "línea"},
	"sizes":    text{"sizes", "tallas"},
	"help":     text{"Help", "Ayuda"},
	"note":     text{"Note", "Nota"},
	"meant":    text{"On purpose", "A propósito"},
	"error":    text{"error", "error"},
	"warning":  text{"warning", "aviso"},
	"notice":   text{"note", "nota"},
	"more":     text{"further messages are not shown", "mensajes más, sin mostrar"},
	"none":     text{"Nothing was found that needs mending.", "No se ha encontrado nada que corregir."},
	"nopages":  text{"There are no pages yet: they appear as soon as the source has no errors.", "Todavía no hay páginas: aparecen en cuanto el patrón no tenga errores."},
	"nodraw":   text{"There is nothing to draw.", "No hay nada que dibujar."},
	"explain":  text{"what this message means", "qué significa este mensaje"},
	"lost":     text{"The preview has stopped. What is shown is what it showed last.", "La vista previa se ha detenido. Se muestra lo último que enseñó."},
	"skip":     text{"Skip to the pages", "Saltar a las páginas"},
	"script":   text{"The preview needs JavaScript.", "La vista previa necesita JavaScript."},
}

func wordNamed(key string) text {
	t, ok := pageWords[key]
	if !ok {
		panic("no word " + strconv.Quote(key))
	}
	return t
}

// says puts the state of a source into words.
func (s *Server) says(v *view) string {
	switch {
	case v.state == reading:
		return wordReading.in(s.Options.Lang)
	case v.state == gone:
		return wordGone.in(s.Options.Lang)
	case v.why != "" && v.state != faulty:
		return wordBare.in(s.Options.Lang)
	case v.text != nil && v.text.errors == 0 && v.why != "":
		return wordUnset.in(s.Options.Lang)
	case v.text == nil || v.text.summary == "":
		return wordFine.in(s.Options.Lang)
	}
	return v.text.summary
}

// oldSays says why pages are old, and since when.
func (s *Server) oldSays(v *view) string {
	if v.set == nil || !v.old {
		return ""
	}
	why := wordOldFault
	switch {
	case v.state == gone:
		why = wordOldGone
	case v.why != "":
		why = wordOldUnset
	}
	return why.with(s.Options.Lang, "time", v.since.Format("15:04"))
}
