#include "core/words/read_back.h"

#include <array>

#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/unit/conversion.h"
#include "core/unit/print.h"
#include "core/words/phrasebook.h"
#include "core/words/step_parts.h"

namespace wardchalk {

namespace {

struct BasisPhrase {
  std::string_view basis;
  PhraseId phrase;
};

constexpr std::array basisPhrases = {
    BasisPhrase{"/dose", PhraseId::basisOf_dose},      BasisPhrase{"/kg/dose", PhraseId::basisOf_kgDose},
    BasisPhrase{"/m2/dose", PhraseId::basisOf_m2Dose}, BasisPhrase{"/day", PhraseId::basisOf_day},
    BasisPhrase{"/kg/day", PhraseId::basisOf_kgDay},   BasisPhrase{"/m2/day", PhraseId::basisOf_m2Day},
    BasisPhrase{"/week", PhraseId::basisOf_week},      BasisPhrase{"/kg/week", PhraseId::basisOf_kgWeek},
    BasisPhrase{"/m2/week", PhraseId::basisOf_m2Week}, BasisPhrase{"/h", PhraseId::basisOf_h},
    BasisPhrase{"/kg/h", PhraseId::basisOf_kgH},       BasisPhrase{"/m2/h", PhraseId::basisOf_m2H},
    BasisPhrase{"/min", PhraseId::basisOf_min},        BasisPhrase{"/kg/min", PhraseId::basisOf_kgMin},
    BasisPhrase{"/m2/min", PhraseId::basisOf_m2Min},
};

std::string basisOf(const DoseAmount& dose) {
  std::string basis;
  if (dose.perSize != PerSize::none) basis.append("/").append(idOf(unitOf(dose.perSize)));
  const Unit time = dose.perTime == PerTime::none ? Unit::dose : unitOf(dose.perTime);
  return basis.append("/").append(idOf(time));
}

/// The unit in a word, so that a unit chosen by mistake is noticed: "17.2 kilograms".
std::string inWords(const Quantity& quantity) {
  const UnitInfo& info = infoOf(quantity.unit);
  const bool one = quantity.value == Number(1);
  return show(quantity.value, Grouping::commas).marked().append(" ").append(one ? info.word : info.words);
}

std::string inWords(const MixedQuantity& mixed) {
  std::string text;
  for (const Quantity& part : mixed.parts) text.append(text.empty() ? "" : " ").append(inWords(part));
  return text;
}

/// The total in another unit, marked where it is not exact: "= 8 kg", "≈ 16.9 kg".
std::string equals(const MixedQuantity& mixed, Unit unit, const HouseRules& rules) {
  const auto total = totalIn(mixed, unit, rules.pounds);
  if (!total) return {};
  const std::string text = printed(Quantity{*total, unit});
  return show(*total).exact ? "= " + text : text;
}

bool isIn(const MixedQuantity& mixed, Unit unit) {
  return mixed.parts.size() == 1 && mixed.parts.front().unit == unit;
}

std::string sizeBack(const MixedQuantity& mixed, Unit metric, const HouseRules& rules) {
  return isIn(mixed, metric) ? inWords(mixed) : equals(mixed, metric, rules);
}

std::string doseBack(const DoseAmount& dose) {
  return printed(dose.amount).append(" ").append(basisWords(dose));
}

std::string strengthBack(const Strength& strength) {
  const Quantity inOne{strength.amount.value / strength.in.value, strength.amount.unit};
  return say(PhraseId::back_strength,
             {{"amount", printed(inOne)}, {"unit", std::string(infoOf(strength.in.unit).one)}});
}

std::string shown(const Number& number) { return show(number).marked(); }

/// Fewer than one dose a day: "1 dose every 2 days", "2 doses per week".
std::string rareBack(const Schedule& schedule) {
  const Number inWeek = schedule.most * Number(7);
  if (schedule.fewest == schedule.most && !(inWeek.isWhole() && schedule.in == Unit::week))
    return say(PhraseId::back_everyDays, {{"days", shown(Number(1) / schedule.most)}});
  const Number fewest = schedule.fewest * Number(7);
  const std::string low = schedule.fewest == schedule.most ? std::string() : shown(fewest);
  return say(PhraseId::back_inWeek, {{"low", low}, {"high", shown(inWeek)}}, inWeek == Number(1) ? 1 : 2);
}

std::string scheduleBack(const Schedule& schedule) {
  if (schedule.isOnce()) return say(PhraseId::back_once);
  if (schedule.isContinuous()) return say(PhraseId::back_continuous);
  if (schedule.fewest < Number(1)) return rareBack(schedule);
  const bool range = schedule.fewest != schedule.most;
  // "3 times a day" does not say that they are 8 h apart.
  const bool every = schedule.byInterval && schedule.most > Number(1) && !range;
  return say(PhraseId::back_inDay,
             {{"low", range ? shown(schedule.fewest) : ""},
              {"high", shown(schedule.most)},
              {"hours", every ? shown(Number(24) / schedule.most) : ""}},
             schedule.most == Number(1) ? 1 : 2);
}

template <typename T, typename Say>
std::string ifStated(const std::optional<T>& value, Say sayIt) {
  return value ? sayIt(*value) : std::string();
}

/// The part of the case that a path names, handed to the reader of its type; empty for words and flags.
template <typename Reader>
auto readPart(std::string_view path, const Case& c, const Reader& reader)
    -> decltype(reader.size(c.child.height, Unit::cm)) {
  if (path == path::height) return reader.size(c.child.height, Unit::cm);
  if (path == path::weight) return reader.size(c.child.weight, Unit::kg);
  if (path == path::weightFrom) return reader.size(c.reference.weight.from, Unit::kg);
  if (path == path::weightOver) return reader.size(c.reference.weight.over, Unit::kg);
  if (path == path::weightBelow) return reader.size(c.reference.weight.below, Unit::kg);
  if (path == path::weightUpTo) return reader.size(c.reference.weight.upTo, Unit::kg);
  if (path == path::age) return reader.age(c.child.age);
  if (path == path::weighed) return reader.age(c.child.weighed);
  if (path == path::dose) return reader.dose(c.order.dose);
  if (path == path::low) return reader.dose(c.reference.low);
  if (path == path::high) return reader.dose(c.reference.high);
  if (path == path::maxPerDose) return reader.dose(c.reference.maxPerDose);
  if (path == path::maxPerDay) return reader.dose(c.reference.maxPerDay);
  if (path == path::maxInfusionRate) return reader.dose(c.reference.maxInfusionRate);
  if (path == path::schedule) return reader.schedule(c.order.schedule);
  if (path == path::referenceSchedule) return reader.schedule(c.reference.schedule);
  if (path == path::strength) return reader.strength(c.stock.strength);
  if (path == path::maxConcentration) return reader.strength(c.reference.maxConcentration);
  if (path == path::minConcentration) return reader.strength(c.reference.minConcentration);
  return {};
}

struct Reader {
  const HouseRules& rules;

  [[nodiscard]] std::string size(const std::optional<MixedQuantity>& size, Unit metric) const {
    return ifStated(size, [&](const MixedQuantity& one) { return sizeBack(one, metric, rules); });
  }
  [[nodiscard]] std::string age(const std::optional<Age>& age) const {
    return ifStated(age, [](const Age& one) { return printed(one.written); });
  }
  [[nodiscard]] std::string dose(const std::optional<DoseAmount>& dose) const {
    return ifStated(dose, [&](const DoseAmount& one) { return doseBack(one); });
  }
  [[nodiscard]] std::string schedule(const std::optional<Schedule>& schedule) const {
    return ifStated(schedule, [&](const Schedule& one) { return scheduleBack(one); });
  }
  [[nodiscard]] std::string strength(const std::optional<Strength>& strength) const {
    return ifStated(strength, [&](const Strength& one) { return strengthBack(one); });
  }
};

/// Whether a size is read back in another unit than it is written in.
struct Converted {
  [[nodiscard]] static bool size(const std::optional<MixedQuantity>& size, Unit metric) {
    return size && !isIn(*size, metric);
  }
  [[nodiscard]] static bool age(const std::optional<Age>& /*age*/) { return false; }
  [[nodiscard]] static bool dose(const std::optional<DoseAmount>& /*dose*/) { return false; }
  [[nodiscard]] static bool schedule(const std::optional<Schedule>& /*schedule*/) { return false; }
  [[nodiscard]] static bool strength(const std::optional<Strength>& /*strength*/) { return false; }
};

}  // namespace

std::string basisWords(std::string_view basis) {
  for (const BasisPhrase& one : basisPhrases)
    if (one.basis == basis) return say(one.phrase);
  return {};
}

std::string basisWords(const DoseAmount& dose) { return basisWords(basisOf(dose)); }

std::string readBack(std::string_view path, const Case& inputs, const HouseRules& rules) {
  return readPart(path, inputs, Reader{rules});
}

bool isReadBackConverted(std::string_view path, const Case& inputs) {
  return readPart(path, inputs, Converted{});
}

std::string forThisChild(std::string_view path, const Worksheet& sheet) {
  const bool low = path == path::low;
  const auto& end = low ? sheet.given.reference.low : sheet.given.reference.high;
  if (!end) return {};
  const bool perDay = end->perTime == PerTime::day;
  const Step* step = sheet.step(low      ? perDay ? StepId::lowDay : StepId::lowDose
                                : perDay ? StepId::limitDay
                                         : StepId::limitDose);
  const auto* solved = step ? std::get_if<Solved>(&step->body) : nullptr;
  if (!solved || end->perSize == PerSize::none) return {};
  const std::string amount = printed(Quantity{solved->result, solved->product.left.over.front()});
  return say(perDay ? PhraseId::readback_forThisChildDay : PhraseId::readback_forThisChild,
             {{"amount", amount}});
}

}  // namespace wardchalk
