### Sätze und Satzteile, die an mehreren Stellen vorkommen.

list = { $first } und { $last }
either = { $one } oder { $other }
enumerated = { $one }, { $other }
