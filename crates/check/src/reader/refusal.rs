//! Why a scan was refused.

use judge::system_says;
use mesh::read::{
    Foreign, MAX_FILE_BYTES, MAX_TRIANGLES, MAX_VERTICES, OpenError, ParseError, Place,
};
use mesh::{Format, MeshError, ReadError, read::shown_path};
use messages::{Message, message};

/// Why a scan was refused, as a message that names its file.
#[must_use]
pub fn refused(error: &ReadError) -> Message {
    message!(
        "of-file",
        path = shown_path(error.path()),
        problem = why_refused(error)
    )
}

/// Why a scan was refused and what to do, without the file's name.
#[must_use]
pub fn why_refused(error: &ReadError) -> Message {
    match error {
        ReadError::Open { reason, .. } => unopened(reason),
        ReadError::Content { reason, .. } => unreadable(reason),
        // Other refusals may come.
        other => Message::verbatim(other.reason()),
    }
}

fn unopened(reason: &OpenError) -> Message {
    match reason {
        OpenError::Missing => message!("refused-missing"),
        OpenError::DanglingLink => message!("refused-dangling-link"),
        OpenError::LinkLoop => message!("refused-link-loop"),
        OpenError::Directory => message!("refused-folder"),
        OpenError::Special => message!("refused-special"),
        OpenError::PermissionDenied => message!("refused-permission"),
        OpenError::TooLarge(bytes) => message!(
            "refused-too-large",
            bytes = bytes.to_string(),
            most = MAX_FILE_BYTES.to_string()
        ),
        OpenError::Changed { before, after } => message!(
            "refused-changed",
            before = before.to_string(),
            after = after.to_string()
        ),
        OpenError::Io(error) => message!("refused-system", reason = system_says(error)),
        other => Message::verbatim(other.to_string()),
    }
}

fn unreadable(reason: &ParseError) -> Message {
    use ParseError as P;
    match reason {
        P::Empty => message!("refused-empty"),
        P::TooShort { bytes } => message!("refused-too-short", bytes = *bytes),
        P::Foreign { what } => foreign(*what),
        P::Unrecognised => message!("refused-unrecognised"),
        P::CutShort {
            items,
            declared,
            held,
        } => message!(
            "refused-cut-short",
            declared = declared.to_string(),
            items = item(items),
            held = held.to_string()
        ),
        P::NotCounted { bytes } => message!("refused-not-counted", bytes = bytes.to_string()),
        P::VertexCount { declared } => {
            message!("refused-vertex-count", declared = declared.to_string())
        }
        P::NoRoom {
            items,
            declared,
            room,
        } => message!(
            "refused-no-room",
            declared = declared.to_string(),
            items = item(items),
            room = room.to_string()
        ),
        P::EndsInside { place, number, .. } => message!(
            "refused-ends-inside",
            place = at(place),
            number = number.to_string()
        ),
        P::NoTriangles => message!("refused-no-triangles"),
        P::OnlyDegenerate { dropped } => {
            message!("refused-only-degenerate", dropped = dropped.to_string())
        }
        P::PointCloud { points } => message!("refused-point-cloud", points = points.to_string()),
        P::TooManyTriangles => {
            message!(
                "refused-too-many-triangles",
                most = MAX_TRIANGLES.to_string()
            )
        }
        P::TooManyVertices => {
            message!("refused-too-many-vertices", most = MAX_VERTICES.to_string())
        }
        P::Mesh(error) => message!("refused-mesh", problem = of_mesh(error)),
        other => misplaced(other),
    }
}

/// What is wrong at one place of a file.
fn misplaced(reason: &ParseError) -> Message {
    use ParseError as P;
    match reason {
        P::NotFinite { place } => message!("refused-not-finite", place = at(place)),
        P::OutOfProportion { place, value } => message!(
            "refused-out-of-proportion",
            place = at(place),
            value = format!("{value:e}")
        ),
        P::DecimalComma { place } => message!("refused-decimal-comma", place = at(place)),
        P::NotANumber { place } => message!("refused-not-a-number", place = at(place)),
        P::BadNumber { place, problem } => message!(
            "refused-bad-number",
            place = at(place),
            problem = bad_number(problem)
        ),
        P::Expected { place, expected } => message!(
            "refused-expected",
            place = at(place),
            expected = expected_word(expected)
        ),
        P::Corners {
            place,
            triangle,
            corners,
        } => message!(
            "refused-corners",
            place = at(place),
            triangle = triangle.to_string(),
            corners = *corners
        ),
        P::Header { place, problem } => message!(
            "refused-header",
            place = at(place),
            problem = of_header(problem)
        ),
        P::IndexOutOfRange {
            place,
            face,
            index,
            vertices,
        } => message!(
            "refused-index",
            place = at(place),
            face = face.to_string(),
            index = index.to_string(),
            vertices = vertices.to_string()
        ),
        P::ListTooLong { place, length } => message!(
            "refused-list-too-long",
            place = at(place),
            length = length.to_string()
        ),
        other => Message::verbatim(other.to_string()),
    }
}

fn at(place: &Place) -> Message {
    match place {
        Place::Line(line) => message!("at-line", line = line.to_string()),
        Place::Triangle { number, byte } => message!(
            "at-triangle",
            number = number.to_string(),
            byte = byte.to_string()
        ),
        Place::Byte(byte) => message!("at-byte", byte = byte.to_string()),
        Place::Vertex(index) => message!("at-vertex", index = index.to_string()),
    }
}

/// The name of a format.
pub(super) fn format(format: Format) -> Message {
    match format {
        Format::StlBinary => message!("format-stl-binary"),
        Format::StlAscii => message!("format-stl-ascii"),
        Format::PlyBinaryLe => message!("format-ply-binary-le"),
        Format::PlyBinaryBe => message!("format-ply-binary-be"),
        Format::PlyAscii => message!("format-ply-ascii"),
        Format::Obj => message!("format-obj"),
    }
}

fn foreign(what: Foreign) -> Message {
    match what {
        Foreign::Zip => message!("foreign-zip"),
        Foreign::Gzip => message!("foreign-gzip"),
        Foreign::Archive => message!("foreign-archive"),
        Foreign::Html => message!("foreign-html"),
        Foreign::Xml => message!("foreign-xml"),
        Foreign::Json => message!("foreign-json"),
        Foreign::Pdf => message!("foreign-pdf"),
        Foreign::Picture => message!("foreign-picture"),
        Foreign::Utf16 => message!("foreign-utf16"),
        Foreign::Gltf => message!("foreign-gltf"),
        Foreign::Dicom => message!("foreign-dicom"),
        Foreign::Off => message!("foreign-off"),
    }
}

/// Things that are counted in a file, from the reader's word for them.
fn item(items: &str) -> Message {
    match items {
        "triangles" => message!("items-triangles"),
        "vertices" => message!("items-vertices"),
        "faces" => message!("items-faces"),
        "triangle strips" => message!("items-strips"),
        "records of another element" => message!("items-other"),
        other => Message::verbatim(other),
    }
}

fn bad_number(problem: &str) -> Message {
    match problem {
        "a number that should be whole is not" => message!("number-not-whole"),
        "the length of a list is negative" => message!("number-negative-length"),
        other => Message::verbatim(other),
    }
}

/// What belongs at a place: a word of the format, which is the same in every language.
fn expected_word(expected: &str) -> Message {
    match expected {
        "'facet' or 'endsolid'" => either("'facet'", "'endsolid'"),
        "'vertex' or 'endloop'" => either("'vertex'", "'endloop'"),
        "three coordinates after 'v'" => message!("expected-coordinates"),
        other => Message::verbatim(other),
    }
}

fn either(one: &str, other: &str) -> Message {
    message!("either", one = one, other = other)
}

fn of_header(problem: &str) -> Message {
    match problem {
        "there is no 'end_header' line" => message!("header-no-line", word = "end_header"),
        "there is no 'format' line" => message!("header-no-line", word = "format"),
        "there are faces but no vertices" => message!("header-no-vertices"),
        "the vertices do not have all of x, y and z" => message!("header-no-xyz"),
        "coordinates of one byte are too coarse for a scan" => message!("header-one-byte"),
        "the faces have no list of vertex indices" => message!("header-no-indices"),
        "the format is not one of ascii, binary_little_endian and binary_big_endian" => {
            message!("header-format")
        }
        "a property stands before the first element" => message!("header-property-first"),
        "a line begins with no known word" => message!("header-unknown-word"),
        "an element has no name" => message!("header-element-name"),
        "an element's count is not a whole number from 0 up" => message!("header-element-count"),
        "a property has an unknown type" => message!("header-property-type"),
        "a property has no type" => message!("header-no-type"),
        "a property has no name" => message!("header-property-name"),
        "a list's length is not of a whole-number type" => message!("header-list-length"),
        other => Message::verbatim(other),
    }
}

fn of_mesh(error: &MeshError) -> Message {
    match error {
        MeshError::VertexOutOfRange {
            triangle,
            vertex,
            vertices,
        } => message!(
            "mesh-vertex",
            triangle = triangle.to_string(),
            vertex = vertex.to_string(),
            vertices = vertices.to_string()
        ),
        MeshError::NotFinite { vertex } => {
            message!("mesh-not-finite", vertex = vertex.to_string())
        }
        MeshError::ColourCount { colours, vertices } => message!(
            "mesh-colours",
            colours = colours.to_string(),
            vertices = vertices.to_string()
        ),
        MeshError::TooManyVertices(vertices) => {
            message!("mesh-too-many-vertices", vertices = vertices.to_string())
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io;

    const PLACES: [Place; 4] = [
        Place::Line(3),
        Place::Triangle {
            number: 2,
            byte: 134,
        },
        Place::Byte(80),
        Place::Vertex(9),
    ];

    fn every_refusal() -> Vec<ParseError> {
        use ParseError as P;
        let [line, triangle, byte, vertex] = PLACES;
        let mut all = vec![
            P::Empty,
            P::TooShort { bytes: 7 },
            P::Unrecognised,
            P::NotCounted { bytes: 70 },
            P::VertexCount { declared: 12 },
            P::EndsInside {
                place: line,
                item: "triangle",
                number: 4,
            },
            P::NoTriangles,
            P::OnlyDegenerate { dropped: 2 },
            P::PointCloud { points: 100 },
            P::NotFinite { place: triangle },
            P::OutOfProportion {
                place: vertex,
                value: 1.5e30,
            },
            P::DecimalComma { place: line },
            P::NotANumber { place: byte },
            P::Corners {
                place: line,
                triangle: 2,
                corners: 4,
            },
            P::IndexOutOfRange {
                place: byte,
                face: 1,
                index: -1,
                vertices: 3,
            },
            P::ListTooLong {
                place: byte,
                length: 1_000_000,
            },
            P::TooManyTriangles,
            P::TooManyVertices,
            P::Mesh(MeshError::VertexOutOfRange {
                triangle: 0,
                vertex: 9,
                vertices: 3,
            }),
            P::Mesh(MeshError::NotFinite { vertex: 1 }),
            P::Mesh(MeshError::ColourCount {
                colours: 1,
                vertices: 2,
            }),
            P::Mesh(MeshError::TooManyVertices(5_000_000_000)),
        ];
        for items in [
            "triangles",
            "vertices",
            "faces",
            "triangle strips",
            "records of another element",
        ] {
            let (declared, held, room) = (10, 4, 6);
            all.push(P::CutShort {
                items,
                declared,
                held,
            });
            all.push(P::NoRoom {
                items,
                declared,
                room,
            });
        }
        all.extend(
            [
                Foreign::Zip,
                Foreign::Gzip,
                Foreign::Archive,
                Foreign::Html,
                Foreign::Xml,
                Foreign::Json,
                Foreign::Pdf,
                Foreign::Picture,
                Foreign::Utf16,
                Foreign::Gltf,
                Foreign::Dicom,
                Foreign::Off,
            ]
            .map(|what| P::Foreign { what }),
        );
        let place = line;
        all.extend(
            [
                "'facet' or 'endsolid'",
                "'vertex' or 'endloop'",
                "'normal'",
                "three coordinates after 'v'",
            ]
            .map(|expected| P::Expected { place, expected }),
        );
        all
    }

    #[test]
    fn the_catalogue_says_in_english_what_the_readers_say() {
        for reason in every_refusal() {
            let said = unreadable(&reason);
            assert_eq!(said.to_string(), reason.to_string());
            assert_ne!(said.key(), "verbatim", "{reason}");
        }
        let system = io::Error::from(io::ErrorKind::TimedOut);
        for reason in [
            OpenError::Missing,
            OpenError::DanglingLink,
            OpenError::LinkLoop,
            OpenError::Directory,
            OpenError::Special,
            OpenError::PermissionDenied,
            OpenError::TooLarge(5_000_000_000),
            OpenError::Changed {
                before: 1,
                after: 2,
            },
            OpenError::Io(system),
        ] {
            let said = unopened(&reason);
            assert_eq!(said.to_string(), reason.to_string());
            assert_ne!(said.key(), "verbatim", "{reason}");
        }
    }

    /// What the readers find wrong with a header or a number is named in their sources.
    #[test]
    fn every_problem_of_a_header_has_its_message() {
        let sources = [
            include_str!("../../../mesh/src/read/ply.rs"),
            include_str!("../../../mesh/src/read/ply_header.rs"),
            include_str!("../../../mesh/src/read/ply_values.rs"),
        ];
        let sentence = |text: &&str| text.split(' ').count() > 3 && !text.contains('\n');
        let said = sources.iter().flat_map(|source| {
            let code = source.split("#[cfg(test)]").next().unwrap_or_default();
            code.lines()
                .filter(|line| !line.trim_start().starts_with("//"))
                .flat_map(|line| line.split('"').skip(1).step_by(2))
                .filter(sentence)
                .collect::<Vec<_>>()
        });
        let mut problems = 0;
        for problem in said {
            let message = match of_header(problem) {
                other if other.key() == "verbatim" && problem != "records of another element" => {
                    bad_number(problem)
                }
                own => own,
            };
            let message = match message {
                other if other.key() == "verbatim" => item(problem),
                own => own,
            };
            assert_ne!(message.key(), "verbatim", "{problem}");
            assert_eq!(message.to_string(), problem);
            problems += 1;
        }
        assert!(problems >= 17, "{problems}");
    }
}
