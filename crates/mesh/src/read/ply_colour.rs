//! Vertex colour of PLY files, in the types and names that are met.

use super::ply_header::{Element, Scalar, Shape};

/// Names of the three channels.
const NAMES: [[&str; 3]; 3] = [
    ["red", "green", "blue"],
    ["diffuse_red", "diffuse_green", "diffuse_blue"],
    ["r", "g", "b"],
];

/// Colours as stored, of a type that says which number is full.
pub(super) struct Colours {
    stored: Vec<[f32; 3]>,
    kind: Scalar,
}

impl Colours {
    /// Positions of the channels among an element's properties.
    pub(super) fn positions(element: &Element) -> Option<[usize; 3]> {
        NAMES.iter().find_map(|names| {
            let mut at = [0; 3];
            for (slot, name) in at.iter_mut().zip(names) {
                *slot = element
                    .position(&[name])
                    .filter(|&p| matches!(element.properties[p].shape, Shape::One(_)))?;
            }
            Some(at)
        })
    }

    /// No colours yet, of the type of the channels at these positions.
    pub(super) fn with_room_for(element: &Element, at: [usize; 3]) -> Self {
        Self {
            stored: Vec::with_capacity(element.count as usize),
            kind: match element.properties[at[0]].shape {
                Shape::One(kind) => kind,
                Shape::List { of, .. } => of,
            },
        }
    }

    /// One more, as stored.
    pub(super) fn push(&mut self, colour: [f32; 3]) {
        self.stored.push(colour);
    }

    /// One channel of so many colours, as stored.
    pub(super) fn take(
        &mut self,
        channel: usize,
        count: usize,
        each: impl FnOnce(&mut dyn FnMut(f64)),
    ) {
        self.stored.resize(count, [0.0; 3]);
        let mut stored = self.stored.iter_mut();
        each(&mut |value| {
            if let Some(colour) = stored.next() {
                colour[channel] = value as f32;
            }
        });
    }

    /// sRGB, 0 to 255. Floating-point colour is full at 1, unless some channel
    /// is above that: then it was written on the scale of bytes.
    pub(super) fn into_srgb(self) -> Vec<[u8; 3]> {
        // Whole numbers need no rounding, which takes several times as long.
        let round = if self.kind.is_whole() && !matches!(self.kind, Scalar::U16) {
            |c: f32| c
        } else {
            f32::round
        };
        let scale = match self.kind {
            Scalar::U16 => 1.0 / 257.0,
            Scalar::F32 | Scalar::F64 if self.stored.as_flattened().iter().all(|&c| c <= 1.0) => {
                255.0
            }
            _ => 1.0,
        };
        self.stored
            .iter()
            // The conversion saturates, and takes NaN to 0.
            .map(|colour| colour.map(|c| round(c * scale) as u8))
            .collect()
    }
}
