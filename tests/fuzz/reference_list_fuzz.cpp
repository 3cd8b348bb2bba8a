// Any bytes as a ward's reference list: refused whole with a sentence, or read, written and read again to the
// same list.
#include "core/record/reference_list.h"
#include "core/words/sentences.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

void run(std::string_view text) {
  const Result<ReferenceList> read = readReferenceList(text);
  if (!read) return demand(!placedSentence(read.refusal()).empty(), "a refusal has a sentence");
  const Result<ReferenceList> again = readReferenceList(writeReferenceList(*read));
  demand(bool(again), "what was written is read");
  demand(*again == *read, "it is the same list");
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
