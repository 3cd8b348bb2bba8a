#!/usr/bin/env python3
"""The console program and the files it is given: pipes, devices, its own input, full disks, what a terminal would obey.

Usage: console_files_test.py CONSOLE SOURCE_FOLDER
"""
import json
import os
import pty
import resource
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import unittest

CONSOLE = ""
CASES = ""
DEMO = ""
MEANS_HANGING = 60  # seconds; nothing here takes one
EVIL = "\x1b]0;owned\x07\x1b[2J\u009b31m\u202e\x7f"
HEAD = '"format":"wardchalk.case","version":1'


def console(*arguments, stdin=b"", stdout=subprocess.PIPE, cwd=None, **more):
    given = {"stdin": stdin} if not isinstance(stdin, bytes) else {"input": stdin}
    ended = subprocess.run([CONSOLE, *map(str, arguments)], stdout=stdout, stderr=subprocess.PIPE,
                           timeout=MEANS_HANGING, cwd=cwd, check=False, **given, **more)
    return ended.returncode, ended.stdout or b"", ended.stderr.decode("utf-8")


def obeyed(text):
    """The characters of a text that a terminal would obey or could be misled by."""
    return sorted({c for c in text if (ord(c) < 32 and c != "\n") or 127 <= ord(c) < 160 or c in "\u202e\u2028"})


class InAFolder(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp(prefix="wardchalk-")
        self.addCleanup(shutil.rmtree, self.folder)

    def path(self, name):
        return os.path.join(self.folder, name)

    def put(self, name, content):
        with open(self.path(name), "wb") as out:
            out.write(content if isinstance(content, bytes) else content.encode("utf-8"))
        return self.path(name)

    def content(self, name):
        with open(self.path(name), "rb") as file:
            return file.read()

    def names(self):
        return sorted(os.listdir(self.folder))

    def case(self):
        return os.path.join(CASES, "ask-below-usual.case.json")

    def table(self, name="table.csv"):
        return shutil.copy(os.path.join(DEMO, "reference_list.csv"), self.path(name))

    def problem(self):
        status, problem, _ = console("practice", "--topic", "bsa", "--count", 1, "--seed", 7, "--json")
        self.assertEqual(status, 0)
        asks = json.loads(problem)["asks"]
        answers = {"format": "wardchalk.answers", "version": 1,
                   "lines": [{"id": ask["id"], "text": "1 m2"} for ask in asks]}
        return problem, json.dumps(answers).encode() + b"\n"


class Reading(InAFolder):
    """Nothing that is no file is waited for."""

    def test_what_is_no_file_is_refused_at_once(self):
        os.mkfifo(self.path("pipe"))
        os.symlink("pipe", self.path("link"))
        with socket.socket(socket.AF_UNIX) as made:
            made.bind(self.path("socket"))
        good = self.case()
        problem = self.put("problem.json", self.problem()[0])
        for what, kind in [("pipe", "a pipe"), ("link", "a pipe"), ("socket", "a socket"), (".", "a folder"),
                           ("/dev/zero", "a device")]:
            odd = self.path(what)
            for call in [("check", odd), ("check", good, "--rules", odd), ("batch", odd), ("batch", "--csv", odd),
                         ("references", odd, self.path("list.json")), ("mark", odd, good), ("mark", problem, odd),
                         ("mark", "--lines", odd, good), ("mark", "--lines", problem, odd)]:
                with self.subTest(call=call):
                    status, out, told = console(*call)
                    self.assertEqual(status, 2, told)
                    self.assertIn(kind, told)
                    self.assertEqual(out, b"")
        self.assertNotIn("list.json", self.names())

    def test_a_nul_byte_is_refused(self):
        with open(self.case(), "rb") as file:
            text = file.read()
        for damaged in [text + b"\0", text + b"\0{}", b"\0" + text, text.replace(b"Plover", b"Plo\0ver")]:
            status, out, told = console("check", self.put("case.json", damaged))
            self.assertEqual((status, out), (2, b""), told)
            self.assertIn("NUL", told)
        line = text.replace(b"\n", b" ")
        status, out, _ = console("batch", "--brief", stdin=line + b"\n" + line + b"\0 {}\n" + line + b"\n")
        self.assertEqual(status, 1)
        self.assertEqual([json.loads(one).get("code") for one in out.splitlines()], [None, "nul-byte", None])

    def test_a_line_of_very_many_keys_does_not_hold_up_the_others(self):
        line = "{" + ",".join(f'"{i:06}":0' for i in range(95_000)) + "}\n"
        self.assertLess(len(line), 1 << 20)
        status, out, _ = console("batch", stdin=line.encode() * 20)
        self.assertEqual(status, 1)
        self.assertEqual(len(out.splitlines()), 20)

    def test_what_is_no_character_is_refused(self):
        status, _, told = console("check", "-", stdin=('{%s,"title":"a\ufffe"}' % HEAD).encode())
        self.assertEqual(status, 2)
        self.assertIn("U+FFFE", told)


class Dash(InAFolder):
    """- is standard input or output wherever a file may stand."""

    def setUp(self):
        super().setUp()
        with open(self.case(), "rb") as file:
            self.text = file.read()

    def test_a_case(self):
        self.assertEqual(console("check", "-", stdin=self.text), console("check", self.case()))

    def test_rules(self):
        with open(os.path.join(CASES, "haycock-formula.rules.json"), "rb") as file:
            rules = file.read()
        named = console("check", self.case(), "--rules", os.path.join(CASES, "haycock-formula.rules.json"))
        self.assertEqual(console("check", self.case(), "--rules", "-", stdin=rules), named)

    def test_a_batch(self):
        line = self.text.replace(b"\n", b" ") + b"\n"
        self.assertEqual(console("batch", "-", stdin=line), console("batch", stdin=line))

    def test_a_table_and_a_list(self):
        with open(self.table(), "rb") as table:
            status, out, _ = console("references", "-", "-", stdin=table)
        with open(os.path.join(DEMO, "reference_list.json"), "rb") as wanted:
            self.assertEqual((status, out), (0, wanted.read()))
        self.assertEqual(self.names(), ["table.csv"])

    def test_a_problem_or_answers(self):
        problem, answers = self.problem()
        files = self.put("problem.json", problem), self.put("answers.json", answers)
        named = console("mark", *files)
        self.assertEqual(named[0], 0, named[2])
        self.assertEqual(console("mark", "-", files[1], stdin=problem), named)
        self.assertEqual(console("mark", files[0], "-", stdin=answers), named)
        lines = console("mark", "--lines", *files)
        self.assertEqual(console("mark", "--lines", files[0], "-", stdin=answers), lines)

    def test_one_input_is_for_one_file(self):
        for call in [("check", "-", "--rules", "-"), ("mark", "-", "-"), ("mark", "--lines", "-", "-"),
                     ("batch", "--rules", "-"), ("batch", "-", "--rules", "-")]:
            with self.subTest(call=call):
                status, out, told = console(*call, stdin=self.text)
                self.assertEqual((status, out), (2, b""))
                self.assertIn("one file only", told)

    def test_a_file_of_that_name_is_named_with_its_folder(self):
        self.put("-", self.text)
        self.assertEqual(console("check", "./-", cwd=self.folder)[0], 0)

    def test_a_folder_as_standard_input_is_told(self):
        handle = os.open(self.folder, os.O_RDONLY)
        status, _, told = console("check", "-", stdin=handle)
        os.close(handle)
        self.assertEqual(status, 2)
        self.assertIn("standard input", told)


class Writing(InAFolder):
    def test_the_table_is_never_lost_to_its_list(self):
        table = self.table()
        os.symlink("table.csv", self.path("link"))
        os.link(table, self.path("second"))
        os.mkdir(self.path("inner"))
        before = self.content("table.csv")
        for name in ["table.csv", "./table.csv", "inner/../table.csv", "link", "second"]:
            for named in [table, self.path("link"), self.path("second")]:
                with self.subTest(name=name, read_as=named):
                    status, _, told = console("references", named, self.path(name))
                    self.assertEqual(status, 2, told)
                    self.assertIn("the file that was read", told)
                    self.assertEqual(self.content("table.csv"), before)
        with open(table, "rb") as handle:
            status, _, told = console("references", "-", table, stdin=handle)
        self.assertEqual((status, self.content("table.csv")), (2, before), told)

    def test_a_batch_does_not_feed_itself(self):
        line = self.put("lines", b"{}\n")
        with open(line, "ab") as out:
            status, _, told = console("batch", line, stdout=out)
        self.assertEqual((status, self.content("lines")), (2, b"{}\n"), told)

    def test_what_is_no_file_stays_what_it_is(self):
        os.mkfifo(self.path("pipe"))
        os.mkdir(self.path("folder"))
        with socket.socket(socket.AF_UNIX) as made:
            made.bind(self.path("socket"))
        targets = ["pipe", "folder", "folder/", "socket"]
        if os.geteuid() == 0:
            os.mknod(self.path("full"), 0o20666, os.makedev(1, 7))
            targets.append("full")
        for name in targets:
            for target in [name, "link"]:
                if os.path.lexists(self.path("link")):
                    os.remove(self.path("link"))
                os.symlink(name, self.path("link"))
                before = os.lstat(self.path(target)).st_ino
                with self.subTest(name=name, target=target):
                    status, _, told = console("references", self.table("table.csv"), self.path(target))
                    self.assertEqual(status, 2, told)
                    self.assertIn("is not a file but", told)
                    self.assertEqual(os.lstat(self.path(target)).st_ino, before)

    def test_reasons_are_true(self):
        table = self.table()
        for target, reason in [("none/list.json", "is not there any more"), ("table.csv/list.json", "is not there"),
                               ("n" * 300, "too long"), ("loop", "leads nowhere")]:
            if target == "loop":
                os.symlink("loop", self.path("loop"))
            with self.subTest(target=target):
                status, _, told = console("references", table, self.path(target))
                self.assertEqual(status, 2)
                self.assertIn(reason, told)

    def test_a_file_that_may_not_grow_leaves_nothing(self):
        def small():
            resource.setrlimit(resource.RLIMIT_FSIZE, (100, 100))
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)

        status, _, told = console("references", self.table(), self.path("list.json"), preexec_fn=small)
        self.assertEqual(status, 2)
        self.assertIn("larger than one file may be there", told)
        self.assertEqual(self.names(), ["table.csv"])

    def test_a_planted_link_leads_nowhere(self):
        precious = self.put("precious", b"precious")
        for name in ["list.json.part", "list.json~", ".list.json.part"]:
            os.symlink(precious, self.path(name))
        self.assertEqual(console("references", self.table(), self.path("list.json"))[0], 0)
        self.assertEqual(self.content("precious"), b"precious")

    def test_a_link_in_a_folder_of_all_is_not_followed(self):
        precious = self.put("precious", b"precious")
        os.mkdir(self.path("shared"))
        os.chmod(self.path("shared"), 0o777)
        os.symlink(precious, self.path("shared/list.json"))
        status, _, told = console("references", self.table(), self.path("shared/list.json"))
        self.assertEqual((status, self.content("precious")), (2, b"precious"))
        self.assertIn("is a link", told)


class StandardOutput(InAFolder):
    def calls(self):
        problem, answers = self.problem()
        files = self.put("problem.json", problem), self.put("answers.json", answers)
        lines = self.put("lines", json.dumps(json.loads(self.content_of(self.case()))) + "\n")
        return [("--help",), ("--version",), ("batch", "--help"), ("check", self.case()),
                ("check", self.case(), "--json"), ("check", self.case(), "--format", "mathml"), ("batch", lines),
                ("batch", "--jobs", "2", lines), ("batch", "--csv", os.path.join(DEMO, "class_set.csv")),
                ("practice", "--topic", "bsa", "--count", "3", "--seed", "1"),
                ("practice", "--topic", "bsa", "--count", "3", "--seed", "1", "--json"), ("mark", *files),
                ("mark", "--json", *files), ("mark", "--lines", *files), ("references", self.table(), "-")]

    @staticmethod
    def content_of(path):
        with open(path, "rb") as file:
            return file.read()

    def test_a_full_disk_is_told(self):
        for call in self.calls():
            with self.subTest(call=call[:2]), open("/dev/full", "wb") as full:
                status, _, told = console(*call, stdout=full)
                self.assertEqual(status, 2)
                self.assertIn("standard output cannot be written to: there is no room left", told)

    def test_an_output_that_may_not_grow_is_told(self):
        def small():
            resource.setrlimit(resource.RLIMIT_FSIZE, (10, 10))
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)

        for call in self.calls():
            with self.subTest(call=call[:2]), open(self.path("out"), "wb") as out:
                status, _, told = console(*call, stdout=out, restore_signals=False, preexec_fn=small)
                self.assertEqual(status, 2)
                self.assertIn("larger than one file may be there", told)

    def test_a_closed_output_is_told(self):
        for call in self.calls():
            with self.subTest(call=call[:2]):
                status, _, told = console(*call, stdout=None, preexec_fn=lambda: os.close(1))
                self.assertEqual(status, 2)
                self.assertIn("standard output cannot be written to", told)

    def test_a_reader_that_has_gone_away_wanted_no_more(self):
        for ignored in [False, True]:
            reader, writer = os.pipe()
            os.close(reader)
            status, _, told = console("check", self.case(), stdout=writer, restore_signals=False,
                                      preexec_fn=lambda: signal.signal(
                                          signal.SIGPIPE, signal.SIG_IGN if ignored else signal.SIG_DFL))
            os.close(writer)
            self.assertEqual((status, told), (2 if ignored else -signal.SIGPIPE, ""))

    def test_what_is_told_never_lands_in_a_file(self):
        """With standard error closed, the next file that is opened would have its number."""
        console("references", self.table(), self.path("list.json"), preexec_fn=lambda: os.close(2))
        with open(os.path.join(DEMO, "reference_list.json"), "rb") as wanted:
            self.assertEqual(self.content("list.json"), wanted.read())


class Terminal(InAFolder):
    """Nothing from a file is obeyed by the terminal."""

    def refused_by(self, *call, **more):
        status, out, told = console(*call, **more)
        self.assertNotEqual(status, 0)
        self.assertEqual(obeyed(out.decode()), [])
        self.assertEqual(obeyed(told), [], told)
        return told

    def test_keys(self):
        key = json.dumps("k" + EVIL + "\nwardchalk-console: done")
        for text in ["{%s,%s:1}" % (HEAD, key), '{%s,"child":{%s:1}}' % (HEAD, key),
                     '{%s,%s:1,%s:1}' % (HEAD, key, key), '{"format":%s,"version":1}' % key,
                     '{%s,"child":{"weight":%s}}' % (HEAD, key), '{%s,"order":{"route":%s}}' % (HEAD, key)]:
            told = self.refused_by("check", "-", stdin=text.encode())
            self.assertEqual(told.count("\n"), 1, told)
        self.refused_by("batch", stdin=("{%s,%s:1}\n" % (HEAD, key)).encode())

    def test_names(self):
        name = self.put("file" + EVIL.replace("/", ""), b"{}")
        self.refused_by("check", name)
        self.refused_by("check", name + "none")
        self.refused_by("check", self.case(), "--rules", name)
        self.refused_by("batch", "--csv", name)
        self.refused_by("mark", name, name)
        self.refused_by("check", "--" + EVIL)
        self.refused_by("practice", "--topic", EVIL, "--count", "1", "--seed", "1")

    def test_tables(self):
        evil = "child.weight%s\r\n1\r\n" % EVIL
        self.refused_by("batch", "--csv", stdin=evil.encode())
        self.refused_by("references", "-", "-", stdin=evil.encode())
        with open(self.table(), encoding="utf-8", newline="") as table:
            rows = table.read().replace("2028-02-01", "2028" + EVIL)
        self.refused_by("references", self.put("evil.csv", rows), self.path("list.json"))

    def test_answers(self):
        """What a case says is shown, and what is not seen in it is shown by number; or it is refused."""
        with open(self.case(), encoding="utf-8") as file:
            case = json.load(file)
        case["title"] = "for bench 3 " + EVIL
        case["order"]["medicine"] = "Plover" + EVIL
        for options in [(), ("--json",), ("--format", "mathml"), ("--format", "latex")]:
            _, out, told = console("check", "-", *options, stdin=json.dumps(case).encode())
            self.assertEqual(obeyed(out.decode()), [], options)
            self.assertEqual(obeyed(told), [])
        _, out, _ = console("batch", stdin=(json.dumps(case) + "\n").encode())
        self.assertEqual(obeyed(out.decode()), [])
        problem, answers = self.problem()
        given = json.loads(answers)
        given["lines"][0]["text"] = "1 m2" + EVIL
        for options in [(), ("--json",), ("--lines",)]:
            _, out, told = console("mark", *options, self.put("problem.json", problem),
                                   self.put("answers.json", json.dumps(given)))
            self.assertEqual(obeyed(out.decode()) + obeyed(told), [], options)
        for unseen, name in [("\n", "a line break that cannot be seen (U+000A)"), ("\t", "a tab that cannot be seen (U+0009)")]:
            given["lines"][0]["text"] = "1" + unseen + "m2"
            _, _, told = console("mark", self.put("problem.json", problem), self.put("answers.json", json.dumps(given)))
            self.assertIn(name, told)
        story = json.loads(problem)
        story["story"] += EVIL
        _, out, told = console("mark", self.put("problem.json", json.dumps(story)), self.put("answers.json", answers))
        self.assertEqual(obeyed(out.decode()) + obeyed(told), [])

    def test_a_table_is_shown_by_a_terminal_and_stays_itself_elsewhere(self):
        table = "title,child.weight\r\nbench\x1b[2J 鸟,no weight\r\n".encode()
        _, out, _ = console("batch", "--csv", stdin=table)
        self.assertIn("bench\x1b[2J 鸟".encode(), out)
        master, slave = pty.openpty()
        console("batch", "--csv", stdin=table, stdout=slave)
        os.close(slave)
        shown = b""
        try:
            while piece := os.read(master, 65536):
                shown += piece
        except OSError:  # the other end is closed
            pass
        os.close(master)
        self.assertIn("bench\\u{1B}[2J 鸟".encode(), shown)
        self.assertNotIn(b"\x1b", shown)


class Numbers(InAFolder):
    def test_options_are_plain_decimal_numbers(self):
        practice = ("practice", "--topic", "bsa", "--count", "1", "--seed", "1")
        files = [self.put(name, text) for name, text in zip(("problem", "answers"), self.problem())]
        calls = {"--jobs": ("batch", self.put("none", b"")), "--seed": practice[:-2], "--level": practice,
                 "--count": ("practice", "--topic", "bsa", "--seed", "1"), "--rung": ("mark", *files)}
        for option, call in calls.items():
            self.assertEqual(console(*call, option, "2")[0], 0, option)
            for odd in ["010", "02", "0x2", "0b1", "+2", "-2", "2.0", "2e0", " 2", "2 ", "", "1'0", "٢", "two", "2,",
                        "00", "18446744073709551618", "99999999999999999999999", "1" * 500]:
                with self.subTest(option=option, odd=odd):
                    status, out, told = console(*call, f"{option}={odd}")
                    self.assertEqual((status, out), (2, b""))
                    self.assertIn(option, told)


if __name__ == "__main__":
    CONSOLE, source = map(os.path.abspath, sys.argv[1:3])
    CASES = os.path.join(source, "tests/golden/cases")
    DEMO = os.path.join(source, "resources/demo")
    unittest.main(argv=sys.argv[:1] + sys.argv[3:])
