"""Fits the temperature on rendered lines of the fonts held back, and says how far the probabilities can be trusted.

usage: python3 calibrate.py CHECKPOINTS HELD.npz BATCHES [KEEP.pt]     (KEEP holds the answers for another look)
Half of the lines fit the temperature, the other half give the figures.
"""

import pathlib
import sys

import numpy as np
import torch
import torch.nn.functional as F

import crops
from beam import best_text, probabilities
from export import averaged
from lattice import encode
from nets import Recogniser
from relief import KINDS

SEED = 700001


@torch.no_grad()
def answers(net, atlas, batches, size=64):
    """(logits, text, kind) of each line."""
    lines, made = iter(crops.Lines(atlas, SEED, size, pool=4)), []
    for _ in range(batches):
        batch = next(lines)
        images, kinds = crops.shoot(batch, "cpu")
        logits = net(images).numpy()
        made += [(row, text, KINDS[kind]) for row, text, kind in zip(logits, batch["texts"], kinds.tolist())]
        print(len(made), file=sys.stderr, flush=True)
    return made


def surprise(made, temperature):
    """Mean negative logarithm of the right text's probability, each held at 12 so that the unreadable do not decide."""
    total = []
    for logits, text, _ in made:
        scores = F.log_softmax(torch.from_numpy(logits) / temperature, dim=1)[:, None]
        labels, lengths = encode([text], "cpu")
        steps = torch.tensor([len(logits)])
        total.append(min(12.0, float(F.ctc_loss(scores, labels, steps, lengths, reduction="sum", zero_infinity=True))))
    return float(np.mean(total))


def calibration_error(shares, right, bins=10):
    """Expected calibration error: bins of equal width, weighted by how many fall in."""
    shares, right = np.array(shares), np.array(right, float)
    index = np.minimum((shares * bins).astype(int), bins - 1)
    rows = [(index == b) for b in range(bins)]
    error = sum(m.sum() * abs(shares[m].mean() - right[m].mean()) for m in rows if m.any()) / len(shares)
    table = [(int(m.sum()), round(float(shares[m].mean()), 3), round(float(right[m].mean()), 3)) for m in rows if m.any()]
    return float(error), table


def kept_answers(folder, atlas, batches, keep):
    if keep and pathlib.Path(keep).exists():
        return torch.load(keep)
    made = answers(averaged(Recogniser(), pathlib.Path(folder) / "recogniser.pt"), atlas, batches)
    if keep:
        torch.save(made, keep)
    return made


def main(folder, atlas, batches, keep=None):
    torch.set_num_threads(1)
    made = kept_answers(folder, atlas, batches, keep)
    fit, test = made[::2], made[1::2]
    grid = np.arange(0.4, 1.61, 0.1)
    costs = [surprise(fit, float(t)) for t in grid]
    temperature = float(grid[int(np.argmin(costs))])
    print("temperature", round(temperature, 2), [round(c, 3) for c in costs])
    for other in (0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.3):
        reads = [(*best_text(probabilities(logits, other)), text) for logits, text, _ in fit if text]
        error, _ = calibration_error([r[1] for r in reads if r[0]], [r[0] == r[2] for r in reads if r[0]])
        print(f"  at {other}: calibration error {error:.3f} on the fitting half")
    reads = [(*best_text(probabilities(logits, temperature)), text, kind) for logits, text, kind in test]
    coded = [r for r in reads if r[2]]
    error, table = calibration_error([r[1] for r in coded if r[0]], [r[0] == r[2] for r in coded if r[0]])
    print(f"lines {len(coded)}, exact {np.mean([r[0] == r[2] for r in coded]):.3f}, calibration error {error:.3f}", table)
    for kind in KINDS:
        some = [r[0] == r[2] for r in coded if r[3] == kind]
        print(f"  {kind}: {np.mean(some):.3f} of {len(some)}")
    for level in (0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.95):
        kept = [r[0] == r[2] for r in coded if r[0] and r[1] >= level]
        print(f"  level {level}: read {sum(kept) / len(coded):.3f}, wrong but accepted {(len(kept) - sum(kept)) / len(coded):.4f}")


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], int(sys.argv[3]), *sys.argv[4:5])
