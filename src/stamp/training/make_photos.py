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
from relief import KINDS, render
from scene import Scene, other_text, with_code

STEPS = {"clear": (1.6, 99.0), "fair": (0.85, 1.6), "hard": (0.4, 0.85)}
TINTS = ((1.25, 0.97, 0.62), (1.4, 0.9, 0.55), (1.1, 0.99, 0.85), (1.5, 0.82, 0.75), (0.85, 1.05, 1.1), (0.9, 1.08, 0.8), (1, 1, 1))


def scene_of(rng, setter, coded):
    long = int(rng.choice([704, 704, 704, 800, 800, 896, 1104]))
    shape = (long * 3 // 4, long) if rng.random() < 0.8 else (long, long * 3 // 4)
    scene = Scene(rng, setter, shape[0] // 8 * 8, shape[1] // 8 * 8)
    size = math.exp(rng.uniform(math.log(14), math.log(110)))
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


def shot(layers, size, seed, kind, rough, weak):
    named = photos.named(torch.from_numpy(layers[:, None]))
    sizes = torch.tensor([size], dtype=torch.float32)
    named["period"] = photos.periods(sizes, seed) * max(1.0, layers.shape[2] / 900)
    fixed = torch.tensor([kind])
    lit, _ = render(named, torch.clamp(sizes, 12, 80).view(-1, 1, 1), seed, fixed, hard_share=weak)
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


def candidates(setter, seed, name, count):
    """Photos of one class, one by one; weak marks are drawn oftener for the harder classes, the measure decides."""
    number, done, weak = 0, 0, {"clear": 0.1, "fair": 0.5, "hard": 0.9, "none": 0.4}[name]
    while done < count:
        number += 1
        rng = np.random.default_rng([seed, len(STEPS) if name == "none" else list(STEPS).index(name), number])
        scene, size = scene_of(rng, setter, name != "none")
        if scene is None:
            continue
        relief = ("blind", "blind", "blind", "ink", "foil", "engraved", "raised", "plate")
        kind = KINDS.index(str(rng.choice(relief[:5] if name in ("fair", "hard") else relief)))
        rough = rng.uniform(0.4, 1.0)
        shoot = {"seed": int(rng.integers(1 << 30)), "kind": kind, "rough": rough, "weak": weak}
        picture, value = shot(scene.layers, size, **shoot), None
        if name != "none":
            bare = scene.layers.copy()
            bare[0] = 0
            line = next(line for line in scene.lines if line[2] == 1)
            value = strength(picture, shot(bare, size, **shoot), line[1])
            low, high = STEPS[name]
            if not low <= value < high:
                continue
        done += 1
        yield coloured(rng, picture, scene.layers), scene, KINDS[kind], value


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
    parser.add_argument("--only", nargs="*", help="make only these classes and keep the rest of the folder")
    parser.add_argument("--seed", type=int, default=7)
    parser.add_argument("--bytes", type=int, default=64000)
    args = parser.parse_args()
    args.out.mkdir(parents=True, exist_ok=True)
    torch.set_num_threads(1)
    setter = Setter(*load(args.atlas))
    entries = []
    for name in args.only or ("clear", "fair", "hard", "none"):
        made = candidates(setter, args.seed, name, getattr(args, name))
        for number, (image, scene, kind, value) in enumerate(made, 1):
            file = f"{name}-{number:02d}.jpg"
            quality = stored(image, args.out / file, args.bytes)
            entries.append(entry(file, name, scene, kind, value, quality, image))
            print(file, entries[-1]["code"], value, flush=True)
    known = args.out / "expected.json"
    if args.only and known.exists():
        entries += [e for e in json.loads(known.read_text()) if e["file"].split("-")[0] not in args.only]
    entries.sort(key=lambda e: e["file"])
    known.write_text(json.dumps(entries, indent=1) + "\n")


if __name__ == "__main__":
    main()
