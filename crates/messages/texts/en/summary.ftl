### The summary on the terminal.

findings-more = { $count ->
    [one] { $notes ->
        [all] 1 further note is
       *[some] 1 further finding is
    }
   *[other] { $notes ->
        [all] { $count } further notes are
       *[some] { $count } further findings are
    }
} in { $place }.
