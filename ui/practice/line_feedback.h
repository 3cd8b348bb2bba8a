#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "core/practice/sessions/session.h"
#include "ui/working/step_view.h"

namespace wardchalk::ui {

/// One rung of a hint as it is shown.
struct ShownRung {
  QString title;  ///< "1 Where to look"; without a number where the worked line stands alone
  QString text;
  std::optional<StepView> picture;  ///< of the worked line, where it is a chain: the same thing to look at
};

/// What is said beneath a line. Right things first, and no number of the problem before the last rung.
struct LineFeedback {
  std::optional<Mark> mark;  ///< none: not looked at yet
  QString word;              ///< "right", "not yet", "one of these"
  QStringList said;          ///< what is right, why it cannot be read, what is better written otherwise
  std::vector<ShownRung> rungs;
  QString next;                 ///< of the button: "Hint 2 of 4: a question"; empty where there is none
  std::optional<Span> pointed;  ///< the bytes of the text that it is about

  /// All of it in one piece, to be read aloud.
  [[nodiscard]] QString spoken() const;
  /// The rung that came last alone, for who has heard the rest; empty where there is none.
  [[nodiscard]] QString spokenRung() const;
};

/// What is said beside a mark: with help, a unit that is missing and a rounding are asked about at once, and
/// hints are offered.
enum class Help : std::uint8_t { given, none };

/// Of the line at this place of a problem. Once it is handed in, mistakes are named and the worked line
/// stands there.
[[nodiscard]] LineFeedback lineFeedback(const PracticeProblem& problem, std::size_t line,
                                        Help help = Help::given);

/// Where bytes of a UTF-8 text stand in the same text as the screen has it.
struct TextRange {
  int begin = 0;
  int length = 0;
};
[[nodiscard]] TextRange rangeOf(const Span& span, const std::string& text);

}  // namespace wardchalk::ui
