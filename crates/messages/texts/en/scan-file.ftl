### What the readers of scan files say: what was odd and how it was read, and why a file was
### refused.

## Read all the same.

read-wrong-extension = is { $format } although its name ends in .{ $named }; the contents were believed
read-byte-order-mark = begins with a UTF-8 byte order mark; it was passed over
read-trailing-bytes = { $bytes ->
    [one] 1 byte
   *[other] { $bytes } bytes
} after the end of the scan left out
read-surplus-values = lines hold more numbers than the header declares; these were left out
read-second-scan = a second scan of { $triangles ->
    [one] 1 triangle
   *[other] { $triangles } triangles
} follows in the same file and was left out; give each scan its own file
read-wrong-count = the header declares { $declared } triangles but exactly { $held } are there; all { $held } were read
read-no-endsolid = has no closing 'endsolid' line; the file may be cut short after its last triangle
read-several-solids = { $solids } solids in one file were read as one scan
read-faces-without-area = { $count ->
    [one] 1 face
   *[other] { $count } faces
} with fewer than 3 corners left out
read-repeated-corners = { $count ->
    [one] 1 triangle
   *[other] { $count } triangles
} with two equal corners left out
read-duplicate-triangles = { $count ->
    [one] 1 triangle
   *[other] { $count } triangles
} exactly on another one left out ({ $turned } facing the other way)
read-unused-vertices = { $count } of { $of } vertices left out, which belong to no triangle
read-joined-corners = the triangles did not share their corners: { $joined } corners were joined to another within { $tolerance } (file units)
read-coarse-coordinates = coordinates near { $largest } can only be stored in steps of { $step } (file units), coarse for a scan { $size } long; export it nearer to the origin
read-normals-against-triangles = its stored normals face the other way than its triangles: it was turned inside out or mirrored
read-whole-numbers = coordinates are stored as whole numbers, in steps of 1; check the unit
read-face-colours = colour is given per face, not per vertex, and was not used
read-texture-picture = colour is in a picture beside the file and was not used
read-turned = { $count } triangles faced the other way than their neighbours and were turned
read-inside-out = the scan was inside out and was turned; if software has mirrored it, right and left are exchanged
read-turned-and-inside-out = { $count } triangles faced the other way than their neighbours and were turned; the scan was inside out and was turned; if software has mirrored it, right and left are exchanged
read-other-landmarks = the landmarks file is of another scan, by its checksum, and was not used
read-of-one = { $kind ->
    [part] part
   *[piece] piece
} { $number }: { $said }

## Refused: the file.

refused-missing = there is no such file; check the name
refused-dangling-link = is a link to a file that does not exist; give the scan itself
refused-link-loop = is a link that leads round in a loop; give the scan itself
refused-folder = is a folder; give one scan file
refused-special = is not an ordinary file (a device, pipe or socket); give a scan file
refused-permission = cannot be read: permission denied; ask for read access
refused-too-large = has { $bytes } bytes, more than the { $most } that are read; export the scan with fewer triangles
refused-changed = changed while it was being read ({ $before } bytes, then { $after }); wait until it has been copied
refused-system = could not be read ({ $reason }); check the disk or the connection

## Refused: what is in it.

refused-empty = is empty; export the scan again
refused-too-short = has only { $bytes } bytes, too few for a scan; export the scan again
refused-unrecognised = is neither STL, PLY nor OBJ; export the scan as binary STL or PLY
refused-cut-short = declares { $declared } { $items } but holds { $held }: the file is cut short; export or copy it again
refused-not-counted = declares no triangles although { $bytes } bytes follow, which are no whole number of triangles; export the scan again
refused-vertex-count = declares { $declared } vertices but contains fewer: the header does not match the data; export the scan again
refused-no-room = declares { $declared } { $items } but its size leaves room for at most { $room }: the file is cut short or its header is damaged; export or copy it again
refused-ends-inside = { $place }: the file ends inside triangle { $number }; export or copy it again
refused-no-triangles = holds no triangles; export the scan as a mesh
refused-only-degenerate = holds { $dropped } triangles, none with three different corners; export the scan again
refused-point-cloud = is a point cloud ({ $points } points, no triangles); export a mesh
refused-not-finite = { $place }: a coordinate is not a finite number; repair the scan and export it again
refused-out-of-proportion = { $place }: the coordinate { $value } is far outside any plausible scan; repair the scan and export it again
refused-decimal-comma = { $place }: a number with a decimal comma; export again with decimal points (set the exporting program to English numbers)
refused-not-a-number = { $place }: something that is not a number where a number belongs; export the scan again
refused-bad-number = { $place }: { $problem }; export the scan again
refused-expected = { $place }: { $expected } expected; export the scan again
refused-corners = { $place }: triangle { $triangle } has { $corners } corners, not 3; export the scan again
refused-header = { $place }: in the PLY header, { $problem }; export the scan again
refused-index = { $place }: face { $face } refers to vertex { $index }, but the file has { $vertices } vertices; export the scan again
refused-list-too-long = { $place }: a list of { $length } values, more than the rest of the file can hold; export or copy it again
refused-too-many-triangles = holds more than the { $most } triangles that are read; export the scan with fewer
refused-too-many-vertices = holds more than the { $most } vertices that are read; export the scan with fewer
refused-mesh = { $problem }; export the scan again

## Kinds of files that are no scans.

foreign-zip = is a zip archive; unpack it first
foreign-gzip = is a gzip archive; unpack it first
foreign-archive = is a compressed archive; unpack it first
foreign-html = is a web page, not a scan (a failed download?); fetch the file again
foreign-json = is a JSON text, not a scan (a failed download?); fetch the file again
foreign-xml = is an XML file, not a scan; give the scan itself, as STL or PLY
foreign-pdf = is a PDF document, not a scan; give the scan itself, as STL or PLY
foreign-picture = is a picture, not a scan; give the scan itself, as STL or PLY
foreign-utf16 = is text in UTF-16; save it as plain ASCII or UTF-8
foreign-gltf = is a binary glTF scene; export the scan as binary STL or PLY
foreign-dicom = is a DICOM file; export the scan as binary STL or PLY
foreign-off = is an OFF mesh; export the scan as binary STL or PLY

## Places in a file, and what is there.

at-line = line { $line }
at-triangle = triangle { $number } (byte { $byte })
at-byte = byte { $byte }
at-vertex = vertex { $index }
format-stl-binary = binary STL
format-stl-ascii = ASCII STL
format-ply-binary-le = binary little-endian PLY
format-ply-binary-be = binary big-endian PLY
format-ply-ascii = ASCII PLY
format-obj = OBJ
items-triangles = triangles
items-vertices = vertices
items-faces = faces
items-strips = triangle strips
items-other = records of another element
number-not-whole = a number that should be whole is not
number-negative-length = the length of a list is negative
expected-coordinates = three coordinates after 'v'
header-no-line = there is no '{ $word }' line
header-no-vertices = there are faces but no vertices
header-no-xyz = the vertices do not have all of x, y and z
header-one-byte = coordinates of one byte are too coarse for a scan
header-no-indices = the faces have no list of vertex indices
header-format = the format is not one of ascii, binary_little_endian and binary_big_endian
header-property-first = a property comes before the first element
header-unknown-word = a line begins with no known word
header-element-name = an element has no name
header-element-count = an element's count is not a whole number from 0 up
header-property-type = a property has an unknown type
header-no-type = a property has no type
header-property-name = a property has no name
header-list-length = a list's length is not of a whole-number type
mesh-vertex = triangle { $triangle } refers to vertex { $vertex }, but there are { $vertices }
mesh-not-finite = vertex { $vertex } has a coordinate that is not a finite number
mesh-colours = { $colours } colours for { $vertices } vertices
mesh-too-many-vertices = { $vertices } vertices are more than a mesh can index (4,294,967,295)
