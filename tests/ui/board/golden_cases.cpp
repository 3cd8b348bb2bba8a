#include "tests/ui/board/golden_cases.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>

#include "core/record/case_file.h"
#include "core/record/rules_file.h"
#include "core/record/text_file.h"

namespace wardchalk::ui::test {

namespace {

namespace fs = std::filesystem;

/// What a result holds; a file of ours that cannot be read is no case for a test to go on with.
template <typename T>
T orStop(const Result<T>& result, const fs::path& file) {
  if (result) return *result;
  std::cerr << "unreadable: " << file << '\n';
  std::abort();
}

std::string textOf(const fs::path& file) { return orStop(readTextFile(file), file); }

std::vector<SampleCase> all() {
  constexpr std::string_view ending = ".case.json";
  std::vector<SampleCase> cases;
  for (const auto& entry : fs::directory_iterator(fs::path(WARDCHALK_SOURCE_DIR) / "tests/golden/cases")) {
    std::string name = entry.path().filename().string();
    if (!name.ends_with(ending)) continue;
    name.resize(name.size() - ending.size());
    const fs::path rules = entry.path().parent_path() / (name + ".rules.json");
    cases.push_back({name, orStop(readCase(textOf(entry.path())), entry.path()),
                     fs::exists(rules) ? orStop(readRules(textOf(rules)), rules) : exactRules()});
  }
  std::sort(cases.begin(), cases.end(),
            [](const SampleCase& a, const SampleCase& b) { return a.name < b.name; });
  return cases;
}

}  // namespace

const std::vector<SampleCase>& goldenCases() {
  static const std::vector<SampleCase> cases = all();
  return cases;
}

}  // namespace wardchalk::ui::test
