use super::*;
use crate::testing::checked_with_border;
use check::CheckedCase;
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
        "F1 border radius",
        "F2 scan ends",
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
    assert!(beside("F1 border radius", "Labial and buccal border") < 0.0);
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
        "F1 border radius: buccal flange, patient's left",
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

/// A label of a drawing.
#[derive(Debug)]
struct Label {
    from: f64,
    to: f64,
    y: f64,
    is_upright: bool,
    words: String,
}

fn labels(drawing: &str) -> Vec<Label> {
    let of = |piece: &str| {
        let (tag, rest) = piece.split_once('>').unwrap();
        let attribute = |name: &str| {
            let start = format!(" {name}=\"");
            let rest = format!(" {tag}").split(&start).nth(1)?.to_owned();
            Some(rest.split('"').next()?.to_owned())
        };
        let number = |name: &str| attribute(name).unwrap().parse::<f64>().unwrap();
        let words = rest.split("</text>").next().unwrap().trim().to_owned();
        let width = canvas::text_width(&words, number("font-size"));
        let from = match attribute("text-anchor").unwrap().as_str() {
            "start" => number("x"),
            "middle" => number("x") - width / 2.0,
            _ => number("x") - width,
        };
        Label {
            from,
            to: from + width,
            y: number("y"),
            is_upright: attribute("transform").is_some(),
            words,
        }
    };
    drawing.split("<text").skip(1).map(of).collect()
}

/// Words of four letters and more.
fn is_of_words(label: &Label) -> bool {
    let mut words = label.words.split(|c: char| !c.is_alphabetic());
    words.any(|word| word.chars().count() > 3)
}

fn is_bare_key(word: &str) -> bool {
    word.contains('-') && word.chars().all(|c| c.is_ascii_lowercase() || c == '-')
}

fn drawings(checked: &CheckedCase, language: Language) -> Vec<String> {
    let findings = 0..checked.judged.findings.len();
    let sections = findings.filter_map(|number| finding_section(checked, number, language));
    let chart = border_chart(checked, 0, language).unwrap();
    [chart].into_iter().chain(sections).map(text).collect()
}

#[rstest::rstest]
#[case::german(Language::German, [
    "Fall D-1042, Oberkiefer, Abformung vor dem Wash",
    "◄ linke Patientenseite",
    "ab der labialen Mittellinie",
    "Höhe des Funktionsrandes, mm",
    "mindestens 0,7 mm",
    "Scan endet hier",
    "Bändchen, 3,0 mm tief",
    "F1 Randrundung",
    "dorsale Abdämmung",
    "Höhe 8,00 ± 0,10 mm",
    "Grenzwert: mindestens 0,7 mm",
    "Abschnitt zwischen 20 und 30 mm links",
    "nach vestibulär ►",
])]
#[case::spanish(Language::Spanish, [
    "Caso D-1042, maxilar superior, impresión antes del lavado",
    "◄ lado izquierdo del paciente",
    "desde la línea media labial",
    "Altura de la aleta, mm",
    "mínimo 0,7 mm",
    "fin del escaneo",
    "frenillo, prof. 3,0 mm",
    "F1 radio del borde",
    "sellado palatino posterior",
    "altura 8,00 ± 0,10 mm",
    "límite: mínimo 0,7 mm",
    "Tramo entre 20 y 30 mm a la",
    "hacia vestibular ►",
])]
fn drawings_are_wholly_in_their_language(#[case] language: Language, #[case] words: [&str; 13]) {
    let checked = checked_with_border();
    let [own, english] = [language, Language::English].map(|language| {
        let drawings = drawings(&checked, language);
        assert!(drawings.len() > 2);
        let all = drawings.iter().flat_map(|drawing| labels(drawing));
        all.collect::<Vec<Label>>()
    });
    for words in words {
        assert!(
            own.iter().any(|label| label.words.contains(words)),
            "{words}"
        );
    }
    for label in own.iter().filter(|label| is_of_words(label)) {
        let words = &label.words;
        assert!(english.iter().all(|other| other.words != *words), "{words}");
        assert!(!words.split(' ').any(is_bare_key), "{words}");
    }
}

#[test]
fn no_label_leaves_its_sheet_or_runs_into_another_on_its_line() {
    let checked = checked_with_border();
    for language in Language::ALL {
        for drawing in drawings(&checked, language) {
            let view = drawing.split("viewBox=\"0 0 ").nth(1);
            let view = view.or(drawing.split("viewBox=\"0,0,").nth(1)).unwrap();
            let size: Vec<f64> = (view.split('"').next().unwrap().split([' ', ',']))
                .filter_map(|number| number.parse().ok())
                .collect();
            let labels = labels(&drawing);
            let (upright, level): (Vec<&Label>, Vec<&Label>) =
                labels.iter().partition(|label| label.is_upright);
            for label in upright {
                assert!(label.y - (label.to - label.from) > 0.0, "{label:?}");
            }
            for label in &level {
                assert!(label.from >= 0.0 && label.to <= size[0], "{label:?}");
                assert!(label.y > 0.0 && label.y <= size[1], "{label:?}");
                for other in level.iter().filter(|other| other.y == label.y) {
                    let is_clear = label.to <= other.from || other.to <= label.from;
                    assert!(
                        is_clear || label.words == other.words,
                        "{label:?} {other:?}"
                    );
                }
            }
        }
    }
}

#[test]
fn a_short_reason_fits_beside_a_narrow_gap() {
    use measure::Missing::*;
    // The lowest row with gaps, px.
    const ROOM: f64 = 125.0;
    for language in Language::ALL {
        for missing in [
            TissueSideOnly,
            ScanEnds,
            NoSurface,
            NoCrest,
            FlangeTooLow,
            NoRoll,
            NoTray,
            AtTheCut,
            OffTheSummit,
        ] {
            let reason = words::short_reason(missing, language);
            assert!(canvas::text_width(&reason, plot::SMALL) < ROOM, "{reason}");
        }
    }
}
