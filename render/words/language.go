// Package words writes a checked pattern in a language: every sentence, label, note and heading of a page.
//
// Sentences are made from the meaning, never translated word for word. The shared files decide what is said (which
// instruction has nothing to do and vanishes, where sizes part company, what is counted); a [voice] decides how it is
// said. The files english_*.go and spanish_*.go are the two voices. Which words a voice uses for the things of the craft
// depends on the reading (US or UK terms, the Spanish of one country or another) and stands in lang/terms: a new reading
// is a column there, a new language a voice and columns.
package words

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"ovillo/lang/terms"
)

// Language writes patterns in one language and one reading of its terms. It is safe for use by several goroutines.
type Language struct {
	read  *reading
	voice voice
	speak func(*reading) voice
	kept  *kept // nil: nothing is, see [Language.Keeping]
}

// voices makes the voice of a language for one of its readings.
var voices = map[string]func(*reading) voice{
	"en": func(r *reading) voice { return &english{r} },
	"es": func(r *reading) voice { return &spanish{r} },
}

// For returns the language of a tag, in any case: "en", "en-US", "en-GB", "es", "es-419", "es-ES", "es-MX", "es-AR" (River
// Plate), "es-CL" or "es-EC". A tag that is not among them is an error.
func For(tag string) (*Language, error) {
	r, ok := terms.Standard().Reading(tag)
	if !ok {
		return nil, fmt.Errorf("no words for the language %q: there are %s", tag, strings.Join(Tags(), ", "))
	}
	return speak(&reading{Reading: r}), nil
}

// speak makes the language of a reading, which must have a voice.
func speak(r *reading) *Language { return newLanguage(r, voices[r.Code()]) }

func newLanguage(r *reading, speak func(*reading) voice) *Language {
	return &Language{read: r, voice: speak(r), speak: speak}
}

// Tags lists the tags that [For] knows, in order.
func Tags() []string {
	table := terms.Standard()
	tags := slices.AppendSeq(table.Tags(), maps.Keys(table.Also()))
	slices.Sort(tags)
	return tags
}

// Readings lists the languages that [For] knows, one for each reading of their terms.
func Readings() []*Language {
	var out []*Language
	for _, tag := range terms.Standard().Tags() {
		if l, err := For(tag); err == nil {
			out = append(out, l)
		}
	}
	return out
}

// Also lists the other tags that stand for the language: "en" for "en-US".
func (l *Language) Also() []string {
	var out []string
	for name, tag := range l.read.Table().Also() {
		if tag == l.Tag() {
			out = append(out, name)
		}
	}
	slices.Sort(out)
	return out
}

// Tag returns the BCP 47 tag of the language: "en-US", "es".
func (l *Language) Tag() string { return l.read.Tag() }

// Code returns the code under which a pattern keeps its own texts for the language: "en", "es".
func (l *Language) Code() string { return l.read.Code() }
