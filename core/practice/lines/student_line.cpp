#include "core/practice/lines/student_line.h"

#include <algorithm>
#include <utility>

#include "core/practice/lines/detail/line_links.h"
#include "core/practice/lines/detail/line_parser.h"
#include "core/practice/lines/detail/line_tokens.h"

namespace wardchalk {

namespace {

using practice::ParsedLine;
using practice::Part;
using practice::Slashes;
using practice::Token;
using practice::TokenKind;
using practice::Tokens;

UnitsWritten writtenIn(const Part& part) {
  if (part.named == 0) return UnitsWritten::none;
  return part.bare == 0 ? UnitsWritten::all : UnitsWritten::partly;
}

LineSide sideOf(Part part) {
  practice::Worth worth = practice::worthOf(part);
  LineSide side;
  side.at = part.at;
  side.value = std::move(worth.value);
  side.exact = worth.exact;
  side.units = std::move(worth.units);
  side.written = writtenIn(part);
  side.unitsOpen = worth.open;
  side.product = std::move(worth.product);
  side.isSum = part.isSum;
  side.isAmount = part.isAmount;
  side.isParts = part.isParts;
  side.typed = std::move(part.typed);
  side.rootDecimals = part.rootDecimals;
  side.decimals = part.decimals;
  side.chain = std::move(part.chain);
  side.places = std::move(part.places);
  return side;
}

bool isGram(const Token& token) {
  return token.kind == TokenKind::unit && !token.units.empty() && token.units.front() == Unit::g;
}

/// The pieces with every gram taken for the child's.
std::vector<Token> withBodyGrams(std::vector<Token> list) {
  for (Token& token : list)
    if (isGram(token)) std::fill(token.units.begin(), token.units.end(), Unit::bodyG);
  return list;
}

/// Remarks by their places. What is to be written for ".60" has neither mistake.
std::vector<LineRemark> inOrder(std::vector<LineRemark> remarks) {
  std::stable_sort(remarks.begin(), remarks.end(),
                   [](const LineRemark& a, const LineRemark& b) { return a.at.begin < b.at.begin; });
  for (std::size_t i = 1; i < remarks.size(); ++i)
    if (remarks[i].at == remarks[i - 1].at) remarks[i - 1].instead = remarks[i].instead;
  return remarks;
}

using Parsed = std::variant<ParsedLine, LineFault>;

ReadLine lineOf(const Tokens& tokens, Parsed parsed) {
  if (auto* fault = std::get_if<LineFault>(&parsed)) return std::move(*fault);
  auto& found = std::get<ParsedLine>(parsed);
  StudentLine line;
  line.label = tokens.label;
  for (Part& part : found.sides) line.sides.push_back(sideOf(std::move(part)));
  for (std::size_t i = 0; i < found.relations.size(); ++i)
    line.links.push_back(practice::linkOf(line.sides[i], line.sides[i + 1], found.relations[i].relation,
                                          found.relations[i].at));
  std::vector<LineRemark> remarks = tokens.remarks;
  remarks.insert(remarks.end(), found.remarks.begin(), found.remarks.end());
  line.remarks = inOrder(std::move(remarks));
  return line;
}

/// Whether the line says what it comes to, and every number in it follows.
bool holds(const ReadLine& read) {
  const auto* line = std::get_if<StudentLine>(&read);
  return line && !line->links.empty() &&
         std::ranges::none_of(line->links, [](const LineLink& link) { return link.truth == Truth::wrong; });
}

/// A fraction that could be read in two ways is read from left to right where its result says that it was
/// meant so.
ReadLine readPieces(std::string_view text, const Tokens& tokens, const std::vector<Token>& list) {
  ReadLine read = lineOf(tokens, practice::parseLine(text, list, Slashes::clear));
  const auto* fault = std::get_if<LineFault>(&read);
  if (!fault || fault->code != LineFaultCode::unclearDivision) return read;
  ReadLine meant = lineOf(tokens, practice::parseLine(text, list, Slashes::leftToRight));
  return holds(meant) ? meant : read;
}

/// At how many relations the units meet; below zero when the line cannot be read so.
long fitOf(const ReadLine& read) {
  const auto* line = std::get_if<StudentLine>(&read);
  if (!line) return -1;
  long fit = 0;
  for (std::size_t i = 0; i < line->links.size(); ++i)
    if (practice::unitsMeet(line->sides[i], line->sides[i + 1]) != UnitsMeet::differ) ++fit;
  return fit;
}

ReadLine marked(ReadLine read, Gram gram, bool unsure) {
  if (auto* line = std::get_if<StudentLine>(&read)) {
    line->gram = gram;
    line->gramUnsure = unsure;
  }
  return read;
}

/// The better of the two readings of "g".
ReadLine readWithGrams(std::string_view text, const Tokens& tokens, Gram meant) {
  ReadLine medicine = readPieces(text, tokens, tokens.list);
  ReadLine child = readPieces(text, tokens, withBodyGrams(tokens.list));
  const long medicineFit = fitOf(medicine);
  const long childFit = fitOf(child);
  const bool unsure = medicineFit == childFit;
  const bool takeChild = unsure ? meant == Gram::child : childFit > medicineFit;
  return takeChild ? marked(std::move(child), Gram::child, unsure)
                   : marked(std::move(medicine), Gram::medicine, unsure);
}

}  // namespace

ReadLine readStudentLine(std::string_view text, Gram gramMeant) {
  if (text.size() > longestLine)
    return practice::faultAt(LineFaultCode::tooLong, text, {longestLine, text.size()});
  auto cut = practice::tokensOf(text);
  if (auto* fault = std::get_if<LineFault>(&cut)) return std::move(*fault);
  const auto& tokens = std::get<Tokens>(cut);
  if (tokens.list.size() == 1) {
    if (tokens.label.empty()) return practice::faultAt(LineFaultCode::empty, text, {0, 0});
    const std::size_t sign = text.find_first_of("=:");
    return practice::faultAt(LineFaultCode::sideMissing, text, {sign, sign + 1});
  }
  const bool grams = std::any_of(tokens.list.begin(), tokens.list.end(), isGram);
  if (grams) return readWithGrams(text, tokens, gramMeant);
  return readPieces(text, tokens, tokens.list);
}

bool relationHolds(const Number& left, LineRelation relation, const Number& right) {
  switch (relation) {
    case LineRelation::atMost:
      return left <= right;
    case LineRelation::atLeast:
      return left >= right;
    case LineRelation::below:
      return left < right;
    case LineRelation::above:
      return left > right;
    default:
      return left == right;
  }
}

}  // namespace wardchalk
