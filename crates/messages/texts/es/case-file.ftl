### Qué está mal en un archivo de caso, en los límites o en otro archivo de ajustes; y qué dice
### el sistema de un archivo.

in-line = línea { $line }: { $fault }
of-file = { $path }: { $problem }
settings-unreadable = { $path }: no se puede leer ({ $reason }); indique { $wanted }
wanted-case-file = la ruta de un archivo de caso o de un archivo nombrado en él
wanted-scanner-file = el archivo de escáner que escribe «archproof artefact»
wanted-protocol = la ruta de un archivo de protocolo
wanted-artefact = la descripción del patrón, un archivo TOML
wanted-baseline = un archivo escrito por «archproof baseline DIR --write FILE»
system-says = { $kind ->
    [missing] el archivo no existe
    [locked] sin permiso de acceso
    [exists] ya existe
    [no-folder] una parte de la ruta no es una carpeta
    [folder] es una carpeta
    [full] el disco está lleno
    [read-only] el disco es de solo lectura
    [special] no es un archivo corriente
    [no-text] no es un texto en UTF-8
    [large] es demasiado grande para un archivo de este tipo
   *[other] { $reason }
}

## El texto mismo.

toml-backslash = hay una barra invertida en una ruta: escriba C:/scans/upper.ply o ponga la ruta entre comillas simples ('C:\scans\upper.ply')
toml-unknown = { $what ->
    [value] valor desconocido
   *[key] clave desconocida
}: `{ $name }`{ $is ->
    [near] ; ¿quiso decir { $nearest }?
   *[far] .
} Aquí se admiten: { $known }
toml-missing = falta la clave `{ $key }`
toml-twice = la misma clave aparece dos veces
toml-kind = valor de tipo incorrecto: { $given }; se necesita { $wanted }
toml-given-text = el texto { $value }
toml-given-number = { $kind ->
    [integer] el número entero
   *[fraction] el número decimal
} { $value }
toml-given-truth = el valor lógico { $value }
toml-given-list = una lista
toml-given-table = una tabla
toml-wanted-number = un número
toml-wanted-text = un texto entre comillas
toml-wanted-path = una ruta entre comillas
toml-wanted-truth = true o false
toml-wanted-list = una lista
toml-wanted-point = una lista de tres números
toml-wanted-table = { $words ->
   *[other] una sección con sus propias claves
}
toml-wanted-parts = se necesita el nombre de un archivo entre comillas o una lista con los archivos de las partes
toml-wanted-scanner = scanner es la ruta de un archivo de escáner o una tabla con length_uncertainty_mm y source
toml-other = { $kind ->
    [unclosed] hay un corchete o una llave sin cerrar
    [unquoted] un texto va entre comillas
    [open-text] faltan las comillas de cierre
    [more] después del valor hay algo más; un dato por línea, los números con punto decimal
    [number] no es un número válido; escriba los números con punto decimal, como 2.5
    [length] la lista no tiene el número de valores necesario
   *[other] no es TOML válido: { $text }
}

## El caso.

case-no-id = el caso necesita un nombre de caracteres imprimibles (un seudónimo, nunca el nombre del paciente)
case-no-impression = no se nombra ninguna impresión; indique before_wash, wash u one_step en [maxillary] o [mandibular]
case-empty-jaw = no se nombra ninguna impresión de este maxilar; indique before_wash, wash u one_step, o quite la sección
case-one-step-and-stages = one_step aparece junto a before_wash o wash; indique solo one_step, o los pasos de una técnica con lavado
case-reading-not-finite = una lectura en [jaw_relation] debe ser un número finito
case-value-and-readings = una dimensión vertical figura como valor y también como lecturas; indique solo una de las dos cosas
case-hours = las horas desde la toma de la impresión deben ser un número mayor o igual que 0
case-stop-not-finite = un tope tisular necesita tres números finitos
case-stops-without-tray = se indican topes tisulares, pero ninguna cubeta; son lugares del escaneo de la cubeta
case-relieved-alone = tray_relieved es la cubeta ya rebajada, entre dos pasos: indique el escaneo de la cubeta antes de rebajarla como tray, y las impresiones como before_wash y wash
case-sent-alone = se indica un escaneo de la impresión al enviarla, pero ninguno al recibirla; nómbrelo con la misma clave sin _as_sent
case-no-parts = la lista de las partes de la impresión está vacía; nombre el escaneo de cada parte o un solo escaneo del conjunto
case-parts-without-tray = una impresión en partes necesita el escaneo de su cubeta entera, sobre el que se colocan; indíquelo como tray
case-no-pieces = la lista de las piezas de la cubeta está vacía; nombre el escaneo de cada pieza o un solo escaneo del conjunto
case-pieces-not-whole = una cubeta en piezas no puede servir de base a una impresión en partes ni compararse con tray_relieved; una las piezas y escanee la cubeta entera
case-unknown-landmark = '{ $name }' no es un punto anatómico; se conocen { $known }
case-landmark-side = { $landmark }: { $lies ->
    [aside] está a la derecha o a la izquierda; indique el lado (side)
   *[midline] está en la línea media; quite el lado (side)
}
case-mark-not-finite = la posición de un punto anatómico necesita tres números finitos
case-marked-twice = { $landmark }: marcado dos veces
case-time = scanned_at necesita una fecha de los años 2000 a 2099 (ISO 8601), como 2026-03-04, o fecha y hora, como 2026-03-04T10:20:00+01:00; sin zona horaria, la hora se toma como UTC
case-colour = '{ $text }' no es un color: indíquelo como #rrggbb, tal como se ve en el escaneo
case-thickness = una cubeta de { $given } mm de grosor no es posible: indique un grosor de { $least } a { $most } mm
case-uncertainty = una incertidumbre de { $given } mm no es posible: indique 0 mm o más
case-no-thickness = se indica una incertidumbre, pero ningún grosor de la cubeta

label-key = una clave en [labels] necesita de 1 a { $longest } minúsculas, cifras, _ o -
label-personal = las etiquetas nunca nombran a una persona: quite '{ $key }'
label-value = la etiqueta '{ $key }' necesita de 1 a { $longest } letras, cifras, ., _ o -, sin espacios
label-name = la etiqueta '{ $key }' parece un nombre; escriba un código, como op-3, o minúsculas si no es un nombre
label-too-many = se indican más de { $most } etiquetas; conserve aquellas por las que se comparan los resultados

scanner-impossible = length_uncertainty_mm = { $given } no es posible: el valor está entre 0 y 1 mm (k = 2)

## Límites.

limit-unit-other = la unidad de { $key } es { $own }, no { $given }; convierta el valor
limit-without-zones = { $key } no puede variar según la zona
limit-impossible = { $key } = { $value } no es posible: { $why }
impossible-no-number = debe ser un número
impossible-negative = el valor no puede ser negativo
impossible-less = { $first ->
    [greater] { $greater } ({ $other }) debe ser mayor que { $lesser } ({ $is })
   *[lesser] { $lesser } ({ $is }) debe ser menor que { $greater } ({ $other })
}
impossible-cover-uncertainty = cover_uncertainty_mm ({ $is }) no debe ser mayor que thin_cover_mm menos show_through_mm ({ $room })
impossible-share = una proporción es como máximo del 100 %
impossible-confidence = una confianza es como máximo 1
impossible-median-edge = el grosor del material no se mide sobre triángulos de más de { $coarsest } mm
impossible-required = el valor es 1 (exigido) o 0 (no exigido)
impossible-least-and-most = { $of ->
    [interocclusal] la distancia interoclusal mínima debe ser menor que la máxima
    [usual-interocclusal] la distancia interoclusal habitual mínima debe ser menor que la máxima
    [lip] la longitud mínima del labio superior debe ser menor que la máxima
    [papilla] la distancia mínima de la papila a la línea labial debe ser menor que la máxima
   *[disinfection] el tiempo mínimo de desinfección debe ser menor que el máximo
}
impossible-angle = el ángulo entre dos planos es como máximo de 90°
impossible-stop-size = un tope tisular tiene un tamaño
impossible-flange-depth = el grosor de la aleta se mide de { $least } a { $most } mm por debajo del borde
