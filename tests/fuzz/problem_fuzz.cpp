// Any bytes as a problem: refused whole with a sentence, or read, and written and read again to the same
// problem, whose key is that of its case.
#include <string>

#include "core/check/work_out.h"
#include "core/practice/sessions/problem_file.h"
#include "core/words/sentences.h"
#include "tests/fuzz/demand.h"

namespace wardchalk::fuzz {

void run(std::string_view text) {
  const Result<Problem> read = readProblem(text);
  if (!read) return demand(!placedSentence(read.refusal()).empty(), "a refusal has a sentence");
  demand(!read->asks.empty(), "a problem asks for something");
  demand(read->key.steps == workOut(read->given, read->rules).steps, "the key is that of the case");
  std::string written;
  writeProblem(written, *read);
  const Result<Problem> again = readProblem(written);
  demand(bool(again), "what was written is read");
  demand(again->given == read->given && again->rules == read->rules && again->asks == read->asks,
         "it is the same problem");
  std::string twice;
  writeProblem(twice, *again);
  demand(twice == written, "it is written alike each time");
}

}  // namespace wardchalk::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  wardchalk::fuzz::run(wardchalk::fuzz::textOf(data, size));
  return 0;
}
