"""Reads photographs with the exported nets, in the same steps as the extension does, for figures without a browser.

usage: python3 read.py MODELS PHOTO...      prints the lines of each photo

MODELS is a folder with both nets and their model card, which gives every number of the steps.
"""

import json
import pathlib
import sys

import cv2
import numpy as np
import onnxruntime
from PIL import Image

from beam import best_text, probabilities
from boxes import boxes_of, corners


def grey_of(path):
    image = np.asarray(Image.open(path).convert("RGB"), np.float32)
    return image @ np.array([0.299, 0.587, 0.114], np.float32)


def resized(grey, width, height):
    if (grey.shape[1], grey.shape[0]) == (width, height):
        return grey
    return np.asarray(Image.fromarray(grey).resize((width, height), Image.Resampling.BILINEAR))


def normal(picture):
    mean, deviation = picture.mean(), max(float(picture.std()), 4.0)
    return np.clip((picture - mean) / deviation, -4, 4).astype(np.float32)


class Reader:
    def __init__(self, models, suffix=""):
        self.card = json.loads((pathlib.Path(models) / "model-card.json").read_text())
        options = onnxruntime.SessionOptions()
        options.intra_op_num_threads = 2
        # As in the extension. Higher levels multiply 4-bit weights in 8 bits here, which moves logits by a tenth.
        options.graph_optimization_level = onnxruntime.GraphOptimizationLevel.ORT_ENABLE_BASIC
        load = lambda name: onnxruntime.InferenceSession(str(pathlib.Path(models) / f"{name}{suffix}.onnx"), options)
        self.finder, self.recogniser = load("finder"), load("recogniser")

    def find(self, grey):
        """Boxes in pixels of the photo, best first."""
        steps = self.card["finder"]
        height, width = grey.shape
        share = min(1.0, steps["longest"] / max(height, width))
        w, h = max(1, round(width * share)), max(1, round(height * share))
        small = normal(resized(grey, w, h))
        padded = np.zeros([-(-side // steps["multiple"]) * steps["multiple"] for side in (h, w)], np.float32)
        padded[:h, :w] = small
        answer = self.finder.run(None, {"photo": padded[None, None]})[0][0]
        fx, fy = width / w, height / h
        found = []
        for x, y, wide, tall, angle, score, code in boxes_of(answer, steps["core"]):
            if score < steps["least"]:
                continue
            found.append(((x + 0.5) * fx, (y + 0.5) * fy, wide * fx, tall * fy, angle, score, code))
        return found

    def crop(self, grey, quad):
        """The line upright, with its margins; corners count pixel edges, so that 0, 0 is the photo's corner."""
        steps = self.card["recogniser"]
        quad = grown(quad, steps["beside"], steps["above"])
        across, down = size_of(quad)
        tall, multiple = steps["height"], steps["multiple"]
        width = max(steps["narrowest"], min(steps["widest"], round(across / down * tall / multiple) * multiple))
        times_x, times_y = (min(6, max(1, round(v))) for v in (across / width, down / tall))
        target = np.array([[0, 0], [width * times_x, 0], [width * times_x, tall * times_y], [0, tall * times_y]])
        matrix = cv2.getPerspectiveTransform(target.astype(np.float32), quad.astype(np.float32))
        y, x = np.mgrid[0 : tall * times_y, 0 : width * times_x].astype(np.float64) + 0.5
        scale = matrix[2, 0] * x + matrix[2, 1] * y + matrix[2, 2]
        u = (matrix[0, 0] * x + matrix[0, 1] * y + matrix[0, 2]) / scale - 0.5
        v = (matrix[1, 0] * x + matrix[1, 1] * y + matrix[1, 2]) / scale - 0.5
        taken = cv2.remap(grey, u.astype(np.float32), v.astype(np.float32), cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
        return taken.reshape(tall, times_y, width, times_x).mean(axis=(1, 3))

    def logits(self, grey, quad):
        return self.recogniser.run(None, {"line": normal(self.crop(grey, quad))[None, None]})[0][0]

    def lattice(self, grey, quad, temperature):
        """Probabilities (steps, classes)."""
        return probabilities(self.logits(grey, quad), temperature)


def size_of(quad):
    across = (np.linalg.norm(quad[1] - quad[0]) + np.linalg.norm(quad[2] - quad[3])) / 2
    down = (np.linalg.norm(quad[3] - quad[0]) + np.linalg.norm(quad[2] - quad[1])) / 2
    return across, down


def grown(quad, beside, above):
    across, down = size_of(quad)
    right, below = (quad[1] - quad[0]) / across * down * beside, (quad[3] - quad[0]) / down * down * above
    return np.array([quad[0] - right - below, quad[1] + right - below, quad[2] + right + below, quad[3] - right + below])


if __name__ == "__main__":
    reader = Reader(sys.argv[1])
    for name in sys.argv[2:]:
        grey = grey_of(name)
        print(name, grey.shape)
        for box in reader.find(grey)[:8]:
            text, share = best_text(reader.lattice(grey, corners(box), 1.0))
            print(f"  {text!r} {share:.2f} score {box[5]:.2f} code {box[6]:.2f} {[round(float(v), 2) for v in box[:5]]}")
