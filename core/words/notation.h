#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/words/step_markup.h"

namespace wardchalk {

/// Writes the parts of a formula and of a document in one notation. Every text given is plain and is escaped
/// here; every `…Markup` is already written in the notation.
class Notation {
 public:
  virtual ~Notation() = default;

  [[nodiscard]] virtual std::string words(std::string_view text) const = 0;
  [[nodiscard]] virtual std::string number(std::string_view text) const = 0;
  /// "×", "=", "≈", "≤", "≥", "→", "(", ")".
  [[nodiscard]] virtual std::string sign(std::string_view text) const = 0;
  /// A thin space, and a wide one.
  [[nodiscard]] virtual std::string space(bool wide) const = 0;
  [[nodiscard]] virtual std::string struck(std::string_view unit, std::string_view letter) const = 0;
  [[nodiscard]] virtual std::string fraction(const std::string& overMarkup,
                                             const std::string& underMarkup) const = 0;
  [[nodiscard]] virtual std::string root(const std::string& insideMarkup) const = 0;
  [[nodiscard]] virtual std::string power(const std::string& baseMarkup, std::string_view exponent) const = 0;
  /// Lines of one formula, set off from the text; `spoken` says the same in words.
  [[nodiscard]] virtual std::string display(const std::vector<std::string>& lineMarkups,
                                            std::string_view spoken) const = 0;

  /// What opens and closes a whole document.
  [[nodiscard]] virtual std::string documentHead(std::string_view title) const = 0;
  [[nodiscard]] virtual std::string documentFoot() const = 0;
  [[nodiscard]] virtual std::string heading(std::string_view text) const = 0;
  [[nodiscard]] virtual std::string paragraph(std::string_view text) const = 0;
  [[nodiscard]] virtual std::string question(std::string_view text) const = 0;
  [[nodiscard]] virtual std::string note(std::string_view text) const = 0;
  /// A step with its number, question, what is looked for, formula and reason; the last may be empty.
  [[nodiscard]] virtual std::string step(int number, std::string_view question, std::string_view lookingFor,
                                         const std::string& displayMarkup, std::string_view reason) const = 0;
};

[[nodiscard]] const Notation& notationOf(Markup markup);

}  // namespace wardchalk
