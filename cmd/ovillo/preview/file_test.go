package preview

import (
	"io"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestEveryWayToSave changes a source as programs do it. Each time the new pages are seen, and on the way there no error and nothing
// that says the file is gone.
func TestEveryWayToSave(t *testing.T) {
	hat := example(t, "duna-hat.ovillo")
	d := newDesktop(t, map[string]string{"hat.ovillo": hat}, "hat.ovillo")
	d.sees(1, "the hat", isFresh)
	path := d.path("hat.ovillo")
	ways := map[string]func(text string){
		"written over": func(text string) { d.save("hat.ovillo", text) },
		"a new file in its place": func(text string) {
			d.save(".hat.ovillo.tmp", text)
			require.NoError(t, os.Rename(d.path(".hat.ovillo.tmp"), path))
		},
		"the old one moved away first": func(text string) {
			require.NoError(t, os.Rename(path, path+"~"))
			time.Sleep(20 * time.Millisecond)
			d.save("hat.ovillo", text)
		},
		"taken away and made anew": func(text string) {
			require.NoError(t, os.Remove(path))
			time.Sleep(20 * time.Millisecond)
			d.save("hat.ovillo", text)
		},
		"emptied, and then written": func(text string) {
			require.NoError(t, os.Truncate(path, 0))
			time.Sleep(20 * time.Millisecond)
			d.save("hat.ovillo", text)
		},
		"several times in a row": func(text string) {
			for i := range 5 {
				d.save("hat.ovillo", strings.Replace(text, "Lavar", "Lavar "+strings.Repeat("bien ", i), 1))
			}
			d.save("hat.ovillo", text)
		},
		"with the size and time that it had": func(text string) {
			info, err := os.Stat(path)
			require.NoError(t, err)
			d.save("hat.ovillo", text)
			require.NoError(t, os.Chtimes(path, info.ModTime(), info.ModTime()))
		},
	}
	turn := 0
	for name, save := range ways {
		t.Run(name, func(t *testing.T) {
			turn++
			word := "Frega" + string(rune('a'+turn)) // all of one length
			save(strings.Replace(hat, "Lavar", word, 1))
			var states []state
			v := d.sees(1, word, func(v *view) bool {
				states = append(states, v.state)
				return v.fresh() && v.says(word)
			})
			assert.NotContains(t, states, faulty)
			assert.NotContains(t, states, gone)
			assert.Equal(t, fine, v.state)
		})
	}
}

// TestWhatItIsMadeOf: a photograph that comes, changes and goes is seen as the source is.
func TestWhatItIsMadeOf(t *testing.T) {
	photo, err := os.ReadFile("../../../examples/jarcia-headband.jpg")
	require.NoError(t, err)
	d := newDesktop(t, map[string]string{"band.ovillo": example(t, "jarcia-headband.ovillo")}, "band.ovillo")
	v := d.sees(1, "that the photograph is missing", func(v *view) bool { return v.text != nil && v.text.errors > 0 })
	assert.Nil(t, v.set)
	d.save("jarcia-headband.jpg", string(photo))
	v = d.sees(1, "the photograph", isFresh)
	require.Len(t, v.set.pictures, 1)
	d.save("jarcia-headband.jpg", string(append(photo, 0)))
	w := d.sees(1, "the changed photograph", func(w *view) bool { return w.set != v.set && w.fresh() })
	for name := range w.set.pictures {
		assert.NotContains(t, v.set.pictures, name)
		assert.Equal(t, http.StatusOK, d.ask("GET", d.base+"file/1/picture/"+name).Code)
	}
	require.NoError(t, os.Remove(d.path("jarcia-headband.jpg")))
	d.sees(1, "that it is gone", func(v *view) bool { return v.old && v.text.errors > 0 && v.set != nil })
}

// TestShared: a file that others take in is seen as they are, and a slip in it is shown there, with its line.
func TestShared(t *testing.T) {
	hat := example(t, "duna-hat.ovillo")
	const from, to = "muestra 10 cm", "ganchillo 4 mm\n"
	begin, end := strings.Index(hat, from), strings.Index(hat, to)
	require.Positive(t, begin)
	shared := "idioma es\n\n" + hat[begin:end]
	d := newDesktop(t, map[string]string{"hat.ovillo": strings.Replace(hat[:begin]+hat[end:], "idioma es\n", "idioma es\nusar \"taller.ovillo\"\n", 1), "taller.ovillo": shared}, "hat.ovillo")
	d.sees(1, "the hat with its gauge", func(v *view) bool { return v.fresh() && v.says("18") && v.says("13") })
	d.save("taller.ovillo", strings.Replace(shared, "13 vueltas", "13.5 vueltas", 1))
	d.sees(1, "another gauge", func(v *view) bool { return v.fresh() && v.says("13,5") })
	d.save("taller.ovillo", strings.Replace(shared, "18 puntos", "18 pntos", 1))
	there := func(m message) bool { return m.Where == "taller.ovillo" && len(m.Quotes) > 0 }
	v := d.sees(1, "a slip there", func(v *view) bool { return v.old && slices.ContainsFunc(v.text.list, there) })
	i := slices.IndexFunc(v.text.list, there)
	q := v.text.list[i].Quotes[0]
	assert.Contains(t, q.Before+q.Marked+q.After, "18 pntos")
}

// TestBook: a book is seen as its pages, with the counts of all its patterns; one that cannot be bound says which pattern it is, and
// comes back when that is mended.
func TestBook(t *testing.T) {
	sources := map[string]string{}
	for _, name := range []string{"bahia-set.ovillo", "common.ovillo", "hat.ovillo", "mitones.ovillo"} {
		sources[name] = example(t, "bahia/"+name)
	}
	d := newDesktop(t, sources, "bahia-set.ovillo")
	v := d.sees(1, "the book", func(v *view) bool { return v.fresh() && v.says("pebbles") })
	assert.Empty(t, v.text.list)
	alone := newDesktop(t, sources, "hat.ovillo")
	hat := alone.sees(1, "the hat", isFresh)
	assert.Greater(t, len(v.set.sheets), len(hat.set.sheets))
	assert.Greater(t, len(v.set.countTables("en")), len(hat.set.countTables("en")))
	data, err := v.set.pdf()
	require.NoError(t, err)
	assert.Greater(t, len(data), 10000)
	d.save("hat.ovillo", strings.Replace(sources["hat.ovillo"], "= ", "= 1 + ", 1))
	v = d.sees(1, "that the hat has errors", func(v *view) bool { return v.old && v.text.errors > 0 })
	assert.True(t, slices.ContainsFunc(v.text.list, func(m message) bool { return strings.Contains(m.Message, "hat.ovillo") }))
	d.save("hat.ovillo", sources["hat.ovillo"])
	d.sees(1, "the book again", isFresh)
}

// TestFolder: the sources of a folder are shown, those too that come later; other files are not.
func TestFolder(t *testing.T) {
	hat := example(t, "duna-hat.ovillo")
	d := newDesktop(t, map[string]string{"hat.ovillo": hat, "notes.txt": "x", ".hidden.ovillo": hat})
	d.sees(1, "the hat", isFresh)
	d.save("cap.ovillo", "")
	d.sees(2, "that the cap is empty", func(v *view) bool { return filepath.Base(v.name) == "cap.ovillo" && v.state == faulty })
	d.save("cap.ovillo", "hook 4 mm\n")
	v := d.sees(2, "that it is one that patterns may share", func(v *view) bool { return v.state == fine })
	assert.Equal(t, wordNothing.en, v.why)
	assert.Empty(t, v.text.list)
	d.save("cap.ovillo", hat)
	d.sees(2, "the cap", isFresh)
	require.NoError(t, os.Rename(d.path("hat.ovillo"), d.path("beanie.ovillo")))
	d.sees(1, "the hat's new name", func(v *view) bool { return filepath.Base(v.name) == "beanie.ovillo" && v.state == fine })
	views, _ := d.board.look()
	assert.Len(t, views, 2)
}

// TestSince: pages are old since the first slip, and one more does not begin anew.
func TestSince(t *testing.T) {
	hat := example(t, "duna-hat.ovillo")
	d := newDesktop(t, map[string]string{"hat.ovillo": hat}, "hat.ovillo")
	d.sees(1, "the hat", isFresh)
	d.save("hat.ovillo", hat+"\nx\n")
	first := d.sees(1, "a slip", func(v *view) bool { return v.old })
	d.save("hat.ovillo", hat+"\nx\ny\n")
	second := d.sees(1, "another", func(v *view) bool { return v.old && v.text != first.text })
	assert.Equal(t, first.since, second.since)
	assert.Same(t, first.set, second.set)
	assert.Equal(t, http.StatusNotFound, d.ask("GET", d.base+"file/1/pdf/hat.pdf").Code, "a PDF of a source with errors")
	d.save("hat.ovillo", hat)
	d.sees(1, "the hat again", isFresh)
}

// TestAFaultOfOurs: what fails in ovillo is said in place of the pages, and the next text is shown.
func TestAFaultOfOurs(t *testing.T) {
	hat := example(t, "duna-hat.ovillo")
	d := newDesktop(t, map[string]string{"hat.ovillo": hat}, "hat.ovillo")
	v := d.sees(1, "the hat", isFresh)
	d.mu.Lock()
	f := d.files[0]
	d.mu.Unlock()
	f.guarded(func() { panic("knot") })
	w := d.sees(1, "the fault", func(v *view) bool { return strings.Contains(v.why, "knot") })
	assert.Same(t, v.set, w.set)
	assert.True(t, w.old)
	d.save("hat.ovillo", strings.Replace(hat, "Lavar", "Fregar", 1))
	d.sees(1, "the next text", func(v *view) bool { return v.fresh() && v.why == "" && v.says("Fregar") })
}

// TestEndsClean: when the preview ends, those who listen are let go, the port is free, and nothing of it runs on.
func TestEndsClean(t *testing.T) {
	d := newDesktop(t, map[string]string{"hat.ovillo": example(t, "duna-hat.ovillo")}, "hat.ovillo")
	answer, err := http.Get(d.Address() + "events")
	require.NoError(t, err)
	defer answer.Body.Close()
	assert.NotEmpty(t, ours())
	d.stop()
	said, err := io.ReadAll(answer.Body)
	require.NoError(t, err, "the stream was cut off")
	assert.Contains(t, string(said), "event: end")
	http.DefaultClient.CloseIdleConnections()
	for end := time.Now().Add(3 * time.Second); len(ours()) > 0 && time.Now().Before(end); {
		time.Sleep(5 * time.Millisecond)
	}
	assert.Empty(t, ours())
	_, err = http.Get(d.Address())
	assert.Error(t, err)
}

// TestSamePort: a port that was asked for is taken by one preview alone, and its address is the same the next time.
func TestSamePort(t *testing.T) {
	d := newDesktop(t, map[string]string{"hat.ovillo": example(t, "duna-hat.ovillo")}, "hat.ovillo")
	_, port, _ := strings.Cut(d.hosts[0], ":")
	d.stop()
	o := options("es")
	o.Files, o.Port = []string{d.path("hat.ovillo")}, number(t, port)
	d.start(o)
	assert.Equal(t, "http://127.0.0.1:"+port+"/", d.Address())
	_, err := Listen(o)
	assert.ErrorContains(t, err, "address already in use")
	assert.Contains(t, d.ask("GET", "/").Body.String(), "Vista previa")
}
