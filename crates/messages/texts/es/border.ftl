### El borde: dónde, cómo se moldea y qué hacer con él.

## Dónde en el borde. Longitudes a lo largo del borde; los lados son los del paciente.

midline-labial = línea media labial
midline-lingual = línea media lingual
midline-back = línea media posterior
stretch-behind-pad = detrás de la almohadilla retromolar{ $side ->
    [right] { " " }derecha
    [left] { " " }izquierda
   *[none] { "" }
}
stretch-on-side = entre { $near } y { $far } mm a la { $side ->
    [right] derecha
   *[left] izquierda
} de la { $midline }
stretch-across = entre { $from } mm a la { $side ->
    [right] derecha
   *[left] izquierda
} y { $to } mm a la { $other ->
    [right] derecha
   *[left] izquierda
} de la { $midline }
stretch-from-midline = desde la { $midline } hasta { $to } mm a su { $side ->
    [right] derecha
   *[left] izquierda
}
stretch-at-midline = en la { $midline }

## Los movimientos que lo moldean, como órdenes.

movement-lip-down = tire del labio hacia fuera y hacia abajo
movement-lip-up = tire del labio hacia fuera y hacia arriba
movement-cheek-down = tire de la mejilla hacia fuera y hacia abajo
movement-cheek-up = tire de la mejilla hacia fuera y hacia arriba
movement-jaw-aside = pida al paciente que abra bien la boca, la cierre y mueva la mandíbula de un lado a otro
movement-open-and-close = pida al paciente que abra bien la boca y la cierre
movement-say-ah = pida al paciente que diga «ah»
movement-purse-lips = pida al paciente que frunza los labios y succione las mejillas hacia dentro
movement-tongue-out = pida al paciente que saque la lengua y la lleve a ambas comisuras

## Lo que va antes y después, como órdenes dentro de una frase.

mould-again = vuelva a moldear el borde
mould-again-by = vuelva a moldear el borde ({ $movement })
then-take-wash = después tome una impresión de lavado
then-repeat-wash = después repita el lavado

## Qué hacer.

border-asymmetry = La aleta es más baja { $range } que en el otro lado. Los maxilares son asimétricos por naturaleza: compare ambos vestíbulos en la boca. Si este es más profundo de lo que alcanza el borde, añada material de borde y { $mould }, { $then }. Si el borde del otro lado presiona su vestíbulo, es demasiado largo: redúzcalo allí y moldéelo con el lavado.
border-change = El borde es más bajo { $range } que antes del lavado: se recortó o el lavado lo desplazó. Si no era lo previsto, añada allí material de borde y { $mould }, { $then }.
border-not-judged = No se evaluó el borde: { $why }.
border-scan-arch = Escanee toda la arcada, cada aleta por ambas caras, y compruebe de nuevo; o examine el borde a simple vista.
border-scan-round = Escanee el borde en todo su contorno, también por la cara externa.
border-near-tray = La cubeta termina cerca del borde { $range }. Si se va a moldear de nuevo el borde, acorte primero allí la cubeta hasta dejarla a 2 o 3 mm del fondo del vestíbulo; después añada material de borde y { $mould }.
border-far-from-tray = El material sobrepasa mucho la cubeta { $range }. Si cede bajo el dedo, necesita soporte: alargue allí la cubeta (límpiela y séquela, aplique adhesivo y déjelo secar), añada material de borde y { $mould }, { $then }; o tome la impresión en una cubeta más grande.
border-sharp = Filo de cuchillo: el borde es afilado { $range }. Añada allí material de borde y { $mould } para que quede redondeado, { $then }.
border-may-be-sharp = El borde puede ser afilado { $range }: pálpelo. Si es un filo de cuchillo, añada allí material de borde y { $mould }, { $then }.
flange-low = La aleta es baja { $range }. Añada allí material de borde y { $mould }, { $then }.
flange-low-or-ridge = La aleta es baja { $range }: mire en la boca. Si el vestíbulo es más profundo de lo que alcanza el borde, añada allí material de borde y { $mould }, { $then }. Si el propio reborde es bajo, déjela como está.
flange-thin = La aleta es delgada { $range }. Añada allí material de borde y { $mould }, { $then }.
flange-may-be-thin = La aleta es delgada { $range }. Si cede bajo el dedo, añada allí material de borde y { $mould }, { $then }.
flange-thick = La aleta es gruesa { $range }. Redúzcala por fuera, { $then } y { $mould } mientras el lavado esté blando.
flange-may-be-thick = La aleta es gruesa { $range }. Si llena en exceso el vestíbulo, redúzcala por fuera, { $then } y { $mould } mientras el lavado esté blando.
border-low = El borde es bajo { $range }: compárelo con la boca. Si el vestíbulo es igual de poco profundo allí, déjelo como está. Si es más profundo, añada material de borde y { $mould }, { $then }.
border-dips = El borde se hunde { $range }, donde puede haber un frenillo: compárelo con la boca. Si es el frenillo, déjelo como está. Si no lo es, el borde es corto allí: añada material de borde y { $mould }, { $then }.
border-short = El borde es corto { $range }. Añada allí material de borde y { $mould }, { $then }.
border-may-be-short = El borde puede ser corto { $range }: mire allí la impresión. Si el borde continúa más allá del escaneo, escanee de nuevo este tramo; si es corto y el vestíbulo es más profundo, añada material de borde y { $mould }, { $then }.
tray-at-border = La cubeta es visible en el borde { $range }: acórtela allí hasta dejarla a 2 o 3 mm del fondo del vestíbulo, límpiela y séquela, aplique adhesivo sobre la cubeta descubierta y déjelo secar; añada material de borde y { $mould }, { $then }.
tray-may-be-at-border = No se distingue con seguridad en el escaneo: mire el borde { $range }. Si la cubeta no es visible, escanee de nuevo este tramo con mayor resolución. Si es visible, acórtela allí hasta dejarla a 2 o 3 mm del fondo del vestíbulo, límpiela y séquela, aplique adhesivo sobre la cubeta descubierta y déjelo secar; añada material de borde y { $mould }, { $then }.
scan-ends = La vuelta del borde no se escaneó { $range }. Escanee de nuevo este tramo, también por la cara externa: no se evaluó si el propio borde es corto allí.
