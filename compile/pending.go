package compile

func (c *checker) yarns()    {}
func (c *checker) cautions() {}
func (c *checker) checkWeight(string, any) {}
