package lang

import "strings"

// The right form of what could not be read: in a row it is that of the instruction, elsewhere that of the whole line.

// rightItems gives a right instruction for each word that one can begin with.
var rightItems = map[string]string{
	"ch":     "ch 3",
	"skip":   "skip 2",
	"leave":  "leave 4",
	"turn":   "turn",
	"join":   "join with sc",
	"no":     "no join",
	"mark":   "mark r1 in next",
	"move":   "move r1 to the middle one",
	"unmark": "unmark r1",
	"with":   "with kelp",
	"from":   "from chart wave row 4",
	"sl":     "sl st in next 4",
	"(":      "(2 dc, ch 2, 2 dc) in next",
	"[":      "[sc in next 5, inc] around",
}

// rightWork gives a right instruction for each word that can stand in the work of stitches.
var rightWork = []struct{ word, right string }{
	{"through", "dc through each and casing.foundation"},
	{"as", "dc in next 5 as front"},
	{"with", "dc in next 5 with kelp"},
	{"together", "4 dc together"},
	{"by", "sc by chart around"},
	{"evenly", "inc 8 evenly"},
	{"crossing", "fptr in each of x crossing front"},
	{"third", "dc third loop in each"},
	{"this", "dc in this gap"},
	{"and", "dc in each st and space"},
	{"row", "dc in next st 2 rows below"},
	{"rows", "dc in next st 2 rows below"},
	{"round", "dc in next st 2 rounds below"},
	{"rounds", "dc in next st 2 rounds below"},
	{"below", "dc in each of body.right, dc below bridge"},
	{"between", "dc between each"},
	{"to", "dc to 2 before m1"},
	{"times", "[sc, dc] 6 times"},
}

// rightForm is a right line or instruction of the kind that could not be read.
func (r *reading) rightForm() string {
	colon := r.sign(":")
	switch {
	case !strings.Contains(r.form.right, ": dc") || r.form.opens != "":
		return r.form.right
	case colon < 0 || r.at <= colon:
		return r.rightHead()
	case r.sign("=") >= 0 && r.at > r.sign("="):
		return "= 8 dc, 2 spaces"
	}
	start := r.itemStart(r.at)
	if right := rightItems[r.text(start)]; right != "" {
		return right
	}
	item := " " + r.passage(start, min(r.at+1, len(r.said))) + " "
	for _, w := range rightWork {
		if strings.Contains(item, " "+w.word+" ") {
			return w.right
		}
	}
	return "dc in next 5"
}

// rightHead is a right row for what stands before the colon.
func (r *reading) rightHead() string {
	head := " " + r.passage(0, min(r.at+1, len(r.said))) + " "
	switch {
	case strings.Contains(head, " chart "):
		return "rounds from chart wave, 2 times: sc by chart around"
	case strings.Contains(head, " begin "):
		return "round, begin with ch 2: dc in each"
	case strings.Contains(head, ", "):
		return "rounds for 20 cm, even: dc in each"
	}
	return r.form.right
}

// inInstructions reports whether reading stopped among the instructions of a row.
func (r *reading) inInstructions() bool { return r.isRow() && r.sign(":") >= 0 && r.at > r.sign(":") }

// sign is the index of the first token that is a certain sign outside brackets, or -1.
func (r *reading) sign(s string) int {
	depth := 0
	for i, t := range r.said {
		text := r.text(i)
		switch {
		case t.Kind != Sign:
		case depth == 0 && text == s:
			return i
		case text == "(" || text == "[":
			depth++
		case text == ")" || text == "]":
			depth--
		}
	}
	return -1
}

// itemStart is the index of the first token of the instruction, count or other thing that the token before i belongs to.
func (r *reading) itemStart(i int) int {
	depth := 0
	for i = min(i, len(r.said)) - 1; i >= 0; i-- {
		switch text := r.text(i); {
		case !r.is(i, Sign):
		case text == ")" || text == "]":
			depth++
		case text == "(" || text == "[":
			if depth == 0 {
				return i + 1
			}
			depth--
		case depth == 0 && (text == "," || text == ":" || text == "="):
			return i + 1
		}
	}
	return 0
}

// itemEnd is the index behind the last token of what begins at token i.
func (r *reading) itemEnd(i int) int {
	depth := 0
	for ; i < len(r.said); i++ {
		switch text := r.text(i); {
		case !r.is(i, Sign):
		case text == "(" || text == "[":
			depth++
		case text == ")" || text == "]":
			if depth == 0 {
				return i
			}
			depth--
		case depth == 0 && (text == "," || text == ":" || text == "="):
			return i
		}
	}
	return i
}

// passage is the source from token a to before token b, on one line.
func (r *reading) passage(a, b int) string {
	if a >= b {
		return ""
	}
	return strings.Join(strings.Fields(r.file.Slice(r.said[a].Span.To(r.said[b-1].Span))), " ")
}
