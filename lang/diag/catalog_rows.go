package diag

// Codes 4xx: rows.
var rows = []Entry{}
