# OV759
aviso[OV759]: los puntos de este borde miden 15,0 cm en S, 16,9 cm en M, pero el borde mide 10,0 cm en S, 11,1 cm en M
  --> example.ovillo:25:8
 25 |   from right edge of strip at 4 per 3 rows
    |        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ frunce u ondula
    = ayuda: dejar que decidan las muestras: by gauge

example.ovillo: 1 aviso

# OV790
nota[OV790]: se dan medidas del cuerpo, pero ninguna medida de la pieza se compara con ellas
 --> example.ovillo:6:1
 6 | sizes "S", "M", "L"
   | ^^^^^^^^^^^^^^^^^^^ no sirven para comprobar nada
   = ayuda: decir qué se ajusta: chest = around body fits fit.chest ease 4 to 8 cm

example.ovillo: 1 nota

# OV791
nota[OV791]: no se da ninguna medida terminada de esta prenda (top)
 --> example.ovillo:3:3
 3 |   kind top
   |   ^^^^^^^^ se lleva puesta
   = ayuda: añadir un bloque measure: lo que necesita saber quien elige la talla

example.ovillo: 1 nota

# OV701
error[OV701]: se pide una longitud en dc, pero dc no tiene muestra
  --> example.ovillo:13:28
 13 | let wide = stitches(20 cm, dc)
    |                            ^^ ¿cuántos de estos miden 10 cm?
    = ayuda: añadir la muestra de dc al bloque gauge: dc 16 sts, 18 rows

example.ovillo: 1 error

# OV702
error[OV702]: se piden hileras de sc por su longitud, pero su muestra no da hileras
  --> example.ovillo:14:24
 14 | let tall = rows(10 cm, sc)
    |                        ^^ ¿cuántas hileras de estas miden 10 cm?
    = ayuda: añadir las hileras a su línea en el bloque gauge: sc 16 sts, 18 rows

example.ovillo: 1 error

# OV703
nota[OV703]: sin pesar una muestra o la pieza de prueba no se puede calcular cuánto hilo kelp hace falta
  --> example.ovillo:14:1
 14 | yarn kelp
    | ^^^^^^^^^
    = ayuda: pesar una muestra y decir cómo es: swatch 16 sts by 18 rows of sc, 5 g

example.ovillo: 1 nota

# OV704
nota[OV704]: sin el peso y la longitud de un ovillo no se puede calcular cuánto hilo kelp hace falta
  --> example.ovillo:14:1
 14 | yarn kelp
    | ^^^^^^^^^
    = ayuda: decir qué lleva un ovillo: ball 50 g, 120 m

example.ovillo: 1 nota

# OV705
aviso[OV705]: el hilo sand se describe y no se usa
  --> example.ovillo:21:1
 21 | yarn sand like kelp
    | ^^^^^^^^^^^^^^^^^^^
    = ayuda: quitar su bloque o tejer una pieza con él: yarn sand

example.ovillo: 1 aviso

# OV706
nota[OV706]: 4,1 mm no es una medida habitual de ganchillo
  --> example.ovillo:13:1
 13 | hook 4.1 mm
    | ^^^^^^^^^^^
    = ayuda: la medida habitual más cercana es 4 mm

example.ovillo: 1 nota

# OV707
aviso[OV707]: un ganchillo de 10 mm se aparta mucho de lo habitual para hilo de la clase light
  --> example.ovillo:18:3
 18 |   weight light
    |   ^^^^^^^^^^^^ habitual para esta clase: 4,5–5,5 mm
 13 | hook 10 mm
    | ---------- el ganchillo
    = ayuda: revisar la clase del hilo y la medida del ganchillo

example.ovillo: 1 aviso

# OV708
aviso[OV708]: 40 puntos en 10 cm se apartan mucho de lo habitual para hilo de la clase light
  --> example.ovillo:18:3
 18 |   weight light
    |   ^^^^^^^^^^^^ habitual para esta clase: 12–17 puntos
    = ayuda: revisar la clase del hilo y la muestra

example.ovillo: 1 aviso

# OV709
nota[OV709]: la fibra coton no está entre las conocidas aquí
  --> example.ovillo:17:9
 17 |   fibre coton 100 %
    |         ^^^^^^^^^^^
    = ayuda: una fibra conocida parecida: cotton

example.ovillo: 1 nota

# OV712
aviso[OV712]: las fibras suman 90 %, no 100 %
  --> example.ovillo:17:3
 17 |   fibre cotton 60 %, wool 30 %
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: escribir las partes como las da la etiqueta del hilo

example.ovillo: 1 aviso

# OV713
aviso[OV713]: sport no es una clase de hilo
  --> example.ovillo:17:3
 17 |   weight sport
    |   ^^^^^^^^^^^^
    = ayuda: las clases son lace, super fine, fine, light, medium, bulky, super bulky y jumbo, de la más fina a la más gruesa

example.ovillo: 1 aviso

# OV714
nota[OV714]: sin la muestra del punto pesado no se puede calcular cuánto hilo kelp hace falta
  --> example.ovillo:14:1
 14 | yarn kelp
    | ^^^^^^^^^
    = ayuda: dar al punto de la muestra pesada su línea en el bloque gauge, con puntos e hileras

example.ovillo: 1 nota

# OV750
error[OV750]: una muestra se cuenta en una longitud mayor que cero
  --> example.ovillo:10:1
 10 | gauge 10 g
    | ^^^^^^^^^^ no es una longitud así
    = ayuda: escribir la longitud medida: gauge 10 cm

example.ovillo: 1 error

# OV751
error[OV751]: la medida de un ganchillo es una longitud
  --> example.ovillo:13:6
 13 | hook 4
    |      ^
    = ayuda: escribirla en milímetros: hook 4 mm

example.ovillo: 1 error

# OV752
error[OV752]: se pide una longitud en hileras de sc, y sc no tiene muestra
  --> example.ovillo:16:3
 16 |   rows for 10 cm: sc in each = 20
    |   ^^^^^^^^^^^^^^
    = ayuda: añadir la muestra de sc al bloque gauge: sc 16 sts, 18 rows

example.ovillo: 1 error

# OV753
error[OV753]: una medida debe ser una longitud
  --> example.ovillo:23:12
 23 |   length = 20 (24)
    |            ^^^^^^^ esto no lo es
    = ayuda: medir la pieza: height of body, around body at row 2, width of back at row 1

example.ovillo: 1 error

# OV754
error[OV754]: strip no tiene la hilera 12: acaba tras la 10
  --> example.ovillo:23:33
 23 |   width = width of strip at row 12
    |                                 ^^ aquí se mide la hilera 12
    = tallas: S
    = ayuda: medir en una hilera que se teja en todas las tallas

example.ovillo: 1 error

# OV755
aviso[OV755]: waist tiene una holgura de 0,5 cm en S, 0 cm en M, fuera del margen de 1 cm a 3 cm
  --> example.ovillo:23:3
 23 |   waist = width of strip at row 1 fits fit.waist ease 1 to 3 cm
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ la holgura es la medida terminada menos waist de la persona
    = ayuda: cambiar la cuenta de la que sale waist, la muestra o la holgura deseada; en tallas pequeñas una repetición de la puntada puede ser más que todo el margen

example.ovillo: 1 aviso

# OV756
error[OV756]: width queda en 15 cm en M, pero se quiere 18 cm en M con un margen de 1 cm
  --> example.ovillo:23:3
 23 |   width = width of strip at row 1 wanted 12.5 (18) cm within 1 cm
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = tallas: M
    = ayuda: cambiar la cuenta de la que sale width, o decir cuánto se puede apartar: within 2 cm

example.ovillo: 1 error

# OV757
error[OV757]: los dos bordes de esta costura miden 12,5 cm en S, 15,0 cm en M y 16,3 cm en S, 18,8 cm en M, con más de 1 cm de diferencia
  --> example.ovillo:31:3
 31 |   sew strip.edge to band.edge
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: hacer que los bordes coincidan, o decir cuánto se embebe: within 2 cm

example.ovillo: 1 error

# OV758
error[OV758]: lo que hace falta se dice con un peso, una longitud o un número
  --> example.ovillo:13:40
 13 | notion en "toy stuffing" es "relleno", 30 %
    |                                        ^^^^ esto no es nada de eso
    = ayuda: escribir la cantidad en g, cm o m, o cuántos son: notion en "toy stuffing" es "relleno", 30 g

example.ovillo: 1 error

# OV715
error[OV715]: lo que pesa una pieza de prueba es un peso mayor que cero
  --> example.ovillo:21:10
 21 |   weight 40 cm
    |          ^^^^^ esto no lo es
    = ayuda: escribirlo en gramos: weight 214 g, o weight sand 180 g, kelp 34 g

example.ovillo: 1 error

# OV716
error[OV716]: lo que se añade al hilo es una parte de él, del 0 al 100 %
 --> example.ovillo:4:3
 4 |   allowance 120 %
   |   ^^^^^^^^^^^^^^^ esto no lo es
   = ayuda: escribir un porcentaje: allowance 10 %

example.ovillo: 1 error

# OV717
error[OV717]: una muestra de sc no se puede contar en repeticiones
  --> example.ovillo:19:3
 19 |   swatch 3 repeats by 18 rows of sc, 5 g
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ sc no tiene múltiplo
    = ayuda: contar sus puntos: swatch 20 sts by 10 rows of sc, 4 g; o dar su múltiplo a la puntada

example.ovillo: 1 error

# OV718
aviso[OV718]: según la pieza de prueba, el tejido de kelp en la talla S pesa 9 g; según la muestra, 4 g
  --> example.ovillo:22:3
 22 |   weight 9 g
    |   ^^^^^^^^^^ las cantidades siguen a la pieza de prueba
 19 |   swatch 16 sts by 18 rows of sc, 5 g
    |   ----------------------------------- la muestra pesada
    = ayuda: pesar las dos otra vez; si la pieza de prueba está bien, quitar la muestra

example.ovillo: 1 aviso

# OV719
aviso[OV719]: esta pieza de prueba no pesa más de lo que gastan sus cordones, pompones y costuras
  --> example.ovillo:21:3
 21 |   weight 4 g
    |   ^^^^^^^^^^
    = ayuda: pesar la pieza entera, con todo lo que lleva

example.ovillo: 1 aviso

# OV720
aviso[OV720]: la talla M gasta menos hilo kelp que la anterior: 5 g tras 8 g
  --> example.ovillo:14:1
 14 | yarn kelp
    | ^^^^^^^^^
    = ayuda: comparar las cuentas de las dos tallas: algo que debía crecer baja de una a otra

example.ovillo: 1 aviso

# OV721
nota[OV721]: al bloque del hilo kelp le falta fibre
  --> example.ovillo:14:1
 14 | yarn kelp
    | ^^^^^^^^^
    = ayuda: añadir lo que dice la etiqueta del hilo: weight light, fibre cotton 100 %, ball 50 g, 120 m

example.ovillo: 1 nota

# OV722
aviso[OV722]: el ganchillo de 4 mm está en la lista y no se teje nada con él
  --> example.ovillo:13:1
 13 | hook 4 mm
    | ^^^^^^^^^
    = ayuda: quitarlo, o hacer que una pieza siga con él: hook 4 mm

example.ovillo: 1 aviso

# OV723
nota[OV723]: «aguja lanera» ya sale en la lista de la página sin pedirlo, así que saldrá dos veces
  --> example.ovillo:13:1
 13 | notion en "yarn needle" es "aguja lanera"
    | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: quitar esta línea

example.ovillo: 1 nota

# OV724
error[OV724]: el número de botones es 4, y el de lugares de strip.hole es 5
  --> example.ovillo:25:17
 25 |   button 12 mm, 4 for strip.hole
    |                 ^
    = ayuda: hacer coincidir los números, o quitar el número: button 12 mm for strip.hole pone uno para cada lugar

example.ovillo: 1 error

# OV725
aviso[OV725]: estos botones no son para ningún lugar, y ningún botón es para strip.hole
  --> example.ovillo:25:3
 25 |   button 12 mm, 5
    |   ^^^^^^^^^^^^^^^
    = ayuda: decir para qué son: button 12 mm for strip.hole

example.ovillo: 1 aviso

# OV726
aviso[OV726]: la goma elástica mide 14,0 cm en S, y lo que recorre en strip mide 12,5 cm en S
  --> example.ovillo:23:24
 23 |   elastic 2 cm, length 14 cm, through strip row 3
    |                        ^^^^^ más larga que lo que debe fruncir
    = tallas: S
    = ayuda: hacerla más corta que la hilera por la que pasa y que el contorno de la persona en ese lugar

example.ovillo: 1 aviso

# OV727
aviso[OV727]: una atadura o una goma en la muñeca o el tobillo de un bebé exige cuidado
  --> example.ovillo:28:3
 28 |   elastic 5 mm, length 11 cm, through strip row 3
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ con este paso se imprime una precaución
    = ayuda: quitarla para los más pequeños: un elástico tejido sujeta igual; o dejar holgura para un dedo adulto

example.ovillo: 1 aviso

# OV728
error[OV728]: el nombre ../hat.jpg sale de la carpeta del patrón
 --> example.ovillo:4:9
 4 |   photo "../hat.jpg" en "A blue hat." es "Un gorro azul."
   |         ^^^^^^^^^^^^ no es un nombre dentro de ella
   = ayuda: poner la foto junto al patrón y nombrarla: photo "hat.jpg", o photo "pictures/hat.jpg" si está en una carpeta de ahí

example.ovillo: 1 error

# OV729
error[OV729]: no hay ninguna foto Hat.JPG junto al patrón
 --> example.ovillo:4:9
 4 |   photo "Hat.JPG" en "A blue hat." es "Un gorro azul."
   |         ^^^^^^^^^ este archivo no se encontró
   = ayuda: poner ahí el archivo, o escribir su nombre tal como es, con mayúsculas y terminación

example.ovillo: 1 error

# OV730
error[OV730]: broken.jpg no es una foto que se pueda leer
 --> example.ovillo:4:9
 4 |   photo "broken.jpg" en "A blue hat." es "Un gorro azul."
   |         ^^^^^^^^^^^^ se leen JPEG y PNG
   = ayuda: copiar otra vez el archivo, o guardarlo otra vez como JPEG o PNG corriente: está cortado o es de una clase poco usual

example.ovillo: 1 error

# OV731
error[OV731]: la foto huge.png es demasiado grande
 --> example.ovillo:4:9
 4 |   photo "huge.png" en "A blue hat." es "Un gorro azul."
   |         ^^^^^^^^^^ más de 40 MB o de 64 millones de píxeles, u otro tanto al abrirla
   = ayuda: guardarla con menos de 64 millones de píxeles: 945 de ancho bastan para la página

example.ovillo: 1 error

# OV732
aviso[OV732]: la foto small.jpg se ve basta impresa: 101 píxeles por pulgada
 --> example.ovillo:4:9
 4 |   photo "small.jpg" en "A blue hat." es "Un gorro azul."
   |         ^^^^^^^^^^^ 320 píxeles de ancho
   = ayuda: usar una de 945 píxeles de ancho: a 80 mm son 300 por pulgada, como piden las imprentas

example.ovillo: 1 aviso

# OV733
error[OV733]: aquí se sigue tejiendo strip, pero su hilo ya se remató
  --> example.ovillo:15:3
 15 |   2 rows: sc in each = 20
    |   ^^^^^^ ¿con qué hilo?
 14 |   fasten off
    |   ---------- aquí se corta el hilo
    = ayuda: poner fasten off tras la última hilera, nombrar el hilo que se une aquí, o comenzar otra pieza con from

example.ovillo: 1 error

# OV734
aviso[OV734]: el hilo de strip ya se remató
  --> example.ovillo:16:3
 16 |   fasten off
    |   ^^^^^^^^^^ por segunda vez
 15 |   fasten off
    |   ---------- la primera vez
    = ayuda: quitar uno de los dos

example.ovillo: 1 aviso

# OV735
aviso[OV735]: strip termina con el hilo en el ganchillo: no se remata y ninguna pieza sigue desde ahí
 --> example.ovillo:9:1
 9 | part strip
   | ^^^^^^^^^^ queda sin rematar
   = ayuda: terminarla con fasten off

example.ovillo: 1 aviso

# OV760
aviso[OV760]: width no sigue a la muestra indicada: queda en 32,0 cm y no en 40,0 cm
  --> example.ovillo:26:3
 26 |   width = width of strip
    |   ^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: las cuentas de strip no cambian: escribir con stitches( ) o rows( ) las que deciden esta medida, para que sigan a la muestra

example.ovillo: 1 aviso

# OV761
aviso[OV761]: width sigue a la muestra indicada solo en parte: queda en 36,0 cm y no en 40,0 cm
  --> example.ovillo:26:3
 26 |   width = width of strip
    |   ^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: algunas de sus cuentas están escritas a mano, o se redondean a un múltiplo amplio: escribirlas con stitches( ) o rows( ), o tejer con otra muestra

example.ovillo: 1 aviso

# OV762
aviso[OV762]: un motivo de throw mide 12 cm de lado con la muestra del patrón, y ese tamaño no sigue a la muestra indicada
  --> example.ovillo:23:1
 23 | motifs throw of strip
    | ^^^^^^^^^^^^^^^^^^^^^ todas sus medidas salen de ahí
    = ayuda: unir y bloquear algunos motivos, medir uno y tejer los que más se acerquen al tamaño deseado

example.ovillo: 1 aviso

# OV770
error[OV770]: no hay ninguna tabla de medidas del cuerpo llamada kids
  --> example.ovillo:10:8
 10 |   body kids by age
    |        ^^^^
    = ayuda: las tablas son babies, children, youth, women, men, heads, hands y feet

example.ovillo: 1 error

# OV771
error[OV771]: la tabla children no tiene la talla four
  --> example.ovillo:10:17
 10 |   body children "four", "6"
    |                 ^^^^^^
    = ayuda: las tallas son 2, 4, 6, 8, 10, 98, 104, 110, 116 y 122

example.ovillo: 1 error

# OV772
error[OV772]: el patrón tiene 2 tallas y se nombra 1 talla de la tabla
  --> example.ovillo:10:3
 10 |   body children "4"
    |   ^^^^^^^^^^^^^^^^^
    = ayuda: nombrar una por cada talla, en el mismo orden; la misma puede figurar dos veces

example.ovillo: 1 error

# OV773
error[OV773]: la tabla babies no tiene ninguna talla para la edad de small y large
  --> example.ovillo:10:3
 10 |   body babies by age
    |   ^^^^^^^^^^^^^^^^^^
    = ayuda: va de 0 a 24 meses; añadir otra tabla, como en body babies, children by age, o nombrar las tallas

example.ovillo: 1 error

# OV774
error[OV774]: se piden medidas por la edad y no se da ninguna edad
 --> example.ovillo:9:3
 9 |   body children by age
   |   ^^^^^^^^^^^^^^^^^^^^
   = ayuda: decir las edades: age 48 (72) months

example.ovillo: 1 error

# OV775
error[OV775]: la tabla children no tiene head para large
  --> example.ovillo:17:21
 17 | let wide = stitches(fit.head, sc)
    |                     ^^^^^^^^
    = tallas: large
    = ayuda: dar la medida, para todas las tallas: fit head …

example.ovillo: 1 error

# OV776
nota[OV776]: para chest se da 85,5 cm en small; la tabla children tiene para esa edad 58,5 cm en small
  --> example.ovillo:10:7
 10 |   fit chest 85.5 (63.5) cm
    |       ^^^^^^^^^^^^^^^^^^^^
    = tallas: small
    = ayuda: comprobar que la cifra no sea un error; la tabla sigue, de memoria, esta fuente: tablas de tallas del Craft Yarn Council

example.ovillo: 1 nota

# OV777
error[OV777]: neck no pasa por head: de contorno mide 12,5 cm en small, 15,0 cm en large; estirado, 13,1 cm en small, 15,8 cm en large; head, 14,0 cm en small, 16,0 cm en large
  --> example.ovillo:25:3
 25 |   neck = width of strip at row 1 goes over fit.head stretch 5 %
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: de contorno debe medir al menos 13,4 cm en small, 15,3 cm en large, o su borde debe estirarse 12 % en small, 7 % en large; un hombro abotonado también lo abre

example.ovillo: 1 error

# OV778
nota[OV778]: no se comprobó si esta prenda (vest) pasa por la cabeza
 --> example.ovillo:4:3
 4 |   kind  vest
   |   ^^^^^^^^^^
   = ayuda: medir la abertura y decir por dónde pasa: neck = around neckband at row 1 goes over fit.head stretch 20 %

example.ovillo: 1 nota

# OV779
nota[OV779]: se cuenta con que un borde se estire un 40 %, más del 30 % que da un elástico
  --> example.ovillo:25:61
 25 |   neck = width of strip at row 1 goes over fit.head stretch 40 %
    |                                                             ^^^^
    = ayuda: medirlo en la muestra, o hacer más ancha la abertura

example.ovillo: 1 nota

# OV780
nota[OV780]: no se da la medida de la cabeza: la abertura se compara con las cabezas más grandes de la tabla de crecimiento, 50,8 cm en small, 53,0 cm en large
  --> example.ovillo:25:48
 25 |   neck = 5 * width of strip at row 1 goes over fit.head
    |                                                ^^^^^^^^
    = ayuda: dar la medida de la cabeza, que vale entonces en su lugar: fit head …, o body heads by age para la mitad de la tabla

example.ovillo: 1 nota

# OV781
error[OV781]: top + leg da 16,7 cm y all da 11,1 cm: se apartan más de 0,5 cm
  --> example.ovillo:28:3
 28 |   check top + leg equals all
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: buscar hileras que una medida deja fuera y otra cuenta, o una pieza que se cambió sola; o decir cuánto se pueden apartar: within 1 cm

example.ovillo: 1 error

# OV782
aviso[OV782]: rise más inseam suman 16,7 cm, y length es 11,1 cm
  --> example.ovillo:27:3
 27 |   length = 2 * height of strip
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: quien teje los sumará: tomar las mismas hileras en los dos, dar otro nombre a uno o decir qué cuadra: check rise + inseam equals length within 2 cm

example.ovillo: 1 aviso

# OV783
error[OV783]: no hay ninguna medida llamada widht
  --> example.ovillo:29:3
 29 |   widht 12.5 cm
    |   ^^^^^
    = ayuda: parecidas: width

example.ovillo: 1 error

# OV784
error[OV784]: length no da la vuelta: en plano mide lo mismo
  --> example.ovillo:29:3
 29 |   length 5.5 cm flat
    |   ^^^^^^^^^^^^^^^^^^
    = ayuda: quitar flat, o medir lo que da la vuelta

example.ovillo: 1 error

# OV785
aviso[OV785]: width de la pieza de prueba mide 14,5 cm, y las cuentas dan 12,5 cm en la talla small
  --> example.ovillo:29:3
 29 |   width 14.5 cm
    |   ^^^^^^^^^^^^^ se apartan más de 1 cm
    = ayuda: la pieza de prueba manda: contar una muestra en ella y ponerla en el bloque gauge, o revisar la medida; si las dos están bien, decir cuánto se puede apartar: within 2 cm

example.ovillo: 1 aviso

# OV786
error[OV786]: strip no empieza en un anillo, así que no se puede medir de lado a lado
  --> example.ovillo:25:14
 25 |   diameter = across strip
    |              ^^^^^^^^^^^^
    = ayuda: medir su ancho en una hilera; un óvalo que empieza en una cadena mide 2 * height of strip de ancho

example.ovillo: 1 error

# OV787
aviso[OV787]: disc se mide de lado a lado y no queda en plano: su última vuelta mide 5,6 cm de contorno, y un disco de ese tamaño, 10,5 cm
  --> example.ovillo:26:14
 26 |   diameter = across disc
    |              ^^^^^^^^^^^
    = ayuda: medir en una vuelta en la que aún quede plano: across disc at round 6; o aumentar más en cada vuelta

example.ovillo: 1 aviso

# OV788
nota[OV788]: chest tiene una holgura de -17,5 cm en small, -19,0 cm en large, con chest de 30,0 cm en small, 34,0 cm en large: muy lejos de lo que se suele llevar
  --> example.ovillo:25:3
 25 |   chest = width of strip at row 1 fits fit.chest ease -20 to 6 cm
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: comprobar que chest da toda la vuelta y se compara con la medida debida, y revisar las unidades

example.ovillo: 1 nota

