### El informe: capítulos de una impresión.

## Valores.

figure-uncertainty-not-stated = (incertidumbre no indicada)
figure-not-available = no disponible ({ $why })

## Columnas de varias tablas.

head-figure = Magnitud
head-measured = Valor medido (k = 2)
head-limit = Límite
head-where = Lugar
head-what = Tipo
head-what-it-was = Qué era
head-area = Área
head-place = Punto
head-moved = Desplazamiento (k = 2)
head-finding = Hallazgo
head-part-of-arch = Zona

## Celdas de varias tablas.

cell-no-limit = sin límite
cell-at-least = mínimo { $limit }
cell-at-most = máximo { $limit }
cell-at-most-either-way = máximo { $limit } en cada sentido
cell-at-most-in-all = máximo { $limit } en total
cell-above = más de { $limit }
cell-yes = sí
cell-no = no
cell-not-known = se desconoce
row-least = mínimo
row-p05 = percentil 5
row-median = mediana
row-p95 = percentil 95
row-uncertainty = incertidumbre de un valor (k = 2)
found-by-colour = hallado por su color

## Una impresión.

more-of-impression = Más sobre la { $impression }: otras vistas, puntos anatómicos, cubeta, defectos, escaneo

## Desde el envío de la impresión.

since-sent = Cambios desde el envío de la impresión
since-sent-no-limit = el protocolo no contiene ese límite
since-sent-unused = El escaneo del envío no se comparó: { $why }.
since-sent-ground = La silicona de adición se contrae un 0,3 % en una semana, es decir, 0,13 mm en 42 mm; la norma admite un 1,5 %. Descontados la deformación y el cambio de tamaño, el { $share } de la superficie tisular coincide con el escaneo del envío.
since-sent-no-damage = Ningún lugar cambió por sí solo más que su incertidumbre ({ $uncertainty } en la mitad de la superficie).
since-sent-arch = Cambio de la arcada en conjunto
since-sent-larger = más grande de manera uniforme
since-sent-judged-by-heels = se evalúa por los extremos distales
since-sent-heels-apart = extremos distales más separados, en total
since-sent-heel-toward-tissue = extremo distal { $side ->
    [right] derecho
   *[left] izquierdo
} hacia el tejido, respecto a la parte anterior
since-sent-heel-outward = extremo distal { $side ->
    [right] derecho
   *[left] izquierdo
} hacia fuera, respecto a la parte anterior
since-sent-damage = Lugares que cambiaron por sí solos
since-sent-torn = falta en el borde
since-sent-pressed-in = aplastado
since-sent-stuck-on = adherido
since-sent-places = Lugares en el escaneo del envío
head-as-it-arrived = Al llegar
since-sent-found-again = hallado de nuevo
since-sent-gone = desaparecido
since-sent-not-measured = no se midió ahí

## El borde.

along-border = Borde
along-border-extremes = Valores extremos a lo largo del borde
along-border-least = { $figure }, valor mínimo
along-border-greatest = { $figure }, valor máximo
along-border-not-measured = no se pudo medir en ningún punto del borde
along-border-length = Longitud del borde: { $length }.
along-border-open = El escaneo no muestra el borde en todo su contorno.
along-border-depth = El grosor de la aleta se mide { $depth } por debajo del borde.
along-border-judged = Solo se evalúan tramos de al menos { $least }. Se excluyen las escotaduras de los frenillos, el borde posterior y los últimos 10 mm antes de él; por eso, un valor extremo de la tabla no es necesariamente un defecto.
border-chart = { $impression }: el borde desarrollado, con la línea media labial en el centro.
border-chart-facing = { $impression }: el borde desarrollado, con la línea media labial en el centro y { $facing }.
border-chart-table = Los mismos valores están en { $table }.
border-chart-label = Gráfico del borde, { $impression }

## Grosor del material.

thickness = Grosor del material
thickness-over-tray = Grosor del material sobre la cubeta
thickness-measured-over = El grosor se midió en { $area } de superficie tisular, incluidas las vertientes de las aletas. Estas áreas son mayores que las áreas de soporte clásicas: alrededor de un 60 % en el maxilar superior y un 100 % en el inferior.
thickness-by-tray-scan = Se midió respecto al escaneo alineado de la cubeta vacía.
thickness-by-both-sides = Se midió el grosor de material y cubeta juntos, menos el grosor indicado de la cubeta.
thickness-by-colour = Se evaluó por los colores de la cubeta y del material, que no indican el grosor de este.
thickness-tray-lies = La cubeta coincide con el { $share } de la superficie externa (media cuadrática de las distancias: { $rms }); su posición se conoce con ± { $uncertainty } (k = 2).
thickness-tray-stated = El grosor de la cubeta se indicó como { $thickness }; el grosor del material no se conoce frente al material que rebasa la cara externa de la cubeta.
colour-tray-shows = Según el color, la cubeta ({ $tray }, { $source ->
    [found] hallado en la superficie externa
   *[given] según lo indicado
}) es visible en { $shown } de { $judged }; el material es { $material }.
colour-apart = Los colores distan { $difference } en CIELAB, es decir, { $separation } desviaciones estándar de los colores del escaneo; un tercer color cubre { $other }.
colour-beside-map = Frente al mapa de grosor: cubeta visible según ambos { $both }, solo según el color { $colour }, solo según el grosor { $cover }.
patches = Zonas de material delgado
head-patch = Zona
head-least-thickness = Grosor mínimo (k = 2)
head-patch-area = Área (k = 2)
patch-stop = tope tisular, visible como corresponde
patch-by-colour = cubeta visible, según el color
patch-tray-edge = arista de la cubeta visible
patch-around = { $patch } alrededor de { $around }
patch-area-and-length = { $area }, { $length } de largo

## Puntos anatómicos.

landmarks = Puntos anatómicos
landmarks-in-full = Puntos anatómicos en detalle
landmarks-of-jaw = Puntos anatómicos del maxilar
head-number = N.º
head-landmark = Punto anatómico
head-recorded = Registro
head-place-uncertainty = Incertidumbre de la posición (k = 2)
head-confidence = Confianza
head-source = Origen
status-recorded = registro completo
status-reached = lugar alcanzado, sin verificar
status-cut-short = registro incompleto
status-obscured = lugar oculto
status-not-found = sin detectar
landmarks-no-place = posición desconocida
landmarks-not-seen = sin detectar
landmarks-detected = detección en la superficie
landmarks-marked = marcado por un operador

## La cubeta.

tray-position = Cubeta
tray-position-compared = Posición de la cubeta en comparación con la que habría dado el grosor más uniforme
head-deviation = Desviación
tray-to-right = hacia la derecha del paciente
tray-to-front = hacia delante
tray-tilted-front = inclinada, parte anterior más cerca del tejido
tray-tilted-right = inclinada, lado derecho del paciente más cerca del tejido
tray-turned-right = girada, parte anterior hacia la derecha del paciente
tray-wider = ancha, respecto al ancho de la arcada
tray-evenness = El grosor varía con una desviación estándar de { $found }; en la mejor posición de la cubeta sería de { $best }.
tray-bend = Deformación de la cubeta entre su escaneo y la impresión, respecto a su parte anterior
limb-end-toward-tissue = rama { $side ->
    [right] derecha
   *[left] izquierda
}, extremo: hacia el tejido
limb-end-outward = rama { $side ->
    [right] derecha
   *[left] izquierda
}, extremo: hacia fuera
limb-middle-toward-tissue = rama { $side ->
    [right] derecha
   *[left] izquierda
}, centro: hacia el tejido
limb-middle-outward = rama { $side ->
    [right] derecha
   *[left] izquierda
}, centro: hacia fuera
tray-by-part = La cubeta en cada zona de la arcada, medianas
head-edge-to-border = Del filo de la cubeta al borde (k = 2)
head-thickness = Grosor del material (k = 2)
tray-no-border-here = aquí no hay borde
tray-not-known-here = se desconoce aquí

## Rebajado.

places-on-tray = Puntos en la cubeta
places-on-tray-how = Estos puntos están en la cubeta vacía tal como se escaneó. Las distancias son rectas desde el centro del punto: hasta el punto más cercano del borde de la cubeta por el lado de labios y mejillas, y hasta el centro anterior de ese borde. Rebaje la cubeta fuera de la boca, con protección para los ojos y contra el polvo, y compruebe que no queden aristas cortantes.
places-on-tray-to-relieve = Puntos de la cubeta que hay que rebajar
head-relieve-by = Rebajar (k = 2)
head-wall-there = Pared en ese punto (k = 2)
head-wall-left = Pared restante (k = 2)
head-to-outer-rim = Hasta el borde externo de la cubeta (k = 2)
head-to-front-rim = Hasta el centro anterior de ese borde (k = 2)
wall-one-face = el escaneo muestra una sola cara de la pared
rim-not-found = no se halló el borde de la cubeta
relieved-scan-unused = El escaneo de la cubeta rebajada no aporta información: { $why }.
tray-after-relief = La cubeta tras el rebajado, según su segundo escaneo
head-taken-off = Rebajado (k = 2)
head-room-made = Espacio ganado (k = 2)

## Defectos.

defects = Defectos de la superficie tisular
defects-limits = Los que no cumplen un límite son hallazgos; los límites de cada tipo figuran en la tabla de límites.
head-defect = Defecto
head-width = Anchura (k = 2)
head-depth-or-height = Profundidad o altura (k = 2)
head-opening = Área de la abertura
defect-void = burbuja
defect-nodule = nódulo
defect-fold = pliegue
defect-hole = hueco en el escaneo
defect-no-depth = un hueco no tiene profundidad

## El escaneo.

scan = Escaneo
scan-of-impression = El escaneo de la impresión
scan-of-tray = El escaneo de la cubeta vacía
scan-no-tray = No se indicó ningún escaneo de la cubeta vacía.
head-fact = Dato
head-value = Valor
scan-file = archivo
scan-checksum = suma de comprobación (SHA-256)
scan-unit = unidad de las coordenadas
scan-unit-assumed = { $unit } (supuesta por el tamaño: no se indicó)
scan-unit-named = { $unit } (según lo indicado)
scan-size = triángulos, vértices
scan-components = partes conexas
scan-open-loops = contornos de aristas abiertas
scan-branching-edges = aristas de tres triángulos o más
scan-flat-triangles = triángulos sin área
scan-median-edge = longitud mediana de las aristas
scan-mesh-area = área de toda la malla
scan-exact = { $value } (exacto, de esta malla)
scan-exact-with-limit = { $value } (exacto, de esta malla), límite { $limit }
scan-noise = ruido a lo largo de la normal (desviación estándar)
scan-noise-value = { $noise } (su propia incertidumbre no se indica)
scan-no-noise = no se pudo determinar
scan-outer-surface = superficie externa también escaneada
scan-colour = color
scan-free-text = texto libre en el archivo
scan-carries-text = sí: puede nombrar a una persona
scan-joints = Las uniones de la cubeta
head-pieces = Piezas
head-gap = Hueco
head-step = Escalón
scan-parts = Las partes de la impresión
head-part-of-impression = Parte
head-on-tray = Sobre la cubeta
head-distance-from-it = Distancia a ella (media cuadrática)
head-lies-within = Posición conocida con (k = 2)
scan-part-share = { $share } % de su superficie
scan-parts-not-joined = las partes no se unieron
scan-cut-apart = La impresión se cortó.
scan-parts-laid = Sus partes se colocaron sobre el escaneo de la cubeta entera, en cuyas coordenadas se dan todos los lugares; los cortes tienen { $width } de ancho.
scan-on-reading = Al leer: { $warning }
scan-by-region = Calidad del escaneo por zonas (propiedades de la malla, sin incertidumbre)
head-scanned = Escaneado
head-median-edge = Arista mediana
head-noise = Ruido (desviación estándar)
head-least-void = Menor burbuja visible
scan-least-void = { $across } de ancho, { $depth } de profundidad

## El lavado.

wash-chapter = Lavado
wash-over-maxillary = Maxilar superior: lavado sobre la impresión previa
wash-over-mandibular = Maxilar inferior: lavado sobre la impresión previa
wash-thickness-of = Grosor del lavado
wash-measured-over = Se midió en { $area } de superficie tisular escaneada.
wash-added = Claramente se añadió material en el { $added } de ella, y la superficie queda claramente por debajo de la previa en el { $lowered }; las diferencias dentro de la incertidumbre no cuentan.
wash-map-is = El mapa es { $map }.
wash-no-places = Antes del lavado no había cubeta visible ni material delgado.
wash-places-before = Lugares antes del lavado
wash-new-places = Nuevos en el lavado: { $places }.
head-thickness-before = Grosor mínimo previo
head-thickness-now = Grosor mínimo actual (k = 2)
head-under-wash = Bajo el lavado
wash-not-scanned = el lavado no se escaneó ahí
wash-place-resolved = resuelto
wash-place-open = aún abierto
wash-place-unclear = demasiado justo para decidir

# Cubetas de existencias, probadas para una nueva impresión.
next-tray-heading = Cubetas para la nueva impresión
next-tray-trays = Las cubetas y la holgura que deja cada una
next-tray-column-tray = Cubeta
next-tray-column-least = Holgura mínima (k = 2)
next-tray-column-median = Holgura mediana (k = 2)
next-tray-column-wanted = Tejido con { $from } a { $to } mm
next-tray-column-touches = Toca
next-tray-nowhere = en ningún punto
next-tray-other-jaw = cubeta del otro maxilar
next-tray-not-placed = no se pudo probar
next-tray-how = Cada cubeta está donde su holgura respecto al tejido que muestra esta impresión es más uniforme. Su borde no se compara con el de la impresión: la nueva quizá deba llegar más allá.
