### Qué cubeta de existencias tomar: lo que imprime `archproof fit`, y su página.

## Qué hacer.

fit-take = TOME { $tray } ({ $jaw ->
    [maxillary] maxilar superior
   *[mandibular] mandíbula
}): no toca en ningún punto.
fit-adapt = NINGUNA SIRVE ({ $jaw ->
    [maxillary] maxilar superior
   *[mandibular] mandíbula
}): la que más se acerca es { $tray }. Adáptela:
fit-bend = Dóblela para separarla del tejido ({ $place }): penetra hasta { $depth } mm en el tejido, en { $area }.
fit-shorten = Acórtela ({ $place }): su borde sobrepasa el de la impresión en { $past } mm.
fit-individual = NINGUNA SIRVE ({ $jaw ->
    [maxillary] maxilar superior
   *[mandibular] mandíbula
}): confeccione una cubeta individual. Ninguna cubeta de existencias se acerca lo suficiente para adaptarla.
fit-none-of-this-jaw = NINGUNA SIRVE: no hay cubetas de existencias { $jaw ->
    [maxillary] del maxilar superior
   *[mandibular] de la mandíbula
}. Escanee las que tenga.
fit-try = Pruebe la cubeta en la boca antes de usarla; decide el profesional clínico autorizado.

## La tabla.

fit-head-tray = cubeta
fit-head-least = mín., mm
fit-head-median = mediana
fit-head-uncertainty = ± (k = 2)
fit-head-wanted = { $from } a { $to } mm
fit-head-edge = de la cubeta al borde, mínimo
fit-head-touches = toca
fit-other-jaw = cubeta del otro maxilar
fit-not-placed = no se pudo probar: en su escaneo no se ve ninguna cubeta
fit-how = Holgura del tejido al interior de cada cubeta, en la posición en que es más uniforme. La columna «{ $wanted }» es la parte del tejido sobre la cubeta con esa holgura.
fit-positive = El escaneo muestra la boca o un modelo: la distancia es hasta donde termina el escaneo, que no es el borde.

## La página.

fit-page-kicker = Qué cubeta de existencias sirve
fit-page-pictures = Cada cubeta en la boca
fit-page-lines = Los colores muestran la holgura del tejido al interior de la cubeta; gris donde no hay cubeta debajo. La línea continua es el borde de la impresión; la discontinua, el de la cubeta. Un anillo numerado marca dónde toca la cubeta.
fit-page-lines-positive = Los colores muestran la holgura del tejido al interior de la cubeta; gris donde no hay cubeta encima. La línea continua muestra dónde termina el escaneo; la discontinua es el borde de la cubeta. Un anillo numerado marca dónde toca la cubeta.
fit-page-scale = holgura, mm (deseada: { $from } a { $to })
fit-page-picture = Holgura que deja { $tray }, { $view }. { $touches ->
    [0] No toca en ningún punto.
    [one] Está marcado el punto en que toca.
   *[other] Están marcados los { $touches } puntos en que toca.
}
fit-page-touch = { $place }: hasta { $depth } mm en el tejido, en { $area }
fit-page-written-by = Elaborado con { $program }. Una ayuda para la inspección, no un producto sanitario; decide el profesional clínico autorizado.
