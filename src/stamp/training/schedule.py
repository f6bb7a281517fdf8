"""The learning rate over the whole of the training, whatever number of runs it takes; and a clock for the accelerator."""

import math
import time

import torch

FUSED = {"fused": True} if torch.cuda.is_available() else {}


def rate(done, warm=0.02, floor=0.01):
    """Share of the peak rate when `done` (0 to 1) of the training is over: a short rise, then half a cosine."""
    if done < warm:
        return 0.05 + 0.95 * done / warm
    return floor + (1 - floor) * 0.5 * (1 + math.cos(math.pi * min(1.0, (done - warm) / (1 - warm))))


def set_rate(optimiser, args, spent, steps):
    """Sets the rate of a run that is over to a share of `spent` and made `steps`; its first 150 steps warm up afresh."""
    done = args.span[0] + (args.span[1] - args.span[0]) * spent
    for group in optimiser.param_groups:
        group["lr"] = args.peak * min(1, (steps + 1) / 150) * rate(done)


class Clock:
    """Milliseconds of the accelerator's work between two splits; where it is off, nothing waits and splits are 0."""

    def __init__(self, on):
        self.on = on
        self.split()

    def split(self):
        if not self.on:
            return 0.0
        torch.cuda.synchronize()
        now = time.time()
        spent, self.last = now - getattr(self, "last", now), now
        return spent * 1000


def step_unless_broken(optimiser, norm):
    """Leaves a batch out whose gradient is not finite; the fused step decides that without anything waiting."""
    if FUSED:
        optimiser.found_inf = (~torch.isfinite(norm)).float()
        optimiser.step()
    elif torch.isfinite(norm):
        optimiser.step()
