### El caso en conjunto: relación intermaxilar, envío, apéndice, métodos, límites y procedencia.

## Límites junto a una medida.

page-at-least = mínimo { $limit }
page-at-most = máximo { $limit }
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
