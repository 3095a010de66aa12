"""How two threads compare with one over a folder of cases, each checked anew:
runs alternate, so that other work on the machine weighs on both alike. Memory is
the peak of the whole program. `batch_rate.py [CASES] [EDGE_MM] [ROUNDS]`."""

import csv
import os
import statistics
import subprocess
import sys
import time

from batch_folder import batch, cases, fresh

MEMORY_MIB = 512


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 300
    edge_mm = float(sys.argv[2]) if len(sys.argv) > 2 else 0.67
    rounds = int(sys.argv[3]) if len(sys.argv) > 3 else 3
    folder = cases(count, edge_mm)
    peak_mib = 0.0
    rates: dict[str, list[float]] = {"1": [], "2": []}
    for _ in range(rounds):
        for threads in rates:
            fresh_out = fresh("rate")
            command = batch(folder, fresh_out, "--threads", threads)
            began = time.perf_counter()
            child = subprocess.Popen(
                [*command, "--memory", f"{MEMORY_MIB}MiB"], stdout=subprocess.DEVNULL
            )
            peak_mib = max(peak_mib, os.wait4(child.pid, 0)[2].ru_maxrss / 1024)
            rates[threads].append((count + 1) / (time.perf_counter() - began))
    for threads, seen in rates.items():
        told = ", ".join(f"{rate:.2f}" for rate in seen)
        print(f"{threads} thread(s): {told} cases a second")
    ratios = [two / one for one, two in zip(rates["1"], rates["2"])]
    told = ", ".join(f"{ratio:.2f}" for ratio in ratios)
    print(f"2 threads over 1: {told}; median {statistics.median(ratios):.2f}")
    with open(fresh_out / "summary.csv", newline="") as table:
        triangles = [int(row["triangles"]) for row in csv.DictReader(table) if row["triangles"]]
    print(f"{count} cases; triangles of an impression: {min(triangles)} to {max(triangles)}")
    size = sum(file.stat().st_size for file in fresh_out.rglob("*") if file.is_file())
    print(f"results of a case: {size / count / 1e6:.1f} MB; one thread: {1 / max(rates['1']):.2f} s a case")
    print(f"most memory at a time: {peak_mib:.0f} MiB (allowed: {MEMORY_MIB} MiB)")


if __name__ == "__main__":
    main()
