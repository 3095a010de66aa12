//! The geometry of Wavefront OBJ: `v` and `f` lines. Colour after a vertex,
//! normals, texture coordinates, groups and materials are passed over.

use super::error::{ParseError, Place};
use super::format::Format;
use super::limits::{MAX_TRIANGLES, MAX_VERTICES};
use super::polygon::Fan;
use super::scan::Parsed;
use super::surface::{Stored, Surface, checked};
use super::text::{Words, number, without_byte_order_mark};
use super::warning::ReadWarning;
use nalgebra::Point3;

/// Reads the faces of an OBJ file.
pub(super) fn parse(bytes: &[u8]) -> Result<Parsed, ParseError> {
    let mut words = Words::new(without_byte_order_mark(bytes), 1);
    let mut contents = Contents::default();
    while let Some(word) = words.next() {
        match word {
            b"v" => contents.vertex(&mut words)?,
            b"f" | b"fo" => contents.face(&mut words)?,
            b"#" | b"o" | b"g" => contents.carries_text |= words.next_on_line().is_some(),
            b"mtllib" | b"usemtl" => contents.names_material = true,
            _ => contents.carries_text |= word.starts_with(b"#"),
        }
        words.skip_line();
    }
    contents.into_parsed()
}

#[derive(Default)]
struct Contents {
    vertices: Vec<Point3<f64>>,
    triangles: Vec<[u32; 3]>,
    faces: u64,
    flat_faces: u64,
    /// The greatest index that was beyond the vertices read so far, and where:
    /// some files list faces before vertices.
    ahead: Option<(u32, Place, u64)>,
    carries_text: bool,
    names_material: bool,
}

impl Contents {
    fn vertex(&mut self, words: &mut Words<'_>) -> Result<(), ParseError> {
        if self.vertices.len() as u64 == MAX_VERTICES {
            return Err(ParseError::TooManyVertices);
        }
        let mut point = Point3::origin();
        for axis in 0..3 {
            let word = on_logical_line(words).ok_or(ParseError::Expected {
                place: words.place(),
                expected: "three coordinates after 'v'",
            })?;
            let value = number(word, words.place())?;
            point[axis] = checked(value, || words.place())?;
        }
        self.vertices.push(point);
        Ok(())
    }

    fn face(&mut self, words: &mut Words<'_>) -> Result<(), ParseError> {
        self.faces += 1;
        let mut fan = Fan::default();
        while let Some(word) = on_logical_line(words) {
            if word.starts_with(b"#") {
                break;
            }
            let corner = self.corner(word, words.place())?;
            if let Some(triangle) = fan.add(corner) {
                if self.triangles.len() as u64 == MAX_TRIANGLES {
                    return Err(ParseError::TooManyTriangles);
                }
                self.triangles.push(triangle);
            }
        }
        self.flat_faces += u64::from(fan.is_flat());
        Ok(())
    }

    /// The vertex number of a corner `v`, `v/vt`, `v//vn` or `v/vt/vn`. Indices
    /// count from 1; negative ones count back from the vertex read last.
    fn corner(&mut self, word: &[u8], place: Place) -> Result<u32, ParseError> {
        let index = word.split(|&b| b == b'/').next().unwrap_or_default();
        let index: i64 = std::str::from_utf8(index)
            .ok()
            .and_then(|text| text.parse().ok())
            .ok_or(ParseError::NotANumber { place })?;
        let known = self.vertices.len() as i64;
        let from_zero = match index {
            1.. => Some(index - 1),
            0 => None,
            _ => known.checked_add(index),
        };
        let corner =
            from_zero
                .and_then(|n| u32::try_from(n).ok())
                .ok_or(ParseError::IndexOutOfRange {
                    place,
                    face: self.faces,
                    index,
                    vertices: known as u64,
                })?;
        let furthest = self.ahead.map_or(known, |(n, ..)| i64::from(n) + 1);
        if i64::from(corner) >= furthest.max(known) {
            self.ahead = Some((corner, place, self.faces));
        }
        Ok(corner)
    }

    fn into_parsed(self) -> Result<Parsed, ParseError> {
        let vertices = self.vertices.len() as u64;
        if let Some((corner, place, face)) = self.ahead
            && u64::from(corner) >= vertices
        {
            return Err(ParseError::IndexOutOfRange {
                place,
                face,
                index: i64::from(corner) + 1,
                vertices,
            });
        }
        if self.triangles.is_empty() && vertices > 0 && self.faces == 0 {
            return Err(ParseError::PointCloud { points: vertices });
        }
        let mut warnings = Vec::new();
        if self.flat_faces > 0 {
            warnings.push(ReadWarning::FacesWithoutArea {
                count: self.flat_faces,
            });
        }
        if self.names_material {
            warnings.push(ReadWarning::TexturePicture);
        }
        let surface = Surface {
            vertices: self.vertices,
            triangles: self.triangles,
            colours: None,
            stored: Stored::Exact,
        };
        let mut parsed = surface.weld_and_finish(Format::Obj, warnings)?;
        parsed.carries_text = self.carries_text;
        Ok(parsed)
    }
}

/// The next word of a line that a backslash at its end continues.
fn on_logical_line<'a>(words: &mut Words<'a>) -> Option<&'a [u8]> {
    match words.next_on_line() {
        Some(b"\\") => words.next(),
        other => other,
    }
}
