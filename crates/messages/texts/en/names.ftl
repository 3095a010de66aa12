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

## A part of the arch with its side.

zone-at-side = { $side ->
    [right] right
   *[left] left
} { $zone }

## Landmarks.

landmark-labial-frenum = labial frenum
landmark-buccal-frenum = buccal frenum
landmark-lingual-frenum = lingual frenum
landmark-incisive-papilla = incisive papilla
landmark-rugae = rugae
landmark-foveae-palatini = foveae palatini
landmark-tuberosity = tuberosity
landmark-hamular-notch = hamular notch
landmark-posterior-palatal-seal = posterior palatal seal
landmark-retromolar-pad = retromolar pad
landmark-buccal-shelf = buccal shelf
landmark-lingual-flange = lingual flange

## Landmarks within a sentence. English puts its article before them.

the-landmark-labial-frenum = { landmark-labial-frenum }
the-landmark-buccal-frenum = { $side ->
    [right] { landmark-buccal-frenum } on the right
    [left] { landmark-buccal-frenum } on the left
   *[none] { landmark-buccal-frenum }
}
the-landmark-lingual-frenum = { landmark-lingual-frenum }
the-landmark-incisive-papilla = { landmark-incisive-papilla }
the-landmark-rugae = { landmark-rugae }
the-landmark-foveae-palatini = { landmark-foveae-palatini }
the-landmark-tuberosity = { $side ->
    [right] { landmark-tuberosity } on the right
    [left] { landmark-tuberosity } on the left
   *[none] { landmark-tuberosity }
}
the-landmark-hamular-notch = { $side ->
    [right] { landmark-hamular-notch } on the right
    [left] { landmark-hamular-notch } on the left
   *[none] { landmark-hamular-notch }
}
the-landmark-posterior-palatal-seal = { landmark-posterior-palatal-seal }
the-landmark-retromolar-pad = { $side ->
    [right] { landmark-retromolar-pad } on the right
    [left] { landmark-retromolar-pad } on the left
   *[none] { landmark-retromolar-pad }
}
the-landmark-buccal-shelf = { $side ->
    [right] { landmark-buccal-shelf } on the right
    [left] { landmark-buccal-shelf } on the left
   *[none] { landmark-buccal-shelf }
}
the-landmark-lingual-flange = { $side ->
    [right] { landmark-lingual-flange } on the right
    [left] { landmark-lingual-flange } on the left
   *[none] { landmark-lingual-flange }
}
