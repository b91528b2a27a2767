package desk

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"

	"ovillo/compile/picture"
)

// Revision is a file as it stood at a revision of the repository in which the command runs.
type Revision struct {
	Rev  string // as git understands it: a commit, a tag, HEAD~2
	Path string // from the folder of the command, with slashes
	Dir  string // that folder; "" is the one at hand
}

// What can be wrong with a revision. A path that is not there is [fs.ErrNotExist].
var (
	ErrNoGit        = errors.New("git is not installed")
	ErrNoRepository = errors.New("not in a repository")
	ErrNoRevision   = errors.New("no such revision")
	ErrFolder       = errors.New("a folder")
)

// ReadRevision reads git:REV:PATH, and reports whether a word is that. The revision ends at the first colon. What git could take
// for an option, or what leads out of the repository's own paths by its root, is none.
func ReadRevision(word string) (Revision, bool) {
	rest, ok := strings.CutPrefix(word, "git:")
	if !ok {
		return Revision{}, false
	}
	rev, file, ok := strings.Cut(rest, ":")
	file = filepath.ToSlash(file)
	switch {
	case !ok || rev == "" || strings.HasPrefix(rev, "-") || strings.ContainsFunc(rev, isControl):
		return Revision{}, false
	case file == "" || strings.HasPrefix(file, "/") || strings.HasSuffix(file, "/") || strings.ContainsFunc(file, isControl):
		return Revision{}, false
	}
	return Revision{Rev: rev, Path: path.Clean(file)}, true
}

func isControl(r rune) bool { return r < ' ' || r == 0x7f }

// String is the word that names the revision.
func (r Revision) String() string { return "git:" + r.Rev + ":" + r.Path }

// Read reads the file, but no more than so many bytes and one.
func (r Revision) Read(most int64) ([]byte, error) {
	if _, err := exec.LookPath("git"); err != nil {
		return nil, ErrNoGit
	}
	if _, err := r.git("rev-parse", "--git-dir"); err != nil {
		return nil, ErrNoRepository
	}
	tree, err := r.git("rev-parse", "--verify", "--quiet", "--end-of-options", r.Rev+"^{tree}")
	if err != nil {
		return nil, ErrNoRevision
	}
	blob, err := r.git("rev-parse", "--verify", "--quiet", "--end-of-options", tree+":./"+r.Path)
	if err != nil {
		return nil, fs.ErrNotExist
	}
	if kind, err := r.git("cat-file", "-t", blob); err != nil || kind != "blob" {
		return nil, ErrFolder
	}
	cmd := r.command("cat-file", "blob", blob)
	out, err := cmd.StdoutPipe()
	if err != nil {
		return nil, err
	}
	if err := cmd.Start(); err != nil {
		return nil, err
	}
	data, err := io.ReadAll(io.LimitReader(out, most+1))
	if int64(len(data)) > most {
		cmd.Process.Kill()
		cmd.Wait()
		return data, nil
	}
	return data, errors.Join(err, cmd.Wait())
}

// Beside reads the files of the folder of the file, and of the folders in it, at the same revision.
func (r Revision) Beside(name string) ([]byte, error) {
	if !fs.ValidPath(filepath.ToSlash(name)) {
		return nil, fs.ErrNotExist
	}
	r.Path = path.Join(path.Dir(r.Path), filepath.ToSlash(name))
	return r.Read(picture.MostBytes)
}

// command is git, which is not to fetch what the repository lacks: a repository says where from, by what program, and may be anybody's.
func (r Revision) command(args ...string) *exec.Cmd {
	cmd := exec.Command("git", args...)
	cmd.Dir = r.Dir
	cmd.Env = append(os.Environ(), "GIT_NO_LAZY_FETCH=1", "GIT_ALLOW_PROTOCOL=", "GIT_TERMINAL_PROMPT=0")
	return cmd
}

// git runs a command that answers in one line.
func (r Revision) git(args ...string) (string, error) {
	out, err := r.command(args...).Output()
	return string(bytes.TrimSpace(out)), err
}
