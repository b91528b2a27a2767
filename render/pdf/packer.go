package pdf

import "runtime"

// packer packs the streams of pages beside whoever draws the next ones, as many at once as there are processors.
type packer struct{ work chan func() }

func startPacker() packer {
	n := runtime.GOMAXPROCS(0)
	p := packer{make(chan func(), n)}
	for range n {
		go func() {
			for job := range p.work {
				job()
			}
		}()
	}
	return p
}

// close says that nothing more comes. What was handed over is packed all the same.
func (p packer) close() { close(p.work) }

// pack has a stream packed, which must not be written to any more, and returns where to wait for it.
func (p packer) pack(plain []byte) (wait func() []byte) {
	var packed []byte
	done := make(chan struct{})
	p.work <- func() {
		packed = deflate(plain)
		close(done)
	}
	return func() []byte {
		<-done
		return packed
	}
}
