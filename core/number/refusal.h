#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/number/refusal_code.h"

namespace wardchalk {

/// Why an entry was not accepted: a stable code, and what its sentence is to quote. The sentence itself is
/// made in `core/words`.
struct Refusal {
  RefusalCode code;
  /// The piece that was refused, letter for letter as it was typed; of a long one the beginning.
  std::string typed;
  /// What to write instead of `typed`, where that is certain; else empty. In a refusal from `setEntry` it
  /// stands for the whole entry: it can be read, and means all that was typed (H50).
  std::string suggestion;
  /// The field or file key it belongs to, "order.dose"; filled in by whoever knows it.
  std::string path;
  /// What the sentence tells besides and nobody could write as it stands: the units that fit, a range, the
  /// mg/mL of a ratio.
  std::string hint = {};

  friend bool operator==(const Refusal&, const Refusal&) = default;
};

/// As much of a text as a refusal keeps of it: 60 bytes at most, and no letter cut in two (`beginningOf`).
[[nodiscard]] std::string shortened(std::string_view typed);

/// A refusal of `typed`, shortened.
[[nodiscard]] Refusal refusalOf(RefusalCode code, std::string_view typed, std::string_view suggestion = {});

/// The same with a hint and nothing to write.
[[nodiscard]] Refusal hintedRefusal(RefusalCode code, std::string_view typed, std::string hint);

/// What a function returns that does something and has nothing to give: it is done.
struct Done {
  friend bool operator==(Done, Done) = default;
};

/// A value, or why there is none. The one result type for everything that can fail on input: true is success,
/// always. A `Result<Done>` is for what only does something, as to write a file. A function that looks for a
/// fault, and is right in finding none, returns `std::optional<Refusal>` and is named after the fault.
template <typename T>
class [[nodiscard]] Result {
 public:
  Result(T value) : content_(std::move(value)) {}  // NOLINT(google-explicit-constructor): `return x;`
  Result(Refusal refusal) : content_(std::move(refusal)) {}  // NOLINT(google-explicit-constructor)

  [[nodiscard]] explicit operator bool() const { return content_.index() == 0; }
  [[nodiscard]] const T& operator*() const& { return std::get<0>(content_); }
  [[nodiscard]] T&& operator*() && { return std::get<0>(std::move(content_)); }
  [[nodiscard]] const T* operator->() const { return &std::get<0>(content_); }
  [[nodiscard]] const Refusal& refusal() const { return std::get<1>(content_); }
  /// The refusal where there is one, to be kept.
  [[nodiscard]] std::optional<Refusal> refusalIfAny() const {
    return *this ? std::nullopt : std::optional(refusal());
  }

  friend bool operator==(const Result&, const Result&) = default;

 private:
  std::variant<T, Refusal> content_;
};

}  // namespace wardchalk
