### Frases y partes de frases que se usan en varios sitios.

list = { $first } y { $last }
either = { $one } o { $other }
enumerated = { $one }, { $other }
