### Qué hacer ante un hallazgo.

held-back = En espera hasta que se responda la pregunta sobre esta impresión: los lados y los lugares no son seguros. No haga nada todavía.
before-the-wash = Hallado antes del lavado; el lavado posterior se evalúa por separado. Se pedía:
void-or-pressed = Mire primero si aquí presionó la cubeta: en el fondo de esta depresión el material sobre ella solo tiene { $cover } de grosor. Si no fue así, trate la depresión como una burbuja.
colour-beside-cover = Aquí se ve el color de la cubeta, pero el mapa de grosor encuentra material sobre ella. Mire la impresión. Si no se ve la cubeta, otra cosa tiene su color. Si se ve, compruebe que el escaneo o el grosor de la cubeta sean los de esta cubeta.
