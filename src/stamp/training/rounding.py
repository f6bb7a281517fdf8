"""How the recogniser's weights are rounded for the file: to 4 bits in blocks, to 8 bits a row, or not at all.

A row is what makes one output. Rounding a row times a number is that number times the rounded row, so the scales of the
normalisations may be taken into the weights before or after.
"""

import torch

from bits import BLOCK, bits_of


def in_blocks(rows):
    """(rows, n) → (rows, blocks, BLOCK), filled up with zeros."""
    missing = -rows.shape[1] % BLOCK
    return torch.nn.functional.pad(rows, (0, missing)).view(rows.shape[0], -1, BLOCK)


def coarse(rows):
    """(rows, n) → whole numbers of -8 to 7 and scales, (rows, blocks, BLOCK) and (rows, blocks, 1).

    The number farthest from nought in a block becomes -8, so that all sixteen steps are used.
    """
    parts = in_blocks(rows)
    far = parts.gather(2, parts.abs().argmax(2, keepdim=True))
    scale = torch.where(far == 0, torch.ones_like(far), far / -8)
    return torch.clamp(torch.round(parts / scale), -8, 7), scale


def fine(rows):
    """(rows, n) → whole numbers of -127 to 127 and scales, (rows, n) and (rows, 1)."""
    scale = rows.abs().amax(1, keepdim=True).clamp(min=1e-8) / 127
    return torch.round(rows / scale), scale


def rounded(weight):
    """A weight as it comes back from the file."""
    bits, rows = bits_of(weight.shape), weight.flatten(1) if weight.dim() > 1 else weight
    if bits == 32:
        return weight
    if bits == 8:
        numbers, scale = fine(rows)
        return (numbers * scale).view_as(weight)
    numbers, scale = coarse(rows)
    return (numbers * scale).flatten(1)[:, : rows.shape[1]].reshape(weight.shape)


class Rounded:
    """Inside of `with`, a net has its weights as they come back from the file; after it, the whole ones again.

    Gradients taken inside are kept, so a step after it moves the whole weights by what the rounded ones ask for.
    """

    def __init__(self, net, on=True):
        self.weights = [p for p in net.parameters() if bits_of(p.shape) < 32] if on else []

    @torch.no_grad()
    def __enter__(self):
        self.whole = [p.detach().clone() for p in self.weights]
        for weight in self.weights:
            weight.copy_(rounded(weight))

    @torch.no_grad()
    def __exit__(self, *_):
        for weight, whole in zip(self.weights, self.whole):
            weight.copy_(whole)
