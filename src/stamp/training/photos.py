"""Training photographs for the finder, and what it should answer on each."""

import math

import cv2
import numpy as np
import torch

from atlas import load
from camera import burnt, normal, photograph
from line import Setter
from relief import render
from scene import compose

STEP = 4  # pixels of the photo for one of the map
UNIT = 8.0  # pixels; the nets' distances are logarithms of distance / UNIT


def box_of(quad):
    """Centre, width, height and angle of the upright-in-its-own-frame box nearest to four corners."""
    across = (quad[1] - quad[0]) + (quad[2] - quad[3])
    angle = math.atan2(across[1], across[0])
    turn = np.array([[math.cos(angle), math.sin(angle)], [-math.sin(angle), math.cos(angle)]])
    own = quad @ turn.T
    left, right = (own[0, 0] + own[3, 0]) / 2, (own[1, 0] + own[2, 0]) / 2
    top, bottom = (own[0, 1] + own[1, 1]) / 2, (own[2, 1] + own[3, 1]) / 2
    centre = turn.T @ np.array([(left + right) / 2, (top + bottom) / 2])
    return centre, right - left, bottom - top, angle


def targets(lines, height, width):
    """(8, h, w): core, code, four log distances, sine and cosine; and (2, h, w): weights of core and of the class."""
    rows, columns = height // STEP, width // STEP
    wanted = np.zeros((8, rows, columns), np.float32)
    weights = np.ones((2, rows, columns), np.float32)
    y, x = np.mgrid[0:rows, 0:columns].astype(np.float32) * STEP + (STEP - 1) / 2
    for _, quad, kind in lines:
        centre, wide, tall, angle = box_of(quad)
        c, s = math.cos(angle), math.sin(angle)
        u = (x - centre[0]) * c + (y - centre[1]) * s
        v = -(x - centre[0]) * s + (y - centre[1]) * c
        half = max(tall * 0.25, 2.1)
        core = (np.abs(v) <= half) & (np.abs(u) <= max(wide / 2 - tall * 0.25, 2.1))
        whole = (np.abs(v) <= tall * 0.5) & (np.abs(u) <= wide / 2)
        weights[0][whole & ~core] = 0.3
        weights[0][core] = 1
        weights[1][core] = 0 if kind < 0 else 1
        wanted[0][core] = 1
        wanted[1][core] = max(kind, 0)
        sides = (v + tall / 2, tall / 2 - v, u + wide / 2, wide / 2 - u)
        for channel, side in enumerate(sides):
            wanted[2 + channel][core] = np.log(np.maximum(side[core], 0.5) / UNIT)
        wanted[6][core], wanted[7][core] = s, c
    return wanted, weights


class Photos(torch.utils.data.IterableDataset):
    """Batches of layer sets with targets."""

    def __init__(self, atlas_path, seed, batch, side=640, sizes=(7, 150)):
        self.path, self.seed, self.batch, self.side, self.sizes = atlas_path, seed, batch, side, sizes

    def __iter__(self):
        worker = torch.utils.data.get_worker_info()
        rng = np.random.default_rng([self.seed, worker.id if worker else 0])
        cv2.setNumThreads(0)
        setter = Setter(*load(self.path))
        while True:
            yield self.batch_of(rng, setter)

    def batch_of(self, rng, setter):
        layers, wanted, weights, sizes, lines = [], [], [], [], []
        for _ in range(self.batch):
            scene, size = compose(rng, setter, self.side, self.side, self.sizes)
            if not scene.layers[3].any():
                scene.layers[3] = 255
            layers.append(scene.layers)
            made = targets(scene.lines, self.side, self.side)
            wanted.append(made[0])
            weights.append(made[1])
            sizes.append(size)
            lines.append(scene.lines)
        return {
            "layers": torch.from_numpy(np.stack(layers, 1)),
            "wanted": torch.from_numpy(np.stack(wanted)),
            "weights": torch.from_numpy(np.stack(weights)),
            "sizes": torch.tensor(sizes, dtype=torch.float32),
            "lines": lines,
            "seed": int(rng.integers(1 << 30)),
        }


def named(layers):
    layers = layers.float()
    return {
        "mark": layers[0] / 255,
        "height": (layers[1] - 128) / 127,
        "print": (layers[2] - 128) / 127,
        "patch": layers[3] / 255,
    }


def periods(sizes, seed):
    """Grain periods in pixels: they go by the leather and the distance, only loosely by the size of the mark."""
    free = np.random.default_rng(seed).uniform(math.log(2.5), math.log(28), len(sizes))
    bound = torch.as_tensor(np.exp(free), dtype=torch.float32, device=sizes.device).view(-1, 1, 1)
    return torch.minimum(bound, torch.clamp(sizes * 0.7, min=3.0))


def turned(images, wanted, weights, quarters):
    """The same photos turned left by quarters, with their answers: distances go with the line, directions turn."""
    images, wanted, weights = (torch.rot90(part, quarters, (2, 3)) for part in (images, wanted, weights))
    sine, cosine = wanted[:, 6:7], wanted[:, 7:8]
    for _ in range(quarters % 4):
        sine, cosine = -cosine, sine
    return images, torch.cat((wanted[:, :6], sine, cosine), 1), weights


def shoot(batch, device):
    """The photos of a batch as the net sees them, (batch, 1, side, side)."""
    layers = named(batch["layers"].to(device, non_blocking=True))
    sizes = batch["sizes"].to(device).view(-1, 1, 1)
    layers["period"] = periods(sizes, batch["seed"])
    scene, _ = render(layers, torch.clamp(sizes, 12, 60), batch["seed"])
    scene = burnt(scene, torch.clamp(sizes, 12, 60), batch["seed"] + 7, 0.08)
    photo = photograph(scene, batch["seed"] + 1, 0.7)
    draw_flip = torch.rand(len(sizes), 1, 1, generator=torch.Generator().manual_seed(batch["seed"])).to(device) < 0.1
    photo = torch.where(draw_flip, 255 - photo, photo)
    return normal(photo)[:, None]
