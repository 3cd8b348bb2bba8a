#include "core/practice/sessions/answers_file.h"

#include <algorithm>

#include "core/practice/sessions/json_fields.h"
#include "core/record/file_head.h"
#include "core/record/json_writer.h"
#include "core/working/step_id.h"

namespace wardchalk {

namespace {

constexpr FileHead answersHead{"wardchalk.answers", 1};

bool isLine(std::string_view id) {
  return id == "verdict" || std::find(stepIds.begin(), stepIds.end(), id) != stepIds.end();
}

Result<WrittenAnswer> readLine(const JsonValue& item, const std::string& path) {
  JsonFields fields(item, path);
  WrittenAnswer answer;
  answer.id = fields.text("id", 40);
  answer.text = fields.text("text", longestAnswer);
  fields.endOfObject();
  if (!isLine(answer.id)) fields.refuse(RefusalCode::askNotInKey, "id", answer.id);
  if (fields.isRefused()) return fields.refusal();
  return answer;
}

}  // namespace

void writeAnswers(std::string& out, const std::vector<WrittenAnswer>& lines) {
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, answersHead);
  writer.key("lines").openList();
  for (const WrittenAnswer& line : lines)
    writer.openObject().key("id").text(line.id).key("text").text(line.text).closeObject();
  writer.closeList().closeObject();
}

Result<std::vector<WrittenAnswer>> readAnswers(std::string_view json) {
  const Result<JsonValue> file = readPracticeFile(json, answersHead);
  if (!file) return file.refusal();
  JsonFields fields(*file, {});
  const JsonValue* list = fields.wanted("lines", JsonValue::Kind::list);
  fields.endOfObject();
  if (fields.isRefused()) return fields.refusal();
  std::vector<WrittenAnswer> lines;
  for (const JsonValue& item : list->items) {
    const std::string path = "lines[" + std::to_string(lines.size()) + "]";
    const Result<WrittenAnswer> line = readLine(item, path);
    if (!line) return line.refusal();
    if (std::ranges::find(lines, line->id, &WrittenAnswer::id) != lines.end())
      return Refusal{RefusalCode::keyDuplicate, line->id, {}, path};
    lines.push_back(*line);
  }
  return lines;
}

}  // namespace wardchalk
