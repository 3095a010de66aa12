### What `archproof demo` prints, and the README.txt beside its cases.

demo-written = The demonstration was written; all of it is invented. Check it with:
demo-read-me =
    Demonstration cases for archproof. Everything here is invented: the scans were
    made by formula, and there is no such patient.

        archproof check first-pass.toml

    With the patient still in the chair: a maxillary impression before its wash, in a stock tray,
    scanned from all sides, and a scan of the same tray, empty, which lies in
    coordinates of its own. The tray was pressed up too far on the patient's right:
    it shows through on the crest of the ridge there and on the palate beside the
    midline. On the left the material is thin on the facial slope in front. It
    should say `rework`, name the two places where tray shows and the thin one, and
    leave report.html, the thickness map and result.json in the folder archproof-DEMO-1.

        archproof check case.toml

    Before the parcel goes: both jaws, each before and after the wash, with its tray, the scan
    of the jaw-relation record, and what was packed. The wash covers the palate and
    the thin place, but over the bare crest there is hardly any of it: tray still
    shows. On the lower jaw the lingual border is short on the patient's left, and
    air left a pit on the ridge on the right. The record was not packed. It should
    say `rework`, and show where each of these lies.
demo-read-me-in-pieces =
    A demonstration case in pieces for archproof. Everything here is invented: the scans
    were made by formula, and there is no such patient.

        archproof check case.toml

    Before the parcel goes: both washes were taken apart for the jaw relation, which was
    recorded between their front parts. The upper impression was cut apart with its tray and
    scanned only afterwards: each part lies in coordinates of its own, and the scan of the
    whole empty tray tells how they belong together. The lower impression was scanned
    whole. Its tray is one in two pieces, of which only the separate scans are at hand.
    Over the upper right ridge, behind the cut, there is hardly any wash: tray shows. On the
    lower jaw the lingual border is short on the patient's left, and air left a pit on
    the ridge on the right. The upper back part was not packed. It should say `rework`, show
    where each of these lies, and leave its results in the folder archproof-DEMO-4.
