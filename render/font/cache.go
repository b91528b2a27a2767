package font

import "sync/atomic"

// cacheBits is the size of a cache as a power of two: 8,192 entries hold every pair that a long document uses, in 64 kB.
const cacheBits = 13

// cache maps a 32-bit key to a 31-bit value. An entry is one word, so readers and writers need no lock; a key that
// meets an occupied place drives out the old one, so it never grows. It must not be asked to keep anything that cannot
// be worked out again.
type cache [1 << cacheBits]atomic.Uint64

const filled = 1 << 31 // marks an entry, so that the zero word is an empty place

func (c *cache) place(key uint32) *atomic.Uint64 {
	const golden = 0x9E3779B1 // Knuth's multiplicative hash: spreads neighbouring runes over the table
	return &c[key*golden>>(32-cacheBits)]
}

func (c *cache) get(key uint32) (value uint32, ok bool) {
	w := c.place(key).Load()
	return uint32(w) &^ filled, w&filled != 0 && uint32(w>>32) == key
}

func (c *cache) put(key, value uint32) {
	c.place(key).Store(uint64(key)<<32 | uint64(value|filled))
}
