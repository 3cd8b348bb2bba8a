// Any bytes as a set of problems: refused whole with a sentence, or read, written and read again to the same
// set, of which a problem can be made whatever its house rules are.
#include <string>

#include "core/practice/sessions/set_file.h"
#include "core/words/sentences.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

void run(std::string_view text) {
  const Result<PracticeSet> read = readSet(text);
  if (!read) return demand(!placedSentence(read.refusal()).empty(), "a refusal has a sentence");
  std::string written;
  writeSet(written, *read);
  const Result<PracticeSet> again = readSet(written);
  demand(bool(again), "what was written is read");
  demand(*again == *read, "it is the same set");
  demand(setMark(*again) == setMark(*read), "it has the same mark");
  demand(!problemInSet(*read, 0).asks.empty(), "a problem of it asks for something");
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
