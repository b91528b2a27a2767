package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
)

var (
	black = page.Black
	red   = page.Color{1, 0, 0}
)

func line(x1, y1, x2, y2 float64) []page.Cmd {
	return []page.Cmd{{Op: 'M', P: [3]page.Point{{X: x1, Y: y1}}}, {Op: 'L', P: [3]page.Point{{X: x2, Y: y2}}}}
}

// element is an element of a file as an XML reader sees it.
type element struct {
	name  string
	attrs map[string]string
	text  string
	kids  []*element
}

func (e *element) all(name string) []*element {
	var out []*element
	for _, k := range e.kids {
		if k.name == name {
			out = append(out, k)
		}
		out = append(out, k.all(name)...)
	}
	return out
}

func written(t require.TestingT, s *scene.Scene) *element {
	var b bytes.Buffer
	require.NoError(t, Write(&b, s))
	root := &element{}
	open := []*element{root}
	d := xml.NewDecoder(&b)
	for {
		tok, err := d.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err)
		switch tok := tok.(type) {
		case xml.StartElement:
			e := &element{name: tok.Name.Local, attrs: map[string]string{}}
			for _, a := range tok.Attr {
				e.attrs[a.Name.Local] = a.Value
			}
			open[len(open)-1].kids = append(open[len(open)-1].kids, e)
			open = append(open, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			open[len(open)-1].text += string(tok)
		}
	}
	require.Len(t, root.kids, 1)
	return root.kids[0]
}

func sample() *scene.Scene {
	return &scene.Scene{W: 85.5, H: 40, Title: map[string]string{"en": "A <hat> & \"brim\"", "es": "Un gorro"},
		Desc: map[string]string{"en": "Two rows.", "es": "Dos hileras."},
		Items: []scene.Item{
			scene.Path{Cmds: line(0, 0, 10, 0), Stroke: &black, Width: 0.3},
			scene.Path{Cmds: line(0, 5, 10, 5), Stroke: &black, Width: 0.3},
			scene.Path{Cmds: line(0, 9, 10, 9), Stroke: &black, Width: 0.3, Dash: []float64{1, 0.5}},
			scene.Label{X: 4, Y: 4, Text: "12", Height: 3, Face: page.Sans},
			scene.Path{Cmds: append(line(1, 1, 2, 1), page.Cmd{Op: 'L', P: [3]page.Point{{X: 2, Y: 2}}}, page.Cmd{Op: 'Z'}), Fill: &red},
			scene.Label{X: 4, Y: 8, Text: "A1", Height: 3, Face: page.SerifBold, Anchor: scene.End},
		}, Groups: []scene.Group{{Name: "row 1", From: 0, To: 1}, {Name: "row <2>", From: 4, To: 6}}}
}

// A picture says what it is, in every language, to programs that read pictures aloud.
func TestPictureIsDescribed(t *testing.T) {
	root := written(t, sample())
	require.Equal(t, "svg", root.name)
	require.Equal(t, "img", root.attrs["role"])
	require.Equal(t, "0 0 85.5 40", root.attrs["viewBox"])
	require.Equal(t, "85.5mm", root.attrs["width"])
	require.Equal(t, "40mm", root.attrs["height"])
	byID := map[string]*element{}
	for _, name := range []string{"title", "desc", "g", "path"} {
		for _, e := range root.all(name) {
			if id := e.attrs["id"]; id != "" {
				require.Nil(t, byID[id], "two elements are called %s", id)
				byID[id] = e
			}
		}
	}
	said := map[string]string{}
	for _, list := range []string{"aria-labelledby", "aria-describedby"} {
		for id := range strings.FieldsSeq(root.attrs[list]) {
			require.NotNil(t, byID[id], "%s names %s, which is not there", list, id)
			said[byID[id].name+" "+byID[id].attrs["lang"]] = byID[id].text
		}
	}
	require.Equal(t, map[string]string{"title en": "A <hat> & \"brim\"", "title es": "Un gorro", "desc en": "Two rows.", "desc es": "Dos hileras."}, said)
	require.Empty(t, root.all("text"), "a letter depends on a face")
	for _, use := range root.all("use") {
		require.NotNil(t, byID[strings.TrimPrefix(use.attrs["href"], "#")], "a letter has no outline")
	}
}

// A picture that is in no language has no names, and refers to none.
func TestUndescribed(t *testing.T) {
	root := written(t, &scene.Scene{W: 1, H: 1})
	require.NotContains(t, root.attrs, "aria-labelledby")
	require.Empty(t, root.all("title"))
}

// A row of a chart is one thing in the file, under its name; lines that look alike are one path, but not across rows.
func TestGroups(t *testing.T) {
	root := written(t, sample())
	var rows []*element
	for _, g := range root.kids {
		if g.name == "g" && len(g.all("title")) > 0 {
			rows = append(rows, g)
		}
	}
	require.Len(t, rows, 2)
	require.Equal(t, "row 1", rows[0].attrs["aria-label"])
	require.Equal(t, "row <2>", rows[1].all("title")[0].text)
	require.Len(t, rows[0].all("path"), 1)
	require.Len(t, rows[1].all("use"), 2)
	require.Equal(t, "M0 0h10", rows[0].all("path")[0].attrs["d"])
	merged := sample()
	merged.Groups = nil
	require.Equal(t, "M0 0h10m-10 5h10", written(t, merged).all("path")[4].attrs["d"]) // behind the outlines of 1, 2 and A, 1
}

// Areas that overlap stay two paths: in one, what turns the other way would be taken out.
func TestAreasStayApart(t *testing.T) {
	square := func(x, y float64) scene.Path {
		return scene.Path{Cmds: append(line(x, y, x+5, y), page.Cmd{Op: 'L', P: [3]page.Point{{X: x + 5, Y: y + 5}}}, page.Cmd{Op: 'Z'}), Fill: &black}
	}
	root := written(t, &scene.Scene{W: 10, H: 10, Items: []scene.Item{square(0, 0), square(2, 2)}})
	require.Len(t, root.all("path"), 2)
}

// Read back, a path goes where the scene says, to a hundredth of a millimetre, however long it is: nothing drifts.
func TestPathsGoWhereTheyShould(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		coordinate := rapid.Float64Range(-300, 300)
		var cmds []page.Cmd
		for range rapid.IntRange(1, 60).Draw(t, "steps") {
			op := byte('M')
			if len(cmds) > 0 {
				op = rapid.SampledFrom([]byte("MLLLCZ")).Draw(t, "op")
			}
			c := page.Cmd{Op: op}
			for k := range points(op) {
				c.P[k] = page.Point{X: coordinate.Draw(t, "x"), Y: coordinate.Draw(t, "y")}
				if rapid.IntRange(0, 3).Draw(t, "straight") == 0 && len(cmds) > 0 {
					c.P[k].X = cmds[len(cmds)-1].P[0].X
				}
			}
			cmds = append(cmds, c)
		}
		root := written(t, &scene.Scene{W: 1, H: 1, Items: []scene.Item{scene.Path{Cmds: cmds, Stroke: &black, Width: 0.2}}})
		got := read(t, root.all("path")[0].attrs["d"])
		require.Len(t, got, len(cmds))
		for i, c := range cmds {
			require.Equal(t, c.Op, got[i].Op, "step %d", i)
			for k := range points(c.Op) {
				require.InDelta(t, c.P[k].X, got[i].P[k].X, 0.00501, "step %d", i)
				require.InDelta(t, c.P[k].Y, got[i].P[k].Y, 0.00501, "step %d", i)
			}
		}
	})
}

var token = regexp.MustCompile(`[A-Za-z]|-?(?:\d+\.?\d*|\.\d+)`)

// read reads the steps of a path by the rules of SVG (Scalable Vector Graphics, chapter on paths).
func read(t require.TestingT, d string) []page.Cmd {
	var out []page.Cmd
	var at, began page.Point
	op := byte(0)
	tokens := token.FindAllString(d, -1)
	number := func() float64 {
		v, err := strconv.ParseFloat(tokens[0], 64)
		require.NoError(t, err)
		tokens = tokens[1:]
		return v
	}
	for len(tokens) > 0 {
		if c := tokens[0][0]; c >= 'A' {
			op, tokens = c, tokens[1:]
		}
		from := at
		switch op {
		case 'M':
			at = page.Point{X: number(), Y: number()}
			out = append(out, page.Cmd{Op: 'M', P: [3]page.Point{at}})
			began = at
		case 'm':
			at = page.Point{X: from.X + number(), Y: from.Y + number()}
			out = append(out, page.Cmd{Op: 'M', P: [3]page.Point{at}})
			began = at
		case 'h':
			at.X += number()
			out = append(out, page.Cmd{Op: 'L', P: [3]page.Point{at}})
		case 'v':
			at.Y += number()
			out = append(out, page.Cmd{Op: 'L', P: [3]page.Point{at}})
		case 'l':
			at = page.Point{X: from.X + number(), Y: from.Y + number()}
			out = append(out, page.Cmd{Op: 'L', P: [3]page.Point{at}})
		case 'c':
			c := page.Cmd{Op: 'C'}
			for k := range c.P {
				c.P[k] = page.Point{X: from.X + number(), Y: from.Y + number()}
			}
			at = c.P[2]
			out = append(out, c)
		case 'z':
			at = began
			out = append(out, page.Cmd{Op: 'Z'})
		default:
			require.Fail(t, "an unknown step", "%c in %s", op, d)
		}
	}
	return out
}

func TestNumbers(t *testing.T) {
	for v, want := range map[float64]string{0: "0", 0.5: ".5", -0.25: "-.25", 12: "12", 3.456: "3.46", -0.001: "0", 10.05: "10.05", 100: "100"} {
		require.Equal(t, want, num(v))
	}
}

// Letters are as wide as they are on the pages, and end where their anchor says.
func TestLettersStandWhereTheirAnchorSays(t *testing.T) {
	place := regexp.MustCompile(`translate\((\S+) (\S+)\) scale\((\S+)\)`)
	for anchor, part := range map[scene.Anchor]float64{scene.Start: 0, scene.Middle: 0.5, scene.End: 1} {
		root := written(t, &scene.Scene{W: 50, H: 10, Items: []scene.Item{scene.Label{X: 20, Y: 5, Text: "AV 12", Height: 4, Face: page.Serif, Anchor: anchor}}})
		m := place.FindStringSubmatch(root.all("g")[0].attrs["transform"])
		require.NotNil(t, m)
		x, _ := strconv.ParseFloat(m[1], 64)
		y, _ := strconv.ParseFloat(m[2], 64)
		pt := 4 * 72 / 25.4
		require.InDelta(t, 20-part*font.Of(page.Serif).Width("AV 12", pt), x, 0.006)
		require.InDelta(t, 5+font.Of(page.Serif).CapHeight(pt)/2, y, 0.006)
		require.Equal(t, "0.004", m[3])
		require.Equal(t, "AV 12", root.all("g")[0].attrs["aria-label"])
	}
}

func TestSameBytes(t *testing.T) {
	var a, b bytes.Buffer
	require.NoError(t, Write(&a, sample()))
	require.NoError(t, Write(&b, sample()))
	require.Equal(t, a.String(), b.String())
}

// What no XML may hold does not break the file.
func TestOddSigns(t *testing.T) {
	s := sample()
	s.Title["en"], s.Items[3] = "a\x00b\u0007", scene.Label{Text: "\x01<", Height: 2}
	require.NotNil(t, written(t, s))
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, io.ErrClosedPipe }

func TestErrorOfTheWriter(t *testing.T) {
	require.True(t, errors.Is(Write(broken{}, sample()), io.ErrClosedPipe))
}

// A grid of many lines is a small file, and writing it takes memory in proportion to it.
func TestSmall(t *testing.T) {
	s := &scene.Scene{W: 2600, H: 2600}
	for i := range 401 {
		v := 6.5 * float64(i)
		s.Items = append(s.Items, scene.Path{Cmds: line(0, v, 2600, v), Stroke: &black, Width: 0.18},
			scene.Path{Cmds: line(v, 0, v, 2600), Stroke: &black, Width: 0.18})
	}
	var b bytes.Buffer
	require.NoError(t, Write(&b, s))
	require.Less(t, b.Len(), 802*20+1000)
}
