// Package words writes a checked pattern in a language: every sentence, label, note and heading of a page.
//
// Sentences are made from the meaning, never translated word for word. The shared files decide what is said (which
// instruction has nothing to do and vanishes, where sizes part company, what is counted); a [voice] decides how it is
// said. The files english_*.go and spanish_*.go are the two voices. Which words a voice uses for the things of the craft
// depends on the reading (US or UK terms, the Spanish of one country or another) and stands in terms.csv: a new reading
// is a column there, a new language a voice and columns.
package words

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/compile/plan"
)

// Language writes patterns in one language and one reading of its terms. It is safe for use by several goroutines.
type Language struct {
	read  *reading
	voice voice
}

// voices makes the voice of a language for one of its readings.
var voices = map[string]func(*reading) voice{
	"en": func(r *reading) voice { return &english{r} },
	"es": func(r *reading) voice { return &spanish{r} },
}

// usual is the reading that a bare language code stands for, and the one its other readings fall back on.
var usual = map[string]string{"en": "en-US", "es": "es", "es-419": "es"}

// For returns the language of a tag: "en", "en-US", "en-GB", "es", "es-ES", "es-MX", "es-AR" (River Plate), "es-CL" or
// "es-EC". A tag that is not among them is an error.
func For(tag string) (*Language, error) {
	want := tag
	if u, ok := usual[tag]; ok {
		want = u
	}
	r, ok := standardTerms().readings[want]
	if !ok {
		return nil, fmt.Errorf("no words for the language %q: there are %s", tag, strings.Join(Tags(), ", "))
	}
	return newLanguage(r, voices[r.code](r)), nil
}

func newLanguage(r *reading, v voice) *Language { return &Language{read: r, voice: v} }

// Tags lists the tags that [For] knows, in order.
func Tags() []string {
	tags := []string{}
	for tag := range standardTerms().readings {
		tags = append(tags, tag)
	}
	for alias := range usual {
		if !slices.Contains(tags, alias) {
			tags = append(tags, alias)
		}
	}
	slices.Sort(tags)
	return tags
}

// Tag returns the BCP 47 tag of the language: "en-US", "es".
func (l *Language) Tag() string { return l.read.tag }

// Code returns the code under which a pattern keeps its own texts for the language: "en", "es".
func (l *Language) Code() string { return l.read.code }

// of picks the text of the language, "" if there is none.
func (r *reading) of(t plan.Text) string { return t[r.code] }
