//! Things side by side without overlap: each goes in the first lane where
//! there is room.

/// Lane, from 0, of each span of (from, to), in the order given.
pub fn lanes(spans: &[(f64, f64)], gap: f64) -> Vec<usize> {
    let mut taken: Vec<Vec<(f64, f64)>> = Vec::new();
    spans
        .iter()
        .map(|&(from, to)| {
            let free = |lane: &Vec<(f64, f64)>| {
                lane.iter().all(|&(a, b)| to + gap <= a || b + gap <= from)
            };
            let lane = taken.iter().position(free).unwrap_or(taken.len());
            if lane == taken.len() {
                taken.push(Vec::new());
            }
            taken[lane].push((from, to));
            lane
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spans_that_overlap_go_into_lanes_of_their_own() {
        let spans = [(0.0, 10.0), (5.0, 8.0), (11.0, 20.0), (9.0, 12.0)];
        assert_eq!(lanes(&spans, 0.5), [0, 1, 0, 1]);
        assert_eq!(lanes(&spans, 2.0), [0, 1, 1, 2]);
    }
}
