//! The section through a stock tray's mid-surface: straight walls and floors
//! joined by arcs, with its exact distance.

use crate::shaping::norm;

type Vec2 = [f64; 2];

#[derive(Debug, Clone, Copy)]
enum Piece {
    Straight {
        from: Vec2,
        direction: Vec2,
        length: f64,
    },
    /// Less than half a turn; `turn` is +1 to the left and -1 to the right.
    Arc {
        centre: Vec2,
        radius: f64,
        from: Vec2,
        to: Vec2,
        turn: f64,
    },
}

/// A flange wall that stands up from the channel floor and can be cut at any height.
#[derive(Debug, Clone, Copy)]
pub struct Wall {
    base: Vec2,
    up: Vec2,
}

impl Wall {
    /// The point of the wall's middle at height `z`, as (out, z).
    #[must_use]
    pub fn at_height(&self, z: f64) -> Vec2 {
        let w = (z - self.base[1]) / self.up[1];
        add(self.base, self.up, w)
    }

    /// Height at which the wall leaves the rounded corner below it.
    #[must_use]
    pub fn foot(&self) -> f64 {
        self.base[1]
    }

    fn run_to(&self, z: f64) -> f64 {
        ((z - self.base[1]) / self.up[1]).max(0.0)
    }
}

/// Middle line of the tray in the plane across the arch: coordinates are
/// (out, z), runs from the outer wall down and across to the inner side.
#[derive(Debug, Clone)]
pub struct Profile {
    outer: Wall,
    inner: Option<Wall>,
    between: Vec<Piece>,
}

/// Distances of a point from a profile.
#[derive(Debug, Clone, Copy)]
pub struct ProfileDistance {
    /// To the profile with its walls cut at their heights, mm.
    pub to_cut: f64,
    /// To the profile with endless walls, positive on the outer side, mm.
    pub side: f64,
}

impl Profile {
    /// A profile through corners that are rounded by arcs of the given radii
    /// (one for each corner but the ends). The first run is the outer wall;
    /// the last is an inner wall if `inner_wall`, else a plate.
    #[must_use]
    pub fn rounded(corners: &[Vec2], radii: &[f64], inner_wall: bool) -> Self {
        let mut between = Vec::new();
        let mut from = corners[0];
        let mut ends = Vec::new();
        for (i, &radius) in radii.iter().enumerate() {
            let (corner, next) = (corners[i + 1], corners[i + 2]);
            let (incoming, outgoing) = (unit(sub(corner, from)), unit(sub(next, corner)));
            let turn = cross(incoming, outgoing).signum();
            let half_angle = dot(incoming, outgoing).clamp(-1.0, 1.0).acos() / 2.0;
            let cut = radius * half_angle.tan();
            let (start, end) = (add(corner, incoming, -cut), add(corner, outgoing, cut));
            let centre = add(start, [-incoming[1] * turn, incoming[0] * turn], radius);
            ends.push((from, start));
            between.push(Piece::Arc {
                centre,
                radius,
                from: unit(sub(start, centre)),
                to: unit(sub(end, centre)),
                turn,
            });
            from = end;
        }
        ends.push((from, corners[corners.len() - 1]));
        let straight = |(from, to): (Vec2, Vec2)| Piece::Straight {
            from,
            direction: unit(sub(to, from)),
            length: norm(sub(to, from)[0], sub(to, from)[1]),
        };
        let (top, base) = ends[0];
        let outer = Wall {
            base,
            up: unit(sub(top, base)),
        };
        let (base, top) = ends[ends.len() - 1];
        let inner = inner_wall.then(|| Wall {
            base,
            up: unit(sub(top, base)),
        });
        let fixed = if inner_wall {
            &ends[1..ends.len() - 1]
        } else {
            &ends[1..]
        };
        between.extend(fixed.iter().copied().map(straight));
        Self {
            outer,
            inner,
            between,
        }
    }

    /// The labial and buccal wall.
    #[must_use]
    pub fn outer(&self) -> &Wall {
        &self.outer
    }

    /// The lingual wall, where there is one.
    #[must_use]
    pub fn inner(&self) -> Option<&Wall> {
        self.inner.as_ref()
    }

    /// Least height of the middle line, mm.
    #[must_use]
    pub fn lowest(&self) -> f64 {
        self.between
            .iter()
            .map(|piece| match *piece {
                Piece::Straight {
                    from,
                    direction,
                    length,
                } => from[1].min(add(from, direction, length)[1]),
                Piece::Arc { .. } => f64::INFINITY,
            })
            .fold(f64::INFINITY, f64::min)
    }

    /// Distances of (out, z) with the walls cut at heights `tops` (outer, inner).
    #[must_use]
    pub fn distance(&self, p: Vec2, tops: Vec2) -> ProfileDistance {
        let mut nearest = (f64::INFINITY, 1.0);
        for piece in &self.between {
            let found = piece.distance(p);
            if found.0 < nearest.0 {
                nearest = found;
            }
        }
        let mut to_cut = nearest.0;
        let walls = [
            (Some(&self.outer), tops[0], 1.0),
            (self.inner.as_ref(), tops[1], -1.0),
        ];
        for (wall, top, sense) in walls {
            let Some(wall) = wall else { continue };
            let offset = sub(p, wall.base);
            let run = dot(offset, wall.up);
            let aside = -cross(wall.up, offset) * sense;
            let over = (run - wall.run_to(top)).max(-run).max(0.0);
            to_cut = to_cut.min(norm(over, aside));
            let endless = norm((-run).max(0.0), aside);
            if endless < nearest.0 {
                nearest = (endless, aside.signum());
            }
        }
        ProfileDistance {
            to_cut,
            side: nearest.0 * nearest.1,
        }
    }
}

impl Piece {
    /// Distance and side (+1 to the left of travel, which is the outer side).
    fn distance(&self, p: Vec2) -> (f64, f64) {
        match *self {
            Self::Straight {
                from,
                direction,
                length,
            } => {
                let offset = sub(p, from);
                let run = dot(offset, direction);
                let aside = cross(direction, offset);
                (
                    norm((run - length).max(-run).max(0.0), aside),
                    aside.signum(),
                )
            }
            Self::Arc {
                centre,
                radius,
                from,
                to,
                turn,
            } => {
                let spoke = sub(p, centre);
                if cross(from, spoke) * turn < 0.0 || cross(spoke, to) * turn < 0.0 {
                    return (f64::INFINITY, 1.0);
                }
                let left = (radius - norm(spoke[0], spoke[1])) * turn;
                (left.abs(), left.signum())
            }
        }
    }
}

fn sub(a: Vec2, b: Vec2) -> Vec2 {
    [a[0] - b[0], a[1] - b[1]]
}

fn add(a: Vec2, direction: Vec2, length: f64) -> Vec2 {
    [a[0] + direction[0] * length, a[1] + direction[1] * length]
}

fn dot(a: Vec2, b: Vec2) -> f64 {
    a[0] * b[0] + a[1] * b[1]
}

fn cross(a: Vec2, b: Vec2) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

fn unit(a: Vec2) -> Vec2 {
    let length = norm(a[0], a[1]).max(1e-12);
    [a[0] / length, a[1] / length]
}

#[cfg(test)]
mod tests {
    use super::*;

    fn channel() -> Profile {
        Profile::rounded(
            &[[8.0, 20.0], [8.0, -4.0], [-6.0, -4.0], [-6.0, 20.0]],
            &[3.0, 3.0],
            true,
        )
    }

    #[test]
    fn a_channel_has_the_distances_of_its_drawing() {
        let tops = [6.0, 4.0];
        let near = |p: Vec2, cut: f64, side: f64| {
            let d = channel().distance(p, tops);
            assert!(
                (d.to_cut - cut).abs() < 1e-12 && (d.side - side).abs() < 1e-12,
                "{p:?} {d:?}"
            );
        };
        near([0.0, -1.0], 3.0, -3.0);
        near([0.0, -6.0], 2.0, 2.0);
        near([9.5, 3.0], 1.5, 1.5);
        near([6.0, 3.0], 2.0, -2.0);
        near([11.0, 10.0], 5.0, 3.0);
        near([-8.0, 2.0], 2.0, 2.0);
        near([-5.0, 8.0], 17f64.sqrt(), -1.0);
        // On the ray through the centre (5, -1) of the first corner's arc.
        near([5.0 + 4.0 * 0.6, -1.0 - 4.0 * 0.8], 1.0, 1.0);
        near([5.0 + 2.0 * 0.6, -1.0 - 2.0 * 0.8], 1.0, -1.0);
    }
}
