"""Strengths and bounds as typed: near the figure that they are about, and told in any unit of its kind."""

from figures_again import GRAMS
from rules_draw import typed

OFTEN = [1, 1, 0.999, 1.001, 0.97, 0.9, 0.6, 1.04, 1.5]  # of a bound: mostly near it
COUNTED = ["units", "mmol", "mEq"]


def near(draw, value):
    return value * draw.choice(OFTEN)


def other_mass(draw, unit):
    """The same kind of medicine in another unit of mass, now and then; what is counted has no other."""
    return draw.choice([unit, unit, *GRAMS]) if unit in GRAMS else unit


def written(draw, value, unit, tail, decimals=4):
    """A value of `unit`, told in the same or another unit of mass with at most so many decimals."""
    told = other_mass(draw, unit)
    if told != unit:
        value *= float(GRAMS[unit] / GRAMS[told])
    return typed(draw, value, max(decimals, 7) if told != unit and value < 1 else decimals) + f" {told}{tail}"


def bag(draw, unit, per_ml):
    """A strength as bags and syringes are labelled: in 1 mL, 50 mL, 0.5 L."""
    count, volume = draw.choice([(1, "mL"), (50, "50 mL"), (500, "0.5 L"), (20, "20 mL"), (1, "1 mL")])
    return written(draw, per_ml * count, unit, f"/{volume}")


def draw_mixed(draw, unit, per_ml):
    """A liquid, or a powder whose papers say its strength in one or more ways that mostly agree."""
    if draw.random() < 0.55:
        return {"kind": "liquid", "strength": bag(draw, unit, per_ml)}
    final = draw.choice([2, 5, 10, 8.5, 50])
    powder = {"kind": "powder", "content": f"{typed(draw, per_ml * final, 3)} {unit}"}
    displaced = draw.choice([0.1, 0.2, 0.4, 1])
    ways = draw.choice(["final", "final", "diluent", "final and diluent", "final and displacement", "all", "strength",
                        "diluent alone"])
    if ways in ("final", "final and diluent", "final and displacement", "all"):
        powder["final_volume"] = typed(draw, final, 1) + " mL"
    if ways in ("diluent", "final and diluent", "all", "diluent alone"):
        added = draw.choice([final - displaced, final - displaced, final, final + 0.1])
        powder["diluent"] = typed(draw, added, 1) + " mL"
    if ways in ("diluent", "final and displacement", "all"):
        powder["displacement"] = typed(draw, displaced, 1) + " mL"
    if ways in ("strength", "all") or draw.random() < 0.2:
        powder["strength"] = f"{typed(draw, per_ml / draw.choice([1, 1, 1, 1.049, 0.951, 1.05, 0.95, 1.06]), 4)} {unit}/mL"
    return powder
