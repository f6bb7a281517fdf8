"""The two nets. Both see grey pictures of mean 0 and deviation 1."""

import torch
import torch.nn.functional as F
from torch import nn

ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ -./*"  # class 0 is the blank, class i + 1 is ALPHABET[i]; * is any sign


def conv(inside, outside, kernel=3, stride=1, groups=1, act=True):
    if isinstance(kernel, int):
        kernel = (kernel, kernel)
    pad = tuple(k // 2 for k in kernel)
    layers = [nn.Conv2d(inside, outside, kernel, stride, pad, groups=groups, bias=False), nn.BatchNorm2d(outside)]
    return nn.Sequential(*layers, nn.ReLU()) if act else nn.Sequential(*layers)


class Residual(nn.Module):
    """Two full convolutions, the cheap way to use many pixels at once where the map is small."""

    def __init__(self, width, inner=None):
        super().__init__()
        inner = inner or width
        self.body = nn.Sequential(conv(width, inner), conv(inner, width, act=False))

    def forward(self, x):
        return F.relu(x + self.body(x))


class Dense(nn.Module):
    """A residual block of full convolutions that leaves the sign of what it is given."""

    def __init__(self, width, inner):
        super().__init__()
        self.body = nn.Sequential(conv(width, inner), conv(inner, width, act=False))

    def forward(self, x):
        return x + self.body(x)


class Inverted(nn.Module):
    """Depthwise, then a widening and a narrowing product."""

    def __init__(self, width, wider, kernel=5):
        super().__init__()
        self.body = nn.Sequential(
            conv(width, width, kernel, groups=width, act=False), conv(width, wider, 1), conv(wider, width, 1, act=False)
        )

    def forward(self, x):
        return x + self.body(x)


class Mixer(nn.Module):
    """A residual block along the line: wide depthwise convolution, then attention over the whole line."""

    def __init__(self, width, heads=4, kernel=7):
        super().__init__()
        self.near = nn.Sequential(conv(width, width, (1, kernel), groups=width, act=False))
        self.wide = nn.Sequential(conv(width, 2 * width, 1), nn.Dropout(0.05), conv(2 * width, width, 1, act=False))
        self.norm = nn.LayerNorm(width)
        self.ask = nn.Linear(width, 3 * width)
        self.answer = nn.Linear(width, width)
        self.heads = heads

    def forward(self, x):
        x = x + self.wide(self.near(x))
        line = x.squeeze(2).transpose(1, 2)
        return x + self.attend(line).transpose(1, 2).unsqueeze(2)

    def attend(self, line):
        width = self.answer.out_features  # not read off the line: the exported net would cast a length
        count, each = line.shape[0], width // self.heads
        parts = self.ask(self.norm(line)).view(count, -1, 3, self.heads, each).permute(2, 0, 3, 1, 4)
        query, key, value = parts[0], parts[1], parts[2]
        weight = torch.softmax(query @ key.transpose(2, 3) * each**-0.5, dim=3)
        return self.answer((weight @ value).transpose(1, 2).reshape(count, -1, width))


class Recogniser(nn.Module):
    """(batch, 1, 48, width) → logits (batch, width / 4, 42)."""

    def __init__(self, widths=(32, 56, 96, 144), line=192, mixers=7, classes=len(ALPHABET) + 1):
        super().__init__()
        a, b, c, d = widths
        self.body = nn.Sequential(
            conv(1, a, 3, 2),
            Residual(a),
            Dense(a, a),
            conv(a, b, 3, (2, 1)),
            Inverted(b, 2 * b),
            *[Dense(b, 48) for _ in range(2)],
            conv(b, c, 3, (1, 2)),
            Residual(c, 48),
            Inverted(c, 2 * c),
            *[Dense(c, 64) for _ in range(2)],
            conv(c, d, 3, (2, 1)),
            Residual(d, 80),
            Inverted(d, 2 * d),
            Dense(d, 64),
            Inverted(d, 2 * d),
            *[Dense(d, 96) for _ in range(2)],
            Inverted(d, 2 * d),
        )
        self.down = nn.Sequential(nn.Conv2d(d, line, (6, 1), bias=False), nn.BatchNorm2d(line), nn.ReLU())
        self.mix = nn.Sequential(*[Mixer(line) for _ in range(mixers)])
        self.head = nn.Linear(line, classes)
        self.side = nn.Linear(line, classes)  # before the mixers: keeps the shapes honest in training

    def forward(self, x):
        early = self.down(self.body(x))
        logits = self.head(self.mix(early).squeeze(2).transpose(1, 2))
        return (logits, self.side(early.squeeze(2).transpose(1, 2))) if self.training else logits


class Finder(nn.Module):
    """(batch, 1, h, w), sides multiples of 32 → (batch, 8, h / 4, w / 4).

    Channels: core logit, code logit, log distances to top, bottom, left and right in units of 8 px, sine and cosine.
    """

    def __init__(self, widths=(16, 40, 72, 112), side=24):
        super().__init__()
        a, b, c, d = widths
        self.stem = nn.Sequential(conv(1, 10, 5, 2), conv(10, a, 3, 2), Residual(a))
        self.s8 = nn.Sequential(conv(a, b, 3, 2), *[Inverted(b, 2 * b) for _ in range(3)], Dense(b, 32))
        self.s16 = nn.Sequential(conv(b, c, 3, 2), *[Inverted(c, 3 * c) for _ in range(3)], Dense(c, 56), Inverted(c, 3 * c))
        self.s32 = nn.Sequential(conv(c, d, 3, 2), *[Inverted(d, 3 * d) for _ in range(3)], Dense(d, 80), Inverted(d, 3 * d))
        self.lateral = nn.ModuleList([nn.Conv2d(w, side, 1) for w in (a, b, c, d)])
        self.smooth = nn.ModuleList([Inverted(side, 2 * side) for _ in range(3)])
        self.last = conv(side, side, 3)
        self.head = nn.Conv2d(side, 8, 1)

    def forward(self, x):
        stages = [self.stem(x)]
        for stage in (self.s8, self.s16, self.s32):
            stages.append(stage(stages[-1]))
        top = self.lateral[3](stages[3])
        for i in (2, 1, 0):
            top = F.interpolate(top, scale_factor=2.0, mode="nearest") + self.lateral[i](stages[i])
            top = self.smooth[i](top)
        return self.head(self.last(top))


class Average:
    """An exponential mean of the weights; the mean is what is exported."""

    def __init__(self, net, keep=0.9993):
        self.keep, self.step = keep, 0
        self.state = {k: v.detach().clone() for k, v in net.state_dict().items()}

    @torch.no_grad()
    def update(self, net):
        self.step += 1
        keep = min(self.keep, self.step / (self.step + 10))
        mine, theirs = [], []
        for name, value in net.state_dict().items():
            if value.dtype.is_floating_point:
                mine.append(self.state[name])
                theirs.append(value)
            else:
                self.state[name].copy_(value)
        torch._foreach_mul_(mine, keep)
        torch._foreach_add_(mine, theirs, alpha=1 - keep)


def cost(net, shape):
    """Multiplications of one run, counted by hooks, and parameters."""
    total = [0]

    def count(module, _, out):
        if isinstance(module, nn.Conv2d):
            total[0] += out.numel() * module.weight.numel() // module.out_channels
        else:
            total[0] += out.numel() * module.in_features

    hooks = [m.register_forward_hook(count) for m in net.modules() if isinstance(m, (nn.Conv2d, nn.Linear))]
    net.eval()(torch.zeros(shape))
    for hook in hooks:
        hook.remove()
    return total[0], sum(p.numel() for p in net.parameters())


if __name__ == "__main__":
    for name, net, shape in (("recogniser", Recogniser(), (1, 1, 48, 256)), ("finder", Finder(), (1, 1, 704, 960))):
        macs, parameters = cost(net, shape)
        print(f"{name}: {2 * macs / 1e9:.2f} GFLOP at {shape[2]}x{shape[3]}, {parameters / 1e6:.2f} M parameters")
