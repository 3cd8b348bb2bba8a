"""Where the core builds a chain: each factor in core/working and core/check, with the function that builds it, and the text
that turns it upside down, drops it or states it in another unit."""

import os
import re

ROOMS = ("core/working", "core/check")
FACTORS = ("doseFactor rateFactor dosesADay labelFactor strengthFactor entriesFactor percentFactor entryFactor over1 factorOf "
           "mostellerFactor conversionFactor conversionFactors convertedChain").split()
CONVERTED = ("convertAbove", "convertBelow")  # with a chain, from, to
MUTATIONS = ("turned", "dropped", "inOther")
DEFINITION = re.compile(r"^[A-Za-z_][\w:<>,&\* ]*?[ &\*>]((?:\w+::)*\w+)\(")

# What a mutated file is compiled with. A factor in another unit is as if one had erred in a unit name.
PRELUDE = """#pragma once
#include "core/working/chain.h"
namespace mutant {
using namespace wardchalk;
inline Unit inOther(Unit unit) {
  const auto count = unitTable.size();
  for (std::size_t i = 1; i < count; ++i) {
    const auto other = static_cast<Unit>((static_cast<std::size_t>(unit) + i) % count);
    if (dimensionOf(other) == dimensionOf(unit)) return other;
  }
  return unit == Unit::mL ? Unit::mg : Unit::mL;
}
inline Factor turned(const Factor& factor) { return factor.turned(); }
inline Factor dropped(const Factor&) { return {}; }
inline Factor inOther(Factor factor) {
  Term& term = factor.over.units.empty() && !factor.under.units.empty() ? factor.under : factor.over;
  if (term.units.empty()) term.units.push_back(Unit::kg);
  else term.units.front() = inOther(term.units.front());
  return factor;
}
inline std::vector<Factor> turned(std::vector<Factor> factors) {
  for (Factor& factor : factors) factor = factor.turned();
  return factors;
}
inline std::vector<Factor> dropped(std::vector<Factor> factors) {
  if (!factors.empty()) factors.pop_back();
  return factors;
}
inline std::vector<Factor> inOther(std::vector<Factor> factors) {
  if (!factors.empty()) factors.back() = inOther(factors.back());
  return factors;
}
inline Chain turned(Chain chain) { chain.factors.front() = chain.factors.front().turned(); return chain; }
inline Chain dropped(Chain chain) { chain.factors.erase(chain.factors.begin()); return chain; }
inline Chain inOther(Chain chain) { chain.factors.front() = inOther(chain.factors.front()); return chain; }
}  // namespace mutant
"""


class Site:
    def __init__(self, path, line, builder, start, end, kind):
        self.path, self.line, self.builder, self.start, self.end, self.kind = path, line, builder, start, end, kind

    def mutated(self, text, mutation):
        piece = text[self.start:self.end]
        if self.kind == "convert":
            name, inside = piece.split("(", 1)
            chain, source, to = split_arguments(inside[:-1])
            piece = {"turned": f"{name}({chain}, {to}, {source})", "dropped": "static_cast<void>(0)",
                     "inOther": f"{name}({chain}, {source}, mutant::inOther({to}))"}[mutation]
        elif self.kind == "braces":
            piece = f"mutant::{mutation}(Factor{piece})"
        else:
            piece = f"mutant::{mutation}({piece})"
        return text[:self.start] + piece + text[self.end:]


def closing(text, at):
    """Behind the bracket that closes the one at `at`."""
    depth = 0
    for i in range(at, len(text)):
        depth += text[i] in "({["
        depth -= text[i] in ")}]"
        if depth == 0:
            return i + 1
    raise ValueError("unclosed bracket")


def split_arguments(text):
    parts, depth, last = [], 0, 0
    for i, c in enumerate(text):
        depth += c in "({["
        depth -= c in ")}]"
        if c == "," and depth == 0:
            parts.append(text[last:i].strip())
            last = i + 1
    return parts + [text[last:].strip()]


def builders_by_offset(text):
    """Offset of each function's definition with its name, and whether it gives one factor."""
    found, offset = [], 0
    for line in text.splitlines(True):
        match = DEFINITION.match(line)
        if match and not line.rstrip().endswith(";"):
            found.append((offset, match.group(1), line.startswith("Factor ")))
        offset += len(line)
    return found


def sites_in(root, path):
    text = open(os.path.join(root, path)).read()
    definitions = builders_by_offset(text)

    def around(at):
        before = [d for d in definitions if d[0] <= at]
        return before[-1] if before else (0, "", False)

    for match in re.finditer(r"\b(" + "|".join(FACTORS + list(CONVERTED)) + r")\(", text):
        offset, builder, _ = around(match.start())
        if text[offset:].split("(", 1)[0].endswith(match.group(1)) and text[offset:match.end()].count("(") == 1:
            continue  # the definition itself
        kind = "convert" if match.group(1) in CONVERTED else "call"
        line = text.count("\n", 0, match.start()) + 1
        yield Site(path, line, builder, match.start(), closing(text, match.end() - 1), kind)
    for match in re.finditer(r"return (\{)", text):
        offset, builder, is_factor = around(match.start())
        if is_factor:
            yield Site(path, text.count("\n", 0, match.start()) + 1, builder, match.start(1), closing(text, match.start(1)), "braces")


def all_sites(root):
    sites = []
    for room in ROOMS:
        for folder, _, files in sorted(os.walk(os.path.join(root, room))):
            for file in sorted(files):
                if file.endswith(".cpp"):
                    sites += sites_in(root, os.path.relpath(os.path.join(folder, file), root))
    return sites
