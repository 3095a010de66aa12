### Qué se está haciendo, para mostrar el avance.

step-reading = leyendo los escaneos
step-of-impression = impresión { $number } de { $of }: { $step }
step-measured = impresión { $number } medida
step-comparing = comparando el lavado con la impresión anterior
step-relating = relacionando los maxilares
step-judging = evaluando
step-writing = dibujando y escribiendo
stage-topology = uniendo triángulos
stage-frame = determinando la orientación de la impresión
stage-tissue-side = distinguiendo la superficie tisular de la externa
stage-registration = ajustando el escaneo de la cubeta
stage-border = siguiendo el borde
stage-cover = midiendo el grosor del material
stage-spots = delimitando la cubeta visible y las zonas finas
stage-tissue = buscando burbujas, nódulos, pliegues y huecos
stage-landmarks = buscando puntos anatómicos
progress-cases = { $done } de { $all } casos, { $rate }, faltan { $left }
progress-unreadable = {";"} algunos no se pudieron leer
look-scans = examinando cada escaneo
look-record = buscando el registro intermaxilar
look-trays = colocando las cubetas sobre las impresiones
look-couples = comparando las impresiones de un maxilar
