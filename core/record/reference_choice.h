#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/check/worksheet.h"
#include "core/record/reference_list.h"

namespace wardchalk {

/// The entries of a list for one medicine, indication and route: one for each band. However its name is
/// capitalised or accented, a medicine is one.
struct ListGroup {
  std::string medicine;
  std::vector<std::string> alsoCalled;  ///< by any of its entries
  std::string indication;
  Route route;
  std::vector<std::size_t> entries;  ///< places in the list, in its order
};

/// The groups in whose medicine, other names, indication or route each word of `part` stands; those whose
/// medicine begins with it come first, the rest in the order of the list. No word finds all.
[[nodiscard]] std::vector<ListGroup> find(const ReferenceList& list, std::string_view part);

/// Whether an entry's band serves a child, as the checks of a case judge it.
enum class BandFit : std::uint8_t { covers, doesNotCover, unclear };

/// One entry held against a child.
struct JudgedEntry {
  std::size_t entry;
  BandFit fit;
  std::string child;        ///< what of the child was held against the band: "4 years, 17.2 kg"
  std::vector<Need> needs;  ///< what is wanting while it is unclear
};

/// The entries of a group held against a child.
struct BandChoice {
  std::vector<JudgedEntry> entries;
  /// The place in the list of the one entry that covers the child; none while another might, or when none or
  /// more do.
  std::optional<std::size_t> chosen;
};

[[nodiscard]] BandChoice bandFor(const ReferenceList& list, const ListGroup& group, const Child& child,
                                 const HouseRules& rules);

/// Which entry is taken and why, or why none is: a sentence to be read aloud.
[[nodiscard]] std::string sentence(const BandChoice& choice, const ReferenceList& list, const Date& today);

/// Whether an entry of the list is for the medicine that is ordered, as the check of the medicine judges it;
/// an order that names none asks for none.
[[nodiscard]] bool isForOrdered(const ListEntry& entry, const Order& order);
/// The same for any entry of a group.
[[nodiscard]] bool isForOrdered(const ListGroup& group, const Order& order);

/// What somebody has agreed to before an entry is taken.
struct Agreed {
  bool pastReview = false;     ///< it is past its review, and used all the same
  bool otherMedicine = false;  ///< it is not of the medicine that is ordered, and meant all the same
};

/// Whether an entry may be taken into a case: it is not past its review and of the ordered medicine, or
/// somebody has agreed.
[[nodiscard]] bool mayBeTaken(const ListEntry& entry, const Order& order, const Date& today,
                              const Agreed& agreed);

/// Which of these groups to look at first: one of the ordered medicine by the ordered route, else one of the
/// medicine, else the first. None while nothing is ordered and nothing was searched for.
[[nodiscard]] std::optional<std::size_t> firstToLookAt(const std::vector<ListGroup>& groups,
                                                       std::string_view part, const Order& order);

/// The stated maxima, "200 mg per dose; 400 mg per day", and in a line of their own the limits of an
/// infusion; each is empty when none is stated.
[[nodiscard]] std::string maximumWords(const Reference& reference);
[[nodiscard]] std::string infusionWords(const Reference& reference);

/// Whether one entry covers the child, in words: "covers this child (4 years)".
[[nodiscard]] std::string fitWords(const JudgedEntry& judged);

/// The source of an entry in one line, with its edition and date, who checked it and when.
[[nodiscard]] std::string sourceWords(const ListEntry& entry);

/// What stands in a case as the source: which medicine's entry it is and that it came from the list, its
/// source, and that it was past its review on the day it was taken.
[[nodiscard]] std::string takenFrom(const ListEntry& entry, const Date& today);
/// Whether the reference of a case was taken from a list, by what stands as its source.
[[nodiscard]] bool isFromList(const Reference& reference);

/// Whether an entry of the case belongs to the list that its reference was taken from: its medicine, the
/// other names of it and its source. None of them can be changed by itself; the reference is emptied, or
/// another entry is taken.
[[nodiscard]] bool isKeptByList(std::string_view path, const Reference& reference);

/// What an entry puts into a case: its medicine, each of its figures, and its source.
[[nodiscard]] std::vector<WrittenEntry> entriesOf(const ListEntry& entry, const Date& today);

}  // namespace wardchalk
