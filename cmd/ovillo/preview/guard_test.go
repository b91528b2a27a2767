package preview

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ask hands a request to the server as a browser would send it, with the header changed as told: name, value, name, value …
func (d *desktop) ask(method, path string, header ...string) *httptest.ResponseRecorder {
	r := httptest.NewRequest(method, "http://"+d.hosts[0]+"/", nil)
	r.URL = &url.URL{Path: path}
	for i := 0; i+1 < len(header); i += 2 {
		if header[i] == "Host" {
			r.Host = header[i+1]
		} else {
			r.Header.Set(header[i], header[i+1])
		}
	}
	w := httptest.NewRecorder()
	d.ServeHTTP(w, r)
	return w
}

// TestOnlyItsOwnPage: who asks under another name, from another page or with another method gets nothing. The headers are those of
// the Fetch standard (whatwg.org): Sec-Fetch-Site is same-origin, same-site, cross-site or none, Origin may be null.
func TestOnlyItsOwnPage(t *testing.T) {
	d := newDesktop(t, map[string]string{"hat.ovillo": example(t, "duna-hat.ovillo")})
	d.sees(1, "the hat", isFresh)
	require.True(t, strings.HasPrefix(d.Address(), "http://127.0.0.1:"))
	assert.Regexp(t, `/[a-z2-7]{26}/$`, d.Address(), "a word that nobody can guess")
	port := strings.TrimPrefix(d.hosts[0], "127.0.0.1")
	for _, c := range []struct {
		name   string
		status int
		method string
		header []string
	}{
		{"the page itself", 200, "GET", []string{"Sec-Fetch-Site", "same-origin", "Origin", "http://127.0.0.1" + port}},
		{"a person", 200, "GET", []string{"Sec-Fetch-Site", "none"}},
		{"a program", 200, "GET", nil},
		{"by another of its names", 200, "GET", []string{"Host", "localhost" + port, "Origin", "http://localhost" + port}},
		{"in capitals", 200, "GET", []string{"Host", "LocalHost" + port}},
		{"head", 200, "HEAD", nil},
		{"a foreign name that leads here", 421, "GET", []string{"Host", "pattern.example" + port}},
		{"a foreign name that begins like one of ours", 421, "GET", []string{"Host", "127.0.0.1.example" + port}},
		{"another port", 421, "GET", []string{"Host", "127.0.0.1:1"}},
		{"no port", 421, "GET", []string{"Host", "127.0.0.1"}},
		{"no host", 421, "GET", []string{"Host", ""}},
		{"a foreign page", 403, "GET", []string{"Sec-Fetch-Site", "cross-site"}},
		{"another port's page", 403, "GET", []string{"Sec-Fetch-Site", "same-site"}},
		{"a foreign origin", 403, "GET", []string{"Origin", "https://pattern.example"}},
		{"another port's origin", 403, "GET", []string{"Origin", "http://127.0.0.1:1"}},
		{"a safe origin of our name", 403, "GET", []string{"Origin", "https://127.0.0.1" + port}},
		{"no origin that can be named", 403, "GET", []string{"Origin", "null"}},
		{"a form", 405, "POST", nil},
		{"a deletion", 405, "DELETE", nil},
		{"a question before a request", 405, "OPTIONS", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := d.ask(c.method, d.base, c.header...)
			assert.Equal(t, c.status, got.Code)
			assert.Equal(t, c.status == 200 && c.method == "GET", strings.Contains(got.Body.String(), "<html"), "what is said")
			assert.Empty(t, got.Header().Get("Access-Control-Allow-Origin"))
			assert.Contains(t, got.Header().Get("Content-Security-Policy"), "default-src 'none'")
			assert.Equal(t, "nosniff", got.Header().Get("X-Content-Type-Options"))
			assert.Equal(t, "no-store", got.Header().Get("Cache-Control"))
		})
	}
}

// odd are paths that ask for something else than what there is.
func (d *desktop) odd() []string {
	return []string{
		"/", "/hat.ovillo", "//", d.base + "/", d.base + "hat.ovillo", d.base + "../hat.ovillo", d.base + "..", d.base + "%2e%2e/hat.ovillo",
		d.base + "file/1/../../hat.ovillo", d.base + "file/1/picture/../../secret.txt", d.base + "file/1/picture/" + d.path("hat.ovillo"),
		d.base + "face//etc/passwd", d.base + "face/..", d.base + "file/1", d.base + "file/1/", d.base + "file/0/counts", d.base + "file/-1/counts",
		d.base + "file/2/counts", d.base + "file/01x/counts", d.base + "file/1/page/", d.base + "file/1/page/nothing", d.base + "file/1/drawing/1/0.svg",
		d.base + "file/1/drawing/2/1.svg", d.base + "file/1/drawing/1/99.svg", d.base + "code/OV000", d.base + "code/", d.base + "page.html", d.base + "message.html",
		strings.TrimSuffix(d.base, "/"), strings.ToUpper(d.base), d.base + "\x00", d.base + "page.css/",
	}
}

func TestNothingElse(t *testing.T) {
	d := newDesktop(t, map[string]string{"hat.ovillo": example(t, "duna-hat.ovillo"), "secret.txt": "secret"})
	d.sees(1, "the hat", isFresh)
	for _, path := range d.odd() {
		got := d.ask("GET", path)
		assert.Equal(t, http.StatusNotFound, got.Code, path)
		assert.NotContains(t, got.Body.String(), "idioma", path)
	}
	v := d.board.of(1)
	for path, kind := range map[string]string{
		"": "text/html", "page.css": "text/css", "page.js": "text/javascript", "icon.svg": "image/svg+xml", "code/OV302": "text/plain",
		"file/1/counts": "text/html", "file/1/drawings": "text/html", "file/1/drawing/1/1.svg": "image/svg+xml",
		"file/1/page/" + v.set.sheets[0].name: "image/svg+xml", "file/1/pdf/hat.pdf": "application/pdf", "face/" + faceName(0): "font/ttf",
	} {
		got := d.ask("GET", d.base+path)
		assert.Equal(t, http.StatusOK, got.Code, path)
		assert.Contains(t, got.Header().Get("Content-Type"), kind, path)
		assert.NotEmpty(t, got.Body.Bytes(), path)
	}
}

// TestNoFileFromOutside: a photograph that is named by a path, or that a link leads to, outside of the folder is not read and not shown.
func TestNoFileFromOutside(t *testing.T) {
	outside := t.TempDir()
	photo, err := os.ReadFile("../../../examples/jarcia-headband.jpg")
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(outside, "secret.jpg"), photo, 0o644))
	band := example(t, "jarcia-headband.ovillo")
	require.Contains(t, band, `"jarcia-headband.jpg"`)
	for name, photo := range map[string]string{"above": "../secret.jpg", "absolute": filepath.ToSlash(outside) + "/secret.jpg", "link": "link.jpg"} {
		t.Run(name, func(t *testing.T) {
			d := newDesktop(t, map[string]string{"band.ovillo": "\n"}, "band.ovillo")
			require.NoError(t, os.Symlink(filepath.Join(outside, "secret.jpg"), d.path("link.jpg")))
			d.save("band.ovillo", strings.ReplaceAll(band, "jarcia-headband.jpg", photo))
			v := d.sees(1, "what is wrong", func(v *view) bool { return v.text != nil && v.text.errors > 0 })
			assert.Nil(t, v.set)
		})
	}
}

// FuzzAnswers asks for anything in any way: there is an answer, it is hardened, and nothing but the page itself gets what is there.
func FuzzAnswers(f *testing.F) {
	d := newDesktop(f, map[string]string{"hat.ovillo": example(f, "duna-hat.ovillo")})
	d.sees(1, "the hat", isFresh)
	for _, path := range append(d.odd(), d.base, d.base+"file/1/counts", d.base+"code/OV302") {
		f.Add("GET", path, d.hosts[0], "", "")
		f.Add("HEAD", path, "pattern.example", "http://"+d.hosts[0], "same-origin")
	}
	f.Add("POST", d.base, d.hosts[1], "null", "cross-site")
	f.Fuzz(func(t *testing.T, method, path, host, origin, site string) {
		if path == d.base+"events" { // it would never end
			t.Skip()
		}
		header := []string{"Host", host}
		if origin != "" {
			header = append(header, "Origin", origin)
		}
		if site != "" {
			header = append(header, "Sec-Fetch-Site", site)
		}
		got := d.ask("GET", path, header...)
		if method != "" && !strings.ContainsAny(method, " /\r\n\t") {
			r := httptest.NewRequest("GET", "http://"+d.hosts[0]+"/", nil)
			r.Method, r.Host, r.URL = method, host, &url.URL{Path: path}
			d.ServeHTTP(httptest.NewRecorder(), r)
		}
		ours := strings.EqualFold(host, d.hosts[0]) || strings.EqualFold(host, d.hosts[1]) || strings.EqualFold(host, d.hosts[2])
		own := origin == "" || strings.HasPrefix(strings.ToLower(origin), "http://") && strings.HasSuffix(strings.ToLower(origin), d.hosts[0][len("127.0.0.1"):])
		if got.Code == http.StatusOK && (!ours || !own || site != "" && site != "same-origin" && site != "none" || !strings.HasPrefix(path, d.base)) {
			t.Errorf("answered %q to %q, origin %q, site %q", path, host, origin, site)
		}
		if got.Code >= 500 {
			t.Errorf("%q: %d", path, got.Code)
		}
		if got.Header().Get("X-Content-Type-Options") != "nosniff" || got.Header().Get("Content-Security-Policy") == "" {
			t.Errorf("%q is not hardened: %v", path, got.Header())
		}
	})
}
