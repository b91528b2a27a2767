# OV801
error[OV801]: falta el texto en es
  --> example.ovillo:12:3
 12 |   call strip en "the strip"
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^ le falta un idioma
    = ayuda: añadirlo, o nombrar detrás de languages en el encabezado solo los idiomas en que está todo escrito

example.ovillo: 1 error

# OV802
aviso[OV802]: el patrón no tiene título
 --> example.ovillo:1:1
 1 | pattern trial
   | ^^^^^^^^^^^^^ se imprime con su nombre corto
   = ayuda: añadir title en "…" es "…"

example.ovillo: 1 aviso

# OV803
aviso[OV803]: la pieza strip no tiene título
 --> example.ovillo:4:1
 4 | part strip
   | ^^^^^^^^^^ se imprime con su nombre corto
   = ayuda: añadir title en "…" es "…"

example.ovillo: 1 aviso

# OV804
error[OV804]: los números no coinciden entre los idiomas: aquí 20, en el otro 30
  --> example.ovillo:11:16
 11 |     es | Dejar 20 bucles.
    |                ^^ tiene 20
 10 |     en | Leave 30 loops.
    |                -- tiene 30
    = ayuda: hacer que coincidan o dejar que el patrón los ponga: {nombre}

example.ovillo: 1 error

# OV805
error[OV805]: nada se llama tale, así que su valor no se puede poner
  --> example.ovillo:12:26
 12 |     en | Leave a tail of {tale}.
    |                          ^^^^^^ no se conoce
    = ayuda: darle un valor antes de las piezas: let tale = …

example.ovillo: 1 error

# OV806
aviso[OV806]: el texto en fr no se imprime: el patrón está en en y es
  --> example.ovillo:12:10
 12 |     fr | Laisser un bout.
    |          ^^^^^^^^^^^^^^^^ no es un idioma del patrón
    = ayuda: añadirlo a los idiomas del encabezado o quitar el texto

example.ovillo: 1 aviso

# OV807
aviso[OV807]: el texto dice htr, que es un nombre de los términos uk
  --> example.ovillo:10:24
 10 |     en | Pull the last htr tight.
    |                        ^^^ en los términos de este patrón: hdc
    = ayuda: escribir {hdc}: imprime el nombre que usa la página

example.ovillo: 1 aviso

# OV808
nota[OV808]: el texto dice sc, que en los otros términos es otro punto
  --> example.ovillo:10:24
 10 |     en | Pull the last sc tight.
    |                        ^^ queda así en todas las páginas
    = ayuda: escribir {sc}: imprime el nombre que usa la página y lo pone entre las abreviaturas

example.ovillo: 1 nota

# OV809
nota[OV809]: el texto en inglés da 30 cm sin pulgadas
  --> example.ovillo:10:26
 10 |     en | Leave a tail of 30 cm.
    |                          ^^^^^ en una sola unidad
    = ayuda: darle un nombre, let cabo = 30 cm, y escribir {cabo}: se imprimen las dos unidades

example.ovillo: 1 nota

# OV810
aviso[OV810]: el texto habla de la hilera 7, pero strip tiene 1
  --> example.ovillo:10:18
 10 |     en | Fold at row 7.
    |                  ^^^^^ no existe
    = ayuda: revisar el número; no cambia solo al añadir o quitar hileras

example.ovillo: 1 aviso

# OV811
aviso[OV811]: dos piezas tienen el título «Strip»
  --> example.ovillo:11:1
 11 | part second
    | ^^^^^^^^^^^ la segunda
  4 | part strip
    | ---------- la primera
    = ayuda: distinguirlas: derecha e izquierda, delantero y espalda; o tejer una pieza dos veces con make 2

example.ovillo: 1 aviso

# OV812
aviso[OV812]: strip se teje en hileras, pero el texto las llama de otra manera
  --> example.ovillo:10:18
 10 |     en | Fold at round 1.
    |                  ^^^^^^^ la otra palabra
    = ayuda: usar una sola palabra para cada cosa

example.ovillo: 1 aviso

# OV813
aviso[OV813]: la línea siguiente no da ningún aviso con el código OV608
 --> example.ovillo:1:1
 1 | meant OV608 en "one fan" es "un abanico"
   | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ no explica nada
   = ayuda: quitarla o ponerla justo antes de la línea que muestra el mensaje

example.ovillo: 1 aviso

# OV814
error[OV814]: la tipografía de las páginas no tiene ☃ (U+2603)
 --> example.ovillo:5:19
 5 |   title en "Strip ☃" es "Tira"
   |                   ^ no se puede imprimir
   = ayuda: escribirlo con letras, o quitarlo

example.ovillo: 1 error

# OV819
error[OV819]: en las páginas no caben etiquetas de HTML
  --> example.ovillo:10:15
 10 |     en | Wash <b>cold</b>.
    |               ^^^ saldría tal cual, o no saldría
    = ayuda: el énfasis se escribe *así* y un enlace [así](https://…); para el signo mismo, \<

example.ovillo: 1 error

# OV820
aviso[OV820]: legs es 1 en la talla S, y la palabra que le sigue está en plural: legs
  --> example.ovillo:12:17
 12 |     en | It has {legs} legs.
    |                 ^^^^^^^^^^^ saldría 1 legs
    = ayuda: dar las dos palabras, la del singular y la del plural: {legs|…|legs}

example.ovillo: 1 aviso

# OV821
error[OV821]: el texto en inglés dice 12 y el texto en español no
  --> example.ovillo:10:26
 10 |     en | Leave a tail of 12 loops, then cut.
    |                          ^^ solo en este idioma
 11 |     es | Dejar un cabo y cortar.
    |          ----------------------- no lo dice
    = ayuda: decir lo mismo en los dos idiomas o dejar que el patrón ponga el número: {nombre}

example.ovillo: 1 error

# OV822
aviso[OV822]: el texto dice vareta, un nombre del punto en el Río de la Plata
  --> example.ovillo:11:27
 11 |     es | Tensar la última vareta.
    |                           ^^^^^^ un nombre de otro país
    = ayuda: escribir {dc}: imprime el nombre que usa la página

example.ovillo: 1 aviso

# OV823
nota[OV823]: el texto dice pb, que en otros países se abrevia de otra manera
  --> example.ovillo:11:27
 11 |     es | Tensar el último pb.
    |                           ^^ queda así en todas las páginas
    = ayuda: escribir {sc}: imprime la abreviatura que usa la página y la pone en la lista

example.ovillo: 1 nota

# OV824
nota[OV824]: las tallas no tienen nombre en español: one size salen tal cual
 --> example.ovillo:1:1
 1 | sizes "one size"
   | ^^^^^^^^^^^^^^^^ en un solo idioma
   = ayuda: darles nombre, tantos como tallas: names es "…"

example.ovillo: 1 nota

