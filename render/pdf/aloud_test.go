package pdf

import (
	"bytes"
	"testing"

	readpdf "github.com/ledongthuc/pdf"
)

// readAloud returns the texts of a file in the order of its structure tree, a text for each marked piece. It reads with
// a library that shares nothing with the writer; PDFium shows the tree of one page only.
func readAloud(t *testing.T, file []byte) (texts []string) {
	t.Helper()
	r, err := readpdf.NewReader(bytes.NewReader(file), int64(len(file)))
	if err != nil {
		t.Fatal(err)
	}
	type mark struct{ page, id int64 }
	marked := map[mark]string{}
	for n := 1; n <= r.NumPage(); n++ {
		p := r.Page(n)
		var font readpdf.TextEncoding
		id := int64(-1)
		readpdf.Interpret(p.V.Key("Contents"), func(stack *readpdf.Stack, op string) {
			args := make([]readpdf.Value, stack.Len())
			for i := len(args) - 1; i >= 0; i-- {
				args[i] = stack.Pop()
			}
			switch op {
			case "BDC":
				id = args[1].Key("MCID").Int64()
			case "Tf":
				f := p.Font(args[0].Name())
				font = f.Encoder()
			case "TJ":
				for i := range args[0].Len() {
					if v := args[0].Index(i); v.Kind() == readpdf.String {
						marked[mark{p.V.Key("StructParents").Int64(), id}] += font.Decode(v.RawString())
					}
				}
			}
		})
	}
	var down func(v readpdf.Value, page int64)
	down = func(v readpdf.Value, page int64) {
		switch {
		case v.Kind() == readpdf.Array:
			for i := range v.Len() {
				down(v.Index(i), page)
			}
		case v.Kind() == readpdf.Integer:
			texts = append(texts, marked[mark{page, v.Int64()}])
		case v.Key("Type").Name() == "MCR":
			down(v.Key("MCID"), v.Key("Pg").Key("StructParents").Int64())
		case v.Key("Type").Name() == "StructElem":
			if pg := v.Key("Pg"); !pg.IsNull() {
				page = pg.Key("StructParents").Int64()
			}
			down(v.Key("K"), page)
		}
	}
	down(r.Trailer().Key("Root").Key("StructTreeRoot").Key("K"), 0)
	return texts
}
