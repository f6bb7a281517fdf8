"""Sets a text in one font as a grey mask: a strip with the cap height atlas.CAP and its baseline at a known row."""

import cv2
import numpy as np

from atlas import CAP
from emblems import COLON, SIGN, sign

TOP = 24  # rows above the cap line
HEIGHT = CAP + 48


def slanted(name):
    return any(part in name.lower() for part in ("ital", "obl", "slant"))


class Setter:
    """Chooses fonts and sets lines; slanted cuts are rarer than upright ones."""

    def __init__(self, fonts, names):
        self.fonts = fonts
        weights = np.array([0.3 if slanted(n) else 1.0 for n in names])
        self.share = weights / weights.sum()

    def font(self, rng):
        return self.fonts[int(rng.choice(len(self.fonts), p=self.share))]

    def line(self, rng, text, font=None):
        """The mask strip of a text and the columns where its ink starts and ends; `spans` keeps each character's."""
        font = font or self.font(rng)
        text = "".join(c for c in text if c in " " + SIGN + COLON or c in font)
        tracking = CAP * (rng.uniform(-0.03, 0.16) if rng.random() < 0.75 else rng.uniform(0.1, 0.6))
        space = CAP * rng.uniform(0.25, 0.75)
        loose = rng.random() < 0.2  # single punches, struck one by one
        placed, pen = [], 40.0
        for char in text:
            if char == " ":
                pen += space
                continue
            mask, left, top, advance = sign(rng, font, char) if char in (SIGN, COLON) else font[char]
            drop = rng.uniform(-0.06, 0.06) * CAP if loose else 0.0
            if loose and rng.random() < 0.7:
                mask = turned(mask, rng.uniform(-6, 6))
            placed.append((mask, pen + left, TOP + CAP + top + drop))
            pen += max(advance + tracking + (rng.uniform(-0.05, 0.08) * CAP if loose else 0), mask.shape[1] * 0.7)
        self.spans = [(int(round(x)), int(round(x)) + mask.shape[1]) for mask, x, _ in placed]
        strip = paste(placed, int(pen + 60))
        strip = effects(rng, strip)
        inked = np.flatnonzero(strip.max(axis=0) > 60)
        if len(inked) == 0:
            return strip, 40, 41
        return strip, int(inked[0]), int(inked[-1]) + 1


def turned(mask, angle):
    height, width = mask.shape
    about = cv2.getRotationMatrix2D((width / 2, height / 2), angle, 1)
    return cv2.warpAffine(mask, about, (width, height))


def paste(placed, width):
    strip = np.zeros((HEIGHT, max(width, 80)), np.uint8)
    for mask, x, y in placed:
        x, y = max(0, int(round(x))), int(round(y))
        top = max(0, -y)
        part = mask[top : top + HEIGHT - max(0, y), : strip.shape[1] - x]
        y = max(0, y)
        view = strip[y : y + part.shape[0], x : x + part.shape[1]]
        np.maximum(view, part, out=view)
    return strip


def bowed(strip, left, right, bow, narrowing):
    """The line as it lies on a rim or a cylinder: its middle `bow` rows off its ends, its ends narrower by a share."""
    height, width = strip.shape
    x, y = np.meshgrid(np.arange(width, dtype=np.float32), np.arange(height, dtype=np.float32))
    share = (x - (left + right) / 2) / max(1.0, (right - left) / 2)
    from_x = x + np.float32(narrowing * (right - left) / 2) * share**3
    return cv2.remap(strip, from_x, y + np.float32(bow) * (share**2 - np.float32(0.33)), cv2.INTER_LINEAR)


def effects(rng, strip):
    """Dots of a peening needle, bridges of a stencil, or a second strike beside the first."""
    draw = rng.random()
    if draw < 0.06:
        return peened(rng, strip)
    if draw < 0.1:
        strip = strip.copy()
        for _ in range(int(rng.integers(1, 3))):
            row = TOP + int(rng.uniform(0.2, 0.8) * CAP)
            strip[row : row + int(rng.integers(3, 7))] = 0
        return strip
    if draw < 0.15:
        shift = np.roll(strip, (int(rng.integers(-3, 4)), int(rng.integers(-5, 6))), (0, 1))
        return np.maximum(strip, (shift * rng.uniform(0.2, 0.5)).astype(np.uint8))
    return strip


def peened(rng, strip):
    pitch = rng.uniform(0.09, 0.15) * CAP
    rows = np.arange(TOP - 4, TOP + CAP + 8, pitch)
    columns = np.arange(20, strip.shape[1] - 20, pitch)
    dots = np.zeros_like(strip)
    soft = cv2.blur(strip, (5, 5))
    radius = max(2, int(pitch * rng.uniform(0.3, 0.5)))
    for y in rows:
        for x in columns:
            if soft[int(y), int(x)] > 100:
                place = (int(x + rng.uniform(-1, 1)), int(y + rng.uniform(-1, 1)))
                cv2.circle(dots, place, radius, 255, -1, cv2.LINE_AA)
    return dots if dots.any() else strip
