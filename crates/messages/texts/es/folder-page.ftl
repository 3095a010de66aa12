### La página sobre una carpeta de casos: marco, recuentos, incumplimientos, distribuciones y casos.

## El marco.

folder-title = { $cases ->
    [one] 1 caso
   *[other] { $cases } casos
} - impresiones comprobadas
folder-kicker = Resumen de una carpeta de casos
folder-heading = { $cases ->
    [one] 1 caso
   *[other] { $cases } casos
}, { $impressions ->
    [one] 1 impresión
   *[other] { $impressions } impresiones
}
folder-footer = Los casos llevan seudónimos. Cada fila está en summary.csv y findings.csv.
folder-accepted = Se aceptaron { $accepted } de { $of } casos leídos: { $share }, intervalo del 95 %: { $interval }.
folder-none-read = No se pudo leer ningún caso.
folder-unread = No se pudieron leer: { $count }.

## Lo que abarca.

folder-covers = Lo que abarca esta página
folder-sha = Carpeta, por SHA-256
folder-cases = Casos
folder-cases-counted = { $cases }; no leídos: { $unread }
folder-impressions = Impresiones
folder-impressions-counted = { $impressions }; impresiones de trabajo: { $current }; sustituidas por un lavado: { $superseded }
folder-scanned = Escaneado (UTC), primero a último
folder-span = { $first } a { $last }
folder-time-source = Fecha del escaneo, por su origen
folder-limits = Límites, por nombre y SHA-256
folder-version = Versión
folder-shards = Partes
folder-one-shard = parte { $number } de { $of }: los demás casos no están aquí
folder-no-shards = todos los casos en una ejecución
folder-all-shards = las { $of } partes, unidas
folder-covers-note = La fecha del escaneo es la que indica el archivo de caso (scanned_at) o, si no, la última modificación del archivo del escaneo, que una copia puede cambiar. El SHA-256 de la carpeta es el de lo que se indicó de cada caso y el nombre de sus resultados, fueran cuales fueran los límites.

## Encabezados de las tablas.

folder-head-what = dato
folder-head-value = valor
folder-head-verdict = dictamen
folder-head-cases = casos
folder-head-share-read = proporción de los casos leídos
folder-head-interval = intervalo del 95 %
folder-head-current = impresiones de trabajo
folder-head-comes-first = qué va primero
folder-head-share-undecided = proporción de los no decididos
folder-head-verdict-on-it = dictamen sobre ella
folder-head-impressions = impresiones
folder-head-share = proporción
folder-head-group = grupo
folder-head-accepted = aceptadas
folder-head-of = de
folder-head-check = comprobación
folder-head-figure = magnitud
folder-head-least = mínimo
folder-head-percentile = percentil { $percent }
folder-head-median = mediana
folder-head-most = máximo
folder-head-case = caso
folder-head-jaw = maxilar
folder-head-first-step = qué hacer primero
folder-head-report = informe
folder-head-why = motivo

## Dictámenes.

folder-verdicts = Dictámenes
folder-accept = listo para el paso siguiente, con la salvedad de lo no evaluado
folder-rework = corregir los lugares que no cumplen y después tomar el lavado o repetirlo
folder-retake = repetir la impresión
folder-undecided = falta algo, o está demasiado cerca del límite para decidir
folder-intervals = Los intervalos son intervalos de puntuación (Wilson 1927). Para casos como estos, tal intervalo contiene la proporción verdadera 95 de cada 100 veces.
folder-why-undecided = Por qué hay casos sin decidir
folder-because-question = antes hay que responder una pregunta (qué maxilar, qué orientación, qué unidad)
folder-because-missing = falta algo que un dictamen necesita
folder-because-look = demasiado cerca de su límite para decidir, o para examinarlo a simple vista
folder-because-parcel = el envío no está completo
folder-because-not-measured = no se pudo medir cada impresión
folder-superseded = Impresiones sustituidas por un lavado
folder-superseded-note = Decide el lavado: estas impresiones solo se cuentan aquí.
folder-superseded-table = Impresiones sustituidas
folder-by-group = Aceptadas, por grupo
folder-by-group-note = Impresiones de trabajo. El intervalo es amplio donde el grupo es pequeño.
folder-groups-left-out = Las etiquetas con demasiados valores no se enumeran: están en summary.csv.
folder-all-judged = Cada comprobación se hizo en todas partes.
folder-not-judged-note = Impresiones de trabajo en las que una comprobación no se hizo, o no en todo el borde o en toda la superficie. Ningún dictamen las abarca. «archproof explain CODE» explica cada una.
share-of-none = de ninguno
share-interval = { $low } a { $high }

## Incumplimientos.

folder-failures = Incumplimientos más frecuentes
folder-nothing-failed = Nada incumplió un límite.
folder-failures-note = Hallazgos que no cumplen, con su número y la proporción del total que suman con los anteriores.
folder-by-check = Por comprobación
folder-by-check-and-zone = Por comprobación y zona
folder-the-whole = el conjunto
folder-all-others = todos los demás
folder-where = En qué lugar de la arcada
folder-where-note = Hallazgos que no cumplen, contados en cuadrados de 4 mm, en el sistema de referencia de la impresión: lado tisular hacia usted, parte anterior arriba. Líneas grises: los bordes de algunas de las impresiones.
folder-placed = { $jaw }: { $count ->
    [one] 1 hallazgo
   *[other] { $count } hallazgos
} con lugar conocido
chart-so-far = { $share } acumulado
chart-where = Dónde no se cumple, { $jaw }
chart-front = anterior
chart-findings = { $count ->
    [one] 1 hallazgo
   *[other] { $count } hallazgos
}
chart-thumbnail = Caso { $case }, lado tisular, { $places ->
    [one] 1 lugar no cumple
   *[other] { $places } lugares no cumplen
}
chart-no-figures = sin valores
chart-spread = mediana { $median } mm, { $impressions ->
    [one] 1 impresión
   *[other] { $impressions } impresiones
}; barra más alta: { $most }

## Distribuciones.

folder-spreads = Distribuciones
folder-spreads-note = Un valor por impresión, contado con resolución de 0,01 mm; la línea discontinua es su mediana. Las incertidumbres están en summary.csv.
folder-spreads-of = Distribuciones, { $jaw }
spread-thickness = Grosor mediano, mm
spread-least-thickness = Grosor mínimo, mm
spread-flange-height = Altura mediana de la aleta, mm
spread-flange-thickness = Grosor mediano de la aleta, mm

## Casos.

folder-worst = Casos que requieren más atención
folder-worst-note = Primero los de más incumplimientos, después los de menor grosor. Vista del lado tisular, parte anterior arriba, coloreada por el grosor del material (oscuro es delgado); anillos donde no se cumple, discontinuos donde otra superficie los tapa.
folder-failing = { $count ->
    [one] 1 incumplimiento
   *[other] { $count } incumplimientos
}: { $checks }
folder-thickness-not-measured = grosor no medido
folder-no-picture = Sin imagen: no se encontró la orientación del escaneo.
folder-not-read = No leídos: { $count }
folder-more-not-read = Y { $count } más, cada uno en una fila de { $table }.
folder-all-cases = Todos los casos
folder-some-cases = Los { $listed } casos que requieren más atención; otros { $more } están en { $table }.
folder-cases-order = Lo que requiere más atención va primero. Las mismas filas están en { $table }.
folder-case-unread = no se pudo leer
folder-open = abrir

## Grupos de impresiones.

group-maxillary = maxilar superior
group-mandibular = maxilar inferior
group-first-pass = antes del lavado
group-wash = lavado
group-single = en un paso
group-unknown = maxilar no conocido
group-without-label = { $key }=(sin valor)
