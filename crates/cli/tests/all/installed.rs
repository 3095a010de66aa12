//! What a package brings beside the program: manual pages and completions.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use std::fs;
use std::process::{Command, Stdio};

/// The commands that the program lists, in its order.
fn commands() -> Vec<String> {
    let folder = tempfile::tempdir().unwrap();
    let help = run(folder.path(), &["--help"]).out;
    let listed = help.split_once("Commands:\n").unwrap().1;
    let names = listed.lines().take_while(|line| !line.is_empty());
    let names = names.filter_map(|line| line.strip_prefix("  ")?.split_whitespace().next());
    names.map(str::to_owned).collect()
}

#[test]
fn every_command_has_a_manual_page() {
    let folder = tempfile::tempdir().unwrap();
    let written = run(folder.path(), &["manual", "pages"]);
    assert_eq!((written.code, written.out.as_str()), (Some(0), ""));
    let page = |name: &str| {
        let file = folder.path().join("pages").join(format!("{name}.1"));
        fs::read_to_string(file).unwrap()
    };
    let whole = page("archproof");
    let commands = commands();
    assert!(commands.len() > 15, "{commands:?}");
    for command in &commands {
        assert!(whole.contains(&format!("archproof\\-{command}(1)")));
        assert!(page(&format!("archproof-{command}")).contains(".SH SYNOPSIS"));
    }
    assert!(page("archproof-protocol-new").contains(".SH SYNOPSIS"));
    // Whoever makes a package knows of it.
    assert!(!whole.contains("manual(1)"));
}

#[test]
fn every_shell_completes_every_command() {
    let folder = tempfile::tempdir().unwrap();
    for shell in ["bash", "zsh", "fish", "powershell", "elvish"] {
        let script = run(folder.path(), &["completions", shell]).out;
        for command in commands() {
            assert!(script.contains(&command), "{shell}: {command}");
        }
        fs::write(folder.path().join(shell), script).unwrap();
    }
    // Each shell that is here reads its own.
    for shell in ["bash", "zsh", "fish"] {
        let read = Command::new(shell)
            .args(["-n", shell])
            .current_dir(folder.path())
            .stderr(Stdio::null())
            .status();
        assert!(read.map_or(true, |status| status.success()), "{shell}");
    }
}
