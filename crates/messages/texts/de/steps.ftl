### Was gerade geschieht, für die Anzeige des Fortschritts.

step-reading = Scans werden gelesen
step-of-impression = Abformung { $number } von { $of }: { $step }
step-measured = Abformung { $number } vermessen
step-comparing = Wash wird mit der Abformung davor verglichen
step-relating = Kiefer werden einander zugeordnet
step-judging = Befunde werden beurteilt
step-writing = Zeichnungen und Dateien werden erstellt
stage-topology = Dreiecke werden verbunden
stage-frame = Lage der Abformung wird bestimmt
stage-tissue-side = Schleimhautseite und Außenseite werden unterschieden
stage-registration = Scan des Löffels wird zugeordnet
stage-border = Rand wird verfolgt
stage-cover = Materialdicke wird gemessen
stage-spots = frei liegende und dünne Stellen werden umrissen
stage-tissue = Blasen, Materialperlen, Falten und Löcher werden gesucht
stage-landmarks = Landmarken werden gesucht
progress-cases = { $done } von { $all } Fällen, { $rate }, noch { $left }
progress-unreadable = {";"} einige waren nicht lesbar
look-scans = jeder Scan wird angesehen
look-record = das Kieferrelationsregistrat wird gesucht
look-trays = die Löffel werden auf die Abformungen gelegt
look-couples = Abformungen eines Kiefers werden verglichen
