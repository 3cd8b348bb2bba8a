// Any bytes as a case file: refused whole, or read, written and read again to the same case, and worked out.
#include <string>
#include <vector>

#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/worksheet_file.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

/// A text with nothing in it ("medicine": "") says what no text says, and is not written.
std::vector<WrittenEntry> written(std::vector<WrittenEntry> entries) {
  std::erase_if(entries, [](const WrittenEntry& entry) { return entry.text.empty(); });
  return entries;
}

void run(std::string_view text) {
  const Result<CaseFile> read = readCaseFile(text);
  if (!read) return;
  const Result<CaseFile> again = readCaseFile(writeCaseFile(read->entries));
  demand(bool(again), "what was written is read");
  demand(again->inputs == read->inputs, "it is the same case");
  demand(again->entries == written(read->entries), "every entry stands as it was typed");
  std::string sheet;
  writeWorksheet(sheet, workOut(read->inputs, exactRules()), WorksheetExtent::whole);
  demand(sheet.find('\n') == std::string::npos, "a worksheet is one line");
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
