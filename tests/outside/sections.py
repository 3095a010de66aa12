"""Sections of impressions beside trimesh's plane cuts of the same meshes: the
length of each cut within 0.1 %, and the time of all of them, joined into lines,
as a ratio. Phantoms of both jaws and a ball, whose cuts are circles."""

import json
import math
import subprocess
import time

import numpy as np
import trimesh

from common import ROOT, Checks, example, work_folder

PLANES = 400
TOLERANCE = 1e-3


def phantom(arch: str):
    """An impression of about 250,000 triangles."""
    folder = work_folder(f"sections_{arch}")
    make = example("make")
    subprocess.run([make, folder, arch, "7", "0.33"], check=True, stdout=subprocess.DEVNULL)
    return next(path for path in sorted(folder.iterdir()) if path.stem.startswith("impression"))


def main() -> None:
    checks = Checks()
    sections = example("sections")
    files = [phantom("maxillary"), phantom("mandibular"), ROOT / "test-meshes" / "sphere.ply"]
    for file in files:
        run = subprocess.run([sections, file, str(PLANES)], capture_output=True, check=True)
        ours = json.loads(run.stdout)
        mesh = trimesh.load(file, process=True, force="mesh")
        start = time.perf_counter()
        cuts = [mesh.section(p["normal"], p["point"]) for p in ours["planes"]]
        theirs = time.perf_counter() - start
        worst = 0.0
        for number, (plane, cut) in enumerate(zip(ours["planes"], cuts, strict=True)):
            off = abs(plane["length"] / cut.length - 1.0)
            worst = max(worst, off)
            name = f"{file.parent.name}/{file.name} plane {number}"
            checks.check(name, off <= TOLERANCE, f"{plane['length']} against {cut.length}")
            checks.check(f"{name} closed", plane["closed"] == mesh.is_watertight)
        print(
            f"{file.parent.name}/{file.name}, {len(mesh.faces)} triangles, {PLANES} planes: lengths "
            f"within {100 * worst:.5f} %; {ours['seconds']:.3f} s, trimesh {theirs:.3f} s: "
            f"{theirs / ours['seconds']:.0f} times"
        )
        if file.stem == "sphere":
            radius = np.linalg.norm(mesh.vertices - mesh.bounds.mean(axis=0), axis=1).max()
            for number, plane in enumerate(ours["planes"]):
                aside = np.dot(mesh.bounds.mean(axis=0) - plane["point"], plane["normal"])
                circle = 2.0 * math.pi * math.sqrt(radius**2 - aside**2)
                # Facets lie inside the ball.
                share = plane["length"] / circle
                checks.check(f"circle {number}", 0.99 < share <= 1.0 + 1e-9, f"{share}")
    checks.close()


if __name__ == "__main__":
    main()
