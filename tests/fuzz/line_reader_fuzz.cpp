// Any bytes as a student's line: they are answered, places lie in the line, and what was read is read again
// alike when it is written out.
#include <string>

#include "core/practice/lines/answer_value.h"
#include "core/practice/lines/chain_builder.h"
#include "core/practice/lines/practice_words.h"
#include "core/practice/lines/student_line.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

namespace {

bool lies(const Span& at, std::size_t size) { return at.begin <= at.end && at.end <= size; }

/// Whether a number stands in a line with all its digits.
bool isWrittenWhole(const Number& value) { return value.endsWithin(4) && value < Number::powerOfTen(20); }

bool isWrittenWhole(const Chain& chain) {
  for (const Factor& factor : chain.factors)
    for (const Term* term : {&factor.over, &factor.under})
      if (!isWrittenWhole(term->value) || term->units.size() > 9) return false;
  return true;
}

void readAgain(const LineSide& side, Gram gram) {
  if (!side.exact || side.unitsOpen || !isWrittenWhole(side.chain)) return;
  const std::string text = lineText(side.chain);
  if (text.size() > longestLine) return;
  const ReadLine again = readStudentLine(text, gram);
  const auto* line = std::get_if<StudentLine>(&again);
  demand(line != nullptr, "a chain that was read is read again");
  demand(line->sides.size() == 1, "a chain is one side");
  demand(line->sides.front().value == side.value, "it has the same value");
  demand(sameUnits(line->sides.front().units, side.units), "it leaves the same units");
}

void check(const LineSide& side, std::size_t size, Gram gram) {
  demand(lies(side.at, size), "a side lies in the line");
  demand(side.places.size() == side.chain.factors.size(), "every factor has its place");
  for (const FactorPlace& place : side.places)
    demand(lies(place.over, size) && lies(place.under, size), "a factor lies in the line");
  demand(cancel(side.chain) == side.product, "the product is that of the chain");
  demand(!side.value.isNegative(), "nothing is below zero");
  demand(!side.isAmount || side.value == side.product.exact, "an amount is its own product");
  readAgain(side, gram);
}

void check(const StudentLine& line, std::size_t size) {
  demand(!line.sides.empty() && line.links.size() + 1 == line.sides.size(), "links join the sides");
  for (const LineSide& side : line.sides) check(side, size, line.gram.value_or(Gram::medicine));
  for (const LineRemark& remark : line.remarks) {
    demand(lies(remark.at, size) && remark.at.begin < remark.at.end, "a remark lies in the line");
    demand(!sentence(remark).empty(), "a remark has a sentence");
  }
  demand(answerOf(line).value == line.sides.back().value, "the answer is what the line ends in");
}

}  // namespace

void run(std::string_view text) {
  for (const Gram gram : {Gram::medicine, Gram::child}) {
    const ReadLine read = readStudentLine(text, gram);
    if (const auto* fault = std::get_if<LineFault>(&read)) {
      demand(lies(fault->at, text.size()), "a fault lies in the line");
      demand(!sentence(*fault).empty(), "a fault has a sentence");
    } else {
      check(std::get<StudentLine>(read), text.size());
    }
  }
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
