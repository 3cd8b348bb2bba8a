"""Random doses from a bottle, bag or vial, as typed: run over a time, or badly shown by one syringe."""

from typing import NamedTuple

from draw_rates import DROPS
from draw_strength import COUNTED, draw_mixed, near, written
from rules_draw import draw_child, typed


class Drawn(NamedTuple):
    """A case and the figures that it was drawn from, for what is drawn around them."""

    case: dict
    unit: str
    kg: float
    m2: float
    aim: float  # the dose
    drug: float  # mL of it
    per_ml: float


def draw_dose(draw):
    """A dose that is mostly right, flat or by weight, with what is in hand unsaid."""
    child, kg, m2 = draw_child(draw)
    unit = draw.choice(["mg", "mg", "mg", "mcg", "g"] + COUNTED)
    drug = draw.choice([0.06, 0.1, 0.3, 0.5, 0.77, 0.96, 2.3, 4.9, 8.1, 9.97, 10.7, 13.4, 19.8, 33, 59.4, 61.3, 73, 118])
    comes_out = draw.random() < 0.5  # so that what is equal is drawn too
    if comes_out:
        per_ml = draw.choice([0.4, 1, 2, 2.5, 4.2, 5, 8.4, 10, 12.5, 20, 50])
        aim = drug * per_ml
        dose = f"{typed(draw, aim, 6)} {unit}"
    else:
        aim = draw.choice([draw.randrange(1, 60), draw.randrange(1, 99) / 10]) * kg
        per_ml = near(draw, aim / drug)
        by_weight = f"{typed(draw, aim / kg, 1)} {unit}/kg"
        dose = draw.choice([by_weight, f"{typed(draw, aim, draw.choice([0, 1, 2]))} {unit}"])
    order = {"dose": dose, "schedule": draw.choice(["every 6 h", "every 8 h", "daily", "once"])}
    if draw.random() < 0.9:
        order["route"] = draw.choice(["intravenous"] * 8 + ["enteral", "subcutaneous", "oral", "rectal"])
    above = [1.001, 1.05, 1.1, 1.1] if comes_out and draw.random() < 0.5 else [1, 1, 1.001, 1.02, 1.1, 0.99]
    high = typed(draw, aim / kg * draw.choice(above), 4)
    reference = {"high": f"{high} {unit}/kg/dose", "schedule": order["schedule"], "source": "Bench list"}
    if draw.random() < 0.3:
        low = typed(draw, float(high) * draw.choice([0.5, 0.9, 0.98, 1]), 3)
        reference["low"] = f"{low if float(low) <= float(high) else high} {unit}/kg/dose"
    case = {"format": "wardchalk.case", "version": 1, "child": child, "order": order, "reference": reference}
    return Drawn(case, unit, kg, m2, aim, drug, per_ml)


def order_otherwise(draw, drawn):
    """The same dose in mL, by surface or for the day, now and then."""
    order, kind = drawn.case["order"], draw.random()
    if kind < 0.06:
        order["dose"] = f"{typed(draw, drawn.drug, 2)} mL"
    elif kind < 0.12:
        order["dose"] = f"{typed(draw, drawn.aim / drawn.m2, 2)} {drawn.unit}/m2"
    elif kind < 0.18:
        doses = {"every 6 h": 4, "every 8 h": 3}.get(order["schedule"], 1)
        order["dose"] = f"{typed(draw, drawn.aim / drawn.kg * doses, 2)} {drawn.unit}/kg/day"
    elif kind < 0.2:
        order["schedule"] = "continuous"  # and no rate
    elif kind < 0.22:
        drawn.case["reference"]["high"] = f"{typed(draw, drawn.aim / drawn.kg, 3)} {drawn.unit}/kg/h"
        drawn.case["reference"].pop("low", None)


def draw_infused(draw):
    """A dose in a volume and over a time near what the reference allows."""
    drawn = draw_dose(draw)
    order_otherwise(draw, drawn)
    case, infusion = drawn.case, {}
    if case["order"]["dose"].endswith(" mL") or draw.random() < 0.95:
        case["stock"] = draw_mixed(draw, drawn.unit, drawn.per_ml)
    volume = max(drawn.drug * draw.choice([0.9, 1, 1.001, 1.5, 3, 10]), 0.1)
    minutes = draw.choice([3, 5, 7, 20, 30, 45, 60, 90, 240, 1440, 6000])
    if draw.random() < 0.95:
        volume = float(typed(draw, volume, draw.choice([1, 2, 2])))
        infusion["volume"] = typed(draw, volume, 2) + " mL" if draw.random() < 0.9 else typed(draw, volume / 1000, 5) + " L"
    if draw.random() < 0.95:
        infusion["over"] = f"{minutes} min" if minutes < 60 or draw.random() < 0.5 else typed(draw, minutes / 60, 1) + " h"
    if draw.random() < 0.6:
        infusion["drop_factor"] = draw.choice(DROPS)
    limit_infusion(draw, drawn, volume, minutes)
    if infusion:
        case["infusion"] = infusion
    return case


def limit_infusion(draw, drawn, volume, minutes):
    """Each limit so near that one setting keeps it and the next does not."""
    reference, unit, aim = drawn.case["reference"], drawn.unit, drawn.aim
    slightly = [1, 1, 1.0005, 1.002, 1.02, 1.3, 1.3, 3, 0.99]
    if draw.random() < 0.35:
        reference["max_concentration"] = written(draw, aim / volume * draw.choice(slightly), unit, "/mL")
    if draw.random() < 0.2:
        reference["min_concentration"] = written(draw, aim / volume / draw.choice(slightly), unit, "/1 mL")
    if draw.random() < 0.35:
        reference["min_infusion_time"] = typed(draw, minutes / draw.choice(slightly), 2) + " min"
    if draw.random() < 0.35:
        size, by = draw.choice([("", 1), ("/kg", drawn.kg)])
        time, per = draw.choice([("min", 1), ("h", 60)])
        most = aim / by / minutes * per * draw.choice(slightly)
        reference["max_infusion_rate"] = written(draw, most, unit, f"{size}/{time}", 5)


def draw_syringes(draw):
    """A liquid whose amount one syringe shows badly: between two marks and at a limit, or more than the largest holds."""
    drawn = draw_dose(draw)
    case, unit, kg = drawn.case, drawn.unit, drawn.kg
    routes = ["oral", "enteral", "intravenous", "intravenous", "intramuscular", "subcutaneous"]
    case["order"]["route"] = draw.choice(routes)
    number, rest = case["order"]["dose"].split(" ")
    just = draw.random() < 0.1
    if just:  # a mark that lies exactly 5, 2 or 1 % below what is ordered
        number, rest = draw.choice(["1.1", "1.3", "2.7", "4.5", "11", "13", "26"]), unit
        case["order"]["dose"] = f"{number} {unit}"
    case["reference"]["high"] = case["order"]["dose"] + "/dose"  # the order at its limit: nothing may be rounded up
    case["reference"].pop("low", None)
    if draw.random() < 0.3:
        case["reference"]["low"] = f"{typed(draw, float(number) * draw.choice([0.9, 0.97, 0.99]), 4)} {rest}/dose"
    elif draw.random() < 0.4:
        case["reference"]["high"] = f"{typed(draw, float(number) * 1.08, 4)} {rest}/dose"
    drug = draw.choice([1.03, 1.25, 2.6, 3.06, 3.3, 4.3, 5.3, 5.5, 6.1, 10.1, 10.6, 10.75, 10.9, 11.5, 12.5, 13.6, 19.9, 20.5,
                        23.4, 27.5, 60.05, 60.5, 61.3, 77.7, 100, 119.5, 120, 121, 181])
    dose = float(number) * (kg if "/kg" in rest else 1)
    per_ml = draw.choice(["0.95", "0.98", "0.99"]) if just else typed(draw, dose / drug, 5)
    case["stock"] = {"kind": "liquid", "strength": f"{per_ml} {unit}/mL"}
    return case
