"""Distances from points to the surfaces of real files against Open3D's
ray-casting scene. That works in single precision and loses more on slivers, so
points where the two differ are judged by trimesh in double precision."""

import subprocess

import numpy as np
import open3d as o3d
import trimesh

from common import DATA, Checks, example, work_folder

FILES = [
    "robustness/ampscan/stl_file.stl",
    "robustness/ampscan/stl_file_2.stl",
    "robustness/trimesh/bunny.ply",
    "robustness/trimesh/cycloidal.ply",
    "robustness/trimesh/torus.STL",
    "scans/tooth-bearing-half-arch-170k.ply",
]
POINTS = 20_000
#: Part of the mesh's diagonal: 1e-5 mm on a scan of 100 mm.
TOLERANCE = 1e-7


def main() -> None:
    checks = Checks()
    program, work = example("figures"), work_folder("nearest_places")
    random = np.random.default_rng(1)
    for name in FILES:
        path = DATA / name
        if not path.exists():
            checks.skip(name, "the shared data are absent")
            continue
        mesh = trimesh.load(path, process=False, force="mesh")
        low, high = mesh.bounds
        diagonal = np.linalg.norm(high - low)
        on_surface = trimesh.sample.sample_surface(mesh, POINTS // 2, seed=1)[0]
        near = on_surface + random.normal(0, 0.01 * diagonal, on_surface.shape)
        points = np.vstack([near, random.uniform(low, high, (POINTS // 2, 3))])
        points.astype("<f8").tofile(work / "points.f64")
        command = [program, "--nearest", path, work / "points.f64", work / "distances.f64"]
        subprocess.run(command, check=True)
        ours = np.fromfile(work / "distances.f64", "<f8")

        middle = (low + high) / 2
        scene = o3d.t.geometry.RaycastingScene()
        scene.add_triangles(
            o3d.core.Tensor((np.asarray(mesh.vertices) - middle).astype(np.float32)),
            o3d.core.Tensor(np.asarray(mesh.faces).astype(np.uint32)),
        )
        queries = o3d.core.Tensor((points - middle).astype(np.float32))
        theirs = scene.compute_distance(queries).numpy()
        apart = np.abs(ours - theirs) > TOLERANCE * diagonal
        if apart.any():
            theirs[apart] = trimesh.proximity.closest_point(mesh, points[apart])[1]
        worst = np.abs(ours - theirs).max()
        print(
            f"{name}: largest difference {worst:.1e} of a diagonal of {diagonal:.1f},"
            f" {apart.sum()} of {len(points)} points judged in double precision"
        )
        checks.check(name, worst <= TOLERANCE * diagonal, f"differs by {worst}")
    checks.close()


if __name__ == "__main__":
    main()
