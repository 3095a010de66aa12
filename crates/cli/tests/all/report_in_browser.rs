//! The report of the demonstration case in a browser without a display: nothing
//! is asked of any other place, nothing complains, no page is wider than the
//! screen, and it prints on A4.

#![allow(clippy::unwrap_used, reason = "tests")]

use crate::browser::Browser;
use crate::common::{KEPT_CASE, WHOLE_CASE, run};
use serde_json::{Value, json};
use std::fs;
use std::path::Path;

#[test]
#[ignore = "waits for a browser: `cargo test -- --ignored`"]
fn the_report_opens_alone_fits_the_screen_and_prints() {
    let folder = tempfile::tempdir().unwrap();
    let Some(mut browser) = Browser::open(folder.path()) else {
        return;
    };
    let ends = "Sheet: results/sheet.html\nReport: results/report.html\n";
    let said = &KEPT_CASE.outcome.out;
    assert!(said.contains(ends), "{said}");
    let page = KEPT_CASE.results().join("report.html");
    let bytes = fs::metadata(&page).unwrap().len();
    assert!(bytes < 1_500_000, "{bytes} bytes for one arch");

    assert_opens_alone(&mut browser, &page);
    let pictures = browser.value("document.querySelectorAll('figure svg image').length");
    assert!(
        pictures.as_u64().is_some_and(|count| count >= 3),
        "{pictures}"
    );

    let printed = browser.ask("Page.printToPDF", json!({"preferCSSPageSize": true}));
    let pdf = printed["data"].as_str().unwrap();
    // The beginning of a PDF file in base64.
    assert!(pdf.starts_with("JVBERi0"), "{pdf:.20}");
    assert!(pdf.len() > 100_000, "{}", pdf.len());
    assert_prints_in_two_depths(&mut browser, 6);

    let sheet = page.with_file_name("sheet.html");
    assert_opens_alone(&mut browser, &sheet);
    assert_eq!(browser.pages(), 1);
}

#[test]
#[ignore = "waits for a browser: `cargo test -- --ignored`"]
fn the_report_of_two_jaws_opens_alone_and_prints_on_few_pages() {
    let folder = tempfile::tempdir().unwrap();
    let Some(mut browser) = Browser::open(folder.path()) else {
        return;
    };
    let page = WHOLE_CASE.results().join("report.html");
    assert_opens_alone(&mut browser, &page);
    assert_prints_in_two_depths(&mut browser, 14);
    assert_opens_alone(&mut browser, &page.with_file_name("return.html"));
    assert_eq!(browser.pages(), 1);
}

#[test]
#[ignore = "waits for a browser: `cargo test -- --ignored`"]
fn the_page_on_scanning_opens_alone_and_is_one_page() {
    let folder = tempfile::tempdir().unwrap();
    let Some(mut browser) = Browser::open(folder.path()) else {
        return;
    };
    let page = folder.path().join("scanning.html");
    for code in ["en", "de", "es"] {
        let help = ["help", "scanning", "--html", "scanning.html"];
        let help = [&help[..], &["--language", code]].concat();
        assert_eq!(run(folder.path(), &help).code, Some(0));
        assert_opens_alone(&mut browser, &page.canonicalize().unwrap());
        assert_eq!(browser.pages(), 1, "{code}");
    }
    let other = run(folder.path(), &["help", "start", "--html", "start.html"]);
    assert_eq!(other.code, Some(2), "{}", other.complaint);
    assert!(!folder.path().join("start.html").exists());
}

/// The print holds the first depth, on at most `most` pages; what somebody opened; and all of it
/// when that is asked for.
fn assert_prints_in_two_depths(browser: &mut Browser, most: usize) {
    let first = browser.pages();
    assert!((2..=most).contains(&first), "{first} pages");
    browser.value("document.querySelector('#limits').closest('details').open = true");
    let opened = browser.pages();
    assert!(opened > first, "{opened} pages, {first} before");
    browser.value("document.querySelector('#print-everything').click()");
    let whole = browser.pages();
    assert!(whole > opened, "{whole} pages in all, {opened} before");
    // A link into what is folded opens it.
    let notes = "document.querySelector('#notes-in-full').closest('details')";
    assert_eq!(browser.value(&format!("{notes}.open")), json!(false));
    browser.value("document.querySelector('table.notes a').click()");
    assert_eq!(browser.value(&format!("{notes}.open")), json!(true));
}

/// Nothing is asked of any other place, nothing complains, nothing is wider than
/// the screen, and every drawing and table has its names.
pub fn assert_opens_alone(browser: &mut Browser, page: &Path) {
    for (width, height) in [(1280, 900), (390, 844)] {
        browser.visit(page, width, height);
        let asked: Vec<&str> = browser
            .events
            .iter()
            .filter(|event| event["method"] == json!("Network.requestWillBeSent"))
            .filter_map(|event| event["params"]["request"]["url"].as_str())
            .collect();
        assert!(!asked.is_empty());
        for url in asked {
            assert!(
                url.starts_with("file://") || url.starts_with("data:"),
                "asks for {url:.80}"
            );
        }
        for complaint in [
            "Runtime.exceptionThrown",
            "Runtime.consoleAPICalled",
            "Log.entryAdded",
            "Network.loadingFailed",
        ] {
            let of_it: Vec<&Value> = (browser.events.iter())
                .filter(|event| event["method"] == json!(complaint))
                .collect();
            assert!(of_it.is_empty(), "{of_it:?}");
        }
        let wide = browser
            .value("document.documentElement.scrollWidth")
            .as_u64();
        assert!(
            wide.is_some_and(|wide| wide <= width),
            "{wide:?} px wide on {width}"
        );
        // Every drawing says what it is to whoever cannot see it.
        let silent = browser.value(
            "[...document.querySelectorAll('svg')].filter(s => !s.closest('[aria-hidden]') \
             && !s.getAttribute('aria-label') && !s.querySelector('title')).length",
        );
        assert_eq!(silent, json!(0));
        let headless = browser.value(
            "[...document.querySelectorAll('th')].filter(h => !h.getAttribute('scope')).length",
        );
        assert_eq!(headless, json!(0));
    }
}
