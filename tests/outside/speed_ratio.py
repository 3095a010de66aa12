"""This build beside an earlier one, in turns: the ratio of each step's time, with
its spread, and whether the results are the same.

`speed_ratio.py EARLIER NOW ROUNDS CASE...`: EARLIER and NOW are two builds of the
program, each CASE a case file. Both run on one thread, so that steps follow each
other; what other programs take of the machine strikes both alike. Steps are
measured by the clock, the whole by user and system time."""

import json
import os
import re
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

#: What a step's name begins with where a case holds several impressions.
NUMBERED = re.compile(r"^impression \d+ of \d+: ")
REST, ALL = "drawing, writing and the rest", "all (user and system)"
#: Figures nearer to each other than this are one, mm and other units.
SAME = 1e-9


def run(program: Path, case: Path) -> tuple[dict[str, float], dict]:
    """Seconds of each step, and the result without its times."""
    started = time.perf_counter()
    with tempfile.TemporaryDirectory() as out:
        command = [program, "check", case, "--out", out, "--threads", "1"]
        quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
        process = subprocess.Popen([str(part) for part in command], **quiet)
        _, _, usage = os.wait4(process.pid, 0)
        lasted = time.perf_counter() - started
        result = json.loads((Path(out) / "result.json").read_text())
    seconds: dict[str, float] = {}
    for step in result.pop("times")["steps"]:
        name = NUMBERED.sub("", step["step"])
        seconds[name] = seconds.get(name, 0.0) + step["duration_s"]
    whole = usage.ru_utime + usage.ru_stime
    return seconds | {REST: lasted - sum(seconds.values()), ALL: whole}, result


def differences(before: object, now: object, at: str = "") -> list[tuple[str, object, object]]:
    """Places at which two results differ."""
    if isinstance(before, dict) and isinstance(now, dict):
        keys = sorted(before.keys() | now.keys())
        return [d for k in keys for d in differences(before.get(k), now.get(k), f"{at}/{k}")]
    if isinstance(before, list) and isinstance(now, list) and len(before) == len(now):
        pairs = enumerate(zip(before, now))
        return [d for k, (b, n) in pairs for d in differences(b, n, f"{at}/{k}")]
    numbers = (int, float)
    if isinstance(before, numbers) and isinstance(now, numbers) and abs(before - now) <= SAME:
        return []
    return [] if before == now else [(at, before, now)]


def tell_differences(found: list[tuple[str, object, object]]) -> None:
    """Greatest difference of each kind of figure, and all that are no numbers."""
    greatest: dict[str, float] = {}
    for at, before, now in found:
        if isinstance(before, float) and isinstance(now, float):
            kind = re.sub(r"/\d+", "", at)
            greatest[kind] = max(greatest.get(kind, 0.0), abs(before - now))
        else:
            print(f"  {at}: {str(before)[:60]} -> {str(now)[:60]}")
    for kind, size in sorted(greatest.items(), key=lambda entry: -entry[1]):
        print(f"  {kind}: by {size:.2g} at most")


def tell_times(before: list[dict[str, float]], now: list[dict[str, float]]) -> None:
    """A row for each step: medians, and the ratio with its spread."""
    print("  before s     now s  ratio (least to greatest)  step")
    for step in dict.fromkeys([*before[0], *now[0]]):
        old, new = ([run.get(step, 0.0) for run in runs] for runs in (before, now))
        ratios = [b / max(a, 1e-9) for a, b in zip(old, new)] if min(old) > 0 else []
        told = f"{statistics.median(ratios):5.2f} ({min(ratios):.2f} to {max(ratios):.2f})" if ratios else "  new"
        print(f"  {statistics.median(old):8.3f}  {statistics.median(new):8.3f}  {told:<25}  {step}")


def main() -> None:
    earlier, this = (Path(program).resolve() for program in sys.argv[1:3])
    rounds = int(sys.argv[3])
    for case in map(Path, sys.argv[4:]):
        print(case)
        before, now = [], []
        for _ in range(rounds):
            for program, times in ((earlier, before), (this, now)):
                seconds, result = run(program, case)
                times.append(seconds)
                if program == earlier:
                    old = result
        tell_times(before, now)
        tell_differences(differences(old, result))


if __name__ == "__main__":
    main()
