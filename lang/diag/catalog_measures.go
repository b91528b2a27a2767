package diag

// Codes 7xx: measures and materials.
var measures = []Entry{}
