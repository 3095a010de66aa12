### A case proposed from the scans of a folder: reasons, remarks, questions and their answers.

## Why a scan is taken for something, and what speaks against it. They are joined by "; ".

placed-and = { $what }; { $more }
placed-as-stated = as stated
placed-see-question = see the question
placed-record = an upper and a lower impression lie in it, opposite each other
placed-same = the same scan as { $other }
placed-unreadable = it cannot be read
placed-impression = it shows a { $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression
placed-jaw-open = its jaw is not clear from its shape
placed-tray-open = no impression here shows whose tray it is
placed-stage-stated = stage as stated
placed-wash = in the tray of { $first }, { $by } mm over it
placed-first-pass = in the tray of { $wash }, under it
placed-tray = it fits { $shares }
tray-share = { $share } % of the outer surface of { $impression }
remark-not-seen = not seen on { $impression }: { $why }
remark-older = its file is the older of the two, which is weak evidence
remark-name = the file's name suggests something else, which is weak evidence
trial-same-tray = both show the same empty tray
trial-no-impression = no impression is seen

## What the surfaces leave open.

ask-unreadable = May a scan that cannot be read be left out of the case? { $refused }
ask-what = What is { $name }? It shows no whole impression: { $what }.
ask-record = Is { $name } the jaw-relation record? It looks like a { $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression, yet { $other } lies in it.
ask-jaw = Which jaw does { $name } show? Its shape suggests the { $jaw ->
    [maxillary] upper
   *[mandibular] lower
} jaw, but not clearly.
ask-jaw-named = Which jaw does { $name } show? Its shape suggests the { $jaw ->
    [maxillary] upper
   *[mandibular] lower
} jaw, the file's name the other one.
ask-tray = Is { $name } a tray of this case? It fits none of the impressions.
ask-tray-wall = Is { $name } a tray of this case? It fits none of the impressions; its wall of { $wall } mm is that of a tray or a denture base.
ask-tray-jaw = Of which jaw is the tray { $name }? It fits { $impressions }.
ask-which = Which is the { $role }: { $names }?
ask-one-step = The case has a { $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression that was stated to be one-step, and one of a wash technique. Which belongs to the case?
ask-stage = At which stage is the { $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression { $name }?
ask-stage-alone = One scan alone does not show it.
ask-stage-several = Several impressions of this jaw lie here.
ask-order = Which of the { $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impressions { $one } and { $other } is the wash?
ask-order-not-compared = They were not compared.
ask-order-not-comparable = They cannot be compared: { $why }.
ask-order-alike = They differ by { $by } mm, and neither lies clearly over the other.
ask-order-stated-otherwise = What was stated is not what the surfaces show.

## Answers.

choice-part = part of the { $jaw ->
    [maxillary] maxillary
   *[mandibular] mandibular
} impression, which was cut apart
choice-pieces = all of them: they are pieces of one tray
choice-relieved = { $before }; { $after } is the same tray after relief
choice-order = { $first } before the wash, { $wash } the wash
choice-leave-out = { $kept }; leave out { $other }
choice-record = { $kept }; the jaw-relation record is { $other }
choice-parts = both: parts of one impression, which was cut apart ({ $impression })
choice-number = Number (1 to { $most }), or Enter to leave it open:
choice-not-listed = Enter a number from the list.

## Comments in the case file.

comment-proposed = Proposed by archproof from what the scans show. Read it before you use it;
comment-proposed-help = 'archproof help case-file' lists what else can be given.
comment-pseudonym = a pseudonym, never a name
comment-question = QUESTION: { $question }
comment-answers = Remove '# ' before what is right, and before its section:
comment-left-out = Left out: { $name }: { $why }
