#include "core/record/case_draft.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <utility>

#include "core/entry/read_entry.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"
#include "core/record/line_form.h"

namespace wardchalk {

namespace {

std::string_view pathAt(std::size_t index) { return caseEntries()[index].path; }

bool isBlank(std::string_view line) { return line.find_first_not_of(' ') == std::string_view::npos; }

bool isInGrams(const std::optional<DoseAmount>& dose) {
  constexpr std::array grams = {Unit::mcg, Unit::mg, Unit::g};
  return dose && std::ranges::find(grams, dose->amount.unit) != grams.end();
}

}  // namespace

CaseDraft::CaseDraft() : fields_(caseEntries().size()) {}

std::size_t CaseDraft::indexOf(std::string_view path) const {
  const auto entries = caseEntries();
  const auto found =
      std::find_if(entries.begin(), entries.end(), [&](const CaseEntry& one) { return one.path == path; });
  assert(found != entries.end());
  return static_cast<std::size_t>(found - entries.begin());
}

void CaseDraft::set(std::string_view path, std::string_view line) {
  Field& field = at(path);
  if (field.line == line) return;
  const bool counted = field.state == FieldState::read;
  field = Field{};
  field.line = line;
  field.state = FieldState::pending;
  if (counted) makeCase();
}

void CaseDraft::touch(std::string_view path) {
  Field& field = at(path);
  const bool counted = field.state == FieldState::read;
  std::string line = std::move(field.line);
  field = Field{};
  field.line = std::move(line);
  field.state = FieldState::pending;
  if (counted) makeCase();
}

/// What of a field is in the case, but for contradictions; a case is made anew only where this changes.
std::optional<std::string> CaseDraft::countedEntry(std::string_view path) const {
  const Field& field = fields_[indexOf(path)];
  return field.state == FieldState::read ? std::optional(field.entry) : std::nullopt;
}

EntrySetting CaseDraft::settingOf(std::string_view path) const {
  EntrySetting setting;
  setting.bareHeight = bare_.height;
  setting.bareWeight = bare_.weight;
  if (path != path::strength) return setting;
  setting.drugInGrams = isInGrams(case_.order.dose) && isInGrams(case_.reference.high);
  return setting;
}

/// Free text, flags and counts: they are what they are.
void CaseDraft::readPlain(Field& field, std::string_view path) {
  Case trial;
  field.entry = field.line;
  field.refusal = setEntry(trial, path, field.entry).refusalIfAny();
}

std::vector<AlsoFills> CaseDraft::read(std::size_t index, Line line, const EntrySetting& setting) {
  const std::string_view path = pathAt(index);
  Field& field = fields_[index];
  field.refusal.reset();
  field.answers.clear();
  field.remarks.clear();
  field.entry.clear();
  field.state = FieldState::empty;
  if (isBlank(field.line)) {
    if (line == Line::rewritten) field.line.clear();
    return {};
  }
  std::vector<AlsoFills> also;
  if (std::optional<EntryAnswer> answer = readEntry(path, field.line, setting)) {
    field.entry = std::move(answer->safe);
    field.refusal = std::move(answer->refusal);
    field.answers = std::move(answer->answers);
    field.remarks = std::move(answer->remarks);
    also = std::move(answer->also);
    if (!field.refusal && line == Line::rewritten) field.line = lineForm(field.entry);
  } else {
    readPlain(field, path);
  }
  if (field.refusal) field.refusal->path = path;
  field.state = field.refusal ? FieldState::refused : FieldState::read;
  return also;
}

void CaseDraft::commit(std::string_view path) {
  const std::optional<std::string> before = countedEntry(path);
  const std::vector<AlsoFills> also = read(indexOf(path), Line::rewritten, settingOf(path));
  for (const AlsoFills& other : also) {
    Field& field = at(other.path);
    field = Field{};
    field.line = lineForm(other.text);
    read(indexOf(other.path), Line::rewritten, settingOf(other.path));
  }
  if (!also.empty() || countedEntry(path) != before) makeCase();
}

void CaseDraft::commitAsItStands(std::string_view path) {
  const std::optional<std::string> before = countedEntry(path);
  const std::vector<AlsoFills> also = read(indexOf(path), Line::kept, settingOf(path));
  if (countedEntry(path) != before) makeCase();
  // what it fills besides does not stand there: half of what was typed is judged by nobody
  if (std::ranges::any_of(also,
                          [&](const AlsoFills& other) { return line(other.path) != lineForm(other.text); }))
    touch(path);
}

void CaseDraft::open(std::span<const WrittenEntry> entries) {
  clear();
  EntrySetting setting;
  setting.from = EntryFrom::file;
  for (const WrittenEntry& entry : entries) {
    const std::size_t index = indexOf(entry.path);
    fields_[index].line = entry.text;
    read(index, Line::rewritten, setting);
    fields_[index].asOpened = entry.text;
  }
  makeCase();
}

void CaseDraft::clear() {
  fields_.assign(fields_.size(), {});
  contradictions_.clear();
  case_ = {};
}

/// A bare number that Undo brought back says what it is in before another unit stands beside it.
void CaseDraft::offer(const BareUnits& units) {
  for (const auto& [path, changes] : {std::pair{path::height, units.height != bare_.height},
                                      std::pair{path::weight, units.weight != bare_.weight}})
    if (Field& field = at(path); changes && field.state == FieldState::read)
      field.line = lineForm(field.entry);
  bare_ = units;
}

FieldState CaseDraft::state(std::string_view path) const {
  return isContradicted(path) ? FieldState::refused : at(path).state;
}

std::optional<Refusal> CaseDraft::refusal(std::string_view path) const {
  for (const Refusal& contradiction : contradictions_)
    if (contradiction.path == path) return contradiction;
  return at(path).refusal;
}

std::string CaseDraft::text(std::string_view path) const {
  const Field& field = at(path);
  if (!field.asOpened.empty()) return field.asOpened;
  return field.state == FieldState::read ? field.entry : field.line;
}

std::optional<std::string_view> CaseDraft::changingPath() const {
  for (std::size_t i = 0; i < fields_.size(); ++i)
    if (fields_[i].state == FieldState::pending) return pathAt(i);
  return std::nullopt;
}

std::optional<std::string_view> CaseDraft::refusedPath() const {
  for (std::size_t i = 0; i < fields_.size(); ++i)
    if (state(pathAt(i)) == FieldState::refused) return pathAt(i);
  return std::nullopt;
}

std::optional<std::string_view> CaseDraft::pendingPath() const {
  const auto changing = changingPath();
  return changing ? changing : refusedPath();
}

bool CaseDraft::isEmpty() const {
  return std::all_of(fields_.begin(), fields_.end(), [](const Field& field) {
    return isBlank(field.line) && field.state != FieldState::pending;
  });
}

bool CaseDraft::isContradicted(std::string_view path) const {
  return std::any_of(contradictions_.begin(), contradictions_.end(),
                     [&](const Refusal& refusal) { return refusal.path == path; });
}

Case CaseDraft::caseWithout(std::span<const Refusal> contradictions) const {
  Case inputs;
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const std::string_view path = pathAt(i);
    const bool contradicted = std::any_of(contradictions.begin(), contradictions.end(),
                                          [&](const Refusal& refusal) { return refusal.path == path; });
    if (fields_[i].state != FieldState::read || contradicted) continue;
    [[maybe_unused]] const auto set = setEntry(inputs, path, fields_[i].entry);
    assert(set);
  }
  return inputs;
}

/// Once for each change, however many then look at the case.
void CaseDraft::makeCase() {
  contradictions_.clear();
  case_ = caseWithout(contradictions_);
  while (auto found = contradictionIn(case_)) {
    contradictions_.push_back(std::move(*found));
    case_ = caseWithout(contradictions_);
  }
}

std::vector<WrittenEntry> CaseDraft::entries() const {
  std::vector<WrittenEntry> all;
  for (std::size_t i = 0; i < fields_.size(); ++i)
    if (!isBlank(fields_[i].line)) all.push_back({std::string(pathAt(i)), text(pathAt(i))});
  return all;
}

}  // namespace wardchalk
