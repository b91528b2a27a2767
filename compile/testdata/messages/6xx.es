# OV601
error[OV601]: la cuenta indicada de puntos es 13, pero salen 12
  --> example.ovillo:14:23
 14 |   round: sc in each = 13
    |                       ^^ indica 13
    |          ---------- da 12
    = ayuda: indicar 12 o cambiar la hilera para que dé 13

example.ovillo: 1 error

# OV602
error[OV602]: la hilera tiene 13, que no es «multiple of 6»
  --> example.ovillo:14:23
 14 |   round: sc in each = multiple of 6
    |                       ^^^^^^^^^^^^^ no se cumple
    = ayuda: las más cercanas que sirven: por debajo, 12; por encima, 18

example.ovillo: 1 error

# OV603
error[OV603]: se cuentan 11 lugares, pero el borde tiene 12
  --> example.ovillo:15:3
 15 |   count off: 2, mark m, 9
    |   ^^^^^^^^^^^^^^^^^^^^^^^ cuenta 11
    = ayuda: llevar los números a 12 en total; un marcador en un punto cuenta uno

example.ovillo: 1 error

# OV604
error[OV604]: la hilera hace además 4 espacios que esta cuenta no nombra
  --> example.ovillo:14:48
 14 |   round: [sc in next 2, ch 1, skip 1] around = 8
    |                                                ^ cuenta solo puntos
    = ayuda: nombrarlos: = 12 sts, 4 spaces; o contar lugares: = 16 sts and chains

example.ovillo: 1 error

# OV605
error[OV605]: lo que la cuenta cambia cada vez solo se indica tras el final de una repetición (repeat)
  --> example.ovillo:15:23
 15 |   round: inc around = + 6 each time
    |                       ^^^^^^^^^^^^^ va detrás de end
    = ayuda: escribir end = + 8 each time, o indicar la cuenta de esta hilera

example.ovillo: 1 error

# OV606
nota[OV606]: la pieza strip no indica ninguna cuenta
 --> example.ovillo:9:1
 9 | part strip
   | ^^^^^^^^^^ solo se comprueba que cuadre
   = ayuda: indicar algunas donde cambian: = 96

example.ovillo: 1 nota

# OV607
aviso[OV607]: las tallas S y M quedan iguales, con 48 puntos, aunque se pide 1 cm más
  --> example.ovillo:13:12
 13 | let cast = stitches(30 (31, 40) cm, sc, multiple of 8)
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ lo mismo en las dos
    = ayuda: usar un múltiplo menor, redondear de otra manera o fijar una talla a mano con but; si las tallas pueden ser iguales, decirlo antes con meant

example.ovillo: 1 aviso

# OV608
aviso[OV608]: de S a M crece 16 puntos, y entre otras tallas 8, aunque las longitudes crecen a pasos iguales
  --> example.ovillo:13:12
 13 | let cast = stitches(30 (37.5, 45) cm, sc, multiple of 8)
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ crece a saltos desiguales
    = ayuda: usar un múltiplo menor o fijar una talla a mano con but, que conserva el múltiplo; si el salto es a propósito, decirlo antes con meant

example.ovillo: 1 aviso

# OV617
aviso[OV617]: cuff sigue desde strip, pero de una se hace 1 y de la otra 2
  --> example.ovillo:18:1
 18 | part cuff
    | ^^^^^^^^^ no son tantas
  9 | part strip
    | ---------- se sigue desde su última hilera
    = ayuda: decir en ambas el mismo número con make

example.ovillo: 1 aviso

# OV609
aviso[OV609]: chest baja de 25 cm en la talla M a 22,5 cm en la talla L
  --> example.ovillo:23:3
 23 |   chest = around band
    |   ^^^^^^^^^^^^^^^^^^^ es menor en la talla mayor
    = ayuda: comparar los números de las dos tallas; muchas veces dos números de una lista están cambiados

example.ovillo: 1 aviso

# OV610
aviso[OV610]: chest se queda en 22,5 cm de la talla M a la talla L, aunque el cuerpo crece 2 cm
  --> example.ovillo:24:3
 24 |   chest = around band fits fit.chest ease -1 to 6 cm
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ no crece
    = ayuda: dar más a la talla mayor o quitar una de las dos

example.ovillo: 1 aviso

# OV611
aviso[OV611]: chest se queda en 22,5 cm de la talla M a la talla L, mientras que armhole crece 5,56 cm
  --> example.ovillo:23:3
 23 |   chest = around band
    |   ^^^^^^^^^^^^^^^^^^^ no crece a la par
    = ayuda: graduar las dos; si puede quedarse, decirlo antes con meant

example.ovillo: 1 aviso

# OV612
aviso[OV612]: chest crece 3,75 cm de la talla M a la talla L y 1,25 cm entre otras tallas, aunque el cuerpo crece a pasos iguales
  --> example.ovillo:24:3
 24 |   chest = around band fits fit.chest ease -1 to 6 cm
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ crece a saltos desiguales
    = ayuda: repartir la diferencia entre las tallas; si el salto es a propósito, decirlo antes con meant

example.ovillo: 1 aviso

# OV613
nota[OV613]: la cuenta de puntos es par en S y M e impar en L
  --> example.ovillo:13:12
 13 | let cast = stitches(30 (34, 38) cm, sc, nearest)
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ pares e impares
    = ayuda: pedir lo mismo en todas las tallas: even, odd o multiple of 2

example.ovillo: 1 nota

# OV614
error[OV614]: la sección sleeve no tiene ningún lugar
  --> example.ovillo:16:18
 16 |   count off: 12, 12 - 12 as sleeve
    |                  ^^^^^^^^^^^^^^^^^ ninguno
    = ayuda: revisar cómo se calcula su número en estas tallas

example.ovillo: 1 error

# OV615
nota[OV615]: esta hilera de strip muestra el derecho en S y el revés en M
  --> example.ovillo:14:3
 14 |   row ridge: sc flo in each = 12
    |   ^^^^^^^^^ no es el mismo lado en todas las tallas
    = ayuda: hacer que las hileras de debajo sean pares, o impares, en todas las tallas: rows(…, even) o rows for 21 cm, even:

example.ovillo: 1 nota

# OV616
nota[OV616]: aquí hay pasos para S y M y ninguno para L
  --> example.ovillo:19:3
 19 |   only "S"
    |   ^^^^^^^^ el primero
    = ayuda: añadir un bloque para las tallas que faltan o incluirlas en uno de estos; dejarlo así si no tienen nada que hacer

example.ovillo: 1 nota

