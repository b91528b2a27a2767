package words

import (
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/sample"
)

// headsOf lists the heads of a pattern's instructions for reading.
func headsOf(p *plan.Pattern, t *testing.T) map[string]string {
	heads := map[string]string{}
	for _, f := range language(t, "en").HowToRead(p) {
		heads[f.Head] = flat(f.Text)
	}
	return heads
}

// A page explains only the signs that it uses.
func TestHowToReadSaysWhatIsTrue(t *testing.T) {
	p := tablePattern()
	if heads := headsOf(p, t); len(heads) != 3 || heads["Sizes"] == "" || heads["Columns"] == "" || heads["Boxes"] == "" {
		t.Errorf("a pattern without rows explains %v", heads)
	}
	full := headsOf(sample.Leggings(), t)
	for _, head := range []string{"Sizes", "Columns", "Counts", "Beginning chains", "Repeats", "Places", "Boxes"} {
		if full[head] == "" {
			t.Errorf("the leggings do not explain %s", head)
		}
	}
	if full["Groups"] != "" || full["Yarn changes"] != "" {
		t.Errorf("the leggings explain what they do not use: %v", full)
	}
	one := sample.Leggings()
	only(one, 2)
	if heads := headsOf(one, t); heads["Sizes"] != "" || heads["Columns"] != "" {
		t.Errorf("one size explains sizes: %v", heads)
	}
}

// Brackets that this package makes are explained as the author's are.
func TestGatheredRepeatsAreExplained(t *testing.T) {
	p := tablePattern()
	n := plan.Nums{1, 1, 1}
	var work []plan.Instr
	for marker := range 2 {
		for _, per := range []plan.Nums{{3, 3, 3}, {2, 2, 2}, {1, 1, 1}} {
			work = append(work, plan.Instr{Op: plan.Work, Form: plainForm(stitch.SC), N: n, Per: per, Reach: plan.InMarked, Marker: marker, Yarn: -1})
		}
	}
	p.Parts[0].Steps = []plan.Step{&plan.Row{First: n, Last: n, Times: n, Work: work}}
	if headsOf(p, t)["Repeats"] == "" {
		t.Error("the brackets are not explained")
	}
}
