"""How many bits the file keeps of a weight: the rule that training and packing share. Packing needs no torch."""

from math import prod

BLOCK = 32  # weights of a row that share one scale
COARSE = 9000  # numbers from which a tensor goes to 4 bits
FINE = 1000  # and to 8


def bits_of(shape):
    """4, 8 or 32 bits for a weight's shape. Rows shorter than a block, one channel's filters, never get 4."""
    size = prod(shape)
    if len(shape) < 2 or size < FINE:
        return 32
    return 4 if size >= COARSE and size // shape[0] >= BLOCK else 8
