"""The amount again (R9, R20, R21, R22): strength, device, the mark that keeps every check, two syringes, powder."""

from fractions import Fraction as F

from figures_again import ceil, change, in_unit, neighbours, quantity, split, strength

SYRINGES = [(F(1), F(1, 100)), (F(3), F(1, 10)), (F(5), F(1, 5)), (F(10), F(1, 5)), (F(20), F(1)), (F(60), F(1))]
ORAL, INJECTED = ("oral", "enteral"), ("intravenous", "intramuscular", "subcutaneous")
NEVER_INFUSED = ("oral", "rectal", "inhaled", "topical")


class Strength:
    """R9, powder: the first that is stated, and whether another one or the volumes speak against it."""

    def __init__(self, stock, unit):
        self.asks = set()
        volumes = [quantity(stock.get(key)) for key in ("final_volume", "diluent", "displacement")]
        self.final, self.diluent, self.displacement = volumes
        content = in_unit(*split(stock["content"]), unit) if "content" in stock else None
        stated = [strength(stock["strength"], unit)] if "strength" in stock else []
        if content is not None and self.final is not None:
            stated.append(content / self.final)
        if content is not None and self.diluent is not None and self.displacement is not None:
            stated.append(content / (self.diluent + self.displacement))
        self.content = content
        self.used = stated[0] if stated else None
        if any(change(other, self.used) > F(5, 100) for other in stated[1:]):
            self.asks.add("strength-differs")
        if self.final is not None and self.diluent is not None and self.final < self.diluent:
            self.asks.add("final-smaller-than-diluent")

    def prepare(self):
        """R22: what is added to a vial, and what it then makes."""
        if self.content is None or (self.diluent is None and self.final is None):
            return None
        add, makes = self.diluent, self.final
        if add is None and self.displacement is not None and self.displacement < self.final:
            add = self.final - self.displacement
        if makes is None and self.displacement is not None:
            makes = self.diluent + self.displacement
        if self.final is not None and self.final == self.diluent:
            makes = None
        return {"add": add, "makes": makes, "strength": self.used}


class Amount:
    """What is measured for one dose, or what is asked instead. `keeps` says whether a dose keeps every check."""

    def __init__(self, case, house, mixed, dose, keeps, pairs):
        self.order, self.stock, self.infusion = case["order"], case["stock"], case.get("infusion", {})
        self.house, self.dose, self.keeps, self.pairs = house, dose, keeps, pairs
        self.asks, self.needs = set(), set()
        self.exact = self.measured = self.holds = self.count = self.pair = self.prepare = None
        self.containers = None
        self.most_change = F(str(house.get("ask_rounding_percent", 5))) / 100
        route, solid = self.order.get("route"), self.stock["kind"] == "solid"
        self.strength, self.content = mixed.used, mixed.content
        if mixed.asks or self.strength is None:
            return
        self.exact = dose / self.strength
        self.prepare = mixed.prepare() if self.stock["kind"] == "powder" else None
        if solid:
            self.measure_solid()
        else:
            self.measure_liquid(route)

    @property
    def withheld(self):
        return self.exact is None

    def nearest(self, exact, step, most_change=None, beside=F(0)):
        """The nearer step that keeps every check, together with what is measured beside it."""
        for amount in neighbours(exact, step):
            within = most_change is None or change(amount, exact) <= most_change
            if amount > 0 and within and self.keeps((beside + amount) * self.strength):
                return amount
        return None

    # R21
    def measure_solid(self):
        capsule = self.stock["strength"].endswith("capsule")
        ways = [self.stock["divides_into"]] if "divides_into" in self.stock else [1] if capsule else [1, 2, 4]
        results = {self.nearest(self.exact, F(1, parts), self.most_change) for parts in ways}
        if len(results) > 1:
            self.needs.add("stock.divides_into")
            return
        self.measured = results.pop()
        if self.measured is None:
            self.asks.add("not-measurable")
        self.ask_many(self.measured)

    def step(self, exact, marks):
        """The coarser of the marks and the house decimals."""
        key, usual = ("volume_decimals_below_1_mL", 2) if exact < 1 else ("volume_decimals_from_1_mL", 1)
        return max(F(1, 10 ** self.house.get(key, usual)), marks)

    def syringes(self, route):
        kind = "oral" if route in ORAL else "injection"
        own = [one for one in self.house.get("syringes", []) if one["kind"] == kind]
        if "syringes" not in self.house:
            return SYRINGES
        return sorted((split(one["holds"])[0], split(one["marks"])[0]) for one in own)

    def measure_liquid(self, route):
        if self.exact < split(self.house.get("smallest_volume", "0.1 mL"))[0]:
            self.asks.add("too-small-to-measure")
            return
        by_marks = self.house.get("round_to") != "decimals"
        devices = self.syringes(route) if route in ORAL + INJECTED else []
        device = next((one for one in devices if one[0] >= self.exact), devices[-1] if devices else None)
        self.measured = self.nearest(self.exact, self.step(self.exact, device[1] if device and by_marks else F(0)))
        several = device is not None and device[0] < (self.exact if self.measured is None else self.measured)
        asks = set()
        if self.measured is None:
            asks.add("not-measurable")
        elif change(self.measured, self.exact) > self.most_change:
            asks.add("rounding-changes-dose")
        if self.pairs and by_marks and (asks or several) and route in ORAL + ("intravenous",):
            if self.take_pair(devices, several):
                self.ask_many(2)
                return
        self.asks |= asks
        if device:
            self.holds = device[0]
            if self.measured is not None:
                self.count = ceil(self.measured / device[0])
        self.ask_many(self.count)

    # R20
    def take_pair(self, devices, several):
        """One syringe full and the rest in another, where that comes much nearer than the single device."""
        smallest = split(self.house.get("smallest_volume", "0.1 mL"))[0]
        found = []
        for holds, _ in devices:
            rest = self.exact - holds
            other = next((one for one in devices if one[0] >= rest), None)
            if rest <= 0 or rest < smallest or other is None:
                continue
            measured = self.nearest(rest, self.step(rest, other[1]), beside=holds)
            if measured is not None:
                found.append((change(holds + measured, self.exact), -holds, measured, other))
        if not found:
            return False
        moved, full, measured, other = min(found)
        if self.measured is not None:
            single = change(self.measured, self.exact)
            if moved > (single if several else single / 2):
                return False
        if moved > self.most_change:
            return False
        self.measured = measured - full
        self.pair = {"full": -full, "rest": measured, "holds": other[0], "marks": other[1]}
        return True

    def ask_many(self, counted):
        """T23: more tablets, syringes or vials than anyone should draw up without a question."""
        if self.measured is None:
            return
        counts = [counted] if counted is not None else []
        if self.stock["kind"] == "powder" and self.content is not None:
            self.containers = ceil(self.measured * self.strength / self.content)
            counts.append(self.containers)
        if any(count > self.house.get("many_units", 3) for count in counts):
            self.asks.add("many-units")
