package diag

// Codes 5xx: labels and markers.
var marks = []Entry{}
