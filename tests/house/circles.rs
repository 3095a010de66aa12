//! Circles: files that import each other, directly or by way of others.

use super::imports::Import;
use petgraph::algo::tarjan_scc;
use petgraph::graphmap::DiGraphMap;

/// Files that can only be understood together, by their numbers, in order.
pub type Circle = Vec<usize>;

/// The circles among imports, the largest first.
#[must_use]
pub fn circles(imports: &[Import]) -> Vec<Circle> {
    let graph: DiGraphMap<usize, ()> = imports.iter().map(|i| (i.from, i.to)).collect();
    let mut circles: Vec<Circle> = tarjan_scc(&graph)
        .into_iter()
        .filter(|files| files.len() > 1)
        .collect();
    for circle in &mut circles {
        circle.sort_unstable();
    }
    circles.sort_by_key(|circle| (usize::MAX - circle.len(), circle.clone()));
    circles
}

/// The imports that hold a circle together.
pub fn ties_of<'a>(circle: &'a Circle, imports: &'a [Import]) -> impl Iterator<Item = &'a Import> {
    let inside = |file| circle.binary_search(&file).is_ok();
    imports
        .iter()
        .filter(move |i| inside(i.from) && inside(i.to))
}
