"""A build of the core of its own, beside the project's: objects by the compile commands of a configured preset, file by file
where a room is to be changed, linked as often as wanted. What is up to date is not compiled again."""

import json
import os
import shlex
import subprocess
from concurrent.futures import ThreadPoolExecutor

MUTATED_ROOMS = ("core/working", "core/check")
PROGRAMS = {
    "console": ["wardchalk-console", "console_ward"],
    "seeded_cases": ["seeded_cases", "wardchalk_test_support"],
    "core_golden_test": ["core_golden_test", "wardchalk_test_support"],
    "core_check_test": ["core_check_test", "wardchalk_test_support"],
    "core_working_test": ["core_working_test"],
}
LIBRARIES = ["-lgtest_main", "-lgtest", "-lrapidcheck", "-lcsv", "-lutf8proc", "-lpthread"]


def target_of(entry):
    output = entry.get("output") or shlex.split(entry["command"])[shlex.split(entry["command"]).index("-o") + 1]
    return output.split("CMakeFiles/")[1].split(".dir/")[0]


class OwnBuild:
    def __init__(self, source, configured, work, jobs):
        self.source, self.work, self.jobs = source, work, jobs
        os.makedirs(os.path.join(work, "objects"), exist_ok=True)
        with open(os.path.join(configured, "compile_commands.json")) as file:
            self.entries = json.load(file)
        self.objects = {}  # of a target: source file -> object
        self.flags = {}

    def compile(self, flags, source, target):
        """The compiler's complaint, or nothing when the object is there."""
        command = flags + ["-MMD", "-MF", target + ".d", "-o", target, "-c", source]
        done = subprocess.run(command, cwd=self.source, capture_output=True, text=True)
        return done.stderr if done.returncode else ""

    def up_to_date(self, target):
        if not (os.path.exists(target) and os.path.exists(target + ".d")):
            return False
        with open(target + ".d") as file:
            needs = file.read().replace("\\\n", " ").split(":", 1)[1].split()
        made = os.path.getmtime(target)
        return all(os.path.exists(need) and os.path.getmtime(need) <= made for need in needs)

    def flags_of(self, entry):
        words = shlex.split(entry["command"])
        kept = [w for i, w in enumerate(words) if w not in ("-o", "-c") and words[i - 1] not in ("-o", "-c")]
        kept = [w for w in kept if not w.startswith(("-O", "-g", "-W"))]
        return (["ccache"] if self.has_ccache() else []) + kept + ["-O0", "-w"]

    @staticmethod
    def has_ccache():
        return any(os.access(os.path.join(p, "ccache"), os.X_OK) for p in os.environ["PATH"].split(":"))

    def is_of_core(self, name):
        return name.startswith("core_") and not name.endswith(("_headers", "_test"))

    def sources(self):
        """Every source that is wanted, with its target and flags; the rooms to be changed file by file."""
        wanted = {name for names in PROGRAMS.values() for name in names}
        once = set()
        for entry in self.entries:
            name = target_of(entry)
            if not (self.is_of_core(name) or name in wanted):
                continue
            flags = self.flags_of(entry)
            room = name.replace("core_", "core/")
            if room in MUTATED_ROOMS:
                for folder, _, files in os.walk(os.path.join(self.source, room)):
                    for file in files:
                        path = os.path.join(folder, file)
                        if file.endswith(".cpp") and path not in once:
                            once.add(path)
                            yield name, flags, path
            else:
                yield name, flags, entry["file"]

    def make(self):
        work = []
        for name, flags, path in self.sources():
            key = os.path.relpath(path, self.source).replace("/", "_")
            target = os.path.join(self.work, "objects", name + "." + key + ".o")
            self.objects.setdefault(name, {})[path] = target
            self.flags[path] = flags
            if not self.up_to_date(target):
                work.append((flags, path, target))
        with ThreadPoolExecutor(self.jobs) as pool:
            complaints = [c for c in pool.map(lambda item: self.compile(*item), work) if c]
        if complaints:
            raise SystemExit("\n".join(complaints))
        for program in PROGRAMS:
            self.link(program, os.path.join(self.work, program), {})

    def link(self, program, target, instead):
        """Links a program, with other objects in place of those of some sources."""
        objects = []
        for name, files in self.objects.items():
            if self.is_of_core(name) or name in PROGRAMS[program]:
                objects += [instead.get(path, made) for path, made in files.items()]
        done = subprocess.run(["c++", "-o", target] + objects + LIBRARIES, cwd=self.source, capture_output=True, text=True)
        if done.returncode:
            raise SystemExit(done.stderr)
