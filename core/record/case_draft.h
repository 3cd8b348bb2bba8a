#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"
#include "core/medicine/case.h"
#include "core/number/refusal.h"
#include "core/record/bare_units.h"
#include "core/record/case_file.h"

namespace wardchalk {

/// How far a field has come: nothing typed, being changed, typed but not readable, or part of the case.
enum class FieldState : std::uint8_t { empty, pending, refused, read };

/// The form's only truth: the line of text in each field and what it was read to. It holds no widget. Nothing
/// typed is lost; what was read stands in its line in the safe form, so that what a field shows is what is
/// judged. A path that no case has is our own bug.
class CaseDraft {
 public:
  CaseDraft();

  /// What now stands in the line of a field. The field is pending until it is committed.
  void set(std::string_view path, std::string_view line);
  /// The line is being changed though its text is not (yet) another: the field is pending.
  void touch(std::string_view path);
  /// Reads the field: it becomes empty, refused or read, and its line is written in the safe form. What the
  /// entry fills besides (the other end of a range, a schedule, as needed) is filled and read too.
  void commit(std::string_view path);
  /// Reads the field and leaves its line as it is: for what Undo brings back.
  void commitAsItStands(std::string_view path);
  /// Empties every field and reads these entries of a case file instead.
  void open(std::span<const WrittenEntry> entries);
  /// Empties every field.
  void clear();
  /// What a bare height or weight is in from now on. A number that was typed is never relabelled.
  void offer(const BareUnits& units);
  [[nodiscard]] const BareUnits& offered() const { return bare_; }

  /// What stands in the line of a field.
  [[nodiscard]] const std::string& line(std::string_view path) const { return at(path).line; }
  [[nodiscard]] FieldState state(std::string_view path) const;
  /// Why the field is refused: it cannot be read, or it contradicts another; empty in every other state. Its
  /// suggestion is what a button may write.
  [[nodiscard]] std::optional<Refusal> refusal(std::string_view path) const;
  /// Where a refused field is asked about: what each of two buttons writes.
  [[nodiscard]] const std::vector<std::string>& answers(std::string_view path) const {
    return at(path).answers;
  }
  /// What is said beside an entry that was read.
  [[nodiscard]] const std::vector<EntryRemark>& remarks(std::string_view path) const {
    return at(path).remarks;
  }
  /// The field's entry as it would be saved; empty when nothing is typed.
  [[nodiscard]] std::string text(std::string_view path) const;

  /// The first field that is being changed; nothing is compared meanwhile.
  [[nodiscard]] std::optional<std::string_view> changingPath() const;
  /// The first field that is refused: nothing is compared until it is right, and it cannot be saved.
  [[nodiscard]] std::optional<std::string_view> refusedPath() const;
  /// The first field that withholds every comparison: one that is being changed, or else one that is refused.
  [[nodiscard]] std::optional<std::string_view> pendingPath() const;
  [[nodiscard]] bool isEmpty() const;

  /// The case that the readable fields make. A field that is pending, refused or contradicted has no part in
  /// it.
  [[nodiscard]] const Case& toCase() const { return case_; }
  /// Every entry that holds something, in the order of the papers.
  [[nodiscard]] std::vector<WrittenEntry> entries() const;

 private:
  struct Field {
    std::string line;
    FieldState state = FieldState::empty;
    std::string entry;  // what was read, in the safe form
    std::optional<Refusal> refusal;
    std::vector<std::string> answers;
    std::vector<EntryRemark> remarks;
    std::string asOpened;  // the text of a file, kept to the letter until its field is changed
  };
  enum class Line : std::uint8_t { rewritten, kept };

  [[nodiscard]] std::size_t indexOf(std::string_view path) const;
  [[nodiscard]] const Field& at(std::string_view path) const { return fields_[indexOf(path)]; }
  [[nodiscard]] Field& at(std::string_view path) { return fields_[indexOf(path)]; }
  [[nodiscard]] bool isContradicted(std::string_view path) const;
  [[nodiscard]] Case caseWithout(std::span<const Refusal> contradictions) const;
  [[nodiscard]] std::optional<std::string> countedEntry(std::string_view path) const;
  [[nodiscard]] EntrySetting settingOf(std::string_view path) const;
  std::vector<AlsoFills> read(std::size_t index, Line line, const EntrySetting& setting);
  void readPlain(Field& field, std::string_view path);
  void makeCase();

  std::vector<Field> fields_;  // one for each entry of a case, in its order
  std::vector<Refusal> contradictions_;
  Case case_;  // what the readable fields make, as of the last change
  BareUnits bare_;
};

}  // namespace wardchalk
