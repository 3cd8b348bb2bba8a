#include "core/words/fact_words.h"

#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/number/decimal_text.h"
#include "core/unit/print.h"
#include "core/words/given_words.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/read_back.h"

namespace wardchalk {

namespace {

/// An entered figure stands with all its digits: it is no result to be shortened.
std::string entered(const Number& number) {
  return number.endsWithin(4) ? show(number, Grouping::commas).text : exactText(number);
}

std::string entered(const Quantity& quantity) {
  return entered(quantity.value) + " " + std::string(signFor(quantity.unit, quantity.value));
}

std::string entered(const MixedQuantity& mixed) {
  std::string text;
  for (const Quantity& part : mixed.parts) text.append(text.empty() ? "" : " ").append(entered(part));
  return text;
}

std::string entered(const Age& age) { return entered(age.written); }
std::string entered(const Schedule& schedule) { return scheduleWords(schedule); }
std::string entered(Route route) { return std::string(idOf(route)); }
std::string entered(int count) { return std::to_string(count); }
std::string entered(const Strength& strength) {
  return entered(strength.amount) + " in " + entered(strength.in);
}
std::string entered(Sex sex) { return sex == Sex::female ? "female" : "male"; }
std::string entered(WeightMethod method) {
  constexpr std::array<std::string_view, 3> ids = {"measured", "estimated", "charted"};
  return std::string(ids[static_cast<std::size_t>(method)]);
}
std::string entered(StockKind kind) {
  constexpr std::array<std::string_view, 3> ids = {"liquid", "powder", "solid"};
  return std::string(ids[static_cast<std::size_t>(kind)]);
}

template <typename T>
std::string entered(const std::optional<T>& value) {
  return value ? entered(*value) : std::string();
}

std::string dose(const std::optional<DoseAmount>& dose) {
  return dose ? entered(dose->amount) + " " + basisWords(*dose) : std::string();
}

std::string joinedNames(const std::vector<std::string>& names) {
  std::string list;
  for (const std::string& name : names) list.append(list.empty() ? "" : "; ").append(isolated(name));
  return list;
}

std::string weighedWords(const std::optional<Age>& weighed) {
  if (!weighed) return {};
  if (weighed->days().isZero()) return say(PhraseId::weighed_today);
  return say(PhraseId::weighed_ago, {{"age", entered(*weighed)}});
}

std::string flag(bool set) { return set ? say(PhraseId::fact_yes) : std::string(); }

struct Entry {
  std::string_view path;
  std::string (*say)(const Case&);
};

#define FACT(path, member)                                \
  Entry {                                                 \
    path, [](const Case& c) { return entered(c.member); } \
  }
#define TEXT(path, member)                                 \
  Entry {                                                  \
    path, [](const Case& c) { return isolated(c.member); } \
  }
#define DOSE(path, member)                             \
  Entry {                                              \
    path, [](const Case& c) { return dose(c.member); } \
  }
#define FLAG(path, member)                             \
  Entry {                                              \
    path, [](const Case& c) { return flag(c.member); } \
  }

constexpr std::array entries = {
    TEXT(path::title, title),
    FACT(path::age, child.age),
    FACT(path::sex, child.sex),
    FACT(path::height, child.height),
    FACT(path::weight, child.weight),
    FACT(path::bsa, child.bsa),
    FACT(path::weightMethod, child.weightMethod),
    Entry{path::weighed, [](const Case& c) { return weighedWords(c.child.weighed); }},
    FLAG(path::bornEarly, child.bornEarly),
    FLAG(path::sizeConfirmed, child.sizeConfirmed),
    TEXT(path::medicine, order.medicine),
    DOSE(path::dose, order.dose),
    FACT(path::route, order.route),
    FACT(path::schedule, order.schedule),
    FLAG(path::asNeeded, order.asNeeded),
    FACT(path::maxDosesPerDay, order.maxDosesPerDay),
    TEXT(path::referenceMedicine, reference.medicine),
    Entry{path::alsoCalled, [](const Case& c) { return joinedNames(c.reference.alsoCalled); }},
    DOSE(path::low, reference.low),
    DOSE(path::high, reference.high),
    FLAG(path::secondCheckRequired, reference.secondCheckRequired),
    FLAG(path::limitOnly, reference.limitOnly),
    FACT(path::referenceSchedule, reference.schedule),
    FACT(path::referenceRoute, reference.route),
    DOSE(path::maxPerDose, reference.maxPerDose),
    DOSE(path::maxPerDay, reference.maxPerDay),
    FACT(path::referenceMaxDoses, reference.maxDosesPerDay),
    FACT(path::ageFrom, reference.age.from),
    FACT(path::ageOver, reference.age.over),
    FACT(path::ageBelow, reference.age.below),
    FACT(path::ageUpTo, reference.age.upTo),
    FACT(path::weightFrom, reference.weight.from),
    FACT(path::weightOver, reference.weight.over),
    FACT(path::weightBelow, reference.weight.below),
    FACT(path::weightUpTo, reference.weight.upTo),
    FACT(path::bsaFrom, reference.bsa.from),
    FACT(path::bsaOver, reference.bsa.over),
    FACT(path::bsaBelow, reference.bsa.below),
    FACT(path::bsaUpTo, reference.bsa.upTo),
    FACT(path::maxConcentration, reference.maxConcentration),
    FACT(path::minConcentration, reference.minConcentration),
    FACT(path::minInfusionTime, reference.minInfusionTime),
    DOSE(path::maxInfusionRate, reference.maxInfusionRate),
    TEXT(path::source, reference.source),
    FACT(path::stockKind, stock.kind),
    FACT(path::strength, stock.strength),
    FACT(path::content, stock.content),
    FACT(path::diluent, stock.diluent),
    FACT(path::finalVolume, stock.finalVolume),
    FACT(path::displacement, stock.displacement),
    Entry{path::dividesInto,
          [](const Case& c) {
            const bool tablet = c.stock.kind == StockKind::solid;
            return tablet ? entered(c.stock.dividesInto) : std::string();
          }},
    FACT(path::infusionVolume, infusion.volume),
    FACT(path::infusionOver, infusion.over),
    Entry{path::dropFactor,
          [](const Case& c) {
            return c.infusion.dropFactor ? entered(*c.infusion.dropFactor) + "/mL" : std::string();
          }},
};

#undef FACT
#undef TEXT
#undef DOSE
#undef FLAG

/// What an entry was understood as, where that says more than the entry does.
std::string understood(std::string_view path, const Case& inputs, const HouseRules& rules) {
  std::string back = readBack(path, inputs, rules);
  const bool converted = isReadBackConverted(path, inputs);
  const bool schedule = path == path::schedule || path == path::referenceSchedule;
  const auto& strength = inputs.stock.strength;
  const bool shared = path == path::strength && strength && strength->in.value != Number(1);
  return converted || schedule || shared ? back : std::string();
}

}  // namespace

std::string enteredWords(const Quantity& quantity) { return entered(quantity); }

std::string enteredShort(const DoseAmount& dose) {
  std::string text = entered(dose.amount);
  if (!dose.isRate()) return text.append(" ").append(basisWords(dose));
  if (dose.perSize != PerSize::none) text.append("/").append(infoOf(unitOf(dose.perSize)).one);
  return text.append("/").append(infoOf(unitOf(dose.perTime)).one);
}

std::string enteredRange(const DoseAmount& low, const DoseAmount& high) {
  const bool shared = low.amount.unit == high.amount.unit;
  return say(PhraseId::fact_range, {{"low", shared ? entered(low.amount.value) : entered(low.amount)},
                                    {"high", enteredShort(high)}});
}

std::string enteredShort(const Strength& strength) {
  if (strength.in.value != Number(1)) return entered(strength);
  return entered(strength.amount).append("/").append(infoOf(strength.in.unit).one);
}

std::string enteredWords(std::string_view path, const Case& inputs) {
  const auto known =
      std::find_if(entries.begin(), entries.end(), [&](const Entry& one) { return one.path == path; });
  return known == entries.end() ? std::string() : known->say(inputs);
}

std::string factWords(std::string_view path, const Case& inputs, const HouseRules& rules) {
  std::string text = enteredWords(path, inputs);
  if (text.empty()) return {};
  const std::string back = understood(path, inputs, rules);
  return back.empty() ? text : say(PhraseId::fact_understood, {{"entry", text}, {"back", back}});
}

}  // namespace wardchalk
