package chart

// wish is where the stitches of a row would stand, in the order of making and counted in its direction.
type wish struct {
	at, weight []float64 // near what, and how much it matters; 0: anywhere
	least      []float64 // between a stitch and the next; of a round the last to the first behind them
	ideal      []float64 // the same, as it would be best
	stiff      float64   // how much even distances matter
	length     float64   // of the round; 0: the row is open
}

// settle sets stitches along a row: near their wish and evenly, in two steps that are each exact and take linear time. The first
// weighs the squared distances from the wishes against those from the ideal distances; the second moves as little as it can until
// neighbours have their least distance. A round is settled thrice in a row, and the middle one is kept, so that its seam is as any
// other place.
func (w wish) settle() []float64 {
	n := len(w.at)
	if n == 0 {
		return nil
	}
	if w.length == 0 {
		return apart(smooth(w.at, w.weight, w.ideal[:n-1], w.stiff), w.weight, w.least[:n-1])
	}
	const turns = 3
	at, weight := make([]float64, 0, turns*n), make([]float64, 0, turns*n)
	var ideal, least []float64
	for k := range turns {
		for i := range n {
			at, weight = append(at, w.at[i]+float64(k-1)*w.length), append(weight, w.weight[i])
		}
		ideal, least = append(ideal, w.ideal...), append(least, w.least...)
	}
	last := turns*n - 1
	return apart(smooth(at, weight, ideal[:last], w.stiff), weight, least[:last])[n : 2*n]
}

// smooth minimises the sum of weight·(x-at)² and of stiff·(x₂-x₁-ideal)² over neighbours, by elimination in the system of three
// diagonals that it is. Something in the row has a weight.
func smooth(at, weight, ideal []float64, stiff float64) []float64 {
	n := len(at)
	diag, right := make([]float64, n), make([]float64, n)
	for i := range n {
		diag[i], right[i] = weight[i]+1e-9, (weight[i]+1e-9)*at[i]
		if i > 0 {
			diag[i] += stiff
			right[i] += stiff * ideal[i-1]
		}
		if i < n-1 {
			diag[i] += stiff
			right[i] -= stiff * ideal[i]
		}
	}
	for i := 1; i < n; i++ {
		k := stiff / diag[i-1]
		diag[i] -= k * stiff
		right[i] += k * right[i-1]
	}
	x := right
	x[n-1] /= diag[n-1]
	for i := n - 2; i >= 0; i-- {
		x[i] = (x[i] + stiff*x[i+1]) / diag[i]
	}
	return x
}

// apart moves points as little as it can, by the sum of the weighted squares, until each is as far behind the one before as it must
// be: isotonic regression of what is left when the distances are taken off, by pooling neighbours that would change places.
func apart(at, weight, least []float64) []float64 {
	type pool struct {
		sum, weight float64
		n           int
	}
	var pools []pool
	off := 0.0
	for i, x := range at {
		if i > 0 {
			off += least[i-1]
		}
		w := max(weight[i], 0.05)
		p := pool{sum: w * (x - off), weight: w, n: 1}
		for len(pools) > 0 {
			last := pools[len(pools)-1]
			if last.sum/last.weight <= p.sum/p.weight {
				break
			}
			p = pool{last.sum + p.sum, last.weight + p.weight, last.n + p.n}
			pools = pools[:len(pools)-1]
		}
		pools = append(pools, p)
	}
	out := make([]float64, 0, len(at))
	off = 0
	for _, p := range pools {
		for range p.n {
			if i := len(out); i > 0 {
				off += least[i-1]
			}
			out = append(out, p.sum/p.weight+off)
		}
	}
	return out
}
