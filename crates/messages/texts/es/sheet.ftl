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
sheet-cautions = Una ayuda para la inspección, no un producto sanitario; decide el profesional clínico autorizado. Desinfecte antes de manipular y enviar. Prevalecen las instrucciones de los fabricantes.
sheet-safety = Rebaje la cubeta solo fuera de la boca, con protección ocular y contra el polvo; después busque bordes cortantes. Esta página contiene datos de salud: guárdela como tal.

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
view-front-up = frente arriba
view-tissue-side-up = lado tisular arriba
view-front = frente
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
return-cautions = Esta nota procede de una ayuda para la inspección, no de un producto sanitario; decide el profesional clínico autorizado. Desinfecte antes de manipular y enviar. Prevalecen las instrucciones de los fabricantes.

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
clinic-relief-unknown = Si la cubeta se rebajó aquí después de escanearla, escanee la cubeta rebajada y envíe ese escaneo.
clinic-altered = La superficie queda aquí dentro de la pared de la cubeta tal como se escaneó: la cubeta se rebajó o se modificó allí después de su escaneo. Mire la impresión: aquí no debe verse la cubeta. Para obtener una medida, escanee la cubeta rebajada y envíe ese escaneo.
clinic-too-close = Demasiado justo para decidir: mírelo.
clinic-wash-thick = El lavado es grueso en una vigésima parte de la superficie. Compruebe que la cubeta asentó del todo al tomar el lavado. Si la relación intermaxilar se registró antes del lavado, regístrela de nuevo.
clinic-scan-coarse = El escaneo es demasiado grueso. Expórtelo con toda la resolución y envíelo de nuevo.
clinic-scan-arch = Escanee toda la arcada, ambos lados de cada aleta, y envíe ese escaneo; o mire usted mismo el borde.
clinic-cover-uncertain = El grosor del material es demasiado incierto para juzgar por él. Escanee más del dorso de la cubeta, con menos ruido, y envíe ese escaneo.
clinic-thin-unsure = El escaneo no permite decidirlo: mire aquí la impresión. Si el material no es delgado, escanee de nuevo este lugar con mayor resolución. Si lo es:
clinic-stop-covered = El material cubre este tope tisular. Si el tope se rebajó antes del lavado, indíquenoslo; si no, la cubeta no asentó del todo aquí y hay que repetir la impresión.
