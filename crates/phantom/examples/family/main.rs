//! Writes members of the broad family as case folders:
//! `family FOLDER COUNT [--from SEED] [--edge MM] [--faults]`; with `--faults` each has one.
//! `family --sheet FILE.png COUNT [--edge MM]` draws the first ones on one sheet.

mod sheet;

use mesh::write::{write_ply, write_stl};
use phantom::{Arch, Member, Phantom};
use std::error::Error;
use std::fs;
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let is_given = |flag: &str| arguments.iter().any(|a| a == flag);
    let after = |flag: &str| {
        let at = arguments.iter().position(|a| a == flag)?;
        arguments.get(at + 1)
    };
    let edge_mm: f64 = after("--edge").map_or(Ok(0.6), |text| text.parse())?;
    let member = |seed| match is_given("--faults") {
        true => Member::with_a_fault(seed),
        false => Member::sound(seed),
    };
    if is_given("--sheet") {
        let [_, file, count] = &arguments[..3] else {
            return Err("--sheet FILE.png COUNT".into());
        };
        return sheet::write(Path::new(file), count.parse()?, edge_mm, member);
    }
    let [folder, count] = arguments.get(..2).unwrap_or_default() else {
        return Err("FOLDER COUNT [--from SEED] [--edge MM] [--faults]".into());
    };
    let from: u64 = after("--from").map_or(Ok(0), |text| text.parse())?;
    for seed in from..from + count.parse::<u64>()? {
        let folder = Path::new(folder).join(format!("{seed:05}"));
        write_case(&folder, &member(seed), edge_mm)?;
    }
    Ok(())
}

fn write_case(folder: &Path, member: &Member, edge_mm: f64) -> Result<(), Box<dyn Error>> {
    let made = Phantom::new(&member.options(edge_mm));
    fs::create_dir_all(folder)?;
    write_ply(&folder.join("first.ply"), &made.impression)?;
    write_stl(&folder.join("tray.stl"), &made.tray)?;
    let name = match member.arch() {
        Arch::Maxillary => "maxillary",
        Arch::Mandibular => "mandibular",
    };
    let case = format!(
        "# An invented case.\ncase = \"B-{:05}\"\n[{name}]\nfirst_pass = \"first.ply\"\n\
         tray = \"tray.stl\"\n",
        member.seed
    );
    fs::write(folder.join("case.toml"), case)?;
    let truth = serde_json::json!({ "fault": member.fault, "truth": made.truth });
    fs::write(
        folder.join("truth.json"),
        serde_json::to_vec_pretty(&truth)?,
    )?;
    Ok(())
}
