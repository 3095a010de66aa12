### Por qué no se evaluó algo.

cut-between-parts = la impresión se cortó: no se evaluó nada en el corte entre sus partes ({ $width } de ancho) ni junto a él
no-wash-pair = el caso no nombra ninguna impresión anterior al lavado junto a un lavado del mismo maxilar
reason-not-an-impression = no es una impresión: { $what }
no-record-scan = el caso no nombra ningún escaneo del registro intermaxilar
no-vertical-dimensions = el caso no indica ambas dimensiones verticales
no-parcel = el caso no dice nada del envío
too-small-to-see = los de menos de { $least } de ancho no se ven en este escaneo
border-partly-judged = no se pudieron evaluar { $part } de { $whole } del borde: { $why }
over-extension-not-shown = ningún escaneo muestra si el borde es demasiado largo: compárelo con la boca
no-tissue-too-coarse = la arista mediana mide { $edge } mm, demasiado gruesa para ver defectos de la superficie ({ $most } mm como máximo)
parts-off-the-tray = la parte { $part } no se apoya en la cubeta (lo hace el { $share } % de su superficie): compruebe que se cortó de esta impresión y escanee también su exterior
parts-ambiguous = la parte { $part } encaja en la cubeta de más de una manera, con { $spread } mm de diferencia: muestra muy poca cubeta
parts-step = las superficies de las partes no se continúan (un escalón de { $step } mm en el corte): son de impresiones distintas
parts-shown-twice = las partes { $first } y { $second } muestran la misma superficie, en el { $share } % de la menor: indique cada parte una sola vez
parts-apart = la parte { $part } no se une a ninguna otra por un corte de al menos { $least } mm: puede faltar una parte entre ellas
no-border-line = no se pudo seguir ninguna línea de borde alrededor del escaneo
border-not-round = la línea seguida no recorre ambos lados de toda la arcada
missing-tissue-side-only = el escaneo muestra solo el lado de los tejidos
missing-scan-ends = el escaneo termina antes de que el borde dé la vuelta
missing-no-surface = allí no se escaneó ninguna superficie
missing-no-crest = allí no se encontró la cresta del reborde
missing-flange-too-low = la aleta es más corta que la profundidad a la que se mide el grosor
missing-no-roll = el borde no está redondeado allí
missing-off-the-summit = la línea seguida se aparta allí de la cima de la aleta
missing-no-tray = no hay ningún escaneo de la cubeta alineado
missing-at-the-cut = allí se cortó la impresión
no-relation-not-in-record = la impresión { $arch ->
    [maxillary] superior
   *[mandibular] inferior
} no se encuentra en el escaneo del registro: solo el { $share } % de su lado de los tejidos se apoya en él
no-relation-ambiguous = la impresión { $arch ->
    [maxillary] superior
   *[mandibular] inferior
} encaja en el escaneo del registro de más de una manera, con { $spread } mm de diferencia: lo que el registro muestra de ella es muy poco o muy uniforme
no-relation-jaw-missing = el caso no contiene ninguna impresión del maxilar { $arch ->
    [maxillary] superior
   *[mandibular] inferior
} que colocar sobre el registro
no-relation-not-opposed = en el escaneo del registro las dos impresiones no quedan enfrentadas con derecha e izquierda iguales; uno de los escaneos puede estar reflejado, o el registro es de otro caso
no-space-not-opposed = no hay reborde inferior enfrente
no-space-not-shown = el registro no muestra aquí ambos rebordes
no-colour-unknown = el escaneo tiene colores, pero no se indicó el de la cubeta y ninguno destaca en la superficie externa
no-colour-alike = los colores de la cubeta y del material difieren en { $difference } en CIELAB, muy poco para distinguirlos ({ $least } como mínimo)
no-colour-uneven = los colores del escaneo son demasiado irregulares para distinguir la cubeta del material: los separan { $separation } desviaciones estándar ({ $least } como mínimo)
no-cover-inside-missing = al escaneo de la cubeta le falta la superficie interna o está vuelto del revés: en el { $share } % de la superficie de los tejidos muestra su dorso
no-cover-too-little-tray = frente a la superficie de los tejidos se ve muy poco de la cara externa de la cubeta para medir su grosor
no-cover-here-no-tray = el escaneo de la cubeta no contiene cubeta allí
no-cover-here-differs = la superficie externa allí no corresponde ni a la cubeta ni a material sobre ella
no-pair-does-not-fit = la impresión anterior no encaja en esta: solo se apoya en ella el { $share } %
no-pair-ambiguous = la impresión anterior se puede colocar sobre esta de más de una manera; difieren en { $spread } mm
no-pair-mirrored = la impresión anterior solo encaja en esta como en un espejo: uno de los dos escaneos está reflejado, o son de dos bocas
no-border-before-the-wash = antes del lavado, { $why }
transit-same-file = es el mismo archivo que el escaneo de la impresión a su llegada
transit-arrived-none = el escaneo a la llegada no muestra una impresión: { $what }
transit-sent-none = el escaneo al envío no muestra una impresión: { $what }
transit-other-jaw = muestra el otro maxilar: una impresión { $arch ->
    [maxillary] superior
   *[mandibular] inferior
}
transit-not-this = solo el { $share } % de la superficie de los tejidos se apoya en él
transit-no-crest-line = en la impresión tal como llegó, { $why }
no-wash-outer-surface = de la impresión anterior al lavado o del lavado solo se escaneó el lado de los tejidos; alineados por él, no se vería un lavado uniforme
no-wash-nothing-over = ninguna superficie de los tejidos del lavado queda sobre la impresión anterior
unseen-no-notch = el borde no muestra allí ninguna escotadura de { $least } mm o más
unseen-no-border = allí no se pudo seguir ninguna línea de borde
unseen-no-relief = cualquier relieve es inferior a { $least } mm, lo mínimo que muestra este escaneo
unseen-too-coarse = la arista mediana de { $edge } mm es demasiado gruesa para ello ({ $most } mm como máximo)
unseen-trough-open = el surco no se cierra allí: termina { $open } mm por encima de su fondo
unseen-no-neighbour = su lugar depende de un punto anatómico que no se encontró
no-tray-scan = no se indicó ningún escaneo de la cubeta
no-tray-outer-surface = el escaneo muestra solo el lado de los tejidos, así que no se ve superficie de la cubeta sobre la que alinear su escaneo
no-tray-little-outer-surface = el escaneo muestra { $outer } cm² de superficie externa junto a { $tissue } cm² de superficie de los tejidos, muy poco para alinear el escaneo de la cubeta
no-tray-does-not-fit = el escaneo de la cubeta no encaja con la superficie externa de la impresión: solo el { $share } % se apoya en la cubeta
no-tray-other-size = el escaneo de la cubeta es de otro tamaño: { $tray } mm de ancho, la impresión con su cubeta { $impression } mm
no-tray-mirrored = el escaneo de la cubeta solo encaja con la impresión como en un espejo: uno de los dos escaneos está reflejado, y derecha e izquierda no son seguras
no-tray-ambiguous = el escaneo de la cubeta se podría colocar de más de una manera; las posiciones difieren en { $spread } mm
no-tray-too-coarse = la arista mediana mide { $edge } mm, demasiado gruesa para medir el grosor del material ({ $most } mm como máximo)
no-tray-alike = dos cubetas del estante encajan igual de bien con la impresión: «{ $one }» y «{ $other }»
no-tray-of-shelf-nearest = ninguna de las { $trays } cubetas del estante encaja con la superficie externa de la impresión (la más cercana es «{ $nearest }»)
no-tray-of-shelf = ninguna de las { $trays } cubetas del estante encaja con la superficie externa de la impresión
pieces-no-impression = el escaneo no muestra ninguna impresión en la que colocar las piezas de la cubeta
pieces-no-outer-surface = el escaneo muestra muy poco exterior para colocar las piezas de la cubeta
pieces-not-found = la pieza { $piece } de la cubeta no se encuentra en el exterior de la impresión
pieces-ambiguous = la pieza { $piece } de la cubeta encaja en el exterior de la impresión de más de una manera, con { $spread } mm de diferencia: se ve muy poco de ella
relieved-other-tray = solo encaja el { $share } % del primer escaneo de la cubeta: puede ser de otra cubeta o faltarle una parte
relieved-ambiguous = se puede colocar sobre el primer escaneo de la cubeta de más de una manera; difieren en { $spread } mm
none-wrong-size = su lado más largo mide { $longest } mm; una impresión en su cubeta mide de { $least } a { $most } mm
none-positive = la arcada sobresale como un reborde, como en un modelo o en la boca; una impresión tiene allí un surco
none-cast = la arcada sobresale como un reborde sobre una base recortada plana: un modelo
none-half = su surco recorre solo un lado de la arcada: media arcada
none-shell = su pared mide { $wall } mm de grosor, lo que no deja sitio para una cubeta con material: una cubeta vacía o una base de prótesis
none-record-rim = bajo su surco hay un bloque de { $depth } mm de alto con una cara plana: una placa base con su rodillo de cera
none-no-trough = no se encontró ningún surco en forma de arcada
none-teeth = { $teeth } dientes o partes de dientes sobresalen uno junto a otro: una arcada dentada
none-sockets = { $sockets } huecos como de dientes están uno junto a otro: se tomó la impresión de una arcada dentada
none-two-scans = en el archivo hay dos escaneos separados uno junto a otro, de { $larger } y { $smaller } mm²
none-exchanged = es una parte del escaneo mayor que se indicó como cubeta: impresión y cubeta parecen intercambiadas
none-parts = no se pudieron unir sus partes: { $why }
none-empty-tray = su superficie de los tejidos se apoya en la cubeta por todas partes: es la cubeta vacía
no-cover-no-colour = { $cover }; por el color: { $colour }
stops-relieved = los topes se rebajaron antes del lavado; si la cubeta asentó del todo se ve en la impresión anterior al lavado
tray-thickness-stated = con un grosor de cubeta indicado, el grosor del material solo se conoce en una parte de la superficie de los tejidos
tray-not-aligned = el escaneo de la cubeta no se alineó con la impresión
