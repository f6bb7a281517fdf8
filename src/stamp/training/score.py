"""Figures on a folder of photographs with an expected.json, from the whole photo, without any code system.

usage: python3 score.py MODELS FOLDER [TEMPERATURE] [-v]
"""

import json
import pathlib
import sys

from beam import best_text, told
from boxes import corners
from read import Reader, grey_of

LEVELS = (0.5, 0.7, 0.8, 0.9)


def readings(reader, grey, temperature, most=6):
    """(text,probability, code score) of the lines found, best first."""
    found = sorted(reader.find(grey), key=lambda b: -b[5] * b[6])[:most]
    read = [(*best_text(reader.lattice(grey, corners(box), temperature)), box[6]) for box in found]
    return sorted(((told(r[0]), *r[1:]) for r in read if told(r[0])), key=lambda r: -r[1] * r[2])


def main(models, folder, temperature, loud):
    reader, tally = Reader(models), {}
    for case in json.loads((folder / "expected.json").read_text()):
        read = readings(reader, grey_of(folder / case["file"]), temperature)
        best = read[0] if read else ("", 0.0, 0.0)
        row = tally.setdefault(case["difficulty"], {"photos": 0, "exact": 0, "among": 0, **{level: [0, 0] for level in LEVELS}})
        row["photos"] += 1
        row["exact"] += best[0] == case["code"]
        row["among"] += any(r[0] == case["code"] for r in read)
        for level in LEVELS:
            if best[1] >= level and best[2] >= 0.5 and len(best[0]) >= 3 and any(c.isdigit() for c in best[0]):
                row[level][best[0] != case["code"]] += 1
        if loud and best[0] != (case["code"] or ""):
            print(case["file"], case["code"], [(t, round(p, 2), round(s, 2)) for t,p, s in read])
    for name, row in sorted(tally.items()):
        levels = ", ".join(f"{level}: {row[level][0]} right {row[level][1]} wrong" for level in LEVELS)
        print(f"{name}: {row['photos']} photos, first {row['exact']} exact, among the lines {row['among']}; accepted at {levels}")


if __name__ == "__main__":
    numbers = [a for a in sys.argv[3:] if a != "-v"]
    main(sys.argv[1], pathlib.Path(sys.argv[2]), float(numbers[0]) if numbers else 1.0, "-v" in sys.argv)
