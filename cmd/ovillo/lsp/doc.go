// Package lsp lets a text editor show what ovillo knows of a source while it is written: what does not come out, at each
// keystroke; the count of each row; what a stitch is in both languages; where a name was set. It speaks the Language Server
// Protocol 3.17, an open standard, over two streams.
//
// Requests are answered from snapshots of a document, which never change, so that they can be worked on side by side. One
// goroutine a document checks its newest text; what was checked meanwhile for an older one is not told. A source that cannot be
// read keeps what was last known of the lines that are still as they were.
//
// Each kind of answer has a file of its own. Names and where they hold are in names.go. Nothing is read but the documents that the
// editor hands over and, in the folder of each, the files that it takes in.
package lsp
