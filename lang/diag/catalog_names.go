package diag

// Codes 2xx: names.
var names = []Entry{}
