### Por qué no se pudo ejecutar una orden.

said-in-the-case-file = { $name } no se puede usar con un archivo de caso: escríbalo en el archivo de caso
said-case-name = { $name } necesita un nombre de caracteres imprimibles (un seudónimo, nunca el nombre del paciente)
named-scan-refused = { $path }: la línea { $line } nombra un escaneo que no se puede leer: { $refused }

## Las cubetas vacías.

shelf-folder = { $path }: no se puede examinar ({ $reason }); indique la carpeta con los escaneos de las cubetas vacías
shelf-no-trays = { $path }: no contiene ningún escaneo de una cubeta (STL, PLY, OBJ); escanee una vez cada cubeta de stock vacía y guarde ahí los escaneos
shelf-same = { $path }: { $one } y { $other } son el mismo escaneo; saque uno de ellos de la carpeta
shelf-impression = { $path }: es el escaneo de la propia impresión; sáquelo de la carpeta de las cubetas vacías
shelf-scan = { $refused }; exporte de nuevo el escaneo de esta cubeta o saque el archivo de la carpeta de las cubetas vacías
fit-no-shelf = no se indican cubetas: nombre la carpeta con sus escaneos con --trays, o como trays en el protocolo
fit-no-mouth = { $path }: no muestra un maxilar edéntulo ({ $why }); indique un escaneo de una impresión, de la boca o de un modelo

## Un archivo de caso propuesto.

proposal-folder = { $path }: no se puede examinar ({ $reason }); indique una carpeta que pueda leer
proposal-no-scans = { $path }: no contiene ningún escaneo (STL, PLY, OBJ); indique otra carpeta
proposal-in-the-way = { $path }: ya es un archivo de caso; compruébelo o sustitúyalo por uno nuevo con --force
proposal-name = { $path }: el nombre no es un texto válido y no se puede escribir en un archivo de caso; cambie el nombre del escaneo
ids-columns = la línea 1 necesita las columnas folder e id
ids-no-id = la línea { $line } necesita un id de caracteres imprimibles, un seudónimo
ids-no-scans = la línea { $line } nombra una carpeta sin escaneos
ids-twice = la línea { $line } repite una carpeta o un id
ids-no-table = no es una tabla legible: { $reason }

## Escribir.

unwritten-no-folder = { $path }: no se pudo escribir: su carpeta no existe; créela primero
unwritten-permission = { $path }: no se pudo escribir: no hay permiso de escritura en su carpeta; elija otra carpeta
unwritten-read-only = { $path }: no se pudo escribir: el disco es de solo lectura; elija otra carpeta
unwritten-full = { $path }: no se pudo escribir: el disco está lleno; libere espacio e inténtelo de nuevo
unwritten-folder-there = { $path }: no se pudo escribir: una carpeta tiene ese nombre; elija otro nombre
unwritten-file-there = { $path }: no se pudo escribir: en lugar de su carpeta hay un archivo; elija otra carpeta
unwritten-other = { $path }: no se pudo escribir: { $reason }; compruebe la carpeta y el disco
unwritten-content = { $path }: no se pudo escribir: { $reason }
encode-ending = termine su nombre en .ply, .stl u .obj
encode-no-colour = este formato no admite color, y el escaneo lo tiene; termine el nombre en .ply
encode-too-many = { $triangles } triángulos son más de los que puede contar un STL binario (4.294.967.295)
results-unwritten = { $path }: no se puede escribir ({ $reason }); libere espacio o elija otra carpeta
results-no-table = no se puede crear la tabla del borde: { $reason }
results-no-picture = no se pueden crear las imágenes del informe: { $reason }
results-no-map = no se puede crear el mapa de grosores: { $reason }
demo-unwritten = { $path }: no se puede escribir ({ $reason }); libere espacio o indique otra carpeta
demo-in-the-way = { $path }: ya es un caso; indique otra carpeta para la demostración
new-file-unwritten = { $path }: no se puede escribir ({ $reason }); indique un archivo que aún no exista
over-itself = { $path }: es el propio escaneo; indique otro archivo para escribir
output-unwritten = no se puede escribir en la salida estándar ({ $reason })
tables-unwritten = no se pueden escribir las tablas ({ $reason }); libere espacio o indique otra carpeta
tables-no-csv = no se puede crear una tabla CSV: { $reason }
tables-no-workbook = no se puede crear summary.xlsx ({ $reason }); libere espacio o indique otra carpeta
tables-no-parquet = no se puede crear una tabla Parquet: { $reason }

## Resultados que se vuelven a leer.

result-unreadable = { $path }: no se puede leer ({ $reason }); indique la carpeta que escribió «archproof check»
result-of-another-version = { $path }: no es un resultado de esta versión ({ $reason }); compruebe el caso de nuevo
baseline-unreadable = { $path }: no se puede leer ({ $reason }); indique una carpeta que escribió «archproof batch»
baseline-too-few = { $path }: de ningún maxilar y paso hay { $least } impresiones con fecha conocida; una base de referencia necesita ese número

## Una carpeta de casos.

batch-folder = { $path }: no se puede recorrer ({ $reason }); indique una carpeta que se pueda leer
batch-no-cases = { $path }: no contiene archivos de caso ni escaneos que cumplan el patrón; indique otra carpeta, o --scans PATTERN
batch-pattern = un patrón de escaneos es un nombre de archivo con un *, como '*-upper.ply'
batch-unwritten = { $path }: no se puede escribir ({ $reason }); libere espacio o indique otra carpeta
batch-in-use = { $path }: otra ejecución escribe ahí; espere a que termine o indique otra carpeta
batch-into-itself = { $path }: se indica para leer y para escribir; indique otra carpeta con --out
batch-in-the-way = { $path }: ya contiene resultados; añada --resume para continuarlos o indique otra carpeta
batch-unfinished = { $path }: no contiene resultados terminados; termínelos primero con «archproof batch … --resume»
batch-no-results = { $path }: no contiene resultados de «archproof check» ni de «archproof batch»; indique la carpeta que escribieron
batch-unlike = { $path }: se hizo con otra versión, otros límites u otro número de partes; solo se pueden unir partes del mismo trabajo
batch-shard-twice = { $path }: repite la parte { $shard }; nombre cada parte una sola vez
batch-shards-missing = faltan las partes { $shards }; indique las carpetas de todas
no-threads = no se pudieron iniciar los hilos ({ $reason }); pruebe un número menor con --threads

## Otras órdenes.

unknown-code = '{ $code }' no es el código de ninguna comprobación{ $is ->
    [near] ; ¿quiso decir { $nearest }?
   *[far] {""}
}
unknown-code-of-all = { $refused } («archproof explain» los enumera todos)
unknown-topic = '{ $name }' no es una orden ni un tema; «archproof help» los enumera todos
no-drawings = solo la página sobre el escaneo tiene dibujos: «archproof help scanning --html FILE»
no-certified-length = la descripción del patrón no certifica ninguna medida; indique un diámetro, una distancia o un escalón
sheet-not-opened = la hoja se escribió, pero no se puede abrir ({ $reason }); ábrala a mano
no-viewer = la ventana es un programa aparte, archproof-viewer, y no está junto a este ni en el PATH; instálelo con «cargo install --path viewer --locked»
viewer-not-started = archproof-viewer no se puede iniciar ({ $reason }); instálelo de nuevo con «cargo install --path viewer --locked»
explain-one = «archproof explain CODE» muestra la página de un código.
help-topics = Temas («archproof help TOPIC»):
page-written = Escrito: { $path }
clean-written = { $path }: { $triangles ->
    [one] 1 triángulo
   *[other] { $triangles } triángulos
}, { $vertices } vértices{ $colours ->
    [some] {" con colores"}
   *[none] {""}
}, { $format }, sin ningún texto
clean-reading = Al leer: { $warning }
clean-attribute-bytes = se omitieron los bytes de atributos de sus triángulos
protocol-written = Se escribió { $path }. Cambie los límites que necesite y después ejecute: archproof protocol check { $path }
protocol-usable = { $path }: se puede usar ({ $name })

## Qué se hace con una ruta indicada por sí sola.

start-case-file = { $path }: un archivo de caso; se comprueba. Los resultados van a una carpeta a su lado.
start-scan = { $path }: un solo escaneo; se comprueba por sí mismo, como impresión en un paso, sin su cubeta. Los resultados van a una carpeta a su lado.
start-scans = { $path }: { $folders ->
    [one] escaneos sin archivo de caso; se propone uno.
   *[other] { $folders } carpetas con escaneos sin archivo de caso; se propone uno para cada una.
}
start-open = No se comprobó: responda primero en el archivo de caso lo que está abierto y empiece de nuevo con él.
start-checked = { $path }: se comprueba. Los resultados van a una carpeta a su lado.
start-cases = { $path }: { $cases } casos, que se comprueban a la vez.
proposal-left = { $path }: ya es un archivo de caso y se dejó como está
proposal-open = Abierto: { $question }
proposal-written = Se escribió { $path }. Léalo y después: archproof check { $path }
proposal-written-open = Se escribió { $path }. Cada pregunta abierta figura en él como comentario; respóndala ahí.
