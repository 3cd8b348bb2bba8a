#include "core/record/case_entry.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>
#include <string>
#include <vector>

namespace wardchalk::case_entry_test {
namespace {

TEST(CaseEntries, areTheKeysOfTheCaseFileInTheOrderOfThePapers) {
  const std::vector<std::string_view> expected = {"title",
                                                  "child.age",
                                                  "child.sex",
                                                  "child.height",
                                                  "child.weight",
                                                  "child.bsa",
                                                  "child.weight_method",
                                                  "child.weighed",
                                                  "child.born_early",
                                                  "child.size_confirmed",
                                                  "order.medicine",
                                                  "order.dose",
                                                  "order.route",
                                                  "order.schedule",
                                                  "order.as_needed",
                                                  "order.max_doses_per_day",
                                                  "reference.medicine",
                                                  "reference.also_called",
                                                  "reference.low",
                                                  "reference.high",
                                                  "reference.limit_only",
                                                  "reference.schedule",
                                                  "reference.route",
                                                  "reference.max_per_dose",
                                                  "reference.max_per_day",
                                                  "reference.max_doses_per_day",
                                                  "reference.age_from",
                                                  "reference.age_over",
                                                  "reference.age_below",
                                                  "reference.age_up_to",
                                                  "reference.weight_from",
                                                  "reference.weight_over",
                                                  "reference.weight_below",
                                                  "reference.weight_up_to",
                                                  "reference.bsa_from",
                                                  "reference.bsa_over",
                                                  "reference.bsa_below",
                                                  "reference.bsa_up_to",
                                                  "reference.max_concentration",
                                                  "reference.min_concentration",
                                                  "reference.min_infusion_time",
                                                  "reference.max_infusion_rate",
                                                  "reference.source",
                                                  "reference.second_check_required",
                                                  "stock.kind",
                                                  "stock.strength",
                                                  "stock.content",
                                                  "stock.diluent",
                                                  "stock.final_volume",
                                                  "stock.displacement",
                                                  "stock.divides_into",
                                                  "infusion.volume",
                                                  "infusion.over",
                                                  "infusion.drop_factor"};
  std::vector<std::string_view> paths;
  for (const CaseEntry& entry : caseEntries()) paths.push_back(entry.path);
  EXPECT_EQ(paths, expected);
}

TEST(CaseEntries, kindsSayHowAFileWritesThem) {
  const std::set<std::string_view> flags = {"child.born_early", "child.size_confirmed", "order.as_needed",
                                            "reference.limit_only", "reference.second_check_required"};
  const std::set<std::string_view> counts = {"order.max_doses_per_day", "reference.max_doses_per_day",
                                             "stock.divides_into"};
  for (const CaseEntry& entry : caseEntries()) {
    const EntryKind expected = flags.contains(entry.path)    ? EntryKind::flag
                               : counts.contains(entry.path) ? EntryKind::count
                                                             : EntryKind::text;
    EXPECT_EQ(entry.kind, expected) << entry.path;
  }
}

TEST(FindEntry, findsByTheWholePathOnly) {
  EXPECT_EQ(findEntry("child.age")->path, "child.age");
  for (const char* path :
       {"", "child", "child.", "age", "child.ages", "Child.age", "child.age ", "reference.age"})
    EXPECT_EQ(findEntry(path), nullptr) << path;
}

TEST(SetEntry, refusesAnUnknownPath) {
  Case inputs;
  const auto refusal = setEntry(inputs, "child.name", "Wren").refusalIfAny();
  ASSERT_TRUE(refusal);
  EXPECT_EQ(idOf(refusal->code), "key-unknown");
  EXPECT_EQ(refusal->path, "child.name");
  EXPECT_EQ(inputs, Case{});
}

TEST(SetEntry, replacesWhatWasRead) {
  Case inputs;
  EXPECT_TRUE(setEntry(inputs, "child.weight", "17.2 kg"));
  EXPECT_TRUE(setEntry(inputs, "child.weight", "37 lb"));
  EXPECT_EQ(inputs.child.weight, (MixedQuantity{{{Number(37), Unit::lb}}}));
}

TEST(SetEntry, keepsWhatWasReadWhenTheNextIsRefused) {
  Case inputs;
  EXPECT_TRUE(setEntry(inputs, "child.weight", "17.2 kg"));
  EXPECT_FALSE(setEntry(inputs, "child.weight", "17,2 kg"));
  EXPECT_EQ(inputs.child.weight, (MixedQuantity{{{Number::ratio(172, 10), Unit::kg}}}));
}

RC_GTEST_PROP(SetEntryProperty, everyEntryTakesAnyText, (const std::string& text)) {
  for (const CaseEntry& entry : caseEntries()) {
    Case inputs;
    const auto refusal = setEntry(inputs, entry.path, text).refusalIfAny();
    if (!refusal) continue;
    RC_ASSERT(refusal->path == entry.path);
    RC_ASSERT(text.find(refusal->typed) != std::string::npos);
    RC_ASSERT(inputs == Case{});
  }
}

RC_GTEST_PROP(SetEntryProperty, orderOfEntryDoesNotMatter, ()) {
  const std::vector<std::pair<const char*, const char*>> entries = {{"child.weight", "17.2 kg"},
                                                                    {"order.dose", "80 mg"},
                                                                    {"reference.high", "120 mg/m2/dose"},
                                                                    {"stock.strength", "25 mg/mL"},
                                                                    {"order.schedule", "every 12 h"}};
  Case straight;
  for (const auto& [path, text] : entries) RC_ASSERT(static_cast<bool>(setEntry(straight, path, text)));
  std::vector<std::size_t> order = {0, 1, 2, 3, 4};
  for (std::size_t i = order.size(); i > 1; --i)
    std::swap(order[i - 1], order[*rc::gen::inRange<std::size_t>(0, i)]);
  Case shuffled;
  for (const std::size_t i : order)
    RC_ASSERT(static_cast<bool>(setEntry(shuffled, entries[i].first, entries[i].second)));
  RC_ASSERT(shuffled == straight);
}

}  // namespace
}  // namespace wardchalk::case_entry_test
