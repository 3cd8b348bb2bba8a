// What always stands beside something else, whatever the case; and what is the same in every locale.
#include <array>
#include <locale>
#include <sstream>

#include "core/check/work_out.h"
#include "core/record/case_entry.h"
#include "core/record/case_summary.h"
#include "core/record/list_entry.h"
#include "core/record/reference_choice.h"
#include "core/record/rules_file.h"
#include "core/record/worksheet_file.h"
#include "core/words/amount_words.h"
#include "core/words/case_facts.h"
#include "core/words/isolated.h"
#include "core/words/rules_words.h"
#include "core/words/sentences.h"
#include "core/words/working_markup.h"
#include "core/words/working_text.h"
#include "tests/property/for_all.h"
#include "tests/support/settled.h"

namespace wardchalk::test::always_beside_test {

namespace {

Worksheet worked(const RandomCase& random) { return workOut(caseOf(random.entries), rulesFor(random.rules)); }

std::string textOf(const Worksheet& sheet) { return workingText(sheet); }

/// A locale that writes a comma for the point and sets off thousands with points.
class CommaForPoint : public std::numpunct<char> {
 protected:
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return '.'; }
  std::string do_grouping() const override { return "\3"; }
};

/// Another that groups with spaces, in twos after the first three.
class Spaces : public std::numpunct<char> {
 protected:
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return ' '; }
  std::string do_grouping() const override { return "\3\2"; }
};

/// The locale of the program while it lives.
class InLocale {
 public:
  explicit InLocale(const std::locale& locale) : before_(std::locale::global(locale)) {}
  ~InLocale() { std::locale::global(before_); }
  InLocale(const InLocale&) = delete;
  InLocale& operator=(const InLocale&) = delete;

 private:
  std::locale before_;
};

/// Two checks that a reference need not give rise to are not missed where it does not.
bool isListed(const Worksheet& sheet, const Check& check) {
  if (check.id == CheckId::medicine) return check.why != WhyNot::notStated;
  return check.id != CheckId::maxDoses || check.why != WhyNot::noMaximum || sheet.given.order.asNeeded;
}

std::vector<std::locale> locales() {
  std::vector<std::locale> all = {std::locale::classic(),
                                  std::locale(std::locale::classic(), new CommaForPoint),
                                  std::locale(std::locale::classic(), new Spaces)};
  for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8", "ar_EG.UTF-8", "C.UTF-8"}) try {
      all.emplace_back(name);
    } catch (const std::runtime_error&) {  // not installed here; those above always are
    }
  return all;
}

}  // namespace

// A volume never stands alone (H14), nor an amount without the label it was reckoned with (H15).
TEST(AlwaysBeside, H14_H15_everyAmountHasItsDoseAndItsLabel) {
  int measured = 0;
  forAll(8000, [&](Choices& choices) -> std::string {
    const RandomCase random = choices.onceIn(6) ? randomRateCase(choices) : randomCase(choices);
    const AmountWords words = amountWords(settled(worked(random)));
    if (words.measure.empty()) return words.none.empty() ? "no amount and no reason" + shown(random) : "";
    ++measured;
    if (words.dose.empty()) return "an amount without its dose" + shown(random);
    return words.label.empty() ? "an amount without its label" + shown(random) : "";
  });
  EXPECT_GT(measured, 500);
}

// "At most 4 a day" is not lost on the way to the amount (H47): as needed and the lower of the two numbers
// stand with it in every text of it.
TEST(AlwaysBeside, H47_asNeededAndTheMostDosesStandWithTheAmount) {
  int said = 0;
  forAll(8000, [&](Choices& choices) -> std::string {
    const RandomCase random = randomCase(choices);
    const Worksheet sheet = worked(random);
    const Shown shownSheet = settled(sheet);
    const AmountWords words = amountWords(shownSheet);
    const Order& order = sheet.given.order;
    if (words.measure.empty() || order.schedule->isOnce()) return {};
    const Reference& reference = sheet.given.reference;
    std::optional<int> most = order.maxDosesPerDay;
    const bool referenceOnce = reference.schedule && reference.schedule->isOnce();
    const std::optional<int> allowed = referenceOnce ? std::optional(1) : reference.maxDosesPerDay;
    if (allowed && (!most || *allowed < *most)) most = allowed;
    std::vector<std::string> parts;
    if (order.asNeeded) parts.emplace_back("as needed");
    if (most)
      parts.push_back("no more than " + std::to_string(*most) + (*most == 1 ? " dose" : " doses") +
                      " in 24 h");
    const std::vector<std::string> cells = summaryOf(sheet);
    const std::string& give = cells.at(8);
    const std::string text = workingText(shownSheet);
    for (const std::string& part : parts) {
      ++said;
      if (words.when.find(part) == std::string::npos) return "the amount lost " + part + shown(random);
      if (text.find(part) == std::string::npos) return "the text lost " + part + shown(random);
      if (give != "ask first" && give.find(part) == std::string::npos)
        return "the table lost " + part + shown(random);
    }
    return {};
  });
  EXPECT_GT(said, 100);
}

// Whatever was not checked is listed wherever the verdict says safe (H20, H37), and "safe" never stands
// alone.
TEST(AlwaysBeside, H37_safeStandsWithItsReferenceAndWithWhatWasNotChecked) {
  int safe = 0;
  forAll(12000, [&](Choices& choices) -> std::string {
    const RandomCase random = randomCase(choices);
    const Worksheet sheet = worked(random);
    const std::string text = textOf(sheet);
    if (text.find("Identity, allergy, interactions") == std::string::npos)
      return "no caution" + shown(random);
    if (sheet.verdict != VerdictKind::safe) return {};
    ++safe;
    if (text.find("SAFE by this reference") == std::string::npos) return "safe by what?" + shown(random);
    bool wanting = false;
    for (const Check& check : sheet.checks)
      wanting |= check.status == CheckStatus::notChecked && isListed(sheet, check);
    const bool listed = text.find("NOT checked:") != std::string::npos;
    return wanting && !listed ? "unmade checks are not listed" + shown(random) : "";
  });
  EXPECT_GT(safe, 200);
}

TEST(AlwaysBeside, H31_entriesAreRefusedAlikeInEveryLocale) {
  const std::pair<const char*, RefusalCode> entries[] = {
      {"1,5 mg", RefusalCode::comma},           {"1,234 mg", RefusalCode::comma},
      {"1.234,5 mg", RefusalCode::comma},       {"1 000 mg", RefusalCode::spaceInNumber},
      {"1.234.5 mg", RefusalCode::secondPoint}, {"١٢ mg", RefusalCode::otherDigits},
      {"1'000 mg", RefusalCode::notANumber}};
  int seen = 0;
  for (const std::locale& locale : locales()) {
    const InLocale in(locale);
    ++seen;
    for (const auto& [text, code] : entries) {
      Case inputs;
      const auto refusal = setEntry(inputs, "order.dose", text).refusalIfAny();
      ASSERT_TRUE(refusal) << text << " in " << locale.name();
      EXPECT_EQ(idOf(refusal->code), idOf(code)) << text << " in " << locale.name();
    }
    Case inputs;
    EXPECT_TRUE(setEntry(inputs, "order.dose", "1234.5 mg")) << locale.name();
  }
  EXPECT_GE(seen, 4);
}

TEST(AlwaysBeside, H31_theWorksheetIsTheSameInEveryLocale) {
  const Case inputs = caseOf(
      "child.weight=17.2 kg; child.height=103 cm; order.dose=1234.5 mg; order.schedule=every 12 h; "
      "reference.high=2500 mg/m2/dose; stock.kind=liquid; stock.strength=120 mg/5 mL; order.route=oral");
  const auto all = [&] {
    const Worksheet sheet = workOut(inputs, exactRules());
    std::string json;
    writeWorksheet(json, sheet, WorksheetExtent::whole);
    return json + workingText(sheet);
  };
  const std::string expected = all();
  for (const std::locale& locale : locales()) {
    const InLocale in(locale);
    EXPECT_EQ(all(), expected) << locale.name();
  }
}

namespace {

/// What runs from the right and is not isolated, in any line of the text; empty where there is nothing.
std::string turning(const std::string& text) {
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);)
    if (isolated(line) != line) return line;
  return {};
}

Case caseNamed(const std::string& name) {
  Case inputs = caseOf(
      "child.weight=17.2 kg; child.height=103 cm; order.dose=80 mg; order.schedule=every 12 h; "
      "order.route=oral; "
      "reference.high=120 mg/m2/dose; stock.kind=liquid; stock.strength=25 mg/mL");
  for (const char* path : {"title", "order.medicine", "reference.source"})
    EXPECT_TRUE(setEntry(inputs, path, name));
  return inputs;
}

}  // namespace

TEST(Hazards, H46_aNameTurnsNoFigureInAnySentence) {
  for (const std::string name : {"חוחית", "زقزاق", "می\u200Cخوش", "ABC אבג 5 mg", "חוחית 7", "5 אבג"}) {
    HouseRules rules = exactRules();
    rules.name = rules.agreedBy = rules.agreedOn = name;
    const Worksheet sheet = workOut(caseNamed(name), rules);
    const std::string text = workingText(settled(sheet));
    EXPECT_EQ(turning(text), "");
    EXPECT_NE(text.find("25 mg in 1 mL"), std::string::npos);
    EXPECT_EQ(turning(workingMarkup(settled(sheet), Markup::mathml)), "");
    for (const Fact& fact : caseFacts(sheet.given)) EXPECT_EQ(turning(fact.text), "");
    EXPECT_EQ(turning(rulesTitle(rules) + " " + rulesProvenance(rules)), "");
    EXPECT_EQ(turning(sentence(Refusal{RefusalCode::wordUnknown, name, "25 mg", {}})), "");
    EXPECT_EQ(turning(placeText(Refusal{RefusalCode::keyUnknown, name, {}, name})), "");
  }
}

TEST(Hazards, H46_fieldsOfFilesHoldNoMarks) {
  const std::string name = "חוחית";
  const Worksheet sheet = workOut(caseNamed(name), exactRules());
  // TeX sets letters in the order they stand in, and its fonts lack the marks.
  EXPECT_FALSE(hasIsolates(workingMarkup(sheet, Markup::latex)));
  HouseRules rules = exactRules();
  rules.name = name;
  EXPECT_FALSE(hasIsolates(writeRules(rules)));
  for (const std::string& cell : summaryOf(sheet)) EXPECT_FALSE(hasIsolates(cell)) << cell;
  ListEntryBuilder builder;
  for (const char* key :
       {"medicine", "indication", "source.title", "source.edition", "source.page", "checked_by"})
    EXPECT_TRUE(builder.set(key, name));
  for (const char* key : {"checked_on", "review_by"}) EXPECT_TRUE(builder.set(key, "2026-02-01"));
  EXPECT_TRUE(builder.set("route", "oral"));
  EXPECT_TRUE(builder.set("high", "120 mg/m2/dose"));
  const Result<ListEntry> entry = builder.finish();
  ASSERT_TRUE(entry) << entry.refusal().path;
  for (const WrittenEntry& one : entriesOf(*entry, Date{2027, 1, 1})) {
    EXPECT_FALSE(hasIsolates(one.text)) << one.path;
    Case inputs;
    EXPECT_TRUE(setEntry(inputs, one.path, one.text)) << one.path << " " << one.text;
  }
  EXPECT_EQ(isolated(sourceWords(*entry)), sourceWords(*entry));
}

}  // namespace wardchalk::test::always_beside_test
