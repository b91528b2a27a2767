// Package plain writes a checked pattern as plain text, in one language: for the box below a video, a blog, or to be read aloud.
//
// It has no page furniture, no signs of Markdown and no angle brackets, which such boxes are known to refuse (common practice, from memory).
// Its sections stand in an order in which cutting the end off hurts least; what a maker must know for safety is never left out.
package plain
