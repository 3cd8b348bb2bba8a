#pragma once

#include <iostream>
#include <string>

namespace wardchalk::corners {

/// How many cases of a grid were tried, what they came to, and what did not hold.
class Tally {
 public:
  explicit Tally(std::string name) : name_(std::move(name)) {}

  void tried() { ++tried_; }
  [[nodiscard]] long wrong() const { return wrong_; }

  /// `what` is only called where it does not hold.
  template <typename What>
  void expect(bool holds, What what) {
    ++expected_;
    if (holds) return;
    if (++wrong_ <= 20) std::cout << "  " << name_ << ": " << what() << std::endl;
  }

  void print() const {
    std::cout << name_ << ": " << tried_ << " tried, " << expected_ << " expectations, " << wrong_ << " wrong"
              << std::endl;
  }

 private:
  std::string name_;
  long tried_ = 0;
  long expected_ = 0;
  long wrong_ = 0;
};

/// Each tries its grid whole, prints what it counted and gives back how much was wrong.
namespace surface {
[[nodiscard]] long tryWhole();
}
namespace syringes {
[[nodiscard]] long tryWhole();
}
namespace schedules {
[[nodiscard]] long tryWhole();
}
namespace spellings {
[[nodiscard]] long tryWhole();
}

}  // namespace wardchalk::corners
