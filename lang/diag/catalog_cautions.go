package diag

// Codes 9xx: cautions.
var cautions = []Entry{}
