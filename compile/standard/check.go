package standard

import (
	"fmt"
	"math/big"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// CheckHook notes a hook that is no standard size (OV706).
func CheckHook(hook plan.Length, at source.Span) diag.List {
	if near, ok := NearestHook(hook); !ok && hook > 0 {
		return diag.List{{Code: "OV706", Span: at, Args: diag.Args{"hook": figure(mm(hook)), "near": figure(mm(near))}}}
	}
	return nil
}

// CheckWeight finds the class of a yarn, or reports a name that is none (OV713).
func CheckWeight(name string, at source.Span) (Weight, diag.List) {
	w, ok := WeightOf(name)
	if ok {
		return w, nil
	}
	return w, diag.List{{Code: "OV713", Span: at, Args: diag.Args{"name": name, "names": WeightNames()}}}
}

// CheckWeightHook warns of a hook far from what is usual for the class of the yarn (OV707). at is the weight, hookAt the
// hook.
func CheckWeightHook(w Weight, hook plan.Length, at, hookAt source.Span) diag.List {
	if w.Name == "" || hook <= 0 || w.HookFits(hook) {
		return nil
	}
	d := diag.Diagnostic{Code: "OV707", Span: at, Args: diag.Args{"class": w.Name, "hook": figure(mm(hook)),
		"usual": figure(span(plain(w.HookMin), plain(w.HookMax)) + " mm")}}
	if !hookAt.IsZero() {
		d.Related = []diag.Related{{Span: hookAt, Key: "hook"}}
	}
	return diag.List{d}
}

// CheckWeightGauge warns of a gauge far from what is usual for the class of the yarn (OV708). at is the weight, gaugeAt the
// gauge.
func CheckWeightGauge(w Weight, stsPerMM *big.Rat, at, gaugeAt source.Span) diag.List {
	if w.Name == "" || stsPerMM == nil || stsPerMM.Sign() <= 0 || w.GaugeFits(stsPerMM) {
		return nil
	}
	per, _ := new(big.Rat).Mul(stsPerMM, big.NewRat(100, 1)).Float64()
	d := diag.Diagnostic{Code: "OV708", Span: at, Args: diag.Args{"class": w.Name, "found": figure(short(per)),
		"usual": span(whole(w.StsMin), whole(w.StsMax))}}
	if !gaugeAt.IsZero() {
		d.Related = []diag.Related{{Span: gaugeAt, Key: "gauge"}}
	}
	return diag.List{d}
}

// CheckFibres notes fibres that are not known (OV709), at the span of each, and warns of shares that do not make a hundred
// (OV712), at the span of all.
func CheckFibres(shares []plan.Share, each []source.Span, all source.Span) diag.List {
	var out diag.List
	sum := 0
	for i, s := range shares {
		sum += s.Percent
		if _, ok := FibreName(s.Fibre, "en"); ok {
			continue
		}
		at := all
		if i < len(each) {
			at = each[i]
		}
		d := diag.Diagnostic{Code: "OV709", Span: at, Help: "none", Args: diag.Args{"name": s.Fibre}}
		if near := lang.Near(s.Fibre, FibreWords()); len(near) > 0 {
			d.Help, d.Args["near"] = "near", near
		}
		out.Add(d)
	}
	if len(shares) > 0 && sum != 100 {
		out.Add(diag.Diagnostic{Code: "OV712", Span: all, Args: diag.Args{"sum": sum}})
	}
	return out
}

// figure makes a figure take the decimal sign of the language it is shown in.
func figure(text string) diag.PerSize { return diag.PerSize{Values: []string{text}, All: true} }

func mm(l plan.Length) string { return plain(l) + " mm" }

// plain writes a length in millimetres; "" for none.
func plain(l plan.Length) string {
	if l == 0 {
		return ""
	}
	return short(float64(l) / float64(plan.Millimetre))
}

func whole(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprint(n)
}

// short writes a figure with at most two decimals.
func short(x float64) string {
	return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.2f", x), "0"), ".")
}

// span writes a range of figures; "≥ 15" or "≤ 6" if one end is open.
func span(lo, hi string) string {
	switch {
	case lo == "":
		return "≤ " + hi
	case hi == "":
		return "≥ " + lo
	}
	return lo + "–" + hi
}
