### Was `archproof demo` ausgibt, und die README.txt neben den Beispielfällen.

demo-written = Das Beispiel ist geschrieben; alles daran ist erfunden. Prüfen mit:
demo-read-me =
    Beispielfälle für archproof. Alles hier ist erfunden: Die Scans wurden nach Formeln
    erzeugt, und es gibt keinen solchen Patienten.

        archproof check first-pass.toml

    Der Patient ist noch auf dem Behandlungsstuhl: eine Oberkieferabformung vor dem Wash in
    einem konfektionierten Löffel, von allen Seiten gescannt, und ein Scan desselben Löffels,
    leer und in eigenen Koordinaten. Auf der rechten Patientenseite wurde der Löffel zu weit
    nach oben gedrückt: Dort liegt er auf dem Kieferkamm frei und ebenso am Gaumen neben der
    Mittellinie. Auf der linken Seite ist das Material vorn an der vestibulären Flanke des
    Kieferkamms dünn. Das Ergebnis sollte „nacharbeiten“ lauten und die beiden freiliegenden
    Stellen und die dünne nennen. Im Ordner archproof-DEMO-1 liegen dann report.html, die
    Karte der Materialdicke und result.json.

        archproof check case.toml

    Bevor die Sendung abgeht: beide Kiefer, jeweils vor dem Wash und mit Wash, mit ihren
    Löffeln, der Scan des Kieferrelationsregistrats und die Angabe, was verpackt wurde. Der
    Wash bedeckt den Gaumen und die dünne Stelle, fehlt aber über der freiliegenden Stelle
    des Kieferkamms fast ganz: Dort liegt der Löffel weiter frei. Am Unterkiefer ist der
    linguale Rand auf der linken Patientenseite zu kurz, und rechts hat Luft auf dem
    Kieferkamm eine Blase hinterlassen. Das Registrat wurde nicht verpackt. Das Ergebnis
    sollte „nacharbeiten“ lauten und zeigen, wo all das liegt.
demo-read-me-in-pieces =
    Ein Beispielfall in Teilen für archproof. Alles hier ist erfunden: Die Scans wurden nach
    Formeln erzeugt, und es gibt keinen solchen Patienten.

        archproof check case.toml

    Bevor die Sendung abgeht: Beide Wash-Abformungen wurden für die Kieferrelation zerteilt;
    registriert wurde sie zwischen den vorderen Teilen. Die Oberkieferabformung wurde mit
    ihrem Löffel zerschnitten und erst danach gescannt: Jeder Teil liegt in eigenen
    Koordinaten, und der Scan des ganzen leeren Löffels zeigt, wie die Teile zusammengehören.
    Die Unterkieferabformung wurde ganz gescannt. Ihr Löffel besteht aus zwei Teilen, von
    denen nur die einzelnen Scans vorliegen. Im Oberkiefer ist rechts über dem Kieferkamm,
    hinter dem Schnitt, kaum Wash: Dort liegt der Löffel frei. Am Unterkiefer ist der
    linguale Rand auf der linken Patientenseite zu kurz, und rechts hat Luft auf dem
    Kieferkamm eine Blase hinterlassen. Der hintere Teil der Oberkieferabformung wurde nicht
    verpackt. Das Ergebnis sollte „nacharbeiten“ lauten und zeigen, wo all das liegt; die
    Dateien dazu kommen in den Ordner archproof-DEMO-4.
