#include "core/record/second_check.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk::second_check_test {
namespace {

using Entries = std::vector<WrittenEntry>;

const Entries& usual() {
  static const Entries entries = {{"child.height", "103 cm"},
                                  {"child.weight", "17.2 kg"},
                                  {"order.medicine", "Plover"},
                                  {"order.dose", "80 mg"},
                                  {"order.route", "oral"},
                                  {"order.schedule", "every 12 h"},
                                  {"reference.high", "120 mg/m2/dose"},
                                  {"reference.schedule", "every 12 h"},
                                  {"reference.source", "Bench list, p. 4"},
                                  {"stock.kind", "liquid"},
                                  {"stock.strength", "25 mg/1 mL"}};
  return entries;
}

Entries with(Entries entries, std::string_view path, std::string text) {
  const auto found = std::ranges::find(entries, path, &WrittenEntry::path);
  if (found == entries.end())
    entries.push_back({std::string(path), std::move(text)});
  else if (text.empty())
    entries.erase(found);
  else
    found->text = std::move(text);
  return entries;
}

Worksheet worked(const Entries& entries) {
  Case inputs;
  for (const WrittenEntry& entry : entries)
    EXPECT_TRUE(setEntry(inputs, entry.path, entry.text)) << entry.path;
  return workOut(inputs, exactRules());
}

SecondCheck compared(const Entries& first, const Entries& second) {
  const Worksheet one = worked(first);
  const Worksheet other = worked(second);
  return compareChecks({first, one}, {second, other});
}

Agreement agreementOf(const SecondCheck& check, std::string_view path) {
  const auto found = std::ranges::find(check.entries, path, &EntryCompared::path);
  EXPECT_NE(found, check.entries.end()) << path;
  return found == check.entries.end() ? Agreement::differs : found->agreement;
}

const OutcomeCompared* outcomeOf(const SecondCheck& check, Outcome outcome) {
  const auto found = std::ranges::find(check.outcomes, outcome, &OutcomeCompared::outcome);
  return found == check.outcomes.end() ? nullptr : &*found;
}

TEST(SecondCheck, agreesWithItself) {
  const SecondCheck check = compared(usual(), usual());
  EXPECT_TRUE(check.agree());
  EXPECT_EQ(check.entries.size(), usual().size());
  EXPECT_TRUE(outcomeOf(check, Outcome::amount));
  EXPECT_FALSE(outcomeOf(check, Outcome::drops));
  EXPECT_EQ(secondCheckSummary(check), "Same result: nothing differs.");
}

struct Written {
  const char* path;
  const char* first;
  const char* second;
};
void PrintTo(const Written& written, std::ostream* out) { *out << written.path << " " << written.second; }

class SameValue : public ::testing::TestWithParam<Written> {};
TEST_P(SameValue, isNoDifference) {
  const auto& [path, first, second] = GetParam();
  const auto entries = compareEntries(std::vector<WrittenEntry>{{path, first}},
                                      std::vector<WrittenEntry>{{path, second}}, Pounds::exact);
  ASSERT_EQ(entries.size(), 1U);
  EXPECT_EQ(idOf(entries[0].agreement), "written-differently");
  EXPECT_EQ(entries[0].first, first);
  EXPECT_EQ(entries[0].second, second);
}
INSTANTIATE_TEST_SUITE_P(
    SecondCheck, SameValue,
    ::testing::Values(
        Written{"child.weight", "17.2 kg", "17200 g"}, Written{"child.weight", "8 lb 8 oz", "8.5 lb"},
        Written{"child.height", "103 cm", "1.03 m"}, Written{"child.height", "3 ft 5 in", "41 in"},
        Written{"child.age", "1 year 2 month", "14 month"}, Written{"order.dose", "80 mg", "0.08 g/dose"},
        Written{"order.dose", "0.1 mcg/kg/min", "6 mcg/kg/h"},
        Written{"order.schedule", "BID", "2 times a day"}, Written{"order.medicine", "Plover", "plover"},
        Written{"reference.source", "list, p.4", "List, p. 4"},
        Written{"stock.strength", "120 mg/5 mL", "24 mg/1 mL"}, Written{"stock.content", "1 g", "1000 mg"},
        Written{"reference.weight_from", "2500 g", "2.5 kg"}, Written{"infusion.over", "0.5 h", "30 min"},
        Written{"infusion.volume", "0.05 L", "50 mL"},
        Written{"reference.max_per_day", "600 mg", "600 mg/day"}, Written{"order.as_needed", "false", ""}));

class OtherValue : public ::testing::TestWithParam<Written> {};
TEST_P(OtherValue, isADifference) {
  const auto& [path, first, second] = GetParam();
  const auto entries = compareEntries(std::vector<WrittenEntry>{{path, first}},
                                      std::vector<WrittenEntry>{{path, second}}, Pounds::exact);
  ASSERT_EQ(entries.size(), 1U);
  EXPECT_EQ(idOf(entries[0].agreement), "differs");
}
INSTANTIATE_TEST_SUITE_P(SecondCheck, OtherValue,
                         ::testing::Values(Written{"child.weight", "17.2 kg", "17.2 lb"},
                                           Written{"child.weight", "17.2 kg", "17.20001 kg"},
                                           Written{"order.dose", "80 mg", "80 mg/day"},
                                           Written{"order.dose", "80 mg/kg", "80 mg/m2"},
                                           Written{"order.dose", "80 mg", "80 mcg"},
                                           Written{"order.schedule", "every 12 h", "daily"},
                                           Written{"order.schedule", "once", "daily"},
                                           Written{"reference.age_up_to", "12 year", "12.5 year"},
                                           Written{"reference.age_up_to", "12 year", "144 month"},
                                           Written{"stock.strength", "5 mg/1 mL", "5 mg/1 tablet"},
                                           Written{"order.route", "oral", "enteral"},
                                           Written{"order.dose", "5 units", "5 mg"}));

TEST(SecondCheck, tellsByFieldByFigureAndByVerdict) {
  const SecondCheck check = compared(usual(), with(usual(), path::weight, "12.7 kg"));
  EXPECT_FALSE(check.agree());
  EXPECT_EQ(agreementOf(check, path::weight), Agreement::differs);
  EXPECT_EQ(agreementOf(check, path::dose), Agreement::same);
  EXPECT_EQ(outcomeOf(check, Outcome::weight)->agreement, Agreement::differs);
  EXPECT_EQ(outcomeOf(check, Outcome::surface)->first, "0.70 m²");
  EXPECT_EQ(outcomeOf(check, Outcome::surface)->second, "0.60 m²");
  EXPECT_EQ(outcomeOf(check, Outcome::safeDose)->agreement, Agreement::differs);
  EXPECT_EQ(outcomeOf(check, Outcome::orderedDose)->agreement, Agreement::same);
  EXPECT_EQ(outcomeOf(check, Outcome::amount)->agreement, Agreement::onlyFirst);
  EXPECT_FALSE(check.sameVerdict);
  EXPECT_NE(check.firstVerdict.find("SAFE"), std::string::npos);
  EXPECT_NE(check.secondVerdict.find("UNSAFE"), std::string::npos);
  EXPECT_NE(secondCheckSummary(check).find("The verdicts are not the same."), std::string::npos);
}

TEST(SecondCheck, namesWhatOnlyOneOfThemEntered) {
  const SecondCheck check =
      compared(with(usual(), path::maxPerDose, "300 mg"), with(usual(), path::source, ""));
  EXPECT_FALSE(check.agree());
  EXPECT_EQ(agreementOf(check, path::maxPerDose), Agreement::onlyFirst);
  EXPECT_EQ(agreementOf(compared(usual(), with(usual(), path::age, "4 year")), path::age),
            Agreement::onlySecond);
}

/// One took the reference from the list and the other read the book: the same figures are the same result.
TEST(SecondCheck, showsAnotherSourceAndDoesNotCountIt) {
  const SecondCheck check = compared(usual(), with(usual(), path::source, "The ward's book, 3rd edition"));
  EXPECT_TRUE(check.agree());
  EXPECT_EQ(idOf(agreementOf(check, path::source)), "shown-only");
}

TEST(SecondCheck, readsEntriesBack) {
  EXPECT_EQ(enteredText(path::age, "4 year"), "4 years");
  EXPECT_EQ(enteredText(path::maxPerDay, "300 mg/day"), "300 mg per day");
  EXPECT_EQ(enteredText(path::weight, "17,2 kg"), "17,2 kg");
  EXPECT_EQ(enteredText(path::weight, ""), "");
}

TEST(Disagreement, isTheFirstFigureThatDiffersAndNeverTheAmount) {
  const SecondCheck weight = compared(usual(), with(usual(), path::weight, "12.7 kg"));
  EXPECT_EQ(disagreementOf(weight), (Disagreement{"weight in kg 17.2 kg", "12.7 kg"}));
  const SecondCheck age = compared(with(usual(), path::age, "4 year"), with(usual(), path::age, "14 year"));
  EXPECT_EQ(disagreementOf(age), (Disagreement{"4 years", "14 years"}));
  EXPECT_EQ(disagreementOf(compared(usual(), usual())), std::nullopt);
}

TEST(Unsettled, isAskedAboutFirstAndHasNoAmount) {
  const Worksheet safe = worked(usual());
  ASSERT_EQ(safe.verdict, VerdictKind::safe);
  ASSERT_TRUE(safe.give && safe.step(StepId::give));
  const Worksheet sheet = unsettled(safe, {"weight in kg 17.2 kg", "12.7 kg"});
  EXPECT_EQ(sheet.verdict, VerdictKind::ask);
  EXPECT_EQ(sheet.because(), "second-differs");
  EXPECT_FALSE(sheet.give || sheet.rate || sheet.step(StepId::give) || sheet.step(StepId::device));
  EXPECT_EQ(verdictReason(sheet),
            "The second check came out differently: weight in kg 17.2 kg here, 12.7 kg in the second check. "
            "Do not prepare until it is settled.");
}

TEST(Unsettled, leavesAGraverVerdict) {
  const Worksheet over = worked(with(usual(), path::dose, "500 mg"));
  ASSERT_EQ(over.verdict, VerdictKind::unsafe);
  const Worksheet sheet = unsettled(over, {"a", "b"});
  EXPECT_EQ(sheet.verdict, VerdictKind::unsafe);
  EXPECT_EQ(sheet.because(), over.because());
  EXPECT_TRUE(sheet.finding(FindingCode::secondDiffers));
}

TEST(NeedsBeyond, areThoseOfOneAlone) {
  const Worksheet whole = worked(usual());
  const Worksheet part = worked(with(usual(), path::weight, ""));
  const auto beyond = needsBeyond(whole, part);
  ASSERT_EQ(beyond.size(), 1U);
  EXPECT_EQ(beyond[0].path, path::weight);
  EXPECT_TRUE(needsBeyond(part, part).empty());
}

TEST(SecondCheck, leavesTheTitleOfASheetAlone) {
  EXPECT_TRUE(compared(with(usual(), path::title, "bench 3"), usual()).agree());
}

// The same wrong weight, copied by both, is found by nobody: the words beside every comparison say so.
TEST(SecondCheck, H39_cannotFindWhatBothCopied) {
  const Entries wrong = with(usual(), path::weight, "37 kg");
  EXPECT_TRUE(compared(wrong, wrong).agree());
  const std::string said = say(PhraseId::second_cannotFind);
  EXPECT_NE(said.find("wrong weight on the chart"), std::string::npos);
  EXPECT_NE(said.find("another child's chart"), std::string::npos);
}

// An amount that waits for its questions is compared, and not told by a way round them.
TEST(SecondCheck, doesNotTellAnAmountThatMustBeAskedAbout) {
  const Entries little = with(usual(), path::dose, "60 mg");
  const SecondCheck check = compared(little, with(little, path::strength, "20 mg/1 mL"));
  const OutcomeCompared* amount = outcomeOf(check, Outcome::amount);
  ASSERT_TRUE(amount);
  EXPECT_EQ(amount->agreement, Agreement::differs);
  EXPECT_EQ(amount->first, say(PhraseId::second_toldOnceAsked));
  EXPECT_EQ(amount->second, amount->first);
}

TEST(SecondCheck, figuresThatDifferDoNotPrintAlike) {
  const SecondCheck check =
      compared(with(usual(), path::weight, "17.00001 kg"), with(usual(), path::weight, "17.00002 kg"));
  const OutcomeCompared* weight = outcomeOf(check, Outcome::weight);
  EXPECT_EQ(weight->agreement, Agreement::differs);
  EXPECT_NE(weight->first, weight->second);
}

/// Every figure that is compared, as the first has it: "rate in mL/h 100 mL/h same".
std::string outcomesOf(const SecondCheck& check) {
  std::string text;
  for (const OutcomeCompared& one : check.outcomes)
    text.append(text.empty() ? "" : "; ")
        .append(outcomeName(one.outcome) + " " + one.first + " " + agreementWords(one.agreement));
  return text;
}

TEST(SecondCheck, comparesWhatIsSetOnAPumpAndADrip) {
  Entries infused = with(with(with(usual(), "order.route", "intravenous"), "infusion.volume", "50 mL"),
                         "infusion.over", "30 min");
  infused = with(infused, "infusion.drop_factor", "20 drop/mL");
  EXPECT_EQ(
      outcomesOf(compared(infused, infused)),
      "weight in kg 17.2 kg same; BSA 0.70 m² same; safe or maximum dose 84 mg same; safe or maximum in "
      "24 h 168 mg same; ordered per dose 80 mg same; ordered in 24 h 160 mg same; strength 25 mg in 1 mL "
      "same; amount to measure 3.2 mL same; rate in mL/h 100 mL/h same; rate in drops 33 drops/min same");
  const SecondCheck other = compared(infused, with(infused, "infusion.over", "60 min"));
  EXPECT_NE(outcomesOf(other).find("rate in mL/h 100 mL/h DIFFERS; rate in drops 33 drops/min DIFFERS"),
            std::string::npos)
      << outcomesOf(other);
  EXPECT_FALSE(other.agree());
  const SecondCheck one = compared(infused, with(infused, "infusion.volume", ""));
  EXPECT_NE(outcomesOf(one).find("rate in mL/h 100 mL/h ONLY the first has it"), std::string::npos)
      << outcomesOf(one);
}

TEST(SecondCheck, hasAWordForHowEntriesAgree) {
  const auto words = [](std::string_view path, const std::string& first, const std::string& second) {
    return agreementWords(
        agreementOf(compared(with(usual(), path, first), with(usual(), path, second)), path));
  };
  EXPECT_EQ(words("child.weight", "17.2 kg", "17.2 kg"), "same");
  EXPECT_EQ(words("child.weight", "17.2 kg", "17200 g"), "same value, written differently");
  EXPECT_EQ(words("child.weight", "17.2 kg", "17.3 kg"), "DIFFERS");
  EXPECT_EQ(words("child.weight", "17.2 kg", ""), "ONLY the first has it");
  EXPECT_EQ(words("child.weight", "", "17.2 kg"), "ONLY the second has it");
  EXPECT_EQ(words("reference.source", "Bench list, p. 4", "Bench list, p. 5"), "shown only");
}

TEST(SecondCheck, ofNothingAgrees) {
  const SecondCheck check = compared({}, {});
  EXPECT_TRUE(check.agree());
  EXPECT_TRUE(check.entries.empty() && check.outcomes.empty());
  EXPECT_FALSE(disagreementOf(check));
}

TEST(SecondCheck, saysWhyTwoVerdictsAlikeAreNotTheSame) {
  const Entries first = with(usual(), "order.dose", "60 mg");            // too little
  const Entries second = with(usual(), "order.schedule", "every 24 h");  // not as the reference says
  const SecondCheck check = compared(first, second);
  EXPECT_FALSE(check.sameVerdict);
  EXPECT_EQ(verdictTitle(worked(first)), verdictTitle(worked(second)));
  EXPECT_EQ(check.firstVerdict, verdictTitle(worked(first)) + ". " + verdictReason(worked(first)));
  EXPECT_EQ(check.secondVerdict, verdictTitle(worked(second)) + ". " + verdictReason(worked(second)));
}

TEST(SecondCheck, showsWhatTheListSaysOfTheEntry) {
  const Entries named = with(usual(), "reference.medicine", "Plover");
  for (const auto& [path, text] : {WrittenEntry{"reference.also_called", "Dotterel"},
                                   WrittenEntry{"reference.second_check_required", "true"}}) {
    const SecondCheck check = compared(named, with(named, path, text));
    EXPECT_EQ(agreementOf(check, path), Agreement::shownOnly) << path;
    EXPECT_TRUE(check.agree()) << path;
  }
}

TEST(Disagreement, saysThatOneHasNoSuchFigure) {
  const auto disagreement = disagreementOf(compared(usual(), with(usual(), "child.weight", "")));
  ASSERT_TRUE(disagreement);
  EXPECT_EQ(disagreement->first, "weight in kg 17.2 kg");
  EXPECT_EQ(disagreement->second, say(PhraseId::second_noFigure));
}

}  // namespace
}  // namespace wardchalk::second_check_test
