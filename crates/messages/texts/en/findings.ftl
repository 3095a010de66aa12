### What is to be done at a finding.

held-back = Held back until the question on this impression is answered: sides and places are not certain. Do nothing about it yet.
before-the-wash = Found before the wash; the wash that followed is judged by itself. It called for:
void-or-pressed = Look first whether the tray pressed here: the material over it is only { $cover } thick at the bottom of this pit. If it did not, treat the pit as a void.
colour-beside-cover = The tray's colour shows here, but the thickness map finds material over it. Look at the impression. If no tray shows, something else has its colour. If tray shows, check that the scan or thickness of the tray is that of this tray.
