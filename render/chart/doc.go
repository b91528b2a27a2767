// Package chart says where each stitch of a symbol chart stands. It knows stitches and what they are worked into, and gives
// points; how a symbol looks is for others.
//
// A unit of length is the height of a single crochet. x runs to the right and y downwards, as in a drawing.
//
// # How a chart is laid out
//
// Every row has a frame, in which a place is how far along the row (s, from right to left in rows, counterclockwise in
// rounds) and how far from the start of the work (v, upwards or outwards). There are four frames: flat, a disc around a
// point, an oval around a segment, and a figure of straight sides and corners. A stitch's place along the row below is
// carried over to its own: on a straight side it stays abreast, on an arc it keeps its angle.
//
// A head is as high above the foot as the stitch is tall. The heads of a row are then set along it: as near to their feet
// as the distances allow that stitches need beside one another, and evenly. So a shell fans out, increases spread,
// decreases draw their row together, and the radius of a flat round follows from the heights alone, as long as its
// stitches have room on it.
package chart
