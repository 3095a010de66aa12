//! Faces and triangle strips of a PLY body.

use super::error::ParseError;
use super::limits::MAX_TRIANGLES;
use super::ply_header::{Element, Property, Scalar, Shape};
use super::ply_values::{Missing, Values, cut_short, list_length};
use super::polygon::{Fan, Strip};

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
    pub(super) fn of(vertex_count: u64) -> Self {
        Self {
            triangles: Vec::new(),
            flat: 0,
            begin_flat: false,
            vertex_count,
        }
    }

    /// Reads the faces or strips of an element.
    pub(super) fn read<'a>(
        &mut self,
        element: &Element,
        values: &mut impl Values<'a>,
    ) -> Result<(), ParseError> {
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
        self.make_room(element, indices, values);
        let begin = if plain {
            let most = element.count.min(MAX_TRIANGLES) as usize;
            values.plain_triangles(most, self.vertex_count, &mut self.triangles);
            self.triangles.len() as u64
        } else {
            0
        };
        for number in begin..element.count {
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
                        let mut next = |faces: &Self| {
                            let index = values.next(of).map_err(ends)?;
                            faces.corner(index, strips, values, number)
                        };
                        if strips {
                            self.read_strips(length, &mut next)?;
                        } else {
                            self.read_polygon(length, &mut next)?;
                        }
                    }
                }
            }
            values.end_record();
        }
        Ok(())
    }

    /// Makes room for as many triangles as there are faces; where a corner is
    /// one byte only, for all that the rest of the file could hold, since
    /// growing would for a moment take three times that.
    fn make_room<'a>(
        &mut self,
        element: &Element,
        indices: Option<usize>,
        values: &impl Values<'a>,
    ) {
        let one_byte = indices.is_some_and(|at| {
            matches!(
                element.properties[at].shape,
                Shape::List {
                    of: Scalar::I8 | Scalar::U8,
                    ..
                }
            )
        });
        let faces = if one_byte {
            values.room(Scalar::U8).min(MAX_TRIANGLES)
        } else {
            element.count
        };
        self.triangles.reserve_exact(faces as usize);
    }

    /// An index as a vertex number; `None` for -1, which starts a new strip.
    fn corner<'a>(
        &self,
        index: f64,
        strips: bool,
        values: &impl Values<'a>,
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

    fn out_of_range<'a>(&self, values: &impl Values<'a>, face: u64, index: f64) -> ParseError {
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

    fn read_polygon(
        &mut self,
        length: u64,
        next: &mut impl FnMut(&Self) -> Result<Option<u32>, ParseError>,
    ) -> Result<(), ParseError> {
        let mut fan = Fan::default();
        let before = self.triangles.len();
        for _ in 0..length {
            if let Some(corner) = next(self)?
                && let Some(triangle) = fan.add(corner)
            {
                self.push(triangle)?;
            }
        }
        if fan.is_flat() {
            self.flat += 1;
            self.begin_flat |= before == 0;
        }
        Ok(())
    }

    fn read_strips(
        &mut self,
        length: u64,
        next: &mut impl FnMut(&Self) -> Result<Option<u32>, ParseError>,
    ) -> Result<(), ParseError> {
        let mut strip = Strip::default();
        for _ in 0..length {
            match next(self)? {
                Some(corner) => {
                    if let Some(triangle) = strip.add(corner) {
                        self.push(triangle)?;
                    }
                }
                None => strip = Strip::default(),
            }
        }
        Ok(())
    }
}
