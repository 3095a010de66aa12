//! Draws the border strip: the border unrolled along the foot of the window.

mod findings;
mod legend;

use super::panels::{pressing, settled};
use crate::along_border::STRIP_FIGURES;
use crate::app::App;
use crate::colours::{LimitMark, Scale};
use crate::maps::Map;
use crate::strip::Strip;
use crate::unrolled::Midline;
use crate::view::Canvas;
use kiss3d::egui::epaint::{Mesh, Shape, Vertex, WHITE_UV};
use kiss3d::egui::{
    Align2, Color32, Context, FontId, Id, LayerId, Order, Painter, Pos2, Rect, Stroke, Vec2,
    Visuals,
};
use messages::{Value, text};
use report::figures::StationFigure;
use report::result::{Border, Station};

/// Height of a lane of brackets, and of a row of the legend, as multiples of the
/// size of text.
const LANE: f32 = 1.15;
const ROW: f32 = 1.3;

/// Draws the strip in its part of the window; `scale` is pixels to a point.
pub fn draw(ctx: &Context, app: &App, area: &Canvas, scale: f64, text_size: f64) {
    let corner = Pos2::new((area.left / scale) as f32, (area.top / scale) as f32);
    let size = Vec2::new((area.width / scale) as f32, (area.height / scale) as f32);
    let area = Rect::from_min_size(corner, size);
    let visuals = ctx.global_style().visuals.clone();
    let layer = LayerId::new(Order::Background, Id::new("strip"));
    let painter = ctx.layer_painter(layer).with_clip_rect(area);
    painter.rect_filled(area, 0.0, visuals.panel_fill);
    let text = 14.0 * text_size as f32;
    let Some((strip, border)) = app.strip().zip(app.front_border()) else {
        let font = FontId::proportional(text);
        let words = painter.layout(
            app.missing_border(),
            font,
            visuals.text_color(),
            area.width() - 2.0 * text,
        );
        painter.galley(
            area.center() - words.size() / 2.0,
            words,
            visuals.text_color(),
        );
        return;
    };
    let limits =
        STRIP_FIGURES.map(|figure| Map::Flange(figure).limits(&app.opened.result, app.language));
    let mut drawing = Drawing {
        app,
        border,
        strip,
        scale,
        text,
        area,
        mm: heights(border, &limits),
        limits,
        painter,
        visuals,
        lanes: 0,
        legend_rows: 1,
    };
    drawing.draw();
}

/// From nothing to above all that is drawn, mm.
fn heights(border: &Border, limits: &[Vec<LimitMark>; 2]) -> Scale {
    let figures = border.stations.iter().flat_map(|station| {
        let reading = |figure| station.figure(figure);
        STRIP_FIGURES.map(|figure| {
            let of = reading(figure);
            of.mm.unwrap_or(0.0) + of.uncertainty_mm.unwrap_or(0.0)
        })
    });
    let limits = limits.iter().flatten();
    let most = limits
        .map(|limit| limit.value)
        .chain(figures)
        .fold(1.0, f64::max);
    Scale {
        from: 0.0,
        to: (most * 1.05).ceil(),
    }
}

struct Drawing<'a> {
    app: &'a App,
    border: &'a Border,
    strip: Strip,
    scale: f64,
    text: f32,
    area: Rect,
    /// The scale upward.
    mm: Scale,
    /// Limits of each figure of the strip.
    limits: [Vec<LimitMark>; 2],
    painter: Painter,
    visuals: Visuals,
    /// Lanes of brackets that are needed.
    lanes: usize,
    /// Rows of the legend that are needed.
    legend_rows: usize,
}

impl<'a> Drawing<'a> {
    fn draw(&mut self) {
        let brackets = self.brackets();
        let of_each = self.lanes_of(&brackets);
        self.lanes = of_each.iter().max().map_or(0, |most| most + 1);
        let legend = self.legend();
        self.legend_rows = legend.rows;
        self.draw_legend(&legend);
        self.frame();
        for (figure, limits) in STRIP_FIGURES.into_iter().zip(&self.limits) {
            for track in 0..self.strip.tracks.len() {
                self.uncertainty(figure, track);
                self.limits(figure, limits, track);
                self.curve(figure, track);
            }
        }
        self.findings(&brackets, &of_each);
        self.pointer();
    }

    fn small(&self) -> FontId {
        FontId::proportional(self.text * 0.85)
    }

    /// The part of the strip in which the curves are.
    fn plot(&self) -> [f32; 2] {
        let text = self.text;
        [
            self.area.top()
                + text * (0.5 + ROW * self.legend_rows as f32 + LANE * self.lanes as f32),
            self.area.bottom() - text * 1.5,
        ]
    }

    fn x(&self, track: usize, along: f64) -> f32 {
        (self.strip.x(track, along) / self.scale) as f32
    }

    fn y(&self, mm: f64) -> f32 {
        let [top, bottom] = self.plot();
        bottom - (bottom - top) * self.mm.share(mm).clamp(0.0, 1.0) as f32
    }

    fn ink(&self) -> Color32 {
        self.visuals.text_color()
    }

    fn colour(&self, figure: StationFigure) -> Color32 {
        match figure {
            StationFigure::Thickness => settled(&self.visuals),
            _ => self.ink(),
        }
    }

    fn line(&self, figure: StationFigure, points: &[Pos2]) {
        let colour = self.colour(figure);
        match figure {
            StationFigure::Thickness => self.painter.extend(Shape::dashed_line(
                points,
                Stroke::new(1.8, colour),
                self.text * 0.45,
                self.text * 0.25,
            )),
            _ => {
                self.painter.line(points.to_vec(), Stroke::new(2.0, colour));
            }
        }
    }

    fn limit_line(&self, figure: StationFigure, points: &[Pos2]) {
        let stroke = Stroke::new(1.2, self.colour(figure));
        let shapes = Shape::dashed_line(points, stroke, 1.5, 3.5);
        self.painter.extend(shapes);
    }

    /// Writes; gives what it covers.
    fn write(&self, at: Pos2, anchor: Align2, words: &str) -> Rect {
        self.painter
            .text(at, anchor, words, self.small(), self.ink())
    }

    fn no_figure(&self, from: Pos2, to: Pos2) {
        let grey = Color32::from_gray(130);
        self.painter
            .line_segment([from, to], Stroke::new(5.0, grey));
    }

    /// Axes with their numbers, midlines and sides.
    fn frame(&self) {
        let [top, bottom] = self.plot();
        let thin = Stroke::new(0.7, self.ink().gamma_multiply(0.5));
        for track in 0..self.strip.tracks.len() {
            let [from, to] = self.strip.ends(track).map(|px| (px / self.scale) as f32);
            for value in self.mm.labels() {
                let y = self.y(value);
                let faint = if value > 0.0 { 0.25 } else { 0.9 };
                let stroke = Stroke::new(0.8, self.ink().gamma_multiply(faint));
                self.painter.hline(from..=to, y, stroke);
                let at = Pos2::new(from - self.text * 0.3, y);
                self.write(
                    at,
                    Align2::RIGHT_CENTER,
                    &Value::figure(value.to_string()).text(self.app.language),
                );
            }
            let middle = self.x(track, 0.0);
            let dashes = [Pos2::new(middle, top), Pos2::new(middle, bottom)];
            self.painter
                .extend(Shape::dashed_line(&dashes, thin, 6.0, 3.0));
            self.along(track, [from, to], bottom);
        }
    }

    /// Below the curves: the sides at both ends, the midline, and distances from
    /// it where there is room.
    fn along(&self, track: usize, [from, to]: [f32; 2], bottom: f32) {
        const STEP_MM: f64 = 10.0;
        let y = bottom + self.text * 0.75;
        let of = &self.strip.tracks[track];
        let right = self
            .app
            .shown(self.app.front)
            .and_then(|s| s.placement.right);
        let is_right = right.is_none_or(|right| right.x > 0.0);
        let language = self.app.language;
        let sides = [
            text!(language, "strip-left"),
            text!(language, "strip-right"),
        ];
        let [on_left, on_right] = if is_right { [0, 1] } else { [1, 0] };
        let (left, right) = (
            format!("◀ {}", sides[on_left]),
            format!("{} ▶", sides[on_right]),
        );
        let midline = match of.midline {
            Midline::Labial => text!(language, "strip-midline", part = "labial"),
            Midline::Lingual => text!(language, "strip-midline", part = "lingual"),
        };
        let middle = Pos2::new(self.x(track, 0.0), y);
        let mut taken = vec![self.write(middle, Align2::CENTER_CENTER, &midline)];
        // A narrow track has no room for its sides; the other one names them.
        if to - from > self.text * 17.0 {
            taken.push(self.write(Pos2::new(from, y), Align2::LEFT_CENTER, &left));
            taken.push(self.write(Pos2::new(to, y), Align2::RIGHT_CENTER, &right));
        }
        let [first, last] = of.reach().map(|mm| mm / STEP_MM);
        for step in first.ceil() as i64..=last.floor() as i64 {
            let along = step as f64 * STEP_MM;
            let at = Pos2::new(self.x(track, along), bottom);
            let ink = Stroke::new(1.0, self.ink());
            self.painter
                .line_segment([at, at + Vec2::new(0.0, self.text * 0.25)], ink);
            let words = format!("{:.0} mm", along.abs());
            let galley = self.painter.layout_no_wrap(words, self.small(), self.ink());
            let ground = Rect::from_center_size(Pos2::new(at.x, y), galley.size());
            let room = ground.expand2(Vec2::new(self.text * 0.5, 0.0));
            if step % 2 == 0 && !taken.iter().any(|other| other.intersects(room)) {
                self.painter.galley(ground.min, galley, self.ink());
                taken.push(ground);
            }
        }
    }

    /// Runs of stations for which something is known, each with what is.
    fn runs<T>(&self, track: usize, known: impl Fn(&Station) -> Option<T>) -> Vec<Vec<(f32, T)>> {
        let mut runs = vec![Vec::new()];
        for &(number, along) in &self.strip.tracks[track].stations {
            match known(&self.border.stations[number]) {
                Some(known) => {
                    if let Some(run) = runs.last_mut() {
                        run.push((self.x(track, along), known));
                    }
                }
                None => runs.push(Vec::new()),
            }
        }
        runs.retain(|run| run.len() > 1);
        runs
    }

    fn curve(&self, figure: StationFigure, track: usize) {
        for run in self.runs(track, |station| station.figure(figure).mm) {
            let points: Vec<Pos2> = run
                .iter()
                .map(|(x, mm)| Pos2::new(*x, self.y(*mm)))
                .collect();
            self.line(figure, &points);
        }
        if figure == STRIP_FIGURES[0] {
            let missing = |station: &Station| station.figure(figure).mm.is_none().then_some(());
            let bottom = self.plot()[1] - 3.0;
            for run in self.runs(track, missing) {
                let ends = [run[0].0, run[run.len() - 1].0];
                let [from, to] = ends.map(|x| Pos2::new(x, bottom));
                self.no_figure(from, to);
            }
        }
    }

    fn limits(&self, figure: StationFigure, limits: &[LimitMark], track: usize) {
        for limit in limits {
            for run in self.runs(track, |station| Some(limit.value_in(&station.zone))) {
                let points: Vec<Pos2> = run
                    .iter()
                    .map(|(x, mm)| Pos2::new(*x, self.y(*mm)))
                    .collect();
                self.limit_line(figure, &points);
            }
        }
    }

    /// A band as wide as the uncertainty.
    fn uncertainty(&self, figure: StationFigure, track: usize) {
        let colour = self.colour(figure).gamma_multiply(0.22);
        let both = |station: &Station| {
            let of = station.figure(figure);
            Some((of.mm?, of.uncertainty_mm?))
        };
        for run in self.runs(track, both) {
            let mut band = Mesh::default();
            for (number, (x, (mm, off))) in run.into_iter().enumerate() {
                for end in [mm + off, mm - off] {
                    band.vertices.push(Vertex {
                        pos: Pos2::new(x, self.y(end)),
                        uv: WHITE_UV,
                        color: colour,
                    });
                }
                if number > 0 {
                    let last = 2 * number as u32;
                    band.add_triangle(last - 2, last - 1, last);
                    band.add_triangle(last - 1, last, last + 1);
                }
            }
            self.painter.add(band);
        }
    }

    /// The place of the border under the pointer.
    fn pointer(&self) {
        let Some(spot) = self.app.spot else {
            return;
        };
        let Some(x) = self.strip.x_of(&spot) else {
            return;
        };
        let x = (x / self.scale) as f32;
        let [top, bottom] = self.plot();
        let colour = pressing(&self.visuals);
        let lanes = self.text * LANE * self.lanes as f32;
        self.painter
            .vline(x, top - lanes..=bottom, Stroke::new(1.5, colour));
        let station = self.border.stations.get(spot.station());
        let height = station.and_then(|station| station.figure(STRIP_FIGURES[0]).mm);
        if let Some(mm) = height {
            let at = Pos2::new(x, self.y(mm));
            self.painter.circle_filled(at, 4.0, colour);
        }
    }
}
