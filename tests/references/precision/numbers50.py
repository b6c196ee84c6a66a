"""50-digit numbers and vectors, and the refusal of briefs that sit on a fence."""

from mpmath import mp, mpf

mp.dps = 50


class Fence(Exception):
    """The brief lies so near to a decision that rounding would make it: draw another."""


def over(value, scale=1):
    """Whether value > 0, refusing what only rounding could tell."""
    if abs(value) < mpf(10) ** -9 * scale and abs(value) > mpf(10) ** -40 * scale:
        raise Fence(value)
    return value > mpf(10) ** -40 * scale


def sine(degrees):
    return mp.sinpi(degrees / 180)


def cosine(degrees):
    return mp.cospi(degrees / 180)


def in_degrees(radians):
    return radians * 180 / mp.pi


def dot(a, b):
    return sum((x * y for x, y in zip(a, b)), mpf(0))


def plus(a, b, factor=1):
    return [x + factor * y for x, y in zip(a, b)]


def minus(a, b):
    return [x - y for x, y in zip(a, b)]


def length(a):
    return mp.sqrt(dot(a, a))
