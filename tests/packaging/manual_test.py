"""The manual pages and the completion against the programs: every option, every key, and examples that are read."""
import json
import pathlib
import re
import subprocess
import sys
import tempfile

CONSOLE, DESKTOP, SOURCE = sys.argv[1], sys.argv[2], pathlib.Path(sys.argv[3])
MAN = SOURCE / "packaging/man"
COMPLETION = SOURCE / "packaging/completion"
faults = []


def hold(true, words):
    if not true:
        faults.append(words)


def page(name):
    """A page's source, with hyphens and quotation marks as they come out."""
    return (MAN / f"{name}.in").read_text().replace("\\-", "-").replace("\\(dq", '"')


def run(*command):
    return subprocess.run(command, capture_output=True, text=True)


def long_options(*command):
    return set(re.findall(r"(?<![\w-])--[a-z][a-z-]+", run(*command, "--help").stdout))


def words_of(*command):
    """What the help offers in braces."""
    return {word for list_ in re.findall(r"\{([\w,-]+)\}", run(*command, "--help").stdout) for word in list_.split(",")}


told = re.findall(r"^  ([a-z]+) +[A-Z]", run(CONSOLE, "--help").stdout, re.MULTILINE)
commands = ["check", "batch", "references", "practice", "mark", "class"]
console = {option for command in [[], *[[one] for one in commands]] for option in long_options(CONSOLE, *command)}
hold(len(console) > 15, f"the console's help names too few options to be read right: {console}")
desktop = long_options(DESKTOP) - {"--help-all"}
for program, options in (("wardchalk-console", console), ("wardchalk", desktop)):
    manual = set(re.findall(r"--[a-z][a-z-]+", page(f"{program}.1")))
    hold(options <= manual, f"{program}.1 does not tell of {sorted(options - manual)}")
    hold(manual <= options, f"{program}.1 tells of {sorted(manual - options)}, which {program} does not know")
    for shell in (f"{program}.bash", f"_{program}"):
        offered = set(re.findall(r"--[a-z][a-z-]+", (COMPLETION / shell).read_text()))
        hold(options == offered, f"{shell} and the program differ in {sorted(options ^ offered)}")
hold(set(commands) == set(told), f"the console knows the commands {sorted(told)}")
for text, name in ((page("wardchalk-console.1"), "wardchalk-console.1"),
                   ((COMPLETION / "wardchalk-console.bash").read_text(), "wardchalk-console.bash"),
                   ((COMPLETION / "_wardchalk-console").read_text(), "_wardchalk-console")):
    missing = {command for command in told if not re.search(rf"(?<![\w-]){command}(?![\w-])", text)}
    hold(not missing, f"{name} does not tell of {sorted(missing)}")
words = set().union(*[words_of(CONSOLE, command) for command in commands])
hold(len(words) > 20, f"the console's help names too few words to be read right: {words}")
for text, name in ((page("wardchalk-console.1"), "wardchalk-console.1"),
                   ((COMPLETION / "wardchalk-console.bash").read_text(), "wardchalk-console.bash"),
                   ((COMPLETION / "_wardchalk-console").read_text(), "_wardchalk-console")):
    missing = {word for word in words if not re.search(rf"(?<![\w-]){word}(?![\w-])", text)}
    hold(not missing, f"{name} does not tell of {sorted(missing)}")

# Every key of a case, as the core's own list of paths names it. Bands by weight and surface are told by those of age.
paths = re.findall(r'StaticText \w+ = "([a-z_.]+)";', (SOURCE / "core/medicine/paths.h").read_text())
hold(len(paths) > 50, "core/medicine/paths.h is read wrong")
case = page("wardchalk-case.5")
for path in paths:
    key = path.split(".")[-1]
    if not re.match(r"(weight|bsa)_(from|over|below|up_to)$", key):
        hold(re.search(rf"\b{key}\b", case), f"wardchalk-case.5 does not tell of {path}")
for file, name in (("core/record/rules_file.cpp", "wardchalk-house-rules.5"), ("core/record/list_entry.cpp", "wardchalk-reference-list.5")):
    keys = re.findall(r'(?:RuleKey|WordKey)\{"([\w.]+)"', (SOURCE / file).read_text())
    hold(len(keys) > 5, f"{file} is read wrong")
    for key in keys:
        hold(key in page(name), f"{name} does not tell of {key}")

# Examples are read as they stand.
def examples(name):
    return re.findall(r"^\.EX\n(.*?)^\.EE", page(name), re.M | re.S)


with tempfile.TemporaryDirectory() as folder:
    def kept(name, text):
        file = pathlib.Path(folder, name)
        file.write_text(text)
        return str(file)

    case_text, table = examples("wardchalk-case.5")
    case_file = kept("case.wardchalk", case_text)
    done = run(CONSOLE, "check", case_file)
    hold(done.returncode == 0 and "Measure 3.2 mL" in done.stdout, f"the example of wardchalk-case.5: {done.stdout}{done.stderr}")
    done = run(CONSOLE, "batch", "--csv", kept("table.csv", table))
    hold(done.returncode == 0 and ",safe," in done.stdout, f"the table of wardchalk-case.5: {done.stdout}{done.stderr}")
    rules, = examples("wardchalk-house-rules.5")
    done = run(CONSOLE, "check", "--rules", kept("rules.json", rules), case_file)
    hold(done.returncode == 0, f"the example of wardchalk-house-rules.5: {done.stderr}")
    entry = json.loads(examples("wardchalk-reference-list.5")[0])["entries"][0]
    source = entry.pop("source")
    entry.update({f"source.{key}": value for key, value in source.items()})
    rows = ",".join(entry) + "\n" + ",".join(str(value) for value in entry.values()) + "\n"
    done = run(CONSOLE, "references", kept("list.csv", rows), str(pathlib.Path(folder, "list.json")))
    hold(done.returncode == 0, f"the example of wardchalk-reference-list.5: {done.stderr}")

for fault in faults:
    print(fault)
sys.exit(1 if faults else 0)
