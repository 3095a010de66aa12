### El caso en conjunto: relación intermaxilar, envío, apéndice, métodos, límites y procedencia.

## Límites junto a una medida.

page-between = mínimo { $least }, máximo { $most }
page-no-limit = sin límite
page-figure = Magnitud
page-measured-so = Medido (k = 2)
page-limits = Límites

## Relación intermaxilar.

page-jaw-relation = Relación intermaxilar
page-relation-of-jaws = Relación entre los maxilares
page-vertical-dimension = dimensión vertical de oclusión, según lo indicado
page-rest-vertical-dimension = dimensión vertical en reposo, según lo indicado
page-interocclusal-distance = distancia interoclusal, calculada con ambas
page-upper-lip-length = longitud del labio superior desde la base de la nariz, según lo indicado
page-papilla-to-lip = de la papila incisiva a la línea labial, según lo indicado
page-least-space = menor espacio entre los rebordes
page-most-space = mayor espacio entre los rebordes
page-ridge-angle = ángulo entre los rebordes
page-record-not-judged = No evaluado: el registro ({ $why }).
page-vertical-dimension-by = La dimensión vertical de oclusión se determinó { $by }.
page-centric-relation-by = La relación céntrica se determinó { $by }.
page-record-shows = El escaneo del registro muestra en qué posición se mantuvieron los maxilares. No permite saber si esa es la relación céntrica ni si la dimensión vertical conviene al paciente.

## Cómo se determinó una dimensión vertical o la relación céntrica.

found-from-the-rest-position = a partir de la posición de reposo
found-by-lip-contact = por el contacto de los labios
found-from-an-existing-denture = a partir de una prótesis existente
found-by-speech = por fonética
found-by-swallowing = por deglución
found-in-another-way = de otro modo
found-by-guiding-the-jaw = guiando la mandíbula
found-by-a-gothic-arch-tracing = mediante el trazado del arco gótico

## El gráfico del espacio entre los rebordes.

page-space-chart = Espacio entre los rebordes a lo largo de la cresta superior, con la derecha del paciente a la derecha; el punto en la arcada pequeña marca dónde es menor
page-space-limit = límite, mínimo
page-space = espacio, mm

## Envío.

page-parcel = Envío
page-no-list = No hay una lista de lo que debe ir en el envío.
page-contents-of-parcel = Lo que debe ir en el envío
page-part = Elemento
page-state = Estado
page-packed = incluido
page-missing = FALTA
page-papers = Documentos y desinfección
page-what = Qué
page-stated = Indicado
page-prescription = prescripción escrita
page-enclosed = { $is ->
    [yes] adjunta
    [no] NO adjunta
   *[unknown] no se indica
}
page-disinfectant = desinfectante
page-disinfectant-stated = { $is ->
    [yes] indicado
   *[no] NO indicado
}
page-disinfection-time = tiempo de desinfección
page-not-stated = no se indica
page-no-record-reason = motivo por el que falta el registro intermaxilar
page-one-jaw-reason = motivo por el que hay un solo maxilar
page-reason = { $is ->
    [yes] indicado
   *[no] no indicado
}
page-disinfect = Desinfecte antes de manipular y enviar, según las normas locales y las instrucciones de los fabricantes; rotule cada impresión con el seudónimo del caso y su fase.

## Apéndice.

page-appendix = Apéndice: antes del lavado
page-appendix-lead = A estas impresiones siguió un lavado, que se evalúa por sí mismo. No cambian el dictamen.
page-findings-before-wash = Hallazgos antes del lavado

## Métodos.

page-methods = Métodos
page-method-material = Grosor del material
page-method-material-is = En un punto de la superficie tisular, la distancia al punto más cercano de la cubeta; cero o negativa donde la cubeta está en la superficie o la atraviesa.
page-method-height = Altura de la aleta
page-method-height-is = En una sección, del punto de la cresta al punto del borde, a lo largo del eje de asentamiento.
page-method-thickness = Grosor de la aleta
page-method-thickness-is = En una sección, de la cara tisular a la cara externa, perpendicular al eje de asentamiento, a una profundidad indicada bajo el borde.
page-method-radius = Radio del borde
page-method-radius-is = Radio de la circunferencia de mínimos cuadrados que sigue el redondeo del borde.
page-method-overlap = Extensión más allá de la cubeta
page-method-overlap-is = De un punto del borde al punto más cercano de la cubeta: cuánto sobrepasa el material el canto de la cubeta.
page-method-uncertainty = Incertidumbre
page-method-uncertainty-is = Expandida, con factor de cobertura k = 2. Contiene lo que aportan el ruido del escaneo, la posición de la cubeta y su deformación. No incluye lo que aportan un elastómero real o la distorsión propia de un escáner.
page-method-decision = Regla de decisión
page-method-decision-is = La de la norma ISO 14253-1, en términos generales: una medida cumple solo si respeta su límite por más que su incertidumbre, y no cumple solo si lo rebasa por más que ella. Todo lo intermedio es demasiado justo para decidir y nunca se acepta en silencio.
page-method-unknown = Lo que una impresión por sí sola no muestra
page-method-unknown-is = Si el vestíbulo era más profundo o más ancho de lo que alcanzó el material; si se movieron labio, mejilla y lengua mientras estaba blando; si un tramo bajo del borde es una inserción muscular ancha y una aleta baja un reborde bajo; si el borde es demasiado largo. Compare esos lugares con la boca.

## Límites del protocolo.

page-limits-of = Límites: { $protocol }
page-limits-of-case = Límites con los que se evaluó el caso
page-limit = Límite
page-value = Valor
page-if-missed = Si no se cumple
page-source = Fuente
page-level = { $level ->
    [fail] no cumple
    [undecided] no se acepta con esta medida
   *[note] se anota
}
page-criterion-number = Valor:

## Procedencia.

page-provenance = Procedencia
page-made-by-and-from = Con qué y a partir de qué se obtuvo este resultado
page-which = Dato
page-program = programa
page-commit = compilado a partir del commit
page-commit-not-stated = no indicado al compilar
page-protocol = límites
page-protocol-sum = límites, SHA-256
page-limits-changed = límites que difieren de los del programa
page-none-changed = ninguno
page-scanner-uncertainty = escáner: incertidumbre de una longitud (k = 2)
page-scanner-source = escáner: fuente de esa incertidumbre
page-scanned-at = escaneado, según el archivo del caso (UTC)
page-scan-sum = escaneo de la { $impression }, SHA-256
page-part-sum = escaneo de la parte { $part } de la { $impression }, SHA-256
page-tray-sum = escaneo de la cubeta de la { $impression }, SHA-256
page-record-sum = escaneo del registro intermaxilar, SHA-256
page-durations = Cuánto duró cada paso; las impresiones se miden a la vez
page-step = Paso
page-duration = Duración

## Qué limita cada límite de un protocolo.

limit-show-through-mm = Grosor hasta el cual se considera que la cubeta se ve.
limit-thin-cover-mm = Grosor por debajo del cual el material se considera delgado.
limit-least-spot-area-mm2 = Los lugares más pequeños se toman por ruido.
limit-relief-room-mm = Espacio para el material que debe crear el rebaje de la cubeta.
limit-tray-wall-left-mm = Grosor mínimo de pared de la cubeta que debe quedar tras el rebaje.
limit-show-through-share-percent = Parte de la superficie tisular en la que puede verse la cubeta antes de que rebaje y lavado ya no basten.
limit-stop-cover-mm = Grosor máximo de material sobre un tope tisular declarado.
limit-stop-size-mm = Lado de un tope tisular.
limit-cover-uncertainty-mm = Incertidumbre expandida máxima con la que se puede juzgar el grosor del material.
limit-maxillary-tissue-area-mm2 = Superficie tisular mínima de una impresión superior.
limit-mandibular-tissue-area-mm2 = Superficie tisular mínima de una impresión inferior.
limit-median-edge-mm = Triángulos más gruesos que se pueden evaluar, por la mediana de sus aristas.
limit-most-tray-shift-mm = Cuánto pudo apartarse la cubeta del lugar de grosor más uniforme.
limit-most-tray-tilt-deg = Cuánto pudo inclinarse o girar respecto a ese lugar.
limit-most-tray-bend-mm = Cuánto pudo doblarse una rama de la cubeta entre su escaneo y la impresión.
limit-most-tray-joint-mm = Hueco o escalón en la unión de una cubeta en piezas.
limit-most-arch-change-mm = Cuánto pudo moverse un extremo posterior de la impresión, o separarse ambos, desde que se envió.
limit-most-local-change-mm = Cuánto pudo moverse por sí solo un lugar de su superficie desde que se envió.
limit-most-outer-excess-mm2 = Superficie máxima de material en las caras externas de la cubeta, además del que rodea su borde.
limit-most-tray-width-mm = Cuánto más ancha o estrecha puede ser de lo que conviene a la anchura de la arcada.
limit-void-mm = Anchura hasta la que se admite una burbuja fuera de las zonas críticas.
limit-void-critical-mm = Anchura hasta la que se admite una burbuja en zonas críticas y junto al borde.
limit-void-critical-redo-mm = Anchura desde la que una burbuja allí es demasiado grande para recortarla en el modelo.
limit-nodule-mm = Anchura hasta la que se admite un nódulo fuera de las zonas críticas.
limit-nodule-critical-mm = Anchura hasta la que se admite un nódulo en zonas críticas y junto al borde.
limit-fold-mm = Longitud hasta la que se admite un pliegue fuera de las zonas críticas.
limit-fold-critical-mm = Longitud hasta la que se admite un pliegue en zonas críticas y junto al borde.
limit-hole-mm = Anchura hasta la que se admite un hueco; uno más ancho se escanea de nuevo.
limit-hole-critical-mm = Anchura a partir de la cual se anota un hueco menor en zonas críticas y junto al borde.
limit-border-margin-mm = Hasta dónde se cuenta el borde desde el final de la superficie tisular.
limit-smallest-void-seen-mm = Anchura de la burbuja más pequeña que cada parte del escaneo debe poder mostrar.
limit-scan-noise-mm = Ruido máximo de una parte del escaneo, como desviación estándar.
limit-double-layer-percent = Porcentaje máximo de una parte que puede haberse escaneado dos veces y conservar dos capas.
limit-orientation-confidence = Confianza mínima, de 0 a 1, con la que deben reconocerse el maxilar y los lados.
limit-flange-depth-mm = Profundidad bajo el borde a la que se mide el grosor de la aleta.
limit-least-border-stretch-mm = Los tramos de borde más cortos se toman por ruido.
limit-under-extension-mm = Cuánto puede caer el borde por debajo de su entorno.
limit-flange-height-mm = Altura mínima de una aleta; 0 si no hay límite.
limit-least-flange-thickness-mm = Grosor mínimo de una aleta.
limit-most-flange-thickness-mm = Grosor máximo de una aleta.
limit-border-radius-mm = Radio mínimo del redondeo del borde.
limit-least-border-overlap-mm = Distancia mínima a la que la cubeta termina antes del borde.
limit-most-border-overlap-mm = Distancia máxima que el material sobrepasa el canto de la cubeta.
limit-border-asymmetry-mm = Cuánto más baja puede ser una aleta que la del otro lado.
limit-border-drop-mm = Cuánto más bajo puede ser el borde de un lavado que el de antes.
limit-wash-most-mm = Grosor máximo de un lavado, como percentil 95.
limit-wash-spread-mm = Diferencia máxima entre las partes gruesas y las delgadas de un lavado.
limit-landmark-margin-mm = Cuánto debe pasar el borde, como mínimo, más allá de un punto anatómico.
limit-landmark-reach-mm = Distancia mínima de una escotadura hamular, tuberosidad o almohadilla retromolar al borde que queda más allá; por debajo de ella, la impresión termina antes.
limit-landmark-covered-percent = Parte mínima del área de un punto anatómico que debe quedar dentro del borde.
limit-landmark-clearance-mm = Hasta qué distancia de un punto anatómico lo inutiliza un defecto o el final del escaneo.
limit-landmark-search-mm = Hasta qué distancia del lugar esperado un defecto hace dar por perdido un punto anatómico no visto.
limit-least-interarch-space-mm = Espacio mínimo entre las líneas de las crestas.
limit-most-ridge-angle-deg = Ángulo máximo entre los planos de las líneas de las crestas.
limit-least-interocclusal-distance-mm = Distancia interoclusal mínima que se admite sin preguntar.
limit-most-interocclusal-distance-mm = Distancia interoclusal máxima que se admite sin preguntar.
limit-least-usual-interocclusal-distance-mm = Distancia interoclusal mínima habitual.
limit-most-usual-interocclusal-distance-mm = Distancia interoclusal máxima habitual.
limit-reading-uncertainty-mm = Incertidumbre expandida (k = 2) de una lectura tomada en el sillón.
limit-least-upper-lip-length-mm = Labio superior más corto plausible, desde la base de la nariz.
limit-most-upper-lip-length-mm = Labio superior más largo plausible, desde la base de la nariz.
limit-least-papilla-to-lip-mm = Distancia mínima plausible de la papila incisiva a la línea labial.
limit-most-papilla-to-lip-mm = Distancia máxima plausible de la papila incisiva a la línea labial.
limit-most-addition-silicone-h = Tiempo máximo, en horas, durante el que consta que la silicona de adición mantiene sus dimensiones.
limit-most-alginate-min = Tiempo máximo que el alginato puede esperar hasta el vaciado o el escaneo.
limit-wash-required = Si un maxilar necesita su lavado antes de trabajar con el conjunto: 1 o 0.
limit-prescription-required = Si el envío debe llevar una prescripción escrita: 1 o 0.
limit-disinfection-required = Si deben indicarse el desinfectante y el tiempo de exposición: 1 o 0.
limit-jaw-relation-required = Si debe haber un registro intermaxilar, o el motivo de que falte: 1 o 0.
limit-both-arches-required = Si deben estar ambos maxilares, o el motivo de que haya uno solo: 1 o 0.
limit-least-disinfection-min = Tiempo mínimo habitual de desinfección.
limit-most-disinfection-min = Tiempo máximo habitual de desinfección.
