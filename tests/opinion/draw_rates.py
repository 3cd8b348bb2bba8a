"""Random rate orders, as typed: near their limits, in every unit, and odd ones."""

from fractions import Fraction as F
from typing import NamedTuple

from draw_strength import COUNTED, bag, near, written
from rules_draw import draw_child, typed

DROPS = ["10 drop/mL", "15 drop/mL", "20 drop/mL", "60 drop/mL", "60 drop/mL", "17.5 drop/mL"]


def draw_rate(draw):
    """A dose for each minute or hour, and a bag."""
    child, kg, m2 = draw_child(draw)
    unit = draw.choice(["mcg", "mcg", "mg", "mg", "g"] + COUNTED)
    size, per = draw.choice([("/kg", kg), ("/kg", kg), ("/m2", m2), ("", 1)])
    time, minutes = draw.choice([("min", 1), ("min", 1), ("h", 60)])
    rate = draw.choice([draw.randrange(1, 100) / 100, draw.randrange(1, 200) / 10, draw.randrange(1, 40)])
    order = {"dose": typed(draw, rate, draw.choice([1, 2, 3])) + f" {unit}{size}/{time}"}
    if draw.random() < 0.7:
        order["schedule"] = "continuous" if draw.random() < 0.96 else draw.choice(["every 6 h", "once", "daily"])
    if draw.random() < 0.7:
        order["route"] = draw.choice(["intravenous", "intravenous", "subcutaneous", "enteral"])
    other, by = draw.choice([(size, per), (size, per), ("/kg", kg), ("/m2", m2), ("", 1)])
    told, in_it = draw.choice([(time, 1), (time, 1), ("min", 1 / minutes), ("h", 60 / minutes)])
    high = near(draw, rate * per / by * in_it) * draw.choice([1, 1, 1, 1.3])
    reference = {"high": written(draw, high, unit, f"{other}/{told}"), "source": "Bench list"}
    kind = draw.random()
    if kind < 0.35:
        low_of_high(draw, reference)
    elif kind < 0.45:
        reference["limit_only"] = True
    if draw.random() < 0.2:
        reference["schedule"] = draw.choice(["continuous"] * 4 + ["every 6 h", "daily"])
    oddly_stated(draw, order, reference)
    case = {"format": "wardchalk.case", "version": 1, "child": child, "order": order, "reference": reference}
    if draw.random() < 0.5:
        case["infusion"] = {"drop_factor": draw.choice(DROPS)}
    flow = None
    if draw.random() < 0.9:
        flow = draw.choice([0.04, 0.3, 0.96, 1.04, 1.5, 2.5, 3.3, 5.6, 7.25, 12, 41, 99.96, 120, 740])  # mL in an hour
        per_ml = near(draw, rate * per * 60 / minutes / flow)
        case["stock"] = {"kind": draw.choice(["liquid", "liquid", "powder"]), "strength": bag(draw, unit, per_ml)}
        if draw.random() < 0.02:
            case["stock"]["strength"] = "2 units/mL" if unit != "units" else "2 mg/mL"
        elif draw.random() < 0.03:
            case["stock"] = {"kind": "solid", "strength": f"{typed(draw, rate, 2)} {unit}/tablet"}
        elif draw.random() < 0.04:
            contradict_bag(draw, case["stock"], unit)
    run_otherwise(draw, case, flow)
    limit_rate(draw, case, Drawn(unit, rate * per * 60 / minutes, flow, kg, m2))
    return case


class Drawn(NamedTuple):
    """What a rate was drawn from."""

    unit: str
    hourly: float  # for this child
    flow: float  # mL in an hour out of the bag
    kg: float
    m2: float


def contradict_bag(draw, stock, unit):
    """A vial whose volumes say another strength than the label, or nothing of the bag."""
    stock["kind"] = "powder"
    stock["content"], stock["final_volume"] = f"{draw.randrange(1, 500)} {unit}", "50 mL"
    if draw.random() < 0.5:
        del stock["strength"]


def run_otherwise(draw, case, flow):
    """A run time, with a volume that mostly goes with it, and odd routes."""
    if draw.random() < 0.3:
        hours = draw.choice([0.5, 1, 2, 4, 8, 12, 23.9, 24, 36])
        infusion = case.setdefault("infusion", {})
        infusion["over"] = f"{typed(draw, hours, 1)} h" if draw.random() < 0.7 else f"{round(hours * 60)} min"
        if flow and draw.random() < 0.6:
            volume = flow * hours * draw.choice([1, 1, 1, 1.01, 0.98, 1.05, 1.06, 0.95, 0.94, 3])
            infusion["volume"] = typed(draw, volume, draw.choice([1, 2])) + " mL"
    elif draw.random() < 0.05:
        case.setdefault("infusion", {})["volume"] = "50 mL"
    if draw.random() < 0.06:
        case["order"]["route"] = draw.choice(["oral", "rectal", "inhaled", "inhaled", "topical"])


def limit_rate(draw, case, drawn):
    """Each limit so near that one setting keeps it and the next does not."""
    reference = case["reference"]
    slightly = [1, 1, 1.0005, 1.002, 1.02, 1.3, 1.3, 3, 0.99, 0.9]
    sizes = [("", 1), ("/kg", drawn.kg), ("/kg", drawn.kg)]
    if draw.random() < 0.3:
        size, by = draw.choice(sizes)
        time, hours = draw.choice([("min", 1 / 60), ("h", 1)])
        most = drawn.hourly / by * hours * draw.choice(slightly)
        reference["max_infusion_rate"] = written(draw, most, drawn.unit, f"{size}/{time}", 5)
    if draw.random() < 0.35:
        size, by = draw.choice(sizes + [("/m2", drawn.m2)])
        runs = draw.choice([24, 24, run_hours(case)])
        most = drawn.hourly * runs / by * draw.choice(slightly)
        reference["max_per_day"] = written(draw, most, drawn.unit, size, 5)
    per_ml = drawn.hourly / (drawn.flow or 1)
    if draw.random() < 0.3:
        reference["max_concentration"] = written(draw, per_ml * draw.choice(slightly), drawn.unit, "/mL", 5)
    if draw.random() < 0.15:
        reference["min_concentration"] = written(draw, per_ml / draw.choice(slightly), drawn.unit, "/1 mL", 5)
    if draw.random() < 0.1:
        reference["min_infusion_time"] = draw.choice(["30 min", "1 h", "8 h", "0.5 h"])
    if draw.random() < 0.1:
        reference["max_per_dose"] = f"1 {drawn.unit}"


def run_hours(case):
    """As long as the case says that it runs in a day."""
    number, _, unit = case.get("infusion", {}).get("over", "24 h").partition(" ")
    return min(float(number) / (1 if unit == "h" else 60), 24)


def low_of_high(draw, reference):
    """A low end near the ordered rate, in the words of the high end, and never above it."""
    number, rest = reference["high"].split(" ")
    low = typed(draw, float(number) * draw.choice([0.5, 0.9, 0.96, 0.999, 1]), 7)
    reference["low"] = (low if F(low) <= F(number) else number) + f" {rest}"


def oddly_stated(draw, order, reference):
    """What does not belong together, and what counts for doses alone."""
    kind = draw.random()
    if kind < 0.03:
        reference["high"] = reference["high"].rsplit("/", 1)[0] + draw.choice(["/dose", "/day", "/week"])
        reference.pop("low", None)
    elif kind < 0.06:
        number, rest = reference["high"].split(" ")
        unit, tail = rest.split("/", 1)
        reference["high"] = f"{number} {'units' if unit != 'units' else 'mg'}/{tail}"
        reference.pop("low", None)
    elif kind < 0.09:
        order["as_needed"] = True
    elif kind < 0.12:
        reference["max_doses_per_day"] = 3
    elif kind < 0.2:
        reference["medicine"] = "Godwit"
        order["medicine"] = draw.choice(["GODWIT", "Heron", "Heron"])
    elif kind < 0.22:
        reference["medicine"] = "Godwit"
