#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/check/worksheet.h"
#include "core/record/case_stream.h"
#include "core/rules/house_rules.h"
#include "ui/record/long_work.h"

namespace wardchalk::ui {

/// A file that cases were read from.
struct CaseSource {
  QString name;                        ///< without its folders
  std::shared_ptr<CaseStream> stream;  ///< reads a row again; null when the file could not be opened
  bool isTable = false;
};

/// One of several cases: where it stands, and what came of it in words. The worksheet itself is not kept; it
/// is worked out again when it is wanted.
struct CaseRow {
  std::shared_ptr<const CaseSource> source;
  StreamedCase given;
  std::optional<VerdictKind> verdict;  ///< none: the case could not be read
  std::string title;
  std::string words;   ///< of the verdict, as on the flag
  std::string reason;  ///< why; or why it could not be read
  std::string needs;
  std::string notMade;  ///< what was not checked
};

/// The case of a row with its entries, read again; or why it cannot be read.
[[nodiscard]] Result<CaseFile> readRow(const CaseRow& row);

/// Reads these files (cases, JSON lines, tables), works every case by the rules and hands on rows as they
/// come, some at a time. What cannot be read becomes a row that says why.
void readCases(const QStringList& files, const HouseRules& rules, LongWork::Handle& work,
               const std::function<void(std::vector<CaseRow>)>& take);

/// Writes the rows as a table: the entries that any of them has, then the columns of a summary.
/// One that is cancelled is done, and writes nothing.
[[nodiscard]] Result<Done> writeCaseRows(const QString& file, const std::vector<CaseRow>& rows,
                                         const HouseRules& rules, LongWork::Handle& work);

}  // namespace wardchalk::ui
