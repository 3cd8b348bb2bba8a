#!/usr/bin/env python3
"""Shows that the core fails closed (R24): programs with one factor turned upside down, dropped or in another unit are made of
its source, and each must end in `not-worked-out` wherever it differs, or in a failing test.

    tests/mutation/mutants.py CONFIGURED-BUILD [--count N] [--seed S] [--cases N] [--work FOLDER] [--list]

A mutant is `closed` when every worksheet that differs is undecided, not-worked-out, without a figure; `test` when a test fails
beside another worksheet; `crash` when the program ends without one; and `SURVIVED` when nothing tells it from the right one,
or a figure changes and no test fails. Two core tests and the golden cases are what it is held against."""

import argparse
import collections
import glob
import json
import os
import random
import subprocess
import sys

import factor_sites
import own_build

ROOT = os.path.realpath(os.path.join(os.path.dirname(__file__), "..", ".."))
TESTS = (("core_golden_test", "--gtest_filter=*GoldenTest*"), ("core_check_test", ""), ("core_working_test", ""))


def write_cases(build, work, count):
    """The golden cases and seeded ones, one a line."""
    path = os.path.join(work, "cases")
    with open(path, "w") as out:
        for name in sorted(glob.glob(os.path.join(ROOT, "tests/golden/cases/*.case.json"))):
            out.write(json.dumps(json.load(open(name)), ensure_ascii=False) + "\n")
        out.write(subprocess.run([os.path.join(work, "seeded_cases"), str(count), "20261129"], capture_output=True, text=True,
                                 check=True).stdout)
    return path


def worksheets(console, cases):
    """The lines of every worksheet under both sets of house rules; None when the program did not end as it should."""
    lines = []
    for rules in ("exact", "classroom"):
        done = subprocess.run([console, "batch", "--jobs", "1", "--rules", rules, cases], capture_output=True, text=True,
                              timeout=300)
        if done.returncode < 0:
            return None
        lines += done.stdout.splitlines()
    return lines


def is_closed(line):
    sheet = json.loads(line)
    figures = [key for key in ("give", "rate", "limit", "ordered", "low", "strength", "weight", "bsa", "volume") if sheet.get(key)]
    return sheet.get("verdict") == "undecided" and sheet.get("because") == "not-worked-out" and not sheet.get("steps") and not figures


class Judge:
    def __init__(self, build, work, count):
        self.build, self.work = build, work
        self.cases = write_cases(build, work, count)
        self.right = worksheets(os.path.join(work, "console"), self.cases)

    def failing_test(self, instead):
        for program, option in TESTS:
            mutant = os.path.join(self.work, "mutant-" + program)
            self.build.link(program, mutant, instead)
            done = subprocess.run([mutant] + ([option] if option else []), capture_output=True, text=True, timeout=300)
            if done.returncode:
                return program
        return None

    def judge(self, site, mutation):
        source = os.path.join(ROOT, site.path)
        copy = os.path.join(self.work, "mutant.cpp")
        with open(source) as file, open(copy, "w") as out:
            out.write(site.mutated(file.read(), mutation))
        made = os.path.join(self.work, "mutant.o")
        flags = self.build.flags[source] + ["-include", os.path.join(self.work, "mutant.h")]
        complaint = self.build.compile(flags, copy, made)
        if complaint:
            return "not compiled", 0, complaint
        instead = {source: made}
        console = os.path.join(self.work, "mutant-console")
        self.build.link("console", console, instead)
        try:
            lines = worksheets(console, self.cases)
        except subprocess.TimeoutExpired:
            lines = None
        if lines is None or len(lines) != len(self.right):
            return "crash", 0, ""
        different = [own for own, right in zip(lines, self.right) if own != right]
        if different and all(is_closed(line) for line in different):
            return "closed", len(different), ""
        test = self.failing_test(instead)
        return ("test" if test else "SURVIVED"), len(different), test or ""


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("configured")
    options.add_argument("--count", type=int, default=60)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--cases", type=int, default=600)
    options.add_argument("--jobs", type=int, default=2)
    options.add_argument("--work")
    options.add_argument("--list", action="store_true")
    options.add_argument("--only", help="those of builders whose name holds this")
    given = options.parse_args()

    sites = factor_sites.all_sites(ROOT)
    if given.only:
        sites = [site for site in sites if given.only in site.builder]
    if given.list:
        for site in sites:
            print(f"{site.path}:{site.line}  {site.builder}")
        return 0
    configured = os.path.realpath(given.configured)
    work = os.path.realpath(given.work or os.path.join(configured, "mutation"))
    os.makedirs(work, exist_ok=True)
    with open(os.path.join(work, "mutant.h"), "w") as out:
        out.write(factor_sites.PRELUDE)
    build = own_build.OwnBuild(ROOT, configured, work, given.jobs)
    build.make()
    judge = Judge(build, work, given.cases)

    every = [(site, mutation) for site in sites for mutation in factor_sites.MUTATIONS]
    random.Random(given.seed).shuffle(every)
    drawn = every[: given.count]
    table = collections.defaultdict(collections.Counter)
    survivors = []
    for site, mutation in drawn:
        end, cases, told = judge.judge(site, mutation)
        table[(site.path, site.builder)][end] += 1
        print(f"{end:12} {mutation:8} {site.path}:{site.line} {site.builder} ({cases} worksheets) {told.splitlines()[0] if told else ''}",
              flush=True)
        if end == "SURVIVED":
            survivors.append((site, mutation))
    ends = ("closed", "test", "crash", "not compiled", "SURVIVED")
    print(f"\n{len(sites)} factors in {len({(s.path, s.builder) for s in sites})} builders; {len(drawn)} of {len(every)} mutants made, seed {given.seed}")
    print("".join(f"{end:>14}" for end in ends) + "  builder")
    for (path, builder), counts in sorted(table.items()):
        print("".join(f"{counts[end]:14}" for end in ends) + f"  {path} {builder}")
    total = sum(table.values(), collections.Counter())
    print("".join(f"{total[end]:14}" for end in ends) + "  all")
    return 1 if survivors else 0


if __name__ == "__main__":
    sys.exit(main())
