#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <variant>

#include "core/entry/read_entry.h"
#include "core/practice/lines/student_line.h"
#include "core/record/case_entry.h"
#include "tests/entries/frozen_rows.h"

// Every entry of the frozen tables (see README.md beside them) is read as it was decided before there was a
// reader, or refused with no more to write than was permitted. The few that are not stand in known_open.csv
// with the reason; one that starts to hold must leave it.

namespace wardchalk::test::entries_test {
namespace {

/// What a row's note says holds: no unit system and no agreed rules unless it does; order and reference in
/// mg.
EntrySetting settingOf(const FrozenRow& row) {
  EntrySetting setting;
  setting.drugInGrams = true;
  if (row.inFile) setting.from = EntryFrom::file;
  const std::string given = row.besideOf("given");
  if (given == "unit_system:metric") setting.bareHeight = Unit::cm;
  if (given == "unit_system:household") setting.bareHeight = Unit::in;
  if (given == "agreed house rules unit_system:metric") setting.bareWeight = Unit::kg;
  return setting;
}

EntryAnswer answerFor(const FrozenRow& row, std::string_view text) {
  return *readEntry(pathOf(row.field), text, settingOf(row));
}

bool isSaid(std::string_view name) { return name == "remark" || name == "given"; }

/// What the row says is filled besides, in no order.
std::vector<std::string> filledBy(const FrozenRow& row) {
  std::vector<std::string> filled;
  for (const Beside& one : row.beside)
    if (!isSaid(one.name)) filled.push_back(std::string(pathOf(one.name)) + "=" + one.value);
  std::sort(filled.begin(), filled.end());
  return filled;
}

std::vector<std::string> filledBy(const EntryAnswer& answer) {
  std::vector<std::string> filled;
  for (const AlsoFills& one : answer.also) filled.push_back(std::string(one.path.view()) + "=" + one.text);
  std::sort(filled.begin(), filled.end());
  return filled;
}

std::string remarksOf(const EntryAnswer& answer) { return answer.remarks.empty() ? "" : "trailing-zero"; }

/// What is wrong with how a row is read; empty where nothing is.
std::string wrongReading(const FrozenRow& row, const EntryAnswer& answer) {
  if (!answer.isRead) return "is refused: " + std::string(idOf(answer.refusal->code));
  if (answer.safe != row.means) return "is read as " + answer.safe + ", and means " + row.means;
  if (filledBy(answer) != filledBy(row)) return "fills other fields than it means";
  if (remarksOf(answer) != row.besideOf("remark")) return "is remarked on otherwise: " + remarksOf(answer);
  return {};
}

/// The E number of a remark on a line, or "safe-form" where only the spelling is another.
std::string remarkOn(const StudentLine& line) {
  if (line.sides.back().written == UnitsWritten::none) return "E46";
  if (line.remarks.empty()) return {};
  const std::string error(infoOf(line.remarks.front().code).error);
  return error.empty() ? "safe-form" : error;
}

std::string wrongLine(const FrozenRow& row) {
  const ReadLine read = readStudentLine(row.typed);
  const ReadLine meant = readStudentLine(row.means);
  if (const auto* fault = std::get_if<LineFault>(&read))
    return "is refused: " + std::string(idOf(fault->code));
  const auto& line = std::get<StudentLine>(read);
  const LineSide& last = line.sides.back();
  const LineSide& wanted = std::get<StudentLine>(meant).sides.back();
  if (last.value != wanted.value || !sameUnits(last.units, wanted.units)) return "comes to another amount";
  if (remarkOn(line) != row.besideOf("remark")) return "is remarked on otherwise: " + remarkOn(line);
  return {};
}

std::string wrongRead(const FrozenRow& row) {
  return row.field == "line" ? wrongLine(row) : wrongReading(row, answerFor(row, row.typed));
}

/// What a button writes: read, and no more than is permitted.
std::string wrongButton(const FrozenRow& row, const std::string& write) {
  if (write.empty()) return {};
  if (row.means.empty() || row.isQuestion) return "offers " + write + ", and may offer nothing";
  FrozenRow offered = row;
  if (row.field == "line") {
    offered.typed = write;
    return wrongLine(offered);
  }
  const std::string wrong = wrongReading(offered, answerFor(row, write));
  return wrong.empty() ? wrong : "offers " + write + ", which " + wrong;
}

/// The entry with one of the answers to its question: "17.2" with "kg", "15 mg/kg" with "per dose".
std::string answered(const FrozenRow& row, const std::string& answer) {
  return row.typed + (answer.starts_with("per ") ? "/" + answer.substr(4) : " " + answer);
}

std::string wrongAnswers(const FrozenRow& row, const std::vector<std::string>& answers) {
  if (answers.empty()) return {};
  if (!row.isQuestion || answers.size() != 2) return "asks, and may not";
  const std::string wanted[] = {answered(row, row.means), answered(row, row.other)};
  for (std::size_t i = 0; i < 2; ++i) {
    const EntryAnswer one = answerFor(row, answers[i]);
    const EntryAnswer other = answerFor(row, wanted[i]);
    if (!one.isRead || !other.isRead || one.safe != other.safe || one.also != other.also)
      return "asks with another answer: " + answers[i];
  }
  return {};
}

std::string wrongRefusal(const FrozenRow& row) {
  if (row.field == "line") {
    const ReadLine read = readStudentLine(row.typed);
    const auto* fault = std::get_if<LineFault>(&read);
    return fault ? wrongButton(row, fault->instead) : "is read";
  }
  const EntryAnswer answer = answerFor(row, row.typed);
  if (answer.isRead) return "is read as " + answer.safe;
  const std::string wrong = wrongButton(row, answer.refusal->suggestion);
  return wrong.empty() ? wrongAnswers(row, answer.answers) : wrong;
}

/// All of the rows hold but those that are known to be open, which do not.
void demand(const std::vector<FrozenRow>& rows, std::string (*wrongWith)(const FrozenRow&)) {
  const std::vector<std::string> open = knownOpen();
  std::size_t held = 0;
  for (const FrozenRow& row : rows) {
    const std::string wrong = wrongWith(row);
    const bool isOpen = std::find(open.begin(), open.end(), row.name()) != open.end();
    if (wrong.empty()) ++held;
    EXPECT_TRUE(wrong.empty() || isOpen) << row.name() << " " << wrong;
    EXPECT_FALSE(wrong.empty() && isOpen) << row.name() << " holds now: take it out of known_open.csv";
  }
  std::cout << "  " << held << " of " << rows.size() << " rows hold\n";
}

TEST(FrozenEntries, areReadAsMeant) { demand(frozenRead(), wrongRead); }
TEST(FrozenEntries, areRefusedWithNoMoreToWriteThanPermitted) { demand(frozenRefused(), wrongRefusal); }

TEST(FrozenEntries, areReadAsMeantHoweverTheyArrive) { demand(frozenArrivals("read"), wrongRead); }
TEST(FrozenEntries, areRefusedHoweverTheyArrive) { demand(frozenArrivals("refused"), wrongRefusal); }

TEST(FrozenEntries, everyOpenRowIsOneOfTheTables) {
  std::vector<std::string> names;
  for (const auto& rows : {frozenRead(), frozenRefused()})
    for (const FrozenRow& row : rows) names.push_back(row.name());
  for (const std::string& open : knownOpen())
    EXPECT_NE(std::find(names.begin(), names.end(), open), names.end()) << open;
}

// A file is read alike: what a person may write, it may hold. It has no unit system, and nobody to ask.
TEST(FrozenEntries, areReadAlikeInFiles) {
  for (const FrozenRow& row : frozenRead()) {
    if (row.field == "line" || !row.besideOf("given").empty() || !wrongRead(row).empty()) continue;
    EXPECT_EQ(wrongReading(row, *readEntry(pathOf(row.field), row.typed, fileSetting)), "") << row.name();
  }
}

// The table of entries and the answers for a form come from the same readers.
TEST(FrozenEntries, makeTheCaseThatTheyMean) {
  for (const FrozenRow& row : frozenRead()) {
    if (row.field == "line" || !wrongRead(row).empty()) continue;
    Case typed;
    Case meant;
    EXPECT_TRUE(setEntry(typed, pathOf(row.field), row.typed, settingOf(row))) << row.name();
    EXPECT_TRUE(setEntry(meant, pathOf(row.field), row.means)) << row.name();
    for (const Beside& one : row.beside) {
      if (isSaid(one.name)) continue;
      EXPECT_TRUE(setEntry(meant, pathOf(one.name), one.value)) << row.name();
    }
    EXPECT_EQ(typed, meant) << row.name();
  }
}

}  // namespace
}  // namespace wardchalk::test::entries_test
