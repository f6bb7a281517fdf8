"""Text where renderings had none: lines cut off by the photo's edge, and labels of many lines close together."""

import math

import numpy as np

import codes
import things


def visible(quad, width, height):
    """The part of a line whose middle lies inside the photo, as its corners; nothing if that is little."""
    left, right = (quad[0] + quad[3]) / 2, (quad[1] + quad[2]) / 2
    shares = np.linspace(0, 1, 201)
    along = left + (right - left) * shares[:, None]
    inside = np.flatnonzero(((along >= 0) & (along <= (width, height))).all(axis=1))
    if len(inside) < 30:
        return None
    a, b = shares[inside[0]], shares[inside[-1]]
    top, bottom = quad[1] - quad[0], quad[2] - quad[3]
    return np.array([quad[0] + top * a, quad[0] + top * b, quad[3] + bottom * b, quad[3] + bottom * a])


def place_over_edge(scene, angle):
    """A point on the photo's left or right edge, and which end of the line lies beyond it, as anchor of `write`."""
    rng = scene.rng
    shown = rng.uniform(0.35, 0.97)
    point = np.array([0.0 if rng.random() < 0.5 else float(scene.width), rng.uniform(0.08, 0.92) * scene.height])
    facing = math.cos(angle) if point[0] > 0 else -math.cos(angle)
    return point, (0.5 - shown) if facing > 0 else (shown - 0.5)


def content(rng):
    """What one line of a label says, and its class: -1 where words and a code share it."""
    draw = rng.random()
    if draw < 0.3:
        return codes.code(rng), 1
    if draw < 0.38:
        return codes.long_number(rng), 1
    if draw < 0.5:
        return codes.words(rng, 1) + " " + codes.code(rng), -1
    return (codes.small_words(rng), 0) if draw < 0.72 else (codes.words(rng), 0)


def label(scene, size):
    """Three to eight lines of one face, flush or centred, here and there with a second text further along the row."""
    rng = scene.rng
    count = int(rng.integers(3, 9))
    size = min(size, 0.75 * scene.height / (count * 1.7))
    if size < 7:
        size = 7.0
    angle = math.radians(rng.normal(0, 10))
    along, down = np.array([math.cos(angle), math.sin(angle)]), np.array([-math.sin(angle), math.cos(angle)])
    anchor = float(rng.choice([0.5, 0.5, 0.0]))
    pitch = size * rng.uniform(1.35, 2.1)
    start = np.array([rng.uniform(0.08, 0.5), 0.0]) if anchor else np.array([rng.uniform(0.35, 0.65), 0.0])
    at = start * scene.width + np.array([0, rng.uniform(0.08, 0.95) * max(size, scene.height - count * pitch)])
    font = scene.setter.font(rng)
    layer = rng.choice(["mark", "mark", "height", "print"])
    quads, scene.snug = [], True
    for _ in range(count):
        tall = size * (rng.uniform(0.7, 1.2) if rng.random() < 0.3 else 1.0)
        text, kind = content(rng)
        quad = scene.write(layer, text, kind, at, tall, angle, font=font, anchor=anchor)
        if quad is not None:
            quads.append(quad)
            if rng.random() < 0.25:
                other, kind = content(rng)
                end = (quad[1] + quad[2]) / 2 + along * tall * rng.uniform(0.9, 3)
                scene.write(layer, other[:10], kind, end, tall, angle, font=font, anchor=0.5)
        at = at + down * pitch * (1.6 if rng.random() < 0.12 else 1.0)
    scene.snug = False
    if quads and rng.random() < 0.6:
        around = np.array([quads[0][0], quads[0][1], quads[-1][2], quads[-1][3]])
        things.patch(scene, around, size * count * 0.5, angle)
