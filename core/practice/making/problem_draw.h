#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>

namespace wardchalk {

/// Numbers drawn from a seed, the same on every machine: whole numbers only, and none of the standard
/// library's distributions, which differ from maker to maker. Source of the generator, SplitMix64: Steele GL,
/// Lea D, Flood CH, "Fast splittable pseudorandom number generators", OOPSLA 2014; its three constants from
/// memory, held by a test against published first values.
class ProblemDraw {
 public:
  explicit ProblemDraw(std::uint64_t seed) : state_(seed) {}

  std::uint64_t next() {
    state_ += 0x9E3779B97F4A7C15U;
    std::uint64_t mixed = state_;
    mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
    mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
    return mixed ^ (mixed >> 31U);
  }

  /// From 0 to below `count`, which is 1 to 2^31.
  std::int64_t below(std::int64_t count) {
    return static_cast<std::int64_t>(((next() >> 32U) * static_cast<std::uint64_t>(count)) >> 32U);
  }
  /// Both ends are included.
  std::int64_t between(std::int64_t least, std::int64_t most) { return least + below(most - least + 1); }
  /// True in so many of a hundred draws.
  bool percent(int share) { return below(100) < share; }

  template <typename T, std::size_t size>
  const T& of(const std::array<T, size>& items) {
    return items[static_cast<std::size_t>(below(static_cast<std::int64_t>(size)))];
  }
  template <typename T>
  const T& of(std::span<const T> items) {
    return items[static_cast<std::size_t>(below(static_cast<std::int64_t>(items.size())))];
  }

 private:
  std::uint64_t state_;
};

}  // namespace wardchalk
