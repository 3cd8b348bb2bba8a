// What holds of every line: it is answered whatever its bytes, what is written is what is read, and a place
// lies in the line.
#include <algorithm>
#include <array>

#include "core/practice/lines/student_line.h"
#include "tests/core/practice/lines/described_line.h"
#include "tests/property/for_all.h"

namespace wardchalk::test::line_properties_test {

namespace {

/// A drawn expression with the value worked out beside it, by no code of the reader.
struct Drawn {
  std::string text;
  Number value;
};

Drawn drawnNumber(Choices& choices) {
  const int digits = choices.between(1, 9999);
  const int decimals = choices.between(0, 3);
  return {decimal(digits, decimals), Number::ratio(digits, 1) / Number::powerOfTen(decimals)};
}

Drawn drawn(Choices& choices, int depth);

Drawn inParentheses(Choices& choices, int depth) {
  Drawn inside = drawn(choices, depth);
  return {"(" + inside.text + ")", inside.value};
}

/// A number, a parenthesis, or the root of a square.
Drawn drawnPart(Choices& choices, int depth) {
  const auto kind = depth == 0 ? 0 : choices.below(4);
  if (kind == 1) return inParentheses(choices, depth - 1);
  if (kind == 2) {
    const Drawn one = inParentheses(choices, depth - 1);
    if (one.value.endsWithin(9)) return {"√(" + one.text + " × " + one.text + ")", one.value};
    return one;
  }
  return drawnNumber(choices);
}

/// Factors with × and ÷ between them, from left to right.
Drawn drawnProduct(Choices& choices, int depth) {
  Drawn product = drawnPart(choices, depth);
  for (int i = choices.between(0, 3); i > 0; --i) {
    const Drawn next = drawnPart(choices, depth);
    const bool divide = choices.onceIn(2) && !next.value.isZero();
    product.text +=
        std::string(divide ? choices.of({" ÷ ", "÷"}) : choices.of({" × ", " * ", " · ", "×", " x "}));
    product.text += next.text;
    product.value = divide ? product.value / next.value : product.value * next.value;
  }
  return product;
}

/// Products with + and −; never below zero, which is refused.
Drawn drawn(Choices& choices, int depth) {
  Drawn sum = drawnProduct(choices, depth);
  for (int i = choices.between(0, 2); i > 0; --i) {
    const Drawn next = drawnProduct(choices, depth);
    const bool minus = choices.onceIn(2) && sum.value >= next.value;
    sum.text += std::string(minus ? choices.of({" − ", " - ", "−"}) : choices.of({" + ", "+"})) + next.text;
    sum.value = minus ? sum.value - next.value : sum.value + next.value;
  }
  return sum;
}

TEST(LineProperties, aSumIsReadAsItIsWorkedOut) {
  int read = 0;
  forAll(3000, [&read](Choices& choices) -> std::string {
    const Drawn expected = drawn(choices, 3);
    if (expected.text.size() > longestLine) return {};
    const ReadLine line = readStudentLine(expected.text);
    const auto* found = std::get_if<StudentLine>(&line);
    if (!found) return expected.text + ": " + describe(line, expected.text);
    ++read;
    const LineSide& side = found->sides.front();
    if (!side.exact) return expected.text + ": a root of a square was cut";
    return side.value == expected.value ? "" : expected.text + ": " + side.value.rationalText();
  });
  EXPECT_GT(read, 2000);
}

constexpr std::array usedUnits = {Unit::mg,   Unit::mL,  Unit::kg, Unit::m2,
                                  Unit::dose, Unit::day, Unit::h,  Unit::mcg};

/// Amounts multiplied and divided: units and numbers are counted here by adding and taking away.
TEST(LineProperties, whatIsLeftIsWhatWasWritten) {
  forAll(3000, [](Choices& choices) -> std::string {
    std::string text;
    Number value(1);
    std::array<int, usedUnits.size()> balance{};
    for (int i = choices.between(1, 6); i > 0; --i) {
      const bool divide = !text.empty() && choices.onceIn(2);
      text += text.empty() ? "" : divide ? " ÷ " : " × ";
      const Drawn number = drawnNumber(choices);
      value = divide ? value / number.value : value * number.value;
      text += number.text;
      const auto use = [&](std::string_view before, int sign) {
        const auto which = choices.below(usedUnits.size());
        balance[which] += divide ? -sign : sign;
        text.append(before).append(idOf(usedUnits[which]));
      };
      use(choices.of({" ", ""}), 1);
      for (int below = choices.between(0, 2); below > 0; --below) use(choices.of({"/", " / ", " per "}), -1);
    }
    const ReadLine line = readStudentLine(text);
    const auto* found = std::get_if<StudentLine>(&line);
    if (!found) return text + ": " + describe(line, text);
    const LineSide& side = found->sides.front();
    if (side.value != value) return text + ": " + side.value.rationalText();
    Units left;
    for (std::size_t i = 0; i < usedUnits.size(); ++i)
      for (int n = 0; n < std::abs(balance[i]); ++n)
        (balance[i] > 0 ? left.over : left.under).push_back(usedUnits[i]);
    if (!sameUnits(side.units, left)) return text + ": " + describe(side);
    return side.written == UnitsWritten::all ? "" : text + ": not all units seen";
  });
}

/// What is wrong with the places in what was read, if anything.
std::string wrongPlaces(const ReadLine& read, std::size_t size) {
  const auto lies = [size](const Span& at) { return at.begin <= at.end && at.end <= size; };
  if (const auto* fault = std::get_if<LineFault>(&read))
    return lies(fault->at) ? "" : "a fault outside the line";
  const auto& line = std::get<StudentLine>(read);
  if (line.sides.empty() || line.links.size() + 1 != line.sides.size())
    return "sides and links do not go together";
  for (const LineSide& side : line.sides) {
    if (!lies(side.at) || side.at.begin == side.at.end) return "a side outside the line";
    if (side.places.size() != side.chain.factors.size()) return "a factor without its place";
    for (const FactorPlace& place : side.places)
      if (!lies(place.over) || !lies(place.under)) return "a factor outside the line";
    if (cancel(side.chain) != side.product) return "another product";
    if (side.value.isNegative()) return "below zero";
  }
  for (const LineRemark& remark : line.remarks)
    if (!lies(remark.at) || remark.at.begin == remark.at.end) return "a remark outside the line";
  return {};
}

TEST(LineProperties, anyBytesAreAnswered) {
  forAll(5000, [](Choices& choices) -> std::string {
    std::string text;
    for (int i = choices.between(0, 60); i > 0; --i) text.push_back(static_cast<char>(choices.below(256)));
    return wrongPlaces(readStudentLine(text), text.size());
  });
}

TEST(LineProperties, anyPiecesAreAnswered) {
  int read = 0;
  forAll(20000, [&read](Choices& choices) -> std::string {
    std::string text;
    for (int i = choices.between(1, 14); i > 0; --i)
      text += choices.of({"5",    "0.70", ".6",   "1,000", "1/2", "½",  "mg", "mL", "m²", "kg", "g",
                          "dose", "/",    "×",    "÷",     "+",   "−",  "√",  "(",  ")",  "=",  "≈",
                          "≤",    "per",  "sqrt", " ",     " ",   " ",  "in", "oz", "lb", "x",  "·",
                          "^2",   ".",    ",",    "0",     "hr",  "µg", "%",  ":",  "BSA"});
    const ReadLine line = readStudentLine(text);
    read += std::holds_alternative<StudentLine>(line) ? 1 : 0;
    const std::string wrong = wrongPlaces(line, text.size());
    return wrong.empty() ? "" : text + ": " + wrong;
  });
  EXPECT_GT(read, 200);  // it has not only seen faults
}

/// A line is bounded, so that the longest ones are answered as well: deep, wide, of many factors, units,
/// sides.
TEST(LineProperties, theLongestLinesAreAnswered) {
  for (const std::string piece :
       {"(",     "√",        "5×",    "5 mg×", "5/",  "5÷",     "5+", "5-",  "5=",
        "5 mg/", "mg·",      "5 lb ", "1",     "(5)", "√5×",    "√(", "(5+", "(1/",
        "5 g=",  ")",        "/",     "=",     " ",   "1,000,", "0.", "m²·", "999999999 mg×",
        "√(2)×", "2 1/2 mL+"}) {
    std::string text;
    while (text.size() + piece.size() + 1 <= longestLine) text += piece;
    text += "5";
    const ReadLine line = readStudentLine(text);
    EXPECT_EQ(wrongPlaces(line, text.size()), "") << piece;
  }
}

}  // namespace

}  // namespace wardchalk::test::line_properties_test
