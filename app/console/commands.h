#pragma once

// Wherever a file may stand, "-" stands for standard input, or for standard output where one is written;
// "./-" is a file of that name.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/number/refusal.h"
#include "core/rules/house_rules.h"

namespace wardchalk::console {

/// What the program ends with: all done; some lines of a batch could not be read; wrong usage, an unreadable
/// file, or an answer that could not be written.
enum ExitStatus : int { done = 0, someLinesFailed = 1, unusable = 2 };

struct CheckOptions {
  std::string caseFile;
  std::string rulesFile;  ///< empty: the *exact* set
  bool json = false;
  std::string format;              ///< "text" (or empty), "mathml", "latex" or "json"
  std::vector<std::string> asked;  ///< ids of how questions were settled; empty: they are open
};

struct BatchOptions {
  std::string inputFile;  ///< empty or "-": standard input
  std::string rulesFile;
  bool brief = false;
  bool csv = false;  ///< a table in, a table out
  int jobs = 1;      ///< threads that work; 0: one for each processor
};

struct ReferencesOptions {
  std::string tableFile;
  std::string listFile;
  bool withoutRefused = false;  ///< write the list although rows of the table were refused
};

struct PracticeOptions {
  std::string topic;
  int level = 1;
  int count = 1;
  std::uint64_t seed = 1;
  std::string rulesFile;
  bool json = false;
};

struct MarkOptions {
  std::string problemFile;
  std::string answersFile;
  int rung = 2;  ///< of the hints, 1 to 4
  bool json = false;
  bool lines = false;  ///< both files hold one a line
};

struct ClassOptions {
  std::vector<std::string> tableFiles;  ///< tables of results, one for each seat
  bool csv = false;
};

/// Prints the working of one case, or its worksheet.
int check(const CheckOptions& options);

/// Works a case a line into a worksheet a line, or a table of cases into one with their results.
int batch(const BatchOptions& options);

/// Makes problems to practise on: as text with their keys at the end, or one problem file a line.
int practice(const PracticeOptions& options);

/// Marks a student's answers to a problem, or a class's.
int mark(const MarkOptions& options);

/// Joins the tables of a class into one view: which lines went how, and which mistakes were made.
int classView(const ClassOptions& options);

/// Turns a table into a reference list and reports on every row that is no entry.
int references(const ReferencesOptions& options);

/// The rules named by the option ("exact", "classroom" or a file), or none after telling why on standard
/// error.
std::optional<HouseRules> rulesFrom(const std::string& option);

/// Tells on standard error why something could not be read: file, path and sentence.
void tell(const std::string& file, const Refusal& refusal);

}  // namespace wardchalk::console
