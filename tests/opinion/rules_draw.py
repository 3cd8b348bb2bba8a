"""Random cases of the common kinds, as typed."""

from fractions import Fraction as F

from amount_again import INJECTED, ORAL
from figures_again import split
from rules_again import ONCE, SCHEDULES


def typed(draw, value, decimals):
    """About `value`, written with at most so many decimals and never zero."""
    units = max(round(float(value) * 10 ** decimals), 1)
    whole, rest = divmod(units, 10 ** decimals)
    text = f"{whole}.{rest:0{decimals}d}".rstrip("0").rstrip(".") if decimals else str(whole)
    return text


SUITS = [(2, 45), (3.4, 50), (9.6, 75), (17, 104), (29, 133), (46, 157), (70, 176)]  # kg and the cm that go with them


def draw_height(draw, kg):
    """Mostly one that suits the weight, so that sizes are seldom asked about."""
    (a, low), (b, high) = next(pair for pair in zip(SUITS, SUITS[1:]) if kg <= pair[1][0])
    cm = low + (high - low) * (kg - a) / (b - a)
    return cm * draw.uniform(0.95, 1.05) if draw.random() < 0.9 else cm * draw.uniform(0.4, 1.5)


def draw_child(draw):
    kg = draw.uniform(2, 70)
    cm = draw_height(draw, kg)
    child = {}
    if draw.random() < 0.96:
        kind = draw.randrange(5)
        child["weight"] = [typed(draw, kg, draw.randrange(3)) + " kg", f"{round(kg * 1000)} g",
                           typed(draw, kg * 2.2, 1) + " lb", f"{int(kg * 2.2)} lb {draw.randrange(1, 16)} oz",
                           typed(draw, kg, 1) + " kg"][kind]
    if draw.random() < 0.9:
        feet = f"{int(cm / 31)} ft {draw.randrange(1, 12)} in"
        child["height"] = [f"{round(cm)} cm", typed(draw, cm, 1) + " cm", typed(draw, cm / 100, 2) + " m",
                           typed(draw, cm / 2.54, 1) + " in", feet][draw.randrange(5)]
    if draw.random() < 0.7:
        child["weighed"] = draw.choice(["today", "today", "1 week", "3 month", "91 day", "92 day", "1 year 2 month"])
    m2 = (kg * cm / 3600) ** 0.5
    if draw.random() < 0.15:
        child["bsa"] = typed(draw, m2 * draw.choice([1, 0.97, 1.04, 0.9, 1.1]), 2) + " m2"
    return child, kg, m2


def draw_stock(draw, order, aim, unit):
    """Something that makes the dose a fraction of a mL to a few syringes full, or some tablets; or nothing."""
    kind = draw.random()
    if kind < 0.3:
        return None
    if kind < 0.45:
        amount = typed(draw, aim / draw.choice([1, 2, 0.5, 1.5, 3, 4, 0.9, 1.3]), 2)
        solid = {"kind": "solid", "strength": f"{amount} {unit}/" + draw.choice(["tablet", "tablet", "tablet", "capsule"])}
        if draw.random() < 0.6 and solid["strength"].endswith("tablet"):
            solid["divides_into"] = draw.choice([1, 2, 4])
        return solid
    per_ml = aim / draw.choice([0.05, 0.3, 0.77, 1, 1.5, 2.3, 3.2, 4.9, 8, 13, 41, 100, 250])
    count = draw.choice([1, 5, 50])
    volume = f"{count} mL" if count > 1 else "mL"
    stock = {"kind": "liquid", "strength": typed(draw, per_ml * count, 4) + f" {unit}/{volume}"}
    if kind > 0.93:
        order["dose"] = typed(draw, aim / per_ml, 2) + " mL"
    return stock


def draw_infusion(draw, reference, aim, unit):
    """A volume and a time that are mostly within what is stated, and a little too little now and then."""
    infusion, often = {}, [1.3, 1.02, 1, 0.98, 0.7, 0.2]
    if draw.random() < 0.85:
        volume = draw.choice([4, 8, 9.7, 10, 25, 50, 100, 250])
        infusion["volume"] = typed(draw, volume, 1) + " mL"
        if draw.random() < 0.7:
            reference["max_concentration"] = typed(draw, aim / volume * draw.choice(often), 4) + f" {unit}/mL"
        if draw.random() < 0.3:
            reference["min_concentration"] = typed(draw, aim / volume * draw.choice([0.1, 0.6, 0.9, 1, 1.1]), 4) + f" {unit}/mL"
    if draw.random() < 0.85:
        minutes = draw.choice([5, 10, 30, 60, 90])
        infusion["over"] = f"{minutes} min" if minutes < 60 or draw.random() < 0.5 else typed(draw, minutes / 60, 1) + " h"
        if draw.random() < 0.5:
            reference["min_infusion_time"] = typed(draw, minutes / draw.choice(often), 2) + " min"
        if draw.random() < 0.5:
            per, time = draw.choice([(1, "min"), (60, "h")])
            reference["max_infusion_rate"] = typed(draw, aim / minutes * per * draw.choice(often), 4) + f" {unit}/{time}"
    return infusion


def draw_of_reference(draw, order, reference):
    """Most doses in 24 h, as needed more often where they count, and what the reference is for."""
    if draw.random() < 0.3:
        reference["max_doses_per_day"] = draw.randrange(1, 7)
    if "max_doses_per_day" in reference or "max_per_day" in reference:
        if draw.random() < 0.35:
            order["as_needed"] = True
    if draw.random() < 0.4:
        reference["medicine"] = draw.choice(["Plover", "Grèbe", "Grey plover"])
        order["medicine"] = draw.choice([reference["medicine"], reference["medicine"].upper(), " Grebe  ", "Grey  Plover",
                                         "Gre\u0301be", "Plo\u200dver", "Heron", " "])
        if draw.random() < 0.3:
            reference["also_called"] = draw.choice(["Heron", "Dotterel; HERON;", " ; "])
        if order["medicine"] == " " and draw.random() < 0.5:
            del order["medicine"]
    elif draw.random() < 0.5:
        order["medicine"] = "Plover"


def draw_case(draw):
    child, kg, m2 = draw_child(draw)
    size = draw.choice(["/kg", "/kg", "/m2", "/m2", ""])
    scale = {"/kg": kg, "/m2": m2, "": 1}[size]
    time = draw.choice(["/dose", "/dose", "/day", "/day", "/week"])
    high = draw.choice([draw.randrange(1, 60), draw.randrange(1, 999) / 10, draw.randrange(10, 2000)])
    unit = draw.choice(["mg", "mg", "mcg", "g"])
    schedule = draw.choice(list(SCHEDULES) + ["every 12 h", "every 8 h", "every 6 h", ONCE, ONCE])
    doses = float(SCHEDULES.get(schedule, (1, 1))[1])
    reference = {"high": typed(draw, high, 1) + f" {unit}{size}{time}", "source": "Bench list"}
    if draw.random() < 0.3:
        reference["low"] = typed(draw, high * draw.choice([0.3, 0.5, 0.9, 1]), 1) + f" {unit}{size}{time}"
        if F(split(reference["low"])[0]) > F(split(reference["high"])[0]):
            reference["low"] = reference["high"]
    elif draw.random() < 0.1:
        reference["limit_only"] = True
    if draw.random() < 0.6:
        reference["schedule"] = schedule if draw.random() < 0.6 else draw.choice(list(SCHEDULES) + [ONCE])
    per_dose = high * scale / {"/dose": 1, "/day": max(doses, 1), "/week": max(doses * 7, 1)}[time]
    if draw.random() < 0.25:
        per = draw.choice(["", "", "/kg"])
        most = per_dose * draw.choice([0.5, 0.9, 1, 1.2]) / (kg if per else 1)
        reference["max_per_dose"] = typed(draw, most, 3) + f" {unit}{per}"
    if draw.random() < 0.25:
        per = draw.choice(["", "", "/kg", "/m2"])
        by = {"": 1, "/kg": kg, "/m2": m2}[per]
        most = per_dose * max(doses, 1) * draw.choice([0.5, 0.95, 1, 1.3]) / by
        reference["max_per_day"] = typed(draw, most, 3) + f" {unit}{per}"
    aim = per_dose * draw.choice([1, 1, 0.95, 0.9, 0.92, 0.5, 0.75, 1.001, 1.001, 1.02, 1.1, 2, 3, 0.999])
    by, per = draw.choice([(1, ""), (1, ""), (1, ""), (kg, "/kg"), (m2, "/m2")])
    if draw.random() < 0.15:
        aim, per = aim * max(doses, 1), per + "/day"
    order_unit = unit
    if unit == "g" and draw.random() < 0.5:
        aim, order_unit = aim * 1000, "mg"
    order = {"dose": typed(draw, aim / by, draw.choice([1, 2, 3, 4])) + f" {order_unit}{per}"}
    stock = draw_stock(draw, order, aim, order_unit)
    if draw.random() < 0.8:
        order["route"] = draw.choice(ORAL + ORAL + INJECTED + ("rectal",))
    if draw.random() < 0.88:
        order["schedule"] = schedule
    if draw.random() < 0.1:
        order["as_needed"] = True
    if draw.random() < 0.1:
        order["max_doses_per_day"] = draw.randrange(1, 6)
    draw_of_reference(draw, order, reference)
    infused = draw.random() < (0.05 if stock else 0.5)
    infusion = draw_infusion(draw, reference, aim, order_unit) if infused else {}
    case = {"format": "wardchalk.case", "version": 1, "child": child, "order": order, "reference": reference}
    if infusion:
        case["infusion"] = infusion
    return {**case, "stock": stock} if stock else case
