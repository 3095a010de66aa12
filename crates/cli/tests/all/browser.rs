//! A browser without a display. Tests that need it are skipped, saying so, where Chromium is
//! missing (Debian: `chromium`).

#![allow(clippy::unwrap_used, clippy::print_stderr, reason = "tests")]

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};

/// A browser that is spoken to over pipes, by the Chrome DevTools Protocol:
/// messages of JSON, each ended by a zero byte.
pub struct Browser {
    child: Child,
    to: ChildStdin,
    from: BufReader<ChildStdout>,
    sent: u64,
    session: Option<String>,
    /// What it told without being asked.
    pub events: Vec<Value>,
}

impl Browser {
    /// `None`, with the reason printed, where there is no browser.
    pub fn open(folder: &Path) -> Option<Self> {
        let is_there = Command::new("chromium")
            .arg("--version")
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .status()
            .is_ok();
        if !is_there {
            eprintln!("SKIPPED: chromium is not installed");
            return None;
        }
        // The protocol wants descriptors 3 and 4.
        let script = "exec chromium --headless=new --no-sandbox \
                      --use-angle=swiftshader --enable-unsafe-swiftshader \
                      --disable-dev-shm-usage --hide-scrollbars --no-first-run \
                      --user-data-dir=\"$1\" --remote-debugging-pipe \
                      about:blank 3<&0 4>&1 </dev/null >/dev/null 2>&1";
        let mut child = Command::new("bash")
            .args(["-c", script, "bash"])
            .arg(folder.join("profile"))
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut browser = Self {
            to: child.stdin.take().unwrap(),
            from: BufReader::new(child.stdout.take().unwrap()),
            child,
            sent: 0,
            session: None,
            events: Vec::new(),
        };
        let target = browser.ask("Target.createTarget", json!({"url": "about:blank"}));
        let attach = json!({"targetId": target["targetId"], "flatten": true});
        let session = browser.ask("Target.attachToTarget", attach);
        browser.session = session["sessionId"].as_str().map(str::to_owned);
        for domain in ["Page", "Network", "Runtime", "Log"] {
            browser.ask(&format!("{domain}.enable"), json!({}));
        }
        Some(browser)
    }

    pub fn ask(&mut self, method: &str, parameters: Value) -> Value {
        self.sent += 1;
        let mut message = json!({"id": self.sent, "method": method, "params": parameters});
        if let Some(session) = &self.session {
            message["sessionId"] = json!(session);
        }
        self.to.write_all(message.to_string().as_bytes()).unwrap();
        self.to.write_all(&[0]).unwrap();
        loop {
            let told = self.hear();
            if told["id"] == json!(self.sent) {
                assert!(told["error"].is_null(), "{method}: {told}");
                return told["result"].clone();
            }
            self.events.push(told);
        }
    }

    /// On how many pages the page at hand prints.
    pub fn pages(&mut self) -> usize {
        const OBJECT: &[u8] = b"/Type /Page\n";
        let printed = self.ask("Page.printToPDF", json!({"preferCSSPageSize": true}));
        let pdf = STANDARD.decode(printed["data"].as_str().unwrap()).unwrap();
        pdf.windows(OBJECT.len())
            .filter(|part| *part == OBJECT)
            .count()
    }

    fn hear(&mut self) -> Value {
        let mut bytes = Vec::new();
        self.from.read_until(0, &mut bytes).unwrap();
        assert_eq!(bytes.pop(), Some(0), "the browser is gone");
        serde_json::from_slice(&bytes).unwrap()
    }

    /// Opens a file in a window of this size and waits until all of it is there.
    pub fn visit(&mut self, file: &Path, width: u64, height: u64) {
        let size = json!({"width": width, "height": height, "deviceScaleFactor": 1, "mobile": width < 600});
        self.ask("Emulation.setDeviceMetricsOverride", size);
        self.events.clear();
        let url = format!("file://{}", file.display());
        self.ask("Page.navigate", json!({ "url": url }));
        while !self.told("Page.loadEventFired") {
            let told = self.hear();
            self.events.push(told);
        }
    }

    pub fn told(&self, method: &str) -> bool {
        self.events
            .iter()
            .any(|event| event["method"] == json!(method))
    }

    /// What a JavaScript expression gives in the page.
    pub fn value(&mut self, expression: &str) -> Value {
        let asked = json!({"expression": expression, "returnByValue": true, "awaitPromise": true});
        let told = self.ask("Runtime.evaluate", asked);
        assert!(told["exceptionDetails"].is_null(), "{expression}: {told}");
        told["result"]["value"].clone()
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        // It may have ended by itself.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
