#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/medicine/case.h"
#include "core/record/case_file.h"
#include "core/record/date.h"

namespace wardchalk {

/// Where the figures of an entry stand on paper.
struct ListSource {
  std::string title;
  std::string edition;
  std::optional<Date> date;
  std::string page;
  friend bool operator==(const ListSource&, const ListSource&) = default;
};

/// One line of a ward's own reference list: what its reference allows of a medicine, for one indication, by
/// one route, for the children of one band.
struct ListEntry {
  std::string medicine;
  std::string indication;             ///< empty: not stated
  Reference reference;                ///< without its source, which is composed when the entry is taken
  std::vector<WrittenEntry> figures;  ///< the same as it stands in the list: paths of a case, text as typed
  ListSource source;
  std::string checkedBy;
  Date checkedOn{};
  Date reviewBy{};
  bool secondCheckRequired = false;  ///< by the ward's own choice: the amount waits for one that agrees
  friend bool operator==(const ListEntry&, const ListEntry&) = default;
};

/// A ward's own reference list. Wardchalk ships none.
struct ReferenceList {
  std::string title;
  std::vector<ListEntry> entries;
  friend bool operator==(const ReferenceList&, const ReferenceList&) = default;
};

/// Reads a list whole or refuses it whole, with the path of what is wrong ("entries[3].high").
[[nodiscard]] Result<ReferenceList> readReferenceList(std::string_view json);

[[nodiscard]] std::string writeReferenceList(const ReferenceList& list);

/// A row of a table that is no entry, and why; the refusal's path is the column.
struct RefusedRow {
  long row;  ///< as a spreadsheet counts: the header is 1
  Refusal refusal;
  std::string medicine;  ///< as it stands in the row, so that it is found again; empty where there is none
  std::string route;
};

/// What a table comes to. The entries are not to be used before a person has seen which rows were refused.
struct ReferenceImport {
  ReferenceList list;
  std::vector<RefusedRow> refused;
};

/// Reads a table with a header of an entry's keys, in any order, an entry a row. Refused whole only where
/// nothing can be read: no header, or an unknown key in it.
[[nodiscard]] Result<ReferenceImport> importReferenceList(std::string_view csv);

/// Whether the day by which the entry was to be looked over again has passed.
[[nodiscard]] bool isPastReview(const ListEntry& entry, const Date& today);

}  // namespace wardchalk
