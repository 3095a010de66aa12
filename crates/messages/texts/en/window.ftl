### The window: the impression, its findings, keys, and what is said.

## The window itself.

window-title = archproof: case { $case }: { $verdict }
window-caution = An aid to inspection, not a medical device; the licensed clinician decides. Local regulations and infection control come first; makers' instructions take precedence. Relieve a tray only out of the mouth, with eye and dust protection.
window-failed-keys = R tries again, Esc goes back, Ctrl Q closes the window.
window-picture-name = Impression in 3D
window-no-finding = no finding
window-chosen-finding = chosen finding { $id }: { $cause } { $check }
window-arrows-turn = arrow keys turn it
no-window-screen = no window: there is no screen (neither DISPLAY nor WAYLAND_DISPLAY is set); start it on a desktop, or look at report.html in the result folder instead
no-window-graphics = no window: the screen or its graphics cannot be used ({ $reason }); on Debian install libvulkan1, mesa-vulkan-drivers, libx11-6, libx11-xcb1, libxcursor1, libxi6 and libxkbcommon-x11-0, or look at report.html in the result folder instead

## The verdict and the findings.

window-verdict = { $verdict }: case { $case }
window-done = (done)
window-no-figure = no figure
window-has-drawing = Section drawing with dimensions: G shows it large.

## Buttons and what each does, after its key.

button-whole = Whole
button-whole-how = Home: shows the whole impression.
button-map = Map: { $map }
button-map-none = none
button-map-how = M: colours the surface by the next figure, or by none.
button-border-figure = Border figure
button-border-figure-how = F: colours the border line by the next figure, or by none.
button-colours = Colours
button-colours-how = P: uses the other colours.
layer-border = Border
layer-border-how = 1: shows or hides the border line.
layer-crest = Crest
layer-crest-how = 2: shows or hides the crest line.
layer-outlines = Outlines
layer-outlines-how = 3: shows or hides lines at limits and around defects.
layer-landmarks = Landmarks
layer-landmarks-how = 4: shows or hides the landmarks.
layer-tray = Tray
layer-tray-how = 5: shows or hides the tray.
layer-strip = Border strip
layer-strip-how = 6: shows or hides the border, unrolled along the foot of the window.
button-distance = Distance
button-distance-how = D: measures between two clicks.
button-mark = Mark
button-mark-how = L: marks landmarks by clicks.
button-section = Section
button-section-how = X: cuts the impression through the middle of the picture.
button-drawing = Drawing
button-drawing-how = G: shows the section drawing of the finding large, or small.
button-next-impression = Next impression
button-next-impression-how = I: brings the next impression to the front.
button-beside = Side by side
button-beside-how = B: shows two impressions side by side.
button-screenshot = Screenshot
button-screenshot-how = S: saves a picture of the window beside the results.
button-check-again = Check again
button-check-again-how = R or F5: checks the case again.
button-help = Help (H)
button-help-how = H or F1: shows all keys.

## Help: keys, and what they do.

keys-choose = Up, Down
help-choose = choose a finding
keys-fly = Enter
help-fly = fly to it
keys-done = Space
help-done = mark it as done, or not done
keys-whole = Home
help-whole = the whole impression
keys-turn = drag, Shift + arrows
help-turn = turn
keys-focus = Tab, Shift + Tab
help-focus = the picture, where arrows turn; next control, the one before
keys-move = right drag, Ctrl + arrows
help-move = move
keys-zoom = wheel, + and -
help-zoom = nearer, farther
keys-roll = Q, E
help-roll = turn about the line of sight
keys-impressions = I; B
help-impressions = next impression; two side by side
keys-maps = M, Shift + M
help-maps = next map, the one before; plain surface
keys-border-figure = F
help-border-figure = colour the border line by a figure
keys-colours = P
help-colours = other colours
keys-scale = comma, period
help-scale = shorter, longer scale; with Ctrl: lower, higher
keys-drawing = G
help-drawing = section drawing of the finding, large or small
keys-layers = 1, 2, 3, 4, 5, 6
help-layers = border, crest line, outlines, landmarks, tray, border strip
keys-distance = D
help-distance = distance between two clicks
keys-mark = L
help-mark = mark landmarks by clicks
keys-landmark = N or Page Down, Page Up
help-landmark = next, previous landmark
keys-undo = Ctrl Z or U; Ctrl Y
help-undo = take a mark or tick back; make it again
keys-middle = K
help-middle = click the middle of the picture
keys-section = X; Left, Right; [ and ]
help-section = section plane; move; turn
keys-save = S; R or F5
help-save = save a screenshot; check the case again
keys-papers = F2, F3, F4
help-papers = open the sheet, the return note, the report
keys-decide = F6, F7, F8
help-decide = decide: returned, worked from, waiting for
keys-walk = Page Up, Page Down
help-walk = previous, next case of the list
keys-open = Ctrl O; Ctrl Shift O
help-open = choose scans; choose a folder of cases
keys-text = Ctrl + and -; F9
help-text = larger, smaller text; light or dark
keys-leave = H or F1; Esc; Ctrl Q
help-leave = this help; leave, back to the list; close

## Maps and their scales.

map-cover = cover
map-wash = wash
map-wash-figure = wash thickness
map-scan-quality = scan quality
map-scan-quality-figure = smallest void seen
map-missing = no map of { $map } here: { $why }
map-holds-none = this result holds none
map-limit-show-through = show-through
map-limit-thin = thin
map-limit-least = least
map-limit-most = most
map-key = grey: not known; white lines: at a limit
map-defects = edged white lines: defects of the surface
map-line = line: { $figure }, mm
map-plain = plain surface

## Over the picture.

no-surface-here = the surface is not in this folder; open the case file to see it
side-front = front
section-side = section, tissue side up
click-distance = distance: click two places (K: the middle)
click-landmark = click: { $landmark } (N: next, U: take back, L: stop)
landmark-label-marked = { $landmark } (marked)
landmark-label-status = { $landmark }: { $status }
probe-thickness = thickness { $figure }
probe-thickness-not-known = thickness not known
probe-figure = { $name } { $figure }
probe-not-known = { $name } not known
probe-no-zone = no zone
probe-at = x { $x }, y { $y }, z { $z }
probe-border = border: { $zone }, { $along } mm from the { $midline }

## The border strip.

strip-none = no border to unroll: { $why }
strip-holds-none = this result holds none
strip-limit = limit
strip-no-height = no height
strip-fails = fails
strip-undecided = undecided
strip-note = note
strip-left = left
strip-right = right
strip-midline = { $part ->
    [labial] labial midline
   *[lingual] lingual midline
}

## What is said at the foot.

said-one-impression = there is only one impression
said-no-tray = the tray is shown when the case file is opened, not its result
said-of-the-whole = this finding is a matter of the whole impression or case
said-in-front = in front: { $impression }
said-nothing-to-take-back = nothing to take back
said-nothing-to-make-again = nothing to make again
said-landmarks-saved = landmarks saved in { $path }
said-no-drawing = No section drawing: only findings along the border have one.
said-no-room = The window has no room for larger text.
said-saved = saved { $path }
said-check-the-case = to check again, open the case file or the scan instead of its result
said-limits-of-your-own = this result was judged by limits of your own; to check it again by them, start the window with --protocol FILE
landmarks-unreadable = { $path }: cannot be read ({ $reason })
landmarks-no-list = { $path }: is no list of landmarks ({ $reason }); correct it or remove it
drawing-unreadable = { $path }: cannot be read ({ $reason }); check the case again
surface-of-another = { $path }: is not a surface as archproof writes it; check the case again
drawing-of-another = { $path }: is no drawing as archproof writes it; check the case again

## A case on its way.

opening-case = Opening the case
opening = opening
opening-result = reading the result
opening-writing = writing the results
opening-cancelled = the check was cancelled; nothing was written
button-cancel = Cancel (Esc)
