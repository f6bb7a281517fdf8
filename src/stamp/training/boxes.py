"""From the finder's map to oriented boxes; the TypeScript runtime does the same, step for step."""

import math

import numpy as np
from scipy import ndimage

STEP, UNIT = 4, 8.0
CORE = 0.5
SMALLEST = 3  # cells


def sigmoid(x):
    return 1 / (1 + np.exp(-x))


def boxes_of(answer, core=CORE):
    """List of boxes (centre x, y, width, height, angle, score, code score) in pixels of the finder's input, best first."""
    score = sigmoid(answer[0])
    labels, count = ndimage.label(score > core, structure=np.ones((3, 3)))
    found = []
    for index, where in enumerate(ndimage.find_objects(labels), 1):
        y, x = np.nonzero(labels[where] == index)
        if len(y) < SMALLEST:
            continue
        y, x = y + where[0].start, x + where[1].start
        found.append(box_from(answer[:, y, x], score[y, x], x * STEP + (STEP - 1) / 2, y * STEP + (STEP - 1) / 2))
    found = [b for b in found if b[2] > 0 and b[3] > 0]
    return sorted(found, key=lambda b: -b[5])


def box_from(cells, weight, x, y):
    """One connected core's box: height from all of its cells, each end from the cells near it."""
    angle = math.atan2(float((weight * cells[6]).sum()), float((weight * cells[7]).sum()))
    c, s = math.cos(angle), math.sin(angle)
    u, v = x * c + y * s, -x * s + y * c
    top, bottom, left, right = np.exp(np.clip(cells[2:6], -6, 6)) * UNIT
    total = weight.sum()
    upper, lower = float((weight * (v - top)).sum() / total), float((weight * (v + bottom)).sum() / total)
    tall = lower - upper
    near = weight * np.exp(-left / max(tall, 1.0))
    start = float((near * (u - left)).sum() / max(near.sum(), 1e-12))
    near = weight * np.exp(-right / max(tall, 1.0))
    end = float((near * (u + right)).sum() / max(near.sum(), 1e-12))
    middle_u, middle_v = (start + end) / 2, (upper + lower) / 2
    centre = (middle_u * c - middle_v * s, middle_u * s + middle_v * c)
    code = float((weight * sigmoid(cells[1])).sum() / total)
    return (*centre, end - start, tall, angle, float(total / len(x)), code)


def corners(box):
    """Corners in reading order."""
    x, y, wide, tall, angle = box[:5]
    c, s = math.cos(angle), math.sin(angle)
    own = np.array([[-wide, -tall], [wide, -tall], [wide, tall], [-wide, tall]]) / 2
    return own @ np.array([[c, s], [-s, c]]) + (x, y)
