#include "core/record/batch.h"

#include "core/check/work_out.h"
#include "core/record/case_file.h"
#include "core/record/json_writer.h"
#include "core/words/sentences.h"

namespace wardchalk {

void Batch::answer(std::string_view line, std::string& out) {
  ++line_;
  if (line.ends_with('\r')) line.remove_suffix(1);
  if (line.empty()) return refuse({RefusalCode::empty, {}, {}, {}}, out);
  const Result<Case> inputs = readCase(line);
  if (!inputs) return refuse(inputs.refusal(), out);
  writeWorksheet(out, workOut(*inputs, rules_), extent_);
  out.push_back('\n');
  ++count_.worked;
}

void Batch::answerTooLong(std::string& out) {
  ++line_;
  refuse({RefusalCode::fileTooLarge, {}, "1 MiB", {}}, out);
}

void Batch::refuse(const Refusal& refusal, std::string& out) {
  JsonWriter writer(out);
  writer.openObject().key("line").number(line_).member("path", refusal.path);
  writer.key("code").text(idOf(refusal.code)).key("error").text(sentence(refusal, englishPhrases())).closeObject();
  out.push_back('\n');
  ++count_.refused;
}

}  // namespace wardchalk
