#include "tests/support/golden_cases.h"

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <string_view>

#include "core/record/case_file.h"
#include "core/record/rules_file.h"
#include "core/record/text_file.h"

namespace wardchalk::test {

namespace {

namespace fs = std::filesystem;

template <typename T>
T read(const fs::path& file, Result<T> (*reader)(std::string_view)) {
  const Result<std::string> text = readTextFile(file);
  if (text)
    if (Result<T> made = reader(*text)) return std::move(*made);
  std::cerr << "unreadable: " << file << '\n';
  std::abort();
}

std::vector<GoldenCase> all() {
  constexpr std::string_view ending = ".case.json";
  std::vector<GoldenCase> found;
  for (const auto& file : fs::directory_iterator(goldenFolder())) {
    const std::string name = file.path().filename().string();
    if (!std::string_view(name).ends_with(ending)) continue;
    const std::string stem = name.substr(0, name.size() - ending.size());
    const fs::path rules = goldenFolder() / (stem + ".rules.json");
    found.push_back({stem, read<Case>(file.path(), &readCase),
                     fs::exists(rules) ? read<HouseRules>(rules, &readRules) : exactRules()});
  }
  std::sort(found.begin(), found.end(),
            [](const GoldenCase& a, const GoldenCase& b) { return a.name < b.name; });
  if (found.empty()) std::abort();
  return found;
}

}  // namespace

fs::path goldenFolder() { return fs::path(WARDCHALK_SOURCE_DIR) / "tests/golden/cases"; }

const std::vector<GoldenCase>& goldenCases() {
  static const std::vector<GoldenCase> cases = all();
  return cases;
}

}  // namespace wardchalk::test
