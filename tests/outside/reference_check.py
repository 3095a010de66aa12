"""The same road as `archproof check IMPRESSION --tray TRAY`, as one would write
it over general-purpose libraries, each step by the quickest that has it:
`reference_check.py IMPRESSION TRAY FOLDER`. Writes a coloured PLY and a
result.json into FOLDER and prints the seconds of each step, and how many
triangles there were, as JSON."""

import time

STARTED = time.perf_counter()

import hashlib
import json
import sys
from pathlib import Path

import numpy as np
import open3d as o3d
import trimesh
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree

SHOW_THROUGH_MM, THIN_MM, MAP_TO_MM = 0.2, 1.0, 3.0
COARSE_MM = 1.5
#: Five colours of viridis, 0 to 1.
VIRIDIS = np.array(
    [[0.267, 0.005, 0.329], [0.230, 0.322, 0.546], [0.128, 0.567, 0.551],
     [0.369, 0.789, 0.383], [0.993, 0.906, 0.144]]
)  # fmt: skip


def read(path: str) -> trimesh.Trimesh:
    if path.endswith(".ply"):
        mesh = o3d.io.read_triangle_mesh(path)
        return trimesh.Trimesh(np.asarray(mesh.vertices), np.asarray(mesh.triangles), process=False)
    return trimesh.load(path, force="mesh")


def integrity(mesh: trimesh.Trimesh, path: str) -> dict:
    unique, count = np.unique(mesh.edges_sorted, axis=0, return_counts=True)
    boundary = unique[count == 1]
    loops = labelled(boundary, len(mesh.vertices))[boundary[:, 0]]
    return {
        "sha256": hashlib.sha256(Path(path).read_bytes()).hexdigest(),
        "vertices": len(mesh.vertices),
        "triangles": len(mesh.faces),
        "components": int(labelled(mesh.face_adjacency, len(mesh.faces)).max()) + 1,
        "boundary_loops": len(np.unique(loops)),
        "non_manifold_edges": int((count > 2).sum()),
        "median_edge_mm": float(np.median(mesh.edges_unique_length)),
        "area_mm2": float(mesh.area),
    }


def scene_of(mesh: trimesh.Trimesh, middle: np.ndarray) -> o3d.t.geometry.RaycastingScene:
    scene = o3d.t.geometry.RaycastingScene()
    scene.add_triangles(
        o3d.core.Tensor((mesh.vertices - middle).astype(np.float32)),
        o3d.core.Tensor(mesh.faces.astype(np.uint32)),
    )
    return scene


def visible(mesh, scene, middle, axis) -> np.ndarray:
    """Faces that are seen from far along the axis."""
    origins = mesh.triangles_center - middle + 1e-3 * mesh.face_normals
    rays = np.hstack([origins, np.broadcast_to(axis, origins.shape)]).astype(np.float32)
    free = ~scene.test_occlusions(o3d.core.Tensor(rays)).numpy()
    return free & (mesh.face_normals @ axis > 0.05)


def tissue_faces(mesh: trimesh.Trimesh) -> tuple[np.ndarray, np.ndarray]:
    """The seating axis and the faces of the tissue surface: along the flattest
    principal axis, the side whose visible surface is the more strongly hollow
    (its faces look at each other), and its greatest connected part. The axis is
    then the mean normal of that surface, which is its border's."""
    middle = mesh.bounds.mean(axis=0)
    scene = scene_of(mesh, middle)
    flattest = np.linalg.svd(np.cov((mesh.vertices - middle).T))[0][:, 2]
    best = None
    for axis in (flattest, -flattest):
        seen = visible(mesh, scene, middle, axis)
        inward = middle - mesh.triangles_center[seen]
        inward -= np.outer(inward @ axis, axis)
        steep = np.einsum("ij,ij->i", inward, mesh.face_normals[seen])
        spread = (mesh.triangles_center[seen] @ axis).std()
        score = spread * np.abs(steep * mesh.area_faces[seen]).sum()
        if best is None or score > best[0]:
            best = (score, axis, seen)
    faces = greatest_part(mesh, best[2])
    axis = (mesh.face_normals[faces] * mesh.area_faces[faces, None]).sum(axis=0)
    axis /= np.linalg.norm(axis)
    return axis, greatest_part(mesh, visible(mesh, scene, middle, axis))


def greatest_part(mesh: trimesh.Trimesh, chosen: np.ndarray) -> np.ndarray:
    numbers = np.flatnonzero(chosen)
    both = chosen[mesh.face_adjacency].all(axis=1)
    labels = labelled(mesh.face_adjacency[both], len(mesh.faces))
    areas = np.bincount(labels[numbers], mesh.area_faces[numbers])
    return numbers[labels[numbers] == areas.argmax()]


def front(points: np.ndarray, seating: np.ndarray) -> dict:
    """The anterior axis in the plane that mirrors the tissue surface best,
    toward the narrower end; and the arch: a palate, or none."""
    points = points[:: max(1, len(points) // 3000)]
    middle = points.mean(axis=0)
    across = np.linalg.svd(seating[None])[2][1:]
    flat, height = (points - middle) @ across.T, (points - middle) @ seating
    tree = cKDTree(np.column_stack([flat, height]))

    def misfit(angle: float) -> float:
        side = np.array([-np.sin(angle), np.cos(angle)])
        mirrored = flat - 2 * np.outer(flat @ side, side)
        return tree.query(np.column_stack([mirrored, height]))[0].mean()

    step = np.radians(5)
    angle = min(np.arange(0, np.pi, step), key=misfit)
    angle = min(angle + np.linspace(-step, step, 21), key=misfit)
    ahead = np.array([np.cos(angle), np.sin(angle)])
    along, aside = flat @ ahead, np.abs(flat @ [-ahead[1], ahead[0]])
    ends = [sign * along > np.quantile(sign * along, 0.85) for sign in (1, -1)]
    if aside[ends[1]].mean() < aside[ends[0]].mean():
        ahead = -ahead
    in_middle = (np.hypot(*flat.T) < 8).mean()
    return {
        "seating": seating.tolist(),
        "anterior": (ahead @ across).tolist(),
        "arch": "maxillary" if in_middle > 0.02 else "mandibular",
    }


def noise_of(mesh: trimesh.Trimesh) -> float:
    """From how far vertices stand off the mean of their neighbours."""
    a, b = np.vstack([mesh.edges_unique, mesh.edges_unique[:, ::-1]]).T
    size = len(mesh.vertices)
    around = coo_array((np.ones(len(a)), (a, b)), (size, size)).tocsr()
    count = np.maximum(np.bincount(a, minlength=size), 1)
    off = mesh.vertices - (around @ mesh.vertices) / count[:, None]
    off = np.einsum("ij,ij->i", off, mesh.vertex_normals) / np.sqrt(1 + 1 / count)
    return float(1.4826 * np.median(np.abs(off - np.median(off))))


def labelled(pairs: np.ndarray, size: int) -> np.ndarray:
    ones = np.ones(len(pairs))
    return connected_components(coo_array((ones, (pairs[:, 0], pairs[:, 1])), (size, size)))[1]


def cloud(mesh: trimesh.Trimesh) -> o3d.geometry.PointCloud:
    points = o3d.geometry.PointCloud(o3d.utility.Vector3dVector(mesh.vertices))
    points.normals = o3d.utility.Vector3dVector(np.array(mesh.vertex_normals))
    return points


def register(tray: trimesh.Trimesh, impression: trimesh.Trimesh, outer: np.ndarray):
    """The impression's outer surface onto the tray, all of which is there to
    partner it: global by features, then fine by point-to-plane steps with a
    robust kernel. Gives the pose from tray to impression, the root mean square
    distance of what fits from the nearest vertex, and the expanded uncertainty
    of the place."""
    registration = o3d.pipelines.registration
    o3d.utility.random.seed(1)
    shown = impression.submesh([outer], append=True)
    source, target = cloud(shown), cloud(tray)
    coarse, features = [], []
    for points in (source, target):
        thinned = points.voxel_down_sample(COARSE_MM)
        around = o3d.geometry.KDTreeSearchParamHybrid(radius=5 * COARSE_MM, max_nn=100)
        coarse.append(thinned)
        features.append(registration.compute_fpfh_feature(thinned, around))
    found = registration.registration_ransac_based_on_feature_matching(
        *coarse,
        *features,
        mutual_filter=False,
        max_correspondence_distance=1.5 * COARSE_MM,
        estimation_method=registration.TransformationEstimationPointToPoint(False),
        ransac_n=3,
        checkers=[
            registration.CorrespondenceCheckerBasedOnEdgeLength(0.9),
            registration.CorrespondenceCheckerBasedOnDistance(1.5 * COARSE_MM),
        ],
        criteria=registration.RANSACConvergenceCriteria(100_000, 0.999),
    )
    pose = found.transformation
    fine = source.voxel_down_sample(0.5)
    for reach, width in ((2.0, 0.5), (0.5, 0.1), (0.2, 0.05)):
        step = registration.registration_icp(
            fine,
            target,
            reach,
            pose,
            registration.TransformationEstimationPointToPlane(registration.TukeyLoss(k=width)),
            registration.ICPConvergenceCriteria(max_iteration=30),
        )
        pose = step.transformation
    information = registration.get_information_matrix_from_point_clouds(fine, target, 0.2, pose)
    variance = step.inlier_rmse**2 * np.linalg.inv(information)
    return np.linalg.inv(pose), step.inlier_rmse, 2 * np.sqrt(np.trace(variance[3:, 3:]))


def cover_of(tray: trimesh.Trimesh, points: np.ndarray, impression_from_tray) -> np.ndarray:
    placed = tray.copy()
    placed.apply_transform(impression_from_tray)
    middle = placed.bounds.mean(axis=0)
    queries = o3d.core.Tensor((points - middle).astype(np.float32))
    return scene_of(placed, middle).compute_signed_distance(queries).numpy()


def smoothed(mesh, tissue, cover) -> np.ndarray:
    """Each value averaged with its neighbours', twice."""
    corners = mesh.faces[tissue]
    pairs = np.vstack([corners[:, [i, j]] for i in range(3) for j in range(3)])
    size = len(cover)
    weights = coo_array((np.ones(len(pairs)), tuple(pairs.T)), (size, size)).tocsr()
    sums = np.maximum(weights.sum(axis=1), 1)
    values = np.nan_to_num(cover)
    for _ in range(2):
        values = weights @ values / sums
    return np.where(np.isnan(cover), np.nan, values)


def patches(mesh, tissue, cover_at_vertex, limit) -> list[dict]:
    low = np.zeros(len(mesh.faces), bool)
    low[tissue] = (cover_at_vertex[mesh.faces[tissue]] <= limit).any(axis=1)
    numbers = np.flatnonzero(low)
    labels = labelled(mesh.face_adjacency[low[mesh.face_adjacency].all(axis=1)], len(mesh.faces))
    found = []
    for label in np.unique(labels[numbers]):
        faces = numbers[labels[numbers] == label]
        area = mesh.area_faces[faces]
        found.append(
            {
                "area_mm2": float(area.sum()),
                "centre": np.average(mesh.triangles_center[faces], axis=0, weights=area).tolist(),
                "min_mm": float(cover_at_vertex[mesh.faces[faces]].min()),
            }
        )
    return [patch for patch in found if patch["area_mm2"] >= 1.0]


def write(mesh, cover, result, folder: Path) -> None:
    share = np.clip(np.nan_to_num(cover, nan=MAP_TO_MM) / MAP_TO_MM, 0, 1) * (len(VIRIDIS) - 1)
    colours = np.stack([np.interp(share, np.arange(len(VIRIDIS)), c) for c in VIRIDIS.T], axis=1)
    colours[np.isnan(cover)] = 0.69
    coloured = o3d.geometry.TriangleMesh(
        o3d.utility.Vector3dVector(mesh.vertices), o3d.utility.Vector3iVector(mesh.faces)
    )
    coloured.vertex_colors = o3d.utility.Vector3dVector(colours)
    o3d.io.write_triangle_mesh(str(folder / "cover.ply"), coloured)
    (folder / "result.json").write_text(json.dumps(result, indent=2))


def main() -> None:
    impression_file, tray_file, folder = sys.argv[1], sys.argv[2], Path(sys.argv[3])
    folder.mkdir(parents=True, exist_ok=True)
    seconds, last = {}, STARTED

    def done(step: str) -> None:
        nonlocal last
        now = time.perf_counter()
        seconds[step], last = now - last, now

    done("imports")
    impression, tray = read(impression_file), read(tray_file)
    done("reading")
    result = {
        "scan": integrity(impression, impression_file),
        "tray": integrity(tray, tray_file),
    }
    done("integrity")
    axis, tissue = tissue_faces(impression)
    vertices = np.unique(impression.faces[tissue])
    result["frame"] = front(impression.vertices[vertices], axis)
    result["noise_mm"] = noise_of(impression)
    done("frame and tissue")
    outer = np.setdiff1d(np.arange(len(impression.faces)), tissue)
    pose, rms, uncertainty = register(tray, impression, outer)
    done("registration")
    cover = np.full(len(impression.vertices), np.nan)
    cover[vertices] = cover_of(tray, impression.vertices[vertices], pose)
    done("cover")
    even = smoothed(impression, tissue, cover)
    result["cover"] = {
        "registration_rms_mm": float(rms),
        "uncertainty_mm": float(uncertainty),
        "area_judged_mm2": float(impression.area_faces[tissue].sum()),
        "min_mm": float(np.nanmin(cover)),
        "p05_mm": float(np.nanpercentile(cover, 5)),
        "median_mm": float(np.nanmedian(cover)),
        "show_through": patches(impression, tissue, even, SHOW_THROUGH_MM),
        "thin": patches(impression, tissue, even, THIN_MM),
    }
    done("patches")
    write(impression, cover, result, folder)
    done("writing")
    print(json.dumps({**seconds, "triangles": [len(impression.faces), len(tray.faces)]}))


if __name__ == "__main__":
    main()
