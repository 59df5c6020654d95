"""A compound miter saw as planes in space: x to the right, y to the fence, z off the table."""

from typing import Any

import numpy as np

Vector = np.ndarray[Any, np.dtype[np.float64]]


def cos(angle: float) -> float:
    return float(np.cos(np.radians(angle)))


def sin(angle: float) -> float:
    return float(np.sin(np.radians(angle)))


def blade(swing: str, miter: float, tilt: str, bevel: float) -> Vector:
    """The normal of the blade, to the right, for handle and tilt as the saw shows them.

    The handle points at the operator (-y); swung right by m it points at (sin m, -cos m).
    """
    turned = miter if swing == "right" else -miter
    leaning = bevel if tilt == "left" else -bevel
    handle = np.array([sin(turned), -cos(turned), 0.0])
    right = np.array([cos(turned), sin(turned), 0.0])
    upward = cos(leaning) * np.array([0.0, 0.0, 1.0]) - sin(leaning) * right
    return np.cross(upward, handle)


def kept(keep: str, normal: Vector) -> Vector:
    """The blade's normal as it points into the kept piece."""
    return -normal if keep == "left" else normal


def laid(normal: Vector, towards_fence: Vector, off_table: Vector) -> Vector:
    """A plane's normal once the piece lies on the saw with those two directions of it."""
    right = np.cross(towards_fence, off_table)
    return np.array([right @ normal, towards_fence @ normal, off_table @ normal])
