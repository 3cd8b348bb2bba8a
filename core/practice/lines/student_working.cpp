#include "core/practice/lines/student_working.h"

#include <optional>
#include <string>
#include <utility>

#include "core/practice/lines/answer_value.h"
#include "core/practice/lines/detail/places.h"
#include "core/practice/lines/detail/plain_words.h"
#include "core/practice/lines/detail/proportion.h"
#include "core/practice/lines/detail/spoken_line.h"
#include "core/practice/lines/detail/statements.h"
#include "core/practice/lines/detail/surroundings.h"

namespace wardchalk {

namespace {

void shiftFault(LineFault& fault, std::size_t by) {
  if (fault.at.end == 0) return;  // nothing stands there
  fault.at = {fault.at.begin + by, fault.at.end + by};
}

ReadLine shifted(ReadLine read, std::size_t by) {
  if (auto* line = std::get_if<StudentLine>(&read))
    practice::shiftPlaces(*line, by);
  else
    shiftFault(std::get<LineFault>(read), by);
  return read;
}

bool isRead(const ReadLine& read) { return std::holds_alternative<StudentLine>(read); }

/// As it stands; else as a proportion, without its words, or without what stands before a colon. What is
/// wrong with it as it stands is told where none of them can be read.
ReadLine readStatement(std::string_view text, Gram gram) {
  ReadLine direct = readStudentLine(text, gram);
  if (isRead(direct)) return direct;
  if (auto line = practice::readProportion(text, gram)) return *std::move(line);
  const std::string plain = practice::withoutWords(text);
  if (plain != text) {
    ReadLine read = readStudentLine(plain, gram);
    if (isRead(read)) return read;
  }
  if (const std::size_t begin = practice::headingEnd(text); begin > 0) {
    ReadLine read = shifted(readStudentLine(text.substr(begin), gram), begin);
    if (isRead(read)) return read;
  }
  return direct;
}

}  // namespace

const LineSide* StudentWorking::workedSide() const {
  for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
    const bool states = line->sides.size() == 1 && line != lines.rbegin() && answerOf(*line).isAmount;
    if (states) continue;  // "200 mg in 1 mL" is no sum
    for (auto side = line->sides.rbegin(); side != line->sides.rend(); ++side)
      if (!side->isAmount && !side->isParts) return &*side;
  }
  return nullptr;
}

namespace {

/// Every statement as it stands.
ReadWorking readAsWritten(std::string_view text, Gram gramMeant) {
  ReadLine whole = readStudentLine(text, gramMeant);
  if (auto* line = std::get_if<StudentLine>(&whole)) return StudentWorking{{std::move(*line)}, {}};
  const std::vector<Span> statements = practice::statementsOf(text);
  StudentWorking working;
  for (std::size_t i = 0; i < statements.size(); ++i) {
    const Span at = statements[i];
    ReadLine read = shifted(readStatement(text.substr(at.begin, at.end - at.begin), gramMeant), at.begin);
    if (auto* line = std::get_if<StudentLine>(&read))
      working.lines.push_back(std::move(*line));
    else if (i + 1 == statements.size())
      return std::get<LineFault>(std::move(read));
    else
      working.passedOver.push_back(std::get<LineFault>(std::move(read)));
  }
  if (working.lines.empty()) return std::get<LineFault>(whole);
  return working;
}

/// What the last line ends in, as it is written: "86 mcg/min".
std::string lastValue(const practice::SpokenPiece& piece) {
  return piece.text.substr(piece.text.find_last_of('=') + 1);
}

/// A piece that goes on from the value before it: "÷ 4 mg/mL = 1.29 mL/h", "√ = 0.79 m²".
ReadLine readContinued(const practice::SpokenPiece& before, const practice::SpokenPiece& piece, Gram gram) {
  const std::string value = lastValue(before);
  const std::size_t sign = piece.text.find_first_not_of(' ');
  const std::string_view here = std::string_view(piece.text).substr(sign);
  const bool root = here.starts_with("√") || here.starts_with("sqrt") || here.starts_with("square root") ||
                    here.starts_with("root");
  const std::size_t result = piece.text.find('=');
  const std::string behind = result == std::string::npos ? "" : piece.text.substr(result);
  ReadLine read = readStudentLine(root ? "√(" + value + ") " + behind : value + " " + piece.text, gram);
  if (auto* line = std::get_if<StudentLine>(&read)) practice::standAt(*line, {0, piece.text.size()});
  return read;
}

ReadLine readPiece(const practice::SpokenPiece& piece, Gram gram) {
  const std::string bare = practice::withoutSurroundings(piece.text);
  ReadLine read = readStudentLine(bare, gram);
  if (isRead(read)) return read;
  if (auto line = practice::readProportion(piece.text, gram)) return *std::move(line);
  ReadLine plain = readStudentLine(practice::withoutWords(bare), gram);
  return isRead(plain) ? plain : read;
}

/// What is said aloud, part by part; none where one that is needed cannot be read, or a word changes what is
/// said.
std::optional<StudentWorking> readSpoken(std::string_view text, Gram gram) {
  const std::string plain = practice::withPlainSigns(text);
  if (practice::saysOtherwise(plain)) return std::nullopt;
  const std::vector<practice::SpokenPiece> pieces = practice::spokenPieces(plain);
  StudentWorking working;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const practice::SpokenPiece& piece = pieces[i];
    const bool goesOn = piece.continues && i > 0;
    ReadLine read =
        shifted(goesOn ? readContinued(pieces[i - 1], piece, gram) : readPiece(piece, gram), piece.at.begin);
    if (auto* line = std::get_if<StudentLine>(&read))
      working.lines.push_back(std::move(*line));
    else if (piece.needed)
      return std::nullopt;
    else
      working.passedOver.push_back(std::get<LineFault>(std::move(read)));
  }
  if (working.lines.empty()) return std::nullopt;
  return working;
}

/// Whether it can be read and ends in an answer.
bool hasAnswer(const ReadWorking& read) {
  const auto* working = std::get_if<StudentWorking>(&read);
  if (!working) return false;
  const StudentLine& line = working->answerLine();
  return answerOf(line).isAmount || line.sides.back().isParts;
}

/// A fraction drawn over three lines, "68 mmol" over "------- = 136 mL" over "0.5 mmol/mL", in one.
std::string unstacked(std::string_view text) {
  const std::size_t first = text.find('\n');
  const std::size_t second = first == std::string_view::npos ? first : text.find('\n', first + 1);
  if (second == std::string_view::npos || text.find('\n', second + 1) != std::string_view::npos) return {};
  const std::string_view middle = text.substr(first + 1, second - first - 1);
  const std::size_t bar = middle.find_first_not_of(' ');
  const std::size_t behind = std::min(middle.find_first_not_of("-_", bar), middle.size());
  constexpr std::size_t shortest = 3;
  if (bar == std::string_view::npos || behind - bar < shortest) return {};
  return "(" + std::string(text.substr(0, first)) + ") / (" + std::string(text.substr(second + 1)) + ") " +
         std::string(middle.substr(behind));
}

std::optional<StudentWorking> readStacked(std::string_view text, Gram gram) {
  const std::string line = unstacked(text);
  if (line.empty()) return std::nullopt;
  ReadLine read = readStudentLine(line, gram);
  auto* whole = std::get_if<StudentLine>(&read);
  if (!whole) return std::nullopt;
  practice::standAt(*whole, {0, text.size()});
  return StudentWorking{{std::move(*whole)}, {}};
}

/// An answer with its working on the line below: "996 mcg", "15 × 66.4".
void turnAround(ReadWorking& read) {
  auto* working = std::get_if<StudentWorking>(&read);
  if (!working || working->lines.size() != 2) return;
  const std::vector<LineSide>& first = working->lines[0].sides;
  const std::vector<LineSide>& last = working->lines[1].sides;
  const bool stated = first.size() == 1 && first.front().isAmount;
  if (stated && last.size() == 1 && !last.front().isAmount && !last.front().isParts)
    std::swap(working->lines[0], working->lines[1]);
}

}  // namespace

ReadWorking readStudentWorking(std::string_view text, Gram gramMeant) {
  if (auto stacked = readStacked(text, gramMeant)) return *std::move(stacked);
  ReadWorking written = readAsWritten(text, gramMeant);
  turnAround(written);
  if (text.size() > longestLine) return written;  // nobody talks for so long
  if (hasAnswer(written) && !practice::isTalkedThrough(text)) return written;
  auto spoken = readSpoken(text, gramMeant);
  if (!spoken || !hasAnswer(*spoken)) return written;
  return *std::move(spoken);
}

}  // namespace wardchalk
