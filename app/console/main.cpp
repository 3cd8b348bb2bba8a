#include <CLI/CLI.hpp>
#include <exception>
#include <functional>
#include <iostream>
#include <memory>
#include <sstream>

#include "app/console/commands.h"
#include "app/console/output.h"
#include "app/console/whole_number.h"
#include "core/practice/marking/hints.h"
#include "core/practice/sessions/set_file.h"
#include "core/words/visible_text.h"

#if defined(__unix__) || defined(__APPLE__)
#include <fcntl.h>
#endif

namespace {

using namespace wardchalk::console;

/// What a command line asks for; done once all of it has been read.
using Work = std::function<int()>;

/// A subcommand that keeps its options until its work is done.
template <typename Options>
struct Offer {
  CLI::App* command;
  std::shared_ptr<Options> options = std::make_shared<Options>();

  void does(int (*work)(const Options&), Work& chosen) const {
    command->callback([kept = options, work, &chosen] { chosen = [kept, work] { return work(*kept); }; });
  }
};

constexpr const char* rulesHelp = "House rules: exact (the default), classroom, or a file";

void offerCheck(CLI::App& app, Work& chosen) {
  const Offer<CheckOptions> offer{
      app.add_subcommand("check", "Print the working of one case, or its worksheet")};
  CheckOptions& options = *offer.options;
  offer.command->add_option("case", options.caseFile, "Case file (JSON)")->required();
  offer.command->add_option("--rules", options.rulesFile, rulesHelp);
  CLI::Option* json = offer.command->add_flag("--json", options.json, "Print the worksheet as JSON");
  offer.command
      ->add_option("--format", options.format,
                   "text (the default), mathml (a page of XHTML), latex (a document), json")
      ->check(CLI::IsMember({"text", "mathml", "latex", "json"}))
      ->excludes(json);
  offer.does(check, chosen);
}

void offerBatch(CLI::App& app, Work& chosen) {
  const Offer<BatchOptions> offer{
      app.add_subcommand("batch", "Work one case a line into one worksheet a line")};
  BatchOptions& options = *offer.options;
  offer.command->add_option("file", options.inputFile,
                            "File of cases, one JSON object a line; standard input if absent or -");
  offer.command->add_option("--rules", options.rulesFile, rulesHelp);
  CLI::Option* brief = offer.command->add_flag("--brief", options.brief, "Leave out steps, words and rules");
  offer.command
      ->add_flag("--csv", options.csv, "Read a table with a header of keys, write it with the results beside")
      ->excludes(brief);
  offer.command
      ->add_option("--jobs", options.jobs, "Threads that work; 0: one for each processor; 1 if absent")
      ->check(wholeNumber(0, 256));
  offer.does(batch, chosen);
}

void offerReferences(CLI::App& app, Work& chosen) {
  const Offer<ReferencesOptions> offer{
      app.add_subcommand("references", "Turn a table (CSV) into a reference list")};
  ReferencesOptions& options = *offer.options;
  offer.command->add_option("table", options.tableFile, "Table with a header of keys, an entry a row")
      ->required();
  offer.command->add_option("list", options.listFile, "Reference list to write")->required();
  offer.command->add_flag("--without-refused", options.withoutRefused, "Write it although rows were refused");
  offer.does(references, chosen);
}

void offerPractice(CLI::App& app, Work& chosen) {
  const Offer<PracticeOptions> offer{
      app.add_subcommand("practice", "Make problems with invented medicines, and their keys")};
  PracticeOptions& options = *offer.options;
  offer.command->add_option("--topic", options.topic, "What they are about")
      ->required()
      ->check(
          CLI::IsMember(std::vector<std::string>(wardchalk::topicIds.begin(), wardchalk::topicIds.end())));
  offer.command->add_option("--level", options.level, "1 (the default), 2 or 3")
      ->check(wholeNumber(wardchalk::lowestLevel, wardchalk::highestLevel));
  offer.command->add_option("--count", options.count, "How many")
      ->required()
      ->check(wholeNumber(1, wardchalk::mostProblems));
  offer.command->add_option("--seed", options.seed, "The same seed gives the same problems everywhere")
      ->required()
      ->check(wholeNumber(0, wardchalk::greatestSeed));
  offer.command->add_option("--rules", options.rulesFile, rulesHelp);
  offer.command->add_flag("--json", options.json, "Print one problem file a line");
  offer.does(practice, chosen);
}

void offerMark(CLI::App& app, Work& chosen) {
  const Offer<MarkOptions> offer{
      app.add_subcommand("mark", "Mark a student's answers to a problem, line by line")};
  MarkOptions& options = *offer.options;
  offer.command->add_option("problem", options.problemFile, "Problem file (JSON)")->required();
  offer.command->add_option("answers", options.answersFile, "Answers file (JSON)")->required();
  offer.command
      ->add_option("--rung", options.rung,
                   "How far hints go: 1 where, 2 a question (the default), 3 the rule, 4 the line")
      ->check(wholeNumber(1, wardchalk::lastRung));
  offer.command->add_flag("--json", options.json, "Print the marks as JSON");
  offer.command->add_flag("--lines", options.lines, "Both files hold one a line, and so does the output");
  offer.does(mark, chosen);
}

/// A standard file that is closed is taken by the next one that is opened, and what is told to a person would
/// be written into that. Each is held in the way in which it cannot be used, so that using it still fails.
void holdStandardFiles() {
#if defined(__unix__) || defined(__APPLE__)
  for (int number = 0; number <= 2; ++number)
    if (::fcntl(number, F_GETFD) == -1) (void)::open("/dev/null", number == 0 ? O_WRONLY : O_RDONLY);
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
  for (const auto offer : {offerCheck, offerBatch, offerReferences, offerPractice, offerMark})
    offer(app, chosen);
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
