"""Figures and units of the second opinion: fractions and whole-number roots, nothing of the program."""

from fractions import Fraction as F
from math import isqrt

GRAMS = {"mcg": F(1, 1000000), "mg": F(1, 1000), "g": F(1)}
LITRES = {"mL": F(1), "L": F(1000)}
MINUTES = {"min": F(1), "h": F(60)}


class DoNotMeet(Exception):
    """Two amounts of medicine that no factor leads from one to the other: mg and units."""


def half_up(value, decimals=0):
    scaled = value * 10 ** decimals
    return F((2 * scaled.numerator + scaled.denominator) // (2 * scaled.denominator), 10 ** decimals)


def root_half_up(square, decimals):
    scaled = 4 * square * 10 ** (2 * decimals)
    return F((isqrt(scaled.numerator // scaled.denominator) + 1) // 2, 10 ** decimals)


def ceil(value):
    return F(-(-value.numerator // value.denominator))


def ceil1(value):
    return max(ceil(value), F(1))


def split(text):
    number, rest = text.split(" ", 1)
    return F(number), rest


def parts(text):
    """(8, 'lb'), (3, 'oz') of "8 lb 3 oz"."""
    words = text.split(" ")
    return [(F(words[i]), words[i + 1]) for i in range(0, len(words), 2)]


def days(age):
    lengths = {"day": F(1), "week": F(7), "month": F(304375, 10000), "year": 12 * F(304375, 10000)}
    return F(0) if age == "today" else sum(count * lengths[unit] for count, unit in parts(age))


def in_unit(value, unit, wanted):
    if unit == wanted:
        return value
    if unit not in GRAMS or wanted not in GRAMS:
        raise DoNotMeet(unit, wanted)
    return value * GRAMS[unit] / GRAMS[wanted]


def quantity(text):
    """mL of a volume, minutes of a time."""
    if text is None:
        return None
    value, unit = split(text)
    return value * {**LITRES, **MINUTES}[unit]


def strength(text, wanted):
    """Of the wanted unit in one mL, tablet or capsule: "120 mg/5 mL"."""
    amount, container = text.split("/")
    value, unit = split(amount)
    count, kind = split(container) if " " in container else (F(1), container)
    return in_unit(value, unit, wanted) / (count * LITRES.get(kind, 1))


def neighbours(exact, step):
    """The steps around a figure, the nearer first; half rounds up."""
    below = exact // step * step
    above = below if below == exact else below + step
    return (above, below) if above - exact <= exact - below else (below, above)


def change(measured, exact):
    return abs(measured - exact) / exact
