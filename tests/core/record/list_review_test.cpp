#include "core/record/list_review.h"

#include <gtest/gtest.h>

#include "core/number/decimal_text.h"
#include "core/record/text_file.h"
#include "tests/core/test_names.h"

namespace wardchalk::list_review_test {
namespace {

constexpr Date today{2026, 11, 25};

ReferenceList demoList() {
  const auto text = readTextFile(std::string(WARDCHALK_SOURCE_DIR) + "/resources/demo/reference_list.json");
  return *readReferenceList(*text);
}

/// The entries of one medicine by one route alone.
ReferenceList only(std::string_view medicine, Route route) {
  ReferenceList list = demoList();
  std::erase_if(list.entries, [&](const ListEntry& entry) {
    return entry.medicine != medicine || entry.reference.route != route;
  });
  return list;
}

using Lines = std::vector<std::string>;

TEST(ListReview, bandsThatMeetAreNothingToLookAt) {
  EXPECT_EQ(listReview(only("Plover", Route::oral), today), Lines{});
  EXPECT_EQ(listReview(only("Wren", Route::oral), today), Lines{});
}

TEST(ListReview, agesBetweenTwoEntriesAreNamed) {
  ReferenceList list = only("Plover", Route::oral);
  ASSERT_EQ(list.entries.size(), 3U);
  list.entries.erase(list.entries.begin() + 1);
  EXPECT_EQ(listReview(list, today),
            Lines{"Plover, fever of the marsh, oral: no entry between 23 months and 144 months."});
}

/// Two entries that are told apart by one band alone, which leaves a gap.
template <typename Set>
ReferenceList apart(Set set) {
  ReferenceList list = only("Plover", Route::oral);
  list.entries.erase(list.entries.begin() + 1);
  for (ListEntry& entry : list.entries) entry.reference.age = {};
  set(list.entries.front().reference, list.entries.back().reference);
  return list;
}

TEST(ListReview, weightsBetweenTwoEntriesAreNamed) {
  const ReferenceList list = apart([](Reference& light, Reference& heavy) {
    light.weight.upTo = MixedQuantity{{{Number(10), Unit::kg}}};
    heavy.weight.from = MixedQuantity{{{Number(20), Unit::kg}}};
  });
  EXPECT_EQ(listReview(list, today),
            Lines{"Plover, fever of the marsh, oral: no entry between 10 kg and 20 kg."});
}

TEST(ListReview, surfacesBetweenTwoEntriesAreNamed) {
  const ReferenceList list = apart([](Reference& small, Reference& large) {
    small.bsa.upTo = Quantity{Number::ratio(1, 2), Unit::m2};
    large.bsa.from = Quantity{Number(1), Unit::m2};
  });
  EXPECT_EQ(listReview(list, today),
            Lines{"Plover, fever of the marsh, oral: no entry between 0.5 m² and 1 m²."});
}

TEST(ListReview, twoEntriesForOneChildAreNamedOnce) {
  const Lines lines = listReview(only("Grèbe", Route::oral), today);
  ASSERT_EQ(lines.size(), 1U);
  EXPECT_NE(
      lines[0].find("two entries apply at once (1 year and over, up to 8 years; 6 years and over, under 18 "
                    "years)."),
      std::string::npos)
      << lines[0];
}

TEST(ListReview, aReviewThatIsPastIsSaid) {
  ReferenceList list = only("Plover", Route::oral);
  list.entries[1].reviewBy = {2026, 6, 30};
  EXPECT_EQ(listReview(list, today),
            Lines{"Plover, fever of the marsh, oral: the review date is past (2026-06-30)."});
}

/// What is said of such a list, without the name of the group.
std::string saidOf(const std::vector<ListEntry>& entries) {
  ReferenceList list = only("Wren", Route::oral);
  list.entries = entries;
  std::string text;
  for (const std::string& line : listReview(list, today)) {
    const std::size_t name = line.rfind(": ", line.find(" entr"));
    text.append(text.empty() ? "" : " ").append(line.substr(name + 2));
  }
  return text;
}

/// An entry for every child.
ListEntry plainEntry() {
  ListEntry entry = only("Wren", Route::oral).entries.front();
  entry.reference.age = {};
  entry.reference.weight = {};
  entry.reference.bsa = {};
  return entry;
}

/// For the surfaces "from 0.5", "over 0.5", "below 0.5" or "up to 0.5".
ListEntry bySurface(std::string_view band) {
  ListEntry entry = plainEntry();
  Band<Quantity>& bsa = entry.reference.bsa;
  using Edge = std::pair<std::string_view, std::optional<Quantity>*>;
  for (const auto& [word, edge] : {Edge{"from ", &bsa.from}, Edge{"over ", &bsa.over},
                                   Edge{"below ", &bsa.below}, Edge{"up to ", &bsa.upTo}})
    if (band.starts_with(word)) *edge = Quantity{*readDecimal(band.substr(word.size())), Unit::m2};
  return entry;
}

struct Bands {
  const char* name;
  std::vector<const char*> bands;
  const char* said;
};
void PrintTo(const Bands& row, std::ostream* out) { *out << row.name; }

class SizesOfAList : public testing::TestWithParam<Bands> {};

TEST_P(SizesOfAList, AreLookedAtOnBothSidesOfEachEdge) {
  std::vector<ListEntry> entries;
  for (const char* band : GetParam().bands) entries.push_back(bySurface(band));
  EXPECT_EQ(saidOf(entries), GetParam().said);
}

INSTANTIATE_TEST_SUITE_P(
    Surfaces, SizesOfAList,
    testing::Values(
        Bands{"that meet", {"below 0.5", "from 0.5"}, ""},
        Bands{"that meet the other way", {"up to 0.5", "over 0.5"}, ""},
        Bands{"apart", {"below 0.5", "from 0.6"}, "no entry between 0.5 m² and 0.6 m²."},
        Bands{"apart with closed edges", {"up to 0.5", "over 0.6"}, "no entry between 0.5 m² and 0.6 m²."},
        Bands{"apart at one surface", {"below 0.5", "over 0.5"}, "no entry for exactly 0.5 m²."},
        Bands{"that overlap",
              {"below 0.6", "from 0.5"},
              "two entries apply at once (under 0.6 m²; 0.5 m² and over)."},
        Bands{"that overlap at one surface",
              {"up to 0.5", "from 0.5"},
              "two entries apply at once (up to 0.5 m²; 0.5 m² and over)."},
        Bands{"that overlap below the first edge",
              {"below 0.5", "below 0.6"},
              "two entries apply at once (under 0.5 m²; under 0.6 m²)."},
        Bands{"that overlap above the last edge",
              {"over 0.5", "over 0.6"},
              "two entries apply at once (over 0.5 m²; over 0.6 m²)."}),
    [](const auto& row) { return test::testName(row.param.name); });

TEST(ListReview, aWeightInPoundsIsNamedInKilograms) {
  std::vector<ListEntry> entries = {plainEntry(), plainEntry()};
  entries[0].reference.weight.below = MixedQuantity{{{Number(10), Unit::kg}}};
  entries[1].reference.weight.from = MixedQuantity{{{Number(26), Unit::lb}, {Number(8), Unit::oz}}};
  EXPECT_EQ(saidOf(entries), "no entry between 10 kg and 12.020197805 kg.");
}

}  // namespace
}  // namespace wardchalk::list_review_test
