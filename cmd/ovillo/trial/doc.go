// Package trial holds tests alone. They build the command as people have it and give it a hard time: disks that are full, processes that
// are killed, folders that are closed to it, sources and files beside them that mean harm. What a designer has must come out whole.
package trial
