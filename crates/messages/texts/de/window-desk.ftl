### Der Arbeitstisch: Scans eines Falls, und als was jeder erkannt wurde.

## Was darauf zu lesen ist.

desk-caution = Eine Hilfe bei der Prüfung, kein Medizinprodukt; es entscheidet die approbierte Fachperson. Nichts verlässt diesen Rechner. Jedem Fall ein Pseudonym geben, nie einen Namen.
desk-list = Liste der Fälle (Esc)
desk-drop = Scans hier ablegen oder auswählen
desk-what = STL, PLY oder OBJ: die Abformungen eines Falls, die Scans ihrer leeren Löffel, das Kieferrelationsregistrat.
desk-what-else = Auch eine Falldatei oder ein Ergebnisordner kann abgelegt werden, ebenso ein Ordner mit Fällen, der zur Liste wird.
desk-choose-scans = Scans wählen …
desk-choose-folder = Ordner mit Fällen wählen …
desk-scan-files = Scans
desk-scans = Scans eines Falls
desk-recognised = Als was jeder Scan an seiner Oberfläche erkannt wurde. Falsches berichtigen.
desk-step = { $step } …
desk-pseudonym = Pseudonym des Falls
desk-pseudonym-hint = leer: ein neutrales
desk-never-a-name = nie ein Name
desk-check = Prüfen
desk-clear = Arbeitstisch leeren
desk-head-scan = Scan
desk-head-is = Was er ist
desk-head-surety = Wie sicher
desk-head-why = Warum
desk-more-questions = und { $more } weitere

## Was fehlt.

desk-no-scan = Darunter ist kein Scan (STL, PLY, OBJ).
desk-one-folder = Die Scans eines Falls müssen in einem Ordner liegen. Zusammenlegen, dann den Ordner ablegen.
desk-looking = Die Scans werden angesehen.
desk-open-rows = Angeben, was die als „offen“ gekennzeichneten Zeilen sind; dann kann der Fall geprüft werden.
desk-no-impression = Kein Scan zeigt eine Abformung dieses Falls.

## Was ein Scan ist, und wie sicher.

role-one-step = { $jaw ->
    [maxillary] Oberkieferabformung, einzeitig
   *[mandibular] Unterkieferabformung, einzeitig
}
role-tray = { $jaw ->
    [maxillary] Oberkieferlöffel
   *[mandibular] Unterkieferlöffel
}
role-relieved-tray = { $jaw ->
    [maxillary] Oberkieferlöffel nach dem Zurückschleifen
   *[mandibular] Unterkieferlöffel nach dem Zurückschleifen
}
role-record = Kieferrelationsregistrat
role-left-out = weggelassen
surety-clear = klar
surety-likely = wahrscheinlich
surety-stated = angegeben
surety-open = offen
