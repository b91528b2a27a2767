package diag

// Codes 6xx: counts.
var counts = []Entry{}
