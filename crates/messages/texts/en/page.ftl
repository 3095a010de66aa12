### The report: its frame, verdict, cautions, and what was not judged.

## The frame.

page-title = Case { $case }: { $verdict } - report of the impression check
page-kicker = Report of the impression check
page-first-depth = This print is the first part of the report. Its file holds more: notes with their drawings, every picture, methods, limits and provenance. Open them there, or tick "Print everything".
page-written-by = Written by { $program }. Protocol: { $protocol }. An aid to inspection, not a medical device; the licensed clinician decides.
page-files = Files beside this report
page-contents = Contents
page-folded = Folded; a click opens each:
page-print-everything = Print everything
page-print-hint = Without this tick, the print holds what is open on the page: folded parts only where you opened them.

## What to do first.

page-first = What to do first
page-no-steps = No failures and no open questions in the checks that were made.
page-more-steps = More is to be done: see the table of further places.
page-further-steps = Further steps, in their order
page-on-tray = on the tray { $place }
page-wash-followed = (a wash followed)
page-least-thickness = least thickness { $thickness }

## What was not judged.

page-not-judged = Not judged
page-not-judged-lead = The verdict does not cover the following items. Inspect the impression by eye.
page-not-judged-and-why = What was not judged, and why
page-of = Of
page-why = Why
page-the-case = the case

## Cautions.

page-cautions = Cautions
page-caution-aid = This is an aid to inspection. It is not a medical device and makes no diagnosis; the licensed clinician decides, with the impression in hand.
page-caution-hygiene = Local regulations and infection-control rules come first. Clean and disinfect the impression before it is handled, scanned or shipped, and state with the parcel what was used and for how long.
page-caution-relief = Relieve a tray only out of the mouth, with eye and dust protection; feel for sharp edges and smooth them before it goes back.
page-caution-makers = The instructions of the makers of the elastomer and of the tray take precedence over this page.
page-caution-data = A scan of a mouth and what is made of it are health data: keep this page as such data are to be kept where you work.
