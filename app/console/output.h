#pragma once

#include <string>
#include <string_view>

#include "app/console/commands.h"

namespace wardchalk::console {

/// The answers of a command, on their way to standard output. It gathers small ones, and remembers why they
/// could not be written.
class Output {
 public:
  /// Text is for people and comes out so that a terminal obeys nothing of it. Data stays what it is wherever
  /// it goes to another program; a table that a terminal shows comes out like text. (JSON has no such
  /// characters.)
  enum class Kind : std::uint8_t { text, json, table };

  explicit Output(Kind kind);

  /// Whole characters.
  void add(std::string_view text);
  [[nodiscard]] bool isWritten() const { return error_ == 0; }

  /// What the program ends with: `status` when all was written. Else it says why not; but a reader that has
  /// gone away, as `head` does, wanted no more, and there is nothing to say.
  [[nodiscard]] int close(int status);

 private:
  void flush();

  bool isShown_;
  std::string gathered_;
  int error_ = 0;
};

/// Prints it all.
[[nodiscard]] int print(std::string_view text, Output::Kind kind, int status = done);

}  // namespace wardchalk::console
