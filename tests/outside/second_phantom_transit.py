"""A wash of another anatomy as it was sent and as it arrived: what happened on the way is told
apart.

    second_phantom_transit.py            an upper and a lower jaw
    second_phantom_transit.py --full     three mouths of each

Both scans are made by a generator beside the project, in other triangles and with noise of
their own."""

import sys
from pathlib import Path

import numpy as np

from common import Checks, program, work_folder
from generated import GENERATOR, GRID_MM, Made, Scan, case, checked

ARRIVED_GRID_MM = 0.4
SMALLER = 0.0015
BENT_MM = 0.3
DENT_MM, DENT_ACROSS_MM = 0.3, 5.0
TORN_MM, TORN_ALONG_MM = 3.0, 6.0
# A finding is of what was planted where it lies so near.
OF_IT_MM = 5.0


def smaller(made: Made, scan: Scan) -> Scan:
    return scan.moved(-SMALLER * scan.places)


def heel_bent(made: Made, scan: Scan) -> Scan:
    """The patient's left half as a beam that is held in front bends, toward the tissue."""
    front, back = made.crest[:, 1].max(), made.crest[:, 1].min()
    along = np.clip((front - scan.places[:, 1]) / (front - back) - 0.3, 0, None) / 0.7
    inside = np.clip(along, 0, 1)
    reach = inside**2 * (3 - inside) / 2 + 1.5 * (along - inside)
    left = 0.5 - 0.5 * np.tanh(made.right * scan.places[:, 0] / 6)
    return scan.moved(np.outer(BENT_MM * reach * left, [0, 0, 1]))


def dent_at(made: Made) -> np.ndarray:
    return made.crest[len(made.crest) // 4]


def dented(made: Made, scan: Scan) -> Scan:
    # The nearest place of the surface to the crest line's.
    at = scan.places[np.linalg.norm(scan.places - dent_at(made), axis=1).argmin()]
    part = np.linalg.norm(scan.places - at, axis=1) / (DENT_ACROSS_MM / 2)
    return scan.moved(-scan.normals * (DENT_MM * np.clip(1 - part**2, 0, None))[:, None])


def torn_at(made: Made) -> np.ndarray:
    return made.border[2 * len(made.border) // 3]


def torn(made: Made, scan: Scan) -> Scan:
    """The border's upper part is missing over a stretch, with a rounded end on either side."""
    at = torn_at(made)
    number = int(np.linalg.norm(made.border - at, axis=1).argmin())
    run = (made.border[number + 1] - made.border[number - 1])[:2]
    run /= np.linalg.norm(run)
    off = scan.places[:, :2] - at[:2]
    along, across = off @ run, off @ [-run[1], run[0]]
    end = np.clip((np.abs(along) - TORN_ALONG_MM / 2) / 1.5, 0, 1)
    depth = TORN_MM * (1 - end**2 * (3 - 2 * end))
    beside = np.interp(along, *level(made, number, run))
    lowered = np.minimum(scan.places[:, 2], beside - depth)
    near = (np.abs(across) < 6) & (depth > 0)
    return scan.moved(np.outer(np.where(near, lowered - scan.places[:, 2], 0), [0, 0, 1]))


def level(made: Made, number: int, run: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """How high the border is along a stretch beside one of its places."""
    near = made.border[max(number - 4, 0) : number + 5]
    along = (near[:, :2] - made.border[number, :2]) @ run
    order = np.argsort(along)
    return along[order], near[order, 2]


# What happened: how, whether the arch as a whole changed, the damage, and where.
HAPPENED = {
    "noise alone": (lambda made, scan: scan, False, None, None),
    "smaller by 0.15 %": (smaller, False, None, None),
    "heel bent by 0.3 mm": (heel_bent, True, None, None),
    "dent of 0.3 mm over 5 mm": (dented, False, "pressed_in", dent_at),
    "border torn by 3 mm": (torn, False, "missing_at_border", torn_at),
}


def look(sent: Made, arrived: Made, command: Path, checks: Checks, seed: int) -> None:
    name = sent.folder.name
    for number, (what, (how, of_arch, kind, where)) in enumerate(HAPPENED.items()):
        folder = work_folder("second_phantom_transit") / f"{name}-{number}"
        folder.mkdir(exist_ok=True)
        sent.impression.write(folder / "sent.ply", seed)
        scan = how(arrived, arrived.impression)
        # Not moved: places of the result are then those of the truth.
        scan.write(folder / "arrived.ply")
        file = folder / "case.toml"
        file.write_text(
            f'case = "T-{number}"\n[{sent.arch}]\nwash = "arrived.ply"\nwash_as_sent = "sent.ply"\n'
        )
        result = checked(command, file, folder / "result")
        said = [f for f in result["findings"] if f["check"] == "changed-in-transit"]
        change = result["impressions"][0]["as_sent"]["change"]
        if change is None:
            checks.check(f"{name}, {what}", False, result["impressions"][0]["as_sent"]["unused"])
            continue
        # A place is named by its part of the arch, a change of the arch by none.
        places = [f for f in said if f["at"] is not None and f["measured"] is not None]
        report(name, what, change, said)
        is_arch = surely_bent(change)
        damage = [d for d in change["damage"] if abs(d["depth_mm"]) - d["depth_uncertainty_mm"] > 0.1]
        checks.check(f"{name}, {what}: arch changed", is_arch == of_arch, str(change["bends"]))
        if kind is None:
            checks.check(f"{name}, {what}: damage", not damage, str(damage))
            checks.check(f"{name}, {what}: findings", len(said) == int(of_arch), str(said))
        else:
            at = where(arrived)
            off = [float(np.linalg.norm(np.subtract(d["at"], at))) for d in damage]
            right = bool(damage) and damage[0]["kind"] == kind and max(off) <= OF_IT_MM
            checks.check(f"{name}, {what}: damage", right, f"{damage}, off {off}")
            checks.check(f"{name}, {what}: findings", len(places) >= 1, str(said))
        size = change["larger_percent"], change["larger_uncertainty_percent"]
        wanted = -100 * SMALLER if how is smaller else 0.0
        if kind is None and not of_arch:
            checks.check(f"{name}, {what}: size", abs(size[0] - wanted) <= size[1], str(size))


def surely_bent(change: dict) -> bool:
    """Whether the arch as a whole surely changed by more than 0.15 mm."""
    amounts = [(change["heels_apart_mm"], change["heels_apart_uncertainty_mm"])]
    for limb in change["bends"]:
        for way in ("toward_tissue", "outward"):
            amounts.append((limb[f"end_{way}_mm"], limb[f"end_{way}_uncertainty_mm"]))
    return any(abs(mm) - doubt > 0.15 for mm, doubt in amounts)


def report(name: str, what: str, change: dict, said: list[dict]) -> None:
    bends = ", ".join(
        f"{limb['side']} {limb['end_toward_tissue_mm']:+.2f} ± {limb['end_toward_tissue_uncertainty_mm']:.2f}"
        for limb in change["bends"]
    )
    damage = ", ".join(
        f"{d['kind']} {d['depth_mm']:+.2f} ± {d['depth_uncertainty_mm']:.2f}" for d in change["damage"]
    )
    print(
        f"{name}, {what}: size {change['larger_percent']:+.3f} ± {change['larger_uncertainty_percent']:.3f} %; "
        f"heels toward the tissue {bends} mm; damage {damage or 'none'}; {len(said)} findings"
    )


def main() -> None:
    checks = Checks()
    if not GENERATOR.exists():
        checks.skip("second phantom in transit", "its generator is not beside the project")
        checks.close()
    command = program()
    names = ["max-show2", "mand-show-lingual-left"]
    sets = ["", "-p1", "-p2"] if "--full" in sys.argv[1:] else [""]
    for number, name in enumerate(name + ending for name in names for ending in sets):
        of = "full" if name[-3:-1] == "-p" else "quick"
        sent, arrived = (Made(case(name, of, grid)) for grid in (GRID_MM, ARRIVED_GRID_MM))
        look(sent, arrived, command, checks, 10 * number)
    checks.close()


if __name__ == "__main__":
    main()
