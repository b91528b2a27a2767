package lang

import (
	"go/ast"
	"go/parser"
	"go/token"
	"reflect"
	"testing"
)

// Every type that is a statement or an instruction, one value of each. TestAllNodesAreListed compares them with the
// source of the package.
var (
	allStatements = []StatementNode{&Use{}, &Book{}, &BookPattern{}, &Pattern{}, &Title{}, &By{}, &Photo{}, &Edition{}, &Level{}, &Terms{}, &Languages{}, &Kind{}, &Markets{}, &Not{}, &Prose{},
		&Sizes{}, &SizeNames{}, &Age{}, &Fit{}, &Body{}, &CheckSum{}, &SampleMeasure{}, &Meant{}, &Shown{}, &Gauge{}, &GaugeLine{}, &Hook{}, &Notion{}, &Yarn{}, &YarnName{}, &Weight{}, &Fibre{}, &Surface{},
		&Ball{}, &Swatch{}, &Allowance{}, &Sample{}, &SampleWeight{}, &Let{}, &Group{}, &Stitch{}, &Takes{}, &Abbr{}, &Chart{}, &DrawnRows{}, &DrawnStitches{}, &DrawnRepeats{}, &Schematic{}, &Legend{}, &Mesh{}, &Part{}, &Call{}, &Base{}, &Begin{},
		&Style{}, &FirstSide{}, &Make{}, &Chain{}, &Foundation{}, &Ring{}, &Start{}, &From{}, &CountOff{}, &Have{}, &RoundsBegin{},
		&LevelWith{}, &Close{}, &FastenOff{}, &Repeat{}, &Only{}, &EndClaims{}, &Row{}, &WorkRow{}, &Finish{}, &Sew{}, &Cord{}, &Fringe{},
		&Elastic{}, &Pompom{}, &Button{}, &PlainFinish{}, &MeasureBlock{}, &Measure{}, &Edges{}, &Shape{}, &ShapeRow{}, &Every{},
		&OnRows{}, &FirstOn{}, &ShapeAt{}, &Motifs{}, &MotifGrid{}, &MotifSide{}, &MotifJoin{},
		&Stripes{}, &StitchPattern{}, &MultipleOf{}, &PatternRow{}, &MayEnd{}}
	allItems = []Item{&ChainItem{}, &Lengthen{}, &Established{}, &Skip{}, &Leave{}, &Turn{}, &Join{}, &Mark{}, &ChangeYarn{}, &ChartRow{}, &Together{},
		&Bracket{}, &Work{}}
)

func TestAllNodesAreListed(t *testing.T) {
	listed := map[string]string{}
	for _, n := range allStatements {
		listed[reflect.TypeOf(n).Elem().Name()] = "statement"
	}
	for _, n := range allItems {
		listed[reflect.TypeOf(n).Elem().Name()] = "item"
	}
	file, err := parser.ParseFile(token.NewFileSet(), "tree.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, d := range file.Decls {
		fn, ok := d.(*ast.FuncDecl)
		if !ok || fn.Recv == nil || fn.Name.Name != "statement" && fn.Name.Name != "item" {
			continue
		}
		found++
		name := fn.Recv.List[0].Type.(*ast.StarExpr).X.(*ast.Ident).Name
		if listed[name] != fn.Name.Name {
			t.Errorf("%s is a %s and is not listed", name, fn.Name.Name)
		}
	}
	if found != len(listed) {
		t.Errorf("%d nodes in tree.go, %d listed", found, len(listed))
	}
}
