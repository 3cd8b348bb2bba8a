"""The rules of arithmetic (R2 to R10, R13 to R22, R27) a second time, in Python's fractions, against the console program.

Written from the text of the rules and from nothing else. Draws cases of the common kinds (per dose, day and week; per
kg, per m2 and flat; schedules, maxima, low ends, as needed, once, caps, charted surface; liquids, powders, tablets,
orders in mL; rate orders and infused doses with pump and drops; amounts that one syringe shows badly), has the console
work them, and compares the verdict, what is asked, limits, ordered doses, status and percent of every check of the
dose, the amount with its device, two syringes (where the console measures with two), preparation, and how it runs.
Prints each disagreement and ends with status 1 if there is any.

    rules_opinion.py CONSOLE [COUNT [SEED]]
"""

import collections
import json
import random
import subprocess
import sys
import tempfile

sys.dont_write_bytecode = True  # the folder of the sources stays as it is
from compare_again import disagreements  # noqa: E402
from draw_doses import draw_infused, draw_syringes  # noqa: E402
from draw_rates import draw_rate  # noqa: E402
from rules_again import Opinion  # noqa: E402
from rules_draw import draw_case  # noqa: E402

HOUSES = [
    {},
    {"pounds": "trade", "kilogram_decimals": 2, "round_to": "decimals",
     "reference_schedule_missing": "note", "order_schedule_missing": "one-dose", "size_without_age": "note",
     "ask_rounding_percent": 6, "many_units": 5, "smallest_volume": "0.02 mL"},
    {"kilogram_decimals": 1, "bsa_decimals": 3, "ask_below_percent": 80, "weight_older_than": "3 month"},
    {"pounds": "trade", "bsa_decimals": "none", "bsa_differs_percent": 2, "grace_percent": 2.5, "ask_low_percent": 90},
    {"rate_decimals": 0, "ask_rounding_percent": 2, "ask_low_percent": 100, "many_units": 2, "smallest_volume": "0.5 mL",
     "volume_decimals_from_1_mL": 2, "syringes": [
         {"holds": holds, "marks": marks, "kind": kind} for kind, holds, marks in (
             ("oral", "1 mL", "0.02 mL"), ("oral", "2 mL", "0.1 mL"), ("oral", "5 mL", "0.5 mL"), ("oral", "50 mL", "2 mL"),
             ("injection", "2 mL", "0.1 mL"), ("injection", "10 mL", "0.5 mL"), ("injection", "30 mL", "1 mL"))]},
    {"rate_decimals": 2, "ask_rounding_percent": 1, "round_to": "decimals", "volume_decimals_below_1_mL": 1},
]

DRAWS = [draw_case, draw_case, draw_rate, draw_infused, draw_infused, draw_syringes]

TWO_SYRINGES = {  # R20: 61.3 mL are one of 60 mL and 1.3 mL
    "format": "wardchalk.case", "version": 1, "child": {"weight": "10 kg"},
    "order": {"dose": "61.3 mg", "route": "oral", "schedule": "daily"},
    "reference": {"high": "6.13 mg/kg/dose", "schedule": "daily"}, "stock": {"kind": "liquid", "strength": "1 mg/mL"}}

CHUNK = 500
SIZE_FINDINGS = ("size-implausible", "weight-unlikely", "height-unlikely", "weight-unlikely-for-height")


def pounds_disagree(sheet, case, house, given, opinion):
    """R17: over by exact pounds and within by 2.2 lb in 1 kg is told, whatever else is."""
    told = {finding["check"] for finding in sheet["findings"] if finding["arguments"].get("by") == "trade"}
    expected = set()
    in_pounds = any(unit in case["child"].get("weight", "") for unit in ("lb", "oz"))
    if house.get("pounds", "exact") == "exact" and in_pounds and not opinion.other:
        again = Opinion(case, {**house, "pounds": "trade"}, given, opinion.pairs).checks
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


class Tally:
    """What was compared, and what differed."""

    def __init__(self):
        self.failed = self.sized = 0
        self.verdicts = collections.Counter()
        self.reached = collections.Counter()

    def fail(self, *lines):
        self.failed += 1
        if self.failed <= 12:
            print(*lines, sep="\n  ")

    def compare(self, case, house, sheet, pairs):
        if "error" in sheet:
            self.fail(sheet["error"], json.dumps(case))
            return
        given = [(found["code"], found["field"]) for found in sheet["findings"] if found["code"] in SIZE_FINDINGS]
        opinion = Opinion(case, house, given, pairs)
        self.sized += bool(given)
        self.verdicts[opinion.verdict] += 1
        self.reached.update(name for name, reached in (
            ("amounts", opinion.give and opinion.give.measured), ("two syringes", opinion.give and opinion.give.pair),
            ("powders", opinion.give and opinion.give.prepare), ("run", opinion.running),
            ("drops", opinion.running and opinion.running.flow.drops_per_min), ("rate orders", opinion.rate_order),
            ("as prepared", opinion.remedy)) if reached)
        wrong = disagreements(sheet, opinion) + pounds_disagree(sheet, case, house, given, opinion)
        if wrong:
            self.fail(json.dumps(case), json.dumps(house), *wrong)


def main():
    console = sys.argv[1]
    count = int(sys.argv[2]) if len(sys.argv) > 2 else 2000
    draw = random.Random(int(sys.argv[3]) if len(sys.argv) > 3 else 20)
    pairs = "pair" in answers(console, [TWO_SYRINGES], {})[0].get("give", {})
    tally = Tally()
    for number, house in enumerate(HOUSES):
        for start in range(number * CHUNK, count, len(HOUSES) * CHUNK):
            cases = [draw.choice(DRAWS)(draw) for _ in range(start, min(start + CHUNK, count))]
            sheets = answers(console, cases, house)
            if len(sheets) != len(cases):
                sys.exit(f"{len(sheets)} answers to {len(cases)} cases")
            for case, sheet in zip(cases, sheets):
                tally.compare(case, house, sheet, pairs)
    print(f"{count} cases, {tally.failed} disagreements, {tally.sized} with an unlikely size; by the rules:",
          dict(tally.verdicts), dict(tally.reached), "" if pairs else "(this console measures with one syringe only)")
    sys.exit(1 if tally.failed else 0)


if __name__ == "__main__":
    main()
