#include "core/record/common_units.h"

#include <array>

#include "core/medicine/medicine_name.h"
#include "core/number/ascii.h"

namespace wardchalk {

namespace {

/// The unit that each dimension is compared in; units that stand for themselves are not here.
constexpr std::array commonUnits = {Unit::mcg, Unit::kg, Unit::cm, Unit::mL, Unit::min};

class Leveller {
 public:
  explicit Leveller(Pounds pounds) : pounds_(pounds) {}

  void operator()(Quantity& quantity) const {
    for (const Unit unit : commonUnits)
      if (const auto value = converted(quantity.value, quantity.unit, unit, pounds_))
        quantity = {*value, unit};
  }

  void operator()(MixedQuantity& mixed) const {
    Quantity total = mixed.parts.front();
    (*this)(total);
    for (std::size_t i = 1; i < mixed.parts.size(); ++i) {
      Quantity part = mixed.parts[i];
      (*this)(part);
      total.value = total.value + part.value;
    }
    mixed.parts = {total};
  }

  void operator()(Age& age) const { (*this)(age.written); }

  /// A dose without a time is each dose; a rate is compared by the minute.
  void operator()(DoseAmount& dose) const {
    (*this)(dose.amount);
    if (dose.perTime == PerTime::none) dose.perTime = PerTime::dose;
    if (dose.perTime != PerTime::h) return;
    dose.amount.value = dose.amount.value / Number(60);
    dose.perTime = PerTime::min;
  }

  void operator()(Strength& strength) const {
    (*this)(strength.amount);
    (*this)(strength.in);
    strength.amount.value = strength.amount.value / strength.in.value;
    strength.in.value = Number(1);
  }

  /// What is left is how often, however it was said.
  void operator()(Schedule& schedule) const {
    schedule = {schedule.kind, schedule.fewest, schedule.most, {}};
  }

  void operator()(std::string& text) const {
    std::string plain;
    for (const char c : text)
      if (c != ' ') plain.push_back(lowered(c));
    text = std::move(plain);
  }

  /// A medicine's name counts as far as the check of the medicine counts it.
  void medicine(std::string& name) const { name = medicineKey(name); }

  template <typename T>
  void operator()(std::optional<T>& value) const {
    if (value) (*this)(*value);
  }

  template <typename T>
  void operator()(Band<T>& band) const {
    (*this)(band.from);
    (*this)(band.over);
    (*this)(band.below);
    (*this)(band.upTo);
  }

  /// "Up to 12 years" includes the whole year and "up to 144 months" does not: it is compared by where it
  /// ends.
  void upTo(std::optional<Age>& edge) const {
    if (edge) edge->written.parts = {{edge->endDays(), Unit::day}};
  }

 private:
  Pounds pounds_;
};

}  // namespace

Case inCommonUnits(Case inputs, Pounds pounds) {
  const Leveller level(pounds);
  level.upTo(inputs.reference.age.upTo);
  level.medicine(inputs.order.medicine);
  level.medicine(inputs.reference.medicine);
  for (std::string& name : inputs.reference.alsoCalled) level.medicine(name);
  const auto all = [&](auto&... parts) { (level(parts), ...); };
  Child& child = inputs.child;
  Order& order = inputs.order;
  Reference& reference = inputs.reference;
  Stock& stock = inputs.stock;
  all(child.age, child.height, child.weight, child.bsa, order.dose, order.schedule);
  all(reference.low, reference.high, reference.schedule, reference.maxPerDose, reference.maxPerDay,
      reference.age, reference.weight, reference.bsa, reference.maxConcentration, reference.minConcentration,
      reference.minInfusionTime, reference.maxInfusionRate, reference.source);
  all(stock.strength, stock.content, stock.diluent, stock.finalVolume, stock.displacement);
  all(inputs.infusion.volume, inputs.infusion.over, inputs.infusion.dropFactor);
  return inputs;
}

}  // namespace wardchalk
