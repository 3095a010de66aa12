### Qué es, en una frase, cada comprobación y cada parte que necesitan varias.

## Comprobaciones.

gist-file-unclear = El archivo puede significar dos cosas, o un mismo archivo se indica como dos.
gist-unit-unclear = La unidad del escaneo no se reconoce por su tamaño.
gist-not-an-impression = El escaneo muestra algo distinto de una impresión.
gist-arch-mismatch = El maxilar encontrado no es el indicado.
gist-orientation-unclear = No es seguro qué maxilar es, o qué lado es cuál.
gist-show-through = La cubeta es visible a través del material.
gist-other-colour = Se ve un color distinto del material, y no se conoce el de la cubeta.
gist-show-through-extent = La cubeta es visible en demasiada superficie para corregirlo rebajándola y con un lavado.
gist-tissue-stop = Un tope tisular indicado no se ve: la cubeta no asentó por completo.
gist-thin-cover = El material es delgado.
gist-tray-seating = La cubeta no estaba donde el material habría tenido un grosor uniforme.
gist-tray-bent = La cubeta se deformó entre su escaneo y la impresión.
gist-tray-joint = Las piezas de la cubeta no estaban unidas por completo.
gist-changed-in-transit = La impresión cambió entre el escaneo con el que se envió y el de su llegada.
gist-tray-size = La cubeta es demasiado pequeña o demasiado grande para la boca.
gist-outer-excess = Hay material sobre las caras externas de la cubeta.
gist-tray-at-border = La cubeta es visible en el propio borde.
gist-under-extension = Un tramo del borde es corto, o puede serlo.
gist-border-radius = El borde es afilado en lugar de redondeado.
gist-flange-height = Una aleta es baja.
gist-flange-thickness = Una aleta es más delgada o más gruesa que su valor de referencia.
gist-border-overlap = La cubeta termina demasiado cerca o demasiado lejos del borde.
gist-border-asymmetry = Una aleta es mucho más baja que la del otro lado.
gist-border-change = El borde es más bajo que antes del lavado.
gist-wash-open = Un lugar descubierto o delgado antes del lavado sigue estándolo.
gist-wash-thickness = El lavado es grueso.
gist-wash-uneven = El lavado es mucho más grueso en unos lugares que en otros.
gist-scan-ends = El escaneo termina antes de que el borde dé la vuelta.
gist-border-not-judged = No se pudo medir el borde.
gist-void = El aire dejó una cavidad en la superficie tisular.
gist-void-unseen = La resolución del escaneo es demasiado baja para mostrar una burbuja por la que la impresión no sería válida.
gist-nodule = Hay un nódulo en la superficie tisular.
gist-fold = Un surco donde dos frentes de material se encontraron sin unirse.
gist-hole = En un punto de la superficie tisular no se escaneó nada.
gist-landmark-cut-short = El borde o el escaneo terminan en un punto anatómico o antes, o pueden hacerlo.
gist-landmark-obscured = Un defecto o la cubeta descubierta tapa un punto anatómico.
gist-landmark-not-found = No se detectó un punto anatómico.
gist-cover-not-judged = No se pudo medir el grosor del material.
gist-cover-uncertainty = El grosor del material se midió con demasiada incertidumbre.
gist-tissue-area = Se escaneó muy poca superficie tisular.
gist-scan-resolution = Los triángulos del escaneo son demasiado grandes.
gist-scan-quality = Una parte de la arcada no se escaneó lo bastante bien para lo que allí se mide.
gist-interarch-space = Hay poco espacio entre los rebordes.
gist-ridge-angle = Los rebordes distan mucho de ser paralelos.
gist-jaw-relation-not-judged = Se indicó el registro intermaxilar, pero no se pudo medir.
gist-wash-missing = A un maxilar le falta todavía el lavado.
gist-impression-age = La impresión es más antigua de lo que permite su material.
gist-interocclusal-distance = La dimensión vertical en reposo menos la de oclusión es inusual o imposible.
gist-lip-length = La longitud del labio superior está fuera del intervalo plausible.
gist-parcel-incomplete = Falta en el envío un elemento obligatorio.
gist-prescription-missing = Falta en el envío la prescripción escrita.
gist-disinfection-not-stated = Faltan los datos de la desinfección.

## Partes.

gist-border = Todas las comprobaciones del borde.
gist-wash = Todas las comprobaciones de lo que añadió un lavado.
gist-jaw-relation = Las comprobaciones del espacio entre los maxilares.
gist-parcel = Las comprobaciones del envío.
gist-over-extension = Si el borde es demasiado largo, lo que ningún escaneo muestra.
gist-cut = Lo que está en el corte entre las partes de una impresión.
