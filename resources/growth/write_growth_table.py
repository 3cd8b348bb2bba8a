#!/usr/bin/env python3
"""Writes core/child/growth_table.cpp from the tables beside this script. Run by hand after a table has changed; no
build runs it. A test holds the written file against the tables.

    resources/growth/write_growth_table.py > core/child/growth_table.cpp
"""

import csv
from pathlib import Path

TABLES = [("infant_weight_for_age", "infantWeight"), ("infant_length_for_age", "infantLength"),
          ("weight_for_age", "weight"), ("stature_for_age", "stature")]
SEXES = [("female", "Female"), ("male", "Male")]

HEAD = """#include "core/child/growth_table.h"

#include <array>

// Written by resources/growth/write_growth_table.py from the tables beside it: change those, not this.
// Source: CDC/NCHS 2000 Growth Charts, percentile data files wtageinf, lenageinf, wtage and statage (Kuczmarski RJ et
// al., Vital Health Stat 11(246), 2002). US Government work, public domain.

namespace wardchalk {

namespace {

// clang-format off"""

TAIL = """// clang-format on

}  // namespace

std::span<const GrowthRow> growthRows(GrowthTable table, Sex sex) {
  const bool girl = sex == Sex::female;
  switch (table) {
    case GrowthTable::infantWeight: return girl ? std::span(infantWeightFemale) : std::span(infantWeightMale);
    case GrowthTable::infantLength: return girl ? std::span(infantLengthFemale) : std::span(infantLengthMale);
    case GrowthTable::weight: return girl ? std::span(weightFemale) : std::span(weightMale);
    case GrowthTable::stature: break;
  }
  return girl ? std::span(statureFemale) : std::span(statureMale);
}

}  // namespace wardchalk"""


def rows(name):
    text = (Path(__file__).parent / f"{name}.csv").read_text(encoding="utf-8")
    return list(csv.DictReader(line for line in text.splitlines() if not line.startswith("#")))


def main():
    print(HEAD)
    for file, table in TABLES:
        for sex, suffix in SEXES:
            written = ["{%s, {%s, %s, %s}}," % (row["age_months"], row["L"], row["M"], row["S"])
                       for row in rows(file) if row["sex"] == sex]
            print(f"\nconstexpr auto {table}{suffix} = std::to_array<GrowthRow>({{")
            for i in range(0, len(written), 2):
                print("  " + " ".join(written[i:i + 2]))
            print("});")
    print(TAIL)


if __name__ == "__main__":
    main()
