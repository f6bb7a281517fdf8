"""Surfaces as height fields: leather grains, weaves, suede, brushed metal, paper."""

import math

import torch

from fields import band, box, cloud, grid, haze, slopes, unit


def cells(draw, height, width, size):
    """Distance to the nearest of jittered points, minus the second nearest's: the pebbles of a shrunken grain."""
    y, x = grid(height, width, draw.device)
    wobble = haze(draw, height, width, 1.6, 64.0, 4) * size * 0.12
    stretch = draw.uniform(0.75, 1.3)
    y, x = (y + wobble) / size, (x - wobble) / (size * stretch)
    row, column = torch.floor(y), torch.floor(x)
    seed = draw.uniform(0, 500)
    first = torch.full_like(y + x, 9.0)
    second = first.clone()
    for down in (-1, 0, 1):
        for right in (-1, 0, 1):
            r, c = row + down, column + right
            hashed = torch.sin(r * 127.1 + c * 311.7 + seed) * 43758.5453
            py = r + hashed - torch.floor(hashed)
            hashed = torch.sin(r * 269.5 + c * 183.3 + seed) * 24634.6345
            px = c + hashed - torch.floor(hashed)
            distance = (py - y) ** 2 + (px - x) ** 2
            second = torch.minimum(second, torch.maximum(first, distance))
            first = torch.minimum(first, distance)
    edge = torch.sqrt(second) - torch.sqrt(first)
    return 1 - torch.exp(-edge * draw.uniform(2.5, 9))


def weave(draw, height, width, size):
    """Canvas, twill or the crossed lines of a pressed grain."""
    y, x = grid(height, width, draw.device)
    wobble = haze(draw, height, width, 1.8, 96.0, 4) * size * 0.15
    turn = draw.uniform(-0.2, 0.2) + draw.chance(0.4) * math.pi / 4
    a = (x * torch.cos(turn) + y * torch.sin(turn) + wobble) * math.pi / size
    b = (y * torch.cos(turn) - x * torch.sin(turn) + wobble) * math.pi / (size * draw.uniform(0.7, 1.4))
    plain = torch.sin(a) * torch.sin(b)
    lines = torch.maximum(torch.sin(a).abs(), torch.sin(b).abs() * draw.chance(0.6))
    mix = draw.chance(0.5)
    return plain * mix + lines * (1 - mix)


def bands(draw, height, width, size):
    return band(draw, height, width, size, draw.uniform(0.25, 0.6), draw.uniform(0, math.pi), draw.log(0.7, 1.8))


def creases(draw, height, width, size):
    lines = band(draw, height, width, size * draw.uniform(1, 2.5), 0.4, draw.uniform(0, math.pi), draw.log(1, 3))
    return -(lines.abs() ** draw.uniform(0.5, 1))


def rough(draw, height, width, size):
    return cloud(draw, height, width, draw.uniform(0.8, 1.6), 60.0)


def brushed(draw, height, width, size):
    turn = draw.chance(0.4) * math.pi / 2 + draw.uniform(-0.1, 0.1)
    return band(draw, height, width, draw.uniform(2.5, 8), 0.6, turn, draw.uniform(8, 40))


SURFACES = (bands, creases, cells, weave, rough, bands, cells, brushed)


def grain(draw, height, width, size):
    """A surface whose root mean square slope is one. `size` is the grain's period in pixels.

    Each part of the batch gets one kind of surface; what stands where in a batch is random anyway.
    """
    edges = [round(draw.count * i / len(SURFACES)) for i in range(len(SURFACES) + 1)]
    parts = []
    for i, kind in enumerate(SURFACES):
        count = edges[i + 1] - edges[i]
        if count:
            part = kind(draw.part(count, i), height, width, size[edges[i] : edges[i + 1]])
            parts.append(unit(part))
    field = torch.cat(parts)
    fine = box(draw.white(height, width), 3) * 3
    coarse = haze(draw, height, width, 1.6, 120.0)
    field = field + fine * draw.uniform(0, 1) ** 2 * 0.6 + coarse * draw.uniform(0, 1) ** 2 * 0.3
    dx, dy = slopes(field)
    return field / (torch.sqrt((dx**2 + dy**2).mean(dim=(1, 2), keepdim=True)) + 1e-6)
