#include "app/console/commands.h"
#include "app/console/files.h"
#include "app/console/output.h"
#include "core/practice/sessions/class_view.h"

namespace wardchalk::console {

/// A table that cannot be read is told and left out; the others are joined all the same.
int classView(const ClassOptions& options) {
  if (!oneFromInput(options.tableFiles)) return unusable;
  ClassView view;
  bool failed = false;
  for (const std::string& file : options.tableFiles) {
    const Result<std::string> text = readInput(file);
    const Result<Done> added = text ? view.add(*text) : Result<Done>(text.refusal());
    if (added) continue;
    tell(inputName(file), added.refusal());
    failed = true;
  }
  if (view.sheets().empty()) return unusable;
  const int status = failed ? someLinesFailed : done;
  return options.csv ? print(classTable(view), Output::Kind::table, status)
                     : print(classText(view), Output::Kind::text, status);
}

}  // namespace wardchalk::console
