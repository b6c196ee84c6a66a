"""Seeded draws whose numbers are doubles written in few digits, so that every reader has the same bits."""

import math
import random


class Lot:
    def __init__(self, seed):
        self.random = random.Random(seed)

    def even(self, low, high, digits=6):
        return float(f"{low + (high - low) * self.random.random():.{digits}g}")

    def log(self, low, high, digits=6):
        return float(f"{math.exp(math.log(low) + (math.log(high) - math.log(low)) * self.random.random()):.{digits}g}")

    def one(self, *choices):
        return choices[int(self.random.random() * len(choices))]

    def chance(self, share):
        return self.random.random() < share

    def maybe(self, share, value):
        """The value, drawn whether used or not, so that one choice leaves the rest as it is."""
        return value if self.random.random() < share else None
