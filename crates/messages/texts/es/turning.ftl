### La impresión en 3D en la página.

turning-surfaces = Impresión que se muestra
turning-canvas = La impresión en 3D
turning-click = Haga clic en la superficie o en una marca para leer qué hay allí.
turning-colours = Colores del grosor del material
turning-ways = Vistas
turning-go-to = Ir a
turning-a-place = un lugar …
turning-findings = Hallazgos
turning-landmarks = Puntos anatómicos
turning-border = Borde
turning-keys = Arrastre para girar, con Mayús o dos dedos para desplazar; pellizque, o use la rueda tras un clic, para ampliar. Teclas: las flechas giran, Mayús y flechas desplazan, + y − amplían y reducen, Inicio muestra el conjunto.
turning-legend = Gris: grosor desconocido. Un clic da los valores de un punto; el dictamen se basa en los hallazgos.
turning-thinned = Una superficie de muchos triángulos se simplifica en esta imagen; todas las medidas del informe proceden del escaneo completo.
turning-closer = Más cerca
turning-farther = Más lejos
turning-name = { $name }, en 3D
turning-shown = Se muestra: { $name }.
turning-show = Ver en 3D
turning-show-place = Ver en 3D: { $id }
turning-landmark = { $name }: { $status }.
turning-no-surface = Ahí no hay superficie.
turning-off-tissue = Fuera de la superficie tisular
turning-not-measured = { $place }. No se midió el grosor del material.
turning-not-known = { $place }. El grosor del material no se conoce ahí.
turning-thick = { $place }: material de { $thickness } mm de grosor.
turning-tray-at-surface = { $place }: material de { $thickness } mm de grosor (cubeta en la superficie).
