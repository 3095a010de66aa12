### Was an einem Befund zu tun ist. Der Rand ist in `border`, der Löffel in `tray`.

held-back = Zurückgestellt, bis die Frage zu dieser Abformung beantwortet ist: Seiten und Stellen stehen nicht fest. Hier noch nichts unternehmen.
before-the-wash = Vor dem Wash gefunden; der Wash, der folgte, wird für sich beurteilt. Verlangt war:

## Fragen.

file-unclear = Der { $which ->
    [tray] Löffelscan
   *[impression] Abformungsscan
} kann zweierlei bedeuten: { $question }. Noch einmal exportieren und prüfen.
file-is-tray-too = Abformungsscan und Löffelscan sind dieselbe Datei. Als Löffelscan den Scan des leeren Löffels angeben.
file-mirrored = Die Abformungen dieses Kiefers vor und nach dem Wash passen nur spiegelverkehrt aufeinander: Einer der Scans ist gespiegelt, oder sie stammen aus zwei Mündern. Beide noch einmal ohne Spiegelung exportieren und rechts und links mit den Abformungen vergleichen.
file-given-twice = Dieselbe Scandatei ist für zwei Abformungen dieses Falls angegeben. Für jede Abformung ihren eigenen Scan angeben.
unit-inferred = Die Größe des { $which ->
    [tray] Löffelscans
   *[impression] Abformungsscans
} passt nicht zu einer Abformung in mm, sondern zu einer in { $unit }, und so wurde er gelesen. Wenn das stimmt, mit --unit { $unit } erneut prüfen; wenn nicht, in mm exportieren.
unit-ambiguous = Die Größe des { $which ->
    [tray] Löffelscans
   *[impression] Abformungsscans
} passt nicht zu einer Abformung in mm; die Einheit kann { $units } sein. Mit --unit und der richtigen Einheit erneut prüfen oder in mm exportieren.
not-an-impression = Keine Abformung: { $what }.
check-file-and-unit = Prüfen, ob die richtige Datei angegeben wurde, und ihre Einheit (--unit).
give-impression-itself = Den Scan der Abformung selbst angeben, nicht den eines Modells, einer Prothese oder des Mundes.
for-edentulous-arches = Diese Prüfung gilt zahnlosen Kiefern; diesen mit bloßem Auge ansehen.
give-whole-arch = Den Scan des ganzen Kiefers angeben; wurde nur eine Hälfte gescannt, den Rest scannen.
give-impression-in-tray = Den Scan der Abformung in ihrem Löffel angeben; der leere Löffel wird mit --tray angegeben. Ist dies eine Abformung ohne Löffel, sie mit bloßem Auge ansehen.
give-every-part = Jeden Teil dieser Abformung angeben, jeden von allen Seiten gescannt, dazu den Scan ihres ganzen Löffels.
export-each-scan = Jeden Scan in eine eigene Datei exportieren.
give-edentulous = Den Scan der Abformung eines zahnlosen Kiefers in ihrem Löffel angeben.
arch-mismatch = Welcher Kiefer ist es? Angegeben ist der { $declared ->
    [maxillary] Oberkiefer
   *[mandibular] Unterkiefer
}, doch der Scan hat die Form einer { $found ->
    [maxillary] Oberkieferabformung
   *[mandibular] Unterkieferabformung
} (Konfidenz { $confidence }). Den richtigen Scan oder den richtigen Kiefer angeben.
which-jaw = Welcher Kiefer ist es? Mit --arch upper (Oberkiefer) oder --arch lower (Unterkiefer) angeben. Die Form allein ist nicht eindeutig, und rechts und links hängen davon ab.
which-way = Wie liegt die Abformung? Ihre Achsen sind nicht sicher, und rechts und links hängen davon ab. Den ganzen Kiefer noch einmal scannen.

## Der Scan.

scan-coarse = Der Scan ist zu grob. Mit voller Auflösung exportieren und erneut prüfen.
tissue-area = Es wurde weniger Gewebefläche gescannt, als eine Abformung dieses Kiefers hat (gescannte Fläche einschließlich der Flanken). Ist die Abformung vollständig, sie ganz scannen.
void-unseen = Der Scan ist zu grob, um Blasen zu zeigen, an denen die Abformung scheitern würde. Mit höherer Auflösung neu scannen, oder Kieferkamm, Hamularkerben, Trigona retromolaria und Rand mit einer Lampe ansehen.
scan-quality-coarse = Der Scan ist zu grob, um kleine Blasen zu zeigen, und zwar in { $regions }. Um danach zu suchen, mit höherer Auflösung in einem Durchgang neu scannen.
scan-quality-rough = Der Scan ist zu rau, um flache Fehler zu zeigen, und zwar in { $regions }. Um danach zu suchen, mit weniger Rauschen in einem Durchgang neu scannen.
scan-quality-doubled = Der Scan ist schlecht zusammengesetzt, mit zwei Schichten, und zwar in { $regions }. In einem Durchgang neu scannen.
every-region = allen Bereichen
these-regions = diesen Bereichen: { $regions }

## Die Gewebefläche.

too-close-to-tell = Zu nahe am Grenzwert, um es zu entscheiden: ansehen.
void-dry = Hier war Luft eingeschlossen. Die Stelle trocknen, damit der Wash sie füllt.
void-at-seal = Hier war Luft eingeschlossen, wo die Prothese abdichten muss. Das Modell bekommt hier eine Gipsperle: sie abtragen, wenn die Fläche ringsum die wahre Form zeigt. Sonst die Stelle trocknen, die Blase mit Wash füllen und die Abformung neu einsetzen.
void = Hier war Luft eingeschlossen. Das Modell bekommt hier eine Gipsperle, die abgetragen werden muss. Ist die Perle zu groß, um ringsum die wahre Fläche zu erkennen, die Wash-Abformung wiederholen.
void-or-pressed = Zuerst ansehen, ob hier der Löffel gedrückt hat: Am Grund dieser Vertiefung ist das Material über ihm nur { $cover } dick. Wenn nicht, die Vertiefung wie eine Blase behandeln.
void-or-landmark = { $landmark }: Zuerst ansehen, ob diese Vertiefung die Landmarke selbst ist. Wenn nicht, sie wie eine Blase behandeln.
nodule = Hier ist eine Materialperle, die nicht nach Gewebe aussieht. Ansehen und mit dem Mund vergleichen; gehört sie nicht zur Anatomie, vor dem Ausgießen entfernen.
nodule-or-band = Zuerst ansehen, ob dies das Material zwischen zwei Strängen eines Bändchens ist. Wenn ja, belassen; wenn nicht, wie eine Materialperle behandeln.
fold = Diese Rille sieht aus, als wären zwei Materialfronten aufeinandergetroffen, ohne sich zu verbinden. Ansehen. Hat sich das Material gefaltet oder verzogen, eine Wash-Abformung darüber nehmen; hat die Schleimhaut diese Furche, so lassen.
hole = Hier wurde nichts gescannt: diese Stelle noch einmal scannen. Hat die Abformung selbst ein Loch, muss der Wash es füllen.
hole-small = Hier wurde eine kleine Stelle nicht gescannt. Eine Blase, an der die Abformung scheitern würde, passt nicht hinein. Die Stelle an der Abformung selbst ansehen.

## Landmarken, jede benannt wie in `the-landmark`: am Anfang, ohne Artikel.

cut-short-scan-ends = { $landmark }: Der Scan endet hier. Diese Stelle noch einmal scannen, deutlich darüber hinaus. Ob die Abformung selbst so weit reicht, wurde nicht beurteilt.
cut-short-missed = { $landmark }: Die Abformung endet davor. In einem längeren Löffel oder mit aufgebautem Rand neu abformen.
cut-short-trough-open = { $landmark }: Die Abformung endet vielleicht davor; die Rinne sollte hier geschlossen sein. Nachsehen, ob der Scan oder die Abformung abgeschnitten ist. Ist es die Abformung, in einem längeren Löffel oder mit aufgebautem Rand neu abformen.
cut-short-at-border = { $landmark }: Der Rand verläuft genau hier. Nachsehen, ob die Abformung darüber hinausreicht. Wenn nicht, in einem längeren Löffel oder mit aufgebautem Rand neu abformen.
cut-short-near = { $landmark }: Der Rand verläuft dicht dahinter. Nachsehen, ob die Abformung weit genug darüber hinausreicht.
cut-short-covered = { $landmark }: Die Abformung enthält davon vielleicht zu wenig. Nachsehen, wie viel davon da ist. Ist etwas abgeschnitten, in einem längeren Löffel oder mit aufgebautem Rand neu abformen.
cut-short-border = { $landmark }: Der Rand ist hier zu kurz. Randmaterial auftragen und { $mould }, { $then }.
obscured-by-hole = { $landmark }: Hier wurde nichts gescannt. Noch einmal scannen. Fehlt dort Material, muss der Wash es ersetzen.
obscured-by-bump = { $landmark }: Darüber liegt eine Erhebung. Ansehen; was nicht zum Gewebe gehört, vor dem Ausgießen abtragen.
obscured-by-bump-before-wash = { $landmark }: Darüber liegt eine Erhebung. Ansehen; was nicht zum Gewebe gehört, abtragen und den Wash darüber nehmen.
obscured-by-void = { $landmark }: Darüber liegt eine Blase oder Falte. Was sie auf dem Modell hinterlässt, muss abgetragen werden; ist ringsum die wahre Fläche nicht zu erkennen, die Wash-Abformung wiederholen.
obscured-by-void-before-wash = { $landmark }: Darüber liegt eine Blase oder Falte. Trocknen, damit der Wash sie füllt.
obscured-by-tray = { $landmark }: Hier liegt der Löffel frei.
not-detected = { $landmark }: nicht gefunden ({ $why }). Auf der Abformung danach suchen und, falls vorhanden, markieren (Taste L im Fenster oder eine Landmarkendatei).

## Der Wash.

wash-thick = Der Wash ist auf einem Zwanzigstel der Fläche dicker als der Grenzwert. Prüfen, ob der Löffel bei der Wash-Abformung ganz saß. Wurde die Kieferrelation vor dem Wash bestimmt, sie neu bestimmen.
wash-uneven = Der Wash ist an manchen Stellen viel dicker als an anderen: Der Löffel wurde gekippt oder verschoben eingesetzt. Die Wash-Karte ansehen und den Rand im Mund prüfen.
wash-open = Der Wash hat diese Stelle nicht behoben.
wash-open-relieved = Wurde der Löffel nach dem Scan vor dem Wash zurückgeschliffen, ist mehr Material da, als dieser Wert sagt: ansehen.
wash-open-unsure = Nicht sicher zu entscheiden, ob der Wash diese Stelle behoben hat: ansehen.

## Der Weg aus der Praxis.

sent-same-file = Für die Abformung beim Versand und bei der Ankunft ist dieselbe Datei angegeben. Für jede ihren eigenen Scan angeben.
sent-other-scan = Der als Versandscan angegebene Scan zeigt nicht diese Abformung: { $why }. Den Scan angeben, der vor dem Versand von dieser Abformung gemacht wurde, oder ihn weglassen. Ist es dieser Scan, wurde die Abformung unterwegs verzogen: nicht danach arbeiten.
changed-heel = Die Abformung hat sich unterwegs als Ganzes verändert: Ihr { $side ->
    [right] rechtes
   *[left] linkes
} distales Ende liegt { $moved } als beim Versand.
changed-heels = Die Abformung hat sich unterwegs als Ganzes verändert: Ihre distalen Enden liegen { $apart ->
    [nearer] näher beieinander
   *[farther] weiter auseinander
} als beim Versand.
changed-size = Außerdem ist sie { $percent } { $size ->
    [smaller] kleiner
   *[larger] größer
}; additionsvernetzendes Silikon schrumpft um 0,3 %, die Norm lässt 1,5 % zu. Nachfragen, ob der Löffel verbogen, in der Sendung gequetscht oder auf seine distalen Enden gelegt wurde. Bleibt es so, nicht danach arbeiten: Eine danach gefertigte Prothese wird nicht passen.
changed-torn = Am Rand fehlt Material, das beim Versand da war. Nachsehen, ob es abgerissen ist oder mit Absicht beschnitten wurde. Ist es abgerissen, dort Randmaterial auftragen oder neu abformen.
changed-pressed-in = Die Oberfläche liegt tiefer als beim Versand. Nachsehen, ob sie eingedrückt, ausgerissen oder abgeschabt ist. Federt sie nicht zurück, nicht nach dieser Stelle arbeiten.
changed-stuck-on = Auf der Oberfläche liegt etwas, das beim Versand nicht da war. Auf Schmutz, einen Splitter oder Reste von Desinfektionsmittel achten, abspülen und neu scannen.
changed-area = Die Stelle umfasst { $area }.

## Der Fall als Ganzes.

impression-age = Seit der Abformung ist mehr Zeit vergangen, als ihr Material nachweislich maßhaltig bleibt. Die Herstellerangaben befolgen; ist die Zeit auch danach abgelaufen, neu abformen.
wash-missing = Die { $jaw ->
    [upper] Oberkieferabformung
    [lower] Unterkieferabformung
   *[other] andere Abformung
} hat noch keinen Wash. Den Wash nehmen und seinen Scan angeben; braucht diese Abformung keinen, sie als einzeitig angeben (--stage one-step oder `wash` in der Falldatei).
interarch-space = Zwischen den Kieferkämmen ist wenig Platz für Zähne und Basis: die vertikale Dimension prüfen und, wenn sie stimmt, das Labor informieren.
ridge-angle = Die Kieferkämme sind alles andere als parallel: Prothesen neigen darauf zum Gleiten. Prüfen, ob das Registrat ohne Kippen eines Löffels genommen wurde, und das Labor informieren.
jaw-relation-not-judged = Die Kieferrelation wurde nicht gemessen: { $why }. Den Scan des Registrats prüfen oder das Registrat von Hand.
interocclusal-impossible = In Ruhe stehen die Kiefer immer weiter auseinander als in Okklusion: Eine der beiden vertikalen Dimensionen ist falsch, oder sie wurden vertauscht. Beide neu messen.
interocclusal-questioned = Der Interokklusalabstand liegt außerhalb des beobachteten Bereichs. Beide vertikalen Dimensionen je dreimal neu messen und das Registrat an Sprache und Lippen prüfen.
interocclusal-unusual = Der Interokklusalabstand liegt außerhalb des üblichen Bereichs: beide vertikalen Dimensionen prüfen.
interocclusal-unsure = Zu nahe am Grenzwert, um es zu entscheiden. Beide vertikalen Dimensionen dreimal messen und die Messwerte angeben (vertical_dimension_readings_mm, rest_vertical_dimension_readings_mm).
lip-implausible = Diese Oberlippenlänge liegt außerhalb des plausiblen Bereichs. Von der Nasenbasis bis zur Lippenlinie in Ruhe neu messen.
lip-too-short = Das ist zu kurz für die Länge einer Oberlippe von der Nasenbasis. Wurde von der Papilla incisiva gemessen, es als papilla_to_lip_mm angeben; sonst neu messen.
papilla-implausible = Dieser Abstand liegt außerhalb des plausiblen Bereichs. Von der Papilla incisiva bis zur Lippenlinie in Ruhe neu messen.
papilla-too-long = Das ist zu lang für den Abstand von der Papilla incisiva zur Lippenlinie. Wurde von der Nasenbasis gemessen, es als upper_lip_length_mm angeben; sonst neu messen.

## Die Sendung.

not-packed = Nicht verpackt: { $part }. Hinzufügen oder aus der Liste streichen.
parcel-no-list = Es gibt keine Liste dessen, was in der Sendung sein muss: sie als `expected` unter [parcel] angeben.
parcel-no-record = Der Fall enthält keine Kieferrelation: den Scan des Registrats oder die vertikale Dimension unter [jaw_relation] angeben, oder sagen, warum es keine gibt (no_jaw_relation_because unter [parcel]).
parcel-one-jaw = Der Fall enthält nur einen Kiefer: die Abformung des anderen hinzufügen oder sagen, warum es keine gibt (one_arch_because unter [parcel]).
prescription-not-enclosed = Den schriftlichen Auftrag beilegen.
prescription-not-stated = Angeben, ob der schriftliche Auftrag beiliegt (prescription = true), und ihn beilegen.
disinfectant-not-stated = Angeben, womit der Satz desinfiziert wurde (disinfectant).
disinfection-not-stated = Angeben, womit und wie lange der Satz desinfiziert wurde (disinfectant, disinfection_min). Wenn noch nicht geschehen, vor jeder Handhabung reinigen und desinfizieren.
disinfection-time-not-stated = Angeben, wie viele Minuten der Satz desinfiziert wurde (disinfection_min).
disinfection-time-unusual = Die Dauer der Desinfektion ist ungewöhnlich: mit den Angaben der Hersteller von Desinfektionsmittel und Elastomer vergleichen, die Vorrang haben.
