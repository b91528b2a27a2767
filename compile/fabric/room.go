package fabric

// This file takes memory for what rows leave behind in pieces large enough for many rows: most of a check is rows, and what each leaves
// is small. The pieces can serve one fabric after the other.

// room is memory of which parts were given away.
type room[T any] struct {
	pieces [][]T
	next   int // of pieces
	left   []T // of the piece before it
}

// The pieces that room is taken in: for places, and for rows.
const (
	placesAtOnce = 4096
	rowsAtOnce   = 32
)

// take gives room for n things, which is given to nobody else. Pieces are made for at least so many. What it holds is what was left
// there.
func (r *room[T]) take(n, least int) []T {
	for len(r.left) < n {
		if r.next == len(r.pieces) {
			r.pieces = append(r.pieces, make([]T, max(n, least)))
		}
		r.left = r.pieces[r.next]
		r.next++
	}
	out := r.left[:n:n]
	r.left = r.left[n:]
	return out
}

// zeroed gives room that holds nothing.
func (r *room[T]) zeroed(n, least int) []T {
	out := r.take(n, least)
	clear(out)
	return out
}

// again is the same memory for another fabric; that of this one must not be used any more.
func (r *room[T]) again() room[T] { return room[T]{pieces: r.pieces} }

// Room is the memory of a fabric, for another one.
type Room struct {
	elems   []Elem
	runs    room[ID]
	traces  room[Trace]
	results room[Result]
}

// GiveBack returns the memory of a fabric, which is not to be used any more, nor any result of a row.
func (f *Fabric) GiveBack() *Room {
	r := &Room{f.Elems[:0], f.runs.again(), f.traces.again(), f.results.again()}
	*f = Fabric{}
	return r
}

// In has a new fabric use the memory of another.
func (f *Fabric) In(r *Room) {
	f.Elems = append(r.elems, f.Elems...)
	f.runs, f.traces, f.results = r.runs, r.traces, r.results
}
