#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/medicine/case.h"
#include "core/number/refusal.h"
#include "core/record/case_file.h"
#include "core/record/field_text.h"

namespace wardchalk {

/// How far a field has come: nothing typed, being changed, typed but not readable, or part of the case.
enum class FieldState : std::uint8_t { empty, pending, refused, read };

/// Which units are offered in height and weight while they are empty. A number that was typed is never
/// relabelled.
enum class UnitSystem : std::uint8_t { none, metric, household };

/// The form's only truth: what was typed in each field and what became of it. It holds no widget. Nothing
/// typed is ever lost or altered, and nothing is read before it is committed. A path that no case has is our
/// own bug.
class CaseDraft {
 public:
  CaseDraft();

  /// What now stands in the boxes of a field. The field is pending until it is committed; a unit typed after
  /// its number is sorted into its box then.
  void set(std::string_view path, Boxes boxes);
  void set(std::string_view path, std::string_view text, std::string_view unit = {});
  /// Reads the field: it becomes empty, refused or read.
  void commit(std::string_view path);
  /// Empties every field and reads these entries of a case file instead.
  void open(std::span<const WrittenEntry> entries);
  /// Empties every field; height and weight offer the units of the system again.
  void clear();
  /// Offers the units of a system in height and weight where they are empty.
  void offer(UnitSystem system);

  [[nodiscard]] const Boxes& boxes(std::string_view path) const;
  [[nodiscard]] FieldState state(std::string_view path) const;
  /// Why the field is refused: it cannot be read, or it contradicts another; empty in every other state.
  [[nodiscard]] std::optional<Refusal> refusal(std::string_view path) const;
  /// The field's entry as it would be saved; empty when nothing is typed.
  [[nodiscard]] std::string text(std::string_view path) const;

  /// The first field that withholds every comparison: one that is being changed, or else one that is refused.
  [[nodiscard]] std::optional<std::string_view> pendingPath() const;
  /// The first field that cannot be saved because it is refused.
  [[nodiscard]] std::optional<std::string_view> refusedPath() const;
  [[nodiscard]] bool isEmpty() const;

  /// The case that the readable fields make. A field that is pending, refused or contradicted has no part in
  /// it.
  [[nodiscard]] Case toCase() const;
  /// Every entry that holds something, in the order of the papers.
  [[nodiscard]] std::vector<WrittenEntry> entries() const;

 private:
  struct Field {
    Boxes boxes;
    FieldState state = FieldState::empty;
    std::optional<Refusal> refusal;
    std::string asOpened;  // the text of a file, kept to the letter until its field is changed
  };

  [[nodiscard]] std::size_t indexOf(std::string_view path) const;
  [[nodiscard]] const Field& at(std::string_view path) const { return fields_[indexOf(path)]; }
  [[nodiscard]] Field& at(std::string_view path) { return fields_[indexOf(path)]; }
  [[nodiscard]] bool isContradicted(std::string_view path) const;
  [[nodiscard]] Case caseWithout(std::span<const Refusal> contradictions) const;
  void read(std::size_t index);
  void findContradictions();

  std::vector<Field> fields_;  // one for each entry of a case, in its order
  std::vector<Refusal> contradictions_;
  UnitSystem system_ = UnitSystem::none;
};

}  // namespace wardchalk
