//! Polygons and strips as triangles, corner by corner, so that a list of any
//! length needs no room of its own.

/// A polygon as a fan around its first corner.
#[derive(Debug, Default)]
pub(super) struct Fan {
    first: u32,
    last: u32,
    corners: u64,
}

impl Fan {
    /// The triangle that one more corner makes.
    pub(super) fn add(&mut self, corner: u32) -> Option<[u32; 3]> {
        let triangle = (self.corners >= 2).then_some([self.first, self.last, corner]);
        if self.corners == 0 {
            self.first = corner;
        }
        self.last = corner;
        self.corners += 1;
        triangle
    }

    /// Whether there were too few corners for a triangle.
    pub(super) fn is_flat(&self) -> bool {
        self.corners < 3
    }
}

/// A strip, every second triangle of which is turned over.
#[derive(Debug, Default)]
pub(super) struct Strip {
    last_two: [u32; 2],
    corners: u64,
}

impl Strip {
    /// The triangle that one more corner makes. Repeated corners are how strips
    /// are sewn together, so they make none and are no fault.
    pub(super) fn add(&mut self, corner: u32) -> Option<[u32; 3]> {
        let [a, b] = self.last_two;
        let has_area = a != b && b != corner && corner != a;
        let triangle =
            (self.corners >= 2 && has_area).then_some(if self.corners.is_multiple_of(2) {
                [a, b, corner]
            } else {
                [b, a, corner]
            });
        self.last_two = [b, corner];
        self.corners += 1;
        triangle
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_polygon_is_a_fan() {
        let mut fan = Fan::default();
        let made: Vec<_> = [7, 8, 9, 10]
            .into_iter()
            .filter_map(|c| fan.add(c))
            .collect();
        assert_eq!(made, [[7, 8, 9], [7, 9, 10]]);
        assert!(!fan.is_flat());
        let mut edge = Fan::default();
        assert_eq!([1, 2].map(|c| edge.add(c)), [None, None]);
        assert!(edge.is_flat());
    }

    #[test]
    fn a_strip_turns_every_second_triangle_and_leaves_out_its_seams() {
        let mut strip = Strip::default();
        let corners = [0, 1, 2, 3, 3, 4, 4, 5, 6];
        let made: Vec<_> = corners.into_iter().filter_map(|c| strip.add(c)).collect();
        assert_eq!(made, [[0, 1, 2], [2, 1, 3], [4, 5, 6]]);
    }
}
