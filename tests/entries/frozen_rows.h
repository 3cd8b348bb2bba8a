#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace wardchalk::test {

/// What is filled, ticked or said beside the line: "as_needed=true", "remark=trailing-zero".
struct Beside {
  std::string name;
  std::string value;
};

/// A row of read.csv or refused.csv, its escapes undone.
struct FrozenRow {
  std::string field;
  std::string typed;
  std::string means;  ///< what it means, or the most that a button may offer
  std::vector<Beside> beside;
  std::string why;
  bool isQuestion = false;  ///< two answers, `means` and `other`, and neither preferred
  std::string other;
  bool inFile = false;  ///< written in a file: there is nobody to ask

  /// The row's name in a list: "dose: 5 cc".
  [[nodiscard]] std::string name() const { return field + ": " + typed; }
  /// What stands beside the line under this name; empty if nothing does.
  [[nodiscard]] std::string besideOf(std::string_view name) const;
};

/// The rows of a table of tests/entries.
[[nodiscard]] std::vector<FrozenRow> frozenRead();
[[nodiscard]] std::vector<FrozenRow> frozenRefused();

/// The rows of arrivals.csv whose text comes whole and is committed (pasted, dictated, out of a file or a
/// table), those that are read or those that are refused. How the others arrive is the window's.
[[nodiscard]] std::vector<FrozenRow> frozenArrivals(std::string_view result);

/// A row of arrivals.csv whose text comes to a line of the window: by keys with pauses between, pasted,
/// dropped, set by a program that helps to write, or composed.
struct ArrivingRow {
  std::string way;
  std::string text;    ///< with its marks in braces: {wait 400}, {Enter}, {set 95 mg}
  std::string result;  ///< read, refused, pending or empty
  FrozenRow meant;     ///< its field, what it means, and what is filled beside
};
[[nodiscard]] std::vector<ArrivingRow> frozenArrivalsAtALine();

/// The names of the rows that do not hold yet, from known_open.csv.
[[nodiscard]] std::vector<std::string> knownOpen();

/// The path of a case that a field of the tables stands for; empty for a student's line.
[[nodiscard]] std::string_view pathOf(std::string_view field);

}  // namespace wardchalk::test
