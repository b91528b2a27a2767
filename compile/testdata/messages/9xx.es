# OV901
aviso[OV901]: el patrón no dice qué se hace, y no se puede saber qué normas de seguridad rigen
 --> example.ovillo
   = ayuda: decirlo en el encabezado: kind trousers, kind hat, kind blanket

example.ovillo: 1 aviso

# OV902
aviso[OV902]: el patrón no dice para qué edad es, y no se puede saber qué normas de seguridad infantil rigen
  --> example.ovillo:11:1
 11 | sizes "S", "M"
    | ^^^^^^^^^^^^^^
    = ayuda: dar la edad de la persona más joven de cada talla: age 12 (24) months; para adultos, age 18 years

example.ovillo: 1 aviso

# OV903
aviso[OV903]: de esto no se sabe en qué lugar del cuerpo está, y no se puede decir qué normas de seguridad rigen
  --> example.ovillo:37:3
 37 |   cord with kelp, length 55 (60) cm, through border round 2, ends plain, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ¿en la cintura o en el cuello?
    = ayuda: palabras que lo dicen: at waist

example.ovillo: 1 aviso

# OV904
aviso[OV904]: de este cordón no se sabe cómo se rematan sus extremos libres, y no se puede decir qué normas de seguridad rigen
  --> example.ovillo:38:3
 38 |   cord with kelp, length 60 (65) cm, through waistband round 2, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: palabras que lo dicen: ends plain o no ends

example.ovillo: 1 aviso

# OV905
aviso[OV905]: trowsers no es una clase de pieza conocida, y no se puede saber qué normas de seguridad rigen
 --> example.ovillo:3:3
 3 |   kind trowsers
   |   ^^^^^^^^^^^^^
   = ayuda: una clase conocida parecida: trousers

example.ovillo: 1 aviso

# OV910
error[OV910]: un extremo libre de este cordón mide 15 cm en S, más de lo que permite EN 14682:2014 a esta edad: 14 cm en S
  --> example.ovillo:38:3
 38 |   cord with kelp, length 80 (82) cm, through waistband round 2, ends plain, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ extremo libre, con la pieza abierta y extendida
    = tallas: S
    = ayuda: el cordón más largo que respeta el límite: 78 cm

example.ovillo: 1 error

# OV911
error[OV911]: aquí no se permite un cordón en ropa infantil de esta edad (EN 14682:2014 y 16 CFR 1120)
  --> example.ovillo:37:3
 37 |   cord with kelp, length 55 (60) cm, through hood round 2
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ en el cuello, la capucha o la espalda
    = ayuda: quitar el cordón: dar forma a la abertura con un elástico tejido o cerrarla con un botón y una presilla corta

example.ovillo: 1 error

# OV912
error[OV912]: un cordón ajustable o un tirante anudado en el cuello o la capucha tiene extremos libres, y EN 14682:2014 no permite ninguno a esta edad
  --> example.ovillo:39:3
 39 |   cord with kelp, length 50 (55) cm, through neckband round 2, ends plain, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ sus extremos son libres
    = ayuda: cerrarlo en un anillo que no sobresalga, no ends, o quitarlo

example.ovillo: 1 error

# OV913
error[OV913]: no se ponen botones en algo para un niño de esta edad (una regla de esta herramienta)
  --> example.ovillo:37:3
 37 |   button 12 mm, 2
    |   ^^^^^^^^^^^^^^^ se puede tragar, o pesa sobre el niño
    = ayuda: quitarlo; los ojos y hocicos se pueden bordar o tejer

example.ovillo: 1 error

# OV914
error[OV914]: unas aberturas de 5,6 mm en manos o pies de un bebé son mayores que 5 mm
  --> example.ovillo:32:3
 32 |   round: [sc in next, ch 2 (3), skip 2 (3)] around = 8 sts, 8 spaces
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ según la muestra, con el tejido en reposo
    = ayuda: tejer esta pieza en un punto cerrado

example.ovillo: 1 error

# OV915
error[OV915]: con esta herramienta no se hace nada de esta clase para esta edad: kind cot_bumper (15 USC 2057e, 16 CFR 1309)
 --> example.ovillo:3:3
 3 |   kind cot_bumper
   |   ^^^^^^^^^^^^^^^
   = ayuda: hacer otra cosa, o para una edad a la que no haga daño

example.ovillo: 1 error

# OV906
error[OV906]: esto es para niños, y el patrón no dice qué se hace
 --> example.ovillo
   = ayuda: decirlo en el encabezado: kind trousers, kind hat, kind blanket

example.ovillo: 1 error

# OV907
error[OV907]: esto es para niños, y el patrón no dice de qué edad
  --> example.ovillo:11:1
 11 | sizes "S", "M"
    | ^^^^^^^^^^^^^^
    = ayuda: dar las edades de la persona más joven y la mayor de cada talla: age 0 (6) to 6 (12) months

example.ovillo: 1 error

# OV908
aviso[OV908]: no se sabe cuánto mide la persona más baja, y no se puede decir qué normas de seguridad rigen
 --> example.ovillo:3:3
 3 |   kind romper
   |   ^^^^^^^^^^^
   = ayuda: palabras que lo dicen: fit height 122 cm

example.ovillo: 1 aviso

# OV916
error[OV916]: una lazada de este cordón mide 12 cm de contorno, más de lo que permite EN 14682:2014 a esta edad: 7,5 cm
  --> example.ovillo:37:3
 37 |   cord with kelp, at waist, ends plain, loop 12 cm
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ contorno de la lazada
    = ayuda: una lazada que respeta el límite: 7,5 cm de contorno como máximo

example.ovillo: 1 error

# OV917
error[OV917]: los extremos libres de este cordón no son lisos, y EN 14682:2014 permite aquí solo extremos lisos
  --> example.ovillo:38:3
 38 |   cord with kelp, length 60 (65) cm, through waistband round 2, ends knotted, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ un nudo o una pieza en un extremo se engancha
    = ayuda: rematar los extremos y decir ends plain

example.ovillo: 1 error

# OV918
error[OV918]: este cordón asoma o cuelga por debajo del borde, y EN 14682:2014 no permite ni lo uno ni lo otro aquí
  --> example.ovillo:37:3
 37 |   cord with kelp, length 52 (56) cm, through hem round 2, ends plain, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ en un borde, un puño o un cinturón
    = ayuda: dejarlo por dentro de la prenda y decir inside, o quitarlo

example.ovillo: 1 error

# OV919
error[OV919]: este cordón es elástico, y EN 14682:2014 no permite aquí ninguno que lo sea
  --> example.ovillo:37:3
 37 |   cord with kelp, length 6 cm, at neck, as decoration, ends plain, elastic
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ cerca del cuello
    = ayuda: hacerlo con un hilo que no dé de sí, o quitarlo

example.ovillo: 1 error

# OV926
error[OV926]: este cordón ajustable se puede sacar de su jareta (16 CFR 1120)
  --> example.ovillo:38:3
 38 |   cord with kelp, length 55 (60) cm, through waistband round 2, ends plain
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ no está fijo en el medio
    = ayuda: coserlo a la prenda en el punto medio entre sus salidas y decir fixed

example.ovillo: 1 error

# OV932
error[OV932]: el largo de la pieza terminada mide 27,78 cm, y el límite aquí es 22 cm (EN 12586)
 --> example.ovillo:3:3
 3 |   kind soother_holder
   |   ^^^^^^^^^^^^^^^^^^^
   = ayuda: la medida más cercana que se admite: 22 cm

example.ovillo: 1 error

# OV920
aviso[OV920]: un cordón en lo que un niño lleva en la cabeza, en las manos o al cuello exige cuidado
  --> example.ovillo:37:3
 37 |   cord with kelp, length 60 (65) cm, through brim round 2, ends plain, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ con este paso se imprime una precaución
    = ayuda: dar a la pieza una forma que se sujete sin cordón

example.ovillo: 1 aviso

# OV921
aviso[OV921]: hay que tener cuidado con botones en ropa para un menor de 3 años
  --> example.ovillo:37:3
 37 |   button 12 mm, 3
    |   ^^^^^^^^^^^^^^^ con este paso se imprime una precaución
    = ayuda: fijarlos sobre un refuerzo y probar cada pieza con un tirón fuerte

example.ovillo: 1 aviso

# OV922
aviso[OV922]: un pompón para un menor de 3 años exige cuidado
  --> example.ovillo:37:3
 37 |   pompom with kelp, 5 cm, 80 wraps
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ con este paso se imprime una precaución
    = ayuda: no ponerlo para los más pequeños, o coserlo de lado a lado

example.ovillo: 1 aviso

# OV923
aviso[OV923]: unas aberturas de 5,6 mm en cosas de bebé son mayores que 5 mm
  --> example.ovillo:32:3
 32 |   round: [sc in next, ch 2 (3), skip 2 (3)] around = 8 sts, 8 spaces
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ según la muestra, con el tejido en reposo
    = ayuda: elegir un punto más denso o forrar la pieza

example.ovillo: 1 aviso

# OV924
aviso[OV924]: esta pieza es para un niño y su clase exige cuidado: kind cocoon
 --> example.ovillo:3:3
 3 |   kind cocoon
   |   ^^^^^^^^^^^ se imprime una precaución
   = ayuda: leer la precaución que se imprime y comprobar que el patrón la respeta

example.ovillo: 1 aviso

# OV925
aviso[OV925]: ajustado al cuerpo, sobresalen 28,5 cm en M de este cordón, más de 28 cm en M (EN 14682:2007)
  --> example.ovillo:38:3
 38 |   cord with kelp, length 76 (83) cm, through waistband round 2, ends plain, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ su largo, menos la medida del cuerpo
    = tallas: M
    = ayuda: el cordón más largo que respeta todos los límites: 82,5 cm

example.ovillo: 1 aviso

# OV927
aviso[OV927]: este cordón ajustable no está fijo en el medio (EN 14682:2014)
  --> example.ovillo:38:3
 38 |   cord with kelp, length 60 (65) cm, through waistband round 2, ends plain
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ un extremo se puede alargar a tirones
    = ayuda: coserlo a la prenda en el punto medio entre sus salidas y decir fixed

example.ovillo: 1 aviso

# OV928
aviso[OV928]: el ancho de este cordón mide 2 cm, y se piden al menos 3 cm (la práctica común)
  --> example.ovillo:37:3
 37 |   cord with kelp, at waist, ends plain, length 30 cm, as belt, width 2 cm, inside
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: hacerlo más ancho o más grueso: 3 cm o más

example.ovillo: 1 aviso

# OV929
aviso[OV929]: los extremos de este cordón se pueden deshilachar (EN 14682:2014)
  --> example.ovillo:38:3
 38 |   cord with kelp, length 60 (65) cm, through waistband round 2, ends plain, fixed
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ nada los asegura
    = ayuda: añadir weave in ends al acabado

example.ovillo: 1 aviso

# OV930
aviso[OV930]: el extremo libre de este cordón mide 12 cm, más de 10 cm (EN 14682:2014, cifra de memoria)
  --> example.ovillo:37:3
 37 |   cord with kelp, at waist, ends plain, length 12 cm, as tab
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: hacerlo de 10 cm o menos

example.ovillo: 1 aviso

# OV931
aviso[OV931]: esto es para un menor de 3 años, y el patrón no dice cómo lavarlo (EN 16781)
 --> example.ovillo:3:3
 3 |   kind blanket
   |   ^^^^^^^^^^^^
   = ayuda: dar un texto de care en el encabezado

example.ovillo: 1 aviso

# OV933
error[OV933]: una pieza de esta clase para un bebé no se ofrece para dormir: kind blanket (AAP 2022)
 --> example.ovillo:5:23
 5 |     en | For the baby to sleep in.
   |                       ^^^^^^^^^^^ aquí se ofrece para dormir
   = ayuda: decir que es para ratos despierto y vigilado, o quitar esas palabras

example.ovillo: 1 error

# OV934
aviso[OV934]: un peluche cuenta como juguete para los más pequeños, diga lo que diga su etiqueta (EN 71-1)
 --> example.ovillo:3:3
 3 |   kind toy
   |   ^^^^^^^^
   = ayuda: diseñarlo para menores de 3 años, sin piezas duras, y dar esa edad

example.ovillo: 1 aviso

# OV935
error[OV935]: en Estados Unidos la ropa de dormir infantil de esta talla es ceñida o resistente a la llama por ensayo (16 CFR 1615, 16 CFR 1616)
 --> example.ovillo:3:3
 3 |   kind sleepwear
   |   ^^^^^^^^^^^^^^
   = ayuda: hacer de la prenda ropa de día, o dejar el patrón solo para otros mercados: for eu, uk

example.ovillo: 1 error

# OV936
error[OV936]: estas palabras dicen más de lo que la pieza terminada puede sostener (una regla de esta herramienta)
 --> example.ovillo:5:26
 5 |     en | This blanket is certified and non-toxic.
   |                          ^^^^^^^^^ tales palabras piden un informe de ensayo, o una sola fibra
   = ayuda: quitarlas y decir sin más de qué está hecha

example.ovillo: 1 error

# OV937
aviso[OV937]: hay hileras de algo para un bebé tejidas con dos hilos, y por dentro pueden quedar hebras sueltas
  --> example.ovillo:36:3
 36 |   4 rounds: sc in next 4 with sand, sc in each with kelp = 80 (88)
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: atrapar la hebra en cada punto, o forrar la pieza

example.ovillo: 1 aviso

# OV938
aviso[OV938]: hay que tener cuidado con ojos de seguridad en un juguete para un niño pequeño (EN 71-1)
  --> example.ovillo:27:1
 27 | notion en "eyes" es "ojos", as eye 70 mm of plastic, 2
    | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ una pieza dura que se puede soltar
    = ayuda: bordarla o tejerla; si no, hacerla ensayar

example.ovillo: 1 aviso

# OV939
aviso[OV939]: ropa infantil se ofrece para dormir (CPSC 5132)
 --> example.ovillo:5:23
 5 |     en | For the baby to sleep in.
   |                       ^^^^^^^^^^^ aquí se ofrece para dormir
   = ayuda: dejar la prenda para el día, y quitar esas palabras

example.ovillo: 1 aviso

# OV940
error[OV940]: no hay normas de seguridad de mars
 --> example.ovillo:5:11
 5 |   for eu, mars
   |           ^^^^ no es uno de los lugares
   = ayuda: los lugares son eu, us y uk; sin esa línea rigen todas las normas

example.ovillo: 1 error

# OV941
error[OV941]: girdle no dice nada aquí
  --> example.ovillo:42:30
 42 |   cord of belt, at waist, as girdle
    |                              ^^^^^^
    = ayuda: palabras que pueden ir aquí: drawstring, tie, bow, belt, halter, strap, tab, zip_pull, chin_tie, joining, decoration y fringe

example.ovillo: 1 error

# OV942
error[OV942]: la persona de más edad es menor que la más joven
 --> example.ovillo:8:18
 8 |   age 20 (30) to 19 (40) years
   |                  ^^^^^^^^^^^^^ tras to va la edad mayor
   = tallas: S
   = ayuda: dar las dos en el orden de las tallas: age 0 (6) to 6 (12) months

example.ovillo: 1 error

# OV943
aviso[OV943]: belt se llama como un cordón y el acabado no habla de esta pieza
  --> example.ovillo:32:1
 32 | part belt
    | ^^^^^^^^^ ¿un tirante, una atadura, un cinturón?
    = ayuda: decir en el acabado qué es: cord of belt, as belt

example.ovillo: 1 aviso

# OV944
aviso[OV944]: no se sabe qué es esto ni, por tanto, qué normas de seguridad rigen para un menor de 3 años
  --> example.ovillo:22:1
 22 | notion en "three whatsits" es "tres chismes"
    | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ¿algo que se puede soltar?
    = ayuda: decir qué es: notion en "…" es "…", as button 12 mm of wood

example.ovillo: 1 aviso

# OV945
error[OV945]: el largo de belt sale de su tejido, así que no se puede dar además
  --> example.ovillo:42:24
 42 |   cord of belt, length 50 cm, at waist, as belt
    |                        ^^^^^
    = ayuda: quitar el largo, o cambiar los puntos o las hileras de belt

example.ovillo: 1 error

# OV946
error[OV946]: este cordón no tiene cabos, y se dice cómo se acaban
  --> example.ovillo:42:50
 42 |   cord of belt, at waist, as belt, no ends, ends knotted
    |                                                  ^^^^^^^
    = ayuda: decir una de las dos cosas: no ends o ends plain

example.ovillo: 1 error

# OV947
aviso[OV947]: de la cadena que cuelga aquí de la pieza no se sabe cómo se rematan sus extremos libres, y no se puede decir qué normas de seguridad rigen
  --> example.ovillo:28:3
 28 |   row: sc in each, ch 20 as tie = 20 (24) sc, 1 space
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ en ella no se teje nada
    = ayuda: decirlo en el acabado, como con cord of body.tie, at waist, as tie, ends plain

example.ovillo: 1 aviso

