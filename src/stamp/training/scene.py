"""Whole photographs for the finder: marks, other text, patches and things of leather goods, as layers of masks.

A layer set is bytes (4, height, width): mark, height (128 is level), print (128 is none), patch. Every line of text
comes with its corners and its class: 1 a code, 0 other text, -1 neither asked nor punished.
"""

import math

import cv2
import numpy as np

import codes
import labels
import things
from atlas import CAP
from emblems import with_signs
from line import TOP, bowed


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
    """One photograph in the making.

    `bent` is the share of lines that are bowed, as on rims and cylinders; a `snug` scene's lines may all but touch.
    """

    bent, snug = 0.0, False

    def __init__(self, rng, setter, height, width):
        self.rng, self.setter, self.height, self.width = rng, setter, height, width
        self.layers = np.zeros((4, height, width), np.uint8)
        self.layers[1:3] = 128
        self.lines = []
        self.taken = np.zeros((height // 4 + 1, width // 4 + 1), np.uint8)

    def free(self, quad, mark=True, cut=False):
        """Whether a box lies inside (or is one that the edge cuts) and touches no other text; if so it is taken."""
        low, high = quad.min(axis=0), quad.max(axis=0)
        if not cut and (low.min() < 3 or high[0] > self.width - 4 or high[1] > self.height - 4):
            return False
        middle = quad.mean(axis=0)
        grown = middle + (quad - middle) * (1.0 if self.snug else 1.12)
        cover = np.zeros_like(self.taken)
        cv2.fillConvexPoly(cover, (grown / 4).astype(np.int32), 1)
        if not self.snug:
            cv2.dilate(cover, np.ones((3, 3), np.uint8), dst=cover)
        if (cover & self.taken).any():
            return False
        if mark:
            self.taken |= cover
        return True

    def write(self, layer, text, kind, centre, size, angle, strength=1.0, font=None, anchor=0.0, cut=False):
        """Sets one line with cap height `size` in a layer if there is room, and notes its corners.

        `anchor`: how far right of `centre` the line's middle lies, in widths. `cut`: the edge may cut it off, and only
        what is left of it is noted.
        """
        strip, left, right = self.setter.line(self.rng, text, font)
        if self.bent and self.rng.random() < self.bent:
            strip = bowed(strip, left, right, self.rng.uniform(-0.25, 0.25) * CAP, self.rng.uniform(0, 0.2))
        width = (right - left) * size / CAP * self.rng.uniform(0.75, 1.2)
        room = 0.95 * math.hypot(self.width, self.height)
        if width > room:
            size, width = size * room / width, room
        along = np.array([math.cos(angle), math.sin(angle)])
        quad = corners_of(centre + anchor * width * along, width, size, angle, self.rng)
        seen = labels.visible(quad, self.width, self.height) if cut else quad
        if size < 6 or seen is None or not self.free(seen, cut=cut):
            return None
        if layer == "mark":
            stamp_on(self.layers[0], strip, left, right, quad, strength)
        else:
            blank = np.zeros((self.height, self.width), np.uint8)
            stamp_on(blank, strip, left, right, quad)
            tone = self.rng.choice([-1, 1]) * self.rng.uniform(40, 127)
            things.add(self.layers[1 if layer == "height" else 2], blank, tone)
        self.lines.append((text, seen, kind))
        return seen


def below(quad, gap):
    """The centre of a line set under (gap above 0) or over a box, by its own cap height."""
    down = (quad[3] - quad[0]) / max(1e-6, np.linalg.norm(quad[3] - quad[0]))
    return quad.mean(axis=0) + down * gap


def with_code(scene, size):
    """A code, at times with a maker's words around it, at times on a patch, tab, plate or label."""
    rng = scene.rng
    angle = math.radians(rng.normal(0, 13)) if rng.random() < 0.75 else math.radians(rng.uniform(-45, 45))
    cut = rng.random() < 0.12
    for _ in range(8):
        text = codes.long_number(rng) if rng.random() < 0.04 else codes.code(rng)
        text = with_signs(rng, text) if rng.random() < 0.05 else text
        if cut:
            point, anchor = labels.place_over_edge(scene, angle)
            quad = scene.write("mark", text, 1, point, size, angle, anchor=anchor, cut=True)
        else:
            centre = np.array([rng.uniform(0.1, 0.9) * scene.width, rng.uniform(0.1, 0.9) * scene.height])
            quad = scene.write("mark", text, 1, centre, size, angle)
        if quad is not None:
            break
    else:
        return
    if rng.random() < 0.12 and not cut:
        side = rng.choice([-1, 1])
        ends = (quad[1] + quad[2]) / 2 if side > 0 else (quad[0] + quad[3]) / 2
        gap = side * size * rng.uniform(0.9, 2.5) * np.array([math.cos(angle), math.sin(angle)])
        scene.write("mark", codes.words(rng, 1), 0, ends + gap, size, angle, anchor=0.5 * side)
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
    scene.bent = 0.08
    low, high = sizes
    size = math.exp(rng.uniform(math.log(low), math.log(high)))
    things.before(scene)
    if rng.random() < 0.14:
        labels.label(scene, size)
    elif rng.random() < code_share:
        with_code(scene, size)
        while rng.random() < 0.25:
            with_code(scene, size * rng.uniform(0.7, 1.4))
    while rng.random() < 0.42:
        other_text(scene, float(np.clip(size * math.exp(rng.normal(0, 0.7)), low, high)))
    things.after(scene)
    return scene, size
