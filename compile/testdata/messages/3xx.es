# OV301
error[OV301]: se dan 4 números, pero aquí hay 3 tallas
  --> example.ovillo:13:12
 13 | let wide = 20 (22, 24, 26)
    |            ^^^^^^^^^^^^^^^ hace falta un número por talla
    = ayuda: escribir un número para cada talla, S, M y L, en este orden, o un solo número que sirva para todas

example.ovillo: 1 error

# OV302
error[OV302]: nada que tenga valor se llama wdie
  --> example.ovillo:19:21
 19 |   row: sc in each = wdie
    |                     ^^^^ ningún valor tiene aquí este nombre
    = ayuda: un nombre parecido que sí tiene valor: wide

example.ovillo: 1 error

# OV303
error[OV303]: cuenta y longitud no se pueden sumar ni restar
  --> example.ovillo:13:12
 13 | let wide = 20 (22, 24) + 2 cm
    |            ^^^^^^^^^^^^^^^^^^ a la izquierda cuenta, a la derecha longitud
    = ayuda: convertir antes la longitud en puntos: stitches(2 cm, sc); o la cuenta en longitud: length(4, sc)

example.ovillo: 1 error

# OV304
error[OV304]: longitud y longitud no se pueden multiplicar ni dividir así
  --> example.ovillo:13:21
 13 | let wide = stitches(20 cm * 2 cm, sc)
    |                     ^^^^^^^^^^^^ a la izquierda longitud, a la derecha longitud
    = ayuda: un lado de la multiplicación debe ser un número sin unidad o un porcentaje

example.ovillo: 1 error

# OV305
error[OV305]: aquí se divide entre cero
  --> example.ovillo:13:26
 13 | let wide = 20 (22, 24) / (2 - 2)
    |                          ^^^^^^^ cero aquí: 0
    = ayuda: dividir entre un valor que sea mayor que cero en todas las tallas

example.ovillo: 1 error

# OV306
error[OV306]: el número 20000000000 es demasiado grande o está dividido en partes demasiado finas
  --> example.ovillo:13:12
 13 | let wide = 20000000000
    |            ^^^^^^^^^^^
    = ayuda: usar números menores que 1000000000, divididos en menos partes que esas

example.ovillo: 1 error

# OV307
error[OV307]: aquí no hay talla XL
  --> example.ovillo:13:12
 13 | let wide = 20 (22, 24) but "XL" 26
    |            ^^^^^^^^^^^^^^^^^^^^^^^ esto fija el valor de la talla XL
    = ayuda: las tallas son S, M y L; escribir el nombre igual que en la lista

example.ovillo: 1 error

# OV308
error[OV308]: la talla L recibe otra clase de valor que las demás: longitud, no cuenta
  --> example.ovillo:13:32
 13 | let wide = 20 (22, 24) but "L" 26 cm
    |                                ^^^^^ aquí hace falta: cuenta
    = ayuda: dar a la talla L un valor de la misma clase que las demás

example.ovillo: 1 error

# OV309
error[OV309]: la talla L se fija a mano dos veces
  --> example.ovillo:13:40
 13 | let wide = 20 (22, 24) but "L" 26, "L" 28
    |                                        ^^ fijada por segunda vez
    = ayuda: dejar un solo valor para la talla L

example.ovillo: 1 error

# OV310
error[OV310]: nada que calcule un valor se llama stiches
  --> example.ovillo:13:12
 13 | let wide = stiches(20 cm, sc)
    |            ^^^^^^^^^^^^^^^^^^ un nombre delante de un paréntesis calcula un valor
    = ayuda: el nombre parecido es stitches

example.ovillo: 1 error

# OV311
error[OV311]: stitches recibe 1 valor y necesita 2
  --> example.ovillo:13:12
 13 | let wide = stitches(20 cm)
    |            ^^^^^^^^^^^^^^^ se escribe stitches(52 cm, dc, multiple of 2)
    = ayuda: darle dos valores: stitches(52 cm, dc, multiple of 2)

example.ovillo: 1 error

# OV312
error[OV312]: stitches necesita como segundo valor el nombre de un punto
  --> example.ovillo:13:28
 13 | let wide = stitches(20 cm, 16)
    |                            ^^ un punto, como dc
    = ayuda: nombrar el punto cuya muestra se usa: stitches(52 cm, dc, multiple of 2)

example.ovillo: 1 error

# OV313
error[OV313]: even y odd no pueden estar juntos aquí
  --> example.ovillo:13:12
 13 | let wide = stitches(20 cm, sc, even, odd)
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ solo puede valer uno
    = ayuda: dejar uno de los dos

example.ovillo: 1 error

# OV314
error[OV314]: min no redondea, así que no lleva múltiplo ni palabra de redondeo
  --> example.ovillo:13:12
 13 | let wide = min(20, 22, even)
    |            ^^^^^^^^^^^^^^^^^
    = ayuda: escribir min(leg, 40) y, si hace falta un número entero, redondear con whole( ): whole(leg / 3, even)

example.ovillo: 1 error

# OV315
error[OV315]: un múltiplo se da con números enteros, aquí de 1 en adelante, y este es 0
  --> example.ovillo:13:44
 13 | let wide = stitches(20 cm, sc, multiple of 0)
    |                                            ^
    = ayuda: escribir el múltiplo con los puntos de una repetición y los que quedan aparte: multiple of 6 plus 1

example.ovillo: 1 error

# OV316
error[OV316]: un «multiple of 6 plus 1» nunca puede ser «even»
  --> example.ovillo:13:12
 13 | let wide = stitches(20 cm, sc, multiple of 6 plus 1, even)
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: quitar la palabra o cambiar el múltiplo

example.ovillo: 1 error

# OV317
error[OV317]: aquí se pide un número entero a partir de un valor menor que cero: -10 cm
  --> example.ovillo:13:12
 13 | let wide = stitches(20 cm - 30 cm, sc)
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: revisar, talla por talla, las medidas que se restan

example.ovillo: 1 error

# OV318
error[OV318]: redondear hacia abajo no deja ninguna cuenta: el valor es 3 1/5 y la menor cuenta permitida es 5
  --> example.ovillo:13:12
 13 | let wide = stitches(2 cm, sc, multiple of 6 plus 5, down)
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: redondear hacia arriba o a la más cercana, o pedir un múltiplo menor

example.ovillo: 1 error

# OV319
error[OV319]: 38 para la talla L no es «multiple of 6 plus 1», como debe ser el valor
  --> example.ovillo:13:71
 13 | let wide = stitches(20 (22, 24) cm, sc, multiple of 6 plus 1) but "L" 38
    |                                                                       ^^ fijado a mano
    = tallas: L
    = ayuda: lo más cercano que sirve: 37 o 43

example.ovillo: 1 error

# OV320
error[OV320]: aquí hace falta un número entero, y este es 10 1/2 en S
  --> example.ovillo:18:9
 18 |   chain wide
    |         ^^^^ no es entero
    = tallas: S
    = ayuda: los enteros por debajo son 10; por encima, 11; cambiar aquello de lo que se calcula o redondearlo con whole( )

example.ovillo: 1 error

# OV321
error[OV321]: una cuenta no puede ser menor que cero, y esta es -10 en S, -8 en M, -6 en L
  --> example.ovillo:18:9
 18 |   chain wide
    |         ^^^^
    = ayuda: revisar, talla por talla, las cuentas que se restan

example.ovillo: 1 error

# OV322
error[OV322]: aquí hace falta otra clase de valor: cuenta, no longitud
  --> example.ovillo:18:9
 18 |   chain wide
    |         ^^^^ clase de este valor: longitud
    = ayuda: convertir la longitud en cuenta según la muestra: stitches(20 cm, sc) o rows(20 cm, sc)

example.ovillo: 1 error

# OV325
error[OV325]: la pieza terminada solo se puede medir en el bloque measure
  --> example.ovillo:13:21
 13 | let wide = stitches(width of strip at row 1, sc)
    |                     ^^^^^^^^^^^^^^^^^^^^^^^ esto mide lo que aún no está hecho
    = ayuda: partir de la longitud que se quiere y declarar la medida al final

example.ovillo: 1 error

# OV323
error[OV323]: sc no tiene repeticiones que se puedan contar
 --> example.ovillo:5:24
 5 | let n = repeats(20 cm, sc)
   |                        ^^ no es una puntada con múltiplo
   = ayuda: nombrar una puntada que diga su múltiplo, o contar puntos: stitches(78 cm, dc)

example.ovillo: 1 error

# OV326
error[OV326]: sc tiene una muestra en hileras y otra en vueltas, y aquí nada dice cuál vale
  --> example.ovillo:15:28
 15 | let wide = stitches(20 cm, sc)
    |                            ^^ ¿en hileras o en vueltas?
    = ayuda: decirlo detrás del punto: stitches(52 cm, sc, rounds)

example.ovillo: 1 error

# OV327
error[OV327]: la muestra de sc aparece dos veces
  --> example.ovillo:12:3
 12 |   sc 15 sts, 17 rows
    |   ^^^^^^^^^^^^^^^^^^ la segunda
 11 |   sc 16 sts, 18 rows
    |   ------------------ la primera
    = ayuda: dejar una; solo pueden estar las dos si una cuenta hileras y la otra vueltas, o si nombran ganchillos distintos

example.ovillo: 1 error

# OV328
nota[OV328]: hoop se teje en vueltas, y sus longitudes se calculan con una muestra de hdc contada en hileras
  --> example.ovillo:11:3
 11 |   hdc 16 sts, 12 rows
    |   ^^^^^^^^^^^^^^^^^^^
    = ayuda: contar una muestra tejida en vueltas y darle su propia línea: hdc 16 sts, 12 rounds

example.ovillo: 1 nota

# OV329
nota[OV329]: en hoop se teje hdc con un ganchillo de 3,5 mm, y sus longitudes se calculan con una muestra contada con el de 4 mm
  --> example.ovillo:11:3
 11 |   hdc 16 sts, 12 rounds
    |   ^^^^^^^^^^^^^^^^^^^^^
    = ayuda: si se contó con el de 3,5 mm, decirlo detrás de la línea: hook 3.5 mm; si no, contar una muestra con él y darle su propia línea

example.ovillo: 1 nota

# OV330
aviso[OV330]: la muestra se cuenta en 5 cm
  --> example.ovillo:10:7
 10 | gauge 5 cm
    |       ^^^^ al menos 10 cm o 4 in
    = ayuda: contar en 10 cm o más, en el centro de una pieza mayor

example.ovillo: 1 aviso

# OV331
error[OV331]: sc no tiene repetición que una muestra pueda contar
 --> example.ovillo:2:3
 2 |   sc 4 repeats, 18 rows
   |   ^^^^^^^^^^^^^^^^^^^^^ ¿repeticiones de qué?
   = ayuda: contar puntos: sc 16 sts, 18 rows; o repeticiones de una puntada que diga su múltiplo, igual en todas las tallas

example.ovillo: 1 error

# OV332
nota[OV332]: según esta muestra, dc es 0,5 veces tan alto como ancho; lo habitual es 1,6–1,8
  --> example.ovillo:11:3
 11 |   dc 9 sts, 18 rows
    |   ^^^^^^^^^^^^^^^^^
    = ayuda: comprobar que puntos e hileras no estén cambiados y que se cuenten en la misma longitud (habitual según muestras publicadas)

example.ovillo: 1 nota

# OV333
nota[OV333]: según la muestra, la cadena inicial de strip es un 33 % más estrecha que la hilera que lleva encima
  --> example.ovillo:12:3
 12 |   ch 24 sts
    |   ^^^^^^^^^
    = ayuda: decir que la cadena se hace con un ganchillo mayor, o empezar con puntos sin cadena base; o contar de nuevo las cadenas

example.ovillo: 1 nota

# OV334
nota[OV334]: los dos bordes de esta costura no se comparan, porque sc no tiene muestra
  --> example.ovillo:21:3
 21 |   sew strip.edge to strip.foundation
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: añadir la muestra de sc al bloque gauge: sc 16 sts, 18 rows

example.ovillo: 1 nota

