#include "tests/support/student_mistakes.h"

#include <algorithm>
#include <optional>

#include "core/unit/conversion.h"

// Signatures: wrong value over right one, derived from the formulas of the trade; the mistakes themselves are
// those that Wennberg-Capellades et al. 2022, McMullan et al. 2010, Weeks et al. 2013 and Lesar 1998 name,
// the rest is common practice, no source.

namespace wardchalk::test {

namespace {

using Made = std::vector<MadeMistake>;

Number total(const MixedQuantity& mixed, Unit unit) {
  Number sum;
  for (const Quantity& part : mixed.parts) sum = sum + *converted(part.value, part.unit, unit);
  return sum;
}

bool inUnits(const std::optional<MixedQuantity>& mixed, std::initializer_list<Unit> units) {
  return mixed && std::ranges::find(units, mixed->parts.front().unit) != units.end();
}

struct Symbols {
  std::optional<Number> W, L, H, I, A, S, v, hours;
  Number order{1}, reference{1};
};

Number whole(const std::optional<Schedule>& schedule) {
  return schedule && schedule->isRepeated() && schedule->most >= Number(1) ? schedule->most : Number(1);
}

Symbols symbolsOf(const Problem& problem) {
  const Case& given = problem.given;
  Symbols s;
  if (problem.key.weight) s.W = problem.key.weight->kg;
  if (problem.key.bsa) s.A = problem.key.bsa->m2;
  if (inUnits(given.child.weight, {Unit::lb, Unit::oz})) s.L = total(*given.child.weight, Unit::lb);
  if (given.child.height) s.H = total(*given.child.height, Unit::cm);
  if (inUnits(given.child.height, {Unit::in, Unit::ft})) s.I = total(*given.child.height, Unit::in);
  if (given.stock.strength) {
    s.S = given.stock.strength->amount.value;
    s.v = given.stock.strength->in.value;
  }
  if (given.infusion.over)
    s.hours = *converted(given.infusion.over->value, given.infusion.over->unit, Unit::h);
  s.order = whole(given.order.schedule);
  s.reference = whole(given.reference.schedule);
  return s;
}

Number root(const Number& x) { return x.rootCut(12); }
Number per(std::int64_t a, std::int64_t b) { return Number::ratio(a, b); }

void addWeight(const Problem& problem, const Symbols& s, Made& made) {
  if (!s.L) return;
  made.push_back({"E01", *s.L});
  made.push_back({"E02", *s.L * per(22, 10)});
  const auto& parts = problem.given.child.weight->parts;
  if (parts.size() == 2 && parts[1].value < Number(10))
    made.push_back({"E04", (parts[0].value + parts[1].value / Number(10)) * *s.W / *s.L});
}

void addSurface(const Symbols& s, Made& made) {
  const Number q = *s.H * *s.W / Number(3600);
  const Number household = s.I && s.L ? *s.I * *s.L / Number(3131) : q;
  made.push_back({"E10", household});
  made.push_back({"E11", household / Number(2)});
  made.push_back({"E16", root(household) / Number(60)});
  if (s.I && s.L) {
    made.push_back({"E12", root(*s.I * *s.L / Number(3600))});
    made.push_back({"E14", root(*s.H * *s.L / Number(3600))});
    made.push_back({"E14", root(*s.I * *s.W / Number(3600))});
    made.push_back({"E15", root((*s.I + *s.L) / Number(3131))});
  } else {
    made.push_back({"E13", root(*s.H * *s.W / Number(3131))});
    made.push_back({"E15", root((*s.H + *s.W) / Number(3600))});
  }
  made.push_back({"E17", root(household).rounded(1)});
}

/// Per kg or per m²: the other size, another weight.
void addBasis(const Problem& problem, const Symbols& s, const Number& right, bool weightAsked, Made& made) {
  const auto& high = problem.given.reference.high;
  if (high->perSize == PerSize::m2 && s.W) made.push_back({"E18", right * *s.W / *s.A});
  if (high->perSize != PerSize::kg) return;
  if (s.A) made.push_back({"E19", right * *s.A / *s.W});
  if (weightAsked) return;
  if (s.H) made.push_back({"E58", right * *s.H / *s.W});
  if (s.L) {
    made.push_back({"E01", right * *s.L / *s.W});
    made.push_back({"E02", right * *s.L * per(22, 10) / *s.W});
  } else {
    made.push_back({"E03", right / per(22, 10)});
  }
}

void addShare(const Problem& problem, const Symbols& s, StepId line, const Number& right, Made& made) {
  const bool dose = line == StepId::limitDose || line == StepId::lowDose;
  const Number& n = s.reference;
  if (!dose || n == Number(1) || !problem.given.reference.schedule) return;
  made.push_back({"E21", right / n});
  if (problem.given.reference.high->perTime != PerTime::day) return;
  made.push_back({"E20", right * n});
  if (problem.given.reference.schedule->text.ends_with(" h"))  // the hours can be taken for the doses
    made.push_back({"E22", right * n * n / Number(24)});
  for (const int other : {2, 3, 4, 6})
    if (Number(other) != n) made.push_back({"E23", right * n / Number(other)});
}

void addGive(const Problem& problem, const Symbols& s, const Number& x, Made& made) {
  const Stock& stock = problem.given.stock;
  const bool powder = stock.kind == StockKind::powder;
  if (!powder && s.S) {
    const Number c = *s.S / *s.v;
    const Number D = x * c;
    made.push_back({"E31", *s.S * *s.v / D});
    made.push_back({"E33", D * c});
    if (*s.v != Number(1)) {
      made.push_back({"E32", D / *s.S});
      made.push_back({"E34", D / (*s.S * *s.v)});
    }
  }
  if (s.order != Number(1)) made.push_back({"E35", x * s.order});
  if (problem.given.reference.high && problem.given.reference.high->perSize == PerSize::kg && s.W)
    made.push_back({"E36", x * *s.W});
  const Number* limit = problem.key.limitDose ? &problem.key.limitDose->amount.value : nullptr;
  if (limit && problem.key.limitDose->setBy == SetBy::reference && problem.key.orderedDose)
    made.push_back({"E30", x * *limit / problem.key.orderedDose->value});
  made.push_back({"E06", x * Number(1000)});
  made.push_back({"E06", x / Number(1000)});
}

void addStrength(const Problem& problem, Made& made) {
  const Stock& stock = problem.given.stock;
  if (stock.kind != StockKind::powder || !stock.content || !stock.diluent) return;
  const Number g = *converted(stock.diluent->value, stock.diluent->unit, Unit::mL);
  made.push_back({"E38", stock.content->value / g});
  if (!stock.displacement) return;
  const Number d = stock.displacement->value;
  const Number f = stock.finalVolume ? stock.finalVolume->value : g + d;
  made.push_back({"E39", stock.content->value / (f + d)});
}

void addRun(const Problem& problem, const Symbols& s, StepId line, const Number& right, Made& made) {
  const Infusion& infusion = problem.given.infusion;
  if (problem.given.order.dose && problem.given.order.dose->isRate()) {
    const DoseAmount& dose = *problem.given.order.dose;
    if (dose.perTime == PerTime::min) made.push_back({"E55", right / Number(60)});
    if (s.W && dose.perSize == PerSize::kg) made.push_back({"E55", right / *s.W});
    return;
  }
  if (line == StepId::drops) {
    made.push_back({"E52", right / infusion.dropFactor->value});
    made.push_back({"E53", right * Number(60)});
    return;
  }
  const Number volume = *converted(infusion.volume->value, infusion.volume->unit, Unit::mL);
  made.push_back({"E49", right / Number(60)});
  made.push_back({"E50", volume * *s.hours});
  made.push_back({"E50", volume * *s.hours * Number(60)});
  if (problem.key.give && problem.key.give->exact.unit == Unit::mL) {
    made.push_back({"E51", (volume - problem.key.give->exact.value) / *s.hours});
    made.push_back({"E51", (volume + problem.key.give->exact.value) / *s.hours});
  }
}

void addLeastVolume(const Problem& problem, const Number& right, Made& made) {
  const auto& most = problem.given.reference.maxConcentration;
  if (!most) return;
  const Number c = most->amount.value / most->in.value;
  made.push_back({"E56", Number(1) / right});
  made.push_back({"E56", right * c * c});
}

std::optional<Number> yearsOf(const Problem& problem) {
  const auto& age = problem.given.child.age;
  if (!age || age->written.parts.front().unit != Unit::year) return std::nullopt;
  return age->written.parts.front().value;
}

/// By the constants of the system that the child was measured in.
void addRareSurface(const Problem& problem, const Symbols& s, Made& made) {
  const bool household = s.I && s.L;
  const Number height = household ? *s.I : *s.H;
  const Number weight = household ? *s.L : *s.W;
  const Number constant(household ? 3131 : 3600);
  made.push_back({"E107", root(height * weight)});
  made.push_back({"E108", root(height / weight)});
  made.push_back({"E109", height * weight / root(constant)});
  if (const auto years = yearsOf(problem)) made.push_back({"E102", root(height * *years / constant)});
}

/// Both ends taken together, and the size in the reference's place.
void addRareEnds(const Problem& problem, const Symbols& s, StepId line, const Number& right, Made& made) {
  const Reference& reference = problem.given.reference;
  const bool isLow = line == StepId::lowDose || line == StepId::lowDay;
  if (!reference.high || (isLow && !reference.low)) return;
  const DoseAmount& own = isLow ? *reference.low : *reference.high;
  if (reference.low) {
    const Number low = *converted(reference.low->amount.value, reference.low->amount.unit, own.amount.unit);
    const Number high =
        *converted(reference.high->amount.value, reference.high->amount.unit, own.amount.unit);
    made.push_back({"E103", right * (low + high) / own.amount.value});
    made.push_back({"E104", right * (low + high) / own.amount.value / Number(2)});
  }
  const auto& size = own.perSize == PerSize::kg ? s.W : s.A;
  const Units& wanted = problem.key.step(line)->lookingFor;
  if (own.perSize == PerSize::none || !size || wanted.over.front() != own.amount.unit) return;
  made.push_back({"E105", *size / own.amount.value});
  if (const auto years = yearsOf(problem); years && own.perSize == PerSize::kg)
    made.push_back({"E102", right * *years / *size});
}

void addRareGive(const Problem& problem, const Symbols& s, const Number& x, Made& made) {
  if (!s.S || !s.v || problem.given.stock.kind == StockKind::powder) return;
  const Number D = x * *s.S / *s.v;
  made.push_back({"E112", (D - *s.S).absolute()});
  if (problem.given.stock.kind == StockKind::solid) {
    made.push_back({"E113", D});
    return;
  }
  made.push_back({"E110", D * *s.v});
  made.push_back({"E111", *s.v});
}

void addRareVolume(const Problem& problem, const Number& right, Made& made) {
  const auto& most = problem.given.reference.maxConcentration;
  const auto& bag = problem.given.infusion.volume;
  if (!most || !bag) return;
  const Number c = most->amount.value / most->in.value;
  made.push_back({"E114", right * c / *converted(bag->value, bag->unit, Unit::mL)});
}

bool asks(const Problem& problem, StepId step) {
  return std::ranges::any_of(problem.asks, [&](const Ask& ask) { return ask.step == step; });
}

bool isLimit(StepId line) {
  return line == StepId::limitDose || line == StepId::lowDose || line == StepId::limitDay ||
         line == StepId::lowDay;
}

}  // namespace

Number rightOn(const Problem& problem, StepId line) {
  const auto* solved = std::get_if<Solved>(&problem.key.step(line)->body);
  return solved->chain.rooted ? solved->product.exact.rootCut(12) : solved->product.exact;
}

Made mistakesOn(const Problem& problem, StepId line) {
  const Symbols s = symbolsOf(problem);
  const Number right = rightOn(problem, line);
  Made made;
  if (line == StepId::weight) addWeight(problem, s, made);
  if (line == StepId::height && s.I) made.push_back({"E05", *s.I});
  if (line == StepId::bsa && s.H && s.W) addSurface(s, made);
  if (isLimit(line)) {
    // a line that follows from an earlier one is right in its size already
    if (!(line == StepId::limitDose && asks(problem, StepId::limitDay)) &&
        !(line == StepId::lowDose && asks(problem, StepId::lowDay)))
      addBasis(problem, s, right, asks(problem, StepId::weight), made);
    addShare(problem, s, line, right, made);
  }
  if (line == StepId::give) addGive(problem, s, right, made);
  if (line == StepId::strength) addStrength(problem, made);
  if (line == StepId::rate || line == StepId::drops) addRun(problem, s, line, right, made);
  if (line == StepId::volume) addLeastVolume(problem, right, made);
  const auto& chain = std::get<Solved>(problem.key.step(line)->body).chain;
  const bool conversion =
      chain.factors.size() == 2 && std::ranges::any_of(chain.factors, [](const Factor& factor) {
        return factor.over.origin.kind == Origin::Kind::constant && factor.over.units.size() == 1 &&
               measuresDrug(factor.over.units.front());
      });
  for (const int power : {1, -1, 2, -2})
    made.push_back({conversion ? "E08" : "E40", right * Number::powerOfTen(power)});
  if (conversion)
    made.push_back({"E07", right * Number::powerOfTen(chain.factors[1].over.value > Number(1) ? -6 : 6)});
  std::erase_if(made, [](const MadeMistake& one) { return one.value <= Number(0); });
  return made;
}

Made rareMistakesOn(const Problem& problem, StepId line) {
  const Symbols s = symbolsOf(problem);
  const Number right = rightOn(problem, line);
  Made made;
  if (line == StepId::weight && s.L) made.push_back({"E106", *s.L - per(22, 10)});
  if (line == StepId::height && s.I) made.push_back({"E106", *s.I - per(254, 100)});
  if (line == StepId::bsa && s.H && s.W) addRareSurface(problem, s, made);
  if (isLimit(line)) addRareEnds(problem, s, line, right, made);
  if (line == StepId::give) addRareGive(problem, s, right, made);
  if (line == StepId::volume) addRareVolume(problem, right, made);
  std::erase_if(made, [](const MadeMistake& one) { return one.value <= Number(0); });
  return made;
}

}  // namespace wardchalk::test
