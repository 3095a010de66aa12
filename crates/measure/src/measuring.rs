//! The quantities of one impression, each measured when it is first asked for,
//! and once.

use crate::border::{self, Border, NoBorder, VertexPlace};
use crate::cover::by_colour::{self, ColourReading};
use crate::cover::stops::{self, Stop};
use crate::cover::{
    Cover, NoColour, NoCover, PlaceOnTray, Spot, TrayColour, by_thickness, by_tray_scan, on_tray,
    spots,
};
use crate::cut::NearCut;
use crate::frame::{self, FoundFrame};
use crate::impression::{Impression, Surface};
use crate::intake;
use crate::landmarks::{self, Landmark, Sources};
use crate::measurement::{Measurement, ScanFigures, Scanned};
use crate::not_an_impression::NotAnImpression;
use crate::outer_excess::{self, OuterExcess};
use crate::settings::MeasureSettings;
use crate::tissue::{self, NoTissue, TissueSurface};
use crate::tray::{
    self, ChosenTray, LocalTray, PiecesNotPlaced, PlacedTray, PreparedTray, ShelfTray,
    TrayNotPlaced,
};
use crate::tray_fit::{self, TrayFit};
use geometry::noise::Heights;
use mesh::Mesh;
use std::sync::OnceLock;

/// Where nearly all of the tissue surface is nearer to the tray than this, mm,
/// there is no material: scans of one tray differ by less.
pub const EMPTY_TRAY_MM: f64 = 0.2;

/// The scan of the tray as it is given.
enum TrayScan<'a> {
    None,
    Mesh(&'a Mesh),
    Ready(&'a PreparedTray),
    /// One of these.
    Shelf(&'a [ShelfTray]),
    /// A tray whose pieces could not be placed.
    Unplaced(PiecesNotPlaced),
}

/// One impression being measured. Every quantity of an impression is `None`
/// where the scan shows something else.
///
/// A quantity may ask for others, never for itself; on one cell no two threads
/// wait for each other, since what is asked for inside a parallel loop has been
/// obtained before it.
pub struct Measuring<'a> {
    scan: &'a Mesh,
    tray_scan: TrayScan<'a>,
    settings: &'a MeasureSettings,
    watched: Option<&'a (dyn Fn() + Sync)>,
    surface: OnceLock<Surface>,
    tray: OnceLock<PreparedTray>,
    chosen: OnceLock<Option<Result<ChosenTray, TrayNotPlaced>>>,
    frame: OnceLock<Result<FoundFrame, NotAnImpression>>,
    impression: OnceLock<Option<Impression>>,
    heights: OnceLock<Heights>,
    noise_mm: OnceLock<Option<f64>>,
    near_cut: OnceLock<Option<NearCut>>,
    belongs: OnceLock<Vec<bool>>,
    placed: OnceLock<Option<Result<PlacedTray, TrayNotPlaced>>>,
    border: OnceLock<Option<Result<Border, NoBorder>>>,
    cover: OnceLock<Option<Result<Cover, NoCover>>>,
    tray_fit: OnceLock<Option<TrayFit>>,
    outer_excess: OnceLock<Option<OuterExcess>>,
    stops: OnceLock<Vec<Stop>>,
    colour: OnceLock<Option<ColourReading>>,
    spots: OnceLock<Vec<Spot>>,
    on_tray: OnceLock<Vec<Option<PlaceOnTray>>>,
    tissue: OnceLock<Option<Result<TissueSurface, NoTissue>>>,
    landmarks: OnceLock<Vec<Landmark>>,
    places: OnceLock<Vec<Option<VertexPlace>>>,
}

impl<'a> Measuring<'a> {
    /// Nothing is measured yet. Both scans are in mm, each in any pose.
    #[must_use]
    pub fn new(scan: &'a Mesh, tray: Option<&'a Mesh>, settings: &'a MeasureSettings) -> Self {
        Self::with(scan, tray.map_or(TrayScan::None, TrayScan::Mesh), settings)
    }

    /// As [`Measuring::new`], with a tray scan that was made ready before.
    #[must_use]
    pub fn in_tray(scan: &'a Mesh, tray: &'a PreparedTray, settings: &'a MeasureSettings) -> Self {
        Self::with(scan, TrayScan::Ready(tray), settings)
    }

    /// As [`Measuring::new`], in the one of a shelf's trays that it was taken in.
    #[must_use]
    pub fn from_shelf(
        scan: &'a Mesh,
        shelf: &'a [ShelfTray],
        settings: &'a MeasureSettings,
    ) -> Self {
        Self::with(scan, TrayScan::Shelf(shelf), settings)
    }

    /// As [`Measuring::new`], with a tray whose pieces could not be placed.
    #[must_use]
    pub fn without_tray(
        scan: &'a Mesh,
        why: PiecesNotPlaced,
        settings: &'a MeasureSettings,
    ) -> Self {
        Self::with(scan, TrayScan::Unplaced(why), settings)
    }

    fn with(scan: &'a Mesh, tray_scan: TrayScan<'a>, settings: &'a MeasureSettings) -> Self {
        Self {
            scan,
            tray_scan,
            settings,
            watched: None,
            surface: OnceLock::new(),
            tray: OnceLock::new(),
            chosen: OnceLock::new(),
            frame: OnceLock::new(),
            impression: OnceLock::new(),
            heights: OnceLock::new(),
            noise_mm: OnceLock::new(),
            near_cut: OnceLock::new(),
            belongs: OnceLock::new(),
            placed: OnceLock::new(),
            border: OnceLock::new(),
            cover: OnceLock::new(),
            tray_fit: OnceLock::new(),
            outer_excess: OnceLock::new(),
            stops: OnceLock::new(),
            colour: OnceLock::new(),
            spots: OnceLock::new(),
            on_tray: OnceLock::new(),
            tissue: OnceLock::new(),
            landmarks: OnceLock::new(),
            places: OnceLock::new(),
        }
    }

    /// Calls `look` from time to time while a quantity is measured. It may unwind, as
    /// when nobody waits for the outcome any more.
    pub(crate) fn watched_by(self, look: &'a (dyn Fn() + Sync)) -> Self {
        let watched = Some(look);
        Self { watched, ..self }
    }

    /// Lets whoever watches look.
    pub(crate) fn look(&self) {
        if let Some(look) = self.watched {
            look();
        }
    }

    pub(crate) fn surface(&self) -> &Surface {
        self.surface
            .get_or_init(|| Surface::watched(self.scan, &|| self.look()))
    }

    pub(crate) fn tray(&self) -> Option<&PreparedTray> {
        let mesh = match self.tray_scan {
            TrayScan::None | TrayScan::Unplaced(_) => return None,
            TrayScan::Ready(tray) => return Some(tray),
            TrayScan::Shelf(shelf) => {
                let chosen = self.chosen_tray()?.ok()?;
                return Some(&shelf[chosen.best.tray].scan);
            }
            TrayScan::Mesh(mesh) => mesh,
        };
        let made = self
            .tray
            .get_or_init(|| PreparedTray::watched(mesh, &|| self.look()));
        Some(made)
    }

    /// The tray of the shelf that it was taken in; `None` without a shelf.
    pub fn chosen_tray(&self) -> Option<Result<&ChosenTray, &TrayNotPlaced>> {
        let chosen = self.chosen.get_or_init(|| {
            let TrayScan::Shelf(shelf) = self.tray_scan else {
                return None;
            };
            Some(tray::choose(self.impression()?, shelf, &|| self.look()))
        });
        chosen.as_ref().map(Result::as_ref)
    }

    /// The frame with its crest line, or what the scan shows instead.
    ///
    /// # Errors
    /// When the scan shows no impression.
    pub fn frame(&self) -> Result<&FoundFrame, &NotAnImpression> {
        self.frame
            .get_or_init(|| {
                let surface = self.surface();
                intake::two_scans(&surface.mesh, &surface.topology)
                    .map_or_else(|| frame::find(&surface.mesh), Err)
                    .map(|found| found.of_declared(self.settings.declared_jaw))
            })
            .as_ref()
    }

    pub(crate) fn impression(&self) -> Option<&Impression> {
        self.impression
            .get_or_init(|| {
                let found = self.frame().ok()?;
                Some(Impression::of(self.surface(), found.clone()))
            })
            .as_ref()
    }

    pub(crate) fn heights(&self) -> &Heights {
        self.heights
            .get_or_init(|| Heights::of(&self.surface().mesh))
    }

    /// Standard deviation of the scan's noise along the normal, mm.
    pub fn noise_mm(&self) -> Option<f64> {
        *self.noise_mm.get_or_init(|| {
            let vertices = self.surface().mesh.vertices().len();
            self.heights().noise_mm(0..vertices)
        })
    }

    /// The noise; 0 where none can be estimated.
    fn noise(&self) -> f64 {
        self.noise_mm().unwrap_or(0.0)
    }

    fn near_cut(&self) -> Option<&NearCut> {
        self.near_cut
            .get_or_init(|| self.settings.cut.as_ref().map(NearCut::of))
            .as_ref()
    }

    /// Which triangles are no stray islands.
    fn belongs(&self) -> &[bool] {
        self.belongs
            .get_or_init(|| intake::main_parts(self.surface()))
    }

    pub(crate) fn placed_tray(&self) -> Option<Result<&PlacedTray, &TrayNotPlaced>> {
        let placed = self.placed.get_or_init(|| {
            let impression = self.impression()?;
            Some(match self.tray() {
                Some(tray) => {
                    let of_scanner = self.settings.scanner_uncertainty_mm;
                    tray::place(impression, tray, self.noise(), of_scanner, &|| self.look())
                }
                None => Err(match &self.tray_scan {
                    TrayScan::Unplaced(why) => TrayNotPlaced::Pieces(why.clone()),
                    TrayScan::Shelf(_) => match self.chosen_tray() {
                        Some(Err(why)) => why.clone(),
                        _ => TrayNotPlaced::NoTray,
                    },
                    _ => TrayNotPlaced::NoTray,
                }),
            })
        });
        placed.as_ref().map(Result::as_ref)
    }

    fn local_tray(&self) -> Option<LocalTray<'_>> {
        Some(LocalTray::new(self.tray()?, self.placed_tray()?.ok()?))
    }

    /// The border line and its sections.
    pub fn border(&self) -> Option<Result<&Border, &NoBorder>> {
        let border = self.border.get_or_init(|| {
            let found = border::measure(
                self.impression()?,
                self.belongs(),
                self.local_tray(),
                self.noise(),
                self.settings,
            );
            Some(match self.near_cut() {
                Some(cut) => found.map(|border| cut.off_border(border)),
                None => found,
            })
        });
        border.as_ref().map(Result::as_ref)
    }

    fn known_border(&self) -> Option<&Border> {
        self.border()?.ok()
    }

    /// Cover over the tissue surface: from the tray scan, else from the stated
    /// thickness of the tray.
    pub fn cover(&self) -> Option<Result<&Cover, &NoCover>> {
        let cover = self.cover.get_or_init(|| {
            let impression = self.impression()?;
            let noise_mm = self.noise();
            let of_scanner = self.settings.scanner_uncertainty_mm;
            let by_scan = match (self.tray(), self.placed_tray()?) {
                (Some(tray), Ok(placed)) => {
                    let at_cut = self
                        .near_cut()
                        .map(|cut| cut.holds(self.surface().mesh.vertices()));
                    by_tray_scan::over_tissue(
                        impression,
                        tray,
                        placed,
                        at_cut.as_deref(),
                        noise_mm,
                        self.settings,
                        &|| self.look(),
                    )
                }
                (_, Err(why)) => Err(why.clone().into()),
                (None, Ok(_)) => Err(TrayNotPlaced::NoTray.into()),
            };
            Some(match (by_scan, self.settings.tray_thickness) {
                (Err(NoCover::Tray(TrayNotPlaced::NoTray)), Some(thickness)) => {
                    match self.known_border() {
                        Some(border) => by_thickness::cover(
                            impression,
                            border,
                            thickness,
                            [noise_mm, of_scanner],
                        ),
                        None => Err(TrayNotPlaced::NoTray.into()),
                    }
                }
                (by_scan, _) => by_scan,
            })
        });
        cover.as_ref().map(Result::as_ref)
    }

    fn known_cover(&self) -> Option<&Cover> {
        self.cover()?.ok()
    }

    /// How the tray suits the mouth; `None` without a registered tray.
    pub fn tray_fit(&self) -> Option<&TrayFit> {
        self.tray_fit
            .get_or_init(|| {
                Some(tray_fit::measure(
                    self.impression()?,
                    self.local_tray()?,
                    self.known_cover()?,
                    self.known_border(),
                ))
            })
            .as_ref()
    }

    /// Material on the outer faces of the tray.
    pub fn outer_excess(&self) -> Option<&OuterExcess> {
        self.outer_excess
            .get_or_init(|| {
                let placed = self.placed_tray()?.ok()?;
                outer_excess::measure(
                    self.impression()?,
                    (self.local_tray()?, placed),
                    self.known_border()?,
                    [self.noise(), self.settings.scanner_uncertainty_mm],
                )
            })
            .as_ref()
    }

    fn stops(&self) -> &[Stop] {
        self.stops.get_or_init(|| {
            let placed = self.placed_tray().and_then(Result::ok);
            match (self.impression(), placed, self.known_cover()) {
                (Some(impression), Some(placed), Some(cover)) => {
                    stops::stops(impression, placed, cover, self.settings)
                }
                _ => Vec::new(),
            }
        })
    }

    fn colour(&self) -> Option<&ColourReading> {
        self.colour
            .get_or_init(|| by_colour::read(self.impression()?, self.known_cover(), self.settings))
            .as_ref()
    }

    /// What the scan's colours tell of the tray; `None` where it has none.
    pub fn tray_colour(&self) -> Option<Result<&TrayColour, &NoColour>> {
        Some(self.colour()?.tray.as_ref())
    }

    /// Patches of little cover, then those that the scan's colours alone show.
    pub fn spots(&self) -> &[Spot] {
        self.spots.get_or_init(|| {
            let of_cover = self.impression().zip(self.known_cover());
            let mut found = of_cover.map_or_else(Vec::new, |(impression, cover)| {
                spots::spots(impression, cover, self.stops(), self.settings)
            });
            let of_colour = self.colour().into_iter().flat_map(|reading| &reading.spots);
            let is_at_cut = |spot: &&Spot| {
                let cut = self.near_cut();
                cut.is_some_and(|cut| cut.holds(&[spot.centre]).contains(&true))
            };
            found.extend(of_colour.filter(|spot| !is_at_cut(spot)).cloned());
            found
        })
    }

    /// Where each of the spots lies on the tray's own scan; `None` for each where no tray
    /// scan was placed.
    pub fn on_tray(&self) -> &[Option<PlaceOnTray>] {
        self.on_tray.get_or_init(|| {
            let (spots, border) = (self.spots(), self.known_border());
            match (self.impression(), self.local_tray()) {
                (Some(impression), Some(tray)) => {
                    let doubts_mm = [self.noise(), self.settings.scanner_uncertainty_mm];
                    on_tray::places(impression, tray, border, spots, doubts_mm)
                }
                _ => vec![None; spots.len()],
            }
        })
    }

    /// The tissue surface: its defects, and how well it was scanned.
    pub fn tissue(&self) -> Option<Result<&TissueSurface, &NoTissue>> {
        let tissue = self.tissue.get_or_init(|| {
            let impression = self.impression()?;
            let found = tissue::on_tissue(
                impression,
                self.surface(),
                self.heights(),
                self.settings.scanner_uncertainty_mm,
                &|| self.look(),
            );
            Some(match self.near_cut() {
                Some(cut) => found.map(|tissue| cut.off_tissue(tissue)),
                None => found,
            })
        });
        tissue.as_ref().map(Result::as_ref)
    }

    /// Landmarks of the jaw.
    pub fn landmarks(&self) -> &[Landmark] {
        self.landmarks.get_or_init(|| {
            let Some(impression) = self.impression() else {
                return Vec::new();
            };
            let sources = Sources {
                impression,
                belongs: self.belongs(),
                loops: self.surface().topology.boundary_loops(),
                border: self.known_border(),
                defects: match self.tissue() {
                    Some(Ok(tissue)) => &tissue.defects,
                    _ => &[],
                },
                spots: self.spots(),
                noise_mm: self.noise(),
            };
            landmarks::all(&sources, &self.settings.marks)
        })
    }

    /// Where each vertex of the scan lies in the arch.
    pub fn places(&self) -> &[Option<VertexPlace>] {
        self.places.get_or_init(|| {
            self.impression().map_or_else(Vec::new, |impression| {
                border::of_vertices(impression, self.known_border())
            })
        })
    }

    /// What the scan shows if it is no impression, as far as that is known:
    /// without looking further than the stages that have run.
    pub(crate) fn something_else(&self) -> Option<NotAnImpression> {
        if let Some(Err(what)) = self.frame.get() {
            return Some(what.clone());
        }
        if let Some(Some(Err(TrayNotPlaced::NotAnImpression(what)))) = self.placed.get() {
            return Some(what.clone());
        }
        match self.cover.get() {
            Some(Some(Ok(cover))) if cover.p95_mm <= EMPTY_TRAY_MM => {
                Some(NotAnImpression::EmptyTray)
            }
            // The tray's own scan says more of a shell than its wall does.
            None if !matches!(self.tray_scan, TrayScan::None) => None,
            _ => self.frame.get()?.as_ref().ok()?.shell.clone(),
        }
    }

    /// Everything that the stages have obtained.
    pub(crate) fn finished(self) -> Scanned {
        let surface = self.surface();
        let scan = ScanFigures {
            integrity: surface.integrity.clone(),
            turned: surface.turned,
            scanner_uncertainty_mm: self.settings.scanner_uncertainty_mm,
            cut_width_mm: self.settings.cut.as_ref().map(|cut| cut.width_mm),
        };
        match self.something_else() {
            Some(what) => Scanned::Else(what, scan),
            None => self.of_impression(scan),
        }
    }

    fn of_impression(self, scan: ScanFigures) -> Scanned {
        // What no stage has asked for is obtained now: a quantity that another
        // needs under some condition only is still wanted.
        let noise_mm = self.noise_mm();
        self.cover();
        self.tray_fit();
        self.outer_excess();
        self.stops();
        self.colour();
        self.spots();
        self.on_tray();
        self.border();
        self.tissue();
        self.landmarks();
        self.places();
        let taken = || {
            let impression = self.impression.into_inner()??;
            let (colour, stops) = (self.colour.into_inner()?, self.stops.into_inner()?);
            Some(Measurement {
                has_outer_surface: impression.regions.has_outer_surface(),
                frame: impression.frame,
                noise_mm,
                cover: self.cover.into_inner()??,
                tray_fit: self.tray_fit.into_inner()?,
                outer_excess: self.outer_excess.into_inner()?,
                spots: self.spots.into_inner()?,
                on_tray: self.on_tray.into_inner()?,
                stops: stops.into_iter().map(|stop| stop.reading).collect(),
                border: self.border.into_inner()??,
                tissue: self.tissue.into_inner()??,
                contrasts: colour
                    .as_ref()
                    .map_or_else(Vec::new, |read| read.contrasts.clone()),
                colour: colour.map(|reading| reading.tray),
                landmarks: self.landmarks.into_inner()?,
                places: self.places.into_inner()?,
                scan: scan.clone(),
            })
        };
        match taken() {
            Some(measurement) => Scanned::Impression(Box::new(measurement)),
            // A quantity is missing only where the scan shows no impression.
            None => Scanned::Else(NotAnImpression::NoTrough, scan),
        }
    }
}
