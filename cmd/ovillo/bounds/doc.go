// Package bounds holds tests alone: the table of bounds in DEVELOPERS.md is that of the constants, and hostile sources given to the command
// as people have it end soon and in little memory.
package bounds
