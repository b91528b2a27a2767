package diag

// Codes 8xx: words.
var wording = []Entry{}
