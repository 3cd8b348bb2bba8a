#pragma once

#include <string_view>
#include <utility>

namespace wardchalk {

/// A number that the system gave for something open; closed at the end unless it is only lent.
class Descriptor {
 public:
  explicit Descriptor(int number = -1, bool lent = false) : number_(number), lent_(lent) {}
  ~Descriptor() { close(); }
  Descriptor(Descriptor&& other) noexcept
      : number_(std::exchange(other.number_, -1)), lent_(std::exchange(other.lent_, false)) {}
  Descriptor& operator=(Descriptor&& other) noexcept {
    if (this != &other) {
      close();
      number_ = std::exchange(other.number_, -1);
      lent_ = std::exchange(other.lent_, false);
    }
    return *this;
  }

  [[nodiscard]] bool isOpen() const { return number_ >= 0; }
  [[nodiscard]] int number() const { return number_; }

 private:
  void close();

  int number_;
  bool lent_;
};

/// What to call something that is no regular file ("a folder", "a pipe", "a device"), by the bits of its
/// kind.
[[nodiscard]] std::string_view kindWords(unsigned mode);

}  // namespace wardchalk
