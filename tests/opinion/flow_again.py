"""How an infusion runs, again (R10): mL in an hour, drops in a minute, what the setting delivers."""

from fractions import Fraction as F

from figures_again import change, neighbours, quantity, split


class Setting:
    """A figure, and the nearest to it that can be set and keeps every check."""

    def __init__(self, exact, step, keeps):
        self.exact = exact
        self.measured = next((each for each in neighbours(exact, step) if each > 0 and keeps(each)), None)

    def moves_more_than(self, share):
        return self.measured is None or change(self.measured, self.exact) > share


class Flow:
    """`mL_per_h` and `drops_per_min` of mL in a minute. `keeps` judges a setting, in mL in a minute."""

    def __init__(self, per_minute, infusion, house, keeps):
        self.asks = set()
        share = F(str(house.get("ask_rounding_percent", 5))) / 100
        step = F(1, 10 ** house.get("rate_decimals", 1))
        self.mL_per_h = Setting(per_minute * 60, step, lambda rate: keeps(rate / 60))
        self.drops_per_min = None
        if "drop_factor" in infusion:
            drops = split(infusion["drop_factor"])[0]
            self.drops_per_min = Setting(per_minute * drops, F(1), lambda rate: keeps(rate / drops))
        for setting in (self.mL_per_h, self.drops_per_min):
            if setting is not None and setting.moves_more_than(share):
                self.asks.add("rounding-changes-rate")


class InfusedDose:
    """A measured dose made up to its volume and run over its time; nothing runs where the volume is below the dose."""

    def __init__(self, opinion, amount):
        self.asks, self.flow, self.delivers = set(), None, None
        volume, minutes = quantity(opinion.infusion.get("volume")), quantity(opinion.infusion.get("over"))
        if volume is None or amount.withheld:
            return
        if volume < max(amount.exact, amount.measured or 0):
            self.asks.add("volume-smaller-than-drug")
            return
        if minutes is None or amount.measured is None:
            return
        dose = amount.measured * amount.strength

        def keeps(per_minute):
            lasts = volume / per_minute
            if opinion.held("infusion-time") and lasts < opinion.least_minutes:
                return False
            return not opinion.held("infusion-rate") or dose / lasts <= opinion.most_a_minute

        self.flow = Flow(volume / minutes, opinion.infusion, opinion.house, keeps)
        self.asks |= self.flow.asks
        if self.flow.mL_per_h.measured is not None:
            self.delivers = (dose, volume / self.flow.mL_per_h.measured * 60)


class RunningRate:
    """A dose for each minute or hour, as a flow of what is in the bag."""

    def __init__(self, opinion, strength):
        self.asks, self.flow, self.delivers = set(), None, None
        size, time = opinion.rate_is_per
        per_time = 60 if time == "h" else 1

        def dose_rate(per_minute):
            """In the order's unit and time, for this child."""
            return per_minute * per_time * strength

        def keeps(per_minute):
            given = dose_rate(per_minute)
            at_most = (opinion.rate_at_most, opinion.rate_fastest, opinion.day_at_most)
            if any(most is not None and given > most for most in at_most):
                return False
            if opinion.low_kept:
                return given >= opinion.rate_at_least * opinion.low_kept
            return not opinion.held("low") or given >= opinion.rate_at_least

        per_minute = opinion.rate / strength / per_time
        volume, minutes = quantity(opinion.infusion.get("volume")), quantity(opinion.infusion.get("over"))
        share = F(str(opinion.house.get("ask_rounding_percent", 5))) / 100
        if volume is not None and minutes is not None and change(volume / minutes, per_minute) > share:
            self.asks.add("flow-differs")  # two flows on the papers: neither is told
            return
        self.flow = Flow(per_minute, opinion.infusion, opinion.house, keeps)
        self.asks |= self.flow.asks
        if self.flow.mL_per_h.measured is not None:
            self.delivers = (dose_rate(self.flow.mL_per_h.measured / 60) / size, None)
