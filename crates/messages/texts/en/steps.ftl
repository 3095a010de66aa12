### What is being done, for showing progress.

step-reading = reading the scans
step-of-impression = impression { $number } of { $of }: { $step }
step-measured = impression { $number } measured
step-comparing = comparing the wash with the impression before it
step-relating = relating the jaws
step-judging = judging
step-writing = drawing and writing
stage-topology = joining triangles
stage-frame = finding the impression frame
stage-tissue-side = telling tissue surface from outer surface
stage-registration = registering the tray scan
stage-border = following the border
stage-cover = measuring the material thickness
stage-spots = outlining show-through and thin places
stage-tissue = looking for voids, nodules, folds and holes
stage-landmarks = looking for landmarks
progress-cases = { $done } of { $all } cases, { $rate }, { $left } left
progress-unreadable = {";"} some could not be read
look-scans = looking at each scan
look-record = looking for the jaw-relation record
look-trays = laying the trays on the impressions
look-couples = comparing impressions of one jaw
