### La cubeta y el material sobre ella: qué hacer.

## Rebajar. Toda orden de rebajar o acortar una cubeta termina con `safety`.

safety = Rebaje solo fuera de la boca, con protección ocular y contra el polvo; después busque al tacto bordes cortantes y alíselos.
relief = Rebaje la cubeta aquí alrededor de 1 mm y un poco más allá de este punto.
relief-by = Rebaje la cubeta aquí { $depth } en lo más profundo y un poco más allá de este punto.
relief-thin-wall = Así quedan unos { $left } de la pared de la cubeta: refuércela antes por fuera o use otra cubeta.
relief-through-wall = Eso puede perforar la pared de la cubeta: use otra cubeta.
relief-scan-unusable = El escaneo de la cubeta rebajada no indica nada: { $why }. Indique el escaneo correcto o mire la propia cubeta.
relief-done = Según el escaneo de la cubeta rebajada, aquí se quitaron { $depth }, lo que deja un espacio de { $room }; se desean { $wanted }.
relief-enough = Es suficiente.
relief-more = Rebaje aquí la cubeta otros { $depth }.
relief-then = Límpiela y séquela, aplique adhesivo sobre la cubeta descubierta y déjelo secar, { $then }.
relief-unknown = Si la cubeta se rebajó aquí después de su escaneo, este valor es demasiado bajo: escanee la cubeta rebajada y compruebe de nuevo.

## Cubeta visible y material delgado. Tras los dos puntos sigue la orden de rebajar.

show-through-edge = Un canto de la cubeta es visible en { $length } de su longitud.
show-through-unsure = No se distingue con seguridad en el escaneo: mire aquí la impresión. Si la cubeta no es visible, escanee de nuevo este punto con mayor resolución. Si es visible:
show-through-unsure-edge = No se distingue con seguridad en el escaneo: mire aquí la impresión, a lo largo de { $length } de un canto de la cubeta. Si la cubeta no es visible, escanee de nuevo este punto con mayor resolución. Si es visible:
show-through-altered = La superficie está aquí dentro de la pared de la cubeta tal como se escaneó: la cubeta se rebajó o se remodeló allí después de su escaneo. Mire la impresión: puede que aquí la cubeta no sea visible. Para obtener un valor, escanee la cubeta rebajada y compruebe de nuevo.
show-through-colour = Aquí se ve el color de la cubeta. Examínelo. Si es la cubeta:
show-through-colour-unsure = A juzgar por el color, la cubeta puede ser visible aquí: mire la impresión. Si lo es:
colour-beside-cover = Aquí se ve el color de la cubeta, pero el mapa de grosor encuentra material sobre ella. Mire la impresión. Si la cubeta no es visible, otra cosa tiene su color. Si es visible, compruebe que el escaneo o el grosor de la cubeta sean los de esta cubeta; después:
show-through-too-much = La cubeta es visible en demasiada superficie para corregirlo rebajándola y con un lavado. Repita la impresión en una cubeta con espacio en todo su contorno, separada del tejido por topes tisulares o un espaciador.
show-through-perhaps-too-much = La cubeta es visible en tanta superficie que rebajarla y un lavado quizá no lo corrijan. Considere repetir la impresión en una cubeta con más espacio, con topes tisulares o un espaciador.
other-colour = Aquí se ve otro color: mire la impresión. Para que el escaneo se evalúe por el color, indique el color de la cubeta con --tray-colour. Si es la cubeta:
thin-cover = El material es delgado aquí. Mire si está desgarrado, si se despegó de la cubeta o si desplazó la mucosa. Si no, déjelo como está.
thin-cover-unsure = Demasiado cerca del límite para distinguirlo en el escaneo: mire aquí la impresión. Si el material no es delgado, escanee de nuevo este punto con mayor resolución. Si lo es:

## Grosor del material que no se evaluó, o no con seguridad.

cover-not-judged = No se evaluó el grosor del material: { $why }.
cover-by-thickness = El grosor se calculó a partir del grosor de la cubeta que usted indicó, y solo en { $area } donde se ve la cara externa de la cubeta; el resto de la superficie tisular, sobre todo las aletas, no se evaluó. Escanee la cubeta vacía e indíquela con --tray para evaluarlo todo.
cover-by-colour-alone = Si la cubeta es visible se evaluó por los colores del escaneo; el grosor del material no se evaluó.
cover-gap = En { $area } no se evaluó el grosor del material (zona: { $part }): { $why }.
cover-scan-tray = Escanee la cubeta vacía e indíquela con --tray (en un archivo de caso: tray = "..."). Si no se puede escanear, indique su grosor con --tray-thickness o escanee en color.
cover-scan-all-sides = Escanee la impresión por todos los lados, también el dorso de la cubeta.
cover-scan-all-sides-or-other = Escanee la impresión por todos los lados, también el dorso de la cubeta. Si entonces el escaneo de la cubeta no encaja, compruebe que muestre exactamente esta cubeta.
cover-mirrored = Exporte de nuevo ambos escaneos sin reflejarlos y compare derecha e izquierda con la impresión en la mano.
cover-other-tray = Compruebe que el escaneo muestre exactamente esta cubeta, vacía; si no, escanéela.
cover-scan-back = Escanee más del dorso de la cubeta, también el mango.
cover-full-resolution = Exporte el escaneo con la resolución completa.
cover-scan-pieces = Escanee cada pieza de la cubeta por todos los lados, y también la impresión.
cover-scan-this-tray = Escanee esta misma cubeta, vacía, e indíquela con --tray (en un archivo de caso: tray = "..."). Una cubeta rebajada, cortada o moldeada con calor ya no es la cubeta del estante.
cover-which-tray = ¿Cuál de ellas es? Indique su escaneo con --tray (en un archivo de caso: tray = "..."). Si ambos son escaneos de una misma cubeta, retire uno del estante.
cover-look = Examine la impresión a simple vista.
cover-scan-whole-tray = Escanee la cubeta entera.
cover-look-there = Examine ese lugar a simple vista. Si la cubeta se rebajó o se moldeó después de su escaneo, escanéela en cuanto esté vacía.
cover-uncertain = El grosor del material es demasiado incierto para evaluarlo. Escanee más del dorso de la cubeta, con menos ruido, y compruebe de nuevo.
cover-uncertain-by-thickness = El grosor del material es demasiado incierto para evaluarlo. Mida la cubeta con un calibre en varios puntos e indique su grosor con esa incertidumbre (--tray-thickness-uncertainty), o escanee la cubeta vacía.

## Cómo quedó la cubeta.

tissue-stop-not-scanned = No se escaneó ninguna superficie en este tope tisular. Escanee de nuevo este punto.
tissue-stop-under-wash = El lavado cubre este tope tisular. En la impresión anterior al lavado se evalúa si la cubeta asentó por completo.
tissue-stop-covered = La cubeta no asentó por completo aquí: el material cubre el tope tisular. Repita la impresión y asiente la cubeta hasta que este tope haga contacto.
tissue-stop-covered-in-wash = El material cubre este tope tisular. Si el tope se rebajó antes del lavado, indíquelo (stops_relieved = true); si no, la cubeta no asentó por completo aquí y hay que repetir la impresión.
tissue-stop-unsure = Mire este tope tisular: la cubeta debería ser visible. Si el material lo cubre, la cubeta no asentó por completo aquí y hay que repetir la impresión.
tray-seating = En comparación con la posición de grosor uniforme del material, la cubeta quedó { $how }. Si se repite la impresión, pruebe antes la cubeta sin material para que quede sobre el reborde y asiéntela de manera uniforme con topes tisulares.
seating-right = demasiado a la derecha del paciente
seating-left = demasiado a la izquierda del paciente
seating-front = demasiado adelante
seating-back = demasiado atrás
seating-tilted-front = con inclinación (más cerca del tejido por delante)
seating-tilted-back = con inclinación (más cerca del tejido por detrás)
seating-tilted-right = con inclinación (más cerca del tejido a la derecha del paciente)
seating-tilted-left = con inclinación (más cerca del tejido a la izquierda del paciente)
seating-turned-right = con un giro (con la parte anterior hacia la derecha del paciente)
seating-turned-left = con un giro (con la parte anterior hacia la izquierda del paciente)
tray-wide = La cubeta es más ancha de lo que conviene a esta arcada: sus paredes externas quedan separadas y sus partes internas quedan demasiado cerca. Si se repite la impresión, elija la talla siguiente o adapte la cubeta.
tray-narrow = La cubeta es más estrecha de lo que conviene a esta arcada: sus paredes externas quedan demasiado cerca de las aletas. Si se repite la impresión, elija la talla siguiente o adapte la cubeta.
tray-bent = La cubeta se deformó entre su escaneo y la impresión: su extremo { $side ->
    [right] derecho
   *[left] izquierdo
} quedó { $moved } que en su escaneo. El grosor del material se mide desde la cubeta tal como quedó. Si la cubeta recuperó su forma al retirarla, la impresión está distorsionada: repítala en una cubeta más rígida.
tray-bent-slightly = La cubeta se deformó entre su escaneo y la impresión: su extremo { $side ->
    [right] derecho
   *[left] izquierdo
} quedó { $moved } que en su escaneo. El grosor del material se mide desde la cubeta tal como quedó. Compruebe la rigidez de la cubeta antes de la próxima impresión.
moved-nearer = más cerca del tejido
moved-farther = más lejos del tejido
moved-outward = más hacia fuera
moved-inward = más hacia dentro
tray-joint = Hay { $what ->
    [gap] un hueco
   *[step] un escalón
} entre las piezas { $one } y { $other } de la cubeta: no estaban unidas por completo o se separaron. El grosor del material se mide desde las piezas tal como quedaron. Si se movieron durante el fraguado del material o después, la impresión está distorsionada: una las piezas y repítala.
outer-excess = Hay material de hasta { $thickness } de grosor sobre las caras externas de la cubeta. Recórtelo con una hoja afilada, cortando en dirección contraria al borde y sin despegar material de la cubeta, para que el material de registro se adhiera a la cubeta y las partes se separen limpiamente.
