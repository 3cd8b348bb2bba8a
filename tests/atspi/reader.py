"""What a screen reader has of the program: names, values and events over the accessibility bus, and keys.

Nothing here looks at pixels, and nothing waits for time, only for conditions.
"""
import os
import pathlib
import subprocess
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402

PATIENCE = 60  # seconds

RETURN, TAB, ESCAPE, END, HOME, BACKSPACE, DELETE = 0xFF0D, 0xFF09, 0xFF1B, 0xFF57, 0xFF50, 0xFF08, 0xFFFF
RIGHT, DOWN, SPACE = 0xFF53, 0xFF54, 0x20
CONTROL, ALT, SHIFT = 37, 64, 50  # keys that are held, by their place on the keyboard (xmodmap -pm under Xvfb)

KEY_NAMES = {RETURN: "Return", TAB: "Tab", ESCAPE: "Escape", END: "End", HOME: "Home", BACKSPACE: "BackSpace",
             DELETE: "Delete", RIGHT: "Right", DOWN: "Down", SPACE: "space"}


def function_key(number):
    return 0xFFBD + number


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


def is_showing(node):
    return node.get_state_set().contains(Atspi.StateType.SHOWING)


def walk(node):
    """What can be seen, from the top down. Asking what is hidden as well would take a busy program too long."""
    yield node
    for child in children(node):
        if child.get_role_name() in ("application", "frame", "window") or is_showing(child):
            yield from walk(child)


def everything(node):
    """All that a client can read below a node."""
    for one in walk(node):
        yield one.get_name() or ""
        yield one.get_description() or ""
        text = one.get_text_iface()
        if text is not None:
            yield Atspi.Text.get_text(text, 0, Atspi.Text.get_character_count(text))


def labels_of(node):
    return [relation.get_target(0).get_name() for relation in node.get_relation_set()
            if relation.get_relation_type() == Atspi.RelationType.LABELLED_BY]


def text_of(node):
    return Atspi.Text.get_text(node, 0, Atspi.Text.get_character_count(node))


def read_by_runs(node):
    """The text as Orca gathers it: run of attributes by run. Where the runs hold nothing, letters are missing."""
    said, at, count = "", 0, Atspi.Text.get_character_count(node)
    while at < count:
        run = Atspi.Text.get_attribute_run(node, at, True)
        start, end = run[1], run[2]
        if end <= at:
            break
        said += Atspi.Text.get_text(node, max(start, at), end)
        at = end
    return said


class Heard:
    """What a reader says unasked: a notification that shows, below a status bar, whatever has the keyboard."""

    def __init__(self):
        self.texts = []
        self.focus = None  # what the keyboard was last told to be at, and how often that was
        self.moves = 0
        self.listener = Atspi.EventListener.new(self.hear)
        self.listener.register("object:state-changed:showing")
        self.listener.register("object:state-changed:focused")
        self.listener.register("object:text-caret-moved")
        self.early = []  # lines whose caret was told of before the keyboard was: Orca then never says their name

    def hear(self, event):
        try:
            self.take(event)
        except GLib.Error:  # what showed is gone already: a row of a list, a window
            pass

    def take(self, event):
        if event.type.startswith("object:state-changed:focused"):
            if event.detail1:
                self.focus = event.source
                self.moves += 1
            return
        if event.type.startswith("object:text-caret-moved"):
            is_here = event.source.get_state_set().contains(Atspi.StateType.FOCUSED)
            if is_here and self.focus is not None and event.source != self.focus:
                self.early.append(event.source.get_name())
            return
        if not event.detail1 or event.source.get_role() != Atspi.Role.NOTIFICATION:
            return
        text = event.source.get_name() or " ".join(child.get_name() for child in children(event.source))
        assert event.source.get_parent().get_role() == Atspi.Role.STATUS_BAR, "a reader would call it a notification"
        self.texts.append(text)
        print("heard:", text)

    def pump(self):
        while GLib.MainContext.default().iteration(False):
            pass
        return self.texts

    def begin(self):
        """Of what comes from now on."""
        return len(self.pump())

    def one(self, start, since=0):
        return wait_for(f"hearing {start!r}",
                        lambda: next((text for text in self.pump()[since:] if text.startswith(start)), None))


def reader_log():
    """What a reader beside the program has written so far of what it does; nothing where there is none."""
    log = os.environ.get("WARDCHALK_READER_LOG", "")
    return pathlib.Path(log).read_text(errors="replace") if log and os.path.exists(log) else ""


def until_still(seconds, heard):
    """Until the reader's log has not grown for so long: on a busy machine that is later."""
    end = time.monotonic() + PATIENCE
    size, still_since = len(reader_log()), time.monotonic()
    while time.monotonic() < min(end, still_since + seconds):
        heard.pump()
        time.sleep(0.05)
        if len(reader_log()) != size:
            size, still_since = len(reader_log()), time.monotonic()


class Client:
    def __init__(self, app, heard, rest=0):
        """`rest`: seconds after each key but letters, for who wants to listen (`packaging/orca`)."""
        self.app = app
        self.heard = heard
        self.rest = rest

    def focused(self):
        """What has the keyboard. Qt 6.4 calls the chosen item of every list focused too, whether its box is or not."""
        self.heard.pump()
        if self.heard.focus is not None and self.has_focus(self.heard.focus):
            return self.heard.focus
        return next((node for node in walk(self.app) if self.has_focus(node) and node.get_role_name() != "list item"), None)

    @staticmethod
    def has_focus(node):
        return node.get_state_set().contains(Atspi.StateType.FOCUSED)

    def press(self, key, *held):
        if self.rest:
            self.press_beside_a_reader(key, held)
            return
        for one in held:
            Atspi.generate_keyboard_event(one, None, Atspi.KeySynthType.PRESS)
        Atspi.generate_keyboard_event(key, None, Atspi.KeySynthType.SYM)
        for one in reversed(held):
            Atspi.generate_keyboard_event(one, None, Atspi.KeySynthType.RELEASE)

    def press_until(self, what, condition, key, *held):
        """On a busy machine the bus lets a held key go before the other is down: then it is pressed again, as a hand does."""
        for _ in range(3):
            self.press(key, *held)
            end = time.monotonic() + 5
            while time.monotonic() < end:
                if condition():
                    return
                self.heard.pump()
                time.sleep(0.02)
        raise TimeoutError(what)

    def press_beside_a_reader(self, key, held):
        """A reader that listens to keys over the bus answers no keys that come over the bus."""
        name = KEY_NAMES.get(key) or (f"F{key - function_key(0)}" if key > function_key(0) else chr(key))
        keys = "+".join([{CONTROL: "ctrl", ALT: "alt", SHIFT: "shift"}[one] for one in held] + [name])
        subprocess.run(["xdotool", "key", keys], check=True)
        self.listen(self.rest)

    def listen(self, seconds):
        """Until the reader has said all that it has to say."""
        until_still(seconds, self.heard)

    def type(self, text):
        if self.rest:
            subprocess.run(["xdotool", "type", "--delay", "120", text], check=True)
            return
        for character in text:
            Atspi.generate_keyboard_event(0, character, Atspi.KeySynthType.STRING)

    def moves(self):
        """How often the keyboard has moved; the focus before anybody listened counts as none."""
        self.heard.pump()
        return self.heard.moves

    def moved(self, since, what):
        wait_for(f"the keyboard leaving {what}", lambda: self.moves() > since and self.focused())

    def enter(self, text, last=False):
        """Types into whatever has the focus, and goes on to the next field."""
        wait_for("a focused field", self.focused)
        since = self.moves()
        self.type(text)
        self.press(RETURN)
        if not last:  # the last field keeps the focus
            self.moved(since, f"the field of {text!r}")

    def labelled(self, label, role="text"):
        def find():
            for node in walk(self.app):
                if node.get_role_name() == role and is_showing(node) and label in labels_of(node):
                    return node
            return None
        return wait_for(f"the field {label!r}", find)

    def named(self, start, *roles):
        """What is seen whose name begins so."""
        return wait_for(f"{start!r} of {roles}", lambda: next(
            (node for node in walk(self.app)
             if (node.get_name() or "").startswith(start) and (not roles or node.get_role_name() in roles)), None))

    def focus_is(self, start, *roles):
        def look():
            node = self.focused()
            fits = node is not None and (node.get_name() or "").startswith(start)
            return node if fits and (not roles or node.get_role_name() in roles) else None
        return wait_for(f"the keyboard at {start!r}", look)

    def in_window(self, start):
        """Waits until keys go to the window of this name: who types sooner types into the one before."""
        return wait_for(f"the window {start!r}", lambda: any(
            window.get_state_set().contains(Atspi.StateType.ACTIVE) and window.get_name().startswith(start)
            for window in children(self.app)))

    def sentences(self):
        return [node.get_name() for node in walk(self.app) if is_showing(node) and node.get_name()]

    def reads(self, start):
        return next((text for text in self.sentences() if text.startswith(start)), None)

    def tab_to(self, start, most=60):
        """Presses Tab until what has the keyboard is called so."""
        for _ in range(most):
            node = self.focused()
            if node is not None and (node.get_name() or "").startswith(start):
                return node
            since = self.moves()
            self.press(TAB)
            self.moved(since, node.get_name() if node is not None else "nothing")
        raise TimeoutError(f"Tab coming to {start!r}")

    def write(self, label, text):
        """Puts other text into a field of the form, by the keys that a person would use."""
        field = self.labelled(label)
        Atspi.Component.grab_focus(field)
        wait_for(f"the focus on {label!r}", lambda: self.has_focus(field))
        self.press(0x61, CONTROL)  # a: everything
        if text_of(field):
            self.press(DELETE)
            wait_for(f"an empty {label!r}", lambda: text_of(field) == "")
        self.type(text)
        wait_for(f"{text!r} in {label!r}", lambda: text_of(field) == text)
        self.press(RETURN)
        return field

    def groups_of(self, node):
        names = []
        while node is not None and node != self.app:
            node = node.get_parent()
            if node is not None and node.get_name():
                names.append(node.get_name())
        return names


def started(process_name="wardchalk"):
    desktop = Atspi.get_desktop(0)
    app = wait_for("the program on the accessibility bus",
                   lambda: next((a for a in children(desktop) if a.get_name() == process_name), None))
    app.set_cache_mask(Atspi.Cache.NONE)  # ask the program each time: a remembered focus would mislead
    return app
