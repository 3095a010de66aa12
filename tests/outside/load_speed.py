#!/usr/bin/env python3
"""Load speed: a scan of 500,000 triangles read by archproof and by numpy-stl,
trimesh, Open3D and meshio, in turns within one run, each from the same file in
the disk cache. archproof gives a mesh whose vertices are welded and whose faults
are counted; with the SHA-256 of the bytes, which no other library makes, it is
timed apart.

Bars, for the mesh: binary STL (welded) in half the time that numpy-stl takes for
loose triangles, and a tenth of trimesh's (which welds as well, by default);
binary PLY in a third of Open3D's; ASCII of each no slower than the fastest of
trimesh, Open3D and meshio. The ratio to reading the bytes alone is printed."""

import statistics
import struct
import subprocess
import time
from pathlib import Path

import meshio
import numpy as np
import open3d
import stl
import trimesh

from common import Checks, optimised_example, work_folder

#: Squares along and across: two triangles each, 500,000 in all.
SQUARES = 500
#: Each reads each file so often; the median counts.
ROUNDS = 7


def surface() -> tuple[np.ndarray, np.ndarray]:
    """A bowl of 500,000 triangles, coordinates as scanners give them."""
    along = np.linspace(-35.0, 35.0, SQUARES + 1)
    x, y = np.meshgrid(along, along, indexing="ij")
    z = 0.01 * (x**2 + y**2) + 0.02 * np.sin(17.0 * x) * np.cos(13.0 * y)
    vertices = np.stack([x, y, z], axis=-1).reshape(-1, 3).astype(np.float32)
    number = np.arange((SQUARES + 1) ** 2, dtype=np.int32).reshape(SQUARES + 1, SQUARES + 1)
    a, b, c, d = number[:-1, :-1], number[1:, :-1], number[:-1, 1:], number[1:, 1:]
    triangles = np.stack([a, b, d, a, d, c], axis=-1).reshape(-1, 3)
    return vertices, triangles


def write_all(folder: Path) -> dict[str, Path]:
    """The surface in each format, in the plain spelling of most exporters."""
    vertices, triangles = surface()
    corners = vertices[triangles]
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normals /= np.linalg.norm(normals, axis=1, keepdims=True)
    files = {
        kind: folder / f"{kind.replace(' ', '-')}.{kind[-3:].lower()}"
        for kind in ("binary STL", "ASCII STL", "binary PLY", "ASCII PLY")
    }
    records = np.zeros(len(triangles), dtype=[("n", "<f4", 3), ("v", "<f4", (3, 3)), ("a", "<u2")])
    records["n"], records["v"] = normals, corners
    files["binary STL"].write_bytes(
        bytes(80) + struct.pack("<I", len(triangles)) + records.tobytes()
    )
    with files["ASCII STL"].open("w") as out:
        out.write("solid\n")
        for normal, corner in zip(normals.tolist(), corners.tolist()):
            out.write("facet normal %e %e %e\nouter loop\n" % tuple(normal))
            for point in corner:
                out.write("vertex %e %e %e\n" % tuple(point))
            out.write("endloop\nendfacet\n")
        out.write("endsolid\n")
    header = (
        "ply\nformat {} 1.0\nelement vertex %d\nproperty float x\nproperty float y\n"
        "property float z\nelement face %d\nproperty list uchar int vertex_indices\nend_header\n"
    ) % (len(vertices), len(triangles))
    faces = np.zeros(len(triangles), dtype=[("n", "u1"), ("v", "<i4", 3)])
    faces["n"], faces["v"] = 3, triangles
    files["binary PLY"].write_bytes(
        header.format("binary_little_endian").encode() + vertices.tobytes() + faces.tobytes()
    )
    with files["ASCII PLY"].open("w") as out:
        out.write(header.format("ascii"))
        out.writelines("%.6f %.6f %.6f\n" % tuple(p) for p in vertices.tolist())
        out.writelines("3 %d %d %d\n" % tuple(t) for t in triangles.tolist())
    return files


def readers(kind: str, file: Path) -> dict:
    """Those of the libraries that read the format; numpy-stl gives no mesh."""
    name = str(file)
    those = {
        "trimesh": lambda: trimesh.load(name),
        "trimesh, not welded": lambda: trimesh.load(name, process=False),
        "Open3D": lambda: open3d.io.read_triangle_mesh(name),
        "meshio": lambda: meshio.read(name),
    }
    if kind.endswith("STL"):
        those["numpy-stl, loose"] = lambda: stl.mesh.Mesh.from_file(name)
    return those


def seconds(read) -> float:
    started = time.perf_counter()
    read()
    return time.perf_counter() - started


class Archproof:
    """A process that reads a file as often as it is asked to, so that its start
    is not timed; the others run within this one for the same reason."""

    def __init__(self) -> None:
        self.process = subprocess.Popen(
            [optimised_example("archproof-mesh", "read_speed"), "--turns"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )

    def turn(self, file: Path) -> list[float]:
        """Seconds for the mesh, for the scan with its SHA-256, for the bytes alone."""
        self.process.stdin.write(f"{file}\n")
        self.process.stdin.flush()
        return [float(number) for number in self.process.stdout.readline().split()]


def quicker(ours: list[float], theirs: list[float]) -> float:
    """How many times quicker: the median over the rounds, since what else the
    machine does in a round slows both."""
    return statistics.median(their / our for our, their in zip(ours, theirs, strict=True))


def bars(kind: str, theirs: dict[str, list[float]]) -> list[tuple[str, float]]:
    """Who is compared with, and how many times quicker archproof must be."""
    if kind == "binary STL":
        return [("numpy-stl, loose", 2.0), ("trimesh", 10.0)]
    if kind == "binary PLY":
        return [("Open3D", 3.0)]
    rivals = ("trimesh", "trimesh, not welded", "Open3D", "meshio")
    return [(min(rivals, key=lambda name: statistics.median(theirs[name])), 1.0)]


def main() -> None:
    checks, archproof = Checks(), Archproof()
    for kind, file in write_all(work_folder("load_speed")).items():
        times: dict[str, list[float]] = {}
        for _ in range(ROUNDS):
            own = ("archproof", "archproof with SHA-256", "bytes alone")
            for name, time_ in zip(own, archproof.turn(file), strict=True):
                times.setdefault(name, []).append(time_)
            for name, read in readers(kind, file).items():
                times.setdefault(name, []).append(seconds(read))
        ours = times.pop("archproof")
        print(f"{kind}, {2 * SQUARES**2} triangles, {file.stat().st_size / 1e6:.0f} MB:")
        ratio = 1.0 / quicker(ours, times["bytes alone"])
        print(f"  archproof {1e3 * statistics.median(ours):.1f} ms, {ratio:.1f} times the bytes alone")
        for time_, name in sorted((statistics.median(all_), name) for name, all_ in times.items()):
            print(f"  {name} {1e3 * time_:.1f} ms")
        for name, bar in bars(kind, times):
            found = quicker(ours, times[name])
            print(f"  {name}: {found:.1f} times slower than archproof, bar {bar:.0f}")
            checks.check(f"{kind}, {bar:.0f} times {name}", found >= bar, f"{found:.2f}")
    checks.close()


if __name__ == "__main__":
    main()
