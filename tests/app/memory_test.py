#!/usr/bin/env python3
"""Peak memory of the console's batch: it must not grow with the rows of a table nor with the length of a line.

Usage: memory_test.py CONSOLE CLASS_SET.csv
"""
import os
import subprocess
import sys

ALLOWED_GROWTH_KB = 12_000
LONG_LINE = 64 << 20


def peak_of(console, options, pieces):
    """Feeds the pieces through a pipe; the peak memory in kB and the number of lines that came out."""
    reader, writer = os.pipe()
    feeder = os.fork()
    if feeder == 0:
        os.close(reader)
        with os.fdopen(writer, "wb") as out:
            for piece in pieces:
                out.write(piece)
        os._exit(0)
    os.close(writer)
    process = subprocess.Popen([console, "batch", *options], stdin=reader, stdout=subprocess.PIPE)
    os.close(reader)
    lines = sum(1 for _ in process.stdout)
    _, _, usage = os.wait4(process.pid, 0)
    os.waitpid(feeder, 0)
    return usage.ru_maxrss, lines


def long_line(before, after):
    piece = b"x" * (1 << 20)
    return [before, *[piece] * (LONG_LINE >> 20), after]


def main():
    console, table = sys.argv[1:3]
    with open(table, "rb") as file:
        header, *rows = file.read().splitlines(keepends=True)
    body = b"".join(rows)
    times = 100_000 // len(rows) + 1
    small, _ = peak_of(console, ["--csv"], [header, body])
    faults = []
    for name, options, pieces, expected in [
        ("100,000 rows", ["--csv"], [header, *[body] * times], 1 + times * len(rows)),
        ("100,000 rows by 4 jobs", ["--csv", "--jobs", "4"], [header, *[body] * times], 1 + times * len(rows)),
        ("a row of 64 MB", ["--csv"], long_line(header, b"\r\n" + rows[0]), 3),
        ("a quoted row of 64 MB", ["--csv"], long_line(header + b'"', b'"\r\n' + rows[0]), 3),
        ("a line of 64 MB", [], long_line(b"", b"\n{}\n"), 2),
    ]:
        used, lines = peak_of(console, options, pieces)
        print(f"{name}: {used} kB, {lines} lines; a small table: {small} kB")
        if used > small + ALLOWED_GROWTH_KB:
            faults.append(f"{name} takes {used} kB")
        if lines != expected:
            faults.append(f"{name} gives {lines} lines, not {expected}")
    sys.exit("\n".join(faults) or 0)


if __name__ == "__main__":
    main()
