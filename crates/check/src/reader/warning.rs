//! What was odd about a scan that could be read all the same.

use geometry::winding::Turned;
use mesh::read::ReadWarning;
use messages::{Message, Value, message};

/// What was odd about a file, as a message.
#[must_use]
pub fn warned(warning: &ReadWarning) -> Message {
    use ReadWarning as W;
    match warning {
        W::WrongExtension { named, format } => message!(
            "read-wrong-extension",
            format = super::words::format_name(*format),
            named = *named
        ),
        W::ByteOrderMark => message!("read-byte-order-mark"),
        W::TrailingBytes { bytes } => message!("read-trailing-bytes", bytes = *bytes),
        W::SurplusValues => message!("read-surplus-values"),
        W::SecondScan { triangles } => message!("read-second-scan", triangles = *triangles),
        W::WrongCount { declared, held } => {
            message!("read-wrong-count", declared = *declared, held = *held)
        }
        W::NoEndSolid => message!("read-no-endsolid"),
        W::SeveralSolids { solids } => message!("read-several-solids", solids = *solids),
        W::FacesWithoutArea { count } => message!("read-faces-without-area", count = *count),
        W::RepeatedCorners { count } => message!("read-repeated-corners", count = *count),
        W::DuplicateTriangles { count, turned } => {
            message!("read-duplicate-triangles", count = *count, turned = *turned)
        }
        W::UnusedVertices { count, of } => {
            message!("read-unused-vertices", count = *count, of = *of)
        }
        W::JoinedNearCorners { joined, tolerance } => message!(
            "read-joined-corners",
            joined = *joined,
            tolerance = Value::figure(format!("{tolerance:.2e}"))
        ),
        W::CoarseCoordinates {
            largest,
            step,
            size,
        } => message!(
            "read-coarse-coordinates",
            largest = Value::figure(format!("{largest:.3e}")),
            step = Value::figure(format!("{step:.2e}")),
            size = Value::figure(format!("{size:.3e}"))
        ),
        W::NormalsAgainstTriangles => message!("read-normals-against-triangles"),
        W::WholeNumbers => message!("read-whole-numbers"),
        W::FaceColours => message!("read-face-colours"),
        W::TexturePicture => message!("read-texture-picture"),
        // The readers may learn to say more.
        other => Message::verbatim(other.to_string()),
    }
}

/// What was turned so that a scan faces outward; `None` where nothing was.
#[must_use]
pub fn turned(turned: &Turned) -> Option<Message> {
    let against = turned.against_neighbours;
    match (against > 0, turned.whole) {
        (false, false) => None,
        (true, false) => Some(message!("read-turned", count = against)),
        (false, true) => Some(message!("read-inside-out")),
        (true, true) => Some(message!("read-turned-and-inside-out", count = against)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use mesh::Format;

    fn every_warning() -> Vec<ReadWarning> {
        use ReadWarning as W;
        let mut all = vec![
            W::WrongExtension {
                named: "ply",
                format: Format::StlBinary,
            },
            W::ByteOrderMark,
            W::SurplusValues,
            W::WrongCount {
                declared: 12,
                held: 14,
            },
            W::NoEndSolid,
            W::SeveralSolids { solids: 3 },
            W::UnusedVertices { count: 2, of: 9 },
            W::JoinedNearCorners {
                joined: 7,
                tolerance: 1.25e-5,
            },
            W::CoarseCoordinates {
                largest: 1.0e7,
                step: 1.0,
                size: 80.5,
            },
            W::NormalsAgainstTriangles,
            W::WholeNumbers,
            W::FaceColours,
            W::TexturePicture,
        ];
        for count in [1, 5] {
            all.extend([
                W::TrailingBytes { bytes: count },
                W::SecondScan { triangles: count },
                W::FacesWithoutArea { count },
                W::RepeatedCorners { count },
                W::DuplicateTriangles {
                    count,
                    turned: count - 1,
                },
            ]);
        }
        all
    }

    #[test]
    fn the_catalogue_says_in_english_what_the_readers_say() {
        for warning in every_warning() {
            assert_eq!(warned(&warning).to_string(), warning.to_string());
            assert_ne!(warned(&warning).key(), "verbatim", "{warning}");
        }
        for against_neighbours in [0, 3] {
            for whole in [false, true] {
                let done = Turned {
                    against_neighbours,
                    whole,
                };
                assert_eq!(turned(&done).map(String::from), done.in_words());
            }
        }
    }
}
