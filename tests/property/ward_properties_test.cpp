#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/practice/making/problem_maker.h"
#include "core/practice/making/problem_site.h"
#include "core/practice/sessions/set_file.h"
#include "core/unit/print.h"
#include "tests/support/case_text.h"

// Whether problems could lie on a ward: what labels, giving sets, routes, units and stories look like,
// counted over all topics, levels and both shipped sets of rules.

namespace wardchalk::ward_properties_test {
namespace {

constexpr int ofEach = 60;

std::vector<Problem> drawAll() {
  std::vector<Problem> all;
  for (const HouseRules* rules : {&exactRules(), &classroomRules()})
    for (std::size_t topic = 0; topic < topicIds.size(); ++topic)
      for (int level = lowestLevel; level <= highestLevel; ++level)
        for (int i = 0; i < ofEach; ++i)
          all.push_back(makeProblem(static_cast<Topic>(topic), level, seedInSet(18, i), *rules));
  return all;
}

const std::vector<Problem>& problems() {
  static const std::vector<Problem> all = drawAll();
  return all;
}

std::string nameOf(const Problem& problem) {
  return std::string(idOf(problem.topic)) + " level " + std::to_string(problem.level) + " seed " +
         std::to_string(problem.seed) + ": " + test::textOf(problem.entries);
}

std::string entry(const Problem& problem, std::string_view path) {
  for (const WrittenEntry& one : problem.entries)
    if (one.path == path) return one.text;
  return {};
}

bool isSwallowed(const Problem& problem) {
  const auto& route = problem.given.order.route;
  return route == Route::oral || route == Route::enteral;
}

bool asksFor(const Problem& problem, StepId step) {
  return std::ranges::any_of(problem.asks, [&](const Ask& ask) { return ask.step == step; });
}

bool asksVerdict(const Problem& problem) { return std::ranges::any_of(problem.asks, &Ask::isVerdict); }

/// The child's age, of which problems have years and months.
int monthsOf(const Problem& problem) {
  int months = 0;
  for (const Quantity& part : problem.given.child.age->written.parts)
    months += std::stoi(exactText(part.value)) * (part.unit == Unit::year ? 12 : 1);
  return months;
}

/// "mg/kg/h" of "2.5 mg/kg/h".
std::string unitOf(const Problem& problem) {
  const std::string dose = entry(problem, path::dose);
  const std::size_t space = dose.find(' ');
  return space == std::string::npos ? std::string() : dose.substr(space + 1);
}

double share(int part, int of) { return 100.0 * part / of; }

/// How many of what, and of how many.
struct Tally {
  std::map<std::string, int> of;
  int all = 0;
  void add(const std::string& what) {
    ++of[what];
    ++all;
  }
  double percent(const std::string& what) { return share(of[what], all); }
};

TEST(WardProperties, labelsOfOralLiquidsAreMostlyIn5mLAndIn1mL) {
  Tally labels;
  for (const Problem& problem : problems())
    if (problem.given.stock.kind == StockKind::liquid && isSwallowed(problem))
      labels.add(printed(problem.given.stock.strength->in));
  ASSERT_GT(labels.all, 1000);
  EXPECT_GE(labels.percent("5 mL") + labels.percent("1 mL"), 70);
  EXPECT_GE(labels.percent("5 mL"), 45);
  EXPECT_GE(labels.percent("1 mL"), 10);
}

TEST(WardProperties, noAmpouleIsDrawnFromMoreThanItsOwnVolumeMakesLikely) {
  Tally labels;
  for (const Problem& problem : problems())
    if (problem.given.stock.kind == StockKind::liquid && !isSwallowed(problem) &&
        !problem.given.order.dose->isRate())
      labels.add(printed(problem.given.stock.strength->in));
  EXPECT_GE(labels.percent("1 mL") + labels.percent("2 mL") + labels.percent("5 mL"), 70);
}

TEST(WardProperties, noMoreGoesIntoOnePlaceThanAChildOfThatAgeIsGiven) {
  std::map<std::string, int> given;
  for (const Problem& problem : problems()) {
    const std::string route = entry(problem, path::route);
    const auto most = mostInOnePlace(route, monthsOf(problem));
    if (!most || !problem.key.give) continue;
    ++given[route];
    EXPECT_LE(problem.key.give->exact.value * Number(1000), Number(*most)) << nameOf(problem);
  }
  EXPECT_GT(given["intramuscular"], 100);
  EXPECT_GT(given["subcutaneous"], 20);
}

TEST(WardProperties, everyGivingSetIsUsedAndOneOf60NeverWhereTheRateIsAskedToo) {
  Tally sets;
  for (const Problem& problem : problems()) {
    const auto& factor = problem.given.infusion.dropFactor;
    if (!factor) continue;
    sets.add(printed(*factor));
    EXPECT_FALSE(factor->value == Number(60) && asksFor(problem, StepId::rate)) << nameOf(problem);
  }
  for (const char* set : {"10 drops", "15 drops", "20 drops", "60 drops"})
    EXPECT_GE(sets.percent(set), 5) << set;
  EXPECT_EQ(sets.of.size(), 4U);
}

TEST(WardProperties, unitsByMouthAreRareAndSaltsComeUp) {
  Tally swallowed, injected;
  for (const Problem& problem : problems())
    if (problem.given.order.dose && !problem.given.order.dose->isRate())
      (isSwallowed(problem) ? swallowed : injected).add(unitOf(problem));
  EXPECT_LE(swallowed.percent("units"), 6);
  EXPECT_GE(injected.percent("units"), 5);
  for (Tally* tally : {&swallowed, &injected})
    for (const char* unit : {"units", "mmol", "mEq"}) EXPECT_GE(tally->of[unit], 5) << unit;
}

TEST(WardProperties, dosesForEachMinuteOrHourComeInEveryUnit) {
  std::map<int, std::set<std::string>> units;
  for (const Problem& problem : problems())
    if (problem.topic == Topic::doseRate) units[problem.level].insert(unitOf(problem));
  const std::set<std::string> first = {"mg/kg/h", "mg/h", "units/kg/h", "units/h", "mmol/kg/h"};
  const std::set<std::string> second = {"mcg/kg/h", "mcg/h", "mg/min", "units/kg/h"};
  const std::set<std::string> third = {"mcg/kg/min", "mcg/min"};
  EXPECT_EQ(units[1], first);
  EXPECT_EQ(units[2], second);
  EXPECT_EQ(units[3], third);
}

TEST(WardProperties, dropsComeWithEveryVerdict) {
  std::set<VerdictKind> verdicts;
  for (const Problem& problem : problems())
    if (problem.topic == Topic::drops && asksVerdict(problem)) verdicts.insert(problem.key.verdict);
  EXPECT_EQ(verdicts,
            (std::set{VerdictKind::safe, VerdictKind::ask, VerdictKind::unsafe, VerdictKind::notCovered}));
}

TEST(WardProperties, aFirstLevelNeverHoldsAReferenceThatDoesNotCover) {
  for (const Problem& problem : problems())
    EXPECT_FALSE(problem.level == lowestLevel && problem.key.verdict == VerdictKind::notCovered)
        << nameOf(problem);
}

bool isWhole(const Problem& problem) { return problem.key.rate->dropsPerMinute->exact.value.isWhole(); }

TEST(WardProperties, dropsAreWholeAtFirstAndRoundedLater) {
  for (const Problem& problem : problems())
    EXPECT_FALSE(problem.topic == Topic::drops && problem.key.rate &&
                 isWhole(problem) != (problem.level == lowestLevel))
        << nameOf(problem);
}

/// What is asked, and in which units the papers are: levels of a topic must not look alike.
std::set<std::string> looksOf(Topic topic, int level) {
  std::set<std::string> looks;
  for (const Problem& problem : problems()) {
    if (problem.topic != topic || problem.level != level) continue;
    std::string look;
    for (const Ask& ask : problem.asks) look.append(idOf(ask)).append(" ");
    for (const std::string_view path : {path::weight, path::height, path::dose, path::strength}) {
      const std::string text = entry(problem, path);
      std::ranges::copy_if(text, std::back_inserter(look), [](char c) { return c < '0' || c > '9'; });
      look.append("; ");
    }
    look.append(entry(problem, path::displacement).empty() ? "" : "displacement ");
    look.append(entry(problem, path::dividesInto));
    look.append(entry(problem, path::maxPerDose).empty() ? "" : " capped");
    if (topic == Topic::drops && problem.key.rate) look.append(isWhole(problem) ? " whole" : " parts");
    looks.insert(look);
  }
  return looks;
}

TEST(WardProperties, everyLevelOfATopicHasWhatTheOneBeforeHasNot) {
  for (std::size_t topic = 0; topic + 1 < topicIds.size(); ++topic)
    for (int level = lowestLevel + 1; level <= highestLevel; ++level) {
      const auto before = looksOf(static_cast<Topic>(topic), level - 1);
      const auto now = looksOf(static_cast<Topic>(topic), level);
      const auto isNew = [&](const std::string& look) { return !before.contains(look); };
      EXPECT_GT(std::ranges::count_if(now, isNew) * 3, std::ssize(now)) << topicIds[topic] << " " << level;
    }
}

/// A limit of concentration or time beside safe orders as well: it would tell otherwise.
TEST(WardProperties, aLimitOfAnInfusionDoesNotTellTheVerdict) {
  std::map<bool, std::map<bool, int>> limited;  // by: stated, safe
  for (const Problem& problem : problems()) {
    const bool runs = problem.topic == Topic::infusion || problem.topic == Topic::drops;
    if (!runs || problem.level != 2) continue;
    const Reference& reference = problem.given.reference;
    ++limited[reference.maxConcentration || reference.minInfusionTime]
             [problem.key.verdict == VerdictKind::safe];
  }
  EXPECT_GT(limited[true][true], limited[true][false]);
  EXPECT_GT(limited[false][true], 0);
}

TEST(WardProperties, ordersReadInTheOrderInWhichTheyAreSaid) {
  for (const Problem& problem : problems()) {
    if (!problem.given.order.dose) continue;
    const std::string& story = problem.story;
    EXPECT_FALSE(std::regex_search(story, std::regex("every [0-9]+ h\\b")))
        << story;                                                 // hours are written out
    EXPECT_EQ(story.find(", oral"), std::string::npos) << story;  // "by mouth", without a comma
    const std::string amount =
        entry(problem, path::medicine) + " " + printed(problem.given.order.dose->amount);
    const std::size_t at = story.find(amount);
    ASSERT_NE(at, std::string::npos) << story;
    EXPECT_TRUE(problem.given.order.route != Route::oral ||
                story.find(amount + " by mouth ") != std::string::npos)
        << story;
  }
}

}  // namespace
}  // namespace wardchalk::ward_properties_test
