package value

import "sort"

// nearest returns the names most like a misspelt one, best first, at most four.
func nearest(name string, names []string) []string {
	const most = 4
	const longest = 80 // nobody misspells a name that long; comparing it would take its length squared
	type near struct {
		name string
		far  int
	}
	var found []near
	if len(name) > longest {
		return nil
	}
	limit := max(1, len([]rune(name))/3)
	for _, n := range names {
		if d := distance([]rune(name), []rune(n), limit); d <= limit && n != name {
			found = append(found, near{n, d})
		}
	}
	sort.SliceStable(found, func(i, j int) bool {
		if found[i].far != found[j].far {
			return found[i].far < found[j].far
		}
		return found[i].name < found[j].name
	})
	var out []string
	for _, f := range found[:min(most, len(found))] {
		out = append(out, f.name)
	}
	return out
}

// distance counts the letters to change, add, drop or swap with their neighbour to make one name of another. It gives up
// and returns limit + 1 where the lengths alone say more.
func distance(a, b []rune, limit int) int {
	if len(a)-len(b) > limit || len(b)-len(a) > limit {
		return limit + 1
	}
	rows := [3][]int{make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)}
	for j := range rows[1] {
		rows[1][j] = j
	}
	for i := 1; i <= len(a); i++ {
		before, last, row := rows[(i-1)%3], rows[i%3], rows[(i+1)%3]
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
	}
	return rows[(len(a)+1)%3][len(b)]
}
