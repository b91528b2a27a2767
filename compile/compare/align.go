package compare

// pair is an item of the old list and the one of the new list that stands for it; -1 where there is none.
type pair struct{ old, new int }

// matched lines two lists up in order: pairs of items with equal keys, as many as there can be. Lists are trimmed at both ends
// first, so that of a run of equal items those at the end are the ones that came or went.
func matched(old, new []string) []pair {
	var head, tail []pair
	from, a, b := 0, len(old), len(new)
	for from < a && from < b && old[from] == new[from] {
		head = append(head, pair{from, from})
		from++
	}
	for a > from && b > from && old[a-1] == new[b-1] {
		a, b = a-1, b-1
		tail = append(tail, pair{a, b})
	}
	n, m := a-from, b-from
	long := make([][]int32, n+1) // of the longest common subsequence of what follows
	for i := range long {
		long[i] = make([]int32, m+1)
	}
	for i := n - 1; i >= 0; i-- {
		for k := m - 1; k >= 0; k-- {
			if long[i][k] = max(long[i+1][k], long[i][k+1]); old[from+i] == new[from+k] {
				long[i][k] = long[i+1][k+1] + 1
			}
		}
	}
	for i, k := 0, 0; i < n && k < m; {
		switch {
		case old[from+i] == new[from+k]:
			head = append(head, pair{from + i, from + k})
			i, k = i+1, k+1
		case long[i+1][k] >= long[i][k+1]:
			i++
		default:
			k++
		}
	}
	for i := len(tail) - 1; i >= 0; i-- {
		head = append(head, tail[i])
	}
	return head
}

// most is how unlike two items may be, from 0 to 1, and still be one that was changed.
const most = 0.75

// lined lines two lists up in order and says for every item which one stands for it, if any: items with equal keys first, and
// between those the items that are most alike.
func lined(old, new []string, unlike func(i, k int) float64) []pair {
	var out []pair
	i, k := 0, 0
	for _, p := range append(matched(old, new), pair{len(old), len(new)}) {
		out = append(out, between(i, p.old, k, p.new, unlike)...)
		if p.old < len(old) {
			out = append(out, p)
		}
		i, k = p.old+1, p.new+1
	}
	return out
}

// between lines up the items of a gap, in which no two are equal, at the least cost: half for an item without another, how
// unlike they are for two.
func between(from, to, newFrom, newTo int, unlike func(i, k int) float64) []pair {
	n, m := to-from, newTo-newFrom
	if n == 0 || m == 0 {
		return apart(from, to, newFrom, newTo)
	}
	const alone = 0.5
	cost := make([][]float64, n+1)
	same := make([][]float64, n)
	for i := range cost {
		cost[i] = make([]float64, m+1)
	}
	for i := n; i >= 0; i-- {
		if i < n {
			same[i] = make([]float64, m)
		}
		for k := m; k >= 0; k-- {
			switch {
			case i == n:
				cost[i][k] = alone * float64(m-k)
			case k == m:
				cost[i][k] = alone * float64(n-i)
			default:
				cost[i][k] = alone + min(cost[i+1][k], cost[i][k+1])
				if same[i][k] = unlike(from+i, newFrom+k); same[i][k] <= most {
					cost[i][k] = min(cost[i][k], same[i][k]+cost[i+1][k+1])
				}
			}
		}
	}
	var out []pair
	i, k := 0, 0
	for i < n && k < m {
		switch {
		case same[i][k] <= most && cost[i][k] == same[i][k]+cost[i+1][k+1]:
			out = append(out, pair{from + i, newFrom + k})
			i, k = i+1, k+1
		case cost[i][k] == alone+cost[i+1][k]:
			out = append(out, pair{from + i, -1})
			i++
		default:
			out = append(out, pair{-1, newFrom + k})
			k++
		}
	}
	return append(out, apart(from+i, to, newFrom+k, newTo)...)
}

// apart are items without another.
func apart(from, to, newFrom, newTo int) []pair {
	var out []pair
	for ; from < to; from++ {
		out = append(out, pair{from, -1})
	}
	for ; newFrom < newTo; newFrom++ {
		out = append(out, pair{-1, newFrom})
	}
	return out
}

// named pairs two lists by names, whatever their order: names that both have, then those that also gives the same name in another
// way, then what is left between the same neighbours, if equally much is left on both sides. It returns for each old item the new
// one, and for each new item the old one; -1 for none.
func named(old, new []string, also ...func(i, k int) bool) (to, back []int) {
	to, back = make([]int, len(old)), make([]int, len(new))
	for i := range to {
		to[i] = -1
	}
	for k := range back {
		back[k] = -1
	}
	byName := func(i, k int) bool { return old[i] == new[k] }
	for _, same := range append([]func(i, k int) bool{byName}, also...) {
		for i := range to {
			for k := range back {
				if to[i] < 0 && back[k] < 0 && same(i, k) {
					to[i], back[k] = k, i
				}
			}
		}
	}
	return to, back
}

// inPlace pairs items that are left between the same neighbours, where as many are left on one side as on the other.
func inPlace(to, back []int) {
	at := 0
	for i := 0; i <= len(to); {
		if i < len(to) && to[i] >= 0 {
			at, i = to[i]+1, i+1
			continue
		}
		n := 0
		for i+n < len(to) && to[i+n] < 0 {
			n++
		}
		m := 0
		for at+m < len(back) && back[at+m] < 0 {
			m++
		}
		if n == m {
			for j := range n {
				to[i+j], back[at+j] = at+j, i+j
			}
		}
		i += max(n, 1)
	}
}
