#include "tests/support/bounds_again.h"

#include "core/child/surface_formula.h"

namespace wardchalk::test {

namespace {

using Maybe = std::optional<Number>;

/// How many of the smallest unit of its kind one of this is; body mass in oz and g apart, length in
/// hundredths of an inch and mm apart.
Number sizeOf(Unit unit) {
  switch (unit) {
    case Unit::mg:
      return Number(1000);
    case Unit::g:
      return Number(1000000);
    case Unit::kg:
      return Number(1000);
    case Unit::lb:
      return Number(16);
    case Unit::m:
      return Number(100);
    case Unit::ft:
      return Number(12);
    case Unit::L:
      return Number(1000);
    default:
      return Number(1);
  }
}

Number in(const Quantity& quantity, Unit unit) {
  return quantity.value * sizeOf(quantity.unit) / sizeOf(unit);
}

bool isOneOf(Unit unit, Unit a, Unit b) { return unit == a || unit == b; }

Number sumIn(const MixedQuantity& mixed, Unit unit) {
  Number sum;
  for (const Quantity& part : mixed.parts) sum = sum + in(part, unit);
  return sum;
}

bool isHousehold(const MixedQuantity& size) {
  const Unit unit = size.parts.front().unit;
  return isOneOf(unit, Unit::lb, Unit::oz) || isOneOf(unit, Unit::ft, Unit::in);
}

Maybe kgOf(const Case& inputs, const HouseRules& rules) {
  if (!inputs.child.weight) return std::nullopt;
  const MixedQuantity& weight = *inputs.child.weight;
  Number kg;
  if (!isHousehold(weight))
    kg = sumIn(weight, Unit::kg);
  else if (rules.pounds == Pounds::trade)
    kg = sumIn(weight, Unit::lb) * Number(10) / Number(22);
  else
    kg = sumIn(weight, Unit::lb) * Number(45359237) / Number(100000000);
  return rules.kilogramDecimals ? kg.rounded(*rules.kilogramDecimals) : kg;
}

Maybe m2Of(const Case& inputs, const HouseRules& rules, const Maybe& kg) {
  const Child& child = inputs.child;
  if (child.bsa) return child.bsa->value;
  if (!child.height || !kg) return std::nullopt;
  const int decimals = rules.bsaDecimals.value_or(20);
  const bool inches = isHousehold(*child.height);
  const Number cm =
      inches ? sumIn(*child.height, Unit::in) * Number(254) / Number(100) : sumIn(*child.height, Unit::cm);
  if (rules.bsaFormula != BsaFormula::mosteller)
    return surfaceByPowers(surfaceFormula(rules.bsaFormula), cm, *kg).rounded(decimals);
  if (inches && isHousehold(*child.weight))
    return (sumIn(*child.height, Unit::in) * sumIn(*child.weight, Unit::lb) / Number(3131))
        .rootRounded(decimals);
  return (cm * *kg / Number(3600)).rootRounded(decimals);
}

/// The first stated strength of R9, as drug unit and amount in one mL, tablet or capsule.
std::optional<Quantity> strengthOf(const Stock& stock) {
  if (stock.strength) {
    const Quantity& per = stock.strength->in;
    const Number count = per.unit == Unit::L ? per.value * Number(1000) : per.value;
    return Quantity{stock.strength->amount.value / count, stock.strength->amount.unit};
  }
  if (stock.kind != StockKind::powder || !stock.content) return std::nullopt;
  Maybe volume;
  if (stock.finalVolume)
    volume = in(*stock.finalVolume, Unit::mL);
  else if (stock.diluent && stock.displacement)
    volume = in(*stock.diluent, Unit::mL) + in(*stock.displacement, Unit::mL);
  if (!volume) return std::nullopt;
  return Quantity{stock.content->value / *volume, stock.content->unit};
}

Number wholeAtLeastOne(const Number& x) { return x <= Number(1) ? Number(1) : x.ceil(); }

Maybe least(std::initializer_list<Maybe> values) {
  Maybe lowest;
  for (const Maybe& value : values)
    if (value && (!lowest || *value < *lowest)) lowest = value;
  return lowest;
}

/// Works R4 to R7 for one case. The letters are those of the rules.
class Again {
 public:
  Again(const Case& inputs, const HouseRules& rules) : inputs_(inputs), rules_(rules) {}

  WorkedAgain worked() {
    out_.kg = kgOf(inputs_, rules_);
    out_.m2 = m2Of(inputs_, rules_, out_.kg);
    strength_ = strengthOf(inputs_.stock);
    // random cases write each name in one way
    out_.otherMedicine =
        !inputs_.reference.medicine.empty() && inputs_.reference.medicine != inputs_.order.medicine;
    findCount();
    findOrdered();
    if (!out_.unit) return out_;
    if (strength_) out_.perMl = in(*strength_, *out_.unit);
    if (out_.otherMedicine) return out_;
    findReference();
    findFitting();
    if (out_.dose) bound();
    if (!n_ && inputs_.order.dose && !inputs_.order.dose->isRate()) boundOneDose();
    return out_;
  }

 private:
  Maybe sizeFor(PerSize size) const {
    if (size == PerSize::none) return Number(1);
    return size == PerSize::kg ? out_.kg : out_.m2;
  }

  Maybe sized(const std::optional<DoseAmount>& dose) const {
    if (!dose) return std::nullopt;
    const Maybe size = sizeFor(dose->perSize);
    if (!size) return std::nullopt;
    return in(dose->amount, *out_.unit) * *size;
  }

  void findCount() {
    const auto& schedule = inputs_.order.schedule;
    if (!schedule) return;
    once_ = schedule->isOnce();
    n_ = once_ ? Number(1) : schedule->most;
    const auto& cap = inputs_.order.maxDosesPerDay;
    if (cap && Number(*cap) < *n_) n_ = Number(*cap);
  }

  void findOrdered() {
    const auto& order = inputs_.order.dose;
    if (!order) return;
    const bool volume = order->amount.unit == Unit::mL;
    if (volume && !strength_) return;
    out_.unit = volume ? strength_->unit : order->amount.unit;
    const Maybe size = sizeFor(order->perSize);
    if (!size) return;
    const Number amount = order->amount.value * *size * (volume ? strength_->value : Number(1));
    total_ = amount;
    if (order->perTime == PerTime::day) {
      if (!n_ || *n_ < Number(1)) return;
      out_.dose = amount / wholeAtLeastOne(*n_);
    } else {
      out_.dose = amount;
    }
  }

  void findReference() {
    const Reference& reference = inputs_.reference;
    maxDose_ = sized(reference.maxPerDose);
    maxDay_ = sized(reference.maxPerDay);
    const Maybe high = sized(reference.high);
    if (!high) return;
    const auto& own = reference.schedule;
    const bool given = own && own->isRepeated();
    const bool ownOnce = own && own->isOnce();
    const Number seven(7);
    switch (reference.high->perTime) {
      case PerTime::dose:
        single_ = high;
        if (given) daily_ = *high * *least({own->most.ceil(), allowed()});
        if (ownOnce) daily_ = high;
        if (!own && allowed()) daily_ = *high * *allowed();
        break;
      case PerTime::day:
        daily_ = high;
        if (ownOnce)
          single_ = high;
        else if (given)
          single_ = *high / wholeAtLeastOne(own->fewest);
        else if (n_)
          single_ = *high / wholeAtLeastOne(*n_);
        break;
      case PerTime::week:
        week_ = high;
        if (ownOnce)
          single_ = high;
        else if (given)
          single_ = *high / larger(own->fewest * seven, Number(1));
        else if (once_)
          single_ = high;
        else if (n_)
          single_ = *high / larger(*n_ * seven, Number(1));
        break;
      default:
        break;
    }
  }

  /// m of R14.
  Maybe allowed() const {
    const Reference& reference = inputs_.reference;
    if (reference.schedule && reference.schedule->isOnce()) return Number(1);
    return reference.maxDosesPerDay ? Maybe(Number(*reference.maxDosesPerDay)) : Maybe{};
  }

  Maybe heldBy(const Maybe& day) const {
    return day && out_.dose ? Maybe((*day / *out_.dose).floor()) : Maybe{};
  }

  /// c of R14, and how many doses are counted by it.
  void findFitting() {
    if (!n_ || inputs_.order.dose->isRate()) return;
    const Number whole = wholeAtLeastOne(*n_);
    counted_ = once_ ? Number(1) : n_->ceil();
    Maybe most = allowed();
    if (inputs_.order.asNeeded && !inputs_.order.maxDosesPerDay && !once_) {
      const auto& high = inputs_.reference.high;
      const bool shared = high && high->perTime == PerTime::day && inputs_.reference.schedule;
      most = least({most, heldBy(maxDay_), shared ? heldBy(daily_) : Maybe{}});
      if (most && most->isZero()) return;
      if (most && *most < whole) counted_ = *most;
    }
    if (most) out_.count = CountAgain{whole, *most};
  }

  void add(CheckId check, const Number& perDose, bool atMost, const Maybe& bound) {
    if (bound) out_.bounds.push_back({check, perDose, atMost, *bound});
  }

  static bool underDaily(const std::optional<Schedule>& schedule) {
    return schedule && schedule->isRepeated() && schedule->most < Number(1);
  }

  void bound() {
    const Number one(1);
    add(CheckId::single, one, true, single_);
    add(CheckId::maxSingle, one, true, maxDose_);
    if (n_) {
      const Number day = *counted_;
      add(CheckId::maxDaily, day, true, maxDay_);
      if (!once_ && !week_) add(CheckId::daily, day, true, daily_);
      if (!once_) boundPeriod();
    }
    boundLow();
    boundInfusion();
  }

  /// R15: without a schedule a day's maximum is held against as many doses as the order itself allows,
  /// against an amount for a day as it is, or against one dose that alone is too much.
  void boundOneDose() {
    const Maybe own = inputs_.order.maxDosesPerDay ? Maybe(Number(*inputs_.order.maxDosesPerDay)) : Maybe{};
    if (own && allowed()) out_.count = CountAgain{*own, *allowed()};
    if (!maxDay_ || !total_) return;
    if (inputs_.order.dose->perTime == PerTime::day)
      out_.bounds.push_back({CheckId::maxDaily, Number(1), true, *maxDay_, total_});
    else if (own)
      add(CheckId::maxDaily, *own, true, maxDay_);
    else if (*out_.dose > *maxDay_)
      add(CheckId::maxDaily, Number(1), true, maxDay_);
  }

  /// R10: the dose in the volume it runs in, and in the time it takes.
  void boundInfusion() {
    const Infusion& infusion = inputs_.infusion;
    const Reference& reference = inputs_.reference;
    const auto perMl = [this](const std::optional<Strength>& strength) -> Maybe {
      if (!strength) return std::nullopt;
      return in(strength->amount, *out_.unit) / in(strength->in, Unit::mL);
    };
    if (infusion.volume) {
      const Number each = Number(1) / in(*infusion.volume, Unit::mL);
      add(CheckId::concentration, each, true, perMl(reference.maxConcentration));
      add(CheckId::concentrationLow, each, false, perMl(reference.minConcentration));
    }
    if (infusion.over && reference.maxInfusionRate) {
      const bool hourly = reference.maxInfusionRate->perTime == PerTime::h;
      const Number minutes = infusion.over->value * Number(infusion.over->unit == Unit::h ? 60 : 1);
      add(CheckId::infusionRate, Number(hourly ? 60 : 1) / minutes, true, sized(reference.maxInfusionRate));
    }
  }

  void boundPeriod() {
    const auto& own = inputs_.reference.schedule;
    const Number times = *n_ * Number(7);
    if (inputs_.reference.high && inputs_.reference.high->perTime == PerTime::week)
      return add(CheckId::period, times, true, week_);
    if (!underDaily(inputs_.order.schedule) && !underDaily(own)) return;
    if (own && own->isRepeated() && single_)
      add(CheckId::period, times, true, *single_ * own->most * Number(7));
  }

  /// Among how many doses a day is shared for one that is given once or as needed; none where the reference
  /// does not say how often, or is for a dose or a week.
  Maybe sharedAmong() const {
    const Reference& reference = inputs_.reference;
    const auto& own = reference.schedule;
    if (!n_ || reference.high->perTime != PerTime::day || !own || own->isContinuous()) return std::nullopt;
    if (!once_ && !inputs_.order.asNeeded) return std::nullopt;
    const Number theirs = own->isOnce() ? Number(1) : wholeAtLeastOne(own->most);
    return once_ ? theirs : larger(theirs, wholeAtLeastOne(*n_));
  }

  void boundShare(const Number& among) {
    const auto part = [&](const Maybe& day) { return day ? Maybe(*day / among) : Maybe{}; };
    const Maybe most = least({maxDose_, part(maxDay_)});
    const Maybe end = inputs_.reference.low ? part(sized(inputs_.reference.low)) : part(daily_);
    if (!end) return;
    const Number whole = inputs_.reference.low ? Number(1) : rules_.askBelowPercent / Number(100);
    add(CheckId::low, Number(1), false, *least({end, most}) * whole);
  }

  void boundLow() {
    const Reference& reference = inputs_.reference;
    if (reference.limitOnly || !reference.high) return;
    if ((reference.maxPerDose && !maxDose_) || (reference.maxPerDay && (!maxDay_ || !n_))) return;
    const bool perDose = reference.high->perTime == PerTime::dose;
    if (const Maybe among = sharedAmong()) return boundShare(*among);
    if (!perDose && (once_ || inputs_.order.asNeeded || !n_)) return;
    Number times(1);
    Maybe high = single_;
    Maybe most;
    if (perDose) {
      most = maxDay_ ? least({maxDose_, *maxDay_ / n_->ceil()}) : maxDose_;
    } else if (reference.high->perTime == PerTime::day) {
      times = larger(*n_, Number(1));
      high = daily_;
      most = maxDose_ ? least({maxDay_, *maxDose_ * times}) : maxDay_;
    } else {
      times = *n_ * Number(7);
      high = week_;
      if (maxDay_) most = *maxDay_ * Number(7);
    }
    if (reference.low)
      return add(CheckId::low, times, false,
                 sized(reference.low) ? least({sized(reference.low), most}) : Maybe{});
    if (high) add(CheckId::low, times, false, *least({high, most}) * rules_.askBelowPercent / Number(100));
  }

  const Case& inputs_;
  const HouseRules& rules_;
  WorkedAgain out_;
  std::optional<Quantity> strength_;
  bool once_ = false;
  Maybe n_;
  Maybe total_;    ///< what is ordered, for a dose or for a day
  Maybe counted_;  ///< doses in 24 h that the day's totals are made of
  Maybe single_, daily_, week_, maxDose_, maxDay_;
};

}  // namespace

WorkedAgain workAgain(const Case& inputs, const HouseRules& rules) { return Again(inputs, rules).worked(); }

}  // namespace wardchalk::test
