package main

import (
	"os"
	"slices"
	"strings"

	"github.com/bmatcuk/doublestar/v4"
)

// expand replaces words such as patterns/*.ovillo and **/*.ovillo by the files they stand for, in order: a shell leaves them
// as they are if they are quoted, and some shells always do. A file that has such a name itself is meant before all others.
// Folders that are links are not gone into: they may lead anywhere, and in circles.
func expand(words []string) (paths []string, wrong *said) {
	for _, w := range words {
		_, err := os.Lstat(w)
		if err == nil || !strings.ContainsAny(w, "*?[{") {
			paths = append(paths, w)
			continue
		}
		found, err := doublestar.FilepathGlob(w, doublestar.WithFilesOnly(), doublestar.WithNoFollow())
		if err != nil || len(found) == 0 {
			s := msgNoMatch.with("glob", w)
			return nil, &s
		}
		slices.Sort(found)
		for _, f := range found {
			if !slices.Contains(paths, f) { // two of the words may stand for it
				paths = append(paths, f)
			}
		}
	}
	return paths, nil
}
