### El resumen en la terminal.

findings-more = { $count } { $notes ->
    [all] { $count ->
        [one] nota más
       *[other] notas más
    }
   *[some] { $count ->
        [one] hallazgo más
       *[other] hallazgos más
    }
} en { $place }.

## El titular.

headline-ready = Puede pasar al { $next ->
    [wash] lavado
   *[laboratory] laboratorio
}.
headline-ready-in-part = Puede pasar al { $next ->
    [wash] lavado
   *[laboratory] laboratorio
}, con la salvedad de lo que figura como no evaluado.
headline-retake = { $which ->
    [upper] Repita la impresión superior.
    [lower] Repita la impresión inferior.
    [both] Repita ambas impresiones.
   *[one] Repita la impresión.
}
headline-correct = Corrija { $findings } antes de usar el conjunto; las impresiones en sí cumplen.
headline-rework = Corrija los lugares marcados con NO CUMPLE y después { $next ->
    [repeat] repita el lavado
    [each] tome la impresión de lavado de cada una
   *[take] tome la impresión de lavado
}.
headline-rework-one = Corrija en la { $impression } los lugares marcados con NO CUMPLE y después { $next ->
    [repeat] repita el lavado
    [each] tome la impresión de lavado de cada una
   *[take] tome la impresión de lavado
}.
headline-question-first = Responda primero a la pregunta sobre la { $impression }.
headline-answer = { $count ->
    [one] Responda a la pregunta de abajo y compruebe de nuevo. Hasta entonces, no haga nada en la impresión.
   *[other] Responda a las preguntas de abajo y compruebe de nuevo. Hasta entonces, no haga nada en la impresión.
}
headline-missing = Aún no se puede emitir un dictamen: { $lacks }. Aporte lo que se indica abajo y compruebe de nuevo.
headline-look = { $count ->
    [one] Revise un lugar antes de aceptar: { $findings }.
   *[other] Revise { $count } lugares antes de aceptar: { $findings }.
}
headline-can-be-worked-from = { $count ->
    [one] Se puede trabajar con la impresión.
   *[other] Se puede trabajar con las impresiones.
}
headline-parcel = Complete el envío: { $lacks }.
headline-not-measured = Aún no se puede emitir un dictamen: no se pudieron medir todas las impresiones.


## Lo que falta, en pocas palabras.

lack-thickness-in-part = el grosor del material se conoce solo en parte
lack-thickness = no se pudo medir el grosor del material
lack-thickness-uncertain = el grosor del material es demasiado incierto
lack-border = no se pudo medir el borde
lack-scan-ends = el escaneo termina antes que el borde
lack-scan-coarse = el escaneo tiene muy poca resolución
lack-tissue-surface = parte de la superficie tisular no se escaneó
lack-hole = el escaneo tiene un hueco
lack-tissue-stop = un tope tisular no se escaneó
lack-record = no se pudo medir el registro intermaxilar
lack-wash = { $jaw ->
    [upper] falta el lavado superior
    [lower] falta el lavado inferior
   *[unknown] falta un lavado
}
lack-prescription = la prescripción
lack-disinfection = los datos de la desinfección
lack-contents = los elementos que faltan
lack-something = falta algo

## Lo que se dice de una impresión, un lavado y la relación intermaxilar.

summary-head = { $verdict } caso { $case }: { $asked }
summary-joined = unida a partir de { $parts } partes; los cortes tienen { $width } de ancho y no se evalúan
tray-found = cubeta hallada entre las { $trays } de existencias: { $best }, { $lies }
tray-found-before = cubeta hallada entre las { $trays } de existencias: { $best }, { $lies }; le sigue { $next }, { $next_lies }
tray-lies = { $share } de la superficie externa a { $rms } mm (media cuadrática)
summary-thickness = grosor del material sobre la cubeta: mínimo { $least }, mediana { $median } (± { $doubt }), en { $area } de superficie tisular
summary-no-material = 0 (cubeta en la superficie)
summary-stops-show = { $stops ->
    [one] la cubeta se ve en 1 tope tisular declarado, como corresponde
   *[other] la cubeta se ve en { $stops } topes tisulares declarados, como corresponde
}
summary-stops-relieved = los topes tisulares se rebajaron antes del lavado
summary-since-sent = desde que se envió: { $by } % { $size ->
    [smaller] más pequeña
   *[larger] más grande
}, extremos posteriores { $heels } mm { $way ->
    [nearer] más próximos
   *[farther] más separados
}; { $places ->
    [0] ningún lugar cambió por sí solo
    [one] 1 lugar cambió por sí solo
   *[other] { $places } lugares cambiaron por sí solos
}
summary-places-sent = de { $all ->
    [one] 1 lugar
   *[other] { $all } lugares
} en el escaneo del envío, { $again } hallados de nuevo
summary-places-gone = desaparecidos
summary-places-not-measured = no medidos de nuevo
summary-colour = según el color, la cubeta ({ $tray }, { $source ->
    [found] color hallado en el escaneo
   *[given] según lo indicado
}) se ve en { $shown } de { $all }; el material es { $material }
summary-landmarks = puntos anatómicos registrados: { $recorded } de { $all }
landmarks-reached = lugar alcanzado, sin verificar
landmarks-cut-short = incompletos
landmarks-obscured = ocultos
landmarks-not-found = no encontrados
summary-wash = lavado { $jaw ->
    [maxillary] superior
   *[mandibular] inferior
}, grosor: mediana { $median }; del 5 al 95 %: { $least } a { $most }; cada valor ± { $doubt } mm
wash-resolved = resueltos
wash-still-open = aún abiertos
wash-unclear = demasiado justos para decidir
wash-new = nuevos
summary-interocclusal = distancia interoclusal, según las lecturas dadas: { $distance }
summary-space = espacio entre los rebordes: de { $least } a { $most } mm (cada valor ± { $doubt } mm); ángulo entre ellos { $angle }
record-in-part = El registro muestra una parte de la arcada: el espacio se midió en { $measured } de { $all } estaciones; en { $not_shown } el registro no muestra ambos rebordes.

## La magnitud de un hallazgo.

figure-at-least = { $what }, mínimo { $limit }
figure-at-most = { $what }, máximo { $limit }
figure-patch = superficie de { $figure }
figure-material = material de { $figure } de grosor
figure-tray-at-surface = material de { $figure } de grosor (cubeta en la superficie)
figure-over-stop = material sobre el tope de { $figure } de grosor
figure-tray-shows = cubeta visible en { $figure } de la superficie
figure-known-within = grosor conocido con un margen de { $figure }
figure-scanned = { $figure } escaneados
figure-flange-thick = aleta de { $figure } de grosor
figure-flange-high = aleta de { $figure } de altura
figure-lower-than-other-side = aleta { $figure } más baja que la del otro lado
figure-lower-than-before = borde { $figure } más bajo que antes del lavado
figure-below-neighbourhood = borde { $figure } por debajo de su entorno
figure-border-radius = radio del borde { $figure }
figure-past-tray = el material sobrepasa la cubeta { $figure }
figure-wide = { $figure } de ancho
figure-long = { $figure } de largo
figure-smallest-void = burbuja más pequeña detectable de { $figure } de ancho
figure-median-edge = arista (mediana) { $figure }
figure-confidence = confianza { $figure }
figure-tray-turned = cubeta girada { $figure }
figure-tray-off = cubeta desplazada { $figure }
figure-tray-bent = cubeta doblada { $figure }
figure-pieces-apart = piezas separadas { $figure }
figure-moved = movimiento de { $figure }
figure-outer-excess = material sobre { $figure } de las caras externas de la cubeta
figure-tray-width = la anchura de la cubeta difiere { $figure }
figure-wash-thick = lavado de { $figure } de grosor en una vigésima parte de la superficie
figure-wash-varies = el grosor del lavado varía { $figure }
figure-recorded = { $figure } registrado
figure-beyond-landmark = la impresión lo sobrepasa { $figure }
figure-space = espacio { $figure }
figure-angle = ángulo { $figure }
figure-distance = distancia { $figure }
figure-old = { $figure } de antigüedad

## Las listas: hallazgos, y lo que no se evaluó.

place-on-tray = a { $rim } mm del borde de la cubeta por el lado de labios y mejillas, a { $front } mm del centro anterior de ese borde
summary-on-tray = En la cubeta: { $place }.
summary-same-action = Lo mismo que en { $id }.
summary-safety = Seguridad: Rebaje solo fuera de la boca, con protección ocular y contra el polvo; después busque al tacto bordes cortantes y alíselos.
adhesive = Adhesivo: Limpie y seque cubeta y material donde añada; ponga adhesivo en la cubeta descubierta y déjelo secar. Priman las instrucciones del fabricante.
summary-how-to-scan = Cómo escanear para que se pueda evaluar todo: archproof help scanning
summary-held-back = En espera hasta que se responda la pregunta, porque los lados y los lugares no son seguros: { $checks }
summary-not-judged = No evaluado: { $checks } ({ $why })
summary-not-judged-of = No evaluado, { $impression }: { $checks } ({ $why })
summary-not-part = No forma parte de esta comprobación: { $checks }

## El final.

summary-scanner = Escáner: ± { $doubt } mm por longitud, incluidos en cada incertidumbre de arriba ({ $source })
summary-map = { $what ->
    [wash] Mapa del lavado
   *[thickness] Mapa de grosor
} { $file }: oscuro = { $from } mm, claro = { $to } mm o más, gris = no medido
summary-reading = Al leer: { $file }: { $warning }
summary-sheet = Hoja: { $path }
summary-report = Informe: { $path }
summary-return-note = Nota de devolución: { $path }
summary-return-text = Texto de la nota de devolución: { $path }
summary-result = Resultado: { $path }
summary-no-return-note = Nota de devolución: no se escribió ninguna, porque no se pide nada a la clínica.
summary-files = Resultados en { $folder }: { $files }

# Qué cubeta de existencias tomar para una impresión que se repite.
next-tray-take = Para la nueva impresión tome la cubeta { $tray } de existencias: no toca en ningún punto; holgura mediana { $median }, según el tejido que muestra esta impresión.
next-tray-same = Para la nueva impresión ninguna cubeta de existencias se adapta mejor que { $tray }, la que se usó: no toca en ningún punto; holgura mediana { $median }, según el tejido que muestra esta impresión.
next-tray-adapt = Para la nueva impresión ninguna cubeta de existencias sirve tal como está. La que más se acerca es { $tray }: dóblela para separarla del tejido donde lo toca ({ $places }).
next-tray-individual = Para la nueva impresión ninguna cubeta de existencias se acerca lo suficiente: confeccione una cubeta individual.
next-tray-none = Para la nueva impresión no hay cubetas de existencias de este maxilar.
next-tray-try = Pruébela primero en la boca.
