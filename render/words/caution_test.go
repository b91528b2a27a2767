package words

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/sample"
)

func inBoth(en, es string) plan.Text { return plan.Text{"en": en, "es": es} }

// Behind each caution stands its source, and how well that was read: nothing more where it was itself read.
func TestCautionsNameTheirSource(t *testing.T) {
	ends := inBoth("Keep ends to 14 cm (5 1/2 in) or shorter.", "Dejar los extremos en 7,5 cm como máximo.")
	wash := inBoth("Give a wash instruction.", "Dar una instrucción de lavado.")
	for _, c := range []struct {
		name   string
		k      plan.Caution
		en, es string
	}{
		{"itself", plan.Caution{Text: wash, Source: "16 CFR 1500.19", Read: plan.ReadItself}, "Give a wash instruction (16~CFR~1500.19).", "Dar una instrucción de lavado (16~CFR~1500.19)."},
		{"summary", plan.Caution{Text: ends, Source: "EN 14682:2014", Read: plan.ReadSummary},
			"Keep ends to 14~cm (5½~in) or shorter (EN~14682:2014, from a summary).", "Dejar los extremos en 7,5~cm como máximo (EN~14682:2014, según un resumen)."},
		{"memory", plan.Caution{Text: wash, Source: "16 CFR 1262, EN 71-1", Read: plan.ReadMemory},
			"Give a wash instruction (16~CFR~1262, EN~71-1, from~memory).", "Dar una instrucción de lavado (16~CFR~1262, EN~71-1, de memoria)."},
		{"advice without a standard", plan.Caution{Text: wash, Read: plan.ReadSummary}, "Give a wash instruction (published~advice).", "Dar una instrucción de lavado (consejo publicado)."},
		{"ours", plan.Caution{Text: wash}, "Give a wash instruction (our own~rule).", "Dar una instrucción de lavado (regla~propia)."},
		{"our limit", plan.Caution{Text: ends}, "Keep ends to 14~cm (5½~in) or shorter (a limit of our own, no published~figure).",
			"Dejar los extremos en 7,5~cm como máximo (límite propio, sin cifra publicada)."},
		{"ours, after somebody", plan.Caution{Text: wash, Source: "AAP 2022"}, "Give a wash instruction (our own rule, after AAP~2022).", "Dar una instrucción de lavado (regla propia, a partir de AAP~2022)."},
		{"no rule at all", plan.Caution{ID: plan.NoRule, Text: wash}, "Give a wash instruction.", "Dar una instrucción de~lavado."},
		{"two laws", plan.Caution{Text: wash, Source: "2009/48/EC, EU 2025/2509", Read: plan.ReadSummary},
			"Give a wash instruction (2009/48/EC, EU~2025/2509, from a summary).", "Dar una instrucción de lavado (2009/48/CE, UE~2025/2509, según un resumen)."},
		{"a bracket at the end", plan.Caution{Text: inBoth("Under 7 (up to 134 cm).", "Hasta 7 años (134 cm)."), Source: "EU 1007/2011", Read: plan.ReadItself},
			"Under 7 (up to 134~cm; EU~1007/2011).", "Hasta 7 años (134~cm; UE~1007/2011)."},
	} {
		for tag, want := range map[string]string{"en-US": c.en, "en-GB": c.en, "es": c.es, "es-MX": strings.ReplaceAll(c.es, "7,5", "7.5"), "es-AR": c.es} {
			if got := strings.ReplaceAll(language(t, tag).Caution(c.k).String(), tie, "~"); got != want {
				t.Errorf("%s, %s:\n got %s\nwant %s", c.name, tag, got, want)
			}
		}
	}
}

// plainText writes ties as spaces.
func plainText(s string) string { return strings.ReplaceAll(s, tie, " ") }

// In large print inches are written out, and a fraction that has no sign stays with its whole number.
func TestCautionsInFull(t *testing.T) {
	k := plan.Caution{Text: inBoth("Loops of 2 15/16 in (7.5 cm), or 11 in; belts of 14 in: none.", "Lazos de 7,5 cm, o 3 in (7,6 cm)."), Read: plan.ReadItself}
	for tag, want := range map[string]string{
		"en-US": "Loops of 2~15/16~inches (7.5~cm), or 11~inches; belts of 14~inches:~none.", "es": "Lazos de 7,5~cm, o 3~pulgadas (7,6~cm).",
	} {
		got := strings.ReplaceAll(language(t, tag).With(Manner{Full: true}).Caution(k).String(), tie, "~")
		if got != want {
			t.Errorf("%s:\n got %s\nwant %s", tag, got, want)
		}
	}
}

// Cautions for all sizes come first, those for the same sizes stand under one line, errors before warnings before the rest, and what
// two cords ask for alike is said once, with both reasons.
func TestCautionsInGroups(t *testing.T) {
	p := sample.Leggings()
	some := plan.Sizes{true, false, false, false}
	k := func(text, severity string, sizes plan.Sizes, step int, reason string) plan.Caution {
		c := plan.Caution{Text: inBoth(text, text), Severity: severity, For: sizes, Step: step, Read: plan.ReadItself}
		if reason != "" {
			c.Reason = inBoth(reason, reason)
		}
		return c
	}
	p.Cautions = []plan.Caution{
		k("a", "caution", some, -1, ""), k("b", "caution", nil, 1, ""), k("c", "warn", plan.Sizes{true, true, true, true}, 0, "one"), k("d", "error", some, -1, ""),
		k("e", "caution", nil, -1, ""), k("c", "warn", nil, 1, "two"), k("c", "warn", nil, 1, "two"), k("f", "warn", plan.Sizes{true, true, false, false}, -1, ""),
	}
	for tag, want := range map[string][]string{
		"en-US": {"", "c. [0 1] The designer's reason: one. The designer's reason: two.", "b. [1]", "e. []", "Size 1 y only", "d. []", "a. []", "Sizes 1 y and 2 y only", "f. []"},
		"es":    {"", "c. [0 1] Razón de quien diseña: one. Razón de quien diseña: two.", "b. [1]", "e. []", "Solo talla 1 año", "d. []", "a. []", "Solo tallas 1 y 2 años", "f. []"},
	} {
		var got []string
		for _, g := range language(t, tag).Cautions(p, func(plan.Caution) bool { return true }) {
			got = append(got, plainText(g.Only.String()))
			for _, item := range g.Items {
				line := fmt.Sprint(item.Text, " ", item.Steps)
				for _, r := range item.Reasons {
					line += " " + r.String()
				}
				got = append(got, plainText(line))
			}
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s:\n got %q\nwant %q", tag, got, want)
		}
	}
	if got := language(t, "es").Cautions(p, func(plan.Caution) bool { return false }); got != nil {
		t.Errorf("none is wanted, and %v is said", got)
	}
}
