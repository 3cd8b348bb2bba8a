#include "core/practice/lines/detail/line_links.h"

#include <algorithm>
#include <optional>

#include "core/unit/conversion.h"

namespace wardchalk::practice {

namespace {

/// What the number of the left side is multiplied by to stand in the units of the right; none when they do
/// not meet.
std::optional<Number> ratioOf(const UnitProduct& from, const UnitProduct& to, Pounds pounds) {
  if (from.size() != to.size()) return std::nullopt;
  UnitProduct rest = to;
  Number ratio(1);
  for (const Unit unit : from) {
    auto partner = std::find(rest.begin(), rest.end(), unit);
    if (partner == rest.end())
      partner = std::find_if(rest.begin(), rest.end(),
                             [&](Unit other) { return dimensionOf(other) == dimensionOf(unit); });
    if (partner == rest.end()) return std::nullopt;
    const auto turned = converted(Number(1), unit, *partner, pounds);
    if (!turned) return std::nullopt;
    ratio = ratio * *turned;
    rest.erase(partner);
  }
  return ratio;
}

std::optional<Number> ratioOf(const Units& from, const Units& to, Pounds pounds) {
  const auto over = ratioOf(from.over, to.over, pounds);
  const auto under = ratioOf(from.under, to.under, pounds);
  if (!over || !under) return std::nullopt;
  return *over / *under;
}

/// "per dose" or "per day", at most one of them, taken out of what only one side says.
bool leaveOutPer(Units& one, const Units& other) {
  for (const Unit per : {Unit::dose, Unit::day}) {
    const auto found = std::find(one.under.begin(), one.under.end(), per);
    if (found == one.under.end() || std::count(other.under.begin(), other.under.end(), per) > 0) continue;
    one.under.erase(found);
    return true;
  }
  return false;
}

struct Meeting {
  UnitsMeet how;
  std::vector<Number> ratios;  // that the left side may be multiplied by: pounds are taken by either rule
};

std::vector<Number> ratiosOf(const Units& from, const Units& to) {
  std::vector<Number> ratios;
  for (const Pounds pounds : {Pounds::exact, Pounds::trade})
    if (const auto ratio = ratioOf(from, to, pounds)) ratios.push_back(*ratio);
  return ratios;
}

Meeting meetingOf(const LineSide& left, const LineSide& right) {
  const std::vector<Number> asTheyStand{Number(1)};
  const bool bare = left.unitsOpen || right.unitsOpen || left.written == UnitsWritten::none ||
                    right.written == UnitsWritten::none;
  if (bare) return {UnitsMeet::bare, asTheyStand};
  if (sameUnits(left.units, right.units)) return {UnitsMeet::same, asTheyStand};
  std::vector<Number> ratios = ratiosOf(left.units, right.units);
  if (!ratios.empty()) return {UnitsMeet::converted, std::move(ratios)};
  Units a = left.units;
  Units b = right.units;
  if (leaveOutPer(a, b) != leaveOutPer(b, left.units)) ratios = ratiosOf(a, b);
  if (!ratios.empty()) return {UnitsMeet::perLeftOut, std::move(ratios)};
  return {UnitsMeet::differ, asTheyStand};
}

Number cutAt(const Number& value, int decimals) {
  const Number scale = Number::powerOfTen(decimals);
  return (value * scale).floor() / scale;
}

Truth asWritten(const Number& worked, const Number& written, int decimals) {
  if (worked.rounded(decimals) == written) return Truth::rounded;
  return cutAt(worked, decimals) == written ? Truth::cut : Truth::wrong;
}

/// Whether the one side is the other rounded to the decimals typed. Of two amounts the right one is the
/// rounded one.
Truth roundedTruth(const LineSide& left, const LineSide& right, const Number& ratio) {
  if (right.decimals >= 0) return asWritten(left.value * ratio, right.value, right.decimals);
  if (left.decimals >= 0) return asWritten(right.value / ratio, left.value, left.decimals);
  if (left.chain.rooted && right.rootDecimals >= 0)
    return asWritten(left.product.exact, right.product.exact, right.rootDecimals);
  return Truth::wrong;
}

Truth equalTruth(const LineSide& left, const LineSide& right, const Number& ratio) {
  const bool alike = left.exact == right.exact && left.value * ratio == right.value;
  return alike ? Truth::exact : roundedTruth(left, right, ratio);
}

Truth truthOf(const LineSide& left, const LineSide& right, LineRelation relation, const Number& ratio) {
  if (relation == LineRelation::equal || relation == LineRelation::about)
    return equalTruth(left, right, ratio);
  return relationHolds(left.value * ratio, relation, right.value) ? Truth::exact : Truth::wrong;
}

}  // namespace

UnitsMeet unitsMeet(const LineSide& left, const LineSide& right) { return meetingOf(left, right).how; }

LineLink linkOf(const LineSide& left, const LineSide& right, LineRelation relation, Span at) {
  const Meeting meeting = meetingOf(left, right);
  Truth best = Truth::wrong;
  for (const Number& ratio : meeting.ratios) best = std::min(best, truthOf(left, right, relation, ratio));
  const bool partly = left.written == UnitsWritten::partly || right.written == UnitsWritten::partly;
  if (!partly || meeting.how == UnitsMeet::same) return {relation, at, meeting.how, best};
  // "37 lb ÷ 2.2 = 16.8 kg": the bare number may carry the units that would make the two meet
  const Truth asTheyStand = truthOf(left, right, relation, Number(1));
  const bool bare = meeting.how == UnitsMeet::differ || asTheyStand < best;
  return {relation, at, bare ? UnitsMeet::bare : meeting.how, std::min(best, asTheyStand)};
}

}  // namespace wardchalk::practice
