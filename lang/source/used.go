package source

// A source may take in others (`use "common.ovillo"`). Their texts stand behind its own, each from an offset of its own on, so
// that a span says which file it lies in. An offset between two of them is the end of the one before it.

// Take puts a file behind the files that f has taken in already, and returns the offset from which on its spans count.
func (f *File) Take(used *File) int32 {
	base := f.end() + 1
	f.used = append(f.used, taken{used, base})
	return base
}

// taken is a file behind another one.
type taken struct {
	*File
	base int32
}

// Alone forgets the files that f has taken in.
func (f *File) Alone() { f.used = nil }

// Used are the files that f has taken in, in the order in which they were.
func (f *File) Used() []*File {
	var files []*File
	for _, u := range f.used {
		files = append(files, u.File)
	}
	return files
}

// Within is the file in which a span begins, with the span as it counts there. For a file that takes in no other one, it is
// the file and the span as they are.
func (f *File) Within(s Span) (*File, Span) {
	for i := len(f.used) - 1; i >= 0; i-- {
		if base := f.used[i].base; s.Start >= base {
			return f.used[i].File, Span{s.Start - base, s.End - base}
		}
	}
	return f, s
}

// end is the offset behind the last text.
func (f *File) end() int32 {
	if n := len(f.used); n > 0 {
		return f.used[n-1].base + int32(len(f.used[n-1].Text))
	}
	return int32(len(f.Text))
}
