### Was an einem Befund zu tun ist.

held-back = Zurückgestellt, bis die Frage zu dieser Abformung beantwortet ist: Seiten und Stellen stehen nicht fest. Hier noch nichts unternehmen.
before-the-wash = Vor dem Wash gefunden; der Wash, der folgte, wird für sich beurteilt. Verlangt war:
void-or-pressed = Zuerst ansehen, ob hier der Löffel gedrückt hat: Am Grund dieser Vertiefung ist das Material über ihm nur { $cover } dick. Wenn nicht, die Vertiefung wie eine Blase behandeln.
colour-beside-cover = Hier zeigt sich die Farbe des Löffels, doch die Dickenkarte findet Material darüber. Die Abformung ansehen. Zeigt sich kein Löffel, hat etwas anderes seine Farbe. Zeigt sich Löffel, prüfen, ob Scan oder Dicke des Löffels zu diesem Löffel gehören.
