#include "core/record/reference_list.h"

#include <algorithm>

#include "core/record/case_table.h"
#include "core/record/csv.h"
#include "core/record/file_head.h"
#include "core/record/json_value.h"
#include "core/record/json_writer.h"
#include "core/record/list_entry.h"

namespace wardchalk {

namespace {

constexpr FileHead listHead{"wardchalk.reference-list", 1};
constexpr std::string_view sourceRoom = "source";

Refusal at(std::string place, Refusal refusal) {
  refusal.path = refusal.path.empty() ? std::move(place) : place + "." + refusal.path;
  return refusal;
}

Result<Done> takeKey(ListEntryBuilder& builder, const std::string& key, const JsonValue& value) {
  const auto kind = ListEntryBuilder::kindOf(key);
  if (!kind) return Refusal{RefusalCode::keyUnknown, shortened(key), {}, key};
  if (!kindFits(*kind, value.kind))
    return Refusal{RefusalCode::typeWrong, {}, std::string(kindName(*kind)), key};
  return builder.set(key, value.text);
}

Result<ListEntry> readEntry(const JsonValue& value) {
  if (value.kind != JsonValue::Kind::object)
    return Refusal{RefusalCode::typeWrong, {}, "an object in braces", {}};
  ListEntryBuilder builder;
  for (const auto& [key, inner] : value.members) {
    const bool nested = key == sourceRoom && inner.kind == JsonValue::Kind::object;
    // "source.title" is the name of a column; in a file the title stands within the source.
    if (key.find('.') != std::string::npos) return Refusal{RefusalCode::keyUnknown, shortened(key), {}, key};
    if (!nested)
      if (auto taken = takeKey(builder, key, inner); !taken) return taken.refusal();
    for (const auto& [part, text] : inner.members)
      if (auto taken = takeKey(builder, key + "." + part, text); !taken) return taken.refusal();
  }
  return builder.finish();
}

Result<Done> takeEntries(ReferenceList& list, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::list)
    return Refusal{RefusalCode::typeWrong, {}, "a list in brackets", "entries"};
  for (std::size_t i = 0; i < value.items.size(); ++i) {
    Result<ListEntry> entry = readEntry(value.items[i]);
    if (!entry) return at("entries[" + std::to_string(i) + "]", entry.refusal());
    list.entries.push_back(*std::move(entry));
  }
  return Done{};
}

Result<Done> takeTitle(ReferenceList& list, const JsonValue& value) {
  if (value.kind != JsonValue::Kind::text)
    return Refusal{RefusalCode::typeWrong, {}, "text in quotation marks", "title"};
  Case trial;
  if (auto set = setEntry(trial, "title", value.text); !set) return set;
  list.title = value.text;
  return Done{};
}

void writeEntry(JsonWriter& writer, const ListEntry& entry) {
  writer.openObject().member("medicine", entry.medicine).member("indication", entry.indication);
  for (const WrittenEntry& figure : entry.figures) {
    writer.key(listKeyOf(figure.path));
    if (findEntry(figure.path)->kind == EntryKind::text)
      writer.text(figure.text);
    else
      writer.bare(figure.text);
  }
  writer.key(sourceRoom).openObject();
  for (const std::string_view key : ListEntryBuilder::wordKeys())
    if (key.starts_with("source.")) writer.member(key.substr(sourceRoom.size() + 1), wordOf(entry, key));
  writer.closeObject();
  for (const std::string_view key : {"checked_by", "checked_on", "review_by", "second_check"})
    writer.member(key, wordOf(entry, key));
  writer.closeObject();
}

/// The rows of a table become entries one by one, each good or refused.
class Import {
 public:
  void take(const CsvRow& row) {
    if (refusal_) return;
    if (row.number == 1) return takeHeader(row);
    Result<ListEntry> entry = read(row);
    if (entry)
      import_.list.entries.push_back(*std::move(entry));
    else
      import_.refused.push_back(
          {row.number, entry.refusal(), cellUnder("medicine", row), cellUnder("route", row)});
  }

  Result<ReferenceImport> finish() {
    if (keys_.empty() && !refusal_) return Refusal{RefusalCode::headerMissing, {}, {}, {}};
    if (refusal_) return *refusal_;
    return std::move(import_);
  }

 private:
  void takeHeader(const CsvRow& row) {
    refusal_ = faultOfHeader(row);
    keys_ = row.cells;
    for (const std::string& key : keys_)
      if (!refusal_ && !ListEntryBuilder::kindOf(key))
        refusal_ = Refusal{RefusalCode::keyUnknown, shortened(key), {}, shortened(key)};
  }

  [[nodiscard]] std::string cellUnder(std::string_view key, const CsvRow& row) const {
    const auto place = static_cast<std::size_t>(std::find(keys_.begin(), keys_.end(), key) - keys_.begin());
    return place < std::min(keys_.size(), row.cells.size()) ? row.cells[place] : std::string();
  }

  [[nodiscard]] Result<ListEntry> read(const CsvRow& row) const {
    if (auto misfit = misfitOf(row, keys_.size())) return *misfit;
    ListEntryBuilder builder;
    for (std::size_t i = 0; i < keys_.size(); ++i) {
      if (row.cells[i].empty()) continue;
      const std::string text = entryText(*ListEntryBuilder::kindOf(keys_[i]), row.cells[i]);
      if (auto set = builder.set(keys_[i], text); !set) return set.refusal();
    }
    return builder.finish();
  }

  ReferenceImport import_;
  std::vector<std::string> keys_;
  std::optional<Refusal> refusal_;
};

}  // namespace

Result<ReferenceList> readReferenceList(std::string_view json) {
  Result<JsonValue> file = readJson(json);
  if (!file) return file.refusal();
  if (auto head = checkHead(*file, listHead); !head) return head.refusal();
  ReferenceList list;
  bool stated = false;
  for (const auto& [key, value] : file->members) {
    if (isHeadKey(key)) continue;
    stated = stated || key == "entries";
    const Result<Done> taken = key == "entries" ? takeEntries(list, value)
                               : key == "title" ? takeTitle(list, value)
                                                : Refusal{RefusalCode::keyUnknown, shortened(key), {}, key};
    if (!taken) return taken.refusal();
  }
  if (!stated) return Refusal{RefusalCode::keyMissing, "entries", {}, "entries"};
  return list;
}

std::string writeReferenceList(const ReferenceList& list) {
  std::string out;
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, listHead);
  writer.member("title", list.title).key("entries").openList();
  for (const ListEntry& entry : list.entries) writeEntry(writer, entry);
  writer.closeList().closeObject();
  out.push_back('\n');
  return out;
}

Result<ReferenceImport> importReferenceList(std::string_view csv) {
  Import import;
  CsvReader reader([&](const CsvRow& row) { import.take(row); });
  reader.take(csv);
  reader.end();
  return import.finish();
}

bool isPastReview(const ListEntry& entry, const Date& today) { return today > entry.reviewBy; }

}  // namespace wardchalk
