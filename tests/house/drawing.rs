//! The house as a picture: crates in floors, the ground at the bottom, and the
//! folders in each. Arrows go down; one that goes up is drawn red.

use super::folders::{Folder, folders_of};
use super::layout::{BOX_WIDTH, FLOOR_GAP, Spot, direct, laid_out};
use super::plan::{permissions_of, wrong_arrows};
use super::whole::{Crate, House};
use std::collections::{BTreeMap, BTreeSet};
use svg::Document;
use svg::node::element::{Group, Path, Rectangle, Text, Title};

const ROW: usize = 15;
const HEAD: usize = 30;
/// Room beside the folders for the arrows between them.
const ARCS: usize = 62;

/// Draws the crates that users get.
#[must_use]
pub fn drawn(house: &House) -> String {
    let shown: Vec<&Crate> = house
        .crates
        .iter()
        .filter(|room| !permissions_of(&room.name).is_some_and(|row| row.is_for_tests))
        .collect();
    let folders: BTreeMap<&str, _> = shown
        .iter()
        .map(|r| (r.name.as_str(), folders_of(r)))
        .collect();
    let height = |room: &Crate| HEAD + ROW * folders[room.name.as_str()].0.len() + 8;
    let (spots, size) = laid_out(&shown, height);
    let wrong = wrong_arrows(house);
    let mut document = Document::new()
        .set("viewBox", (0, 0, size.0, size.1))
        .set("width", size.0)
        .set("height", size.1)
        .set("font-family", "sans-serif")
        .set("font-size", 11)
        .add(
            Rectangle::new()
                .set("width", size.0)
                .set("height", size.1)
                .set("fill", "white"),
        );
    for room in &shown {
        for to in direct(room, &shown) {
            let is_wrong = wrong.iter().any(|w| w.from == room.name && w.to == to);
            document = document.add(arrow(spots[room.name.as_str()], spots[to], is_wrong));
        }
    }
    for room in &shown {
        let (folders, arrows) = &folders[room.name.as_str()];
        document = document.add(crate_box(room, spots[room.name.as_str()], folders, arrows));
    }
    document.to_string()
}

/// An arrow that turns aside at once and goes down in the column of its end,
/// which is kept free for it.
fn arrow(from: Spot, to: Spot, is_wrong: bool) -> Path {
    let middle = |spot: Spot| spot.x + BOX_WIDTH / 2;
    let (x1, y1, x2, y2) = (middle(from), from.y + from.height, middle(to), to.y);
    let turned = (from.floor_end + FLOOR_GAP - 10).min(y2);
    let bend = format!(
        "M{x1} {y1} L{x1} {0} C{x1} {turned} {x2} {0} {x2} {turned}",
        from.floor_end
    );
    let head = format!(
        "M{} {} L{x2} {y2} L{} {}",
        x2 - 4,
        y2.saturating_sub(8),
        x2 + 4,
        y2.saturating_sub(8)
    );
    Path::new()
        .set("d", format!("{bend} L{x2} {y2} {head}"))
        .set("fill", "none")
        .set("stroke", if is_wrong { "red" } else { "#556" })
        .set("stroke-width", 1.5)
}

fn crate_box(
    room: &Crate,
    at: Spot,
    folders: &[Folder],
    arrows: &BTreeSet<(usize, usize)>,
) -> Group {
    let lines: usize = room.files.iter().map(|file| file.lines).sum();
    let mut group = Group::new()
        .add(
            Rectangle::new()
                .set("x", at.x)
                .set("y", at.y)
                .set("width", BOX_WIDTH)
                .set("height", at.height)
                .set("rx", 4)
                .set("fill", "#f4f6fa")
                .set("stroke", "#556"),
        )
        .add(
            Text::new(format!("{}: {lines} lines", room.name))
                .set("x", at.x + 8)
                .set("y", at.y + 17)
                .set("font-weight", "bold"),
        );
    let row = |number: usize| at.y + HEAD + ROW * number + ROW / 2;
    let edge = at.x + BOX_WIDTH - ARCS;
    for (number, folder) in folders.iter().enumerate() {
        let files = match folder.files {
            1 => String::new(),
            files => format!("/ ({files} files)"),
        };
        group = group.add(
            Text::new(format!("{}{files} {}", folder.name, folder.lines))
                .set("x", at.x + 8)
                .set("y", row(number) + 4),
        );
    }
    for &(from, to) in arrows {
        let reach = edge + (8 * from.abs_diff(to)).min(ARCS - 6);
        let title = format!("{} -> {}", folders[from].name, folders[to].name);
        group = group.add(
            Path::new()
                .set(
                    "d",
                    format!(
                        "M{edge} {} Q{reach} {} {edge} {}",
                        row(from),
                        (row(from) + row(to)) / 2,
                        row(to)
                    ),
                )
                .set("fill", "none")
                .set("stroke", if from > to { "red" } else { "#9ab" })
                .add(Title::new(title)),
        );
    }
    group
}
