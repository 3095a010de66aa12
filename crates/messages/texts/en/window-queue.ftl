### The window: the list of cases, and what a person decides.

## The list.

queue-title = archproof: cases in { $folder }
queue-heading = Cases in { $folder }
queue-keys = Up, Down, Page Up, Page Down: choose · Enter: open · Esc: clear the search · F2, F3, F4: sheet, return note, report · F5: read again · F6, F7, F8: decide
queue-caution = An aid to inspection, not a medical device; the licensed clinician decides. Decisions and notes stay on this computer: write pseudonyms and initials, never names.
queue-search = search: case, check, zone, note
queue-open = Open
queue-read-again = Read again
queue-another-folder = Another folder …
queue-desk = Desk
queue-all = All { $count }
queue-chip = { $state } { $count }
queue-head-state = State
queue-head-case = Case
queue-head-about = What came of the check
queue-head-decision = Decision
queue-empty = No case yet. Cases that arrive in the folder show here by themselves.
queue-no-match = No case matches. Esc clears the search; 'All' shows every state.
queue-is-read-again = Read again.
queue-scans-alone = Scans without a case file: Enter puts them on the desk.
queue-not-checked = Not checked yet: Enter checks it.
queue-about = { $verdict }: { $cause } { $what }
queue-about-more = { $verdict }: { $cause } { $what }, and { $more } more
queue-folder-unreadable = { $path }: cannot be looked into ({ $reason })
queue-first-or-last = This is the { $which ->
    [first] first
   *[last] last
} case of the list. Esc goes back to it.

## What a case asks of a person.

state-to-look-at = To be looked at
state-to-return = To return
state-waiting = Waiting for the check
state-to-work-from = To be worked from
state-on-hold = On hold
state-decided = Decided
state-being-read = Being read

## Keys.

key-enter = Enter
key-page-up = Page Up
key-page-down = Page Down
key-open-scans = Ctrl O
key-open-folder = Ctrl Shift O
key-desk = Ctrl D

## The papers of a result.

paper-sheet = Sheet
paper-return-note = Return note
paper-report = Report
paper-no-return-note = This result has no return note: nothing is asked of the clinic, or it was checked without --return.
paper-missing = This result has no such page: it was checked with --no-report.
paper-no-program = { $path }: the system opens no program for it ({ $reason }); open it by hand
paper-opened = { $paper }: opened by the system.
paper-no-result = This case has no result yet. Enter checks it.

## The decision.

answer-returned = Returned
answer-worked-from = Worked from
answer-waiting-for = Waiting for
answer-button = { $answer } …
outcome-returned = returned
outcome-worked-from = worked from
outcome-waiting-for = waiting for { $what }
decision = { $outcome }, { $initials }, { $time }
decision-with-note = { $decision }: { $note }
decision-is = Decided: { $decision }
decision-made = Decided: { $decision }.
decision-none = No decision yet. F6 returned, F7 worked from, F8 waiting for.
decision-of-other-scans = An earlier decision was made for other scans.
decision-without-result = A case is decided once it has a result. Enter checks it.
decision-meanwhile = Meanwhile it was decided: { $decision }. Look at the case again, then decide.
decision-refused = { $path }: { $why }; correct it or remove it
decision-unreadable = cannot be read ({ $reason })
decision-is-none = is no decision ({ $reason })
decision-time = is no decision (the time must have its date and its offset from UTC)
initials-missing = Give your initials, such as AB.
initials-only = Give initials of at most { $most } capital letters, such as AB: names are not stored, only pseudonyms.
draft-waiting-for-what = Say what the case is waiting for.
draft-no-clock = The clock of this computer gives no usable time; set it, then save.
decide-previous = Previous
decide-next = Next
decide-list = List
decide-turn = { $number } of { $of }
decide-title = Decision on case { $case }
decide-save = Save (Enter)
decide-saved-as = Saved beside the results as decision.toml, with the time and the checksums of the scans. The results stay as they are.
decide-such-as = such as the lower impression
decide-note = Note
decide-note-hint = pseudonyms only, no names; may be empty
decide-initials = Initials
decide-initials-hint = at most 4 letters, such as AB
