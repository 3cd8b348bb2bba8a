#include <iostream>

#include "app/console/commands.h"
#include "core/record/case_summary.h"
#include "core/record/reference_list.h"
#include "core/record/text_file.h"

namespace wardchalk::console {

namespace {

void report(const std::string& file, const ReferenceImport& import) {
  for (const RefusedRow& row : import.refused)
    std::cerr << file << ": row " << row.row << ": " << placedSentence(row.refusal, englishPhrases()) << '\n';
  std::cerr << file << ": entries that can be read: " << import.list.entries.size()
            << ", rows refused: " << import.refused.size() << '\n';
}

}  // namespace

/// A list that lacks rows is written only when that is asked for: the report stands before it.
int references(const ReferencesOptions& options) {
  const Result<std::string> text = readTextFile(options.tableFile);
  if (!text) {
    tell(options.tableFile, text.refusal());
    return unusable;
  }
  Result<ReferenceImport> import = importReferenceList(*text);
  if (!import) {
    tell(options.tableFile, import.refusal());
    return unusable;
  }
  report(options.tableFile, *import);
  const bool whole = import->refused.empty();
  if (!whole && !options.withoutRefused) return someLinesFailed;
  if (const auto refusal = writeTextFile(options.listFile, writeReferenceList(import->list))) {
    tell(options.listFile, *refusal);
    return unusable;
  }
  return whole ? done : someLinesFailed;
}

}  // namespace wardchalk::console
