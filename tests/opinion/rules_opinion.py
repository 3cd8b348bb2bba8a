"""The rules of arithmetic (R2 to R9) a second time, in Python's fractions, against the console program.

Written from the text of the rules and from nothing else. Draws cases of the common kinds (per dose, day and week; per
kg, per m2 and flat; schedules, maxima, low ends, as needed, once, caps, charted surface; liquids, tablets, orders in
mL), has the console work them, and compares the verdict, what is asked, limits, ordered doses, status and percent of
every check of the dose, and the amount with its device. Prints each disagreement and ends with status 1 if there is
any.

    rules_opinion.py CONSOLE [COUNT [SEED]]
"""

import json
import random
import subprocess
import sys
import tempfile
from fractions import Fraction as F
from math import isqrt

SCHEDULES = {  # R4: doses a day, from and to
    "every 24 h": (F(1), F(1)), "every 12 h": (F(2), F(2)), "every 8 h": (F(3), F(3)), "every 6 h": (F(4), F(4)),
    "every 5 h": (F(24, 5), F(24, 5)), "every 36 h": (F(2, 3), F(2, 3)), "every 4 to 6 h": (F(4), F(6)),
    "every 8 to 12 h": (F(2), F(3)), "3 times a day": (F(3), F(3)), "2 to 3 times a day": (F(2), F(3)),
    "BID": (F(2), F(2)), "q6h": (F(4), F(4)), "daily": (F(1), F(1)), "2 times a week": (F(2, 7), F(2, 7)),
    "5 times a week": (F(5, 7), F(5, 7)), "every 2 day": (F(1, 2), F(1, 2)), "weekly": (F(1, 7), F(1, 7)),
    "every 16 h": (F(3, 2), F(3, 2)), "every 7 to 9 h": (F(24, 9), F(24, 7)),
}
ONCE = "once"

HOUSES = [
    {},
    {"pounds": "trade", "kilogram_decimals": 2, "round_to": "decimals"},
    {"kilogram_decimals": 1, "bsa_decimals": 3, "ask_below_percent": 80},
    {"pounds": "trade", "bsa_decimals": "none", "bsa_differs_percent": 2},
]

SYRINGES = [(F(1), F(1, 100)), (F(3), F(1, 10)), (F(5), F(1, 5)), (F(10), F(1, 5)), (F(20), F(1)), (F(60), F(1))]
ORAL, INJECTED = ("oral", "enteral"), ("intravenous", "intramuscular", "subcutaneous")

GRAMS = {"mcg": F(1, 1000000), "mg": F(1, 1000), "g": F(1)}


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


class Opinion:
    """What R2 to R8 say of one case under one set of house rules."""

    def __init__(self, case, house):
        self.child, self.order, self.reference = case["child"], case["order"], case["reference"]
        self.stock = case.get("stock")
        self.give = None
        self.house = house
        self.asks, self.undecided, self.missing = set(), set(), set()
        self.checks = {}
        self.limit, self.ordered = {}, {}
        self.size_used = set()
        self.work()

    # R2, R3
    def find_size(self):
        self.kg = self.kg_exact = self.m2 = self.square_exact = None
        weight, height = self.child.get("weight"), self.child.get("height")
        household_weight = household_height = False
        if weight:
            pieces = parts(weight)
            household_weight = pieces[0][1] in ("lb", "oz")
            if household_weight:
                pounds = sum(v if u == "lb" else v / 16 for v, u in pieces)
                self.kg_exact = pounds * F(45359237, 100000000)
                self.kg = pounds / F(22, 10) if self.house.get("pounds") == "trade" else self.kg_exact
            else:
                self.kg = self.kg_exact = sum(v if u == "kg" else v / 1000 for v, u in pieces)
            if "kilogram_decimals" in self.house:
                self.kg = half_up(self.kg, self.house["kilogram_decimals"])
        if height:
            pieces = parts(height)
            household_height = pieces[0][1] in ("in", "ft")
            inches = sum(v * 12 if u == "ft" else v for v, u in pieces) if household_height else None
            cm = inches * F(254, 100) if household_height else sum(v * 100 if u == "m" else v for v, u in pieces)
        self.charted = F(split(self.child["bsa"])[0]) if "bsa" in self.child else None
        decimals = self.house.get("bsa_decimals", 2)
        decimals = 20 if decimals == "none" else decimals
        self.square = None
        if weight and height:
            self.square_exact = cm * self.kg_exact / 3600
            if household_weight and household_height:
                self.square = inches * pounds / 3131
            else:
                self.square = cm * self.kg / 3600
            self.m2 = root_half_up(self.square, decimals)
        if self.charted is not None:
            self.m2 = self.charted
            if self.square is not None:
                # |charted - computed| > p % of the computed, decided on squares.
                share = F(self.house.get("bsa_differs_percent", 5), 100)
                near = (1 - share) ** 2 * self.square <= self.charted ** 2 <= (1 + share) ** 2 * self.square
                if not near:
                    self.asks.add("bsa-differs")

    def sized(self, text):
        """A dose of the child in the order's unit, or None while its size is not known, and what it is stated per."""
        if text is None:
            return None, None, None
        number, rest = split(text)
        unit, *per = rest.split("/")
        if unit == "mL":
            number, unit = number * self.per_ml, self.unit
        amount = number if unit == self.unit else number * GRAMS[unit] / GRAMS[self.unit]
        size_name = next((p for p in per if p in ("kg", "m2")), None)
        time = next((p for p in per if p not in ("kg", "m2")), None)
        size = {"kg": self.kg, "m2": self.m2, None: F(1)}[size_name]
        if size is None:
            self.missing.add(size_name)
            return None, time, size_name
        return amount * size, time, size_name

    def strength(self):
        """The labelled amount in one mL or tablet, in the order's unit (R9)."""
        amount, container = self.stock["strength"].split("/")
        value, unit = split(amount)
        count = split(container)[0] if " " in container else F(1)
        return value * (GRAMS[unit] / GRAMS[self.unit] if unit != self.unit else 1) / count

    def work(self):
        order, reference = self.order, self.reference
        self.find_size()
        self.unit = split(order["dose"])[1].split("/")[0]
        self.per_ml = None
        if self.unit == "mL":
            self.unit = split(self.stock["strength"])[1].split("/")[0]
            self.per_ml = self.strength()
        schedule, own = order.get("schedule"), reference.get("schedule")
        once, own_once = schedule == ONCE, own == ONCE
        written = SCHEDULES.get(schedule)
        a, b = SCHEDULES.get(own, (None, None))
        n = F(1) if once else written[1] if written else None
        if n is not None and "max_doses_per_day" in order:
            n = min(n, F(order["max_doses_per_day"]))
        if schedule is None:
            self.missing.add("schedule")
        as_needed = order.get("as_needed", False)

        # R4
        if written and not as_needed and any(end > 1 and end.denominator != 1 for end in written):
            self.asks.add("interval-odd")

        # R5
        amount, order_time, order_size = self.sized(order["dose"])
        O = amount
        if order_time == "day":
            if n is None:
                O = None
            elif n < 1:
                self.undecided.add("basis-does-not-fit")
                O = None
            elif amount is not None:
                O = amount / ceil1(n)
        OD = O * ceil(n) if O is not None and n is not None else None

        # R6
        high, time, high_size = self.sized(reference["high"])
        low = self.sized(reference.get("low"))[0]
        max_dose = self.sized(reference.get("max_per_dose"))[0]
        max_day = self.sized(reference.get("max_per_day"))[0]
        S = D = W = None
        if high is not None:
            if time == "dose":
                S = high
                D = high if own_once else high * ceil(b) if b is not None else None
            elif time == "day":
                D = high
                doses = F(1) if own_once else ceil1(a) if a is not None else ceil1(n) if n is not None else None
                S = high / doses if doses is not None else None
            else:
                W = high
                S = W if own_once else W / max(7 * a, 1) if a is not None \
                    else W if once else W / max(7 * n, 1) if n is not None else None
        if time == "day" and own is None and n is not None and n < 2:
            self.asks.add("division-unknown")
        if time == "dose" and own is None and written and not (n >= 1 and "max_per_day" in reference):
            self.asks.add("schedule-unknown")
        day = [x for x in (D, max_day) if x is not None]
        self.limit["day"] = min(day) if day else None
        dose = [x for x in (S, max_dose, max_day if once else self.limit["day"]) if x is not None]
        self.limit["dose"] = min(dose) if dose else None
        self.ordered = {"dose": O, "day": OD}

        # R7
        def at_most(name, value, bound):
            if value is not None and bound is not None:
                self.checks[name] = (value <= bound, value / bound)

        at_most("single", O, S)
        at_most("max-single", O, max_dose)
        at_most("max-daily", O if once else OD, max_day)
        if not once:
            at_most("daily", OD, D)
            rarely = (written and written[1] < 1) or (b is not None and b < 1)
            if O is not None and n is not None and (rarely or time == "week"):
                week = W if time == "week" else S * 7 * b if S is not None and b is not None else None
                at_most("period", O * 7 * n, week)
            if written and own is not None:
                inside = not own_once and (written[1] <= b if as_needed else a <= written[0] and written[1] <= b)
                self.checks["schedule"] = (inside, None)
        self.compare_low(O, n, S, D, W, time, low, max_dose, max_day, once, as_needed)
        self.compare_unrounded(order_size, high_size)
        self.judge()

    def compare_low(self, O, n, S, D, W, time, low, max_dose, max_day, once, as_needed):
        reference = self.reference
        if reference.get("limit_only") or O is None:
            return
        if time != "dose" and (once or as_needed):
            return
        if ("max_per_dose" in reference and max_dose is None) or ("max_per_day" in reference and max_day is None):
            return
        if n is None and (time != "dose" or max_day is not None):
            return
        if time == "dose":
            value, high, caps = O, S, [max_dose, max_day / ceil(n) if max_day is not None else None]
        elif time == "day":
            times = max(n, F(1))
            value, high, caps = O * times, D, [max_day, max_dose * times if max_dose is not None else None]
        else:
            value, high, caps = O * 7 * n, W, [7 * max_day if max_day is not None else None]
        stated = "low" in reference
        end = low if stated else high
        if end is None:
            return
        bound = min([end] + [cap for cap in caps if cap is not None])
        if not stated:
            bound = bound * F(self.house.get("ask_below_percent", 90), 100)
        self.checks["low"] = (value >= bound, value / bound)

    def compare_unrounded(self, order_size, high_size):
        """rounding-decides (R8): single and daily again, on squares, with exact kg and unrounded surface."""
        def moved(size):
            if size == "kg":
                return (self.kg_exact / self.kg) ** 2 if self.kg else F(1)
            if size == "m2" and self.charted is None and self.m2:
                return self.square_exact / self.m2 ** 2
            return F(1)
        ratio = moved(order_size) / moved(high_size)
        for name in ("single", "daily"):
            if name not in self.checks:
                continue
            within, share = self.checks[name]
            again = share ** 2 * ratio
            if (again <= 1) != within:
                if within and again > F(101, 100) ** 2:
                    self.asks.add("rounding-decides")
                return

    # R9
    def keeps(self, dose):
        """Whether every check that the ordered dose meets is met by this one; each side grows with the dose."""
        for name, (within, share) in self.checks.items():
            if share is None or not within:
                continue
            again = share * dose / self.ordered["dose"]
            if (again < 1) if name == "low" else (again > 1):
                return False
        return True

    def nearest(self, exact, step, strength, most_change):
        below = exact // step * step
        above = below if below == exact else below + step
        first_up = above - exact <= exact - below
        for amount in (above, below) if first_up else (below, above):
            change = abs(amount - exact) / exact
            if amount > 0 and change <= most_change and self.keeps(amount * strength):
                return amount
        return None

    def measure(self):
        if self.verdict not in ("safe", "ask") or not self.stock:
            return
        strength = self.strength()
        exact = self.ordered["dose"] / strength
        route = self.order.get("route")
        self.give = {"exact": exact, "measured": None, "holds": None, "count": None}
        if self.stock["kind"] == "solid":
            if route in INJECTED:
                self.asks.add("form-differs-from-route")
                self.give = None
                return
            step = F(1, self.stock.get("divides_into", 1))
            measured = self.nearest(exact, step, strength, F(5, 100))
            many = measured
        elif exact < F(1, 10):
            self.asks.add("too-small-to-measure")
            return
        else:
            step, many = (F(1, 100) if exact < 1 else F(1, 10)), None
            device = None
            if route in ORAL + INJECTED:
                device = next((one for one in SYRINGES if one[0] >= exact), SYRINGES[-1])
                if self.house.get("round_to") != "decimals":
                    step = max(step, device[1])
            measured = self.nearest(exact, step, strength, F(10))
            if device:
                self.give["holds"] = device[0]
                if measured is not None:
                    many = self.give["count"] = ceil(measured / device[0])
        self.give["measured"] = measured
        if measured is None:
            self.asks.add("not-measurable")
        elif abs(measured - exact) / exact > F(5, 100):
            self.asks.add("rounding-changes-dose")
        if many is not None and many > 3:
            self.asks.add("many-units")

    # R8
    def judge(self):
        outside = {name for name, (within, _) in self.checks.items() if not within}
        if "low" in outside:
            self.asks.add("below-low" if "low" in self.reference else "below-usual")
        if "schedule" in outside:
            self.asks.add("schedule-differs")
        if self.undecided:
            self.verdict = "undecided"
        elif outside & {"single", "daily", "period", "max-single", "max-daily"}:
            self.verdict = "unsafe"
        elif self.missing:
            self.verdict = "undecided"
        else:
            self.verdict = "ask" if self.asks else "safe"
            self.measure()
            self.verdict = "ask" if self.asks else "safe"


def typed(draw, value, decimals):
    """About `value`, written with at most so many decimals and never zero."""
    units = max(round(float(value) * 10 ** decimals), 1)
    whole, rest = divmod(units, 10 ** decimals)
    text = f"{whole}.{rest:0{decimals}d}".rstrip("0").rstrip(".") if decimals else str(whole)
    return text


def draw_child(draw):
    kg = draw.uniform(2, 70)
    cm = 45 + kg * 1.7 + draw.uniform(0, 15)
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
        return {"kind": "solid", "strength": f"{amount} {unit}/tablet", "divides_into": draw.choice([1, 2, 4])}
    per_ml = aim / draw.choice([0.05, 0.3, 0.77, 1, 1.5, 2.3, 3.2, 4.9, 8, 13, 41, 100, 250])
    count = draw.choice([1, 5, 50])
    volume = f"{count} mL" if count > 1 else "mL"
    stock = {"kind": "liquid", "strength": typed(draw, per_ml * count, 4) + f" {unit}/{volume}"}
    if kind > 0.93:
        order["dose"] = typed(draw, aim / per_ml, 2) + " mL"
    return stock


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
    aim = per_dose * draw.choice([1, 1, 0.95, 0.9, 0.92, 0.5, 0.75, 1.001, 1.02, 1.1, 2, 3, 0.999])
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
    if draw.random() < 0.95:
        order["schedule"] = schedule
    if draw.random() < 0.1:
        order["as_needed"] = True
    if draw.random() < 0.1:
        order["max_doses_per_day"] = draw.randrange(1, 6)
    case = {"format": "wardchalk.case", "version": 1, "child": child, "order": order, "reference": reference}
    return {**case, "stock": stock} if stock else case


CHECKS = ("single", "daily", "period", "max-single", "max-daily", "low", "schedule")


def compare_amounts(sheet, opinion, name, expected, wrong):
    for key in ("dose", "day"):
        found = sheet.get(name, {}).get(key)
        found = F(found["exact"]) if found else None
        if found != expected[key]:
            wrong.append(f"{name}.{key}: {found}, by the rules {expected[key]}")


def compare_percent(text, share, name, wrong):
    expected = half_up(share * 100, 1)
    if share != 1 and expected == 100:
        if F(text) == 100:  # R1: never reads 100 unless equal
            wrong.append(f"{name}: reads {text} %, and is not equal")
    elif F(text) != expected:
        wrong.append(f"{name}: {text} %, by the rules {float(expected)} %")


def compare_give(found, expected, wrong):
    if not found or not expected:
        if bool(found) != bool(expected):
            wrong.append(f"give: {found}, by the rules {expected}")
        return
    device = found.get("device", {})
    told = {"exact": F(found["exact"]), "measured": F(found["measured"]) if "measured" in found else None,
            "holds": split(device["holds"])[0] if device else None,
            "count": device.get("count") if "measured" in found and device else None}
    if told != expected:
        wrong.append(f"give: {told}, by the rules {expected}")


def disagreements(sheet, opinion):
    wrong = []
    if sheet["verdict"] != opinion.verdict:
        wrong.append(f"verdict: {sheet['verdict']} ({sheet.get('because')}), by the rules {opinion.verdict}")
    compare_amounts(sheet, opinion, "ordered", opinion.ordered, wrong)
    compare_amounts(sheet, opinion, "limit", opinion.limit, wrong)
    asked = {finding["code"] for finding in sheet["findings"] if finding["severity"] == "ask"}
    if asked != opinion.asks:
        wrong.append(f"asked: {sorted(asked)}, by the rules {sorted(opinion.asks)}")
    compare_give(sheet.get("give"), opinion.give, wrong)
    for check in sheet["checks"]:
        name = check["id"]
        if name not in CHECKS:
            continue
        made = check["status"] in ("within", "outside")
        if made != (name in opinion.checks):
            wrong.append(f"{name}: {check['status']} {check.get('why', '')}, by the rules "
                         + ("made" if name in opinion.checks else "not made"))
            continue
        if not made:
            continue
        within, share = opinion.checks[name]
        if (check["status"] == "within") != within:
            wrong.append(f"{name}: {check['status']}, by the rules {within}")
        elif share is not None:
            compare_percent(check["percent"], share, name, wrong)
    return wrong


def answers(console, cases, house):
    with tempfile.NamedTemporaryFile("w", suffix=".json") as rules:
        json.dump({"format": "wardchalk.house-rules", "version": 1, **house}, rules)
        rules.flush()
        lines = "".join(json.dumps(case) + "\n" for case in cases)
        run = subprocess.run([console, "batch", "--brief", "--rules", rules.name], input=lines, text=True,
                             capture_output=True, check=False)
    if run.returncode != 0:
        print(run.stderr, *[line for line in run.stdout.splitlines() if '"error"' in line][:5], sep="\n")
    return [json.loads(line) for line in run.stdout.splitlines()]


def main():
    console = sys.argv[1]
    count = int(sys.argv[2]) if len(sys.argv) > 2 else 2000
    draw = random.Random(int(sys.argv[3]) if len(sys.argv) > 3 else 20)
    failed, verdicts = 0, {}
    for number, house in enumerate(HOUSES):
        cases = [draw_case(draw) for _ in range(number, count, len(HOUSES))]
        sheets = answers(console, cases, house)
        if len(sheets) != len(cases):
            sys.exit(f"{len(sheets)} answers to {len(cases)} cases")
        for case, sheet in zip(cases, sheets):
            if "error" in sheet:
                failed += 1
                print(sheet["error"], json.dumps(case))
                continue
            opinion = Opinion(case, house)
            verdicts[opinion.verdict] = verdicts.get(opinion.verdict, 0) + 1
            wrong = disagreements(sheet, opinion)
            if wrong:
                failed += 1
                if failed <= 12:
                    print(json.dumps(case), json.dumps(house), *wrong, sep="\n  ")
    print(f"{count} cases, {failed} disagreements; by the rules:", verdicts)
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
