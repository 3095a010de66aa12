### La hoja que acompaña al envío, y la nota de devolución.

## La página.

sheet-title = Caso { $case }: { $word }
sheet-case = Caso { $case }
sheet-region = La hoja
sheet-purpose = Comprobación de la impresión: acompaña al envío
sheet-time-not-recorded = Hora de la comprobación: no registrada.
times-checked = Comprobado { $checked } UTC; { $scans }
times-scans = archivos de escaneo de { $first } UTC
times-scans-between = archivos de escaneo de { $first } a { $last } UTC
times-scans-unknown = hora de los archivos de escaneo desconocida
sheet-checked-by = Comprobado por
sheet-date = Fecha
sheet-returned-because = Devuelto porque
sheet-source = { $program } · límites: { $limits } (SHA-256 { $sum }…)
sheet-cautions = Ayuda de inspección, no producto sanitario; decide el clínico autorizado. Desinfecte antes de manipular o enviar. Priman las instrucciones del fabricante.
sheet-safety = Rebaje la cubeta solo fuera de la boca, con protección ocular y contra el polvo; después busque bordes cortantes. Datos de salud: guárdelos como tales.

## Lo que hay que hacer.

sheet-tasks = Qué hacer, en este orden
sheet-no-tasks = En las comprobaciones realizadas nada incumple y nada está en duda.
sheet-in-the-report = en el informe
sheet-notes-elsewhere = Notas que no cambian el dictamen: { $notes }, { $place }.
sheet-more-tasks = Y { $more ->
    [one] 1 tarea
   *[other] { $more } tareas
} más, { $place }.
sheet-more-tasks-and-notes = Y { $more ->
    [one] 1 tarea
   *[other] { $more } tareas
} más y { $notes ->
    [one] 1 nota
   *[other] { $notes } notas
}, { $place }.
sheet-more-places = { $places }; y { $more } más

## Las imágenes.

sheet-legend = D, I: derecha e izquierda del paciente. Anillo numerado: lugar que no cumple; a trazos: duda. Oscuro: material delgado sobre la cubeta; claro: 3 mm o más; gris: no medido.
sheet-hidden = Ocultos en estas vistas: { $ids }. { $legend }
sheet-more-impressions = { $more ->
    [one] 1 impresión
   *[other] { $more } impresiones
} más { $place }. { $legend }
sheet-no-picture = Sin imagen: no se halló hacia dónde mira el escaneo.
sheet-picture = { $name }, { $view }; marcados: { $ids }
view-front-up = parte anterior arriba
view-tissue-side-up = lado tisular arriba
view-front = anterior
side-letter = { $side ->
    [right] D
   *[left] I
}

## Lo que no se evaluó, y el envío.

sheet-all-judged = No evaluado: nada; se hicieron todas las comprobaciones.
sheet-not-judged = No evaluado ({ $count }, véase el informe): { $checks }.
sheet-not-judged-more = No evaluado ({ $count }, véase el informe): { $checks } y { $more } más.
sheet-not-judged-count = No evaluado: { $count } comprobaciones; véase el informe.
sheet-parcel-not-stated = Envío: el caso no indica qué contiene.
sheet-parcel-complete = Envío: no falta nada.
sheet-parcel-missing = Falta en el envío
sheet-parcel-more = { $what } (y { $more } más { $place })

## La nota de devolución.

return-purpose = Nota de devolución: del laboratorio a la clínica
return-word = responda, por favor
return-tasks = Haga esto, por favor, en este orden
return-no-tasks = No pedimos nada sobre las impresiones en sí.
return-parcel-missing = Complete el envío, por favor
return-legend = D, I: derecha e izquierda del paciente. Anillo numerado: lugar por corregir; a trazos: por revisar. Oscuro: material delgado sobre la cubeta; claro: grueso; gris: no medido.
return-in-the-text = en el texto que acompaña a esta página
return-answered-by = Respondido por
return-answer = Respuesta
return-head = Caso { $case }: nota de devolución
return-lead = { $count ->
    [0] No le pedimos nada.
    [one] El trabajo aún no puede seguir: le pedimos una cosa.
   *[other] El trabajo aún no puede seguir: le pedimos { $count } cosas.
}
return-pictures = La página que acompaña a este texto muestra los lugares numerados en una imagen.
return-cautions = Esta nota procede de una ayuda para la inspección, no de un producto sanitario; decide el profesional clínico autorizado. Desinfecte antes de manipular y enviar. Priman las instrucciones del fabricante.

## Lo que se pide a una clínica, donde la instrucción habla del programa.

clinic-file-unclear = Díganos qué escaneo es cuál y envíe cada uno en un archivo propio.
clinic-unit-unclear = Díganos la unidad del escaneo o expórtelo de nuevo en mm.
clinic-not-an-impression = Envíe el escaneo de la impresión completa en su cubeta; este escaneo muestra otra cosa.
clinic-which-jaw = Díganos qué maxilar muestra este escaneo.
clinic-other-colour = Aquí se ve otro color. Mire si es la cubeta y díganoslo.
clinic-scan-tray = Escanee la cubeta vacía por todos los lados, sin alterar, tal como estaba en esta impresión, y envíe ese escaneo.
clinic-send-wash = Envíe el lavado de esta impresión con su escaneo. Si no lo necesita, díganoslo.
clinic-jaw-relation = Envíe el registro intermaxilar con su escaneo, o indique la dimensión vertical; o díganos por qué no lo hay.
clinic-list = Envíe una lista de lo que debe ir en el envío.
clinic-one-jaw = El caso contiene un solo maxilar: añada la impresión del otro o diga por qué no la hay.
clinic-disinfectant = Indique con qué se desinfectó el conjunto.
clinic-disinfection = Indique con qué y durante cuánto tiempo se desinfectó el conjunto. Si aún no se hizo, límpielo y desinféctelo antes de manipularlo.
clinic-disinfection-time = Indique durante cuántos minutos se desinfectó el conjunto.
clinic-prescription = Adjunte la prescripción escrita.
clinic-readings = Demasiado justo para decidir. Mida ambas dimensiones verticales tres veces e indique las lecturas.

## Lo que halla una comprobación, en una frase.

gist-file-unclear = El archivo puede significar dos cosas, o un mismo archivo se da como dos.
gist-unit-unclear = La unidad del escaneo no se deduce de su tamaño.
gist-not-an-impression = El escaneo muestra algo distinto de una impresión.
gist-arch-mismatch = El maxilar hallado no es el declarado.
gist-orientation-unclear = No es seguro qué maxilar es o qué lado es cuál.
gist-show-through = La cubeta se ve a través del material.
gist-other-colour = Se ve un color distinto del material, y no se conoce el de la cubeta.
gist-show-through-extent = La cubeta se ve en una superficie demasiado grande para rebajarla y hacer un lavado.
gist-tissue-stop = Un tope tisular declarado no se ve: la cubeta no asentó del todo.
gist-thin-cover = El material es delgado.
gist-tray-seating = La cubeta no estaba donde el material habría tenido un grosor uniforme.
gist-tray-bent = La cubeta se dobló entre su escaneo y la impresión.
gist-tray-joint = Las piezas de la cubeta no estaban unidas del todo.
gist-changed-in-transit = La impresión cambió entre el escaneo al enviarla y el escaneo al llegar.
gist-tray-size = La cubeta es demasiado pequeña o demasiado grande para la boca.
gist-outer-excess = Hay material sobre las caras externas de la cubeta.
gist-tray-at-border = La cubeta se ve en el propio borde.
gist-under-extension = Un tramo del borde es corto, o puede serlo.
gist-border-radius = El borde está afilado en vez de redondeado.
gist-flange-height = Una aleta es baja.
gist-flange-thickness = Una aleta es más delgada o más gruesa que su valor de referencia.
gist-border-overlap = La cubeta termina demasiado cerca del borde o demasiado lejos de él.
gist-border-asymmetry = Una aleta es mucho más baja que la del otro lado.
gist-border-change = El borde está más bajo que antes del lavado.
gist-wash-open = Un lugar descubierto o delgado antes del lavado lo sigue estando.
gist-wash-thickness = El lavado es grueso.
gist-wash-uneven = El lavado es mucho más grueso en unos lugares que en otros.
gist-scan-ends = El escaneo termina antes de que el borde dé la vuelta.
gist-border-not-judged = No se pudo medir el borde.
gist-void = El aire dejó una depresión en la superficie tisular.
gist-void-unseen = El escaneo tiene muy poca resolución para mostrar una burbuja que no cumpliría.
gist-nodule = Hay un bulto en la superficie tisular.
gist-fold = Un surco donde dos frentes de material se encontraron sin unirse.
gist-hole = En un lugar de la superficie tisular no se escaneó nada.
gist-landmark-cut-short = El borde o el escaneo terminan en un punto anatómico o antes, o pueden hacerlo.
gist-landmark-obscured = Un defecto o la cubeta descubierta tapa un punto anatómico.
gist-landmark-not-found = No se detectó un punto anatómico.
gist-cover-not-judged = No se pudo medir el grosor del material.
gist-cover-uncertainty = El grosor del material se midió con demasiada incertidumbre.
gist-tissue-area = Se escaneó demasiado poca superficie tisular.
gist-scan-resolution = Los triángulos del escaneo son demasiado grandes.
gist-scan-quality = Una parte de la arcada no se escaneó lo bastante bien para lo que se mide allí.
gist-interarch-space = Hay poco espacio entre los rebordes.
gist-ridge-angle = Los rebordes están lejos de ser paralelos.
gist-jaw-relation-not-judged = Se dio el registro intermaxilar, pero no se pudo medir.
gist-wash-missing = Un maxilar aún no tiene su lavado.
gist-impression-age = La impresión es más antigua de lo que permite su material.
gist-interocclusal-distance = La dimensión vertical en reposo menos la de oclusión es inusual o imposible.
gist-lip-length = La longitud del labio superior está fuera del intervalo plausible.
gist-parcel-incomplete = Falta en el envío algo necesario.
gist-prescription-missing = Falta en el envío la prescripción escrita.
gist-disinfection-not-stated = Faltan los datos de la desinfección.
