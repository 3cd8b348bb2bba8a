#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <initializer_list>
#include <utility>
#include <vector>

#include "core/unit/unit.h"

namespace wardchalk {

/// Units multiplied together, in the order they are written; one that is used twice stands twice (m⁴ is m2,
/// m2). A term has one or two and a chain copies many terms, so that the first of them stand in the object
/// itself: a worked case asks the machine for memory half as often as with a vector.
class UnitProduct {
 public:
  UnitProduct() = default;
  UnitProduct(std::initializer_list<Unit> units) : UnitProduct(units.begin(), units.end()) {}
  template <typename Iterator, typename End>
  UnitProduct(Iterator from, End to) {
    for (; from != to; ++from) push_back(*from);
  }

  void push_back(Unit unit) {
    if (many_.empty() && fewSize_ < few_.size()) {
      few_[fewSize_++] = unit;
      return;
    }
    if (many_.empty()) {
      many_.assign(few_.begin(), few_.end());
      fewSize_ = 0;
    }
    many_.push_back(unit);
  }

  void append(const UnitProduct& more) {
    for (const Unit unit : more) push_back(unit);
  }
  void clear() { *this = {}; }

  /// Takes out one that stands in it.
  void erase(const Unit* one) {
    std::copy(one + 1, std::as_const(*this).end(), begin() + (one - begin()));
    dropLast(1);
  }
  template <typename Predicate>
  void eraseIf(Predicate isUnwanted) {
    dropLast(static_cast<std::size_t>(end() - std::remove_if(begin(), end(), isUnwanted)));
  }

  [[nodiscard]] std::size_t size() const { return many_.empty() ? fewSize_ : many_.size(); }
  [[nodiscard]] bool empty() const { return size() == 0; }
  [[nodiscard]] Unit* begin() { return many_.empty() ? few_.data() : many_.data(); }
  [[nodiscard]] Unit* end() { return begin() + size(); }
  [[nodiscard]] const Unit* begin() const { return many_.empty() ? few_.data() : many_.data(); }
  [[nodiscard]] const Unit* end() const { return begin() + size(); }
  [[nodiscard]] Unit operator[](std::size_t at) const { return begin()[at]; }
  [[nodiscard]] Unit front() const { return *begin(); }
  [[nodiscard]] Unit back() const { return *(end() - 1); }

  friend bool operator==(const UnitProduct& a, const UnitProduct& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end());
  }

 private:
  void dropLast(std::size_t count) {
    if (many_.empty())
      fewSize_ = static_cast<std::uint8_t>(fewSize_ - count);
    else
      many_.resize(many_.size() - count);
  }

  std::array<Unit, 7> few_{};
  std::uint8_t fewSize_ = 0;
  std::vector<Unit> many_;  ///< all of them, where they are more than few
};

}  // namespace wardchalk
