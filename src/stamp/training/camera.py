"""What a telephone does to a scene: blur, shake, noise, sharpening, tone and JPEG; and the crop that the reader cuts."""

import math

import torch
import torch.nn.functional as F

from fields import Draw, band, blur_transfer, box, enlarged, filtered, motion_transfer

LUMA = torch.tensor(
    [16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29]
    + [51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121]
    + [120, 101, 72, 92, 95, 98, 112, 100, 103, 99],
    dtype=torch.float32,
).view(8, 8)


def cosines(device):
    k = torch.arange(8, device=device, dtype=torch.float32)
    table = torch.cos((2 * k.view(1, 8) + 1) * k.view(8, 1) * math.pi / 16) / 2
    table[0] /= math.sqrt(2)
    return table


def jpeg(picture, quality):
    """Rounds a grey picture (0 to 255) as JPEG of a quality (batch, 1, 1) does. Sides are multiples of 8."""
    count, height, width = picture.shape
    scale = torch.where(quality < 50, 5000 / quality, 200 - 2 * quality) / 100
    steps = torch.clamp(torch.round(LUMA.to(picture.device) * scale), 1, 255).view(count, 1, 1, 8, 8)
    c = cosines(picture.device)
    blocks = (picture - 128).view(count, height // 8, 8, width // 8, 8).permute(0, 1, 3, 2, 4)
    blocks = torch.round((c @ blocks @ c.T) / steps) * steps
    blocks = c.T @ blocks @ c
    return blocks.permute(0, 1, 3, 2, 4).reshape(count, height, width) + 128


def padded(picture):
    height, width = picture.shape[-2:]
    return F.pad(picture[:, None], (0, -width % 8, 0, -height % 8), mode="replicate")[:, 0]


def burnt(scene, size, seed, share=0.1):
    """Glare that leaves nothing of what it covers, in patches about as large as characters."""
    count, height, width = scene.shape
    draw = Draw(count, scene.device, seed)
    period = torch.as_tensor(size, device=scene.device) * draw.log(0.5, 4) / 2
    patches = band(draw, -(-height // 2), -(-width // 2), period, 0.5, draw.uniform(0, math.pi), draw.log(1, 3))
    covered = torch.sigmoid((enlarged(patches, height, width) - draw.uniform(1.2, 2.4)) * draw.log(4, 15))
    return torch.clamp(scene, max=1.3) + draw.chance(share) * draw.uniform(0.8, 2) * covered


def photograph(scene, seed, rough=1.0, worst=40):
    """Brightness 0 to 1 → a grey photo 0 to 255. `rough` scales noise and blur, `worst` is the lowest JPEG quality."""
    count, height, width = scene.shape
    draw = Draw(count, scene.device, seed)
    sigma = rough * (draw.uniform(0.25, 0.95) + draw.chance(0.15) * draw.uniform(0.3, 1.2))
    transfer = blur_transfer(height, width, sigma)
    shaken = draw.uniform(1, 4.5) * draw.chance(0.14) * rough
    transfer = transfer * motion_transfer(height, width, shaken, draw.uniform(0, math.pi))
    picture = filtered(scene, transfer)
    exposure = draw.log(0.35, 1.0) / (picture.flatten(1)[:, ::13].quantile(0.98, dim=1).view(-1, 1, 1) + 1e-3)
    keep = draw.chance(0.35)
    picture = torch.clamp(picture * (exposure * (1 - keep) + keep), 0, 1)
    level = rough * (draw.uniform(0.002, 0.03) + draw.chance(0.15) * draw.uniform(0, 0.04))
    grainy = draw.white(height, width)
    fat = box(grainy, 3) * 2.5
    mixed = draw.chance(0.5)
    noise = (grainy * mixed + fat * (1 - mixed)) * level * torch.sqrt(picture * 0.8 + 0.2)
    picture = torch.clamp(picture + noise, 0, 1) ** draw.uniform(0.45, 1.1)
    crisp = draw.uniform(0, 1.3) * draw.chance(0.5)
    picture = picture + crisp * (picture - box(picture, 5))
    picture = torch.clamp(picture, 0, 1) * 255
    packed = jpeg(padded(picture), draw.uniform(worst, 96))[:, :height, :width]
    return torch.clamp(torch.round(packed), 0, 255)


def cut(picture, out_height, out_width, per_pixel, centre, seed, strength=1.0):
    """The reader's crop with the errors of a box that a net has found: shift, size, turn, slant, keystone and bend.

    `per_pixel`: pixels of the picture for one of the crop. `centre`: (x, y) of the line's middle, (batch, 2).
    """
    draw = Draw(picture.shape[0], picture.device, seed)
    u = torch.arange(out_width, device=picture.device).view(1, 1, -1) - (out_width - 1) / 2
    v = torch.arange(out_height, device=picture.device).view(1, -1, 1) - (out_height - 1) / 2
    some = 0.4 + 0.6 * draw.chance(0.6)
    far = draw.chance(0.12)  # faint lines are framed badly, mostly too tall
    factor = torch.exp((draw.uniform(-0.22, 0.26) * some * (1 - far) + draw.uniform(-0.3, 0.48) * far) * strength)
    turn = draw.uniform(-1, 1) * some * strength * torch.clamp(2.2 / torch.as_tensor(out_width / 48.0), 0.5, 2.0) * 0.05
    shear = draw.uniform(-0.22, 0.22) * some * strength
    keystone = draw.uniform(-0.12, 0.12) * some * strength / (out_width / 2)
    bend = draw.uniform(-1, 1) * draw.chance(0.4) * 4 * strength / (out_width / 2) ** 2
    x = u * factor + v * shear
    y = v * factor * (1 + keystone * u) + bend * (u**2 - (out_width / 4) ** 2)
    x, y = x * torch.cos(turn) - y * torch.sin(turn), x * torch.sin(turn) + y * torch.cos(turn)
    x = x + draw.uniform(-6, 6) * some * strength
    y = y + draw.uniform(-4, 4) * some * strength
    height, width = picture.shape[-2:]
    gx = (x * per_pixel + centre[:, 0].view(-1, 1, 1) + 0.5) * 2 / width - 1
    gy = (y * per_pixel + centre[:, 1].view(-1, 1, 1) + 0.5) * 2 / height - 1
    where = torch.stack((gx, gy), dim=-1)
    return F.grid_sample(picture[:, None], where, mode="bilinear", padding_mode="border", align_corners=False)[:, 0]


def normal(crop):
    """Mean 0 and deviation 1 of each picture, flat ones left nearly flat."""
    mean = crop.mean(dim=(1, 2), keepdim=True)
    deviation = crop.std(dim=(1, 2), keepdim=True, unbiased=False)
    return torch.clamp((crop - mean) / torch.clamp(deviation, min=4.0), -4, 4)
