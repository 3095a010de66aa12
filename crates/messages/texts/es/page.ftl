### El informe: su marco, el dictamen, las precauciones, y lo que no se evaluó.

## El marco.

page-title = Caso { $case }: { $verdict } - informe de la comprobación de la impresión
page-kicker = Informe de la comprobación de la impresión
page-first-depth = Esta copia en papel es la primera parte del informe. El archivo contiene más: notas con sus dibujos, todas las imágenes, métodos, límites y procedencia. Ábralas allí o marque «Imprimir todo».
page-written-by = Elaborado con { $program }. Protocolo: { $protocol }. Una ayuda para la inspección, no un producto sanitario; decide el profesional clínico autorizado.
page-files = Archivos junto a este informe
page-contents = Contenido
page-folded = Plegado; un clic abre cada capítulo:
page-print-everything = Imprimir todo
page-print-hint = Sin esta marca se imprime lo que está abierto en la página: las partes plegadas, solo si usted las abrió.

## Qué hacer primero.

page-first = Qué hacer primero
page-no-steps = En las comprobaciones realizadas nada incumple y nada está en duda.
page-more-steps = Hay más que hacer: véase la tabla de otros lugares.
page-further-steps = Otros pasos, en su orden
page-on-tray = en la cubeta, { $place }
page-wash-followed = (siguió un lavado)
page-least-thickness = menor grosor { $thickness }

## Lo que no se evaluó.

page-not-judged = No evaluado
page-not-judged-lead = El dictamen no abarca los puntos siguientes. Inspeccione la impresión a simple vista.
page-not-judged-and-why = Lo que no se evaluó y por qué
page-of = De
page-why = Motivo
page-the-case = el caso

## Precauciones.

page-cautions = Precauciones
page-caution-aid = Esto es una ayuda para la inspección. No es un producto sanitario ni hace diagnósticos; decide el profesional clínico autorizado, con la impresión en la mano.
page-caution-hygiene = Prevalecen las normas locales y las reglas de control de infecciones. Limpie y desinfecte la impresión antes de manipularla, escanearla o enviarla, e indique en el envío con qué y durante cuánto tiempo se desinfectó.
page-caution-relief = Rebaje la cubeta solo fuera de la boca, con protección ocular y contra el polvo; busque al tacto bordes cortantes y alíselos antes de volver a llevarla a la boca.
page-caution-makers = Las instrucciones de los fabricantes del elastómero y de la cubeta prevalecen sobre esta página.
page-caution-data = El escaneo de una boca y lo que se obtiene de él son datos de salud: guarde esta página como exijan las normas del lugar donde trabaja.
