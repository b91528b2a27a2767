package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

func blocksOf(bs []Block) string {
	var out []string
	for _, b := range bs {
		out = append(out, strings.Join(strings.Fields(strings.Repeat("#", b.Head)+" "+b.Bullet+" "+shown(b.Text)), " "))
	}
	return strings.Join(out, "\n")
}

func TestProse(t *testing.T) {
	p := tablePattern()
	cm := func(v float64) plan.Length { return plan.Length(v * float64(plan.Centimetre)) }
	values := map[string]plan.Value{
		"waist_sts": {Counts: plan.Nums{52, 54, 56}},
		"hips":      {Lengths: plan.Lengths{cm(50.5), cm(53), cm(55)}},
		"ease":      {Lengths: plan.Lengths{cm(3), cm(3), cm(3)}},
		"none":      {Counts: plan.Nums{0, 0, 0}},
		"dc":        {Form: &stitch.Form{ID: stitch.DC, Together: 1}},
		"legs":      {Counts: plan.Nums{1, 1, 1}},
		"some":      {Counts: plan.Nums{1, 2, 3}},
		"share":     {Amounts: []int64{20000, 20000, 20000}, Unit: plan.InPercent},
		"shares":    {Amounts: []int64{20000, 22500, plan.NoAmount}, Unit: plan.InPercent},
		"heavy":     {Amounts: []int64{50000, 62500, 70000}, Unit: plan.InGrams},
		"month":     {Amounts: []int64{1000, 1000, 1000}, Unit: plan.InMonths},
		"months":    {Amounts: []int64{1000, 6000, 12000}, Unit: plan.InMonths},
		"half":      {Amounts: []int64{2500, 2500, 2500}},
		"body":      {Called: plan.Text{"en": "the body", "es": "el cuerpo"}},
		"strip":     {Called: plan.Text{"en": "the strip", "es": "la tira"}},
	}
	for _, k := range []struct{ name, text, en, es string }{
		{"plain", "One line\nand the next.", "One line and the~next.", "One line and the~next."},
		{"emphasis", "Worked **without** a *seam* here.", "Worked **without** a **seam**~here.", "Worked **without** a **seam**~here."},
		{"counts", "Cast {waist_sts} stitches.", "Cast 52~(**54**,~56) stitches.", "Cast 52~(**54**;~56) stitches."},
		{"lengths", "Hips {hips}.", "Hips 50.5~(**53**,~55)~cm or 20~(**20¾**,~21¾)~in.", "Hips 50,5~(**53**;~55)~cm."},
		{"one length", "Ease {ease}.", "Ease 3~cm~(1¼~in).", "Ease~3~cm."},
		{"zero is a number in prose", "It has {none} seams.", "It has 0~seams.", "It has 0~seams."},
		{"stitch", "The last {dc}.", "The last~dc.", "The last~pa."},
		{"value in emphasis", "**{ease} wide**", "**3~cm (1¼~in)~wide**", "**3~cm~wide**"},
		{"unknown name", "See {this} now.", "See {this}~now.", "See {this}~now."},
		{"open brace", "A { brace.", "A {~brace.", "A {~brace."},
		{"underscores", "{waist_sts} and {waist_sts} sts", "52~(**54**,~56) and 52~(**54**,~56)~sts", "52~(**54**;~56) and 52~(**54**;~56)~sts"},
		{"list", "Do:\n\n- one thing\n- the **other** thing", "Do:\n• one~thing\n• the **other**~thing", "Do:\n• one~thing\n• the **other**~thing"},
		{"numbers", "3. three\n4. four", "3. three\n4. four", "3. three\n4. four"},
		{"headings", "# Big\n\n### Small\n\ntext", "# Big\n## Small\ntext", "# Big\n## Small\ntext"},
		{"link", "See [my *page*](https://a.example/x) now", "See [my ](https://a.example/x)[**page**](https://a.example/x) ([a.example/x](https://a.example/x))~now", "See [my ](https://a.example/x)[**page**](https://a.example/x) ([a.example/x](https://a.example/x))~now"},
		{"address", "<https://a.example> or <me@a.example>", "[https://a.example](https://a.example) or [me@a.example](mailto:me@a.example)", ""},
		{"address that is said", "[a.example](https://a.example/) and [mail](mailto:me@a.example)", "[a.example](https://a.example/) and [mail](mailto:me@a.example) ([me@a.example](mailto:me@a.example))", ""},
		{"escapes", `5 \* 3 &amp; 2`, "5 * 3 &~2", "5 * 3 &~2"},
		{"units", "Wash at 30 °C, 5 cm from the edge, 50 % wool", "Wash at 30~°C, 5~cm from the edge, 50~%~wool", "Wash at 30~°C, 5~cm from the edge, 50~%~wool"},
		{"html stays text", "a <b>bold</b> claim", "a <b>bold</b>~claim", "a <b>bold</b>~claim"},
		{"code", "press `{` twice", "press {~twice", "press {~twice"},
		{"quote", "> said she", "said~she", "said~she"},
		{"empty", " \n ", "", ""},
		{"one with its word", "It has {legs|leg|legs}.", "It has~1~leg.", "It has~1~leg."},
		{"several with their word", "It has {some|leg|legs} and {waist_sts|st|sts}.", "It has 1~(**2**,~3) legs and 52~(**54**,~56)~sts.", "It has 1~(**2**;~3) legs and 52~(**54**;~56)~sts."},
		{"percentages", "{share}, {shares}", "20%, 20~(**22.5**,~–)%", "20~%, 20~(**22,5**;~–)~%"},
		{"weights", "{heavy} in all", "50~(**62.5**,~70)~g in~all", "50~(**62,5**;~70)~g in~all"},
		{"ages", "{month}, {months}", "1~month, 1~(**6**,~12)~months", "1~mes, 1~(**6**;~12)~meses"},
		{"not whole", "{half} in all", "2.5 in~all", "2,5 in~all"},
		{"what a part is called", "de {body} a {body}, de {strip}, sobre {body}", "de the body a the body, de the strip, sobre the~body", "del cuerpo al cuerpo, de la tira, sobre el~cuerpo"},
		{"at the start", "{body} hangs. {strip} holds {body}.", "The body hangs. The strip holds the~body.", "El cuerpo hangs. La tira holds el~cuerpo."},
		{"nested lists", "- one\n- two\n  1. inner\n\n  more", "• one\n• two\n1. inner\nmore", "• one\n• two\n1. inner\nmore"},
		{"a line break", "one  \ntwo\\\nthree", "one two three", ""},
	} {
		prose := plan.Prose{Text: plan.Text{"en": k.text, "es": k.text}, Values: values}
		if got := blocksOf(language(t, "en").Prose(p, prose)); got != k.en {
			t.Errorf("%s, en:\n got %s\nwant %s", k.name, got, k.en)
		}
		if got := blocksOf(language(t, "es").Prose(p, prose)); k.es != "" && got != k.es {
			t.Errorf("%s, es:\n got %s\nwant %s", k.name, got, k.es)
		}
	}
}

// Where the page has one paragraph for a text, its lists keep their marks and lines.
func TestProseInOneParagraph(t *testing.T) {
	p := tablePattern()
	text := "Sew:\n\n- the **seams**\n- the ends\n\nWash.\n\nDry."
	prose := plan.Prose{Text: plan.Text{"en": text, "es": text}}
	want := "Sew:|•~the~**seams**|•~the~ends|Wash. Dry."
	f := plan.Finishing{Kind: plan.FreeStep, Prose: prose}
	if got := strings.ReplaceAll(shown(language(t, "en").Finishing(p, f)), "\n", "|"); got != want {
		t.Errorf("finishing: %s", got)
	}
	step := language(t, "es").Step(p, p.Parts[0], &plan.NoteStep{Prose: prose})
	if got := strings.ReplaceAll(shown(step.Body), "\n", "|"); strings.Replace(got, ".~", ". ", 1) != want {
		t.Errorf("note: %s", got)
	}
}

func TestProseWithoutItsLanguageIsEmpty(t *testing.T) {
	if bs := language(t, "es").Prose(tablePattern(), plan.Prose{Text: plan.Text{"en": "only English"}}); bs != nil {
		t.Errorf("got %v", bs)
	}
}

func FuzzProse(f *testing.F) {
	f.Add("**a** {b} [c](d)\n\n- e\n")
	f.Add("{ { } {b}}\n# {b}")
	f.Fuzz(func(t *testing.T, s string) {
		p := tablePattern()
		prose := plan.Prose{Text: plan.Text{"en": s}, Values: map[string]plan.Value{"b": {Counts: plan.Nums{1, 2, 3}}}}
		for _, b := range language(t, "en").Prose(p, prose) {
			for _, r := range b.Text {
				if r.Text == "" {
					t.Errorf("an empty run in %q", s)
				}
				const private = '\uE000' // the first of the characters that stand for values while a text is read
				if strings.ContainsRune(r.Text, private) && !strings.ContainsRune(s, private) && !strings.Contains(s, "&#") {
					t.Errorf("a sign for a value was printed for %q", s)
				}
			}
		}
	})
}
