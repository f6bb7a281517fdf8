"""The learning rate over the whole of the training, whatever number of runs it takes."""

import math


def rate(done, warm=0.02, floor=0.01):
    """Share of the peak rate when `done` (0 to 1) of the training is over: a short rise, then half a cosine."""
    if done < warm:
        return 0.05 + 0.95 * done / warm
    return floor + (1 - floor) * 0.5 * (1 + math.cos(math.pi * min(1.0, (done - warm) / (1 - warm))))
