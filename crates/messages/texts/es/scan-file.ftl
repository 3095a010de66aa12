### Qué dicen los lectores de archivos de escaneo: qué llamó la atención y cómo se leyó, y por qué
### se rechazó un archivo.

## Leído de todos modos.

read-wrong-extension = es { $format } aunque su nombre termina en .{ $named }; se leyó según su contenido
read-byte-order-mark = empieza con una marca de orden de bytes UTF-8; se pasó por alto
read-trailing-bytes = { $bytes ->
    [one] se omitió 1 byte
   *[other] se omitieron { $bytes } bytes
} después del final del escaneo
read-surplus-values = hay líneas con más números de los que declara la cabecera; se omitieron los sobrantes
read-second-scan = en el mismo archivo sigue un segundo escaneo de { $triangles ->
    [one] 1 triángulo
   *[other] { $triangles } triángulos
}, que se omitió; guarde cada escaneo en su propio archivo
read-wrong-count = la cabecera declara { $declared } triángulos, pero hay exactamente { $held }; se leyeron los { $held }
read-no-endsolid = falta la línea final 'endsolid'; el archivo puede estar cortado después del último triángulo
read-several-solids = { $solids } sólidos en un archivo se leyeron como un solo escaneo
read-faces-without-area = { $count ->
    [one] se omitió 1 cara
   *[other] se omitieron { $count } caras
} con menos de 3 vértices
read-repeated-corners = { $count ->
    [one] se omitió 1 triángulo
   *[other] se omitieron { $count } triángulos
} con dos vértices iguales
read-duplicate-triangles = { $count ->
    [one] se omitió 1 triángulo que coincide exactamente con otro
   *[other] se omitieron { $count } triángulos que coinciden exactamente con otro
} (orientados al revés: { $turned })
read-unused-vertices = se omitieron { $count } de { $of } vértices, que no pertenecen a ningún triángulo
read-joined-corners = los triángulos no compartían sus vértices: { $joined } vértices se unieron a otro a menos de { $tolerance } (unidades del archivo)
read-coarse-coordinates = las coordenadas cercanas a { $largest } solo se pueden guardar en pasos de { $step } (unidades del archivo), demasiado gruesos para un escaneo de { $size } de largo; expórtelo más cerca del origen
read-normals-against-triangles = las normales guardadas apuntan al lado contrario que los triángulos: el escaneo se volvió del revés o se reflejó
read-whole-numbers = las coordenadas están guardadas como números enteros, en pasos de 1; compruebe la unidad
read-face-colours = el color está indicado por cara, no por vértice, y no se usó
read-texture-picture = el color está en una imagen junto al archivo y no se usó
read-turned = { $count ->
    [one] 1 triángulo estaba orientado al contrario que sus vecinos y se giró
   *[other] { $count } triángulos estaban orientados al contrario que sus vecinos y se giraron
}
read-inside-out = el escaneo estaba del revés y se volvió; si un programa lo reflejó, derecha e izquierda están intercambiadas
read-turned-and-inside-out = { $count ->
    [one] 1 triángulo estaba orientado al contrario que sus vecinos y se giró
   *[other] { $count } triángulos estaban orientados al contrario que sus vecinos y se giraron
}; el escaneo estaba del revés y se volvió; si un programa lo reflejó, derecha e izquierda están intercambiadas
read-other-landmarks = el archivo de puntos anatómicos es de otro escaneo, según su suma de comprobación, y no se usó
read-of-one = { $kind ->
    [part] parte
   *[piece] pieza
} { $number }: { $said }

## Rechazado: el archivo.

refused-missing = este archivo no existe; compruebe el nombre
refused-dangling-link = es un enlace a un archivo que no existe; indique el escaneo mismo
refused-link-loop = es un enlace que vuelve sobre sí mismo; indique el escaneo mismo
refused-folder = es una carpeta; indique un archivo de escaneo
refused-special = no es un archivo corriente (dispositivo, tubería o socket); indique un archivo de escaneo
refused-permission = no se puede leer: sin permiso de acceso; pida permiso de lectura
refused-too-large = tiene { $bytes } bytes, más de los { $most } que se leen; exporte el escaneo con menos triángulos
refused-changed = cambió mientras se leía ({ $before } bytes, luego { $after }); espere hasta que termine de copiarse
refused-system = no se pudo leer ({ $reason }); compruebe el disco o la conexión

## Rechazado: el contenido.

refused-empty = está vacío; exporte el escaneo de nuevo
refused-too-short = tiene solo { $bytes } bytes, muy pocos para un escaneo; exporte el escaneo de nuevo
refused-unrecognised = no es STL, PLY ni OBJ; exporte el escaneo como STL o PLY binario
refused-cut-short = declara { $declared } { $items }, pero contiene { $held }: el archivo está cortado; expórtelo o cópielo de nuevo
refused-not-counted = no declara triángulos aunque siguen { $bytes } bytes, que no son un número entero de triángulos; exporte el escaneo de nuevo
refused-vertex-count = declara { $declared } vértices, pero contiene menos: la cabecera no concuerda con los datos; exporte el escaneo de nuevo
refused-no-room = declara { $declared } { $items }, pero por su tamaño caben como máximo { $room }: el archivo está cortado o su cabecera está dañada; expórtelo o cópielo de nuevo
refused-ends-inside = { $place }: el archivo termina dentro del triángulo { $number }; expórtelo o cópielo de nuevo
refused-no-triangles = no contiene triángulos; exporte el escaneo como malla
refused-only-degenerate = contiene { $dropped } triángulos, ninguno con tres vértices distintos; exporte el escaneo de nuevo
refused-point-cloud = es una nube de puntos ({ $points } puntos, ningún triángulo); exporte una malla
refused-not-finite = { $place }: una coordenada no es un número finito; repare el escaneo y expórtelo de nuevo
refused-out-of-proportion = { $place }: la coordenada { $value } está muy lejos de cualquier escaneo verosímil; repare el escaneo y expórtelo de nuevo
refused-decimal-comma = { $place }: un número con coma decimal; expórtelo de nuevo con punto decimal (ajuste el programa de exportación a números en inglés)
refused-not-a-number = { $place }: donde debe ir un número hay otra cosa; exporte el escaneo de nuevo
refused-bad-number = { $place }: { $problem }; exporte el escaneo de nuevo
refused-expected = { $place }: aquí debe ir { $expected }; exporte el escaneo de nuevo
refused-corners = { $place }: el triángulo { $triangle } tiene { $corners } vértices, no 3; exporte el escaneo de nuevo
refused-header = { $place }: error en la cabecera PLY: { $problem }; exporte el escaneo de nuevo
refused-index = { $place }: la cara { $face } remite al vértice { $index }, pero el archivo tiene { $vertices } vértices; exporte el escaneo de nuevo
refused-list-too-long = { $place }: una lista de { $length } valores, más de los que caben en el resto del archivo; expórtelo o cópielo de nuevo
refused-too-many-triangles = contiene más de los { $most } triángulos que se leen; exporte el escaneo con menos
refused-too-many-vertices = contiene más de los { $most } vértices que se leen; exporte el escaneo con menos
refused-mesh = { $problem }; exporte el escaneo de nuevo

## Archivos que no son escaneos.

foreign-zip = es un archivo ZIP; descomprímalo primero
foreign-gzip = es un archivo GZIP; descomprímalo primero
foreign-archive = es un archivo comprimido; descomprímalo primero
foreign-html = es una página web, no un escaneo (¿falló la descarga?); obtenga el archivo de nuevo
foreign-json = es un texto JSON, no un escaneo (¿falló la descarga?); obtenga el archivo de nuevo
foreign-xml = es un archivo XML, no un escaneo; indique el escaneo mismo, en STL o PLY
foreign-pdf = es un documento PDF, no un escaneo; indique el escaneo mismo, en STL o PLY
foreign-picture = es una imagen, no un escaneo; indique el escaneo mismo, en STL o PLY
foreign-utf16 = es texto en UTF-16; guárdelo como ASCII o UTF-8
foreign-gltf = es una escena glTF binaria; exporte el escaneo como STL o PLY binario
foreign-dicom = es un archivo DICOM; exporte el escaneo como STL o PLY binario
foreign-off = es una malla OFF; exporte el escaneo como STL o PLY binario

## Lugares de un archivo, y qué hay en ellos.

at-line = línea { $line }
at-triangle = triángulo { $number } (byte { $byte })
at-byte = byte { $byte }
at-vertex = vértice { $index }
format-stl-binary = STL binario
format-stl-ascii = STL ASCII
format-ply-binary-le = PLY binario (little endian)
format-ply-binary-be = PLY binario (big endian)
format-ply-ascii = PLY ASCII
format-obj = OBJ
items-triangles = triángulos
items-vertices = vértices
items-faces = caras
items-strips = tiras de triángulos
items-other = registros de otro elemento
number-not-whole = un número que debería ser entero no lo es
number-negative-length = la longitud de una lista es negativa
expected-coordinates = un grupo de tres coordenadas después de 'v'
header-no-line = falta la línea '{ $word }'
header-no-vertices = hay caras, pero no vértices
header-no-xyz = a los vértices les falta x, y o z
header-one-byte = las coordenadas de un byte son demasiado gruesas para un escaneo
header-no-indices = a las caras les falta la lista de vértices
header-format = el formato no es ninguno de ascii, binary_little_endian y binary_big_endian
header-property-first = hay una propiedad antes del primer elemento
header-unknown-word = una línea no empieza con ninguna palabra conocida
header-element-name = un elemento no tiene nombre
header-element-count = el número de un elemento no es un entero desde 0
header-property-type = una propiedad tiene un tipo desconocido
header-no-type = una propiedad no tiene tipo
header-property-name = una propiedad no tiene nombre
header-list-length = la longitud de una lista no es de tipo entero
mesh-vertex = el triángulo { $triangle } remite al vértice { $vertex }, pero hay { $vertices }
mesh-not-finite = el vértice { $vertex } tiene una coordenada que no es un número finito
mesh-colours = { $colours } colores para { $vertices } vértices
mesh-too-many-vertices = { $vertices } vértices son más de los que una malla puede numerar (4.294.967.295)
