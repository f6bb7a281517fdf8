"""Whole photographs for the finder: marks, other text, patches and things of leather goods, as layers of masks.

A layer set is bytes (4, height, width): mark, height (128 is level), print (128 is none), patch. Every line of text
comes with its corners and its class: 1 a code, 0 other text, -1 neither asked nor punished.
"""

import math

import cv2
import numpy as np

import codes
import things
from atlas import CAP
from line import TOP


def turn_matrix(angle):
    return np.array([[math.cos(angle), -math.sin(angle)], [math.sin(angle), math.cos(angle)]])


def corners_of(centre, width, height, angle, rng, skew=0.05):
    """A box's corners in reading order, a little out of true as perspective makes them."""
    box = np.array([[-width, -height], [width, -height], [width, height], [-width, height]]) / 2
    box = box * (1 + rng.uniform(-skew, skew, (4, 1)) * min(1.0, 3 * height / width))
    return box @ turn_matrix(angle).T + centre


def stamp_on(target, strip, left, right, quad, strength=1.0):
    """Warps a strip's ink box onto four corners; big reductions go through an averaged copy first."""
    shrink = np.linalg.norm(quad[3] - quad[0]) / CAP
    factor = min(1.0, 1.5 * float(shrink))
    if factor < 0.75:
        strip = cv2.resize(strip, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
    else:
        factor = 1.0
    source = np.array([[left, TOP], [right, TOP], [right, TOP + CAP], [left, TOP + CAP]]) * factor
    margin = 0.4 * np.linalg.norm(quad[3] - quad[0]) + 2
    x0, y0 = np.maximum(0, np.floor(quad.min(axis=0) - margin)).astype(int)
    x1, y1 = np.minimum(target.shape[::-1], np.ceil(quad.max(axis=0) + margin)).astype(int)
    matrix = cv2.getPerspectiveTransform(source.astype(np.float32), (quad - (x0, y0)).astype(np.float32))
    drawn = cv2.warpPerspective(strip, matrix, (int(x1 - x0), int(y1 - y0)), flags=cv2.INTER_LINEAR)
    if strength < 1:
        drawn = (drawn * strength).astype(np.uint8)
    view = target[y0:y1, x0:x1]
    np.maximum(view, drawn, out=view)


class Scene:
    """One photograph in the making."""

    def __init__(self, rng, setter, height, width):
        self.rng, self.setter, self.height, self.width = rng, setter, height, width
        self.layers = np.zeros((4, height, width), np.uint8)
        self.layers[1:3] = 128
        self.lines = []
        self.taken = np.zeros((height // 4 + 1, width // 4 + 1), np.uint8)

    def free(self, quad, mark=True):
        """Whether a box lies inside and touches no other text; if so it is taken."""
        if quad.min() < 3 or quad[:, 0].max() > self.width - 4 or quad[:, 1].max() > self.height - 4:
            return False
        middle = quad.mean(axis=0)
        grown = middle + (quad - middle) * 1.12 + 0 * middle
        cover = np.zeros_like(self.taken)
        cv2.fillConvexPoly(cover, (grown / 4).astype(np.int32), 1)
        cv2.dilate(cover, np.ones((3, 3), np.uint8), dst=cover)
        if (cover & self.taken).any():
            return False
        if mark:
            self.taken |= cover
        return True

    def write(self, layer, text, kind, centre, size, angle, strength=1.0, font=None):
        """Sets one line with cap height `size` in a layer if there is room, and notes its corners."""
        strip, left, right = self.setter.line(self.rng, text, font)
        width = (right - left) * size / CAP * self.rng.uniform(0.75, 1.2)
        room = 0.95 * math.hypot(self.width, self.height)
        if width > room:
            size, width = size * room / width, room
        quad = corners_of(centre, width, size, angle, self.rng)
        if size < 6 or not self.free(quad):
            return None
        if layer == "mark":
            stamp_on(self.layers[0], strip, left, right, quad, strength)
        else:
            blank = np.zeros((self.height, self.width), np.uint8)
            stamp_on(blank, strip, left, right, quad)
            tone = self.rng.choice([-1, 1]) * self.rng.uniform(40, 127)
            things.add(self.layers[1 if layer == "height" else 2], blank, tone)
        self.lines.append((text, quad, kind))
        return quad


def below(quad, gap):
    """The centre of a line set under (gap above 0) or over a box, by its own cap height."""
    down = (quad[3] - quad[0]) / max(1e-6, np.linalg.norm(quad[3] - quad[0]))
    return quad.mean(axis=0) + down * gap


def with_code(scene, size):
    """A code, at times with a maker's words around it, at times on a patch, tab, plate or label."""
    rng = scene.rng
    angle = math.radians(rng.normal(0, 13)) if rng.random() < 0.75 else math.radians(rng.uniform(-45, 45))
    for _ in range(8):
        centre = np.array([rng.uniform(0.1, 0.9) * scene.width, rng.uniform(0.1, 0.9) * scene.height])
        quad = scene.write("mark", codes.code(rng), 1, centre, size, angle)
        if quad is not None:
            break
    else:
        return
    if rng.random() < 0.35:
        side = rng.choice([-1, 1])
        at = size
        for _ in range(int(rng.integers(1, 4))):
            at += size * rng.uniform(0.5, 1.2)
            other = size * rng.uniform(0.45, 1.1)
            scene.write("mark", codes.words(rng), 0, below(quad, side * at), other, angle)
            at += other
    if rng.random() < 0.5:
        things.patch(scene, quad, size, angle)


def other_text(scene, size):
    """Words that are no code, in the mark's own way or printed or embossed."""
    rng = scene.rng
    text = codes.small_words(rng) if rng.random() < 0.3 else codes.words(rng)
    angle = math.radians(rng.normal(0, 15))
    centre = np.array([rng.uniform(0.1, 0.9) * scene.width, rng.uniform(0.1, 0.9) * scene.height])
    layer = rng.choice(["mark", "height", "print"])
    quad = scene.write(layer, text, 0, centre, size, angle)
    if quad is not None and rng.random() < 0.4:
        things.patch(scene, quad, size, angle)


def compose(rng, setter, height, width, sizes=(7, 150), code_share=0.72):
    """Layers, lines and the size that the mark's relief goes by."""
    scene = Scene(rng, setter, height, width)
    low, high = sizes
    size = math.exp(rng.uniform(math.log(low), math.log(high)))
    things.before(scene)
    if rng.random() < code_share:
        with_code(scene, size)
        while rng.random() < 0.25:
            with_code(scene, size * rng.uniform(0.7, 1.4))
    while rng.random() < 0.42:
        other_text(scene, float(np.clip(size * math.exp(rng.normal(0, 0.7)), low, high)))
    things.after(scene)
    return scene, size
