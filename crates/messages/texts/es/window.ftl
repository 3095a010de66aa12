### La ventana: la impresión, sus hallazgos, las teclas y lo que se dice.

## La ventana.

window-title = archproof: caso { $case }: { $verdict }
window-caution = Una ayuda para la inspección, no un producto sanitario; decide el profesional clínico autorizado. Prevalecen las normas locales, la higiene y las instrucciones de los fabricantes. Rebaje cubetas solo fuera de la boca, con protección ocular y contra el polvo.
window-failed-keys = R lo intenta de nuevo, Esc vuelve atrás, Ctrl Q cierra la ventana.
window-picture-name = Impresión en 3D
window-no-finding = ningún hallazgo
window-chosen-finding = hallazgo elegido { $id }: { $cause } { $check }
window-arrows-turn = las flechas la giran
no-window-screen = sin ventana: no hay pantalla (no está definido ni DISPLAY ni WAYLAND_DISPLAY); iníciela en un escritorio o vea en su lugar report.html en la carpeta de resultados
no-window-graphics = sin ventana: no se puede usar la pantalla o sus gráficos ({ $reason }); en Debian instale libvulkan1, mesa-vulkan-drivers, libx11-6, libx11-xcb1, libxcursor1, libxi6 y libxkbcommon-x11-0, o vea en su lugar report.html en la carpeta de resultados

## El resultado y los hallazgos.

window-verdict = { $verdict }: caso { $case }
window-done = (hecho)
window-no-figure = sin valor medido
window-has-drawing = Dibujo de la sección con medidas: G lo muestra en grande.

## Botones y lo que hace cada uno, tras su tecla.

button-whole = Entera
button-whole-how = Inicio: muestra la impresión entera.
button-map = Mapa: { $map }
button-map-none = ninguno
button-map-how = M: colorea la superficie según la medida siguiente, o según ninguna.
button-border-figure = Medida del borde
button-border-figure-how = F: colorea la línea del borde según la medida siguiente, o según ninguna.
button-colours = Colores
button-colours-how = P: usa los otros colores.
layer-border = Borde
layer-border-how = 1: muestra u oculta la línea del borde.
layer-crest = Cresta
layer-crest-how = 2: muestra u oculta la línea de la cresta.
layer-outlines = Contornos
layer-outlines-how = 3: muestra u oculta las líneas en los límites y en torno a los defectos.
layer-landmarks = Puntos anatómicos
layer-landmarks-how = 4: muestra u oculta los puntos anatómicos.
layer-tray = Cubeta
layer-tray-how = 5: muestra u oculta la cubeta.
layer-strip = Tira del borde
layer-strip-how = 6: muestra u oculta el borde, desarrollado al pie de la ventana.
button-distance = Distancia
button-distance-how = D: mide entre dos clics.
button-mark = Marcar
button-mark-how = L: marca puntos anatómicos con clics.
button-section = Sección
button-section-how = X: corta la impresión por el centro de la imagen.
button-drawing = Dibujo
button-drawing-how = G: muestra el dibujo de la sección del hallazgo en grande o en pequeño.
button-next-impression = Impresión siguiente
button-next-impression-how = I: trae al frente la impresión siguiente.
button-beside = Lado a lado
button-beside-how = B: muestra dos impresiones lado a lado.
button-screenshot = Captura
button-screenshot-how = S: guarda una imagen de la ventana junto a los resultados.
button-check-again = Comprobar de nuevo
button-check-again-how = R o F5: comprueba el caso de nuevo.
button-help = Ayuda (H)
button-help-how = H o F1: muestra todas las teclas.

## Ayuda: teclas, y lo que hacen.

keys-choose = Arriba, Abajo
help-choose = elegir un hallazgo
keys-fly = Intro
help-fly = volar hasta él
keys-done = Espacio
help-done = marcarlo como hecho, o no hecho
keys-whole = Inicio
help-whole = la impresión entera
keys-turn = arrastrar, Mayús + flechas
help-turn = girar
keys-focus = Tab, Mayús + Tab
help-focus = la imagen, donde las flechas giran; control siguiente, anterior
keys-move = arrastre derecho, Ctrl + flechas
help-move = desplazar
keys-zoom = rueda, + y -
help-zoom = más cerca, más lejos
keys-roll = Q, E
help-roll = girar en torno a la línea de visión
keys-impressions = I; B
help-impressions = impresión siguiente; dos lado a lado
keys-maps = M, Mayús + M
help-maps = mapa siguiente, anterior; superficie lisa
keys-border-figure = F
help-border-figure = colorear la línea del borde según una medida
keys-colours = P
help-colours = otros colores
keys-scale = coma, punto
help-scale = escala más corta, más larga; con Ctrl: más baja, más alta
keys-drawing = G
help-drawing = dibujo de la sección del hallazgo, grande o pequeño
keys-layers = 1, 2, 3, 4, 5, 6
help-layers = borde, cresta, contornos, puntos anatómicos, cubeta, tira del borde
keys-distance = D
help-distance = distancia entre dos clics
keys-mark = L
help-mark = marcar puntos anatómicos con clics
keys-landmark = N o Av Pág, Re Pág
help-landmark = punto anatómico siguiente, anterior
keys-undo = Ctrl Z o U; Ctrl Y
help-undo = deshacer una marca; rehacerla
keys-middle = K
help-middle = hacer clic en el centro de la imagen
keys-section = X; Izquierda, Derecha; [ y ]
help-section = plano de corte; mover; girar
keys-save = S; R o F5
help-save = guardar una captura; comprobar el caso de nuevo
keys-papers = F2, F3, F4
help-papers = abrir la hoja, la nota de devolución, el informe
keys-decide = F6, F7, F8
help-decide = decidir: devuelto, en trabajo, a la espera de
keys-walk = Re Pág, Av Pág
help-walk = caso anterior, siguiente de la lista
keys-open = Ctrl O; Ctrl Mayús O
help-open = elegir escaneos; elegir una carpeta de casos
keys-text = Ctrl + y -; F9
help-text = texto más grande, más pequeño; claro u oscuro
keys-leave = H o F1; Esc; Ctrl Q
help-leave = esta ayuda; salir, volver a la lista; cerrar

## Los mapas y sus escalas.

map-cover = grosor del material
map-wash = lavado
map-wash-figure = grosor del lavado
map-scan-quality = calidad del escaneo
map-scan-quality-figure = burbuja más pequeña visible
map-missing = aquí no hay mapa de { $map }: { $why }
map-holds-none = este resultado no contiene ninguno
map-limit-show-through = visible
map-limit-thin = fino
map-limit-least = mínimo
map-limit-most = máximo
map-key = gris: no se conoce; líneas blancas: en un límite
map-defects = líneas blancas con borde: defectos de la superficie
map-line = línea: { $figure }, mm
map-plain = superficie lisa

## Sobre la imagen.

no-surface-here = la superficie no está en esta carpeta; para verla, abra el archivo del caso
side-front = frente
section-side = sección, lado tisular arriba
click-distance = distancia: haga clic en dos lugares (K: el centro)
click-landmark = haga clic: { $landmark } (N: siguiente, U: deshacer, L: terminar)
landmark-label-marked = { $landmark } (marcado)
landmark-label-status = { $landmark }: { $status }
probe-thickness = grosor { $figure }
probe-thickness-not-known = grosor desconocido
probe-figure = { $name } { $figure }
probe-not-known = { $name }: no se conoce
probe-no-zone = fuera de las zonas
probe-at = x { $x }; y { $y }; z { $z }
probe-border = borde: { $zone }, a { $along } mm de la { $midline }

## La tira del borde.

strip-none = no hay borde que desarrollar: { $why }
strip-holds-none = este resultado no contiene ninguno
strip-limit = límite
strip-no-height = sin altura
strip-fails = no cumple
strip-undecided = sin decidir
strip-note = nota
strip-left = izquierda
strip-right = derecha
strip-midline = { $part ->
    [labial] línea media labial
   *[lingual] línea media lingual
}

## Lo que se dice al pie.

said-one-impression = solo hay una impresión
said-no-tray = la cubeta se muestra al abrir el archivo del caso, no su resultado
said-of-the-whole = este hallazgo se refiere a toda la impresión o al caso
said-in-front = al frente: { $impression }
said-nothing-to-take-back = nada que deshacer
said-nothing-to-make-again = nada que rehacer
said-landmarks-saved = puntos anatómicos guardados en { $path }
said-no-drawing = No hay dibujo de la sección: solo lo tienen los hallazgos del borde.
said-no-room = En la ventana no cabe un texto más grande.
said-saved = guardado: { $path }
said-check-the-case = para comprobar de nuevo, abra el archivo del caso o el escaneo en lugar de su resultado
said-limits-of-your-own = este resultado se evaluó con límites propios; para comprobarlo de nuevo con ellos, inicie la ventana con --protocol FILE
landmarks-unreadable = { $path }: no se puede leer ({ $reason })
landmarks-no-list = { $path }: no es una lista de puntos anatómicos ({ $reason }); corríjala o quítela
drawing-unreadable = { $path }: no se puede leer ({ $reason }); compruebe el caso de nuevo
surface-of-another = { $path }: no es una superficie escrita por archproof; compruebe el caso de nuevo
drawing-of-another = { $path }: no es un dibujo escrito por archproof; compruebe el caso de nuevo

## Un caso que se abre.

opening-case = Abriendo el caso
opening = abriendo
opening-result = leyendo el resultado
opening-writing = escribiendo los resultados
opening-cancelled = la comprobación se canceló; no se escribió nada
button-cancel = Cancelar (Esc)
