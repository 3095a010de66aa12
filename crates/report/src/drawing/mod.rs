//! Drawings of the border as SVG: the unrolled chart and dimensioned sections.
//!
//! They must be read in grey and by the colour-blind: lines differ by dashes
//! and width, marks by shape, and everything is labelled where it is.

pub(crate) mod canvas;
mod chart;
pub(crate) mod control;
mod lanes;
mod locator;
mod plot;
mod rows;
pub(crate) mod scanning;
mod section;
mod track;
mod words;

pub(crate) use chart::border_chart;
pub(crate) use locator::SIDE_LETTER;
pub(crate) use section::finding_section;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::checked_with_border;
    use judge::Check;
    use measure::{Arch, Scanned};
    use messages::Language;

    fn text(bytes: Vec<u8>) -> String {
        String::from_utf8(bytes).unwrap()
    }

    #[test]
    fn the_chart_says_sides_limits_gaps_and_findings() {
        let chart = text(border_chart(&checked_with_border(), 0, Language::English).unwrap());
        for words in [
            "◄ patient's left",
            "patient's right ►",
            "from the labial midline",
            "Flange height, mm",
            "3 mm below the border",
            "at least 0.7 mm",
            "at most 5 mm",
            "scan ends here",
            "frenum, 3.0 mm deep",
            "F1 border-radius",
            "F2 scan-ends",
            "buccal flange",
            "posterior palatal seal",
        ] {
            assert!(chart.contains(words), "{words}");
        }
    }

    /// Where words stand on a chart, px to the right.
    fn x_of(chart: &str, words: &str) -> f64 {
        let before = chart.split(words).next().unwrap();
        let at = before.rsplit(" x=\"").next().unwrap();
        at.split('"').next().unwrap().parse().unwrap()
    }

    #[rstest::rstest]
    #[case::upper(Arch::Maxillary, 1.0, ["◄ patient's left", "patient's right ►"])]
    #[case::lower(Arch::Mandibular, -1.0, ["◄ patient's right", "patient's left ►"])]
    fn the_chart_lies_as_the_picture_does(
        #[case] arch: Arch,
        #[case] right_is: f64,
        #[case] ends: [&str; 2],
    ) {
        let mut checked = checked_with_border();
        let Scanned::Impression(measurement) = &mut checked.impressions[0].scanned else {
            panic!("an impression");
        };
        measurement.frame.arch = arch;
        let chart = text(border_chart(&checked, 0, Language::English).unwrap());
        let beside = |one, other| (x_of(&chart, one) - x_of(&chart, other)) * right_is;
        assert!(x_of(&chart, ends[0]) < x_of(&chart, ends[1]));
        assert!(beside("\n10 R\n", "\n10 L\n") > 0.0);
        // It is on the patient's left.
        assert!(beside("F1 border-radius", "Labial and buccal border") < 0.0);
    }

    #[test]
    fn a_section_says_its_dimensions_and_limits() {
        let checked = checked_with_border();
        let knife = checked
            .judged
            .findings
            .iter()
            .position(|f| f.check == Check::BorderRadius)
            .unwrap();
        let drawing = text(finding_section(&checked, knife, Language::English).unwrap());
        for words in [
            "F1 border-radius: buccal flange, patient's left",
            "height 8.00 ± 0.10 mm",
            "thickness 3.50 ± 0.10 mm",
            "radius 0.45 ± 0.10 mm",
            "limit: at least 0.7 mm",
            "from 20 to 30 mm left",
            "toward lip or cheek",
            "tissue face",
            "5 mm",
        ] {
            assert!(drawing.contains(words), "{words}");
        }
    }

    #[test]
    fn what_a_case_is_called_cannot_break_a_drawing() {
        let mut checked = checked_with_border();
        checked.case.id = "<A & \"B\">".into();
        let chart = text(border_chart(&checked, 0, Language::English).unwrap());
        assert!(chart.contains("Case &lt;A &amp; \"B\"&gt;, maxillary first pass"));
    }
}
