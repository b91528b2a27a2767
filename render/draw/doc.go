// Package draw makes the drawings of a checked pattern: the schematic with its dimension lines, the title drawing in
// which one line is one round, the small piece that says "you are here", and the symbols of the stitches. It draws
// nothing by heart: every line follows from the rows that were worked, the gauge, and where parts grow on one another.
//
// # The model
//
// A part is cut into pieces: stretches of its rows that lie on the table as one shape. It is cut where places were left
// aside that another part works (sleeves, a thumb) while the part itself goes on. The edges of pieces meet in joints: a
// piece hangs on the start or the end of another, alone or beside others. Pieces and joints make the graph, and each
// connected part of it is a group that is drawn as one thing.
//
// A piece becomes a patch, a list of curves: the start and the upper edge of every row, laid flat, a round being half
// its circumference wide. Everything is drawn from these curves: outlines join their ends, rounds are the curves, ribs
// run from one curve to the next, a dimension line spans one of them or follows their ends. There are these shapes:
//
//   - a strip: rounds or rows one above the other, narrowing or widening slowly; a tube and a flat piece alike. Where
//     its rounds close to a point (a crown, a tip) the end is a dome. As cloth cannot be laid flat there, the outline is
//     a quarter of an ellipse; the length of the fabric down its middle, and its width where the dome ends, are true.
//   - rings: rounds that only ever grow, seen from above: a disc, an oval, a motif with corners, an edging.
//   - a yoke: the end of a tube that is divided for a body and branches at its sides. The height of the yoke, the width
//     of the body and that of the sleeve at the underarm are true; the angle of the sleeve is the one at which the line
//     over the shoulder is true as well, within limits that the eye sets.
//
// A flat piece with sleeves on what it left aside is a cardigan: it lies closed, as a pullover does, with its opening in the
// middle of the front.
//
// Where short rows turn before the end and come back, a flat piece is a wedge: each row stands on what is below it between its
// own two ends, so both side edges are as tall as the rows that reach them. Places that are left for good make a step.
// Short rows in a tube raise one of its faces: it is drawn as tall as that one, with the rows on it.
//
// A band along the ends of rows lies on the side it is worked along, as wide everywhere as its rows are high. The bands of two
// fronts lie on each other.
//
// Two tubes on one edge are legs. So are a part that goes on and a tube beside it, where each takes half of the edge. Their inner
// and outer edges are true. Where bridging stitches make them together wider than the body they are turned out until they fit,
// within limits again, and what is still too much goes to the outer side over the first rows. More than two are fingers.
//
// The upper of a shoe stands by itself, seen from the side on which its rounds do not begin, above its sole, an oval from above.
// A flat piece that was joined to a ring lies across below what stands on its side.
//
// # Which way up
//
// A group has one free choice, up or down, decided by what people expect: branches hang down (on gloves they point
// up), a closed end is up (on a sock, bag or basket it is down), flat pieces grow up, and of two pieces that grow from
// one foundation the larger hangs down. Left and right are those of the wearer seen from the front. Rounds begin at the
// back and run from right to left of the edge being worked, so in work that grows downwards the first side met is the
// wearer's right, which the reader sees on her left.
//
// # Joined motifs
//
// A pattern of joined motifs, with or without a border, is no strip and no ring: it is drawn as it lies, squares beside one
// another and the rounds of the border around them. A motif is as large as the source says, and the schematic is drawn only
// where it does. One with other parts besides is drawn piece by piece like any other.
//
// # Signs
//
// A heavy line or a dot is where work begins, small circles are stitches that wait for the piece that hangs there, thin lines are
// short rows, and ×2 stands beside a piece that is made twice: of pieces that are alike one is drawn.
//
// # Long pieces
//
// A piece by itself that is long and thin is drawn with a break in its even middle, and so is the line of its length, so that
// it does not make all others small. See broken.go.
//
// # What is shown
//
// The source may leave parts out of the schematic or set them in an order; see chosen.go. Nothing else of it can be steered.
//
// # What is not drawn
//
// Seams, fringes and the third dimension. A piece whose shaping lies at one edge only is drawn so
// where its rows say at which edge they shape; otherwise the change is shared by both edges.
package draw
