package lang

import (
	"bufio"
	"fmt"
	"io"
	"reflect"
	"strings"
)

// Dump writes a tree as text, one statement or instruction a line, without positions:
//
//	Row Head=(One=round Label=divide) Claims=(Items=[(N=8 Name=dc) (N=2 Kind=(A=spaces))])
//	  Work Stitch=dc End=(Bound=(Ref=m1)) Label=back_a
//	  ChainItem N=2 Label=right_gap
//
// Names stand as they are, texts in quotes, and expressions with a bracket around every operation.
func Dump(w io.Writer, f *File) error {
	d := &dumper{Writer: bufio.NewWriter(w), file: f}
	d.body(f.Body, "")
	return d.Flush()
}

type dumper struct {
	*bufio.Writer
	file *File
}

func (d *dumper) body(body []*Statement, indent string) {
	for _, s := range body {
		if s.Node == nil {
			fmt.Fprintf(d, "%sunread %q\n", indent, d.file.Source.Slice(s.Head))
		} else {
			d.node(s.Node, indent)
		}
		for _, l := range s.Lines {
			fmt.Fprintf(d, "%s  | %s %q\n", indent, l.Head, d.file.At(l.Span).Braced(l.Text))
		}
		d.body(s.Body, indent+"  ")
	}
}

// node writes a statement or an instruction, and the instructions in it below.
func (d *dumper) node(n Node, indent string) {
	v := reflect.ValueOf(n).Elem()
	fmt.Fprintf(d, "%s%s%s\n", indent, v.Type().Name(), fields(v, true))
	for i := range v.NumField() {
		if l, ok := v.Field(i).Interface().(*List); ok && l != nil {
			for _, item := range l.Items {
				d.node(item, indent+"  ")
			}
		}
	}
}

// fields writes the fields of a node that are set.
func fields(v reflect.Value, lead bool) string {
	var b strings.Builder
	for i := range v.NumField() {
		f := v.Type().Field(i)
		if f.Anonymous || v.Field(i).IsZero() || f.Type == reflect.TypeFor[*List]() {
			continue
		}
		if lead {
			b.WriteByte(' ')
		}
		lead = true
		b.WriteString(f.Name)
		if f.Type.Kind() != reflect.Bool {
			b.WriteString("=" + inline(v.Field(i)))
		}
	}
	return b.String()
}

// inline writes the value of a field.
func inline(v reflect.Value) string {
	switch n := v.Interface().(type) {
	case string:
		return n
	case *Name:
		return n.Text
	case *As:
		return n.Name.Text
	case *Ref:
		return strings.Join(n.Path, ".")
	case *Str:
		return fmt.Sprintf("%q", n.Text)
	case Str:
		return fmt.Sprintf("%q", n.Text)
	case *Expr:
		return n.String()
	}
	switch v.Kind() {
	case reflect.Slice:
		var parts []string
		for i := range v.Len() {
			parts = append(parts, inline(v.Index(i)))
		}
		return "[" + strings.Join(parts, " ") + "]"
	case reflect.Interface, reflect.Pointer:
		return inline(v.Elem())
	}
	if e := v.FieldByName("E"); e.IsValid() {
		return inline(e)
	}
	return "(" + fields(v, false) + ")"
}

var opSigns = map[Op]string{OpAdd: " + ", OpSub: " - ", OpMul: " * ", OpDiv: " / "}

// String writes an expression with a bracket around every operation.
func (e *Expr) String() string {
	switch e.Op {
	case OpNumber:
		s := e.Text
		if len(e.Sizes) > 0 {
			s += " (" + strings.Join(e.Sizes, ", ") + ")"
		}
		if e.Unit != "" {
			s += " " + e.Unit
		}
		return s
	case OpName:
		return strings.Join(e.Path, ".")
	case OpCall:
		var args []string
		for _, a := range e.Args {
			args = append(args, a.String())
		}
		return strings.Join(e.Path, ".") + "(" + strings.Join(append(args, e.Words...), ", ") + ")"
	case OpParen:
		return e.L.String()
	case OpNeg:
		return "(-" + e.L.String() + ")"
	case OpBut:
		return fmt.Sprintf("(%s but %q %s)", e.L, e.Text, e.R)
	case OpMultiple:
		if e.R == nil {
			return "multiple of " + e.L.String()
		}
		return fmt.Sprintf("multiple of %s plus %s", e.L, e.R)
	case OpMeasure:
		if e.Side != nil {
			return e.Text + " " + inline(reflect.ValueOf(e.Side))
		}
		s := e.Text + " of "
		if e.Text == "around" || e.Text == "along" {
			s = e.Text + " "
		}
		s += strings.Join(e.Path, ".")
		if e.R != nil {
			s += " at row " + e.R.String()
		}
		return s
	}
	return "(" + e.L.String() + opSigns[e.Op] + e.R.String() + ")"
}
