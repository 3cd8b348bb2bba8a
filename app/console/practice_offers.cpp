#include "app/console/commands.h"
#include "app/console/offer.h"
#include "app/console/whole_number.h"
#include "core/practice/marking/hints.h"
#include "core/practice/sessions/set_file.h"

namespace wardchalk::console {

namespace {

void offerProblems(CLI::App& app, Work& chosen) {
  const Offer<PracticeOptions> offer{
      app.add_subcommand("practice", "Make problems with invented medicines, and their keys")};
  PracticeOptions& options = *offer.options;
  offer.command->add_option("--topic", options.topic, "What they are about")
      ->required()
      ->check(CLI::IsMember(std::vector<std::string>(topicIds.begin(), topicIds.end())));
  offer.command->add_option("--level", options.level, "1 (the default), 2 or 3")
      ->check(wholeNumber(lowestLevel, highestLevel));
  offer.command->add_option("--count", options.count, "How many")
      ->required()
      ->check(wholeNumber(1, mostProblems));
  offer.command->add_option("--seed", options.seed, "The same seed gives the same problems everywhere")
      ->required()
      ->check(wholeNumber(0, greatestSeed));
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
      ->check(wholeNumber(1, lastRung));
  offer.command->add_flag("--json", options.json, "Print the marks as JSON");
  offer.command->add_flag("--lines", options.lines, "Both files hold one a line, and so does the output");
  offer.does(mark, chosen);
}

void offerClass(CLI::App& app, Work& chosen) {
  const Offer<ClassOptions> offer{
      app.add_subcommand("class", "Join the tables of results of a class: which lines, which mistakes")};
  ClassOptions& options = *offer.options;
  offer.command->add_option("tables", options.tableFiles, "Tables of results (CSV), one for each seat")
      ->required();
  offer.command->add_flag("--csv", options.csv, "Print a table in place of text");
  offer.does(classView, chosen);
}

}  // namespace

void offerPractice(CLI::App& app, Work& chosen) {
  offerProblems(app, chosen);
  offerMark(app, chosen);
  offerClass(app, chosen);
}

}  // namespace wardchalk::console
