#include "core/record/case_draft.h"

#include <algorithm>
#include <array>
#include <cassert>

#include "core/entry/read_entry.h"
#include "core/medicine/paths.h"
#include "core/record/case_entry.h"

namespace wardchalk {

namespace {

std::string_view pathAt(std::size_t index) { return caseEntries()[index].path; }

std::string_view offeredUnit(std::string_view path, UnitSystem system) {
  const bool height = path == path::height;
  switch (system) {
    case UnitSystem::none:
      return {};
    case UnitSystem::metric:
      return height ? "cm" : "kg";
    case UnitSystem::household:
      return height ? "ft in" : "lb oz";
  }
  return {};
}

bool saysTime(std::string_view text) {
  constexpr std::array<std::string_view, 5> times = {"/dose", "/day", "/week", "/h", "/min"};
  return std::any_of(times.begin(), times.end(),
                     [&](std::string_view time) { return text.find(time) != std::string_view::npos; });
}

/// What a reader of files would take as understood and a person must say: the basis of a dose (T49), the
/// volume that a strength is in.
std::optional<Refusal> unsaid(std::string_view path, const Boxes& boxes, const std::string& entry) {
  const FieldShape shape = shapeOf(path);
  if (shape == FieldShape::dose && !saysTime(entry))
    return Refusal{RefusalCode::perMissing, entry, {}, std::string(path)};
  const bool inVolume = boxes.secondUnit == "mL" || boxes.secondUnit == "L";
  if (shape == FieldShape::strength && inVolume && boxes.second.empty())
    return Refusal{RefusalCode::numberMissing, boxes.secondUnit, {}, std::string(path)};
  return std::nullopt;
}

/// Another field may only be filled where that is seen: not from this one.
std::optional<Refusal> fillingOthers(std::string_view path, const std::string& entry) {
  const auto answer = readEntry(path, entry, fileSetting);
  if (!answer || answer->also.empty()) return std::nullopt;
  return Refusal{RefusalCode::fillsOthers, shortened(entry), {}, std::string(path)};
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

void CaseDraft::set(std::string_view path, Boxes boxes) {
  Field& field = at(path);
  if (field.boxes == boxes) return;
  field = {std::move(boxes), FieldState::pending, std::nullopt, {}};
  // The low end is in the unit of the high end: it reads differently when that is changed.
  Field& low = at(path::low);
  if (path == path::high && !low.boxes.isEmpty())
    low = {std::move(low.boxes), FieldState::pending, std::nullopt, {}};
  findContradictions();
}

void CaseDraft::set(std::string_view path, std::string_view text, std::string_view unit) {
  set(path, {std::string(text), std::string(unit), {}, {}});
}

void CaseDraft::read(std::size_t index) {
  const std::string_view path = pathAt(index);
  Field& field = fields_[index];
  field.boxes = sorted(path, std::move(field.boxes));
  field.refusal.reset();
  field.state = FieldState::empty;
  if (field.boxes.isEmpty()) return;
  const std::string entry = text(path);
  Case trial;
  const bool typed = field.asOpened.empty();
  field.refusal = setEntry(trial, path, entry, typed ? EntrySetting{} : fileSetting).refusalIfAny();
  if (!field.refusal && typed) field.refusal = unsaid(path, field.boxes, entry);
  if (!field.refusal) field.refusal = fillingOthers(path, entry);
  field.state = field.refusal ? FieldState::refused : FieldState::read;
}

void CaseDraft::commit(std::string_view path) {
  read(indexOf(path));
  if (path == path::high) read(indexOf(path::low));
  findContradictions();
}

void CaseDraft::open(std::span<const WrittenEntry> entries) {
  clear();
  for (const WrittenEntry& entry : entries) {
    Field& field = at(entry.path);
    field.boxes = boxesOf(entry.path, entry.text);
    field.asOpened = entry.text;
  }
  Field& low = at(path::low);
  if (!low.asOpened.empty()) low.boxes = boxesOf(path::low, low.asOpened, boxes(path::high));
  for (std::size_t i = 0; i < fields_.size(); ++i) read(i);
  findContradictions();
}

void CaseDraft::clear() {
  fields_.assign(fields_.size(), {});
  contradictions_.clear();
  offer(system_);
}

void CaseDraft::offer(UnitSystem system) {
  system_ = system;
  for (const std::string_view path : {path::height, path::weight})
    if (boxes(path).isEmpty()) at(path).boxes.unit = offeredUnit(path, system);
}

const Boxes& CaseDraft::boxes(std::string_view path) const { return at(path).boxes; }

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
  if (field.boxes.isEmpty()) return {};
  return composed(path, field.boxes, boxes(path::high));
}

std::optional<std::string_view> CaseDraft::pendingPath() const {
  if (at(path::high).state == FieldState::pending) return path::high;  // and not the low end that hangs on it
  for (std::size_t i = 0; i < fields_.size(); ++i)
    if (fields_[i].state == FieldState::pending) return pathAt(i);
  return refusedPath();
}

std::optional<std::string_view> CaseDraft::refusedPath() const {
  for (std::size_t i = 0; i < fields_.size(); ++i)
    if (state(pathAt(i)) == FieldState::refused) return pathAt(i);
  return std::nullopt;
}

bool CaseDraft::isEmpty() const {
  return std::all_of(fields_.begin(), fields_.end(),
                     [](const Field& field) { return field.boxes.isEmpty(); });
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
    [[maybe_unused]] const auto set = setEntry(inputs, path, text(path));
    assert(set);
  }
  return inputs;
}

void CaseDraft::findContradictions() {
  contradictions_.clear();
  while (auto found = contradictionIn(caseWithout(contradictions_)))
    contradictions_.push_back(std::move(*found));
}

Case CaseDraft::toCase() const { return caseWithout(contradictions_); }

std::vector<WrittenEntry> CaseDraft::entries() const {
  std::vector<WrittenEntry> all;
  for (std::size_t i = 0; i < fields_.size(); ++i)
    if (!fields_[i].boxes.isEmpty()) all.push_back({std::string(pathAt(i)), text(pathAt(i))});
  return all;
}

}  // namespace wardchalk
