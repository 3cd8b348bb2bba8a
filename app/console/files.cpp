#include "app/console/files.h"

#include <algorithm>
#include <iostream>

#include "app/console/commands.h"
#include "core/record/path_text.h"
#include "core/record/text_file.h"

namespace wardchalk::console {

bool isStandard(const std::string& file) { return file == "-"; }

std::string inputName(const std::string& file) { return isStandard(file) ? "standard input" : file; }

Result<InputFile> openInput(const std::string& file) {
  if (isStandard(file)) return InputFile::standardInput();
  return InputFile::open(pathNamed(file));
}

Result<std::string> readInput(const std::string& file) {
  Result<InputFile> opened = openInput(file);
  if (!opened) return opened.refusal();
  InputFile input = *std::move(opened);
  return readText(input);
}

bool oneFromInput(const std::vector<std::string>& files) {
  if (std::count_if(files.begin(), files.end(), isStandard) < 2) return true;
  std::cerr << "wardchalk-console: standard input (-) can stand for one file only. Name the others.\n";
  return false;
}

Result<Done> checkNotInput(const std::string& output, const std::string& input) {
  const Result<Done> apart = wardchalk::checkNotInput(pathNamed(isStandard(output) ? "/dev/stdout" : output),
                                                      pathNamed(isStandard(input) ? "/dev/stdin" : input));
  if (apart || !isStandard(output)) return apart;
  Refusal refusal = apart.refusal();
  refusal.typed = "standard output";
  return refusal;
}

}  // namespace wardchalk::console
