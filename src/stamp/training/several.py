"""One net learnt on several accelerators: every process has batches of its own, and all take the same steps.

RANK, WORLD_SIZE, MASTER_ADDR and MASTER_PORT say who is there; without them a process is alone.
"""

import atexit
import os

import torch
import torch.distributed as dist


class Team:
    """The processes that learn one net."""

    def __init__(self, device):
        self.size = int(os.environ.get("WORLD_SIZE", 1))
        self.rank = int(os.environ.get("RANK", 0))
        if self.size > 1:
            dist.init_process_group("cuda:nccl,cpu:gloo" if device == "cuda" else "gloo")
            atexit.register(dist.destroy_process_group)

    def mean(self, net):
        """Replaces every gradient by its mean over the team; the same numbers for all."""
        if self.size == 1:
            return
        gradients = [p.grad for p in net.parameters()]
        flat = torch.cat([g.reshape(-1) for g in gradients])
        dist.all_reduce(flat)
        flat /= self.size
        at = 0
        for gradient in gradients:
            gradient.copy_(flat[at : at + gradient.numel()].view_as(gradient))
            at += gradient.numel()

    def first(self, value):
        """A number of the first process, the same for all: one clock and one end."""
        if self.size == 1:
            return value
        told = torch.tensor([value], dtype=torch.float64)
        dist.broadcast(told, 0)
        return float(told)
