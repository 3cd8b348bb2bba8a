#!/usr/bin/env python3
"""Shows what the core's own tests would notice: one sign of a room's source is another, and a test of that room must fail.

    tests/mutation/text_mutants.py CONFIGURED-BUILD [--room core/number]… [--count N] [--seed S] [--again LOG] [--list]

CONFIGURED-BUILD is one without optimization beyond -O1 in which the rooms' test programs stand built. Of each room N mutants are
drawn that can be compiled, kinds in turn: operator, comparison, constant, rounding, call, arguments, guard, sides. A mutant is one
object, compiled on top of the room's headers, which are read once, and linked before the library: what it defines is found first,
and nothing else is built. What it reads past an end, or of an optional that holds nothing, fails. Quick tests run before slow ones.
It is `killed` by the test program that fails, or needs ten times as long as without a change, and `SURVIVED` when none does: a row
is wanted, or a reason why it is the same program. With --again only those are made that survived
in what an earlier run printed (and others of their line that read the same)."""

import argparse
import collections
import json
import os
import random
import re
import resource
import shutil
import subprocess
import sys

import own_build
import text_sites

ROOT = os.path.realpath(os.path.join(os.path.dirname(__file__), "..", ".."))
SLOW = 0.25  # seconds of a test that waits for the quick ones
# Long tests, asked only where these files are changed. What nobody else notices elsewhere has survived.
FOR_FILES = {"Saving.": r"core/record/(replace_file|text_file|input_file|descriptor|detail/)",
             "BatchJobs.": r"core/record/(batch|case_|csv|table)",
             "Wordings.": r"core/practice/marking/(?!detail/(wrong|further|rare)_)",
             "Verdict.": r"core/practice/marking/(?!detail/(wrong|further|rare)_)"}
LARGEST = 4 << 30  # bytes of a test: a mutant that does not end may not take the machine with it
KINDS = ("operator", "comparison", "constant", "rounding", "call", "arguments", "guard", "sides")
TESTS = {
    "core/number": ("core_number_test", "core_read_back_test UnseenText*"),
    "core/unit": ("core_unit_test",),
    "core/child": ("core_case_test",),
    "core/medicine": ("core_case_test", "core_entry_test"),
    "core/working": ("core_working_test",),
    "core/check": ("core_check_test", "core_golden_test *GoldenTest*"),
    "core/practice/marking": ("core_marking_test", "core_mistakes_test"),
    "core/entry": ("core_entry_test", "core_entries_test", "core_record_test"),
    "core/record": ("core_record_test", "core_list_test", "core_golden_test *GoldenTest*"),
}


class Links:
    """How each test program is linked, with a mutant's object before all others."""

    def __init__(self, configured):
        self.configured, self.commands = configured, {}
        self.linker = " -fuse-ld=lld" if shutil.which("ld.lld") else ""  # a third of the time

    def command(self, program, target, mutant):
        if program not in self.commands:
            told = subprocess.run(["ninja", "-C", self.configured, "-t", "commands", program], capture_output=True, text=True, check=True)
            self.commands[program] = [line for line in told.stdout.splitlines() if re.search(rf" -o \S*{program} ", line)][-1]
        return re.sub(rf" -o \S*{program} ", f"{self.linker} -Wl,-z,muldefs -o {target} {mutant} ", self.commands[program])

    def link(self, program, target, mutant):
        done = subprocess.run(self.command(program, target, mutant), shell=True, cwd=self.configured, capture_output=True, text=True)
        if done.returncode:
            raise SystemExit(done.stderr[-2000:])


def included(room):
    """The lines that include a header on every system (lists of names, .def, are read in their place)."""
    for folder, _, files in os.walk(os.path.join(ROOT, room)):
        for file in files:
            if file.endswith(".cpp"):
                text = re.sub(r"^#if.*?^#endif", "", open(os.path.join(folder, file)).read(), flags=re.M | re.S)
                yield from re.findall(r"^#include (?:<[^\n]*>|\"[^\n]*\.h\")\n", text, re.M)


def is_asked(test, path):
    return all(re.match(files, path) for piece, files in FOR_FILES.items() if piece in test)


class Judge:
    def __init__(self, configured, work):
        self.build, self.links, self.work = own_build.OwnBuild(ROOT, configured, work, 1), Links(configured), work
        self.flags = {}
        for entry in self.build.entries:
            flags = [word for word in self.build.flags_of(entry) if word != "ccache"]  # no mutant is compiled twice
            self.flags.setdefault(own_build.target_of(entry), flags + ["-D_GLIBCXX_ASSERTIONS"])
        self.headers, self.turns = {}, {}

    def with_headers(self, room):
        """The flags of a room, with all that its files include read once."""
        if room not in self.headers:
            name = room.replace("/", "_")
            flags, all_headers = self.flags[name], os.path.join(self.work, name + ".h")
            with open(all_headers, "w") as out:
                out.write("".join(sorted(set(included(room)))))
            complaint = self.build.compile(flags + ["-x", "c++-header"], all_headers, all_headers + ".gch")
            if complaint:
                raise SystemExit(complaint)
            self.headers[room] = flags + ["-include", all_headers]
        return self.headers[room]

    def compiled(self, room, site):
        copy, made = os.path.join(self.work, "mutant.cpp"), os.path.join(self.work, "mutant.o")
        with open(os.path.join(ROOT, site.path)) as file, open(copy, "w") as out:
            out.write(site.mutated(file.read()))
        return None if self.build.compile(self.with_headers(room), copy, made) else made

    def linked(self, program, mutant):
        target = os.path.join(self.work, program)
        self.links.link(program, target, mutant)
        return target

    @staticmethod
    def passes(command, longest=None):
        try:
            done = subprocess.run(command, cwd=ROOT, capture_output=True, timeout=longest, env=dict(os.environ, RC_PARAMS="seed=20261125"),
                                  preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_AS, (LARGEST, LARGEST)))
        except subprocess.TimeoutExpired:
            return False
        return done.returncode == 0

    def judge(self, room, site):
        made = self.compiled(room, site)
        if not made:
            return "not compiled"
        linked = set()
        for program, chosen, slow, longest in self.turns[room]:
            names = [name for name in slow if is_asked(name, site.path)]
            if slow and not names:
                continue
            chosen = ":".join(names) if slow else chosen
            target = os.path.join(self.work, program) if program in linked else self.linked(program, made)
            linked.add(program)
            if not self.passes([target, "--gtest_brief=1", "--gtest_fail_fast", "--gtest_filter=" + chosen], longest):
                return "killed by " + program
        return "SURVIVED"

    def try_right_one(self, room):
        """A mutant that changes nothing must pass, so that what fails later fails by its change; and it shows what is slow."""
        first = next(text_sites.sites_in(ROOT, room))
        text = open(os.path.join(ROOT, first.path)).read()
        made = self.compiled(room, text_sites.Site(first.path, first.line, "none", first.start, first.end, text[first.start:first.end]))
        quick, slow, told = [], [], os.path.join(self.work, "told.json")
        for program, chosen in ((test.split() + ["*"])[:2] for test in TESTS[room]):
            if not self.passes([self.linked(program, made), "--gtest_output=json:" + told, "--gtest_filter=" + chosen]):
                raise SystemExit(f"{room}: {program} fails without any change")
            with open(told) as file:
                times = {f"{suite['name']}.{test['name']}": float(test.get("time", "0s")[:-1])
                         for suite in json.load(file)["testsuites"] for test in suite["testsuite"]}
            names = [name for name, time in times.items() if time >= SLOW]
            longest = 20 + 10 * sum(times.values())
            quick.append((program, chosen + ("-" + ":".join(names) if names else ""), [], longest))
            slow += [(program, "", names, longest)] if names else []
        self.turns[room] = quick + slow


def drawn(sites, rng):
    """Kinds take turns; within a kind by chance."""
    by_kind = {kind: [site for site in sites if site.kind == kind] for kind in KINDS}
    for kind in KINDS:
        rng.shuffle(by_kind[kind])
    while any(by_kind.values()):
        for kind in KINDS:
            if by_kind[kind]:
                yield by_kind[kind].pop()


def words_of(site):
    return f"{site.kind:10} {site.path}:{site.line}  {site.words(open(os.path.join(ROOT, site.path)).read())}"


def survivors_of(log):
    with open(log) as file:
        return {line[len("SURVIVED"):].strip() for line in file if line.startswith("SURVIVED")}


def try_room(judge, room, sites, count, table):
    judge.try_right_one(room)
    made = survived = 0
    for site in sites:
        if made == count:
            break
        end = judge.judge(room, site)
        table[room][end.split(" ")[0]] += 1
        if end == "not compiled":
            continue
        made += 1
        survived += end == "SURVIVED"
        print(f"{end:28} {words_of(site)}", flush=True)
    return survived


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("configured")
    options.add_argument("--room", action="append", choices=sorted(TESTS))
    options.add_argument("--count", type=int, default=10)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--again", metavar="LOG")
    options.add_argument("--work")
    options.add_argument("--list", action="store_true")
    given = options.parse_args()
    rooms = given.room or list(TESTS)
    if given.list:
        for room in rooms:
            counts = collections.Counter(site.kind for site in text_sites.sites_in(ROOT, room))
            print(f"{room:24}", "  ".join(f"{kind} {counts[kind]}" for kind in KINDS))
        return 0
    configured = os.path.realpath(given.configured)
    work = os.path.realpath(given.work or os.path.join(configured, "text-mutation"))
    os.makedirs(work, exist_ok=True)
    judge, table, survived = Judge(configured, work), collections.defaultdict(collections.Counter), 0
    for room in rooms:
        sites = list(drawn(list(text_sites.sites_in(ROOT, room)), random.Random(f"{given.seed} {room}")))
        if given.again:
            wanted = survivors_of(given.again)
            sites = [site for site in sites if words_of(site) in wanted]
        survived += try_room(judge, room, sites, len(sites) if given.again else given.count, table) if sites else 0
    print(f"\nseed {given.seed}\n{'room':24}{'killed':>9}{'SURVIVED':>10}{'not compiled':>14}")
    for room, counts in table.items():
        print(f"{room:24}{counts['killed']:9}{counts['SURVIVED']:10}{counts['not']:14}")
    return 1 if survived else 0


if __name__ == "__main__":
    sys.exit(main())
