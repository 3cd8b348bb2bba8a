// What leads while the size of a child is in doubt (H48): over drawn orders of children whose size was
// mistaken.
#include <gtest/gtest.h>

#include <functional>
#include <iostream>

#include "core/check/judgement.h"
#include "core/check/work_out.h"
#include "core/words/sentences.h"
#include "tests/support/case_text.h"
#include "tests/support/drawn_order.h"

namespace wardchalk::test::leading_doubt_test {
namespace {

using Spoil = std::function<std::vector<WrittenEntry>(const DrawnOrder&, std::vector<WrittenEntry>)>;

Spoil weightTimes(double factor) {
  return [=](const DrawnOrder& order, std::vector<WrittenEntry> entries) {
    return with(std::move(entries), "child.weight", threeDigits(order.kg * factor) + " kg");
  };
}

std::vector<WrittenEntry> inchesAsCm(const DrawnOrder& order, std::vector<WrittenEntry> entries) {
  return with(std::move(entries), "child.height", threeDigits(order.child.cm / 2.54) + " cm");
}

struct Mistake {
  const char* name;
  Spoil spoil;
};

const std::vector<Mistake>& mistakes() {
  static const std::vector<Mistake> all = {
      {"pounds as kg", weightTimes(1 / 0.45359237)},
      {"kg as pounds", weightTimes(0.45359237)},
      {"weight x 10", weightTimes(10)},
      {"weight / 10", weightTimes(0.1)},
      {"inches as cm", inchesAsCm},
  };
  return all;
}

struct Count {
  int doubted = 0, tooLittle = 0, beside = 0;
};

/// No word of a larger dose comes before the doubt, and none says that the reference wants it.
void expectDoubtLeads(const Worksheet& sheet, const Finding& doubt, Count& count) {
  const std::string reason = verdictReason(sheet);
  for (const Finding& finding : sheet.findings)
    if (finding.code == FindingCode::belowLow || finding.code == FindingCode::belowUsual) {
      ++count.tooLittle;
      EXPECT_GT(&finding, &doubt);
      EXPECT_TRUE(sentence(finding).starts_with("Too little by the size entered: ")) << sentence(finding);
    }
  if (sheet.verdict == VerdictKind::unsafe || sheet.verdict == VerdictKind::notCovered) {
    ++count.beside;
    EXPECT_NE(reason.find("The size is in doubt too: check the "), std::string::npos) << reason;
  } else {
    EXPECT_EQ(sheet.because(), idOf(doubt.code));
    EXPECT_EQ(reason, sentence(doubt));
  }
}

TEST(Hazards, H48_theSizeInDoubtLeadsAndNoLargerDose) {
  for (const Mistake& mistake : mistakes()) {
    Draw draw(20261130);
    Count count;
    for (int i = 0; i < 500; ++i) {
      const DrawnOrder order = drawOrder(draw);
      const std::vector<WrittenEntry> entries = mistake.spoil(order, entriesOf(order, i % 4 != 0));
      SCOPED_TRACE(textOf(entries));
      const Worksheet sheet = workOut(caseOf(entries), exactRules());
      const Finding* doubt = sizeDoubt(sheet);
      if (!doubt) continue;
      ++count.doubted;
      expectDoubtLeads(sheet, *doubt, count);
    }
    std::cout << mistake.name << ": of 500 sizes " << count.doubted << " in doubt, " << count.tooLittle
              << " with a dose too little for it, " << count.beside << " beside another verdict\n";
    EXPECT_GT(count.doubted, 100) << mistake.name;
  }
}

}  // namespace
}  // namespace wardchalk::test::leading_doubt_test
