#pragma once

#include <optional>
#include <string>

#include "core/child/child.h"
#include "core/medicine/medicine.h"
#include "core/number/refusal.h"

namespace wardchalk {

/// All the inputs of one problem together; readable values only. A part that was not entered is absent.
struct Case {
  std::string title;
  Child child;
  Order order;
  Reference reference;
  Stock stock;
  Infusion infusion;

  friend bool operator==(const Case&, const Case&) = default;
};

/// Entries that are readable one by one and cannot stand together (a low end above the high end …): the first
/// found, with the path of the entry to change. Empty when all go together.
[[nodiscard]] std::optional<Refusal> contradictionIn(const Case& inputs);

/// The most doses that a reference allows in 24 h: what it states, and one where it is given once, whatever
/// it states beside that. None where it says nothing of it.
[[nodiscard]] std::optional<int> mostDosesOf(const Reference& reference);

/// The most doses that may be given in 24 h of a repeated order: the lower of what order and reference state.
/// None where neither does, and for an order that is not repeated.
[[nodiscard]] std::optional<int> mostDosesOf(const Case& inputs);

}  // namespace wardchalk
