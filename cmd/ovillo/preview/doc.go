// Package preview shows sources in a browser while they are written: the pages as they will print, what was found, the counts and
// the drawings, anew each time a file is saved.
//
// Each source has a worker ([file]) that reads it, checks it and sets it, and puts what came of it on the [board] as a [view], which
// never changes. A browser is told by server-sent events how the board differs from what it was told last, so that one that was
// asleep, or that comes back, is told all that it needs and nothing twice; it then fetches the pages it does not have. What a source
// with errors would look like nobody knows: its last good pages stay, marked as old.
//
// The server listens on the loopback interface alone and answers its own page alone (see guard.go). It serves nothing from the disk:
// all that it sends was made from a checked source, and that reads its own folder only (see [desk.Folder]). It writes nothing.
package preview
