#include "core/practice/marking/read_answer.h"

#include <string>

namespace wardchalk {

namespace {

/// The sign is blanked, so that places in the line stay what they are.
std::string withoutFirstSign(std::string_view text) {
  std::string line(text);
  const std::size_t first = line.find_first_not_of(" \t");
  for (const std::string_view sign : {"=", "≈"})
    if (first != std::string::npos && line.compare(first, sign.size(), sign) == 0)
      line.replace(first, sign.size(), sign.size(), ' ');
  return line;
}

}  // namespace

ReadWorking readAnswer(StepId step, std::string_view text) {
  const Gram gram = step == StepId::weight ? Gram::child : Gram::medicine;
  return readStudentWorking(withoutFirstSign(text), gram);
}

}  // namespace wardchalk
