//! Teeth, or the sockets that they left: many separate bumps side by side.
//!
//! A bump counts by its prominence: how far one must go down from its top
//! before a higher one can be reached (persistence of the height's maxima,
//! Edelsbrunner, Letscher and Zomorodian 2002). A residual ridge is one long
//! bump, whatever its shape; a row of teeth is at least one bump a tooth, set
//! apart by the embrasures. A socket is the same upside down, and must hold
//! water to its depth.

use super::candidates;
use crate::anatomy;
use crate::not_an_impression::NotAnImpression;
use geometry::fit::PrincipalAxes;
use geometry::height_map::{FINE_CELL_MM, HeightMap};
use geometry::sampling::spread_over;
use mesh::Mesh;
use nalgebra::{Point2, Point3, Unit, UnitVector3};

/// Teeth on a scan that is no impression, or sockets in one.
pub(super) fn on_what_is_none(mesh: &Mesh) -> Option<NotAnImpression> {
    let seen_along = |axis: UnitVector3<f64>| candidates::map_along(mesh, &axis, FINE_CELL_MM);
    // A surface seen from one side shows its teeth from behind, as hollows:
    // there no undercut hides how far they are apart.
    if let Some(outward) = Unit::try_new(candidates::mean_normal(mesh), 0.2) {
        let from_behind = longest_row(&bumps(&seen_along(-outward), Way::Down));
        return (from_behind >= anatomy::TEETH_IN_A_ROW)
            .then_some(NotAnImpression::Teeth { teeth: from_behind })
            .or_else(|| sockets_on_map(&seen_along(outward)));
    }
    let points: Vec<Point3<f64>> = spread_over(mesh, 5_000, |_| true)
        .iter()
        .map(|s| s.point)
        .collect();
    let axes = PrincipalAxes::of(&points)?.axes;
    axes.iter()
        .flat_map(|&axis| [axis, -axis])
        .find_map(|axis| {
            let map = seen_along(axis);
            let teeth = longest_row(&bumps(&map, Way::Up));
            (teeth >= anatomy::TEETH_IN_A_ROW)
                .then_some(NotAnImpression::Teeth { teeth })
                .or_else(|| sockets_on_map(&map))
        })
}

/// Sockets on a height map.
pub(super) fn sockets_on_map(map: &HeightMap) -> Option<NotAnImpression> {
    let sockets = longest_row(&bumps(map, Way::Down));
    (sockets >= anatomy::TEETH_IN_A_ROW).then_some(NotAnImpression::Sockets { sockets })
}

/// Length of the longest row of bumps that stand side by side.
fn longest_row(tops: &[Point2<f64>]) -> usize {
    let mut waiting = tops.to_vec();
    let mut longest = 0;
    while let Some(first) = waiting.pop() {
        let mut row = vec![first];
        let mut reached = 0;
        while let Some(&at) = row.get(reached) {
            row.extend(waiting.extract_if(.., |next| {
                (*next - at).norm() <= anatomy::NEXT_TOOTH_WITHIN_MM
            }));
            reached += 1;
        }
        longest = longest.max(row.len());
    }
    longest
}

/// Which way bumps stand.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Way {
    Up,
    Down,
}

/// Tops of the bumps of notable prominence and area.
fn bumps(map: &HeightMap, way: Way) -> Vec<Point2<f64>> {
    let sign = if way == Way::Up { 1.0 } else { -1.0 };
    let mut cells: Vec<(f32, usize)> = map
        .cells()
        .map(|(cell, centre)| (sign * centre.z as f32, cell))
        .collect();
    cells.sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    let highest = cells.first().map(|&(_, cell)| map.centre_of(cell));
    let mut hills = Hills::on(map.cell_count());
    let least_cells = (anatomy::TOOTH_LEAST_AREA_MM2 / map.cell_mm().powi(2)) as u32;
    let mut tops = Vec::new();
    let mut note = |lost: &Lost, saddle| {
        if lost.is_notable(saddle, least_cells) {
            tops.push(map.centre_of(lost.cell));
        }
    };
    for (height, cell) in cells {
        hills.rise(cell, height);
        let mut at_edge = false;
        for neighbour in map.around(cell) {
            match neighbour {
                Some(other) if map.has_surface(other) => {
                    if let Some(lost) = hills.join(cell, other) {
                        note(&lost, height);
                    }
                }
                _ => at_edge = true,
            }
        }
        // A pit at the rim of the scan holds no water.
        if at_edge
            && way == Way::Down
            && let Some(lost) = hills.drain(cell)
        {
            note(&lost, height);
        }
    }
    tops.extend(highest.filter(|_| way == Way::Up));
    tops
}

/// A hill that has been reached by a higher one.
struct Lost {
    cell: usize,
    top: f32,
    cells: u32,
}

impl Lost {
    fn is_notable(&self, saddle: f32, least_cells: u32) -> bool {
        self.top - saddle >= anatomy::TOOTH_LEAST_RISE_MM && self.cells >= least_cells
    }
}

/// Hills that grow downward from their tops and join where they meet: sets of
/// cells, each known by the cell of its top.
struct Hills {
    parent: Vec<u32>,
    top: Vec<f32>,
    cells: Vec<u32>,
}

impl Hills {
    const SUNK: u32 = u32::MAX;

    fn on(cells: usize) -> Self {
        Self {
            parent: vec![Self::SUNK; cells],
            top: vec![f32::NEG_INFINITY; cells],
            cells: vec![0; cells],
        }
    }

    /// A cell comes up, as a hill of its own.
    fn rise(&mut self, cell: usize, height: f32) {
        self.parent[cell] = cell as u32;
        self.top[cell] = height;
        self.cells[cell] = 1;
    }

    /// Joins the hills of two cells; gives the lower, unless they are one or
    /// one has not come up yet.
    fn join(&mut self, one: usize, other: usize) -> Option<Lost> {
        if self.parent[other] == Self::SUNK {
            return None;
        }
        let (one, other) = (self.hill(one), self.hill(other));
        if one == other {
            return None;
        }
        let (high, low) = if self.top[one] >= self.top[other] {
            (one, other)
        } else {
            (other, one)
        };
        let lost = Lost {
            cell: low,
            top: self.top[low],
            cells: self.cells[low],
        };
        self.parent[low] = high as u32;
        self.cells[high] += self.cells[low];
        // What has been drained is no hill of its own any more.
        (lost.top < f32::INFINITY).then_some(lost)
    }

    /// Takes a hill off the count, as if the highest of all had reached it.
    fn drain(&mut self, cell: usize) -> Option<Lost> {
        let hill = self.hill(cell);
        let lost = Lost {
            cell: hill,
            top: self.top[hill],
            cells: self.cells[hill],
        };
        self.top[hill] = f32::INFINITY;
        (lost.top < f32::INFINITY).then_some(lost)
    }

    fn hill(&mut self, cell: usize) -> usize {
        let mut at = cell;
        while self.parent[at] as usize != at {
            let next = self.parent[at] as usize;
            self.parent[at] = self.parent[next];
            at = next;
        }
        at
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// An arch-shaped ridge 12 mm wide and 6 mm high, with `teeth` round bumps
    /// of 4 mm on it, as heights over a plan; upside down where asked for.
    fn arch(teeth: usize, sign: f64) -> Mesh {
        let (side, step) = (140_u32, 0.5);
        let height = |x: f64, y: f64| {
            let (radius, angle) = (x.hypot(y), x.atan2(y));
            let off = (radius - 24.0).abs();
            if angle.abs() > 1.9 || off > 6.0 {
                return 0.0;
            }
            let ridge = 6.0 * (1.0 - (off / 6.0).powi(2));
            let bump = (0..teeth)
                .map(|k| {
                    let at = -1.7 + 3.4 * (k as f64 + 0.5) / teeth.max(1) as f64;
                    let away = (radius * (angle - at)).hypot(radius - 24.0);
                    4.0 * (1.0 - (away / 3.0).powi(2)).max(0.0)
                })
                .sum::<f64>();
            sign * (ridge + bump)
        };
        let vertices = (0..side * side)
            .map(|k| {
                let at = |n: u32| (f64::from(n) - f64::from(side) / 2.0) * step;
                let (x, y) = (at(k % side), at(k / side));
                Point3::new(x, y, height(x, y))
            })
            .collect();
        let triangles = (0..side - 1)
            .flat_map(|j| (0..side - 1).map(move |i| j * side + i))
            .flat_map(|a| [[a, a + 1, a + side + 1], [a, a + side + 1, a + side]])
            .collect();
        Mesh::new(vertices, triangles, None).expect("grid indices are in range")
    }

    #[test]
    fn teeth_are_counted_and_told_from_sockets() {
        let seen = |mesh: &Mesh, way| {
            let map = HeightMap::of(mesh.vertices(), mesh.triangles(), FINE_CELL_MM);
            let tops = bumps(&map, way);
            (tops.len(), longest_row(&tops))
        };
        for (teeth, in_a_row) in [(3, 1), (11, 11)] {
            assert_eq!(seen(&arch(teeth, 1.0), Way::Up), (teeth, in_a_row));
            // What the sockets are in is a hollow that they are the floor of.
            assert_eq!(seen(&arch(teeth, -1.0), Way::Down), (teeth, in_a_row));
        }
        assert_eq!(seen(&arch(0, 1.0), Way::Down), (0, 0));
        // Drained at its rim and at many holes, and no hollow anywhere.
        let pierced = arch(0, 1.0).filtered(|t| t % 7 != 3);
        assert_eq!(seen(&pierced, Way::Down), (0, 0));
    }

    #[test]
    fn teeth_are_found_in_any_pose() {
        let turn = nalgebra::UnitQuaternion::from_euler_angles(0.7, -1.1, 2.0);
        let place = nalgebra::Translation3::new(40.0, -7.0, 3.0);
        let motion = nalgebra::Isometry3::from_parts(place, turn);
        let found = |mesh: Mesh| on_what_is_none(&mesh.moved(&motion));
        let teeth = found(arch(12, 1.0));
        assert!(
            matches!(teeth, Some(NotAnImpression::Teeth { teeth: 11..=13 })),
            "{teeth:?}"
        );
        let sockets = found(arch(12, -1.0));
        assert!(
            matches!(sockets, Some(NotAnImpression::Sockets { sockets: 11..=13 })),
            "{sockets:?}"
        );
        assert_eq!(found(arch(3, 1.0)), None);
    }
}
