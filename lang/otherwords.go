package lang

// Who writes a line of an English source in Spanish is told the English word.

// shortWords are short forms of printed patterns for words that are written in full.
var shortWords = map[string]string{"rnd": "round", "rnds": "rounds", "rd": "round", "rds": "rounds", "rep": "repeat"}

// englishFor gives the word of the language that a line begins with for one of another language, with or without accents; ""
// if there is none.
func englishFor(word string) string {
	for _, i := range idioms {
		for _, w := range standardWords()[i.code].read[plain(word)] {
			if len(w.other) == 1 && beginsLines(w.english[0]) {
				return w.english[0]
			}
		}
	}
	return ""
}

// beginsLines reports whether a line can begin with a word of the language.
func beginsLines(word string) bool {
	for _, in := range blockOrder {
		if forms[in][word] != nil {
			return true
		}
	}
	return word == "end" || word == "count" || word == "fasten" || classes[word]&lineWord != 0
}
