// Package desk holds a source as it lies on the designer's desk and says what comes of it: the checked pattern with what was
// found, and its pages. The command, the preview and the language server share it, so that all three say the same of a source.
//
// A source need not be saved: its text is handed over. The only files that are read are those it names, in its own folder
// (see [Folder]).
package desk
