### El resumen en la terminal.

findings-more = { $count } { $notes ->
    [all] { $count ->
        [one] nota más
       *[other] notas más
    }
   *[some] { $count ->
        [one] hallazgo más
       *[other] hallazgos más
    }
} en { $place }.
