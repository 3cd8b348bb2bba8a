#pragma once

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/support/case_text.h"
#include "tests/support/random_case.h"

namespace wardchalk::test {

/// Rows of numbers from which cases are drawn; they shrink to shorter rows of smaller numbers.
inline rc::Gen<std::vector<std::uint32_t>> anyChoices() {
  return rc::gen::container<std::vector<std::uint32_t>>(
      80, rc::gen::resize(100, rc::gen::inRange<std::uint32_t>(0, 840)));
}

/// How many cases WARDCHALK_CASES of the environment asks for, where that is more than `count`.
inline int casesWanted(int count) {
  const char* wanted = std::getenv("WARDCHALK_CASES");
  return wanted ? std::max(count, std::atoi(wanted)) : count;
}

/// Tries `law` on `count` random rows of choices, or more (casesWanted); the law says what is wrong, or
/// nothing. RC_PARAMS of the environment gives the seed of a failure to be looked into.
template <typename Law>
void forAll(int count, Law law) {
  rc::detail::TestParams params = rc::detail::configuration().testParams;
  params.maxSuccess = casesWanted(count);
  rc::detail::TestMetadata metadata;
  metadata.id = testing::UnitTest::GetInstance()->current_test_info()->name();
  const auto property = [&law] {
    Choices choices(*anyChoices());
    const std::string wrong = law(choices);
    if (!wrong.empty()) RC_FAIL(wrong);
  };
  const auto result = rc::detail::checkTestable(property, metadata, params);
  std::ostringstream message;
  rc::detail::printResultMessage(result, message);
  if (!result.template is<rc::detail::SuccessResult>()) FAIL() << message.str();
  std::cout << "  " << params.maxSuccess << " cases\n";
}

/// A case as it is shown when a law breaks on it.
inline std::string shown(const RandomCase& random) {
  return "\n  case: " + textOf(random.entries) + "\n  rules: " + random.rules;
}

/// Rules by text, read once each: random cases use a handful.
inline const HouseRules& rulesFor(const std::string& text) {
  static std::map<std::string, HouseRules> known;
  const auto found = known.find(text);
  if (found != known.end()) return found->second;
  return known.emplace(text, rulesOf(text)).first->second;
}

}  // namespace wardchalk::test
