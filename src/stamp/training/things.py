"""What else a photo of a leather piece shows: patches, seams, stitches, zips, rivets, motifs, creases, background."""

import math

import cv2
import numpy as np


def add(layer, mask, amount):
    """Raises or lowers a layer where the mask is, held between 0 and 255."""
    cv2.addWeighted(layer, 1.0, mask, amount / 255, 0, dst=layer)


def blank(scene):
    return np.zeros((scene.height, scene.width), np.uint8)


def signed(rng, low, high):
    return float(rng.choice([-1, 1]) * rng.uniform(low, high))


def patch(scene, quad, size, angle):
    """A tab, label or plate behind a line: other material, a raised or sunk edge, stitches, frame, screws or rivets."""
    rng = scene.rng
    middle = quad.mean(axis=0)
    wide = np.linalg.norm(quad[1] - quad[0]) / 2 + size * rng.uniform(0.4, 3)
    tall = size / 2 + size * rng.uniform(0.25, 2.5)
    turn = np.array([[math.cos(angle), -math.sin(angle)], [math.sin(angle), math.cos(angle)]])
    shift = np.array([rng.uniform(-0.3, 0.3) * size, rng.uniform(-0.5, 0.5) * (tall - size * 0.6)])
    box = (np.array([[-wide, -tall], [wide, -tall], [wide, tall], [-wide, tall]]) + shift) @ turn.T + middle
    mask = blank(scene)
    if rng.random() < 0.25:
        axes = (int(wide * 1.25), int(tall * 1.3))
        cv2.ellipse(mask, tuple(int(v) for v in middle), axes, math.degrees(angle), 0, 360, 255, -1, cv2.LINE_AA)
    else:
        cv2.fillConvexPoly(mask, box.astype(np.int32), 255, cv2.LINE_AA)
    np.maximum(scene.layers[3], mask, out=scene.layers[3])
    add(scene.layers[1], mask, signed(rng, 5, 70))
    if rng.random() < 0.35:
        inner = (box - middle) * (1 - rng.uniform(0.05, 0.15)) + middle
        stitches(scene, np.vstack([inner, inner[:1]]), size)
    if rng.random() < 0.35:
        lines = blank(scene)
        inner = (box - middle) * (1 - rng.uniform(0.02, 0.1)) + middle
        cv2.polylines(lines, [inner.astype(np.int32)], True, 255, max(1, int(size * rng.uniform(0.03, 0.15))), cv2.LINE_AA)
        add(scene.layers[int(rng.integers(1, 3))], lines, signed(rng, 40, 127))
    if rng.random() < 0.3:
        for end in (0.88, -0.88):
            place = turn @ np.array([wide * end, 0]) + middle
            rivet(scene, place, max(2, size * rng.uniform(0.15, 0.35)))


def rivet(scene, place, radius):
    rng = scene.rng
    mask = blank(scene)
    x, y = int(place[0]), int(place[1])
    for step in range(4):
        cv2.circle(mask, (x, y), max(1, int(radius * (1 - 0.22 * step))), 90 + 55 * step, -1, cv2.LINE_AA)
    add(scene.layers[1], mask, signed(rng, 60, 127))
    add(scene.layers[2], mask, signed(rng, 0, 127))


def stitches(scene, path, size):
    """Dashes along a path, threads that stand out or lie in a groove."""
    rng = scene.rng
    mask = blank(scene)
    dash, gap = max(3.0, size * rng.uniform(0.2, 0.6)), max(2.0, size * rng.uniform(0.1, 0.3))
    thick = max(1, int(size * rng.uniform(0.06, 0.16)))
    for a, b in zip(path[:-1], path[1:]):
        length = float(np.linalg.norm(b - a))
        along = (b - a) / max(length, 1e-6)
        across = np.array([-along[1], along[0]]) * rng.uniform(0, 0.1) * size
        at = 0.0
        while at < length:
            p, q = a + along * at - across, a + along * min(length, at + dash) + across
            cv2.line(mask, tuple(p.astype(int)), tuple(q.astype(int)), 255, thick, cv2.LINE_AA)
            at += dash + gap
    add(scene.layers[1], mask, signed(rng, 30, 110))
    add(scene.layers[2], mask, signed(rng, 0, 110))


def random_path(scene, points=2, bend=0.15):
    rng = scene.rng
    a = np.array([rng.uniform(-0.1, 1.1) * scene.width, rng.uniform(-0.1, 1.1) * scene.height])
    turn = rng.uniform(0, math.pi)
    b = a + np.array([math.cos(turn), math.sin(turn)]) * rng.uniform(0.2, 1.4) * scene.width
    t = np.linspace(0, 1, points)[:, None]
    bow = np.array([-math.sin(turn), math.cos(turn)]) * rng.uniform(-bend, bend) * scene.width
    return a + (b - a) * t + bow * np.sin(t * math.pi)


def seam(scene):
    """A groove with stitches on one or both sides."""
    rng = scene.rng
    path = random_path(scene, 12)
    mask = blank(scene)
    cv2.polylines(mask, [path.astype(np.int32)], False, 255, int(rng.integers(1, 7)), cv2.LINE_AA)
    add(scene.layers[1], mask, -rng.uniform(20, 110))
    for side in (-1, 1):
        if rng.random() < 0.5:
            stitches(scene, path[::3] + side * rng.uniform(5, 22), rng.uniform(12, 45))


def zipper(scene):
    """Two rows of teeth on a tape."""
    rng = scene.rng
    path = random_path(scene, 60, 0.08)
    tape, teeth = blank(scene), blank(scene)
    wide = rng.uniform(6, 30)
    cv2.polylines(tape, [path.astype(np.int32)], False, 255, int(wide * 3), cv2.LINE_AA)
    step = path[1] - path[0]
    length = float(np.linalg.norm(step)) + 1e-6
    across = np.array([-step[1], step[0]]) / length * wide / 2
    pitch = max(3.0, wide * rng.uniform(0.3, 0.8))
    count = int(np.linalg.norm(path[-1] - path[0]) / pitch)
    for i in range(min(count, 300)):
        p = path[0] + (path[-1] - path[0]) * i / max(1, count)
        q = p + across * (1 if i % 2 else -1)
        cv2.line(teeth, tuple(p.astype(int)), tuple(q.astype(int)), 255, max(1, int(pitch * 0.5)), cv2.LINE_AA)
    add(scene.layers[2], tape, signed(rng, 10, 100))
    add(scene.layers[1], teeth, rng.uniform(40, 127))
    add(scene.layers[2], teeth, signed(rng, 20, 127))


def motifs(scene):
    """A pattern of repeated small shapes, printed or pressed: the likeliest thing to be taken for text."""
    rng = scene.rng
    cell = int(rng.uniform(16, 110))
    tile = np.zeros((cell, cell), np.uint8)
    c, r = cell // 2, max(2, int(cell * rng.uniform(0.15, 0.4)))
    thick = int(rng.choice([-1, max(1, cell // 20)]))
    shape = rng.integers(6)
    if shape == 0:
        cv2.circle(tile, (c, c), r, 255, thick, cv2.LINE_AA)
    elif shape == 1:
        cv2.rectangle(tile, (c - r, c - r), (c + r, c + r), 255, thick)
    elif shape == 2:
        corners = np.array([[c, c - r], [c + r, c], [c, c + r], [c - r, c]])
        cv2.polylines(tile, [corners], True, 255, max(1, cell // 18), cv2.LINE_AA)
    elif shape == 3:
        for turn in np.arange(0, math.pi, math.pi / rng.integers(2, 5)):
            d = (int(r * math.cos(turn)), int(r * math.sin(turn)))
            cv2.line(tile, (c - d[0], c - d[1]), (c + d[0], c + d[1]), 255, max(1, cell // 14), cv2.LINE_AA)
    else:
        font = scene.setter.font(rng)
        for char in rng.choice(list("ABCDEFGHKLMNOPRSTVXYZ"), int(shape) - 3, replace=False):
            glyph = cv2.resize(font[char][0], (r + 2, r + 2), interpolation=cv2.INTER_AREA)
            x, y = int(rng.uniform(0, cell - r - 2)), int(rng.uniform(0, cell - r - 2))
            tile[y : y + r + 2, x : x + r + 2] = np.maximum(tile[y : y + r + 2, x : x + r + 2], glyph)
    many = np.tile(tile, (2 * scene.height // cell + 2, 2 * scene.width // cell + 2))
    if rng.random() < 0.5:
        many[1 * cell :: 2 * cell] = np.roll(many[1 * cell :: 2 * cell], cell // 2, 1)
    turn = cv2.getRotationMatrix2D((many.shape[1] / 2, many.shape[0] / 2), rng.uniform(-45, 45), 1)
    turn[:, 2] -= (many.shape[1] / 4, many.shape[0] / 4)
    mask = cv2.warpAffine(many, turn, (scene.width, scene.height))
    if rng.random() < 0.5:
        mask[:, : int(rng.uniform(0, 0.8) * scene.width)] = 0
    room = cv2.resize(cv2.dilate(scene.taken, np.ones((5, 5), np.uint8)), (scene.width, scene.height))
    mask[room > 0] = 0
    add(scene.layers[1 if rng.random() < 0.4 else 2], mask, signed(rng, 20, 110))


def edges(scene):
    """The piece's outline against something else, folds, straps: big soft or hard edged areas."""
    rng = scene.rng
    for _ in range(int(rng.integers(1, 4))):
        mask = blank(scene)
        path = random_path(scene, 10, 0.3)
        far = np.array([[rng.choice([-1, 2]) * scene.width, rng.choice([-1, 2]) * scene.height]])
        cv2.fillPoly(mask, [np.vstack([path, far]).astype(np.int32)], 255, cv2.LINE_AA)
        if rng.random() < 0.4:
            mask = cv2.blur(mask, (int(rng.integers(3, 60)),) * 2)
        add(scene.layers[2], mask, signed(rng, 20, 127))
        add(scene.layers[1], mask, signed(rng, 0, 60))


def creases(scene):
    rng = scene.rng
    for _ in range(int(rng.integers(1, 7))):
        mask = blank(scene)
        path = random_path(scene, 10, 0.4)
        cv2.polylines(mask, [path.astype(np.int32)], False, 255, int(rng.integers(1, 5)), cv2.LINE_AA)
        if rng.random() < 0.6:
            mask = cv2.blur(mask, (int(rng.integers(3, 15)),) * 2)
        add(scene.layers[1 if rng.random() < 0.8 else 2], mask, signed(rng, 20, 110))


def bars(scene):
    """Rows of strokes without any text: ribs, fringes, teeth, bar codes."""
    rng = scene.rng
    mask = blank(scene)
    a = np.array([rng.uniform(0, 1) * scene.width, rng.uniform(0, 1) * scene.height])
    turn, tall = rng.uniform(-0.8, 0.8), rng.uniform(8, 90)
    along = np.array([math.cos(turn), math.sin(turn)])
    across = np.array([-along[1], along[0]]) * tall / 2
    at = 0.0
    for _ in range(int(rng.integers(5, 40))):
        at += tall * rng.uniform(0.1, 0.6)
        p = a + along * at
        cv2.line(mask, tuple((p - across).astype(int)), tuple((p + across).astype(int)), 255, max(1, int(tall * rng.uniform(0.04, 0.2))), cv2.LINE_AA)
    room = cv2.resize(cv2.dilate(scene.taken, np.ones((5, 5), np.uint8)), (scene.width, scene.height))
    mask[room > 0] = 0
    add(scene.layers[int(rng.integers(1, 3))], mask, signed(rng, 40, 127))


def before(scene):
    """Things under the marks."""
    if scene.rng.random() < 0.4:
        edges(scene)


def after(scene):
    """Things beside the marks; motifs and bars keep clear of text."""
    rng = scene.rng
    for thing, share in ((seam, 0.3), (zipper, 0.12), (motifs, 0.16), (creases, 0.3), (bars, 0.12)):
        if rng.random() < share:
            thing(scene)
    while rng.random() < 0.3:
        stitches(scene, random_path(scene, 4), rng.uniform(8, 70))
    while rng.random() < 0.25:
        rivet(scene, (rng.uniform(0, scene.width), rng.uniform(0, scene.height)), rng.uniform(3, 40))
