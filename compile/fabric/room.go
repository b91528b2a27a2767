package fabric

// This file takes memory for what rows leave behind in pieces large enough for many rows: most of a check is rows, and what each leaves
// is small.

// room is memory of which parts were given away; what is left is behind.
type room[T any] struct{ left []T }

// The pieces that room is taken in: for places, and for rows.
const (
	placesAtOnce = 4096
	rowsAtOnce   = 32
)

// take gives room for most things, none of which is there yet; it is given to nobody else. Room is taken anew for at least so many.
func (r *room[T]) take(most, least int) []T {
	if len(r.left) < most {
		r.left = make([]T, max(most, least))
	}
	out := r.left[:0:most]
	r.left = r.left[most:]
	return out
}
