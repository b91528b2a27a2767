package preview

import (
	"net/http"
	"slices"
	"strings"
)

// A page of somebody else's must not read a pattern, wherever the browser that shows it stands. So a request must name this machine as
// its host, which one that was led here by a foreign name does not, and must come from the page of the preview itself or from a person
// who typed or followed the address.

// policy lets the page use what the server sends and nothing else.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; connect-src 'self'; " +
	"base-uri 'none'; form-action 'none'; frame-ancestors 'none'"

// allowed reports whether a request may be answered, with the status that it gets if not.
func (s *Server) allowed(r *http.Request) (status int, ok bool) {
	switch {
	case !slices.Contains(s.hosts, strings.ToLower(r.Host)):
		return http.StatusMisdirectedRequest, false
	case !s.own(r.Header["Origin"], func(o string) bool {
		host, found := strings.CutPrefix(strings.ToLower(o), "http://")
		return found && slices.Contains(s.hosts, host)
	}):
		return http.StatusForbidden, false
	case !s.own(r.Header["Sec-Fetch-Site"], func(v string) bool { return v == "same-origin" || v == "none" }):
		return http.StatusForbidden, false
	case r.Method != http.MethodGet && r.Method != http.MethodHead:
		return http.StatusMethodNotAllowed, false
	}
	return http.StatusOK, true
}

// own reports whether all values of a header are of the preview's own; a header that is not there is.
func (s *Server) own(values []string, is func(string) bool) bool {
	for _, v := range values {
		if !is(v) {
			return false
		}
	}
	return true
}

// harden sets what every answer has.
func harden(h http.Header) {
	h.Set("Content-Security-Policy", policy)
	h.Set("X-Content-Type-Options", "nosniff")
	h.Set("Cache-Control", "no-store")
	h.Set("Referrer-Policy", "no-referrer")
	h.Set("Cross-Origin-Opener-Policy", "same-origin")
	h.Set("Cross-Origin-Resource-Policy", "same-origin")
}
