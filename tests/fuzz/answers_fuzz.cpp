// Any bytes as a file of answers: refused whole with a sentence, or read, written and read again to the
// letter.
#include <string>

#include "core/practice/sessions/answers_file.h"
#include "core/words/sentences.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

void run(std::string_view text) {
  const auto read = readAnswers(text);
  if (!read) return demand(!placedSentence(read.refusal()).empty(), "a refusal has a sentence");
  std::string written;
  writeAnswers(written, *read);
  const auto again = readAnswers(written);
  demand(bool(again), "what was written is read");
  demand(*again == *read, "every answer stands as it was written");
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
