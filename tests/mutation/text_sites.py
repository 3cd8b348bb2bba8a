"""Places in the text of a room where one sign can be another: an operator, a comparison, a constant, a rounding, a call or a guard
("if … return …;") that is dropped, two arguments or the two sides of a ?: that change places. What stands in comments, in strings, behind #
and in an #else (which is another system's) is left alone."""

import os
import re

from factor_sites import closing, split_arguments

# Signs stand between blanks where they join two values (clang-format), so that no type is taken for one.
SIGNS = {"+": "-", "-": "+", "*": "/", "/": "*", "&&": "||", "||": "&&", "==": "!=", "!=": "==", "<": "<=", "<=": "<", ">": ">=",
         ">=": ">"}
ROUNDINGS = {"floor": "ceil", "ceil": "floor", "rootRounded": "rootCut", "rootCut": "rootRounded", "larger": "smaller",
             "smaller": "larger", "ceilAtLeastOne": "larger(Number(0), ", "roundedUpVolume": "roundedDownVolume",
             "roundedDownVolume": "roundedUpVolume"}
# Calls whose loss makes no other program: assertions say what is so, and room is made beforehand for speed alone.
NO_CALL = ("if", "while", "for", "switch", "return", "assert", "reserve", "shrink_to_fit")
HIDDEN = re.compile(r'^#else\b.*?^#endif|//[^\n]*|/\*.*?\*/|R"\((?:.|\n)*?\)"|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])+\'|^[ \t]*#(?:[^\n]*\\\n)*[^\n]*',
                    re.M | re.S)


class Site:
    def __init__(self, path, line, kind, start, end, instead):
        self.path, self.line, self.kind, self.start, self.end, self.instead = path, line, kind, start, end, instead

    def mutated(self, text):
        return text[:self.start] + self.instead + text[self.end:]

    def words(self, text):
        return f"{text[self.start:self.end].strip()!r} -> {self.instead.strip()!r}"


def masked(text):
    """The text with what is no code as blanks, every place as it was."""
    return HIDDEN.sub(lambda found: re.sub(r"[^\n]", " ", found.group()), text)


def changes(code, text):
    """(kind, start, end, instead) of all that can be another."""
    for found in re.finditer(r"(?<= )(&&|\|\||==|!=|<=|>=|[-+*/<>])(?= |\n)", code):
        kind = "comparison" if found.group()[0] in "<>=!" else "operator"
        yield kind, found.start(), found.end(), SIGNS[found.group()]
    for found in re.finditer(r"(?<![\w.\"'])(\d+)(?=U?\b)(?![\w.]*[xX.])", code):
        yield "constant", found.start(), found.end(), str(int(found.group(1)) + 1)
        if int(found.group(1)) > 0:
            yield "constant", found.start(), found.end(), str(int(found.group(1)) - 1)
    for found in re.finditer(r"(?<![\w=!])!(?=[\w(])", code):
        yield "operator", found.start(), found.end(), " "
    for found in re.finditer(r"\breturn (true|false);", code):
        yield "constant", found.start(1), found.end(1), "false" if found.group(1) == "true" else "true"
    yield from calls(code, text)
    yield from guards(code)
    yield from sides(code, text)


def guards(code):
    for found in re.finditer(r"\bif \(", code):
        behind = closing(code, found.end() - 1)
        leaves = re.match(r"\s+return\b", code[behind:])
        if leaves:
            yield "guard", found.start(), end_of_side(code, behind + leaves.end()), "static_cast<void>(0)"


def end_of_side(code, at, stops=";,"):
    """Where a value that begins at `at` ends: at a sign of `stops`, or before the bracket that closes around it."""
    depth = choices = 0
    for i in range(at, len(code)):
        depth += code[i] in "({["
        depth -= code[i] in ")}]"
        if depth < 0 or (depth == 0 and choices == 0 and code[i] in stops and "::" not in code[i - 1:i + 2]):
            return i
        if depth == 0 and code[i] in "?:" and "::" not in code[i - 1:i + 2]:
            choices += 1 if code[i] == "?" else -1
    raise ValueError("a value without an end")


def sides(code, text):
    for found in re.finditer(r"(?<=\s)\?(?=\s)", code):
        middle = end_of_side(code, found.end(), ":")
        end = end_of_side(code, middle + 1)
        if code[middle] == ":":
            yield "sides", found.end(), end, f" {text[middle + 1:end].strip()} : {text[found.end():middle].strip()}"


def calls(code, text):
    for found in re.finditer(r"\b(\w+)\(", code):
        name, end = found.group(1), closing(code, found.end() - 1)
        if name in ("if", "while", "for", "switch", "return", "static_assert", "sizeof"):
            continue
        if name in ROUNDINGS and code[found.start() - 1] in ". (":
            yield "rounding", found.start(), found.end(), ROUNDINGS[name] + ("" if ROUNDINGS[name].endswith(" ") else "(")
        if name == "rounded" and code[found.start() - 1] == ".":
            yield "rounding", end - 1, end, " + 1)"
        arguments = split_arguments(text[found.end():end - 1])
        if len(arguments) == 2 and arguments[0] != arguments[1] and not re.search(r"\w[&*>]* \w", arguments[0] + arguments[1]):
            yield "arguments", found.end(), end - 1, f"{arguments[1]}, {arguments[0]}"
    for found in re.finditer(r"(?<=[;{}\n])([ \t]+)((?:\w+(?:::|\.|->))*\w+)\(", code):
        end = closing(code, found.end() - 1)
        if code[end:end + 1] == ";" and re.split(r"\W+", found.group(2))[-1] not in NO_CALL:
            yield "call", found.start(2), end, "static_cast<void>(0)"


def sites_in(root, room):
    """Every site of the sources of a room."""
    for folder, _, files in sorted(os.walk(os.path.join(root, room))):
        for file in sorted(files):
            if not file.endswith(".cpp"):
                continue
            path = os.path.relpath(os.path.join(folder, file), root)
            text = open(os.path.join(root, path)).read()
            try:
                found = sorted(set(changes(masked(text), text)))
            except ValueError:  # a bracket that stands in a string: nothing of this file's calls
                continue
            for kind, start, end, instead in found:
                yield Site(path, text.count("\n", 0, start) + 1, kind, start, end, instead)
