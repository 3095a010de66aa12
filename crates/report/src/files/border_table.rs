//! The border as a table: one row for each station.

use crate::result::{Border, BorderPart, Point, Side, Station};
use crate::text::figures::station_figure;
use crate::text::rounding::figure;
use csv::{Writer, WriterBuilder};
use measure::StationFigure;
use serde::Serialize;
use std::io;

/// The first columns. Lengths in mm but for the point, which is in the numbers
/// of the scan file. The columns of the figures follow.
const PLACE: [&str; 11] = [
    "station",
    "s",
    "along_mm",
    "part",
    "zone",
    "side",
    "x",
    "y",
    "z",
    "uncertainty_mm",
    "scan_ends",
];

/// What [`PLACE`] heads.
#[derive(Serialize)]
struct Place<'a>(
    usize,
    f64,
    f64,
    BorderPart,
    &'a str,
    Option<Side>,
    Point,
    Option<f64>,
    bool,
);

/// The table as the bytes of a CSV file with a row of headings.
///
/// # Errors
/// Never on plain rows held in memory; the writer's own error is passed on.
pub(crate) fn encoded(border: &Border) -> io::Result<Vec<u8>> {
    let mut writer: Writer<Vec<u8>> = WriterBuilder::new()
        .has_headers(false)
        .from_writer(Vec::new());
    writer.write_record(headings())?;
    for (number, station) in border.stations.iter().enumerate() {
        let figures = StationFigure::ALL.map(|figure| station.figure(figure));
        writer.serialize((place(border, number, station), figures))?;
    }
    writer.into_inner().map_err(csv::IntoInnerError::into_error)
}

fn headings() -> impl Iterator<Item = String> {
    let figures = StationFigure::ALL.into_iter().flat_map(|figure| {
        let name = station_figure(figure).column;
        ["mm", "uncertainty_mm", "missing"].map(|of| format!("{name}_{of}"))
    });
    PLACE.map(str::to_owned).into_iter().chain(figures)
}

fn place<'a>(border: &Border, number: usize, station: &'a Station) -> Place<'a> {
    Place(
        number,
        station.s,
        figure(station.s * border.length_mm),
        station.part,
        &station.zone,
        station.side,
        station.point,
        station.uncertainty_mm,
        station.scan_ends,
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::CaseResult;
    use crate::testing::checked_with_border;

    #[test]
    fn rows_are_the_stations_of_the_result() {
        let border = CaseResult::of(&checked_with_border())
            .impressions
            .remove(0)
            .border
            .unwrap();
        let bytes = encoded(&border).unwrap();
        let mut reader = csv::Reader::from_reader(bytes.as_slice());
        let headings = reader.headers().unwrap().clone();
        let column = |name: &str| headings.iter().position(|h| h == name).unwrap();
        let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        assert_eq!(rows.len(), border.stations.len());
        let number = |text: &str| (!text.is_empty()).then(|| text.parse::<f64>().unwrap());
        for (row, station) in rows.iter().zip(&border.stations) {
            let value = |name| number(&row[column(name)]);
            assert_eq!(value("s"), Some(station.s));
            assert_eq!(value("flange_height_mm"), station.flange_height_mm);
            assert_eq!(value("border_radius_mm"), station.border_radius_mm);
            assert_eq!(
                value("overlap_uncertainty_mm"),
                station.overlap_uncertainty_mm
            );
            assert_eq!(&row[column("zone")], station.zone);
        }
        assert_eq!(&rows[90][column("border_radius_missing")], "scan_ends");
        assert_eq!(&rows[45][column("border_radius_mm")], "0.45");
        assert_eq!(&rows[45][column("side")], "left");
        assert_eq!(&rows[45][column("along_mm")], "22.5");
    }
}
