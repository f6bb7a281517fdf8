"""How well a mark can be read, measured on the photo: the same scene is photographed with and without its mark.

A code is as legible as its weakest character, so everything here is a minimum over the characters. What is burnt out or
drowned in shadow shows no difference between the two photos and so counts as no signal.
"""

import cv2
import numpy as np

NOISE = 3.0  # grey levels that a reader cannot tell apart
ENOUGH = 40.0  # pixels of height from which on a mark grows no easier to read


def character_quads(quad, left, right, spans):
    """Corners of each character in the photo. `spans` are columns of the strip whose `left` to `right` became `quad`."""
    flat = np.array([[left, 0], [right, 0], [right, 1], [left, 1]], np.float32)
    matrix = cv2.getPerspectiveTransform(flat, quad.astype(np.float32))
    boxes = np.array([[[a, 0], [b, 0], [b, 1], [a, 1]] for a, b in spans], np.float32)
    return cv2.perspectiveTransform(boxes.reshape(-1, 1, 2), matrix).reshape(-1, 4, 2)


def upright(picture, quad, height=48):
    """A character's box, a little grown, as (height, width) floats."""
    tall, wide = np.linalg.norm(quad[3] - quad[0]), np.linalg.norm(quad[1] - quad[0])
    grown = (quad - quad.mean(axis=0)) * (1 + 0.12) + quad.mean(axis=0)
    width = int(np.clip(round(height * wide / max(tall, 1e-6)), 12, 2 * height))
    corners = np.array([[0, 0], [width, 0], [width, height], [0, height]], np.float32)
    return cv2.warpPerspective(picture, cv2.getPerspectiveTransform(grown.astype(np.float32), corners), (width, height))


def halves(mask):
    """The upper, lower, left and right half of a character, those that hold a good part of its ink."""
    height, width = mask.shape
    ink = mask.sum() + 1e-6
    for half in (np.s_[: height // 2], np.s_[height // 2 :], np.s_[:, : width // 2], np.s_[:, width // 2 :]):
        if mask[half].sum() > 0.35 * ink:
            yield half


def strengths(with_mark, without, mask, quads):
    """Of each character: how much the mark changes the photo over how uneven the ground is at the strokes' scale.

    The weakest half of the character counts, so that one half lost in glare or wear is not made good by the other.
    """
    tall = float(np.median([np.linalg.norm(quad[3] - quad[0]) for quad in quads]))
    wide, fine = max(1.0, tall * 0.35), max(0.3, tall * 0.04)

    def strokes(picture):
        picture = cv2.GaussianBlur(picture, (0, 0), fine)
        return picture - cv2.GaussianBlur(picture, (0, 0), wide)

    with_mark, without = with_mark.astype(np.float32), without.astype(np.float32)
    signal, ground = strokes(with_mark - without), strokes(without)
    values = []
    for quad in quads:
        change, uneven, ink = upright(signal, quad), upright(ground, quad), upright(mask.astype(np.float32), quad)
        noise = np.sqrt((uneven**2).mean()) + NOISE
        values.append(min((float(np.sqrt((change[half] ** 2).mean()) / noise) for half in halves(ink)), default=0.0))
    return values


def measured(with_mark, without, mask, quads):
    """Strength of the weakest character, less for small ones, which have fewer pixels against the grain; and exposure."""
    height = float(min(np.linalg.norm(quad[3] - quad[0]) for quad in quads))
    crops = [upright(with_mark.astype(np.float32), quad) for quad in quads]
    means = [float(crop.mean()) for crop in crops]
    clipped = [float(((crop < 8) | (crop > 247)).mean()) for crop in crops]
    return {
        "strength": round(min(strengths(with_mark, without, mask, quads)) * min(height, ENOUGH) / ENOUGH, 3),
        "capHeight": round(height, 1),
        "darkest": round(min(means)),
        "brightest": round(max(means)),
        "clipped": round(max(clipped), 2),
    }
