"""Real number plates, which nobody here rendered: exact readings from the given box and from the finder's lines.

usage: python3 plates.py MODELS PLATES_FOLDER
"""

import json
import pathlib
import re
import sys

import numpy as np

from beam import best_text, probabilities
from boxes import corners
from read import Reader, grey_of


def plain(text):
    return re.sub(r"[^A-Z0-9]", "", text)


def inner(box, country):
    """The characters' line inside a plate's box: below the name strip where the layout has one."""
    x0, y0, x1, y1 = box
    wide, tall = x1 - x0, y1 - y0
    top, bottom, left, right = (0.32, 0.92, 0.05, 0.95) if country == "br" else (0.14, 0.86, 0.1, 0.97)
    xs, ys = (x0 + left * wide, x0 + right * wide), (y0 + top * tall, y0 + bottom * tall)
    return np.array([[xs[0], ys[0]], [xs[1], ys[0]], [xs[1], ys[1]], [xs[0], ys[1]]])


def main(models, folder):
    reader = Reader(models)
    cases = json.loads((folder / "truth.json").read_text())["cases"]
    tally = {}
    for case in cases:
        grey = grey_of(folder / case["file"])
        given, _ = best_text(probabilities(reader.logits(grey, inner(case["box"], case["country"]))))
        x0, y0, x1, y1 = case["box"]
        lines = [b for b in reader.find(grey) if x0 < b[0] < x1 and y0 < b[1] < y1]
        read = [best_text(probabilities(reader.logits(grey, corners(b))))[0] for b in sorted(lines, key=lambda b: -b[3])[:3]]
        count = tally.setdefault(case["country"], [0, 0, 0, 0])
        count[0] += 1
        count[1] += plain(given) == plain(case["text"])
        count[2] += plain(case["text"]) in [plain(t) for t in read]
        count[3] += bool(lines)
        if "-v" in sys.argv:
            print(case["file"], case["text"], given, read)
    for country, (all_, box, found, any_) in tally.items():
        print(f"{country}: {all_} plates, exact from the box {box}, exact from the finder {found}, some line found {any_}")


if __name__ == "__main__":
    main(sys.argv[1], pathlib.Path(sys.argv[2]))
