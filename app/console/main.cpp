#include <CLI/CLI.hpp>
#include <exception>
#include <iostream>

#include "app/console/commands.h"
#include "core/practice/hints.h"
#include "core/practice/set_file.h"

namespace {

using namespace wardchalk::console;

int run(int argc, char** argv) {
  CLI::App app(
      "Checks a child's dose against a reference and shows the working.\n"
      "Checks only what is written in the case; follow local policy, and have a second person check.");
  app.name("wardchalk-console");
  app.set_version_flag("--version", "wardchalk-console " WARDCHALK_VERSION);
  app.require_subcommand(1);

  CheckOptions checkOptions;
  CLI::App* checkCommand = app.add_subcommand("check", "Print the working of one case, or its worksheet");
  checkCommand->add_option("case", checkOptions.caseFile, "Case file (JSON)")->required();
  checkCommand->add_option("--rules", checkOptions.rulesFile,
                           "House rules: exact (the default), classroom, or a file");
  CLI::Option* json = checkCommand->add_flag("--json", checkOptions.json, "Print the worksheet as JSON");
  checkCommand
      ->add_option("--format", checkOptions.format,
                   "text (the default), mathml (a page of XHTML), latex (a document), json")
      ->check(CLI::IsMember({"text", "mathml", "latex", "json"}))
      ->excludes(json);

  BatchOptions batchOptions;
  CLI::App* batchCommand = app.add_subcommand("batch", "Work one case a line into one worksheet a line");
  batchCommand->add_option("file", batchOptions.inputFile,
                           "File of cases, one JSON object a line; standard input if absent");
  batchCommand->add_option("--rules", batchOptions.rulesFile,
                           "House rules: exact (the default), classroom, or a file");
  CLI::Option* brief =
      batchCommand->add_flag("--brief", batchOptions.brief, "Leave out steps, words and rules");
  batchCommand
      ->add_flag("--csv", batchOptions.csv,
                 "Read a table with a header of keys, write it with the results beside")
      ->excludes(brief);
  batchCommand
      ->add_option("--jobs", batchOptions.jobs, "Threads that work; 0: one for each processor; 1 if absent")
      ->check(CLI::Range(0, 256));

  ReferencesOptions listOptions;
  CLI::App* listCommand = app.add_subcommand("references", "Turn a table (CSV) into a reference list");
  listCommand->add_option("table", listOptions.tableFile, "Table with a header of keys, an entry a row")
      ->required();
  listCommand->add_option("list", listOptions.listFile, "Reference list to write")->required();
  listCommand->add_flag("--without-refused", listOptions.withoutRefused,
                        "Write it although rows were refused");

  PracticeOptions practiceOptions;
  CLI::App* practiceCommand = app.add_subcommand("practice", "Make problems with invented medicines, and their keys");
  practiceCommand->add_option("--topic", practiceOptions.topic, "What they are about")
      ->required()
      ->check(CLI::IsMember(std::vector<std::string>(wardchalk::topicIds.begin(), wardchalk::topicIds.end())));
  practiceCommand->add_option("--level", practiceOptions.level, "1 (the default), 2 or 3")
      ->check(CLI::Range(wardchalk::lowestLevel, wardchalk::highestLevel));
  practiceCommand->add_option("--count", practiceOptions.count, "How many")
      ->required()
      ->check(CLI::Range(1, wardchalk::mostProblems));
  practiceCommand->add_option("--seed", practiceOptions.seed, "The same seed gives the same problems everywhere")
      ->required()
      ->check(CLI::Range(std::uint64_t{0}, wardchalk::greatestSeed));
  practiceCommand->add_option("--rules", practiceOptions.rulesFile,
                              "House rules: exact (the default), classroom, or a file");
  practiceCommand->add_flag("--json", practiceOptions.json, "Print one problem file a line");

  MarkOptions markOptions;
  CLI::App* markCommand = app.add_subcommand("mark", "Mark a student's answers to a problem, line by line");
  markCommand->add_option("problem", markOptions.problemFile, "Problem file (JSON)")->required();
  markCommand->add_option("answers", markOptions.answersFile, "Answers file (JSON)")->required();
  markCommand->add_option("--rung", markOptions.rung, "How far hints go: 1 where, 2 a question (the default), 3 the rule, 4 the line")
      ->check(CLI::Range(1, wardchalk::lastRung));
  markCommand->add_flag("--json", markOptions.json, "Print the marks as JSON");
  markCommand->add_flag("--lines", markOptions.lines, "Both files hold one a line, and so does the output");

  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return app.exit(error) == 0 ? done : unusable;
  }
  if (practiceCommand->parsed()) return practice(practiceOptions);
  if (markCommand->parsed()) return mark(markOptions);
  if (listCommand->parsed()) return references(listOptions);
  return checkCommand->parsed() ? check(checkOptions) : batch(batchOptions);
}

}  // namespace

int main(int argc, char** argv) {
  try {
    return run(argc, argv);
  } catch (
      const std::exception& error) {  // a bug of ours, or no memory: say so rather than end without a word
    std::cerr << "wardchalk-console: " << error.what() << '\n';
    return unusable;
  }
}
