#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/answers.h"
#include "core/check/check.h"
#include "core/check/finding.h"
#include "core/check/slips/slip.h"
#include "core/check/worksheet.h"
#include "core/child/size_slip.h"
#include "core/medicine/medicine.h"
#include "core/number/refusal_code.h"
#include "core/practice/lines/line_codes.h"
#include "core/practice/problem/topic.h"
#include "core/working/step_id.h"

// Ids and codes stand in files and outlive every version. A change here breaks other people's files: add at
// will, never rename or take away.

namespace wardchalk::stable_ids_test {
namespace {

template <std::size_t size>
constexpr bool allDiffer(const std::array<std::string_view, size>& ids) {
  for (std::size_t i = 0; i < size; ++i)
    for (std::size_t j = i + 1; j < size; ++j)
      if (ids[i] == ids[j]) return false;
  return true;
}

/// Small letters, digits and single hyphens between them: safe in files, anchors and option names.
template <std::size_t size>
constexpr bool allPlain(const std::array<std::string_view, size>& ids) {
  for (const std::string_view id : ids) {
    if (id.empty() || id.front() == '-' || id.back() == '-') return false;
    for (const char c : id)
      if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-')) return false;
  }
  return true;
}

static_assert(allDiffer(refusalIds) && allPlain(refusalIds));
static_assert(allDiffer(stepIds) && allPlain(stepIds));
static_assert(allDiffer(checkIds) && allPlain(checkIds));
static_assert(allDiffer(findingIds) && allPlain(findingIds));
static_assert(allDiffer(whyNotIds) && allPlain(whyNotIds));
static_assert(allDiffer(answerIds) && allPlain(answerIds));
static_assert(allDiffer(sizeSlipIds) && allPlain(sizeSlipIds));
static_assert(allDiffer(lineFaultIds) && allPlain(lineFaultIds));
constexpr std::array lineRemarkIds = {
#define WARDCHALK_LINE_REMARK(name, id, error) std::string_view(id),
#include "core/practice/lines/line_remarks.def"
#undef WARDCHALK_LINE_REMARK
};
static_assert(allDiffer(lineRemarkIds) && allPlain(lineRemarkIds));
constexpr auto slipIds = [] {
  std::array<std::string_view, slipTable.size()> ids;
  for (std::size_t i = 0; i < ids.size(); ++i) ids[i] = slipTable[i].id;
  return ids;
}();
static_assert(allDiffer(slipIds) && allPlain(slipIds));
static_assert(allDiffer(topicIds) && allPlain(topicIds));
static_assert(allDiffer(routeIds) && allPlain(routeIds));

constexpr std::array<std::string_view, 4> twice = {"a", "b", "c", "b"};
static_assert(!allDiffer(twice));

template <std::size_t sizeA, std::size_t sizeB>
void expectSame(const std::array<std::string_view, sizeA>& ids,
                const std::array<std::string_view, sizeB>& expected) {
  EXPECT_EQ(sizeA, sizeB);
  for (std::size_t i = 0; i < std::min(sizeA, sizeB); ++i) EXPECT_EQ(ids[i], expected[i]) << i;
}

#define WARDCHALK_LIST(...) std::to_array<std::string_view>({__VA_ARGS__})

TEST(StableIds, refusals) {
  expectSame(
      refusalIds,
      WARDCHALK_LIST(
          "empty", "comma", "bare-point", "trailing-point", "second-point", "leading-zero", "exponent",
          "sign", "space-in-number", "space-wrong", "fraction", "age-fraction", "other-digits",
          "not-a-number", "letter-in-number", "number-in-words", "range-here", "dose-left-open", "too-long",
          "zero", "number-missing", "unit-missing", "unit-unknown", "unit-unsafe", "unit-ambiguous",
          "unit-unfit", "space-missing", "ratio-strength", "percent-strength", "per-missing", "per-doubled",
          "per-unclear", "course-total", "parts-out-of-order", "part-too-large", "part-not-whole",
          "two-units", "trailing-text", "word-too-many", "rate-here", "strength-shape", "weight-here",
          "height-here", "surface-here", "dose-here", "strength-here", "volume-here", "time-here",
          "schedule-here", "route-here", "as-needed-here", "fills-others", "schedule-unknown",
          "schedule-unsafe", "schedule-look-alike", "as-needed-alone", "divided-unclear",
          "schedule-backwards", "schedule-too-often", "word-unknown", "count-not-whole", "unseen-character",
          "damaged-character", "low-above-high", "low-basis-differs", "low-with-limit-only",
          "capsule-divides", "band-backwards", "file-unreadable", "file-too-large", "not-json", "not-utf-8",
          "too-deep", "key-unknown", "key-duplicate", "filled-twice", "key-missing", "type-wrong",
          "format-wrong", "version-newer", "version-wrong", "value-out-of-range", "file-unwritable",
          "problem-altered", "ask-not-in-key", "date-shape", "date-unknown", "dates-backwards", "row-quotes",
          "row-too-long", "row-not-utf-8", "header-missing", "separator-wrong", "cells-missing", "no-results",
          "seat-twice", "disk-full", "file-size-limited", "folder-read-only", "folder-missing",
          "disk-read-only", "name-too-long", "link-loop", "link-not-followed", "target-no-file",
          "target-is-input", "target-changed", "too-large-to-write", "nul-byte", "non-character"));
}

// The lists below are those of the documented worksheet format.

TEST(StableIds, steps) {
  expectSame(
      stepIds,
      WARDCHALK_LIST("height", "weight", "bsa", "limit-day", "limit-dose", "low-day", "low-dose", "max-dose",
                     "max-day", "ordered-dose", "ordered-day", "compare-single", "compare-daily",
                     "compare-period", "compare-max-single", "compare-max-daily", "compare-max-doses",
                     "compare-low", "compare-schedule", "compare-age-band", "compare-weight-band",
                     "compare-bsa-band", "compare-medicine", "compare-route", "compare-size",
                     "compare-bsa-charted", "compare-concentration", "compare-concentration-low",
                     "compare-infusion-time", "compare-infusion-rate", "compare-rate", "strength", "give",
                     "device", "volume", "concentration", "rate", "drops", "dose-rate", "back-check"));
}

TEST(StableIds, checks) {
  expectSame(checkIds, WARDCHALK_LIST("single", "daily", "period", "max-single", "max-daily", "max-doses",
                                      "low", "schedule", "age-band", "weight-band", "bsa-band", "medicine",
                                      "route", "size", "bsa-charted", "concentration", "concentration-low",
                                      "infusion-time", "infusion-rate", "rate"));
}

TEST(StableIds, eachCheckIsWrittenInItsOwnStep) {
  for (std::size_t i = 0; i < checkCount; ++i)
    EXPECT_EQ(idOf(stepOf(static_cast<CheckId>(i))), std::string("compare-").append(checkIds[i]));
}

TEST(StableIds, reasonsForNoCheck) {
  expectSame(whyNotIds, WARDCHALK_LIST("no-schedule", "no-maximum", "no-band", "not-stated", "no-size",
                                       "no-age", "newborn", "adult", "limit-only", "once-only", "as-needed",
                                       "no-infusion", "not-a-rate", "is-a-rate", "no-order-schedule",
                                       "other-medicine", "missing", "not-worked-out"));
}

TEST(StableIds, topics) {
  expectSame(topicIds, WARDCHALK_LIST("bsa", "dose-by-bsa", "dose-by-weight", "daily-divided", "safe-range",
                                      "amount-liquid", "amount-solid", "reconstitution", "infusion", "drops",
                                      "dilution", "dose-rate", "conversion", "mixed"));
}

TEST(StableIds, sizeSlips) {
  expectSame(sizeSlipIds, WARDCHALK_LIST("pounds-as-kg", "kg-as-pounds", "inches-as-cm", "cm-as-inches",
                                         "pounds-and-inches", "kg-and-cm", "weight-and-height-swapped",
                                         "weight-ten-times-too-much", "weight-ten-times-too-little",
                                         "height-ten-times-too-much", "height-ten-times-too-little"));
}

TEST(StableIds, slips) {
  expectSame(
      slipIds,
      WARDCHALK_LIST("order-ten-times-too-much", "order-ten-times-too-little",
                     "order-thousand-times-too-much", "order-thousand-times-too-little",
                     "order-hundred-times-too-much", "order-hundred-times-too-little", "day-as-dose",
                     "dose-as-day", "divided-twice", "kg-for-m2", "m2-for-kg", "size-counted-twice",
                     "per-size-as-total", "order-from-pounds", "schedule-not-of-reference", "pounds-as-kg",
                     "weight-ten-times-too-much", "weight-ten-times-too-little", "bsa-ten-times-too-much",
                     "bsa-ten-times-too-little", "label-per-5-as-per-1", "label-per-1-as-per-more"));
}

struct Group {
  Severity severity;
  std::vector<std::string_view> codes;
};

TEST(StableIds, findingsBySeverity) {
  const std::vector<Group> groups = {
      {Severity::undecided,
       {"not-worked-out", "finish-typing", "size-implausible", "units-do-not-meet", "basis-does-not-fit"}},
      {Severity::unsafe,
       {"over-single", "over-daily", "over-period", "over-max-single", "over-max-daily", "over-max-doses",
        "over-rate", "too-concentrated", "too-fast"}},
      {Severity::notCovered,
       {"not-covered-medicine", "not-covered-age", "not-covered-weight", "not-covered-bsa",
        "not-covered-route"}},
      {Severity::ask,
       {"second-differs",
        "weight-unlikely-for-height",
        "weight-unlikely",
        "height-unlikely",
        "weight-old",
        "bsa-differs",
        "strength-differs",
        "final-smaller-than-diluent",
        "over-within-grace",
        "below-low",
        "below-usual",
        "schedule-differs",
        "schedule-unknown",
        "division-unknown",
        "max-doses-open",
        "run-time-open",
        "interval-odd",
        "rounding-changes-dose",
        "rounding-changes-rate",
        "too-small-to-measure",
        "not-measurable",
        "many-units",
        "too-dilute",
        "volume-smaller-than-drug",
        "flow-differs",
        "form-differs-from-route"}},
      {Severity::note,
       {"rounding-decides", "cap-applied", "displacement-ignored", "small-child-bsa", "source-not-stated",
        "as-needed-counted-at-most-frequent", "one-dose-judged", "possible-slip", "household-constant"}},
  };
  std::size_t at = 0;
  for (const Group& group : groups)
    for (const std::string_view code : group.codes) {
      ASSERT_LT(at, findingIds.size());
      EXPECT_EQ(findingIds[at], code);
      EXPECT_EQ(idOf(findingSeverities[at]), idOf(group.severity)) << code;
      ++at;
    }
  EXPECT_EQ(at, findingIds.size());
}

TEST(StableIds, verdictsStatusesAndTheRest) {
  EXPECT_EQ(idOf(VerdictKind::safe), "safe");
  EXPECT_EQ(idOf(VerdictKind::ask), "ask");
  EXPECT_EQ(idOf(VerdictKind::unsafe), "unsafe");
  EXPECT_EQ(idOf(VerdictKind::notCovered), "not-covered");
  EXPECT_EQ(idOf(VerdictKind::undecided), "undecided");
  EXPECT_EQ(idOf(CheckStatus::within), "within");
  EXPECT_EQ(idOf(CheckStatus::outside), "outside");
  EXPECT_EQ(idOf(CheckStatus::notChecked), "not-checked");
  EXPECT_EQ(idOf(CheckStatus::doesNotApply), "does-not-apply");
  EXPECT_EQ(idOf(SetBy::reference), "reference");
  EXPECT_EQ(idOf(SetBy::maxPerDose), "max_per_dose");
  EXPECT_EQ(idOf(SetBy::maxPerDay), "max_per_day");
  expectSame(routeIds, WARDCHALK_LIST("oral", "enteral", "intravenous", "intramuscular", "subcutaneous",
                                      "rectal", "inhaled", "topical"));
}

}  // namespace
}  // namespace wardchalk::stable_ids_test
