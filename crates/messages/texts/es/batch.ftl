### Muchos casos: lo que muestran batch, collect y watch, y por qué no se pudo comprobar un caso.

batch-checked = { $cases ->
    [one] 1 caso comprobado
   *[other] { $cases } casos comprobados
}
batch-checked-but = { $cases ->
    [one] 1 caso
   *[other] { $cases } casos
}, no comprobados: { $unread }
batch-skipped = ya hechos: { $count }
batch-rate = { $seconds } s, { $rate } casos por segundo
batch-of-shards = { $counted }, de { $shards } partes
batch-whereabouts = Resultados en { $path }: summary.html, summary.csv, findings.csv; cases/ contiene los de cada caso
batch-order-in-time = Orden en el tiempo según: { $sources }
batch-verdicts = aceptar { $accept }, retocar { $rework }, repetir la impresión { $retake }, sin decidir { $undecided }, no leídos { $unread }

## Por qué no se pudo comprobar un caso. Sin nombres de archivos: podrían ser los de un paciente.

unread-folder = la carpeta no se puede examinar ({ $reason })
unread-file = no se puede leer ({ $reason })
unread-case-file = archivo de caso: { $problem }
unread-landmarks-file = archivo de puntos anatómicos: { $problem }
unread-scan = { $scan }: { $problem }
unread-own-fault = falló el propio archproof con este caso; comuníquelo
unread-memory = puede necesitar { $need } MiB de memoria, más que los { $allowed } MiB permitidos; permita más con --memory
unread-scan-of-impression = escaneo de la impresión{ $jaw ->
    [maxillary] {" "}superior
    [mandibular] {" "}inferior
   *[unknown] {""}
}{ $stage ->
    [first-pass] {" "}antes del lavado
    [wash] {" "}de lavado
   *[single] {""}
}
unread-scan-as-sent = escaneo de la impresión{ $jaw ->
    [maxillary] {" "}superior
    [mandibular] {" "}inferior
   *[unknown] {""}
}{ $stage ->
    [first-pass] {" "}antes del lavado
    [wash] {" "}de lavado
   *[single] {""}
} tal como se envió
unread-scan-of-relieved-tray = escaneo de la cubeta{ $jaw ->
    [maxillary] {" "}superior
    [mandibular] {" "}inferior
   *[unknown] {""}
} rebajada
unread-scan-of-tray = escaneo de la cubeta{ $jaw ->
    [maxillary] {" "}superior
    [mandibular] {" "}inferior
   *[unknown] {""}
}
unread-scan-of-record = escaneo del registro intermaxilar
