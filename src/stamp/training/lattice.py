"""Labels for CTC, free greedy reading, and exactness on rendered validation lines."""

import numpy as np
import torch

import crops
from emblems import SIGN
from nets import ALPHABET
from relief import KINDS

CLASS = np.zeros(128, np.int64)
CLASS[[ord(char) for char in ALPHABET]] = np.arange(1, len(ALPHABET) + 1)


def encode(texts, device):
    """Class numbers of all texts in one row on the device, and lengths on the processor, where the loss wants them."""
    labels = CLASS[np.frombuffer("".join(texts).encode("ascii"), np.uint8)]
    lengths = torch.tensor([len(text) for text in texts], dtype=torch.long)
    return torch.from_numpy(labels).to(device, non_blocking=True), lengths


def greedy(logits):
    """Best class of each step, repeats and blanks removed."""
    texts = []
    for row in logits.argmax(2).tolist():
        out, last = [], 0
        for k in row:
            if k != last and k:
                out.append(ALPHABET[k - 1])
            last = k
        texts.append("".join(out))
    return texts


@torch.no_grad()
def exact_by_kind(net, atlas, device, batches, seed=900001, size=128):
    """Share of lines read exactly, all without signs and by kind of mark, those with signs, and of empty crops that stay empty."""
    lines = iter(crops.Lines(atlas, seed, size))
    right = {name: [0, 0] for name in (*KINDS, "all", "signs", "empty")}
    for _ in range(batches):
        batch = next(lines)
        images, kinds = crops.shoot(batch, device)
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            logits = net(images)
        for text, read, kind in zip(batch["texts"], greedy(logits.float()), kinds.tolist()):
            for name in ("signs",) if SIGN in text else (KINDS[kind], "all") if text else ("empty",):
                right[name][0] += text == read
                right[name][1] += 1
    return {name: f"{a / max(1, b):.3f} of {b}" for name, (a, b) in right.items()}
