"""Labels for CTC, free greedy reading, and exactness on rendered validation lines."""

import torch

import crops
from nets import ALPHABET
from relief import KINDS


def encode(texts, device):
    """Padded class numbers on the device, and lengths on the processor, where the loss wants them."""
    longest = max(1, max(len(t) for t in texts))
    labels = torch.zeros(len(texts), longest, dtype=torch.long)
    for row, text in enumerate(texts):
        for column, char in enumerate(text):
            labels[row, column] = ALPHABET.index(char) + 1
    lengths = torch.tensor([len(t) for t in texts], dtype=torch.long)
    return labels.to(device, non_blocking=True), lengths


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
    """Share of lines read exactly, all and by kind of mark, and of empty crops that stay empty."""
    lines = iter(crops.Lines(atlas, seed, size))
    right = {name: [0, 0] for name in (*KINDS, "all", "empty")}
    for _ in range(batches):
        batch = next(lines)
        images, kinds = crops.shoot(batch, device)
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            logits = net(images)
        for text, read, kind in zip(batch["texts"], greedy(logits.float()), kinds.tolist()):
            for name in (KINDS[kind], "all") if text else ("empty",):
                right[name][0] += text == read
                right[name][1] += 1
    return {name: f"{a / max(1, b):.3f} of {b}" for name, (a, b) in right.items()}
