#pragma once

#include <string_view>
#include <variant>
#include <vector>

#include "core/practice/lines/student_line.h"

namespace wardchalk {

// What a student wrote for one answer: one line of working or several, of which the last holds the answer.
//
//   working   = statement { (";" | line break | ", x =") statement }
//   statement = line | proportion | words around a line | heading ":" line
//
// A line break before or after a sign goes on with the statement ("600 mg × 1 tablet", "÷ 200 mg = 3
// tablets"). A proportion has one unknown, x: "80 mg : x mL = 25 mg : 1 mL", "80 mg/x mL = 25 mg/1 mL", also
// with "::". Words that say nothing of the sum are left out ("Give 9.2 mL IV", "not more than 40 mg q8h", "of
// Teal"), and numbers in words are read ("one and a half tablets").
//
// Where that cannot be read, or ends in no answer, it is read as talk: words before the first number and
// behind the last unit are passed over, words that join become signs ("gives", "comes to", "from", "so"), the
// answer may stand first ("4 mL (2 × 2 mL)"), and what tries it ("check: …") is left out. A word that denies
// or doubts anywhere stops that, so that "do not give 4 mL" is never read as 4 mL.

/// A working that was read. Places are those in the whole text.
struct StudentWorking {
  std::vector<StudentLine> lines;  ///< at least one; the last holds the answer
  std::vector<LineFault>
      passedOver;  ///< of statements before the last that could not be read: they cost nothing

  [[nodiscard]] const StudentLine& answerLine() const { return lines.back(); }
  /// The last side that was worked out, in whichever line; null if the working is an answer alone.
  [[nodiscard]] const LineSide* workedSide() const;
};

using ReadWorking = std::variant<StudentWorking, LineFault>;

/// Reads all that was written for one answer (UTF-8; any bytes are answered), or says why its last statement
/// cannot be read.
[[nodiscard]] ReadWorking readStudentWorking(std::string_view text, Gram gramMeant = Gram::medicine);

}  // namespace wardchalk
