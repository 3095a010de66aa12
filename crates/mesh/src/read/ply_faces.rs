//! Faces and triangle strips of a PLY body.

use super::MAX_TRIANGLES;
use super::error::ParseError;
use super::ply::{cut_short, list_length};
use super::ply_header::{Element, Property, Scalar, Shape};
use super::ply_values::{Missing, Values};

/// Position of the property that lists a face's vertices.
pub(super) fn indices_of(element: &Element) -> Option<usize> {
    element
        .position(&["vertex_indices", "vertex_index"])
        .filter(|&at| matches!(element.properties[at].shape, Shape::List { .. }))
}

/// The triangles of the faces read so far.
pub(super) struct Faces {
    pub triangles: Vec<[u32; 3]>,
    /// Faces of fewer than three corners.
    pub flat: u64,
    /// Whether the first face was one of these.
    pub begin_flat: bool,
    vertex_count: u64,
}

impl Faces {
    /// No faces yet, of so many vertices, which may come later in the file.
    pub fn of(vertex_count: u64) -> Self {
        Self {
            triangles: Vec::new(),
            flat: 0,
            begin_flat: false,
            vertex_count,
        }
    }

    /// Reads the faces or strips of an element.
    pub fn read(&mut self, element: &Element, values: &mut impl Values) -> Result<(), ParseError> {
        let indices = indices_of(element);
        let strips = element.name == "tristrips";
        let plain = matches!(
            element.properties[..],
            [Property {
                shape: Shape::List {
                    count: Scalar::I8 | Scalar::U8,
                    of: Scalar::I32 | Scalar::U32,
                },
                ..
            }]
        ) && !strips;
        self.triangles.reserve(element.count as usize);
        let mut corners = Vec::new();
        for number in 0..element.count {
            if plain && let Some(triangle) = values.plain_triangle() {
                for index in triangle {
                    if u64::from(index) >= self.vertex_count {
                        return Err(self.out_of_range(values, number, f64::from(index)));
                    }
                }
                self.push(triangle)?;
                continue;
            }
            let ends = |missing: Missing| missing.or_end(|| cut_short(element, number));
            for (at, property) in element.properties.iter().enumerate() {
                match property.shape {
                    Shape::One(kind) => values.skip(kind, 1).map_err(ends)?,
                    Shape::List { count, of } => {
                        let length = list_length(values, count, of, element, number)?;
                        if Some(at) != indices {
                            values.skip(of, length).map_err(ends)?;
                            continue;
                        }
                        corners.clear();
                        for _ in 0..length {
                            let index = values.next(of).map_err(ends)?;
                            corners.push(self.corner(index, strips, values, number)?);
                        }
                    }
                }
            }
            values.end_record();
            if strips {
                self.push_strips(&corners)?;
            } else {
                self.push_polygon(&corners)?;
            }
        }
        Ok(())
    }

    /// An index as a vertex number; `None` for -1, which starts a new strip.
    fn corner(
        &self,
        index: f64,
        strips: bool,
        values: &impl Values,
        face: u64,
    ) -> Result<Option<u32>, ParseError> {
        if index >= 0.0 && index < self.vertex_count as f64 && index.fract() == 0.0 {
            Ok(Some(index as u32))
        } else if strips && (index == -1.0 || index == f64::from(u32::MAX)) {
            Ok(None)
        } else {
            Err(self.out_of_range(values, face, index))
        }
    }

    fn out_of_range(&self, values: &impl Values, face: u64, index: f64) -> ParseError {
        ParseError::IndexOutOfRange {
            place: values.place(),
            face: face + 1,
            index: index as i64,
            vertices: self.vertex_count,
        }
    }

    fn push(&mut self, triangle: [u32; 3]) -> Result<(), ParseError> {
        if self.triangles.len() as u64 == MAX_TRIANGLES {
            return Err(ParseError::TooManyTriangles);
        }
        self.triangles.push(triangle);
        Ok(())
    }

    /// A polygon as a fan around its first corner.
    fn push_polygon(&mut self, corners: &[Option<u32>]) -> Result<(), ParseError> {
        if corners.len() < 3 {
            self.flat += 1;
            self.begin_flat |= self.triangles.is_empty();
        }
        for pair in corners.get(1..).unwrap_or_default().windows(2) {
            if let (Some(a), Some(b), Some(c)) = (corners[0], pair[0], pair[1]) {
                self.push([a, b, c])?;
            }
        }
        Ok(())
    }

    /// Strips, every second triangle turned over. Repeated corners are how
    /// strips are sewn together, so they are no fault here.
    fn push_strips(&mut self, corners: &[Option<u32>]) -> Result<(), ParseError> {
        for strip in corners.split(Option::is_none) {
            for (number, window) in strip.windows(3).enumerate() {
                let &[Some(a), Some(b), Some(c)] = window else {
                    continue;
                };
                if a != b && b != c && c != a {
                    self.push(if number % 2 == 0 {
                        [a, b, c]
                    } else {
                        [b, a, c]
                    })?;
                }
            }
        }
        Ok(())
    }
}
