#include "core/practice/lines/student_working.h"

#include <utility>

#include "core/practice/lines/detail/plain_words.h"
#include "core/practice/lines/detail/proportion.h"
#include "core/practice/lines/detail/statements.h"

namespace wardchalk {

namespace {

void shift(Span& span, std::size_t by) {
  if (span.end == 0) return;  // nothing stands there
  span.begin += by;
  span.end += by;
}

void shift(StudentLine& line, std::size_t by) {
  for (LineSide& side : line.sides) {
    shift(side.at, by);
    for (FactorPlace& place : side.places) {
      shift(place.over, by);
      shift(place.under, by);
    }
  }
  for (LineLink& link : line.links) shift(link.at, by);
  for (LineRemark& remark : line.remarks) shift(remark.at, by);
}

ReadLine shifted(ReadLine read, std::size_t by) {
  if (auto* line = std::get_if<StudentLine>(&read))
    shift(*line, by);
  else
    shift(std::get<LineFault>(read).at, by);
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
  for (auto line = lines.rbegin(); line != lines.rend(); ++line)
    for (auto side = line->sides.rbegin(); side != line->sides.rend(); ++side)
      if (!side->isAmount && !side->isParts) return &*side;
  return nullptr;
}

ReadWorking readStudentWorking(std::string_view text, Gram gramMeant) {
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

}  // namespace wardchalk
