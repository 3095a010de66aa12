//! Why a scan was refused.

use super::words::{at, bad_number, expected_word, foreign, item, of_header, of_mesh};
use judge::system_says;
use mesh::ReadError;
use mesh::read::{MAX_FILE_BYTES, MAX_TRIANGLES, MAX_VERTICES, OpenError, ParseError, shown_path};
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

#[cfg(test)]
mod tests {
    use super::*;
    use mesh::MeshError;
    use mesh::read::{Foreign, Place};
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
}
