//! The structure of the source tree: crates, arrows between them, circles of
//! files, long functions, and the packages that users get.

mod circles;
mod code;
mod crates;
pub mod drawing;
mod fault;
mod folders;
mod functions;
mod imports;
mod layout;
mod lock;
pub mod map;
mod modules;
pub mod plan;
mod test_code;
mod whole;

pub use circles::{Circle, circles, ties_of};
pub use code::{Line, holds_word};
pub use crates::Dependency;
pub use fault::HouseError;
pub use folders::{Folder, folders_of};
pub use functions::{Function, Shape};
pub use imports::Import;
pub use lock::packages_in;
pub use modules::File;
pub use whole::{Crate, House};
