### The impression in 3D on the page.

turning-surfaces = Impression that is shown
turning-canvas = The impression in 3D
turning-click = Click on the surface or on a mark to read what is there.
turning-colours = Colours of the material thickness
turning-ways = Ways to look at it
turning-go-to = Go to
turning-a-place = a place …
turning-findings = Findings
turning-landmarks = Landmarks
turning-border = Border
turning-keys = Drag to turn, with Shift or two fingers to move; pinch, or use the wheel after a click, to zoom. Keys: arrows turn, Shift and arrows move, + and − zoom, Home shows the whole.
turning-legend = Grey: thickness not known. A click gives the figures of one point; the verdict rests on the findings.
turning-thinned = A surface of many triangles is simplified in this picture; every figure of the report comes from the full scan.
turning-closer = Closer
turning-farther = Farther
turning-name = { $name }, in 3D
turning-shown = { $name } is shown.
turning-show = Show in 3D
turning-show-place = Show in 3D: { $id }
turning-landmark = { $name }: { $status }.
turning-no-surface = No surface there.
turning-off-tissue = Not on the tissue surface
turning-not-measured = { $place }. The material thickness was not measured.
turning-not-known = { $place }. The material thickness is not known there.
turning-thick = { $place }: material { $thickness } mm thick.
turning-tray-at-surface = { $place }: material { $thickness } mm thick (tray at the surface).
