#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "core/practice/making/problem_numbers.h"
#include "core/practice/making/problem_sketch.h"
#include "core/practice/making/problem_units.h"

namespace wardchalk {

namespace {

/// A range as references print it, in tenths of its unit.
struct DoseRange {
  std::int64_t low;
  std::int64_t high;
};

constexpr std::array kgDose = {
    DoseRange{50, 100},  DoseRange{100, 150}, DoseRange{100, 200}, DoseRange{150, 300}, DoseRange{200, 400},
    DoseRange{250, 500}, DoseRange{20, 40},   DoseRange{40, 80},   DoseRange{25, 50},   DoseRange{75, 150},
    DoseRange{40, 60},   DoseRange{10, 20},   DoseRange{120, 180}, DoseRange{60, 120}};
constexpr std::array kgDay = {DoseRange{200, 400},  DoseRange{250, 500},   DoseRange{300, 600},
                              DoseRange{400, 800},  DoseRange{450, 900},   DoseRange{500, 750},
                              DoseRange{500, 1000}, DoseRange{600, 1200},  DoseRange{750, 1500},
                              DoseRange{150, 300},  DoseRange{400, 600},   DoseRange{60, 120},
                              DoseRange{120, 240},  DoseRange{1000, 2000}, DoseRange{90, 180}};
constexpr std::array m2Dose = {DoseRange{500, 1000},  DoseRange{600, 1200},  DoseRange{750, 1500},
                               DoseRange{1000, 2000}, DoseRange{1500, 3000}, DoseRange{800, 1200},
                               DoseRange{1000, 1500}, DoseRange{2000, 3000}, DoseRange{400, 600},
                               DoseRange{250, 400},   DoseRange{1200, 2400}, DoseRange{2000, 2500},
                               DoseRange{150, 300},   DoseRange{300, 500}};
constexpr std::array m2Day = {DoseRange{1200, 2400}, DoseRange{1500, 3000}, DoseRange{2000, 4000},
                              DoseRange{2500, 5000}, DoseRange{3000, 4500}, DoseRange{4000, 6000},
                              DoseRange{2400, 3600}, DoseRange{600, 1200}};

// Of salts, in mmol or mEq, a few are many.
constexpr std::array kgSaltDose = {DoseRange{5, 10}, DoseRange{10, 20}, DoseRange{5, 15}, DoseRange{10, 15}};
constexpr std::array kgSaltDay = {DoseRange{10, 30}, DoseRange{20, 40}, DoseRange{20, 50}, DoseRange{30, 60}};
constexpr std::array m2SaltDose = {DoseRange{100, 200}, DoseRange{150, 250}, DoseRange{100, 150}};
constexpr std::array m2SaltDay = {DoseRange{200, 400}, DoseRange{300, 600}, DoseRange{400, 600}};

/// What a dose problem is made of; the level and the topic choose.
struct DosePlan {
  bool perM2 = false;
  bool perDay = false;
  bool hasLow = false;
  bool capped = false;  ///< a maximum for one dose is stated
  SizeStyle style = SizeStyle::metric;
  bool powder = false;
  bool runs = false;  ///< as an infusion
  bool amount = true;
  int bandShare = 25;  ///< in a hundred, of references that name an age they serve
};

bool isFlow(Topic topic) {
  return topic == Topic::infusion || topic == Topic::dilution || topic == Topic::drops;
}

SizeStyle styleFor(ProblemDraw& draw, int level) {
  if (level == 1) return SizeStyle::metric;
  if (level == 2) return draw.percent(60) ? SizeStyle::household : SizeStyle::metric;
  return draw.percent(30) ? SizeStyle::householdParts : SizeStyle::metric;
}

DosePlan planFor(ProblemDraw& draw, Topic topic, int level, ProblemAim aim) {
  constexpr std::array bandShares = {20, 35, 60};
  DosePlan plan;
  plan.style = styleFor(draw, level);
  plan.bandShare = bandShares[static_cast<std::size_t>(level - 1)];
  plan.hasLow = level > 1 && draw.percent(50);
  plan.capped = level == 3 && draw.percent(60);
  plan.perDay =
      topic == Topic::dailyDivided || (level > 1 && topic != Topic::doseByWeight && draw.percent(40));
  plan.perM2 = topic == Topic::doseByBsa || (topic == Topic::safeRange && level == 3 && draw.percent(50));
  plan.powder = topic == Topic::reconstitution;
  plan.runs = isFlow(topic);
  if (topic == Topic::safeRange) {
    plan.hasLow = true;
    plan.amount = false;
  }
  if (plan.runs || plan.powder) plan.perDay = false;
  if (aim == ProblemAim::scheduleDiffers && !plan.perDay) plan.hasLow = plan.hasLow || draw.percent(30);
  return plan;
}

DoseRange saltRangeFor(ProblemDraw& draw, const DosePlan& plan) {
  if (plan.perM2) return plan.perDay ? draw.of(m2SaltDay) : draw.of(m2SaltDose);
  return plan.perDay ? draw.of(kgSaltDay) : draw.of(kgSaltDose);
}

DoseRange rangeFor(ProblemDraw& draw, const DosePlan& plan, std::string_view unit) {
  if (isSalt(unit)) return saltRangeFor(draw, plan);
  if (plan.perM2) return plan.perDay ? draw.of(m2Day) : draw.of(m2Dose);
  return plan.perDay ? draw.of(kgDay) : draw.of(kgDose);
}

/// The schedules of reference and order. A day's amount is never given twice a day, nor four times by the
/// hour: then two ways to divide wrongly would come to the same.
struct Schedules {
  ProblemOften reference;
  ProblemOften order;
};

Schedules schedulesFor(ProblemDraw& draw, const DosePlan& plan, ProblemAim aim) {
  if (plan.perDay) {
    const bool four = aim != ProblemAim::scheduleDiffers && draw.percent(40);
    const ProblemOften reference{four ? 4 : 3, !four && draw.percent(60)};
    if (aim != ProblemAim::scheduleDiffers) return {reference, reference};
    return {reference, {4, false}};  // more often, with the day's total kept
  }
  const int doses = static_cast<int>(draw.between(aim == ProblemAim::scheduleDiffers ? 2 : 1, 4));
  const ProblemOften reference{doses, draw.percent(70)};
  if (aim != ProblemAim::scheduleDiffers) return {reference, reference};
  return {reference, {static_cast<int>(draw.between(1, doses - 1)), reference.inHours}};
}

/// What one dose may be, in thousandths of its unit.
struct Bounds {
  std::int64_t low;    ///< the least stated, or 0
  std::int64_t limit;  ///< the most
};

std::optional<std::int64_t> doseFor(ProblemDraw& draw, ProblemAim aim, const Bounds& bounds, int doses) {
  const auto within = [&](std::int64_t of, int from, int to) {
    return roundNumberIn(draw, of * from / 1000, of * to / 1000);
  };
  if (aim == ProblemAim::tooMuch) {
    const bool wholeDay = doses > 1 && draw.percent(25);  // as if the day's amount were one dose
    return wholeDay ? within(bounds.limit, 940 * doses, 965 * doses) : within(bounds.limit, 1080, 1700);
  }
  if (aim == ProblemAim::tooLittle)
    return bounds.low > 0 ? within(bounds.low, 450, 920) : within(bounds.limit, 400, 840);
  if (bounds.low == 0) return within(bounds.limit, 932, 966);
  return roundNumberIn(draw, bounds.low * 105 / 100, bounds.limit * 95 / 100);
}

std::string_view basisFor(const DosePlan& plan) {
  if (plan.perM2) return plan.perDay ? "/m2/day" : "/m2/dose";
  return plan.perDay ? "/kg/day" : "/kg/dose";
}

std::vector<StepId> linesFor(const DosePlan& plan) {
  std::vector<StepId> lines;
  if (plan.perDay) lines.push_back(StepId::limitDay);
  lines.push_back(StepId::limitDose);
  if (plan.hasLow) lines.push_back(plan.perDay ? StepId::lowDay : StepId::lowDose);
  return lines;
}

void writeReference(ProblemSketch& sketch, const DosePlan& plan, const DoseRange& range,
                    std::string_view unit) {
  const std::string basis = std::string(" ").append(unit).append(basisFor(plan));
  if (plan.hasLow) sketch.set(path::low, decimalText(range.low * 100) + basis);
  sketch.set(path::high, decimalText(range.high * 100) + basis);
}

/// A maximum that lowers the limit, or one above it.
bool writeMaximum(ProblemSketch& sketch, ProblemDraw& draw, Bounds& bounds, std::string_view unit) {
  const bool lowers = draw.percent(55);
  const auto most = lowers ? roundNumberIn(draw, std::max(bounds.limit * 3 / 4, bounds.low * 115 / 100),
                                           bounds.limit * 9 / 10)
                           : roundNumberIn(draw, bounds.limit * 11 / 10, bounds.limit * 16 / 10);
  if (!most) return false;
  sketch.set(path::maxPerDose, decimalText(*most) + " " + std::string(unit));
  bounds.limit = std::min(bounds.limit, *most);
  return true;
}

/// Why the reference does not serve this child: its route or its age. Otherwise a band that does, now and
/// then.
bool writeScope(ProblemSketch& sketch, ProblemDraw& draw, const DosePlan& plan, const ProblemChild& child,
                ProblemAim aim, std::string_view route) {
  const bool serves = aim != ProblemAim::notCovered;
  const bool otherRoute = !serves && draw.percent(40);
  const std::string_view other = route == "oral" ? "intravenous" : "oral";
  sketch.set(path::route, std::string(route));
  sketch.set(path::referenceRoute, std::string(otherRoute ? other : route));
  if (!serves && !otherRoute) return writeAgeBand(sketch, draw, child, false);
  if (draw.percent(plan.bandShare)) writeAgeBand(sketch, draw, child, true);
  return true;
}

/// Where the dose is drawn from, and how it runs. False when no usual label serves.
bool writeStock(ProblemSketch& sketch, ProblemDraw& draw, const DosePlan& plan, const ProblemDose& dose,
                int level) {
  if (plan.powder) return writePowder(sketch, draw, dose, level);
  const bool inGrams = level > 1 && dose.unit == "mg" && draw.percent(25);
  return writeLiquid(sketch, draw, dose, inGrams);
}

std::string_view routeFor(ProblemDraw& draw, const DosePlan& plan) {
  if (plan.runs) return "intravenous";
  if (plan.powder) return draw.percent(60) ? "intravenous" : "intramuscular";
  constexpr std::array<std::string_view, 20> routes = {
      "oral",        "oral",        "oral",        "oral",          "oral",          "oral",        "oral",
      "oral",        "oral",        "oral",        "oral",          "oral",          "oral",        "enteral",
      "intravenous", "intravenous", "intravenous", "intramuscular", "intramuscular", "subcutaneous"};
  return draw.of(routes);
}

/// The dose of the reference for this child, the maximum beside it, and the dose that is ordered.
std::optional<std::int64_t> writeDose(ProblemSketch& sketch, ProblemDraw& draw, const DosePlan& plan,
                                      ProblemAim aim, const ProblemSize& size, std::string_view unit) {
  const DoseRange range = rangeFor(draw, plan, unit);
  writeReference(sketch, plan, range, unit);
  const Schedules often = schedulesFor(draw, plan, aim);
  const std::int64_t times = plan.perM2 ? size.m2 : size.kg;
  const std::int64_t share = plan.perDay ? std::max(often.reference.doses, often.order.doses) : 1;
  Bounds bounds{plan.hasLow ? range.low * times / 10 / share : 0, range.high * times / 10 / share};
  if (plan.capped && !writeMaximum(sketch, draw, bounds, unit)) return std::nullopt;
  const auto dose = doseFor(draw, aim, bounds, often.order.doses);
  if (!dose || (unit == "mcg" && *dose >= 1000 * one))
    return std::nullopt;  // from there on it would be written in mg
  sketch.set(path::dose, decimalText(*dose) + " " + std::string(unit));
  sketch.set(path::schedule, often.order.text());
  sketch.set(path::referenceSchedule, often.reference.text());
  return dose;
}

/// What is to be measured, and from what; nothing where the problem ends at the verdict.
bool writeAmount(ProblemSketch& sketch, ProblemDraw& draw, const DosePlan& plan, const ProblemDose& dose,
                 int level) {
  if (!plan.amount) return true;
  if (!writeStock(sketch, draw, plan, dose, level)) return false;
  if (plan.powder) sketch.amountLines.push_back(StepId::strength);
  if (plan.powder || plan.runs || draw.percent(70)) sketch.amountLines.push_back(StepId::give);
  return true;
}

}  // namespace

Sketched sketchDose(ProblemDraw& draw, Topic topic, int level, ProblemAim aim) {
  ProblemSketch sketch;
  const DosePlan plan = planFor(draw, topic, level, aim);
  const ProblemChild child = drawProblemChild(draw, plan.perM2 ? 20 : 9, 200);
  const ProblemSize size = writeChild(sketch, child, plan.style, plan.perM2);
  writeNames(sketch, draw);
  const std::string_view route = routeFor(draw, plan);
  const std::string_view unit = unitFor(draw, plan.powder ? "intramuscular" : route);  // no salt is a powder
  const bool breaks =
      plan.runs && aim == ProblemAim::tooMuch && draw.percent(60);  // the infusion, not the dose
  const auto dose = writeDose(sketch, draw, plan, breaks ? ProblemAim::safe : aim, size, unit);
  if (!dose || !writeScope(sketch, draw, plan, child, aim, route)) return std::nullopt;
  sketch.lines = linesFor(plan);
  sketch.verdict = true;
  if (!writeAmount(sketch, draw, plan, {*dose, unit, route, child.months}, level)) return std::nullopt;
  if (plan.runs && !writeInfusion(sketch, draw, {topic, *dose, size.kg}, level, breaks)) return std::nullopt;
  return sketch;
}

}  // namespace wardchalk
