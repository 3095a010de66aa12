//! `archproof judge`: measured results judged again by other limits.

use crate::command_line::JudgeArguments;
use crate::failure::Failure;
use crate::terminal::say;
use judge::Protocol;
use messages::Language;
use report::again::{CaseAgain, CheckChange};
use report::json_line;
use report::result::Verdict;
use report::words::verdict_word;
use std::collections::BTreeMap;

/// What came of all cases.
#[derive(Default)]
struct Tally {
    cases: u64,
    /// Cases by verdict before and now; `None` where it must be measured again.
    verdicts: BTreeMap<(String, Option<String>), u64>,
    /// Cases by the check that must be measured again.
    measure_again: BTreeMap<String, u64>,
    changed: u64,
}

pub fn run(arguments: &JudgeArguments) -> Result<(), Failure> {
    let protocol = Protocol::from_file(&arguments.protocol)?;
    let mut tally = Tally::default();
    if !arguments.json {
        say(&format!(
            "Judged again by \"{}\". Cases whose verdict changes:\n",
            protocol.name()
        ))?;
    }
    let unreadable = batch::judge_again(&arguments.dir, &protocol, |folder, again| {
        tally.add(&again);
        if arguments.json {
            say(&json_line(&again))?;
        } else if again.now.is_some_and(|now| now != again.was) {
            say(&changed_line(folder, &again))?;
        }
        Ok::<(), Failure>(())
    })?;
    if !arguments.json {
        say(&tally.text(unreadable))?;
    }
    Ok(())
}

fn word(verdict: Verdict) -> String {
    verdict_word(verdict, Language::English)
}

/// `D-1042: accept -> rework (flange-height: 2 fail)`.
fn changed_line(folder: &str, again: &CaseAgain) -> String {
    let why: Vec<String> = again.changes.iter().map(change).collect();
    let now = again.now.map_or_else(String::new, word);
    let why = why.join("; ");
    format!(
        "  {} [{folder}]: {} -> {now} ({why})\n",
        again.case,
        word(again.was)
    )
}

fn change(change: &CheckChange) -> String {
    let counted = |counts: &BTreeMap<String, u64>| {
        let each: Vec<String> = counts
            .iter()
            .map(|(word, n)| format!("{n} {word}"))
            .collect();
        if each.is_empty() {
            "none".to_owned()
        } else {
            each.join(", ")
        }
    };
    let CheckChange {
        check, was, now, ..
    } = change;
    format!("{check}: {} -> {}", counted(was), counted(now))
}

impl Tally {
    fn add(&mut self, again: &CaseAgain) {
        self.cases += 1;
        self.changed += u64::from(again.now.is_some_and(|now| now != again.was));
        let pair = (word(again.was), again.now.map(word));
        *self.verdicts.entry(pair).or_default() += 1;
        for check in &again.measure_again {
            *self.measure_again.entry(check.clone()).or_default() += 1;
        }
    }

    fn text(&self, unreadable: u64) -> String {
        let mut said = String::new();
        if self.changed == 0 {
            said += "  none\n";
        }
        said += "\nwas         now             cases\n";
        for ((was, now), count) in &self.verdicts {
            said += &format!(
                "{was:<11} {:<15} {count}\n",
                now.as_deref().unwrap_or("measure again")
            );
        }
        if !self.measure_again.is_empty() {
            said += "\nNot judged again, since a result does not hold all that these checks measured by the\n\
                     limits that changed. Run 'archproof batch --protocol' for them:\n";
            for (check, count) in &self.measure_again {
                said += &format!("  {check}: {count} cases\n");
            }
        }
        if unreadable > 0 {
            said += &format!("\n{unreadable} cases could not be read when they were checked.\n");
        }
        let open = self.verdicts.iter().filter(|((_, now), _)| now.is_none());
        let open: u64 = open.map(|(_, count)| count).sum();
        said + &format!(
            "\n{} cases judged again: {} change their verdict, {open} must be measured again.\n",
            self.cases, self.changed
        )
    }
}
