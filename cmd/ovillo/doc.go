// Command ovillo checks crochet patterns written in the ovillo language and sets them as pages in English and Spanish.
//
//	ovillo check  FILE…            say what does not come out
//	ovillo build  FILE… [-o PATH]  write the pages of a pattern
//	ovillo counts FILE  [--csv]    count every row in every size
//	ovillo explain CODE            say more about a message
//	ovillo fmt    FILE… [-w]       lay a source out in the usual style
//
// It is the only package that knows of files, of the environment and of the terminal. It holds no rule of the language
// and no layout: each command reads, calls the pipeline, and writes.
package main
