### Estudios del escáner y de la medición: patrón, sistema de medida, repeticiones, concordancia, cubetas de existencias.

study-line = { $path }, línea { $line }: { $fault }

## Nombres de las magnitudes comparadas. El nombre inglés es el del propio resultado.

compared-of = impresión { $number }: { $name }
compared-error = error: { $quantity }
compared-scanned-area = superficie escaneada
compared-cover = grosor del material
compared-median = mediana
compared-5th-percentile = percentil 5
compared-least = mínimo
compared-area-judged = superficie evaluada
compared-border-length = longitud del borde
compared-flange-height = altura de la aleta
compared-flange-thickness = grosor de la aleta
compared-border-radius = radio del borde
compared-value = valor
quantity-diameter = diámetro
quantity-centre-distance = distancia entre centros
quantity-step-height = altura del escalón
quantity-dispersion = dispersión
size-between = { $quantity } { $from } a { $to }

## Un patrón de referencia.

artefact-head = { $verdict }: patrón { $artefact }, { $scans ->
    [one] 1 escaneo
   *[other] { $scans } escaneos
}
artefact-conforming = CONFORME
artefact-borderline = EN EL LÍMITE
artefact-not-conforming = NO CONFORME
artefact-not-judged = NO EVALUADO (la descripción no indica ningún límite)
artefact-scale = escaneo { $scan }: las longitudes difieren en { $off } % de las certificadas
artefact-interchangeable = escaneo { $scan }: las esferas están tan uniformemente dispuestas que una puede tomarse por otra
artefact-size-head = medida, mm
artefact-scan-head = escaneo
artefact-certified = certificado
artefact-found = hallado
artefact-error = error ± U (k = 2)
artefact-limit-head = límite
reading-conforming = conforme
reading-borderline = en el límite
reading-not-conforming = NO CONFORME
reading-not-judged = no evaluado
artefact-mean-error = error medio { $mean }, desviación típica { $sd }
artefact-mean = media { $mean }, desviación típica { $sd }
artefact-sd-between = ({ $from } a { $to } con un 95 % de confianza)
artefact-legend = Incertidumbre de medida: la de la medida certificada y la del ajuste, que supone independientes los errores de los puntos. Dispersión: la corona que contiene el 95 % de los puntos de una esfera.
artefact-scanner-source = patrón { $artefact }, certificado { $certificate }, comprobado el { $date }: { $lengths ->
    [one] 1 longitud
   *[other] { $lengths } longitudes
} en { $scans ->
    [one] 1 escaneo
   *[other] { $scans } escaneos
}, media cuadrática del error { $error } mm
artefact-step-not-found = { $path }: escalón { $step }: { $problem }; escanéelo de nuevo o compruebe si lower, upper y reach_mm son correctos
artefact-no-face = en su cara { $face ->
    [upper] superior
   *[lower] inferior
} se ven { $seen } vértices, menos de { $least }
artefact-too-few = de { $wanted } esferas se ven { $seen } en el escaneo; cada una debe estar escaneada al menos en un tercio, y la unidad debe ser correcta
artefact-other = las esferas del escaneo no están dispuestas como las del patrón (se vieron { $seen }, con una tolerancia de escala del 5 %); el patrón puede ser otro, o el escaneo estar reflejado

## Su descripción.

artefact-no-id = el patrón necesita un nombre de caracteres imprimibles
artefact-no-sphere = un patrón tiene al menos una esfera; indíquela en [[sphere]]
artefact-sphere-name = una esfera necesita un nombre de caracteres imprimibles que ninguna otra tenga
artefact-centre = un centro necesita tres números finitos, mm
artefact-size = una medida debe ser finita y mayor que 0, mm
artefact-uncertainty = una incertidumbre debe ser finita y no menor que 0, mm (expandida, k = 2)
artefact-limit = un límite debe ser finito y mayor que 0, mm
artefact-between = una distancia es entre dos esferas distintas nombradas en [[sphere]]
artefact-centres-elsewhere = la distancia está certificada en { $certified } mm, pero los centros de sus esferas distan { $nominal } mm
artefact-step-name = un escalón necesita un nombre de caracteres imprimibles que ningún otro tenga
artefact-step-place = un escalón necesita lower, upper y facing con tres números finitos cada uno; facing es hacia donde miran sus caras, no 0 0 0
artefact-step-reach = las caras de un escalón están una junto a otra, a más del doble de reach_mm, que es mayor que 0
artefact-faces-elsewhere = el escalón está certificado en { $certified } mm, pero sus caras distan { $nominal } mm a lo largo de facing
artefact-step-unplaced = para hallar un escalón se necesitan tres esferas que no estén en línea

## Un estudio del sistema de medida.

gauge-head = Estudio cruzado del sistema de medida: { $operators } operadores, { $parts } piezas, { $repeats } repeticiones
gauge-source = fuente
gauge-freedom = g. de libertad
gauge-sum-of-squares = suma de cuadrados
gauge-mean-square = cuadrado medio
gauge-part-parts = piezas
gauge-part-operators = operadores
gauge-part-operators-by-parts = operadores × piezas
gauge-part-repeats = repeticiones
gauge-part-repeatability = repetibilidad
gauge-part-reproducibility = reproducibilidad
gauge-part-gauge = sistema de medida
gauge-part-total = total
gauge-interaction-pooled = operadores × piezas: F { $f }, p { $p }; agrupado con las repeticiones
gauge-interaction-apart = operadores × piezas: F { $f }, p { $p }; se mantiene aparte
gauge-no-interaction = operadores × piezas: sin F, ya que las repeticiones nunca difieren
gauge-variation = variación
gauge-sd = s
gauge-confidence = confianza del 95 %
gauge-of-study = % de la variación total
gauge-of-variance = % de la varianza
gauge-at-most = como máximo { $most }
gauge-below-zero = ninguno: muy por debajo de 0
gauge-categories = Categorías distinguibles: { $count }
gauge-by-ranges = Por medias y rangos: repetibilidad { $repeatability }, reproducibilidad { $reproducibility }, sistema de medida { $gauge }, piezas { $parts }; sistema de medida { $percent } % de la variación total, { $categories } categorías
gauge-nothing = No se pudo estudiar ninguna magnitud.
gauge-repeat-sd = s repet.
gauge-operators-sd = s operad.
gauge-gauge-sd = s sistema
gauge-parts-sd = s piezas
gauge-gauge-percent = sistema %
gauge-categories-head = categorías
gauge-of-figure = { $figure }: { $said }
gauge-not-studied = No estudiado: { $figure } ({ $why })
gauge-legend = En el análisis de sistemas de medida de los fabricantes de automóviles, un sistema por debajo del 10 % de la variación total es bueno, del 10 al 30 % puede servir y por encima no sirve; debería distinguir 5 categorías. Las mismas proporciones se piden de la tolerancia y de la distancia. Donde una varianza se estima en 0, la desviación típica es como máximo la indicada, con una confianza unilateral del 95 %.
gauge-least-and-most = mínimo { $least }, máximo { $most }
gauge-least = mínimo { $least }
gauge-most = máximo { $most }
gauge-against-both = Sistema de medida frente a los límites ({ $limits }): 6 s son el { $percent } % de la tolerancia; { $distance }
gauge-against-one = Sistema de medida frente a los límites ({ $limits }): { $distance }
gauge-mean-on-limit = la media de las lecturas está en el límite
gauge-of-distance = 3 s son el { $percent } % de la distancia de la media al límite más próximo
gauge-lacking = falta en { $lacking } de { $all } lecturas
gauge-unreadable = { $path }: no se puede leer ({ $reason }); indique un archivo CSV con las columnas operator, part, repeat, value, o una carpeta con carpetas de operadores
gauge-file-for-folder = { $path }: es un archivo donde se espera una carpeta; un estudio se guarda como OPERATOR/PART/REPEAT, y cada REPEAT es un escaneo (STL, PLY, OBJ) o una carpeta de resultados
gauge-no-repeat = { $path }: no es ni un escaneo ni una carpeta de resultados; un estudio se guarda como OPERATOR/PART/REPEAT, y cada REPEAT es un escaneo (STL, PLY, OBJ) o una carpeta de resultados
gauge-no-column = no hay ninguna columna '{ $name }'; la primera línea nombra las columnas operator, part, repeat, value, separadas por comas
gauge-no-cell = falta { $name }
gauge-no-number = el valor '{ $value }' no es un número; escríbalo así: 1.25
gauge-twice = operator, part y repeat son los de la línea { $line }; indique cada lectura una sola vez
gauge-unequal = tiene { $columns } columnas, la primera línea { $first }; escriba los números con punto, no con coma
gauge-no-text = no es texto en UTF-8; guarde así la tabla
gauge-no-row = no es una fila de una tabla CSV
study-too-small = un estudio del sistema de medida necesita al menos dos operadores, dos piezas y dos repeticiones
study-unequal = el operador «{ $operator }» midió la pieza «{ $part }» { $readings } veces, no { $wanted } como en lo demás; cada operador mide cada pieza el mismo número de veces
study-no-variation = todas las lecturas son iguales, lo que no dice nada del sistema de medida
study-not-finite = una lectura del operador «{ $operator }» en la pieza «{ $part }» no es un número finito

## Escaneos repetidos.

repeat-head = { $count } escaneos de una impresión
repeat-aligned = escaneo { $scan } alineado con el primero: media cuadrática { $rms } mm en el { $share }, colocado con ± { $uncertainty } mm
repeat-spread = Desviación típica en un punto: combinada { $pooled }, mediana { $median }, percentil 95 { $p95 } mm, en { $area }
repeat-no-spread = No evaluado: dispersión (no se pudo comparar nada)
repeat-one-place = (en un solo punto está entre { $from } y { $to } veces ese valor, con un 95 % de confianza)
repeat-nowhere = No difieren en ningún lugar más de lo que explican el ruido y la alineación ({ $detectable } mm)
repeat-places = Difieren más de lo que explican el ruido y la alineación ({ $detectable } mm) en { $count ->
    [one] 1 lugar
   *[other] { $count } lugares
}:
repeat-place = { $id } { $place }: { $apart } mm de separación en { $area } mm²
repeat-stands-out = { $line }, el escaneo { $scan } se aparta
repeat-off = fuera de la superficie tisular
repeat-more = (y { $count } menores)
repeat-title = Repetibilidad (en el sentido de ISO 5725), { $freedom } grados de libertad
repeat-mean = media ± (95 %)
repeat-sd = s
repeat-limit = r
repeat-range = rango
repeat-critical = crítico
repeat-beyond = FUERA
repeat-legend = r (límite de repetibilidad): dos escaneos difieren en menos en 95 de 100 casos. crítico: tantos escaneos quedan dentro en 95 de 100 casos (ISO 5725-6, factor { $factor }), { $by }. Mapa: viridis, oscuro 0 a claro { $most } mm; gris donde un escaneo no muestra superficie
repeat-known-beyond = según la desviación típica del estudio anterior. Donde el rango queda FUERA, escanee de nuevo; hasta entonces tome la mediana
repeat-known-within = según la desviación típica del estudio anterior: todos los rangos quedan dentro
repeat-own = según la desviación típica de estos mismos escaneos; --known evalúa los rangos con la de un estudio anterior
repeat-some-have-it = la tienen { $have } de { $all } escaneos
repeat-too-few = un solo escaneo no dice nada de la repetibilidad; indique dos o más de una misma impresión
repeat-does-not-fit = este escaneo no se ajusta al primero: solo encaja el { $share } %; puede ser de otra impresión o estar reflejado
repeat-not-known = { $path }: no es un repeat.json de esta versión ({ $reason }); indique uno que escribió «archproof repeat»

## Concordancia de evaluadores.

agreement-head = { $cases } casos, { $raters } evaluadores, dictámenes { $verdicts }
agreement-raters = evaluadores
agreement-cases = casos
agreement-agreement = concordancia
agreement-kappa-head = kappa (intervalo del 95 %)
agreement-kappa = { $kappa } ({ $from } a { $to })
agreement-all = todos
agreement-not-known = no se conoce más allá del azar: un solo dictamen, o ningún caso en común
agreement-rater = evaluador
agreement-missed = no detectados (intervalo del 95 %)
agreement-false-alarms = falsas alarmas (intervalo del 95 %)
agreement-share = { $count } de { $of } ({ $from } a { $to } %)
agreement-no-case = ningún caso así
agreement-legend = kappa: concordancia más allá del azar, 1 si todos coinciden, 0 como por azar. De dos evaluadores, el de Cohen, con el intervalo de Fleiss, Cohen y Everitt 1969; de todos, el de Fleiss, con el del jackknife sobre los casos.
agreement-unreadable = { $path }: no se puede leer ({ $reason }); indique un archivo CSV con una columna 'case' y una por evaluador
agreement-no-table = no es una tabla ({ $reason })
agreement-columns = la primera línea nombra una columna 'case' y una por cada uno de dos o más evaluadores, todas distintas
agreement-unknown = '{ $reference }' no es un evaluador; la tabla contiene { $raters }

## Cubetas de existencias en una boca.

