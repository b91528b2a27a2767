package preview

import (
	"bytes"
	"encoding/json"
	"fmt"
	"net/http"
	"path/filepath"
	"strings"
	"time"
)

// pulse is how often something is sent where there is no news, so that both ends notice when the other is gone.
const pulse = 15 * time.Second

// patience is how long a browser may take to receive what it is sent.
const patience = 20 * time.Second

// news is what a browser is told of a source. What is not in it is as it was.
type news struct {
	ID       int     `json:"id"`
	Short    string  `json:"short"` // the name without its folder
	Name     string  `json:"name"`
	Place    int     `json:"place"` // in the list, from 0
	State    state   `json:"state"`
	Says     string  `json:"says"`               // the state in words
	Old      string  `json:"old"`                // why the pages are old, and since when; "" if they are not
	Messages *string `json:"messages,omitempty"` // as HTML
	Set      int     `json:"set,omitempty"`      // the number of what is set
	Title    string  `json:"title,omitempty"`
	Pages    []leaf  `json:"pages,omitempty"`
	PDF      string  `json:"pdf"` // the name of the file, "" if there is none now
}

// leaf is a page: its name and its size in millimetres.
type leaf struct {
	Name string  `json:"name"`
	W    float64 `json:"w"`
	H    float64 `json:"h"`
}

// events tells a browser how the sources stand, and then each change.
func (s *Server) events(w http.ResponseWriter, r *http.Request) {
	if r.Method == http.MethodHead {
		w.Header().Set("Content-Type", "text/event-stream")
		return
	}
	out := http.NewResponseController(w)
	w.Header().Set("Content-Type", "text/event-stream")
	told := map[int]*view{}
	beat := time.NewTicker(pulse)
	defer beat.Stop()
	send := func(b []byte) bool {
		out.SetWriteDeadline(time.Now().Add(patience))
		_, err := w.Write(b)
		return err == nil && out.Flush() == nil
	}
	views, more := s.board.look()
	ids := make([]int, len(views))
	for i, v := range views {
		ids[i] = v.id
	}
	list, err := json.Marshal(ids)
	if err != nil || !send(fmt.Appendf(nil, "retry: 500\nevent: hello\ndata: %s\n\n", list)) {
		return
	}
	for ; ; views, more = s.board.look() {
		var b bytes.Buffer
		for place, v := range views {
			if was := told[v.id]; was != v {
				s.tell(&b, place, v, was)
				told[v.id] = v
			}
		}
		if b.Len() > 0 && !send(b.Bytes()) {
			return
		}
		select {
		case <-more:
		case <-beat.C:
			if !send([]byte(": \n\n")) {
				return
			}
		case <-r.Context().Done():
			return
		case <-s.ending.Done():
			send([]byte("event: end\ndata: \n\n"))
			return
		}
	}
}

// tell writes how a view differs from what was told before; was is nil if nothing was.
func (s *Server) tell(b *bytes.Buffer, place int, v, was *view) {
	n := news{ID: v.id, Name: v.name, Short: filepath.Base(v.name), Place: place, State: v.state, Says: s.says(v), Old: s.oldSays(v)}
	if was == nil || was.text != v.text || was.why != v.why {
		html := s.messages(v)
		n.Messages = &html
	}
	if v.set != nil && (was == nil || was.set != v.set) {
		n.Set, n.Title = v.set.number, v.set.doc.Title
		for _, h := range v.set.sheets {
			n.Pages = append(n.Pages, leaf{h.name, h.w, h.h})
		}
	}
	if v.fresh() {
		n.PDF = v.set.fileName()
	}
	data, err := json.Marshal(n)
	if err != nil {
		return // there is nothing in it that could not be written
	}
	fmt.Fprintf(b, "event: file\ndata: %s\n\n", data)
}

// messages are what was found, as a piece of HTML.
func (s *Server) messages(v *view) string {
	var b strings.Builder
	with := struct {
		Why  string
		List []message
		More int
	}{Why: v.why}
	if v.text != nil {
		with.List, with.More = v.text.list, v.text.more
	}
	if err := s.templates().ExecuteTemplate(&b, "message.html", with); err != nil {
		return ""
	}
	return b.String()
}
