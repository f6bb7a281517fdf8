"""Test photographs in colour from a seed, with the fonts held back from training, and what they say.

usage: python3 make_photos.py ATLAS.npz CODES.json OUT --clear 60 --fair 60 --hard 60 --none 60 --seed 7 --bytes 32000
       python3 make_photos.py ATLAS.npz CODES.json OUT --unsorted 600 --seed 3     every photo, with its measures
CODES.json is what tests/bench/stamp/draw-codes.ts draws: a list of {"code", "system"}; each code is used once at most.
Needs no accelerator. Difficulty is measured, not guessed (legibility.py), on the photo as it is stored.
"""

import argparse
import json
import math
import multiprocessing
import pathlib

import cv2
import numpy as np
import torch

import codes
import legibility
import photos
import things
from atlas import load
from camera import photograph
from line import Setter
from relief import KINDS, render
from scene import Scene, below, other_text

# (least strength of the weakest character, least cap height in pixels) of each class, and what its light keeps to. The
# strengths were chosen on 460 unsorted photos so that a general recogniser given the true crops reads as large a share
# of each class as it does of the photographs that the figures are asked for: 87, 57 and 37 of a hundred (README).
CLASSES = {"clear": (0.7, 18), "fair": (0.45, 15), "hard": (0.25, 14)}
LIGHT = {"clear": (40, 220, 0.1), "fair": (15, 240, 0.3), "hard": (8, 250, 0.6)}  # darkest, brightest, clipped share
SIDES = (640, 640, 640, 704, 704, 800, 800, 800, 960, 960, 1120, 1280, 1600)
MARKS = ("blind",) * 9 + ("ink", "ink", "foil", "foil", "engraved", "raised", "plate")
TINTS = ((1.25, 0.97, 0.62), (1.4, 0.9, 0.55), (1.1, 0.99, 0.85), (1.5, 0.82, 0.75), (0.85, 1.05, 1.1), (0.9, 1.08, 0.8), (1, 1, 1))


def with_text(scene, text):
    """The code, at times with a maker's words around it, at times on a patch; its cap height and characters' corners."""
    rng = scene.rng
    angle = math.radians(rng.normal(0, 13)) if rng.random() < 0.75 else math.radians(rng.uniform(-45, 45))
    for _ in range(12):
        size = math.exp(rng.uniform(math.log(15), math.log(165)))
        centre = np.array([rng.uniform(0.1, 0.9) * scene.width, rng.uniform(0.1, 0.9) * scene.height])
        before = scene.layers[0].copy()
        quad = scene.write("mark", text, 1, centre, size, angle)
        if quad is not None:
            break
    else:
        return None
    mask = np.where(scene.layers[0] > before, scene.layers[0], 0)
    spans = scene.setter.spans
    inked = [a for a, _ in spans], [b for _, b in spans]
    kept = [span for span, char in zip(spans, text.replace(" ", "")) if char.isalnum()]
    quads = legibility.character_quads(quad, min(inked[0]), max(inked[1]), kept)
    if rng.random() < 0.35:
        side, at = rng.choice([-1, 1]), size
        for _ in range(int(rng.integers(1, 4))):
            at += size * rng.uniform(0.5, 1.2)
            other = size * rng.uniform(0.45, 1.1)
            scene.write("mark", codes.words(rng), 0, below(quad, side * at), other, angle)
            at += other
    if rng.random() < 0.5:
        things.patch(scene, quad, size, angle)
    return size, quads, mask


def scene_of(rng, setter, text):
    long = int(rng.choice(SIDES))
    short = int(long * rng.choice([3 / 4, 3 / 4, 2 / 3, 1.0])) // 8 * 8
    scene = Scene(rng, setter, *((short, long) if rng.random() < 0.75 else (long, short)))
    things.before(scene)
    placed = with_text(scene, text) if text else (math.exp(rng.uniform(math.log(15), math.log(130))), None, None)
    if placed is None:
        return None
    for _ in range(int(rng.integers(0, 2)) if text else int(rng.integers(1, 5))):
        other_text(scene, float(np.clip(placed[0] * math.exp(rng.normal(0, 0.5)), 12, 130)))
    things.after(scene)
    if not text:
        things.after(scene)
    if not scene.layers[3].any():
        scene.layers[3] = 255
    return scene, *placed


def shot(layers, size, seed, kind, rough, weak):
    named = photos.named(torch.from_numpy(layers[:, None]))
    sizes = torch.tensor([size], dtype=torch.float32)
    named["period"] = photos.periods(sizes, seed) * max(1.0, layers.shape[2] / 900)
    lit, _ = render(named, torch.clamp(sizes, 12, 110).view(-1, 1, 1), seed, torch.tensor([kind]), hard_share=weak)
    return photograph(lit, seed + 1, rough, worst=95.5)[0].numpy()


def coloured(tints, grey, layers):
    base, other = (np.array(tint) / (np.array(tint) @ (0.299, 0.587, 0.114)) for tint in tints)
    patch = (layers[3] / 255.0)[..., None]
    return np.clip(grey[..., None] * (base * patch + other * (1 - patch)), 0, 255).astype(np.uint8)


def jpeg(image, quality):
    flags = [cv2.IMWRITE_JPEG_QUALITY, quality, cv2.IMWRITE_JPEG_OPTIMIZE, 1, cv2.IMWRITE_JPEG_PROGRESSIVE, 1]
    return cv2.imencode(".jpg", image[..., ::-1], flags)[1].tobytes()


def stored(image, most):
    """JPEG bytes of the best quality that fits; photos that would need a worse one than 40 are larger."""
    low, high = 8, 17  # fifths of the quality
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if len(jpeg(image, 5 * middle)) <= most else (low, middle - 1)
    return jpeg(image, 5 * low), 5 * low


def grey_of(data):
    image = cv2.imdecode(np.frombuffer(data, np.uint8), cv2.IMREAD_COLOR).astype(np.float32)
    return image @ np.array([0.114, 0.587, 0.299], np.float32)


def candidate(task):
    """One photo: its bytes and its entry, or nothing when the code did not fit into the scene."""
    seed, number, drawn, most = task
    rng = np.random.default_rng([seed, number])
    made = scene_of(rng, SETTER, drawn and drawn["code"])
    if made is None:
        return None
    scene, size, quads, mask = made
    kind = str(rng.choice(MARKS))
    shoot = {"seed": int(rng.integers(1 << 30)), "kind": KINDS.index(kind), "rough": rng.uniform(0.3, 0.85)}
    shoot["weak"] = 0.3 if number % 2 else 0.9  # weak marks fill the harder classes sooner
    tints = [TINTS[int(rng.integers(len(TINTS)))] for _ in range(2)]
    data, quality = stored(coloured(tints, shot(scene.layers, size, **shoot), scene.layers), most)
    if len(data) > 2 * most:
        return None  # noise that no store of photos keeps
    entry = {"width": scene.width, "height": scene.height, "quality": quality, "code": None, "system": None}
    entry["other"] = [text for text, _, k in scene.lines if k == 0]
    if drawn:
        bare = scene.layers.copy()
        bare[0] = np.where(mask > 0, 0, bare[0])
        flat = jpeg(coloured(tints, shot(bare, size, **shoot), scene.layers), quality)
        quad = next(line[1] for line in scene.lines if line[2] == 1)
        corners = [{"x": round(float(x), 1), "y": round(float(y), 1)} for x, y in quad + 0.5]
        measures = legibility.measured(grey_of(data), grey_of(flat), mask, quads)
        entry.update(drawn, quad=corners, kind=kind, **measures)
    return data, entry


def class_of(entry):
    """The class that a photo's strength puts it into; None when its light or size is not up to that class."""
    if entry["code"] is None:
        return "none"
    name = next((name for name in CLASSES if entry["strength"] >= CLASSES[name][0]), None)
    if name is None or entry["capHeight"] < CLASSES[name][1]:
        return None
    dark, bright, clipped = LIGHT[name]
    exposed = dark <= entry["darkest"] and entry["brightest"] <= bright and entry["clipped"] <= clipped
    return name if exposed else None


def start(atlas):
    global SETTER
    cv2.setNumThreads(1)
    torch.set_num_threads(1)
    SETTER = Setter(*load(atlas))


def tasks(args, drawn, blank):
    order = np.random.default_rng(args.seed).permutation(len(drawn))
    for number in range(args.unsorted or (1 << 20)):
        if blank:
            yield args.seed, (1 << 20) + number, None, args.bytes * 2 // 5
        elif number < len(order):
            yield args.seed, number, drawn[int(order[number])], args.bytes


def gather(pool, args, drawn, wanted, blank):
    """Photos in the order of their numbers until every class is full, so that the same seed gives the same set."""
    found = {name: [] for name in wanted}
    for made in pool.imap(candidate, tasks(args, drawn, blank)):
        name = made and class_of(made[1])
        if made and args.unsorted:
            name = "unsorted"
        if name in wanted and len(found[name]) < wanted[name]:
            found[name].append(made)
            print(name, len(found[name]), made[1]["code"], made[1].get("strength"), len(made[0]), flush=True)
        if all(len(found[name]) == count for name, count in wanted.items()):
            break
    return found


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("atlas")
    parser.add_argument("codes", type=pathlib.Path)
    parser.add_argument("out", type=pathlib.Path)
    for name in ("clear", "fair", "hard", "none", "unsorted"):
        parser.add_argument("--" + name, type=int, default=0)
    parser.add_argument("--seed", type=int, default=7)
    parser.add_argument("--bytes", type=int, default=32000)
    parser.add_argument("--processes", type=int, default=2)
    args = parser.parse_args()
    args.out.mkdir(parents=True, exist_ok=True)
    drawn = json.loads(args.codes.read_text())
    coded = {"unsorted": args.unsorted} if args.unsorted else {name: getattr(args, name) for name in CLASSES}
    entries = []
    for blank, wanted in ((False, coded), (True, {"none": args.none})):
        with multiprocessing.Pool(args.processes, start, (args.atlas,)) as pool:
            found = gather(pool, args, drawn, wanted, blank)
        for name, photographs in found.items():
            for number, (data, entry) in enumerate(photographs, 1):
                file = f"{name}-{number:02d}.jpg"
                (args.out / file).write_bytes(data)
                entries.append({"file": file, "difficulty": "no code" if name == "none" else name, **entry})
    (args.out / "expected.json").write_text(json.dumps(entries, indent=1) + "\n")


if __name__ == "__main__":
    main()
