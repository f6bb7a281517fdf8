"""Marks that are no character of ours: signs between and around codes. The recogniser has one class for all of them.

In a text to be set, and in what a line says, SIGN stands for one of them.
"""

import math
import re

import cv2
import numpy as np

from atlas import CAP, SIGNS

SIGN = "*"
COLON = ":"  # set by itself, since hours and minutes have it between digits, where a point is read most easily


def said(text):
    """What a reader should read of a text with signs in it."""
    return re.sub(r" *[*:] *", SIGN, text).strip()


def with_signs(rng, text):
    """The text with one or two signs before, behind or between its characters."""
    draw = rng.random()
    if draw < 0.3:
        return SIGN + text + SIGN
    if draw < 0.65:
        return text + SIGN if rng.random() < 0.5 else SIGN + text
    place = int(rng.integers(1, len(text))) if len(text) > 1 else 0
    return text[:place] + SIGN + text[place:]


def polygon(angles, radii, middle):
    return np.array([[middle + r * math.cos(a), middle + r * math.sin(a)] for a, r in zip(angles, radii)], np.int32)


def outlined(mask, points, thick, filled):
    if filled:
        cv2.fillPoly(mask, [points], 255, cv2.LINE_AA)
    else:
        cv2.polylines(mask, [points], True, 255, thick, cv2.LINE_AA)


def colon(mask, side, thick, _):
    for y in (0.3, 0.75):
        cv2.circle(mask, (side // 2, int(side * y)), max(3, int(thick * 0.8)), 255, -1, cv2.LINE_AA)


def spokes(mask, side, thick, _, counts=(2, 3, 4)):
    """Plus signs and asterisks."""
    count, radius = counts[side % len(counts)], side * 0.36
    for i in range(count):
        a = math.pi * i / count
        d = (int(radius * math.cos(a)), int(radius * math.sin(a)))
        cv2.line(mask, (side // 2 - d[0], side // 2 - d[1]), (side // 2 + d[0], side // 2 + d[1]), 255, thick, cv2.LINE_AA)


def star(mask, side, thick, filled):
    angles = np.arange(10) * math.pi / 5 - math.pi / 2
    outlined(mask, polygon(angles, [side * 0.48, side * 0.2] * 5, side / 2), thick // 2 + 1, filled)


def diamond(mask, side, thick, filled):
    outlined(mask, polygon(np.arange(4) * math.pi / 2, [side * 0.45] * 4, side / 2), thick, filled)


def triangle(mask, side, thick, filled):
    turn = math.pi * (side % 4) / 2
    outlined(mask, polygon(np.arange(3) * 2 * math.pi / 3 + turn, [side * 0.45] * 3, side / 2), thick, filled)


def square(mask, side, thick, filled):
    cv2.rectangle(mask, (side // 6, side // 6), (side - side // 6, side - side // 6), 255, -1 if filled else thick)


def target(mask, side, thick, _):
    """Rings in rings: a single ring would be an O."""
    cv2.circle(mask, (side // 2, side // 2), int(side * 0.44), 255, max(2, thick // 2), cv2.LINE_AA)
    cv2.circle(mask, (side // 2, side // 2), int(side * 0.2), 255, max(2, thick // 2), cv2.LINE_AA)


def arrow(mask, side, thick, _):
    cv2.arrowedLine(mask, (side // 10, side // 2), (side - side // 8, side // 2), 255, max(2, thick // 2 + 1), cv2.LINE_AA, 0, 0.4)
    turns = (None, cv2.ROTATE_180, cv2.ROTATE_90_CLOCKWISE, cv2.ROTATE_90_COUNTERCLOCKWISE)
    turn = turns[side % 4]
    if turn is not None:
        mask[:] = cv2.rotate(mask, turn)


def grid_of_lines(mask, side, thick, _):
    """The number sign."""
    thin = max(2, thick // 2 + 1)
    for at in (0.35, 0.65):
        cv2.line(mask, (int(side * at) + 3, 4), (int(side * at) - 3, side - 4), 255, thin, cv2.LINE_AA)
        cv2.line(mask, (4, int(side * at)), (side - 4, int(side * at)), 255, thin, cv2.LINE_AA)


SHAPES = (colon, colon, spokes, spokes, star, star, diamond, triangle, square, target, arrow, arrow, grid_of_lines)


def struck_s(font):
    """An S with a bar through it, from the font's own S."""
    mask, left, top, advance = font["S"]
    mask = cv2.copyMakeBorder(mask, 8, 8, 0, 0, cv2.BORDER_CONSTANT)
    cv2.line(mask, (mask.shape[1] // 2, 0), (mask.shape[1] // 2, mask.shape[0]), 255, 5, cv2.LINE_AA)
    return mask, left, top - 8, advance


def sign(rng, font, char=SIGN):
    """A glyph as the atlas has them: mask, left, top against the baseline, advance."""
    if char == COLON and char in font:
        return font[char]
    if char == COLON:
        return glyph(rng, (colon,))
    draw = rng.random()
    if draw < 0.55:
        own = [char for char in SIGNS if char in font]
        if own:
            return font[own[int(rng.integers(len(own)))]]
    elif draw < 0.6:
        return struck_s(font)
    return glyph(rng, SHAPES)


def glyph(rng, shapes):
    """One of the drawn shapes as a glyph."""
    side = int(rng.integers(36, CAP + 8))
    mask = np.zeros((side, side), np.uint8)
    thick = int(rng.integers(4, 12))
    shapes[int(rng.integers(len(shapes)))](mask, side, thick, rng.random() < 0.5)
    raised = -CAP / 2 - side / 2 + rng.uniform(-0.1, 0.1) * CAP
    return mask, 4.0, raised, side + 8.0
