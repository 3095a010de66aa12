//! Crates seen from farther away: their folders.

use super::whole::Crate;
use petgraph::algo::tarjan_scc;
use petgraph::graphmap::DiGraphMap;
use std::collections::BTreeSet;

/// A folder of a crate; files beside `lib.rs` are folders of one file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Folder {
    /// Its name.
    pub name: String,
    /// Files in it.
    pub files: usize,
    /// Lines of these files.
    pub lines: usize,
}

/// The folders of a crate so that each comes before those it imports from, as
/// far as there are no circles; and who imports from whom.
#[must_use]
pub fn folders_of(room: &Crate) -> (Vec<Folder>, BTreeSet<(usize, usize)>) {
    let names: Vec<String> = (0..room.files.len()).map(|f| name_of(room, f)).collect();
    let mut graph = DiGraphMap::<&str, ()>::new();
    for name in &names {
        graph.add_node(name);
    }
    for import in &room.imports {
        if names[import.from] != names[import.to] {
            graph.add_edge(&names[import.from], &names[import.to], ());
        }
    }
    let order: Vec<&str> = tarjan_scc(&graph).into_iter().rev().flatten().collect();
    let position = |name: &str| order.iter().position(|&n| n == name);
    let arrows = graph
        .all_edges()
        .filter_map(|(from, to, ())| Some((position(from)?, position(to)?)))
        .collect();
    let folders = order.iter().map(|&name| folder(room, &names, name));
    (folders.collect(), arrows)
}

fn folder(room: &Crate, names: &[String], name: &str) -> Folder {
    let inside = || (0..names.len()).filter(|&file| names[file] == name);
    Folder {
        name: name.to_owned(),
        files: inside().count(),
        lines: inside().map(|file| room.files[file].lines).sum(),
    }
}

fn name_of(room: &Crate, file: usize) -> String {
    let path = &room.files[file].path;
    let path = path.strip_prefix("src").unwrap_or(path);
    let first = path.iter().next().unwrap_or_default().to_string_lossy();
    first.strip_suffix(".rs").unwrap_or(&first).to_owned()
}
