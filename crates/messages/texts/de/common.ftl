### Sätze und Satzteile, die an mehreren Stellen vorkommen.

list = { $first } und { $last }
