"""A wash of another anatomy, cut into two parts in any pose: the findings of the whole.

    second_phantom_parts.py            an upper and a lower jaw
    second_phantom_parts.py --full     three mouths of each

Cases are those of second_phantom.py, made by a generator beside the project."""

import sys
from pathlib import Path

import numpy as np
from scipy.spatial import Delaunay

from common import Checks, program, work_folder
from generated import GENERATOR, Made, Scan, case, checked

SAW_MM = 0.8
# A finding is that of the whole where it lies so near, in the same part of the arch.
SAME_PLACE_MM = 2.0
# Nothing is judged so near to the cut.
AT_THE_CUT_MM = 3.0


def part(whole: Scan, y: float, front: bool) -> Scan:
    """What is in front of a plane, or behind it, closed by the face of the cut."""
    sign = 1.0 if front else -1.0
    height = sign * (whole.places[:, 1] - y)
    # No vertex lies in the plane itself.
    height[np.abs(height) < 1e-6] = 1e-6
    places = list(whole.places)
    cut: dict[tuple[int, int], int] = {}

    def crossing(a: int, b: int) -> int:
        key = (min(a, b), max(a, b))
        if key not in cut:
            share = height[a] / (height[a] - height[b])
            places.append(whole.places[a] + share * (whole.places[b] - whole.places[a]))
            cut[key] = len(places) - 1
        return cut[key]

    inside = height[whole.triangles] > 0
    kept = whole.triangles[inside.all(1)].tolist()
    edges = []
    for corners in whole.triangles[inside.any(1) & ~inside.all(1)]:
        ring, ends = [], []
        for a, b in zip(corners, np.roll(corners, -1)):
            if height[a] > 0:
                ring.append(int(a))
            if (height[a] > 0) != (height[b] > 0):
                ring.append(crossing(int(a), int(b)))
                ends.append(ring[-1])
        kept += [[ring[0], ring[k - 1], ring[k]] for k in range(2, len(ring))]
        edges.append(ends)
    all_places = np.array(places)
    kept += face(all_places, np.array(edges), -sign)
    used, triangles = np.unique(np.array(kept), return_inverse=True)
    return Scan(all_places[used], triangles.reshape(-1, 3))


def face(places: np.ndarray, edges: np.ndarray, facing: float) -> list[list[int]]:
    """Triangles of the face of a cut between its outlines, facing along y."""
    numbers = np.unique(edges)
    flat = places[numbers][:, [0, 2]]
    triangles = Delaunay(flat).simplices
    middles = flat[triangles].mean(1)
    a, b = (places[edges[:, end]][:, [0, 2]] for end in (0, 1))
    crossings = np.zeros(len(middles), int)
    for number, (x, z) in enumerate(middles):
        spans = (a[:, 1] > z) != (b[:, 1] > z)
        at = a[spans, 0] + (z - a[spans, 1]) / (b[spans, 1] - a[spans, 1]) * (b - a)[spans, 0]
        crossings[number] = (at > x).sum()
    triangles = triangles[crossings % 2 == 1]
    corners = flat[triangles]
    turn = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    # Counter-clockwise in x and z is against y.
    against = np.sign(turn) == facing
    triangles[against] = triangles[against][:, ::-1]
    return numbers[triangles].tolist()


def cut_at(made: Made) -> float:
    """Across the middle third of the crest line, as far from planted places as can be."""
    along = np.quantile(made.crest[:, 1], np.linspace(0.33, 0.67, 30))
    planted = made.made([spot["centre"] for spot in made.truth["spots"]])[:, 1]
    return max(along, key=lambda y: np.abs(planted - y).min())


def findings(result: dict) -> list[tuple]:
    """What is to be acted on or asked about."""
    return sorted(
        (found["severity"], found["check"], found["zone"] or "", found["side"] or "")
        for found in result["findings"]
        if found["severity"] != "note"
    )


def look(made: Made, command: Path, checks: Checks, seed: int) -> None:
    name = made.folder.name
    folder = work_folder("second_phantom_parts") / name
    folder.mkdir(exist_ok=True)
    y = cut_at(made)
    made.impression.write(folder / "whole.ply", seed)
    part(made.impression, y, True).write(folder / "front.ply", seed + 1)
    part(made.impression, y - SAW_MM, False).write(folder / "back.ply", seed + 2)
    results = []
    for kind, wash in [("whole", '"whole.ply"'), ("parts", '["back.ply", "front.ply"]')]:
        file = folder / f"{kind}.toml"
        file.write_text(f'case = "P-{kind}"\n[{made.arch}]\nwash = {wash}\ntray = "{made.tray}"\n')
        results.append(checked(command, file, folder / kind))
    whole, parts = results
    same = findings(whole) == findings(parts) and whole["verdict"] == parts["verdict"]
    checks.check(f"{name} findings", same, f"{findings(parts)} instead of {findings(whole)}")
    covers = [result["impressions"][0]["cover"] for result in results]
    medians = [cover and cover["median_mm"] for cover in covers]
    spots = [cover and len(cover["spots"]) for cover in covers]
    heights = [
        np.median([s["flange_height_mm"] for s in border["stations"] if s["flange_height_mm"]])
        for border in (result["impressions"][0]["border"] for result in results)
    ]
    print(
        f"{name}: {whole['verdict']}, in parts {parts['verdict']}; median cover {medians[0]:.3f}, "
        f"{medians[1]:.3f} mm; places of little cover {spots[0]}, {spots[1]}; "
        f"median flange height {heights[0]:.2f}, {heights[1]:.2f} mm"
    )
    checks.check(f"{name} median cover", abs(medians[0] - medians[1]) <= 0.05, str(medians))
    checks.check(f"{name} flange height", abs(heights[0] - heights[1]) <= 0.2, str(heights))


def main() -> None:
    checks = Checks()
    if not GENERATOR.exists():
        checks.skip("second phantom in parts", "its generator is not beside the project")
        checks.close()
    command = program()
    names = ["max-show2", "mand-show-lingual-left"]
    sets = ["", "-p1", "-p2"] if "--full" in sys.argv[1:] else [""]
    for number, name in enumerate(name + ending for name in names for ending in sets):
        of = "full" if name[-3:-1] == "-p" else "quick"
        look(Made(case(name, of)), command, checks, 10 * number)
    checks.close()


if __name__ == "__main__":
    main()
