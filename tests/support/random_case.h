#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/case_file.h"

namespace wardchalk::test {

/// A row of numbers from which a random case is drawn, each choosing one of several ways to go on. Smaller
/// numbers choose the plainer way, and when none is left the plainest is taken: so a row that is cut or
/// lowered, as a property checker does to find the smallest failing one, gives a plainer case.
class Choices {
 public:
  explicit Choices(std::vector<std::uint32_t> row) : row_(std::move(row)) {}

  /// The next number, below `count`.
  std::uint32_t below(std::uint32_t count) { return at_ < row_.size() ? row_[at_++] % count : 0; }
  /// A whole number from `least` to `most`.
  int between(int least, int most);
  /// True about once in `times`.
  bool onceIn(std::uint32_t times) { return below(times) == times - 1; }
  /// One of the words.
  std::string_view of(std::initializer_list<std::string_view> words);

 private:
  std::vector<std::uint32_t> row_;
  std::size_t at_ = 0;
};

/// A case as typed, with house rules as `rulesOf` reads them.
struct RandomCase {
  std::vector<WrittenEntry> entries;
  std::string rules;
};

/// A sensible case: every basis (per kg, per m², flat; per dose, day, week), schedule, stock, route, band,
/// maximum and unit comes up, and orders from a fraction of the limit to several times it, often at it. Every
/// entry reads and no two contradict one another.
[[nodiscard]] RandomCase randomCase(Choices& choices);

/// As randomCase, an order of a rate against a reference of one.
[[nodiscard]] RandomCase randomRateCase(Choices& choices);

/// A whole number over a power of ten as it is typed: 172 and 1 are "17.2", 170 and 1 are "17".
[[nodiscard]] std::string decimal(std::int64_t digits, int decimals);

}  // namespace wardchalk::test
