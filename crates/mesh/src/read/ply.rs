//! PLY, text or binary in either byte order.
//!
//! One reader for all encodings walks through the elements as the header
//! declares them, so unknown elements and properties cost nothing and none of
//! them can shift the ones that matter. It is our own because what people send
//! is often what general readers refuse or misread: records wrapped over lines,
//! lone CR line ends, indices out of range; and because theirs say neither the
//! byte nor the face, and quote the file's text. The tests hold it against one.

use super::error::{ParseError, Place};
use super::format::Format;
use super::limits::{MAX_TRIANGLES, MAX_VERTICES};
use super::ply_colour::Colours;
use super::ply_faces::{Faces, indices_of};
use super::ply_header::{self, Element, Header, Scalar, Shape};
use super::ply_values::{Binary, LineByLine, Missing, Values, cut_short, list_length};
use super::ply_vertices::Vertices;
use super::scan::Parsed;
use super::stored_normals::{self, Tally};
use super::surface::{Stored, Surface};
use super::text::{Words, without_byte_order_mark};
use super::warning::ReadWarning;
use nalgebra::Vector3;

/// Reads a PLY file.
pub(super) fn parse(bytes: &[u8]) -> Result<Parsed, ParseError> {
    let text = without_byte_order_mark(bytes);
    let mark = bytes.len() - text.len();
    let header = ply_header::parse(text)?;
    check_there_is_a_surface(&header)?;
    let start = mark + header.length;
    let body = match header.format {
        Format::PlyBinaryLe => Body::read(&header, Binary::<false>::new(bytes, start)),
        Format::PlyBinaryBe => Body::read(&header, Binary::<true>::new(bytes, start)),
        _ => read_text(&header, Words::new(&bytes[start..], header.lines + 1)),
    }?;
    body.into_parsed(&header, mark > 0)
}

/// Reads a text body as one run of numbers, wherever lines end. Where that
/// does not come out even, the file may have one record a line with more
/// numbers on it than the header declares.
fn read_text(header: &Header, words: Words<'_>) -> Result<Body, ParseError> {
    let as_one_run = Body::read(header, words.clone());
    if as_one_run.as_ref().is_ok_and(|body| body.left == 0) {
        return as_one_run;
    }
    // Dropped before the second attempt: two would take twice the memory.
    let fault = as_one_run.err();
    let line_by_line = Body::read(header, LineByLine::new(words.clone()));
    match (line_by_line, fault) {
        (Ok(body), _) if body.left == 0 => Ok(body),
        (_, Some(fault)) => Err(fault),
        (attempt, None) => {
            drop(attempt);
            Body::read(header, words)
        }
    }
}

/// Refuses, before the body is read, a header without what a surface needs.
fn check_there_is_a_surface(header: &Header) -> Result<(), ParseError> {
    let wrong = |problem| ParseError::Header {
        place: Place::Line(header.lines),
        problem,
    };
    let count = |name| header.element(name).map_or(0, |e| e.count);
    let (points, faces) = (count("vertex"), count("face"));
    if faces == 0 && count("tristrips") == 0 {
        return Err(match points {
            0 => ParseError::NoTriangles,
            points => ParseError::PointCloud { points },
        });
    }
    if faces > MAX_TRIANGLES {
        return Err(ParseError::TooManyTriangles);
    }
    if points > MAX_VERTICES {
        return Err(ParseError::TooManyVertices);
    }
    let vertex = header
        .element("vertex")
        .filter(|e| e.count > 0)
        .ok_or_else(|| wrong("there are faces but no vertices"))?;
    for axis in ["x", "y", "z"] {
        let coordinate = vertex.properties.iter().find_map(|p| match p.shape {
            Shape::One(kind) if p.name == axis => Some(kind),
            _ => None,
        });
        match coordinate {
            None => return Err(wrong("the vertices do not have all of x, y and z")),
            Some(Scalar::I8 | Scalar::U8) => {
                return Err(wrong("coordinates of one byte are too coarse for a scan"));
            }
            Some(_) => {}
        }
    }
    for name in ["face", "tristrips"] {
        if let Some(element) = header.element(name)
            && element.count > 0
            && indices_of(element).is_none()
        {
            return Err(wrong("the faces have no list of vertex indices"));
        }
    }
    Ok(())
}

struct Body {
    vertices: Vertices,
    faces: Faces,
    left: u64,
    surplus: bool,
}

impl Body {
    fn read<'a>(header: &Header, mut values: impl Values<'a>) -> Result<Self, ParseError> {
        let mut body = Self {
            vertices: Vertices::default(),
            faces: Faces::of(header.element("vertex").map_or(0, |e| e.count)),
            left: 0,
            surplus: false,
        };
        if let Some((first, others)) = header.elements.split_first()
            && first.name == "vertex"
            && let Some((layout, size)) = first.layout()
            && let Some(records) = values.records(first.count, size)
        {
            let (vertices, rest) = rayon::join(
                || Vertices::of_records(first, &layout, &records),
                || body.read_elements(others, vec![&first.name], &mut values),
            );
            let vertices = vertices?;
            rest?;
            body.vertices = vertices;
        } else {
            body.read_elements(&header.elements, Vec::new(), &mut values)?;
        }
        body.left = values.left();
        body.surplus = values.had_surplus();
        Ok(body)
    }

    /// Reads elements; those with a name that was `seen` before are passed over.
    fn read_elements<'a, 'h>(
        &mut self,
        elements: &'h [Element],
        mut seen: Vec<&'h str>,
        values: &mut impl Values<'a>,
    ) -> Result<(), ParseError> {
        for element in elements {
            let name = element.name.as_str();
            let again = seen.contains(&name);
            seen.push(name);
            match name {
                "vertex" if !again => self.vertices = Vertices::read(element, values)?,
                "face" | "tristrips" if !again && element.count > 0 => {
                    self.faces.read(element, values)?;
                }
                _ => skip_element(element, values)?,
            }
        }
        Ok(())
    }

    /// Whether a vertex count that is a little too large has made a vertex of
    /// the first faces' bytes. Small whole numbers are tiny numbers when read
    /// as floating point, and what is left of the last index, a zero, reads as
    /// a face of no corners; after that everything fits again.
    fn vertices_run_into_faces(&self, header: &Header) -> bool {
        const TINY: f64 = 1e-30;
        header.format != Format::PlyAscii
            && self.faces.begin_flat
            && self.vertices.places.last().is_some_and(|last| {
                last.coords.iter().any(|&c| c != 0.0) && last.coords.iter().all(|c| c.abs() < TINY)
            })
    }

    fn normals_against_triangles(&self) -> Option<ReadWarning> {
        let mut tally = Tally::default();
        let looked_at = self.faces.triangles.iter().take(stored_normals::LOOKED_AT);
        for corners in looked_at {
            let normals: Option<Vector3<f64>> = corners
                .iter()
                .map(|&v| self.vertices.normals.get(v as usize))
                .sum();
            let places = corners.map(|v| self.vertices.places.get(v as usize).copied());
            if let (Some(normal), [Some(a), Some(b), Some(c)]) = (normals, places) {
                tally.add(normal, [a, b, c]);
            }
        }
        tally.warning()
    }

    fn into_parsed(self, header: &Header, mark: bool) -> Result<Parsed, ParseError> {
        if self.vertices_run_into_faces(header) {
            return Err(ParseError::VertexCount {
                declared: self.vertices.places.len() as u64,
            });
        }
        let mut warnings = Vec::new();
        if mark {
            warnings.push(ReadWarning::ByteOrderMark);
        }
        if self.left > 0 {
            warnings.push(ReadWarning::TrailingBytes { bytes: self.left });
        }
        if self.surplus {
            warnings.push(ReadWarning::SurplusValues);
        }
        if self.faces.flat > 0 {
            warnings.push(ReadWarning::FacesWithoutArea {
                count: self.faces.flat,
            });
        }
        if self.vertices.colours.is_none() {
            if header.names_picture {
                warnings.push(ReadWarning::TexturePicture);
            }
            if header
                .element("face")
                .is_some_and(|f| Colours::positions(f).is_some())
            {
                warnings.push(ReadWarning::FaceColours);
            }
        }
        let coordinate = header
            .element("vertex")
            .and_then(|e| e.properties.iter().find(|p| p.name == "x"))
            .map(|p| p.shape);
        let stored = match (header.format, coordinate) {
            _ if self.vertices.whole_coordinates => Stored::Whole,
            (Format::PlyAscii, _) | (_, Some(Shape::One(Scalar::F64))) => Stored::Exact,
            _ => Stored::Single,
        };
        warnings.extend(self.normals_against_triangles());
        let surface = Surface {
            vertices: self.vertices.places,
            triangles: self.faces.triangles,
            colours: self.vertices.colours.map(Colours::into_srgb),
            stored,
        };
        let mut parsed = surface.weld_and_finish(header.format, warnings)?;
        parsed.carries_text = header.carries_text;
        Ok(parsed)
    }
}

fn skip_element<'a>(element: &Element, values: &mut impl Values<'a>) -> Result<(), ParseError> {
    if element.properties.is_empty() {
        return Ok(());
    }
    for number in 0..element.count {
        let ends = |missing: Missing| missing.or_end(|| cut_short(element, number));
        for property in &element.properties {
            let (kind, length) = match property.shape {
                Shape::One(kind) => (kind, 1),
                Shape::List { count, of } => (of, list_length(values, count, of, element, number)?),
            };
            values.skip(kind, length).map_err(ends)?;
        }
        values.end_record();
    }
    Ok(())
}
