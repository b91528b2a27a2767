// Package lang reads the language in which patterns are written.
//
// [Parse] takes the text of a source and gives back its tree and everything that was found wrong with the writing:
//
//	file := source.NewFile("leggings.ovillo", text)
//	tree, faults := lang.Parse(file)
//	lang.Walk(tree, func(n lang.Node) bool { …; return true })
//
// There is always a tree: a statement that cannot be read is a [Statement] without a node and one diagnostic, and reading
// goes on at the next line. The tree is declared in tree.go, in the order of the reference (reference.md).
//
// Reading has three layers. The lexer (lexer.go) cuts the text into tokens that tile it and never fails. The block loop
// (parse.go, gather.go) joins lines into statements and statements into blocks. Each statement is then read on its own:
// the tags in tree.go are its grammar, except for what must look ahead (values, names, bounds) and for rows, of which a
// pattern has most; those are read by hand, each node by its Parse method.
//
// A source whose first line is `idioma es` is written in Spanish. Its tokens are read as the English words they stand for
// (respell.go, from the table words.csv), so that everything behind the lexer is the same for both; [Reword] puts a source from
// one language into the other.
//
// The package knows nothing of meaning: whether a name is a stitch or a marker, and whether a row comes out, is worked
// out in package compile.
package lang
