### Results judged again by other limits: what `archproof judge` prints.

again-head = Judged again by "{ $protocol }". Cases whose verdict changes:
again-no-case = none
again-no-finding = none
again-findings = { $severity ->
    [fail] { $count } fail
    [borderline] { $count } borderline
   *[note] { $count } note
}
again-was = was
again-now = now
again-cases = cases
again-measure = measure again
again-measure-these = Not judged again, since the results lack what these checks need by the limits that changed. Run 'archproof batch --protocol' for these cases:
again-check = { $check }: { $cases ->
    [one] 1 case
   *[other] { $cases } cases
}
again-unread = { $cases ->
    [one] 1 case could not be read when it was checked.
   *[other] { $cases } cases could not be read when they were checked.
}
again-total = { $cases ->
    [one] 1 case
   *[other] { $cases } cases
} judged again: { $changed ->
    [one] 1 changes its verdict
   *[other] { $changed } change their verdict
}, { $open } must be measured again.
