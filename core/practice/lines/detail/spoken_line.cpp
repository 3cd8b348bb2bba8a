#include "core/practice/lines/detail/spoken_line.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "core/number/ascii.h"
#include "core/practice/lines/detail/said_words.h"
#include "core/practice/lines/detail/statements.h"
#include "core/practice/lines/detail/surroundings.h"

namespace wardchalk::practice {

namespace {

constexpr auto nowhere = std::string_view::npos;

std::size_t passSpaces(std::string_view text, std::size_t at) {
  while (at < text.size() && text[at] == ' ') ++at;
  return at;
}

/// A number with its unit, and nothing to be worked out.
bool isValue(std::string_view text) {
  return hasNumber(text) && !hasOperator(text) && text.find('=') == nowhere;
}

/// A sign that goes on from the value before it: "÷ 2.2", "x 60"; a root only where it has no number of its
/// own.
bool beginsWithOperator(std::string_view text) {
  const auto next = [&](std::size_t length) {
    const std::size_t at = passSpaces(text, length);
    return at < text.size() ? text[at] : ' ';
  };
  for (const std::string_view root : {"√", "sqrt", "square root", "root"})
    if (text.starts_with(root)) return next(root.size()) == '=';
  if (text.starts_with("x ")) return isDigit(next(1));
  static constexpr auto operators = std::to_array<std::string_view>({"×", "÷", "*", "/"});
  return std::ranges::any_of(operators, [&](std::string_view sign) { return text.starts_with(sign); });
}

/// "120 mg : 5 mL = 80 mg : x mL": its colons are no headings.
bool hasUnknown(std::string_view text) {
  for (std::size_t at = 0; at < text.size(); ++at) {
    const bool alone = lowered(text[at]) == 'x' && (at == 0 || !isLetter(text[at - 1])) &&
                       (at + 1 == text.size() || !isLetter(text[at + 1]));
    if (!alone) continue;
    const std::size_t before = text.substr(0, at).find_last_not_of(' ');
    if (before == nowhere || text[before] == '=' || text[before] == ':' || text[before] == '/') return true;
  }
  return false;
}

/// "root of 93 × 13.8 over 3600": the root of all that stands behind, up to a result. `length` are the words.
void rootWhole(std::string& text, std::size_t at, std::size_t length) {
  const std::size_t end = std::min(text.find('=', at), text.size());
  const std::string_view under = std::string_view(text).substr(at + length, end - at - length);
  const std::size_t last = under.find_last_not_of(' ');
  const std::size_t first = under.find_first_not_of(' ');
  // what stands in brackets says itself how far it goes
  const bool whole =
      last != nowhere && under[first] != '(' && hasOperator(under) && under.find(',') == nowhere;
  const std::string_view sign = whole ? "√(" : "√";
  for (std::size_t i = 0; i < length; ++i) text[at + i] = i < sign.size() ? sign[i] : ' ';
  if (whole) text.insert(at + length + last + 1, ")");
}

/// Whether words stand here, in small letters, that ask for a root; how long they are, else 0.
std::size_t rootWords(std::string_view small) {
  const auto joining = joiningAt(small);
  return joining && joining->joint == Joint::root ? joining->words.size() : 0;
}

/// A "rest" of a division that is done by parts.
bool isByParts(std::string_view text) {
  const std::string small = lowered(text);
  for (const std::string_view word : {"rest ", "remainder "}) {
    const std::size_t at = small.find(word);
    if (at != nowhere && at + word.size() < small.size() && isDigit(small[at + word.size()])) return true;
  }
  return false;
}

/// "(checked)", "(sorry, messy)": blanks words in brackets without a figure.
void blankComments(std::string& text) {
  for (std::size_t open = text.find('('); open != nowhere; open = text.find('(', open + 1)) {
    const std::size_t close = text.find_first_of("()", open + 1);
    if (close == nowhere || text[close] == '(') continue;
    const std::string_view inside = std::string_view(text).substr(open + 1, close - open - 1);
    if (!hasNumber(inside) && hasTalk(inside)) text.replace(open, close + 1 - open, close + 1 - open, ' ');
  }
}

/// Cuts off what is said behind the last dash: "5 mL - done".
void endAtDash(std::string& text) {
  const std::size_t dash = text.rfind(" - ");
  if (dash == std::string::npos) return;
  const std::string_view behind = std::string_view(text).substr(dash);
  if (!hasNumber(behind) && hasTalk(behind)) text.resize(dash);
}

/// Blanks what is said behind the last parenthesis: ") - done".
void blankBehindBracket(std::string& text) {
  const std::size_t close = text.rfind(')');
  if (close == nowhere) return;
  const std::size_t behind = passSpaces(text, close + 1);
  const bool told =
      behind < text.size() && (text[behind] == '-' || text[behind] == ',' || text[behind] == '!');
  if (told && !hasNumber(std::string_view(text).substr(behind)))
    text.replace(behind, text.size() - behind, text.size() - behind, ' ');
}

/// Cuts one statement; places are those in it.
class Cutter {
 public:
  explicit Cutter(std::string_view statement) : text_(statement) {
    blankComments(text_);
    blankBehindBracket(text_);
    endAtDash(text_);
    while (text_.ends_with(' ')) text_.pop_back();
    small_ = lowered(text_);
    unknown_ = hasUnknown(text_);
  }

  std::vector<SpokenPiece> run() {
    const std::optional<Span> bracket = closingBracket();
    std::string inside = bracket ? text_.substr(bracket->begin, bracket->end - bracket->begin) : "";
    if (bracket) text_.resize(bracket->begin - 1);
    while (at_ < text_.size()) step();
    close(text_.size());
    const auto joining = joiningAt(lowered(inside));
    const bool tries = joining && joining->joint == Joint::check;
    if (const std::size_t length = rootWords(lowered(inside)); length > 0) rootWhole(inside, 0, length);
    if (bracket && !tries && hasOperator(inside) && !pieces_.empty())
      pieces_.insert(pieces_.end() - 1, {*bracket, inside, false, true});
    turnAround();
    return std::move(pieces_);
  }

 private:
  [[nodiscard]] std::string_view left() const { return std::string_view(text_).substr(begin_, at_ - begin_); }
  [[nodiscard]] std::string_view from(std::size_t at) const {
    return at < text_.size() ? std::string_view(text_).substr(at) : std::string_view();
  }

  /// What stands between the parentheses that end the statement behind a value: "4 mL (2 × 2 mL)".
  [[nodiscard]] std::optional<Span> closingBracket() const {
    if (!text_.ends_with(')')) return std::nullopt;
    std::size_t open = text_.size();
    for (int depth = 0; open > 0;) {
      --open;
      if (text_[open] == ')') ++depth;
      if (text_[open] == '(' && --depth == 0) break;
    }
    const std::string_view before = std::string_view(text_).substr(0, open);
    const std::size_t last = before.find_last_not_of(' ');
    if (last == nowhere || text_[open] != '(') return std::nullopt;
    const bool behindValue =
        isLetter(before[last]) || isDigit(before[last]) || before.substr(0, last + 1).ends_with("²");
    const std::string_view inside = from(open + 1).substr(0, text_.size() - open - 2);
    if (!behindValue || before.ends_with("sqrt") || !hasNumber(before) || !hasNumber(inside))
      return std::nullopt;
    if (hasOperator(inside) ? !isValue(before) : !(hasTalk(inside) || inside.find(" in ") != nowhere))
      return std::nullopt;
    return Span{open + 1, text_.size() - 1};
  }

  void step() {
    const bool wordBegins = isLetter(text_[at_]) && (at_ == 0 || !isLetter(text_[at_ - 1]));
    const auto joining = wordBegins ? joiningAt(std::string_view(small_).substr(at_)) : std::nullopt;
    if (joining)
      join(*joining);
    else if (!cutAtComma() && !cutAtColon() && !cutAtUnknown() && !cutAtRoot() && !endAtAside())
      ++at_;
  }

  void write(std::size_t length, std::string_view sign = {}) {
    for (std::size_t i = 0; i < length; ++i) text_[at_ + i] = i < sign.size() ? sign[i] : ' ';
    at_ += length;
  }

  void blankComma() {
    const std::size_t last = left().find_last_not_of(' ');
    if (last != nowhere && text_[begin_ + last] == ',') text_[begin_ + last] = ' ';
  }

  void join(const Joining& joining) {
    const std::size_t length = joining.words.size();
    const bool between =
        hasNumber(left()) && (hasNumber(from(at_ + length)) || joining.joint == Joint::check);
    if (joining.joint == Joint::root) {
      joinRoot(length);
    } else if (joining.joint == Joint::divide) {
      blankComma();
      write(length, "÷");
    } else if (!between) {
      write(hasNumber(left()) ? 0 : length);  // behind the last number it is a word like others
      if (hasNumber(left())) ++at_;
    } else if (joining.joint == Joint::result) {
      blankComma();
      write(length, "=");
    } else if (joining.joint == Joint::check) {
      text_.resize(at_);
    } else {
      cut(length);
      fromCause_ = joining.joint == Joint::cause;
    }
  }

  /// "… and the root of 0.563": another statement, if something stands before it.
  void joinRoot(std::size_t length) {
    const std::string_view before = left().substr(0, left().find_last_not_of(' ') + 1);
    if (before.ends_with("and")) {
      const std::size_t root = at_;
      at_ = begin_ + before.size() - 3;
      cut(3);
      at_ = root;
    }
    rootWhole(text_, at_, length);
    small_ = lowered(text_);
    at_ += length;
  }

  /// "= 0.5148 √ = 0.72 m²": the root of the value before it.
  bool cutAtRoot() {
    static constexpr std::string_view sign = "√";
    const std::size_t next = passSpaces(text_, at_ + sign.size());
    if (!from(at_).starts_with(sign) || !hasNumber(left()) || next >= text_.size() || text_[next] != '=')
      return false;
    cut(0);
    return true;
  }

  /// Ends a piece here, and passes over what joins it to the next.
  void cut(std::size_t length) {
    blankComma();
    close(at_);
    at_ += length;
    begin_ = at_;
  }

  void close(std::size_t end) {
    end = std::min(end, text_.size());
    const std::string piece = end > begin_ ? text_.substr(begin_, end - begin_) : "";
    const bool sum = std::exchange(fromCause_, false);
    if (!hasNumber(piece)) return;
    const bool continues = beginsWithOperator(std::string_view(piece).substr(passSpaces(piece, 0)));
    const SpokenPiece made{{begin_, end}, piece, continues, sum};
    if (!sum)
      pieces_.push_back(made);
    else if (hasOperator(piece) && !pieces_.empty())
      pieces_.insert(pieces_.end() - 1, made);
  }

  /// "1 mg is 0.008 mL, 500 mg is 4 mL": one equation behind another.
  [[nodiscard]] bool beginsEquation(std::size_t next) const {
    const std::string_view behind = from(next);
    const bool equation = behind.find('=') != nowhere || behind.find(" is ") != nowhere;
    return next > at_ + 1 && !behind.empty() && isDigit(behind[0]) && equation && left().find('=') != nowhere;
  }

  /// ", ÷ 2.2 = 21.73 kg".
  bool cutAtComma() {
    if (text_[at_] != ',' || !hasNumber(left())) return false;
    const std::size_t next = passSpaces(text_, at_ + 1);
    if (!beginsWithOperator(from(next)) && !beginsEquation(next)) return false;
    cut(1);
    return true;
  }

  /// "move the point 3 places: 10860 g".
  bool cutAtColon() {
    const bool heading = text_[at_] == ':' && at_ > begin_ && text_[at_ - 1] != ' ' &&
                         at_ + 1 < text_.size() && text_[at_ + 1] == ' ' && hasNumber(from(at_));
    if (!heading || unknown_) return false;
    cut(1);
    return true;
  }

  /// "= x = 4 mL", where a proportion is solved.
  bool cutAtUnknown() {
    if (text_[at_] != '=') return false;
    const std::size_t x = passSpaces(text_, at_ + 1);
    if (x >= text_.size() || small_[x] != 'x') return false;
    const std::size_t sign = passSpaces(text_, x + 1);
    if (sign >= text_.size() || text_[sign] != '=') return false;
    cut(sign + 1 - at_);
    return true;
  }

  /// "37.83 mL/h - 45.4 mg/h at 1.2 mg/mL", "7.6 mL for the 475 units dose": what is told beside a value.
  bool endAtAside() {
    const std::string_view here = std::string_view(small_).substr(at_);
    const std::size_t length = here.starts_with(" - ") ? 3 : here.starts_with(" for ") ? 5 : 0;
    const std::string_view told = from(at_ + length);
    if (length == 0 || !hasNumber(left()) || hasOperator(left()) || !isValue(told)) return false;
    const std::size_t first = told.find_first_not_of(' ');
    if (!hasTalk(told.substr(first))) return false;
    text_.resize(at_);
    return true;
  }

  /// "4 mL = 2 × 2 mL" as the last piece: the sum goes before its answer.
  void turnAround() {
    if (pieces_.empty()) return;
    const SpokenPiece last = pieces_.back();
    const std::size_t sign = last.text.find('=');
    if (sign == nowhere || last.text.find('=', sign + 1) != nowhere) return;
    const std::string value = last.text.substr(0, sign);
    const std::string sum = last.text.substr(sign + 1);
    if (!isValue(value) || !hasOperator(sum)) return;
    const std::size_t middle = last.at.begin + sign;
    pieces_.back() = {{middle + 1, last.at.end}, sum, false, true};
    pieces_.push_back({{last.at.begin, middle}, value, false, true});
  }

  std::string text_;
  std::string small_;
  bool unknown_ = false;
  bool fromCause_ = false;
  std::size_t at_ = 0;
  std::size_t begin_ = 0;
  std::vector<SpokenPiece> pieces_;
};

/// The sum of a division by parts, and its answer.
void keepEnds(std::vector<SpokenPiece>& pieces) {
  const auto sum =
      std::ranges::find_if(pieces, [](const SpokenPiece& piece) { return hasOperator(piece.text); });
  if (sum == pieces.end() || sum + 1 == pieces.end()) return;
  pieces = {*sum, pieces.back()};
}

}  // namespace

std::vector<SpokenPiece> spokenPieces(std::string_view text) {
  std::vector<SpokenPiece> pieces;
  for (const Span at : statementsOf(text)) {
    for (SpokenPiece& piece : Cutter(text.substr(at.begin, at.end - at.begin)).run()) {
      piece.at = {piece.at.begin + at.begin, piece.at.end + at.begin};
      pieces.push_back(std::move(piece));
    }
  }
  if (isByParts(text)) keepEnds(pieces);
  if (!pieces.empty()) pieces.back().needed = true;
  return pieces;
}

bool isTalkedThrough(std::string_view text) {
  if (isByParts(text)) return true;
  const std::string small = lowered(text);
  for (std::size_t at = small.find("check"); at != std::string::npos; at = small.find("check", at + 1))
    if (hasNumber(std::string_view(small).substr(0, at)) && hasOperator(std::string_view(small).substr(at)))
      return true;
  return false;
}

}  // namespace wardchalk::practice
