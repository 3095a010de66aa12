### Sentences and pieces of sentences that several subjects use.

list = { $first } and { $last }
