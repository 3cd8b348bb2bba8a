#include "core/record/case_file.h"

#include <algorithm>
#include <iterator>

#include "core/record/case_entry.h"
#include "core/record/file_head.h"
#include "core/record/json_value.h"
#include "core/record/json_writer.h"

namespace wardchalk {

namespace {

constexpr FileHead caseHead{"wardchalk.case", 1};

Result<Done> takeEntry(CaseFile& file, const std::string& path, const JsonValue& value) {
  const CaseEntry* entry = findEntry(path);
  if (!entry) return Refusal{RefusalCode::keyUnknown, path, {}, path};
  if (!kindFits(entry->kind, value.kind))
    return Refusal{RefusalCode::typeWrong, {}, std::string(kindName(entry->kind)), path};
  Result<std::vector<WrittenEntry>> entries = fillFrom(file.inputs, path, value.text, file.entries);
  if (!entries) return entries.refusal();
  std::ranges::move(*entries, std::back_inserter(file.entries));
  return Done{};
}

bool isRoom(std::string_view key) {
  const std::string start = std::string(key) + ".";
  return std::ranges::any_of(caseEntries(),
                             [&](const CaseEntry& entry) { return entry.path.starts_with(start); });
}

Result<Done> takeRoom(CaseFile& file, const std::string& room, const JsonValue& value) {
  if (!isRoom(room)) return takeEntry(file, room, value);
  if (value.kind != JsonValue::Kind::object)
    return Refusal{RefusalCode::typeWrong, {}, "an object in braces", room};
  for (const auto& [key, inner] : value.members)
    if (auto taken = takeEntry(file, std::string(room).append(".").append(key), inner); !taken) return taken;
  return Done{};
}

}  // namespace

std::string_view kindName(EntryKind kind) {
  switch (kind) {
    case EntryKind::text:
      return "text in quotation marks";
    case EntryKind::flag:
      return "true or false";
    case EntryKind::count:
      return "a whole number";
  }
  return {};
}

bool kindFits(EntryKind kind, JsonValue::Kind found) {
  switch (kind) {
    case EntryKind::text:
      return found == JsonValue::Kind::text;
    case EntryKind::flag:
      return found == JsonValue::Kind::flag;
    case EntryKind::count:
      return found == JsonValue::Kind::number;
  }
  return false;
}

Result<CaseFile> readCaseFile(std::string_view json) {
  Result<JsonValue> value = readJson(json);
  if (!value) return value.refusal();
  return readCaseFile(*value);
}

Result<CaseFile> readCaseFile(const JsonValue& value) {
  if (auto head = checkHead(value, caseHead); !head) return head.refusal();
  CaseFile file;
  for (const auto& [key, inner] : value.members) {
    if (isHeadKey(key)) continue;
    if (auto taken = takeRoom(file, key, inner); !taken) return taken.refusal();
  }
  if (auto refusal = contradictionIn(file.inputs)) return *refusal;
  return file;
}

Result<Case> readCase(std::string_view json) {
  Result<CaseFile> file = readCaseFile(json);
  if (!file) return file.refusal();
  return (*std::move(file)).inputs;
}

std::string writeCaseFile(std::span<const WrittenEntry> entries) {
  std::string out;
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, caseHead);
  std::string_view room;
  for (const CaseEntry& known : caseEntries()) {
    const auto entry = std::ranges::find(entries, known.path, &WrittenEntry::path);
    if (entry == entries.end() || entry->text.empty()) continue;
    const std::size_t point = known.path.find('.');
    const std::string_view own =
        point == std::string_view::npos ? std::string_view() : known.path.substr(0, point);
    if (own != room && !room.empty()) writer.closeObject();
    if (own != room && !own.empty()) writer.key(own).openObject();
    room = own;
    writer.key(point == std::string_view::npos ? known.path : known.path.substr(point + 1));
    if (known.kind == EntryKind::text)
      writer.text(entry->text);
    else
      writer.bare(entry->text);
  }
  if (!room.empty()) writer.closeObject();
  writer.closeObject();
  out.push_back('\n');
  return out;
}

}  // namespace wardchalk
