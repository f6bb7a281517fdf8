"""Writes what the shipped nets answer to committed photographs in these steps; a test holds the extension's steps to it.

usage: python3 golden.py ../../../public/models ../../../tests/photos/stamps ../../../tests/photos/golden-logits.json PHOTO...

Of each photo the likeliest stamp: its corners, and the recogniser's logits to two decimals, step by step.
"""

import json
import pathlib
import sys

import numpy as np

from boxes import corners
from read import Reader, grey_of

models, folder, target, *photos = sys.argv[1:]
reader = Reader(models)
golden = []
for name in photos:
    grey = grey_of(pathlib.Path(folder) / name)
    box = max(reader.find(grey), key=lambda found: found[6])
    # Rounded first, so that both sides cut the same line.
    quad = np.round(corners(box), 2)
    logits = np.round(reader.logits(grey, quad).astype(np.float64), 2)
    golden.append({"photo": name, "quad": quad.tolist(), "logits": logits.tolist()})
lines = ",\n".join(json.dumps(one, separators=(",", ":")) for one in golden)
pathlib.Path(target).write_text(f"[\n{lines}\n]\n")
