"""Photographs for tests, rendered from spectra through a measured camera: invented wool beside the 24-patch target.

Light, reflectance and sensitivity are multiplied and added up at 5 nm; then come vignetting, noise, the camera's own
white balance (off by a cast) and matrix to sRGB, and its coding. Nothing of it is taken from the code under test but
the homography's test double: corners are mapped by numpy alone.
"""

import warnings
from dataclasses import dataclass, field

import numpy as np

with warnings.catch_warnings(), np.printoptions():
    warnings.simplefilter("ignore")
    import colour

NM = np.arange(400, 681, 10)
"""Where both cameras' sensitivities stand."""
CAMERAS = tuple(colour.MSDS_CAMERA_SENSITIVITIES)
CMFS = colour.MSDS_CMFS["CIE 1964 10 Degree Standard Observer"]
GAP = 0.15
"""Between patches, in patches."""


def _at(distribution, nm=NM):
    return distribution.copy().align(colour.SpectralShape(nm[0], nm[-1], nm[1] - nm[0])).values


def target_spectra():
    """Give the spectra (24 × 29) that a standard for cameras lists: measured on another target than the table's."""
    whole = colour.SDS_COLOURCHECKERS["ISO 17321-1"]
    return np.array([_at(each) for each in whole.values()])


def wools(number=24, seed=2026):
    """Give invented wool-like spectra (number × 29): undyed wool and smooth absorbers mixed by K/S."""
    draw = np.random.default_rng(seed)
    undyed = 0.28 + 0.42 / (1 + np.exp(-(NM - 445) / 35))
    k_s = (1 - undyed) ** 2 / (2 * undyed)
    spectra = []
    for _ in range(number):
        added = np.zeros(len(NM))
        for _ in range(draw.integers(1, 3)):
            peak, width = draw.uniform(400, 640), draw.uniform(45, 95)
            added += draw.lognormal(0.6, 0.9) * np.exp(-(((NM - peak) / width) ** 2))
        both = k_s + added
        spectra.append(1 + both - np.sqrt(both**2 + 2 * both))
    return np.array(spectra)


def lab_of(spectra):
    """Give L*, a*, b* (n × 3) for D65 and 10° by colour-science."""
    d65 = colour.SDS_ILLUMINANTS["D65"]
    labs = []
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        for values in spectra:
            xyz = colour.sd_to_XYZ(colour.SpectralDistribution(values, NM), CMFS, d65, method="ASTM E308") / 100
            labs.append(colour.XYZ_to_Lab(xyz, colour.CCS_ILLUMINANTS["CIE 1964 10 Degree Standard Observer"]["D65"]))
    return np.array(labs)


def signals(spectra, camera, illuminant):
    """Give raw R, G, B (n × 3), white being 1, 1, 1."""
    whole = CMFS if camera == "observer" else colour.MSDS_CAMERA_SENSITIVITIES[camera]
    sensitivity = np.array([_at(each) for each in whole.to_sds()]).T
    light = _at(colour.SDS_ILLUMINANTS[illuminant])
    return spectra @ (light[:, None] * sensitivity) / (light @ sensitivity)


def own_matrix(camera):
    """Give the camera's own matrix (3 × 3) from balanced raw to linear sRGB, made for daylight from other wools."""
    raw = signals(wools(60, seed=7), camera, "D65")
    xyz = colour.Lab_to_XYZ(lab_of(wools(60, seed=7)))
    rgb = colour.XYZ_to_RGB(xyz, "sRGB", apply_cctf_encoding=False)
    matrix = np.linalg.lstsq(raw, rgb, rcond=None)[0]
    return matrix / matrix.sum(axis=0)


def _encoded(linear):
    linear = np.clip(linear, 0, 1)
    return np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * np.maximum(linear, 1e-9) ** (1 / 2.4) - 0.055)


@dataclass
class Photo:
    """A rendered photograph: pixels, where things lie in it (x, y in pixels), and what the wools truly are."""

    pixels: np.ndarray
    corners: np.ndarray
    skeins: list
    lab: np.ndarray
    spectra: np.ndarray = field(repr=False)


@dataclass
class Scene:
    """How the photograph is taken."""

    illuminant: str = "D65"
    camera: str = CAMERAS[0]
    width: int = 1200
    height: int = 900
    cast: tuple = (1.08, 1.0, 0.88)
    """What the camera's white balance is off by; red, green, blue."""
    exposure: float = 0.85
    vignetting: float = 0.12
    """Light lost in the picture's corners."""
    fall: tuple = (0.0, 0.0)
    """Natural logarithm by which the light changes from left to right and from top to bottom."""
    noise: float = 0.01
    """Standard deviation in linear light at white; it falls with the root of the light."""
    turns: int = 0
    """Quarter turns of the target."""
    mirrored: bool = False
    seed: int = 1
    number: int = 24
    target: np.ndarray | None = None


def _homography(square_to):
    """Give the matrix that takes the unit square's corners (0,0 1,0 1,1 0,1) to four points."""
    rows = []
    for (u, v), (x, y) in zip(((0, 0), (1, 0), (1, 1), (0, 1)), square_to, strict=True):
        rows += [[u, v, 1, 0, 0, 0, -x * u, -x * v], [0, 0, 0, u, v, 1, -y * u, -y * v]]
    solved = np.linalg.solve(np.array(rows, float), np.asarray(square_to, float).ravel())
    return np.append(solved, 1).reshape(3, 3)


def _unit_of(points_to, width, height):
    """Give u, v (height × width each) of every pixel in the quadrilateral's own unit square."""
    x, y = np.meshgrid(np.arange(width) + 0.5, np.arange(height) + 0.5)
    back = np.linalg.inv(_homography(points_to))
    u, v, w = np.tensordot(back, np.stack((x, y, np.ones_like(x))), axes=1)
    return u / w, v / w


def take(scene=Scene()):  # noqa: B008 - a frozen default in all but name
    """Take the photograph."""
    width, height = scene.width, scene.height
    patches = target_spectra() if scene.target is None else scene.target
    spectra = wools(scene.number)
    colours = signals(np.vstack((patches, spectra, np.full((1, len(NM)), 0.35))), scene.camera, scene.illuminant)
    label = np.full((height, width), len(colours) - 1)
    corners = np.array([[0.09, 0.12], [0.52, 0.07], [0.56, 0.47], [0.06, 0.44]]) * (width, height)
    u, v = _unit_of(corners, width, height)
    label[(u > -0.03) & (u < 1.03) & (v > -0.03) & (v < 1.03)] = 23  # the black board
    if scene.mirrored:
        u = 1 - u
    for _ in range(scene.turns):
        u, v = v, 1 - u
    pitch, across, down = 1 + GAP, 6 + 5 * GAP, 4 + 3 * GAP
    column, row = np.floor(u * across / pitch), np.floor(v * down / pitch)
    on = (u * across - column * pitch < 1) & (v * down - row * pitch < 1) & (u > 0) & (u < 1) & (v > 0) & (v < 1)
    label[on] = (6 * row + column)[on].astype(int)
    skeins, per_row = [], 8
    for index in range(scene.number):
        line, place = divmod(index, per_row)
        left, top = 0.05 + 0.115 * place, 0.54 + 0.15 * line
        box = [np.array([x, y]) * (width, height) for x, y in ((left, top), (left + 0.1, top + 0.12))]
        (x0, y0), (x1, y1) = (np.round(each).astype(int) for each in box)
        label[y0:y1, x0:x1] = 24 + index
        inset = 0.2 * (box[1] - box[0])
        skeins.append((box[0] + inset, box[1] - inset))
    x, y = np.meshgrid(np.linspace(-1, 1, width), np.linspace(-1, 1, height) * height / width)
    falloff = 1 - scene.vignetting * (x**2 + y**2) / (1 + (height / width) ** 2)
    falloff = falloff * np.exp(scene.fall[0] * x / 2 + scene.fall[1] * y / 2 * width / height)
    linear = colours[label] * falloff[..., None] * scene.exposure
    draw = np.random.default_rng(scene.seed)
    linear = linear + scene.noise * np.sqrt(np.maximum(linear, 0.01)) * draw.standard_normal(linear.shape)
    linear = (linear * scene.cast) @ own_matrix(scene.camera)
    pixels = np.rint(255 * _encoded(linear)).astype(np.uint8)
    return Photo(pixels, corners, skeins, lab_of(spectra), spectra)
