//! The impression that turns on the page of the demonstration case, in a browser that draws by
//! software.

#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

use crate::browser::Browser;
use crate::common::KEPT_CASE;
use crate::report_in_browser::assert_opens_alone;
use serde_json::{Value, json};
use std::collections::HashMap;
use std::path::Path;
use std::thread::sleep;
use std::time::Duration;

/// Opens the demonstration's report and waits for its first picture; `None`, with the reason
/// printed, where the browser is missing or cannot draw.
fn opened(folder: &Path) -> Option<(Browser, std::path::PathBuf)> {
    let mut browser = Browser::open(folder)?;
    let page = KEPT_CASE.results().join("report.html");
    browser.visit(&page, 1280, 900);
    if browser.value("!!document.createElement('canvas').getContext('webgl2')") != json!(true) {
        eprintln!("SKIPPED: this browser has no WebGL 2");
        return None;
    }
    for _ in 0..2400 {
        if drawn(&mut browser) > 0 {
            return Some((browser, page));
        }
        sleep(Duration::from_millis(50));
    }
    panic!("no picture in 120 s");
}

fn drawn(browser: &mut Browser) -> u64 {
    let drawn =
        browser.value("Number(document.getElementById('turning-canvas').dataset.drawn || 0)");
    drawn.as_u64().unwrap()
}

/// Waits until no picture was drawn for a while; gives how many there were in all.
fn at_rest(browser: &mut Browser) -> u64 {
    let mut before = drawn(browser);
    loop {
        sleep(Duration::from_millis(700));
        let now = drawn(browser);
        if now == before {
            return now;
        }
        before = now;
    }
}

fn said(browser: &mut Browser) -> String {
    let said = browser.value("document.getElementById('turning-said').textContent");
    said.as_str().unwrap().to_owned()
}

#[test]
fn the_script_reads_the_surface_that_was_measured() {
    const READ: &str = "(async () => {
        const given = JSON.parse(document.getElementById('turning-scene').textContent).surfaces[0];
        const bytes = await inflated(bytesOf(document.getElementById('surface-1').textContent));
        const { numbers, corners } = unpacked(bytes, given.vertices, given.triangles);
        return { given, numbers: Array.from(numbers), corners: Array.from(corners) };
    })()";
    let folder = tempfile::tempdir().unwrap();
    let Some((mut browser, page)) = opened(folder.path()) else {
        return;
    };
    let read = browser.value(READ);
    let list = |name: &str| -> Vec<u64> {
        let values = read[name].as_array().unwrap().iter();
        values.map(|value| value.as_u64().unwrap()).collect()
    };
    let (numbers, corners) = (list("numbers"), list("corners"));
    let given = &read["given"];
    let number = |value: &Value| value.as_f64().unwrap();
    let step_mm = number(&given["step_mm"]);

    let file = page.with_file_name("cover-maxillary-first-pass.ply");
    let surface = report::read_surface(&file).unwrap();
    let mesh = &surface.mesh;
    assert_eq!(corners.len(), mesh.triangles().len() * 3);
    // Coordinates in steps, to the nearest.
    let steps = |vertex: usize| -> [u64; 3] {
        let p = mesh.vertices()[vertex];
        [0, 1, 2].map(|k| ((p[k] - number(&given["low_mm"][k])) / step_mm).round() as u64)
    };
    let part = |vertex: usize| surface.figures["part"][vertex].map_or(0, |part| part as u64 + 1);
    let there = |vertex: u32| (steps(vertex as usize), part(vertex as usize));
    let here = |vertex: u64| {
        let of = &numbers[vertex as usize * 5..][..5];
        ([of[0], of[1], of[2]], of[4])
    };
    assert_eq!(
        sorted(
            corners
                .chunks(3)
                .map(|t| [here(t[0]), here(t[1]), here(t[2])])
        ),
        sorted(mesh.triangles().iter().map(|t| t.map(there)))
    );

    let mut measured: HashMap<[u64; 3], Vec<Option<f64>>> = HashMap::new();
    for (vertex, mm) in surface.figures["cover_mm"].iter().enumerate() {
        measured
            .entry(steps(vertex))
            .or_default()
            .push(mm.map(f64::from));
    }
    let [from, step] = ["from_mm", "step_mm"].map(|name| number(&given["thickness"][name]));
    for of in numbers.chunks(5) {
        let shown = (of[3] > 0).then(|| from + (of[3] - 1) as f64 * step);
        let is_it = |mm: &Option<f64>| match (shown, mm) {
            (Some(shown), Some(mm)) => (shown - mm).abs() <= step / 2.0 + 1e-5,
            (shown, mm) => shown.is_none() && mm.is_none(),
        };
        assert!(measured[&[of[0], of[1], of[2]]].iter().any(is_it), "{of:?}");
    }
}

/// Triangles, each from its least corner, in order.
fn sorted<T: Ord + Copy>(triangles: impl Iterator<Item = [T; 3]>) -> Vec<[T; 3]> {
    let from_least = |[a, b, c]: [T; 3]| [[a, b, c], [b, c, a], [c, a, b]].into_iter().min();
    let mut triangles: Vec<[T; 3]> = triangles.filter_map(from_least).collect();
    triangles.sort_unstable();
    triangles
}

#[test]
#[ignore = "waits for a browser: `cargo test -- --ignored`"]
fn it_turns_by_keys_flies_to_findings_and_says_what_is_clicked() {
    let folder = tempfile::tempdir().unwrap();
    let Some((mut browser, page)) = opened(folder.path()) else {
        return;
    };
    let before = at_rest(&mut browser);
    // The patient's sides lie as in the still picture.
    let left = browser.value("document.querySelector('.views svg text').textContent");
    let letters = "[...document.querySelectorAll('#turning-marks > text')]\
        .filter(t => ['R', 'L'].includes(t.textContent))\
        .sort((a, b) => a.getAttribute('x') - b.getAttribute('x'))[0].textContent";
    assert_eq!(browser.value(letters), left);

    browser.value("document.getElementById('turning-canvas').focus()");
    for key in ["ArrowRight", "ArrowUp", "+"] {
        for kind in ["keyDown", "keyUp"] {
            browser.ask("Input.dispatchKeyEvent", json!({"type": kind, "key": key}));
        }
    }
    let turned = at_rest(&mut browser);
    assert!(turned > before);

    browser.value("document.querySelector('#F1 .to-turning').click()");
    let flown = at_rest(&mut browser);
    assert!(flown > turned);
    assert!(
        said(&mut browser).starts_with("F1 show through"),
        "{}",
        said(&mut browser)
    );

    let middle = browser.value(
        "(box => [box.left + box.width / 2, box.top + box.height / 2])\
         (document.getElementById('turning-canvas').getBoundingClientRect())",
    );
    // Beside the mark of the finding lies the surface.
    let at = json!({"x": middle[0].as_f64().unwrap() + 90.0, "y": middle[1], "button": "left", "clickCount": 1});
    for kind in ["mousePressed", "mouseReleased"] {
        let mut event = at.clone();
        event["type"] = json!(kind);
        browser.ask("Input.dispatchMouseEvent", event);
    }
    let read = said(&mut browser);
    assert!(
        read.contains(": material ") && read.contains(" mm thick"),
        "{read}"
    );

    // Its section goes through the place in the middle of the drawing.
    assert_eq!(
        browser.value("document.getElementById('turning-cut').hidden"),
        json!(true)
    );
    browser.value("document.getElementById('turning-section').click()");
    let pieces = browser.value(
        "document.querySelector('#turning-cut path').getAttribute('d').match(/-?[0-9.]+/g).map(Number)",
    );
    let numbers: Vec<f64> = pieces
        .as_array()
        .unwrap()
        .iter()
        .map(|n| n.as_f64().unwrap())
        .collect();
    assert!(numbers.len() > 200, "{}", numbers.len());
    let from_middle = numbers.chunks(2).map(|at| at[0].hypot(at[1]));
    assert!(from_middle.fold(f64::INFINITY, f64::min) < 0.5);
    assert!(numbers.iter().step_by(2).all(|across| across.abs() <= 16.0));

    let shown = |browser: &mut Browser, what: &str| {
        let display = format!("getComputedStyle(document.querySelector('{what}')).display");
        browser.value(&display) != json!("none")
    };
    assert!(shown(&mut browser, "#turning") && !shown(&mut browser, ".overview"));
    browser.ask("Emulation.setEmulatedMedia", json!({"media": "print"}));
    assert!(!shown(&mut browser, "#turning") && shown(&mut browser, ".overview"));
    browser.ask("Emulation.setEmulatedMedia", json!({"media": ""}));
    assert_opens_alone(&mut browser, &page);

    browser.ask(
        "Emulation.setScriptExecutionDisabled",
        json!({"value": true}),
    );
    browser.visit(&page, 1280, 900);
    assert!(!shown(&mut browser, "#turning") && shown(&mut browser, ".overview"));
}
