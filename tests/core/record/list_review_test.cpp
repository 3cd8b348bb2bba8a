#include "core/record/list_review.h"

#include <gtest/gtest.h>

#include "core/record/text_file.h"

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

}  // namespace
}  // namespace wardchalk::list_review_test
