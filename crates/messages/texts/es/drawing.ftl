### Dibujos del borde: gráfico y secciones.

drawing-heading = Caso { $case }, { $jaw ->
    [maxillary] maxilar superior
    [mandibular] maxilar inferior
   *[unknown] maxilar desconocido
}, { $stage ->
    [first-pass] impresión antes del lavado
    [wash] impresión de lavado
   *[single] impresión en un paso
}

## Las magnitudes a lo largo del borde.

station-height = altura de la aleta
station-thickness = grosor de la aleta
station-radius = radio del borde
station-overlap = extensión más allá de la cubeta

## Desde dónde se ve.

facing-right-on-the-right = el lado derecho del paciente a la derecha, como en las imágenes
facing-right-on-the-left = el lado derecho del paciente a la izquierda, como en las imágenes
drawing-midline = línea media

## El borde desarrollado.

chart-title = { $heading }: el borde desarrollado
chart-seen = Visto desde el lado tisular: { $facing }.
chart-outer = Borde labial y bucal, parte posterior en los extremos
chart-lingual = Borde lingual
chart-axis = mm a lo largo del borde desde la { $midline } (D: hacia la derecha del paciente, I: hacia la izquierda)
chart-row = { $figure }, mm
chart-row-at-depth = { $figure }, mm, { $depth } mm por debajo del borde
chart-row-none = { $row }: sin valores ({ $why })
chart-frenum = frenillo, prof. { $depth } mm

## Por qué un tramo no tiene valor, en pocas palabras.

gap-tissue-side-only = solo lado tisular
gap-scan-ends = fin del escaneo
gap-no-surface = no escaneado
gap-no-crest = sin cresta
gap-flange-too-low = aleta baja
gap-no-roll = sin redondeo
gap-no-tray = cubeta no escaneada
gap-at-the-cut = cortado aquí
gap-off-the-summit = línea desviada

## La leyenda del gráfico.

legend-measured = medido, con su incertidumbre expandida (k = 2)
legend-no-less = límite: no menos
legend-no-more = límite: no más
legend-no-figure = sin valor, con el motivo
legend-fails = no cumple ■
legend-undecided = no se puede decidir ◆
legend-note = nota ●
legend-marks = las marcas están en el peor punto de cada hallazgo, numeradas como en result.json

## Una sección.

section-place = { $heading }. Sección a { $at } mm de los { $length } mm del contorno del borde (s = { $s }).
section-toward-ridge = hacia el reborde
section-toward-lip = hacia vestibular
section-toward-tongue = hacia la lengua
section-toward-front = hacia delante
section-toward-back = hacia atrás
section-axis = eje de inserción, hacia el tejido
section-border = borde
section-crest = cresta
section-height = altura { $figure }
section-thickness = grosor { $figure }
section-radius = radio { $figure }
section-arch = Lugar de la sección, como en las imágenes
section-figure-at-depth = { $figure }, prof. { $depth } mm
section-none = sin valor: { $why }
section-limit = límite: { $limits }
section-stretch = Tramo { $range }
section-found = medido: { $figure }, { $limit }
section-tissue-face = cara tisular
section-outer-face = cara externa
section-tray = cubeta
section-circle = círculo por el redondeo del borde
section-overlap = extensión, hasta la cubeta
section-uncertainties = Incertidumbres expandidas (k = 2).

## Cómo escanear.

scanning-drawing = Dibujo: { $heading }
scanning-tissue-side = lado tisular
scanning-outer-side = lado externo
scanning-handle = el mango
scanning-empty = limpia, vacía
scanning-now = escanee ahora
scanning-too-late = cortada: ya es tarde
scanning-fine = fino: se ve
scanning-coarse = grueso: no se ve
scanning-good = bueno: una capa
scanning-hole = hueco
scanning-two-layers = dos capas
scanning-rough = rugoso
scanning-bad = malo: repetir
