//! The border as a table: one row for each station.

use crate::result::{Border, BorderPart, MissingReason, Side, Station};
use crate::text::rounding::figure;
use csv::{Writer, WriterBuilder};
use serde::Serialize;
use std::io;

/// The columns, in order. Lengths in mm but for the point, which is in the
/// numbers of the scan file.
#[derive(Serialize)]
struct Row<'a> {
    station: usize,
    s: f64,
    along_mm: f64,
    part: BorderPart,
    zone: &'a str,
    side: Option<Side>,
    x: f64,
    y: f64,
    z: f64,
    uncertainty_mm: Option<f64>,
    scan_ends: bool,
    flange_height_mm: Option<f64>,
    flange_height_uncertainty_mm: Option<f64>,
    flange_height_missing: Option<MissingReason>,
    flange_thickness_mm: Option<f64>,
    flange_thickness_uncertainty_mm: Option<f64>,
    flange_thickness_missing: Option<MissingReason>,
    border_radius_mm: Option<f64>,
    border_radius_uncertainty_mm: Option<f64>,
    border_radius_missing: Option<MissingReason>,
    overlap_mm: Option<f64>,
    overlap_uncertainty_mm: Option<f64>,
    overlap_missing: Option<MissingReason>,
}

/// The table as the bytes of a CSV file with a row of headings.
///
/// # Errors
/// Never on plain rows held in memory; the writer's own error is passed on.
pub(crate) fn encoded(border: &Border) -> io::Result<Vec<u8>> {
    let mut writer: Writer<Vec<u8>> = WriterBuilder::new().from_writer(Vec::new());
    for (number, station) in border.stations.iter().enumerate() {
        writer.serialize(row(border, number, station))?;
    }
    writer.into_inner().map_err(csv::IntoInnerError::into_error)
}

fn row<'a>(border: &Border, number: usize, station: &'a Station) -> Row<'a> {
    let [x, y, z] = station.point;
    Row {
        station: number,
        s: station.s,
        along_mm: figure(station.s * border.length_mm),
        part: station.part,
        zone: &station.zone,
        side: station.side,
        x,
        y,
        z,
        uncertainty_mm: station.uncertainty_mm,
        scan_ends: station.scan_ends,
        flange_height_mm: station.flange_height_mm,
        flange_height_uncertainty_mm: station.flange_height_uncertainty_mm,
        flange_height_missing: station.missing.flange_height,
        flange_thickness_mm: station.flange_thickness_mm,
        flange_thickness_uncertainty_mm: station.flange_thickness_uncertainty_mm,
        flange_thickness_missing: station.missing.flange_thickness,
        border_radius_mm: station.border_radius_mm,
        border_radius_uncertainty_mm: station.border_radius_uncertainty_mm,
        border_radius_missing: station.missing.border_radius,
        overlap_mm: station.overlap_mm,
        overlap_uncertainty_mm: station.overlap_uncertainty_mm,
        overlap_missing: station.missing.overlap,
    }
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
