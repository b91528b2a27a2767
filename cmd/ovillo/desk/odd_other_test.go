//go:build !unix

package desk

// oddFiles are none where a folder holds files alone.
var oddFiles map[string]func(path string) error
