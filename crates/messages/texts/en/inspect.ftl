### Scans at a glance: what `archproof inspect` prints.

## The table.

inspect-head-size = size, mm
inspect-head-unit = unit
inspect-head-shows = shows
inspect-head-sides = sides
inspect-head-parts = parts
inspect-head-loops = loops
inspect-head-faults = faults
inspect-head-edge = edge, mm
inspect-head-noise = noise, mm
inspect-head-file = file: remarks
inspect-both-sides = both
inspect-tissue-side = tissue
inspect-not-read = not read

## What a scan shows that is no impression, in a word or two.

shows-wrong-size = wrong size
shows-positive = positive
shows-cast = cast
shows-half-arch = half arch
shows-tray-or-base = tray or base
shows-record-rim = record rim
shows-no-arch = no arch
shows-toothed-arch = toothed arch
shows-toothed-impression = toothed impression
shows-two-scans = two scans
shows-tray = tray
shows-parts = parts
shows-empty-tray = empty tray

## Remarks on a file, joined by "; ".

inspect-not-an-impression = not an impression: { $what }
inspect-attribute-bytes = its attribute bytes, in which some programs store colour, were not used
inspect-unit-inferred = read in { $unit }: in mm its size is not that of an impression, in { $unit } it is; say --unit { $unit } if so
inspect-unit-ambiguous = read in mm, but its size could be that of an impression in { $units }; say --unit
inspect-unit-implausible = read in mm, but in no unit is its size that of an impression
inspect-double-layers = { $percent } % of it lies in double layers
inspect-free-text = holds free text, which may name a person ('archproof clean' writes it without)
