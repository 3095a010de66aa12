//! How a scan is looked at: without perspective, so that lengths in the plane of
//! the picture are true.

use measure::Frame;
use nalgebra::{Matrix3, Point3, Rotation3, UnitQuaternion, Vector3};

/// A direction that an impression is shown from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum View {
    /// Onto the tissue surface along the seating axis, front up.
    Tissue,
    /// Onto the tray's side along the seating axis, front up.
    Outer,
    /// From behind, tilted toward the tissue surface, tissue side up.
    Back,
}

impl View {
    /// Every view, in the order in which they are shown.
    pub const ALL: [Self; 3] = [Self::Tissue, Self::Outer, Self::Back];

    /// The name within other names.
    pub fn code(self) -> &'static str {
        match self {
            Self::Tissue => "tissue",
            Self::Outer => "outer",
            Self::Back => "back",
        }
    }

    /// Page axes: to the right, up, toward whoever looks.
    fn axes(self, frame: &Frame) -> [Vector3<f64>; 3] {
        let (up, toward) = match self {
            Self::Tissue => (frame.anterior, frame.seating),
            Self::Outer => (frame.anterior, -frame.seating),
            Self::Back => {
                let (sin, cos) = 35_f64.to_radians().sin_cos();
                (
                    frame.seating * cos + frame.anterior * sin,
                    frame.seating * sin - frame.anterior * cos,
                )
            }
        };
        [up.cross(&toward), up, toward]
    }
}

/// From scan coordinates, mm, to pixels of a picture.
#[derive(Debug, Clone)]
pub struct Camera {
    /// Page axes: to the right, up, toward whoever looks.
    axes: [Vector3<f64>; 3],
    /// Middle of the picture along the first two axes, mm.
    middle: [f64; 2],
    /// Scale of the picture.
    pub px_per_mm: f64,
    /// Width and height, px.
    pub size: [usize; 2],
}

impl Camera {
    /// Free space round the scan in a whole view, px.
    const MARGIN_PX: f64 = 12.0;

    /// Cameras for all views of a scan, on one scale: none is wider or higher
    /// than `most`, px. `None` for a scan without extent.
    pub fn of_views(
        vertices: &[Point3<f64>],
        frame: &Frame,
        most: [usize; 2],
    ) -> Option<Vec<Self>> {
        let spans: Vec<_> = View::ALL
            .iter()
            .map(|view| {
                let axes = view.axes(frame);
                (axes, span(vertices, &axes[0]), span(vertices, &axes[1]))
            })
            .collect();
        let px_per_mm = spans
            .iter()
            .flat_map(|(_, across, up)| [(across, most[0]), (up, most[1])])
            .map(|(&(low, high), px)| (px as f64 - 2.0 * Self::MARGIN_PX) / (high - low))
            .fold(f64::INFINITY, f64::min);
        if !px_per_mm.is_finite() || px_per_mm <= 0.0 {
            return None;
        }
        let cameras = spans.into_iter().map(|(axes, across, up)| {
            let px = |(low, high): (f64, f64)| {
                ((high - low) * px_per_mm + 2.0 * Self::MARGIN_PX).ceil() as usize
            };
            Self {
                axes,
                middle: [f64::midpoint(across.0, across.1), f64::midpoint(up.0, up.1)],
                px_per_mm,
                size: [px(across).min(most[0]), px(up).min(most[1])],
            }
        });
        Some(cameras.collect())
    }

    /// A camera that looks at `at` from the side of `toward`.
    pub fn near(
        at: &Point3<f64>,
        toward: &Vector3<f64>,
        frame: &Frame,
        px_per_mm: f64,
        size: [usize; 2],
    ) -> Self {
        // Front up, unless that is where one looks from.
        let up = if toward.dot(&frame.anterior).abs() < 0.75 {
            frame.anterior
        } else {
            frame.seating
        };
        let right = up.cross(toward).normalize();
        let axes = [right, toward.cross(&right), *toward];
        Self {
            axes,
            middle: [at.coords.dot(&axes[0]), at.coords.dot(&axes[1])],
            px_per_mm,
            size,
        }
    }

    /// Place of a point: to the right and down, px; toward whoever looks, mm.
    pub fn place(&self, point: &Point3<f64>) -> [f64; 3] {
        let along = |k: usize| point.coords.dot(&self.axes[k]);
        [
            self.size[0] as f64 / 2.0 + (along(0) - self.middle[0]) * self.px_per_mm,
            self.size[1] as f64 / 2.0 - (along(1) - self.middle[1]) * self.px_per_mm,
            along(2),
        ]
    }

    /// The rotation from scan coordinates to the page axes, as a unit quaternion: its vector
    /// part, then its real part.
    pub fn turn(&self) -> [f64; 4] {
        let rows = self.axes.map(|axis| axis.transpose());
        let rotation = Rotation3::from_matrix_unchecked(Matrix3::from_rows(&rows));
        let turn = UnitQuaternion::from_rotation_matrix(&rotation);
        turn.coords.into()
    }

    /// Unit vector toward whoever looks.
    pub fn toward(&self) -> Vector3<f64> {
        self.axes[2]
    }

    /// Whether a direction points to the right of the page.
    pub fn is_to_the_right(&self, direction: &Vector3<f64>) -> bool {
        direction.dot(&self.axes[0]) > 0.0
    }

    /// What is up in the picture.
    pub fn up_in_words(&self, frame: &Frame) -> &'static str {
        let [front, tissue] = [frame.anterior, frame.seating].map(|axis| axis.dot(&self.axes[1]));
        if front >= tissue {
            "front up"
        } else {
            "tissue side up"
        }
    }
}

fn span(vertices: &[Point3<f64>], axis: &Vector3<f64>) -> (f64, f64) {
    vertices
        .iter()
        .map(|p| p.coords.dot(axis))
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), x| {
            (low.min(x), high.max(x))
        })
}
