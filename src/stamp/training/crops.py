"""Training lines for the recogniser: layers of masks from the processors, lit and photographed on the accelerator."""

import cv2
import numpy as np
import torch
import torch.nn.functional as F

import codes
from atlas import CAP, load
from camera import burnt, cut, normal, photograph
from dots import dotted_font
from emblems import COLON, SIGN, said, with_signs
from fields import Draw
from line import TOP, Setter, bowed
from relief import render

SIZE = 32  # cap height on the canvas
CANVAS = 80  # canvas height
CROP = 48  # height of the net's input
SPAN = 1.5  # crop height in cap heights
PER_PIXEL = SIZE * SPAN / CROP  # canvas pixels for one of the crop
# Few different shapes: the accelerator plans every transform and convolution anew for each.
WIDTHS = (64, 80, 96, 112, 128, 160, 192, 224, 256, 320, 384, 448, 512, 640, 768)
WIDEST = WIDTHS[-1]
SCALES = (1.0, 0.75, 0.5, 0.4, 0.36)
WEAK = 0.45  # share of shallow marks on strong grain
MARKED = (0.44, 0.17, 0.1, 0.1, 0.08, 0.11)  # of each of relief.KINDS: photographs of parts and labels show more print
PLAIN = 0.65  # share of lines as the nets before saw them: no signs, small letters, dots, bows or neighbours


def varied(rng, strip, left, right, plain=False):
    """The line in another cut of its face: strokes heavier or lighter, outlines bent, so that new faces are less new."""
    if rng.random() < 0.3:
        radius = int(rng.integers(1, 4 if plain else 6))
        tool = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * radius + 1, 2 * radius + 1))
        other = cv2.erode(strip, tool) if radius == 1 or rng.random() < 0.3 else cv2.dilate(strip, tool)
        # Thin faces have nothing to lose, heavy ones no room to grow: counters must stay open.
        share = float(other.sum()) / max(1.0, float(strip.sum()))
        strip = other if 0.55 < share < 1.6 else strip
    if rng.random() < 0.4:
        height, width = strip.shape
        shape = (2, height // 28 + 2, width // 28 + 2)
        knots = rng.uniform(-1, 1, shape).astype(np.float32) * np.float32(CAP * rng.uniform(0.01, 0.05))
        bent_x, bent_y = (cv2.resize(k, (width, height), interpolation=cv2.INTER_CUBIC) for k in knots)
        x, y = np.meshgrid(np.arange(width, dtype=np.float32), np.arange(height, dtype=np.float32))
        strip = cv2.remap(strip, x + bent_x, y + bent_y, cv2.INTER_LINEAR)
    if not plain and rng.random() < 0.12:
        strip = bowed(strip, left, right, rng.uniform(-0.3, 0.3) * CAP, rng.uniform(0, 0.2))
    inked = np.flatnonzero(strip.max(axis=0) > 60)
    return (strip, left, right) if len(inked) == 0 else (strip, int(inked[0]), int(inked[-1]) + 1)


def as_set(rng, text):
    """A text as a label sets it: in small letters at times, a time of day, or, of every two, one with signs of others."""
    draw = rng.random()
    if draw < 0.1:
        return text.lower() if rng.random() < 0.6 else text.title()
    if draw < 0.22:
        return codes.hour(rng)
    if draw >= 0.62:
        return text
    signed = with_signs(rng, text)
    return signed[0] + signed[1:-1].replace(SIGN, COLON) + signed[-1] if rng.random() < 0.3 else signed


def hole(rng, layers, edge, side):
    """A hole, a rivet or a boss close to an end of a line: it is none of the line's characters."""
    radius, row = SIZE * rng.uniform(0.2, 0.6), CANVAS / 2 + SIZE * rng.uniform(-0.3, 0.3)
    middle = (int(edge + side * (radius + SIZE * rng.uniform(0.25, 0.7))), int(row))
    axes = (int(radius), int(radius * rng.uniform(0.7, 1.4)))
    lift, tone = int(rng.choice([-1, 1]) * rng.uniform(60, 127)), int(rng.choice([-1, 1]) * rng.uniform(60, 120))
    turn = rng.uniform(0, 180)
    cv2.ellipse(layers[0], middle, axes, turn, 0, 360, 128 + lift, -1, cv2.LINE_AA)
    cv2.ellipse(layers[1], middle, axes, turn, 0, 360, 128 + tone, -1, cv2.LINE_AA)
    start = rng.uniform(0, 360)
    cv2.ellipse(layers[1], middle, axes, turn, start, start + rng.uniform(60, 200), 128 - tone, int(rng.integers(2, 6)), cv2.LINE_AA)


def strip_for(rng, setter, text, plain=False):
    """A line at canvas size, stretched a little, with its ink's left and right."""
    dotted = not plain and rng.random() < 0.1 and not any(c.islower() for c in text)
    strip, left, right = varied(rng, *setter.line(rng, text, dotted_font(rng) if dotted else None), plain)
    stretch = rng.uniform(0.65, 1.3)
    scale = SIZE / CAP
    if (right - left) * scale * stretch > 0.92 * WIDEST * PER_PIXEL:
        stretch *= 0.9 * WIDEST * PER_PIXEL / ((right - left) * scale * stretch)
    return strip, left, right, scale * stretch


def place(target, strip, left, right, stretch, middle, row=0.0):
    """Draws a strip so that its ink is centred at column `middle`, its cap centre `row` off the canvas's middle."""
    scale = SIZE / CAP
    shift_x = middle - stretch * (left + right) / 2
    shift_y = target.shape[0] / 2 + row - scale * (TOP + CAP / 2)
    matrix = np.array([[stretch, 0, shift_x], [0, scale, shift_y]], np.float64)
    drawn = cv2.warpAffine(strip, matrix, (target.shape[1], target.shape[0]), flags=cv2.INTER_AREA)
    np.maximum(target, drawn, out=target)


def clutter(rng, height_layer, print_layer):
    """Stitches, seams, scratches, frames and stripes near a line; most lines have none."""
    height, width = height_layer.shape
    if rng.random() < 0.12:
        row = int(rng.choice([rng.uniform(0, 14), rng.uniform(66, 79)]))
        dash, gap, thick = int(rng.uniform(6, 25)), int(rng.uniform(3, 10)), int(rng.uniform(2, 7))
        lift, tone = int(rng.choice([-1, 1]) * rng.uniform(40, 120)), int(rng.uniform(-120, 120))
        tilt = rng.uniform(-0.05, 0.05)
        for x in range(0, width, dash + gap):
            a, b = (x, int(row + tilt * x)), (x + dash, int(row + tilt * (x + dash)))
            cv2.line(height_layer, a, b, 128 + lift, thick, cv2.LINE_AA)
            cv2.line(print_layer, a, b, 128 + tone, thick, cv2.LINE_AA)
    for _ in range(int(rng.poisson(0.25))):
        a = (int(rng.uniform(0, width)), int(rng.uniform(0, height)))
        b = (int(a[0] + rng.uniform(-200, 200)), int(a[1] + rng.uniform(-60, 60)))
        cv2.line(height_layer, a, b, int(128 + rng.uniform(-60, 60)), int(rng.integers(1, 4)), cv2.LINE_AA)
    if rng.random() < 0.08:
        edge = int(rng.choice([rng.uniform(2, 15), rng.uniform(65, 78)]))
        tone = int(128 + rng.choice([-1, 1]) * rng.uniform(30, 120))
        tilt = int(rng.uniform(-4, 4))
        if rng.random() < 0.5:
            cv2.line(print_layer, (0, edge), (width, edge + tilt), tone, int(rng.integers(1, 6)), cv2.LINE_AA)
        else:
            end = 0 if edge < 40 else height
            corners = np.array([[0, edge], [width, edge + tilt], [width, end], [0, end]])
            cv2.fillPoly(print_layer, [corners], tone, cv2.LINE_AA)
    if rng.random() < 0.05:
        for x in (int(rng.uniform(0, 20)), int(width - rng.uniform(0, 20))):
            tone = int(128 + rng.choice([-1, 1]) * rng.uniform(30, 120))
            cv2.rectangle(print_layer, (x, 6), (x + int(rng.uniform(2, 26)), 74), tone, -1)


def neighbours(rng, setter, target, middle):
    """Another line above or below, so that the net reads only the middle one."""
    for side in (-1, 1):
        if rng.random() < 0.1:
            text = codes.words(rng, 3) if rng.random() < 0.6 else codes.code(rng)
            strip, left, right, stretch = strip_for(rng, setter, text, True)
            place(target, strip, left, right, stretch, middle + rng.uniform(-60, 60), side * SIZE * rng.uniform(1.3, 1.7))


def beside(rng, setter, target, text, middle, half, seen, share):
    """Another text in the same row past a gap, whose near end is surely in the crop; what the line then says.

    It is none of the line's characters, so it counts as a sign: a net that is told to read nothing there learns to leave
    out what stands past a gap, a code's own parts too. `seen` is how far the crop reaches to the left and to the right.
    """
    for side in (-1, 1):
        gap = SIZE * rng.uniform(1.0, 1.6)  # farther off than any space within a code
        room = seen[(side + 1) // 2] - half - gap
        if rng.random() < share and room > 0.5 * SIZE and text[0 if side < 0 else -1] != SIGN:
            other = codes.words(rng, 1) if rng.random() < 0.6 else codes.code(rng)
            strip, left, right, stretch = strip_for(rng, setter, other[:9])
            place(target, strip, left, right, stretch, middle + side * (half + gap + (right - left) * stretch / 2), rng.uniform(-2, 2))
            text = text + SIGN if side > 0 else SIGN + text
    return text


class Lines(torch.utils.data.IterableDataset):
    """Batches of lines of about one width: layers as bytes, texts, the crop's width, and what an older net reads as well.

    `plain` is the share of lines drawn as before signs had a class, `next_to` that of the others' ends with a neighbour.
    """

    def __init__(self, atlas_path, seed, batch, pool=8, empty=0.06, plain=PLAIN, next_to=0.1):
        self.path, self.seed, self.batch, self.pool, self.empty = atlas_path, seed, batch, pool, empty
        self.plain, self.next_to = plain, next_to

    def __iter__(self):
        worker = torch.utils.data.get_worker_info()
        rng = np.random.default_rng([self.seed, worker.id if worker else 0])
        cv2.setNumThreads(0)
        setter = Setter(*load(self.path))
        while True:
            drawn = [self.drawn(rng, setter) for _ in range(self.batch * self.pool)]
            drawn.sort(key=lambda d: (d[3] - d[2]) * d[4])
            groups = [drawn[i : i + self.batch] for i in range(0, len(drawn), self.batch)]
            for index in rng.permutation(len(groups)):
                yield self.compose(rng, setter, groups[index])

    def drawn(self, rng, setter):
        """A text, its strip with its place, and whether it is a plain one."""
        plain = rng.random() < self.plain
        text = codes.line_text(rng)
        text = text if plain else as_set(rng, text)
        return (text, *strip_for(rng, setter, text, plain), plain)

    def compose(self, rng, setter, group):
        longest = max((right - left) * stretch for _, _, left, right, stretch, _ in group)
        # The reader's crop has a height of ground at both ends; a found box is often a little short or long.
        extra = SIZE * (rng.uniform(1.5, 2.2) if rng.random() < 0.6 else rng.uniform(0.3, 2.8))
        wanted = (longest + extra) / PER_PIXEL
        width = next((w for w in WIDTHS if w >= wanted), WIDEST)
        canvas = int(np.ceil((width * PER_PIXEL * 1.2 + 24) / 80) * 80)
        layers = np.zeros((3, len(group), CANVAS, canvas), np.uint8)
        layers[1:] = 128
        texts, known = [], []
        for i, (text, strip, left, right, stretch, plain) in enumerate(group):
            slack = max(0.0, width * PER_PIXEL - (right - left) * stretch - 0.5 * SIZE)
            off = rng.uniform(-0.5, 0.5) * slack * 0.8
            middle, half = canvas / 2 + off, (right - left) * stretch / 2
            empty = rng.random() < self.empty
            if not empty:
                place(layers[0, i], strip, left, right, stretch, middle)
            if not empty or rng.random() < 0.3:
                neighbours(rng, setter, layers[0, i], middle)
            says = "" if empty else said(text)
            # Where characters stand far apart a gap says nothing.
            if says and not plain and 2 * half < SIZE * len(text):
                reach = width * PER_PIXEL / 2
                says = beside(rng, setter, layers[0, i], says, middle, half, (reach + off, reach - off), self.next_to)
            if says and not plain and rng.random() < 0.15:
                side = -1 if rng.random() < 0.5 else 1
                if says[0 if side < 0 else -1] != SIGN:
                    hole(rng, layers[1:, i], middle + side * half, side)
                    says = SIGN + says if side < 0 else says + SIGN
            for _ in range(3 if empty else 1):
                clutter(rng, layers[1, i], layers[2, i])
            texts.append(says.upper())
            known.append(SIGN not in says and not any(c.islower() for c in says))
        return {"layers": torch.from_numpy(layers), "texts": texts, "known": known, "width": width, "seed": int(rng.integers(1 << 30))}


def shoot(batch, device):
    """The crops of a batch as the net sees them, (batch, 1, CROP, width), and the kinds of mark."""
    layers = batch["layers"].to(device, non_blocking=True).float()
    seed, width = batch["seed"], batch["width"]
    count = layers.shape[1]
    size = torch.full((count, 1, 1), float(SIZE), device=device)
    named = {"mark": layers[0] / 255, "height": (layers[1] - 128) / 127, "print": (layers[2] - 128) / 127}
    rng = np.random.default_rng(seed)
    kinds = torch.from_numpy(rng.choice(len(MARKED), count, p=MARKED)).to(device)
    scene, chosen = render(named, size, seed, kinds, WEAK)
    scene = burnt(scene, SIZE, seed + 7)
    crops, chunk = [], max(1, count // 4)
    scales, roughs, errors = rng.choice(SCALES, 8), rng.uniform(0.3, 0.9, 8), rng.uniform(0.6, 1.1, 8)
    for part, start in enumerate(range(0, count, chunk)):
        scale = float(scales[part % 8])
        piece = scene[start : start + chunk]
        if scale < 1:
            shape = (int(round(CANVAS * scale)), int(round(scene.shape[2] * scale)))
            piece = F.interpolate(piece[:, None], shape, mode="bilinear", antialias=True)[:, 0]
        photo = photograph(piece, seed + 1 + part, float(roughs[part % 8]), 85 - 45 * scale)
        centre = torch.tensor([[(photo.shape[2] - 1) / 2, (photo.shape[1] - 1) / 2]], device=device).expand(len(piece), 2)
        crops.append(cut(photo, CROP, width, PER_PIXEL * scale, centre, seed + 50 + part, float(errors[part % 8])))
    crops = torch.cat(crops)
    draw = Draw(count, device, seed + 99)
    turned = draw.chance(0.1)
    return normal(crops * (1 - turned) + (255 - crops) * turned)[:, None], chosen
