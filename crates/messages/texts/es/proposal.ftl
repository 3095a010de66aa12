### Un caso propuesto a partir de los escaneos de una carpeta: motivos, observaciones, preguntas y respuestas.

## Por qué se toma un escaneo por algo, y qué habla en contra. Se unen con «; ».

placed-and = { $what }; { $more }
placed-as-stated = según lo indicado
placed-see-question = vea la pregunta
placed-record = en él hay una impresión superior y una inferior, una frente a otra
placed-same = el mismo escaneo que { $other }
placed-unreadable = no se puede leer
placed-impression = muestra una impresión { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
}
placed-jaw-open = su forma no deja claro de qué maxilar es
placed-tray-open = ninguna impresión muestra aquí de quién es la cubeta
placed-stage-stated = fase según lo indicado
placed-wash = en la cubeta de { $first }, { $by } mm por encima
placed-first-pass = en la cubeta de { $wash }, por debajo
placed-tray = encaja en { $shares }
tray-share = el { $share } % de la superficie externa de { $impression }
remark-not-seen = no se ve en { $impression }: { $why }
remark-older = su archivo es el más antiguo de los dos, un indicio débil
remark-name = el nombre del archivo sugiere otra cosa, un indicio débil
trial-same-tray = ambos muestran la misma cubeta vacía
trial-no-impression = no se ve ninguna impresión

## Lo que las superficies dejan abierto.

ask-unreadable = ¿Puede faltar en el caso un escaneo que no se puede leer? { $refused }
ask-what = ¿Qué es { $name }? No muestra una impresión completa: { $what }.
ask-record = ¿Es { $name } el registro intermaxilar? Parece una impresión { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
}, pero { $other } está en él.
ask-jaw = ¿Qué maxilar muestra { $name }? Su forma sugiere el { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
}, pero no con claridad.
ask-jaw-named = ¿Qué maxilar muestra { $name }? Su forma sugiere el { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
}; el nombre del archivo, el otro.
ask-tray = ¿Es { $name } una cubeta de este caso? No encaja en ninguna de las impresiones.
ask-tray-wall = ¿Es { $name } una cubeta de este caso? No encaja en ninguna de las impresiones; su pared de { $wall } mm es la de una cubeta o una base de prótesis.
ask-tray-jaw = ¿De qué maxilar es la cubeta { $name }? Encaja en { $impressions }.
ask-which = ¿Qué escaneo es ({ $role }): { $names }?
ask-one-step = El caso tiene una impresión { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
} que se indicó como hecha en un paso y otra con técnica de lavado. ¿Cuál pertenece al caso?
ask-stage = ¿En qué fase está la impresión { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
} { $name }?
ask-stage-alone = Un solo escaneo no lo muestra.
ask-stage-several = Aquí hay varias impresiones de este maxilar.
ask-order = ¿Cuál de las impresiones { $jaw ->
    [maxillary] superiores
   *[mandibular] inferiores
} { $one } y { $other } es el lavado?
ask-order-not-compared = No se compararon.
ask-order-not-comparable = No se pueden comparar: { $why }.
ask-order-alike = Difieren en { $by } mm, y ninguna está claramente por encima de la otra.
ask-order-stated-otherwise = Lo indicado no es lo que muestran las superficies.

## Respuestas.

choice-part = parte de la impresión { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
}, que se cortó
choice-pieces = todos: son piezas de una misma cubeta
choice-relieved = { $before }; { $after } es la misma cubeta tras el rebaje
choice-order = { $first } antes del lavado, { $wash } el lavado
choice-leave-out = { $kept }; omitir { $other }
choice-record = { $kept }; el registro intermaxilar es { $other }
choice-parts = ambos: partes de una misma impresión, que se cortó ({ $impression })
choice-number = Número (1 a { $most }), o Intro para dejarlo abierto:
choice-not-listed = Indique un número de la lista.

## Comentarios del archivo de caso.

comment-proposed = Propuesto por archproof según lo que muestran los escaneos. Léalo antes de usarlo;
comment-proposed-help = «archproof help case-file» enumera qué más se puede indicar.
comment-pseudonym = un seudónimo, nunca un nombre
comment-question = PREGUNTA: { $question }
comment-answers = Quite '# ' delante de lo correcto y delante de su sección:
comment-left-out = Omitido: { $name }: { $why }
