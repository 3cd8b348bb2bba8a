#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/number/refusal_code.h"

namespace wardchalk {

/// Why an entry was not accepted: a stable code and what the sentence needs. It holds no sentence; words are
/// chosen at the edge (`core/words`). Nothing that was typed is ever altered: `typed` is a piece of what
/// stood there.
struct Refusal {
  RefusalCode code;
  std::string typed;  ///< the piece that was refused, as it stood; of long text the beginning
  std::string
      suggestion;    ///< what to write instead of `typed`, where that is known; else empty. From `setEntry`
                     ///< instead of the whole entry: it reads, and means all that was typed (H50)
  std::string path;  ///< the field or file key it belongs to, "order.dose"; set by whoever knows it
  std::string hint = {};  ///< what the sentence tells besides, and nobody can write as it stands: the units
                          ///< that fit, a range, the mg/mL of a ratio

  friend bool operator==(const Refusal&, const Refusal&) = default;
};

/// As much of a text as a refusal keeps of it: 60 bytes at most, and no letter cut in two (`beginningOf`).
[[nodiscard]] std::string shortened(std::string_view typed);

/// A refusal of `typed`, shortened.
[[nodiscard]] Refusal refusalOf(RefusalCode code, std::string_view typed, std::string_view suggestion = {});

/// The same with a hint and nothing to write.
[[nodiscard]] Refusal hintedRefusal(RefusalCode code, std::string_view typed, std::string hint);

/// A value, or why there is none. The one result type for everything that can fail on input.
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

 private:
  std::variant<T, Refusal> content_;
};

}  // namespace wardchalk
