//! Surfaces and the lines on them.

use super::material::{Look, VertexColours};
use crate::app::App;
use crate::colours::{self, Palette, Scale};
use crate::command::Layer;
use crate::maps::Map;
use crate::outline::level_line;
use crate::view::Canvas;
use kiss3d::color::Color;
use kiss3d::glamx::{Pose3, Quat, Vec3};
use kiss3d::resource::{GpuMesh3d, Material3d};
use kiss3d::scene::SceneNode3d;
use kiss3d::window::Window;
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use report::result::{DefectKind, Point};
use std::cell::RefCell;
use std::rc::Rc;

/// Lines are lifted off the surface toward the viewer, mm.
const LIFT_MM: f64 = 0.25;

/// Everything that is drawn in space.
pub struct Scene {
    surfaces: Vec<Surface>,
    coloured_by: Option<(Option<Map>, Palette, Option<Scale>)>,
    outlined: Option<Map>,
}

/// A mesh on the graphics side.
struct Drawn {
    node: SceneNode3d,
    look: Rc<RefCell<Look>>,
}

impl Drawn {
    fn new(root: &mut SceneNode3d, mesh: &Mesh, normals: &[Vector3<f64>], clear: bool) -> Self {
        let look = Rc::new(RefCell::new(Look::default()));
        let coords = mesh.vertices().iter().map(|p| single(&p.coords));
        let mesh = GpuMesh3d::new(
            coords.collect(),
            mesh.triangles().to_vec(),
            Some(normals.iter().map(single).collect()),
            Some(Vec::new()),
            false,
        );
        let mut node = root.add_mesh(Rc::new(RefCell::new(mesh)), Vec3::ONE);
        let material: Box<dyn Material3d> = Box::new(VertexColours::new(look.clone(), clear));
        node.set_material(Rc::new(RefCell::new(material)));
        Self { node, look }
    }

    fn place(&mut self, stage: Option<&Stage<'_>>) {
        self.node.set_visible(stage.is_some());
        let Some(stage) = stage else {
            return;
        };
        let canvas = stage.canvas;
        self.node.set_pose(stage.pose());
        self.look.borrow_mut().part =
            [canvas.left, canvas.top, canvas.width, canvas.height].map(|px| px as u32);
    }

    fn colour(&self, colours: Vec<[u8; 4]>) {
        let mut look = self.look.borrow_mut();
        look.colours = colours;
        look.stale = true;
    }
}

struct Surface {
    drawn: Drawn,
    tray: Option<Drawn>,
    /// Round what misses a limit of the map.
    outlines: Vec<[Point3<f64>; 2]>,
    /// Round each defect.
    defects: Vec<Vec<Point3<f64>>>,
    /// The border, closed, with its stations' places.
    border: Vec<Point3<f64>>,
    crest: Vec<Point3<f64>>,
}

impl Scene {
    /// The impressions of a case.
    pub fn new(root: &mut SceneNode3d, app: &App) -> Self {
        let surfaces = app
            .opened
            .impressions
            .iter()
            .zip(&app.opened.result.impressions)
            .map(|(shown, of)| {
                let drawn = Drawn::new(root, &shown.surface, &shown.normals, false);
                let tray = shown.tray.as_ref().map(|tray| {
                    let drawn = Drawn::new(root, tray, &tray.vertex_normals(), true);
                    drawn.colour(vec![TRAY; tray.vertices().len()]);
                    drawn
                });
                let there = |points: &[Point]| -> Vec<Point3<f64>> {
                    points.iter().map(|p| shown.placement.shown(*p)).collect()
                };
                let border = of.border.as_ref();
                let stations: Vec<Point> = border
                    .iter()
                    .flat_map(|border| &border.stations)
                    .map(|station| station.point)
                    .collect();
                Surface {
                    drawn,
                    tray,
                    outlines: Vec::new(),
                    defects: (of.defects.iter())
                        .map(|defect| {
                            let mut line = there(&defect.outline);
                            let closed = defect.kind != DefectKind::Fold;
                            line.extend(line.first().copied().filter(|_| closed));
                            line
                        })
                        .collect(),
                    border: there(&stations),
                    crest: border.map_or_else(Vec::new, |border| there(&border.crest_line)),
                }
            })
            .collect();
        Self {
            surfaces,
            coloured_by: None,
            outlined: None,
        }
    }

    /// Brings everything to where it is looked at, and draws the lines.
    pub fn update(&mut self, window: &mut Window, app: &App) {
        self.colour(app);
        let slots = app.slots();
        let size = window.size();
        for (number, surface) in self.surfaces.iter_mut().enumerate() {
            let slot = slots.iter().find(|(n, _)| *n == number);
            let stage =
                slot.map(|(_, canvas)| Stage::new(app, canvas, [size.x, size.y].map(f64::from)));
            surface.drawn.place(stage.as_ref());
            if let Some(tray) = &mut surface.tray {
                tray.place(stage.as_ref().filter(|_| app.shows(Layer::Tray)));
            }
            if let Some(stage) = stage {
                surface.lines(window, app, number, &stage);
            }
        }
    }

    fn colour(&mut self, app: &App) {
        let scale = app.scale();
        let by = (app.map.clone(), app.palette, scale);
        if self.coloured_by.as_ref() != Some(&by) {
            self.coloured_by = Some(by);
            for (number, surface) in self.surfaces.iter().enumerate() {
                let vertices = app.opened.impressions[number].surface.vertices().len();
                let unknown = vec![None; vertices];
                let figures = app.map_of(number).unwrap_or(&unknown);
                // Without such a map the surface is plain: grey is for places.
                let scale = scale.filter(|_| app.map_of(number).is_some());
                let colours = colours::of_vertices(figures, scale.as_ref(), app.palette);
                surface.drawn.colour(colours);
            }
        }
        if self.outlined != app.map {
            self.outlined.clone_from(&app.map);
            for (number, surface) in self.surfaces.iter_mut().enumerate() {
                surface.outlines = outlines(app, number);
            }
        }
    }
}

/// Lines round what misses a limit of the map.
fn outlines(app: &App, number: usize) -> Vec<[Point3<f64>; 2]> {
    let Some((map, figures)) = app.map.as_ref().zip(app.map_of(number)) else {
        return Vec::new();
    };
    let mesh = &app.opened.impressions[number].surface;
    let zones = app.zones_of(number);
    app.map_limits()
        .iter()
        .flat_map(|limit| level_line(mesh, &map.missed(figures, limit, &zones), 0.0))
        .collect()
}

/// How one impression is brought into the window.
struct Stage<'a> {
    app: &'a App,
    canvas: &'a Canvas,
    /// Of the canvas's middle from the window's, mm.
    shift: Vector3<f64>,
}

impl<'a> Stage<'a> {
    fn new(app: &'a App, canvas: &'a Canvas, [width, height]: [f64; 2]) -> Self {
        let mm = app.view.mm_per_pixel(&app.canvas);
        let middle = canvas.middle();
        Self {
            app,
            canvas,
            shift: Vector3::new(middle.x - width / 2.0, height / 2.0 - middle.y, 0.0) * mm,
        }
    }

    fn pose(&self) -> Pose3 {
        let view = &self.app.view;
        let q = view.turn.coords.map(|c| c as f32);
        let origin = view.seen(&Point3::origin()) + self.shift;
        Pose3::from_parts(single(&origin), Quat::from_xyzw(q.x, q.y, q.z, q.w))
    }

    /// A piece of line, where both of its ends lie in this part of the window.
    fn line(&self, window: &mut Window, ends: [&Point3<f64>; 2], colour: [u8; 3], width: f32) {
        let view = &self.app.view;
        let inside = |p: &Point3<f64>| self.canvas.holds(&view.pixel(self.canvas, p));
        if !ends.iter().all(|p| inside(p)) {
            return;
        }
        // Thin lines lie on thick ones.
        let lift = Vector3::z() * (LIFT_MM + 0.5 / f64::from(width));
        let [a, b] = ends.map(|p| single(&(view.seen(p) + self.shift + lift)));
        let [r, g, bl] = colour.map(|c| (f32::from(c) / 255.0).powf(2.2));
        window.draw_line(a, b, Color::new(r, g, bl, 1.0), width, false);
    }
}

/// Colour and opacity of the tray.
const TRAY: [u8; 4] = [150, 190, 215, 110];
const WHITE: [u8; 3] = [255, 255, 255];
const BLACK: [u8; 3] = [0, 0, 0];

impl Surface {
    fn lines(&self, window: &mut Window, app: &App, number: usize, stage: &Stage<'_>) {
        let thick = (app.text_size * window.scale_factor()) as f32;
        if app.shows(Layer::Outlines) {
            for [a, b] in &self.outlines {
                stage.line(window, [a, b], WHITE, 1.5 * thick);
            }
            for pair in self.defects.iter().flat_map(|line| line.windows(2)) {
                stage.line(window, [&pair[0], &pair[1]], BLACK, 4.0 * thick);
                stage.line(window, [&pair[0], &pair[1]], WHITE, 2.0 * thick);
            }
        }
        if app.shows(Layer::Crest) {
            for pair in self.crest.windows(2) {
                stage.line(window, [&pair[0], &pair[1]], BLACK, 2.0 * thick);
            }
        }
        if app.shows(Layer::Border) {
            self.border_line(window, app, number, stage, thick);
        }
        if let Some(section) = app.section.as_ref().filter(|s| s.impression == number) {
            for line in &section.cut {
                let places: Vec<Point3<f64>> = line
                    .iter()
                    .map(|point| section.plane.shown(point))
                    .collect();
                for pair in places.windows(2) {
                    stage.line(window, [&pair[0], &pair[1]], WHITE, 2.5 * thick);
                }
            }
        }
    }

    fn border_line(
        &self,
        window: &mut Window,
        app: &App,
        number: usize,
        stage: &Stage<'_>,
        thick: f32,
    ) {
        let Some(border) = app.result_of(number).and_then(|of| of.border.as_ref()) else {
            return;
        };
        let by = app.border_figure.zip(app.border_scale());
        let all = self.border.len();
        for (at, place) in self.border.iter().enumerate() {
            let next = &self.border[(at + 1) % all];
            let colour = match by {
                None => WHITE,
                Some((figure, scale)) => border.stations[at]
                    .figure(figure)
                    .mm
                    .map_or(colours::UNKNOWN, |mm| app.palette.at(scale.share(mm))),
            };
            let width = if by.is_some() { 6.0 } else { 2.0 };
            stage.line(window, [place, next], colour, width * thick);
        }
        let ringed = app.ringed.and_then(|n| app.opened.result.findings.get(n));
        if let Some(finding) = ringed.filter(|f| f.impression == Some(number as u64)) {
            let shown = &app.opened.impressions[number];
            let stretch: Vec<Point3<f64>> = app
                .stretch(finding)
                .iter()
                .map(|station| shown.placement.shown(station.point))
                .collect();
            for pair in stretch.windows(2) {
                stage.line(window, [&pair[0], &pair[1]], BLACK, 10.0 * thick);
                stage.line(window, [&pair[0], &pair[1]], WHITE, 6.0 * thick);
            }
        }
    }
}

fn single(v: &Vector3<f64>) -> Vec3 {
    Vec3::new(v.x as f32, v.y as f32, v.z as f32)
}
