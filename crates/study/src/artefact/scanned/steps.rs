//! Steps of known height in a scan: two parallel planes fitted together, as ISO
//! 5436-1 fits two parallel lines to the profile of a step (from memory), where
//! the spheres say that the faces lie.

use super::figures::ScannedArtefact;
use mesh::Mesh;
use messages::{Message, message, said_by_the_catalogue};
use nalgebra::{Matrix4, Point3, Rotation3, UnitVector3, Vector3, Vector4};

/// A step as it is said to be: two faces that look the same way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NominalStep {
    /// A point of the lower face and one of the upper, coordinates of the
    /// artefact, mm.
    pub faces: [Point3<f64>; 2],
    /// Where both look.
    pub facing: UnitVector3<f64>,
    /// How far about its point each face reaches, mm.
    pub reach_mm: f64,
}

impl NominalStep {
    /// Its height by these numbers, mm.
    #[must_use]
    pub fn height_mm(&self) -> f64 {
        self.facing.dot(&(self.faces[1] - self.faces[0]))
    }
}

/// A step as it was scanned.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ScannedStep {
    /// Distance between the two planes, mm.
    pub height_mm: f64,
    /// Expanded uncertainty (k = 2) that the scatter of the points leaves, mm.
    pub uncertainty_mm: f64,
    /// Number of vertices of the lower face and of the upper.
    pub points: [usize; 2],
}

/// Why a step was not found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StepNotFound {
    /// Whether it is the upper face that is not seen.
    pub upper: bool,
    /// Vertices that are seen on it.
    pub seen: usize,
}

impl StepNotFound {
    /// Why, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        message!(
            "artefact-no-face",
            seen = self.seen,
            face = if self.upper { "upper" } else { "lower" },
            least = LEAST_POINTS
        )
    }
}

said_by_the_catalogue!(StepNotFound);

/// Faces of fewer vertices are not fitted.
const LEAST_POINTS: usize = 20;
/// How far along its normal a face may lie from where the spheres put it, mm.
const OFF_MM: f64 = 1.0;
/// Cosine between a vertex's normal and the face's: sides of the step stand across.
const ALIKE: f64 = 0.9;

impl ScannedArtefact {
    /// Measures a step in the scan in which the artefact was found.
    ///
    /// # Errors
    /// When one of its faces was not scanned.
    pub fn step(&self, scan: &Mesh, step: &NominalStep) -> Result<ScannedStep, StepNotFound> {
        let faces = [0, 1].map(|k| self.face(scan, step, k));
        for (face, upper) in faces.iter().zip([false, true]) {
            if face.len() < LEAST_POINTS {
                let seen = face.len();
                return Err(StepNotFound { upper, seen });
            }
        }
        trimmed(faces)
    }

    /// Vertices on a face, in coordinates of which z is the height over it.
    fn face(&self, scan: &Mesh, step: &NominalStep, face: usize) -> Vec<Point3<f64>> {
        let level = Rotation3::rotation_between(&step.facing, &Vector3::z()).unwrap_or_else(|| {
            Rotation3::from_axis_angle(&Vector3::x_axis(), std::f64::consts::PI)
        });
        let about = level * step.faces[0];
        let off = level * (step.faces[face] - step.faces[0]);
        let from_scan = self.from_nominal.inverse();
        let on_face = |(point, normal): (&Point3<f64>, Vector3<f64>)| {
            let place = Point3::from(level * (from_scan * point) - about);
            let looks = level * (from_scan * normal);
            let from_middle = place.coords - off;
            (from_middle.xy().norm() <= step.reach_mm
                && from_middle.z.abs() <= OFF_MM
                && looks.z.abs() >= ALIKE)
                .then_some(place)
        };
        let vertices = scan.vertices().iter().zip(scan.vertex_normals());
        vertices.filter_map(on_face).collect()
    }
}

/// Both faces fitted, points beyond three standard deviations left out.
fn trimmed(mut faces: [Vec<Point3<f64>>; 2]) -> Result<ScannedStep, StepNotFound> {
    const ROUNDS: usize = 10;
    const LEAST_BAND_MM: f64 = 0.005;
    let mut fit = ParallelPlanes::fit(&faces);
    for _ in 0..ROUNDS {
        let Some(planes) = fit else { break };
        let mut off: Vec<f64> = planes.residuals(&faces).map(f64::abs).collect();
        let middle = off.len() / 2;
        let (_, median, _) = off.select_nth_unstable_by(middle, f64::total_cmp);
        let band = (3.0 * 1.4826 * *median).max(LEAST_BAND_MM);
        let before = faces[0].len() + faces[1].len();
        for (k, face) in faces.iter_mut().enumerate() {
            face.retain(|p| planes.residual(k, p).abs() <= band);
        }
        if faces[0].len() + faces[1].len() == before {
            break;
        }
        fit = ParallelPlanes::fit(&faces);
    }
    let points = [faces[0].len(), faces[1].len()];
    let upper = points[1] < points[0];
    let seen = points[usize::from(upper)];
    let measured = fit.filter(|_| seen >= LEAST_POINTS).and_then(|planes| {
        let (height_mm, uncertainty_mm) = planes.height(&faces)?;
        Some(ScannedStep {
            height_mm,
            uncertainty_mm,
            points,
        })
    });
    measured.ok_or(StepNotFound { upper, seen })
}

/// The planes z = a x + b y + c, with a c of its own for either face.
#[derive(Debug, Clone, Copy)]
struct ParallelPlanes(Vector4<f64>);

impl ParallelPlanes {
    fn fit(faces: &[Vec<Point3<f64>>; 2]) -> Option<Self> {
        let (mut normal, mut right) = (Matrix4::zeros(), Vector4::zeros());
        for (k, p) in numbered(faces) {
            normal += row(k, p) * row(k, p).transpose();
            right += row(k, p) * p.z;
        }
        Some(Self(normal.cholesky()?.solve(&right)))
    }

    fn residual(&self, face: usize, p: &Point3<f64>) -> f64 {
        p.z - row(face, p).dot(&self.0)
    }

    fn residuals(&self, faces: &[Vec<Point3<f64>>; 2]) -> impl Iterator<Item = f64> {
        numbered(faces).map(|(k, p)| self.residual(k, p))
    }

    /// Distance between the planes with its expanded uncertainty (k = 2), if the
    /// points err independently and alike, mm.
    fn height(&self, faces: &[Vec<Point3<f64>>; 2]) -> Option<(f64, f64)> {
        let normal: Matrix4<f64> = numbered(faces)
            .map(|(k, p)| row(k, p) * row(k, p).transpose())
            .sum();
        let freedom = (faces[0].len() + faces[1].len()).checked_sub(4)? as f64;
        let variance = self.residuals(faces).map(|r| r * r).sum::<f64>() / freedom;
        let between = Vector4::new(0.0, 0.0, -1.0, 1.0);
        let of_height = (between.transpose() * normal.cholesky()?.inverse() * between).x;
        let slope = self.0.xy().norm_squared();
        Some((
            self.0.dot(&between) / (1.0 + slope).sqrt(),
            2.0 * (variance * of_height).sqrt(),
        ))
    }
}

fn numbered(faces: &[Vec<Point3<f64>>; 2]) -> impl Iterator<Item = (usize, &Point3<f64>)> {
    let of = |k: usize| faces[k].iter().map(move |p| (k, p));
    of(0).chain(of(1))
}

fn row(face: usize, p: &Point3<f64>) -> Vector4<f64> {
    let [lower, upper] = if face == 0 { [1.0, 0.0] } else { [0.0, 1.0] };
    Vector4::new(p.x, p.y, lower, upper)
}
