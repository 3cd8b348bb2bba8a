"""Where a worksheet of the program and the second opinion differ, in words."""

from fractions import Fraction as F

from figures_again import change, half_up, quantity, split, strength
from rules_again import DOUBTS

CHECKS = ("single", "daily", "period", "max-single", "max-daily", "max-doses", "low", "schedule", "medicine",
          "concentration", "concentration-low", "infusion-time", "infusion-rate", "rate")


def differ(name, found, expected):
    return [] if found == expected else [f"{name}: {found}, by the rules {expected}"]


def figure(found, key="exact"):
    return F(found[key]) if found and key in found else None


def percents(name, text, share):
    expected = half_up(share * 100, 1)
    if share != 1 and expected == 100:  # R1: never reads 100 unless equal
        return [f"{name}: reads {text} %, and is not equal"] if F(text) == 100 else []
    return [] if F(text) == expected else [f"{name}: {text} %, by the rules {float(expected)} %"]


def changes(name, found, measured, exact):
    """By how many percent a measured figure differs from the exact one."""
    if measured is None or "percent_change" not in found:
        return []
    return percents(f"{name} changes by", found["percent_change"], change(measured, exact))


def amounts(sheet, opinion):
    return [each for name, expected in (("ordered", opinion.ordered), ("limit", opinion.limit)) for key in ("dose", "day")
            for each in differ(f"{name}.{key}", figure(sheet.get(name, {}).get(key)), expected[key])]


def checks(sheet, opinion):
    wrong = []
    for check in sheet["checks"]:
        name = check["id"]
        if name not in CHECKS:
            continue
        made = check["status"] in ("within", "outside")
        wrong += differ(f"{name} ({check['status']} {check.get('why', '')}) made", made, name in opinion.checks)
        if made and name in opinion.checks:
            within, share = opinion.checks[name]
            wrong += differ(name, check["status"], "within" if within else "outside")
            if share is not None:
                wrong += percents(name, check["percent"], share)
    return wrong


def pair(found):
    if not found:
        return None
    rest = found["rest"]
    return {"full": quantity(found["full"]), "rest": F(rest["measured"]), "holds": quantity(rest["holds"]),
            "marks": quantity(rest["marks"])}


def prepared(found, expected, unit):
    if not found or not expected:
        return differ("prepared", bool(found), bool(expected))
    wrong = differ("add", quantity(found.get("add")), expected["add"])
    wrong += differ("makes", quantity(found.get("makes")), expected["makes"])
    if "≈" in found["strength"]:  # told to four digits; the exact one is compared with the worksheet's strength
        return wrong
    return wrong + differ("strength after mixing", strength(found["strength"], unit), expected["strength"])


def mixed(found, amount, unit):
    """The strength used, wherever an amount comes from it."""
    if not amount or not found:
        return differ("strength", bool(found), True) if amount else []
    told, _, container = found["unit"].partition("/")
    return differ("strength", strength(f"1 {told}/{container}", unit) * F(found["exact"]), amount.strength)


def give(found, amount, unit):
    if not found or not amount:
        return differ("give", bool(found), bool(amount))
    device = found.get("device", {})
    wrong = differ("give", figure(found), amount.exact) + differ("measured", figure(found, "measured"), amount.measured)
    wrong += differ("device", quantity(device.get("holds")), amount.holds)
    wrong += differ("syringes", device.get("count") if "measured" in found and device else None, amount.count)
    wrong += differ("pair", pair(found.get("pair")), amount.pair)
    if amount.measured is not None and amount.measured == figure(found, "measured"):
        wrong += differ("dose given", figure(found.get("dose_given")), amount.measured * amount.strength)
        wrong += differ("vials", found.get("containers"), amount.containers)
        wrong += prepared(found.get("prepare"), amount.prepare, unit)
        wrong += changes("amount", found, amount.measured, amount.exact)
        if amount.pair and "pair" in found:
            wrong += differ("sum", figure(found["pair"], "measured"), amount.measured)
            wrong += changes("pair", found["pair"], amount.measured, amount.exact)
    return wrong


def running(found, expected):
    if not found or not expected:
        return differ("rate", bool(found), bool(expected))
    wrong = []
    for name in ("mL_per_h", "drops_per_min"):
        setting, told = getattr(expected.flow, name), found.get(name)
        if not setting or not told:
            wrong += differ(name, bool(told), bool(setting))
            continue
        wrong += differ(name, figure(told), setting.exact)
        wrong += differ(f"{name}, set", figure(told, "measured"), setting.measured)
        wrong += changes(name, told, setting.measured, setting.exact)
    if expected.delivers:
        amount, minutes = expected.delivers
        delivers = found.get("delivers", {})
        wrong += differ("delivers", figure(delivers), amount) + differ("in", figure(delivers.get("over")), minutes)
    return wrong


def remedy(sheet):
    told = sheet.get("as_prepared")
    return told if told is None else {key: split(text)[0] for key, text in told.items()}


def disagreements(sheet, opinion):
    wrong = differ(f"verdict ({sheet.get('because')})", sheet["verdict"], opinion.verdict)
    leads = sheet.get("because") if sheet.get("because") in DOUBTS and sheet["verdict"] == "ask" else None
    wrong += differ("led by", leads, opinion.leading_doubt())
    asked = {finding["code"] for finding in sheet["findings"] if finding["severity"] == "ask"}
    wrong += differ("asked", sorted(asked), sorted(opinion.asks))
    cut = {need["path"] for need in sheet["needs"]} & {"stock.divides_into"}
    wrong += differ("needs", cut, opinion.needs) + differ("as prepared", remedy(sheet), opinion.remedy)
    wrong += amounts(sheet, opinion) + checks(sheet, opinion)
    wrong += differ("least volume", figure(sheet.get("volume", {}).get("minimum")), opinion.least_volume)
    wrong += mixed(sheet.get("strength"), opinion.give, opinion.unit)
    return wrong + give(sheet.get("give"), opinion.give, opinion.unit) + running(sheet.get("rate"), opinion.running)
