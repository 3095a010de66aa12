### Names: jaws, sides, zones, landmarks, stages, papers.

## Sides: the patient's.

side = { $side ->
    [right] right
   *[left] left
}

## Jaws.

arch-maxillary = maxillary
arch-mandibular = mandibular

## Zones.

zone-labial-flange = labial flange
zone-buccal-flange = buccal flange
zone-residual-ridge = residual ridge
zone-tuberosity = tuberosity
zone-hamular-notch = hamular notch
zone-posterior-palatal-seal = posterior palatal seal
zone-palate = palate
zone-rugae = rugae
zone-incisive-papilla = incisive papilla
zone-buccal-shelf = buccal shelf
zone-retromolar-pad = retromolar pad
zone-distobuccal = distobuccal
zone-lingual-flange = lingual flange
zone-retromylohyoid = retromylohyoid
