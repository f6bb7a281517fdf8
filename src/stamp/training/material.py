"""Surfaces as height fields: leather grains, weaves, suede, brushed metal, paper."""

import math

import torch

from fields import band, cloud, grid, slopes, unit


def cells(draw, height, width, size):
    """Distance to the nearest of jittered points, minus the second nearest's: the pebbles of a shrunken grain."""
    y, x = grid(height, width, draw.device)
    wobble = cloud(draw, height, width, 1.6, 64.0) * size * 0.12
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
    wobble = cloud(draw, height, width, 1.8, 96.0) * size * 0.15
    turn = draw.uniform(-0.2, 0.2) + draw.chance(0.4) * math.pi / 4
    a = (x * torch.cos(turn) + y * torch.sin(turn) + wobble) * math.pi / size
    b = (y * torch.cos(turn) - x * torch.sin(turn) + wobble) * math.pi / (size * draw.uniform(0.7, 1.4))
    plain = torch.sin(a) * torch.sin(b)
    lines = torch.maximum(torch.sin(a).abs(), torch.sin(b).abs() * draw.chance(0.6))
    mix = draw.chance(0.5)
    return plain * mix + lines * (1 - mix)


def grain(draw, height, width, size):
    """A surface whose root mean square slope is one. `size` is the grain's period in pixels."""
    main = band(draw, height, width, size, draw.uniform(0.25, 0.6), draw.uniform(0, math.pi), draw.log(0.7, 1.8))
    creases = -band(draw, height, width, size * draw.uniform(1, 2.5), 0.4, draw.uniform(0, math.pi), draw.log(1, 3)).abs()
    fine = band(draw, height, width, draw.uniform(2.2, 5), 0.5)
    brushed = band(draw, height, width, draw.uniform(2.5, 8), 0.6, draw.chance(0.5) * math.pi / 2, draw.uniform(8, 40))
    rough = cloud(draw, height, width, draw.uniform(0.8, 1.6), 60.0)
    kinds = torch.rand(draw.count, 5, device=draw.device, generator=draw.generator) ** 4
    kinds = (kinds / kinds.sum(1, keepdim=True)).view(draw.count, 5, 1, 1)
    field = main * kinds[:, 0] + creases * kinds[:, 1] * 1.5 + rough * kinds[:, 2] * 1.2
    field = field + fine * (0.12 + 0.4 * kinds[:, 3])
    metal = draw.chance(0.12)
    field = field * (1 - metal) + brushed * metal
    some = max(1, draw.count // 4)
    chosen = draw.permuted(2 * some)
    part = draw_like(draw, some)
    field[chosen[:some]] = field[chosen[:some]] * 0.3 + unit(cells(part, height, width, size[chosen[:some]] * 1.3)) * 1.5
    field[chosen[some:]] = field[chosen[some:]] * 0.25 + unit(weave(part, height, width, size[chosen[some:]] * 0.7)) * 1.2
    dx, dy = slopes(field)
    return field / (torch.sqrt((dx**2 + dy**2).mean(dim=(1, 2), keepdim=True)) + 1e-6)


def draw_like(draw, count):
    from fields import Draw

    seed = int(torch.randint(1 << 30, (1,), device=draw.device, generator=draw.generator))
    return Draw(count, draw.device, seed)
