### Hallazgos, notas, y las imágenes que muestran dónde están.

## Hallazgos.

page-findings = Lo que no cumple y lo que queda abierto, lo más urgente primero
page-no-findings = En las comprobaciones realizadas nada incumple y nada queda abierto.
page-decision = El valor tras ± es la incertidumbre de medida (probabilidad de cobertura del 95 %, k = 2). Una comprobación se da por incumplida solo si el valor rebasa su límite incluso contando esa incertidumbre, y por cumplida solo si queda dentro del límite con ese mismo margen. Todo lo intermedio se señala como demasiado justo para decidir.
page-further-places = Otros lugares que no cumplen o quedan abiertos
page-further-places-in-full = Estos otros lugares con sus imágenes y secciones
page-close-pictures = Solo hay imágenes de cerca de los hallazgos más urgentes.
page-severity = { $severity ->
    [fail] no cumple
    [borderline] no se puede decidir
   *[note] nota
}
page-measured = Medido: { $figure }.
page-listed-as = Figura como { $name } en las tablas de abajo.
page-do = Qué hacer:
page-section = Sección de { $finding }
page-drag = Arrástrela hacia un lado para verla entera.
page-section-caption = Sección en el lugar más desfavorable de { $finding }, con sus medidas.

## Notas.

page-notes = Notas
page-notes-lead = Conviene saberlo; no cambian el dictamen.
page-notes-in-full = Las notas con sus imágenes y secciones
page-number = N.º
page-where = Dónde
page-measured-and-limit = Medido (k = 2), límite

## Las imágenes.

page-no-pictures = Sin imágenes: no se halló hacia dónde mira el escaneo.
page-colours = Los colores muestran el grosor del material, la distancia de la superficie tisular a la cubeta; gris donde no se conoce.
page-no-colours = Gris: no se midió el grosor del material.
page-sides = D e I son la derecha y la izquierda del paciente.
page-marks = Un anillo marca un lugar; una línea, un tramo del borde: { $fail }, { $borderline }, { $note }.
page-other-views = Otras vistas
page-view-name = { $view ->
    [tissue] Lado tisular
    [outer] Lado externo
   *[back] Vista posterior
}
page-view = { $view ->
    [tissue] vista del lado tisular, frente arriba
    [outer] vista desde el lado de la cubeta, frente arriba
   *[back] vista desde atrás y desde arriba, lado tisular arriba
}
page-picture = { $impression }, { $view }. { $what ->
    [landmarks] Puntos anatómicos marcados
   *[findings] Hallazgos marcados
}: { $ids }.
page-none-marked = ninguno
page-hidden = Ocultos en esta vista: { $ids }.
page-close-picture = Imagen de cerca de { $finding }: { $place }, { $up }
page-wash-picture = { $impression }, lado tisular, coloreada según el grosor del lavado
page-wash-colours = Oscuro donde el lavado es delgado o falta; claro donde es grueso; gris donde no se conoce su grosor.
page-tray-picture = La cubeta de la { $impression }, vista por dentro, frente arriba. Lugares por rebajar: { $ids }.
page-tray-colours = La cubeta vacía por dentro, frente arriba; coloreada donde había poco material sobre ella.

## Escalas de colores, con sus límites.

page-scale-thickness = grosor, mm
page-scale-material-thickness = grosor del material, mm
page-scale-limit = { $limit ->
    [shows] visible
   *[thin] delgado
}
page-scale-end = o más
