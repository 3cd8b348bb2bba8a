#include <CLI/CLI.hpp>
#include <exception>
#include <iostream>
#include <sstream>

#include "app/console/commands.h"
#include "app/console/offer.h"
#include "app/console/output.h"
#include "core/words/visible_text.h"

#if defined(__unix__) || defined(__APPLE__)
#include <fcntl.h>
#elif defined(_WIN32)
#include <fcntl.h>
#include <io.h>
#include <windows.h>
#endif

namespace {

using namespace wardchalk::console;

/// A standard file that is closed is taken by the next one that is opened, and what is told to a person would
/// be written into that. Each is held in the way in which it cannot be used, so that using it still fails.
void holdStandardFiles() {
#if defined(__unix__) || defined(__APPLE__)
  for (int number = 0; number <= 2; ++number)
    if (::fcntl(number, F_GETFD) == -1) (void)::open("/dev/null", number == 0 ? O_WRONLY : O_RDONLY);
#elif defined(_WIN32)
  // What is read and written are bytes, the same as elsewhere; a console is told that they are UTF-8.
  for (int number = 0; number <= 2; ++number) (void)::_setmode(number, _O_BINARY);
  ::SetConsoleOutputCP(CP_UTF8);
#endif
}

int run(int argc, char** argv) {
  CLI::App app(
      "Checks a child's dose against a reference and shows the working.\n"
      "Checks only what is written in the case; follow local policy, and have a second person check.\n"
      "In place of a file, - stands for standard input, or for standard output where one is written.");
  app.name("wardchalk-console");
  app.set_version_flag("--version", "wardchalk-console " WARDCHALK_VERSION);
  app.require_subcommand(1);
  Work chosen;
  offerWard(app, chosen);
#ifdef WARDCHALK_PRACTICE
  offerPractice(app, chosen);
#endif
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    std::ostringstream answer;
    std::ostringstream complaint;
    const int status = app.exit(error, answer, complaint);
    std::cerr << wardchalk::visibleText(complaint.str());
    return print(answer.str(), Output::Kind::text, status == 0 ? done : unusable);
  }
  return chosen();
}

}  // namespace

int main(int argc, char** argv) {
  try {
    holdStandardFiles();
    return run(argc, argv);
  } catch (
      const std::exception& error) {  // a bug of ours, or no memory: say so rather than end without a word
    std::cerr << "wardchalk-console: " << wardchalk::visibleLine(error.what()) << '\n';
    return unusable;
  }
}
