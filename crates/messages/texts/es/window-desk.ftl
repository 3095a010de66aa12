### La mesa: los escaneos de un caso, y lo que se reconoció en cada uno.

## Lo que se lee en ella.

desk-caution = Una ayuda para la inspección, no un producto sanitario; decide el profesional clínico autorizado. Nada sale de este equipo. Dé a cada caso un seudónimo, nunca un nombre.
desk-list = Lista de casos (Esc)
desk-drop = Suelte aquí los escaneos o elíjalos
desk-what = STL, PLY u OBJ: las impresiones de un caso, los escaneos de sus cubetas vacías, el registro intermaxilar.
desk-what-else = También puede soltarse un archivo de caso o una carpeta de resultados, y una carpeta de casos, que se convierte en lista.
desk-choose-scans = Elegir escaneos …
desk-choose-folder = Elegir una carpeta de casos …
desk-scan-files = Escaneos
desk-scans = Escaneos de un caso
desk-recognised = Lo que se reconoció en cada escaneo por su superficie. Corrija lo que no sea correcto.
desk-step = { $step } …
desk-pseudonym = Seudónimo del caso
desk-pseudonym-hint = vacío: uno neutro
desk-never-a-name = nunca un nombre
desk-check = Comprobar
desk-clear = Despejar la mesa
desk-head-scan = Escaneo
desk-head-is = Qué es
desk-head-surety = Certeza
desk-head-why = Por qué
desk-more-questions = y { $more } más

## Lo que falta.

desk-no-scan = Entre ellos no hay ningún escaneo (STL, PLY, OBJ).
desk-one-folder = Los escaneos de un caso deben estar en una sola carpeta. Reúnalos y suelte la carpeta.
desk-looking = Se están examinando los escaneos.
desk-open-rows = Diga qué son las filas marcadas como «abierto»; entonces se podrá comprobar el caso.
desk-no-impression = Ningún escaneo muestra una impresión de este caso.

## Qué es un escaneo, y con qué certeza.

role-one-step = { $jaw ->
    [maxillary] impresión superior, en un paso
   *[mandibular] impresión inferior, en un paso
}
role-tray = { $jaw ->
    [maxillary] cubeta superior
   *[mandibular] cubeta inferior
}
role-relieved-tray = { $jaw ->
    [maxillary] cubeta superior tras el rebaje
   *[mandibular] cubeta inferior tras el rebaje
}
role-record = registro intermaxilar
role-left-out = omitido
surety-clear = claro
surety-likely = probable
surety-stated = indicado
surety-open = abierto
