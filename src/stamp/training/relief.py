"""From mask layers to a lit surface: the mark's relief and colour, the material under it, lamps, glare and shadow."""

import math

import torch

from fields import Draw, band, blur, blur_transfer, box, enlarged, filtered, grid, haze, slopes
from material import grain

KINDS = ("blind", "ink", "foil", "engraved", "raised", "plate")
SHARES = (0.52, 0.12, 0.12, 0.07, 0.07, 0.1)


def kinds(draw, fixed=None):
    """One kind of mark a picture, as 0/1 weights by name."""
    if fixed is None:
        shares = torch.tensor(SHARES, device=draw.device).expand(draw.count, -1)
        fixed = torch.multinomial(shares, 1, generator=draw.generator).view(-1)
    return {name: (fixed == i).float().view(-1, 1, 1) for i, name in enumerate(KINDS)}, fixed


def struck(draw, mask, size):
    """The mask as the tool leaves it: stroke width, rounding, uneven depth, worn patches."""
    height, width = mask.shape[-2:]
    soft = blur(mask, size * draw.uniform(0.008, 0.03))
    cut = draw.uniform(0.16, 0.5)
    mark = torch.clamp((soft - cut) / draw.uniform(0.15, 0.4) + 0.5, 0, 1)
    y, x = grid(height, width, draw.device)
    turn = draw.uniform(0, 2 * math.pi)
    ramp = ((x - width / 2) * torch.cos(turn) + (y - height / 2) * torch.sin(turn)) / (size * draw.uniform(2, 8))
    uneven = 1 - draw.uniform(0, 0.6) * draw.chance(0.6) * torch.clamp(0.5 + ramp, 0, 1)
    worn = band(draw, -(-height // 2), -(-width // 2), size * draw.log(0.05, 0.6), 0.6)
    worn = torch.sigmoid((enlarged(worn, height, width) + draw.uniform(0.9, 3.0)) * 4)
    hurt = draw.chance(0.35)
    return mark * uneven * (1 - hurt + hurt * worn), mark


def lamp(draw, dx, dy, low, high):
    """Light of one lamp on a slope, one on the flat, and the highlight it leaves."""
    turn = draw.uniform(0, 2 * math.pi)
    rise = draw.uniform(low, high) * math.pi / 180
    lx, ly, lz = torch.cos(rise) * torch.cos(turn), torch.cos(rise) * torch.sin(turn), torch.sin(rise)
    length = torch.rsqrt(dx**2 + dy**2 + 1)
    lit = torch.clamp((-dx * lx - dy * ly + lz) * length, min=0)
    hx, hy, hz = lx, ly, lz + 1
    norm = torch.rsqrt(hx**2 + hy**2 + hz**2)
    half = torch.clamp((-dx * hx - dy * hy + hz) * length * norm, 0, 1)
    return lit / lz, half


def colours(draw, kind, mark, full, size, layers):
    """Brightness of the material with its print: ink, foil, scorched leather, plate."""
    height, width = mark.shape[-2:]
    base = draw.uniform(0.06, 0.85) ** 1.2
    base = base * (1 - kind["plate"]) + kind["plate"] * (draw.chance(0.7) * draw.uniform(0.55, 0.95) + draw.uniform(0.03, 0.3))
    mottle = haze(draw, height, width, 1.3, 120.0, 4) + 0.3 * box(draw.white(height, width), 3) * draw.uniform(0, 1)
    ground = base * (1 + 0.12 * draw.uniform(0, 1) ** 2 * mottle)
    patch = layers.get("patch")
    if patch is not None:
        other = draw.uniform(0.05, 0.9)
        ground = ground * patch + other * (1 + 0.12 * draw.uniform(0, 1) ** 2 * mottle) * (1 - patch)
    if "print" in layers:
        ground = ground + layers["print"] * draw.uniform(0.05, 0.5)
    ground = torch.clamp(ground, 0.02, 1)
    scorch = draw.uniform(-0.4, 0.1) * draw.chance(0.45) * (kind["blind"] + kind["raised"])
    ground = ground * (1 + scorch * full)
    away = torch.where(base > 0.45, -1.0, 1.0) * torch.where(draw.uniform(0, 1) < 0.12, -1.0, 1.0)
    gap = draw.uniform(0.1, 0.6) * (1 - kind["plate"]) + kind["plate"] * draw.uniform(0.3, 0.8)
    ink = torch.clamp(base + away * gap, 0.02, 1)
    shine = 0.5 + draw.uniform(0.1, 0.5) * haze(draw, height, width, 1.5, 200.0)
    foil = torch.clamp(shine * draw.uniform(0.5, 1.1), 0.05, 1.2)
    inked = kind["ink"] + kind["plate"] + kind["engraved"] * draw.chance(0.4)
    cover = mark * draw.uniform(0.65, 1)
    ground = ground * (1 - cover * inked) + ink * cover * inked
    return ground * (1 - mark * kind["foil"]) + foil * mark * kind["foil"], base


def surface(draw, kind, mark, full, size, layers, hard):
    """The height field: the mark's depth, its rim, the grain that it flattens, and things that are no mark."""
    height, width = mark.shape[-2:]
    edge = size * draw.uniform(0.012, 0.06)
    steep = draw.log(0.3, 1.8) * (1 - hard) + hard * draw.log(0.2, 0.7)
    flat = kind["ink"] + kind["plate"] * draw.chance(0.6)
    steep = steep * (1 - flat * draw.uniform(0.7, 1))
    sign = torch.where(kind["raised"] + kind["plate"] > 0, 1.0, -1.0)
    near, far = blur_transfer(height, width, edge), blur_transfer(height, width, edge * 2.5)
    rim = draw.uniform(0, 2.5) * draw.chance(0.4)
    shape = filtered(mark, (sign * 2.5 * near + (far - near) * rim) * steep * edge)
    bumpy = draw.log(0.02, 0.27) * (1 - hard) + hard * draw.log(0.12, 0.5)
    strength = bumpy * torch.clamp(steep * 1.3, min=0.25) * (1 - 0.6 * kind["engraved"])
    strength = strength * (1 - kind["plate"] * draw.uniform(0.6, 1))
    period = layers.get("period")
    if period is None:
        period = size * draw.log(0.05, 0.7)
    texture = grain(draw, height, width, torch.clamp(period, min=2.5)) * strength
    texture = texture * (1 - draw.uniform(0, 0.9) * full)
    if "patch" in layers:
        texture = texture * (1 - layers["patch"] * draw.uniform(0, 1) * draw.chance(0.5))
    result = shape + texture
    if "height" in layers:
        result = result + layers["height"] * draw.log(0.5, 5)
    swell = haze(draw, height, width, 2.2, 300.0, 16) * draw.uniform(0, 2.5)
    return result + swell


def render(layers, size, seed, fixed=None, hard_share=0.15):
    """Brightness of a batch of scenes, 0 to about 1.2. `layers['mark']` and the rest are (batch, height, width), 0 to 1."""
    mask = layers["mark"]
    count, height, width = mask.shape
    draw = Draw(count, mask.device, seed)
    kind, chosen = kinds(draw, fixed)
    hard = draw.chance(hard_share)
    mark, full = struck(draw, mask, size)
    relief = surface(draw, kind, mark, full, size, layers, hard)
    albedo, base = colours(draw, kind, mark, full, size, layers)
    dx, dy = slopes(relief)
    lit, half = lamp(draw, dx, dy, 18, 75)
    second, _ = lamp(draw, dx, dy, 30, 85)
    share = draw.uniform(0, 0.6) * draw.chance(0.5)
    lit = lit * (1 - share) + second * share
    ambient = draw.uniform(0.1, 0.65)
    dip = torch.clamp(box(relief, 5) - relief, min=0) / 2
    light = ambient * torch.exp(-dip * draw.uniform(0, 3)) + (1 - ambient) * lit
    power = draw.log(4, 90)
    gloss = draw.uniform(0, 0.5) * draw.chance(0.6) + 0.4 * mark * kind["foil"] + 0.25 * kind["engraved"]
    shine = gloss * half**power
    return light_field(draw, torch.clamp(albedo * light, max=2) + shine, half, size), chosen


def light_field(draw, picture, half, size):
    """Falling-off light, a shadow's edge, a flash's glare."""
    height, width = picture.shape[-2:]
    y, x = grid(height, width, draw.device)
    u, v = x / max(height, width) - 0.5 * width / max(height, width), y / max(height, width) - 0.5 * height / max(height, width)
    turn = draw.uniform(0, 2 * math.pi)
    along = u * torch.cos(turn) + v * torch.sin(turn)
    picture = picture * torch.clamp(1 + draw.uniform(0, 1.2) * along, min=0.15)
    turn = draw.uniform(0, 2 * math.pi)
    across = u * torch.cos(turn) + v * torch.sin(turn) - draw.uniform(-0.4, 0.4)
    shade = torch.sigmoid(across / draw.log(0.004, 0.1))
    picture = picture * (1 - draw.uniform(0.2, 0.65) * draw.chance(0.25) * shade)
    away = ((u - draw.uniform(-0.6, 0.6)) ** 2 + (v - draw.uniform(-0.4, 0.4)) ** 2) / draw.log(0.004, 0.12)
    return picture + draw.uniform(0.2, 1.0) * draw.chance(0.2) * torch.exp(-away) * half**3
