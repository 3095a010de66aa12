### La línea de órdenes: ayuda de órdenes y opciones, y lo que no se pudo entender. El texto inglés
### está en el código fuente, junto a las propias órdenes y opciones, o es el de clap.

## Palabras en torno a la ayuda.

help-word-usage = Uso:
help-word-commands = Órdenes
help-word-arguments = Argumentos
help-word-options = Opciones
help-word-default = [por omisión: { $value }]
help-word-values = [valores posibles: { $values }]
help-word-values-listed = Valores posibles:
help-word-help = Mostrar la ayuda
help-word-help-short = Mostrar la ayuda (más con «--help»)
help-word-help-long = Mostrar la ayuda (más breve con «-h»)
help-word-version = Mostrar la versión
help-heading-how-scans-are-checked = Cómo se comprueban los escaneos

## Las órdenes en una línea.

help-command-archproof = Comprueba la calidad de los escaneos 3D de impresiones de arcadas edéntulas.
help-command-check = Comprobar el escaneo de una impresión, o un caso de varios
help-command-batch = Comprobar todos los casos de una carpeta, varios a la vez
help-command-collect = Unir los resultados de todas las partes en un solo juego de tablas
help-command-watch = Vigilar una carpeta y comprobar cada caso nuevo en cuanto sus archivos estén completos
help-command-baseline = Fijar los límites de los gráficos de control a partir de los resultados de una época buena
help-command-judge = Evaluar de nuevo resultados ya medidos con otros límites, sin medir de nuevo
help-command-artefact = Comprobar un escáner con un patrón de esferas y escalones de medidas certificadas
help-command-gauge = Analizar un estudio de repetibilidad y reproducibilidad del sistema de medida
help-command-agreement = Comparar los dictámenes de personas entre sí y con el programa
help-command-control = Decir si la medición está bajo control, con un patrón de comprobación medido una y otra vez
help-command-inspect = Enumerar escaneos con tamaño, unidad, tipo y calidad, una fila por archivo
help-command-fit = Decir cuál de sus cubetas de existencias se ajusta a una boca
help-command-new = Proponer un archivo de caso a partir de los escaneos de una carpeta
help-command-clean = Escribir un escaneo sin el texto que contiene, que puede nombrar a una persona
help-command-demo = Escribir en una carpeta un caso de demostración, con una historia inventada
help-command-explain = Explicar una comprobación: qué es, por qué importa, cómo se mide, qué no se sabe
help-command-protocol = Mostrar, escribir o comprobar los límites de aceptación
help-command-protocol-show = Mostrar un protocolo con cada límite y su fuente; sin archivo, el incluido
help-command-protocol-new = Escribir cada límite con su fuente en un archivo nuevo, para modificarlo
help-command-protocol-check = Decir si un archivo de protocolo se puede usar
help-command-repeat = Comparar escaneos repetidos de una impresión
help-command-schema = Mostrar el esquema JSON de result.json o de otra salida
help-command-completions = Mostrar un script con el que un intérprete de órdenes completa órdenes y opciones
help-command-manual = Escribir en una carpeta las páginas del manual, una por orden
help-command-help = Mostrar la ayuda de una orden, o una página sobre un tema
help-command-view = Mostrar un resultado sobre la impresión, en una ventana

## Lo que hay que decir además de una orden.

help-more-check = Estado de salida: 0 aceptar; 1 retocar o repetir la impresión; 3 sin decidir; 2 uso incorrecto o entrada ilegible.
help-more-batch = Son casos los archivos de caso de la carpeta y de las que contiene o, con --scans, los escaneos con tales nombres. DIR recibe una carpeta por caso, tablas de todos ellos (results.jsonl, resumen y hallazgos en CSV y Parquet, summary.xlsx) e inputs.csv, que dice de qué caso es cada archivo. Los casos que no se pueden leer figuran como filas con el motivo. La última línea cuenta los dictámenes. Estado de salida: 0 si se comprobaron todos los casos, fueran cuales fueran los dictámenes; 1 si alguno no se pudo leer o recibió un dictamen de --fail-on; 2 uso incorrecto.
help-more-collect = Los resultados de los casos se quedan donde están. Estado de salida: el mismo que el de «archproof batch».
help-more-watch = Ejecuta «archproof batch --resume» una y otra vez hasta que se detenga (Ctrl-C). Un caso solo se comprueba de nuevo si cambian sus archivos.
help-more-baseline = De cada maxilar y fase con 20 impresiones o más: línea central, desviación típica y número de cada magnitud con gráfico, y la proporción que no cumple. «archproof batch --baseline» evalúa según ellos los casos posteriores.
help-more-judge = Dice qué casos cambian de dictamen y por qué. Una comprobación solo se evalúa de nuevo donde los resultados contienen todas sus medidas; si no, el caso cuenta como «medir de nuevo» y nunca como aprobado.
help-more-artefact = Errores de los diámetros y de las distancias entre centros, en el sentido de ISO 12836 e ISO 10360, y si cada uno está dentro del límite que indica la descripción. Estado de salida: 0 todo conforme; 1 algo no conforme; 3 en el límite, o sin límite indicado; 2 uso incorrecto, o el patrón no está en un escaneo.
help-more-gauge = Por análisis de la varianza de dos factores aleatorios cruzados. Donde los operadores no difieren de una pieza a otra (p superior a 0,25), eso se agrupa con las repeticiones.
help-more-agreement = Según la proporción de concordancia más allá del azar (kappa de Cohen y de Fleiss), y según lo que cada evaluador no detecta o rechaza sin motivo con respecto a uno elegido.
help-more-control = La carpeta contiene resultados de una impresión («archproof check --out DIR/WEEK») o del patrón de referencia («archproof artefact … --json > DIR/WEEK.json»), uno por cada vez. Se ordenan según las fechas de sus archivos de escaneo. Estado de salida: 0 bajo control en la última medición; 1 fuera de control; 3 demasiado pocas; 2 uso incorrecto.
help-more-inspect = Columnas: tamaño en mm; unidad (con un signo de interrogación donde es dudosa); lo que muestra el escaneo; lados escaneados; número de partes conexas, de contornos abiertos y de defectos (aristas de tres triángulos o más y triángulos sin área); mediana de las aristas en mm; ruido en mm; nombre del archivo y observaciones. Estado de salida: 0; 2 si algún archivo no se pudo leer, lo que se dice en su fila.
help-more-fit = De cada cubeta: la posición de holgura más uniforme, la holgura mínima y la mediana en ella, dónde toca, y la distancia de su canto al borde. Estado de salida: 0 tome una tal como está; 1 ninguna se ajusta tal como está; 3 ninguna cubeta de este maxilar; 2 uso incorrecto o entrada ilegible.
help-more-new = Se examina cada escaneo: cuál es una impresión y de qué maxilar, cuál una cubeta y de qué impresión, cuál el registro intermaxilar y, de dos impresiones de un maxilar, cuál es el lavado. Una tabla dice por qué se tomó cada uno, con qué seguridad y por qué motivo. Lo que las superficies no muestran se pregunta o, sin terminal, se deja en el archivo de caso como comentario. Una carpeta de tales carpetas recibe un archivo de caso en cada una. Estado de salida: 0 nada queda abierto; 3 queda abierta una pregunta; 2 uso incorrecto.
help-more-clean = Se omiten la cabecera, los comentarios y los nombres; los vértices, triángulos y colores quedan como están, salvo los triángulos sin área o repetidos.
help-more-repeat = Los escaneos se alinean con el primero. Indica la dispersión en cada punto, las zonas donde los escaneos difieren más de lo que explican el ruido y la alineación, y la desviación típica de repetibilidad de cada magnitud que da «check».
help-more-completions = Para bash, escríbalo en ~/.local/share/bash-completion/completions/archproof; para zsh, en _archproof en una carpeta de $fpath; para fish, en ~/.config/fish/completions/archproof.fish. El paquete de Debian incluye los tres.
help-more-help = Sin nombre se enumeran las órdenes y los temas.
help-more-view = Un caso o un escaneo se comprueba primero, con las opciones de «check». La ventana es un programa aparte, archproof-viewer, que se busca junto a este o en el PATH.

## Opciones que significan lo mismo en varias órdenes.

help-option-unit = Unidad de los archivos de escaneo, si no es mm
help-option-protocol = Archivo con sus propios límites de aceptación
help-option-language = Idioma de lo que se muestra [por omisión: el del sistema]
help-option-folder = Carpeta con los casos
help-option-out = Carpeta para los resultados
help-option-scans = Nombres de los escaneos de impresiones que son casos sin archivo de caso, como «*-upper.ply»
help-option-trays = Nombres de sus cubetas, donde * representa lo mismo, como «*-tray.stl»
help-option-ids-from-names = Declarar que lo que representa el * es un seudónimo, y nombrar los casos según él
help-option-arch = Maxilar de los escaneos sin archivo de caso
help-option-stage = Fase de sus impresiones [por omisión: one-step]
help-option-no-report = No escribir report.html ni hoja de los casos
help-option-memory = Memoria para los casos en curso, como 8GiB o en bytes
help-option-threads = Casos que se comprueban a la vez [por omisión: uno por núcleo]
help-option-baseline = Límites fijados de los gráficos de control, escritos por «archproof baseline»
help-option-by = Etiqueta por la que se separan los gráficos de control, además de maxilar y fase
help-option-rules = Reglas de los gráficos de control, como beyond-limits,ewma; también two-of-three, four-of-five, eight-in-a-row [por omisión: beyond-limits,ewma]
help-option-json = Mostrar los recuentos como JSON («archproof schema batch» los explica)
help-option-fail-on = Dictámenes que ponen el estado de salida en 1, como rework,retake
help-option-file = Archivo de protocolo

## Opciones y argumentos de cada orden.

help-option-check-input = Escaneo de una impresión (STL, PLY, OBJ) o archivo de caso (case.toml)
help-option-check-arch = Maxilar de la impresión (también se entienden upper y lower)
help-option-check-tray = Escaneo de la cubeta vacía
help-option-check-trays = Carpeta con escaneos de sus cubetas de existencias vacías; se encuentra la que corresponde
help-option-check-tray-thickness = Grosor de la cubeta en mm, si no se escaneó
help-option-check-tray-thickness-uncertainty = Incertidumbre (k = 2) de ese grosor en mm [por omisión: 0.5]
help-option-check-tray-colour = Color de la cubeta en un escaneo en color, como #rrggbb [por omisión: el que se halla en el escaneo]
help-option-check-landmarks = Puntos anatómicos marcados a mano (landmarks.toml); sustituyen a los detectados
help-option-check-stage = Fase de la impresión [por omisión: one-step]
help-option-check-out = Carpeta para los resultados [por omisión: archproof-CASE o, sin código de caso, según fecha y suma de comprobación]
help-option-check-case = Código del caso (nunca el nombre del paciente)
help-option-check-language = Idioma del resumen, del informe y de las hojas [por omisión: el del sistema]
help-long-check-language = El resumen en el terminal, los mensajes, el informe, la hoja y la nota de devolución están en este idioma; result.json y las tablas, en inglés.
help-option-check-json = Mostrar result.json en lugar del resumen
help-option-check-no-report = No escribir report.html ni hoja
help-option-check-open = Abrir la hoja cuando esté escrita
help-option-check-return-note = Escribir también una nota de devolución para la clínica, si se le pide algo
help-long-check-return-note = Una página sin los límites del laboratorio (return.html, return.pdf), y un texto para pegar en un mensaje (return.txt).
help-option-check-verbose = Enumerar todos los archivos escritos
help-option-check-times = Mostrar cuánto duró cada paso, en la salida de errores
help-option-check-threads = Número de hilos [por omisión: uno por núcleo]
help-option-batch-resume = Continuar en DIR: se omiten los casos ya comprobados a partir de los mismos archivos, con los mismos límites y la misma versión
help-option-batch-shard = Comprobar la parte I de N de los casos; «archproof collect» une las partes
help-option-batch-language = Idioma de los informes, de las hojas y de la página sobre todos los casos [por omisión: el del sistema]
help-option-watch-language = { help-option-batch-language }
help-option-watch-settle = Segundos durante los que no deben haber cambiado los archivos de un caso
help-option-collect-folders = Carpetas de resultados, una por parte
help-option-collect-out = Carpeta para las tablas
help-option-baseline-dir = Carpeta que escribió «archproof batch» o «archproof collect»
help-option-baseline-write = Archivo que se escribe; si ya existe, se deja como está
help-option-baseline-by = { help-option-by }
help-option-judge-dir = Carpeta que escribió «archproof batch» o «archproof check»
help-option-judge-protocol = Archivo con los límites con que se evalúa
help-option-judge-json = Mostrar una línea de JSON por caso («archproof schema judge» la explica)
help-option-artefact-description = Descripción del patrón, un archivo TOML (véase «archproof help measuring»)
help-option-artefact-scans = Escaneos del patrón, en cualquier posición
help-option-artefact-write = Escribir en este archivo nuevo lo que los escaneos dicen del escáner; nómbrelo como «scanner» en el archivo de caso o en el protocolo
help-option-artefact-json = Mostrarlo todo como JSON
help-option-control-dir = Carpeta con los resultados
help-option-control-first = Mediciones, desde la primera, con las que se forman los límites (8 o más)
help-option-control-rules = Reglas de los gráficos de control, como en «archproof batch» [por omisión: beyond-limits,ewma]
help-option-control-write = Escribir una página con los gráficos en este archivo nuevo
help-option-control-json = { help-option-artefact-json }
help-option-agreement-verdicts = Archivo CSV con una columna «case» y una por evaluador, bajo un código; una celda contiene un dictamen, como accept o rework, o nada
help-option-agreement-beside = Columna con la que se comparan las demás: lo que no detectaron, y falsas alarmas
help-option-agreement-json = Mostrar el estudio como JSON
help-option-gauge-study = Archivo CSV con las columnas operator, part, repeat, value; o una carpeta con OPERATOR/PART/REPEAT, y cada REPEAT un escaneo o una carpeta de resultados
help-option-gauge-least = Mínimo admisible de las lecturas de una tabla, con el que se compara el sistema de medida
help-option-gauge-most = Máximo admisible de las lecturas de una tabla
help-option-gauge-json = { help-option-agreement-json }
help-option-gauge-arch = Maxilar de las impresiones
help-option-gauge-tray = Escaneo de la cubeta vacía común a todos
help-option-gauge-protocol = Archivo de protocolo, por la profundidad a la que se toma el grosor de la aleta
help-option-repeat-scans = Escaneos de una impresión, dos o más
help-option-repeat-out = Carpeta para repeat.json y el mapa spread.ply
help-option-repeat-known = repeat.json de un estudio anterior: evaluar los rangos según sus desviaciones típicas
help-option-repeat-json = Mostrar repeat.json en lugar del resumen
help-option-repeat-arch = { help-option-gauge-arch }
help-option-repeat-tray = { help-option-gauge-tray }
help-option-repeat-protocol = { help-option-gauge-protocol }
help-option-inspect-scans = Escaneos (STL, PLY, OBJ), o carpetas que se recorren
help-option-inspect-json = Mostrar las filas como JSON
help-option-fit-scan = Escaneo de una impresión, de la boca o de un modelo (STL, PLY, OBJ)
help-option-fit-trays = Carpeta con escaneos de sus cubetas de existencias vacías [por omisión: la del protocolo]
help-option-fit-arch = Maxilar (también se entienden upper y lower)
help-option-fit-unit = Unidad del escaneo, si no es mm
help-option-fit-write = Escribir en este archivo nuevo una página con una imagen de cada cubeta en la boca
help-option-fit-json = Mostrar las medidas como JSON
help-option-new-folder = Carpeta con los escaneos de un caso, o con tales carpetas
help-option-new-ids = Seudónimos, un archivo CSV con las columnas folder, id [por omisión: a partir de sumas de comprobación]
help-option-new-stage = Fase de cada impresión que es la única de su maxilar
help-option-new-yes = No preguntar nada; lo dudoso se omite
help-option-new-force = Sustituir un archivo de caso ya existente
help-option-clean-scan = Escaneo (STL, PLY, OBJ)
help-option-clean-out = Archivo que se escribe; su extensión (ply, stl, obj) indica el formato
help-option-demo-dir = Carpeta en la que se escribe; se crea si no existe
help-option-demo-in-pieces = Escribir un caso cuya impresión se cortó en partes y cuya cubeta consta de dos piezas
help-option-explain-code = Código de la comprobación, tal como lo nombran los hallazgos; sin él se enumeran todos los códigos
help-option-explain-language = Idioma de la página [por omisión: el del sistema]
help-option-protocol-show-language = Idioma de los mensajes de error; el protocolo se muestra tal como está [por omisión: el del sistema]
help-option-protocol-new-file = Archivo de protocolo que se escribe; si ya existe, se deja como está
help-option-schema-of = De qué se muestra el esquema
help-option-completions-shell = Intérprete de órdenes para el que se muestra el script
help-option-manual-dir = { help-option-demo-dir }
help-option-help-of = Orden o tema
help-option-help-html = Escribir la página «scanning» con sus dibujos, para imprimirla
help-option-help-language = Idioma de la ayuda [por omisión: el del sistema]
help-option-view-arguments = Carpeta de resultados, archivo de caso (case.toml) o escaneo de una impresión, y opciones

## Lo que significan los valores posibles.

help-value-maxillary = Maxilar superior
help-value-mandibular = Maxilar inferior
help-value-before-wash = El material pesado o de viscosidad media, antes del lavado
help-value-wash = Con el lavado encima
help-value-one-step = Tomada en un paso
help-value-rework = Se debe corregir, y después tomar un lavado
help-value-retake = Se debe repetir la impresión
help-value-undecided = Falta algo, o está demasiado cerca del límite para decidir
help-value-result = result.json
help-value-summary = Una fila de results.jsonl, summary.csv y summary.parquet
help-value-findings = Una fila de findings.jsonl, findings.csv y findings.parquet
help-value-batch = Lo que muestra `batch --json`
help-value-judge = Una línea de lo que muestra `judge --json`
help-value-inspect = Lo que muestra `inspect --json`
help-value-repeat = repeat.json
help-value-gauge = Lo que muestra `gauge --json`
help-value-agreement = Lo que muestra `agreement --json`
help-value-artefact = Lo que muestra `artefact --json`
help-value-control = Lo que muestra `control --json`
help-value-fit = Lo que muestra `fit --json`

## Lo que no se pudo entender.

refusal-word-error = Error:
refusal-word-tip = Sugerencia:
refusal-word-help = Más información con «--help».
refusal-unknown-option = no se conoce el argumento '{ $given }'
refusal-unknown-command = no se conoce la orden '{ $given }'
refusal-nearest = quizá quiso decir { $nearest }
refusal-invalid-value = el valor '{ $value }' no es posible para '{ $option }'
refusal-no-value = '{ $option }' necesita un valor
refusal-twice = '{ $option }' solo se puede indicar una vez
refusal-conflict = '{ $option }' y '{ $other }' no se pueden usar juntos
refusal-missing = falta: { $options }
refusal-too-many = el valor '{ $value }' sobra para '{ $option }'
refusal-too-few = '{ $option }' necesita { $least } valores; se indicaron { $given }
refusal-not-text = un argumento no es texto en UTF-8
refusal-other = la línea de órdenes no se entiende así
