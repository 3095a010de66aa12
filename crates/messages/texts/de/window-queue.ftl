### Das Fenster: die Liste der Fälle, und was eine Person entscheidet.

## Die Liste.

queue-title = archproof: Fälle in { $folder }
queue-heading = Fälle in { $folder }
queue-keys = Auf, Ab, Bild auf, Bild ab: wählen · Eingabe: öffnen · Esc: Suche leeren · F2, F3, F4: Begleitblatt, Rücksendeblatt, Bericht · F5: neu einlesen · F6, F7, F8: entscheiden
queue-caution = Eine Hilfe bei der Prüfung, kein Medizinprodukt; es entscheidet die approbierte Fachperson. Entscheidungen und Notizen bleiben auf diesem Rechner: Pseudonyme und Kürzel schreiben, nie Namen.
queue-search = Suche: Fall, Prüfung, Zone, Notiz
queue-open = Öffnen
queue-read-again = Neu einlesen
queue-another-folder = Anderer Ordner …
queue-desk = Arbeitstisch
queue-all = Alle { $count }
queue-chip = { $state } { $count }
queue-head-state = Stand
queue-head-case = Fall
queue-head-about = Ergebnis der Prüfung
queue-head-decision = Entscheidung
queue-empty = Noch kein Fall. Fälle, die im Ordner eintreffen, erscheinen hier von selbst.
queue-no-match = Kein Fall passt. Esc leert die Suche; „Alle“ zeigt jeden Stand.
queue-is-read-again = Neu eingelesen.
queue-scans-alone = Scans ohne Falldatei: Eingabe legt sie auf den Arbeitstisch.
queue-not-checked = Noch nicht geprüft: Eingabe prüft den Fall.
queue-about = { $verdict }: { $cause } { $what }
queue-about-more = { $verdict }: { $cause } { $what }, und { $more } weitere
queue-folder-unreadable = { $path }: kann nicht durchgesehen werden ({ $reason })
queue-first-or-last = Das ist der { $which ->
    [first] erste
   *[last] letzte
} Fall der Liste. Esc führt zu ihr zurück.

## Was ein Fall von einer Person verlangt.

state-to-look-at = Anzusehen
state-to-return = Zurückzugeben
state-waiting = Wartet auf die Prüfung
state-to-work-from = Bereit zur Arbeit
state-on-hold = Zurückgestellt
state-decided = Entschieden
state-being-read = Wird gelesen

## Tasten.

key-enter = Eingabe
key-page-up = Bild auf
key-page-down = Bild ab
key-open-scans = Strg O
key-open-folder = Strg Umschalt O
key-desk = Strg D

## Die Papiere eines Ergebnisses.

paper-sheet = Begleitblatt
paper-return-note = Rücksendeblatt
paper-report = Bericht
paper-no-return-note = Dieses Ergebnis hat kein Rücksendeblatt: Von der Praxis wird nichts benötigt, oder es wurde ohne --return geprüft.
paper-missing = Dieses Ergebnis hat keine solche Seite: Es wurde mit --no-report geprüft.
paper-no-program = { $path }: Das System öffnet kein Programm dafür ({ $reason }); von Hand öffnen
paper-opened = { $paper }: vom System geöffnet.
paper-no-result = Dieser Fall hat noch kein Ergebnis. Eingabe prüft ihn.

## Die Entscheidung.

answer-returned = Zurückgegeben
answer-worked-from = In Arbeit
answer-waiting-for = Warten auf
answer-button = { $answer } …
outcome-returned = zurückgegeben
outcome-worked-from = in Arbeit
outcome-waiting-for = wartet auf: { $what }
decision = { $outcome }, { $initials }, { $time }
decision-with-note = { $decision }: { $note }
decision-is = Entschieden: { $decision }
decision-made = Entschieden: { $decision }.
decision-none = Noch keine Entscheidung. F6 zurückgegeben, F7 in Arbeit, F8 warten auf.
decision-of-other-scans = Eine frühere Entscheidung galt anderen Scans.
decision-without-result = Ein Fall wird entschieden, sobald er ein Ergebnis hat. Eingabe prüft ihn.
decision-meanwhile = Inzwischen wurde entschieden: { $decision }. Den Fall noch einmal ansehen, dann entscheiden.
decision-refused = { $path }: { $why }; berichtigen oder entfernen
decision-unreadable = nicht lesbar ({ $reason })
decision-is-none = ist keine Entscheidung ({ $reason })
decision-time = ist keine Entscheidung (die Zeit braucht ihr Datum und ihren Abstand zu UTC)
initials-missing = Das Kürzel angeben, etwa AB.
initials-only = Ein Kürzel aus höchstens { $most } Großbuchstaben angeben, etwa AB: Namen werden nicht gespeichert, nur Pseudonyme.
draft-waiting-for-what = Angeben, worauf der Fall wartet.
draft-no-clock = Die Uhr dieses Rechners gibt keine brauchbare Zeit; stellen, dann speichern.
decide-previous = Voriger
decide-next = Nächster
decide-list = Liste
decide-turn = { $number } von { $of }
decide-title = Entscheidung zum Fall { $case }
decide-save = Speichern (Eingabe)
decide-saved-as = Wird als decision.toml bei den Ergebnissen gespeichert, mit der Zeit und den Prüfsummen der Scans. Die Ergebnisse bleiben, wie sie sind.
decide-such-as = etwa die Unterkieferabformung
decide-note = Notiz
decide-note-hint = nur Pseudonyme, keine Namen; darf leer bleiben
decide-initials = Kürzel
decide-initials-hint = höchstens 4 Buchstaben, etwa AB
