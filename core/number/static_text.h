#pragma once

#include <cstddef>
#include <ostream>
#include <string_view>

namespace wardchalk {

/// Text that is there as long as the program: a path, an id, the name of an argument. It is made of constants
/// only, at compile time, or copied, so that whatever holds one can be kept and handed on: a view of
/// something that was typed does not become one.
class StaticText {
 public:
  constexpr StaticText() = default;
  template <std::size_t size>
  consteval StaticText(const char (&literal)[size]) : text_(literal, size - 1) {}  // NOLINT(*-explicit-*)
  consteval StaticText(std::string_view constant) : text_(constant) {}             // NOLINT(*-explicit-*)

  constexpr operator std::string_view() const { return text_; }  // NOLINT(*-explicit-*): it is one
  [[nodiscard]] constexpr std::string_view view() const { return text_; }
  [[nodiscard]] constexpr bool empty() const { return text_.empty(); }

  friend constexpr bool operator==(StaticText a, StaticText b) { return a.text_ == b.text_; }
  friend constexpr bool operator==(StaticText a, std::string_view b) { return a.text_ == b; }
  template <std::size_t size>
  friend constexpr bool operator==(StaticText a, const char (&literal)[size]) {
    return a.text_ == std::string_view(literal, size - 1);
  }
  friend std::ostream& operator<<(std::ostream& out, StaticText text) { return out << text.text_; }

 private:
  std::string_view text_;
};

}  // namespace wardchalk
