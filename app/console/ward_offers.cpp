#include "app/console/commands.h"
#include "app/console/offer.h"
#include "app/console/whole_number.h"
#include "core/check/answers.h"

namespace wardchalk::console {

namespace {

std::vector<std::string> answerWords() { return {answerIds.begin(), answerIds.end()}; }

/// A file keeps the amount, marked as for after asking: how the questions were settled is for the eye alone.
void refuseAskedInFile(const CheckOptions& options) {
  if (!options.asked.empty() && options.format == "json")
    throw CLI::ExcludesError("--asked", "--format json");
}

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
  offer.command
      ->add_option(
          "--asked", options.asked,
          "How the questions were settled, once for each way. The amount is told once every question is "
          "settled")
      ->check(CLI::IsMember(answerWords()))
      ->allow_extra_args(false)
      ->excludes(json);
  offer.command->parse_complete_callback([kept = offer.options] { refuseAskedInFile(*kept); });
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

}  // namespace

void offerWard(CLI::App& app, Work& chosen) {
  offerCheck(app, chosen);
  offerBatch(app, chosen);
  offerReferences(app, chosen);
}

}  // namespace wardchalk::console
