"""What the outside checks share: where things are, and how outcomes are told."""

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
TARGET = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))
DATA = ROOT.parent / "shared" / "data"
WORK = TARGET / "outside"
# The command speaks English whatever the language of the machine.
os.environ["LC_ALL"] = "C"
os.environ.pop("LANGUAGE", None)


def program() -> Path:
    """The command, optimised. No package is named: for one alone cargo would build
    its libraries a second time, with fewer features."""
    command = ["cargo", "build", "--release", "--quiet", "--locked", "--bin", "archproof"]
    subprocess.run(command, cwd=ROOT, check=True)
    return TARGET / "release" / "archproof"


def example(name: str) -> Path:
    """An example as the tests build it: its figures are those of an optimised one."""
    command = ["cargo", "build", "--quiet", "--locked", "--example", name]
    subprocess.run(command, cwd=ROOT, check=True)
    return TARGET / "debug" / "examples" / name


def optimised_example(package: str, name: str) -> Path:
    """An example whose speed is looked at."""
    command = ["cargo", "build", "--release", "--quiet", "--package", package, "--example", name]
    subprocess.run(command, cwd=ROOT, check=True)
    return TARGET / "release" / "examples" / name


def work_folder(name: str) -> Path:
    """A folder below target/ for files that a check makes."""
    folder = WORK / name
    folder.mkdir(parents=True, exist_ok=True)
    return folder


class Checks:
    """Counts outcomes, and tells each that is not as wanted."""

    def __init__(self) -> None:
        self.passed = self.failed = self.skipped = 0

    def check(self, what: str, fulfilled: bool, figures: str = "") -> None:
        if fulfilled:
            self.passed += 1
        else:
            self.failed += 1
            print(f"FAILED {what}: {figures}")

    def skip(self, what: str, why: str) -> None:
        self.skipped += 1
        print(f"skipped {what}: {why}")

    def close(self) -> None:
        """Prints the count and ends the program."""
        print(f"{self.passed} passed, {self.failed} failed, {self.skipped} skipped")
        sys.exit(1 if self.failed else 0)
