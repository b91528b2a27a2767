# OV801
error[OV801]: falta el texto en es
  --> example.ovillo:12:3
 12 |   call strip en "the strip"
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^ le falta un idioma
    = ayuda: añadirlo o decir al comienzo los idiomas del patrón: languages es

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
  --> example.ovillo:11:10
 11 |     es | Dejar un cabo de 20 cm.
    |          ^^^^^^^^^^^^^^^^^^^^^^^ tiene 20
 10 |     en | Leave a tail of 30 cm.
    |          ---------------------- tiene 30
    = ayuda: hacer que coincidan o dejar que el patrón los ponga: {name}

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
    = ayuda: añadirlo a los idiomas del comienzo o quitar el texto

example.ovillo: 1 aviso

