package main

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"syscall"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/save"
	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// mostMegabytes is the largest file that is read at all. What is too large for a pattern the parser says, with its code.
const mostMegabytes = 16

// loaded is a source that was read.
type loaded struct {
	path string // as the user wrote it; "-" for the standard input
	file *source.File

	gauges []compile.OwnGauge  // at which it is checked; none: its own
	fault  *compile.GaugeFault // one of them that stands in place of none of the source
	sound  bool                // it has no errors at its own gauge

	open func(name string) ([]byte, error) // reads a file beside the source; nil for the standard input

	shared bool // it holds nothing but what patterns share, once it was checked

	used []plan.UsedFile // the files that it uses, once it was checked

	book  *plan.Book      // if the source is a book, once it was checked
	bound []compile.Bound // its patterns

	coder   func(string) string                   // see code
	coderAt func(source.Span) func(string) string // likewise, for a place; nil: the source uses no files
}

// sources are the file arguments of a command that takes one file (most is 1) or several (0).
func (c *call) sources(most int) (paths []string, ok bool) {
	paths, wrong := expand(c.args)
	switch {
	case wrong != nil:
		c.misuse(*wrong)
		return nil, false
	case len(paths) == 0:
		c.misuse(msgNeedsFile.with())
		return nil, false
	case most > 0 && len(paths) > most:
		c.misuse(msgTooMany.with("what", paths[most]))
		return nil, false
	case countOf(paths, "-") > 1:
		c.misuse(msgStdinTwice.with())
		return nil, false
	}
	return paths, true
}

func countOf(all []string, one string) int {
	n := 0
	for _, s := range all {
		if s == one {
			n++
		}
	}
	return n
}

// load reads a source, or says why it cannot.
func (c *call) load(path string) (*loaded, bool) {
	data, err := c.read(path)
	if err != nil {
		c.say(msgCannotRead.with("path", path, "why", reason(err, path).in(c.lang)))
		return nil, false
	}
	s := &loaded{path: path, gauges: c.gauges}
	name := path
	if path == "-" {
		name = "<stdin>"
	} else {
		s.open = beside(path)
	}
	s.file = source.NewFile(name, string(data))
	return s, true
}

// beside opens the files that lie beside a source or in a folder there, and no others.
func beside(path string) func(name string) ([]byte, error) { return desk.Folder(filepath.Dir(path)) }

var errTooLarge = errors.New("too large")

func (c *call) read(path string) ([]byte, error) {
	in := c.in
	if path != "-" {
		f, err := desk.OpenSource(path)
		if err != nil {
			return nil, err
		}
		defer f.Close()
		in = f
	}
	const most = mostMegabytes << 20
	data, err := io.ReadAll(io.LimitReader(in, most+1))
	if err == nil && len(data) > most {
		err = errTooLarge
	}
	return data, err
}

// reason puts an error of the system into words.
func reason(err error, path string) said {
	folder := filepath.Dir(path)
	switch {
	case errors.Is(err, errTooLarge):
		return whyTooLarge.with("most", strconv.Itoa(mostMegabytes))
	case errors.Is(err, save.ErrNotPlain), errors.Is(err, desk.ErrNotPlain):
		return whyNotPlain.with()
	case errors.Is(err, desk.ErrLeadsOut):
		return whyLeadsOut.with()
	case errors.Is(err, save.ErrLink):
		return whyLink.with("to", leadsTo(path))
	case errors.Is(err, save.ErrReadOnly):
		return whyReadOnlyFile.with()
	case errors.Is(err, save.ErrShut):
		return whyShut.with("folder", folder)
	case errors.Is(err, save.ErrOwner):
		return whyOwner.with()
	case errors.Is(err, save.ErrChanged):
		return whyChanged.with()
	case errors.Is(err, save.ErrTwoNames):
		return whyTwoNames.with()
	case errors.Is(err, errNotPages):
		return whyNotPages.with()
	case errors.Is(err, errNotText):
		return whyNotText.with()
	case errors.Is(err, errNotData):
		return whyNotData.with()
	case errors.Is(err, errNotHTML):
		return whyNotWeb.with()
	case errors.Is(err, errNotSVG):
		return whyNotPicture.with("kind", "SVG")
	case errors.Is(err, errNotPNG):
		return whyNotPicture.with("kind", "PNG")
	case errors.Is(err, save.ErrFolder), errors.Is(err, desk.ErrFolder), errors.Is(err, syscall.EISDIR):
		return whyFolder.with()
	case errors.Is(err, syscall.ENOTDIR):
		return whyNotAFolder.with("folder", folder)
	case errors.Is(err, fs.ErrNotExist):
		if info, e := os.Stat(folder); e != nil {
			return whyNoFolder.with("folder", folder)
		} else if !info.IsDir() {
			return whyNotAFolder.with("folder", folder)
		}
		return whyMissing.with()
	case errors.Is(err, fs.ErrPermission):
		return whyForbidden.with()
	case errors.Is(err, syscall.EROFS):
		return whyReadOnly.with()
	case errors.Is(err, syscall.ENOSPC):
		return whyFull.with()
	case errors.Is(err, syscall.EFBIG), errors.Is(err, syscall.EDQUOT):
		return whyTooBig.with()
	}
	return whySystem.with("error", lastError(err).Error())
}

// leadsTo is the file that a link leads to, as it can be named.
func leadsTo(path string) string {
	to, err := os.Readlink(path)
	if err != nil || filepath.IsAbs(to) {
		return to
	}
	return filepath.Join(filepath.Dir(path), to)
}

// lastError leaves out the operation and the path, which the message has said already.
func lastError(err error) error {
	for {
		inner := errors.Unwrap(err)
		if inner == nil {
			return err
		}
		err = inner
	}
}

// stem is the name of a source without its folder and ending: what its output is called.
func stem(path string) string {
	base := filepath.Base(path)
	if ext := filepath.Ext(base); slices.Contains([]string{".ovillo", ".txt"}, ext) {
		return strings.TrimSuffix(base, ext)
	}
	return base
}
