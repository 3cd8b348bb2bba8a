#include <gtest/gtest.h>

#include <iostream>
#include <variant>

#include "core/practice/lines/student_line.h"
#include "core/record/case_entry.h"
#include "tests/entries/frozen_rows.h"

// How entries are to be read, by tables that were frozen before there was a reader (see README.md beside
// them). This counts how many of them today's readers answer as meant.

namespace wardchalk::test {
namespace {

using Entries = std::vector<Beside>;  // path and text

/// The case that the entries make; nothing if one of them is refused.
std::optional<Case> caseOf(const Entries& entries) {
  Case inputs;
  for (const Beside& entry : entries)
    if (!setEntry(inputs, entry.name, entry.value)) return std::nullopt;
  return inputs;
}

bool isSaid(std::string_view name) { return name == "remark" || name == "given"; }

/// What a row says the case is to hold.
Entries meantBy(const FrozenRow& row) {
  Entries entries{{std::string(pathOf(row.field)), row.means}};
  for (const Beside& one : row.beside)
    if (!isSaid(one.name)) entries.push_back({std::string(pathOf(one.name)), one.value});
  return entries;
}

bool sameAmount(const LineSide& one, const LineSide& other) {
  return one.value == other.value && sameUnits(one.units, other.units);
}

bool lineReadsAsMeant(const FrozenRow& row) {
  const ReadLine read = readStudentLine(row.typed);
  const ReadLine meant = readStudentLine(row.means);
  const auto* line = std::get_if<StudentLine>(&read);
  const auto* other = std::get_if<StudentLine>(&meant);
  if (!line || !other || !sameAmount(line->sides.back(), other->sides.back())) return false;
  const bool bare = row.besideOf("remark") == "E46";
  return bare || line->remarks.empty() == row.besideOf("remark").empty();
}

bool readsAsMeant(const FrozenRow& row) {
  if (row.field == "line") return lineReadsAsMeant(row);
  const auto read = caseOf({{std::string(pathOf(row.field)), row.typed}});
  return read && read == caseOf(meantBy(row));
}

bool lineIsRefusedAsMeant(const FrozenRow& row) {
  const ReadLine read = readStudentLine(row.typed);
  const auto* fault = std::get_if<LineFault>(&read);
  return fault && (fault->instead.empty() || fault->instead == row.means);
}

bool isRefusedAsMeant(const FrozenRow& row) {
  if (row.field == "line") return lineIsRefusedAsMeant(row);
  Case inputs;
  const std::string path(pathOf(row.field));
  const auto refusal = setEntry(inputs, path, row.typed).refusalIfAny();
  if (!refusal) return false;
  if (refusal->suggestion.empty()) return true;
  return !row.means.empty() && !row.isQuestion &&
         caseOf({{path, refusal->suggestion}}) == caseOf(meantBy(row));
}

/// Prints how many rows are answered as meant, and the others by name.
void score(std::string_view what, const std::vector<FrozenRow>& rows, bool (*asMeant)(const FrozenRow&)) {
  std::size_t held = 0;
  for (const FrozenRow& row : rows)
    if (asMeant(row))
      ++held;
    else
      std::cout << what << " otherwise: " << row.name() << '\n';
  std::cout << what << " as meant: " << held << " of " << rows.size() << '\n';
  EXPECT_GT(held, 0U);
}

TEST(FrozenEntries, areReadAsMeant) { score("read", frozenRead(), readsAsMeant); }
TEST(FrozenEntries, areRefusedAsMeant) { score("refused", frozenRefused(), isRefusedAsMeant); }

}  // namespace
}  // namespace wardchalk::test
