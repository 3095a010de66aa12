//! Vertices of a PLY body.

use super::error::{ParseError, Place};
use super::ply_colour::Colours;
use super::ply_header::{Element, Scalar, Shape};
use super::ply_values::{Missing, Records, Values, cut_short, list_length};
use super::stored_normals;
use super::surface::{GREATEST_COORDINATE, checked};
use nalgebra::{Point3, Vector3};

/// What a property of a vertex is to us.
#[derive(Clone, Copy)]
enum Role {
    Coordinate(usize),
    Colour(usize),
    Normal(usize),
    None,
}

/// The vertices, and what belongs to each.
#[derive(Default)]
pub(super) struct Vertices {
    pub places: Vec<Point3<f64>>,
    /// Whether coordinates are stored as whole numbers.
    pub whole_coordinates: bool,
    pub colours: Option<Colours>,
    /// Stored normals of the first.
    pub normals: Vec<Vector3<f64>>,
}

impl Vertices {
    /// None yet, of an element whose properties have these roles.
    fn of(roles: &[(Role, Shape)]) -> Self {
        Self {
            whole_coordinates: roles.iter().any(|(role, shape)| {
                matches!((role, shape), (Role::Coordinate(_), Shape::One(kind)) if kind.is_whole())
            }),
            ..Self::default()
        }
    }

    /// Reads vertices one by one.
    pub(super) fn read<'a>(
        element: &Element,
        values: &mut impl Values<'a>,
    ) -> Result<Self, ParseError> {
        let colour_at = Colours::positions(element);
        let roles = roles_of(element, colour_at);
        let mut colours = colour_at.map(|at| Colours::with_room_for(element, at));
        let mut vertices = Self::of(&roles);
        // The header's counts have been held against the file's size.
        vertices.places.reserve_exact(element.count as usize);
        for number in 0..element.count {
            let ends = |missing: Missing| missing.or_end(|| cut_short(element, number));
            let mut point = Point3::origin();
            let mut colour = [0.0; 3];
            let mut normal = Vector3::zeros();
            let is_looked_at = number < stored_normals::LOOKED_AT as u64;
            for &(role, shape) in &roles {
                match (role, shape) {
                    (Role::Coordinate(axis), Shape::One(kind)) => {
                        let value = values.next(kind).map_err(ends)?;
                        point[axis] = checked(value, || values.place_of_vertex(number))?;
                    }
                    (Role::Colour(channel), Shape::One(kind)) => {
                        colour[channel] = values.next(kind).map_err(ends)? as f32;
                    }
                    (Role::Normal(axis), Shape::One(kind)) if is_looked_at => {
                        normal[axis] = values.next(kind).map_err(ends)?;
                    }
                    (_, Shape::One(kind)) => values.skip(kind, 1).map_err(ends)?,
                    (_, Shape::List { count, of }) => {
                        let length = list_length(values, count, of, element, number)?;
                        values.skip(of, length).map_err(ends)?;
                    }
                }
            }
            values.end_record();
            vertices.places.push(point);
            if is_looked_at {
                vertices.normals.push(normal);
            }
            if let Some(colours) = &mut colours {
                colours.push(colour);
            }
        }
        vertices.colours = colours;
        Ok(vertices)
    }

    /// Takes vertices from records of one size, property by property.
    pub(super) fn of_records(
        element: &Element,
        layout: &[(Scalar, usize)],
        records: &Records<'_>,
    ) -> Result<Self, ParseError> {
        let colour_at = Colours::positions(element);
        let roles = roles_of(element, colour_at);
        let mut colours = colour_at.map(|at| Colours::with_room_for(element, at));
        let mut vertices = Self::of(&roles);
        vertices
            .places
            .resize(element.count as usize, Point3::origin());
        let looked_at = vertices.places.len().min(stored_normals::LOOKED_AT);
        vertices.normals.resize(looked_at, Vector3::zeros());
        for (&(role, _), &(kind, at)) in roles.iter().zip(layout) {
            match role {
                Role::Coordinate(axis) => {
                    let mut places = vertices.places.iter_mut();
                    records.each(at, kind, |value| {
                        if let Some(place) = places.next() {
                            place[axis] = value;
                        }
                    });
                }
                Role::Normal(axis) => {
                    let mut normals = vertices.normals.iter_mut();
                    records.first(looked_at).each(at, kind, |value| {
                        if let Some(normal) = normals.next() {
                            normal[axis] = value;
                        }
                    });
                }
                Role::Colour(channel) => {
                    if let Some(colours) = &mut colours {
                        colours.take(channel, element.count as usize, |put| {
                            records.each(at, kind, put)
                        });
                    }
                }
                Role::None => {}
            }
        }
        let is_within = |p: &Point3<f64>| p.iter().all(|c| c.abs() <= GREATEST_COORDINATE);
        if let Some(number) = vertices.places.iter().position(|p| !is_within(p)) {
            let order = roles.iter().filter_map(|(role, _)| match role {
                Role::Coordinate(axis) => Some(*axis),
                _ => None,
            });
            for axis in order {
                checked(vertices.places[number][axis], || {
                    Place::Vertex(number as u64)
                })?;
            }
        }
        vertices.colours = colours;
        Ok(vertices)
    }
}

/// What each property of a vertex is to us, in their order.
fn roles_of(element: &Element, colour_at: Option<[usize; 3]>) -> Vec<(Role, Shape)> {
    let properties = element.properties.iter().enumerate();
    properties
        .map(|(at, property)| {
            let axis = ["x", "y", "z"].iter().position(|a| property.name == *a);
            let channel = colour_at.and_then(|c| c.iter().position(|&p| p == at));
            let normal = ["nx", "ny", "nz"].iter().position(|n| property.name == *n);
            let role = match (axis, channel, normal) {
                (Some(axis), _, _) => Role::Coordinate(axis),
                (_, Some(channel), _) => Role::Colour(channel),
                (_, _, Some(axis)) => Role::Normal(axis),
                _ => Role::None,
            };
            (role, property.shape)
        })
        .collect()
}
