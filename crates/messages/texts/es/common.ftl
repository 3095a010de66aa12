### Frases y partes de frases que se usan en varios sitios.

list = { $first } y { $last }
