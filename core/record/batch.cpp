#include "core/record/batch.h"

#include <utility>

#include "core/check/work_out.h"
#include "core/record/case_summary.h"
#include "core/record/json_writer.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

/// Cases handed to a thread at once: enough that waiting for one another costs little, few enough that their
/// answers stay in the processor's nearest memory until they are written.
constexpr std::size_t mostGathered = 16;
constexpr std::size_t mostGatheredBytes = std::size_t{1} << 18U;

void refuseInJson(long line, const Refusal& refusal, std::string& out) {
  JsonWriter writer(out);
  writer.openObject().key("line").number(line).member("path", refusal.path);
  writer.key("code").text(idOf(refusal.code)).key("error").text(sentence(refusal)).closeObject();
  out.push_back('\n');
}

std::size_t sizeOf(const StreamedCase& one) {
  std::size_t size = one.text.size();
  for (const std::string& cell : one.cells) size += cell.size();
  return size;
}

}  // namespace

Batch::Batch(const HouseRules& rules, const BatchForm& form, Write write)
    : rules_(rules),
      form_(form),
      writer_(rules, form.extent),
      write_(std::move(write)),
      stream_(form.kind, [this](StreamedCase one) { add(std::move(one)); }),
      work_(
          form.jobs, [this](const std::vector<StreamedCase>& cases) { return answer(cases); },
          [this](Answer one) { takeAnswer(std::move(one)); }) {}

void Batch::end() {
  stream_.end();
  handIn();
  work_.finish();
}

void Batch::add(StreamedCase one) {
  gatheredBytes_ += sizeOf(one);
  gathered_.push_back(std::move(one));
  if (gathered_.size() >= mostGathered || gatheredBytes_ >= mostGatheredBytes) handIn();
}

void Batch::handIn() {
  if (stream_.table() && !std::exchange(headerWritten_, true)) {
    std::vector<std::string> header = stream_.table()->header();
    header.insert(header.end(), summaryColumns.begin(), summaryColumns.end());
    std::string line;
    appendCsvRow(line, header);
    write_(line);
  }
  gatheredBytes_ = 0;
  if (!gathered_.empty()) work_.add(std::exchange(gathered_, {}));
}

void Batch::takeAnswer(Answer answer) {
  count_.worked += answer.count.worked;
  count_.refused += answer.count.refused;
  write_(answer.text);
  spare_.put(std::move(answer.text));
}

Batch::Answer Batch::answer(const std::vector<StreamedCase>& cases) {
  Answer answers{spare_.take(), {}};
  for (const StreamedCase& one : cases)
    ++(answerOne(one, answers.text) ? answers.count.worked : answers.count.refused);
  return answers;
}

/// False when the case could not be read.
bool Batch::answerOne(const StreamedCase& one, std::string& out) const {
  const bool table = form_.kind == StreamKind::table;
  const Result<CaseFile> read = stream_.read(one);
  if (!read) {
    if (table)
      answerInRow(one, summaryOf(read.refusal()), out);
    else
      refuseInJson(one.number, read.refusal(), out);
    return false;
  }
  const Worksheet sheet = workOut(read->inputs, rules_);
  if (table) {
    answerInRow(one, summaryOf(sheet), out);
    return true;
  }
  writer_.write(out, sheet);
  out.push_back('\n');
  return true;
}

/// The row's own cells first, as many as the header has, so that the answer stands under its column.
void Batch::answerInRow(const StreamedCase& one, std::vector<std::string> summary, std::string& out) const {
  std::vector<std::string> cells = one.cells;
  cells.resize(stream_.table()->columnCount());
  cells.insert(cells.end(), std::make_move_iterator(summary.begin()), std::make_move_iterator(summary.end()));
  appendCsvRow(out, cells);
}

}  // namespace wardchalk
