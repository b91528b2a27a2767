// Package editor holds what text editors need to show patterns well: a grammar for highlighting, in the form that TextMate began and
// many editors read, and the settings of two of them. README.md says how to use them. The grammar is made from the words of the
// language by a test (go test ./cmd/ovillo/editor -update), so that no word is missing.
package editor
