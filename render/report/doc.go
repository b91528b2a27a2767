// Package report writes the technical editor's report on a pattern: what was looked at and how much of it, what was
// found, what was not looked at and why, and what only a person can decide.
//
//	r := report.Make(report.Input{Lang: "en", Pattern: p, Findings: found, …})
//	report.Text(w, r)     // for a terminal
//	report.JSON(w, r)     // for other programs
//	report.Compose(r, …)  // pages to print, with room to write
//
// The checks of an editor stand in checks.csv, one row a check: how it is decided (M by the program, m flagged by it, P by a
// person), which codes of messages are findings of it, its name, and the question that is put to the person. A code belongs
// to one check. What the checker itself has no word for, since it shows on the pages or in the checked pattern as a whole,
// is looked at here: one function a check, in the files look_*.go. They read the pattern and the pages and change nothing.
//
// It takes messages as they are worded and knows neither the source nor the catalogue they come from. A pattern with errors
// is welcome: an editor needs the report most then. What an error hides is said to be not known, never to be right.
package report
