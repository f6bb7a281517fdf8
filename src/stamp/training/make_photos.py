"""Test photographs in colour from a seed, with the fonts held back from training, and what they say.

usage: python3 make_photos.py ATLAS.npz OUT --clear 20 --fair 15 --hard 10 --none 15 --seed 7 --bytes 64000
Needs no accelerator. Difficulty is measured, not guessed: the same scene is photographed with and without its mark, and
the mark's strength over the grain's inside the line decides (STEPS).
"""

import argparse
import json
import math
import pathlib

import cv2
import numpy as np
import torch

import photos
import things
from atlas import load
from camera import photograph
from line import Setter
from relief import KINDS, SHARES, render
from scene import Scene, other_text, with_code

STEPS = {"clear": (1.6, 99.0), "fair": (0.85, 1.6), "hard": (0.4, 0.85)}
TINTS = ((1.25, 0.97, 0.62), (1.4, 0.9, 0.55), (1.1, 0.99, 0.85), (1.5, 0.82, 0.75), (0.85, 1.05, 1.1), (0.9, 1.08, 0.8), (1, 1, 1))


def scene_of(rng, setter, coded):
    long = int(rng.choice([704, 800, 800, 896, 960, 1104]))
    shape = (long * 3 // 4, long) if rng.random() < 0.8 else (long, long * 3 // 4)
    scene = Scene(rng, setter, shape[0] // 8 * 8, shape[1] // 8 * 8)
    size = math.exp(rng.uniform(math.log(14), math.log(130)))
    things.before(scene)
    if coded:
        with_code(scene, size)
        if not any(kind == 1 for _, _, kind in scene.lines):
            return None, size
    for _ in range(int(rng.integers(0, 2 if coded else 4))):
        other_text(scene, float(np.clip(size * math.exp(rng.normal(0, 0.5)), 12, 130)))
    things.after(scene)
    if not scene.layers[3].any():
        scene.layers[3] = 255
    return scene, size


def shot(layers, size, seed, kind, rough):
    named = photos.named(torch.from_numpy(layers[:, None]))
    sizes = torch.tensor([size], dtype=torch.float32)
    named["period"] = photos.periods(sizes, seed) * max(1.0, layers.shape[2] / 900)
    fixed = torch.tensor([kind])
    lit, _ = render(named, torch.clamp(sizes, 12, 80).view(-1, 1, 1), seed, fixed, hard_share=0.2)
    return photograph(lit, seed + 1, rough, worst=95.5)[0].numpy()


def inside(quad, shape, grow=1.0):
    mask = np.zeros(shape, np.uint8)
    middle = quad.mean(axis=0)
    cv2.fillConvexPoly(mask, ((quad - middle) * grow + middle).astype(np.int32), 1)
    return mask > 0


def strength(with_mark, without, quad):
    """How much the mark changes the picture inside its line, over how uneven the ground is at the strokes' scale."""
    where = inside(quad, with_mark.shape)
    tall = float(np.linalg.norm(quad[3] - quad[0]))
    ground = without - cv2.GaussianBlur(without, (0, 0), max(1.0, tall * 0.35))
    signal = with_mark - without
    signal = signal - cv2.GaussianBlur(signal, (0, 0), max(1.0, tall * 0.35))
    return float(signal[where].std() / (cv2.GaussianBlur(ground, (0, 0), max(0.3, tall * 0.03))[where].std() + 2.0))


def coloured(rng, grey, layers):
    base, other = (np.array(TINTS[int(rng.integers(len(TINTS)))]) for _ in range(2))
    base, other = base / (base @ (0.299, 0.587, 0.114)), other / (other @ (0.299, 0.587, 0.114))
    patch = (layers[3] / 255.0)[..., None]
    return np.clip(grey[..., None] * (base * patch + other * (1 - patch)), 0, 255).astype(np.uint8)


def stored(image, path, most):
    for quality in (82, 78, 74, 70, 65, 60, 55, 50, 45, 40, 35):
        data = cv2.imencode(".jpg", image[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, quality])[1]
        if len(data) <= most:
            break
    path.write_bytes(data.tobytes())
    return quality


def candidates(setter, seed, wanted):
    """Photos one by one, each with its class, until every class has enough."""
    number = 0
    while any(wanted.values()):
        number += 1
        rng = np.random.default_rng([seed, number])
        coded = wanted["none"] == 0 or (rng.random() < 0.8 and any(wanted[k] for k in STEPS))
        scene, size = scene_of(rng, setter, coded)
        if scene is None:
            continue
        kind = int(rng.choice(len(KINDS), p=np.array(SHARES) / sum(SHARES)))
        rough = rng.uniform(0.4, 1.0)
        picture = shot(scene.layers, size, seed * 1000 + number, kind, rough)
        name, value = "none", None
        if coded:
            bare = scene.layers.copy()
            bare[0] = 0
            without = shot(bare, size, seed * 1000 + number, kind, rough)
            line = next(line for line in scene.lines if line[2] == 1)
            value = strength(picture, without, line[1])
            name = next((k for k, (low, high) in STEPS.items() if low <= value < high), None)
        if name and wanted[name]:
            wanted[name] -= 1
            yield name, coloured(rng, picture, scene.layers), scene, KINDS[kind], value


def entry(file, name, scene, kind, value, quality, image):
    made = {"file": file, "difficulty": "no code" if name == "none" else name, "width": image.shape[1], "height": image.shape[0], "quality": quality}
    line = next((line for line in scene.lines if line[2] == 1), None)
    if name == "none":
        made.update(code=None, quad=None, kind=None)
    else:
        quad = [{"x": round(float(x), 1), "y": round(float(y), 1)} for x, y in line[1] + 0.5]
        made.update(code=line[0], quad=quad, kind=kind, strength=round(value, 2))
    made["other"] = [text for text, _, k in scene.lines if k == 0]
    return made


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("atlas")
    parser.add_argument("out", type=pathlib.Path)
    for name, count in (("clear", 20), ("fair", 15), ("hard", 10), ("none", 15)):
        parser.add_argument("--" + name, type=int, default=count)
    parser.add_argument("--seed", type=int, default=7)
    parser.add_argument("--bytes", type=int, default=64000)
    args = parser.parse_args()
    args.out.mkdir(parents=True, exist_ok=True)
    torch.set_num_threads(2)
    setter = Setter(*load(args.atlas))
    wanted = {name: getattr(args, name) for name in ("clear", "fair", "hard", "none")}
    counts, entries = {}, []
    for name, image, scene, kind, value in candidates(setter, args.seed, wanted):
        counts[name] = counts.get(name, 0) + 1
        file = f"{name}-{counts[name]:02d}.jpg"
        quality = stored(image, args.out / file, args.bytes)
        entries.append(entry(file, name, scene, kind, value, quality, image))
        print(file, entries[-1]["code"], value, flush=True)
    entries.sort(key=lambda e: e["file"])
    (args.out / "expected.json").write_text(json.dumps(entries, indent=1) + "\n")


if __name__ == "__main__":
    main()
