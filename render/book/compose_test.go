package book

import (
	"reflect"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/sample"
	"ovillo/render/words"
)

// usual is the look of two languages on A4.
var usual = lookOf(A4, false, 2, 4)

// edition is a way to set the sample that the laws of this package are tested on.
type edition struct {
	name  string
	sizes int
	langs []string
	alter func(p *plan.Pattern)
	kind  Edition
}

// editions cover one and two languages, and every way in which the number of sizes changes the page.
var editions = []edition{
	{"both languages", 4, []string{"en", "es"}, nil, 0},
	{"Spanish first", 4, []string{"es", "en"}, nil, 0},
	{"English", 4, []string{"en"}, nil, 0},
	{"Spanish", 4, []string{"es"}, nil, 0},
	{"one size", 1, []string{"en", "es"}, nil, 0},
	{"one size, English", 1, []string{"en"}, nil, 0},
	{"two sizes", 2, []string{"en", "es"}, nil, 0},
	{"five sizes", 5, []string{"en", "es"}, nil, 0},
	{"five sizes, Spanish", 5, []string{"es"}, nil, 0},
	{"six sizes", 6, []string{"en", "es"}, nil, 0},
	{"ten sizes", 10, []string{"en", "es"}, nil, 0},
	{"twelve sizes, English", 12, []string{"en"}, nil, 0},
	{"long words", 4, []string{"en", "es"}, lengthen, 0},
	{"long words, Spanish", 4, []string{"es"}, lengthen, 0},
	{"many cautions", 4, []string{"en", "es"}, manyCautions, 0},
	{"many cautions, Spanish", 5, []string{"es"}, manyCautions, 0},
	{"many cautions, twelve sizes", 12, []string{"en", "es"}, manyCautions, 0},
	{"bare", 4, []string{"en", "es"}, strip, 0},
	{"bare, one size, English", 1, []string{"en"}, strip, 0},
}

// pattern makes the sample of an edition.
func (e edition) pattern() *plan.Pattern {
	p := sample.Leggings()
	resize(reflect.ValueOf(p), len(p.Sizes), e.sizes, map[uintptr]bool{})
	p.Shown = min(p.Shown, e.sizes-1)
	if e.alter != nil {
		e.alter(p)
	}
	return p
}

// resize gives every list that has an entry for each size another number of entries, by going round.
func resize(v reflect.Value, from, to int, seen map[uintptr]bool) {
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() || seen[v.Pointer()] {
			return
		}
		seen[v.Pointer()] = true
		resize(v.Elem(), from, to, seen)
	case reflect.Interface:
		if !v.IsNil() {
			resize(v.Elem(), from, to, seen)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			resize(v.Field(i), from, to, seen)
		}
	case reflect.Map:
		for _, key := range v.MapKeys() {
			entry := reflect.New(v.Type().Elem()).Elem()
			entry.Set(v.MapIndex(key))
			resize(entry, from, to, seen)
			v.SetMapIndex(key, entry)
		}
	case reflect.Slice:
		if perSize(v.Type()) && v.Len() == from && v.CanSet() {
			n := reflect.MakeSlice(v.Type(), to, to)
			for i := range to {
				n.Index(i).Set(v.Index(i % from))
			}
			v.Set(n)
			return
		}
		for i := range v.Len() {
			resize(v.Index(i), from, to, seen)
		}
	}
}

// perSize reports whether lists of a type hold an entry for each size.
func perSize(t reflect.Type) bool {
	switch t {
	case reflect.TypeFor[plan.Nums](), reflect.TypeFor[plan.Lengths](), reflect.TypeFor[plan.Sizes](),
		reflect.TypeFor[[]plan.Size](), reflect.TypeFor[[]plan.YarnAmount](), reflect.TypeFor[[][]plan.RowFact](),
		reflect.TypeFor[[][]plan.Share](), reflect.TypeFor[[]bool]():
		return true
	}
	return false
}

// lengthen makes every name that the designer chooses as long as somebody will make it.
func lengthen(p *plan.Pattern) {
	p.Title = plan.Text{
		"en": "Leggings for long winter afternoons in the garden", "es": "Mallas calentitas para las largas tardes de invierno en el jardín",
	}
	p.By = "Studio for Extraordinarily Comfortable Children's Garments and Sons"
	for i := range p.Sizes {
		p.Sizes[i].Names = plan.Text{"en": "12–18 months", "es": "12–18 meses, extragrande"}
	}
	for i := range p.Yarns {
		p.Yarns[i].Names = plan.Text{"en": "hand-dyed blue-green marsh grass", "es": "hierba de marisma verdeazulada teñida"}
	}
	for _, part := range p.Parts {
		part.Title = plan.Text{"en": "Upper and lower waistband with drawstring", "es": "Pretina superior e inferior con pasacordones"}
	}
	for i := range p.Measures {
		p.Measures[i].Text = plan.Text{"en": "Around the widest place of the hips, unstretched", "es": "Contorno de la parte más ancha de la cadera, sin estirar"}
	}
	long := "https://studio.example/patterns/leggings/2026/spring/corrections-and-additions/second-edition"
	p.Changes = plan.Prose{Text: plan.Text{"en": "See <" + long + ">.", "es": "Véase <" + long + ">."}}
	for range 4 {
		p.Cautions = append(p.Cautions, p.Cautions[0])
	}
}

// strip takes away all that is not required.
func strip(p *plan.Pattern) {
	p.By, p.Date, p.Level, p.Edition = "", "", "", 0
	p.Intro, p.Care, p.Licence, p.Changes = plan.Prose{}, plan.Prose{}, plan.Prose{}, plan.Prose{}
	p.Notes, p.Body, p.Gauges, p.Measures, p.Finish, p.Cautions = nil, nil, nil, nil, nil, nil
	p.Notions = plan.Notions{}
	for i := range p.Yarns {
		p.Yarns[i].Amount = nil
	}
	for _, part := range p.Parts {
		for _, rows := range part.Worked {
			for i := range rows {
				rows[i].Width, rows[i].Height = plan.NoLength, plan.NoLength
			}
		}
	}
}

func languages(t testing.TB, tags ...string) []*words.Language {
	t.Helper()
	var langs []*words.Language
	for _, tag := range tags {
		l, err := words.For(tag)
		if err != nil {
			t.Fatal(err)
		}
		langs = append(langs, l)
	}
	return langs
}

// compose sets an edition.
func (e edition) compose(t testing.TB, paper Paper) *page.Document {
	t.Helper()
	doc, err := Compose(e.pattern(), Options{Paper: paper, Langs: languages(t, e.langs...), Edition: e.kind})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// eachEdition runs a test on every edition.
func eachEdition(t *testing.T, test func(t *testing.T, e edition, doc *page.Document)) {
	for _, e := range editions {
		t.Run(e.name, func(t *testing.T) { test(t, e, e.compose(t, A4)) })
	}
}
