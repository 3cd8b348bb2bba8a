// What happens at a limit, and what a limit depends on.
#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/record/worksheet_file.h"
#include "tests/property/for_all.h"

namespace wardchalk::test::limit_properties_test {

namespace {

/// A case whose limit on one check ends as a decimal, so that an order exactly at it can be typed.
struct AtLimit {
  std::vector<WrittenEntry> entries;
  CheckId check;
  Number limit;  ///< on the single dose
  bool atLeast = false;
};

int decimalsOf(const Number& value) {
  int decimals = 0;
  while (!value.endsWithin(decimals)) ++decimals;
  return decimals;
}

struct Sized {
  std::string perSize;
  Number size;
};

/// The child, and the size that a dose is multiplied by.
Sized drawChild(Choices& choices, std::vector<WrittenEntry>& entries) {
  const int tenths = choices.between(21, 699);
  switch (choices.below(4)) {
    case 0:
      entries.push_back({"child.weight", decimal(tenths, 1) + " kg"});
      return {"/kg", Number::ratio(tenths, 10)};
    case 1:
      entries.push_back({"child.weight", decimal(tenths, 1) + " lb"});
      return {"/kg", Number::ratio(tenths, 10) * Number::ratio(45359237, 100000000)};
    case 2: {
      const int cm = 45 + tenths / 6 + choices.between(0, 20);
      entries.push_back({"child.weight", decimal(tenths, 1) + " kg"});
      entries.push_back({"child.height", std::to_string(cm) + " cm"});
      return {"/m2", (Number(cm) * Number::ratio(tenths, 10) / Number(3600)).rootRounded(2)};
    }
    default:
      return {"", Number(1)};
  }
}

struct Often {
  std::string_view text;
  int doses;
};

Often drawOften(Choices& choices) {
  constexpr Often often[] = {{"every 12 h", 2}, {"every 24 h", 1}, {"every 8 h", 3}, {"4 times a day", 4},
                             {"every 4 h", 6},  {"every 2 h", 12}, {"every 16 h", 2}};
  return often[choices.below(7)];
}

Number drawAmount(Choices& choices) {
  return Number(choices.between(1, 9999)) * Number::powerOfTen(-choices.between(0, 3));
}

AtLimit drawAtLimit(Choices& choices) {
  AtLimit at{{}, CheckId::single, {}, false};
  const Sized child = drawChild(choices, at.entries);
  const Often often = drawOften(choices);
  const Number high = drawAmount(choices);
  const Number days(often.doses);
  at.entries.push_back({"order.schedule", std::string(often.text)});
  const auto reference = [&](std::string_view path, const Number& amount, std::string_view perTime) {
    at.entries.push_back(
        {std::string(path), exactText(amount) + " mg" + child.perSize + std::string(perTime)});
  };
  switch (choices.below(6)) {
    case 0:
      reference("reference.high", high, "/dose");
      at.limit = high * child.size;
      break;
    case 1:
      reference("reference.high", high * days, "/day");
      at.check = CheckId::daily;
      at.limit = high * child.size;
      break;
    case 2:
      reference("reference.high", high * Number(1000), "/dose");
      reference("reference.max_per_dose", high, "");
      at.check = CheckId::maxSingle;
      at.limit = high * child.size;
      break;
    case 3:
      reference("reference.high", high * Number(1000), "/dose");
      reference("reference.max_per_day", high * days, "");
      at.check = CheckId::maxDaily;
      at.limit = high * child.size;
      break;
    case 4:
      at.entries.back().text = "2 times a week";
      reference("reference.high", high * Number(2), "/week");
      at.check = CheckId::period;
      at.limit = high * child.size;
      break;
    default:
      reference("reference.low", high, "/dose");
      reference("reference.high", high * Number(1000), "/dose");
      at.check = CheckId::low;
      at.limit = high * child.size;
      at.atLeast = true;
      break;
  }
  return at;
}

CheckStatus statusOf(const AtLimit& at, const Number& dose) {
  const auto entries = with(at.entries, "order.dose", exactText(dose) + " mg");
  return workOut(caseOf(entries), exactRules()).check(at.check).status;
}

Case perKgCase(Choices& choices, const std::string& weight) {
  std::vector<WrittenEntry> entries = {{"child.weight", weight}};
  const auto amount = [&](std::string_view perSize) {
    return exactText(drawAmount(choices)) + " mg" + std::string(perSize);
  };
  const bool perDay = choices.onceIn(2);
  entries.push_back({"reference.high", amount("/kg") + (perDay ? "/day" : "/dose")});
  entries.push_back({"order.dose", amount(choices.onceIn(3) ? "/kg" : "")});
  entries.push_back({"order.schedule", std::string(drawOften(choices).text)});
  if (choices.onceIn(2)) entries.push_back({"reference.schedule", std::string(drawOften(choices).text)});
  if (choices.onceIn(3))
    entries.push_back({"reference.max_per_dose", amount(choices.onceIn(2) ? "/kg" : "")});
  if (choices.onceIn(3)) entries.push_back({"reference.weight_from", "15 kg"});
  entries.push_back({"stock.kind", "liquid"});
  entries.push_back({"stock.strength", amount("/mL")});
  entries.push_back({"order.route", "oral"});
  return caseOf(entries);
}

/// Without what speaks of how it was typed, and in which unit: slips that are asked about, and what pounds by
/// the trade's factor would decide.
std::string briefJson(const Case& inputs, const HouseRules& rules) {
  Worksheet sheet = workOut(inputs, rules);
  std::erase_if(sheet.findings, [](const Finding& finding) {
    return finding.code == FindingCode::possibleSlip ||
           (finding.code == FindingCode::roundingDecides && finding.field == path::weight);
  });
  std::string json;
  writeWorksheet(json, sheet, WorksheetExtent::brief);
  return json;
}

}  // namespace

TEST(LimitProperties, anOrderAtALimitIsWithinAndTheNextDecimalIsOutside) {
  forAll(100000, [](Choices& choices) -> std::string {
    const AtLimit at = drawAtLimit(choices);
    const Number last = Number::powerOfTen(-decimalsOf(at.limit) - 1);
    const Number beyond = at.atLeast ? at.limit - last : at.limit + last;
    const std::string where = " of " + std::string(idOf(at.check)) + ", limit " + exactText(at.limit) +
                              " mg: " + textOf(at.entries);
    if (statusOf(at, at.limit) != CheckStatus::within) return "the limit itself is not within" + where;
    if (statusOf(at, beyond) != CheckStatus::outside) return exactText(beyond) + " mg is not outside" + where;
    return {};
  });
}

TEST(LimitProperties, poundsAndTheKilogramsTheyAreGiveTheSameWorksheet) {
  forAll(5000, [](Choices& choices) -> std::string {
    Choices same = choices;
    const int tenths = choices.between(44, 1500);
    same.between(44, 1500);
    const Number kg = Number::ratio(tenths, 10) * Number::ratio(45359237, 100000000);
    const std::string pounds = briefJson(perKgCase(choices, decimal(tenths, 1) + " lb"), exactRules());
    const std::string metric = briefJson(perKgCase(same, exactText(kg) + " kg"), exactRules());
    return pounds == metric ? "" : "they differ:\n" + pounds + metric;
  });
}

TEST(LimitProperties, poundsAndOuncesAreOneWeight) {
  forAll(3000, [](Choices& choices) -> std::string {
    Choices same = choices;
    const int pounds = choices.between(4, 150);
    const int ounces = choices.between(1, 15);
    same.between(4, 150);
    same.between(1, 15);
    const std::string mixed = std::to_string(pounds) + " lb " + std::to_string(ounces) + " oz";
    const HouseRules& rules = choices.onceIn(2) ? classroomRules() : exactRules();
    same.onceIn(2);
    const std::string decimalPounds = exactText(Number(pounds) + Number::ratio(ounces, 16)) + " lb";
    return briefJson(perKgCase(choices, mixed), rules) == briefJson(perKgCase(same, decimalPounds), rules)
               ? ""
               : mixed + " and " + decimalPounds + " differ";
  });
}

TEST(LimitProperties, aHeavierChildHasALimitAsMuchHigher) {
  forAll(5000, [](Choices& choices) -> std::string {
    Choices same = choices;
    const int grams = choices.between(2000, 60000);
    const int times = choices.between(2, 9);
    same.between(2000, 60000);
    same.between(2, 9);
    Case once = perKgCase(choices, decimal(grams, 3) + " kg");
    Case more = perKgCase(same, decimal(std::int64_t{grams} * times, 3) + " kg");
    for (Case* inputs : {&once, &more}) inputs->reference.maxPerDose.reset();
    const Worksheet light = workOut(once, exactRules());
    const Worksheet heavy = workOut(more, exactRules());
    if (light.limitDose.has_value() != heavy.limitDose.has_value()) return "one has no limit";
    if (!light.limitDose) return {};
    return heavy.limitDose->amount.value == light.limitDose->amount.value * Number(times)
               ? ""
               : "not as much higher";
  });
}

}  // namespace wardchalk::test::limit_properties_test
