// Package errata says what changed between two editions of a pattern, for those who own the older one: where it stands, in which
// sizes, what stood there and what should stand there. It writes the list as text, as Markdown and as pages, and the edition notes
// of a source.
//
// What changed is found by compile/compare; the sentences are those of the pages, written for the sizes that have them.
package errata
