package diag

// Codes 1xx: writing.
var writing = []Entry{}
