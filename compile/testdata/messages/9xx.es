# OV901
aviso[OV901]: el patrón no dice qué se hace, y no se puede saber qué normas de seguridad rigen
 --> example.ovillo
   = ayuda: decirlo en el encabezado: kind trousers, kind hat, kind blanket

example.ovillo: 1 aviso

# OV902
aviso[OV902]: el patrón no dice para qué edad es, y no se puede saber qué normas de seguridad infantil rigen
 --> example.ovillo:7:1
 7 | sizes "S", "M"
   | ^^^^^^^^^^^^^^
   = ayuda: dar la edad de la persona más joven de cada talla: age 12 (24) months; para adultos, age 18 years

example.ovillo: 1 aviso

# OV903
aviso[OV903]: no se sabe en qué lugar de la prenda está este cordón ni, por tanto, qué normas de seguridad rigen
  --> example.ovillo:33:3
 33 |   cord with kelp, length 55 (60) cm, through border round 2
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ ¿en la cintura o en el cuello?
    = ayuda: decirlo detrás del cordón: at waist, at neck, at hood, at chest, at hem o at sleeve

example.ovillo: 1 aviso

# OV904
aviso[OV904]: no se sabe cuánto cuelgan libres los extremos de este cordón ni, por tanto, qué normas de seguridad rigen
  --> example.ovillo:33:3
 33 |   cord with kelp, through waistband round 2
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: dar su largo y la hilera por la que pasa: cord with kelp, length 60 cm, through waistband round 2

example.ovillo: 1 aviso

# OV905
aviso[OV905]: trowsers no es una clase de pieza conocida, y no se puede saber qué normas de seguridad rigen
 --> example.ovillo:3:3
 3 |   kind trowsers
   |   ^^^^^^^^^^^^^
   = ayuda: una clase conocida parecida: trousers

example.ovillo: 1 aviso

# OV910
error[OV910]: un extremo libre de este cordón mide 20 cm, más de lo que permite EN 14682:2014 a esta edad: 14 cm
  --> example.ovillo:33:3
 33 |   cord with kelp, length 90 (95) cm, through waistband round 2
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ extremo libre, con la pieza abierta y extendida
    = ayuda: el cordón más largo que respeta el límite: 78 cm en S, 83 cm en M

example.ovillo: 1 error

# OV911
error[OV911]: aquí no se permite un cordón en ropa infantil de esta edad (EN 14682:2014 y 16 CFR 1120)
  --> example.ovillo:33:3
 33 |   cord with kelp, length 55 (60) cm, through hood round 2
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ en el cuello, la capucha o la espalda
    = ayuda: quitar el cordón: dar forma a la abertura con un elástico tejido o cerrarla con un botón y una presilla corta

example.ovillo: 1 error

# OV912
error[OV912]: este cordón de cuello o capucha tiene extremos libres de 5 cm, y EN 14682:2014 no permite ninguno a esta edad
  --> example.ovillo:33:3
 33 |   cord with kelp, length 60 (65) cm, through neckband round 2
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ extremo libre, con la pieza abierta y extendida
    = ayuda: cerrarlo en una lazada que no sobresalga, de 50 cm en S, 55 cm en M como máximo, o quitarlo

example.ovillo: 1 error

# OV913
error[OV913]: aquí no se ponen botones en juguetes para niños pequeños
  --> example.ovillo:33:3
 33 |   button 12 mm, 2
    |   ^^^^^^^^^^^^^^^ una pieza pequeña que se puede tragar
    = ayuda: bordar los ojos o tejerlos

example.ovillo: 1 error

# OV914
error[OV914]: unas aberturas de 0,56 cm en manos o pies de un bebé son mayores que 0,5 cm
  --> example.ovillo:28:3
 28 |   round: [sc in next, ch 2 (3), skip 2 (3)] around = 8 sts, 8 spaces
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ según la muestra, con el tejido en reposo
    = ayuda: tejer esta pieza en un punto cerrado

example.ovillo: 1 error

# OV915
error[OV915]: con esta herramienta no se hacen protectores de cuna (15 USC 2057e, 16 CFR 1309)
 --> example.ovillo:3:3
 3 |   kind cot_bumper
   |   ^^^^^^^^^^^^^^^
   = ayuda: hacer algo para la habitación, no para la cuna

example.ovillo: 1 error

# OV920
aviso[OV920]: un cordón en el gorro, la bufanda o las manoplas de un niño exige cuidado
  --> example.ovillo:33:3
 33 |   cord with kelp, length 60 (65) cm, through brim round 2
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ con este paso se imprime una precaución
    = ayuda: dar a la pieza una forma que se sujete sin cordón

example.ovillo: 1 aviso

# OV921
aviso[OV921]: los botones en ropa para un menor de 3 años exigen cuidado
  --> example.ovillo:33:3
 33 |   button 12 mm, 3
    |   ^^^^^^^^^^^^^^^ con este paso se imprime una precaución
    = ayuda: coserlos sobre un refuerzo y probar cada uno con un tirón fuerte

example.ovillo: 1 aviso

# OV922
aviso[OV922]: un pompón para un menor de 3 años exige cuidado
  --> example.ovillo:33:3
 33 |   pompom with kelp, 5 cm, 80 wraps
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ con este paso se imprime una precaución
    = ayuda: no ponerlo para los más pequeños, o coserlo de lado a lado

example.ovillo: 1 aviso

# OV923
aviso[OV923]: unas aberturas de 0,56 cm en cosas de bebé son mayores que 0,5 cm
  --> example.ovillo:28:3
 28 |   round: [sc in next, ch 2 (3), skip 2 (3)] around = 8 sts, 8 spaces
    |   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ según la muestra, con el tejido en reposo
    = ayuda: elegir un punto más denso o forrar la pieza

example.ovillo: 1 aviso

# OV924
aviso[OV924]: un saco capullo o un nido para un bebé exige cuidado
 --> example.ovillo:3:3
 3 |   kind cocoon
   |   ^^^^^^^^^^^ se imprime una precaución
   = ayuda: ofrecerlo para unos minutos, con el bebé despierto y vigilado, nunca para dormir

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
    = ayuda: decir en el acabado qué es: cord of belt, at waist, as belt

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

