#!/usr/bin/env python3
"""Drives the real program as a screen reader's user would: by keyboard, reading only what an AT-SPI client can read.

Types the usual case into the form and reads the flag, its reason, the amount and the sentence of every step; then makes
the order one to ask about, and ticks; then one that cannot be read; then begins a second check, in which nothing of the
first may be readable. Usage: usual_case.py PROGRAM. Needs an X display with a window manager and a session bus (see
`run_with_desktop`).
"""
import subprocess
import sys
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402

PATIENCE = 60  # seconds; nothing here waits for time, only for conditions

# What is typed from the first field on, Enter after each; an empty one is left as it is.
KEYS = ["103 cm", "17.2 kg", "", "Plover", "oral", "80 mg", "every 12 h", "", "120 mg/m2/dose", "every 12 h",
        "", "Bench list, p. 4", "", "", "liquid", "25 mg in 1 mL"]

# What each field then says of itself, by the label beside it.
READ_BACK = [("Height", "103 centimetres"), ("Weight", "17.2 kilograms"), ("How often", "2 doses in 24 h, one every 12 h")]

STEPS = [
    "How big is the child?",
    "What is safe in one dose?",
    "What is safe in 24 h?",
    "How much is ordered in 24 h?",
    "Is one dose within what is safe? 80 milligrams is not more than 84 milligrams: true.",
    "Is the total in 24 h within what is safe? 160 milligrams is not more than 168 milligrams: true.",
    "How much is that from this bottle?",
]


# What the board says from its first question on.
BOARD = [
    "Step 1 of 11. How big is the child? looking for square metres",
    "the square root of 103 centimetres times 17.2 kilograms",
    "centimetres above cancel centimetres below",
    "kilograms above cancel kilograms below",
    "the square root of 0.4921",
    "0.7015 m²",
]


# Words of the case and its result that stand nowhere else in the program.
TELL_TALE = ["17.2", "Plover", "Bench list", "84 mg", "Measure 3.2", "SAFE by this reference"]


def wait_for(what, condition):
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        try:
            found = condition()
        except GLib.Error:  # a busy program answers late, and a node may go while its children are asked for
            found = None
        if found:
            return found
        time.sleep(0.02)
    raise TimeoutError(what)


def children(node):
    for i in range(node.get_child_count()):
        child = node.get_child_at_index(i)
        if child is not None:
            yield child


def walk(node):
    """What can be seen, from the top down. Asking what is hidden as well would take a busy program too long."""
    yield node
    for child in children(node):
        if child.get_role_name() in ("application", "frame", "window") or is_showing(child):
            yield from walk(child)


def labels_of(node):
    return [relation.get_target(0).get_name() for relation in node.get_relation_set()
            if relation.get_relation_type() == Atspi.RelationType.LABELLED_BY]


def is_showing(node):
    return node.get_state_set().contains(Atspi.StateType.SHOWING)


class Client:
    def __init__(self, app):
        self.app = app

    def labelled(self, label, role):
        for node in walk(self.app):
            if node.get_role_name() == role and is_showing(node) and label in labels_of(node):
                return node
        return None

    def field(self, label, role="text"):
        return wait_for(f"the field {label!r}", lambda: self.labelled(label, role))

    def has_focus(self, node):
        return node.get_state_set().contains(Atspi.StateType.FOCUSED)

    def focused(self):
        """The focused field. Qt 6.4 calls the chosen item of every list focused too, whether its box is or not."""
        return next((node for node in walk(self.app) if self.has_focus(node) and node.get_role_name() != "list item"), None)

    def press(self, key):
        Atspi.generate_keyboard_event(key, None, Atspi.KeySynthType.SYM)

    def place(self):
        """Where the focused field stands in the tree; the client's own objects are made anew at every call."""
        node, place = self.focused(), []
        while node is not None and node != self.app:
            place.append(node.get_index_in_parent())
            node = node.get_parent()
        return place

    def enter(self, text):
        """Types into whatever has the focus, and goes on to the next field."""
        at = wait_for("a focused field", self.place)
        for character in text:
            Atspi.generate_keyboard_event(0, character, Atspi.KeySynthType.STRING)
        self.press(0xFF0D)  # Return
        if text != KEYS[-1]:  # the last field keeps the focus
            wait_for(f"the focus leaving the field of {text!r}", lambda: self.place() not in ([], at))

    def sentences(self):
        return [node.get_name() for node in walk(self.app) if is_showing(node) and node.get_name()]

    def reads(self, start):
        return next((text for text in self.sentences() if text.startswith(start)), None)

    def focus_is(self, role, name):
        node = self.focused()
        return node is not None and node.get_role_name() == role and node.get_name().startswith(name) and node

    def write(self, label, text):
        """Puts other text into a field, by the keys that a person would use."""
        field = self.field(label)
        Atspi.Component.grab_focus(field)
        wait_for(f"the focus on {label!r}", lambda: self.has_focus(field))
        self.press(0xFF57)  # End
        while old := Atspi.Text.get_text(field, 0, -1):
            self.press(0xFF08)  # BackSpace
            wait_for(f"a shorter text than {old!r}", lambda old=old: len(Atspi.Text.get_text(field, 0, -1)) < len(old))
        for character in text:
            Atspi.generate_keyboard_event(0, character, Atspi.KeySynthType.STRING)
        wait_for(f"{text!r} in {label!r}", lambda: Atspi.Text.get_text(field, 0, -1) == text)
        self.press(0xFF0D)  # Return
        return field


class Changes:
    """What the program tells unasked: new names, and new text."""

    def __init__(self):
        self.told = []
        self.listener = Atspi.EventListener.new(self.hear)
        for event in ("object:property-change:accessible-name", "object:text-changed:insert"):
            self.listener.register(event)

    def hear(self, event):
        # of a changed name Qt tells only whose it is
        text = event.any_data if isinstance(event.any_data, str) else event.source.get_name()
        self.told.append((event.type.split(":")[1], text))

    def tell(self, kind, start):
        while GLib.MainContext.default().iteration(False):
            pass
        return any(event == kind and text.startswith(start) for event, text in self.told)


def ask_first(client):
    """An order to ask about shows its amount when it is chosen how the question was settled."""
    changes = Changes()
    client.write("Dose ordered", "55 mg")
    print(wait_for("the flag of an order to ask about", lambda: client.reads("ASK BEFORE GIVING")))
    wait_for("the amount held back", lambda: client.reads("Ask first. The amount is told once it is said how"))
    assert client.reads("Measure") is None
    client.press(0xFFC4)  # F7, to the flag
    wait_for("the focus on the flag", lambda: client.focus_is("label", "ASK BEFORE GIVING") or client.focus_is("static", "ASK BEFORE GIVING"))
    client.press(0xFF09)  # Tab
    box = wait_for("the focus on the question", lambda: client.focus_is("combo box", "settled how?"))
    labels = [relation.get_target(0).get_name() for relation in box.get_relation_set()
              if relation.get_relation_type() == Atspi.RelationType.LABELLED_BY]
    assert "55\xa0mg" in "".join(labels), labels
    client.press(0x61)  # a, of "asked the prescriber": no letter chooses
    client.press(0x20)  # space opens the list
    client.press(0xFF54)  # Down
    assert client.reads("Measure") is None, "an amount before it is said how it was settled"
    client.press(0xFF0D)  # Return
    amount = wait_for("the amount once it was asked", lambda: client.reads("Settled as chosen. Give the amount only if the answers allow it"))
    assert "Measure 2.2 mL (55 mg) for one dose" in amount, amount
    print(amount)
    for start in ("Ask first.", "Settled as chosen. Give the amount"):
        for kind in ("property-change", "text-changed"):
            wait_for(f"{start!r} told by {kind}", lambda start=start, kind=kind: changes.tell(kind, start))


def refused(client):
    """A figure that cannot be read is answered beside its field, and leaves neither verdict nor amount."""
    field = client.write("Dose ordered", ".5 mg")
    wait_for("the refusal", lambda: "0.5" in field.get_description() and "zero" in field.get_description())
    print(field.get_description())
    print(wait_for("no verdict", lambda: client.reads("NO VERDICT: dose ordered cannot be read yet")))
    print(wait_for("no amount", lambda: client.reads("No amount yet")))
    assert client.reads("Measure") is None
    client.write("Dose ordered", "80 mg")
    wait_for("the flag as before", lambda: client.reads("SAFE by this reference"))


def board(client):
    """The board says at each press what it uncovers, and leads back to the window."""
    client.press(0xFFC8)  # F11
    for start in BOARD:
        print(wait_for(f"the board saying {start!r}", lambda start=start: client.reads(start)))
        client.press(0x20)  # space
    client.press(0xFF1B)  # Escape
    wait_for("the board to be gone", lambda: client.reads("rounded to 0.70") is None)


def everything_held(app):
    """All that a client can read of the program, on the screen or not."""
    for node in walk(app):
        yield node.get_name() or ""
        yield node.get_description() or ""
        text = node.get_text_iface()
        if text is not None:
            yield Atspi.Text.get_text(text, 0, Atspi.Text.get_character_count(text))


def first_tell_tale(app):
    return next((text for text in everything_held(app) if any(word in text for word in TELL_TALE)), None)


def second_check(client):
    """The second person can read nothing of the first, wherever a screen reader looks."""
    assert first_tell_tale(client.app), "nothing to hide was found"
    client.press(0xFFC6)  # F9
    print(wait_for("the second check", lambda: client.reads("Second check: the first person's entries")))
    wait_for("the first entries to be gone", lambda: first_tell_tale(client.app) is None)


def main():
    program = subprocess.Popen([sys.argv[1]])
    try:
        desktop = Atspi.get_desktop(0)
        app = wait_for("the program on the accessibility bus",
                       lambda: next((a for a in children(desktop) if a.get_name() == "wardchalk"), None))
        app.set_cache_mask(Atspi.Cache.NONE)  # ask the program each time: a remembered focus would mislead
        client = Client(app)
        wait_for("the focus on the first field", lambda: "Height" in labels_of(client.focused() or app))
        for text in KEYS:
            client.enter(text)
        for label, words in READ_BACK:
            field = client.field(label)
            wait_for(f"{label!r} to read {words!r}", lambda field=field, words=words: field.get_description() == words)
        flag = wait_for("the flag", lambda: client.reads("SAFE by this reference"))
        assert "Ordered 80 mg is not more than the safe 84 mg in one dose." in flag, flag
        assert "NOT checked" in flag, flag
        amount = wait_for("the amount", lambda: client.reads("Measure 3.2 mL"))
        assert "(80 mg) for one dose" in amount and "25 mg in 1 mL" in amount, amount
        for step in STEPS:
            print(wait_for(f"the step {step!r}", lambda start=step: client.reads(start)))
        ask_first(client)
        refused(client)
        board(client)
        second_check(client)
        print(flag)
        print(amount)
        print("1 passed, 0 failed")
    except TimeoutError as missing:
        print(f"FAILED: never came: {missing}. What could be read:")
        print("\n".join(client.sentences() if "client" in locals() else []))
        sys.exit(1)
    finally:
        program.kill()


if __name__ == "__main__":
    main()
