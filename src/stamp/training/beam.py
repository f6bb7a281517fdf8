"""From logits to probabilities and to the likeliest text."""

import re

import numpy as np

ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ -./*"


def probabilities(logits, temperature=1.0):
    scaled = logits / temperature
    shifted = np.exp(scaled - scaled.max(axis=1, keepdims=True))
    return shifted / shifted.sum(axis=1, keepdims=True)


def best_text(shares, width=12):
    """Prefix beam search: the likeliest text and its probability, summed over its alignments."""
    beams = {"": (1.0, 0.0)}
    for row in shares:
        likely = [k for k in np.argsort(row)[::-1][:10] if k and row[k] > 1e-4]
        after = {}
        for text, (blank, char) in beams.items():
            a, b = after.get(text, (0.0, 0.0))
            b += char * row[ALPHABET.index(text[-1]) + 1] if text else 0.0
            after[text] = (a + (blank + char) * row[0], b)
            for k in likely:
                letter = ALPHABET[k - 1]
                longer = text + letter
                a, b = after.get(longer, (0.0, 0.0))
                after[longer] = (a, b + (blank if text.endswith(letter) else blank + char) * row[k])
        beams = dict(sorted(after.items(), key=lambda item: -sum(item[1]))[:width])
    text, parts = max(beams.items(), key=lambda item: sum(item[1]))
    return text, float(sum(parts))


def told(text):
    """A text as the extension tells it: nothing for signs around it, a gap for one within."""
    return re.sub(r" *[*] *", " ", text).strip()
