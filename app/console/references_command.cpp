#include <iostream>

#include "app/console/commands.h"
#include "app/console/files.h"
#include "app/console/output.h"
#include "core/record/path_text.h"
#include "core/record/reference_list.h"
#include "core/record/text_file.h"
#include "core/words/sentences.h"
#include "core/words/visible_text.h"

namespace wardchalk::console {

namespace {

void report(const std::string& file, const ReferenceImport& import) {
  for (const RefusedRow& row : import.refused)
    std::cerr << visibleLine(file) << ": row " << row.row << ": " << visibleLine(placedSentence(row.refusal))
              << '\n';
  std::cerr << visibleLine(file) << ": entries that can be read: " << import.list.entries.size()
            << ", rows refused: " << import.refused.size() << '\n';
}

int write(const std::string& file, const ReferenceList& list, int status) {
  const std::string text = writeReferenceList(list);
  if (isStandard(file)) return print(text, Output::Kind::json, status);
  const auto written = writeTextFile(pathNamed(file), text);
  if (!written) tell(file, written.refusal());
  return written ? status : unusable;
}

}  // namespace

/// A list that lacks rows is written only when that is asked for: the report stands before it.
int references(const ReferencesOptions& options) {
  if (const auto apart = checkNotInput(options.listFile, options.tableFile); !apart) {
    tell(inputName(options.tableFile), apart.refusal());
    return unusable;
  }
  const std::string name = inputName(options.tableFile);
  const Result<std::string> text = readInput(options.tableFile);
  const Result<ReferenceImport> import =
      text ? importReferenceList(*text) : Result<ReferenceImport>(text.refusal());
  if (!import) {
    tell(name, import.refusal());
    return unusable;
  }
  report(name, *import);
  const bool whole = import->refused.empty();
  if (!whole && !options.withoutRefused) return someLinesFailed;
  return write(options.listFile, import->list, whole ? done : someLinesFailed);
}

}  // namespace wardchalk::console
