"""Keeps a run's averaged weights in half precision, small enough to travel with the sources, for later training.

usage: python3 keep.py RUN src/stamp/training/checkpoints

The optimiser's state and the last unaveraged weights are left out: training goes on from the average, and the
optimiser finds its pace again within some hundred steps.
"""

import pathlib
import sys

import torch


def kept(saved):
    """{'average': name -> float16 tensor (counters as they are), 'step': int}."""
    halves = {k: v.half() if v.is_floating_point() else v for k, v in saved["average"].items()}
    return {"average": halves, "step": saved["step"]}


def whole(saved):
    """A checkpoint of either kind as one to go on from: float32, the average standing in for what was left out."""
    average = {k: v.float() if v.is_floating_point() else v for k, v in saved["average"].items()}
    return {"net": average, **saved, "average": average}


def widened(saved, classes):
    """A recogniser's checkpoint with as many classes: a new one starts as the mean of the characters, and unlikely."""
    for state in (saved["net"], saved["average"]):
        for name in ("head", "side"):
            weight, bias = state[name + ".weight"], state[name + ".bias"]
            missing = classes - len(bias)
            if missing > 0:
                row = weight[1:].mean(0, keepdim=True).expand(missing, -1)
                state[name + ".weight"] = torch.cat([weight, row])
                state[name + ".bias"] = torch.cat([bias, bias[1:].mean().expand(missing) - 2])
    return saved


def short(state):
    """An optimiser's state with its running means in bfloat16: half the size, and they forget within some steps."""
    if isinstance(state, torch.Tensor):
        return state.bfloat16() if state.is_floating_point() and state.dim() else state
    if isinstance(state, dict):
        return {k: short(v) for k, v in state.items()}
    return state


def opened(state):
    """What `short` made, in 32 bits again."""
    if isinstance(state, torch.Tensor):
        return state.float() if state.is_floating_point() else state
    if isinstance(state, dict):
        return {k: opened(v) for k, v in state.items()}
    return state


if __name__ == "__main__":
    run, folder = map(pathlib.Path, sys.argv[1:])
    folder.mkdir(parents=True, exist_ok=True)
    for name in ("finder.pt", "recogniser.pt"):
        torch.save(kept(torch.load(run / name, map_location="cpu")), folder / name)
        print(name, (folder / name).stat().st_size, "bytes")
