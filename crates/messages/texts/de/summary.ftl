### Die Zusammenfassung im Terminal.

findings-more = { $count } { $notes ->
    [all] { $count ->
        [one] weiterer Hinweis
       *[other] weitere Hinweise
    }
   *[some] { $count ->
        [one] weiterer Befund
       *[other] weitere Befunde
    }
} in { $place }.
