//! How the figures were had and how they were judged.

use super::chapter::Chapter;
use super::material::Material;
use maud::html;

pub fn chapters(_material: &Material<'_>) -> Vec<Chapter> {
    let body = html! {
            dl {
                dt { "Material thickness" }
                dd { "At a point of the tissue surface, the distance to the nearest point of the tray; zero or negative where tray is at or through the surface." }
                dt { "Flange height" }
                dd { "In a section, from the crest point to the border point along the seating axis." }
                dt { "Flange thickness" }
                dd { "In a section, from tissue face to outer face, across the seating axis, at a stated depth below the border." }
                dt { "Border radius" }
                dd { "Radius of the least-squares circle through the roll of the border." }
                dt { "Overlap" }
                dd { "From a border point to the nearest point of the tray: how far material goes past the tray's edge." }
                dt { "Uncertainty" }
                dd { "Expanded, with coverage factor k = 2. It holds what the scan's noise, the tray's place and its bend add. What a real elastomer or a scanner's own distortion adds is not included." }
                dt { "Decision rule" }
                dd { "That of ISO 14253-1, in general terms: a figure conforms only if it meets its limit by more than its uncertainty and fails only if it misses it by more. Anything in between is too close to call and is never accepted in silence." }
                dt { "What cannot be known from an impression alone" }
                dd { "Whether the vestibule was deeper or wider than the material reached; whether lip, cheek and tongue were moved while it was soft; whether a low stretch of border is a broad muscle attachment and a low flange a low ridge; whether the border is too long. Compare those places with the mouth." }
            }
    };
    vec![Chapter::second("method", "Methods", body)]
}
