package lang

import (
	"errors"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// A source may take in files that several patterns share:
//
//	use "common.ovillo"
//
// Such a file is read by itself, in its own language, and its statements are put behind the statement that names it. Its text
// stands behind that of the source (see [source.File.Take]), so that a place in it is told from one in the source. What of it a
// pattern needs is for package compile to say.

// Load reads a source with the files that it uses. open reads a file by its name from the folder of the source, with slashes
// between folders; the name never leads out of that folder. A file that is not there is an error of [fs.ErrNotExist]. Where
// open is nil no file can be read, and each `use` is reported.
//
// f takes the files in: places in the tree and in the list are those of [source.File.Within].
func Load(f *source.File, open func(name string) ([]byte, error)) (*File, diag.List) {
	f.Alone()
	main, found := parse(f, false)
	l := &loader{main: main, open: open, files: map[string]*usedFile{}, bytes: len(f.Text), lines: f.Lines(), uk: main.inUKTerms(), found: found}
	self := &usedFile{File: main, name: baseName(f.Name)}
	l.self, l.files[self.name] = self, self
	l.use(self, []*usedFile{self})
	l.readNames()
	for _, u := range l.order {
		u.base = f.Take(u.Source)
		u.shift()
	}
	l.found = append(l.found, l.foundIn()...)
	main.Body = l.spliced(self, map[*usedFile]bool{self: true})
	main.used = l.order
	return main, l.found
}

// Used are the names of the files that a loaded source takes in, from its folder, those that could not be read as well.
func (f *File) Used() []string { return f.asked }

// UsedFiles are the files that a loaded source takes in, with their names from its folder.
func (f *File) UsedFiles() []*source.File {
	var files []*source.File
	for _, u := range f.used {
		files = append(files, source.NewFile(u.name, u.Source.Text))
	}
	return files
}

// At is the file that holds a place: f or one that it uses. What it says of words is said of those of that file.
func (f *File) At(s source.Span) *File {
	for i := len(f.used) - 1; i >= 0; i-- {
		if s.Start >= f.used[i].base {
			return f.used[i].File
		}
	}
	return f
}

// Shared reports whether a place lies in a file that f uses.
func (f *File) Shared(s source.Span) bool { return f.At(s) != f }

// usedFile is a file that a source takes in, or the source.
type usedFile struct {
	*File
	name  string // from the folder of the source
	base  int32
	found diag.List
	uses  []use
}

// use is a statement that names a file, and that file; nil if it was not read.
type use struct {
	at   *Statement
	file *usedFile
}

type loader struct {
	main  *File
	self  *usedFile // the source itself
	open  func(name string) ([]byte, error)
	files map[string]*usedFile
	order []*usedFile
	bytes int // read so far
	lines int // likewise
	uk    bool
	found diag.List // in the source
}

// use reads the files that a file names. chain leads from the source to it.
func (l *loader) use(in *usedFile, chain []*usedFile) {
	for _, s := range in.Body {
		n, ok := s.Node.(*Use)
		if !ok {
			continue
		}
		name, inside := InFolder(path.Dir(in.name), n.File.Text)
		if !inside {
			in.say(codeUseName, n, diag.Args{"file": strconv.Quote(n.File.Text)}, "")
			continue
		}
		if !slices.Contains(l.main.asked, name) {
			l.main.asked = append(l.main.asked, name)
		}
		if i := slices.IndexFunc(chain, func(u *usedFile) bool { return u.name == name }); i >= 0 {
			var names []string
			for _, u := range chain[i:] {
				names = append(names, strconv.Quote(u.name))
			}
			in.say(codeUseCycle, n, diag.Args{"chain": strings.Join(append(names, strconv.Quote(name)), " → ")}, "")
			continue
		}
		u := l.files[name]
		if u == nil {
			if u = l.read(in, n, name, len(chain)); u == nil {
				continue
			}
			l.files[name] = u
			l.order = append(l.order, u)
			l.use(u, append(slices.Clip(chain), u))
		}
		in.uses = append(in.uses, use{s, u})
	}
}

// read reads one file, or says why it cannot.
func (l *loader) read(in *usedFile, n *Use, name string, depth int) *usedFile {
	args := diag.Args{"file": strconv.Quote(n.File.Text)}
	if l.open == nil {
		in.say(codeUseRead, n, args, "folder")
		return nil
	}
	if len(l.order) == maxUsed || depth > maxUseDepth {
		in.say(codeUseMany, n, diag.Args{"most": maxUsed, "deep": maxUseDepth}, "")
		return nil
	}
	data, err := l.open(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		in.say(codeUseMissing, n, args, "")
		return nil
	case err != nil:
		in.say(codeUseRead, n, args, "closed")
		return nil
	}
	if len(data) > MostBytes {
		data = data[:MostBytes+1] // enough to be refused; the rest need not be kept
	}
	file := source.NewFile(l.main.Beside(name), string(data))
	l.bytes, l.lines = l.bytes+len(data), l.lines+file.Lines()
	if l.bytes > MostBytes && len(data) <= MostBytes || l.lines > maxLines && file.Lines() <= maxLines {
		in.say(codeUseLarge, n, diag.Args{"file": strconv.Quote(n.File.Text), "limit": MostBytes >> 20, "lines": maxLines}, "")
		return nil
	}
	u := &usedFile{name: name}
	u.File, u.found = parse(file, l.uk)
	u.onlyShared()
	return u
}

// onlyShared leaves out of a used file what cannot be shared, and reports it.
func (u *usedFile) onlyShared() {
	u.Body = slices.DeleteFunc(u.Body, func(s *Statement) bool {
		if s.Node == nil || isShared(s.Node) {
			return false
		}
		word, _, _ := strings.Cut(strings.TrimSpace(u.Source.Slice(s.Head)), " ")
		u.found.Add(diag.Diagnostic{Code: codeNotShared, Span: s.Head, Args: diag.Args{"word": word}})
		return true
	})
}

// OnlyShared reports whether a source holds nothing but what can stand in a file that patterns share. One that holds nothing does not.
func (f *File) OnlyShared() bool {
	return len(f.Body) > 0 && !slices.ContainsFunc(f.Body, func(s *Statement) bool { return s.Node == nil || !isShared(s.Node) })
}

// isShared reports whether a statement can stand in a file that patterns share: what they say of the piece that is made cannot.
func isShared(n StatementNode) bool {
	switch n := n.(type) {
	case *Use, *Sizes, *Gauge, *Hook, *Notion, *Yarn, *Let, *Group, *Stitch, *StitchPattern:
		return true
	case *Chart:
		return n.Of == nil
	case *Prose:
		return n.Word == "note" || n.Word == "care" || n.Word == "licence"
	}
	return false
}

func (u *usedFile) say(code diag.Code, n *Use, args diag.Args, help string) {
	u.found.Add(diag.Diagnostic{Code: code, Span: n.File.Span(), Args: args, Help: help})
}

// readNames brings the names of all files to the English ones. A name that one of them gives to a thing is no word of the
// language in any of them.
func (l *loader) readNames() {
	files := []*File{l.main}
	for _, u := range l.order {
		files = append(files, u.File)
	}
	if !slices.ContainsFunc(files, func(f *File) bool { return f.tongue != nil }) {
		return
	}
	own := map[string]bool{}
	for _, f := range files {
		for name := range ownNamesOf(f.nameUses()) {
			own[name] = true
		}
	}
	for _, f := range files {
		f.readNames(own)
	}
}

// foundIn is what was found in the used files, and what was found of their names, by the places of the source.
func (l *loader) foundIn() diag.List {
	list := slices.Clone(l.self.found)
	for _, u := range l.order {
		for _, d := range u.found {
			d.Span = u.moved(d.Span)
			d.Related = slices.Clone(d.Related)
			for i := range d.Related {
				d.Related[i].Span = u.moved(d.Related[i].Span)
			}
			if d.Edit != nil {
				d.Edit = &diag.Edit{Span: u.moved(d.Edit.Span), Text: d.Edit.Text}
			}
			list.Add(d)
		}
	}
	return list
}

// spliced are the statements of a file with those of the files it uses, each file once, before all that need them.
func (l *loader) spliced(u *usedFile, done map[*usedFile]bool) []*Statement {
	var body []*Statement
	for _, s := range u.Body {
		body = append(body, s)
		for _, use := range u.uses {
			if use.at == s && !done[use.file] {
				done[use.file] = true
				body = append(body, l.spliced(use.file, done)...)
			}
		}
	}
	return body
}

// Beside is the name of a file that lies in the folder of a source, as messages name it.
func (f *File) Beside(name string) string { return folderOf(f.Source.Name) + name }

// folderOf is what stands before the last part of a file's name as the user gave it, whatever parts folders there.
func folderOf(name string) string { return name[:strings.LastIndexAny(name, `/\`)+1] }

func baseName(name string) string { return name[len(folderOf(name)):] }
