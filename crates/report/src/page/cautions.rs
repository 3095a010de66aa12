//! What must be read with every report.

use super::chapter::Chapter;
use super::material::Material;
use maud::{Markup, html};

pub fn chapters(_material: &Material<'_>) -> Vec<Chapter> {
    vec![chapter()]
}

/// The cautions, wherever results are read.
pub fn cautions() -> Markup {
    chapter().drawn()
}

fn chapter() -> Chapter {
    let body = html! {
            ul {
                li { "This is an aid to inspection. It is not a medical device and makes no diagnosis; the licensed clinician decides, with the impression in hand." }
                li { "Local regulations and infection-control rules come first. Clean and disinfect the impression before it is handled, scanned or shipped, and state with the parcel what was used and for how long." }
                li { "Relieve a tray only out of the mouth, with eye and dust protection; feel for sharp edges and smooth them before it goes back." }
                li { "The instructions of the makers of the elastomer and of the tray take precedence over this page." }
                li { "A scan of a mouth and what is made of it are health data: keep this page as such data are to be kept where you work." }
            }
    };
    Chapter::first("cautions", "Cautions", body).of_class("notice")
}
