#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <string>
#include <string_view>

#include "core/check/disagreement.h"
#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_file.h"
#include "core/record/second_check.h"
#include "core/record/worksheet_file.h"
#include "core/words/working_text.h"
#include "tests/golden/golden_file.h"
#include "tests/golden/moments.h"
#include "tests/support/failed_sheet.h"
#include "tests/support/golden_cases.h"

namespace wardchalk::golden_test {
namespace {

using test::GoldenCase;

const GoldenCase& goldenNamed(std::string_view name) {
  const auto& all = test::goldenCases();
  const auto found =
      std::find_if(all.begin(), all.end(), [name](const GoldenCase& golden) { return golden.name == name; });
  if (found == all.end()) {
    std::cerr << "no golden case " << name << '\n';
    std::abort();
  }
  return *found;
}

Worksheet worked(const GoldenCase& golden) { return workOut(golden.given, golden.rules); }

/// A case as its file has it, entry by entry.
std::vector<WrittenEntry> entriesOf(const GoldenCase& golden) {
  const Result<std::string> text = readTextFile(test::goldenFolder() / (golden.name + ".case.json"));
  const Result<CaseFile> file = text ? readCaseFile(*text) : Result<CaseFile>(CaseFile{});
  return file ? file->entries : std::vector<WrittenEntry>();
}

/// The first person's worksheet while a second one, who read one line of the same papers otherwise,
/// disagrees.
Worksheet seconded(const GoldenCase& golden, std::string_view path, std::string_view read) {
  const std::vector<WrittenEntry> first = entriesOf(golden);
  std::vector<WrittenEntry> second = first;
  for (WrittenEntry& entry : second)
    if (entry.path == path) entry.text = read;
  Case other = golden.given;
  if (!setEntry(other, path, read)) return {};
  const Worksheet sheet = worked(golden);
  const auto apart = disagreementOf(compareChecks({first, sheet}, {second, workOut(other, golden.rules)}));
  return apart ? unsettled(sheet, *apart) : sheet;
}

std::filesystem::path momentFile(const Moment& moment, std::string_view ending) {
  return test::goldenFolder().parent_path() / "moments" / (moment.name + std::string(ending));
}

TEST(GoldenMoments, WriteTheExpectedWorking) {
  for (const Moment& moment : moments())
    test::compareWithFile(momentFile(moment, ".txt"), workingText(moment.sheet));
}

TEST(GoldenMoments, WriteTheExpectedWorksheet) {
  for (const Moment& moment : moments()) {
    std::string json;
    writeWorksheet(json, moment.sheet, WorksheetExtent::whole);
    test::compareWithFile(momentFile(moment, ".json"), test::oneMemberALine(json));
  }
}

}  // namespace

std::vector<Moment> moments() {
  const GoldenCase& bottle = goldenNamed("safe-per-surface-liquid");
  const GoldenCase& beyond = goldenNamed("unsafe-over-single");
  Case noDose = bottle.given;  // a line that is not read holds nothing
  noDose.order.dose.reset();
  Case noWeight = bottle.given;
  noWeight.child.weight.reset();
  return {{"dose-still-typed", workOut(noDose, bottle.rules, Withheld(path::dose))},
          {"weight-cannot-be-read", workOut(noWeight, bottle.rules, Withheld(path::weight, true))},
          {"second-person-differs", seconded(bottle, path::dose, "60 mg")},
          {"second-person-differs-on-unsafe", seconded(beyond, path::weight, "17.3 kg")},
          {"not-worked-out", test::failedSheet(bottle.given)}};
}

}  // namespace wardchalk::golden_test
