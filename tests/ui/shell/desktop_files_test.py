#!/usr/bin/env python3
"""The desktop program and what it is given: files that are none, its own input, no room, no display.

Usage: desktop_files_test.py PROGRAM SOURCE_FOLDER
"""
import os
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import unittest

PROGRAM = ""
CASE = ""
MEANS_HANGING = 60  # seconds; nothing here takes one


def program(*arguments, surroundings=None, **more):
    kept = {name: value for name, value in os.environ.items()
            if name not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    ended = subprocess.run([PROGRAM, *map(str, arguments)], stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                           stderr=subprocess.PIPE, timeout=MEANS_HANGING, check=False,
                           env={**kept, **(surroundings or {})}, **more)
    return ended.returncode, ended.stderr.decode("utf-8")


class Files(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp(prefix="wardchalk-")
        self.addCleanup(shutil.rmtree, self.folder)
        self.case = shutil.copy(CASE, self.path("case.json"))

    def path(self, name):
        return os.path.join(self.folder, name)

    def calls(self, source, target):
        return [("--picture", source, target), ("--sheet", source, target)]

    def test_each_is_written(self):
        for call in self.calls(self.case, self.path("out")):
            self.assertEqual(program(*call)[0], 0)
            self.assertGreater(os.path.getsize(self.path("out")), 1000)
            os.remove(self.path("out"))

    def test_a_case_is_never_lost_to_its_picture(self):
        os.symlink("case.json", self.path("link"))
        os.link(self.case, self.path("second"))
        with open(self.case, "rb") as file:
            before = file.read()
        for target in ["case.json", "./case.json", "link", "second"]:
            for call in self.calls(self.case, self.path(target)) + [("--practice-sheet", self.case, self.path(target))]:
                with self.subTest(call=call):
                    status, told = program(*call)
                    self.assertEqual(status, 2, told)
                    self.assertIn("the file that was read", told)
                    with open(self.case, "rb") as file:
                        self.assertEqual(file.read(), before)

    def test_what_is_no_file_stays_what_it_is(self):
        os.mkfifo(self.path("pipe"))
        for target in ["pipe", "."]:
            before = os.stat(self.path(target)).st_ino
            for call in self.calls(self.case, self.path(target)):
                with self.subTest(call=call):
                    status, told = program(*call)
                    self.assertEqual(status, 2)
                    self.assertIn("is not a file but", told)
                    self.assertEqual(os.stat(self.path(target)).st_ino, before)
        for call in self.calls(self.path("pipe"), self.path("out")):
            status, told = program(*call)
            self.assertEqual(status, 2)
            self.assertIn("is a pipe", told)

    def test_a_file_that_may_not_grow_leaves_nothing_behind(self):
        def small():
            resource.setrlimit(resource.RLIMIT_FSIZE, (1000, 1000))
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)

        for call in self.calls(self.case, self.path("out")):
            with self.subTest(call=call):
                status, told = program(*call, preexec_fn=small)
                self.assertEqual(status, 2)
                self.assertIn("larger than one file may be there", told)
                self.assertEqual(sorted(os.listdir(self.folder)), ["case.json"])

    def test_reasons_are_true(self):
        for call in self.calls(self.case, self.path("none/out")):
            status, told = program(*call)
            self.assertEqual(status, 2)
            self.assertIn("is not there any more", told)

    def test_dash_is_refused_by_name(self):
        for call in [("-",), ("--board", "-"), *self.calls("-", self.path("out")), *self.calls(self.case, "-")]:
            with self.subTest(call=call):
                status, told = program(*call, surroundings={"QT_QPA_PLATFORM": "offscreen"}, cwd=self.folder)
                self.assertEqual(status, 2)
                self.assertIn("stands for standard input or output", told)
                self.assertEqual(os.listdir(self.folder), ["case.json"])

    def test_a_terminal_obeys_nothing(self):
        for call in [(self.path("none\x1b[2J"),), *self.calls(self.path("none\x1b[2J"), self.path("out")),
                     ("--\x1b[2J",)]:
            call = call if len(call) > 1 else ("--sheet", *call, self.path("out"))
            status, told = program(*call)
            self.assertEqual(status, 2)
            self.assertNotIn("\x1b", told)

    def test_a_full_disk_is_told(self):
        for call in ["--help", "--version"]:
            with open("/dev/full", "wb") as full:
                ended = subprocess.run([PROGRAM, call], stdout=full, stderr=subprocess.PIPE, timeout=MEANS_HANGING,
                                       check=False)
            self.assertEqual(ended.returncode, 2)
            self.assertIn(b"cannot be written to", ended.stderr)


class Display(unittest.TestCase):
    def test_a_broken_display_gets_a_sentence(self):
        for surroundings in [{"DISPLAY": ":98765"}, {"DISPLAY": "nonsense"}, {"DISPLAY": "\x1b[2J"},
                             {"QT_QPA_PLATFORM": "nonsense"}, {"QT_QPA_PLATFORM": "xcb", "DISPLAY": ":98765"},
                             {"WAYLAND_DISPLAY": "none"}, {}]:
            with self.subTest(surroundings=surroundings):
                status, told = program(CASE, surroundings=surroundings)
                self.assertEqual(status, 2, told)
                # what the libraries of a desktop add where they are installed is not ours
                ours = [line for line in told.splitlines() if line.startswith("wardchalk: ")]
                self.assertEqual(len(ours), 1, told)
                self.assertIn("there is no display to open a window on", ours[0])
                self.assertNotIn("\x1b", told)

    def test_what_needs_none_does_without(self):
        with tempfile.TemporaryDirectory() as folder:
            for option in ["--picture", "--sheet"]:
                out = os.path.join(folder, "out")
                self.assertEqual(program(option, CASE, out, surroundings={"DISPLAY": ":98765"})[0], 0)
                self.assertTrue(os.path.exists(out))


if __name__ == "__main__":
    PROGRAM, source = map(os.path.abspath, sys.argv[1:3])
    CASE = os.path.join(source, "resources/cases/plover.json")
    unittest.main(argv=sys.argv[:1] + sys.argv[3:])
