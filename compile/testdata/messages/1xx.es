# OV101
error[OV101]: este archivo ocupa más de 2 MB
     --> example.ovillo:41121:33
 41121 | # What a file of another kind holds, read as text.
       |                                 ^

example.ovillo: 1 error

# OV102
error[OV102]: el texto no está guardado como UTF-8: el byte 0xF1 no representa ninguna letra
 --> example.ovillo:2:31
 2 |   title en "Trial band" es "Ba�ada de prueba"
   |                               ^ el primer byte de este tipo
   = ayuda: guardar el archivo de nuevo y elegir UTF-8 como codificación

example.ovillo: 1 error

# OV103
error[OV103]: hay más de 200 paréntesis o bloques unos dentro de otros
  --> example.ovillo:12:212
 12 | …(((((((((((((((((((((((((((((((40)))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))…
    |                                ^ este ya sobra
    = ayuda: dar un nombre a la lista interior con group, o cerrar los paréntesis que quedaron abiertos

example.ovillo: 1 error

# OV104
error[OV104]: esta línea tiene más de 10000 palabras
    --> example.ovillo:2517:11
 2517 |     sc in next,
      |           ^^^^ hasta aquí se ha leído
      = ayuda: repartirla en varias hileras o escribir una sola vez lo que se repite, entre corchetes: [ … ] 20 times

example.ovillo: 1 error

# OV105
nota[OV105]: se han encontrado más de 500 fallos; los que siguen a este lugar no se muestran
   --> example.ovillo:501:1
 501 | Dear knitters and crocheters
     | ^^^^
     = ayuda: corregir los primeros y comprobar de nuevo

example.ovillo: 1 nota

# OV163
error[OV163]: este archivo tiene más de 120000 líneas
      --> example.ovillo:120001:1
 120001 | # A list.
        | ^ a partir de aquí no se ha leído nada
        = ayuda: escribir una sola vez lo que se repite, con repeat; poner en archivos distintos los patrones que están en uno solo

example.ovillo: 1 error

# OV164
error[OV164]: esta palabra tiene más de 64 letras
  --> example.ovillo:12:5
 12 | let widewidewidewidewidewidewidewidewidewidewidewidewidewidewidewidewide = 40
    |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ demasiado larga para una palabra
    = ayuda: elegir un nombre más corto; los textos para las páginas van entre comillas

example.ovillo: 1 error

# OV165
error[OV165]: este texto tiene más de 1000 letras
  --> example.ovillo:14:12
 14 |   title en "Band Band Band Band Band Band Band Band Band Band Band Band Band Band Band Band Band Ban…
    |            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
    = ayuda: un texto entre comillas es un título o un nombre; lo que necesita más espacio va en una note

example.ovillo: 1 error

# OV166
error[OV166]: este número tiene más de 18 cifras
  --> example.ovillo:12:12
 12 | let wide = 4000000000000000000
    |            ^^^^^^^^^^^^^^^^^^^
    = ayuda: escribir el número con las cifras que hacen falta

example.ovillo: 1 error

# OV106
error[OV106]: el nombre "../common.ovillo" sale de la carpeta del patrón
  --> example.ovillo:12:5
 12 | use "../common.ovillo"
    |     ^^^^^^^^^^^^^^^^^^ no es un nombre dentro de ella
    = ayuda: poner el archivo común junto al patrón y nombrarlo: use "common.ovillo", o use "shared/common.ovillo" si está en una carpeta de ahí

example.ovillo: 1 error

# OV107
error[OV107]: no existe el archivo "Common.ovillo" que se quiere usar
  --> example.ovillo:12:5
 12 | use "Common.ovillo"
    |     ^^^^^^^^^^^^^^^ este archivo no se encontró
    = ayuda: poner ahí el archivo, o escribir su nombre tal como es, con mayúsculas y terminación

example.ovillo: 1 error

# OV108
error[OV108]: el archivo "locked.ovillo" no se puede leer
  --> example.ovillo:12:5
 12 | use "locked.ovillo"
    |     ^^^^^^^^^^^^^^^ es el que se quiere usar
    = ayuda: comprobar que el nombre es el de un archivo y que se puede abrir

example.ovillo: 1 error

# OV109
error[OV109]: con "large.ovillo" el patrón ocupa más de 2 MB o tiene más de 120000 líneas
  --> example.ovillo:12:5
 12 | use "large.ovillo"
    |     ^^^^^^^^^^^^^^ este archivo es demasiado
    = ayuda: usar un archivo más pequeño; casi siempre uno así no es un archivo común

example.ovillo: 1 error

# OV110
error[OV110]: los archivos se usan unos a otros en círculo: "circle.ovillo" → "back.ovillo" → "circle.ovillo"
 --> back.ovillo:1:5
 1 | use "circle.ovillo"
   |     ^^^^^^^^^^^^^^^ esto vuelve atrás
   = ayuda: poner en un tercer archivo lo que hace falta en los dos, y que cada uno lo tome de ahí

example.ovillo: 1 error

# OV161
error[OV161]: se usan demasiados archivos: más de 32, o uno a través de más de 8
 --> deep/8.ovillo:1:5
 1 | use "9.ovillo"
   |     ^^^^^^^^^^ aquí sobra uno
   = ayuda: poner lo común de los patrones en menos archivos

example.ovillo: 1 error

# OV162
error[OV162]: lo que empieza por «part» no puede estar en un archivo común de varios patrones
 --> whole.ovillo:1:1
 1 | part edge
   | ^^^^^^^^^ esto es propio de un patrón
   = ayuda: pasarlo al patrón del que trata

example.ovillo: 1 error

# OV111
error[OV111]: aquí ninguna línea puede empezar por «rownd»
  --> example.ovillo:17:3
 17 |   rownd: sc in each
    |   ^^^^^ esta palabra no se conoce al principio de una línea
    = ayuda: una palabra parecida que sí se conoce aquí: round

example.ovillo: 1 error

# OV112
error[OV112]: «round» no puede ir fuera de todo bloque
  --> example.ovillo:12:1
 12 | round: sc in each
    | ^^^^^ esta línea va en otro lugar
    = ayuda: va dentro de un bloque de su clase: chart, part o stitch pattern … end

example.ovillo: 1 error

# OV113
error[OV113]: los puntos van en una hilera, pero esta línea empieza por «sc» y no por round: o row:
  --> example.ovillo:17:3
 17 |   sc in each
    |   ^^ aquí no ha empezado ninguna hilera
    = ayuda: empezar la línea por lo que es: round: sc in each

example.ovillo: 1 error

# OV114
error[OV114]: al bloque «gauge» le falta su end antes de «part»
  --> example.ovillo:12:1
 12 | part band
    | ^^^^ esta línea va fuera de ese bloque
  9 | gauge 10 cm
    | ----------- este bloque sigue abierto
    = ayuda: escribir end en una línea anterior a esta

example.ovillo: 1 error

# OV115
error[OV115]: este end no cierra nada
  --> example.ovillo:20:1
 20 | end
    | ^^^ aquí no hay ningún bloque abierto
    = ayuda: quitar la línea, o reponer la que empezaba su bloque

example.ovillo: 1 error

# OV116
error[OV116]: el archivo acaba, pero al bloque «part» le falta su end
  --> example.ovillo:13:1
 13 | part band
    | ^^^^^^^^^ este bloque sigue abierto
    = ayuda: escribir end detrás de la última línea del bloque

example.ovillo: 1 error

# OV117
error[OV117]: una línea con barra no puede ir aquí
  --> example.ovillo:18:3
 18 |   en | Turn it inside out.
    |   ^^^^^^^^^^^^^^^^^^^^^^^^ es una línea de un texto o de un gráfico
    = ayuda: los textos van en un bloque propio: note … end, con líneas como es | Lavar a mano.

example.ovillo: 1 error

# OV118
error[OV118]: en «note» todas las líneas van detrás de una barra
  --> example.ovillo:19:5
 19 |     Turn it inside out.
    |     ^^^^ esta línea no tiene barra
    = ayuda: escribir el idioma y una barra antes del texto: es | Lavar a mano.

example.ovillo: 1 error

# OV119
error[OV119]: «vuelta» se escribe «round» en el patrón
  --> example.ovillo:17:3
 17 |   vuelta: sc in each
    |   ^^^^^^ la palabra española
    = ayuda: escribir round, o escribir todo el patrón en español, con idioma es en la primera línea

example.ovillo: 1 error

# OV121
error[OV121]: falta cerrar «[»
  --> example.ovillo:17:10
 17 |   round: [sc in next, ch 1, skip 1 around
    |          ^ nada lo cierra
    = ayuda: escribir ] detrás de la última instrucción que le pertenece

example.ovillo: 1 error

# OV122
error[OV122]: «)» no cierra nada, o cierra otro de distinta clase
  --> example.ovillo:17:23
 17 |   round: [sc in next 2) 20 times
    |                       ^ aquí no hay ninguno abierto de esta clase
    = ayuda: ( va con ), y [ con ]: el último abierto se cierra primero

example.ovillo: 1 error

# OV123
error[OV123]: esta línea no está acabada: falta algo detrás de «,»
  --> example.ovillo:17:20
 17 |   round: sc in each,
    |                    ^ no sigue nada que le pertenezca
    = ayuda: quitar el signo, o escribir lo que debía unir; una línea correcta: round: dc in each

example.ovillo: 1 error

# OV124
error[OV124]: falta un espacio en «2sc»
  --> example.ovillo:17:10
 17 |   round: 2sc in each
    |          ^^^ un número y una palabra, sin espacio entre ellos
    = ayuda: poner un espacio entre ambos: 2 sc

example.ovillo: 1 error

# OV125
error[OV125]: el texto que empieza aquí no se cierra en su línea
  --> example.ovillo:13:26
 13 |   name en "sand es "arena"
    |                          ^ las comillas que lo abren
    = ayuda: escribir " detrás de su última letra; unas comillas dentro de un texto se escriben \"

example.ovillo: 1 error

# OV126
error[OV126]: los textos van entre comillas rectas ("), no entre signos como “
  --> example.ovillo:14:11
 14 |   name en “sand” es “arena”
    |           ^ este signo es de otra clase
    = ayuda: escribir " en su lugar; los procesadores de texto cambian este signo por su cuenta, los editores sencillos no

example.ovillo: 1 error

# OV127
error[OV127]: el punto y coma no tiene significado aquí
  --> example.ovillo:17:23
 17 |   round: sc in next 20; sc in each
    |                       ^ este signo
    = ayuda: separar las instrucciones con comas; empezar cada hilera en su propia línea

example.ovillo: 1 error

# OV128
error[OV128]: una llave { solo tiene significado dentro de un texto
  --> example.ovillo:17:10
 17 |   round: {sc in next 2} 20 times
    |          ^ este signo
    = ayuda: las repeticiones van entre corchetes: [sc in next 2] 20 times

example.ovillo: 1 error

# OV129
error[OV129]: el signo «@» no tiene significado aquí
  --> example.ovillo:17:21
 17 |   round: sc in each @
    |                     ^ este signo
    = ayuda: quitarlo; los nombres se componen de letras, cifras y _

example.ovillo: 1 error

# OV130
error[OV130]: «3,75» lleva coma decimal; aquí debe ser un punto
  --> example.ovillo:12:6
 12 | hook 3,75 mm
    |      ^^^^ se lee como dos números
    = ayuda: escribir 3.75

example.ovillo: 1 error

# OV131
error[OV131]: «around» no encaja aquí
  --> example.ovillo:17:21
 17 |   round: sc in each around
    |                     ^^^^^^ hasta aquí se puede leer la línea
    = ayuda: se escribe así: dc in next 5

example.ovillo: 1 error

# OV132
error[OV132]: detrás de «front» viene loops
  --> example.ovillo:18:23
 18 |   close through front lops
    |                       ^^^^ aquí está «lops»
    = ayuda: una palabra parecida a «lops» que puede ir aquí: loops

example.ovillo: 1 error

# OV133
error[OV133]: falta un nombre detrás de «as»
  --> example.ovillo:17:24
 17 |   round: sc in each as 2
    |                        ^ aquí está «2»
    = ayuda: escribir una palabra de letras, cifras y _ que empiece por letra: dc in next 5 as front

example.ovillo: 1 error

# OV134
error[OV134]: «ring» es una palabra del lenguaje y no puede ser un nombre
  --> example.ovillo:17:24
 17 |   round: sc in each as ring
    |                        ^^^^ aquí hace falta un nombre
    = ayuda: elegir otro, o alargarlo: ring_1

example.ovillo: 1 error

# OV135
error[OV135]: falta un número detrás de «ch»
  --> example.ovillo:17:24
 17 |   round: sc in next, ch, skip 1, sc in each
    |                        ^ aquí está «,»
    = ayuda: se escribe así: ch 3

example.ovillo: 1 error

# OV136
error[OV136]: falta un valor detrás de «20 +»
  --> example.ovillo:12:17
 12 | let wide = 20 + * 2
    |                 ^ aquí está «*»
    = ayuda: escribir un número, una longitud como 20 cm o el nombre de un valor; una línea correcta: let leg = 48 (52, 56)

example.ovillo: 1 error

# OV137
error[OV137]: falta un texto entre comillas detrás de «en»
  --> example.ovillo:13:11
 13 |   name en sand es arena
    |           ^^^^ aquí está «sand»
    = ayuda: ponerlo entre comillas: "sand"

example.ovillo: 1 error

# OV138
error[OV138]: falta el idioma del texto detrás de «name»
  --> example.ovillo:13:8
 13 |   name "sand"
    |        ^^^^^^ aquí está «sand»
    = ayuda: escribir en o es delante de cada texto: name en "sand" es "arena"

example.ovillo: 1 error

# OV139
error[OV139]: falta un lugar detrás de «in»
  --> example.ovillo:17:15
 17 |   round: sc in
    |               ^ aquí acaba la línea
    = ayuda: decir dónde: next, each, same, first, last 2, o el nombre de un marcador o de una etiqueta

example.ovillo: 1 error

# OV140
error[OV140]: falta un punto detrás de «2»
  --> example.ovillo:17:12
 17 |   round: 2 in each
    |            ^^ aquí está «in»
    = ayuda: el número va delante de su punto: 2 sc in next

example.ovillo: 1 error

# OV141
error[OV141]: falta una instrucción detrás de «:»
  --> example.ovillo:17:9
 17 |   round:
    |         ^ aquí acaba la línea
    = ayuda: escribir lo que se teje: round: dc in each

example.ovillo: 1 error

# OV142
error[OV142]: aquí faltan los dos puntos
  --> example.ovillo:17:8
 17 |   round sc in each
    |        ^ separan el comienzo de la línea de lo que sigue
    = ayuda: se escribe así: round: dc in each

example.ovillo: 1 error

# OV143
error[OV143]: falta una coma entre «sc in next 20» y «ch 1»
  --> example.ovillo:17:24
 17 |   round: sc in next 20 ch 1, skip 1, sc in each    = 39 sts, 1 space
    |                        ^^ aquí empieza otra cosa
    = ayuda: escribir sc in next 20, ch 1

example.ovillo: 1 error

# OV144
error[OV144]: detrás de but va una talla entre comillas y su valor
  --> example.ovillo:12:19
 12 | let wide = 40 but 44
    |                   ^^ aquí está «44»
    = ayuda: nombrar antes la talla: stitches(52 cm, sc) but "M" 91

example.ovillo: 1 error

# OV145
error[OV145]: los paréntesis detrás de un número llevan los números de las demás tallas, y nada más
  --> example.ovillo:12:19
 12 | let wide = 40 (44 cm)
    |                   ^^ aquí está «cm»
    = ayuda: escribir los números separados por comas: 96 (104, 112); la unidad va detrás del paréntesis

example.ovillo: 1 error

# OV146
error[OV146]: falta algo detrás del punto en «fit.»
  --> example.ovillo:12:16
 12 | let half = fit.
    |                ^ aquí acaba la línea
    = ayuda: escribir un nombre, un número, first o last: body.right_gap, corner.2, front.last

example.ovillo: 1 error

# OV151
error[OV151]: el grupo entre paréntesis no dice en qué lugar va
  --> example.ovillo:17:23
 17 |   round: (sc, ch 1, sc), sc in each    = 41 sts, 1 space
    |                       ^ aquí acaba el grupo
    = ayuda: decir dónde: (2 dc, ch 2, 2 dc) in next

example.ovillo: 1 error

# OV152
error[OV152]: la repetición entre corchetes no dice cuántas veces se teje
  --> example.ovillo:17:35
 17 |   round: [sc in next, 2 sc in next]
    |                                   ^ aquí acaba la repetición
    = ayuda: decir cuántas: 6 times, around, across, to m1 o to last 3

example.ovillo: 1 error

# OV153
error[OV153]: un número detrás de un punto, «sc 4», puede leerse de dos maneras
  --> example.ovillo:17:11
 17 |   round: [sc 4, inc] around
    |           ^^^^ ¿uno en cada uno de 4, o 4 en un mismo lugar?
    = ayuda: para uno en cada uno:
             sc in next 4
             para todos en un mismo lugar:
             4 sc in next

example.ovillo: 1 error

# OV154
error[OV154]: el asterisco no marca aquí una repetición
  --> example.ovillo:17:10
 17 |   round: *sc in next 3, 2 sc in next
    |          ^ este signo
    = ayuda: poner entre corchetes lo que se repite: [sc in next 3, inc] around

example.ovillo: 1 error

# OV155
error[OV155]: «between next» puede leerse de dos maneras
  --> example.ovillo:17:21
 17 |   round: sc between next 40
    |                     ^^^^ ¿un espacio entre dos puntos, o dos?
    = ayuda: para uno: in next gap
             para dos: in next 2 gaps
             para todos: between each

example.ovillo: 1 error

# OV156
error[OV156]: «in 40» no dice qué 40 lugares
  --> example.ovillo:17:16
 17 |   round: sc in 40
    |                ^^ un número
    = ayuda: escribir in next 40

example.ovillo: 1 error

# OV157
error[OV157]: «in next 2 rounds below» puede leerse de dos maneras
  --> example.ovillo:19:23
 19 |   round: sc in next 2 rounds below, skip 1, sc in each
    |                       ^^^^^^ ¿2 lugares, o 2 rounds más abajo?
    = ayuda: decir cuál es el lugar: in next st 2 rounds below

example.ovillo: 1 error

# OV158
error[OV158]: las hileras se numeran solas, así que «round 1» no puede empezar una
  --> example.ovillo:17:9
 17 |   round 1: sc in each
    |         ^ este número no hace falta
    = ayuda: omitir el número: round: sc in each
             o dar un nombre a la hilera: round divide: sc in each

example.ovillo: 1 error

# OV159
error[OV159]: «in» es inglés, y este patrón está escrito en otro idioma
  --> example.ovillo:11:14
 11 |   vuelta: pb in cada
    |              ^^ una palabra en inglés
    = ayuda: escribir en

example.ovillo: 1 error

# OV160
error[OV160]: no se puede escribir un patrón en el idioma que nombra esta línea
 --> example.ovillo:1:1
 1 | idioma es-XX
   | ^^^^^^^^^^^^ no está entre los conocidos
   = ayuda: las etiquetas que pueden ir aquí: es, es-ES, es-MX, es-AR, es-CL o es-EC; sin esta línea, el patrón está en inglés

example.ovillo: 1 error

