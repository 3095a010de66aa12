//! What the script of the page is given besides the surfaces: plain numbers and words.

use super::words::Words;
use crate::page::landmarks::status;
use crate::page::material::Material;
use crate::page::overlay::{MOST_MARKS, point_mm, radius_mm, stretch, view_name};
use crate::picture::{Solid, THICKNESS_FROM_MM, THICKNESS_STEP_MM};
use crate::result::{Finding, ImpressionResult, Severity, Side};
use crate::text::format::capital;
use crate::text::measured::finding_figure;
use crate::text::rounding::to_decimals;
use crate::text::words::{
    check_name, finding_place, impression_name, landmark_name, side_word, zone_name,
};
use messages::{Language, text};
use nalgebra::Point3;
use serde::Serialize;

/// Everything that is turned.
#[derive(Serialize)]
pub struct Scene {
    /// The colours of the scale, evenly spaced, from its dark end.
    colours: Vec<[u8; 3]>,
    words: Words,
    surfaces: Vec<Surface>,
}

/// An impression.
#[derive(Serialize)]
struct Surface {
    /// Number of the impression in the case, from 1; its bytes are in the element `surface-N`.
    number: usize,
    name: String,
    /// What its picture is called.
    title: String,
    /// What is said when it comes to be shown.
    shown: String,
    is_superseded: bool,
    vertices: usize,
    triangles: usize,
    low_mm: [f64; 3],
    step_mm: f64,
    thickness: Thickness,
    /// Parts of the arch as a sentence begins; number 1 of a vertex is the first of them.
    parts: Vec<String>,
    views: Vec<Seen>,
    /// The patient's right, left and front.
    around_mm: [[f64; 3]; 3],
    border_mm: Vec<[f64; 3]>,
    is_border_closed: bool,
    places: Vec<Place>,
}

/// What the numbers of thickness mean, and how they are coloured.
#[derive(Serialize)]
struct Thickness {
    is_measured: bool,
    from_mm: f64,
    step_mm: f64,
    /// The dark end of the scale and its bright end.
    scale_mm: [f64; 2],
    uncertainty_mm: Option<f64>,
}

/// A way to look at it.
#[derive(Serialize)]
struct Seen {
    name: String,
    /// What is said when it comes to be shown.
    shown: String,
    turn: [f64; 4],
}

/// A finding or a landmark.
#[derive(Serialize)]
struct Place {
    id: String,
    kind: Kind,
    at_mm: [f64; 3],
    radius_mm: f64,
    /// The stretch of border that it is about.
    stretch_mm: Vec<[f64; 3]>,
    /// How its close picture looks at it.
    turn: Option<[f64; 4]>,
    /// What a button that leads to it is called.
    show: String,
    /// Its name in a list.
    name: String,
    /// What is said of it.
    words: String,
}

#[derive(Serialize)]
#[serde(rename_all = "lowercase")]
enum Kind {
    Fail,
    Borderline,
    Note,
    Landmark,
}

impl Scene {
    /// `None` where nothing can be turned.
    pub fn of(material: &Material<'_>) -> Option<Self> {
        const COLOURS: u32 = 64;
        let impressions = material.result.impressions.iter().enumerate();
        let surfaces: Vec<Surface> = impressions
            .filter_map(|(number, impression)| Surface::of(material, number, impression))
            .collect();
        let share = |step| f64::from(step) / f64::from(COLOURS - 1);
        let colour = |step| colorous::VIRIDIS.eval_continuous(share(step)).as_array();
        (!surfaces.is_empty()).then(|| Self {
            colours: (0..COLOURS).map(colour).collect(),
            words: Words::of(material.language),
            surfaces,
        })
    }

    /// As JSON that no character of ends an element of HTML or begins one.
    pub fn json(&self) -> String {
        let text = serde_json::to_string(self).unwrap_or_default();
        [('<', "\\u003c"), ('>', "\\u003e"), ('&', "\\u0026")]
            .into_iter()
            .fold(text, |text, (sign, escaped)| text.replace(sign, escaped))
    }
}

impl Surface {
    fn of(material: &Material<'_>, number: usize, impression: &ImpressionResult) -> Option<Self> {
        let language = material.language;
        let solid = material.pictures.solids.get(number)?.as_ref()?;
        let views = material.pictures.views.get(number)?;
        let views: Vec<Seen> = (views.iter())
            .filter_map(|picture| {
                let name = view_name(picture.view?, language);
                Some(Seen {
                    shown: text!(language, "turning-shown", name = name.as_str()),
                    name,
                    turn: turn(picture.camera.turn()),
                })
            })
            .collect();
        let border = impression.border.as_ref();
        let stations = border.iter().flat_map(|border| &border.stations);
        let mm = |point: &[f64; 3]| Some(short(&point_mm(impression, point)?));
        let name = capital(&impression_name(impression, language));
        (!views.is_empty()).then(|| Self {
            number: number + 1,
            title: text!(language, "turning-name", name = name.as_str()),
            shown: text!(language, "turning-shown", name = name.as_str()),
            name,
            is_superseded: impression.superseded,
            vertices: solid.surface.vertices,
            triangles: solid.surface.triangles,
            low_mm: solid.low_mm.coords.into(),
            step_mm: solid.step_mm,
            thickness: Thickness::of(impression),
            parts: parts(impression, language),
            views,
            around_mm: around(solid),
            border_mm: stations.filter_map(|s| mm(&s.point)).collect(),
            is_border_closed: border.is_some_and(|border| border.closed),
            places: places(material, number, impression),
        })
    }
}

impl Thickness {
    fn of(impression: &ImpressionResult) -> Self {
        let cover = impression.cover.as_ref();
        let map = cover.and_then(|cover| cover.map.as_ref());
        Self {
            is_measured: map.is_some(),
            from_mm: THICKNESS_FROM_MM,
            step_mm: THICKNESS_STEP_MM,
            scale_mm: map.map_or([0.0, 1.0], |map| [map.from_mm, map.to_mm]),
            uncertainty_mm: cover.and_then(|cover| cover.uncertainty_mm),
        }
    }
}

fn parts(impression: &ImpressionResult, language: Language) -> Vec<String> {
    let parts = impression.surface.iter().flat_map(|file| &file.parts);
    parts
        .map(|part| capital(&in_words(&part.zone, part.side, language)))
        .collect()
}

fn in_words(zone: &str, side: Option<Side>, language: Language) -> String {
    let zone = zone_name(zone, language);
    match side {
        Some(side) => format!("{zone}, {}", side_word(side, language)),
        None => zone,
    }
}

fn around(solid: &Solid) -> [[f64; 3]; 3] {
    solid.around_mm.each_ref().map(short)
}

/// Findings of an impression, most urgent first, and its landmarks.
fn places(material: &Material<'_>, number: usize, impression: &ImpressionResult) -> Vec<Place> {
    let language = material.language;
    let findings = material.result.findings.iter().enumerate();
    let of_findings = findings
        .filter(|(_, finding)| finding.impression == Some(number as u64))
        .filter_map(|(order, finding)| {
            let close = material.pictures.close.get(order).and_then(Option::as_ref);
            let looked = close.map(|picture| turn(picture.camera.turn()));
            of_finding(material, impression, finding, looked)
        })
        .take(MOST_MARKS);
    let of_landmarks = impression.landmarks.iter().filter_map(|landmark| {
        let id = landmark.id.as_str();
        let name = format!("{id} {}", landmark_name(landmark, language));
        Some(Place {
            id: landmark.id.clone(),
            kind: Kind::Landmark,
            at_mm: short(&point_mm(impression, landmark.point.as_ref()?)?),
            radius_mm: 0.0,
            stretch_mm: Vec::new(),
            turn: None,
            show: text!(language, "turning-show-place", id = id),
            words: text!(
                language,
                "turning-landmark",
                name = name.as_str(),
                status = status(language, landmark.status)
            ),
            name,
        })
    });
    of_findings.chain(of_landmarks).collect()
}

fn of_finding(
    material: &Material<'_>,
    impression: &ImpressionResult,
    finding: &Finding,
    turn: Option<[f64; 4]>,
) -> Option<Place> {
    let mm = |point: &[f64; 3]| Some(short(&point_mm(impression, point)?));
    let language = material.language;
    let place = finding_place(material.result, finding, language);
    let zone = (finding.zone.as_ref()).map(|zone| in_words(zone, finding.side, language));
    let check = check_name(&finding.check, language);
    let of = |place: &str| match place {
        "" => format!("{} {check}", finding.id),
        place => format!("{} {check}, {place}", finding.id),
    };
    let figure =
        finding_figure(finding, language).map_or(String::new(), |figure| format!(": {figure}"));
    Some(Place {
        id: finding.id.clone(),
        kind: match finding.severity {
            Severity::Fail => Kind::Fail,
            Severity::Borderline => Kind::Borderline,
            Severity::Note => Kind::Note,
        },
        at_mm: mm(finding.at.as_ref()?)?,
        radius_mm: to_decimals(radius_mm(impression, finding), 2),
        stretch_mm: (stretch(impression, finding).iter())
            .filter_map(|station| mm(&station.point))
            .collect(),
        turn,
        show: text!(language, "turning-show-place", id = finding.id.as_str()),
        name: of(zone.as_deref().unwrap_or_default()),
        words: format!("{}{figure}.", of(&place)),
    })
}

/// A hundredth of a millimetre is seen by nobody.
fn short(point: &Point3<f64>) -> [f64; 3] {
    <[f64; 3]>::from(point.coords).map(|c| to_decimals(c, 2))
}

fn turn(turn: [f64; 4]) -> [f64; 4] {
    turn.map(|part| to_decimals(part, 5))
}
