package report

import (
	"ovillo/compile/plan"
)

// looks holds what is looked at for each check. A check without an entry is for a person, or for the checker alone; a test
// sees to it that each one the program decides has one.
var looks = map[string]func(*subject) look{
	"S01": lookSource,
	"T01": lookFront, "T04": lookLevel, "T05": lookTerms, "T06": lookUnits,
	"T08": lookYarns, "T09": lookBalls, "T10": lookAmounts, "T11": lookYarnSum, "T12": lookTools, "T13": lookHooks, "T14": lookNotions, "T15": lookColours,
	"T16": lookGauges, "T17": lookUngauged, "T18": lookSample, "T19": lookPlausible, "T20": lookMeasures, "T21": lookFigures, "T22": lookLeading,
	"T23": lookEase, "T24": lookLists, "T25": lookSteps, "T26": lookOnly, "T27": lookGrowth, "T28": lookOpenings, "T29": lookSums,
	"T30": lookStarts, "T31": lookMultiples, "T32": lookRows, "T33": lookStated, "T34": lookCounts, "T35": lookChanges,
	"T36": lookSections, "T37": lookSchedules, "T38": lookSides, "T39": lookBegins, "T40": lookRepeats, "T41": lookColumns, "T42": lookJoins,
	"T43": lookEdges, "T44": lookSeams, "T45": lookMirrors, "T46": lookMarkers, "T47": lookYarnOfRows, "T48": lookSimultaneous,
	"T49": lookPlaces,
	"T50": lookAbbreviations, "T51": lookOwn, "T52": lookRowWords, "T53": lookBrackets, "T54": lookNumbers, "T55": lookProse, "T56": lookParts,
	"T57": lookReferences, "T58": lookEnds, "T59": lookFinishing,
	"T61": lookChartRows, "T62": lookCharts, "T63": lookChartColours, "T64": lookSchematic, "T65": lookUnsewn,
	"T66": lookPages, "T67": lookFile, "T68": lookChartOnly, "T69": lookLanguages,
	"S02": lookCautions,
}

func lookSource(s *subject) look { return look{at: []amount{{s.in.Source.Lines, nLines}}} }

func lookCautions(s *subject) look {
	l := look{at: []amount{{1, nPatterns}, {len(s.p.Cautions), nCautions}}}
	for _, c := range s.p.Cautions {
		if c.ID == plan.NoRule {
			return look{skipped: true, why: whyNoKind}
		}
		l.notes = append(l.notes, s.cautionNote(c))
	}
	return l
}

// cautionNote is a caution in a line: its rule, what it says, where that is from and how well it was read, for which sizes it is, to
// which line of the source it belongs, and the reason that was given.
func (s *subject) cautionNote(c plan.Caution) string {
	l, lang := s.in.Words, s.in.Lang
	note := c.ID + ", " + cautionSeverities[c.Severity].in(lang)
	if c.Seller {
		note += ", " + forSellers.in(lang)
	}
	note += ": " + excerpt(c.Text[l.Code()])
	if source := l.CautionSource(c); source != nil {
		note += " (" + source.String() + ")"
	}
	var more []string
	if only := l.OnlyFor(s.p, c.For).String(); only != "" {
		more = append(more, only)
	}
	if file, n := s.in.texts().line(c.At.Start); c.At.End > 0 && n > 0 {
		more = append(more, said(file, n, lang))
	}
	if reason := l.Reason(c); reason != nil {
		more = append(more, reason.String())
	}
	for _, m := range more {
		note += "; " + m
	}
	return note
}

var (
	// What a rule is, not what was found: a limit that is kept is no error.
	cautionSeverities = map[string]text{"error": {"limit", "límite"}, "warn": {"advice", "consejo"}, "caution": {"caution", "precaución"}}
	forSellers        = text{"for those who sell", "para quien vende"}
)

var whyNoKind = text{"the source says neither what is made nor for what age", "el patrón no dice ni qué se teje ni para qué edad"}

var nPatterns = noun{text{"pattern against the rules for small children", "patrón según las reglas para niños pequeños"}, text{"patterns", "patrones"}}

// own makes a finding of the report itself.
func (s *subject) own(sev Severity, t text, pairs ...string) Finding {
	return Finding{Severity: sev, Message: t.with(s.in.Lang, pairs...)}
}
