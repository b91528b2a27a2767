package desk

import (
	"bytes"
	"sync"

	"ovillo/compile"
	"ovillo/compile/picture"
)

// Memory keeps what need not be worked out again when a source is checked at every keystroke. It may be used by several goroutines.
type Memory struct {
	mu   sync.Mutex
	file []byte // the photograph that was read last
	read picture.Picture
	err  error

	rooms []*compile.Room // that no check works in
}

// room is room for a check, with what gives it back.
func (m *Memory) room() (r *compile.Room, done func()) {
	if m == nil {
		return nil, func() {}
	}
	m.mu.Lock()
	defer m.mu.Unlock()
	r = &compile.Room{}
	if n := len(m.rooms); n > 0 {
		r, m.rooms = m.rooms[n-1], m.rooms[:n-1]
	}
	return r, func() {
		m.mu.Lock()
		defer m.mu.Unlock()
		m.rooms = append(m.rooms, r)
	}
}

// picture reads a photograph, or tells what came of it when it was read last: to decode one takes as long as all the rows.
func (m *Memory) picture(data []byte) (picture.Picture, error) {
	if m == nil {
		return picture.Read(data)
	}
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.file == nil || !bytes.Equal(m.file, data) {
		m.file = data
		m.read, m.err = picture.Read(data)
	}
	return m.read, m.err
}
