# OV543
error[OV543]: unas rayas sin hileras no son rayas
  --> example.ovillo:24:3
 24 |   stripes kelp 0
    |   ^^^^^^^^^^^^^^ no tiene hileras
    = ayuda: decir cuántas hileras tiene cada hilo: stripes sand 2, kelp 2

example.ovillo: 1 error

# OV544
error[OV544]: aquí no hay puntos que se puedan seguir como se presentan
  --> example.ovillo:14:8
 14 |   row: as established = 12
    |        ^^^^^^^^^^^^^^ está sobre cadenas
    = ayuda: tejer antes una hilera de puntos: dc in each

example.ovillo: 1 error

# OV545
error[OV545]: un punto en relieve rodea el cuerpo de otro punto, y aquí no hay ninguno
  --> example.ovillo:14:12
 14 |   2 rows: [fphdc, bphdc] across = 12
    |            ^^^^^ no se teje sobre ningún punto
    = ayuda: tejer aquí hdc, y los puntos en relieve desde la hilera siguiente

example.ovillo: 1 error

# OV530
error[OV530]: strip no tiene un borde lateral llamado front
  --> example.ovillo:25:8
 25 |   from front edge of strip
    |        ^^^^^ ¿de qué lado?
    = ayuda: escribir right o left

example.ovillo: 1 error

# OV531
error[OV531]: aquí no hay extremos de hilera de strip en los que tejer
  --> example.ovillo:25:8
 25 |   from right edge of strip rows 30 to 40
    |        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ hace falta 1, hay 0
    = ayuda: nombrar hileras que la pieza teje de ida y vuelta

example.ovillo: 1 error

# OV532
error[OV532]: una proporción son dos números enteros, iguales en todas las tallas
  --> example.ovillo:25:28
 25 |   from right edge of strip at 4 (5) per 3 rows
    |                            ^^^^^^^^^^^^^^^^^^^ ¿cuántos por cuántas hileras?
    = ayuda: escribir at 4 per 3 rows, o by gauge

example.ovillo: 1 error

# OV533
error[OV533]: no se puede calcular la proporción: hdc no tiene muestra
  --> example.ovillo:25:28
 25 |   from right edge of strip by gauge
    |                            ^^^^^^^^ ¿con qué muestra?
    = ayuda: añadir hdc a gauge, o decir la proporción: at 4 per 3 rows

example.ovillo: 1 error

# OV534
error[OV534]: strip no es una pieza plana de cuatro lados
  --> example.ovillo:18:15
 18 |   from around strip
    |               ^^^^^ no se puede rodear
    = ayuda: comenzar en su última vuelta: from strip.edge

example.ovillo: 1 error

# OV535
error[OV535]: strip.thumb no es una abertura con cadenas por encima
  --> example.ovillo:21:15
 21 |   from around strip.thumb
    |               ^^^^^^^^^^^ no se puede rodear
    = ayuda: hacer las cadenas donde se saltan los lugares: ch 4, skip 4 as thumb

example.ovillo: 1 error

# OV536
error[OV536]: top no tiene extremos de hilera ni cadenas nuevas: no puede llevar puntos de más ni de menos
  --> example.ovillo:25:73
 25 |   from strip.edge as top, right edge of strip as side, multiple of 4 by top
    |                                                                         ^^^ no se puede cambiar
    = ayuda: nombrar un tramo de un borde lateral: right edge of front as top

example.ovillo: 1 error

# OV537
error[OV537]: este borde no se puede llevar a 15 en S lugares: tiene 22 en S, y los tramos que pueden cambiar son demasiado cortos
  --> example.ovillo:25:61
 25 |   from strip.edge, right edge of strip rows 1 to 2 as side, multiple of 15 by side
    |                                                             ^^^^^^^^^^^^^^^^^^^^^^ no se alcanza
    = tallas: S
    = ayuda: nombrar un tramo más largo detrás de by, o elegir un múltiplo menor

example.ovillo: 1 error

# OV538
error[OV538]: de este borde hay que unir 60 en S, 72 en M lugares, y se unieron 58 en S, 70 en M
  --> example.ovillo:24:45
 24 |     row: sc blo in each, sl st in next 2 of strip.edge
    |                                             ^^^^^^^^^^ no está unido hasta el final
    = ayuda: tejer tantas hileras como pida el borde entero, o nombrar un tramo más corto

example.ovillo: 1 error

# OV539
error[OV539]: aquí hacen falta los 2 lugares siguientes de edge, y quedan 0
  --> example.ovillo:24:26
 24 |     row: sc blo in each, sl st in next 2 of strip.edge
    |                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ pasa del final de ese borde
    = ayuda: tejer menos hileras, o tomar menos lugares en cada una

example.ovillo: 1 error

# OV540
error[OV540]: no hay nada que contar: count of gap
  --> example.ovillo:15:10
 15 |   repeat count of gap times
    |          ^^^^^^^^^^^^ no existe en este punto
    = ayuda: contar lo que una hilera anterior hizo o saltó con un nombre, precedido de su pieza si es otra: count of yoke.sleeve

example.ovillo: 1 error

# OV501
error[OV501]: m ya quedó atrás
  --> example.ovillo:16:24
 16 |   round: sc in next 4, sc to m
    |                        ^^^^^^^ llega hasta un lugar que ya se pasó
    = ayuda: detenerse allí antes en la hilera

example.ovillo: 1 error

# OV502
error[OV502]: a no está en el borde sobre el que se teje
  --> example.ovillo:16:10
 16 |   round: sc to a, sc in each
    |          ^^^^^^^ aquí no aparece
    = ayuda: tejer en él por su nombre o ponerlo en la hilera anterior

example.ovillo: 1 error

# OV503
error[OV503]: m se usa antes de ponerlo
  --> example.ovillo:14:10
 14 |   round: sc to m, sc in each
    |          ^^^^^^^ todavía no existe
    = ayuda: ponerlo en una hilera anterior o contarlo con count off

example.ovillo: 1 error

# OV504
error[OV504]: a designa 4 lugares y hace falta uno
  --> example.ovillo:15:10
 15 |   round: sc in a, sc in each
    |          ^^^^^^^ nombra varios lugares
    = ayuda: decir cuál: a.1, a.first, a.last; o in each of a

example.ovillo: 1 error

# OV505
error[OV505]: el marcador m perdió su lugar en una hilera anterior
  --> example.ovillo:17:10
 17 |   round: sc to m, sc in each
    |          ^^^^^^^ ya no está
    = ayuda: donde se hacen varios puntos en el marcado, decir a cuál pasa: move m to the middle one

example.ovillo: 1 error

# OV506
error[OV506]: 2 puntos no tienen uno en el centro
  --> example.ovillo:16:30
 16 |   round: sc to m, 2 sc in m, move m to the middle one, sc in each
    |                              ^^^^^^^^^^^^^^^^^^^^^^^^ no tiene centro
    = ayuda: tejer allí un número impar, o moverlo con to the first one o to the last one

example.ovillo: 1 error

# OV507
error[OV507]: el marcador m ya está colocado
  --> example.ovillo:16:22
 16 |   round: sc in next, mark m, sc in each
    |                      ^^^^^^ lo coloca otra vez
    = ayuda: move m, o dar otro nombre al segundo marcador

example.ovillo: 1 error

# OV508
error[OV508]: el marcador m va en el punto siguiente, y la hilera ya no hace ninguno
  --> example.ovillo:14:22
 14 |   round: sc in each, mark m in next
    |                      ^^^^^^^^^^^^^^ no tiene punto en el que ir
    = ayuda: ponerlo después del punto que lo lleva: mark m; o entre dos puntos: mark m before next

example.ovillo: 1 error

# OV510
error[OV510]: de los 4 lugares de hole solo se tejen después 2
  --> example.ovillo:15:44
 15 |   round: sc in next 4, ch 4 as gap, skip 4 as hole, sc in each = 8 sts, 1 space
    |                                            ^^^^^^^ se teje en parte
    = ayuda: tejer en todos: sc in each of hole

example.ovillo: 1 error

# OV511
aviso[OV511]: los 4 lugares saltados como hole no se tejen nunca: queda una abertura
  --> example.ovillo:15:44
 15 |   round: sc in next 4, ch 4 as gap, skip 4 as hole, sc in each = 8 sts, 1 space
    |                                            ^^^^^^^ queda abierto
    = ayuda: tejer después en él o quitar el nombre si el salto se quiere así

example.ovillo: 1 aviso

# OV512
error[OV512]: aquí se hace una cadena nueva, pero strip dejó sobre hole otra, en cuyo lado libre no se teje nada
  --> example.ovillo:21:8
 21 |   from chain 4, strip.hole
    |        ^^^^^^^ una segunda cadena sobre una abertura
 15 |   round: sc in next 4, ch 4 as gap, skip 4 as hole, sc in each = 8 sts, 1 space
    |                             ------ esta cadena tiene libre el otro lado
    = ayuda: tejer sobre el otro lado de la que ya existe: darle nombre con as y escribir from below strip.NOMBRE, strip.hole

example.ovillo: 1 error

# OV513
error[OV513]: en lo que queda de la hilera anterior no hay ningún marcador
  --> example.ovillo:16:11
 16 |   round: [sc to marker, 3 sc in marker, move marker to the middle one] 2 times, sc to end
    |           ^^^^^^^^^^^^ busca un marcador
    = ayuda: ponerlo en una hilera anterior o contarlo, o tejer hasta el final: sc to end

example.ovillo: 1 error

# OV514
error[OV514]: en esta hilera aún no se ha llegado a ningún marcador
  --> example.ovillo:16:38
 16 |   round: sc in next 2, 3 sc in next, move marker to the middle one, sc to end
    |                                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ¿qué marcador?
    = ayuda: llegar antes a él: sc to marker, 3 sc in marker; o nombrarlo: move m

example.ovillo: 1 error

# OV515
error[OV515]: un marcador que se coloca necesita un nombre
  --> example.ovillo:14:24
 14 |   round: sc in next 4, mark marker, sc in each = 8
    |                        ^^^^^^^^^^^ ¿qué marcador?
    = ayuda: mark m, y después: sc to m

example.ovillo: 1 error

# OV516
error[OV516]: el siguiente lugar no lleva marcador
  --> example.ovillo:16:22
 16 |   round: sc in next, 3 sc in marker, sc to end
    |                      ^^^^^^^^^^^^^^ no está marcado
    = ayuda: llegar antes al marcador: sc to marker

example.ovillo: 1 error

# OV517
aviso[OV517]: m ya se contó justo antes, y no hay nada en medio
  --> example.ovillo:16:3
 16 |   count off: 3, mark m, 5
    |   ^^^^^^^^^^^^^^^^^^^^^^^ lo vuelve a poner
 15 |   count off: 2, mark m, 6
    |   ----------------------- la primera vez
    = ayuda: quitar uno de los dos, o poner entre ambos lo que haya que tejer

example.ovillo: 1 aviso

