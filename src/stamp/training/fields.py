"""Random fields and filters on batches of pictures, all through the Fourier transform: one cost for every width."""

import math

import torch
import torch.nn.functional as F


class Draw:
    """Random numbers for a batch, from one seeded generator, shaped to broadcast over (batch, height, width)."""

    def __init__(self, count, device, seed):
        self.count = count
        self.device = device
        self.generator = torch.Generator(device=device)
        self.generator.manual_seed(seed)
        self.seed = seed

    def uniform(self, low, high):
        return torch.rand(self.count, 1, 1, device=self.device, generator=self.generator) * (high - low) + low

    def log(self, low, high):
        return torch.exp(self.uniform(math.log(low), math.log(high)))

    def chance(self, share):
        return (self.uniform(0, 1) < share).float()

    def white(self, height, width):
        return torch.randn(self.count, height, width, device=self.device, generator=self.generator)

    def part(self, count, number):
        """Another source of random numbers, for some of the batch."""
        return Draw(count, self.device, self.seed * 31 + number)


def frequencies(height, width, device):
    fy = torch.fft.fftfreq(height, device=device).view(1, -1, 1)
    fx = torch.fft.rfftfreq(width, device=device).view(1, 1, -1)
    return fy, fx


def filtered(picture, transfer):
    return torch.fft.irfft2(torch.fft.rfft2(picture) * transfer, s=picture.shape[-2:])


def unit(field):
    field = field - field.mean(dim=(1, 2), keepdim=True)
    return field / (field.std(dim=(1, 2), keepdim=True) + 1e-6)


def band(draw, height, width, period, spread, angle=0.0, stretch=1.0):
    """Noise whose waves are about `period` pixels long; `stretch` above 1 draws it out along `angle`."""
    fy, fx = frequencies(height, width, draw.device)
    angle = torch.as_tensor(angle, device=draw.device)
    along = fx * torch.cos(angle) + fy * torch.sin(angle)
    across = -fx * torch.sin(angle) + fy * torch.cos(angle)
    distance = torch.sqrt((along * stretch) ** 2 + across**2) + 1e-6
    shape = torch.exp(-((torch.log(distance * period)) ** 2) / (2 * spread**2))
    return unit(filtered(draw.white(height, width), shape))


def cloud(draw, height, width, slope, longest):
    """Noise of all sizes up to `longest` pixels, weaker the finer."""
    fy, fx = frequencies(height, width, draw.device)
    distance = torch.sqrt(fy**2 + fx**2)
    return unit(filtered(draw.white(height, width), (distance + 1 / longest) ** (-slope)))


def enlarged(field, height, width):
    return F.interpolate(field[:, None], (height, width), mode="bicubic", align_corners=False)[:, 0]


def haze(draw, height, width, slope, longest, step=8):
    """A cloud without fine parts, made small and enlarged: a twentieth of the cost."""
    return enlarged(cloud(draw, -(-height // step) + 2, -(-width // step) + 2, slope, longest / step), height, width)


def box(picture, side):
    """Mean over a square of odd side, as sums of shifted copies: faster than pooling without an accelerator."""
    height, width = picture.shape[-2:]
    padded = F.pad(picture[:, None], (side // 2,) * 4, mode="replicate")[:, 0]
    rows = sum(padded[:, i : i + height] for i in range(side))
    return sum(rows[:, :, i : i + width] for i in range(side)) / side**2


def blur_transfer(height, width, sigma):
    fy, fx = frequencies(height, width, sigma.device)
    return torch.exp(-2 * math.pi**2 * sigma**2 * (fy**2 + fx**2))


def blur(picture, sigma):
    return filtered(picture, blur_transfer(*picture.shape[-2:], sigma))


def motion_transfer(height, width, length, angle):
    fy, fx = frequencies(height, width, length.device)
    return torch.sinc(length * (fx * torch.cos(angle) + fy * torch.sin(angle)))


def slopes(height):
    """Rise per pixel to the right and downwards."""
    dx = (torch.roll(height, -1, 2) - torch.roll(height, 1, 2)) / 2
    dy = (torch.roll(height, -1, 1) - torch.roll(height, 1, 1)) / 2
    return dx, dy


def grid(height, width, device):
    y = torch.arange(height, device=device, dtype=torch.float32).view(1, -1, 1)
    x = torch.arange(width, device=device, dtype=torch.float32).view(1, 1, -1)
    return y, x
