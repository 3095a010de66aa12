### Why a command could not be carried out.

said-in-the-case-file = { $name } cannot be used with a case file: set it in the case file instead
said-case-name = { $name } needs a name of printable letters (a pseudonym, never a patient's name)
named-scan-refused = { $path }: line { $line } names a scan that cannot be read: { $refused }

## The shelf of empty trays.

shelf-folder = { $path }: cannot be looked into ({ $reason }); give the folder with the scans of the empty trays
shelf-no-trays = { $path }: holds no scan of a tray (STL, PLY, OBJ); scan each empty stock tray once and put the scans there
shelf-same = { $path }: { $one } and { $other } are the same scan; take one of them out of the folder
shelf-impression = { $path }: is the impression's own scan; take it out of the folder of the empty trays
shelf-scan = { $refused }; export this tray's scan again, or take the file out of the folder of the empty trays
fit-no-shelf = no trays are given: name the folder with their scans by --trays, or as trays in the protocol
fit-no-mouth = { $path }: shows no edentulous arch ({ $why }); give a scan of an impression, of the mouth or of a cast

## A case file that is proposed.

proposal-folder = { $path }: cannot be looked into ({ $reason }); give a folder that you may read
proposal-no-scans = { $path }: holds no scan (STL, PLY, OBJ); give another folder
proposal-in-the-way = { $path }: is a case file already; check it, or write a new one over it with --force
proposal-name = { $path }: the name is no valid text and cannot be written into a case file; rename the scan
ids-columns = line 1 needs the columns folder and id
ids-no-id = line { $line } needs an id of printable letters, a pseudonym
ids-no-scans = line { $line } names a folder that holds no scans
ids-twice = line { $line } gives a folder or an id a second time
ids-no-table = { $reason }

## Writing.

unwritten-no-folder = { $path }: could not be written: its folder does not exist; make it first
unwritten-permission = { $path }: could not be written: its folder may not be written to; choose another folder
unwritten-read-only = { $path }: could not be written: the disk is read-only; choose another folder
unwritten-full = { $path }: could not be written: the disk is full; make room and try again
unwritten-folder-there = { $path }: could not be written: a folder has this name; choose another name
unwritten-file-there = { $path }: could not be written: its folder is a file; choose another folder
unwritten-other = { $path }: could not be written: { $reason }; check the folder and the disk
unwritten-content = { $path }: could not be written: { $reason }
encode-ending = end its name in .ply, .stl or .obj
encode-no-colour = this format holds no colour, and the scan has some; end the name in .ply
encode-too-many = { $triangles } triangles are more than a binary STL can count (4,294,967,295)
results-unwritten = { $path }: cannot be written ({ $reason }); free space or choose another folder
results-no-table = the border's table cannot be made: { $reason }
results-no-picture = the report's pictures cannot be made: { $reason }
results-no-map = the thickness map cannot be made: { $reason }
demo-unwritten = { $path }: cannot be written ({ $reason }); free space or give another folder
demo-in-the-way = { $path }: is a case already; give another folder for the demonstration
new-file-unwritten = { $path }: cannot be written ({ $reason }); give a file that is not there yet
over-itself = { $path }: is the scan itself; give another file to write
output-unwritten = standard output cannot be written ({ $reason })
tables-unwritten = the tables cannot be written ({ $reason }); free space or give another folder
tables-no-csv = a CSV table cannot be made: { $reason }
tables-no-workbook = summary.xlsx cannot be made ({ $reason }); free space or give another folder
tables-no-parquet = a Parquet table cannot be made: { $reason }

## Results that are read back.

result-unreadable = { $path }: cannot be read ({ $reason }); give the folder that 'archproof check' wrote
result-of-another-version = { $path }: is no result of this version ({ $reason }); check the case again
baseline-unreadable = { $path }: cannot be read ({ $reason }); give a folder that 'archproof batch' wrote
baseline-too-few = { $path }: no jaw and stage has { $least } impressions with a known time; a baseline needs that many of one

## A folder of cases.

batch-folder = { $path }: cannot be looked through ({ $reason }); give a folder that can be read
batch-no-cases = { $path }: contains no case files and no scans that match the pattern; give another folder, or --scans PATTERN
batch-pattern = a pattern of scans is a file's name with one *, as in '*-upper.ply'
batch-unwritten = { $path }: cannot be written ({ $reason }); free space or give another folder
batch-in-use = { $path }: another run writes into it; wait for it, or give another folder
batch-into-itself = { $path }: is given for reading and for writing; give another folder with --out
batch-in-the-way = { $path }: holds results already; add --resume to go on with them, or give another folder
batch-unfinished = { $path }: holds no finished results; finish it with 'archproof batch … --resume' first
batch-no-results = { $path }: holds no results of 'archproof check' or 'archproof batch'; give the folder that they wrote
batch-unlike = { $path }: was made with a different version, different limits or a different shard count; only matching shards can be joined
batch-shard-twice = { $path }: repeats shard { $shard }; list each shard once
batch-shards-missing = shards { $shards } are missing; give the folders of all
no-threads = the threads could not be started ({ $reason }); try a smaller number with --threads

## Other commands.

unknown-code = '{ $code }' is not the code of a check{ $is ->
    [near] ; did you mean { $nearest }?
   *[far] {""}
}
unknown-code-of-all = { $refused } ('archproof explain' lists all codes)
unknown-topic = '{ $name }' is not a command or a topic; 'archproof help' lists them all
no-drawings = only the page on scanning has drawings: 'archproof help scanning --html FILE'
no-certified-length = the artefact's description certifies no length; give a diameter, a distance or a step
sheet-not-opened = the sheet was written but cannot be opened ({ $reason }); open it by hand
no-viewer = the window is a program of its own, archproof-viewer, and is neither beside this one nor on the PATH; install it with 'cargo install --path viewer --locked'
viewer-not-started = archproof-viewer cannot be started ({ $reason }); install it anew with 'cargo install --path viewer --locked'
explain-one = 'archproof explain CODE' prints the page of one.
help-topics = Topics ('archproof help TOPIC'):
page-written = Written: { $path }
clean-written = { $path }: { $triangles ->
    [one] 1 triangle
   *[other] { $triangles } triangles
}, { $vertices } vertices{ $colours ->
    [some] {" with colours"}
   *[none] {""}
}, { $format }, without any text
clean-reading = Reading: { $warning }
clean-attribute-bytes = the attribute bytes of its triangles were left out
protocol-written = Written to { $path }. Edit the limits you need, then run: archproof protocol check { $path }
protocol-usable = { $path }: can be used ({ $name })

## What is done with a path that is given by itself.

start-case-file = { $path }: a case file: it is checked. Results go into a folder beside it.
start-scan = { $path }: one scan: it is checked by itself, as an impression taken in one step, without its tray. Results go into a folder beside it.
start-scans = { $path }: { $folders ->
    [one] scans and no case file: a case file is proposed.
   *[other] { $folders } folders with scans and no case file: a case file is proposed for each.
}
start-open = Not checked: answer what is open in the case file first, then start again with it.
start-checked = { $path }: is checked. Results go into a folder beside it.
start-cases = { $path }: { $cases } cases, which are checked side by side.
proposal-left = { $path }: is a case file already and was left as it is
proposal-open = Open: { $question }
proposal-written = Wrote { $path }. Read it, then: archproof check { $path }
proposal-written-open = Wrote { $path }. Each open question is a comment in it; answer it there.
