package preview

import (
	"bytes"
	"embed"
	"html/template"
	"net/http"
	"path/filepath"
	"strconv"
	"strings"
	"sync"

	"ovillo/lang/diag"
	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/svg"
)

//go:embed page.html message.html counts.html drawings.html page.css page.js icon.svg
var own embed.FS

// ServeHTTP answers the page of the preview. Every path is one of those below; no part of one is ever a name on the disk.
func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	harden(w.Header())
	if status, ok := s.allowed(r); !ok {
		if status == http.StatusMethodNotAllowed {
			w.Header().Set("Allow", "GET, HEAD")
		}
		http.Error(w, http.StatusText(status), status)
		return
	}
	path, within := strings.CutPrefix(r.URL.Path, s.base)
	if !within {
		http.NotFound(w, r)
		return
	}
	parts := strings.Split(path, "/")
	switch {
	case path == "":
		s.render(w, r, "page.html", s)
	case path == "page.css":
		w.Header().Set("Content-Type", "text/css; charset=utf-8")
		s.send(w, r, append(s.file("page.css"), s.faceStyle()...))
	case path == "page.js":
		w.Header().Set("Content-Type", "text/javascript; charset=utf-8")
		s.send(w, r, s.file("page.js"))
	case path == "icon.svg":
		w.Header().Set("Content-Type", "image/svg+xml")
		s.send(w, r, s.file("icon.svg"))
	case path == "events":
		s.events(w, r)
	case len(parts) == 2 && parts[0] == "face":
		s.face(w, r, parts[1])
	case len(parts) == 2 && parts[0] == "code":
		s.explain(w, r, parts[1])
	case len(parts) >= 3 && parts[0] == "file":
		s.ofFile(w, r, parts[1], parts[2:])
	default:
		http.NotFound(w, r)
	}
}

// ofFile answers what belongs to one source.
func (s *Server) ofFile(w http.ResponseWriter, r *http.Request, number string, parts []string) {
	id, err := strconv.Atoi(number)
	v := s.board.of(id)
	if err != nil || v == nil || v.set == nil {
		http.NotFound(w, r)
		return
	}
	switch kind, name := parts[0], parts[len(parts)-1]; {
	case len(parts) == 1 && kind == "counts":
		s.render(w, r, "counts.html", v.set.countTables(s.Options.Lang))
	case len(parts) == 1 && kind == "drawings":
		s.render(w, r, "drawings.html", drawingsOf{v, v.set.sheetsDrawn(s.Options.Lang), s})
	case len(parts) == 2 && kind == "page":
		if sheet, ok := v.set.sheetNamed(name); ok {
			w.Header().Set("Content-Type", "image/svg+xml")
			s.send(w, r, sheet.svg)
			return
		}
		http.NotFound(w, r)
	case len(parts) == 2 && kind == "picture":
		if p, ok := v.set.pictures[name]; ok {
			w.Header().Set("Content-Type", "image/"+p.Format)
			s.send(w, r, p.Data)
			return
		}
		http.NotFound(w, r)
	case len(parts) == 2 && kind == "pdf":
		s.pdf(w, r, v)
	case len(parts) == 3 && kind == "drawing":
		s.drawing(w, r, v, parts[1], name)
	default:
		http.NotFound(w, r)
	}
}

// drawing answers one drawing of the set whose number is asked for, so that a browser never shows an older one in its place.
func (s *Server) drawing(w http.ResponseWriter, r *http.Request, v *view, number, name string) {
	all := v.set.sheetsDrawn(s.Options.Lang)
	i, err := strconv.Atoi(strings.TrimSuffix(name, ".svg"))
	if err != nil || number != strconv.Itoa(v.set.number) || i < 1 || i > len(all) {
		http.NotFound(w, r)
		return
	}
	var b bytes.Buffer
	if err := svg.Write(&b, all[i-1].scene); err != nil {
		http.Error(w, http.StatusText(http.StatusInternalServerError), http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'")
	w.Header().Set("Content-Type", "image/svg+xml")
	s.send(w, r, b.Bytes())
}

// pdf answers the file as it would be built now. There is none of a source with errors.
func (s *Server) pdf(w http.ResponseWriter, r *http.Request, v *view) {
	if !v.fresh() {
		http.NotFound(w, r)
		return
	}
	data, err := v.set.pdf()
	if err != nil {
		http.Error(w, s.Options.Unset(v.name, err), http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "application/pdf")
	w.Header().Set("Content-Security-Policy", "frame-ancestors 'none'") // what shows a PDF is the browser's own, and needs its own
	s.send(w, r, data)
}

// face answers an embedded face. Its name tells its content, so that it may be kept for ever.
func (s *Server) face(w http.ResponseWriter, r *http.Request, name string) {
	for f := page.Sans; f <= page.SerifBold; f++ {
		if faceName(f) == name {
			w.Header().Set("Content-Type", "font/ttf")
			w.Header().Set("Cache-Control", "public, max-age=31536000, immutable")
			s.send(w, r, font.Of(f).Program())
			return
		}
	}
	http.NotFound(w, r)
}

func faceName(f page.Face) string {
	face := font.Of(f)
	return face.Name() + "-" + face.Sum() + ".ttf"
}

func (s *Server) faceStyle() string {
	return svg.FaceStyle(func(f page.Face) string { return s.base + "face/" + faceName(f) })
}

// explain answers the page behind the code of a message.
func (s *Server) explain(w http.ResponseWriter, r *http.Request, code string) {
	var b bytes.Buffer
	if err := (diag.Printer{Lang: s.Options.Lang}).Explain(&b, diag.Code(code)); err != nil {
		http.NotFound(w, r)
		return
	}
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	s.send(w, r, b.Bytes())
}

// send sends a whole answer.
func (s *Server) send(w http.ResponseWriter, r *http.Request, data []byte) {
	w.Header().Set("Content-Length", strconv.Itoa(len(data)))
	if r.Method != http.MethodHead {
		w.Write(data)
	}
}

// file is one of the embedded files, whose names a test asks for.
func (s *Server) file(name string) []byte {
	data, err := own.ReadFile(name)
	if err != nil {
		panic(err)
	}
	return data
}

// drawingsOf is what the template of the drawings is filled with.
type drawingsOf struct {
	View     *view
	Drawings []drawing
	*Server
}

// At is the address of a drawing, from 0.
func (d drawingsOf) At(i int) string {
	return d.base + "file/" + strconv.Itoa(d.View.id) + "/drawing/" + strconv.Itoa(d.View.set.number) + "/" + strconv.Itoa(i+1) + ".svg"
}

// Title and Desc say what a drawing shows.
func (d drawing) Title() string { return d.title }
func (d drawing) Desc() string  { return d.desc }

// render fills a template and sends it.
func (s *Server) render(w http.ResponseWriter, r *http.Request, name string, with any) {
	var b bytes.Buffer
	if err := s.templates().ExecuteTemplate(&b, name, with); err != nil {
		http.Error(w, http.StatusText(http.StatusInternalServerError), http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	s.send(w, r, b.Bytes())
}

// forms are the templates as they were written. They are read when the first page is asked for: other commands have none.
var forms = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("").Funcs(template.FuncMap{
		"say": func(string) string { return "" }, "base": func() string { return "" }, "lang": func() string { return "" },
		"turn": func(i int) bool { return i%2 == 1 }, "short": filepath.Base,
	}).ParseFS(own, "*.html"))
})

// templates are those of the page, in the language of the messages.
func (s *Server) templates() *template.Template {
	t := template.Must(forms().Clone())
	return t.Funcs(template.FuncMap{
		"say":  func(key string) string { return wordNamed(key).in(s.Options.Lang) },
		"base": func() string { return s.base }, "lang": func() string { return s.Options.Lang },
	})
}
