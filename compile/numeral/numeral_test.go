package numeral_test

import (
	"strings"
	"testing"

	"ovillo/compile/numeral"
)

var (
	sizesEN = []string{"1 y", "2 y", "12 m"}
	sizesES = []string{"1 año", "2 años", "1 año (12 meses)"}
)

// apart compares two sentences and writes what stands in one alone.
func apart(en, es string) string {
	a, b := numeral.Compare(numeral.Read(en, "en", sizesEN), numeral.Read(es, "es", sizesES))
	var out []string
	for _, n := range a {
		out = append(out, n.Text)
	}
	left := strings.Join(out, " ")
	out = nil
	for _, n := range b {
		out = append(out, n.Text)
	}
	return left + "|" + strings.Join(out, " ")
}

// What must not be reported: the same said in another way.
func TestAlike(t *testing.T) {
	for _, k := range [][2]string{
		{"Leave 30 loops.", "Dejar 30 bucles."},
		{"It has 3.5 cm.", "Tiene 3,5 cm."},
		{"It has 3.5 cm.", "Tiene 3.5 cm."},
		{"1,234 stitches", "1234 puntos"},
		{"1234 stitches", "1.234 puntos"},
		{"12\u202f345 stitches", "12\u202f345 puntos"},
		{"12,345 stitches", "12\u00a0345 puntos"},
		{"Wash at 30 °C.", "Lavar a 30 °C."},
		{"Wash at 30 °C (86 °F).", "Lavar a 30 °C."},
		{"Leave 3 cm (1¼ in).", "Dejar 3 cm."},
		{"Leave 17 (18, 19) cm or 6¾ (7, 7½) in.", "Dejar 17 (18; 19) cm."},
		{"100 m (109 yd) of yarn, 50 g (1¾ oz)", "100 m de hilo, 50 g"},
		{"20% wool", "20 % de lana"},
		{"½ of the yarn", "la mitad del hilo"},
		{"Half of the yarn", "½ del hilo"},
		{"2½ hours", "2 horas y media"},
		{"2 1/2 balls", "2½ ovillos"},
		{"1/2 ball", "½ ovillo"},
		{"0.5 ball", "½ ovillo"},
		{"rounds 3–5", "vueltas 3 a 5"},
		{"rounds 3-5", "de la 3.ª a la 5.ª vuelta"},
		{"the 2nd row and the 3rd", "la 2.ª hilera y la 3.ª"},
		{"the 1st row", "la primera hilera"},
		{"the first row", "la 1.ª hilera"},
		{"Work two rows.", "Tejer dos hileras."},
		{"Work 2 rows.", "Tejer dos hileras."},
		{"Work two rows.", "Tejer 2 hileras."},
		{"Work 1 row.", "Tejer una hilera."},
		{"Work one row.", "Tejer 1 hilera."},
		{"Work it once.", "Tejerlo 1 vez."},
		{"Work it once.", "Tejerlo una vez."},
		{"Work it twice.", "Tejerlo 2 veces."},
		{"Eleven rows once, and once more.", "Once hileras una vez y otra vez más."},
		{"11 rows", "once hileras"},
		{"Sew both pieces.", "Coser las dos piezas."},
		{"Sew the two pieces.", "Coser ambas piezas."},
		{"a pair of socks", "dos calcetines"},
		{"two to three rows", "de dos a tres hileras"},
		{"twenty-one stitches", "veintiún puntos"},
		{"thirty-two stitches", "treinta y dos puntos"},
		{"one hundred and five stitches", "ciento cinco puntos"},
		{"two hundred stitches", "doscientos puntos"},
		{"a hundred stitches", "100 puntos"},
		{"3000 stitches", "tres mil puntos"},
		{"two and three", "dos y tres"},
		{"It opens a little.", "Abre un poco."},
		{"For 2 y only.", "Solo para 2 años."},
		{"For 12 m.", "Para 1 año (12 meses)."},
		{"Sizes 1 y and 2 y are worked alike.", "Las tallas 1 año y 2 años se tejen igual."},
		{"Edition of 2026-11-30.", "Edición del 30 de noviembre de 2026."},
		{"November 30, 2026", "30 de noviembre de 2026"},
		{"3/12/2026", "12/3/2026"},
		{"a 4 mm (G-6) hook", "un ganchillo de 4 mm"},
		{"See https://a.example/en/2.", "Véase https://a.example/es/3."},
		{"[more](https://a.example/1)", "[más](https://a.example/2)"},
		{"1. one\n2. two things", "1. una\n1. dos cosas"},
		{"at −2 °C", "a −2 °C"},
		{"10 × 10 cm", "10 x 10 cm"},
		{"Row 3 is long; row 3 ends it.", "La hilera 3 es larga y es la última."},
		{"dc2tog", "2pajun"},
		{"ch-3 sp", "esp de 3 cad"},
		{"May be worked in March 2026.", "Puede tejerse en marzo de 2026."},
		{"no numbers here", "aquí no hay números"},
		{"Second, sew it.", "Después, coserlo."},
		{"six months", "6 meses"},
		{"a quarter of the yarn", "la cuarta parte del hilo"},
	} {
		if got := apart(k[0], k[1]); got != "|" {
			t.Errorf("%q and %q: %s", k[0], k[1], got)
		}
	}
}

// What must be reported: a number that one text has and the other has not.
func TestApart(t *testing.T) {
	for _, k := range [][3]string{
		{"Leave 30 loops.", "Dejar 20 bucles.", "30|20"},
		{"Leave 30 loops and 4.", "Dejar 30 bucles.", "4|"},
		{"Leave 30 loops.", "Dejar 30 bucles y 4.", "|4"},
		{"It has 3.5 cm.", "Tiene 35 cm.", "3.5|35"},
		{"Work two rows.", "Tejer tres hileras.", "two|tres"},
		{"Work 2 rows.", "Tejer tres hileras.", "2|tres"},
		{"Work two rows.", "Tejer 3 hileras.", "two|3"},
		{"Work it once.", "Tejerlo once veces.", "|once"},
		{"Sew the four corners.", "Coser las esquinas.", "four|"},
		{"Work 1 row.", "Tejer once hileras.", "1|once"},
		{"Leave 3 cm (2 in).", "Dejar 3 cm.", "2|"},
		{"Wash at 30 °C (95 °F).", "Lavar a 30 °C.", "95|"},
		{"Leave 3 cm (1¼ in).", "Dejar 4 cm.", "3|4"},
		{"rounds 3–5", "vueltas 3 a 6", "5|6"},
		{"2½ hours", "2 horas", "2½|2"},
		{"½ ball", "¼ de ovillo", "½|¼"},
		{"For 1 y only.", "Solo para 2 años.", "1 y|2 años"},
		{"the 2nd row", "la 3.ª hilera", "2|3"},
		{"30 °C", "40 °C", "30|40"},
		{"November 30, 2026", "30 de octubre de 2025", "2026|2025"},
		{"at −2 °C", "a 2 °C", "2|2"},
		{"3 rows, then 3 rounds, then 4", "3 hileras, luego 4 vueltas, luego 4", "3|4"},
		{"20% wool", "25 % de lana", "20|25"},
		{"thirty-two stitches", "treinta y tres puntos", "thirty-two|treinta y tres"},
		{"1,234 stitches", "1243 puntos", "1,234|1243"},
	} {
		if got := apart(k[0], k[1]); got != k[2] {
			t.Errorf("%q and %q: %s, want %s", k[0], k[1], got, k[2])
		}
	}
}

// Whatever is read, a text says what it says itself, and places lie in it.
func FuzzRead(f *testing.F) {
	f.Add("2½ cm, 1.234 (2 y) treinta y dos", "twenty-one 1/2 12 345 −3 G-6 http://a/2")
	f.Fuzz(func(t *testing.T, a, b string) {
		for _, lang := range []string{"en", "es", "fr"} {
			x, y := numeral.Read(a, lang, sizesEN), numeral.Read(b, lang, sizesEN)
			for _, n := range x {
				if n.From < 0 || n.To <= n.From || n.To > len(a) || a[n.From:n.To] != n.Text {
					t.Errorf("%+v is no place of %q", n, a)
				}
			}
			if p, q := numeral.Compare(x, x); len(p)+len(q) > 0 {
				t.Errorf("%q differs from itself: %v %v", a, p, q)
			}
			p, q := numeral.Compare(x, y)
			r, s := numeral.Compare(y, x)
			if (len(p)+len(q) == 0) != (len(r)+len(s) == 0) {
				t.Errorf("%q and %q: %v %v, the other way %v %v", a, b, p, q, r, s)
			}
		}
	})
}
