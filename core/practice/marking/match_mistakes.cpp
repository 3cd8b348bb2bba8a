#include "core/practice/marking/match_mistakes.h"

#include <algorithm>

namespace wardchalk {

namespace {

bool within(const Number& value, const Number& of, const Number& share) {
  return (value - of).absolute() <= of * share;
}

/// What an earlier result differs by that was carried on with four digits.
const Number& sameShare() {
  static const Number share = Number::ratio(5, 10000);
  return share;
}

/// A size rounded too early is known by its digits alone: it lies too near the right one for anything else.
bool fitsClosely(const TypedNumber& typed, const WrongValue& wrong) {
  if (wrong.mistake == MistakeId::sizeRoundedEarly) return typed.value == wrong.value.rounded(typed.decimals);
  return within(typed.value, wrong.value, routeTolerance());
}

/// Rounded or cut at the digits written.
bool fitsRounded(const TypedNumber& typed, const Number& wrong) {
  const Number unit = Number::powerOfTen(-typed.decimals);
  return typed.value == wrong.rounded(typed.decimals) || typed.value == (wrong / unit).floor() * unit;
}

/// Rounded at the digits written; a size rounded too early only where it lies as near as it must.
bool isRoundedTo(const TypedNumber& typed, const WrongValue& wrong) {
  return typed.value == wrong.value.rounded(typed.decimals) &&
         (wrong.mistake != MistakeId::sizeRoundedEarly || fitsClosely(typed, wrong));
}

/// To the last digit; a rounding is that of any number near it, and tells nothing.
bool isFigure(const WrongValue& wrong, const Number& value) {
  return wrong.value == value && wrong.mistake != MistakeId::sizeRoundedEarly;
}

/// Digits that count of a number as it is typed: 3 of 0.0125, 4 of 12.50.
int digitsOf(const TypedNumber& typed) {
  int digits = typed.decimals;
  Number rest = typed.value.absolute();
  for (; rest >= Number(1); rest = rest / Number(10)) ++digits;
  for (Number small = typed.value.absolute() * Number(10); !small.isZero() && small < Number(1);
       small = small * Number(10))
    --digits;
  return digits;
}

/// So many digits tell two mistakes apart that lie near one another.
constexpr int tellingDigits = 3;

/// Two mistakes that together come to the right value, or near it: nobody can be told that they were made.
bool cancel(const WrongValue& one, const WrongValue& other, const Number& right) {
  return within(one.value * other.value, right * right, collisionShare());
}

template <typename Fits>
std::vector<WrongValue> fitting(std::span<const WrongValue> wrong, Fits fits) {
  std::vector<WrongValue> found;
  std::ranges::copy_if(wrong, std::back_inserter(found), fits);
  return found;
}

std::vector<MistakeId> named(const std::vector<WrongValue>& wrong) {
  std::vector<MistakeId> ids;
  for (const WrongValue& one : wrong) ids.push_back(one.mistake);
  std::ranges::sort(ids);
  ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
  return ids;
}

}  // namespace

const Number& collisionShare() {
  static const Number share = Number::ratio(3, 100);
  return share;
}

std::vector<MistakeId> matchMistakes(const TypedNumber& typed, std::span<const WrongValue> wrong,
                                     bool closely) {
  std::vector<WrongValue> found =
      fitting(wrong, [&](const WrongValue& one) { return fitsClosely(typed, one); });
  if (closely) return named(found);
  if (digitsOf(typed) >= tellingDigits) {
    const auto same =
        named(fitting(found, [&](const WrongValue& one) { return fitsRounded(typed, one.value); }));
    if (!same.empty()) return same;
  }
  if (found.empty())
    found = fitting(wrong, [&](const WrongValue& one) { return fitsRounded(typed, one.value); });
  const std::vector<WrongValue> beside = fitting(wrong, [&](const WrongValue& other) {
    if (other.mistake == MistakeId::sizeRoundedEarly && !fitsClosely(typed, other))
      return false;  // known by its digits alone
    return std::ranges::any_of(
        found, [&](const WrongValue& one) { return within(other.value, one.value, collisionShare()); });
  });
  return named(beside);
}

std::vector<MistakeId> matchTiers(const TypedNumber& typed, const WrongValues& all, bool closely) {
  if (!closely && digitsOf(typed) >= tellingDigits)
    for (const std::span<const WrongValue> wrong : {all.tiers()[0], all.tiers()[1]})
      if (auto same = named(fitting(wrong, [&](const WrongValue& one) { return isRoundedTo(typed, one); }));
          !same.empty())
        return same;
  std::vector<MistakeId> found;
  bool exact = false;
  for (std::size_t tier = 0; tier < all.tiers().size(); ++tier) {
    const std::span<const WrongValue> wrong = all.tiers()[tier];
    const std::vector<MistakeId> same =
        named(fitting(wrong, [&](const WrongValue& one) { return isFigure(one, typed.value); }));
    if (closely && tier + 1 == all.tiers().size()) break;  // the rare ones are nothing beside a rounding
    if (found.empty()) {
      found = matchMistakes(typed, wrong, closely);
      exact = !found.empty() && tier == 0 && !same.empty();
    } else if (!exact) {
      found.insert(found.end(), same.begin(), same.end());
    }
  }
  std::ranges::sort(found);
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

std::vector<MistakeId> matchFigure(const Number& value, const WrongValues& all, MistakeId but) {
  for (const std::span<const WrongValue> wrong : all.tiers()) {
    auto found = named(
        fitting(wrong, [&](const WrongValue& one) { return one.value == value && one.mistake != but; }));
    if (!found.empty()) return found;
  }
  return {};
}

std::vector<MistakeId> matchWorked(const Number& worked, const WrongValues& all) {
  for (const Number& share : {Number(0), sameShare(), routeTolerance()})
    for (const std::span<const WrongValue> wrong : all.tiers()) {
      const auto found =
          named(fitting(wrong, [&](const WrongValue& one) { return within(worked, one.value, share); }));
      if (!found.empty()) return found;
    }
  return {};
}

std::vector<MistakeId> matchPair(const TypedNumber& typed, const Number& right,
                                 std::span<const WrongValue> wrong) {
  std::vector<MistakeId> pair;
  const Number whole =
      typed.value * right;  // a × b = typed × right, where a and b are what each comes to alone
  for (std::size_t i = 0; i < wrong.size(); ++i) {
    for (std::size_t j = i + 1; j < wrong.size(); ++j) {
      if (wrong[i].mistake == wrong[j].mistake || cancel(wrong[i], wrong[j], right) ||
          !within(wrong[i].value * wrong[j].value, whole, routeTolerance()))
        continue;
      const std::vector<MistakeId> found = named({wrong[i], wrong[j]});
      if (!pair.empty() && pair != found) return {};
      pair = found;
    }
  }
  return pair;
}

}  // namespace wardchalk
