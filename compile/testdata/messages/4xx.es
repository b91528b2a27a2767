# OV401
error[OV401]: aquí hacen falta 12 lugares, pero en la hilera anterior solo quedan 10
  --> example.ovillo:14:10
 14 |   round: sc in next 12 = 12
    |          ^^^^^^^^^^^^^ se acaban los puntos
 13 |   chain 10, join
    |   -------------- lugares en los que tejer: 10
    = ayuda: tejer 10 aquí, o hacer más en la hilera anterior

example.ovillo: 1 error

# OV402
error[OV402]: al final de la vuelta sobran 2 lugares de la anterior
  --> example.ovillo:14:10
 14 |   round: sc in next 10 = 10
    |          ^^^^^^^^^^^^^ termina antes que la anterior
 13 |   chain 12, join
    |   -------------- lugares en los que tejer: 12
    = ayuda: tejer en ellos o decir qué pasa con ellos: sc in each, skip 2 o leave 2

example.ovillo: 1 error

# OV403
error[OV403]: hay un espacio de 2 cadenas en medio: se esperaba un punto
  --> example.ovillo:15:10
 15 |   round: sc in each
    |          ^^^^^^^^^^ da con un espacio de cadena
 14 |   round: sc in next 3, ch 2, sc in next 3 = 6 sts, 1 space
    |          -------------------------------- lugares en los que tejer: 7
    = ayuda: decir cómo cuentan los espacios: in each st and space, in each st and chain; o pasarlo con skip space

example.ovillo: 1 error

# OV404
error[OV404]: en lo que queda de la hilera anterior no hay ningún espacio de cadena
  --> example.ovillo:15:24
 15 |   round: sc in next 4, sc in next space, sc in each
    |                        ^^^^^^^^^^^^^^^^ busca un espacio
 14 |   round: sc in each = 6
    |          ---------- lugares en los que tejer: 6
    = ayuda: hacer uno en la hilera anterior con ch, o tejer aquí en los puntos

example.ovillo: 1 error

# OV405
error[OV405]: la repetición ocupa 3 lugares cada vez y no cuadra en 13
  --> example.ovillo:15:10
 15 |   round: [sc in next 2, ch 1, skip 1] around
    |          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ no se teje un número entero de veces
 14 |   round: sc in each = 13
    |          ---------- lugares en los que tejer: 13
    = ayuda: con 12 o 15 lugares cuadraría

example.ovillo: 1 error

# OV406
error[OV406]: lo que va entre corchetes no ocupa ningún lugar y se repetiría sin fin
  --> example.ovillo:15:22
 15 |   round: sc in next, [ch 1] around
    |                      ^^^^^^^^^^^^^ no avanza
    = ayuda: decir cuántas veces: [ … ] 6 times; o hacer que ocupe un lugar

example.ovillo: 1 error

# OV407
error[OV407]: quedan 4 lugares sin tejer ni saltar antes de m
  --> example.ovillo:16:10
 16 |   round: sc in m, sc in each
    |          ^^^^^^^ está más adelante
    = ayuda: tejer o saltar primero hasta allí: sc to m, o skip to m

example.ovillo: 1 error

# OV408
error[OV408]: el siguiente espacio es de 1 cadena y no el que se busca
  --> example.ovillo:15:10
 15 |   round: 3 sc in next space of 2, skip rest
    |          ^^^^^^^^^^^^^^^^^^^^^^^ antes hay otro tipo de espacio
 14 |   round: sc in next 3, ch 1, sc in next 3, ch 2 = 6 sts, 2 spaces
    |          -------------------------------------- lugares en los que tejer: 8
    = ayuda: tejer antes en ese espacio o saltarlo: skip space

example.ovillo: 1 error

# OV409
error[OV409]: aquí no hay ningún espacio entre dos puntos
  --> example.ovillo:15:8
 15 |   row: sc in this gap, sc in each
    |        ^^^^^^^^^^^^^^ no está entre dos puntos
    = ayuda: tejer en un punto o en el espacio

example.ovillo: 1 error

# OV410
error[OV410]: se querían dejar 6 puntos, pero quedan 8
  --> example.ovillo:15:23
 15 |   row: sc in next 12, leave 6
    |                       ^^^^^^^ no es lo que queda
 14 |   row: sc in each = 20
    |        ---------- lugares en los que tejer: 20
    = ayuda: escribir leave 8 o tejer más antes: leave rest deja lo que haya

example.ovillo: 1 error

# OV411
error[OV411]: una vuelta cerrada debe empezar con un punto, y esta empieza con cadenas
  --> example.ovillo:15:10
 15 |   round: ch 2, sc in each
    |          ^^^^^^^^^^^^^^^^ no tiene dónde cerrarse
    = ayuda: empezar con el punto en el que se cierra y poner las cadenas detrás

example.ovillo: 1 error

# OV412
error[OV412]: quedan 4 puntos sin tejer entre los extremos que se cierran
  --> example.ovillo:16:10
 16 |   round: sc in each = 8
    |          ^^^^^^^^^^ todavía no se puede cerrar
    = ayuda: tejer antes en ellos: sc in each left

example.ovillo: 1 error

# OV413
error[OV413]: en esta hilera aún no se ha tejido nada a lo que volver
  --> example.ovillo:15:10
 15 |   round: sc in same, sc in each
    |          ^^^^^^^^^^ no tiene nada delante
    = ayuda: nombrar un lugar: in next, in first

example.ovillo: 1 error

# OV414
error[OV414]: esto necesita una vuelta o un anillo, y aquí no hay ninguno
  --> example.ovillo:14:10
 14 |   round: 6 sc in ring = 6
    |          ^^^^^^^^^^^^ no encuentra anillo ni vuelta
    = ayuda: empezar la pieza con ring, o con chain 4, ring

example.ovillo: 1 error

# OV415
error[OV415]: los aumentos o disminuciones necesitan 12 puntos, pero solo hay 10
  --> example.ovillo:15:10
 15 |   round: dec 6 evenly
    |          ^^^^^^^^^^^^ no caben
 14 |   round: sc in each = 10
    |          ---------- lugares en los que tejer: 10
    = ayuda: hacer menos en esta hilera

example.ovillo: 1 error

# OV416
error[OV416]: aquí se indican 5, pero resultan 4
  --> example.ovillo:15:10
 15 |   round: [sc in next 2, inc] around = 5 times = 16
    |          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ se teje 4 veces
    = ayuda: indicar 4 o cambiar la hilera para que resulten 5

example.ovillo: 1 error

# OV417
error[OV417]: esto no puede ir dentro de un grupo que se teje en un solo lugar
  --> example.ovillo:15:15
 15 |   round: (sc, dec) in next, sc in each
    |               ^^^ no va en el mismo lugar
    = ayuda: ponerlo antes o después de los paréntesis

example.ovillo: 1 error

# OV418
error[OV418]: debajo de d no hay un solo lugar: allí un punto cierra varios juntos
  --> example.ovillo:16:20
 16 |   row: sc in each, sc below d
    |                    ^^^^^^^^^^ está sobre varios puntos
    = ayuda: tejer en el punto mismo o en su costado: beside d

example.ovillo: 1 error

# OV419
error[OV419]: las dos capas no coinciden: 6 lugares aquí, 4 en a
  --> example.ovillo:15:8
 15 |   row: sc through each and a
    |        ^^^^^^^^^^^^^^^^^^^^^ teje dos capas juntas
    = ayuda: llevar ambas al mismo número de lugares

example.ovillo: 1 error

# OV420
error[OV420]: debía ser el último 1, pero quedan 3
  --> example.ovillo:15:22
 15 |   row: sc in next 5, 2 sc in last
    |                      ^^^^^^^^^^^^ no es el final de la hilera
 14 |   row: sc in each = 8
    |        ---------- lugares en los que tejer: 8
    = ayuda: tejer antes hasta allí: sc to last 1

example.ovillo: 1 error

# OV421
error[OV421]: el patrón tendría más de 1000000 puntos en una talla
  --> example.ovillo:14:28
 14 |   2000 rows: 2 sc in next, sc in each = 3000
    |                            ^^^^^^^^^^ pasa de lo que se puede comprobar
    = ayuda: buscar un número con una cifra de más

example.ovillo: 1 error

# OV425
error[OV425]: lo que se reparte necesita 22 puntos, pero solo hay 20
  --> example.ovillo:15:8
 15 |   row: sc in each with [ch 2, skip 2] 5 times evenly after 4
    |        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ no cabe
 14 |   row: sc in each = 20
    |        ---------- lugares en los que tejer: 20
    = ayuda: repartir menos, o empezar más cerca del borde: after 2

example.ovillo: 1 error

# OV430
error[OV430]: 2 sc se lee de dos maneras: uno en cada uno de 2 lugares, o 2 en un lugar
  --> example.ovillo:15:10
 15 |   round: 2 sc, sc in each
    |          ^^^^ no dice cuál
    = ayuda: escribir sc in next 2, o 2 sc in next

example.ovillo: 1 error

# OV431
error[OV431]: aquí hay dos números que se leen de dos maneras
  --> example.ovillo:15:10
 15 |   round: dec in next 2, sc in each
    |          ^^^^^^^^^^^^^ ¿cuántos y dónde?
    = ayuda: decir una sola cosa: [dec] 3 times, dec around o 2 inc

example.ovillo: 1 error

# OV432
error[OV432]: inc necesita saber su punto, y la pieza no dice ninguno
 --> example.ovillo:9:10
 9 |   round: inc around
   |          ^^^ ¿de qué punto?
   = ayuda: decirlo una vez en la pieza o en el encabezado: base sc

example.ovillo: 1 error

# OV433
error[OV433]: together necesita el número de puntos que se cierran en uno, dos o más
  --> example.ovillo:15:10
 15 |   round: sc together, sc in each
    |          ^^^^^^^^^^^ ¿cuántos juntos?
    = ayuda: escribir 3 dc together, o dc3tog

example.ovillo: 1 error

# OV434
error[OV434]: solo se reparten inc y dec, no sc
  --> example.ovillo:15:10
 15 |   round: sc 2 evenly
    |          ^^^^^^^^^^^ no se puede repartir
    = ayuda: escribir inc 6 evenly, o dec 6 evenly

example.ovillo: 1 error

# OV435
error[OV435]: el grupo wave ya dice dónde van sus puntos
  --> example.ovillo:17:10
 17 |   round: wave in next
    |          ^^^^^^^^^^^^ no admite un lugar
    = ayuda: repetirlo: wave 4 times, o wave across

example.ovillo: 1 error

# OV436
error[OV436]: in each of a teje todo el tramo y no puede detenerse antes
  --> example.ovillo:15:26
 15 |   round: sc in each of a to last 2
    |                          ^^^^^^^^^ se detiene dentro del tramo
    = ayuda: quitar el límite o dar nombre a cada tramo

example.ovillo: 1 error

# OV437
error[OV437]: las 3 cadenas del comienzo no pueden contar aquí como punto, porque la hilera no empieza con un dc sencillo
  --> example.ovillo:16:8
 16 |   row: dec, dc in each
    |        ^^^ el primer punto de la hilera
    = ayuda: decir cómo empieza esta hilera: begin with ch 2

example.ovillo: 1 error

# OV438
error[OV438]: la pieza strip no dice cómo empieza
  --> example.ovillo:13:3
 13 |   round: sc in each = 6
    |   ^^^^^ empieza de la nada
    = ayuda: empezarla antes de su primera hilera: chain 40, ring, foundation sc 40, from PART.edge o start in PART.place

example.ovillo: 1 error

# OV439
error[OV439]: la pieza strip empieza dos veces
  --> example.ovillo:14:3
 14 |   ring
    |   ^^^^ un segundo comienzo
    = ayuda: dejar uno o hacer otra pieza

example.ovillo: 1 error

# OV440
error[OV440]: una pieza no puede empezar con 0 lugares
  --> example.ovillo:13:3
 13 |   chain 0, join
    |   ^^^^^^^^^^^^^ este número
    = ayuda: empezar con 1 por lo menos

example.ovillo: 1 error

# OV441
error[OV441]: 1000000 hileras son más de las que admite un patrón (20000)
  --> example.ovillo:15:3
 15 |   1000000 rounds: sc in each
    |   ^^^^^^^ este número
    = ayuda: buscar una cifra de más

example.ovillo: 1 error

# OV442
error[OV442]: rows for … necesita una longitud, y esto no lo es
  --> example.ovillo:15:14
 15 |   rounds for 12: sc in each
    |              ^^ no es una longitud
    = ayuda: darle una unidad: rounds for 21 cm; o un número delante: 21 rounds

example.ovillo: 1 error

# OV443
error[OV443]: la pieza ya mide 16,67 cm y debía medir 5 cm
  --> example.ovillo:19:13
 19 |   rounds to 5 cm: sc in each
    |             ^^^^ ya se pasó
    = tallas: S
    = ayuda: rows to … mide desde el comienzo de la pieza; rows for … añade una longitud

example.ovillo: 1 error

# OV444
error[OV444]: el gráfico tiene 2 hileras y se pide la 3
  --> example.ovillo:37:10
 37 |   round: from chart wave row 3 around
    |          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ no está en el gráfico
    = ayuda: pedir una hilera de 1 a 2

example.ovillo: 1 error

# OV445
error[OV445]: la marca o no está en la leyenda del gráfico
  --> example.ovillo:18:5
 18 |   | x . o .
    |     ^^^^^^^ lleva o
    = ayuda: añadirla a la leyenda o usar una de sus marcas

example.ovillo: 1 error

# OV446
error[OV446]: esta hilera del gráfico tiene 3 casillas y necesita 4
  --> example.ovillo:18:5
 18 |   | x . x
    |     ^^^^^ es de otro ancho
    = ayuda: dar a cada hilera 4 casillas, tantas como tiene la hilera 1, la de abajo

example.ovillo: 1 error

# OV447
error[OV447]: la hilera llega a más de 20000 instrucciones cuando se escriben sus grupos
 --> example.ovillo:4:36
 4 | group d = [c, c, c, c, c, c, c, c, c, c]
   |                                    ^ se escribe demasiadas veces
   = ayuda: repetir el grupo en lugar de nombrarlo otra vez: [c] 10 times

example.ovillo: 1 error

# OV448
error[OV448]: un punto propio ocupa uno o más lugares y hace hasta 100 puntos
 --> example.ovillo:2:3
 2 |   takes 0, makes 1
   |   ^^^^^^^^^^^^^^^^ no es así
   = ayuda: contar lo que ocupa de la hilera anterior y lo que deja para la siguiente: takes 1, makes 3

example.ovillo: 1 error

# OV450
error[OV450]: un plan necesita una hilera sencilla y una con aumentos o disminuciones
  --> example.ovillo:15:3
 15 |   shape taper: 6 rounds
    |   ^^^^^^^^^^^^^^^^^^^^^ falta una de ellas
    = ayuda: añadir una línea plain: … y una línea shaping: … o at BORDE: …

example.ovillo: 1 error

# OV451
error[OV451]: el plan no dice cuándo van las hileras con aumentos o disminuciones
  --> example.ovillo:15:3
 15 |   shape taper: 6 rounds
    |   ^^^^^^^^^^^^^^^^^^^^^ ¿cuándo?
    = ayuda: decir every 4 rounds 5 times, on rounds 3, 6, 9, o 56 to 40 tras el número de hileras

example.ovillo: 1 error

# OV452
error[OV452]: las hileras de un plan se enumeran de la primera a la última
  --> example.ovillo:18:18
 18 |     on rounds 4, 2
    |                  ^ va antes que la anterior de la lista
    = ayuda: ponerlas en orden

example.ovillo: 1 error

# OV453
error[OV453]: la cuenta cambia en -3, que no se alcanza en pasos de -2
  --> example.ovillo:15:26
 15 |   shape taper: 8 rounds, 12 to 9
    |                          ^^^^^^^ no cuadra
    = ayuda: elegir números cuya diferencia sea múltiplo de -2

example.ovillo: 1 error

# OV454
error[OV454]: los aumentos o disminuciones necesitan 4 hileras, y hay 3
  --> example.ovillo:15:26
 15 |   shape taper: 3 rounds, 20 to 12
    |                          ^^^^^^^^ no cabe
    = ayuda: dar más hileras o cambiar más puntos en cada una

example.ovillo: 1 error

# OV455
error[OV455]: el plan necesita 6 hileras, y hay 5
  --> example.ovillo:15:3
 15 |   shape taper: 5 rounds
    |   ^^^^^^^^^^^^^^^^^^^^^ es más largo que sus hileras
    = ayuda: dar 6 hileras o repetir menos veces

example.ovillo: 1 error

# OV456
error[OV456]: la hilera 4 lleva aumentos o disminuciones y muestra el revés, aunque el plan pide hileras del derecho
  --> example.ovillo:14:3
 14 |   shape taper: 8 rows, 20 to 16, on right-side rows
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ cae en el revés
    = ayuda: empezar el plan en una hilera del revés: row 1 is wrong side, o una hilera sencilla más antes

example.ovillo: 1 error

# OV457
error[OV457]: dar forma a un borde necesita una pieza en hileras que nombre sus dos bordes
  --> example.ovillo:17:5
 17 |     at neck: dec on row 1, then every 2 rows, 3 times
    |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ¿qué borde?
    = ayuda: decir qué borde encuentra primero una hilera del derecho: edges armhole, neck

example.ovillo: 1 error

# OV458
error[OV458]: el borde neck tiene dos planes a la vez
  --> example.ovillo:19:5
 19 |     at neck: dec on row 2, then every 2 rows, 3 times
    |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ un segundo plan para él
    = ayuda: nombrar el otro borde o tejer un plan tras otro

example.ovillo: 1 error

# OV459
error[OV459]: lo que se dice aquí no se puede leer desde el otro extremo, así que de ello no se puede sacar el reflejo de strip
  --> example.ovillo:15:22
 15 |   row: sc in next 3, sc in same, sc in each = 7
    |                      ^^^^^^^^^^ no tiene reflejo propio
    = ayuda: dar nombre a la hilera y escribir su reflejo con el mismo nombre en la pieza que refleja strip

example.ovillo: 1 error

# OV460
error[OV460]: el gráfico tiene 4 casillas de ancho y no cuadra en 10
  --> example.ovillo:35:27
 35 |   rounds from chart wave: sc by chart around = 10
    |                           ^^^^^^^^^^^^^^^^^^ acaba a mitad del gráfico
 34 |   chain 10, join
    |   -------------- lugares en los que tejer: 10
    = ayuda: con 8 o 12 puntos cuadraría

example.ovillo: 1 error

# OV461
error[OV461]: un gráfico de 4 casillas no queda centrado en 11 puntos
  --> example.ovillo:35:27
 35 |   rounds from chart wave: sc by chart centred around = 11
    |                           ^^^^^^^^^^^^^^^^^^^^^^^^^^ no se puede centrar
 34 |   chain 11, join
    |   -------------- lugares en los que tejer: 11
    = ayuda: en 10 o 12 puntos quedaría en el centro

example.ovillo: 1 error

# OV462
error[OV462]: 9 lugares no hacen un número entero de cuadros
  --> example.ovillo:21:3
 21 |   rows from chart net
    |   ^^^^^^^^^^^^^^^^^^^ acaba a mitad de un cuadro
 20 |   row: dc in each = 9
    |        ---------- lugares en los que tejer: 9
    = ayuda: con 7 o 10 lugares cuadraría

example.ovillo: 1 error

# OV463
error[OV463]: el gráfico tiene 2 cuadros de ancho y aquí hay 3
  --> example.ovillo:21:3
 21 |   rows from chart net
    |   ^^^^^^^^^^^^^^^^^^^ acaba a mitad del gráfico
 20 |   row: dc in each = 10
    |        ---------- lugares en los que tejer: 10
    = ayuda: dibujar el gráfico de 3 cuadros, o hacer la hilera anterior de 2 cuadros o del doble

example.ovillo: 1 error

# OV464
error[OV464]: esta hilera del gráfico lleva el número 2, pero desde abajo es la 1
  --> example.ovillo:19:7
 19 |   2 | x . . x
    |       ^^^^^^^ no es la hilera 2
    = ayuda: numerar las hileras hacia arriba desde 1; la de abajo es la 1, porque se teje primero

example.ovillo: 1 error

# OV465
error[OV465]: solid no es ningún cuadro de malla
 --> example.ovillo:3:24
 3 |   legend "." open, "x" solid
   |                        ^^^^^ ni abierto ni lleno
   = ayuda: escribir open o filled: legend "." open, "x" filled

example.ovillo: 1 error

# OV466
error[OV466]: un cuadro es un punto sencillo y de 1 a 100 lugares tras él, igual en todas las tallas
 --> example.ovillo:2:3
 2 |   mesh dc and 0
   |   ^^^^^^^^^^^^^ no hace ningún cuadro
   = ayuda: escribir mesh dc and 2

example.ovillo: 1 error

# OV467
error[OV467]: aquí se teje algo según un gráfico, y la hilera no sale de ninguno
  --> example.ovillo:36:13
 36 |   round: sc by chart around
    |             ^^^^^^^^ ¿según cuál?
    = ayuda: nombrarlo antes de los dos puntos: rounds from chart wave: sc by chart around; o aquí: from chart wave row 4 around

example.ovillo: 1 error

# OV468
error[OV468]: según un gráfico va un punto en cada punto, con el hilo de su casilla, y esto dice otra cosa
  --> example.ovillo:35:27
 35 |   rounds from chart wave: 2 sc by chart around = 8
    |                           ^^^^^^^^^^^^^^^^^^^^ no se puede tejer según el gráfico
    = ayuda: escribir sc by chart around, sc by chart to last 2 o sc by chart in next 8

example.ovillo: 1 error

# OV469
error[OV469]: en estas hileras no se teje nada según el gráfico wave
  --> example.ovillo:35:3
 35 |   rounds from chart wave: sc around = 8
    |   ^^^^^^^^^^^^^^^^^^^^^^ de un gráfico que no se usa
    = ayuda: decir qué puntos siguen el gráfico: sc by chart around

example.ovillo: 1 error

# OV428
error[OV428]: una malla se teje según el gráfico cuadro a cuadro, solo en dc
  --> example.ovillo:21:24
 21 |   rows from chart net: tr by chart across
    |                        ^^^^^^^^^^^^^^^^^^ así no se tejen cuadros
    = ayuda: escribir dc by chart across, dc by chart to last 2, o no poner lista

example.ovillo: 1 error

# OV429
error[OV429]: el gráfico tiene 4 columnas y se pide la 5
  --> example.ovillo:35:51
 35 |   rounds from chart wave: sc by chart from column 5 around = 8
    |                                                   ^ no está en el gráfico
    = ayuda: pedir una columna de 1 a 4, contadas desde la derecha

example.ovillo: 1 error

# OV427
error[OV427]: las 3 cadenas que se saltan cuentan como el primer dc y son de sand, donde el gráfico pide kelp
  --> example.ovillo:35:25
 35 |   rows from chart wave: dc by chart across = 8
    |                         ^^^^^^^^^^^^^^^^^^ empieza en la propia cadena
    = ayuda: tejer antes una hilera sencilla, o que las cadenas no cuenten: row, begin with ch 3

example.ovillo: 1 error

# OV422
error[OV422]: un gráfico de las hileras de strip dice qué hileras se dibujan y cuánto de ellas
  --> example.ovillo:17:1
 17 | chart rows_drawn of strip
    | ^^^^^^^^^^^^^^^^^^^^^^^^^ dice otra cosa
    = ayuda: decir o bien stitches o bien repeats

example.ovillo: 1 error

# OV423
error[OV423]: strip no tiene la hilera 9 que se quiere dibujar; la última es la 3
  --> example.ovillo:18:3
 18 |   rows 1 to 9
    |   ^^^^^^^^^^^ no están todas
    = ayuda: dibujar hileras que la pieza tenga

example.ovillo: 1 error

# OV424
error[OV424]: lugares en los que se teje la hilera más baja que se dibuja: 12
  --> example.ovillo:18:3
 18 |   stitches 3 to 40
    |   ^^^^^^^^^^^^^^^^ van más allá
    = ayuda: contar desde la derecha, desde 1 hasta ese número

example.ovillo: 1 error

# OV426
error[OV426]: las hileras tienen 2 repeticiones iguales, no 8
  --> example.ovillo:18:3
 18 |   repeats 8
    |   ^^^^^^^^^ no se pueden dibujar
    = ayuda: dibujar las repeticiones que hay, o decir qué puntos: stitches 1 to 13

example.ovillo: 1 error

# OV449
error[OV449]: el gráfico tendría 45590 puntos; como mucho pueden ser 40000
  --> example.ovillo:17:1
 17 | chart all_of_it of strip
    | ^^^^^^^^^^^^^^^^^^^^^^^^ es demasiado grande para leerlo
    = ayuda: dibujar menos hileras, o menos de cada una: repeats 2, stitches 1 to 40

example.ovillo: 1 error

# OV488
error[OV488]: wave es una cuadrícula de signos y no dibuja hileras de una pieza
  --> example.ovillo:19:3
 19 |   rows 1 to 2
    |   ^^^^^^^^^^^ es de un gráfico de una pieza
    = ayuda: empezar un gráfico aparte: chart wave_stitches of body

example.ovillo: 1 error

# OV497
error[OV497]: ya se dijo qué muestra el esquema
  --> example.ovillo:21:1
 21 | schematic strip
    | ^^^^^^^^^^^^^^^ otra línea para lo mismo
    = ayuda: nombrar todas las piezas en una línea: schematic body, sleeve

example.ovillo: 1 error

# OV498
error[OV498]: strip está dos veces en la línea
  --> example.ovillo:20:18
 20 | schematic strip, strip
    |                  ^^^^^ la segunda vez
    = ayuda: nombrarla una vez

example.ovillo: 1 error

# OV499
error[OV499]: al esquema no le queda nada que mostrar
  --> example.ovillo:20:1
 20 | schematic without strip
    | ^^^^^^^^^^^^^^^^^^^^^^^ deja fuera todas las piezas
    = ayuda: dejar fuera menos piezas

example.ovillo: 1 error

# OV470
error[OV470]: lo que se reparte necesita puntos sencillos alrededor, uno en cada lugar
  --> example.ovillo:15:22
 15 |   row: sc in next 20 with [ch 2, skip 2] 3 times evenly
    |                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ no tiene puntos sencillos alrededor
    = ayuda: empezar con el punto que va entre medias: sc in each with [ … ] 5 times evenly

example.ovillo: 1 error

# OV471
error[OV471]: no se puede saber cuántos lugares ocupa ch 2, así que no se puede repartir
  --> example.ovillo:15:25
 15 |   row: sc in each with [ch 2] 3 times evenly
    |                         ^^^^ no ocupa un número fijo de lugares
    = ayuda: hacer que ocupe un número de puntos: [ch 2, skip 2], [dc5tog]

example.ovillo: 1 error

# OV472
error[OV472]: fans cuadra con un multiple of 6 plus 1, y hay 15 puntos
  --> example.ovillo:21:13
 21 |   4 rows of fans = 15
    |             ^^^^ no cuadra con estos puntos
    = ayuda: servirían 13 o 19 puntos

example.ovillo: 1 error

# OV473
error[OV473]: 3 hileras de fans terminan tras su hilera 1, y solo puede terminar tras 2
  --> example.ovillo:21:3
 21 |   3 rows of fans
    |   ^^^^^^^^^^^^^^ termina donde no puede
    = ayuda: servirían 2 o 4 hileras

example.ovillo: 1 error

# OV474
error[OV474]: esta sería la hilera 2 de fans
 --> example.ovillo:3:7
 3 |   row 3: dc in each
   |       ^ no es la número 2
   = ayuda: numerar las hileras 1, 2, 3 según se tejen

example.ovillo: 1 error

# OV475
error[OV475]: la puntada fans no tiene hileras
 --> example.ovillo:1:1
 1 | stitch pattern fans
   | ^^^^^^^^^^^^^^^^^^^ no hay nada que tejer
   = ayuda: darle alguna: row 1: sc in each

example.ovillo: 1 error

# OV476
error[OV476]: fans solo tiene las hileras 1 a 2
 --> example.ovillo:4:17
 4 |   may end after 4
   |                 ^ no es ninguna de ellas
   = ayuda: nombrar una hilera suya, de 1 a 2

example.ovillo: 1 error

# OV477
error[OV477]: solo las hileras de una puntada se retoman desde cierta hilera
  --> example.ovillo:14:8
 14 |   row, from row 1: sc in each = 13
    |        ^^^^^^^^^^ solo vale para una puntada
    = ayuda: nombrar la puntada: 4 rows of fans, from row 1; o quitarlo

example.ovillo: 1 error

# OV478
error[OV478]: ningún número de hileras de fans termina tras 2 como se pide
  --> example.ovillo:25:3
 25 |   rows of fans for 10 cm, odd
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^ pide un final que no existe
    = ayuda: quitar even, odd o ending, o dejar que termine también tras otra hilera

example.ovillo: 1 error

# OV479
error[OV479]: una repetición de cero puntos no es una repetición
 --> example.ovillo:2:3
 2 |   multiple of 0 plus 1
   |   ^^^^^^^^^^^^^^^^^^^^ necesita 1 o más
   = ayuda: decir cuántos puntos ocupa una repetición: multiple of 6 plus 1

example.ovillo: 1 error

# OV490
error[OV490]: picot va solo: un piquito se hace sobre el punto anterior
  --> example.ovillo:15:25
 15 |   round: [sc in next 2, picot in next] 2 times
    |                         ^^^^^^^^^^^^^ no tiene lugar propio
    = ayuda: escribirlo entre comas: sc in next 3, picot. Otro tamaño es ch4picot

example.ovillo: 1 error

# OV491
error[OV491]: dc3puff no es un grupo: puff se hace con 2 a 20 hdc
  --> example.ovillo:15:10
 15 |   round: dc3puff in each
    |          ^^^^^^^ no se puede hacer
    = ayuda: el número va entre el punto y el grupo: dc3cl, dc5bob, dc5pop, hdc3puff, dc5shell, ch4picot

example.ovillo: 1 error

# OV492
error[OV492]: dc3cl se hace con otro punto, y aquí va un punto sencillo
  --> example.ovillo:13:8
 13 |   base dc3cl
    |        ^^^^^ no es un punto sencillo
    = ayuda: nombrar solo el punto: sc, hdc, dc

example.ovillo: 1 error

# OV493
error[OV493]: una hilera de rsc se teje en el otro sentido, así que no admite otros puntos
  --> example.ovillo:15:25
 15 |   round: rsc in next 3, sc in next 3
    |                         ^^^^^^^^^^^^ va en el sentido de siempre
    = ayuda: tejer toda la hilera en rsc, o este punto en una hilera aparte

example.ovillo: 1 error

# OV496
error[OV496]: lo que se cierra junto son dos o más puntos de una clase, con saltos entre ellos y nada más
  --> example.ovillo:15:11
 15 |   round: [sc in next, dc in next] together, sc in each
    |           ^^^^^^^^^^^^^^^^^^^^^^ no se puede cerrar en uno
    = ayuda: escribir sus puntos uno por uno: [dc in next, skip 2, dc in next space] together

example.ovillo: 1 error

# OV495
error[OV495]: sc2tog cierra puntos de 2 lugares, y un espacio es uno: ¿todos en el mismo espacio o uno en cada uno de 2?
  --> example.ovillo:15:22
 15 |   round: sc in next, sc2tog in next space, sc in each st and space
    |                      ^^^^^^^^^^^^^^^^^^^^ no dice cuál
    = ayuda: escribir [sc in next 2 spaces] together, o sc2cl in next space

example.ovillo: 1 error

# OV480
error[OV480]: los motivos unidos necesitan dos líneas: cuántos son y dónde se unen
  --> example.ovillo:18:1
 18 | motifs throw of strip
    | ^^^^^^^^^^^^^^^^^^^^^ falta una de ellas
    = ayuda: escribir 3 across, 4 down y joined in round 2: at each corner, sl st in place of 1 ch

example.ovillo: 1 error

# OV481
error[OV481]: hay al menos un motivo a lo ancho y uno a lo largo, y 10000 en total como mucho
  --> example.ovillo:20:3
 20 |   0 across, 3 down
    |   ^^^^^^^^^^^^^^^^ tantos no se pueden disponer
    = ayuda: decir cuántos motivos van lado a lado y cuántas filas de ellos hay

example.ovillo: 1 error

# OV482
error[OV482]: los motivos se unen en su última vuelta, que en strip es la 2
  --> example.ovillo:21:19
 21 |   joined in round 1: at each corner and each side, sl st in place of 1 ch
    |                   ^ no es la última vuelta
    = ayuda: unir en la última vuelta, o acabar el motivo con la que se une

example.ovillo: 1 error

# OV483
error[OV483]: strip no termina con una vuelta por el derecho
  --> example.ovillo:20:30
 20 |   joined in round 1: at each corner and each side, sl st in place of 1 ch
    |                              ^^^^^^ se une en esa vuelta
    = ayuda: tejer el motivo en vueltas cerradas

example.ovillo: 1 error

# OV484
error[OV484]: la última vuelta de strip tiene 3 lugares llamados corner, y hacen falta cuatro esquinas que sean espacios de cadena
  --> example.ovillo:20:30
 20 |   joined in round 1: at each corner, sl st in place of 1 ch
    |                              ^^^^^^ no está en cuatro esquinas
    = ayuda: dar el nombre a las cadenas de las cuatro esquinas de esa vuelta y ponerlo el primero

example.ovillo: 1 error

# OV485
error[OV485]: los cuatro lados de la última vuelta de strip no son iguales
  --> example.ovillo:20:30
 20 |   joined in round 1: at each corner, sl st in place of 1 ch
    |                              ^^^^^^ divide la vuelta en lados distintos
    = ayuda: tejer los mismos puntos y espacios entre cada dos esquinas

example.ovillo: 1 error

# OV486
error[OV486]: una unión sustituye 2 cadenas, y side tiene 1
  --> example.ovillo:21:3
 21 |   joined in round 2: at each corner and each side, sl st in place of 2 ch
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ une un espacio demasiado pequeño
    = ayuda: hacer espacios más largos o sustituir menos cadenas

example.ovillo: 1 error

# OV487
error[OV487]: la última vuelta de strip, tal como está escrita, no se puede dividir en lados unidos y lados libres
  --> example.ovillo:21:3
 21 |   joined in round 2: at each corner, sl st in place of 1 ch
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ habría que unir 4 y se llega a 1
    = ayuda: poner los nombres en las propias cadenas, una esquina tras otra: [(2 dc, ch 2 as corner, 2 dc) in next corner, ch 1 as side] 4 times

example.ovillo: 1 error

# OV489
error[OV489]: el lado de un motivo es una longitud
  --> example.ovillo:21:8
 21 |   each 12
    |        ^^ no es una longitud
    = ayuda: escribirlo con su unidad: each 12 cm

example.ovillo: 1 error

# OV494
error[OV494]: no se puede saber cuánto mide throw, porque no se dice el tamaño de sus motivos
  --> example.ovillo:25:11
 25 |   width = width of throw
    |           ^^^^^^^^^^^^^^ mide tantos motivos de ancho o de largo
    = ayuda: decir cuánto mide el lado de uno, en el bloque de throw: each 12 cm

example.ovillo: 1 error

