//! The words of refusals: places in a file, what is counted in it, what is wrong with a header.

use mesh::read::{Foreign, Place};
use mesh::{Format, MeshError};
use messages::{Message, message};

pub(super) fn at(place: &Place) -> Message {
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
#[must_use]
pub fn format_name(format: Format) -> Message {
    match format {
        Format::StlBinary => message!("format-stl-binary"),
        Format::StlAscii => message!("format-stl-ascii"),
        Format::PlyBinaryLe => message!("format-ply-binary-le"),
        Format::PlyBinaryBe => message!("format-ply-binary-be"),
        Format::PlyAscii => message!("format-ply-ascii"),
        Format::Obj => message!("format-obj"),
    }
}

pub(super) fn foreign(what: Foreign) -> Message {
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
pub(super) fn item(items: &str) -> Message {
    match items {
        "triangles" => message!("items-triangles"),
        "vertices" => message!("items-vertices"),
        "faces" => message!("items-faces"),
        "triangle strips" => message!("items-strips"),
        "records of another element" => message!("items-other"),
        other => Message::verbatim(other),
    }
}

pub(super) fn bad_number(problem: &str) -> Message {
    match problem {
        "a number that should be whole is not" => message!("number-not-whole"),
        "the length of a list is negative" => message!("number-negative-length"),
        other => Message::verbatim(other),
    }
}

/// What belongs at a place: a word of the format, which is the same in every language.
pub(super) fn expected_word(expected: &str) -> Message {
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

pub(super) fn of_header(problem: &str) -> Message {
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
        "a property comes before the first element" => message!("header-property-first"),
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

pub(super) fn of_mesh(error: &MeshError) -> Message {
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
