package lang

// readWork reads the instruction to work stitches. Nearly every instruction of a pattern is one, so it is read by hand.
func readWork(r reader) (Item, error) {
	w, start := &Work{}, r.start()
	for _, step := range []func(reader) error{w.stitch, w.where, w.rest} {
		if err := step(r); err != nil {
			return nil, err
		}
	}
	r.close(&w.At, start)
	return w, nil
}

// stitch reads how many in one place, the stitch, and where on the stitches below.
func (w *Work) stitch(r reader) error {
	if err := readIf(r, &w.N); err != nil {
		return err
	}
	if r.take("sl") {
		if w.Slip = r.take("st"); !w.Slip {
			return r.want("st")
		}
	} else {
		if !r.name() {
			return r.slip(slipStitch)
		}
		w.Stitch = &Name{}
		if err := r.must(w.Stitch); err != nil {
			return err
		}
	}
	if w.Loop = r.oneOf("flo", "blo", "tlo"); w.Loop == "" && r.take("third") {
		if w.Third = r.take("loop"); !w.Third {
			return r.want("loop")
		}
	}
	w.Tog = r.take("together")
	return readIf(r, &w.Chart)
}

// where reads where the stitches go or how often they are worked.
func (w *Work) where(r reader) error {
	if r.targetAhead() {
		w.Target = &Target{}
		return r.must(w.Target)
	}
	if err := readIf(r, &w.Spread); err != nil || w.Spread != nil {
		return err
	}
	return readIf(r, &w.End)
}

// rest reads what may stand behind any work.
func (w *Work) rest(r reader) error {
	if r.take("crossing") {
		if w.Cross = r.oneOf("front", "back"); w.Cross == "" {
			return r.want("front", "back")
		}
	}
	if r.word("with") && r.after().Value == "[" {
		w.Spaced = &Spaced{}
		if err := w.Spaced.read(r); err != nil {
			return err
		}
	}
	if r.take("with") {
		w.With = &Name{}
		if err := r.must(w.With); err != nil {
			return err
		}
	}
	return readIf(r, &w.Label)
}

// read reads a bracket that is set among plain stitches, from the word `with`.
func (s *Spaced) read(r reader) error {
	start := r.start()
	r.Next()
	r.Next()
	s.List, s.N = &List{}, &Cnt{}
	if err := r.must(s.List); err != nil {
		return err
	}
	if !r.take("]") {
		return r.want("]")
	}
	if err := r.must(s.N); err != nil {
		return err
	}
	for _, word := range []string{"times", "evenly"} {
		if !r.take(word) {
			return r.want(word)
		}
	}
	switch {
	case r.take("after"):
	case r.take("before"):
		if s.Last = r.take("last"); !s.Last {
			return r.want("last")
		}
	default:
		r.close(&s.At, start)
		return nil
	}
	s.After = &Cnt{}
	if err := r.must(s.After); err != nil {
		return err
	}
	r.close(&s.At, start)
	return nil
}
