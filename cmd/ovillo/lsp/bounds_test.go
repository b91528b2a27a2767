package lsp

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"
)

// zeros is a stream without an end.
type zeros struct{}

func (zeros) Read(p []byte) (int, error) { clear(p); return len(p), nil }

// A message whose head or body is as large as may be is read; behind one that is larger by a byte nothing is.
func TestLargestMessage(t *testing.T) {
	for over := range 2 {
		head := func(n int) string {
			const first, second = "X: ", "\r\nContent-Length: 2\r\n\r\n"
			return first + strings.Repeat("x", n-len(first)-len(second)) + second
		}
		for what, c := range map[string]struct {
			head string
			body int
		}{
			"a head": {head(mostHeader + over), 2},
			"a body": {fmt.Sprintf("Content-Length: %d\r\n\r\n", mostBody+over), mostBody},
		} {
			body, err := readBody(bufio.NewReaderSize(io.MultiReader(strings.NewReader(c.head), zeros{}), mostHeader))
			if over == 0 && (err != nil || len(body) != c.body) || over == 1 && !errors.Is(err, errBroken) {
				t.Errorf("%s, larger than the largest by %d: %d bytes, %v", what, over, len(body), err)
			}
		}
	}
}
