"""The rules of arithmetic (R2 to R9, R13, R14, R15 to R18, R19, R21, R27) a second time, in Python's fractions, against the console program.

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

sys.dont_write_bytecode = True  # the folder of the sources stays as it is
from rules_again import DOUBTS, Opinion, half_up, split  # noqa: E402
from rules_draw import draw_case  # noqa: E402

HOUSES = [
    {},
    {"pounds": "trade", "kilogram_decimals": 2, "round_to": "decimals",
     "reference_schedule_missing": "note", "order_schedule_missing": "one-dose"},
    {"kilogram_decimals": 1, "bsa_decimals": 3, "ask_below_percent": 80, "weight_older_than": "3 month"},
    {"pounds": "trade", "bsa_decimals": "none", "bsa_differs_percent": 2, "grace_percent": 2.5},
]

SIZE_FINDINGS = ("size-implausible", "weight-unlikely", "height-unlikely", "weight-unlikely-for-height")
CHECKS = ("single", "daily", "period", "max-single", "max-daily", "max-doses", "low", "schedule", "medicine",
          "concentration", "concentration-low", "infusion-time", "infusion-rate")


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
    doubt = opinion.leading_doubt()
    leads = sheet.get("because") if sheet.get("because") in DOUBTS and sheet["verdict"] == "ask" else None
    if leads != doubt:
        wrong.append(f"led by: {leads}, by the rules {doubt}")
    compare_amounts(sheet, opinion, "ordered", opinion.ordered, wrong)
    compare_amounts(sheet, opinion, "limit", opinion.limit, wrong)
    asked = {finding["code"] for finding in sheet["findings"] if finding["severity"] == "ask"}
    if asked != opinion.asks:
        wrong.append(f"asked: {sorted(asked)}, by the rules {sorted(opinion.asks)}")
    compare_give(sheet.get("give"), opinion.give, wrong)
    cut = {need["path"] for need in sheet["needs"]} & {"stock.divides_into"}
    if cut != opinion.needs:
        wrong.append(f"needs: {cut}, by the rules {opinion.needs}")
    told = sheet.get("as_prepared")
    told = told if told is None else {key: split(text)[0] for key, text in told.items()}
    if told != opinion.remedy:
        wrong.append(f"as prepared: {told}, by the rules {opinion.remedy}")
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


def pounds_disagree(sheet, case, house, given, opinion):
    """R17: over by exact pounds and within by 2.2 lb in 1 kg is told, whatever else is."""
    told = {finding["check"] for finding in sheet["findings"] if finding["arguments"].get("by") == "trade"}
    expected = set()
    in_pounds = any(unit in case["child"].get("weight", "") for unit in ("lb", "oz"))
    if house.get("pounds", "exact") == "exact" and in_pounds and not opinion.other:
        again = Opinion(case, {**house, "pounds": "trade"}, given).checks
        for name in ("single", "daily", "max-single", "max-daily"):
            if name in opinion.checks and not opinion.checks[name][0] and name in again and again[name][0]:
                expected = {name}
                break
    return [] if told == expected else [f"pounds decide: {told}, by the rules {expected}"]


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
    failed, sized, verdicts = 0, 0, {}
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
            given = [(found["code"], found["field"]) for found in sheet["findings"]
                     if found["code"] in SIZE_FINDINGS]
            sized += bool(given)
            opinion = Opinion(case, house, given)
            verdicts[opinion.verdict] = verdicts.get(opinion.verdict, 0) + 1
            wrong = disagreements(sheet, opinion) + pounds_disagree(sheet, case, house, given, opinion)
            if wrong:
                failed += 1
                if failed <= 12:
                    print(json.dumps(case), json.dumps(house), *wrong, sep="\n  ")
    print(f"{count} cases, {failed} disagreements, {sized} with an unlikely size; by the rules:", verdicts)
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
