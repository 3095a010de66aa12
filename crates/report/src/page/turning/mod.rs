//! The impression itself, to be turned on the page: drawn by WebGL 2 from surfaces that lie in
//! the page. Where a browser runs no script or has no WebGL 2, the still pictures stay; they are
//! printed in any case.

mod scene;
mod words;

use super::material::Material;
use super::overlay::{colour_scale, cover_levels};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{Markup, PreEscaped, html};
use messages::text;
use scene::Scene;

/// The script of the page.
pub(super) const SCRIPT: &str = concat!(
    include_str!("unpacked.js"),
    include_str!("turns.js"),
    include_str!("drawing.js"),
    include_str!("pointing.js"),
    include_str!("section.js"),
    include_str!("marks.js"),
    include_str!("handling.js"),
    include_str!("turning.js"),
);

/// What is shown in place of the still pictures of the overview; the page's script fills it.
pub(super) fn figure(material: &Material<'_>) -> Option<Markup> {
    let language = material.language;
    let impressions = &material.result.impressions;
    let solids = material.pictures.solids.iter().flatten();
    let map = (impressions.iter()).find_map(|i| i.cover.as_ref()?.map.as_ref());
    let is_thinned = solids.clone().any(|solid| solid.is_thinned);
    solids.clone().next()?;
    let kinds = [
        ("places", text!(language, "turning-findings")),
        ("landmarks", text!(language, "turning-landmarks")),
        ("border", text!(language, "turning-border")),
    ];
    let section = text!(language, "turning-section");
    Some(html! {
        figure.turning #turning {
            div.row #turning-surfaces role="group" aria-label=(text!(language, "turning-surfaces")) {}
            div.stage {
                canvas #turning-canvas tabindex="0" role="application"
                    aria-label=(text!(language, "turning-canvas")) aria-describedby="turning-keys" {}
                svg #turning-marks aria-hidden="true" {}
            }
            p #turning-said role="status" { (text!(language, "turning-click")) }
            div.cut #turning-cut hidden {
                svg role="img" aria-label=(section) {
                    path {}
                    circle r="0.5" {}
                    line x1="10" x2="15" {}
                }
                p { (text!(language, "turning-section-is")) }
            }
            @if let Some(map) = map {
                svg.scale viewBox="290 0 510 98" role="img" aria-label=(text!(language, "turning-colours")) {
                    @let what = text!(language, "page-scale-material-thickness");
                    (colour_scale(map.ends_mm(), &what, &cover_levels(material.result, language), 28.0, language))
                }
            }
            div.row #turning-buttons role="group" aria-label=(text!(language, "turning-ways")) {}
            div.row {
                label for="turning-place" { (text!(language, "turning-go-to")) " " }
                select #turning-place {}
                @for (what, word) in &kinds {
                    label { input type="checkbox" checked autocomplete="off" id={ "turning-" (what) }; " " (word) }
                }
                label { input type="checkbox" autocomplete="off" id="turning-section"; " " (section) }
            }
            figcaption {
                span #turning-keys { (text!(language, "turning-keys")) " " }
                (text!(language, "turning-legend"))
                @if is_thinned { " " (text!(language, "turning-thinned")) }
            }
        }
    })
}

/// What the script reads: data alone, which no browser runs.
pub(super) fn data(material: &Material<'_>) -> Option<Markup> {
    let scene = Scene::of(material)?;
    let solids = material.pictures.solids.iter().enumerate();
    Some(html! {
        @for (number, solid) in solids {
            @if let Some(solid) = solid {
                script type="application/octet-stream" id={ "surface-" (number + 1) } {
                    (PreEscaped(STANDARD.encode(&solid.surface.bytes)))
                }
            }
        }
        script #turning-scene type="application/json" { (PreEscaped(scene.json())) }
    })
}
