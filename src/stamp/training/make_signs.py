"""Test lines with signs among and around their characters, in fonts held back, as the recogniser's input sees them.

usage: python3 make_signs.py HELD.npz FOLDER COUNT SEED

Pictures 48 pixels tall: the line's own height is 32 of them, and a height of ground lies past each end (README.md,
Recogniser, 1). None is chosen or left out by what a net reads on it; lines of a texture that drowns them are among them.
"""

import json
import pathlib
import sys

import cv2
import numpy as np

import crops
from emblems import SIGN


def main(atlas, folder, count, seed):
    folder.mkdir(parents=True, exist_ok=True)
    lines, cases = iter(crops.Lines(atlas, seed, 16, pool=2, empty=0, plain=0, next_to=0)), []
    while len(cases) < count:
        batch = next(lines)
        images, _ = crops.shoot(batch, "cpu")
        for text, image in zip(batch["texts"], images[:, 0].numpy()):
            if SIGN not in text or len(cases) == count:
                continue
            name = f"sign-{len(cases) + 1:02}.jpg"
            cv2.imwrite(str(folder / name), np.round((image + 4) * 31.875).astype(np.uint8), [cv2.IMWRITE_JPEG_QUALITY, 92])
            cases.append({"file": name, "text": text})
    rows = ",\n".join(f'  {{ "file": {json.dumps(case["file"])}, "text": {json.dumps(case["text"])} }}' for case in cases)
    (folder / "expected.json").write_text(f"[\n{rows}\n]\n")


if __name__ == "__main__":
    main(sys.argv[1], pathlib.Path(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4]))
