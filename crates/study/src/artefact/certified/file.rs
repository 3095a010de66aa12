//! The description of a reference artefact, a TOML file.

use super::fault::ArtefactFault;
use super::{
    Artefact, ArtefactLimits, Certified, CertifiedDistance, CertifiedSphere, CertifiedStep,
};
use crate::artefact::scanned::{NominalSphere, NominalStep};
use judge::located::{self, Located, TomlFileError};
use nalgebra::{Point3, UnitVector3, Vector3};
use serde::Deserialize;
use std::path::Path;
use toml::Spanned;

/// Why the description of an artefact cannot be used.
pub type ArtefactError = TomlFileError<ArtefactFault>;

/// What is wrong in the description of an artefact, and in which line.
pub type ArtefactProblem = Located<ArtefactFault>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ArtefactFile {
    artefact: Spanned<String>,
    certificate: Option<String>,
    #[serde(default)]
    sphere: Vec<SphereEntry>,
    #[serde(default)]
    distance: Vec<DistanceEntry>,
    #[serde(default)]
    step: Vec<StepEntry>,
    #[serde(default)]
    limits: LimitsEntry,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SphereEntry {
    name: Spanned<String>,
    centre: Spanned<[f64; 3]>,
    diameter_mm: Spanned<f64>,
    uncertainty_mm: Spanned<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct DistanceEntry {
    between: Spanned<[String; 2]>,
    mm: Spanned<f64>,
    uncertainty_mm: Spanned<f64>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct StepEntry {
    name: Spanned<String>,
    lower: [f64; 3],
    upper: [f64; 3],
    facing: [f64; 3],
    reach_mm: Spanned<f64>,
    mm: Spanned<f64>,
    uncertainty_mm: Spanned<f64>,
}

#[derive(Deserialize, Default)]
#[serde(deny_unknown_fields)]
struct LimitsEntry {
    diameter_error_mm: Option<Spanned<f64>>,
    distance_error_mm: Option<Spanned<f64>>,
    step_error_mm: Option<Spanned<f64>>,
    dispersion_mm: Option<Spanned<f64>>,
}

impl Artefact {
    /// Reads the description of an artefact.
    ///
    /// # Errors
    /// When the file cannot be read or says what no artefact can be.
    pub fn from_file(path: &Path) -> Result<Self, ArtefactError> {
        located::read(path, parse)
    }
}

type Parsed<T> = Result<T, ArtefactProblem>;

fn parse(text: &str) -> Parsed<Artefact> {
    let file: ArtefactFile = located::from_toml(text, ArtefactFault::Toml)?;
    let id = name(text, &file.artefact, ArtefactFault::NoId)?;
    let certificate = file.certificate.unwrap_or_default();
    let mut spheres: Vec<CertifiedSphere> = Vec::new();
    for entry in &file.sphere {
        let sphere = entry.certified(text)?;
        if spheres.iter().any(|other| other.name == sphere.name) {
            let at = entry.name.span().start;
            return Err(located::at(text, at, ArtefactFault::SphereName));
        }
        spheres.push(sphere);
    }
    if spheres.is_empty() {
        return Err(Located {
            line: None,
            fault: ArtefactFault::NoSphere,
        });
    }
    let distances = file.distance.iter().map(|d| d.certified(text, &spheres));
    let mut steps: Vec<CertifiedStep> = Vec::new();
    for entry in &file.step {
        let step = entry.certified(text)?;
        let fault = |fault| Err(located::at(text, entry.name.span().start, fault));
        if steps.iter().any(|other| other.name == step.name) {
            return fault(ArtefactFault::StepName);
        }
        if !hold_a_place(&spheres) {
            return fault(ArtefactFault::StepUnplaced);
        }
        steps.push(step);
    }
    Ok(Artefact {
        id,
        certificate: certificate
            .trim()
            .chars()
            .filter(|c| !c.is_control())
            .collect(),
        distances: distances.collect::<Parsed<_>>()?,
        steps,
        limits: file.limits.checked(text)?,
        spheres,
    })
}

/// Whether three of the spheres span a triangle that holds the artefact.
fn hold_a_place(spheres: &[CertifiedSphere]) -> bool {
    /// Least height of that triangle, mm.
    const LEAST_MM: f64 = 5.0;
    let centre = |k: usize| spheres[k].nominal.centre;
    let count = spheres.len();
    let is_wide = |a: usize, b: usize, c: usize| {
        let [ab, ac, bc] = [
            centre(b) - centre(a),
            centre(c) - centre(a),
            centre(c) - centre(b),
        ];
        let longest = ab.norm().max(ac.norm()).max(bc.norm());
        ab.cross(&ac).norm() > LEAST_MM * longest
    };
    (0..count).any(|a| (0..a).any(|b| (0..b).any(|c| is_wide(a, b, c))))
}

fn name(text: &str, given: &Spanned<String>, fault: ArtefactFault) -> Parsed<String> {
    let name = given.get_ref().trim();
    if name.is_empty() || name.chars().any(char::is_control) {
        return Err(located::at(text, given.span().start, fault));
    }
    Ok(name.to_owned())
}

/// A number that must be finite, and more than 0 or, if `or_zero`, not less.
fn number(text: &str, given: &Spanned<f64>, or_zero: bool, fault: ArtefactFault) -> Parsed<f64> {
    let value = *given.get_ref();
    if value.is_finite() && (value > 0.0 || (or_zero && value == 0.0)) {
        Ok(value)
    } else {
        Err(located::at(text, given.span().start, fault))
    }
}

fn certified(text: &str, mm: &Spanned<f64>, uncertainty_mm: &Spanned<f64>) -> Parsed<Certified> {
    Ok(Certified {
        mm: number(text, mm, false, ArtefactFault::Size)?,
        uncertainty_mm: number(text, uncertainty_mm, true, ArtefactFault::Uncertainty)?,
    })
}

impl SphereEntry {
    fn certified(&self, text: &str) -> Parsed<CertifiedSphere> {
        let centre = self.centre.get_ref();
        if !centre.iter().all(|c| c.is_finite()) {
            let at = self.centre.span().start;
            return Err(located::at(text, at, ArtefactFault::Centre));
        }
        let diameter = certified(text, &self.diameter_mm, &self.uncertainty_mm)?;
        Ok(CertifiedSphere {
            name: name(text, &self.name, ArtefactFault::SphereName)?,
            nominal: NominalSphere {
                centre: Point3::from(*centre),
                radius_mm: diameter.mm / 2.0,
            },
            diameter,
        })
    }
}

/// Nominal places are drawings': a certified length farther off, as a share and
/// mm, is a slip of the pen.
fn is_slip(certified_mm: f64, nominal_mm: f64) -> bool {
    const SHARE: f64 = 0.01;
    const BESIDES_MM: f64 = 0.1;
    (nominal_mm - certified_mm).abs() > BESIDES_MM + SHARE * certified_mm
}

impl StepEntry {
    fn certified(&self, text: &str) -> Parsed<CertifiedStep> {
        let at = |given: std::ops::Range<usize>, fault| located::at(text, given.start, fault);
        let fault = |fault| at(self.name.span(), fault);
        let name = name(text, &self.name, ArtefactFault::StepName)?;
        let numbers = [self.lower, self.upper, self.facing].concat();
        let facing = UnitVector3::try_new(Vector3::from(self.facing), 1e-9)
            .filter(|_| numbers.iter().all(|n| n.is_finite()))
            .ok_or_else(|| fault(ArtefactFault::StepPlace))?;
        let nominal = NominalStep {
            faces: [Point3::from(self.lower), Point3::from(self.upper)],
            facing,
            reach_mm: number(text, &self.reach_mm, false, ArtefactFault::StepReach)?,
        };
        let across = (nominal.faces[1] - nominal.faces[0]).cross(&facing).norm();
        if across <= 2.0 * nominal.reach_mm {
            return Err(at(self.reach_mm.span(), ArtefactFault::StepReach));
        }
        let height = certified(text, &self.mm, &self.uncertainty_mm)?;
        let (certified_mm, nominal_mm) = (height.mm, nominal.height_mm());
        if is_slip(certified_mm, nominal_mm) {
            let fault = ArtefactFault::FacesElsewhere {
                certified_mm,
                nominal_mm,
            };
            return Err(at(self.mm.span(), fault));
        }
        Ok(CertifiedStep {
            name,
            nominal,
            height,
        })
    }
}

impl DistanceEntry {
    fn certified(&self, text: &str, spheres: &[CertifiedSphere]) -> Parsed<CertifiedDistance> {
        let at = self.between.span().start;
        let fault = |fault| located::at(text, at, fault);
        let place = |name: &str| spheres.iter().position(|s| s.name == name.trim());
        let [one, other] = self.between.get_ref();
        let (one, other) = (place(one).zip(place(other)))
            .filter(|(one, other)| one != other)
            .ok_or_else(|| fault(ArtefactFault::Between))?;
        let distance = certified(text, &self.mm, &self.uncertainty_mm)?;
        let [a, b] = [one, other].map(|k| spheres[k].nominal.centre);
        let nominal_mm = (a - b).norm();
        if is_slip(distance.mm, nominal_mm) {
            return Err(fault(ArtefactFault::CentresElsewhere {
                certified_mm: distance.mm,
                nominal_mm,
            }));
        }
        Ok(CertifiedDistance {
            between: [one, other],
            distance,
        })
    }
}

impl LimitsEntry {
    fn checked(&self, text: &str) -> Parsed<ArtefactLimits> {
        let limit = |given: &Option<Spanned<f64>>| {
            let given = given.as_ref();
            given
                .map(|given| number(text, given, false, ArtefactFault::Limit))
                .transpose()
        };
        Ok(ArtefactLimits {
            diameter_error_mm: limit(&self.diameter_error_mm)?,
            distance_error_mm: limit(&self.distance_error_mm)?,
            step_error_mm: limit(&self.step_error_mm)?,
            dispersion_mm: limit(&self.dispersion_mm)?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    const WHOLE: &str = r#"
artefact = "BALLS-1"
certificate = "calibration of last year"
[[sphere]]
name = "A"
centre = [0, 0, 0]
diameter_mm = 10.001
uncertainty_mm = 0.0008
[[sphere]]
name = "B"
centre = [40, 0, 0]
diameter_mm = 9.998
uncertainty_mm = 0.0008
[[distance]]
between = ["A", "B"]
mm = 40.003
uncertainty_mm = 0.0012
[[sphere]]
name = "C"
centre = [10, 24, 3]
diameter_mm = 10.0
uncertainty_mm = 0.0008
[[step]]
name = "S"
lower = [14, 2, 1]
upper = [22, 2, 3]
facing = [0, 0, 1]
reach_mm = 3
mm = 2.001
uncertainty_mm = 0.0006
[limits]
diameter_error_mm = 0.02
distance_error_mm = 0.03
"#;

    #[test]
    fn every_key_is_read() {
        let artefact = parse(WHOLE).unwrap();
        assert_eq!(artefact.id, "BALLS-1");
        assert_eq!(artefact.certificate, "calibration of last year");
        assert_eq!(artefact.spheres[1].nominal.centre, Point3::new(40., 0., 0.));
        assert_eq!(artefact.spheres[1].nominal.radius_mm, 4.999);
        assert_eq!(artefact.distances[0].between, [0, 1]);
        assert_eq!(artefact.distances[0].distance.uncertainty_mm, 0.0012);
        assert_eq!(artefact.steps[0].nominal.height_mm(), 2.0);
        assert_eq!(artefact.steps[0].height.mm, 2.001);
        assert_eq!(artefact.limits.distance_error_mm, Some(0.03));
        assert_eq!(artefact.limits.dispersion_mm, None);
    }

    #[rstest]
    #[case::id("\"BALLS-1\"", "\" \"", Some(2), "name")]
    #[case::name_twice("name = \"B\"", "name = \"A\"", Some(10), "no other sphere")]
    #[case::centre("[40, 0, 0]", "[40, nan, 0]", Some(11), "three finite")]
    #[case::size("diameter_mm = 9.998", "diameter_mm = 0", Some(12), "more than 0")]
    #[case::doubt("uncertainty_mm = 0.0012", "uncertainty_mm = -1", Some(17), "not less")]
    #[case::limit("diameter_error_mm = 0.02", "diameter_error_mm = 0", Some(32), "limit")]
    #[case::between("[\"A\", \"B\"]", "[\"A\", \"D\"]", Some(15), "between two")]
    #[case::itself("[\"A\", \"B\"]", "[\"A\", \"A\"]", Some(15), "between two")]
    #[case::slip("mm = 40.003", "mm = 43.003", Some(15), "40.000 mm apart")]
    #[case::step_name("name = \"S\"", "name = \"\"", Some(24), "step")]
    #[case::looks_nowhere("[0, 0, 1]", "[0, 0, 0]", Some(24), "facing")]
    #[case::one_over_the_other("reach_mm = 3", "reach_mm = 4", Some(28), "beside each other")]
    #[case::other_height("mm = 2.001", "mm = 1.5", Some(29), "2.000 mm apart along facing")]
    #[case::unplaced("[10, 24, 3]", "[10, 0.5, 0]", Some(24), "three spheres")]
    #[case::unknown("certificate", "certified_by", Some(3), "certified_by")]
    fn nonsense_is_refused_by_line(
        #[case] what: &str,
        #[case] by: &str,
        #[case] line: Option<usize>,
        #[case] says: &str,
    ) {
        let problem = parse(&WHOLE.replacen(what, by, 1)).unwrap_err();
        assert_eq!(problem.line, line, "{problem}");
        assert!(problem.to_string().contains(says), "{problem}");
        let empty = parse("artefact = \"x\"").unwrap_err();
        assert_eq!(empty.fault, ArtefactFault::NoSphere);
    }
}
