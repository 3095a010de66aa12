### Gráficos de control: de una carpeta de casos y de un patrón de comprobación; la base de referencia fijada.

## Lo que se representa.

charted-noise = ruido del escaneo
charted-tray-fit = impresión sobre su cubeta, media cuadrática
charted-thickness = grosor mediano
charted-share = proporción que no cumple
chart-upper = lím. superior { $value }
chart-centre = centro { $value }
chart-lower = lím. inferior { $value }
chart-share = proporción { $value }
chart-individuals = valores individuales
chart-ranges = rango móvil
chart-averages = media móvil, peso { $weight }
chart-head-centre = línea central
chart-head-deviation = desviación típica
chart-head-lower = límite inferior de control
chart-head-upper = límite superior de control

## Las reglas completas, y cómo se incumplieron.

rule-beyond-limits = un valor más allá de tres desviaciones típicas (Western Electric 1956)
rule-two-of-three = dos de tres valores más allá de dos desviaciones típicas en un mismo lado (Western Electric 1956)
rule-four-of-five = cuatro de cinco valores más allá de una desviación típica en un mismo lado (Western Electric 1956)
rule-eight-in-a-row = ocho valores seguidos en un mismo lado de la línea central (Western Electric 1956)
rule-ewma = media móvil de peso { $weight } más allá de { $reach } de sus desviaciones típicas (Lucas y Saccucci 1990)
broken-beyond-limits = fuera de los límites, por { $side ->
    [above] encima
   *[below] debajo
}
broken-two-of-three = dos de tres muy alejados, por { $side ->
    [above] encima
   *[below] debajo
}
broken-four-of-five = cuatro de cinco alejados, por { $side ->
    [above] encima
   *[below] debajo
}
broken-eight-in-a-row = ocho seguidos en un mismo lado, por { $side ->
    [above] encima
   *[below] debajo
}
broken-ewma = media móvil fuera de sus límites, por { $side ->
    [above] encima
   *[below] debajo
}

## Qué hay que examinar.

look-noise-above = El escáner: limpie su ventana, calíbrelo y después escanee el patrón de referencia («archproof artefact»).
look-noise-below = Los ajustes del escáner: un ruido menor puede deberse a un suavizado, que redondea las aristas. Escanee el patrón de referencia.
look-tray-fit-above = Las cubetas: ¿es cada una la que se escaneó, sin cambios desde entonces? Después, la escala del escáner, con el patrón de referencia.
look-tray-fit-below = Qué cambió en las cubetas o el escáner: un ajuste mejor puede deberse a escaneos suavizados.
look-thickness-above = La elección de las cubetas y hasta dónde se asientan: cubetas mayores o mantenidas demasiado altas.
look-thickness-below = La elección de las cubetas y cómo se asientan: cubetas menores, más presión u otro material.
look-share-above = Qué comprobaciones no se cumplen con más frecuencia (véase arriba); después, las personas, el material y el escáner de esos días.
look-share-below = Si se sigue comprobando lo mismo: otros casos, otro escáner o comprobaciones que ya no se hacen.

## En la página sobre una carpeta.

drift-over-time = Evolución en el tiempo
drift-lead = Las últimas impresiones de cada grupo en el orden en que se escanearon, según: { $sources }; si se copiaron archivos sin fecha indicada, su fecha puede ser la de la copia. Las impresiones anteriores al lavado y los lavados nunca comparten un gráfico. Lo que queda fuera es un motivo para examinar el escáner, el material o la mezcla de casos, y no es por sí mismo un defecto de una impresión.
drift-left-out = { $count ->
    [one] 1 impresión pertenece a un grupo posterior a los 100 primeros y no está en ningún gráfico.
   *[other] { $count } impresiones pertenecen a grupos posteriores a los 100 primeros y no están en ningún gráfico.
}
drift-too-few = Demasiado pocas impresiones para fijar límites, o todas iguales: { $figures }.
drift-by-baseline = Límites: base de referencia fijada.
drift-baseline = Procede de resultados con SHA-256 { $sha }, hechos con archproof { $version } y los límites «{ $limits }». Un grupo que no contiene se evalúa por sus propios puntos, como indica su gráfico.
drift-by-own-points = Límites: de los propios puntos.
drift-freeze = Siguen la misma deriva que deben encontrar. Fíjelos mientras todo esté en orden: «archproof baseline DIR --write base.toml» y después «batch … --baseline base.toml».
drift-rules = Reglas: { $rules }. Desviación típica: rango móvil medio dividido entre 1,128; límite de los rangos: su línea central por 3,267. La proporción que no cumple se cuenta en los días necesarios para esperar cinco que no cumplen; sus límites son tres desviaciones típicas para ese número (gráfico p).
drift-no-signal = Ningún gráfico indica que algo haya cambiado.
drift-signals = { $count ->
    [one] 1 señal.
   *[other] { $count } señales.
}
drift-silent = Ninguna señal.
drift-by-chance = Solo por azar cabe esperar unas { $signals } con tantos puntos, y más donde los límites proceden de pocos.
drift-said = Lo que indican los gráficos
drift-some-listed = Se enumeran las últimas { $listed }; «batch --json» las muestra todas.
drift-head-when = cuándo (UTC)
drift-head-rule = regla
drift-head-since = desde
drift-head-limits = límites
drift-head-look-at = qué examinar
drift-this-one = este
drift-days = (días)
drift-baseline-limits = base de referencia
drift-own-limits = propios puntos
drift-numbers = Valores de los gráficos
drift-head-chart = gráfico
drift-head-outside = fuera
drift-head-limits-from = límites de (impresiones)
drift-span = { $count ->
    [one] 1 impresión
   *[other] { $count } impresiones
}, { $first } a { $last }.
drift-limits-from-baseline = Límites de la base de referencia.
drift-limits-from-points = Límites de estos puntos.
drift-share-of = Proporción que no cumple, { $group }
drift-days-counted = { $count } grupos de días.
drift-outside = { $count } fuera.

## De dónde procede la fecha de un escaneo.

time-by-case-file = el archivo de caso
time-by-scan-file = la última modificación del archivo del escaneo
time-by-check = el momento de la comprobación
time-not-known = no conocida
time-for = { $source } en { $counted }
timed-cases = { $count ->
    [one] 1 caso
   *[other] { $count } casos
}
timed-measurements = { $count ->
    [one] 1 medición
   *[other] { $count } mediciones
}
timed-no-cases = ningún caso
timed-no-measurements = ninguna medición

## La base de referencia fijada.

baseline-other-limits = La base de referencia se hizo con otros límites ({ $limits }): los valores son comparables; la proporción que no cumple quizá no.
baseline-other-version = La base de referencia se hizo con archproof { $version }: si la medición ha cambiado desde entonces, un desplazamiento puede deberse al programa. Para mayor seguridad, hágala de nuevo con los mismos escaneos.
baseline-toml = { $problem }; escriba el archivo de nuevo con «archproof baseline DIR --write FILE»
baseline-number = [[{ $table }]] número { $number }: { $key } debe ser { $must }; escriba el archivo de nuevo con «archproof baseline DIR --write FILE»
baseline-twice = [[{ $table }]] número { $number } repite un dato anterior; conserve solo uno
must-be-number = un número
must-be-positive = un número mayor que 0
must-be-at-least = { $least } o más
must-be-at-most-of = como máximo el valor de of
baseline-written = Límites de { $figures } magnitudes en { $groups ->
    [one] 1 grupo
   *[other] { $groups } grupos
} en { $path }
baseline-use = Úselos así: archproof batch FOLDER --out DIR --baseline { $path }

## Un patrón de comprobación a lo largo del tiempo.

control-title = { $standard } a lo largo del tiempo
control-kicker = Patrón de comprobación a lo largo del tiempo
control-heading = { $standard }, { $count ->
    [one] 1 medición
   *[other] { $count } mediciones
}
control-impression = una impresión
control-artefact = patrón de referencia { $name }
control-in = BAJO CONTROL: { $count } mediciones de { $standard }; la última ({ $latest }) está dentro de los límites de las { $from } primeras.
control-earlier = { $count ->
    [one] Hay 1 señal anterior.
   *[other] Hay { $count } señales anteriores.
}
control-too-few = NO EVALUADO: { $count ->
    [one] 1 medición de { $standard } no basta.
   *[other] { $count } mediciones de { $standard } son demasiado pocas, o todas iguales.
} Mida el patrón de nuevo la próxima vez.
control-out = FUERA DE CONTROL: { $count } mediciones de { $standard }; en la última ({ $latest }) han cambiado { $spoken } de { $figures } magnitudes. Mida el patrón de nuevo. Si también queda fuera, limpie y calibre el escáner, y no compruebe ningún caso con él hasta que el patrón esté bajo control.
control-scanned = Escaneado de { $first } a { $last } (UTC), según: { $sources }. Los límites proceden de las { $from } primeras mediciones.
control-signal = medición { $number } ({ $at }): { $value }, { $rule }
control-since = { $said }, desde la medición { $number } ({ $at })
control-up-to = { $said }, hasta la medición { $number }
control-beyond-limits = más allá de tres desviaciones típicas, por { $side ->
    [above] encima
   *[below] debajo
} de la línea central
control-two-of-three = dos de tres más allá de dos desviaciones típicas, por { $side ->
    [above] encima
   *[below] debajo
} de la línea central
control-four-of-five = cuatro de cinco más allá de una desviación típica, por { $side ->
    [above] encima
   *[below] debajo
} de la línea central
control-eight-in-a-row = ocho seguidas por { $side ->
    [above] encima
   *[below] debajo
} de la línea central
control-ewma = media móvil fuera de sus límites, por { $side ->
    [above] encima
   *[below] debajo
} de la línea central
control-by-chance = Con tantos puntos cabe esperar unas { $signals } señales solo por azar.
control-not-judged = No evaluado: { $figures }
control-figures = Magnitudes
control-written-by = Escrito por archproof { $version }.
control-some-have-it = la tienen { $have } de { $all } mediciones
control-least = { $count } mediciones; se necesitan { $least }
control-alike = las { $from } primeras lecturas son iguales y no dan límites
control-head-figure = magnitud
control-head-unit = unidad
control-head-deviation = s
control-head-lower = LCI
control-head-upper = LCS
control-head-latest = última
control-head-signals = señales

## Por qué no se pudo evaluar un patrón de comprobación.

control-unreadable = { $path }: no se puede leer ({ $reason }); indique una carpeta con resultados de un solo patrón
control-none = { $path }: no contiene resultados de «archproof check» ni de «archproof artefact --json»; guarde allí uno por cada medición
control-mixed = { $path }: es de { $found }, otros son de { $wanted }; guarde en una carpeta los resultados de un solo patrón
control-no-time = { $path }: no dice cuándo se midió; mida de nuevo con esta versión
