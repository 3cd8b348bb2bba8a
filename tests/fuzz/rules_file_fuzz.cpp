// Any bytes as a file of house rules: refused whole, or read, written and read again to the same rules.
#include "core/record/rules_file.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

void run(std::string_view text) {
  const Result<HouseRules> read = readRules(text);
  if (!read) return;
  const Result<HouseRules> again = readRules(writeRules(*read));
  demand(bool(again), "what was written is read");
  demand(*again == *read, "they are the same rules");
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
