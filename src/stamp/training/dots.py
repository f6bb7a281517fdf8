"""Dot-matrix type: characters of five by seven dots, as needle printers, ink jets and marking needles set them."""

import cv2
import numpy as np

from atlas import CAP

# Columns from the left, the lowest bit on top; drawn from memory of such character tables, not copied from one.
COLUMNS = {
    "0": "3E5149453E", "1": "00427F4000", "2": "4261514946", "3": "2141454B31", "4": "1814127F10", "5": "2745454539",
    "6": "3C4A494930", "7": "0171090503", "8": "3649494936", "9": "064949291E", "A": "7E1111117E", "B": "7F49494936",
    "C": "3E41414122", "D": "7F4141221C", "E": "7F49494941", "F": "7F09090901", "G": "3E4149497A", "H": "7F0808087F",
    "I": "00417F4100", "J": "2040413F01", "K": "7F08142241", "L": "7F40404040", "M": "7F020C027F", "N": "7F0408107F",
    "O": "3E4141413E", "P": "7F09090906", "Q": "3E4151215E", "R": "7F09192946", "S": "4649494931", "T": "01017F0101",
    "U": "3F4040403F", "V": "1F2040201F", "W": "3F4038403F", "X": "6314081463", "Y": "0708700807", "Z": "6151494543",
    "-": "0808080808", ".": "0060600000", "/": "2010080402",
}  # fmt: skip


def dotted_font(rng):
    """A font of dots as the atlas has fonts; size and shape of the dots differ from call to call."""
    pitch = CAP / 7
    wide = pitch * rng.uniform(0.75, 1.1)
    radius = pitch * rng.uniform(0.32, 0.58)
    gap = rng.uniform(0.8, 2.2) * wide
    font = {}
    for char, columns in COLUMNS.items():
        mask = np.zeros((CAP + 4, int(5 * wide) + 4), np.uint8)
        for x, bits in enumerate(bytes.fromhex(columns)):
            for y in range(7):
                if bits >> y & 1:
                    middle = (int(16 * (2 + (x + 0.5) * wide)), int(16 * (2 + (y + 0.5) * pitch)))
                    cv2.circle(mask, middle, int(16 * radius), 255, -1, cv2.LINE_AA, 4)
        font[char] = (mask, 0.0, float(-CAP - 2), 5 * wide + gap)
    return font
