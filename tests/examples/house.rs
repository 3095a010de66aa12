//! Prints the structure of the house and draws it: `house [--repo DIR] [--svg FILE]`.
//! Any commit can be measured: give the folder it is checked out to.

#![allow(clippy::print_stdout, reason = "this is what it is for")]

use archproof_tests::house::{House, drawing, map};
use std::error::Error;
use std::path::PathBuf;

fn main() -> Result<(), Box<dyn Error>> {
    let own = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut repo = own.clone();
    let mut picture = own.join("target/house.svg");
    let mut arguments = std::env::args().skip(1);
    while let Some(option) = arguments.next() {
        let value = arguments.next().ok_or("an option without a value")?;
        match option.as_str() {
            "--repo" => repo = value.into(),
            "--svg" => picture = value.into(),
            _ => return Err(format!("no option {option}; use --repo DIR or --svg FILE").into()),
        }
    }
    let house = House::read(&repo)?;
    print!("{}", map::in_words(&house));
    if let Some(folder) = picture.parent() {
        std::fs::create_dir_all(folder)?;
    }
    std::fs::write(&picture, drawing::drawn(&house))?;
    println!("\nThe picture: {}", picture.display());
    Ok(())
}
