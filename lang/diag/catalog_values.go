package diag

// Codes 3xx: values.
var values = []Entry{}
