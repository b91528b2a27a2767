package compile

func (c *checker) cautions() {}
