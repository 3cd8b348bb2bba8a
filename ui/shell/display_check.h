#pragma once

namespace wardchalk::ui {

/// While one of these stands, Qt's refusal to start without a display ends the program with a sentence and
/// status 2, instead of with a core dump.
class DisplayCheck {
 public:
  DisplayCheck();
  ~DisplayCheck();
  DisplayCheck(const DisplayCheck&) = delete;
  DisplayCheck& operator=(const DisplayCheck&) = delete;
};

/// Says on standard error, prefixed with the program's name, that there is no display.
[[nodiscard]] int complainOfNoDisplay();

}  // namespace wardchalk::ui
