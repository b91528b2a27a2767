//go:build !unix

package desk

// unwaiting is nothing where pipes have no place among files.
const unwaiting = 0
