package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/picture/files"
)

const photographed = `pattern trial
  title en "Trial" es "Prueba"
  photo "%" size "S" en "A blue strip." es "Una tira azul."
  terms us
end
sizes "S", "M"
end
part strip
  title en "Strip" es "Tira"
  in rows
  chain 6
  row: sc in each = 6
end
`

// A photograph is read from the folder of the source, whatever folder the command is called in, and from nowhere else.
func TestPhotographsLieBesideTheSource(t *testing.T) {
	root := t.TempDir()
	folder := filepath.Join(root, "patterns")
	require.NoError(t, os.MkdirAll(filepath.Join(folder, "pictures"), 0o755))
	put := func(name string, data []byte) {
		require.NoError(t, os.WriteFile(filepath.Join(root, name), data, 0o644))
	}
	put("outside.jpg", files.JPEG(1000, 20))
	put("patterns/strip.jpg", files.JPEG(1000, 20))
	put("patterns/pictures/strip.png", files.PNG(1000, 20))
	put("patterns/large.jpg", append(files.JPEG(8, 8), make([]byte, 41<<20)...))
	require.NoError(t, os.Symlink(filepath.Join("..", "outside.jpg"), filepath.Join(folder, "link.jpg")))
	for name, want := range map[string]string{
		"strip.jpg":             "",
		"./strip.jpg":           "",
		"pictures/strip.png":    "",
		"strip.JPEG":            "OV729",
		"pictures":              "OV730", // a folder
		"link.jpg":              "OV730", // it leads out
		"large.jpg":             "OV731",
		"../outside.jpg":        "OV728",
		"pictures/../strip.jpg": "OV728",
		`pictures\strip.png`:    "OV728",
		root + "/outside.jpg":   "OV728",
		"C:strip.jpg":           "OV728",
		"":                      "OV728",
	} {
		text := strings.Replace(photographed, "%", name, 1)
		path := filepath.Join(folder, "trial.ovillo")
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
		var out, err bytes.Buffer
		c := &call{in: strings.NewReader(text), out: &out, err: &err, lang: "en"}
		s, ok := c.load(path)
		require.True(t, ok, err.String())
		p, found := s.compile()
		var codes []string
		for _, d := range found {
			if strings.HasPrefix(string(d.Code), "OV72") || strings.HasPrefix(string(d.Code), "OV73") {
				codes = append(codes, string(d.Code))
			}
		}
		if want == "" {
			require.Empty(t, codes, name)
			require.Equal(t, [3]int{1000, 20, 0}, [3]int{p.Photo.W, p.Photo.H, p.Photo.Size}, name)
			require.NotEmpty(t, p.Photo.Data)
			continue
		}
		require.Equal(t, []string{want}, codes, name)
		require.Nil(t, p.Photo.Data, name)
	}
	// From the standard input no file is read, and nothing is said of it.
	text := strings.Replace(photographed, "%", "strip.jpg", 1)
	s, ok := (&call{in: strings.NewReader(text), lang: "en"}).load("-")
	require.True(t, ok)
	p, found := s.compile()
	require.False(t, found.HasErrors())
	require.Nil(t, p.Photo.Data)
	require.Equal(t, "A blue strip.", p.Photo.Alt["en"])
}
