### Resultados evaluados de nuevo con otros límites: lo que muestra `archproof judge`.

again-head = Evaluado de nuevo según «{ $protocol }». Casos cuyo dictamen cambia:
again-no-case = ninguno
again-no-finding = ningún hallazgo
again-findings = { $severity ->
    [fail] { $count ->
        [one] 1 incumplimiento
       *[other] { $count } incumplimientos
    }
    [borderline] { $count } en el límite
   *[note] { $count ->
        [one] 1 nota
       *[other] { $count } notas
    }
}
again-was = antes
again-now = ahora
again-cases = casos
again-measure = medir de nuevo
again-measure-these = No se evaluaron de nuevo, porque en los resultados falta lo que estas comprobaciones necesitan según los límites cambiados. Ejecute «archproof batch --protocol» para estos casos:
again-check = { $check }: { $cases ->
    [one] 1 caso
   *[other] { $cases } casos
}
again-unread = { $cases ->
    [one] 1 caso no se pudo leer cuando se comprobó.
   *[other] { $cases } casos no se pudieron leer cuando se comprobaron.
}
again-total = { $cases ->
    [one] 1 caso evaluado
   *[other] { $cases } casos evaluados
} de nuevo: { $changed ->
    [one] 1 cambia
   *[other] { $changed } cambian
} de dictamen, { $open ->
    [one] 1 debe
   *[other] { $open } deben
} medirse de nuevo.
