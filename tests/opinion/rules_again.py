"""The rules of arithmetic (R2 to R10, R13 to R22, R27) written again in fractions, from their text and from nothing else."""

import unicodedata
from fractions import Fraction as F

from amount_again import INJECTED, NEVER_INFUSED, Amount, Strength
from figures_again import (DoNotMeet, MINUTES, ceil, ceil1, days, half_up, in_unit, parts, quantity, root_half_up, split,
                           strength)
from flow_again import InfusedDose, RunningRate

SCHEDULES = {  # R4: doses a day, from and to
    "every 24 h": (F(1), F(1)), "every 12 h": (F(2), F(2)), "every 8 h": (F(3), F(3)), "every 6 h": (F(4), F(4)),
    "every 5 h": (F(24, 5), F(24, 5)), "every 36 h": (F(2, 3), F(2, 3)), "every 4 to 6 h": (F(4), F(6)),
    "every 8 to 12 h": (F(2), F(3)), "3 times a day": (F(3), F(3)), "2 to 3 times a day": (F(2), F(3)),
    "BID": (F(2), F(2)), "q6h": (F(4), F(4)), "daily": (F(1), F(1)), "2 times a week": (F(2, 7), F(2, 7)),
    "5 times a week": (F(5, 7), F(5, 7)), "every 2 day": (F(1, 2), F(1, 2)), "weekly": (F(1, 7), F(1, 7)),
    "every 16 h": (F(3, 2), F(3, 2)), "every 7 to 9 h": (F(24, 9), F(24, 7)),
}
ONCE = "once"

# R18: what leads among what is asked
DOUBTS = ["size-implausible", "weight-unlikely-for-height", "weight-unlikely", "height-unlikely", "weight-old",
          "bsa-differs", "strength-differs", "final-smaller-than-diluent"]


def plain_name(name):
    """R13, for the names that are drawn: capitals, blanks, accents and what is ignored do not count."""
    letters = unicodedata.normalize("NFD", (name or "").replace("\u00ad", "").replace("\u200d", ""))
    return " ".join("".join(c for c in letters if not unicodedata.combining(c)).casefold().split())


def timed(dose):
    """What a dose is stated per: dose, day, week, h, min; kg, m2 or its unit where nothing is said."""
    return split(dose)[1].split("/")[-1]


def form_fits(case):
    """R9: nothing solid is injected or runs over a time; nothing runs over a time by mouth, into the rectum, onto the
    skin, nor, but for a rate into a nebuliser, inhaled."""
    route, infusion = case["order"].get("route"), case.get("infusion", {})
    at_rate = timed(case["order"]["dose"]) in MINUTES
    runs = bool(infusion) or at_rate
    if case.get("stock", {}).get("kind") == "solid" and (runs or route in INJECTED):
        return False
    return not (runs and route in NEVER_INFUSED) or (route == "inhaled" and at_rate and not infusion)


class Opinion:
    """What R2 to R8 say of one case under one set of house rules."""

    def __init__(self, case, house, given, pairs=True):
        """`given`: the findings on how likely the size is, with the field that they are about. Growth tables are no
        arithmetic; what they say is taken from the program, and what follows from it is worked here. `pairs`: whether
        two syringes may be measured with (R20)."""
        self.case, self.pairs = case, pairs
        self.child, self.order, self.reference = case["child"], case["order"], case["reference"]
        self.stock, self.infusion = case.get("stock"), case.get("infusion", {})
        self.remedy, self.needs, self.graced, self.low_kept = None, set(), {}, None
        self.give = self.running = self.least_volume = None
        self.house = house
        self.asks, self.undecided = set(), set()
        self.weigh_doubts(given)
        self.missing = set()
        self.checks = {}
        self.limit, self.ordered = {}, {}
        self.unscheduled = None
        self.find_size()
        self.unit = split(self.order["dose"])[1].split("/")[0]
        self.rate_order = timed(self.order["dose"]) in MINUTES
        if self.rate_order:
            self.work_rate()
        else:
            self.work()

    # R18
    def weigh_doubts(self, given):
        """A doubt about a size that no limit, maximum, order or band uses is a note."""
        doses = [self.order.get("dose", "")] + [self.reference.get(key, "") for key in (
            "high", "low", "max_per_dose", "max_per_day", "max_infusion_rate")]
        banded = lambda size: any(f"{size}_{edge}" in self.reference for edge in ("from", "over", "below", "up_to"))
        surface = any("/m2" in dose for dose in doses) or banded("bsa")
        computed = surface and "bsa" not in self.child
        weight = any("/kg" in dose for dose in doses) or banded("weight") or computed
        self.size_counts = weight or surface
        oldest = self.house.get("weight_older_than")
        if oldest and weight and "weight" in self.child:
            if "weighed" not in self.child or days(self.child["weighed"]) > days(oldest):
                self.asks.add("weight-old")  # R27
        in_use = {"child.weight": weight, "child.height": computed, "child.bsa": surface}
        for code, field in given:
            used = in_use[field] or (computed and field == "child.weight") or (
                code == "weight-unlikely-for-height" and (weight or computed))
            if code == "weight-unlikely-for-height" and "age" not in self.child and (
                    self.house.get("size_without_age") == "note"):
                continue
            if used:
                stopped = code == "size-implausible" and not self.child.get("size_confirmed")
                (self.undecided if stopped else self.asks).add(code)

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
                if not near and self.size_counts:
                    self.asks.add("bsa-differs")

    def sized(self, text):
        """A dose of the child in the order's unit, or None while its size is not known, and what it is stated per."""
        if text is None:
            return None, None, None
        number, rest = split(text)
        unit, *per = rest.split("/")
        if unit == "mL":
            number, unit = number * self.per_ml if self.per_ml is not None else None, self.unit
        if number is None:
            return None, None, None
        amount = in_unit(number, unit, self.unit)
        size_name = next((p for p in per if p in ("kg", "m2")), None)
        time = next((p for p in per if p not in ("kg", "m2")), None)
        size = {"kg": self.kg, "m2": self.m2, None: F(1)}[size_name]
        if size is None:
            self.missing.add(size_name)
            return None, time, size_name
        return amount * size, time, size_name

    # R13
    def compare_medicine(self):
        reference, ordered = self.reference, plain_name(self.order.get("medicine"))
        names = [plain_name(name) for name in [reference.get("medicine")] + reference.get("also_called", "").split(";")]
        names = [name for name in names if name]
        if names and not ordered:
            self.missing.add("medicine")
        self.other = bool(names and ordered and ordered not in names)
        if names and ordered:
            self.checks["medicine"] = (not self.other, None)

    # R10
    def work_rate(self):
        """A dose for each minute or hour: held against the reference's rate and greatest rate, against the most in 24 h
        by the time that it runs, and its bag against the concentrations."""
        order, reference = self.order, self.reference
        self.compare_medicine()
        self.limit, self.ordered = {"dose": None, "day": None}, {"dose": None, "day": None}
        if order.get("schedule", "continuous") != "continuous" or timed(reference["high"]) not in MINUTES:
            self.undecided.add("basis-does-not-fit")
        size, time = split(order["dose"])[1].split("/")[1:-1], timed(order["dose"])
        self.rate = self.sized(order["dose"])[0]
        self.rate_is_per = ({"kg": self.kg, "m2": self.m2, None: F(1)}[size[0] if size else None], time)
        self.rate_at_most = self.bound_of_rate(reference["high"], time)
        self.rate_at_least = self.bound_of_rate(reference.get("low"), time)
        if not self.other:
            self.rate_fastest = self.bound_of_rate(reference.get("max_infusion_rate"), time)
            self.compare_day_of_rate(time)
            if self.rate is not None and self.rate_at_most is not None:
                self.checks["rate"] = (self.rate <= self.rate_at_most, self.rate / self.rate_at_most)
            if self.rate is not None and self.rate_fastest is not None:
                self.checks["infusion-rate"] = (self.rate <= self.rate_fastest, self.rate / self.rate_fastest)
            self.compare_low_rate()
            self.compare_bag()
            if "schedule" in reference and order.get("schedule") == "continuous":
                self.checks["schedule"] = (reference["schedule"] == "continuous", None)
        self.judge()

    def compare_day_of_rate(self, time):
        """24 h at that rate, or as long as it runs where a run time within the day is stated."""
        over = quantity(self.infusion.get("over"))
        all_day = MINUTES["h"] * 24
        runs = all_day if over is None else min(over, all_day)
        self.runs_in_day, self.day_at_most = runs / MINUTES[time], None
        text = self.reference.get("max_per_day")
        most = self.meets(lambda: self.sized(text)[0]) if text else None
        if most is None:
            return
        self.limit["day"] = most
        if self.rate is None:
            return
        total = self.rate * self.runs_in_day
        self.ordered["day"] = total
        self.checks["max-daily"] = (total <= most, total / most)
        self.day_at_most = most / self.runs_in_day
        if runs < all_day and total <= most and self.order.get("schedule") == "continuous":
            through = most / (all_day / MINUTES[time])
            if self.rate > through:
                self.asks.add("run-time-open")
            else:
                self.day_at_most = through  # no setting may make it a question either

    def compare_low_rate(self):
        """The low end is never above what the maxima let be given."""
        reference = self.reference
        if "rate" not in self.checks or self.rate_at_least is None or reference.get("limit_only"):
            return
        bounds = [self.rate_at_least]
        if "max_infusion_rate" in reference:
            bounds.append(self.rate_fastest)
        if "max_per_day" in reference:
            bounds.append(self.limit["day"] / self.runs_in_day if self.limit["day"] is not None else None)
        if None in bounds:
            return
        self.rate_at_least = min(bounds)
        self.checks["low"] = (self.rate >= self.rate_at_least, self.rate / self.rate_at_least)

    def compare_bag(self):
        """What the label of the bag says against the concentrations; one that other papers contradict says nothing."""
        reference, stock = self.reference, self.stock or {}
        least_minutes, minutes = quantity(reference.get("min_infusion_time")), quantity(self.infusion.get("over"))
        if least_minutes is not None and minutes is not None:
            self.checks["infusion-time"] = (minutes >= least_minutes, minutes / least_minutes)
        if stock.get("kind") == "solid" or "strength" not in stock:
            return
        mixed = self.meets(lambda: Strength(stock, self.unit))
        if mixed is None or mixed.asks:
            return
        for name, key in (("concentration", "max_concentration"), ("concentration-low", "min_concentration")):
            bound = self.meets(lambda: strength(reference[key], self.unit)) if key in reference else None
            if bound is not None:
                share = mixed.used / bound
                self.checks[name] = (share <= 1 if name == "concentration" else share >= 1, share)
        if "concentration-low" in self.checks and not self.checks["concentration-low"][0]:
            self.asks.add("too-dilute")

    def bound_of_rate(self, text, time):
        """For this child in the order's unit and time, or None."""
        if text is None or timed(text) not in MINUTES:
            return None
        bound = self.meets(lambda: self.sized(text)[0])
        return bound / MINUTES[timed(text)] * MINUTES[time] if bound is not None else None

    def meets(self, reckon):
        try:
            return reckon()
        except DoNotMeet:
            self.undecided.add("units-do-not-meet")
            return None

    def held(self, name):
        """Whether a check was made and is within."""
        return name in self.checks and self.checks[name][0]

    def order_in_ml(self):
        """R5: the strength of R9 makes a dose of it; papers that say two make none."""
        self.unit = split(self.stock.get("content") or self.stock["strength"])[1].split("/")[0]
        mixed = Strength(self.stock, self.unit)
        self.per_ml = mixed.used
        if "strength-differs" in mixed.asks:
            self.undecided.add("strength-differs")
        if mixed.used is None:
            self.missing.add("strength")

    def work(self):
        order, reference = self.order, self.reference
        self.per_ml = None
        if self.unit == "mL":
            self.order_in_ml()
        schedule, own = order.get("schedule"), reference.get("schedule")
        once, own_once = schedule == ONCE, own == ONCE

        self.compare_medicine()
        # R14
        m = F(1) if own_once else F(reference["max_doses_per_day"]) if "max_doses_per_day" in reference else None
        written = SCHEDULES.get(schedule)
        a, b = SCHEDULES.get(own, (None, None))
        n = F(1) if once else written[1] if written else None
        if n is not None and "max_doses_per_day" in order:
            n = min(n, F(order["max_doses_per_day"]))
        # R15
        order_per_day = order["dose"].endswith("/day")
        high_per_time = timed(reference["high"]) in ("day", "week")
        self.one_dose = (schedule is None and self.house.get("order_schedule_missing") == "one-dose"
                         and not order_per_day and not (high_per_time and own is None))
        k = F(order["max_doses_per_day"]) if schedule is None and "max_doses_per_day" in order else None
        if schedule is None and not self.one_dose:
            self.missing.add("schedule")
        as_needed = order.get("as_needed", False)

        # R4
        if written and not as_needed and any(end > 1 and end.denominator != 1 for end in written):
            self.asks.add("interval-odd")

        # R5
        amount, order_time, order_size = self.sized(order["dose"])
        day_ordered = amount if order_time == "day" else None
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
        self.against_rate = timed(reference["high"]) in MINUTES
        if self.against_rate or schedule == "continuous":
            self.undecided.add("basis-does-not-fit")
        if self.other:
            self.most_a_minute = self.least_minutes = None
            self.ordered = {"dose": O, "day": OD}
            self.limit = {"dose": None, "day": None}
            return self.judge()

        # R6
        high, time, high_size = self.sized(reference["high"])
        low = self.sized(reference.get("low"))[0]
        max_dose = self.sized(reference.get("max_per_dose"))[0]
        max_day = self.sized(reference.get("max_per_day"))[0]
        S = D = W = None
        if high is not None and not self.against_rate:
            if time == "dose":
                S = high
                D = high if own_once else high * min(ceil(b), m or ceil(b)) if b is not None \
                    else high * m if m is not None else None
            elif time == "day":
                D = high
                doses = F(1) if own_once else ceil1(a) if a is not None else ceil1(n) if n is not None else None
                S = high / doses if doses is not None else None
            else:
                W = high
                S = W if own_once else W / max(7 * a, 1) if a is not None \
                    else W if once else W / max(7 * n, 1) if n is not None else None
        if time == "day" and own is None and n is not None and n < 2:
            self.how_often("division-unknown")
        day_known = "max_per_day" in reference or (m is not None and m >= 2)
        if time == "dose" and own is None and written and not (n >= 1 and day_known):
            self.how_often("schedule-unknown")
        self.compare_count(O, n, m, D, max_day, once, as_needed and "max_doses_per_day" not in order,
                           time == "day" and own is not None)
        if self.fewer is not None and O is not None:
            OD = O * self.fewer
        day = [x for x in (D, max_day) if x is not None]
        self.limit["day"] = min(day) if day else None
        dose = [x for x in (S, max_dose, max_day if once or self.one_dose else self.limit["day"]) if x is not None]
        self.limit["dose"] = min(dose) if dose else None
        self.ordered = {"dose": O, "day": OD}

        # R7
        def at_most(name, value, bound):
            if value is not None and bound is not None:
                self.checks[name] = (value <= bound, value / bound)

        at_most("single", O, S)
        at_most("max-single", O, max_dose)
        at_most("max-daily", O if once else OD, max_day)
        if schedule is None and max_day is not None:
            if day_ordered is not None:
                at_most("max-daily", day_ordered, max_day)
            elif O is not None and k is not None:
                at_most("max-daily", O * k, max_day)
            elif O is not None and O > max_day:
                at_most("max-daily", O, max_day)
            else:
                self.unscheduled = max_day
        if schedule is None and k is not None and m is not None:
            self.checks["max-doses"] = (k <= m, k / m)
        if not once:
            at_most("daily", OD, D)
            rarely = (written and written[1] < 1) or (b is not None and b < 1)
            if O is not None and n is not None and (rarely or time == "week"):
                week = W if time == "week" else S * 7 * b if S is not None and b is not None else None
                at_most("period", O * 7 * n, week)
            if written and own is not None:
                inside = not own_once and (written[1] <= b if as_needed else a <= written[0] and written[1] <= b)
                self.checks["schedule"] = (inside, None)
        self.compare_low(O, n, S, D, W, time, low, max_dose, max_day, once, as_needed, b, own_once, k)
        self.compare_infusion(O)
        self.compare_unrounded(order_size, high_size)
        self.judge()

    def how_often(self, code):
        if self.house.get("reference_schedule_missing") != "note":
            self.asks.add(code)

    def compare_count(self, O, n, m, D, max_day, once, is_open, day_shared):
        """R14: max-doses, and how many are counted of an order as needed that does not say."""
        self.fewer = None
        if n is None:
            return
        if once or not is_open:
            if m is not None:
                self.checks["max-doses"] = (ceil1(n) <= m, ceil1(n) / m)
            return
        fit = [m] if m is not None else []
        if O is not None:
            fit += [F(day // O) for day in (max_day, D if day_shared else None) if day is not None]
        if not fit or min(fit) == 0:
            return
        self.checks["max-doses"] = (ceil1(n) <= min(fit), ceil1(n) / min(fit))
        if min(fit) < ceil1(n):
            self.fewer = min(fit)
            self.asks.add("max-doses-open")

    def compare_low(self, O, n, S, D, W, time, low, max_dose, max_day, once, as_needed, b, own_once, k):
        reference = self.reference
        if reference.get("limit_only") or O is None or self.against_rate:
            return
        day_shared = time == "day" and (own_once or b is not None)
        if time != "dose" and not day_shared and (once or as_needed):
            return
        if ("max_per_dose" in reference and max_dose is None) or ("max_per_day" in reference and max_day is None):
            return
        if self.one_dose:
            if time == "week":
                return
            shared = F(1) if time == "dose" or own_once else ceil1(b)
            if time == "day" and as_needed:
                shared = k = max(shared, k or 0)
            stated = "low" in reference
            end = low if stated else (S if time == "dose" else D)
            if end is None:
                return
            caps = [max_dose, max_day / (k or shared) if max_day is not None else None]
            bound = min([end / shared] + [cap for cap in caps if cap is not None])
            if not stated:
                bound = bound * F(self.house.get("ask_below_percent", 90), 100)
            self.checks["low"] = (O >= bound, O / bound)
            return
        if n is None and (time != "dose" or max_day is not None):
            return
        if day_shared and (once or as_needed):
            # one dose of a day: its amounts are shared among the most doses that the reference gives, or among
            # those of an order as needed where it gives more
            among = F(1) if own_once else ceil1(b)
            if not once:
                among = max(among, ceil1(n))
            value, high = O, D / among if D is not None else None
            low = low / among if low is not None else None
            caps = [max_dose, max_day / among if max_day is not None else None]
        elif time == "dose":
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

    # R10
    def compare_infusion(self, O):
        """The dose in its volume and its time."""
        infusion, reference = self.infusion, self.reference
        volume, minutes = quantity(infusion.get("volume")), quantity(infusion.get("over"))
        self.most_concentrated = self.concentration(reference.get("max_concentration"))
        self.least_concentrated = self.concentration(reference.get("min_concentration"))
        self.least_minutes = quantity(reference.get("min_infusion_time"))
        if O is not None and self.most_concentrated is not None:
            self.least_volume = O / self.most_concentrated
        rate, per, _ = self.sized(reference.get("max_infusion_rate")) if infusion else (None, None, None)
        self.most_a_minute = rate / (60 if per == "h" else 1) if rate is not None else None
        if not infusion:
            return
        if O is not None and volume is not None:
            if self.most_concentrated is not None:
                share = O / volume / self.most_concentrated
                self.checks["concentration"] = (share <= 1, share)
            if self.least_concentrated is not None:
                share = O / volume / self.least_concentrated
                self.checks["concentration-low"] = (share >= 1, share)
                if share < 1:
                    self.asks.add("too-dilute")
        if minutes is not None and self.least_minutes is not None:
            self.checks["infusion-time"] = (minutes >= self.least_minutes, minutes / self.least_minutes)
        if O is not None and minutes is not None and self.most_a_minute is not None:
            share = O / minutes / self.most_a_minute
            self.checks["infusion-rate"] = (share <= 1, share)

    def concentration(self, text):
        """Of the order's unit in one mL."""
        return strength(text, self.unit) if text is not None else None

    # R19
    def to_prepare(self, outside):
        """What makes it safe that is unsafe as prepared; None where something else is wrong."""
        prepared = {"concentration", "infusion-time", "infusion-rate"} & outside
        if self.rate_order:  # no dose, so no least volume and no least time
            return None
        if self.verdict != "unsafe" or self.missing or self.other or not prepared:
            return None
        if outside - prepared - {"low", "schedule", "concentration-low"} and not (
                outside & {"max-doses"} == outside - prepared - {"low", "schedule", "concentration-low"}
                and "max-doses-open" in self.asks):
            return None
        O, told = self.ordered["dose"], {}
        def step(value):
            return F(1, 10) if value < 10 else F(1)
        if "concentration" in prepared:
            least = O / self.most_concentrated
            told["volume_at_least"] = ceil(least / step(least)) * step(least)
            if self.least_concentrated is not None:
                most = O / self.least_concentrated
                told["volume_at_most"] = most // step(most) * step(most)
        if prepared != {"concentration"}:
            times = [self.least_minutes] if self.least_minutes is not None else []
            times += [O / self.most_a_minute] if self.most_a_minute is not None else []
            told["over_at_least"] = ceil(max(times))
        return told

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
        if self.graced and dose > self.ordered["dose"]:
            return False
        for name, (within, share) in self.checks.items():
            if name in self.graced and share * dose / self.ordered["dose"] > self.graced[name]:
                return False
            if name == "low" and self.low_kept and share * dose / self.ordered["dose"] < self.low_kept:
                return False
            if share is None or not within or name in ("max-doses", "infusion-time"):
                continue
            again = share * dose / self.ordered["dose"]
            if (again < 1) if name in ("low", "concentration-low") else (again > 1):
                return False
        return self.unscheduled is None or dose <= self.unscheduled

    def measure(self):
        """The amount, and how it runs."""
        if not form_fits(self.case):
            self.asks.add("form-differs-from-route")
            return
        if not self.stock:
            return
        if self.rate_order:
            self.measure_rate()
            return
        amount = Amount(self.case, self.house, self.mixed, self.ordered["dose"], self.keeps, self.pairs)
        self.asks |= amount.asks
        if self.is_the_most_that_fits(amount):
            self.asks.discard("below-usual")
        self.needs |= amount.needs
        self.give = None if amount.withheld else amount
        self.run(InfusedDose(self, amount))

    def is_the_most_that_fits(self, amount):
        """Whether the next part of a solid would be over a limit: then less than the usual dose is not asked about."""
        doubted = self.asks & set(DOUBTS[:6])
        if self.stock["kind"] != "solid" or amount.measured is None or doubted:
            return False
        capsule = self.stock["strength"].endswith("capsule")
        part = 1 if capsule else int(self.stock.get("divides_into", 4))
        times = (amount.measured + F(1, part)) / amount.exact
        limits = ("single", "daily", "period", "max-single", "max-daily")
        over = any(name in self.checks and self.checks[name][1] * times > 1 for name in limits)
        return over or (self.unscheduled is not None and self.ordered["dose"] * times > self.unscheduled)

    def measure_rate(self):
        if "strength" in self.stock and not self.mixed.asks:
            self.run(RunningRate(self, self.mixed.used))

    def run(self, running):
        self.asks |= running.asks
        self.running = running if running.flow else None

    # R8
    def judge(self):
        self.mixed = self.meets(lambda: Strength(self.stock, self.unit)) if self.stock else None
        if self.mixed:
            self.asks |= self.mixed.asks - self.undecided  # what the labels say of one another, whatever the dose is
        outside = {name for name, (within, _) in self.checks.items() if not within}
        self.below = None
        if "low" in outside:
            self.below = "below-low" if "low" in self.reference else "below-usual"
            doubted = (self.asks | self.undecided) & set(DOUBTS[:6])
            part = F(str(self.house.get("ask_low_percent", 97))) / 100
            if self.below == "below-low" and not doubted and self.checks["low"][1] >= part:
                self.low_kept = part
            else:
                self.asks.add(self.below)
        if "schedule" in outside:
            self.asks.add("schedule-differs")
        # R16
        grace = 1 + F(str(self.house.get("grace_percent", 0))) / 100
        graced = {"single", "daily", "period"} & outside
        unsafe = outside & {"single", "daily", "period", "max-single", "max-daily", "max-doses", "concentration",
                            "infusion-time", "infusion-rate", "rate"}
        if "max-doses-open" in self.asks:
            unsafe = unsafe - {"max-doses"}
        in_doubt = (self.asks | self.undecided) & set(DOUBTS[:6])
        if (grace > 1 and graced and unsafe == graced and not in_doubt and not self.reference.get("limit_only")
                and all(self.checks[name][1] <= grace for name in graced)):
            self.asks.add("over-within-grace")
            self.graced, outside = {name: grace for name in graced}, outside - graced
        if self.undecided:
            self.verdict = "undecided"
        elif self.other:
            self.verdict = "not-covered"
        elif "max-doses" in outside and "max-doses-open" not in self.asks:
            self.verdict = "unsafe"
        elif outside & {"single", "daily", "period", "max-single", "max-daily", "concentration", "infusion-time",
                        "infusion-rate", "rate"}:
            self.verdict = "unsafe"
        elif self.missing:
            self.verdict = "undecided"
        else:
            self.measure()
            self.verdict = "ask" if self.asks else "safe"
        self.remedy = self.to_prepare(outside)

    # R18
    def leading_doubt(self):
        """The doubt about a fact that an ask is led by; None where there is none."""
        if self.verdict != "ask":
            return None
        return next((code for code in DOUBTS if code in self.asks), None)
