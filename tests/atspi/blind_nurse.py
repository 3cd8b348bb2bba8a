#!/usr/bin/env python3
"""A blind nurse's job with the real program: everything is decided from names, values and events, and done by keys.

The usual case; an order to ask about; a refused entry, mended; a second check; a board; the reference from the ward's
list; three lines of practice. Usage: blind_nurse.py PROGRAM REFERENCE_LIST [SECONDS_BETWEEN_KEYS [JOB …]]; every job but
the first two needs the usual case to be there. Needs an X display with a window manager and a session bus (see
`run_with_desktop`).
"""
import math
import os
import pathlib
import re
import subprocess
import sys
import time

from reader import (ALT, CONTROL, DOWN, ESCAPE, RETURN, SPACE, TAB, Client, Heard, everything, function_key, labels_of,
                    read_by_runs, reader_log, started, text_of, until_still, wait_for, walk)

# What is typed from the first field on, Enter after each; an empty one is left as it is.
KEYS = ["103 cm", "17.2 kg", "", "Plover", "oral", "80 mg", "every 12 h", "", "120 mg/m2/dose", "every 12 h",
        "", "Bench list, p. 4", "", "", "liquid", "25 mg in 1 mL"]

# What each field then says of itself, by the label beside it.
READ_BACK = [("Height", "103 centimetres"), ("Weight", "17.2 kilograms"), ("How often", "2 doses in 24 h, one every 12 h")]

SAFE = "SAFE by this reference. 80 mg ordered; safe up to 84 mg per dose. Measure 3.2 mL (80 mg) for one dose."

STEPS = [
    "Step 1. What is the body surface area (BSA)?",
    "Step 2. What is the safe dose?",
    "Step 3. What is the safe daily dose?",
    "Step 4. How much is ordered in 24 h?",
    "Step 5. Is the ordered dose within the safe dose? 80 milligrams is not more than 84 milligrams: true.",
    "Step 6. Is the total in 24 h within the safe daily dose? 160 milligrams is not more than 168 milligrams: true.",
    "Step 9. How many mL do you give?",
]

# What the board says from its first question on.
BOARD = [
    "Step 1 of 11. What is the body surface area (BSA)? looking for square metres",
    "the square root of 103 centimetres times 17.2 kilograms",
    "centimetres above cancel centimetres below",
    "kilograms above cancel kilograms below",
    "the square root of 0.4921",
    "0.7015 m²",
]

# Words of the case and its result that stand nowhere else in the program.
TELL_TALE = ["17.2", "Plover", "Bench list", "84 mg", "Measure 3.2", "SAFE by this reference"]


def fill_in(client):
    for text in KEYS:
        client.enter(text, last=text == KEYS[-1])


def usual_case(client, heard):
    wait_for("the focus on the first field", lambda: "Height" in labels_of(client.focused() or client.app))
    assert "Child" in client.groups_of(client.focused()), client.groups_of(client.focused())
    fill_in(client)
    heard.one(SAFE)
    assert all(not text.startswith("NO VERDICT") for text in heard.texts), heard.texts  # what is missing stands on the flag
    assert not heard.early, heard.early
    for label, words in READ_BACK:
        field = client.labelled(label)
        wait_for(f"{label!r} to read {words!r}", lambda field=field, words=words: field.get_description() == words)
    lines = [node for node in walk(client.app) if node.get_role_name() == "text"]
    for line in lines:
        assert read_by_runs(line) == text_of(line), (labels_of(line), read_by_runs(line), text_of(line))
    assert len(lines) >= len(KEYS), len(lines)
    client.press(function_key(3))  # everything, once more
    whole = wait_for("everything", lambda: next((text for text in heard.pump() if "NOT checked: " in text), None))
    assert whole.startswith(SAFE.partition(" Measure")[0]) and "Label must read: Plover 25 mg in 1 mL." in whole, whole
    names = client.sentences()
    places = [next(i for i, name in enumerate(names) if name.startswith(step)) for step in STEPS]
    assert places == sorted(places), places  # in the tree as in the working
    client.press(function_key(7))
    client.focus_is("SAFE by this reference")
    for start in ("Measure 3.2 mL", ""):
        client.press(DOWN)
        client.focus_is(start)


def ask_first(client, heard):
    """An order to ask about tells its amount when it is chosen how the question was settled."""
    since = heard.begin()
    client.write("Dose ordered", "55 mg")
    said = heard.one("ASK BEFORE GIVING", since)
    assert "55 mg" in said and "Measure" not in said and "Ask first." in said, said
    assert client.reads("Measure") is None
    client.press(function_key(7))  # to the flag
    client.focus_is("ASK BEFORE GIVING")
    client.press(TAB)
    box = client.focus_is("How was it settled: ", "combo box")
    name = box.get_name()
    assert text_of(box) == "settled how?", text_of(box)
    client.press(0x61)  # a, of "asked the prescriber": no letter chooses
    client.press(SPACE)  # opens the list
    client.press(DOWN)
    assert client.reads("Measure") is None, "an amount before it is said how it was settled"
    client.press(RETURN)
    said = heard.one("ASK BEFORE GIVING", since + 1)
    assert said.endswith("Settled. Give the amount only if the answers allow it; any change opens the questions again. Measure 2.2 mL (55 mg) for one dose."), said
    box = client.focus_is(name, "combo box")  # the name stays, the value is another
    assert text_of(box) not in ("", "settled how?"), text_of(box)


def refused(client, heard):
    """A figure that cannot be read is told with what to write, and mended by the keys that were told."""
    since = heard.begin()
    client.write("Dose ordered", ".5 mg")
    said = heard.one("NO VERDICT: “dose ordered” cannot be read yet.", since)
    assert said.endswith("F5 goes there; Alt+Enter then writes 0.5 mg."), said
    assert client.reads("Measure") is None and client.reads("SAFE") is None
    client.press(function_key(5))
    field = wait_for("the focus on the refused line", lambda: "Dose ordered" in labels_of(client.focused() or client.app)
                     and client.focused())
    assert field.get_description().startswith("Cannot be read: "), field.get_description()
    client.press_until("the safe form in the line", lambda: text_of(field) == "0.5 mg", RETURN, ALT)
    assert "0.5 mg" in heard.one("ASK BEFORE GIVING", since)
    client.write("Dose ordered", "80 mg")
    heard.one(SAFE, since)


def second_check(client, heard):
    """The second person can read nothing of the first, wherever a screen reader looks; then both are compared."""
    def tell_tale():
        return next((text for text in everything(client.app) if any(word in text for word in TELL_TALE)), None)

    assert tell_tale(), "nothing to hide was found"
    since = heard.begin()
    client.press(function_key(9))
    heard.one("Second check: the first person's entries", since)
    wait_for("the first entries to be gone", lambda: tell_tale() is None)
    wait_for("the focus on the first field", lambda: "Height" in labels_of(client.focused() or client.app))
    fill_in(client)
    heard.one(SAFE, since)
    client.press(function_key(9), CONTROL)
    heard.one("Same result: nothing differs.", since)
    client.tab_to("A second person entered this alone")
    client.press(SPACE)
    client.tab_to("Record this on the sheet")
    client.press(SPACE)
    said = heard.one("Second check: done independently, same result", since)
    assert "Measure 3.2 mL" in said, said
    wait_for("the form again", lambda: client.reads("SAFE by this reference"))


def board(client, heard):
    """The board says at each press what it uncovers, and leads back to the window."""
    since = heard.begin()
    client.press(function_key(11))
    client.focus_is(BOARD[0])
    for start in BOARD[1:]:
        client.press(SPACE)
        heard.one(start, since)
    client.press(function_key(3))
    wait_for("the same once more", lambda: len([t for t in heard.pump()[since:] if t.startswith(BOARD[-1])]) == 2)
    client.press(ESCAPE)
    wait_for("the board to be gone", lambda: client.reads("rounded to 0.70") is None)


def reference_from_list(client, heard):
    """The reference is taken from the ward's list; which entry holds for this child is told."""
    client.write("Age", "4 year")
    since = heard.begin()
    client.press(0x72, CONTROL)  # r
    client.in_window("Choose a reference from the ward's list")
    client.focus_is("Find medicine, indication or route", "text")
    said = heard.one("Plover, oral: the entry for", since)
    assert "covers this child" in said, said
    line = client.focus_is("Find medicine, indication or route", "text")
    assert read_by_runs(line) == "Plover", read_by_runs(line)
    client.press(RETURN)
    said = heard.one("SAFE by this reference", since)
    assert "Measure 3.2 mL" in said, said
    assert "Invented ward list" in text_of(client.labelled("Source and page"))


def surface_of(papers):
    """Body surface by Mosteller (m² = √(cm × kg ÷ 3600)), rounded half up to 2 decimals, from the papers' words."""
    height = float(re.search(r"([\d.]+)\s*cm", papers).group(1))
    weight = float(re.search(r"([\d.]+)\s*kg", papers).group(1))
    return math.floor(math.sqrt(height * weight / 3600) * 100 + 0.5) / 100


def practice(client, heard):
    """Three problems of one line each, from papers that are only heard; the first is wrong at first, and hinted."""
    since = heard.begin()
    client.press(function_key(12))
    client.in_window("PRACTICE")
    client.tab_to("Body surface area")
    client.press(SPACE)
    client.tab_to("How many problems")
    client.press(0x61, CONTROL)
    client.type("3")
    client.tab_to("Begin")
    client.press(SPACE)
    for number in (1, 2, 3):
        papers = heard.one(f"Problem {number} of 3. ", since)
        right = f"{surface_of(papers):.2f} m2"
        line = client.focus_is("Line 1: ", "text")
        if number == 1:
            client.enter("9 m2", last=True)
            said = heard.one("Line 1: ", since)
            assert said.startswith("Line 1: not yet"), said
            client.press(0x68, CONTROL)  # h
            wait_for("a hint", lambda: any("Where to look" in text for text in heard.pump()[since:]))
            client.press(0x61, CONTROL)
        client.type(right)
        wait_for(f"{right!r} in the line", lambda line=line, right=right: read_by_runs(line) == right)
        before = heard.begin()
        client.press(RETURN)
        said = heard.one("Line 1: ", before)
        assert said.startswith("Line 1: right"), said
        client.focus_is("Line 1: ", "text")  # it stays where it was read, and the same key goes on
        client.press(RETURN)
    said = heard.one("Everything right in the end", since)
    assert "2 of 3 lines right first time, 3 of 3 in the end." in said, said


JOBS = (usual_case, ask_first, refused, second_check, board, reference_from_list, practice)


def remember_list(reference_list):
    """As the settings have the ward's list once it was opened."""
    folder = pathlib.Path(os.environ["XDG_CONFIG_HOME"]) / "wardchalk"
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "wardchalk.ini").write_text(f"[General]\nreference_list={reference_list}\n")


def main():
    remember_list(sys.argv[2])
    wanted = sys.argv[4:] or [job.__name__ for job in JOBS]
    rest = float(sys.argv[3]) if len(sys.argv) > 3 else 0
    heard = Heard()
    beside_a_reader = "WARDCHALK_READER_LOG" in os.environ
    if beside_a_reader:  # one that is not there yet would miss that the window comes
        wait_for("a reader", lambda: "ORCA: Starting registry" in reader_log())
        until_still(3, heard)
    program = subprocess.Popen([sys.argv[1]])
    begin = time.monotonic()
    try:
        client = Client(started(), heard, rest)
        client.in_window("new child")
        if beside_a_reader:
            wait_for("the reader at the first line", lambda: "SPEECH OUTPUT: 'Height" in reader_log())
            until_still(1, heard)
        for job in JOBS:
            if job.__name__ not in wanted:
                continue
            print(f"--- {job.__name__}", flush=True)
            job(client, heard)
        if rest:
            client.listen(rest)  # to the end of what is said last
        print(f"{len(wanted)} passed, 0 failed, {time.monotonic() - begin:.1f} s")
    except TimeoutError as missing:
        print(f"FAILED: never came: {missing}. What could be read:")
        print("\n".join(client.sentences() if "client" in locals() else []))
        sys.exit(1)
    finally:
        program.kill()


if __name__ == "__main__":
    main()
