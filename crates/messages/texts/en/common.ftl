### Sentences and pieces of sentences that several subjects use.

list = { $first } and { $last }
either = { $one } or { $other }
enumerated = { $one }, { $other }
