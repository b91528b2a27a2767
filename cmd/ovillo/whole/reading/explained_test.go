package reading

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/parallel"
)

// TestAbbreviationsAreExplained: an abbreviation of any stitch that stands in a row of an example, as it is read from the file,
// is in the table of abbreviations of that file.
func TestAbbreviationsAreExplained(t *testing.T) {
	every := &plan.Pattern{}
	for _, k := range stitch.Table {
		every.Stitches = append(every.Stitches, stitch.Plain(k.ID))
	}
	for _, s := range whole.Examples(t) {
		t.Run(s.Name, func(t *testing.T) {
			t.Parallel()
			b := publish(t, s)
			for _, tag := range []string{"en", "es"} {
				l := whole.Language(t, tag)
				all := b.read(t, tag)
				explained, rows := glossary(all)
				for _, p := range b.plan.Own { // named by the designer
					explained = append(explained, p.Names[l.Code()])
				}
				if len(explained) < 3 || len(rows) < 10 {
					t.Fatalf("%s: only %d abbreviations and %d rows were found", tag, len(explained), len(rows))
				}
				known := l.StitchWords(every)
				if len(known) < 10 {
					t.Fatalf("%s: only %d stitches are known", tag, len(known))
				}
				for _, list := range known {
					if found := standsAlone(rows, oneLine(list[0]), explained); found != "" {
						t.Errorf("%s: %s is in no table of abbreviations: %s", tag, list[0], found)
					}
				}
			}
		})
	}
}

// glossary is the first column of the table of abbreviations, and the passages of what is worked, behind it.
func glossary(all []parallel.Passage) (explained, rows []string) {
	section := -1
	for i, p := range all {
		switch {
		case p.Tag == "TD" && p.Lang != "":
			section = p.Section
			if all[i-1].Tag == "TH" {
				explained = append(explained, strings.Split(all[i-1].Text(), ", ")...)
			}
		case section >= 0 && p.Section > section && p.Tag == "P":
			rows = append(rows, p.Text())
		}
	}
	return explained, rows
}

// standsAlone finds a text that holds an abbreviation which is not one of those explained, nor part of one.
func standsAlone(rows []string, short string, explained []string) string {
	if slices.Contains(explained, short) {
		return ""
	}
	longer := slices.Clone(explained)
	slices.SortFunc(longer, func(a, b string) int { return len(b) - len(a) })
	word := func(w string) *regexp.Regexp {
		return regexp.MustCompile(`(?i)(^|[^\pL\pN])` + regexp.QuoteMeta(w) + `($|[^\pL\pN])`)
	}
	this := word(short)
	for _, row := range rows {
		text := row
		if !this.MatchString(text) {
			continue
		}
		for _, l := range longer {
			if strings.Contains(strings.ToLower(l), strings.ToLower(short)) {
				text = word(l).ReplaceAllString(text, "$1$2")
			}
		}
		if this.MatchString(text) {
			return row
		}
	}
	return ""
}

// TestUnexplainedIsSeen: an abbreviation that is taken out of the table is found in the rows, and one that is part of another is
// not.
func TestUnexplainedIsSeen(t *testing.T) {
	explained, rows := glossary(publish(t, whole.Example(t, "salitre-seal.ovillo")).read(t, "en"))
	for _, short := range []string{"sl st", "sc2tog"} {
		if !slices.Contains(explained, short) {
			t.Fatalf("%s is not explained: %v", short, explained)
		}
		rest := slices.DeleteFunc(slices.Clone(explained), func(s string) bool { return s == short })
		if standsAlone(rows, short, rest) == "" {
			t.Errorf("%s is explained nowhere, and was not found", short)
		}
	}
	if found := standsAlone([]string{"FPdc around next st"}, "dc", []string{"FPdc"}); found != "" {
		t.Errorf("a part of another abbreviation was found: %s", found)
	}
}
