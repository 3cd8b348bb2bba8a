#include "core/practice/problem_traps.h"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/unit/conversion.h"

namespace wardchalk {

namespace {

/// What a slip makes of the right value, and its number among the errors.
struct Trap {
  std::string_view error;
  Number factor;
};
using Traps = std::vector<Trap>;

Number mlOf(const Quantity& volume) { return *converted(volume.value, volume.unit, Unit::mL); }

Number hoursOf(const Quantity& time) { return *converted(time.value, time.unit, Unit::h); }

bool usesPounds(const Child& child) {
  return child.weight &&
         (child.weight->smallestUnit() == Unit::lb || child.weight->smallestUnit() == Unit::oz);
}

bool usesInches(const Child& child) {
  return child.height &&
         (child.height->smallestUnit() == Unit::in || child.height->smallestUnit() == Unit::ft);
}

/// Doses a day where that is a whole number; else none.
std::optional<Number> dosesOf(const std::optional<Schedule>& schedule) {
  if (!schedule || !schedule->isRepeated() || !schedule->most.isWhole()) return std::nullopt;
  return schedule->most;
}

bool isInHours(const std::optional<Schedule>& schedule) {
  return schedule && schedule->text.starts_with("every");
}

Number thousand() { return Number(1000); }

void addDecimalSlips(Traps& traps) {  // the point at another place
  for (const int places : {-2, -1, 1, 2}) traps.push_back({"E40", Number::powerOfTen(places)});
}

void addUnitSlips(Traps& traps, Unit from, Unit to) {  // one step of a thousand left out
  if (from == to || dimensionOf(from) != dimensionOf(to)) return;
  traps.push_back({"E06", thousand()});
  traps.push_back({"E06", Number(1) / thousand()});
}

void addPoundSlips(Traps& traps, const Child& child) {
  if (usesPounds(child)) {
    traps.push_back({"E01", Number(22) / Number(10)});
    traps.push_back({"E02", Number(484) / Number(100)});
  } else if (child.weight) {
    traps.push_back({"E03", Number(10) / Number(22)});
  }
}

/// √x to six places: near enough to tell slips apart.
Number root(const Number& value) { return value.rootCut(6); }

Traps surfaceTraps(const Problem& problem) {
  const Worksheet& key = problem.key;
  const Child& child = problem.given.child;
  if (!key.bsa || !key.weight || !child.height) return {};
  const Number surface = key.bsa->m2;
  Traps traps = {{"E10", surface}, {"E11", surface / Number(2)}, {"E16", Number::ratio(1, 60)}};
  addDecimalSlips(traps);
  Number cm;
  for (const Quantity& part : child.height->parts) cm = cm + *converted(part.value, part.unit, Unit::cm);
  traps.push_back({"E15", root((cm + key.weight->kg) / Number(3600)) / surface});
  if (usesPounds(child) && usesInches(child)) {
    traps.push_back({"E12", Number::ratio(932, 1000)});
    traps.push_back({"E14", Number::ratio(1485, 1000)});
    traps.push_back({"E05", Number::ratio(627, 1000)});  // or E14: the same mistake
  } else {
    traps.push_back({"E13", Number::ratio(1072, 1000)});
    if (usesPounds(child)) traps.push_back({"E01", Number::ratio(1485, 1000)});
    if (usesInches(child)) traps.push_back({"E05", Number::ratio(627, 1000)});
  }
  return traps;
}

/// Near 0.63 and 0.93 m² a root forgotten looks like a constant or a unit mixed up.
bool isTellingSurface(const Problem& problem) {
  if (!problem.key.bsa) return true;
  for (const Number& trap : {Number::ratio(63, 100), Number::ratio(93, 100)})
    if ((problem.key.bsa->m2 / trap - Number(1)).absolute() <= Number::ratio(3, 100)) return false;
  return true;
}

/// A day's amount among its doses.
void addDivisionSlips(Traps& traps, const Problem& problem) {
  const Reference& reference = problem.given.reference;
  const auto doses = dosesOf(reference.schedule);
  if (!reference.high || !doses || *doses == Number(1)) return;
  traps.push_back({"E21", Number(1) / *doses});
  if (reference.high->perTime != PerTime::day) return;
  traps.push_back({"E20", *doses});
  for (const int wrong : {2, 3, 4, 6})
    if (Number(wrong) != *doses) traps.push_back({"E23", *doses / Number(wrong)});
  if (isInHours(reference.schedule)) traps.push_back({"E22", *doses * *doses / Number(24)});
}

Traps limitTraps(const Problem& problem) {
  const auto& high = problem.given.reference.high;
  Traps traps;
  if (!high) return traps;
  addDecimalSlips(traps);
  if (problem.given.order.dose) addUnitSlips(traps, high->amount.unit, problem.given.order.dose->amount.unit);
  const Worksheet& key = problem.key;
  if (high->perSize == PerSize::kg) addPoundSlips(traps, problem.given.child);
  if (key.weight && key.bsa) {
    const Number ratio = key.weight->kg / key.bsa->m2;
    if (high->perSize == PerSize::m2) traps.push_back({"E18", ratio});
    if (high->perSize == PerSize::kg) traps.push_back({"E19", Number(1) / ratio});
  }
  addDivisionSlips(traps, problem);
  return traps;
}

/// The label's fraction misused: amount in volume, for a dose of `dose` in the label's unit.
void addLabelSlips(Traps& traps, const Number& dose, const Number& amount, const Number& volume,
                   bool inVolume) {
  const Number strength = amount / volume;
  traps.push_back({"E31", amount * amount / (dose * dose)});
  traps.push_back({"E33", strength * strength});
  if (!inVolume) return;  // one tablet: there is no volume to leave out
  traps.push_back({"E32", Number(1) / volume});
  traps.push_back({"E34", Number(1) / (volume * volume)});
}

void addMixingSlips(Traps& traps, const Stock& stock, bool ofVolume) {
  if (!stock.kind || *stock.kind != StockKind::powder || !stock.diluent) return;
  const Number diluent = mlOf(*stock.diluent);
  const Number final = stock.finalVolume ? mlOf(*stock.finalVolume) : diluent + mlOf(*stock.displacement);
  const Number taken = diluent / final;
  traps.push_back({"E38", ofVolume ? taken : Number(1) / taken});
  if (!stock.displacement || !stock.finalVolume) return;
  const Number twice = (final + mlOf(*stock.displacement)) / final;
  traps.push_back({"E39", ofVolume ? twice : Number(1) / twice});
}

Traps strengthTraps(const Problem& problem) {
  Traps traps;
  addDecimalSlips(traps);
  addMixingSlips(traps, problem.given.stock, false);
  return traps;
}

/// What the label says in its own terms: for powder the vial's content in the volume after mixing.
struct LabelRead {
  Quantity amount;
  Number volume;
};

std::optional<LabelRead> labelOf(const Problem& problem) {
  const Stock& stock = problem.given.stock;
  if (stock.strength && dimensionOf(stock.strength->in.unit) == Dimension::volume)
    return LabelRead{stock.strength->amount, mlOf(stock.strength->in)};
  if (stock.strength) return LabelRead{stock.strength->amount, stock.strength->in.value};
  if (!stock.content || !problem.key.strength) return std::nullopt;
  return LabelRead{*stock.content, stock.content->value / problem.key.strength->perOne};
}

Traps giveTraps(const Problem& problem) {
  const Worksheet& key = problem.key;
  const auto label = labelOf(problem);
  Traps traps;
  if (!label || !key.orderedDose) return traps;
  addDecimalSlips(traps);
  const Number dose = *converted(key.orderedDose->value, key.orderedDose->unit, label->amount.unit);
  addUnitSlips(traps, key.orderedDose->unit, label->amount.unit);
  addLabelSlips(traps, dose, label->amount.value, label->volume,
                !key.give || key.give->exact.unit == Unit::mL);
  addMixingSlips(traps, problem.given.stock, true);
  const auto doses = dosesOf(problem.given.order.schedule);
  if (doses && *doses != Number(1)) traps.push_back({"E35", *doses});
  if (key.weight && problem.given.reference.high && problem.given.reference.high->perSize == PerSize::kg)
    traps.push_back({"E36", key.weight->kg});
  if (key.limitDose) traps.push_back({"E30", key.limitDose->amount.value / key.orderedDose->value});
  if (key.lowDose) traps.push_back({"E30", key.lowDose->value / key.orderedDose->value});
  return traps;
}

/// The volume of the medicine beside that of the whole infusion.
void addWholeVolumeSlips(Traps& traps, const Problem& problem) {
  if (!problem.key.give || !problem.key.give->measured || problem.key.give->exact.unit != Unit::mL) return;
  const Number part = *problem.key.give->measured / mlOf(*problem.given.infusion.volume);
  if (part * Number(20) < Number(1))
    return;  // less than a twentieth: an answer so is near enough to be unsure of
  traps.push_back({"E51", Number(1) - part});
  traps.push_back({"E51", Number(1) + part});
}

Traps runTraps(const Problem& problem, bool drops) {
  const Infusion& infusion = problem.given.infusion;
  Traps traps;
  addDecimalSlips(traps);
  const Number hours = hoursOf(*infusion.over);
  if (drops) {
    traps.push_back({"E52", Number(1) / infusion.dropFactor->value});
    traps.push_back({"E53", Number(60)});
    traps.push_back(
        {"E52", Number(60) / infusion.dropFactor->value});  // mL in an hour, taken for drops in a minute
    return traps;
  }
  addWholeVolumeSlips(traps, problem);
  if (infusion.over->unit == Unit::min) traps.push_back({"E49", Number::ratio(1, 60)});
  traps.push_back({"E50", hours * hours});
  return traps;
}

Traps rateOrderTraps(const Problem& problem) {
  const DoseAmount& dose = *problem.given.order.dose;
  const Strength& label = *problem.given.stock.strength;
  Traps traps;
  addDecimalSlips(traps);
  if (dose.perTime == PerTime::min) traps.push_back({"E55", Number::ratio(1, 60)});
  if (dose.amount.unit != label.amount.unit) traps.push_back({"E55", thousand()});
  if (dose.perSize == PerSize::kg) {
    traps.push_back({"E55", Number(1) / problem.key.weight->kg});
    addPoundSlips(traps, problem.given.child);
  }
  const Number strength = label.amount.value / mlOf(label.in);
  traps.push_back({"E33", strength * strength});
  traps.push_back({"E32", Number(1) / mlOf(label.in)});
  return traps;
}

Traps volumeTraps(const Problem& problem) {
  const auto& most = problem.given.reference.maxConcentration;
  Traps traps;
  if (!most || !problem.key.orderedDose) return traps;
  addDecimalSlips(traps);
  const Number strength = most->amount.value / mlOf(most->in);
  const Number dose =
      *converted(problem.key.orderedDose->value, problem.key.orderedDose->unit, most->amount.unit);
  traps.push_back({"E56", strength * strength});
  traps.push_back({"E56", strength * strength / (dose * dose)});
  return traps;
}

Traps trapsOf(const Problem& problem, StepId line) {
  const auto& order = problem.given.order.dose;
  switch (line) {
    case StepId::weight: {
      Traps traps;
      addDecimalSlips(traps);
      addPoundSlips(traps, problem.given.child);
      return traps;
    }
    case StepId::bsa:
      return surfaceTraps(problem);
    case StepId::limitDose:
    case StepId::limitDay:
    case StepId::lowDose:
    case StepId::lowDay:
      return limitTraps(problem);
    case StepId::strength:
      return strengthTraps(problem);
    case StepId::give:
      return giveTraps(problem);
    case StepId::volume:
      return volumeTraps(problem);
    case StepId::rate:
      return order && order->isRate() ? rateOrderTraps(problem) : runTraps(problem, false);
    case StepId::drops:
      return order && order->isRate() ? Traps{} : runTraps(problem, true);
    default:
      return {};
  }
}

/// Within 3 % of each other.
bool areClose(const Number& a, const Number& b) {
  const Number& low = smaller(a, b);
  return (larger(a, b) - low) * Number(100) <= low * Number(3);
}

/// Two numbers of one error are one thing to say and may meet.
bool areApart(const Traps& traps) {
  for (std::size_t i = 0; i < traps.size(); ++i) {
    if (areClose(traps[i].factor, Number(1))) return false;
    for (std::size_t j = i + 1; j < traps.size(); ++j)
      if (traps[i].error != traps[j].error && areClose(traps[i].factor, traps[j].factor)) return false;
  }
  return true;
}

}  // namespace

bool slipsAreApart(const Problem& problem) {
  if (!isTellingSurface(problem)) return false;
  return std::all_of(problem.asks.begin(), problem.asks.end(), [&](const Ask& ask) {
    return ask.isVerdict() || areApart(trapsOf(problem, *ask.step));
  });
}

}  // namespace wardchalk
