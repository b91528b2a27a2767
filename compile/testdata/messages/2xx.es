# OV201
error[OV201]: leg ya existe
 --> example.ovillo:2:5
 2 | let leg = 12
   |     ^^^ otro con ese nombre
 1 | let leg = 10
   |     --- el primero
   = ayuda: dar otro nombre a uno de los dos

example.ovillo: 1 error

# OV202
error[OV202]: aquí nada se llama rym
  --> example.ovillo:15:24
 15 |   round: sc in each of rym, sc in each
    |                        ^^^ no se conoce
    = ayuda: parecidos: rim

example.ovillo: 1 error

# OV203
error[OV203]: hcd no es un punto en los términos us
  --> example.ovillo:14:10
 14 |   round: hcd in each = 6
    |          ^^^ no es un punto
    = ayuda: parecidos: hdc

example.ovillo: 1 error

# OV204
error[OV204]: no hay ningún hilo kelb
  --> example.ovillo:23:8
 23 |   yarn kelb
    |        ^^^^ no está descrito
    = ayuda: parecidos: kelp

example.ovillo: 1 error

# OV205
error[OV205]: antes de esta línea no hay ninguna pieza strap
  --> example.ovillo:17:17
 17 | part other like strap
    |                 ^^^^^ no es una pieza
    = ayuda: parecidas: strip

example.ovillo: 1 error

# OV206
error[OV206]: no hay ninguna talla "L"
  --> example.ovillo:15:8
 15 |   only "L"
    |        ^^^ no es una talla
    = ayuda: las tallas son S y M

example.ovillo: 1 error

# OV207
aviso[OV207]: la hilera first no sustituye nada: strip no tiene ninguna con ese nombre
  --> example.ovillo:20:3
 20 |   round first: sc in each = 6
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^ se teje además de las otras
    = ayuda: dar ese nombre a la hilera de strip o quitarlo aquí

example.ovillo: 1 aviso

# OV208
error[OV208]: el grupo wave se contiene a sí mismo
 --> example.ovillo:1:27
 1 | group wave = [sc in next, wave]
   |                           ^^^^ vuelve a sí mismo
   = ayuda: escribir lo que debe contener

example.ovillo: 1 error

# OV210
error[OV210]: el patrón no nombra ninguna talla
 --> example.ovillo:1:1
 1 | part strip
   | ^^^^^^^^^^ falta la línea sizes
   = ayuda: añadir, aunque sea una sola: sizes "única" … end

example.ovillo: 1 error

# OV211
error[OV211]: la talla "S" aparece dos veces
 --> example.ovillo:1:12
 1 | sizes "S", "S"
   |            ^^^ otra vez
   = ayuda: nombrar cada talla una vez

example.ovillo: 1 error

# OV212
error[OV212]: 25 tallas son más de las que admite un patrón (24)
 --> example.ovillo:1:1
 1 | sizes "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16", "17", "…
   | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ demasiadas
   = ayuda: repartirlas en dos patrones

example.ovillo: 1 error

# OV219
error[OV219]: hay 1001 medidas en un solo archivo, y caben 1000 como mucho
 --> example.ovillo:4:1
 4 | measure
   | ^^^^^^^ con esto ya sobran
   = ayuda: repartir el archivo en varios patrones, que pueden usar un archivo común y reunirse en un libro

example.ovillo: 1 error

# OV213
error[OV213]: hay 1 nombre para 2 tallas
 --> example.ovillo:2:3
 2 |   names es "P"
   |   ^^^^^^^^^^^^ un nombre por talla
   = ayuda: dar 2 nombres, en el orden de las tallas

example.ovillo: 1 error

# OV214
error[OV214]: esy no es un nivel
 --> example.ovillo:3:9
 3 |   level esy
   |         ^^^ no es un nivel
   = ayuda: parecidos: easy

example.ovillo: 1 error

# OV215
error[OV215]: uu no es una lectura de los nombres de puntos
 --> example.ovillo:3:9
 3 |   terms uu
   |         ^^ no se conoce
   = ayuda: las lecturas son us y uk

example.ovillo: 1 error

# OV216
error[OV216]: "3/2026" no es la fecha de una edición
 --> example.ovillo:3:14
 3 |   edition 2, "3/2026"
   |              ^^^^^^^^ se esperaba "2026-03" o "2026-03-31"
   = ayuda: escribir el año, el mes y, si hace falta, el día, separados por guiones

example.ovillo: 1 error

# OV217
error[OV217]: el patrón no tiene ninguna pieza que tejer
 --> example.ovillo:1:1
 1 | pattern band
   | ^^^^^^^^^^^^ falta la pieza
   = ayuda: añadir lo que se teje: part NOMBRE … end

example.ovillo: 1 error

# OV230
error[OV230]: el nombre "../hat.ovillo" sale de la carpeta del libro
 --> example.ovillo:3:11
 3 |   pattern "../hat.ovillo"
   |           ^^^^^^^^^^^^^^^ no es un nombre dentro de ella
   = ayuda: poner los patrones junto al libro o en carpetas de ahí, y nombrarlos así: pattern "hat.ovillo", pattern "hats/hat.ovillo"

example.ovillo: 1 error

# OV231
error[OV231]: no hay ningún patrón "Hat.ovillo" junto al libro
 --> example.ovillo:3:11
 3 |   pattern "Hat.ovillo"
   |           ^^^^^^^^^^^^ este archivo no se encontró
   = ayuda: poner ahí el archivo, o escribir su nombre tal como es, con mayúsculas y terminación

example.ovillo: 1 error

# OV232
error[OV232]: el patrón "locked.ovillo" no se puede leer
 --> example.ovillo:3:11
 3 |   pattern "locked.ovillo"
   |           ^^^^^^^^^^^^^^^ es el que va en el libro
   = ayuda: comprobar que el nombre es el de un archivo y que se puede abrir

example.ovillo: 1 error

# OV233
error[OV233]: "faulty.ovillo" no puede ir en el libro tal como está
 --> example.ovillo:3:11
 3 |   pattern "faulty.ovillo"
   |           ^^^^^^^^^^^^^^^ este patrón tiene fallos
   = ayuda: corregir lo que ovillo check dice de ese archivo

example.ovillo: 1 error

# OV234
error[OV234]: el libro no tiene ningún patrón
 --> example.ovillo:1:1
 1 | book sea_set
   | ^^^^^^^^^^^^ aquí falta un patrón
   = ayuda: nombrar sus patrones, en orden: pattern "hat.ovillo"

example.ovillo: 1 error

# OV235
error[OV235]: "english.ovillo" no está escrito en «es», que es un idioma del libro
 --> example.ovillo:4:11
 4 |   pattern "english.ovillo"
   |           ^^^^^^^^^^^^^^^^ a este patrón le falta
   = ayuda: añadir al patrón los textos de ese idioma, o decir qué idiomas tiene el libro: languages en

example.ovillo: 1 error

# OV236
error[OV236]: "british.ovillo" lee los nombres de los puntos de otra manera que el primer patrón del libro
 --> example.ovillo:4:11
 4 |   pattern "british.ovillo"
   |           ^^^^^^^^^^^^^^^^ otros términos
   = ayuda: escribir todos los patrones de un libro con los mismos términos: terms us o terms uk

example.ovillo: 1 error

# OV237
error[OV237]: junto a un libro no puede haber nada más en el archivo
 --> example.ovillo:6:1
 6 | let waist = 40
   | ^^^^^^^^^^^^^^ esto es propio de un patrón
   = ayuda: ponerlo en un patrón, o en un archivo común que los patrones toman con use

example.ovillo: 1 error

# OV220
aviso[OV220]: del gráfico wave no se teje ninguna hilera
  --> example.ovillo:16:1
 16 | chart wave
    | ^^^^^^^^^^ no sale en las páginas
    = ayuda: tejer hileras según él, rows from chart wave: sc by chart across, o quitar su bloque

example.ovillo: 1 aviso

# OV218
error[OV218]: throw son motivos unidos y no tiene hileras propias que dibujar
  --> example.ovillo:24:21
 24 | chart plan_drawn of throw
    |                     ^^^^^ no tiene hileras
    = ayuda: dibujar el motivo: chart strip_drawn of strip

example.ovillo: 1 error

