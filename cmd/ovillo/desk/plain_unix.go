//go:build unix

package desk

import "syscall"

// unwaiting opens a pipe at once, whether anybody writes into it or not.
const unwaiting = syscall.O_NONBLOCK
