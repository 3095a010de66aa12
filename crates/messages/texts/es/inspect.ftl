### Los escaneos de un vistazo: lo que muestra `archproof inspect`.

## La tabla.

inspect-head-size = tamaño, mm
inspect-head-unit = unidad
inspect-head-shows = muestra
inspect-head-sides = lados
inspect-head-parts = partes
inspect-head-loops = contornos
inspect-head-faults = defectos
inspect-head-edge = arista, mm
inspect-head-noise = ruido, mm
inspect-head-file = archivo: observaciones
inspect-both-sides = ambos
inspect-tissue-side = tisular
inspect-not-read = no leído

## Lo que muestra un escaneo que no es una impresión, en una o dos palabras.

shows-wrong-size = tamaño incorrecto
shows-positive = positivo
shows-cast = modelo
shows-half-arch = media arcada
shows-tray-or-base = cubeta o base
shows-record-rim = rodillo de registro
shows-no-arch = sin arcada
shows-toothed-arch = arcada dentada
shows-toothed-impression = impresión con dientes
shows-two-scans = dos escaneos
shows-tray = cubeta
shows-parts = partes
shows-empty-tray = cubeta vacía

## Observaciones sobre un archivo, unidas por «; ».

inspect-not-an-impression = no es una impresión: { $what }
inspect-attribute-bytes = no se usaron sus bytes de atributos, en los que algunos programas guardan el color
inspect-unit-inferred = leído en { $unit }: su tamaño no corresponde a una impresión en mm, sino a una en { $unit }; si es correcto, indique --unit { $unit }
inspect-unit-ambiguous = leído en mm, pero su tamaño podría ser el de una impresión en { $units }; indique la unidad con --unit
inspect-unit-implausible = leído en mm, pero su tamaño no es el de una impresión en ninguna unidad
inspect-double-layers = el { $percent } % de su superficie está en capas dobles
inspect-free-text = contiene texto libre, que puede nombrar a una persona («archproof clean» lo escribe sin él)
